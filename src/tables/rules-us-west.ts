/**
 * Published rules of the American Midwest and West and of Canada, in the unit printed, each beside its reference;
 * with them the few berry, fig and persimmon figures of other states that stand in no other table.
 */
import type { Cite } from '../reason/figure.ts';
import { POME, STONE, TREE_FRUIT } from './crops.ts';
import type { Rule } from './rule.ts';

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const derived = (source: string, at: string): Cite => ({ source, at, mark: 'derived' });
const N_LB = { of: 'N', unit: 'lb' } as const;
const N_OZ = { of: 'N', unit: 'oz' } as const;
const N_ACRE = { of: 'N', unit: 'lb/acre' } as const;
const LB_OF = (percentN: number): Rule['gives'] => ({ of: 'product', unit: 'lb', percentN });
const OZ_OF = (percentN: number): Rule['gives'] => ({ of: 'product', unit: 'oz', percentN });
/** Virginia prints half a pound of 10-10-10 as one cup; these pages print cups alone. */
const TEN_CUPS = { of: 'product', unit: 'cup', percentN: 10, ozPerCup: 8 } as const;

const MIDWEST: readonly Rule[] = [
  { id: 'iowa.raspberry.row', source: 'iowa-fertilizing-tree-small-fruits', crops: ['raspberry'], region: 'US-IA', by: 'row', gives: LB_OF(10), low: 4, high: 5, years: [1, 99], doses: 1, cite: read('iowa-fertilizing-tree-small-fruits', 'established raspberries, no woody mulch, in a 2 ft band') },
  { id: 'oregon.raspberry.row', source: 'oregon-ec1306', crops: ['raspberry'], region: 'US-OR', by: 'row', gives: N_OZ, low: 20, high: 30, years: [2, 99], first: 1, doses: 3, cite: derived('oregon-ec1306', 'established, 2 to 3 oz N for 10 ft of row') },
  { id: 'oregon.blackberry.plant', source: 'oregon-ec1303', crops: ['blackberry'], region: 'US-OR', by: 'plant', gives: N_OZ, low: 1, high: 1.5, years: [2, 99], first: 1, doses: 3, cite: read('oregon-ec1303', 'after the planting year, in thirds') },
  { id: 'oregon.caneberries.row', source: 'oregon-caneberries-manure', crops: ['raspberry', 'blackberry'], region: 'US-OR', by: 'row', gives: LB_OF(10), low: 4, high: 6, years: [1, 99], doses: 1, cite: read('oregon-caneberries-manure', 'established, 10-20-20 in early spring') },
  { id: 'oregon.caneberries.weak', source: 'oregon-caneberries-manure', crops: ['raspberry', 'blackberry'], region: 'US-OR', by: 'row', gives: N_LB, low: 0.4 + 0.34, high: 0.6 + 1.5 * 0.34, years: [1, 99], doses: 2, if: 'growth-short', cite: derived('oregon-caneberries-manure', 'plants that lack vigour, with 1 to 1 1/2 lb of ammonium nitrate at bloom') },
  { id: 'illinois.raspberry.plant', source: 'illinois-raspberry', crops: ['raspberry'], region: 'US-IL', by: 'plant', gives: OZ_OF(34), low: 2, high: 4, years: [1, 99], doses: 1, cite: read('illinois-raspberry', 'established plants, ammonium nitrate every spring') },
  { id: 'missouri.elderberry.planting', source: 'missouri-elderberry', crops: ['elderberry'], region: 'US-MO', by: 'area', gives: N_ACRE, low: 0, high: 10, years: [1, 1], first: 1, label: 'orchard', cite: read('missouri-elderberry', 'four to eight weeks after planting, no more than 10 lb') },
  { id: 'missouri.elderberry.bearing', source: 'missouri-elderberry', crops: ['elderberry'], region: 'US-MO', by: 'area', gives: N_ACRE, low: 60, high: 80, bearing: true, doses: 1, label: 'orchard', cite: read('missouri-elderberry', 'mature bearing plantings') },
  { id: 'california.loquat', source: 'crfg-loquat', crops: ['loquat'], region: 'US-CA', by: 'plant', gives: LB_OF(6), low: 3, bearing: true, doses: 3, cite: derived('crfg-loquat', 'trees 8 to 10 ft tall, 1 lb of 6-6-6 three times') },
  { id: 'california.olive', source: 'uc-davis-olive', crops: ['olive'], region: 'US-CA', by: 'plant', gives: N_OZ, low: 0, cite: read('uc-davis-olive', 'olives generally need none') },
  { id: 'iowa.strawberry.june', source: 'iowa-fertilizing-tree-small-fruits', crops: ['strawberry'], region: 'US-IA', by: 'row', gives: LB_OF(10), low: 5, bearing: true, years: [1, 99], when: 'after-harvest', doses: 1, cite: read('iowa-fertilizing-tree-small-fruits', 'June-bearing, after the last harvest') },
  { id: 'iowa.currant.plant', source: 'iowa-small-fruits-1995', crops: ['currant', 'gooseberry'], region: 'US-IA', by: 'plant', gives: TEN_CUPS, low: 1, years: [1, 99], doses: 1, cite: derived('iowa-small-fruits-1995', 'established currants and gooseberries, about a cup') },
  { id: 'kansas.grape.1', source: 'ksu-grapes', crops: ['grape'], region: 'US-KS', by: 'plant', gives: TEN_CUPS, low: 1, years: [1, 1], first: 1, doses: 2, cite: derived('ksu-grapes', 'year of planting, half a cup twice') },
  { id: 'kansas.grape.2', source: 'ksu-grapes', crops: ['grape'], region: 'US-KS', by: 'plant', gives: TEN_CUPS, low: 1, years: [2, 2], first: 1, doses: 1, cite: derived('ksu-grapes', 'second year') },
  { id: 'kansas.grape.3', source: 'ksu-grapes', crops: ['grape'], region: 'US-KS', by: 'plant', gives: TEN_CUPS, low: 2, years: [3, 99], first: 1, cite: derived('ksu-grapes', 'mature vines where the soil wants phosphorus and potassium too') },
  { id: 'kansas.strawberry.august', source: 'ksu-strawberry-august', crops: ['strawberry'], region: 'US-KS', by: 'row', gives: N_LB, low: 0.5, high: 0.75, when: 'after-harvest', doses: 1, cite: read('ksu-strawberry-august', 'nitrogen in the middle of August') },
  { id: 'michigan.strawberry.harvest', source: 'michigan-garden-fruit', crops: ['strawberry'], region: 'US-MI', by: 'row', gives: LB_OF(12), low: 2, high: 3, bearing: true, years: [1, 99], when: 'after-harvest', doses: 1, cite: read('michigan-garden-fruit', 'older text, strawberries after harvest') },
  { id: 'michigan.blueberry.small', source: 'michigan-blueberry-small-plantings', crops: ['blueberry'], region: 'US-MI', by: 'plant', gives: N_OZ, low: 0.5, high: 0.8, label: 'orchard', cite: read('michigan-blueberry-small-plantings', 'field rate told a plant at 3 by 10 ft') },
  { id: 'michigan.blueberry.new', source: 'michigan-blueberry-new-replants', crops: ['blueberry'], region: 'US-MI', by: 'plant', gives: N_OZ, low: 0.125, years: [1, 1], first: 1, label: 'orchard', cite: read('michigan-blueberry-new-replants', 'newly planted, 3 by 10 ft') },
  { id: 'michigan.blueberry.area.2', source: 'michigan-blueberry-time', crops: ['blueberry'], region: 'US-MI', by: 'area', gives: N_ACRE, low: 15, years: [2, 2], label: 'orchard', cite: read('michigan-blueberry-time', 'table 1, age 2') },
  { id: 'michigan.blueberry.area.4', source: 'michigan-blueberry-time', crops: ['blueberry'], region: 'US-MI', by: 'area', gives: N_ACRE, low: 30, years: [4, 4], label: 'orchard', cite: read('michigan-blueberry-time', 'table 1, age 4') },
  { id: 'michigan.blueberry.area.6', source: 'michigan-blueberry-time', crops: ['blueberry'], region: 'US-MI', by: 'area', gives: N_ACRE, low: 45, years: [6, 6], label: 'orchard', cite: read('michigan-blueberry-time', 'table 1, age 6') },
  { id: 'michigan.blueberry.area.8', source: 'michigan-blueberry-time', crops: ['blueberry'], region: 'US-MI', by: 'area', gives: N_ACRE, low: 65, years: [8, 99], label: 'orchard', cite: read('michigan-blueberry-time', 'table 1, age 8, its last row') },
  { id: 'missouri.chestnut.1', source: 'missouri-chestnut', crops: ['chestnut'], region: 'US-MO', by: 'plant', gives: N_LB, low: 0.1, years: [1, 1], first: 1, doses: 1, cite: read('missouri-chestnut', 'first growing season, a month after planting') },
  { id: 'missouri.chestnut.2', source: 'missouri-chestnut', crops: ['chestnut'], region: 'US-MO', by: 'plant', gives: N_LB, low: 0.2, years: [2, 2], first: 1, doses: 1, cite: read('missouri-chestnut', 'second growing season') },
  { id: 'missouri.chestnut.3', source: 'missouri-chestnut', crops: ['chestnut'], region: 'US-MO', by: 'plant', gives: N_LB, low: 0.3, years: [3, 3], first: 1, doses: 1, cite: read('missouri-chestnut', 'third growing season') },
];

