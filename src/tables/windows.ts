/**
 * When publications feed: by what the tree does, or by months as printed, each beside its reference.
 * A row in months holds in its own place alone; one by what the tree does serves the neighbours too.
 */
import type { Cite } from '../reason/figure.ts';
import type { SaidId } from '../words/words.ts';
import type { Crop } from './crops.ts';
import { STONE, TREE_FRUIT } from './crops.ts';
import { FIRST_DOSE, FIRST_DOSE_SAND, SECOND_DOSE } from './timing.ts';

/** What the tree does when it is fed; `month` where the calendar alone is printed, `later` for a dose so long after another. */
export const PHASE_IDS = ['late-winter', 'before-bloom', 'bud-break', 'bloom', 'petal-fall', 'later', 'after-harvest', 'after-crop', 'month'] as const;
export type Phase = (typeof PHASE_IDS)[number];

const inDays: Cite = { source: 'medlar', at: 'phase-days', mark: 'practice' };
/** Days from bud break. Buds swell about two weeks before they break, bloom is taken as three weeks after, petal fall as five, picking as fifteen to twenty-one. */
export const PHASES = {
  'late-winter': { from: -42, until: -7, cite: inDays },
  // A month before bloom is nine days before bud break.
  'before-bloom': { from: -28, until: -9, cite: inDays },
  'bud-break': FIRST_DOSE,
  bloom: FIRST_DOSE_SAND,
  'petal-fall': { from: 14, until: 35, cite: inDays },
  later: SECOND_DOSE,
  'after-harvest': { from: 105, until: 150, cite: inDays },
  /** After picking, and only where there was a crop to pick. */
  'after-crop': { from: 105, until: 150, cite: inDays },
} as const;

type MonthDate = readonly [month: number, date: number];
/** One dose: by dates where months are printed, else by its own span of days from bud break, else by its phase. */
export type TimedDose = { readonly phase: Phase; readonly dates?: readonly [MonthDate, MonthDate]; readonly span?: readonly [number, number] };

export type Timing = {
  readonly id: string;
  readonly crops: readonly Crop[];
  readonly kinds?: readonly string[];
  readonly region: string;
  readonly bearing?: boolean;
  /** Years since planting. */
  readonly years?: readonly [number, number];
  /** A key of words: how the publication puts it. */
  readonly said: SaidId;
  readonly doses: readonly TimedDose[];
  /** As many doses as the table asks for, at even distances between the printed months. */
  readonly even?: true;
  /** Its number of doses holds where the rule that leads prints none. */
  readonly splits?: true;
  /** Shares of the year's nitrogen, where they are not equal. */
  readonly shares?: readonly number[];
  /** What is printed for light soil. */
  readonly sand?: readonly TimedDose[];
  /** Serves places without a row of their own where winters are not cold. */
  readonly everywhere?: true;
  /** Told among the others; leads only with a rule of its own publication. */
  readonly label?: 'orchard' | 'weak';
  readonly cite: Cite;
};

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const at = (phase: Exclude<Phase, 'month'>): TimedDose => ({ phase });
/** From the first to the last day of the months, or of their named part. */
const months = (from: number, until = from, dates: readonly [number, number] = [1, 31]): TimedDose => ({ phase: 'month', dates: [[from, dates[0]], [until, dates[1]]] });
const mid = (month: number): TimedDose => months(month, month, [8, 22]);
const late = (month: number): TimedDose => months(month, month, [21, 31]);
const weeksLater = (weeks: number): TimedDose => ({ phase: 'later', span: [FIRST_DOSE.from + 7 * weeks, FIRST_DOSE.until + 7 * weeks] });
const MUSCADINE = ['muscadine grape', 'muscadine'] as const;

