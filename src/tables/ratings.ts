/**
 * Published scales that turn a soil value into a class, by extractant, in the unit printed.
 * `upTo` is the upper edge of a class, the last one open; a value on an edge belongs to the lower class,
 * and a value in a gap between printed bands falls on the side away from the target.
 */
import type { Cite } from '../reason/figure.ts';
import type { Item } from './items.ts';

export type Rating = 'very-low' | 'low' | 'medium' | 'optimum' | 'high' | 'very-high';
export type Target = 'far-below' | 'below' | 'at' | 'above';
export const RATINGS: readonly Rating[] = ['very-low', 'low', 'medium', 'optimum', 'high', 'very-high'];

export type Band = { readonly upTo: number | null; readonly rating: Rating; readonly target: Target; readonly name?: string };
export type Scale = {
  readonly id: string;
  readonly item: Item;
  readonly method: string;
  readonly unit: 'ppm' | 'lb/acre' | 'mg/L' | 'meq/100g' | 'pH' | 'mg/kg';
  /** Countries where it leads; none: anywhere. */
  readonly countries?: readonly string[];
  readonly soil?: 'light' | 'medium' | 'heavy';
  readonly bands: readonly Band[];
  readonly cite: Cite;
};

const below = (upTo: number, rating: Rating = 'low'): Band => ({ upTo, rating, target: rating === 'very-low' ? 'far-below' : 'below' });
const at = (upTo: number | null, rating: Rating = 'optimum'): Band => ({ upTo, rating, target: 'at' });
const above = (upTo: number | null, rating: Rating = 'high'): Band => ({ upTo, rating, target: 'above' });

/** The largest value that lies under an edge which the publication prints as "from" or "less than". */
const under = (edge: number): number => edge - 1e-9 * Math.max(1, edge);

const rutgers: Cite = { source: 'rutgers-levels', at: 'relative levels, Mehlich-3', mark: 'read' };
/** New Jersey: "High" is the target there, "Very high" is excess. */
const rutgersScale = (item: Item, [low, medium, high, mostHigh]: readonly [number, number, number, number]): Scale => ({
  id: `rutgers.${item}`, item, method: 'mehlich-3', unit: 'lb/acre', cite: rutgers,
  bands: [below(under(low), 'very-low'), below(under(medium)), below(under(high), 'medium'), at(mostHigh, 'high'), above(null, 'very-high')],
});

const washington: Cite = { source: 'washington-em119e', at: 'soil recommended ranges', mark: 'read' };
const umass: Cite = { source: 'umass-sample-2014', at: 'optimum ranges, woody plants', mark: 'read' };
/** One printed range: half of its low end and less is far below. */
const umassScale = (item: Item, low: number, high: number | null): Scale => ({
  id: `umass.${item}`, item, method: 'modified-morgan', unit: 'ppm', cite: umass,
  bands: [below(under(low / 2), 'very-low'), below(under(low)), ...(high === null ? [at(null)] : [at(high), above(null)])],
});

const ireland: Cite = { source: 'ireland-index', at: 'index system, Morgan’s', mark: 'read' };
const index = (name: string, band: Band): Band => ({ ...band, name });
const irelandScale = (item: Item, [two, three, mostThree]: readonly [number, number, number]): Scale => ({
  id: `ireland.${item}`, item, method: 'morgan', unit: 'mg/L', countries: ['IE'], cite: ireland,
  bands: [index('1', below(under(two), 'very-low')), index('2', below(under(three))), index('3', at(mostThree)), index('4', above(null))],
});

const ni: Cite = { source: 'northern-ireland-2019-81', at: 'schedule 5, paragraph 10', mark: 'read' };
const rb209: Cite = { source: 'uk-rb209', at: 'index table', mark: 'memory' };
const georgia: Cite = { source: 'georgia-crop-sheets', at: 'coastal plain', mark: 'read' };
/** The sheets name no target: low and medium are below, high and very high above. Medium and high begin at the two numbers. */
const georgiaScale = (item: Item, medium: number, high: number, veryHigh: number | null): Scale => ({
  id: `georgia.${item}`, item, method: 'mehlich-1', unit: 'lb/acre', cite: georgia,
  bands: [below(under(medium)), below(under(high), 'medium'), ...(veryHigh === null ? [above(null)] : [above(under(veryHigh)), above(null, 'very-high')])],
});

