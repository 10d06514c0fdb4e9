/** Scales of Europe, edges as printed. */
import type { Cite } from '../reason/figure.ts';
import type { Item, Method } from './items.ts';
import type { Band, Home, Kind, Scale } from './scale.ts';
import { above, at, below, between, classes, index, under } from './scale.ts';

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const recalled = (source: string, at: string): Cite => ({ source, at, mark: 'memory' });

// ── United Kingdom: index 2 is the target for top fruit ──────────────────────

const GB: Home = { countries: ['GB'] };
/** Where index 1, 2, 3 and so on begin. */
const uk = (item: Item, method: Method, cite: Cite, begins: readonly number[], id = ''): Scale => ({
  id: `uk.${item}${id}`, item, method, unit: 'mg/L', ...GB, serves: 'general', cite,
  bands: [...begins.map((b, i) => ukBand(String(i), under(b), i)), ukBand(String(begins.length), null, begins.length)],
});
const ukBand = (name: string, upTo: number | null, n: number): Band => {
  if (n === 2) return index(name, at(upTo));
  if (upTo !== null && n < 2) return index(name, below(upTo, n === 0 ? 'very-low' : 'low'));
  return index(name, above(upTo, n === 3 ? 'high' : 'very-high'));
};
/** Index 2 ends as a whole number; what lies between it and index 3 is above. Two halves of it have names of their own. */
const halved = (scale: Scale, middle: number, ends: number): Scale => ({
  ...scale, bands: scale.bands.flatMap((b) => (b.name === '2' ? [index('2-', at(under(middle))), index('2+', at(ends))] : [b])),
});
const ending = (scale: Scale, ends: number): Scale => ({ ...scale, bands: scale.bands.map((b) => (b.name === '2' ? { ...b, upTo: ends } : b)) });

const statute = read('northern-ireland-2019-81', 'schedule 5, paragraph 10');
const rb209 = recalled('uk-rb209', 'index table');
const OLSEN = [10, 16, 26, 46, 71, 101, 141, 201, 281] as const;
const UNITED_KINGDOM: readonly Scale[] = [
  { ...halved(uk('phosphorus', 'olsen', statute, OLSEN.slice(0, 4)), 21, 25), id: 'northern-ireland.phosphorus', countries: ['GB'], states: ['northern ireland'] },
  // The statute prints the same edges up to index 4; those above it are recalled.
  ending(uk('phosphorus', 'olsen', statute, OLSEN), 25),
  halved(uk('potassium', 'ammonium-nitrate', rb209, [61, 121, 241, 401, 601, 901, 1501, 2401, 3601]), 181, 240),
  ending(uk('magnesium', 'ammonium-nitrate', rb209, [26, 51, 101, 176, 251, 351, 601, 1001, 1501]), 100),
  ending(uk('phosphorus', 'resin', rb209, [20, 31, 50, 86, 133], '.resin'), 49),
];

// ── Ireland: index 3 is the target; the tillage column, since an orchard is no grazing ──

const ireland = read('ireland-index', 'index system, Morgan’s');
/** Where index 2 and 3 begin, and where 3 ends; magnesium 50 stands in both 2 and 3 in print. */
const ie = (item: Item, [two, three, mostThree]: readonly [number, number, number]): Scale => ({
  id: `ireland.${item}`, item, method: 'morgan', unit: 'mg/L', countries: ['IE'], serves: 'general', cite: ireland,
  bands: [index('1', below(under(two), 'very-low')), index('2', below(under(three))), index('3', at(mostThree)), index('4', above(null))],
});
const IRELAND: readonly Scale[] = [ie('phosphorus', [3.1, 6.1, 10]), ie('potassium', [51, 101, 150]), ie('magnesium', [26, 50, 100])];

// ── Austria and Germany: classes A to E, C is the target ─────────────────────

type Edges = readonly [a: number, b: number, c: number, d: number];
/** Where each class ends; an A that the table leaves out is 0. */
const letters = ([a, b, c, d]: Edges): readonly Band[] => [
  ...(a > 0 ? [index('A', below(a, 'very-low'))] : []), index('B', below(b)), index('C', at(c)), index('D', above(d)), index('E', above(null, 'very-high')),
];

const AT: Home = { countries: ['AT'] };
const austria = read('austria-orchard', 'p. 15');
const SOILS = ['light', 'medium', 'heavy'] as const;
const austrian = (item: Item, method: Method, edges: readonly [Edges, Edges, Edges], id = ''): Scale[] =>
  SOILS.map((soil, i) => ({ id: `austria.${item}${id}.${soil}`, item, method, unit: 'mg/kg', ...AT, serves: 'fruit', soil, cite: austria, bands: letters(edges[i]!) }));
