/**
 * What a soil report can hold: the items, the units and methods that may follow, and the names in print.
 * Names are matched as whole words, the longest first; symbols keep their case, names do not.
 * The names were read in the reports and lab pages named in the reading notes of each lab, or are common practice.
 */
import type { Element, Oxide } from '../units/substance.ts';

export const ITEMS = [
  'ph', 'ph-salt', 'buffer-ph', 'organic-matter', 'nitrate-n', 'nitrogen', 'phosphorus', 'potassium', 'calcium', 'magnesium', 'sulphur',
  'sodium', 'boron', 'zinc', 'manganese', 'copper', 'iron', 'aluminium', 'lead', 'cec', 'salts', 'acidity', 'lime-buffer-capacity',
  'lime-requirement', 'carbonate', 'texture', 'sand', 'silt', 'clay', 'sar', 'density', 'saturation-k', 'saturation-ca', 'saturation-mg',
  'saturation-na', 'saturation-h', 'advice',
] as const;
export type Item = (typeof ITEMS)[number];

/** The element a content item stands for; those items need a unit before they mean anything. */
export const ELEMENT_OF: Partial<Record<Item, Element>> = {
  'nitrate-n': 'N', nitrogen: 'N', phosphorus: 'P', potassium: 'K', calcium: 'Ca', magnesium: 'Mg', sulphur: 'S', sodium: 'Na', boron: 'B',
  zinc: 'Zn', manganese: 'Mn', copper: 'Cu', iron: 'Fe', aluminium: 'Al', lead: 'Pb',
};

/** Under a heading of saturations these content items mean a share of the exchange sites. */
export const SATURATION_OF: Partial<Record<Item, Item>> = {
  potassium: 'saturation-k', calcium: 'saturation-ca', magnesium: 'saturation-mg', sodium: 'saturation-na',
};

export type ReportUnit =
  | 'ppm' | 'mg/kg' | 'mg/L' | 'mg/100g' | 'lb/acre' | 'kg/ha' | 'meq/100g' | 'cmol/kg' | 'mmolc/dm3' | '%' | 'g/kg'
  | 'dS/m' | 'mS/cm' | 'mmho/cm' | 'uS/cm' | 'mS/m' | 'pH' | 'index' | 'g/cm3'
  | 'lb/100sqft' | 'lb/1000sqft' | 'ton/acre' | 't/ha' | 'g/m2';

