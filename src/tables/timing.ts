/** When: days from bud break and weeks before the first autumn frost. */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';
import { STONE, TREE_FRUIT } from './crops.ts';

const spring: Cite = { source: 'iowa-fruit-trees', at: 'before bud break; others at bloom', mark: 'derived' };

export const FIRST_DOSE = { from: -14, until: 14, cite: spring } as const;
/** On sand and in wet winters the first dose waits for bloom, taken as about three weeks after bud break. */
export const FIRST_DOSE_SAND = { from: 14, until: 28, cite: { source: 'medlar', at: 'bloom', mark: 'practice' } satisfies Cite } as const;
export const SECOND_DOSE = { from: 38, until: 50, cite: { source: 'michigan-garden-fruit', at: 'late May after a dose at bud break', mark: 'derived' } satisfies Cite } as const;
/** June-bearing strawberries are picked by about eleven to twelve weeks after growth starts: days from bud break. */
export const AFTER_HARVEST = { from: 80, until: 110, cite: { source: 'medlar', at: 'after-harvest', mark: 'practice' } satisfies Cite } as const;
/** Third and later doses follow at this distance, while the season lasts. */
export const NEXT_DOSE = { every: 42, cite: { source: 'medlar', at: 'next-dose', mark: 'practice' } satisfies Cite } as const;

export const LAST_NITROGEN = { weeks: 12, evergreenWeeks: 9, cite: { source: 'medlar', at: 'last-nitrogen', mark: 'judgement' } satisfies Cite } as const;

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
/** The last day for nitrogen that a place's own publisher prints, month and day; "mid-June" is the 15th. It binds there alone. */
export const LAST_DATES: readonly { readonly region: string; readonly crops: readonly Crop[]; readonly month: number; readonly date: number; readonly cite: Cite }[] = [
  { region: 'US-MI', crops: TREE_FRUIT, month: 6, date: 15, cite: read('michigan-oc414', 'none after mid-June') },
  { region: 'US-PA', crops: STONE, month: 7, date: 15, cite: read('penn-stone', 'never after July 15') },
  { region: 'US-ME', crops: TREE_FRUIT, month: 5, date: 31, cite: read('maine-fertilization', 'nitrogen before June') },
  { region: 'US-SC', crops: ['peach'], month: 8, date: 15, cite: read('clemson-peach', 'not later than August 15') },
  { region: 'US-LA', crops: ['citrus'], month: 6, date: 30, cite: read('louisiana-citrus-column', 'not after the month of June') },
  { region: 'US-OR', crops: ['kiwifruit'], month: 7, date: 31, cite: read('pnw507-kiwifruit', 'young plants, not later than July') },
  { region: 'US-WA', crops: ['kiwifruit'], month: 7, date: 31, cite: read('pnw507-kiwifruit', 'young plants, not later than July') },
];
/** A feed of one dose belongs in spring: once the second dose's window has closed, so much of it goes on and the rest is left out. */
export const LATE_SINGLE = { share: 0.5, cite: { source: 'medlar', at: 'late-half', mark: 'judgement' } satisfies Cite } as const;

/** Where neither bud break nor frost is told: month and day, north; six months later in the south. */
export const UNTOLD = { budBreak: [4, 1], firstFrost: [10, 1], cite: { source: 'medlar', at: 'untold-dates', mark: 'judgement' } satisfies Cite } as const;
/** Buds of most fruit break about three weeks before the last spring frost. */
export const BUD_BREAK_BEFORE_LAST_FROST = { days: 21, cite: { source: 'medlar', at: 'bud-break-from-frost', mark: 'practice' } satisfies Cite } as const;
/** A soil test holds for about three years in an orchard. */
export const RETEST = { years: 3, cite: { source: 'organic-sampling', at: 'soil every 3 to 5 years', mark: 'read' } satisfies Cite } as const;

/** When an orchard's soil is sampled, month and day: once the year's growth is done. */
export const AUTUMN_TEST = { north: '10-01', south: '04-01', cite: { source: 'medlar', at: 'autumn-sample', mark: 'practice' } satisfies Cite } as const;

/** Lime after the leaves are down, and a month from nitrogen: days from the first autumn frost, days before the first dose. */
export const LIME_WINDOW = { from: 0, until: 60, beforeNitrogen: 30, cite: { source: 'georgia-nectarine', at: 'late fall best; not with leaves or fruit on', mark: 'read' } satisfies Cite } as const;
/** Sulphur works in warm moist soil: in spring, days from bud break. */
export const SULPHUR_WINDOW = { from: 0, until: 42, cite: { source: 'illinois-homeowners', at: 'spring application best', mark: 'read' } satisfies Cite } as const;
/** Months after lime or sulphur before a sample tells what it did. */
export const AMENDMENT_RETEST = { months: 12, nearEnough: 11, longest: 36, cite: { source: 'north-carolina-lime-tips', at: 'lime may take up to 12 months to react', mark: 'read' } satisfies Cite } as const;