/** Home pages and orchard pages on trees in general. */
const TREES: readonly Timing[] = [
  { id: 'michigan', crops: TREE_FRUIT, region: 'US-MI', said: 'before-bud-break', doses: [at('bud-break')], cite: read('michigan-garden-fruit', 'April to mid-May, before bud break') },
  { id: 'michigan.oakland', crops: TREE_FRUIT, region: 'US-MI', said: 'late-fall-or-spring', doses: [at('bud-break')], label: 'weak', cite: read('michigan-oc414', 'late fall or early spring') },
  { id: 'iowa', crops: TREE_FRUIT, region: 'US-IA', said: 'before-bud-break', doses: [at('bud-break')], cite: read('iowa-fruit-trees', 'early spring before bud break') },
  { id: 'colorado', crops: TREE_FRUIT, region: 'US-CO', said: 'before-bud-break', doses: [at('bud-break')], cite: read('colorado-1216', 'spring, before or at bud break') },
  { id: 'colorado.7612', crops: TREE_FRUIT, region: 'US-CO', said: 'late-fall-or-spring', doses: [at('bud-break')], cite: read('colorado-7612', 'spring, or late fall for nitrogen') },
  { id: 'utah', crops: TREE_FRUIT, region: 'US-UT', said: 'month-before-bloom', doses: [at('before-bloom')], cite: read('utah-column', 'at least a month before bloom') },
  { id: 'georgia', crops: TREE_FRUIT, region: 'US-GA', said: 'round-bloom', doses: [at('bloom')], label: 'weak', cite: read('georgia-news-copy', 'just before or during bloom; if missed, after it') },
  { id: 'kansas', crops: TREE_FRUIT, region: 'US-KS', said: 'at-bloom', doses: [at('bloom')], cite: read('kansas-video', 'as the tree enters bloom') },
  { id: 'virginia', crops: TREE_FRUIT, region: 'US-VA', said: 'march-april', doses: [months(3), months(4)], splits: true, cite: read('virginia-note-21', 'equal doses in March and April') },
  { id: 'north-carolina', crops: TREE_FRUIT, region: 'US-NC', said: 'late-winter', doses: [at('late-winter')], sand: [at('late-winter'), months(5)], cite: read('north-carolina-quick', 'late winter; on sandy soil half then and half in May') },
  { id: 'uk', crops: [...TREE_FRUIT, 'quince', 'medlar', 'fig', 'mulberry'], region: 'GB', said: 'late-winter-spring', doses: [at('bud-break')], cite: read('rhs-feeding', 'late winter or early spring, soil moist') },
  { id: 'california', crops: TREE_FRUIT, region: 'US-CA', said: 'spring-or-harvest', doses: [at('bud-break')], cite: read('california-stone-pome', 'all in spring, or spring and just after harvest') },
  { id: 'san-diego', crops: TREE_FRUIT, region: 'US-CA', bearing: true, said: 'six-weeks-apart', doses: [{ phase: 'later', span: [0, 14] }, { phase: 'later', span: [42, 56] }, { phase: 'later', span: [84, 98] }], label: 'weak', cite: read('sandiego-mg-todo', 'two or three equal lots six weeks apart once growth starts') },
  { id: 'illinois', crops: TREE_FRUIT, region: 'US-IL', said: 'spring-or-leaf-fall', doses: [at('bud-break')], label: 'weak', cite: read('illinois-trees', 'early spring or after leaf fall, of all trees') },
  { id: 'victoria', crops: TREE_FRUIT, region: 'AU', said: 'march-september', doses: [months(9)], label: 'weak', cite: read('warragul-club', 'March and September') },
  { id: 'texas.young', crops: TREE_FRUIT, region: 'US-TX', years: [1, 3], said: 'spring-to-june', doses: [at('bud-break'), months(4), months(5), months(6)], label: 'weak', cite: read('texas-copy', 'years 2 to 4: early spring, April, May and June') },
];

const STONE_FRUIT: readonly Timing[] = [
  { id: 'michigan.stone', crops: STONE, region: 'US-MI', said: 'april-late-may', doses: [months(4, 4, [11, 30]), late(5)], splits: true, cite: read('michigan-garden-fruit', 'stone fruit, mid or late April and late May') },
  { id: 'carolina.peach.bearing', crops: ['peach'], region: 'US-SC', bearing: true, said: 'petal-fall-may-harvest', doses: [at('petal-fall'), months(5), at('after-crop')], splits: true, cite: read('clemson-peach', 'between bloom and petal fall, two months later, and after harvest if fruit was picked') },
  { id: 'carolina.peach.young', crops: ['peach'], region: 'US-SC', bearing: false, said: 'petal-fall-may-harvest', doses: [at('petal-fall'), months(5)], splits: true, cite: read('clemson-peach', 'between bloom and petal fall, and two months later') },
  // A half lies in both printed spans, so nobody need say when his peach ripens.
  { id: 'california.peach', crops: ['peach'], region: 'US-CA', bearing: true, said: 'half-in-spring', doses: [at('bud-break'), at('later')], splits: true, shares: [0.5, 0.5], cite: read('uc-peach-3454', 'in spring one third to one half for early varieties, one half to two thirds for others') },
  { id: 'georgia.peach.copy', crops: ['peach'], region: 'US-GA', said: 'march-august', doses: [months(3, 3, [1, 15]), months(8, 8, [1, 8])], label: 'weak', cite: read('peach-notes', 'early March, and about August 1 unless the crop was lost') },
  { id: 'cherry.uptake', crops: ['cherry'], kinds: ['cherry', 'sweet cherry'], region: 'US-MI', said: 'weeks-after-bloom', doses: [{ phase: 'later', span: [49, 56] }], label: 'orchard', cite: read('good-fruit-cherry', 'soil nitrogen is taken up from four to five weeks after bloom') },
  { id: 'australia.stone', crops: STONE, region: 'AU', said: 'after-bloom', doses: [{ phase: 'later', span: [28, 42] }], label: 'weak', cite: read('treeworks', 'stone fruit yearly, after flowering') },
];

