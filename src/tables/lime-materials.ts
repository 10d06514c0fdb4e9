/**
 * Limes as they are sold: how strong each is, what each scheme of fineness makes of its sieves, what a label's value is counted in,
 * and where the soil wants magnesium with it.
 */
import type { Cite } from '../reason/figure.ts';
import type { Unit } from '../units/units.ts';

/** `cce` is the calcium carbonate equivalent, % of pure limestone, used where the label gives none: of a span its upper edge, which makes the lesser dose. */
export type LimeMaterial = {
  readonly id: string;
  readonly names: readonly string[];
  readonly cce: number;
  /** The least it is told to have. */
  readonly least?: number;
  readonly burns?: true;
  readonly dolomitic?: true;
  /** K2O that it brings. */
  readonly potash?: { readonly percent: number; readonly cite: Cite };
  /** The most of the product in a year, and the soil's pH above which it stays away. */
  readonly most?: { readonly value: number; readonly unit: Unit; readonly cite: Cite };
  readonly mostPh?: { readonly ph: number; readonly cite: Cite };
  readonly cite: Cite;
};

const pure: Cite = { source: 'nebraska-lime', at: 'neutralizing value of the pure material', mark: 'read' };
const tables: Cite = { source: 'medlar', at: 'lime-by-products', mark: 'memory' };

/** The first that a label names; what burns comes first, whatever else it is called. */
export const LIME_MATERIALS: readonly LimeMaterial[] = [
  { id: 'hydrated-lime', names: ['hydrated', 'slaked lime', 'builder\'s lime', 'calcium hydroxide', 'löschkalk', 'kalkhydrat', 'cal hidratada', 'cal apagada', 'cal muerta', 'chaux éteinte', 'chaux hydratée', 'calce spenta', 'calce idrata'], cce: 135, burns: true, cite: pure },
  { id: 'quicklime', names: ['quicklime', 'quick lime', 'burnt lime', 'burned lime', 'calcium oxide', 'branntkalk', 'cal viva', 'óxido de calcio', 'chaux vive', 'calce viva', 'cal virgem'], cce: 178, burns: true, cite: pure },
  { id: 'dolomitic-lime', names: ['dolomitic', 'dolomite', 'magnesium lime', 'dolomitkalk', 'magnesiumkalk', 'dolomítico', 'dolomítica', 'dolomita', 'dolomie', 'dolomitique', 'dolomitico', 'dolomitica'], cce: 108.6, dolomitic: true, cite: { source: 'definition', at: 'atomic weights', mark: 'derived' } },
  { id: 'magnesian-limestone', names: ['magnesian'], cce: 98, dolomitic: true, cite: { source: 'uk-lime-slides', at: 'neutralising value of 50 to 55 as CaO, over 15 % MgO', mark: 'derived' } },
  {
    id: 'wood-ash', names: ['wood ash', 'wood ashes', 'woodash', 'fireplace ash', 'holzasche', 'ceniza de madera', 'cenizas de madera', 'ceniza de leña', 'cenizas de leña', 'cendre de bois', 'cendres de bois', 'cenere di legna', 'cinza de madeira'], cce: 45, least: 14, cite: tables, potash: { percent: 6, cite: { source: 'north-carolina-natural', at: 'wood ash, dry', mark: 'read' } },
    most: { value: 5, unit: 'lb/100 sq ft', cite: { source: 'mini-farming-ash', at: 'wood ash, a year', mark: 'read' } }, mostPh: { ph: 6.5, cite: tables },
  },
  { id: 'oyster-shell', names: ['oyster shell', 'oyster shells', 'oystershell'], cce: 95, least: 85, cite: tables },
  { id: 'eggshell', names: ['eggshell', 'eggshells', 'egg shell', 'egg shells'], cce: 95, least: 90, cite: tables },
  { id: 'marl', names: ['marl'], cce: 90, least: 50, cite: tables },
  { id: 'sugar-beet-lime', names: ['beet lime', 'sugar lime', 'sugar factory lime', 'carbonation lime', 'carbokalk'], cce: 90, least: 60, cite: tables },
  { id: 'slag', names: ['slag', 'hüttenkalk', 'konverterkalk'], cce: 70, least: 60, cite: tables },
  { id: 'ground-limestone', names: ['limestone', 'lime', 'aglime', 'chalk', 'calcium carbonate', 'kalk', 'kohlensaurer kalk', 'gartenkalk', 'rasenkalk', 'calcário', 'calcario', 'caliza', 'cal agrícola', 'cal agricola', 'carbonato cálcico', 'carbonato de calcio', 'chaux', 'calcaire', 'carbonate de calcium', 'calce', 'carbonato di calcio', 'carbonato de cálcio'], cce: 100, cite: pure },
];
/** Salts of calcium and magnesium that no acid takes: they move no pH. */
export const NEUTRAL_SALTS = {
  names: ['gypsum', 'land plaster', 'calcium sulphate', 'calcium sulfate', 'epsom', 'magnesium sulphate', 'magnesium sulfate', 'kieserite', 'gips', 'bittersalz', 'yeso', 'gypse', 'gesso', 'solfato di magnesio'],
  cite: { source: 'penn-facts3', at: 'gypsum and Epsom salts are no lime', mark: 'read' } satisfies Cite,
} as const;

