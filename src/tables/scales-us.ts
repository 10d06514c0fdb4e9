/** Scales of the United States, edges as printed. READ ones first, then those recalled and not yet seen. */
import type { Cite } from '../reason/figure.ts';
import { MANGANESE_INDEX, NORTH_CAROLINA_INDEX } from './indexes.ts';
import type { Item, Method } from './items.ts';
import type { Band, Home, Kind, Scale } from './scale.ts';
import { above, at, below, between, classes, most, range, under } from './scale.ts';

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const recalled = (source: string, at: string): Cite => ({ source, at, mark: 'memory' });
const state = (...states: readonly string[]): Home => ({ countries: ['US'], states });

// ── Washington ───────────────────────────────────────────────────────────────

const washington = read('washington-em119e', 'soil recommended ranges');
/** Columns low, optimal (from, to) and excessive; what stands between two columns is on the side away from the target. Half of low is far below. */
const wa = (item: Item, method: Method, unit: Scale['unit'], low: number, from: number, to: number, excessive: number | null, id = ''): Scale => ({
  id: `washington.${item}${id}`, item, method, unit, ...state('washington', 'wa'), serves: 'fruit', cite: washington,
  bands: [
    below(under(low / 2), 'very-low'), below(under(low)), ...(from > low ? [below(under(from), 'medium')] : []), at(to),
    ...(excessive === null ? [above(null)] : excessive === to ? [above(null, 'very-high')] : [above(excessive), above(null, 'very-high')]),
  ],
});
const waSalts = (method: Method, fine: number, excessive: number): Scale => ({
  id: `washington.salts.${method}`, item: 'salts', method, unit: 'dS/m', ...state('washington', 'wa'), serves: 'fruit', cite: washington,
  bands: [at(under(fine)), above(excessive), above(null, 'very-high')],
});

const WASHINGTON: readonly Scale[] = [
  wa('phosphorus', 'olsen', 'ppm', 10, 15, 40, 50), wa('potassium', 'ammonium-acetate', 'ppm', 120, 150, 250, 300),
  wa('potassium', 'ammonium-acetate', 'meq/100g', 0.3, 0.4, 0.6, 0.7, '.meq'),
  wa('calcium', 'ammonium-acetate', 'meq/100g', 3, 4.1, 20, null), wa('magnesium', 'ammonium-acetate', 'meq/100g', 0.5, 0.5, 2.5, 2.5),
  // Hot water and hot 0.01 M calcium chloride are one test.
  wa('boron', 'hot-water', 'ppm', 1, 1, 1.5, 1.5), wa('boron', 'cacl2', 'ppm', 1, 1, 1.5, 1.5, '.cacl2'),
  wa('zinc', 'dtpa', 'ppm', 0.25, 0.6, 1, null), wa('copper', 'dtpa', 'ppm', 0.1, 0.6, 1, 20),
  { id: 'washington.manganese', item: 'manganese', method: 'dtpa', unit: 'ppm', ...state('washington', 'wa'), serves: 'fruit', cite: washington, bands: [below(under(1)), at(5), above(50), above(null, 'very-high')] },
  { id: 'washington.iron', item: 'iron', method: 'dtpa', unit: 'ppm', ...state('washington', 'wa'), serves: 'fruit', cite: washington, bands: [below(4.5), at(null)] },
  { id: 'washington.sodium', item: 'sodium', method: 'ammonium-acetate', unit: 'meq/100g', ...state('washington', 'wa'), serves: 'fruit', cite: washington, bands: [at(0.5), above(null, 'very-high')] },
  // By calcium phosphate, for which the closed list of methods has no name.
  { ...wa('sulphur', 'unknown', 'ppm', 4, 9, 20, 20), method: 'any', homeOnly: true },
  waSalts('paste', 2.6, 4), waSalts('1:1', 0.5, 1), waSalts('1:2', 0.5, 1),
  { id: 'washington.ph', item: 'ph', method: 'any', unit: 'pH', ...state('washington', 'wa'), serves: 'fruit', cite: washington, bands: [below(under(5)), below(under(6), 'medium'), at(7.5), above(8), above(null, 'very-high')] },
];

// ── New Jersey: "High" is the target there, "Very high" is excess ────────────