const MOUNTAIN: readonly Rule[] = [
  { id: 'utah.orchard.years', source: 'usu-intermountain-macronutrients', crops: TREE_FRUIT, region: 'US-UT', by: 'years', gives: N_LB, low: 0.01, high: 0.04, cap: 0.3, years: [1, 99], label: 'orchard', cite: read('usu-intermountain-macronutrients', 'nitrogen, typical needs') },
  { id: 'new-mexico.apple.years', source: 'nmsu-h319-apple', crops: ['apple'], region: 'US-NM', by: 'years', gives: N_LB, low: 0.05, bearing: false, years: [1, 99], label: 'orchard', cite: read('nmsu-h319-apple', 'young trees by age') },
  { id: 'new-mexico.apple.trunk', source: 'nmsu-h319-apple', crops: ['apple'], region: 'US-NM', by: 'trunk', gives: N_LB, low: 0.2, bearing: false, years: [1, 99], label: 'orchard', cite: read('nmsu-h319-apple', 'young trees by trunk') },
  { id: 'new-mexico.apple.area', source: 'nmsu-h319-apple', crops: ['apple'], region: 'US-NM', by: 'area', gives: N_ACRE, low: 150, high: 200, bearing: true, label: 'orchard', cite: read('nmsu-h319-apple', 'mature, heavy-bearing') },
  { id: 'arizona.pome.trunk', source: 'arizona-ng-fruit-trees', crops: POME, region: 'US-AZ', by: 'trunk', gives: N_LB, low: 0.1, years: [1, 99], cite: read('arizona-ng-fruit-trees', 'nitrogen an inch of trunk, apple and pear') },
  { id: 'arizona.stone.trunk', source: 'arizona-ng-fruit-trees', crops: STONE, region: 'US-AZ', by: 'trunk', gives: N_LB, low: 0.05, years: [1, 99], cite: read('arizona-ng-fruit-trees', 'nitrogen an inch of trunk, stone fruit') },
  { id: 'arizona.orange.trial', source: 'arizona-young-navel-trial', crops: ['citrus'], kinds: ['orange'], region: 'US-AZ', by: 'plant', gives: N_LB, low: 0.4, high: 0.55, bearing: true, label: 'orchard', cite: read('arizona-young-navel-trial', 'rates of highest yield in a trial of young bearing navels') },
];

