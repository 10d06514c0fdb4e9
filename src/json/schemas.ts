/** The answers' shapes, for `medlar schema` and for the tests that hold every answer against them. */
import * as z from 'zod';
import { KEEPS } from '../tables/keeping.ts';
import { VERDICTS, WHYS } from '../bags/shop.ts';
import { WHATS } from '../orchard/diary.ts';
import { FLAGS } from '../orchard/fact-words.ts';
import { MARKS } from '../reason/figure.ts';
import { viewSchema } from '../sheet/view.ts';
import { CROP_WORDS, CROPS_WITHOUT_FIGURES, SIZES } from '../tables/crops.ts';
import { ITEMS, METHODS } from '../tables/items.ts';
import { UNIT_PATTERNS } from '../tables/report-patterns.ts';
import { INDEX_SCHEMES, RATINGS } from '../tables/ratings.ts';
import { PHASE_IDS } from '../tables/windows.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { keysOf, LANGUAGES } from '../words/words.ts';

const id = z.string().meta({ description: 'an id of `figures`' });
const day = z.iso.date();
const per = <T extends z.ZodType>(t: T) => z.strictObject({ N: t, P2O5: t, K2O: t });
const cite = z.strictObject({ source: z.string(), at: z.string(), mark: z.enum(MARKS as [string, ...string[]]) });
const rating = z.enum(RATINGS as [string, ...string[]]).nullable();

const ours = z.strictObject({
  rating: z.enum(RATINGS as [string, ...string[]]), target: z.enum(['far-below', 'below', 'at', 'above']), scale: z.string(), class: z.string().optional().meta({ description: 'the scale\'s own name of the class' }),
  field: z.literal(true).optional().meta({ description: 'a table for field crops' }), cite,
}).meta({ description: 'what a published scale says, whoever decided' });
const reading = z.strictObject({
  item: z.enum(ITEMS), value: z.number().nullable(), unit: z.string().nullable(), asPrinted: z.string(), line: z.int(), method: z.enum(METHODS).nullable(), basis: z.enum(['element', 'oxide']).nullable(),
  mgPerKg: z.number().nullable(), mgPerKgWhy: id.optional(), lab: z.strictObject({ rating, range: z.tuple([z.number().nullable(), z.number().nullable()]).nullable() }), rating,
  target: z.enum(['far-below', 'below', 'at', 'above']).nullable(), ratingCite: cite.optional(), near: z.enum(RATINGS as [string, ...string[]]).optional().meta({ description: 'another class within the lab\'s own scatter' }), ours: ours.optional(),
  index: z.number().optional().meta({ description: 'an index printed beside the value' }), scheme: z.enum(INDEX_SCHEMES.map((s) => s.id)).optional().meta({ description: 'whose index it is, where the report shows it' }), to: z.number().optional(), below: z.literal(true).optional(), above: z.literal(true).optional(),
});
const read = z.strictObject({
  samples: z.array(z.strictObject({ name: z.string(), kind: z.literal('leaf').optional().meta({ description: 'no soil: contents of dry leaf' }), taken: day.optional(), depth: z.string().optional(), readings: z.array(reading), unread: z.array(z.strictObject({ line: z.int(), text: z.string() })) })),
});

