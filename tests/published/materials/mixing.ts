// Pairs not to be mixed or stored together, hazards, chloride, days to harvest and label tolerances, typed from materials.md 6 and 7
// and from stored copies. `rule`: 'never', 'fresh only' (mix and spread the same day, do not store), 'not in solution'.
// `softer`: the same page elsewhere allows this; the stricter stands. `weight` A, B, C as in the notes. `at` with an address: seen by this hand.
// [SEAP] IPNI, seap.ipni.net/article/SEAP-3024; [ACES] Alabama ANR-174; [HSE] UK Health and Safety Executive; [PET] vets' pages.

export const PRINTED_PAIRS = [
  { a: 'urea', b: 'calcium ammonium nitrate', rule: 'never', softer: 'fresh only', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'urea', b: 'muriate of potash', rule: 'never', softer: 'fresh only', weight: 'A', at: 'section 7 [SEAP]; seen (stricter than bulk-blending practice)', mark: 'read' },
  { a: 'urea', b: 'single superphosphate', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'urea', b: 'triple superphosphate', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'urea', b: 'sulphate of potash', rule: 'fresh only', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  // Dropped: any other fertiliser: see the test.
  { a: 'calcium ammonium nitrate', b: 'muriate of potash', rule: 'fresh only', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'calcium ammonium nitrate', b: 'sulphate of potash', rule: 'fresh only', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'calcium ammonium nitrate', b: 'basic slag', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'monoammonium phosphate', b: 'lime', rule: 'never', weight: 'A', at: 'section 7 [SEAP], ammonium phosphates; seen', mark: 'read' },
  { a: 'monoammonium phosphate', b: 'basic slag', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'monoammonium phosphate', b: 'rock phosphate', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'monoammonium phosphate', b: 'calcium ammonium nitrate', rule: 'never', softer: 'fresh only', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'diammonium phosphate', b: 'lime', rule: 'never', weight: 'A', at: 'section 7 [SEAP], ammonium phosphates; seen', mark: 'read' },
  { a: 'diammonium phosphate', b: 'basic slag', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'diammonium phosphate', b: 'rock phosphate', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'diammonium phosphate', b: 'calcium ammonium nitrate', rule: 'never', softer: 'fresh only', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'single superphosphate', b: 'lime', rule: 'never', weight: 'A', at: 'section 7 [SEAP], superphosphates; seen', mark: 'read' },
  { a: 'single superphosphate', b: 'basic slag', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'single superphosphate', b: 'rock phosphate', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'single superphosphate', b: 'calcium ammonium nitrate', rule: 'never', softer: 'fresh only', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'triple superphosphate', b: 'lime', rule: 'never', weight: 'A', at: 'section 7 [SEAP], superphosphates; seen', mark: 'read' },
  { a: 'triple superphosphate', b: 'basic slag', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'triple superphosphate', b: 'rock phosphate', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  { a: 'triple superphosphate', b: 'calcium ammonium nitrate', rule: 'never', weight: 'A', at: 'section 7 [SEAP]; seen', mark: 'read' },
  // The notes say "calcium-nitrate types". In the clearer copy the remark stands at the calcium nitrate + urea double salt alone.
  { a: 'calcium nitrate and urea double salt', b: 'single superphosphate', rule: 'never', weight: 'A', at: 'section 7 [ACES]; seen aces.edu/pubs/docs/A/ANR-0174', mark: 'read' },
  // New here.
  { a: 'calcium nitrate', b: 'sulphate of potash', rule: 'not in solution', weight: 'A', at: 'micromaintain.ucanr.edu prevention and mitigation (gypsum)', mark: 'read' },
  { a: 'any calcium fertiliser', b: 'any sulphate fertiliser', rule: 'not in solution', weight: 'A', at: 'micromaintain.ucanr.edu prevention and mitigation', mark: 'read' },
  { a: 'calcium nitrate', b: 'ammonium sulphate', rule: 'not in solution', weight: 'B', at: 'haifa-group.com interaction-among-fertilizers-compatibility', mark: 'read' },
  { a: 'calcium nitrate', b: 'monoammonium phosphate', rule: 'not in solution', weight: 'B', at: 'haifa-group.com interaction-among-fertilizers-compatibility', mark: 'read' },
  { a: 'magnesium nitrate', b: 'monoammonium phosphate', rule: 'not in solution', weight: 'B', at: 'haifa-group.com interaction-among-fertilizers-compatibility', mark: 'read' },
  { a: 'magnesium nitrate', b: 'diammonium phosphate', rule: 'not in solution', weight: 'B', at: 'haifa-group.com interaction-among-fertilizers-compatibility', mark: 'read' },
  { a: 'ammonium sulphate', b: 'muriate of potash', rule: 'not in solution', weight: 'B', at: 'haifa-group.com interaction-among-fertilizers-compatibility (potassium sulphate falls out)', mark: 'read' },
  { a: 'ammonium sulphate', b: 'potassium nitrate', rule: 'not in solution', weight: 'B', at: 'haifa-group.com interaction-among-fertilizers-compatibility (potassium sulphate falls out)', mark: 'read' },
  { a: 'calcium nitrate', b: 'Epsom salt', rule: 'not in solution', weight: 'B', at: 'fruitilicious.org fertilizer-blending; agrisearchindia.com', mark: 'read' },
  { a: 'Epsom salt', b: 'any soluble phosphate', rule: 'not in solution', weight: 'C', at: 'fruitilicious.org fertilizer-blending', mark: 'read' },
  { a: 'urea', b: 'ammonium nitrate', rule: 'never', weight: 'C', at: 'mgso4.en.tradevv.com n1868804 (takes up far more water)', mark: 'read' },
  { a: 'wood ash', b: 'any ammonium fertiliser', rule: 'never', weight: 'C', at: 'mgso4.en.tradevv.com n1868804; topicfoods.com 6652', mark: 'read' },
  { a: 'lime', b: 'any ammonium fertiliser', rule: 'never', weight: 'C', at: 'mgso4.en.tradevv.com n1868804; de.scribd.com 292330118', mark: 'read' },
  { a: 'wood ash', b: 'single superphosphate', rule: 'never', weight: 'C', at: 'mgso4.en.tradevv.com n1868804; topicfoods.com 6652; de.scribd.com 292330118', mark: 'read' },
  { a: 'wood ash', b: 'manure', rule: 'never', weight: 'C', at: 'topicfoods.com 6652', mark: 'read' },
  { a: 'lime', b: 'manure', rule: 'never', weight: 'C', at: 'topicfoods.com 6652; de.scribd.com 292330118', mark: 'read' },
  // The notes' own chemistry.
  { a: 'urea', b: 'ammonium nitrate', rule: 'never', weight: 'C', at: 'section 7', mark: 'memory' },
  { a: 'calcium nitrate', b: 'any sulphate fertiliser', rule: 'not in solution', weight: 'C', at: 'section 7', mark: 'memory' },
  { a: 'calcium nitrate', b: 'any phosphate fertiliser', rule: 'not in solution', weight: 'C', at: 'section 7', mark: 'memory' },
  { a: 'lime', b: 'any ammonium fertiliser', rule: 'never', weight: 'C', at: 'section 7', mark: 'memory' },
  { a: 'wood ash', b: 'any ammonium fertiliser', rule: 'never', weight: 'C', at: 'section 7', mark: 'memory' },
  { a: 'triple superphosphate', b: 'urea', rule: 'never', weight: 'C', at: 'section 7', mark: 'memory' },
] as const;

export const PRINTED_HAZARDS = [
  { material: 'ammonium nitrate', hazard: 'oxidiser', weight: 'A', at: 'section 7 (memory there); seen pl.scribd.com 320053186, copy of HSE INDG230', mark: 'read' },
  // Dropped: law and accidents of ammonium nitrate: told nowhere.
  { material: 'potassium nitrate', hazard: 'nitrate, keep from fuel', weight: 'B', at: 'section 7, trade guidance', mark: 'read' },
  { material: 'sodium nitrate', hazard: 'nitrate, keep from fuel', weight: 'B', at: 'section 7, trade guidance', mark: 'read' },
  { material: 'calcium nitrate', hazard: 'nitrate, keep from fuel', weight: 'B', at: 'section 7, trade guidance', mark: 'read' },
  { material: 'bone meal', hazard: 'dogs', weight: 'B', at: 'section 7 [PET]; seen petpoisonhelpline.com case story, kingsbrookvet.com', mark: 'read' },
  { material: 'blood meal', hazard: 'dogs', weight: 'B', at: 'section 7 [PET]; seen kingsbrookvet.com', mark: 'read' },
  { material: 'cocoa shell', hazard: 'dogs', weight: 'B', at: 'section 7 [PET]; seen kingsbrookvet.com', mark: 'read' },
  // Dropped: iron in a feed is not read.
  { material: 'feather meal', hazard: 'dogs', weight: 'B', at: 'petpoisonhelpline.com case story (palatable)', mark: 'read' },
  { material: 'fish meal', hazard: 'dogs', weight: 'B', at: 'petpoisonhelpline.com case story (palatable)', mark: 'read' },
  { material: 'blood and bone', hazard: 'dogs', weight: 'B', at: 'cairnsvet.blogspot.com, with RSPCA Australia', mark: 'read' },
  { material: 'pelleted poultry manure', hazard: 'dogs', weight: 'B', at: 'cairnsvet.blogspot.com', mark: 'read' },
  { material: 'urea', hazard: 'stock', weight: 'C', at: 'section 7', mark: 'memory' },
] as const;

// Crops that a source calls sensitive to chloride, or for which it would have sulphate of potash. `degree` 'moderate' where it says so.
export const PRINTED_CHLORIDE = [
  { crop: 'avocado', weight: 'C', at: 'section 7; seen haifa-group.com chloride Q&A, greengubregroup.com', mark: 'read' },
  { crop: 'strawberry', weight: 'C', at: 'section 7; seen haifa-group.com chloride Q&A, greengubregroup.com', mark: 'read' },
  { crop: 'almond', weight: 'C', at: 'section 7; seen haifa-group.com chloride Q&A', mark: 'read' },
  { crop: 'grape', weight: 'A', at: 'section 7; seen passel2.unl.edu/view/lesson/d01bf6ce5f62/5, greengubregroup.com (a potash maker lists vines as partly tolerant)', mark: 'read' },
  { crop: 'citrus', weight: 'A', at: 'section 7; seen passel2.unl.edu/view/lesson/d01bf6ce5f62/5', mark: 'read' },
  { crop: 'citrus', degree: 'moderate', weight: 'C', at: 'section 7; seen greengubregroup.com', mark: 'read' },
  { crop: 'mandarin', degree: 'moderate', weight: 'C', at: 'section 7; seen greengubregroup.com (above other citrus)', mark: 'read' },
  // Dropped: fruit crops in general.
  { crop: 'raspberry', weight: 'C', at: 'section 7 (memory there); seen eng.kakprosto.ru 879624', mark: 'read' },
  { crop: 'currant', weight: 'C', at: 'eng.kakprosto.ru 879624', mark: 'read' },
  { crop: 'raspberry', weight: 'C', at: 'section 7', mark: 'memory' },
  { crop: 'blackberry', weight: 'C', at: 'section 7', mark: 'memory' },
  { crop: 'stone fruit', weight: 'C', at: 'section 7', mark: 'memory' },
] as const;

// Days from fresh manure dug in to harvest. The US organic rule counts from incorporation; composted manure is free of it.
export const PRINTED_HARVEST_DAYS = [
  { when: 'edible part touches the soil', days: 120, weight: 'A', at: '7 CFR 205.203(c)(1)(ii), law.lawstack.com, govinfo.gov CFR-2011', mark: 'read' },
  { when: 'edible part does not touch the soil', days: 90, weight: 'A', at: '7 CFR 205.203(c)(1)(iii), law.lawstack.com, govinfo.gov CFR-2011', mark: 'read' },
  // Dropped: three that say the same of vegetables.
] as const;

// How a label states phosphorus and potassium.
export const PRINTED_NOTATION = [
  { place: 'US', basis: 'oxide', says: 'whole numbers save for specialty fertilisers; total N, available P2O5, soluble K2O', weight: 'A', at: 'section 6; seen law.justia.com New York AGM 144, casetext.com Mississippi 104.02', mark: 'read' },
  { place: 'Canada', basis: 'oxide', says: 'hyphenated: total N, available phosphoric acid, soluble potash', weight: 'A', at: 'section 6 [CA21]; seen laws-lois.justice.gc.ca section 21', mark: 'read' },
  { place: 'UK', basis: 'oxide, element in brackets', says: 'P and K usually as oxide followed in brackets by the element', weight: 'A', at: 'rhs.org.uk fertiliser-labels-explained', mark: 'read' },
  { place: 'UK', basis: 'oxide', says: 'whole numbers or, where necessary, one decimal', weight: 'A', at: 'legislation.gov.uk SI 1991/2197 schedule 2 paragraph 8', mark: 'read' },
  { place: 'Australia', basis: 'element', says: 'single superphosphate 0:8.8:0:11 (N:P:K:S)', weight: 'B', at: 'section 6 [STY]; seen vegetableswa.com.au', mark: 'read' },
  { place: 'South Africa', basis: 'ratio with total in brackets', says: '4:3:4 (33) = 12, 9, 12', weight: 'B', at: 'section 6; seen agrispex.co.za', mark: 'read' },
  { place: 'Poland', basis: 'oxide', says: 'NPK (Ca,S) 4-12-12 (14-29): CaO 14, SO3 29', weight: 'C', at: 'section 6; seen wikisum.wiki', mark: 'read' },
  { place: 'Germany', basis: 'oxide, element beside it', says: 'P2O5 x 0.436, K2O x 0.83, CaO x 0.715, MgO x 0.6, CaCO3 x 0.56 = CaO', weight: 'A', at: 'German DüMV 2012 section 6 (1) 3, github.com/bundestag/gesetze d/duemv_2012', mark: 'read' },
  { place: 'Ireland', basis: 'element', says: 'P and K on the bag', weight: 'B', at: 'section 6 [IFJ]', mark: 'read' },
  { place: 'New Zealand', basis: 'element', says: '', weight: 'C', at: 'section 6', mark: 'memory' },
  { place: 'India', basis: 'oxide', says: '', weight: 'C', at: 'section 6', mark: 'memory' },
] as const;
