/** Published rules of the southern and eastern United States, each checked against its page. Sums of doses and of two products are marked derived. */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';
import { STONE, TREE_FRUIT } from './crops.ts';
import type { Rule } from './rule.ts';

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const derived = (source: string, at: string): Cite => ({ source, at, mark: 'derived' });
const N_LB = { of: 'N', unit: 'lb' } as const;
const N_OZ = { of: 'N', unit: 'oz' } as const;
const N_1000 = { of: 'N', unit: 'lb/1000 sq ft' } as const;
const LB_OF = (percentN: number): Rule['gives'] => ({ of: 'product', unit: 'lb', percentN });
const OZ_OF = (percentN: number): Rule['gives'] => ({ of: 'product', unit: 'oz', percentN });
const TEN = LB_OF(10);
const THIRTEEN = LB_OF(13);
const TEN_100 = { of: 'product', unit: 'lb/100 sq ft', percentN: 10 } as const;
/** Virginia prints half a pound of 10-10-10 as one cup. */
const TEN_CUPS = { of: 'product', unit: 'cup', percentN: 10, ozPerCup: 8 } as const;

const PEACH_PLUM: readonly Crop[] = ['peach', 'plum'];
const APPLE_PEAR: readonly Crop[] = ['apple', 'pear'];
/** Tennessee says pecans and nut trees; hazel is a bush and almond is not grown there. */
const NUT_TREES: readonly Crop[] = ['pecan', 'walnut', 'chestnut'];
const MUSCADINE = ['muscadine grape', 'muscadine'] as const;

/** Louisiana prints the same pounds of 8-8-8 or of 13-13-13: one rule for each. */
const LOUISIANA_GRADES: readonly Rule[] = [8, 13].flatMap((n): Rule[] => {
  const of = `${n}-${n}-${n}`;
  const gives = LB_OF(n);
  // From the fourth year a nitrogen dose joins: 1/4 lb a year of age of ammonium sulphate (21 %, the low end) or ammonium nitrate (34 %, the high end).
  const late = { low: 0.25 * 0.21, high: 0.25 * 0.34 };
  return [
    { id: `louisiana.citrus.planting.${n}`, source: 'lsu-citrus-home', crops: ['citrus'], region: 'US-LA', by: 'plant', gives, low: 0.5, years: [0, 0], cite: read('lsu-citrus-home', `newly planted, ${of}`) },
    { id: `louisiana.citrus.1-3.${n}`, source: 'lsu-citrus-home', crops: ['citrus'], region: 'US-LA', by: 'years', gives, low: 1, high: 1.5, years: [1, 3], cite: read('lsu-citrus-home', `by age, ${of}`) },
    { id: `louisiana.citrus.4-11.${n}`, source: 'lsu-citrus-home', crops: ['citrus'], region: 'US-LA', by: 'years', gives: N_LB, low: n / 100 + late.low, high: (1.5 * n) / 100 + late.high, years: [4, 11], doses: 2, cite: derived('lsu-citrus-home', `${of} in February and nitrogen in May or June, by age`) },
    { id: `louisiana.citrus.12.${n}`, source: 'lsu-citrus-home', crops: ['citrus'], region: 'US-LA', by: 'plant', gives: N_LB, low: (12 * n) / 100 + 12 * late.low, high: (18 * n) / 100 + 12 * late.high, years: [12, 99], doses: 2, cite: derived('lsu-citrus-home', `${of} in February and nitrogen in May or June, from 12 years`) },
    { id: `louisiana.peach-plum.${n}`, source: 'lsu-home-fruit-nut', crops: PEACH_PLUM, region: 'US-LA', by: 'years', gives, low: 1, cap: 8, years: [1, 99], cite: read('lsu-home-fruit-nut', `peaches and plums by age, ${of}`) },
    { id: `louisiana.apple-pear.${n}`, source: 'lsu-home-fruit-nut', crops: APPLE_PEAR, region: 'US-LA', by: 'years', gives, low: 1, cap: 15, years: [1, 99], cite: read('lsu-home-fruit-nut', `pears and apples by age, ${of}`) },
    { id: `louisiana.grape.${n}`, source: 'lsu-home-fruit-nut', crops: ['grape'], region: 'US-LA', by: 'plant', gives, low: 1, high: 2, cite: read('lsu-home-fruit-nut', `grapes, ${of}`) },
  ];
});

