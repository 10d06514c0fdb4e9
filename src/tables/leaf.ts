/**
 * What a leaf should hold, on dry weight: per cent for N, P, K, Ca, Mg and S, parts per million for the rest.
 * Leaf standards are one and the same for home and orchard, so `orchard` is no label here.
 */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';
import { STONE } from './crops.ts';

export type LeafNutrient = 'N' | 'P' | 'K' | 'Ca' | 'Mg' | 'S' | 'B' | 'Zn' | 'Mn' | 'Fe' | 'Cu';
export type LeafRange = {
  readonly crops: readonly Crop[];
  /** The growers' words for it, where a range is for some kinds of the crop only. */
  readonly kinds?: readonly string[];
  readonly region: string;
  readonly nutrient: LeafNutrient;
  readonly unit: '%' | 'ppm';
  readonly low: number;
  readonly high: number;
  /** Below this the page speaks of deficiency, above that of excess; between these and the range lie its middle classes. */
  readonly deficient?: number;
  readonly excess?: number;
  /** When and which leaves, where the page says. */
  readonly sampled?: string;
  /** Plants that do not bear yet, only. */
  readonly young?: true;
  readonly label?: 'old' | 'weak';
  readonly cite: Cite;
};

type Head = Pick<LeafRange, 'crops' | 'kinds' | 'region' | 'sampled' | 'young' | 'label' | 'cite'>;
/** Low and high; then, where printed, the edge of deficiency and the edge of excess. */
type Figures = Partial<Record<LeafNutrient, readonly [number, number, number?, number?]>>;
const PERCENT: ReadonlySet<string> = new Set<LeafNutrient>(['N', 'P', 'K', 'Ca', 'Mg', 'S']);
const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const derived = (source: string, at: string): Cite => ({ source, at, mark: 'derived' });

/** The ranges of one publication for one crop, in the order written. */
function leafTable(head: Head, figures: Figures): LeafRange[] {
  return (Object.entries(figures) as [LeafNutrient, readonly [number, number, number?, number?]][]).map(([nutrient, [low, high, deficient, excess]]) => ({
    ...head, nutrient, unit: PERCENT.has(nutrient) ? '%' : 'ppm', low, high,
    ...(deficient === undefined ? {} : { deficient }), ...(excess === undefined ? {} : { excess }),
  }));
}

const washington = (crop: Crop): Head => ({ crops: [crop], region: 'US-WA', sampled: 'recently mature leaves', cite: read('washington-em119e', 'leaf ranges') });
const michigan = (crop: Crop): Head => ({ crops: [crop], region: 'US-MI', cite: read('michigan-leaf', 'nitrogen, most kinds') });
const washingtonOld = (crops: readonly Crop[], at: string): Head => ({ crops, region: 'US-WA', label: 'old', cite: read('washington-old-leaf', at) });
const ontario = (at: string): Head =>
  ({ crops: ['apple'], region: 'CA-ON', sampled: 'last two weeks of July, middle leaves of this year’s shoots, mature trees', cite: read('ontario-apple-leaf', at) });
const ontarioYoung = (at: string): Head =>
  ({ crops: ['apple'], region: 'CA-ON', sampled: 'last two weeks of July, middle leaves of this year’s shoots', young: true, cite: derived('ontario-apple-leaf', at) });
const compiled = (region: string, at: string): Head => ({ crops: ['apple'], region, cite: read('bc-tfpg-leaf', at) });