const OTHER_TREES: readonly Timing[] = [
  { id: 'georgia.pear', crops: ['pear', 'asian-pear'], region: 'US-GA', said: 'bud-break-and-harvest', doses: [at('bud-break'), at('after-harvest')], splits: true, cite: read('georgia-springtime', 'half before bud-out, half after fruiting') },
  { id: 'tennessee.apple', crops: ['apple'], region: 'US-TN', said: 'weeks-before-swell', doses: [at('late-winter')], label: 'orchard', cite: read('tennessee-apples', 'four to six weeks before bud swell') },
  { id: 'austria.pear', crops: ['pear'], region: 'AT', said: 'march-before-bloom', doses: [months(3, 3, [1, 10]), { phase: 'before-bloom', span: [0, 14] }], label: 'orchard', cite: read('austria-orchard', 'pear, early March and two weeks before bloom') },
  { id: 'florida.apple-pear', crops: ['apple', 'pear'], region: 'US-FL', said: 'january', doses: [months(1)], cite: read('fl-baker-calendar', 'January, apples and pears') },
  { id: 'georgia.fig', crops: ['fig'], region: 'US-GA', years: [0, 4], said: 'spring-may-july', doses: [at('bud-break'), mid(5), mid(7)], cite: read('georgia-fig', 'early spring, mid-May and mid-July') },
  { id: 'georgia.fig.old', crops: ['fig'], region: 'US-GA', years: [5, 99], said: 'early-spring', doses: [at('bud-break')], cite: read('georgia-fig', 'from 6 years once, early spring') },
  { id: 'georgia.fig.2008', crops: ['fig'], region: 'US-GA', said: 'winter-june-july', doses: [at('late-winter'), mid(6), mid(7)], cite: read('georgia-springtime', 'figs, late winter, mid-June and mid-July') },
  { id: 'louisiana.fig', crops: ['fig'], region: 'US-LA', said: 'late-winter', doses: [at('late-winter')], cite: read('louisiana-fig', 'late winter') },
  { id: 'florida.persimmon', crops: ['persimmon'], region: 'US-FL', years: [1, 99], said: 'january-june', doses: [months(1), months(6)], splits: true, cite: read('fl-nassau-persimmon', 'half in January, half in June') },
  { id: 'uk.medlar', crops: ['medlar'], region: 'GB', said: 'march', doses: [months(3)], cite: read('rhs-medlar', 'March') },
  { id: 'uk.quince', crops: ['quince'], region: 'GB', said: 'february-march', doses: [months(2), late(3)], splits: true, cite: read('rhs-quince', 'February, and late March') },
  { id: 'florida.pecan', crops: ['pecan'], region: 'US-FL', bearing: true, said: 'february-june', doses: [months(2), months(6)], splits: true, cite: read('fl-nassau-pecan', 'February and again in June') },
  { id: 'carolina.pecan', crops: ['pecan'], region: 'US-SC', said: 'february', doses: [months(2)], cite: read('clemson-pecan-blog', 'February') },
  { id: 'georgia.pecan.second', crops: ['pecan'], region: 'US-GA', years: [1, 1], said: 'march-june', doses: [months(3), months(6)], cite: read('uga-colquitt-pecan', 'the year after planting, March and June') },
];

const EVERGREENS: readonly Timing[] = [
  { id: 'florida.citrus', crops: ['citrus'], region: 'US-FL', said: 'february-october', doses: [months(2, 10)], even: true, cite: read('florida-citrus', 'February to October') },
  { id: 'california.citrus', crops: ['citrus'], region: 'US-CA', said: 'before-bloom-may', doses: [{ ...months(1, 2), phase: 'before-bloom' }, months(5), months(6)], everywhere: true, cite: read('california-citrus', 'January or February just before bloom, May, perhaps June') },
  { id: 'louisiana.citrus', crops: ['citrus'], region: 'US-LA', said: 'february-may', doses: [months(2), months(5, 6)], cite: read('lsu-citrus-home', 'February, and nitrogen in May or June') },
  { id: 'arizona.citrus', crops: ['citrus'], region: 'US-AZ', said: 'three-thirds', doses: [months(1, 2), months(4, 5), months(8, 9)], label: 'weak', cite: read('arizona-citrus-copy', 'three equal parts: January or February, April or May, August or September') },
  { id: 'australia.citrus', crops: ['citrus'], region: 'AU', said: 'july-november-march', doses: [months(7), months(11), months(3)], label: 'weak', cite: read('treeworks', 'citrus, July, November and March') },
  { id: 'australia.citrus.half', crops: ['citrus'], region: 'AU', said: 'august-february', doses: [months(8), months(2)], shares: [2 / 3, 1 / 3], label: 'weak', cite: read('burkes-backyard', 'citrus, August full dose, February half') },
  { id: 'florida.avocado', crops: ['avocado'], region: 'US-FL', years: [0, 0], said: 'every-other-month', doses: [months(2, 10)], even: true, label: 'weak', cite: read('gardenguides-avocado', 'first year, every other month') },
];