/** Rabbiteye blueberry: the four doses of the page's columns for 15-5-10 alone, summed; the last age holds from there on. */
const LOUISIANA_RABBITEYE: readonly Rule[] = ([[1, 4], [2, 6], [3, 7], [4, 10], [5, 12]] as const).map(([year, low]): Rule => ({
  id: `louisiana.rabbiteye.${year}`, source: 'lsu-f520-blueberry', crops: ['blueberry'], kinds: ['rabbiteye blueberry'], region: 'US-LA', by: 'plant', gives: OZ_OF(15),
  low, years: [year, year === 5 ? 99 : year], first: 1, doses: 4, cite: derived('lsu-f520-blueberry', 'table 1, 15-5-10 alone, four doses'),
}));

/** Tennessee blueberries: 15-15-15 in spring and 3 lb of 34-0-0 six and twelve weeks after, as N. */
const TENNESSEE_BLUEBERRY: readonly Rule[] = ([[1, 2.34], [2, 2.49], [3, 2.64], [4, 2.79]] as const).map(([spring, low]): Rule => ({
  id: `tennessee.blueberry.${spring}`, source: 'tennessee-blueberry-ph', crops: ['blueberry'], region: 'US-TN', by: 'area', gives: N_1000,
  low, years: [spring, spring === 4 ? 99 : spring], doses: 3, cite: derived('tennessee-blueberry-ph', 'item 2, by springs after planting'),
}));

