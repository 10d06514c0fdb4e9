/**
 * The names of items as printed.
 * Names are matched as whole words, the longest first; symbols keep their case, names do not.
 * They were read in the reports and lab pages named in the reading notes of each lab, or are common practice.
 */
import type { Oxide } from '../units/substance.ts';
import type { Item, Method } from './items.ts';

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