const rutgers = read('rutgers-levels', 'relative levels, Mehlich-3');
const NJ = state('new jersey', 'nj');
/** Where Low, Medium and High begin, and where High ends. */
const nj = (item: Item, [low, medium, high, mostHigh]: readonly [number, number, number, number]): Scale => ({
  id: `rutgers.${item}`, item, method: 'mehlich-3', unit: 'lb/acre', ...NJ, serves: 'general', cite: rutgers,
  bands: [below(under(low), 'very-low'), below(under(medium)), below(under(high), 'medium'), at(mostHigh, 'high'), above(null, 'very-high')],
});
/** Under the critical level is deficient, over the high one a warning. */
const njMicro = (item: Item, critical: number, high: number, unit: Scale['unit'] = 'ppm'): Scale => ({
  id: `rutgers.${item}`, item, method: 'mehlich-3', unit, ...NJ, serves: 'general', cite: rutgers, bands: between(critical, high),
});
/** Organic matter by texture, %: where each class ends. */
const njOrganic = (id: string, kinds: readonly Kind[], [veryLow, low, medium, high]: readonly [number, number, number, number]): Scale => ({
  id: `rutgers.organic-matter.${id}`, item: 'organic-matter', method: 'any', unit: '%', ...NJ, serves: 'general', kinds, cite: read('rutgers-organic-matter', 'levels by texture'),
  bands: [below(veryLow, 'very-low'), below(low), below(medium, 'medium'), at(high, 'high'), above(null, 'very-high')],
});

const NEW_JERSEY: readonly Scale[] = [
  nj('phosphorus', [25, 46, 72, 137]), nj('potassium', [41, 82, 146, 277]), nj('magnesium', [46, 84, 144, 295]), nj('calcium', [616, 1008, 1401, 1790]),
  njMicro('zinc', 1, 50), njMicro('copper', 0.5, 20), njMicro('boron', 0.5, 20), njMicro('iron', 50, 100), njMicro('manganese', MANGANESE_INDEX.critical, MANGANESE_INDEX.high, 'MnAI'),
  njOrganic('loamy-sand', ['sand', 'loamy sand'], [0.5, 1, 1.5, 2]), njOrganic('sandy-loam', ['sandy loam'], [1, 1.5, 2, 2.5]),
  njOrganic('loam', ['loam'], [1.5, 2, 3, 4]), njOrganic('silt-loam', ['silt loam', 'clay loam', 'clay'], [1.5, 2.5, 4, 5]),
];

// ── New England ──────────────────────────────────────────────────────────────

const MA = state('massachusetts', 'ma');
const umass = read('umass-sample-2014', 'optimum ranges, woody plants');
/** A normal range is where most soils lie, not where a crop does best; so it is cited. */
const normal = read('umass-sample-2014', 'normal ranges');
const ma = (item: Item, bands: readonly Band[], cite: Cite = umass): Scale => ({ id: `umass.${item}`, item, method: 'modified-morgan', unit: 'ppm', ...MA, serves: 'fruit', cite, bands });
const maShare = (item: Item, low: number, high: number): Scale => ({
  id: `umass.${item}`, item, method: 'any', unit: '%', ...MA, serves: 'fruit', cite: read('umass-sample-2014', 'base saturation'), bands: [below(under(low / 2), 'very-low'), ...between(low, high)],
});

/** The states of the New England guide whose own laboratory has no table for woody plants here. */
const NEW_ENGLAND = state('connecticut', 'ct', 'maine', 'me', 'new hampshire', 'nh', 'rhode island', 'ri', 'vermont', 'vt');
const apple = read('new-england-apple', 'soil levels, established trees');
const ne = (item: Item, least: number): Scale => ({
  id: `new-england-apple.${item}`, item, method: 'modified-morgan', unit: 'lb/acre', ...NEW_ENGLAND, serves: { only: 'apple' }, cite: apple, bands: range(least, null),
});

const CT = state('connecticut', 'ct');
const connecticut = read('connecticut-agronomic', 'agronomic crops, Modified Morgan');
/** Where optimum and above begin. */
const ct = (item: Item, optimum: number, over: number): Scale => ({
  id: `connecticut.${item}`, item, method: 'modified-morgan', unit: 'lb/acre', ...CT, serves: 'field', cite: connecticut,
  bands: [below(under(optimum / 2), 'very-low'), below(under(optimum)), at(under(over)), above(null)],
});