export const LEAF_RANGES: readonly LeafRange[] = [
  ...leafTable(michigan('apple'), { N: [1.9, 2.7, 1.9, 2.7] }), ...leafTable(michigan('pear'), { N: [1.9, 2.7, 1.9, 2.7] }),
  ...leafTable(washington('cherry'), { N: [2.0, 3.03] }), ...leafTable(washington('peach'), { N: [2.7, 3.5] }),
  ...leafTable(washington('apple'), { K: [1.2, 1.9] }), ...leafTable(washington('pear'), { K: [1.0, 2.0] }),
  ...leafTable(washington('cherry'), { K: [1.2, 3.3] }), ...leafTable(washington('peach'), { K: [1.2, 3.0] }),
  ...leafTable(washington('apple'), { P: [0.15, 0.3] }), ...leafTable(washington('pear'), { P: [0.12, 0.25] }),
  ...leafTable(washington('cherry'), { P: [0.1, 0.27] }), ...leafTable(washington('peach'), { P: [0.1, 0.3] }),
  ...leafTable({ crops: ['plum'], region: 'US-WA', cite: read('washington-old-leaf', 'plums and prunes') }, { N: [2.4, 3.4] }),
  ...leafTable({ crops: ['citrus'], region: 'US-FL', cite: { source: 'florida-citrus', at: 'citrus leaf nitrogen', mark: 'memory' } }, { N: [2.5, 2.7] }),
  ...leafTable({ crops: ['blueberry'], region: 'CA-BC', sampled: 'mid-July to mid-August, youngest full leaves', cite: read('bc-berry-blueberry', 'table 2, adequate') }, { N: [1.75, 2.0], P: [0.08, 0.1], K: [0.2, 0.4] }),

  // Washington, 2022: the rest of the table. Its sulphur for apple (0.01-0.10) and pear (0.01-0.03) is left out as a likely slip.
  ...leafTable(washington('apple'), { N: [1.7, 2.5], Ca: [1.5, 2.0], Mg: [0.25, 0.35], B: [20, 60], Zn: [15, 200], Mn: [25, 150], Fe: [60, 120], Cu: [5, 12] }),
  ...leafTable(washington('pear'), { N: [1.8, 2.6], Ca: [1.0, 3.7], Mg: [0.25, 0.9], B: [20, 60], Zn: [20, 60], Mn: [20, 170], Fe: [100, 800], Cu: [6, 20] }),
  ...leafTable(washington('cherry'), { Ca: [1.2, 2.37], Mg: [0.3, 0.77], S: [0.2, 0.4], B: [17, 60], Zn: [12, 50], Mn: [17, 160], Fe: [57, 250], Cu: [0, 16] }),
  ...leafTable(washington('peach'), { Ca: [1.0, 2.5], Mg: [0.25, 0.5], S: [0.2, 0.4], B: [20, 80], Zn: [20, 50], Mn: [20, 200], Fe: [120, 200], Cu: [4, 16] }),
  ...leafTable(washington('apricot'), { N: [2.4, 3.3], P: [0.1, 0.3], K: [2.0, 3.5], Ca: [1.1, 4.0], Mg: [0.25, 0.8], S: [0.2, 0.4], B: [20, 70], Zn: [16, 50], Mn: [20, 160], Fe: [60, 250], Cu: [4, 16] }),

  // Michigan, apples and pears.
  ...leafTable({ crops: ['apple', 'pear'], region: 'US-MI', cite: read('michigan-leaf', 'normal range, apples and pears') },
    { P: [0.15, 0.3, 0.13], K: [1.3, 1.9, 1.2, 2.0], Ca: [1.2, 2.0, 0.6], Mg: [0.3, 0.6, 0.25], B: [25, 50, 20, 60], Zn: [20, 50, 15], Mn: [30, 100, 25], Fe: [60, 250], Cu: [10, 20] }),
  ...leafTable({ crops: ['apple'], region: 'US-MI', cite: read('michigan-leaf', 'nitrogen, Golden Delicious and McIntosh kinds') }, { N: [1.7, 2.4, 1.7, 2.4] }),

  // Ontario, apples by variety; trees that do not bear yet 0.2 % more nitrogen.
  ...leafTable(ontario('McIntosh and other varieties'), { N: [2.0, 2.5], P: [0.15, 0.4], K: [1.2, 2.0], Ca: [0.8, 1.5], Mg: [0.25, 0.4], B: [20, 60], Zn: [15, 100], Mn: [20, 200], Fe: [25, 200] }),
  ...leafTable(ontario('Delicious and Crispin'), { N: [2.2, 2.7], K: [1.4, 2.2] }),
  ...leafTable(ontario('Empire and Spy'), { N: [2.1, 2.6], K: [1.3, 2.1], Ca: [0.7, 1.5] }),
  ...leafTable(ontarioYoung('McIntosh and other varieties, 0.2 % more before bearing'), { N: [2.2, 2.7] }),
  ...leafTable(ontarioYoung('Delicious and Crispin, 0.2 % more before bearing'), { N: [2.4, 2.9] }),
  ...leafTable(ontarioYoung('Empire and Spy, 0.2 % more before bearing'), { N: [2.3, 2.8] }),

  // Apples elsewhere.
  ...leafTable({ crops: ['apple'], region: 'US-MA', cite: read('umass-f124', 'leaf analysis, soft varieties') }, { N: [1.8, 2.2] }),
  ...leafTable({ crops: ['apple'], region: 'US-MA', cite: read('umass-f124', 'leaf analysis, hard varieties') }, { N: [2.2, 2.4] }),
  ...leafTable({ crops: ['apple'], region: 'US-MA', cite: read('umass-f124', 'leaf analysis, all varieties') }, { K: [1.2, 1.8], Mg: [0.35, 0.5] }),
  ...leafTable(compiled('CA-BC', 'table 1, British Columbia'), { N: [1.9, 2.3] }),
  ...leafTable(compiled('US-MD', 'table 1, quoting Maryland 2005'), { N: [1.8, 2.8], P: [0.18, 0.3] }),
  ...leafTable(compiled('US-PA', 'table 1, quoting Pennsylvania 2018'), { N: [1.8, 2.8], P: [0.15, 0.3] }),
  ...leafTable(compiled('US-MI', 'table 1, quoting Michigan'), { N: [2.0, 2.6], P: [0.16, 0.3] }),
  ...leafTable({ crops: ['apple'], region: 'GB', cite: read('niab-storage-nutrition', 'Cox, Gala and Braeburn') }, { P: [0.2, 0.25] }),
  ...leafTable({ crops: ['apple'], region: 'GB', cite: read('niab-storage-nutrition', 'Bramley') }, { P: [0.18, 0.23] }),
  ...leafTable({ crops: ['apple'], region: 'IT', sampled: 'late July to early August', cite: read('laimburg-apple', 'table 1, optimum') }, { N: [2.3, 2.6] }),

  // Stone fruit elsewhere.
  ...leafTable({ crops: ['peach'], region: 'US-FL', cite: read('uf-stonefruit-leaf', 'table 1, peaches, of Georgia') }, { N: [2.75, 3.5, 1.7], P: [0.12, 0.5, 0.11], K: [1.5, 2.5, 0.75], Ca: [1.25, 2.5, 1.0], Mg: [0.25, 0.5, 0.2] }),
  ...leafTable({ crops: ['peach'], region: 'US-CA', sampled: 'June or July, middle leaves of this year’s shoots', cite: read('uc-stonefruit-n', 'peach and nectarine') }, { N: [2.6, 3.0] }),
  ...leafTable({ crops: ['plum'], region: 'US-CA', sampled: 'June or July, leaves of spurs without fruit', cite: read('uc-stonefruit-n', 'plum') }, { N: [2.3, 2.8] }),
  ...leafTable({ crops: ['peach'], region: 'US-OR', sampled: 'August', cite: read('oregon-fg53', 'table 2, normal') }, { N: [3.2, 3.8, 2.0, 4.5] }),
  ...leafTable({ crops: ['plum'], kinds: ['prune'], region: 'US-CA', sampled: 'July', cite: read('sacvalley-prune-potassium', 'adequate potassium') }, { K: [1.3, 2.0, 1.0] }),
  ...leafTable({ crops: ['plum'], kinds: ['prune'], region: 'US-OR', sampled: 'August', label: 'old', cite: read('oregon-fg24', 'mature trees, normal') }, { N: [1.8, 2.2, 1.8] }),

  // Washington's older page, after a book of 1980. Its magnesium for apples, printed 0.2-3.5, is a slip and left out.
  ...leafTable({ crops: ['plum'], region: 'US-WA', cite: read('washington-old-leaf', 'stone fruit') }, { P: [0.12, 0.4], K: [1.0, 3.0], Ca: [0.7, 3.7], Mg: [0.25, 1.0], B: [20, 80], Zn: [12, 75], Mn: [20, 300], Fe: [20, 800], Cu: [6, 25] }),
  ...leafTable({ ...washingtonOld(['apple', 'pear'], 'young, not bearing'), young: true }, { N: [2.4, 2.6] }),
  ...leafTable(washingtonOld(['apple', 'pear'], 'young trees in bearing'), { N: [2.2, 2.4] }),
  ...leafTable(washingtonOld(['apple', 'pear'], 'mature soft apples and pears'), { N: [1.8, 2.2] }),
  ...leafTable(washingtonOld(['apple'], 'mature hard and processing apples'), { N: [2.2, 2.4] }),
  ...leafTable(washingtonOld(['apple'], 'apple'), { P: [0.11, 0.3], K: [1.2, 2.0], Ca: [1.5, 2.0], B: [20, 50], Zn: [15, 200], Mn: [25, 150], Fe: [40, 400], Cu: [5, 20] }),
  ...leafTable(washingtonOld(['pear'], 'apples and pears'), { B: [20, 50] }),
  ...leafTable(washingtonOld(['cherry'], 'cherries'), { N: [2.4, 3.4] }),
  ...leafTable(washingtonOld(['peach'], 'peaches'), { N: [3.0, 4.0] }),
  ...leafTable(washingtonOld(STONE.filter((crop) => crop !== 'plum'), 'stone fruit'), { P: [0.12, 0.4], K: [1.0, 3.0], Ca: [0.7, 3.7], Mg: [0.25, 1.0], B: [20, 80], Zn: [12, 75], Mn: [20, 300], Fe: [20, 800], Cu: [6, 25] }),

  // Nuts.
  ...leafTable({ crops: ['almond'], region: 'US-CA', sampled: 'July', cite: read('uc-almond-leaf', 'critical levels, adequate') }, { N: [2.2, 2.5, 2.0, 2.7], P: [0.1, 0.3] }),
  ...leafTable({ crops: ['hazelnut'], region: 'US-OR', sampled: 'August, middle leaves of this year’s shoots', cite: read('osu-hazelnut-em8786', 'table 1, normal') },
    { N: [2.21, 2.5, 1.8, 3.0], P: [0.14, 0.45, 0.1, 0.55], K: [0.81, 2.0, 0.5, 3.0], Ca: [1.01, 2.5, 0.6, 3.0], Mg: [0.25, 0.5, 0.18, 1.0], S: [0.13, 0.2, 0.08, 0.5], Mn: [26, 650, 20, 1000], Fe: [51, 400, 40, 500], Cu: [5, 15, 2, 100] }),
  ...leafTable({ crops: ['pecan'], region: 'US-NM', sampled: 'late July to early August', cite: read('pecan-leaf-nm', 'table 1, adequate') }, { N: [2.5, 3.0], P: [0.14, 0.19], K: [1.2, 2.5], Ca: [0.9, 1.8], Mg: [0.3, 0.6] }),
  ...leafTable({ crops: ['pecan'], region: 'US-GA', cite: read('pecan-leaf-wells', 'abstract, for the south-east') }, { N: [2.5, 2.9], K: [1.3, 1.5] }),
  ...leafTable({ crops: ['pecan'], region: 'US-KS', sampled: 'midsummer', cite: read('kstate-northern-pecans', 'table 1') }, { N: [2.4, 3.0], K: [0.75, 1.0], Mg: [0.3, 0.6], B: [20, 45] }),

  // Warm fruit. Taiwan's figures stand broken over two lines in the text read and are put together here.
  ...leafTable({ crops: ['olive'], region: 'US-CA', sampled: 'late July to early August', cite: read('uc-olive-nitrogen', 'critical values') }, { N: [1.3, 1.7, 1.1, 1.7] }),
  ...leafTable({ crops: ['avocado'], region: 'NZ', sampled: 'autumn', cite: read('nz-hill-avocado-leaf', 'accepted range') }, { N: [2.4, 2.9], B: [30, 50] }),
  ...leafTable({ crops: ['citrus'], kinds: ['mandarin', 'tangerine'], region: 'TW', cite: derived('tw-afa-citrus', 'table 2, tankan mandarin') },
    { N: [3.0, 3.2], P: [0.12, 0.18], K: [1.4, 1.8], Ca: [2.5, 4.5], Mg: [0.26, 0.5], B: [25, 125], Zn: [25, 100], Mn: [25, 200], Fe: [60, 120], Cu: [5, 16] }),

  // Berries and vines. Cornell's first five stand under a heading of ppm and are per cent by their size.
  ...leafTable({ crops: ['grape'], region: 'CA-ON', sampled: 'early summer, whole leaves opposite a bunch', cite: read('ontario-leaf-sampling', 'wine grapes, whole leaves') }, { N: [2.0, 3.0], P: [0.3, 0.4], K: [1.3, 1.4] }),
  ...leafTable({ crops: ['strawberry'], region: 'US-NY', cite: derived('cornell-strawberry-foliar', 'table 14, per cent by size') }, { N: [2.0, 2.8], P: [0.25, 0.4], K: [1.5, 2.5], Ca: [0.7, 1.7], Mg: [0.3, 0.5] }),
  ...leafTable({ crops: ['strawberry'], region: 'US-NY', cite: read('cornell-strawberry-foliar', 'table 14') }, { B: [30, 70], Zn: [20, 50], Mn: [50, 200], Fe: [60, 250], Cu: [6, 20] }),
];

/** Nitrogen rises by 10 % for each 0.1 % that leaf N falls short (Michigan, apples and pears). */
export const LEAF_STEP = { share: 10, per: 0.1, cite: { source: 'michigan-leaf', at: 'nitrogen by leaf', mark: 'read' } satisfies Cite };