/** Patterns are tried in order where one of their first letters starts a word; each is linear. */
export const UNIT_PATTERNS: readonly (readonly [unit: ReportUnit, starts: string, pattern: string])[] = [
  ['lb/100sqft', 'l', 'lbs?\\.?,? ?(?:/|per) ?100 ?(?:sq\\.? ?(?:ft|feet)\\.?|square feet|ft2)'],
  ['lb/1000sqft', 'l', '(?:lbs?\\.?,? ?(?:/|per) ?1,?000 ?(?:sq\\.? ?(?:ft|feet)\\.?|square feet|ft2)|lbs?/m\\b)'],
  ['lb/acre', 'lp', '(?:lbs?\\.?|pounds?) ?(?:/|per|an?) ?(?:acre|ac\\b|a\\b)\\.?'],
  ['ton/acre', 't', 'tons? ?(?:/|per|an) ?(?:acre|ac\\b|a\\b)'],
  ['t/ha', 't', 't(?:onnes?)? ?(?:/|per) ?ha\\b'],
  ['kg/ha', 'k', 'kg ?(?:/|per) ?ha\\b'],
  ['ppm', 'p', '(?:parts per million(?: ?\\(ppm\\))?|ppm\\b(?: ?\\(parts per million\\))?|p\\.p\\.m\\.)'],
  ['mg/100g', 'm', 'mg ?(?:p2o5|k2o|mgo|cao|p|k|mg|ca)? ?(?:/|per|in|je|pro|na|por|par) ?100 ?g(?:r|ramm?s?)?\\b(?: (?:boden|soil|gleby))?\\.?'],
  ['mg/kg', 'mu', '(?:mg ?(?:/|per) ?kg\\b|ug ?/ ?g\\b)'],
  ['mg/L', 'm', '(?:mg ?(?:/|per) ?(?:l|litre|liter)\\b|mg ?/ ?dm3)'],
  ['mmolc/dm3', 'm', 'mmol ?c? */ ?dm3'],
  ['meq/100g', 'm', '(?:m\\.?e\\.?q?\\.?(?: ?%)? ?(?:/|per) ?100 ?(?:g|cm3|ml)?\\b|me%|meq%)'],
  ['cmol/kg', 'c', 'cmol ?c? *(?:/ ?(?:kg|dm3)|kg-1)'],
  ['g/kg', 'g', 'g ?(?:/|per) ?kg\\b'],
  ['g/m2', 'g', 'g ?(?:/|per) ?m2\\b'],
  ['g/cm3', 'g', 'g ?/ ?(?:cm3|cc|ml)\\b'],
  ['dS/m', 'd', 'ds ?(?:/|per) ?m\\b'],
  ['mS/cm', 'm', 'ms ?(?:/|per) ?cm\\b'],
  ['mmho/cm', 'm', 'mmhos? ?(?:/|per) ?cm\\b'],
  ['uS/cm', 'u', 'us ?(?:/|per) ?cm\\b'],
  ['mS/m', 'm', 'ms ?(?:/|per) ?m\\b'],
  ['%', '%p', '(?:%|percent\\b|pct\\b|prozent\\b)'],
];

/** Factors to mg/kg of what was printed; lb/acre is a lab's own doubling of ppm and is undone by it. */
export const TO_MG_PER_KG: Partial<Record<ReportUnit, number>> = {
  ppm: 1, 'mg/kg': 1, 'mg/100g': 10, 'lb/acre': 0.5, 'g/kg': 1000,
};

export const METHODS = [
  'mehlich-1', 'mehlich-3', 'olsen', 'bray-1', 'bray-2', 'morgan', 'modified-morgan', 'ammonium-acetate', 'ammonium-nitrate', 'cal', 'dl', 'colwell',
  'ab-dtpa', 'resin', 'dtpa', 'hot-water', 'water', 'cacl2', 'kcl', 'paste', '1:1', '1:2', '1:5', 'smp', 'sikora', 'mehlich-buffer',
  'adams-evans', 'woodruff', 'loi', 'walkley-black', 'unknown',
] as const;
export type Method = (typeof METHODS)[number];

/** "CAL" and "DL" are methods where a value, its unit, its class or an end follows; "cal" before a rate is Spanish lime. */
const GERMAN_METHOD = '(?:[ -]?(?:methode|method|extrakt|extract|auszug|verfahren)\\b|\\b(?=[ ]{0,3}(?:[)\\],;/|]|$|mg\\b)|[ :=|-]{1,4}(?:sehr|niedrig|gering|mittel|hoch|optimal|p2o5|k2o|[pk]\\b|[<>]?[ ]?\\d[\\d.,]{0,9}(?![ ]?(?:t|kg|tons?)[ ]?(?:/|por))(?![\\d.,]))))';