const NEW_ENGLAND_SCALES: readonly Scale[] = [
  ma('phosphorus', range(4, 14)), ma('potassium', range(100, 160)), ma('calcium', range(1000, 1500)), ma('magnesium', range(50, 120)), ma('sulphur', range(10, null)),
  ma('boron', range(0.1, 0.5), normal), ma('manganese', range(1.1, 6.3), normal), ma('zinc', range(1, 7.6), normal), ma('copper', range(0.3, 0.6), normal), ma('iron', range(2.7, 9.4), normal),
  ma('aluminium', most(75), normal), ma('lead', most(22), normal),
  maShare('saturation-ca', 50, 80), maShare('saturation-mg', 10, 30), maShare('saturation-k', 2, 7),
  { id: 'umass.salts', item: 'salts', method: '1:2', unit: 'dS/m', ...MA, serves: 'fruit', cite: read('umass-sample-2014', 'soluble salts'), bands: most(0.6) },
  ne('phosphorus', 9), ne('potassium', 240),
  { id: 'new-england-apple.ph', item: 'ph', method: 'any', unit: 'pH', ...NEW_ENGLAND, serves: { only: 'apple' }, cite: apple, bands: between(6, 6.5) },
  ct('calcium', 1800, 2400), ct('magnesium', 175, 250), ct('phosphorus', 14, 21), ct('potassium', 250, 350),
];

// ── Georgia ──────────────────────────────────────────────────────────────────

const GA = state('georgia', 'ga');
/** The sheets name no target: low and medium are below, high and very high above. Medium and high begin at the two numbers. */
const ga = (item: Item, medium: number, high: number, veryHigh: number | null): Scale => ({
  id: `georgia.${item}`, item, method: 'mehlich-1', unit: 'lb/acre', ...GA, serves: 'fruit', cite: read('georgia-crop-sheets', 'coastal plain'),
  bands: [below(under(medium)), below(under(high), 'medium'), ...(veryHigh === null ? [above(null)] : [above(under(veryHigh)), above(null, 'very-high')])],
});
/** Only where the grower writes the piedmont into `where`: the state alone does not tell. */
const gaPiedmont = (item: Item, low: number, medium: number, high: number): Scale => ({
  id: `georgia-piedmont.${item}`, item, method: 'mehlich-1', unit: 'lb/acre', ...GA, within: 'piedmont', serves: 'general', cite: recalled('georgia-bulletin-62', 'piedmont'),
  bands: classes(['low', low], ['medium', medium], ['high', high], ['very-high']),
});

const GEORGIA: readonly Scale[] = [
  ga('phosphorus', 31, 61, 101), ga('potassium', 61, 151, 251), ga('magnesium', 61, 121, null), gaPiedmont('phosphorus', 20, 40, 75), gaPiedmont('potassium', 100, 200, 350),
];

// ── Ohio, Indiana, Michigan: field crops ─────────────────────────────────────

const TRI = state('ohio', 'oh', 'indiana', 'in', 'michigan', 'mi');
const triState = read('tri-state-2020', 'field crops, Mehlich-3');
const tri = (id: string, cec: readonly [number, number], critical: number, maintenance: number): Scale => ({
  id: `tri-state.potassium.${id}`, item: 'potassium', method: 'mehlich-3', unit: 'ppm', ...TRI, serves: 'field', cec, cite: triState, bands: range(critical, maintenance),
});
const TRI_STATE: readonly Scale[] = [
  tri('light', [0, 5], 100, 130), tri('heavy', [5, Infinity], 120, 170),
  // Corn and soybean; 30 where wheat or alfalfa are grown. No upper end was read.
  { id: 'tri-state.phosphorus', item: 'phosphorus', method: 'mehlich-3', unit: 'ppm', ...TRI, serves: 'field', cite: triState, bands: range(20, null) },
];

// ── Recalled, not yet seen ───────────────────────────────────────────────────

type Rest = Pick<Scale, 'item' | 'method' | 'unit' | 'bands'> & { readonly id?: string; readonly kinds?: readonly Kind[] };
const table = (name: string, home: Home, serves: Scale['serves'], cite: Cite, rows: readonly Rest[]): Scale[] =>
  rows.map(({ id, ...row }) => ({ id: id ?? `${name}.${row.item}.${row.method}`, ...row, ...home, serves, cite }));

const lmhv = (low: number, medium: number, high: number): readonly Band[] => classes(['low', low], ['medium', medium], ['high', high], ['very-high']);
const lmh = (low: number, medium: number): readonly Band[] => classes(['low', low], ['medium', medium], ['high']);
const lmo = (low: number, medium: number): readonly Band[] => classes(['low', low], ['medium', medium], ['optimum']);
const five = (veryLow: number, low: number, optimum: number, high: number): readonly Band[] => classes(['very-low', veryLow], ['low', low], ['optimum', optimum], ['high', high], ['very-high']);
const fiveMedium = (veryLow: number, low: number, medium: number, high: number): readonly Band[] => classes(['very-low', veryLow], ['low', low], ['medium', medium], ['high', high], ['very-high']);