/** No carbonate is stronger than pure dolomite; a lime above that is hydrated or burnt, whatever it is called. What is sold lies between the edges: wood ash measured 14 to 56, quicklime 178. */
export const STRENGTHS = { least: 10, burns: 115, most: 180, unit: '%', cite: { source: 'medlar', at: 'lime-strengths', mark: 'judgement' } satisfies Cite } as const;

/**
 * What a neutralising value is percent of. As calcium oxide, of which pure limestone is 56, in Europe; as calcium carbonate elsewhere.
 * The total value (TNV) is one of carbonate in Ireland, where ground limestone must have 90.
 */
export const CAO_IN_CARBONATE = { value: 56, unit: '%', cite: { source: 'nebraska-lime', at: 'calcium carbonate as calcium oxide', mark: 'derived' } satisfies Cite } as const;
export type ValueBasis = { readonly countries: readonly string[]; readonly as: 'CaO' | 'CaCO3'; readonly only?: 'tnv'; readonly cite: Cite };
export const VALUE_BASES: readonly ValueBasis[] = [
  { countries: ['IE'], as: 'CaCO3', only: 'tnv', cite: { source: 'medlar', at: 'irish-tnv', mark: 'memory' } },
  { countries: ['GB'], as: 'CaO', cite: { source: 'uk-lime-slides', at: 'neutralising value, % CaO', mark: 'read' } },
  { countries: ['DE'], as: 'CaO', cite: { source: 'isip-lime', at: 'products equal to 100 kg CaO', mark: 'read' } },
  { countries: ['IE', 'AT', 'CH', 'FR', 'NL', 'BE', 'LU', 'DK', 'SE', 'NO', 'FI', 'PL', 'CZ', 'SK', 'HU', 'SI', 'HR', 'IT', 'ES', 'PT', 'LT', 'LV', 'EE'], as: 'CaO', cite: { source: 'medlar', at: 'european-nv', mark: 'memory' } },
  { countries: ['AU'], as: 'CaCO3', cite: { source: 'nsw-ac19', at: 'neutralising value', mark: 'read' } },
  { countries: ['NZ', 'ZA'], as: 'CaCO3', cite: { source: 'medlar', at: 'southern-nv', mark: 'memory' } },
  { countries: ['US'], as: 'CaCO3', cite: { source: 'tri-state-1995', at: 'neutralizing value of a material', mark: 'read' } },
  { countries: ['CA'], as: 'CaCO3', cite: { source: 'ontario-lime', at: 'Agricultural Index', mark: 'read' } },
];

