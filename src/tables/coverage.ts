/** What is held and what is not: for each crop, soil test, scale, language and place; and for each crop and region what its record of a nutrient is worth. */
import type { Crop } from './crops.ts';
import { CROP_WORDS, CROPS_WITHOUT_FIGURES } from './crops.ts';
import { GROWTH_RANGES } from './growth.ts';
import { METHODS } from './items.ts';
import { LEAF_RANGES } from './leaf.ts';
import { unaccented } from './name-set.ts';
import { NAMES } from './names.ts';
import { RULES } from './rules.ts';
import { RATING_WORDS } from './rating-words.ts';
import { SCALES } from './ratings.ts';
import type { Row } from './register.ts';
import { register } from './register.ts';
import { SOIL_RATES } from './soil-rates.ts';

/** Seen in the publication, or worked out from it. */
const isPublished = ({ cite }: Row): boolean => (cite.mark === 'read' || cite.mark === 'derived') && cite.source !== 'medlar';

/** How many published figures serve each crop, test, scale, language and region; 0 is none. */
export type Coverage = {
  readonly crops: Readonly<Record<string, { readonly nitrogen: number; readonly growth: number; readonly potash: number; readonly ph: number }>>;
  readonly methods: Readonly<Record<string, number>>;
  readonly scales: Readonly<Record<string, number>>;
  readonly languages: Readonly<Record<string, number>>;
  readonly lime: Readonly<Record<string, number>>;
  readonly regions: Readonly<Record<string, number>>;
  /** Crop → region → what is held; what is not named is none. */
  readonly record: Readonly<Record<string, Readonly<Record<string, Readonly<Partial<Record<Recorded, Worth>>>>>>>;
};

export type Recorded = 'N' | 'P2O5' | 'K2O' | 'leaf' | 'growth';
/** `complete`: every age, class, main nutrient, or both young and bearing; `partial`: some. */
export type Worth = 'complete' | 'partial';

/** Tests by which a lab sets a lime rate. */
const LIME_TESTS = ['smp', 'sikora', 'mehlich-buffer', 'adams-evans', 'woodruff', 'acidity', 'lime-buffer-capacity'] as const;

/** Words of a report in its language: phosphorus, potassium, magnesium, calcium; low, high. */
const LANGUAGES: Readonly<Record<string, readonly string[]>> = {
  English: ['phosphorus', 'potassium', 'magnesium', 'calcium', 'low', 'high'], German: ['phosphor', 'kalium', 'magnesium', 'calcium', 'niedrig', 'hoch'], Spanish: ['fósforo', 'potasio', 'magnesio', 'calcio', 'bajo', 'alto'],
  French: ['phosphore', 'potassium', 'magnésium', 'calcium', 'faible', 'élevé'], Italian: ['fosforo', 'potassio', 'magnesio', 'calcio', 'basso', 'alto'], Dutch: ['fosfor', 'kalium', 'magnesium', 'calcium', 'laag', 'hoog'],
  Polish: ['fosfor', 'potas', 'magnez', 'wapń', 'niski', 'wysoki'], Portuguese: ['fósforo', 'potássio', 'magnésio', 'cálcio', 'baixo', 'alto'],
};