const austria: Cite = { source: 'austria-orchard', at: 'p. 15', mark: 'read' };
type Edges = readonly [a: number, b: number, c: number, d: number];
/** Classes A to E; the edges are the largest whole mg/kg of each class. */
const austriaScale = (item: Item, soil: 'light' | 'medium' | 'heavy', [a, b, c, d]: Edges): Scale => ({
  id: `austria.${item}.${soil}`, item, method: 'cal', unit: 'mg/kg', soil, cite: austria,
  bands: [
    ...(a > 0 ? [index('A', below(a, 'very-low'))] : []),
    index('B', below(b)), index('C', at(c)), index('D', above(d)), index('E', above(null, 'very-high')),
  ],
});

export const SCALES: readonly Scale[] = [
  { id: 'uk.phosphorus', item: 'phosphorus', method: 'olsen', unit: 'mg/L', countries: ['GB'], cite: ni,
    bands: [index('0', below(under(10), 'very-low')), index('1', below(under(16))), index('2', at(25)), index('3', above(45)), index('4+', above(null, 'very-high'))] },
  { id: 'uk.potassium', item: 'potassium', method: 'ammonium-nitrate', unit: 'mg/L', countries: ['GB'], cite: rb209,
    bands: [index('0', below(under(61), 'very-low')), index('1', below(under(121))), index('2', at(240)), index('3', above(400)), index('4+', above(null, 'very-high'))] },
  { id: 'uk.magnesium', item: 'magnesium', method: 'ammonium-nitrate', unit: 'mg/L', countries: ['GB'], cite: rb209,
    bands: [index('0', below(under(26), 'very-low')), index('1', below(under(51))), index('2', at(100)), index('3', above(175)), index('4+', above(null, 'very-high'))] },

  { id: 'washington.phosphorus', item: 'phosphorus', method: 'olsen', unit: 'ppm', cite: washington,
    bands: [below(under(5), 'very-low'), below(under(10)), below(under(15), 'medium'), at(40), above(50), above(null, 'very-high')] },
  { id: 'washington.potassium', item: 'potassium', method: 'ammonium-acetate', unit: 'ppm', cite: washington,
    bands: [below(under(60), 'very-low'), below(under(120)), below(under(150), 'medium'), at(250), above(300), above(null, 'very-high')] },
  { id: 'washington.calcium', item: 'calcium', method: 'ammonium-acetate', unit: 'meq/100g', cite: washington,
    bands: [below(under(1.5), 'very-low'), below(under(3)), below(under(4.1), 'medium'), at(20), above(null)] },
  { id: 'washington.magnesium', item: 'magnesium', method: 'ammonium-acetate', unit: 'meq/100g', cite: washington,
    bands: [below(under(0.25), 'very-low'), below(under(0.5)), at(2.5), above(null)] },
  { id: 'washington.ph', item: 'ph', method: 'any', unit: 'pH', cite: washington,
    bands: [below(under(5)), below(under(6), 'medium'), at(7.5), above(8), above(null, 'very-high')] },

  // Where Low, Medium and High begin, and where High ends.
  rutgersScale('phosphorus', [25, 46, 72, 137]), rutgersScale('potassium', [41, 82, 146, 277]),
  rutgersScale('magnesium', [46, 84, 144, 295]), rutgersScale('calcium', [616, 1008, 1401, 1790]),

  umassScale('phosphorus', 4, 14), umassScale('potassium', 100, 160), umassScale('calcium', 1000, 1500),
  umassScale('magnesium', 50, 120), umassScale('sulphur', 10, null),

  // Where index 2 and 3 begin, and where 3 ends; magnesium 50 stands in both 2 and 3 in print.
  irelandScale('phosphorus', [3.1, 6.1, 10]), irelandScale('potassium', [51, 101, 150]), irelandScale('magnesium', [26, 50, 100]),

  georgiaScale('phosphorus', 31, 61, 101), georgiaScale('potassium', 61, 151, 251), georgiaScale('magnesium', 61, 121, null),

  austriaScale('potassium', 'light', [under(50), under(88), 178, 291]), austriaScale('potassium', 'medium', [under(66), under(113), 212, 332]),
  austriaScale('potassium', 'heavy', [under(83), under(138), 245, 374]),
  austriaScale('magnesium', 'light', [0, under(50), 75, 150]), austriaScale('magnesium', 'medium', [under(30), under(56), 105, 190]),
  austriaScale('magnesium', 'heavy', [under(40), under(76), 135, 220]),
];

/** What a lab's own word says of the target (words mean the same in every scale that does not name its own target). */
export const WORD_TARGET: Readonly<Record<Rating, Target>> = {
  'very-low': 'far-below', low: 'below', medium: 'below', optimum: 'at', high: 'above', 'very-high': 'above',
};