/** Values that count fineness in: `pure` is what pure fine limestone has (of `standard` it is the pounds that do the work of a ton of standard lime, so fewer are stronger); `wet` where the label's water is counted in too. */
export type Effective = { readonly id: EffectiveId; readonly pure: number; readonly unit: '%' | 'lb/ton' | 'points'; readonly wet?: true; readonly cite: Cite };
export type EffectiveId = 'standard' | 'env' | 'ecce' | 'ecc' | 'enp' | 'enm' | 'rnv' | 'prnt' | 'ai' | 'score' | 'ni';
export const EFFECTIVE: readonly Effective[] = [
  { id: 'env', pure: 100, unit: '%', cite: { source: 'cornell-lime', at: 'effective neutralizing value', mark: 'read' } },
  { id: 'ecce', pure: 100, unit: '%', wet: true, cite: { source: 'wisconsin-lime-slides', at: 'effective calcium carbonate equivalent, Iowa', mark: 'read' } },
  { id: 'ecc', pure: 100, unit: '%', cite: { source: 'medlar', at: 'lime-schemes', mark: 'memory' } },
  { id: 'enp', pure: 2000, unit: 'lb/ton', wet: true, cite: { source: 'ohio-lime-source', at: 'effective neutralizing power', mark: 'read' } },
  { id: 'enm', pure: 800, unit: 'lb/ton', cite: { source: 'missouri-lime-law', at: 'effective neutralizing material', mark: 'read' } },
  { id: 'rnv', pure: 100, unit: '%', cite: { source: 'kentucky-agr106', at: 'relative neutralizing value', mark: 'read' } },
  { id: 'prnt', pure: 100, unit: '%', cite: { source: 'brazil-lime', at: 'PRNT = PN × RE / 100', mark: 'read' } },
  { id: 'ai', pure: 100, unit: 'points', cite: { source: 'ontario-lime', at: 'Agricultural Index', mark: 'read' } },
  { id: 'score', pure: 100, unit: 'points', wet: true, cite: { source: 'oregon-em9585', at: '100-score lime', mark: 'read' } },
  { id: 'standard', pure: 2000, unit: 'lb/ton', cite: { source: 'north-carolina-lime-tips', at: 'label: amount equal to 1 ton of standard lime', mark: 'read' } },
  { id: 'ni', pure: 100, unit: 'points', cite: { source: 'medlar', at: 'lime-schemes', mark: 'memory' } },
];
/** A grade of ten points, such as 80-89, counts as its middle: so its publisher turns rates of 60-69 lime to other grades. */
export const INDEX_GRADE = { middle: 5, cite: { source: 'wisconsin-a2809', at: 'lime of another grade', mark: 'memory' } satisfies Cite } as const;

/** Openings of US sieves, mm. */
export const SIEVE_MM: readonly { readonly unit: 'mm'; readonly meshes: Readonly<Record<number, number>>; readonly cite: Cite }[] = [
  { unit: 'mm', meshes: { 4: 4.76, 8: 2.38, 10: 2.0, 20: 0.841, 30: 0.595, 40: 0.42, 50: 0.297, 60: 0.25, 100: 0.149 }, cite: { source: 'midwest-lime', at: 'sieve openings', mark: 'read' } },
  { unit: 'mm', meshes: { 6: 3.36, 12: 1.68, 16: 1.19, 80: 0.177, 200: 0.074 }, cite: { source: 'medlar', at: 'lime-sieves', mark: 'memory' } },
];

/**
 * What share of a lime acts, by its grains. `passing` has by mesh what each percent through a sieve counts, summed; `between` the share that acts of the grains
 * under a sieve and over the next finer one, and `over` that of what the coarsest holds back. `value` is what labels there call the result.
 */