/** Six pounds of 15-15-15 a mature tree hold 0.9 lb of each oxide; the nitrogen of the same trial lies within the page's own span. */
const AVOCADO: readonly Rule[] = [
  { id: 'california.avocado.1', source: 'ucce-ventura-avocado', crops: ['avocado'], region: 'US-CA', by: 'plant', gives: N_OZ, low: 1, years: [1, 1], first: 1, doses: 4, cite: read('ucce-ventura-avocado', 'first year, in 4 or 5 doses') },
  { id: 'california.avocado.2', source: 'ucce-ventura-avocado', crops: ['avocado'], region: 'US-CA', by: 'plant', gives: N_OZ, low: 2, years: [2, 2], first: 1, doses: 4, cite: derived('ucce-ventura-avocado', 'following year, double') },
  { id: 'california.avocado.young', source: 'uc-avocado-care', crops: ['avocado'], region: 'US-CA', by: 'plant', gives: N_LB, low: 0.25, bearing: false, cite: read('uc-avocado-care', 'young trees') },
  { id: 'california.avocado.mature', source: 'uc-avocado-care', crops: ['avocado'], region: 'US-CA', by: 'plant', gives: N_LB, low: 1.5, high: 2, bearing: true, cite: read('uc-avocado-care', 'mature trees') },
  { id: 'california.avocado.mature.p2o5', source: 'uc-avocado-care', crops: ['avocado'], region: 'US-CA', by: 'plant', gives: { of: 'P2O5', unit: 'lb' }, low: 0.9, bearing: true, label: 'orchard', cite: derived('uc-avocado-care', 'mature trees in advisors’ trials, 6 lb of 15-15-15') },
  { id: 'california.avocado.mature.k2o', source: 'uc-avocado-care', crops: ['avocado'], region: 'US-CA', by: 'plant', gives: { of: 'K2O', unit: 'lb' }, low: 0.9, bearing: true, label: 'orchard', cite: derived('uc-avocado-care', 'mature trees in advisors’ trials, 6 lb of 15-15-15') },
];

