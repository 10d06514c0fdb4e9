/**
 * Wanted growth of the shoots in a year, by crop and by whether the plant bears. Ranges with both ends printed only;
 * where a page says "about 12 inches" both ends are 12.
 */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';
import { TREE_FRUIT } from './crops.ts';

export type GrowthRange = {
  readonly crops: readonly Crop[];
  /** The growers' words for it, where a range is for some kinds of the crop only. */
  readonly kinds?: readonly string[];
  readonly region: string;
  readonly bearing: boolean;
  readonly low: number;
  readonly high: number;
  readonly unit: 'in' | 'cm';
  /** Orchard figures, old or weak pages: they widen the span, are labelled, and never lead. */
  readonly label?: 'orchard' | 'old' | 'weak';
  readonly cite: Cite;
};

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const iowa = read('iowa-fruit-trees', 'wanted growth');
const colorado = read('colorado-1216', 'growth by kind of tree');
const utah = read('utah-backyard', 'shoot growth');
const kansas = read('kansas-home-orchard', 'growth of last year, age not said');
const tennesseeNuts = read('ut-pecan-nuts', 'terminal shoots, any age');
const TART = ['tart cherry', 'sour cherry'];

export const GROWTH_RANGES: readonly GrowthRange[] = [
  { crops: ['peach'], region: 'US-UT', bearing: true, low: 12, high: 18, unit: 'in', cite: read('utah-backyard', 'peach growth') },
  { crops: ['blueberry'], region: 'US-NC', bearing: true, low: 6, high: 12, unit: 'in', cite: read('north-carolina-column', 'blueberry growth') },
  { crops: ['fig'], region: 'US-LA', bearing: true, low: 12, high: 18, unit: 'in', cite: read('louisiana-fig', 'enough growth') },
  { crops: ['fig'], region: 'US-LA', bearing: false, low: 12, high: 18, unit: 'in', cite: read('louisiana-fig', 'enough growth') },
  { crops: ['apple', 'pear', 'plum', 'cherry'], region: 'US-IA', bearing: true, low: 8, high: 15, unit: 'in', cite: iowa },
  { crops: ['apple', 'pear', 'peach', 'plum', 'cherry'], region: 'US-IA', bearing: false, low: 15, high: 30, unit: 'in', cite: iowa },

  // Iowa prints its range for fruit trees in general; these two are the rest of them.
  { crops: ['peach', 'apricot'], region: 'US-IA', bearing: true, low: 8, high: 15, unit: 'in', cite: iowa },
  { crops: ['apricot'], region: 'US-IA', bearing: false, low: 15, high: 30, unit: 'in', cite: iowa },
  { crops: ['apple', 'pear', 'plum', 'apricot', 'cherry'], region: 'US-UT', bearing: true, low: 8, high: 12, unit: 'in', cite: utah },
  { crops: TREE_FRUIT, region: 'US-UT', bearing: false, low: 12, high: 18, unit: 'in', cite: utah },
  { crops: ['apple'], region: 'US-CO', bearing: true, low: 12, high: 24, unit: 'in', cite: colorado },
  { crops: ['apple'], region: 'US-CO', bearing: false, low: 24, high: 36, unit: 'in', cite: colorado },
  { crops: ['pear'], region: 'US-CO', bearing: true, low: 6, high: 12, unit: 'in', cite: colorado },
  { crops: ['pear'], region: 'US-CO', bearing: false, low: 12, high: 26, unit: 'in', cite: colorado },
  { crops: ['peach'], region: 'US-CO', bearing: true, low: 10, high: 18, unit: 'in', cite: colorado },
  { crops: ['peach'], region: 'US-CO', bearing: false, low: 16, high: 24, unit: 'in', cite: colorado },
  { crops: ['apple'], region: 'US-KS', bearing: true, low: 8, high: 10, unit: 'in', cite: kansas },
  { crops: ['cherry'], region: 'US-KS', bearing: true, low: 10, high: 12, unit: 'in', cite: kansas },
  { crops: ['peach'], region: 'US-KS', bearing: true, low: 12, high: 15, unit: 'in', cite: kansas },
  { crops: TREE_FRUIT, region: 'US-NC', bearing: true, low: 8, high: 15, unit: 'in', cite: read('nc-guilford-fruit', 'bearing trees') },
  { crops: TREE_FRUIT, region: 'US-NC', bearing: false, low: 15, high: 30, unit: 'in', cite: read('nc-guilford-fruit', 'trees not bearing') },
  { crops: TREE_FRUIT, region: 'US-NC', bearing: true, low: 10, high: 18, unit: 'in', cite: { source: 'north-carolina-quick', at: 'may need feed under 10 to 12, none over 18, age not said', mark: 'derived' } },
  { crops: TREE_FRUIT, region: 'US-NY', bearing: true, low: 10, high: 12, unit: 'in', cite: read('new-york-home-fruit', 'fruit trees, mature') },
  { crops: TREE_FRUIT, region: 'US-NY', bearing: false, low: 18, high: 24, unit: 'in', cite: read('new-york-home-fruit', 'fruit trees, first several years') },
  { crops: ['apple'], region: 'US-MI', bearing: true, low: 8, high: 12, unit: 'in', cite: read('michigan-oc414', 'rule of thumb, age not said') },
  { crops: ['peach'], region: 'US-MI', bearing: true, low: 12, high: 18, unit: 'in', cite: read('michigan-oc414', 'rule of thumb, age not said') },
  { crops: ['pecan'], region: 'US-LA', bearing: true, low: 8, high: 12, unit: 'in', cite: read('lsu-richland-pecan', 'terminal growth of a mature bearing tree') },
  { crops: ['pecan'], region: 'US-GA', bearing: false, low: 24, high: 48, unit: 'in', cite: read('uga-colquitt-pecan', 'young trees, two to four feet') },
  { crops: ['fig'], region: 'US-GA', bearing: true, low: 12, high: 12, unit: 'in', cite: read('georgia-fig', 'mature plants, about a foot') },
  { crops: ['peach', 'apricot'], region: 'US', bearing: true, low: 15, high: 18, unit: 'in', cite: read('nga-fruit-tree-care', 'trees bearing on year-old wood') },

  { crops: ['apple', 'pear'], region: 'US-MI', bearing: true, low: 8, high: 12, unit: 'in', label: 'orchard', cite: read('michigan-leaf', 'growth as a guide') },
  { crops: ['apple', 'pear'], region: 'US-MI', bearing: false, low: 12, high: 24, unit: 'in', label: 'orchard', cite: read('michigan-leaf', 'growth as a guide') },
  { crops: ['apple'], region: 'US-MA', bearing: true, low: 8, high: 15, unit: 'in', label: 'orchard', cite: read('umass-f124', 'growth, bearing years') },
  { crops: ['apple'], region: 'US-MA', bearing: false, low: 6, high: 24, unit: 'in', label: 'orchard', cite: { source: 'umass-f124', at: 'growth, printed as half a foot to two feet', mark: 'derived' } },
  { crops: ['apple'], region: 'US-TN', bearing: true, low: 12, high: 14, unit: 'in', label: 'orchard', cite: read('tennessee-apples', 'mature trees, not of spur type') },
  { crops: ['apple'], region: 'US-TN', bearing: true, low: 6, high: 10, unit: 'in', label: 'orchard', cite: read('tennessee-apples', 'mature trees of spur type') },
  { crops: ['apple'], region: 'US-TN', bearing: false, low: 15, high: 30, unit: 'in', label: 'orchard', cite: read('tennessee-apples', 'trees not bearing') },
  { crops: ['cherry'], kinds: TART, region: 'US-TN', bearing: true, low: 10, high: 15, unit: 'in', label: 'orchard', cite: read('tennessee-cherries', 'cherries, bearing') },
  { crops: ['apple'], region: 'US-OR', bearing: false, low: 18, high: 30, unit: 'in', label: 'orchard', cite: read('oregon-fg23', 'young trees') },
  { crops: ['peach'], region: 'US-OR', bearing: false, low: 24, high: 36, unit: 'in', label: 'orchard', cite: read('oregon-fg53', 'young trees') },
  { crops: ['apple'], region: 'US-NM', bearing: true, low: 6, high: 10, unit: 'in', label: 'orchard', cite: read('nmsu-h319-apple', 'mature trees with heavy crops') },
  { crops: ['apple'], region: 'US-NM', bearing: false, low: 24, high: 36, unit: 'in', label: 'orchard', cite: read('nmsu-h319-apple', 'young trees') },
  { crops: ['peach'], kinds: ['nectarine'], region: 'US-GA', bearing: true, low: 18, high: 24, unit: 'in', label: 'orchard', cite: read('georgia-crop-sheets', 'sheet 119, bearing nectarines') },
  { crops: ['pecan', 'walnut', 'chestnut', 'hazelnut'], region: 'US-TN', bearing: true, low: 12, high: 12, unit: 'in', label: 'orchard', cite: tennesseeNuts },
  { crops: ['pecan', 'walnut', 'chestnut', 'hazelnut'], region: 'US-TN', bearing: false, low: 12, high: 12, unit: 'in', label: 'orchard', cite: tennesseeNuts },
  { crops: ['apple', 'pear'], region: 'DK', bearing: true, low: 30, high: 50, unit: 'cm', label: 'orchard', cite: read('dk-okoportalen-frugt', 'pome fruit, growth a year') },

  { crops: ['plum'], kinds: ['prune'], region: 'US-OR', bearing: false, low: 18, high: 36, unit: 'in', label: 'old', cite: read('oregon-fg24', 'young trees') },

];

/** Spur-type apples grow little by nature: inches, bearing. */
export const SPUR_TYPE = { low: 6, high: 10, unit: 'in', cite: read('tennessee-apples', 'spur types, bearing') } as const;