const phase = z.enum(PHASE_IDS).nullable().meta({ description: 'what the tree does then; null where its time has passed or trees differ' });
const ring = z.strictObject({ fromM: z.number(), toM: z.number(), m2: z.number() });
const ringWhy = z.strictObject({ fromM: id, toM: id, m2: id });
const feed = z.strictObject({
  bag: z.string(), g: z.number().meta({ description: 'rounded, for one plant' }), gExact: z.number(), gExactWhy: id, mL: z.number().nullable(), from: day, fromWhy: id, until: day, phase, ring: ring.nullable(), ringWhy: ringWhy.optional(),
});
const phRow = z.strictObject({
  zone: z.string().nullable(), tree: z.string().nullable(), verdict: z.enum(['leave', 'lime', 'sulphur', 'cannot']), reason: z.string(), now: z.number(), nowWhy: id, goal: z.number(), goalWhy: id, suits: z.tuple([z.number(), z.number()]).meta({ description: 'the range that leads' }),
  ranges: z.array(z.strictObject({ source: z.string(), low: z.number(), high: z.number() })).meta({ description: 'all that is printed for it, the leading one first' }), rangesWhy: z.array(z.tuple([id, id])),
  material: z.string().nullable(), gPerM2: z.number().meta({ description: 'product, this year' }), gPerM2Why: id.optional(), g: z.number().nullable().meta({ description: 'product for one plant' }),
  range: z.tuple([z.number(), z.number()]).nullable().meta({ description: 'g/m2, what publications give: as it goes on for lime, for the whole way for sulphur' }), rangeWhy: z.tuple([id, id]).optional(), ratesWhy: z.array(id),
  dugIn: z.strictObject({ gPerM2: z.number(), depthM: z.number() }).nullable().meta({ description: 'pure calcium carbonate, if it were dug in' }), dugInWhy: z.strictObject({ gPerM2: id }).optional(),
  freeLime: z.strictObject({ percent: z.number(), years: z.int() }).optional(), freeLimeWhy: id.optional(),
  curve: z.array(z.strictObject({ ph: z.number(), gPerM2: z.tuple([z.number(), z.number()]) })).optional().meta({ description: 'least and most of pure lime dug in, or of pure sulphur, for the whole way to each pH' }),
  digIn: z.boolean().optional().meta({ description: 'dug in before planting, not on the surface' }),
  instead: z.array(z.strictObject({ material: z.string(), gPerM2: z.number(), gPerM2Why: id, atOnceGPerM2: z.number().optional().meta({ description: 'the most in one go' }), nitrogenGPerM2: z.number().optional().meta({ description: 'the nitrogen that it brings' }) })).optional().meta({ description: 'other acidifiers as strong as this year\'s sulphur' }),
  doses: z.array(z.strictObject({ g: z.number().nullable(), gPerM2: z.number(), from: day, until: day })),
});
const plan = z.strictObject({
  season: z.int(), lastNitrogen: day, lastNitrogenWhy: id,
  trees: z.array(z.strictObject({
    name: z.string(), count: z.int(), verdict: z.enum(['feed', 'none', 'wait']), need: per(z.number()), needWhy: per(id), span: per(z.tuple([z.number(), z.number()])), spanWhy: per(z.tuple([id, id])), rulesWhy: z.array(id),
    MgO: z.number().nullable().meta({ description: 'magnesium as MgO, told beside the feed; null where it was not tested' }), MgOWhy: id.optional(),
    lead: z.strictObject({ source: z.string(), rule: z.string(), why: z.enum(['own', 'here', 'near', 'default']) }).nullable().meta({ description: 'whose nitrogen rule leads: the grower\'s own, the place\'s, a neighbour\'s, or the default' }),
    if: z.strictObject({ code: z.literal('shoots-below'), belowM: z.number() }).optional(), ifWhy: id.optional(), none: z.string().optional(), stops: z.array(z.string()), last: day.meta({ description: 'the last day for its nitrogen' }), lastWhy: id,
    crown: z.strictObject({ diameterM: z.number(), m2: z.number() }).nullable(), crownWhy: z.strictObject({ diameterM: id, m2: id }).optional(),
    feeds: z.array(feed), dilute: z.strictObject({ bag: z.string(), g: z.number(), gWhy: id, waterL: z.number(), everyWeeks: z.int(), times: z.int(), from: day, until: day }).nullable().meta({ description: 'of a tub without coated feed: what goes into its water, grams for one plant each time' }), fed: z.array(z.strictObject({ date: day, bag: z.string().nullable(), g: z.number().nullable() })), supplied: per(z.number()), over: per(z.number()), short: per(z.number()),
    feedLime: z.number().nullable().meta({ description: 'what the year\'s feed does to the soil, as g/m2 of lime: minus where it uses lime up; null in a tub' }), feedLimeWhy: id.optional(),
    range: per(z.tuple([z.number(), z.number()])).meta({ description: 'g for one plant: how far the need would move by another leading rule, the measure of the crown, the lab\'s scatter' }),
    narrow: z.strictObject({ question: z.string(), of: z.enum(NUTRIENTS as [string, ...string[]]), range: z.tuple([z.number(), z.number()]) }).nullable().meta({ description: 'the open question whose answers lie furthest apart' }),
  })),
  days: z.array(z.strictObject({ number: z.int(), from: day, until: day, phase, doses: z.array(z.strictObject({ tree: z.string(), count: z.int(), bag: z.string(), g: z.number(), mL: z.number().nullable() })) })),
  buy: z.array(z.strictObject({ bag: z.string(), needG: z.number(), bags: z.int().nullable(), cost: z.number().nullable(), leftG: z.number().nullable() })),
  ph: z.array(phRow),
});