/** Walnut, home: the sulphate that the page prints for the first row holds more than its ounces of nitrogen; the nitrogen is taken. */
const CALIFORNIA_WALNUT: readonly Rule[] = [
  { id: 'california.walnut.1-2', source: 'uc-ipm-walnut-home', crops: ['walnut'], region: 'US-CA', by: 'plant', gives: N_OZ, low: 1, high: 2, years: [1, 2], doses: 3, cite: read('uc-ipm-walnut-home', 'rates, 1 to 2 years') },
  { id: 'california.walnut.2-5', source: 'uc-ipm-walnut-home', crops: ['walnut'], region: 'US-CA', by: 'plant', gives: N_LB, low: 0.33, high: 0.5, years: [2, 5], doses: 3, cite: read('uc-ipm-walnut-home', 'rates, 2 to 5 years') },
  { id: 'california.walnut.6-7', source: 'uc-ipm-walnut-home', crops: ['walnut'], region: 'US-CA', by: 'plant', gives: N_LB, low: 0.5, high: 0.75, years: [6, 7], doses: 3, cite: read('uc-ipm-walnut-home', 'rates, 6 to 7 years') },
  { id: 'california.walnut.8-10', source: 'uc-ipm-walnut-home', crops: ['walnut'], region: 'US-CA', by: 'plant', gives: N_LB, low: 0.75, high: 1.5, years: [8, 10], doses: 3, cite: read('uc-ipm-walnut-home', 'rates, 8 to 10 years') },
  { id: 'california.walnut.mature', source: 'uc-ipm-walnut-home', crops: ['walnut'], region: 'US-CA', by: 'plant', gives: N_LB, low: 1.5, high: 3, years: [11, 99], doses: 3, cite: read('uc-ipm-walnut-home', 'rates, mature trees') },
  { id: 'california.walnut.orchard.1', source: 'ucce-young-walnut', crops: ['walnut'], region: 'US-CA', by: 'plant', gives: N_LB, low: 0.25, years: [1, 1], first: 1, label: 'orchard', cite: read('ucce-young-walnut', 'first year') },
  { id: 'california.walnut.orchard.4-6', source: 'ucce-young-walnut', crops: ['walnut'], region: 'US-CA', by: 'plant', gives: N_LB, low: 1, years: [4, 6], first: 1, label: 'orchard', cite: read('ucce-young-walnut', 'years 4 to 6, for growth, beside what the crop takes') },
];