export const RULES_US_SOUTH_EAST: readonly Rule[] = [
  ...LOUISIANA_GRADES, ...LOUISIANA_RABBITEYE, ...TENNESSEE_BLUEBERRY,
  { id: 'louisiana.pecan.trunk', source: 'lsu-sthelena-pecan', crops: ['pecan'], region: 'US-LA', by: 'trunk', gives: LB_OF(8), low: 3, years: [1, 24], cite: read('lsu-sthelena-pecan', '8-8-8 by trunk at 1 ft') },
  { id: 'louisiana.pecan.trunk.25', source: 'lsu-sthelena-pecan', crops: ['pecan'], region: 'US-LA', by: 'trunk', gives: N_LB, low: 0.41, years: [25, 99], doses: 2, cite: derived('lsu-sthelena-pecan', '8-8-8 and ammonium nitrate by trunk, from 25 years') },

  { id: 'georgia.pecan.1', source: 'uga-colquitt-pecan', crops: ['pecan'], region: 'US-GA', by: 'plant', gives: LB_OF(5), low: 1, years: [1, 1], first: 1, doses: 1, if: 'no-soil-test', cite: read('uga-colquitt-pecan', 'new trees, 5-10-15 in June') },
  { id: 'georgia.pecan.2', source: 'uga-colquitt-pecan', crops: ['pecan'], region: 'US-GA', by: 'plant', gives: TEN, low: 2, years: [2, 2], first: 1, doses: 2, if: 'no-soil-test', cite: derived('uga-colquitt-pecan', 'new trees, the following year, 1 lb of 10-10-10 twice') },
  { id: 'georgia.pecan.trunk', source: 'uga-colquitt-pecan', crops: ['pecan'], region: 'US-GA', by: 'trunk', gives: TEN, low: 4, cap: 25, bearing: true, doses: 1, cite: read('uga-colquitt-pecan', '10-10-10 by trunk at 4 1/2 ft, at most 25 lb') },
  { id: 'georgia.pecan.trunk.nitrate', source: 'uga-colquitt-pecan', crops: ['pecan'], region: 'US-GA', by: 'trunk', gives: LB_OF(34), low: 1, cap: 8, bearing: true, doses: 1, cite: read('uga-colquitt-pecan', 'ammonium nitrate by trunk, at most 8 lb') },
  { id: 'georgia.pecan.young.nitrate', source: 'uga-colquitt-pecan', crops: ['pecan'], region: 'US-GA', by: 'trunk', gives: LB_OF(34), low: 1, bearing: false, years: [2, 99], doses: 1, if: 'growth-short', cite: read('uga-colquitt-pecan', 'young trees that grew less than 2 to 4 ft, ammonium nitrate by trunk in June or July') },
  { id: 'maryland.brambles.1-2', source: 'maryland-brambles', crops: ['raspberry', 'blackberry'], region: 'US-MD', by: 'row', gives: N_OZ, low: 8, years: [1, 2], first: 1, doses: 1, cite: derived('maryland-brambles', 'years 1 and 2, 0.80 oz N for 10 ft of row') },
  { id: 'maryland.brambles.3', source: 'maryland-brambles', crops: ['raspberry', 'blackberry'], region: 'US-MD', by: 'row', gives: N_OZ, low: 16, years: [3, 99], first: 1, doses: 1, cite: derived('maryland-brambles', 'from year 3, 1.6 oz N for 10 ft of row') },
  { id: 'south-carolina.pecan.trunk', source: 'clemson-pecan-blog', crops: ['pecan'], region: 'US-SC', by: 'trunk', gives: TEN, low: 4, bearing: true, if: 'no-soil-test', cite: read('clemson-pecan-blog', 'bearing pecans, trunk at 54 in') },

  { id: 'tennessee.nuts.1-3', source: 'ut-pecan-nuts', crops: NUT_TREES, region: 'US-TN', by: 'plant', gives: N_LB, low: 0.1, years: [1, 3], first: 1, label: 'orchard', cite: read('ut-pecan-nuts', 'new trees, second and third year') },
  { id: 'tennessee.nuts.4-5', source: 'ut-pecan-nuts', crops: NUT_TREES, region: 'US-TN', by: 'plant', gives: N_LB, low: 1.5, years: [4, 5], first: 1, label: 'orchard', cite: read('ut-pecan-nuts', 'years 4 and 5') },
  { id: 'tennessee.nuts.6', source: 'ut-pecan-nuts', crops: NUT_TREES, region: 'US-TN', by: 'plant', gives: N_LB, low: 2, years: [6, 99], first: 1, label: 'orchard', cite: read('ut-pecan-nuts', 'from 6 years') },
  { id: 'tennessee.grape.vine', source: 'ut-grape-commercial', crops: ['grape'], region: 'US-TN', by: 'plant', gives: N_LB, low: 0.1, label: 'orchard', cite: read('ut-grape-commercial', 'vines of medium vigour') },
  { id: 'tennessee.grape.weak-vine', source: 'ut-grape-commercial', crops: ['grape'], region: 'US-TN', by: 'plant', gives: N_LB, low: 0.2, if: 'growth-short', label: 'orchard', cite: read('ut-grape-commercial', 'weaker vines') },
  { id: 'tennessee.home.years', source: 'ut-sp307a', crops: ['apple', ...STONE], region: 'US-TN', by: 'years', ground: 'grass', gives: N_LB, low: 0.1, years: [1, 5], cite: read('ut-sp307a', 'fruit trees in sod by age') },
  { id: 'tennessee.home.6', source: 'ut-sp307a', crops: ['apple', ...STONE], region: 'US-TN', by: 'plant', ground: 'grass', gives: N_LB, low: 0.6, high: 0.7, years: [6, 99], cite: read('ut-sp307a', 'fruit trees in sod, level from the sixth or seventh year') },
  { id: 'tennessee.home.trunk', source: 'ut-sp307a', crops: ['apple', ...STONE], region: 'US-TN', by: 'trunk', ground: 'grass', gives: N_LB, low: 0.1, cap: 0.6, cite: read('ut-sp307a', 'age not known, trunk at 1 ft, the lower level') },
  { id: 'tennessee.home.trunk.higher', source: 'ut-sp307a', crops: ['apple', ...STONE], region: 'US-TN', by: 'trunk', ground: 'grass', gives: N_LB, low: 0.1, cap: 0.7, cite: read('ut-sp307a', 'age not known, trunk at 1 ft, the higher level') },
  { id: 'tennessee.pear.trunk', source: 'ut-sp307a', crops: ['pear'], region: 'US-TN', by: 'trunk', ground: 'grass', gives: N_LB, low: 0.05, cap: 0.3, cite: derived('ut-sp307a', 'pears, half the basic rate, trunk at 1 ft') },
  { id: 'tennessee.pear.years', source: 'ut-sp307a', crops: ['pear'], region: 'US-TN', by: 'years', ground: 'grass', gives: N_LB, low: 0.05, years: [1, 5], cite: derived('ut-sp307a', 'pears, half the basic rate') },
  { id: 'tennessee.pear.6', source: 'ut-sp307a', crops: ['pear'], region: 'US-TN', by: 'plant', ground: 'grass', gives: N_LB, low: 0.3, high: 0.35, years: [6, 99], cite: derived('ut-sp307a', 'pears, half the basic rate, level') },

  { id: 'north-carolina.grape.2', source: 'north-carolina-column', crops: ['grape'], region: 'US-NC', by: 'plant', gives: TEN, low: 1.5, years: [2, 2], first: 1, doses: 3, label: 'weak', cite: derived('north-carolina-column', 'grapes, second year, 1/2 lb three times') },
  { id: 'north-carolina.grape.mature', source: 'north-carolina-column', crops: ['grape'], region: 'US-NC', by: 'plant', gives: TEN, low: 2, high: 3, years: [3, 99], first: 1, doses: 2, label: 'weak', cite: derived('north-carolina-column', 'mature vines, March and June') },
  { id: 'north-carolina.blueberry.mature', source: 'north-carolina-column', crops: ['blueberry'], region: 'US-NC', by: 'plant', gives: TEN_CUPS, low: 1, years: [3, 99], first: 1, doses: 1, label: 'weak', cite: derived('north-carolina-column', 'mature plants, one cup of 10-10-10') },
  { id: 'north-carolina.strawberry.first', source: 'nc-poling-strawberry', crops: ['strawberry'], region: 'US-NC', by: 'row', gives: N_LB, low: 0.91, high: 1.42, years: [0, 0], if: 'no-soil-test', label: 'weak', cite: derived('nc-poling-strawberry', '10-10-10 before planting and ammonium nitrate in August; a dose a month after planting where pale') },

  { id: 'georgia.muscadine.1', source: 'ga-code-103-muscadine', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', by: 'plant', gives: N_LB, low: 0.135, high: 0.142, years: [1, 1], first: 1, doses: 3, cite: derived('ga-code-103-muscadine', 'first year, 10-10-10 and two doses of 34-0-0 or 46-0-0') },
  { id: 'georgia.muscadine.2', source: 'ga-code-103-muscadine', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', by: 'plant', gives: N_LB, low: 0.27, high: 0.284, years: [2, 2], first: 1, doses: 3, cite: derived('ga-code-103-muscadine', 'second year, each dose doubled') },
  { id: 'georgia.muscadine.3', source: 'ga-code-103-muscadine', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', by: 'plant', gives: TEN, low: 3, years: [3, 3], first: 1, doses: 2, cite: derived('ga-code-103-muscadine', 'third year, grown well, 2 lb in March and 1 lb in May') },
  { id: 'georgia.muscadine.colquitt.1', source: 'uga-colquitt-muscadine', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', by: 'plant', gives: N_LB, low: 0.135, years: [1, 1], first: 1, doses: 3, cite: derived('uga-colquitt-muscadine', 'first year, half a pound of 10-10-10 and twice 2 oz of ammonium nitrate') },
  { id: 'georgia.muscadine.colquitt.2', source: 'uga-colquitt-muscadine', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', by: 'plant', gives: N_LB, low: 0.27, years: [2, 2], first: 1, doses: 3, cite: derived('uga-colquitt-muscadine', 'second year, each dose doubled') },
  { id: 'georgia.muscadine.colquitt.3', source: 'uga-colquitt-muscadine', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', by: 'plant', gives: N_LB, low: 0.3, years: [3, 3], first: 1, doses: 2, cite: derived('uga-colquitt-muscadine', 'third year, grown well') },
  { id: 'georgia.muscadine.4', source: 'uga-colquitt-muscadine', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', by: 'plant', gives: N_LB, low: 0.47, high: 0.67, years: [4, 99], first: 1, doses: 2, cite: derived('uga-colquitt-muscadine', 'established vines, 10-10-10 in March and ammonium nitrate in June') },
  { id: 'georgia.muscadine.orchard.1', source: 'ga-code-128-muscadine', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', by: 'plant', gives: OZ_OF(10), low: 3, high: 5, years: [1, 1], first: 1, doses: 4, label: 'orchard', cite: derived('ga-code-128-muscadine', 'first year, 1 oz three to five times') },
  { id: 'georgia.strawberry.hill', source: 'ga-code-110-strawberry', crops: ['strawberry'], region: 'US-GA', by: 'area', gives: TEN_100, low: 2.5, years: [0, 0], doses: 3, cite: derived('ga-code-110-strawberry', 'annual hills set in autumn, before planting, at spring growth and at bloom') },
  { id: 'georgia.strawberry.row', source: 'ga-code-110-strawberry', crops: ['strawberry'], region: 'US-GA', by: 'area', gives: TEN_100, low: 4, years: [0, 0], doses: 3, cite: derived('ga-code-110-strawberry', 'matted rows set in spring, first year, three doses') },

  { id: 'florida.pecan.trunk', source: 'fl-nassau-pecan', crops: ['pecan'], region: 'US-FL', by: 'trunk', gives: TEN, low: 4, high: 8, bearing: true, doses: 2, cite: derived('fl-nassau-pecan', 'bearing trees, 2 to 4 lb in February and again in June') },
  { id: 'florida.blueberry.1', source: 'fl-baker-blueberry', crops: ['blueberry'], region: 'US-FL', by: 'plant', gives: OZ_OF(12), low: 5, years: [1, 1], first: 1, doses: 5, cite: derived('fl-baker-blueberry', 'year 1 without mulch, 1 oz of 12-4-8 five times') },
  { id: 'florida.apple.years', source: 'fl-baker-calendar', crops: ['apple'], region: 'US-FL', by: 'years', gives: TEN, low: 1, cap: 7.5, years: [1, 99], first: 1, cite: read('fl-baker-calendar', 'January, apples') },
  { id: 'florida.pear.6', source: 'fl-baker-calendar', crops: ['pear'], region: 'US-FL', by: 'years', gives: LB_OF(6), low: 0.5, cap: 5, years: [1, 99], first: 1, cite: read('fl-baker-calendar', 'January, pears, 6-6-6') },
  { id: 'florida.pear.8', source: 'fl-baker-calendar', crops: ['pear'], region: 'US-FL', by: 'years', gives: LB_OF(8), low: 0.5, cap: 5, years: [1, 99], first: 1, cite: read('fl-baker-calendar', 'January, pears, 8-8-8') },
  { id: 'florida.persimmon.planting', source: 'fl-nassau-persimmon', crops: ['persimmon'], region: 'US-FL', by: 'plant', gives: TEN, low: 0.5, high: 1, years: [0, 0], cite: read('fl-nassau-persimmon', 'first year') },
  { id: 'florida.persimmon.years', source: 'fl-nassau-persimmon', crops: ['persimmon'], region: 'US-FL', by: 'years', gives: TEN, low: 0.5, high: 1, cap: 10, years: [1, 15], doses: 2, cite: read('fl-nassau-persimmon', 'by age') },
  { id: 'florida.persimmon.old', source: 'fl-nassau-persimmon', crops: ['persimmon'], region: 'US-FL', by: 'plant', gives: TEN, low: 8, high: 10, years: [16, 99], doses: 2, cite: derived('fl-nassau-persimmon', 'old trees, the printed maximum') },

  { id: 'mississippi.apple-pear.1', source: 'ms-garden-tips-2002', crops: APPLE_PEAR, region: 'US-MS', by: 'plant', gives: N_LB, low: 0.13 + 0.25 * 0.34, years: [1, 1], first: 1, bearing: false, cite: derived('ms-garden-tips-2002', 'apple and pear, year 1: complete feed taken as 13-13-13, and ammonium nitrate') },
  { id: 'mississippi.apple-pear.2', source: 'ms-garden-tips-2002', crops: APPLE_PEAR, region: 'US-MS', by: 'plant', gives: N_LB, low: 0.26 + 0.5 * 0.34, years: [2, 2], first: 1, bearing: false, cite: derived('ms-garden-tips-2002', 'apple and pear, year 2: complete feed taken as 13-13-13, and ammonium nitrate') },
  { id: 'mississippi.apple-pear.3', source: 'ms-garden-tips-2002', crops: APPLE_PEAR, region: 'US-MS', by: 'plant', gives: N_LB, low: 0.39 + 0.75 * 0.34, years: [3, 3], first: 1, bearing: false, cite: derived('ms-garden-tips-2002', 'apple and pear, year 3: complete feed taken as 13-13-13, and ammonium nitrate') },
  { id: 'mississippi.apple-pear.4', source: 'ms-garden-tips-2002', crops: APPLE_PEAR, region: 'US-MS', by: 'plant', gives: N_LB, low: 0.52 + 0.34, years: [4, 4], first: 1, bearing: false, cite: derived('ms-garden-tips-2002', 'apple and pear, year 4: complete feed taken as 13-13-13, and ammonium nitrate') },
  { id: 'mississippi.apple-pear.5', source: 'ms-garden-tips-2002', crops: APPLE_PEAR, region: 'US-MS', by: 'plant', gives: N_LB, low: 0.65 + 1.5 * 0.34, years: [5, 5], first: 1, bearing: false, cite: derived('ms-garden-tips-2002', 'apple and pear, year 5: complete feed taken as 13-13-13, and ammonium nitrate') },
  { id: 'mississippi.apple-pear.bearing', source: 'ms-garden-tips-2002', crops: APPLE_PEAR, region: 'US-MS', by: 'trunk', gives: THIRTEEN, low: 2, high: 3, bearing: true, years: [4, 99], cite: read('ms-garden-tips-2002', 'bearing apple and pear, trunk above the soil line') },
  { id: 'mississippi.peach-plum.1', source: 'ms-garden-tips-2002', crops: PEACH_PLUM, region: 'US-MS', by: 'plant', gives: THIRTEEN, low: 1, years: [1, 1], first: 1, cite: read('ms-garden-tips-2002', 'peaches, nectarines and plums, first year') },
  { id: 'mississippi.peach-plum.2', source: 'ms-garden-tips-2002', crops: PEACH_PLUM, region: 'US-MS', by: 'plant', gives: THIRTEEN, low: 2, years: [2, 2], first: 1, cite: read('ms-garden-tips-2002', 'peaches, nectarines and plums, second year') },
  { id: 'mississippi.peach-plum.3', source: 'ms-garden-tips-2002', crops: PEACH_PLUM, region: 'US-MS', by: 'plant', gives: THIRTEEN, low: 4, years: [3, 3], first: 1, doses: 2, cite: read('ms-garden-tips-2002', 'peaches, nectarines and plums, third year') },
  { id: 'mississippi.peach-plum.bearing', source: 'ms-garden-tips-2002', crops: PEACH_PLUM, region: 'US-MS', by: 'years', gives: THIRTEEN, low: 1, high: 1.5, cap: 10, bearing: true, years: [3, 9], cite: read('ms-garden-tips-2002', 'bearing peaches, nectarines and plums by age') },
  { id: 'mississippi.peach-plum.old', source: 'ms-garden-tips-2002', crops: PEACH_PLUM, region: 'US-MS', by: 'plant', gives: THIRTEEN, low: 8, high: 10, bearing: true, years: [10, 99], cite: read('ms-garden-tips-2002', 'peaches, nectarines and plums, after 8 to 10 years') },

  { id: 'virginia.nitrate-of-soda', source: 'virginia-note-21', crops: TREE_FRUIT, region: 'US-VA', by: 'years', gives: LB_OF(16), low: 0.5, cap: 5, years: [1, 99], doses: 2, cite: derived('virginia-note-21', 'nitrogen only, nitrate of soda in March and in April') },
  { id: 'virginia.strawberry.planting', source: 'va-soil-test-note-22', crops: ['strawberry'], region: 'US-VA', by: 'area', gives: TEN_100, low: 1.5, years: [0, 0], cite: read('va-soil-test-note-22', 'strawberries before planting, complete feed') },
  { id: 'virginia.strawberry.planting.nitrate', source: 'va-soil-test-note-22', crops: ['strawberry'], region: 'US-VA', by: 'area', gives: { of: 'product', unit: 'lb/100 sq ft', percentN: 15.5 }, low: 1, years: [0, 0], cite: read('va-soil-test-note-22', 'strawberries before planting, calcium nitrate') },

  { id: 'post.1977.large-stone', source: 'post-1977', crops: ['peach', 'plum', 'cherry'], size: 'standard', region: 'US', by: 'plant', gives: TEN, low: 10, bearing: true, years: [5, 99], label: 'old', cite: read('post-1977', 'large peach, plum and cherry') },
  { id: 'post.1978.area', source: 'dc-wapo-1978', crops: TREE_FRUIT, region: 'US-DC', by: 'area', gives: TEN_100, low: 4, bearing: true, label: 'old', cite: read('dc-wapo-1978', '10-6-4 on the ground under the branches') },


  { id: 'new-jersey.grape.1', source: 'nj-small-fruit', crops: ['grape'], region: 'US-NJ', by: 'plant', gives: TEN, low: 1 / 3, years: [1, 1], first: 1, cite: read('nj-small-fruit', 'grapes, year 1') },
  { id: 'new-jersey.grape.2', source: 'nj-small-fruit', crops: ['grape'], region: 'US-NJ', by: 'plant', gives: TEN, low: 0.5, high: 0.75, years: [2, 99], first: 1, cite: read('nj-small-fruit', 'grapes, year 2 on') },

  { id: 'extension.blueberry.1', source: 'eorg-blueberry', crops: ['blueberry'], region: 'US', by: 'plant', gives: LB_OF(21), low: 0.2, years: [1, 1], first: 1, doses: 2, cite: derived('eorg-blueberry', 'ammonium sulphate at bloom and six weeks later') },
  { id: 'extension.blueberry.2', source: 'eorg-blueberry', crops: ['blueberry'], region: 'US', by: 'plant', gives: LB_OF(21), low: 0.4, years: [2, 2], first: 1, doses: 2, cite: derived('eorg-blueberry', 'second year, two doses of 0.2 lb') },
  { id: 'extension.blueberry.3', source: 'eorg-blueberry', crops: ['blueberry'], region: 'US', by: 'plant', gives: LB_OF(21), low: 0.6, years: [3, 99], first: 1, doses: 2, cite: derived('eorg-blueberry', 'third year on, two doses of 0.3 lb') },
];
