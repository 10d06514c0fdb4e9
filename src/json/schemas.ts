/** The answers' shapes, for `medlar schema` and for the tests that hold every answer against them. */
import * as z from 'zod';
import { FLAGS } from '../orchard/tree.ts';
import { orchardSchema } from '../orchard/load.ts';
import { MARKS } from '../reason/figure.ts';
import { viewSchema } from '../sheet/view.ts';
import { CROP_WORDS, CROPS_WITHOUT_FIGURES, SIZES } from '../tables/crops.ts';
import { ITEMS, METHODS, UNIT_PATTERNS } from '../tables/items.ts';
import { RATINGS } from '../tables/ratings.ts';
import { keysOf } from '../words/words.ts';

const id = z.string().meta({ description: 'an id of `figures`' });
const day = z.iso.date();
const per = <T extends z.ZodType>(t: T) => z.strictObject({ N: t, P2O5: t, K2O: t });
const cite = z.strictObject({ source: z.string(), at: z.string(), mark: z.enum(MARKS as [string, ...string[]]) });
const rating = z.enum(RATINGS as [string, ...string[]]).nullable();

const reading = z.strictObject({
  item: z.enum(ITEMS), value: z.number().nullable(), unit: z.string().nullable(), asPrinted: z.string(), line: z.int(), method: z.enum(METHODS).nullable(), basis: z.enum(['element', 'oxide']).nullable(),
  mgPerKg: z.number().nullable(), mgPerKgWhy: id.optional(), lab: z.strictObject({ rating, range: z.tuple([z.number().nullable(), z.number().nullable()]).nullable() }), rating,
  target: z.enum(['far-below', 'below', 'at', 'above']).nullable(), ratingCite: cite.optional(), to: z.number().optional(), below: z.literal(true).optional(), above: z.literal(true).optional(),
});
const read = z.strictObject({
  samples: z.array(z.strictObject({ name: z.string(), taken: day.optional(), depth: z.string().optional(), readings: z.array(reading), unread: z.array(z.strictObject({ line: z.int(), text: z.string() })) })),
});

const ring = z.strictObject({ fromM: z.number(), toM: z.number(), m2: z.number() });
const ringWhy = z.strictObject({ fromM: id, toM: id, m2: id });
const feed = z.strictObject({
  bag: z.string(), g: z.number().meta({ description: 'rounded, for one plant' }), gExact: z.number(), gExactWhy: id, mL: z.number().nullable(), from: day, fromWhy: id, until: day, ring: ring.nullable(), ringWhy: ringWhy.optional(),
});
const plan = z.strictObject({
  season: z.int(), lastNitrogen: day, lastNitrogenWhy: id,
  trees: z.array(z.strictObject({
    name: z.string(), count: z.int(), verdict: z.enum(['feed', 'none', 'wait']), need: per(z.number()), needWhy: per(id), span: per(z.tuple([z.number(), z.number()])), spanWhy: per(z.tuple([id, id])), rulesWhy: z.array(id),
    if: z.strictObject({ code: z.literal('shoots-below'), belowM: z.number() }).optional(), ifWhy: id.optional(), none: z.string().optional(), stops: z.array(z.string()),
    crown: z.strictObject({ diameterM: z.number(), m2: z.number() }).nullable(), crownWhy: z.strictObject({ diameterM: id, m2: id }).optional(),
    feeds: z.array(feed), supplied: per(z.number()), over: per(z.number()), short: per(z.number()),
  })),
  days: z.array(z.strictObject({ from: day, until: day, doses: z.array(z.strictObject({ tree: z.string(), count: z.int(), bag: z.string(), g: z.number(), mL: z.number().nullable() })) })),
  buy: z.array(z.strictObject({ bag: z.string(), bags: z.int().nullable(), cost: z.number().nullable(), leftG: z.number().nullable() })),
  ph: z.array(z.strictObject({
    zone: z.string().nullable(), tree: z.string().nullable(), now: z.number(), goal: z.tuple([z.number(), z.number()]), material: z.string().nullable(), gPerM2: z.number(), g: z.number().nullable(), range: z.tuple([z.number(), z.number()]).nullable(),
    doses: z.array(z.unknown()), verdict: z.enum(['leave', 'lime', 'sulphur', 'cannot']),
  })),
});

const figure = z.strictObject({ value: z.number(), unit: z.string(), of: z.string(), step: z.string(), text: z.string(), from: z.array(id), cite });
const envelope = (result: z.ZodType) => z.strictObject({
  medlar: z.string(), schema: z.literal(1), command: z.string(), ok: z.boolean(), result: result.nullable(),
  questions: z.array(z.strictObject({ code: z.string(), text: z.string(), about: z.string(), choices: z.array(z.string()), changes: z.string() })),
  notices: z.array(z.strictObject({ code: z.string(), severity: z.enum(['error', 'warning', 'note']), text: z.string(), file: z.string().optional(), line: z.int().optional(), column: z.int().optional() })),
  figures: z.record(z.string(), figure),
});

export const ANSWERS = {
  read: envelope(read), plan: envelope(plan), sheet: envelope(z.strictObject({ files: z.array(z.string()) })), why: envelope(z.strictObject({ ids: z.array(id) })),
  check: envelope(z.strictObject({ files: z.array(z.string()), trees: z.int(), zones: z.int() })),
  medlar: envelope(z.strictObject({ season: z.int(), trees: z.int(), next: z.strictObject({ day: z.int(), from: day, until: day, trees: z.string() }).nullable() })),
} as const;

/** What people write, not what commands answer: the orchard file, and what a sheet's template is given. */
export const INPUTS = { orchard: orchardSchema, view: viewSchema } as const;

export const closedLists = (): Record<string, readonly string[]> => ({
  crops: [...Object.keys(CROP_WORDS), ...CROPS_WITHOUT_FIGURES], sizes: SIZES, flags: FLAGS, items: ITEMS, methods: METHODS, units: [...UNIT_PATTERNS.map(([u]) => u), 'pH', 'index'],
  ratings: RATINGS, marks: MARKS, notices: keysOf('notice'), questions: keysOf('ask').filter((k) => !k.startsWith('changes-') && k !== 'dont-know'), steps: keysOf('step'),
});