const CALIFORNIA: readonly Rule[] = [
  { id: 'california.mature.urea', source: 'california-stone-pome', crops: TREE_FRUIT, region: 'US-CA', climate: 'warm', by: 'plant', gives: LB_OF(46), low: 2, bearing: true, years: [5, 99], cite: read('california-stone-pome', 'mature trees, urea') },
  { id: 'san-diego.mature', source: 'sandiego-mg-fruit-trees', crops: TREE_FRUIT, region: 'US-CA', climate: 'warm', by: 'plant', gives: N_LB, low: 1, bearing: true, years: [5, 99], doses: 3, cite: read('sandiego-mg-fruit-trees', 'mature trees, 5 years and older') },
  { id: 'ventura.mature', source: 'ucce-ventura-fruit-trees', crops: TREE_FRUIT, region: 'US-CA', climate: 'warm', by: 'plant', gives: N_LB, low: 1, high: 2, bearing: true, years: [5, 99], doses: 2, cite: read('ucce-ventura-fruit-trees', 'mature trees') },
  { id: 'ventura.mature.p2o5', source: 'ucce-ventura-fruit-trees', crops: TREE_FRUIT, region: 'US-CA', climate: 'warm', by: 'plant', gives: { of: 'P2O5', unit: 'lb' }, low: 1, high: 2, bearing: true, years: [5, 99], doses: 2, cite: derived('ucce-ventura-fruit-trees', 'mature trees, as much as the nitrogen, by 16-16-16') },
  { id: 'ventura.mature.k2o', source: 'ucce-ventura-fruit-trees', crops: TREE_FRUIT, region: 'US-CA', climate: 'warm', by: 'plant', gives: { of: 'K2O', unit: 'lb' }, low: 1, high: 2, bearing: true, years: [5, 99], doses: 2, cite: derived('ucce-ventura-fruit-trees', 'mature trees, as much as the nitrogen, by 16-16-16') },
  { id: 'california.stone.area', source: 'uc-stonefruit-n', crops: ['peach', 'plum'], region: 'US-CA', climate: 'warm', by: 'area', gives: N_ACRE, low: 25, high: 75, bearing: true, label: 'orchard', cite: read('uc-stonefruit-n', 'peach, nectarine and plum') },
  { id: 'california.almond.young', source: 'uc-ipm-almond-home', crops: ['almond'], region: 'US-CA', by: 'plant', gives: N_OZ, low: 1, high: 2, bearing: false, cite: read('uc-ipm-almond-home', 'young trees') },
  // The page names the pound of a mature tree and that it is reached as the tree grows; an ounce a year of age is its advisers' rule.
  { id: 'california.almond.mature', source: 'uc-ipm-almond-home', crops: ['almond'], region: 'US-CA', by: 'years', gives: N_OZ, low: 1, cap: 16, bearing: true, years: [1, 99], cite: derived('uc-ipm-almond-home', 'rising with age to a pound of nitrogen') },
  { id: 'california.almond.orchard.1', source: 'uc-young-almond', crops: ['almond'], region: 'US-CA', by: 'plant', gives: N_OZ, low: 1, years: [1, 1], first: 1, label: 'orchard', cite: read('uc-young-almond', 'the University’s rate for the first season') },
  { id: 'california.almond.orchard.first-leaf', source: 'uc-young-almond-tips', crops: ['almond'], region: 'US-CA', by: 'plant', gives: N_OZ, low: 3, high: 4, years: [1, 1], first: 1, doses: 3, label: 'orchard', cite: derived('uc-young-almond-tips', 'first leaf, at most 1 oz three or four times') },
];

const PACIFIC_NORTHWEST: readonly Rule[] = [
  { id: 'oregon.prune.0-2', source: 'oregon-fg24', crops: ['plum'], kinds: ['prune'], region: 'US-OR', by: 'plant', gives: N_LB, low: 0, years: [0, 2], label: 'orchard', cite: read('oregon-fg24', 'planting to 2 years') },
  { id: 'oregon.kiwifruit.1', source: 'pnw507-kiwifruit', crops: ['kiwifruit'], region: 'US-OR', by: 'plant', gives: N_OZ, low: 0, high: 1.2, years: [1, 1], first: 1, doses: 3, cite: derived('pnw507-kiwifruit', 'first year, at most 0.4 oz in each of three months') },
  { id: 'oregon.kiwifruit.2', source: 'pnw507-kiwifruit', crops: ['kiwifruit'], region: 'US-OR', by: 'plant', gives: N_OZ, low: 3.2, years: [2, 2], first: 1, doses: 4, cite: derived('pnw507-kiwifruit', 'year after planting, 0.8 oz in each of four months') },
  { id: 'oregon.kiwifruit.3-4', source: 'pnw507-kiwifruit', crops: ['kiwifruit'], region: 'US-OR', by: 'plant', gives: N_OZ, low: 6, high: 9, years: [3, 4], first: 1, doses: 3, cite: derived('pnw507-kiwifruit', 'third and fourth year, 2 to 3 oz every other month from March to July') },
  { id: 'oregon.kiwifruit.mature', source: 'berrygrape-kiwi', crops: ['kiwifruit'], region: 'US-OR', by: 'plant', gives: N_LB, low: 1, years: [5, 99], doses: 2, label: 'orchard', cite: read('berrygrape-kiwi', 'mature vines, two thirds in March and the rest in May or June') },
];

const CANADA: readonly Rule[] = [
];

/** The cooperative extension services' common blueberry page: twice the printed dose of sulphate a year. */
const ELSEWHERE: readonly Rule[] = [
  { id: 'penn.currant.plant', source: 'penn-currant', crops: ['currant', 'gooseberry'], region: 'US-PA', by: 'plant', gives: OZ_OF(10), low: 6, high: 8, doses: 1, cite: read('penn-currant', 'early spring, every year') },
];

export const RULES_US_WEST: readonly Rule[] = [...MIDWEST, ...MOUNTAIN, ...CALIFORNIA, ...AVOCADO, ...CALIFORNIA_WALNUT, ...PACIFIC_NORTHWEST, ...CANADA, ...ELSEWHERE];