export const METHOD_PATTERNS: readonly (readonly [method: Method, starts: string, pattern: string])[] = [
  ['mehlich-buffer', 'm', 'mehlich buffer'],
  ['mehlich-3', 'm', '(?:mehlich[ -]?(?:3|iii)\\b|m-?3\\b|m-iii\\b)(?![.,]\\d)'],
  ['mehlich-1', 'm', '(?:mehlich[ -]?(?:1|i)\\b|m-?1\\b)(?![.,]\\d)'],
  ['modified-morgan', 'm', '(?:modified|mod\\.?) ?morgan(?:\'s)?'],
  ['morgan', 'm', 'morgan(?:[\'’]s)?\\b'],
  ['olsen', 'onb', '(?:olsen(?:[ -]p\\b)?|nahco3(?:[ -]p\\b)?|bicarb(?:onate)?\\b)'],
  ['bray-2', 'bs', '(?:bray[ -]?(?:p-?)?(?:2|ii)\\b(?![.,]\\d)|strong bray\\b)'],
  ['bray-1', 'bw', '(?:bray[ -]?(?:p-?)?(?:1|i)\\b(?![.,]\\d)|(?:weak )?bray\\b)'],
  ['colwell', 'c', 'colwell\\b'],
  ['ab-dtpa', 'a', 'ab-dtpa\\b'],
  ['dtpa', 'd', 'dtpa\\b'],
  ['resin', 'r', '(?:resin|resina)\\b'],
  ['ammonium-acetate', 'an', '(?:ammonium acetate|acetato amonico|nh4oac|amm\\.? acetate)'],
  ['ammonium-nitrate', 'an', '(?:ammonium nitrate|nh4no3)'],
  ['cal', 'c', `(?:cal${GERMAN_METHOD}|calcium[ -]acetat(?:e)?[ -]lactat(?:e)?(?:[ -]?methode)?)`],
  ['dl', 'd', `dl${GERMAN_METHOD}`],
  ['hot-water', 'h', '(?:hot[ -]water|hws\\b)'],
  ['paste', 'spe', '(?:saturated paste|saturation extract|paste\\b|ece\\b)'],
  ['cacl2', 'c', 'cacl2\\b'],
  ['kcl', 'k', 'kcl\\b'],
  ['smp', 's', 'smp\\b'],
  ['sikora', 's', 'sikora\\b'],
  ['adams-evans', 'a', 'adams[ -]evans'],
  ['woodruff', 'w', 'woodruff'],
  ['loi', 'l', '(?:loi\\b|loss[ -]on[ -]ignition)'],
  ['walkley-black', 'w', 'walkley[ -]black'],
  ['water', 'hwa', '(?:h2o\\b|water\\b|wasser\\b|agua\\b)'],
  ['1:1', '1', '1:1(?![\\d.])'],
  ['1:2', '1', '1:2(?![\\d])(?:\\.5)?'],
  ['1:5', '1', '1:5(?![\\d.])'],
];

/** A printed name: the item, and where the name itself says so the form, the method or the unit. */
export type Name = { readonly name: string; readonly item: Item | 'ratio' | 'lime'; readonly form?: Oxide; readonly method?: Method; readonly exact?: true };

const plain = (item: Name['item'], ...names: string[]): Name[] => names.map((name) => ({ name, item }));
/** Symbols keep their case: "K" is potassium, "k" is not. */
const symbol = (item: Name['item'], ...names: string[]): Name[] => names.map((name) => ({ name, item, exact: true }));
const oxide = (item: Item, form: Oxide, ...names: string[]): Name[] => names.map((name) => ({ name, item, form }));

