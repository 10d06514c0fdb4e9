// Printed grades of fertiliser materials, typed from the research notes (materials.md 1.1 and 1.2), as held against
// stored copies of the publications where those could be had.
// PRINTED_GRADES: the lowest and highest figure that any source read for that row prints; null where nobody states the nutrient.
// Percent by weight, N-P2O5-K2O; `others` are elements (MgO x 0.603, CaO x 0.715, the printed oxide beside the row).
// `at`: a section of the notes carries the notes' own mark; "seen ADDRESS" means that the typist saw the figure too in a stored copy.
// Keys: [IFA] International Fertilizer Association; [NRCS] New Mexico NRCS Agronomy Tech Note 76; [ACES] Alabama ANR-174; [AGC] trade page;
// [SSC] NC State SSC 012; [PNP] Pacific Nut Producer; [NCQ] NC State 2000; [PEET] NC State, Peet; [TX] Texas A&M Earth-Kind;
// [OSUN] Oregon State Extension 2008; [OSUV] copy of an Oregon list; [HJ] Hartz and Johnstone 2006; [CORG] Cornell ecogardening 8, 1993.

export const PRINTED_GRADES = [
  { material: 'urea', n: [45, 46], p2o5: [0, 0], k2o: [0, 0], at: 'section 1.1 [IFA][NRCS][ACES]; seen fertilizer.org, docslib.org/doc/3058196, aces.edu ANR-0174', mark: 'read' },
  { material: 'ammonium nitrate', n: [32, 34.5], p2o5: [0, 0], k2o: [0, 0], at: 'section 1.1 [IFA][NRCS][ACES]; seen the same', mark: 'read' },
  { material: 'calcium ammonium nitrate', n: [26, 30], p2o5: null, k2o: null, at: 'section 1.1 [IFA]; seen fertilizer.org', mark: 'read' },
  { material: 'ammonium sulphate', n: [21, 21], p2o5: [0, 0], k2o: [0, 0], others: { S: [24, 24] }, at: 'section 1.1 [IFA][ACES][NRCS]; seen fertilizer.org, aces.edu ANR-0174', mark: 'read' },
  { material: 'calcium nitrate', n: [15, 15.5], p2o5: [0, 0], k2o: [0, 0], others: { Ca: [24, 24] }, at: 'section 1.1 [ACES][AGC][NRCS]; seen docslib.org/doc/3058196 (15-0-0-24Ca)', mark: 'read' },
  { material: 'potassium nitrate', n: [13, 13], p2o5: [0, 0], k2o: [44, 44], at: 'section 1.1 [ACES][NRCS]; seen the same', mark: 'read' },
  { material: 'sodium nitrate', n: [16, 16], p2o5: [0, 0], k2o: [0, 0], at: 'section 1.1 [ACES][NRCS]; seen the same', mark: 'read' },
  { material: 'monoammonium phosphate', n: [11, 11], p2o5: [48, 52], k2o: [0, 0], at: 'section 1.1 [IFA][NRCS]; seen the same', mark: 'read' },
  { material: 'diammonium phosphate', n: [18, 21], p2o5: [46, 53], k2o: [0, 0], at: 'section 1.1 [IFA][NRCS]; seen the same', mark: 'read' },
  { material: 'single superphosphate', n: [0, 0], p2o5: [15, 20], k2o: [0, 0], others: { S: [12, 12] }, at: 'section 1.1 [IFA][SSC][AGC]; seen fertilizer.org (15, S 12), agroconection.com (20)', mark: 'read' },
  { material: 'triple superphosphate', n: [0, 0], p2o5: [46, 46], k2o: [0, 0], at: 'section 1.1 [IFA]; seen fertilizer.org', mark: 'read' },
  // Total, not available, phosphate.
  { material: 'rock phosphate', n: [0, 0], p2o5: [30.9, 30.9], k2o: [0, 0], at: 'section 1.1 [IFA], total; seen fertilizer.org', mark: 'read' },
  { material: 'muriate of potash', n: [0, 0], p2o5: [0, 0], k2o: [60, 61], others: { Cl: [47.5, 47.5] }, at: 'section 1.1 [IFA][PNP]; seen fertilizer.org (60)', mark: 'read' },
  { material: 'sulphate of potash', n: [0, 0], p2o5: [0, 0], k2o: [50, 52], others: { S: [18, 18] }, at: 'section 1.1 [IFA][PNP]; seen fertilizer.org (50, S 18)', mark: 'read' },
  // Printed MgO 10-11.
  { material: 'potassium magnesium sulphate', n: [0, 0], p2o5: [0, 0], k2o: [22, 30], others: { S: [17, 22], Mg: [6.03, 6.63] }, at: 'section 1.1 [IFA]; seen fertilizer.org', mark: 'read' },
  // Printed MgO 15-16.
  { material: 'Epsom salt', n: [0, 0], p2o5: [0, 0], k2o: [0, 0], others: { S: [12, 13], Mg: [9.05, 9.65] }, at: 'section 1.1 [IFA]; seen fertilizer.org', mark: 'read' },
  // Printed MgO 25-27.
  { material: 'kieserite', n: [0, 0], p2o5: [0, 0], k2o: [0, 0], others: { S: [20, 22], Mg: [15.08, 16.28] }, at: 'section 1.1 [IFA]; seen fertilizer.org', mark: 'read' },
  // Printed CaO 33. Sulphur of gypsum is only derived in the notes.
  { material: 'gypsum', n: [0, 0], p2o5: [0, 0], k2o: [0, 0], others: { Ca: [23.6, 23.6] }, at: 'section 1.1 [AGC]; seen agroconection.com', mark: 'read' },
  { material: 'elemental sulphur', n: [0, 0], p2o5: [0, 0], k2o: [0, 0], others: { S: [90, 100] }, at: 'section 1.1; seen fertilizer.org (100), cropideas.net (90)', mark: 'read' },
  { material: 'sulphur-coated urea', n: [36, 38], p2o5: [0, 0], k2o: [0, 0], others: { S: [13, 16] }, at: 'section 1.1 [ACES]; seen docslib.org/doc/3055401', mark: 'read' },
  { material: 'UAN solution', n: [28, 32], p2o5: [0, 0], k2o: [0, 0], at: 'section 1.1 [NRCS][IFA]; seen the same', mark: 'read' },
  { material: 'blood meal', n: [10, 15], p2o5: [1.3, 3], k2o: [0, 0.7], at: 'section 1.2 [NCQ][PEET][TX][OSUN]; seen all four', mark: 'read' },
  // [PEET] leaves P and K of feathers blank. Hair (12-16 N) stands in the notes' row but is another material: left out.
  { material: 'feather meal', n: [10, 15.3], p2o5: null, k2o: null, at: 'section 1.2 [PEET] and a trade page; seen [PEET]', mark: 'read' },
  { material: 'hoof and horn', n: [12.5, 14], p2o5: [0, 1.8], k2o: [0, 0], at: 'section 1.2 [PEET][TX]; seen both', mark: 'read' },
  { material: 'raw bone meal', n: [2, 6], p2o5: [15, 27], k2o: [0, 0.2], at: 'section 1.2 [NCQ][PEET][TX][OSUV]; seen all four', mark: 'read' },
  { material: 'steamed bone meal', n: [2, 2.2], p2o5: [27, 28], k2o: [0, 0.2], at: 'section 1.2 [NCQ][TX]; seen both', mark: 'read' },
  // Fresh fish scrap 6.5-3.8, fish scrap 9-7-0 and a trade page's meal 9-4-1 in one row, as the notes have it.
  { material: 'fish meal', n: [6.5, 9], p2o5: [3.8, 7], k2o: [0, 1], at: 'section 1.2 [PEET][TX] and a trade page; seen [PEET][TX]', mark: 'read' },
  { material: 'cottonseed meal', n: [6, 7], p2o5: [2.5, 2.5], k2o: [1.5, 2], at: 'section 1.2 [NCQ][PEET][TX]; seen all three', mark: 'read' },
  { material: 'soybean meal', n: [7, 7], p2o5: [0.5, 0.5], k2o: [2.3, 2.3], at: 'section 1.2 [PEET]; seen', mark: 'read' },
  { material: 'alfalfa meal', n: [2.5, 3], p2o5: [0.5, 1], k2o: [2, 2.4], at: 'section 1.2 [NCQ][PEET][OSUN] (hay); seen all three', mark: 'read' },
  { material: 'kelp meal', n: [1, 1.5], p2o5: [0, 1], k2o: [4, 9], at: 'section 1.2 [NCQ][TX] and a trade page; seen [NCQ][TX]', mark: 'read' },
  // The notes print K 0 for [PEET]; the page leaves it blank.
  { material: 'bat guano', n: [6, 8], p2o5: [5, 9], k2o: [1.5, 3], at: 'section 1.2 [PEET][TX][OSUN]; seen all three', mark: 'read' },
  // The notes' 11.7-15.8 N of [HJ] is the span over four products, not this one: left out.
  { material: 'seabird guano', n: [13, 13], p2o5: [11, 11], k2o: [3, 3], at: 'section 1.2 [TX]; seen', mark: 'read' },
  { material: 'tankage', n: [4, 8], p2o5: [1.5, 5], k2o: [0, 2], at: 'section 1.2 [PEET][TX]; seen both', mark: 'read' },
  { material: 'shrimp waste', n: [2.9, 2.9], p2o5: [10, 10], k2o: null, at: 'section 1.2 [PEET]; seen', mark: 'read' },
  { material: 'crab waste', n: [2, 2], p2o5: [3.6, 3.6], k2o: [0.2, 0.2], at: 'section 1.2 [PEET]; seen', mark: 'read' },
  { material: 'coffee grounds', n: [2.1, 2.1], p2o5: [0.3, 0.3], k2o: [0.3, 0.3], at: 'section 1.2 [NCQ][PEET]; seen both', mark: 'read' },
  { material: 'cocoa shell', n: [1, 2.5], p2o5: [1, 1.5], k2o: [2.7, 3], at: 'section 1.2 [PEET][TX]; seen both', mark: 'read' },
  { material: 'wood ash', n: [0, 0], p2o5: [1, 2], k2o: [3, 6], at: 'section 1.2 [NCQ][TX] and two weak pages, dry; seen [NCQ][TX]', mark: 'read' },
  // Dropped: ash rained on (0-1.2-2) is not sold, and not held.
  { material: 'greensand', n: [0, 0], p2o5: [0, 2], k2o: [3, 5], at: 'section 1.2 [NCQ] and a weak page, total; seen [NCQ]', mark: 'read' },
  // Dropped: oyster shell is a lime there and here, and feeds nothing.
  { material: 'garden compost', n: [0.3, 0.3], p2o5: [0.2, 0.2], k2o: [0.4, 0.4], at: 'section 1.2 [NCQ], as is; seen', mark: 'read' },
  // By feedstock: the page does not say whether P and K are oxide or element, so only N stands.
  // Dropped: five composts by feedstock [NORG2]: of dry matter, as the notes suppose; ours are as they lie.
  // Manures: [CORG] in lb/ton over 20 (the page heads its first block "fresh manure with bedding or litter"), beside [TX] in percent.
  { material: 'fresh cattle manure', n: [0.5, 0.55], p2o5: [0, 0.2], k2o: [0.5, 0.5], at: 'section 1.2 [CORG][TX]; seen both ([TX] prints P as "0.")', mark: 'read' },
  { material: 'fresh hen manure', n: [0.9, 1.1], p2o5: [0.5, 1.1], k2o: [0.5, 0.8], at: 'section 1.2 [CORG][TX]; seen both', mark: 'read' },
  { material: 'fresh horse manure', n: [0.6, 0.65], p2o5: [0.25, 0.3], k2o: [0.6, 0.65], at: 'section 1.2 [CORG][TX]; seen both', mark: 'read' },
  { material: 'fresh sheep manure', n: [0.9, 1], p2o5: [0.5, 0.75], k2o: [0.8, 1.05], at: 'section 1.2 [CORG][TX]; seen both', mark: 'read' },
  { material: 'fresh turkey manure', n: [1.3, 1.3], p2o5: [0.7, 0.7], k2o: [0.5, 0.5], at: 'section 1.2 [CORG]; seen', mark: 'read' },
  { material: 'fresh hog manure', n: [0.55, 0.6], p2o5: [0.3, 0.5], k2o: [0.4, 0.45], at: 'section 1.2 [CORG][TX]; seen both', mark: 'read' },
  // Dried: in the copy P2O5 repeats N in every one of the five dried rows, so one of the two columns is surely a slip of the copy.
  { material: 'dried cattle manure', n: [2.1, 2.1], p2o5: [2.1, 2.1], k2o: [3.05, 3.05], doubt: 'P2O5 repeats N', at: 'section 1.2 [CORG]; seen', mark: 'read' },
  { material: 'dried hen manure', n: [1.55, 4.2], p2o5: [1.55, 2.7], k2o: [1.4, 2], doubt: 'P2O5 repeats N at the low end', at: 'section 1.2 [CORG] and a weak page; seen [CORG]', mark: 'read' },
  { material: 'dried rabbit manure', n: [1.3, 1.3], p2o5: [1.3, 1.3], k2o: [1.6, 1.6], doubt: 'P2O5 repeats N', at: 'section 1.2 [CORG]; seen', mark: 'read' },
  { material: 'dried sheep manure', n: [1.6, 1.6], p2o5: [1.6, 1.6], k2o: [2.05, 2.05], doubt: 'P2O5 repeats N', at: 'section 1.2 [CORG]; seen', mark: 'read' },
  // Memory only.
  { material: 'langbeinite', n: [0, 0], p2o5: [0, 0], k2o: [22, 22], others: { S: [22, 22], Mg: [11, 11] }, at: 'section 1.1', mark: 'memory' },
  // Dropped: 12-61-0, memory; a label prints it.
  { material: 'pelleted poultry manure', n: [3, 5], p2o5: null, k2o: null, at: 'section 1.2', mark: 'memory' },
] as const;