const MAGNESIUM: readonly [Edges, Edges, Edges] = [[0, under(50), 75, 150], [under(30), under(56), 105, 190], [under(40), under(76), 135, 220]];
/** A, C and E alone; the extract of ÖNORM L 1090 has no name in the list of methods. */
const austrianBoron = (soil: (typeof SOILS)[number], low: number, high: number): Scale => ({
  id: `austria.boron.${soil}`, item: 'boron', method: 'any', unit: 'mg/kg', ...AT, serves: 'fruit', homeOnly: true, soil, cite: austria,
  bands: [index('A', below(under(low), 'very-low')), index('C', at(high)), index('E', above(null, 'very-high'))],
});
const course = read('austria-fruit-course', 'reading a soil analysis');
const courseRange = (item: Item, unit: '%' | 'pH', soil: 'light' | 'heavy', low: number, high: number): Scale => ({
  id: `austria.${item}.${soil}`, item, method: 'any', unit, ...AT, serves: 'fruit', homeOnly: true, soil, cite: course, bands: between(low, high),
});
const AUSTRIA: readonly Scale[] = [
  ...austrian('potassium', 'cal', [[under(50), under(88), 178, 291], [under(66), under(113), 212, 332], [under(83), under(138), 245, 374]]),
  // By calcium chloride, or by CAT; copies of reports print CAL over the whole block.
  ...austrian('magnesium', 'cal', MAGNESIUM), ...austrian('magnesium', 'cacl2', MAGNESIUM, '.cacl2'), ...austrian('magnesium', 'cat', MAGNESIUM, '.cat'),
  austrianBoron('light', 0.2, 2), austrianBoron('medium', 0.3, 2.5), austrianBoron('heavy', 0.3, 2.5),
  { id: 'austria.phosphorus', item: 'phosphorus', method: 'cal', unit: 'mg/kg', ...AT, serves: 'fruit', cite: recalled('austria-orchard', 'phosphorus classes'), bands: letters([under(26), under(47), 111, 174]) },
  courseRange('ph', 'pH', 'light', 5, 6), courseRange('ph', 'pH', 'heavy', 6.5, 6.8),
  courseRange('organic-matter', '%', 'light', 1, 2.5), courseRange('organic-matter', '%', 'heavy', 2.5, 4),
];

const DE: Home = { countries: ['DE'] };
const nrw = read('nrw-garden-classes', 'classes of the home garden');
const nrwScale = (id: string, item: Item, method: Method, kinds: readonly Kind[], edges: Edges): Scale => ({
  id: `nrw.${item}.${id}`, item, method, unit: 'mg/100g', ...(item === 'potassium' ? { form: 'K2O' as const } : {}), ...DE, serves: 'fruit', kinds, cite: nrw, bands: letters(edges),
});
const nrwPh = (id: string, kinds: readonly Kind[], low: number, high: number): Scale => ({
  id: `nrw.ph.${id}`, item: 'ph-salt', method: 'cacl2', unit: 'pH', ...DE, serves: 'fruit', kinds, cite: read('nrw-garden-classes', 'pH for fruit, vegetables and shrubs'), bands: between(low, high),
});
const LOAMS: readonly Kind[] = ['sandy loam', 'loam', 'silt loam'];
const CLAYS: readonly Kind[] = ['clay loam', 'clay'];
const GERMANY: readonly Scale[] = [
  nrwScale('sand', 'potassium', 'cal', ['sand'], [2, under(6), 12, 19]), nrwScale('loam', 'potassium', 'cal', ['loamy sand', ...LOAMS], [3, under(10), 18, 32]),
  nrwScale('clay', 'potassium', 'cal', CLAYS, [5, under(14), 24, 38]),
  nrwScale('sand', 'magnesium', 'cacl2', ['sand', 'loamy sand'], [1, under(3), 4, 7]), nrwScale('loam', 'magnesium', 'cacl2', LOAMS, [2, under(4), 6, 10]),
  nrwScale('clay', 'magnesium', 'cacl2', CLAYS, [3, under(6), 9, 14]),
  // The chamber heads its phosphorus row P2O5, but its numbers (1.5, 2, 3 to 5, 11, 23) are of the size of this scheme's P: the row is not used, and the national scheme stands here.
  { id: 'vdlufa.phosphorus', item: 'phosphorus', method: 'cal', unit: 'mg/100g', ...DE, serves: 'general', cite: recalled('vdlufa-2018', 'phosphorus classes, CAL'), bands: letters([under(1.5), 3, 6, 12]) },
  nrwPh('sand', ['sand'], 5.4, 5.8), nrwPh('loamy-sand', ['loamy sand'], 5.8, 6.2), nrwPh('sandy-loam', ['sandy loam'], 6.2, 6.6), nrwPh('loam', ['loam', 'silt loam'], 6.6, 7), nrwPh('clay', CLAYS, 6.8, 7.2),
];

/** Germany's scheme before that of 2018: where enough lies, mg P2O5 in 100 g by CAL. Told beside the newer, never used. */
export const GERMAN_P2O5 = { low: 10, high: 20, unit: 'mg/100g', cite: recalled('vdlufa-2018', 'the scheme before, class C in P2O5') } as const;

// ── Poland: mg K2O in 100 g; the page names no extractant, Egner-Riehm's DL is recalled ──

const PL: Home = { countries: ['PL'] };
/** Where very low, low, medium and high end, under both names of the test. Very light is taken as sand. */
const polish = (id: string, soil: Pick<Scale, 'soil' | 'kinds'>, [veryLow, low, medium, high]: Edges): Scale[] => (['dl', 'egner-riehm'] as const).map((method) => ({
  id: `poland.potassium.${method}.${id}`, item: 'potassium', method, unit: 'mg/100g', form: 'K2O', ...PL, serves: 'general', homeOnly: true, ...soil, cite: read('poland-potassium-limits', 'limits by soil'),
  bands: classes(['very-low', veryLow], ['low', low], ['medium', medium], ['high', high], ['very-high']),
}));
const POLAND: readonly Scale[] = [
  ...polish('very-light', { kinds: ['sand'] }, [2.5, 7.5, 12.5, 17.5]), ...polish('organic', { kinds: ['organic'] }, [30, 60, 90, 120]),
  ...polish('light', { soil: 'light' }, [5, 10, 15, 20]), ...polish('medium', { soil: 'medium' }, [7.5, 12.5, 20, 25]), ...polish('heavy', { soil: 'heavy' }, [10, 15, 25, 30]),
];

export const EUROPEAN_SCALES: readonly Scale[] = [...UNITED_KINGDOM, ...IRELAND, ...AUSTRIA, ...GERMANY, ...POLAND];