export const NAMES: readonly Name[] = [
  ...plain('ph', 'soil ph', 'ph-wert', 'ph wert', 'water ph', 'ph value', 'soil reaction', 'phw', 'ph'),
  ...plain('ph-salt', 'soil ph (salt)', 'ph (salt)', 'ph in salt', 'salt ph', 'phs', 'phca'),
  ...plain('buffer-ph', 'buffer ph', 'buffer index', 'bph', 'lime test index', 'lime index', 'lti', 'smp ph', 'ph buffer', 'buffer-ph', 'smp buffer', 'sikora buffer'),
  { name: 'smp buffer ph', item: 'buffer-ph', method: 'smp' }, { name: 'sikora buffer ph', item: 'buffer-ph', method: 'sikora' }, { name: 'sikora ph', item: 'buffer-ph', method: 'sikora' }, { name: 'mehlich buffer ph', item: 'buffer-ph', method: 'mehlich-buffer' },
  { name: 'adams-evans buffer ph', item: 'buffer-ph', method: 'adams-evans' }, { name: 'woodruff buffer ph', item: 'buffer-ph', method: 'woodruff' }, { name: 'ph smp', item: 'buffer-ph', method: 'smp' },
  ...plain('organic-matter', 'soil organic matter', 'organic matter', 'organic material', 'organic content', 'humuszustand', 'humusgehalt', 'humus', 'som', 'materia organica', 'matière organique'),
  ...symbol('organic-matter', 'OM', 'O.M.', 'MO'),
  ...plain('nitrate-n', 'nitrate nitrogen', 'nitrate-n', 'nitrate n', 'no3-n', 'nitrate'),
  { name: 'NO3', item: 'nitrate-n', form: 'NO3', exact: true },
  ...plain('nitrogen', 'total nitrogen', 'nitrogen', 'stickstoff', 'nitrógeno'),
  ...symbol('nitrogen', 'N'),
  ...plain('phosphorus', 'available phosphorus', 'phosphorus', 'phosphurus', 'phosphate', 'phosphor', 'phosphat', 'phos', 'fósforo', 'fosforo', 'phosphore'),
  ...symbol('phosphorus', 'P'),
  { name: 'P1', item: 'phosphorus', method: 'bray-1', exact: true }, { name: 'P2', item: 'phosphorus', method: 'bray-2', exact: true },
  ...oxide('phosphorus', 'P2O5', 'p2o5', 'phosphorus pentoxide', 'phosphorpentoxid'),
  ...plain('potassium', 'exchangeable potassium', 'available potassium', 'potassium', 'potash', 'kalium', 'kali', 'potasio'),
  ...symbol('potassium', 'K+', 'K'),
  ...oxide('potassium', 'K2O', 'k2o', 'k20', 'kaliumoxid'),
  ...plain('calcium', 'exchangeable calcium', 'calcium', 'kalzium', 'calcio'), ...symbol('calcium', 'Ca++', 'Ca'), ...oxide('calcium', 'CaO', 'cao'),
  ...plain('magnesium', 'exchangeable magnesium', 'magnesium', 'magnesio'), ...symbol('magnesium', 'Mg++', 'Mg'), ...oxide('magnesium', 'MgO', 'mgo'),
  ...plain('sulphur', 'sulphur', 'sulfur', 'schwefel', 'sulphate-s', 'sulfate-s', 'so4-s', 'azufre'), ...symbol('sulphur', 'S'),
  ...plain('sodium', 'sodium', 'natrium', 'sodio'), ...symbol('sodium', 'Na+', 'Na'),
  ...plain('boron', 'boron', 'bor', 'boro'), ...symbol('boron', 'B'),
  ...plain('zinc', 'zinc', 'zink', 'cinc'), ...symbol('zinc', 'Zn'),
  ...plain('manganese', 'manganese', 'mangan', 'manganeso'), ...symbol('manganese', 'Mn'),
  ...plain('copper', 'copper', 'kupfer', 'cobre'), ...symbol('copper', 'Cu'),
  ...plain('iron', 'iron', 'eisen', 'hierro'), ...symbol('iron', 'Fe'),
  ...plain('aluminium', 'aluminium', 'aluminum'), ...symbol('aluminium', 'Al'),
  ...plain('lead', 'lead'), ...symbol('lead', 'Pb'),
  ...plain('cec', 'cic', 'cation exchange capacity', 'cation exch. capacity', 'exchange capacity', 'c.e.c.', 'cec', 'ecec', 'est-cec'),
  ...plain('salts', 'electrical conductivity or salts', 'electrical conductivity', 'soluble salts', 'conductivity', 'conductividad electrica', 'total salts', 'salzgehalt'),
  { name: 'ece', item: 'salts', method: 'paste' }, ...symbol('salts', 'EC'),
  ...plain('acidity', 'exchangeable acidity', 'exch. acidity', 'exchange acidity'),
  ...plain('lime-buffer-capacity', 'lime buffer capacity', 'lbc'),
  ...plain('lime-requirement', 'lime requirement', 'lime need', 'lime recommendation', 'limestone'),
  ...plain('carbonate', 'free lime', 'carbonates', 'carbonate', 'kalkgehalt'),
  ...plain('texture', 'texture estimate', 'estimated texture', 'soil texture', 'texture class', 'texture', 'soil type', 'bodenart', 'textura'),
  ...plain('sand', 'sand'), ...plain('silt', 'silt'), ...plain('clay', 'clay'),
  ...plain('sar', 'sodium absorption ratio', 'sodium adsorption ratio'), ...symbol('sar', 'SAR'),
  ...plain('density', 'density', 'scoop density', 'bulk density', 'volume weight'),
  ...plain('saturation-k', 'k-saturation', 'k saturation', 'potassium base saturation', 'potassium saturation'),
  ...plain('saturation-ca', 'ca-saturation', 'ca saturation', 'calcium base saturation', 'calcium saturation'),
  ...plain('saturation-mg', 'mg-saturation', 'mg saturation', 'magnesium base saturation', 'magnesium saturation'),
  ...plain('saturation-na', 'na-saturation', 'na saturation', 'sodium base saturation', 'sodium saturation', 'exchangeable sodium percentage', 'exchangeable sodium', 'esp'),
  ...plain('saturation-h', 'hydrogen', 'h-saturation', 'h saturation', 'hydrogen saturation'),
  ...plain('ratio', 'ca/mg-ratio', 'ca/mg ratio', 'k/mg-ratio', 'k/mg ratio', 'ca:mg ratio', 'k:mg ratio', 'mg/k ratio', 'ca:mg', 'k:mg', 'ca/mg', 'k/mg'),
  /** "Lime" alone is a lime need where a rate follows, and free carbonate where a word does. */
  ...plain('lime', 'lime', 'kalk', 'chaux', 'cal agrícola'),
  ...plain('ph', 'kalk (bodenreaktion)', 'bodenreaktion'),
];

