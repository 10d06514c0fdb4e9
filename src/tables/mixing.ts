/** What must not be mixed or stored together, and why. The first row that fits two bags counts. */
import type { Cite } from '../reason/figure.ts';
import type { NoticeId } from '../words/words.ts';

export type MaterialClass = keyof typeof MATERIAL_CLASSES | 'lime' | 'any';
/** `fresh`: mixed only on the day it is spread. `solution`: dry it may, in one water not. */
export type MixingRule = 'never' | 'fresh' | 'solution';

/** By the ids of materials. `lime` is any lime or ash in a bag, `any` whatever feeds. */
export const MATERIAL_CLASSES = {
  urea: ['urea'],
  'ammonium nitrate': ['ammonium-nitrate', 'ammonium-sulphate-nitrate'],
  'calcium ammonium nitrate': ['calcium-ammonium-nitrate'],
  'calcium nitrate': ['calcium-nitrate'],
  nitrate: ['ammonium-nitrate', 'potassium-nitrate', 'sodium-nitrate', 'magnesium-nitrate'],
  'nitrate of soda or potash': ['potassium-nitrate', 'sodium-nitrate', 'ammonium-sulphate-nitrate'],
  ammonium: ['ammonium-sulphate', 'ammonium-nitrate', 'ammonium-sulphate-nitrate', 'ammonium-chloride', 'map', 'dap', 'ammonium-polyphosphate', 'ammonium-thiosulphate'],
  'ammonium phosphate': ['map', 'dap'],
  superphosphate: ['superphosphate', 'triple-superphosphate'],
  'ammonium sulphate': ['ammonium-sulphate'],
  magnesium: ['magnesium-nitrate', 'magnesium-sulphate', 'kieserite'],
  'nitrate of potash': ['potassium-nitrate'],
  phosphate: ['map', 'dap', 'superphosphate', 'triple-superphosphate', 'monopotassium-phosphate', 'urea-phosphate', 'ammonium-polyphosphate'],
  'rock phosphate': ['rock-phosphate'],
  potash: ['potassium-chloride', 'potassium-sulphate'],
  'muriate of potash': ['potassium-chloride'],
  sulphate: ['ammonium-sulphate', 'potassium-sulphate', 'potassium-magnesium-sulphate', 'patentkali', 'magnesium-sulphate', 'kieserite', 'gypsum'],
  cyanamide: ['calcium-cyanamide'],
  manure: ['cow-manure', 'horse-manure', 'sheep-manure', 'goat-manure', 'pig-manure', 'hen-manure', 'broiler-litter', 'turkey-manure', 'rabbit-manure', 'alpaca-manure', 'hen-manure-dried'],
  dust: ['blood-meal', 'bone-meal', 'feather-meal', 'fish-meal', 'cottonseed-meal', 'soybean-meal', 'alfalfa-meal', 'kelp-meal', 'canola-meal', 'corn-gluten-meal', 'hoof-and-horn'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type Mixing = { readonly a: MaterialClass; readonly b: MaterialClass; readonly rule: MixingRule; readonly why: NoticeId; readonly cite: Cite };

const ipni: Cite = { source: 'ipni-seap-3024', at: 'fertilizer mixing', mark: 'read' };
const haifa: Cite = { source: 'haifa-compatibility', at: 'in solution', mark: 'read' };
const notes: Cite = { source: 'mixing-notes', at: 'incompatible fertilisers', mark: 'read' };
const chemistry: Cite = { source: 'medlar', at: 'mixing-chemistry', mark: 'memory' };

export const MIXING: readonly Mixing[] = [
  { a: 'urea', b: 'ammonium nitrate', rule: 'never', why: 'mix-slush', cite: chemistry },
  { a: 'urea', b: 'calcium ammonium nitrate', rule: 'never', why: 'mix-slush', cite: ipni },
  { a: 'urea', b: 'superphosphate', rule: 'never', why: 'mix-slush', cite: ipni },
  // Printed as never; those who blend in bulk do it, so the day it is spread is let pass.
  { a: 'urea', b: 'muriate of potash', rule: 'fresh', why: 'mix-cakes', cite: ipni },
  { a: 'ammonium', b: 'lime', rule: 'never', why: 'mix-ammonia', cite: notes },
  { a: 'ammonium', b: 'cyanamide', rule: 'never', why: 'mix-ammonia', cite: notes },
  { a: 'calcium ammonium nitrate', b: 'lime', rule: 'never', why: 'mix-ammonia', cite: ipni },
  { a: 'manure', b: 'lime', rule: 'never', why: 'mix-ammonia', cite: notes },
  { a: 'urea', b: 'lime', rule: 'never', why: 'mix-ammonia', cite: chemistry },
  { a: 'superphosphate', b: 'lime', rule: 'never', why: 'mix-locks-phosphate', cite: ipni },
  { a: 'superphosphate', b: 'cyanamide', rule: 'never', why: 'mix-locks-phosphate', cite: notes },
  { a: 'superphosphate', b: 'rock phosphate', rule: 'never', why: 'mix-locks-phosphate', cite: ipni },
  { a: 'ammonium phosphate', b: 'rock phosphate', rule: 'never', why: 'mix-locks-phosphate', cite: ipni },
  // The page also allows them fresh; the stricter of its two sentences counts.
  { a: 'superphosphate', b: 'calcium ammonium nitrate', rule: 'never', why: 'mix-locks-phosphate', cite: ipni },
  { a: 'ammonium phosphate', b: 'calcium ammonium nitrate', rule: 'never', why: 'mix-locks-phosphate', cite: ipni },
  { a: 'superphosphate', b: 'calcium nitrate', rule: 'never', why: 'mix-locks-phosphate', cite: { source: 'alabama-anr174', at: 'calcium nitrate', mark: 'read' } },
  { a: 'superphosphate', b: 'nitrate of soda or potash', rule: 'never', why: 'mix-spoils', cite: notes },
  { a: 'nitrate', b: 'dust', rule: 'never', why: 'mix-fire', cite: chemistry },
  { a: 'potash', b: 'calcium ammonium nitrate', rule: 'fresh', why: 'mix-cakes', cite: ipni },
  { a: 'calcium nitrate', b: 'sulphate', rule: 'solution', why: 'mix-precipitates', cite: notes },
  { a: 'calcium nitrate', b: 'phosphate', rule: 'solution', why: 'mix-precipitates', cite: notes },
  { a: 'magnesium', b: 'phosphate', rule: 'solution', why: 'mix-precipitates', cite: haifa },
  { a: 'ammonium sulphate', b: 'muriate of potash', rule: 'solution', why: 'mix-precipitates', cite: haifa },
  { a: 'ammonium sulphate', b: 'nitrate of potash', rule: 'solution', why: 'mix-precipitates', cite: haifa },
  { a: 'urea', b: 'any', rule: 'fresh', why: 'mix-cakes', cite: ipni },
];

export type Hazard = 'dogs' | 'oxidiser' | 'dust' | 'caustic' | 'stock' | 'fresh-manure';
export const HAZARDS: Readonly<Record<Hazard, { readonly why: NoticeId; readonly materials: readonly string[]; readonly cite: Cite }>> = {
  dogs: { why: 'hazard-dogs', materials: [], cite: { source: 'pet-poison-helpline', at: 'bone meal, blood meal', mark: 'read' } },
  oxidiser: { why: 'hazard-oxidiser', materials: [], cite: chemistry },
  dust: { why: 'hazard-dust', materials: ['bone-meal', 'blood-meal', 'rock-phosphate', 'sulphur', 'calcium-cyanamide', 'hen-manure-dried'], cite: chemistry },
  caustic: { why: 'hazard-caustic', materials: ['wood-ash', 'calcium-cyanamide'], cite: chemistry },
  stock: { why: 'hazard-stock', materials: ['urea', 'ammonium-nitrate', 'potassium-nitrate', 'sodium-nitrate', 'castor-meal'], cite: chemistry },
  'fresh-manure': { why: 'hazard-fresh-manure', materials: [], cite: { source: 'usda-nop-205-203', at: '(c)(1)', mark: 'read' } },
};