const diaryEntry = z.strictObject({
  date: day, trees: z.array(z.string()), what: z.enum(WHATS), bag: z.string().nullable(), amount: z.string().nullable().meta({ description: 'as typed, for one plant' }),
  g: z.number().nullable(), m: z.number().nullable(), note: z.string(), line: z.int(),
});

const limit = z.strictObject({ nutrient: z.enum(NUTRIENTS as [string, ...string[]]), g: z.number() }).nullable().optional();
const weighed = z.strictObject({
  bags: z.array(z.strictObject({ label: z.string(), grade: per(z.number()).meta({ description: '% of the product' }), g: z.number(), mL: z.number().nullable() })),
  waterL: z.number().optional().meta({ description: 'of a strength: the litres of water that the amounts go into' }),
  supplied: per(z.number()), over: per(z.number()), short: per(z.number()),
  limiting: limit.meta({ description: 'of a single bag: the most that exceeds nothing named' }), covering: limit.meta({ description: 'of a single bag: the least that meets everything named' }),
});
const blended = z.strictObject({ grade: per(z.number()), parts: z.array(z.strictObject({ label: z.string(), share: z.number().min(0).max(1), g: z.number().min(0).optional() })), fillerG: z.number().min(0).optional() });
const years = z.strictObject({
  files: z.array(z.string()),
  zones: z.array(z.strictObject({
    zone: z.string(), taken: z.array(z.string()).meta({ description: 'days, the oldest first; empty where a lone test tells none' }), testAgain: z.int(),
    series: z.array(z.strictObject({
      item: z.enum(ITEMS), method: z.enum(METHODS).nullable(), unit: z.string(), trend: z.enum(['up', 'down', 'same']).nullable().meta({ description: 'from the first to the last; same where one lab could have said either of the same soil' }),
      jump: z.boolean().meta({ description: 'more from one test to the next than soil changes' }),
      points: z.array(z.strictObject({ taken: z.string(), value: z.number(), low: z.number(), high: z.number() })), elsewhere: z.array(z.string()).meta({ description: 'tests of another method' }),
    })),
    between: z.array(z.strictObject({ from: day, until: day, N: z.number(), P2O5: z.number(), K2O: z.number(), lime: z.number(), sulphur: z.number(), unknown: z.int() }).meta({ description: 'grams given by the diary, all plants of the zone' })),
  })),
});
const shop = z.strictObject({
  list: z.strictObject({ wishes: z.array(z.strictObject({ nutrient: z.enum(NUTRIENTS as [string, ...string[]]), feeds: z.array(z.strictObject({ grade: z.string(), name: z.string(), g: z.number() })) })), leave: z.array(z.enum(NUTRIENTS as [string, ...string[]])) }).meta({ description: 'plain grades to ask a clerk for, whatever the brand, and what no bag may bring' }),
  bags: z.array(z.strictObject({
    label: z.string(), verdict: z.enum(VERDICTS as [string, ...string[]]), why: z.enum(WHYS), bags: z.int().nullable(), cost: z.number().nullable(), costPerNeededKg: z.number().nullable(), leftG: z.number().nullable(), keeps: z.enum(KEEPS).meta({ description: 'how long what is left keeps' }), over: per(z.number()), short: per(z.number()),
  })),
  purchase: z.strictObject({ bags: z.array(z.strictObject({ label: z.string(), bags: z.int() })), cost: z.number(), over: per(z.number()), short: per(z.number()) }).nullable().meta({ description: 'the cheapest whole bags that together meet the need as well as these bags can' }),
});