/** Rating words, the longest tried first. */
export const RATING_WORDS: readonly (readonly [string, 'very-low' | 'low' | 'medium' | 'optimum' | 'high' | 'very-high'])[] = [
  ['extremely low', 'very-low'], ['very low', 'very-low'], ['very deficient', 'very-low'], ['depleted', 'very-low'], ['sehr niedrig', 'very-low'], ['sehr gering', 'very-low'], ['muy bajo', 'very-low'],
  ['moderately low', 'low'], ['below optimum', 'low'], ['below optimal', 'low'], ['below normal', 'low'], ['a bit low', 'low'], ['low', 'low'], ['deficient', 'low'], ['below', 'low'], ['niedrig', 'low'], ['gering', 'low'], ['schlecht', 'low'], ['poor', 'low'], ['bajo', 'low'],
  ['medium-low', 'medium'], ['medium low', 'medium'], ['medium-high', 'medium'], ['medium high', 'medium'], ['medium', 'medium'], ['moderate', 'medium'], ['average', 'medium'], ['marginal', 'medium'], ['mittel', 'medium'], ['medio', 'medium'],
  ['optimum range', 'optimum'], ['optimum', 'optimum'], ['optimal', 'optimum'], ['sufficient', 'optimum'], ['adequate', 'optimum'], ['satisfactory', 'optimum'], ['normal', 'optimum'], ['good', 'optimum'], ['ausreichend', 'optimum'], ['anzustreben', 'optimum'], ['óptimo', 'optimum'], ['optimo', 'optimum'],
  ['very high', 'very-high'], ['excessive', 'very-high'], ['excess', 'very-high'], ['extremely high', 'very-high'], ['sehr hoch', 'very-high'], ['muy alto', 'very-high'],
  ['above optimum', 'high'], ['above optimal', 'high'], ['above normal', 'high'], ['high', 'high'], ['above', 'high'], ['hoch', 'high'], ['surplus', 'high'], ['alto', 'high'],
];