const LOAMY: readonly Kind[] = ['sandy loam', 'loam', 'silt loam', 'clay loam', 'clay'];
const SANDY: readonly Kind[] = ['sand', 'loamy sand', 'organic'];
/** Where low, optimum and high begin, and where high ends. */
const wisconsin = (low: number, optimum: number, high: number, mostHigh: number): readonly Band[] =>
  [below(under(low), 'very-low'), below(under(optimum)), at(under(high)), above(mostHigh), above(null, 'very-high')];

/** Edges in mg/dm3 of the index classes 10, 25, 50 and 100. High is enough there, and no more. */
const northCarolina = (item: 'phosphorus' | 'potassium' | 'manganese' | 'zinc' | 'copper' | 'sulphur'): readonly Band[] => {
  const edge = (index: number): number => index * NORTH_CAROLINA_INDEX[item]!.mgPerL;
  return [below(edge(10), 'very-low'), below(edge(25)), below(edge(50), 'medium'), at(edge(100), 'high'), above(null, 'very-high')];
};

const RECALLED: readonly Scale[] = [
  ...table('virginia', state('virginia', 'va'), 'general', recalled('virginia-452-701', 'ratings, Mehlich-1'), [
    { item: 'phosphorus', method: 'mehlich-1', unit: 'lb/acre', bands: lmhv(11, 35, 110) }, { item: 'potassium', method: 'mehlich-1', unit: 'lb/acre', bands: lmhv(75, 175, 310) },
    { item: 'calcium', method: 'mehlich-1', unit: 'lb/acre', bands: lmhv(720, 1440, 2160) }, { item: 'magnesium', method: 'mehlich-1', unit: 'lb/acre', bands: lmhv(72, 144, 216) },
  ]),
  ...table('florida', state('florida', 'fl'), 'general', recalled('florida-ss620', 'Mehlich-3, 2014'), [
    { item: 'phosphorus', method: 'mehlich-3', unit: 'mg/kg', bands: lmh(25, 45) }, { item: 'potassium', method: 'mehlich-3', unit: 'mg/kg', bands: lmh(35, 60) },
    { item: 'magnesium', method: 'mehlich-3', unit: 'mg/kg', bands: lmh(20, 40) },
  ]),
  ...table('pennsylvania', state('pennsylvania', 'pa'), 'field', recalled('penn-agronomy-guide', 'table 1.2-4'), [
    { item: 'phosphorus', method: 'mehlich-3', unit: 'ppm', bands: range(30, 50) }, { item: 'potassium', method: 'mehlich-3', unit: 'ppm', bands: range(100, 200) },
    { item: 'magnesium', method: 'mehlich-3', unit: 'ppm', bands: range(60, 120) },
  ]),
  ...table('iowa', state('iowa', 'ia'), 'field', recalled('iowa-pm1688', 'table 1'), [
    { item: 'phosphorus', method: 'mehlich-3', unit: 'ppm', bands: five(15, 25, 35, 45) }, { item: 'phosphorus', method: 'bray-1', unit: 'ppm', bands: five(10, 15, 20, 30) },
    { id: 'iowa.phosphorus.colorimetric', item: 'phosphorus', method: 'mehlich-3-colorimetric', unit: 'ppm', bands: five(10, 15, 20, 30) },
    { item: 'phosphorus', method: 'olsen', unit: 'ppm', bands: five(6, 10, 14, 20) },
    { item: 'potassium', method: 'ammonium-acetate', unit: 'ppm', bands: five(120, 160, 200, 240) }, { item: 'potassium', method: 'mehlich-3', unit: 'ppm', bands: five(120, 160, 200, 240) },
  ]),
  ...table('minnesota', state('minnesota', 'mn'), 'field', recalled('minnesota-field', 'soil test categories'), [
    { item: 'phosphorus', method: 'bray-1', unit: 'ppm', bands: fiveMedium(5, 10, 15, 20) }, { item: 'phosphorus', method: 'olsen', unit: 'ppm', bands: fiveMedium(3, 7, 11, 15) },
    { item: 'potassium', method: 'ammonium-acetate', unit: 'ppm', bands: fiveMedium(40, 80, 120, 160) }, { item: 'organic-matter', method: 'any', unit: '%', bands: lmh(3, 4.5) },
  ]),
  // Bray-1 is the test west of the Cascades, Olsen the one east of them.
  ...table('oregon', state('oregon', 'or'), 'general', recalled('oregon-ec1478', 'sufficiency ranges, 2011'), [
    { item: 'phosphorus', method: 'bray-1', unit: 'ppm', bands: lmhv(20, 40, 100) }, { item: 'phosphorus', method: 'olsen', unit: 'ppm', bands: lmhv(10, 25, 50) },
    { item: 'potassium', method: 'ammonium-acetate', unit: 'ppm', bands: lmhv(150, 250, 800) }, { item: 'calcium', method: 'ammonium-acetate', unit: 'meq/100g', bands: lmh(5, 10) },
    { item: 'magnesium', method: 'ammonium-acetate', unit: 'meq/100g', bands: lmh(0.5, 1.5) },
    { item: 'boron', method: 'hot-water', unit: 'ppm', bands: fiveMedium(0.2, 0.5, 1, 2) },
  ]),
  ...table('colorado', state('colorado', 'co'), 'general', recalled('colorado-soil-tests', 'AB-DTPA'), [
    { item: 'phosphorus', method: 'ab-dtpa', unit: 'ppm', bands: lmhv(3, 7, 11) }, { item: 'potassium', method: 'ab-dtpa', unit: 'ppm', bands: lmh(60, 120) },
    { item: 'zinc', method: 'ab-dtpa', unit: 'ppm', bands: lmo(0.9, 1.5) }, { item: 'iron', method: 'ab-dtpa', unit: 'ppm', bands: lmo(3, 5) },
  ]),
  ...table('vermont', state('vermont', 'vt'), 'field', recalled('vermont-br1390', 'categories, Modified Morgan'), [
    { item: 'phosphorus', method: 'modified-morgan', unit: 'ppm', bands: classes(['low', 2], ['medium', 4], ['optimum', 7], ['high', 20], ['very-high']) },
    { item: 'potassium', method: 'modified-morgan', unit: 'ppm', bands: classes(['low', 50], ['medium', 100], ['optimum', 130], ['high', 160], ['very-high']) },
    { item: 'magnesium', method: 'modified-morgan', unit: 'ppm', bands: classes(['low', 35], ['medium', 50], ['optimum', 100], ['high']) },
  ]),
  ...table('new-york', state('new york', 'ny'), 'field', recalled('cornell-guide', 'phosphorus, Morgan'), [
    { item: 'phosphorus', method: 'morgan', unit: 'lb/acre', bands: classes(['very-low', under(1)], ['low', 3], ['medium', 8], ['high', 39], ['very-high']) },
  ]),
  ...table('north-carolina', state('north carolina', 'nc'), 'general', recalled('north-carolina-circular-1', 'index classes in mg/dm3'), [
    { item: 'phosphorus', method: 'mehlich-3', unit: 'mg/L', bands: northCarolina('phosphorus') }, { item: 'potassium', method: 'mehlich-3', unit: 'mg/L', bands: northCarolina('potassium') },
    { item: 'manganese', method: 'mehlich-3', unit: 'mg/L', bands: northCarolina('manganese') }, { item: 'zinc', method: 'mehlich-3', unit: 'mg/L', bands: northCarolina('zinc') },
    { item: 'copper', method: 'mehlich-3', unit: 'mg/L', bands: northCarolina('copper') }, { item: 'sulphur', method: 'mehlich-3', unit: 'mg/L', bands: northCarolina('sulphur') },
  ]),
  // Demand level 2, which holds the stone fruits.
  ...table('wisconsin', state('wisconsin', 'wi'), 'fruit', recalled('wisconsin-a2809', 'demand level 2, Bray-1'), [
    { id: 'wisconsin.phosphorus.loamy', item: 'phosphorus', method: 'bray-1', unit: 'ppm', kinds: LOAMY, bands: wisconsin(12, 18, 26, 35) },
    { id: 'wisconsin.phosphorus.sandy', item: 'phosphorus', method: 'bray-1', unit: 'ppm', kinds: SANDY, bands: wisconsin(18, 26, 38, 55) },
    { id: 'wisconsin.potassium.loamy', item: 'potassium', method: 'bray-1', unit: 'ppm', kinds: LOAMY, bands: wisconsin(90, 111, 141, 170) },
    { id: 'wisconsin.potassium.sandy', item: 'potassium', method: 'bray-1', unit: 'ppm', kinds: SANDY, bands: wisconsin(50, 81, 121, 160) },
  ]),
];

export const US_SCALES: readonly Scale[] = [...WASHINGTON, ...NEW_JERSEY, ...NEW_ENGLAND_SCALES, ...GEORGIA, ...TRI_STATE, ...RECALLED];