// What the typist saw beyond the notes' rows, each at its address; same shape, one publication a row. `weight` A, B or C as in the notes.
export const SEEN_GRADES = [
  { material: 'urea', n: [45, 45], p2o5: [0, 0], k2o: [0, 0], weight: 'A', at: 'forages.oregonstate.edu/Tables/26-2', mark: 'read' },
  { material: 'urea', n: [46, 46], p2o5: [0, 0], k2o: [0, 0], weight: 'A', at: 'nrcca.cals.cornell.edu/nutrient/CA4/CA0426.php', mark: 'read' },
  { material: 'ammonium nitrate', n: [33, 33], p2o5: [0, 0], k2o: [0, 0], weight: 'A', at: 'forages.oregonstate.edu/Tables/26-2', mark: 'read' },
  { material: 'ammonium nitrate', n: [34, 34], p2o5: [0, 0], k2o: [0, 0], weight: 'A', at: 'nrcca.cals.cornell.edu/nutrient/CA4/CA0426.php', mark: 'read' },
  { material: 'ammonium nitrate limestone', n: [20, 20], p2o5: [0, 0], k2o: [0, 0], others: { Ca: [6, 6], Mg: [4, 4] }, weight: 'A', at: 'aces.edu/pubs/docs/A/ANR-0174', mark: 'read' },
  { material: 'ammonium sulphate', n: [21, 21], p2o5: [0, 0], k2o: [0, 0], others: { S: [24, 24] }, weight: 'A', at: 'forages.oregonstate.edu/Tables/26-2; nrcca.cals.cornell.edu CA0426', mark: 'read' },
  { material: 'calcium nitrate', n: [15, 15], p2o5: [0, 0], k2o: [0, 0], others: { Ca: [21, 21] }, weight: 'A', at: 'aces.edu/pubs/docs/A/ANR-0174 (the docslib copy lost a digit)', mark: 'read' },
  { material: 'calcium nitrate', n: [15, 15], p2o5: [0, 0], k2o: [0, 0], others: { Ca: [19, 19] }, weight: 'A', at: 'forages.oregonstate.edu/Tables/26-2', mark: 'read' },
  { material: 'potassium nitrate', n: [13, 13], p2o5: [0, 0], k2o: [44, 44], weight: 'A', at: 'forages.oregonstate.edu/Tables/26-2; nrcca.cals.cornell.edu CA0428', mark: 'read' },
  { material: 'sulphur-coated urea', n: [32, 32], p2o5: [0, 0], k2o: [0, 0], weight: 'A', at: 'forages.oregonstate.edu/Tables/26-2', mark: 'read' },
  { material: 'muriate of potash', n: null, p2o5: null, k2o: [60, 63], weight: 'A', at: 'nrcca.cals.cornell.edu/nutrient/CA4/CA0428.php', mark: 'read' },
  { material: 'sulphate of potash', n: [0, 0], p2o5: [0, 0], k2o: [50, 50], others: { S: [18, 18] }, weight: 'A', at: 'passel2.unl.edu/view/lesson/d01bf6ce5f62/5', mark: 'read' },
  { material: 'langbeinite', n: [0, 0], p2o5: [0, 0], k2o: [22, 22], others: { S: [22, 22] }, weight: 'A', at: 'passel2.unl.edu/view/lesson/d01bf6ce5f62/5', mark: 'read' },
  { material: 'langbeinite', n: null, p2o5: null, k2o: [22, 22], others: { S: [22, 22], Mg: [11, 11] }, weight: 'A', at: 'nrcca.cals.cornell.edu/nutrient/CA4/CA0428.php', mark: 'read' },
  { material: 'steamed bone meal', n: [3, 3], p2o5: [15, 15], k2o: [0, 0], weight: 'B', at: 'products.kitsapsun.com 2005/04-30 (a retail bag)', mark: 'read' },
  { material: 'blood meal', n: [13, 13], p2o5: [1, 1], k2o: [1, 1], weight: 'B', at: 'products.kitsapsun.com 2005/04-30 (a retail bag)', mark: 'read' },
  { material: 'cottonseed meal', n: [7, 7], p2o5: [3, 3], k2o: [2, 2], weight: 'A', at: 'ces.ncsu.edu quickref/fertilizer/natural_fertilizers', mark: 'read' },
  { material: 'feather meal', n: [12, 13], p2o5: [0, 0], k2o: [0, 0], weight: 'C', at: 'earthcrew.com (13-0-0), garantgreens.ca (12-0-0)', mark: 'read' },
  // Dropped: tankage of garbage (3-3-1) is another material.
  { material: 'beef manure with bedding', n: [1.1, 1.1], p2o5: [0.9, 0.9], k2o: [1.3, 1.3], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'beef manure', n: [1.1, 1.1], p2o5: [0.7, 0.7], k2o: [1.2, 1.2], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'dairy manure', n: [0.5, 0.5], p2o5: [0.2, 0.2], k2o: [0.5, 0.5], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242 (with and without bedding)', mark: 'read' },
  { material: 'horse manure with bedding', n: [0.7, 0.7], p2o5: [0.2, 0.2], k2o: [0.7, 0.7], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'poultry manure with litter', n: [2.8, 2.8], p2o5: [2.3, 2.3], k2o: [1.7, 1.7], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'poultry manure', n: [1.7, 1.7], p2o5: [2.4, 2.4], k2o: [1.7, 1.7], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'rabbit manure', n: [2, 2], p2o5: [1.3, 1.3], k2o: [1.2, 1.2], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'sheep manure with bedding', n: [0.7, 0.7], p2o5: [0.5, 0.5], k2o: [1.3, 1.3], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'sheep manure', n: [0.9, 0.9], p2o5: [0.6, 0.6], k2o: [1.3, 1.3], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'hog manure with bedding', n: [0.4, 0.4], p2o5: [0.4, 0.4], k2o: [0.4, 0.4], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'hog manure', n: [0.5, 0.5], p2o5: [0.5, 0.5], k2o: [0.4, 0.4], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'turkey manure with litter', n: [1, 1], p2o5: [0.8, 0.8], k2o: [0.7, 0.7], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  { material: 'turkey manure', n: [1.4, 1.4], p2o5: [1, 1], k2o: [0.9, 0.9], weight: 'A', at: 'ext.colostate.edu/mg/gardennotes/242', mark: 'read' },
  // Printed lb/ton 59-63-40, 27-25-12, 35-42-28, 9-6-11; over 20.
  { material: 'broiler litter', n: [2.95, 2.95], p2o5: [3.15, 3.15], k2o: [2, 2], weight: 'A', at: 'studylib.net/doc/14868904 (Mid-Atlantic handbook 9)', mark: 'read' },
  { material: 'fresh turkey manure', n: [1.35, 1.35], p2o5: [1.25, 1.25], k2o: [0.6, 0.6], weight: 'A', at: 'studylib.net/doc/14868904 (Mid-Atlantic handbook 9)', mark: 'read' },
  { material: 'layer manure', n: [1.75, 1.75], p2o5: [2.1, 2.1], k2o: [1.4, 1.4], weight: 'A', at: 'studylib.net/doc/14868904 (Mid-Atlantic handbook 9)', mark: 'read' },
  { material: 'horse manure', n: [0.45, 0.45], p2o5: [0.3, 0.3], k2o: [0.55, 0.55], weight: 'A', at: 'studylib.net/doc/14868904 (Mid-Atlantic handbook 9)', mark: 'read' },
  // Printed 6, 2.5 and 4.5 kg in 1,000 kg.
  { material: 'horse manure with bedding', n: [0.6, 0.6], p2o5: [0.25, 0.25], k2o: [0.45, 0.45], weight: 'A', at: 'lpelc.org (citing Wheeler and Zajaczkowski 2001)', mark: 'read' },
  // Printed lb/ton, lowest to highest of some 97 samples: N 8-87 (mean 37), P2O5 16-111 (58), K2O 12-63 (35).
  // Dropped: litter of broiler breeders and ducks: not held.
  // Dropped: duck and goose manure: not held.
  // Dropped: dried hog manure: not held, and the copy doubts it.
  // Printed kg N a tonne of fresh weight: cattle 6.0, pig 7.0, sheep 7.0, duck 6.5, horse 5.0 (7.0 in the older print), goat 9.5.
  { material: 'cattle farmyard manure', n: [0.6, 0.6], p2o5: null, k2o: null, weight: 'A', at: 'AHDB (copy at mainsitelive.azurewebsites.net) using-farmyard-manure-fym; adlib.everysite.co.uk DEFRA', mark: 'read' },
  { material: 'pig farmyard manure', n: [0.7, 0.7], p2o5: null, k2o: null, weight: 'A', at: 'AHDB (copy at mainsitelive.azurewebsites.net) using-farmyard-manure-fym; adlib.everysite.co.uk DEFRA', mark: 'read' },
  { material: 'sheep farmyard manure', n: [0.7, 0.7], p2o5: null, k2o: null, weight: 'A', at: 'AHDB (copy at mainsitelive.azurewebsites.net) using-farmyard-manure-fym; adlib.everysite.co.uk DEFRA', mark: 'read' },
  // Dropped: farmyard manure of ducks: not held.
  { material: 'horse farmyard manure', n: [0.5, 0.7], p2o5: null, k2o: null, weight: 'A', at: 'AHDB (copy at mainsitelive.azurewebsites.net) using-farmyard-manure-fym (0.5); adlib.everysite.co.uk DEFRA (0.7)', mark: 'read' },
  { material: 'goat farmyard manure', n: [0.95, 0.95], p2o5: null, k2o: null, weight: 'A', at: 'AHDB (copy at mainsitelive.azurewebsites.net) using-farmyard-manure-fym', mark: 'read' },
  { material: 'straw pack beef manure', n: [0.96, 0.96], p2o5: null, k2o: null, weight: 'A', at: 'ohioline.osu.edu/factsheet/anr-34', mark: 'read' },
  { material: 'leaf and manure compost', n: [0.8, 1.01], p2o5: null, k2o: null, weight: 'A', at: 'ohioline.osu.edu/factsheet/anr-34', mark: 'read' },
  { material: 'poultry manure compost', n: [1.75, 4], p2o5: null, k2o: null, weight: 'A', at: 'ohioline.osu.edu/factsheet/anr-34', mark: 'read' },
  // Dropped: of dry matter (Clemson); ours is as it lies.
] as const;

// Acid or lime equivalent: lb CaCO3 per 100 lb, minus = acid-forming. Low and high over the sources seen or noted.
export const PRINTED_LIME = [
  { material: 'urea', caco3: [-84, -71], at: 'section 1.1 [ACES] -81, [NORG] -84; seen both; forages.oregonstate.edu/Tables/26-2 -71', mark: 'read' },
  { material: 'ammonium nitrate', caco3: [-62, -60], at: 'section 1.1 [ACES] -61, [NORG] -60; seen both; forages.oregonstate.edu/Tables/26-2 -62', mark: 'read' },
  { material: 'ammonium nitrate limestone', caco3: [0, 0], at: 'section 1.1 [ACES]; seen', mark: 'read' },
  { material: 'ammonium sulphate', caco3: [-110, -110], at: 'section 1.1 [ACES][NORG]; seen both and forages.oregonstate.edu/Tables/26-2', mark: 'read' },
  { material: 'calcium nitrate', caco3: [20, 20], at: 'section 1.1 [ACES][NORG]; seen both', mark: 'read' },
  { material: 'potassium nitrate', caco3: [23, 26], at: 'section 1.1 [ACES][NORG] 26; seen both; forages.oregonstate.edu/Tables/26-2 23', mark: 'read' },
  { material: 'sodium nitrate', caco3: [29, 29], at: 'section 1.1 [ACES][NORG]; seen both', mark: 'read' },
  { material: 'monoammonium phosphate', caco3: [-65, -65], at: 'section 1.1 [NORG]; seen', mark: 'read' },
  { material: 'diammonium phosphate', caco3: [-70, -70], at: 'section 1.1 [NORG]; seen', mark: 'read' },
  { material: 'rock phosphate', caco3: [10, 10], at: 'section 1.1 [NORG]; seen', mark: 'read' },
  { material: 'sulphate of potash', caco3: [0, 0], at: 'section 1.1 [NORG]; seen', mark: 'read' },
  { material: 'potassium magnesium sulphate', caco3: [0, 0], at: 'section 1.1 [NORG]; seen', mark: 'read' },
  { material: 'Epsom salt', caco3: [0, 0], at: 'section 1.1 [NORG]; seen', mark: 'read' },
  { material: 'gypsum', caco3: [0, 0], at: 'section 1.1 [NORG]; seen', mark: 'read' },
  // Dropped: sulphur -218: the notes prefer -312 by its formula, and sulphur is planned by the pH.
  { material: 'sulphur-coated urea', caco3: [-118, -118], at: 'section 1.1 [ACES][NORG]; seen both', mark: 'read' },
  { material: 'UAN solution', caco3: [-55, -49], at: 'section 1.1 [ACES]; seen', mark: 'read' },
  { material: 'basic slag', caco3: [70, 70], at: 'section 1.1 [NORG]; seen', mark: 'read' },
  // Dropped: limes 98, 100, 250: a label tells its own; without one the upper edge counts, as the lime table says.
  { material: 'bone meal', caco3: [20, 20], at: 'section 1.2 [NORG]; seen', mark: 'read' },
  { material: 'tankage', caco3: [10, 10], at: 'section 1.2 [NORG]; seen', mark: 'read' },
  { material: 'cottonseed meal', caco3: [-9, -9], at: 'section 1.2 [NORG]; seen', mark: 'read' },
  { material: 'blood meal', caco3: [-22, -22], at: 'section 1.2 [NORG]; seen', mark: 'read' },
  { material: 'fish meal', caco3: [-8, -8], at: 'section 1.2 [NORG] (fish scraps); seen', mark: 'read' },
  // Wood ash: 60 [NORG]; 14-56 measured; 25-60 (Growing Organic Orchard Fruits); half to two thirds of lime (Georgia's Gaskin, quoted); half to three quarters (a 1991 letter).
  { material: 'wood ash', caco3: [14, 75], at: 'section 1.2 [NORG] and a copy; seen norganics.com, what-when-how.com organic orchard 125, sundownfarms.com, sunsite.unc.edu msg00108', mark: 'read' },
] as const;

// Potash and calcium of wood ash as seen elsewhere: elements in percent unless K2O is said.
export const PRINTED_WOOD_ASH = [
  { what: 'K', low: 3, high: null, weight: 'B', at: 'sundownfarms.com, quoting University of Georgia (at least 3 by weight)', mark: 'read' },
  { what: 'K', low: 5, high: 5, weight: 'C', at: 'sunsite.unc.edu msg00108, extension letter of May 1991', mark: 'read' },
  { what: 'P', low: 1, high: 1, weight: 'C', at: 'sunsite.unc.edu msg00108, extension letter of May 1991', mark: 'read' },
  // Dropped: calcium, and the most of a year: the lime table has its own.
  { what: 'K2O', low: 3, high: 12, weight: 'C', at: 'farmextensionmanager.com/wood-ash', mark: 'read' },
  { what: 'P2O5', low: 2, high: 4, weight: 'C', at: 'farmextensionmanager.com/wood-ash', mark: 'read' },
] as const;