const figure = z.strictObject({ value: z.number(), unit: z.string(), of: z.string(), step: z.string(), text: z.string(), from: z.array(id), cite });
const envelope = <T extends z.ZodType>(result: T) => z.strictObject({
  medlar: z.string(), schema: z.literal(1), command: z.string(), ok: z.boolean(), result: result.nullable(),
  questions: z.array(z.strictObject({ code: z.string(), text: z.string(), about: z.string(), choices: z.array(z.string()), changes: z.string() })),
  notices: z.array(z.strictObject({ code: z.string(), severity: z.enum(['error', 'warning', 'note']), text: z.string(), file: z.string().optional(), line: z.int().optional(), column: z.int().optional() })),
  figures: z.record(z.string(), figure),
});

const counts = z.record(z.string(), z.int().nonnegative());
const sources = z.strictObject({
  sources: z.array(z.strictObject({
    id: z.string(), title: z.string(), publisher: z.string(), year: z.int().nullable(), url: z.string().nullable(), mark: cite.shape.mark.nullable(), figures: z.int(),
    rows: z.array(z.strictObject({ table: z.string(), what: z.string(), value: z.number().nullable(), unit: z.string().nullable(), at: z.string(), mark: cite.shape.mark })).optional(),
  })),
  coverage: z.strictObject({
    crops: z.record(z.string(), z.strictObject({ nitrogen: z.int(), growth: z.int(), potash: z.int(), ph: z.int() })), methods: counts, scales: counts, languages: counts, lime: counts, regions: counts,
    record: z.record(z.string(), z.record(z.string(), z.partialRecord(z.enum(['N', 'P2O5', 'K2O', 'leaf', 'growth']), z.enum(['complete', 'partial'])))).meta({ description: 'crop → region → what is held; what is not named is none' }),
  }).optional(),
});

export const ANSWERS = {
  diary: envelope(z.strictObject({ entries: z.array(diaryEntry), written: z.int() })),
  new: envelope(z.strictObject({ files: z.array(z.string()) })), page: envelope(z.strictObject({ files: z.array(z.string()) })), sources: envelope(sources),
  read: envelope(read), plan: envelope(plan), sheet: envelope(z.strictObject({ files: z.array(z.string()) })), why: envelope(z.strictObject({ ids: z.array(id) })),
  years: envelope(years), shop: envelope(shop), weigh: envelope(weighed), blend: envelope(blended),
  ph: envelope(z.strictObject({ ph: z.array(phRow) })),
  check: envelope(z.strictObject({ files: z.array(z.string()), trees: z.int(), zones: z.int() })),
  medlar: envelope(z.strictObject({ season: z.int(), trees: z.int(), next: z.strictObject({ day: z.int(), from: day, until: day, trees: z.string() }).nullable() })),
} as const;

/** What people write, not what commands answer: the orchard file, and what a sheet's template is given. */
const text = z.union([z.string(), z.number(), z.boolean()]);
const maybe = text.nullable().optional();
const textOrList = z.union([text, z.array(text)]);
const bags = z.array(text).nullable().optional();
/** `orchard.yaml` as editors may check it; the loader goes by `orchard/shape.ts`, which tells the place of a mistake. */
const orchardSchema = z.strictObject({
  orchard: maybe, where: maybe, language: maybe, 'bud-break': maybe, 'last-frost': maybe, 'first-frost': maybe, water: maybe, never: maybe,
  soil: z.union([textOrList, z.record(z.string(), textOrList.nullable())]).nullable().optional(),
  trees: z.record(z.string(), z.union([text, z.record(z.string(), textOrList)]).nullable()),
  shed: bags, store: bags,
});

export const INPUTS = { orchard: orchardSchema, view: viewSchema } as const;

export const closedLists = (): Record<string, readonly string[]> => ({
  crops: [...Object.keys(CROP_WORDS), ...CROPS_WITHOUT_FIGURES], sizes: SIZES, flags: FLAGS, items: ITEMS, methods: METHODS, units: [...UNIT_PATTERNS.map(([u]) => u), 'index'],
  whys: WHYS, languages: LANGUAGES, ratings: RATINGS, marks: MARKS, notices: keysOf('notice'), questions: keysOf('ask').filter((k) => !k.startsWith('changes-') && k !== 'dont-know'), steps: keysOf('step'),
});