/** `countries`: codes such as GB that a place can name. */
export function coverage(countries: readonly string[]): Coverage {
  const rows = register().filter(isPublished);
  const count = (has: (r: Row) => boolean): number => rows.filter(has).length;
  const each = (names: readonly string[], n: (name: string) => number): Record<string, number> => Object.fromEntries(names.map((name) => [name, n(name)]));
  const words = new Set([...NAMES.map((n) => n.name), ...RATING_WORDS.map(([w]) => w)].map(unaccented));
  const known = (word: string): boolean => words.has(unaccented(word));
  const serves = (r: Row, word: string): boolean => r.crops.includes(CROP_WORDS[word] satisfies Crop | undefined ?? 'other') && (r.kinds.length === 0 || r.kinds.includes(word));
  const regions = [...new Set([...countries, ...rows.flatMap((r) => r.places).filter((p) => /^[A-Z]{2}(?:-[A-Z]{2})?$/.test(p))])].sort();
  return {
    crops: Object.fromEntries([...Object.keys(CROP_WORDS), ...CROPS_WITHOUT_FIGURES].map((word) => [word, {
      nitrogen: count((r) => r.table === 'rules' && serves(r, word)), growth: count((r) => r.name === 'GROWTH_RANGES' && r.label === null && serves(r, word)),
      potash: count((r) => r.name === 'REMOVAL' && r.label === null && / K(?:2O)? /.test(r.what) && serves(r, word)), ph: count((r) => r.name === 'PH_RANGES' && serves(r, word)),
    }])),
    methods: each(METHODS.filter((m) => m !== 'unknown'), (m) => count((r) => r.scale !== null && r.method === m)),
    scales: each(SCALES.map((s) => s.id), (id) => count((r) => r.scale === id)),
    // The two that decide a dose have to be known in the language's own words.
    languages: each(Object.keys(LANGUAGES), (l) => (LANGUAGES[l]!.slice(0, 2).every(known) ? LANGUAGES[l]!.filter(known).length : 0)),
    lime: each(LIME_TESTS, (t) => count((r) => r.table === 'lime' && r.method === t)),
    record: recordOf(),
    regions: each(regions, (p) => count((r) => r.table !== 'labs' && r.places.some((q) => q === p || q.startsWith(`${p}-`)))),
  };
}

/** The record of every crop in every region that prints anything for it. Orchard rates, old and weak pages make it partial at most. */
function recordOf(): Coverage['record'] {
  const out: Record<string, Record<string, Partial<Record<Recorded, Worth>>>> = {};
  const put = (crop: Crop, region: string, of: Recorded, whole: boolean): void => {
    const cell = ((out[crop] ??= {})[region] ??= {});
    if (cell[of] !== 'complete') cell[of] = whole ? 'complete' : 'partial';
  };
  const groups = <T extends { readonly crops: readonly Crop[]; readonly region: string }>(rows: readonly T[], done: (crop: Crop, region: string, mine: readonly T[]) => void): void => {
    const by = new Map<string, T[]>();
    for (const row of rows) for (const crop of row.crops) by.set(`${crop} ${row.region}`, [...(by.get(`${crop} ${row.region}`) ?? []), row]);
    for (const [key, mine] of by) done(key.split(' ')[0] as Crop, key.split(' ')[1]!, mine);
  };
  for (const of of ['N', 'P2O5', 'K2O'] as const) {
    groups(RULES.filter((r) => (r.gives.of === 'product' ? 'N' : r.gives.of) === of), (crop, region, mine) => { put(crop, region, of, coversAges(mine.filter((r) => r.label === undefined && r.kinds === undefined && r.bearing === undefined))); });
  }
  groups(SOIL_RATES.filter((r) => r.nutrient !== 'MgO' && r.stage === 'bearing'), (crop, region, mine) => { for (const r of mine) put(crop, region, r.nutrient as 'P2O5' | 'K2O', r.by === 'soil' && r.rates.length >= 3); });
  groups(LEAF_RANGES, (crop, region, mine) => { put(crop, region, 'leaf', ['N', 'P', 'K'].every((n) => mine.some((r) => r.nutrient === n && r.label === undefined))); });
  groups(GROWTH_RANGES, (crop, region, mine) => { put(crop, region, 'growth', [true, false].every((bearing) => mine.some((r) => r.bearing === bearing && r.label === undefined))); });
  return out;
}

/** Every year from the second to the fortieth has a rule. */
function coversAges(rules: readonly (typeof RULES)[number][]): boolean {
  return rules.length > 0 && Array.from({ length: 40 }, (_, i) => i + 1).every((year) => rules.some((r) => !r.years || (year + (r.first ?? 0) >= r.years[0] && year + (r.first ?? 0) <= r.years[1])));
}