const SOFT: readonly Timing[] = [
  { id: 'tennessee.blueberry', crops: ['blueberry'], region: 'US-TN', said: 'spring-six-twelve', doses: [at('bud-break'), weeksLater(6), weeksLater(12)], splits: true, cite: read('tennessee-blueberry-ph', 'spring, and six and twelve weeks after') },
  { id: 'extension.blueberry', crops: ['blueberry'], region: 'US', said: 'bloom-six-weeks', doses: [at('bloom'), { phase: 'later', span: [56, 70] }], cite: read('eorg-blueberry', 'at bloom and six weeks later') },
  { id: 'louisiana.rabbiteye', crops: ['blueberry'], kinds: ['rabbiteye blueberry'], region: 'US-LA', said: 'march', doses: [months(3)], cite: read('lsu-f520-blueberry', 'March, and three doses after') },
  { id: 'penn.currant', crops: ['currant', 'gooseberry'], region: 'US-PA', said: 'early-spring', doses: [at('bud-break')], cite: read('penn-currant', 'early spring') },
  { id: 'iowa.currant', crops: ['currant', 'gooseberry'], region: 'US-IA', said: 'early-spring', doses: [at('bud-break')], cite: read('iowa-small-fruits-1995', 'early spring') },
  { id: 'oregon.caneberries', crops: ['raspberry', 'blackberry'], region: 'US-OR', said: 'early-spring', doses: [at('bud-break')], cite: read('oregon-caneberries-manure', 'early spring') },
  { id: 'iowa.raspberry', crops: ['raspberry'], region: 'US-IA', said: 'early-spring', doses: [at('bud-break')], cite: read('iowa-fertilizing-tree-small-fruits', 'early spring') },
  { id: 'uk.raspberry', crops: ['raspberry'], region: 'GB', said: 'early-march', doses: [months(3, 3, [1, 15])], cite: read('rhs-raspberry', 'early March') },
  { id: 'oregon.kiwifruit', crops: ['kiwifruit'], region: 'US-OR', years: [2, 3], said: 'march-may-july', doses: [months(3), months(5), months(7)], cite: read('pnw507-kiwifruit', 'third and fourth year, March, May and July') },
  { id: 'oregon.kiwifruit.mature', crops: ['kiwifruit'], region: 'US-OR', years: [4, 99], said: 'march-may', doses: [months(3), months(5, 6)], shares: [2 / 3, 1 / 3], label: 'orchard', cite: read('berrygrape-kiwi', 'two thirds in March, the rest in May or June') },
  { id: 'georgia.muscadine.third', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', years: [2, 2], said: 'march-may', doses: [months(3), months(5)], shares: [2 / 3, 1 / 3], cite: read('ga-code-103-muscadine', 'third year, 2 lb in March and 1 lb in May') },
  { id: 'georgia.muscadine', crops: ['grape'], kinds: MUSCADINE, region: 'US-GA', years: [3, 99], said: 'march-june', doses: [months(3), months(6)], cite: read('uga-colquitt-muscadine', 'established vines, March and June') },
  { id: 'carolina.grape', crops: ['grape'], region: 'US-NC', years: [2, 99], said: 'march-june', doses: [months(3), mid(6)], label: 'weak', cite: read('north-carolina-column', 'mature vines, March and mid-June') },
];

export const TIMINGS: readonly Timing[] = [...TREES, ...STONE_FRUIT, ...OTHER_TREES, ...EVERGREENS, ...SOFT];

/** Number of doses on light soil where a rule prints none: half is held back from what would be washed out. */
export const SAND_SPLIT = { crops: TREE_FRUIT, doses: 2, cite: read('north-carolina-quick', 'sandy soil, half and half; no second dose where frost took the crop') } as const;
/** Doses of one publication that follow each other: at least so many days apart, though both months are named whole. */
export const PRINTED_APART = { days: 14, cite: { source: 'medlar', at: 'printed-apart', mark: 'judgement' } satisfies Cite } as const;
/** Where winter rain takes nitrogen below the roots before spring: none before this day, six months later in the south. Washington is not parted into its wet and its dry side. */
export const WET_WINTERS = { regions: ['US-OR', 'US-WA', 'GB', 'IE'], month: 3, date: 1, cite: read('oregon-well-water', 'no feeding in winter where winters are wet') } as const;
