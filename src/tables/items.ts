/** What a soil report can hold: the items, and the units and methods that may stand beside them. */
import type { Element } from '../units/substance.ts';

export const ITEMS = [
  'ph', 'ph-salt', 'buffer-ph', 'organic-matter', 'organic-carbon', 'nitrate-n', 'ammonium-n', 'nitrogen', 'phosphorus', 'potassium', 'calcium', 'magnesium', 'sulphur',
  'sodium', 'boron', 'zinc', 'manganese', 'copper', 'iron', 'aluminium', 'lead', 'cec', 'salts', 'acidity', 'lime-buffer-capacity',
  'lime-requirement', 'carbonate', 'active-carbonate', 'texture', 'sand', 'silt', 'clay', 'sar', 'density', 'saturation-k', 'saturation-ca', 'saturation-mg',
  'saturation-na', 'saturation-h', 'base-saturation', 'advice',
] as const;
export type Item = (typeof ITEMS)[number];

/** The element a content item stands for; those items need a unit before they mean anything. */
export const ELEMENT_OF: Partial<Record<Item, Element>> = {
  'nitrate-n': 'N', 'ammonium-n': 'N', nitrogen: 'N', phosphorus: 'P', potassium: 'K', calcium: 'Ca', magnesium: 'Mg', sulphur: 'S', sodium: 'Na', boron: 'B',
  zinc: 'Zn', manganese: 'Mn', copper: 'Cu', iron: 'Fe', aluminium: 'Al', lead: 'Pb',
};

/** Under a heading of saturations these content items mean a share of the exchange sites. */
export const SATURATION_OF: Partial<Record<Item, Item>> = {
  potassium: 'saturation-k', calcium: 'saturation-ca', magnesium: 'saturation-mg', sodium: 'saturation-na',
};

export type ReportUnit =
  | 'ppm' | 'mg/kg' | 'mg/L' | 'mg/100g' | 'lb/acre' | 'kg/ha' | 'meq/100g' | 'cmol/kg' | 'mmolc/dm3' | 'cmol/dm3' | '%' | 'g/kg' | 'mmol/kg' | 'g/dm3'
  | 'dS/m' | 'mS/cm' | 'mmho/cm' | 'uS/cm' | 'mS/m' | 'pH' | 'index' | 'MAF' | 'g/cm3'
  | 'lb/100sqft' | 'lb/1000sqft' | 'ton/acre' | 't/ha' | 'dt/ha' | 'g/m2'
  | 'lb ENM/acre' | 'lb ENP/acre' | 't CaO/ha' | 'dt CaO/ha' | 'kg CaO/ha';

/** Rates of lime that count something else than the carbonate. */
export const COUNTED_RATES: readonly ReportUnit[] = ['lb ENM/acre', 'lb ENP/acre', 't CaO/ha', 'dt CaO/ha', 'kg CaO/ha'];

/** Units of advice: an amount to bring out, never a content of the soil. */
export const RATES: readonly ReportUnit[] = ['lb/100sqft', 'lb/1000sqft', 'ton/acre', 't/ha', 'dt/ha', 'g/m2', ...COUNTED_RATES];

export const METHODS = [
  'mehlich-1', 'mehlich-3', 'mehlich-3-colorimetric', 'olsen', 'bray-1', 'bray-2', 'morgan', 'modified-morgan', 'ammonium-acetate', 'ammonium-nitrate', 'cal', 'dl', 'colwell',
  'ab-dtpa', 'resin', 'al', 'egner-riehm', 'joret-hebert', 'dyer', 'cat', 'dtpa', 'edta', 'hot-water', 'water', 'cacl2', 'kcl', 'paste', '1:1', '1:2', '1:5', 'smp', 'sikora', 'moore-sikora', 'mehlich-buffer',
  'modified-mehlich', 'adams-evans', 'woodruff', 'loi', 'walkley-black', 'dry-combustion', 'unknown',
] as const;
export type Method = (typeof METHODS)[number];

/** Buffers: a pH read in one of them is a buffer pH, never that of the soil. */
export const BUFFERS: readonly Method[] = ['smp', 'sikora', 'moore-sikora', 'mehlich-buffer', 'modified-mehlich', 'adams-evans', 'woodruff'];

const CATIONS = ['potassium', 'calcium', 'magnesium', 'sodium'] as const;
const TRACES = ['zinc', 'manganese', 'copper', 'iron'] as const;
const UNIVERSAL = ['phosphorus', ...CATIONS, 'sulphur', 'boron', ...TRACES, 'aluminium'] as const;
/** What an extractant stands for where a report names it for all its values; practice. For others it must be named beside them. */
export const EXTRACTS: Partial<Record<Method, readonly Item[]>> = {
  'mehlich-1': UNIVERSAL, 'mehlich-3': UNIVERSAL, 'mehlich-3-colorimetric': ['phosphorus'], morgan: UNIVERSAL, 'modified-morgan': UNIVERSAL, 'ab-dtpa': ['phosphorus', 'potassium', ...TRACES],
  olsen: ['phosphorus'], 'bray-1': ['phosphorus'], 'bray-2': ['phosphorus'], 'joret-hebert': ['phosphorus'], dyer: ['phosphorus'], resin: ['phosphorus'],
  colwell: ['phosphorus', 'potassium'], cal: ['phosphorus', 'potassium'], dl: ['phosphorus', 'potassium'], al: ['phosphorus', 'potassium'], 'egner-riehm': ['phosphorus', 'potassium'],
  'ammonium-acetate': CATIONS, 'ammonium-nitrate': CATIONS, dtpa: TRACES, edta: TRACES, 'hot-water': ['boron'], loi: ['organic-matter'], 'walkley-black': ['organic-matter', 'organic-carbon'],
};
/** Items that a report names together. */
export const CATION_ITEMS: readonly Item[] = CATIONS;
export const TRACE_ITEMS: readonly Item[] = TRACES;