export type Scheme = {
  readonly id: string;
  readonly name: string;
  readonly value: EffectiveId;
  readonly country: string;
  readonly states?: readonly string[];
  readonly passing?: Readonly<Record<number, number>>;
  readonly between?: Readonly<Record<number, number>>;
  readonly over?: number;
  readonly cite: Cite;
};
const recalled: Cite = { source: 'medlar', at: 'lime-schemes', mark: 'memory' };
export const SCHEMES: readonly Scheme[] = [
  { id: 'new-york', name: 'New York', value: 'env', country: 'US', states: ['new york'], between: { 20: 0.4, 60: 0.8, 100: 1 }, cite: { source: 'cornell-lime', at: 'fineness factors', mark: 'read' } },
  { id: 'iowa', name: 'Iowa', value: 'ecce', country: 'US', states: ['iowa'], passing: { 4: 0.1, 8: 0.3, 60: 0.6 }, cite: { source: 'wisconsin-lime-slides', at: 'Iowa fineness', mark: 'read' } },
  { id: 'minnesota', name: 'Minnesota', value: 'enp', country: 'US', states: ['minnesota'], between: { 8: 0.2, 20: 0.6, 60: 1 }, cite: recalled },
  { id: 'wisconsin', name: 'Wisconsin', value: 'ni', country: 'US', states: ['wisconsin'], between: { 8: 0.2, 20: 0.6, 60: 1 }, cite: recalled },
  { id: 'ohio', name: 'Ohio', value: 'enp', country: 'US', states: ['ohio'], between: { 8: 0.2, 20: 0.6, 60: 1 }, cite: recalled },
  // The shares of four years, not of the first: trees stand longer, and the lesser dose follows.
  { id: 'illinois', name: 'Illinois', value: 'env', country: 'US', states: ['illinois'], between: { 8: 0.45, 30: 1, 60: 1 }, over: 0.15, cite: recalled },
  { id: 'michigan', name: 'Michigan and Indiana', value: 'rnv', country: 'US', states: ['michigan', 'indiana'], between: { 8: 0.5, 60: 1 }, cite: recalled },
  { id: 'kansas', name: 'Kansas and Oklahoma', value: 'ecc', country: 'US', states: ['kansas', 'oklahoma'], passing: { 8: 0.5, 60: 0.5 }, cite: recalled },
  { id: 'texas', name: 'Texas', value: 'ecce', country: 'US', states: ['texas'], between: { 8: 0.2, 20: 0.6, 60: 1 }, cite: recalled },
  { id: 'missouri', name: 'Missouri', value: 'enm', country: 'US', states: ['missouri'], between: { 8: 0.25, 40: 0.6, 60: 1 }, cite: { source: 'missouri-lime-law', at: 'fineness factor by sieve', mark: 'read' } },
  { id: 'kentucky', name: 'Kentucky', value: 'rnv', country: 'US', states: ['kentucky'], between: { 10: 0.5, 50: 1 }, cite: { source: 'kentucky-agr106', at: 'fineness', mark: 'read' } },
  { id: 'mississippi', name: 'Mississippi', value: 'rnv', country: 'US', states: ['mississippi'], between: { 10: 0.5, 50: 1 }, cite: { source: 'mississippi-p3762', at: 'fineness', mark: 'read' } },
  { id: 'oregon', name: 'Oregon and Washington', value: 'score', country: 'US', states: ['oregon', 'washington'], between: { 10: 0.3, 20: 0.6, 40: 1 }, cite: recalled },
  { id: 'ontario', name: 'Ontario', value: 'ai', country: 'CA', states: ['ontario'], between: { 10: 0.4, 60: 1 }, cite: recalled },
  { id: 'brazil', name: 'Brazil', value: 'prnt', country: 'BR', between: { 10: 0.2, 20: 0.6, 50: 1 }, cite: { source: 'brazil-lime', at: 'reactivity by sieve', mark: 'read' } },
  { id: 'victoria', name: 'Victoria', value: 'env', country: 'AU', states: ['victoria'], between: { 20: 0.6, 50: 1 }, over: 0.1, cite: recalled },
];

/** From how much magnesium a label is a dolomitic lime's. */
export const DOLOMITIC_FROM = { percent: 6, of: 'Mg', cite: { source: 'north-carolina-lime-tips', at: 'dolomitic lime', mark: 'read' } satisfies Cite } as const;
export const DOLOMITIC_FROM_BRAZIL = { percent: 12, of: 'MgO', cite: { source: 'brazil-lime', at: 'calcitic, magnesian, dolomitic', mark: 'read' } satisfies Cite } as const;

/** Under this, lime with magnesium is the one to take; ppm of magnesium. The first stands where no other is printed. */
export const DOLOMITIC_BELOW = { value: 50, unit: 'mg/kg', cite: { source: 'ohio-lime-source', at: 'dolomitic lime', mark: 'read' } satisfies Cite } as const;
export const DOLOMITIC_BELOW_ONTARIO = { value: 100, unit: 'mg/kg', cite: { source: 'ontario-lime', at: 'dolomitic lime', mark: 'read' } satisfies Cite } as const;
/** North Carolina: with magnesium on sand; on clay without it where magnesium holds more than this of the exchange capacity. */
export const CALCITIC_OVER_NORTH_CAROLINA = { value: 20, unit: '%', cite: { source: 'north-carolina-lime', at: 'dolomitic or calcitic', mark: 'read' } satisfies Cite } as const;
