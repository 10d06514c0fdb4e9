/**
 * Every figure inside with the publication it rests on, gathered by walking the tables: an object with a `cite`
 * owns the numbers below it. A module's lone bare cite stands for its uncited tables. No figure is listed by hand.
 */
import type { Cite, Mark } from '../reason/figure.ts';
import { MARKS } from '../reason/figure.ts';
import * as acidifiers from './acidifiers.ts';
import * as carbon from './carbon.ts';
import { CROP_WORDS } from './crops.ts';
import * as credits from './credits.ts';
import * as extractants from './extractants.ts';
import * as feedAcidity from './feed-acidity.ts';
import * as growth from './growth.ts';
import * as indexes from './indexes.ts';
import * as keeping from './keeping.ts';
import * as labs from './labs.ts';
import * as leaf from './leaf.ts';
import * as lime from './lime.ts';
import * as limeEquations from './lime-equations.ts';
import * as limeTests from './lime-tests.ts';
import * as limeMaterials from './lime-materials.ts';
import * as limits from './limits.ts';
import * as materials from './materials.ts';
import * as mixing from './mixing.ts';
import * as release from './release.ts';
import * as rules from './rules.ts';
import * as phRanges from './ph-ranges.ts';
import * as phScales from './ph-scales.ts';
import * as potash from './potash.ts';
import * as solubility from './solubility.ts';
import * as ratings from './ratings.ts';
import * as removal from './removal.ts';
import * as rootstocks from './rootstocks.ts';
import * as salts from './salts.ts';
import * as europe from './scales-europe.ts';
import * as us from './scales-us.ts';
import * as world from './scales-world.ts';
import * as sense from './sense.ts';
import * as soilFacts from './soil-facts.ts';
import * as soilRates from './soil-rates.ts';
import * as sulphur from './sulphur.ts';
import * as texture from './texture.ts';
import * as timing from './timing.ts';
import * as windows from './windows.ts';

const TABLES: Readonly<Record<string, object>> = { rules, growth, leaf, removal, 'soil-rates': soilRates, rootstocks, potash, limits, timing, windows, 'ph-ranges': phRanges, ratings, 'scales-us': us, 'scales-europe': europe, 'scales-world': world, materials, release, mixing, keeping, solubility, credits, lime: { ...lime, ...limeTests, ...limeEquations }, 'lime-materials': limeMaterials, 'feed-acidity': feedAcidity, sulphur, acidifiers, texture, salts, carbon, extractants, indexes, 'ph-scales': phScales, 'soil-facts': soilFacts, sense, labs };

/** One printed value, or with `value` null a statement without a number. */
export type Row = {
  readonly table: string;
  /** The export it stands in. */
  readonly name: string;
  readonly what: string;
  readonly value: number | null;
  readonly unit: string | null;
  readonly cite: Cite;
  readonly crops: readonly string[];
  readonly kinds: readonly string[];
  /** Why it never leads: an orchard rate, an old or weak page, what a whole plant takes up. */
  readonly label: string | null;
  /** The soil test, rating scale and places that it is for. */
  readonly method: string | null;
  readonly scale: string | null;
  readonly places: readonly string[];
};

type Known = Omit<Row, 'what' | 'value' | 'unit' | 'cite' | 'label'> & { readonly label: readonly string[]; readonly aside: string | null; readonly unit: string | null; readonly per: string; readonly cite: Cite | null };
type Thing = Readonly<Record<string, unknown>>;

const isThing = (x: unknown): x is Thing => typeof x === 'object' && x !== null;
const isCite = (x: unknown): x is Cite => isThing(x) && typeof x.source === 'string' && typeof x.at === 'string' && MARKS.includes(x.mark as Mark);
const texts = (x: unknown): string[] => (typeof x === 'string' ? [x] : Array.isArray(x) ? x.filter((y) => typeof y === 'string') : []);

const CROPS: readonly string[] = [...new Set(Object.values(CROP_WORDS))];
/** What a number is for, not what it says: the years and the row that a figure belongs to, the grade of a product. */
const SCOPE: readonly string[] = ['cite', 'gives', 'percentN', 'year', 'first', 'spacingFt', 'goals', 'classes', 'goal', 'depthIn', 'depth', 'depthCm', 'span', 'fromPh', 'toPh', 'reference', 'per', 'under', 'over', 'cec', 'number', 'r2', 'group', 'means', 'dates'];
const OWN: readonly string[] = ['item', 'from', 'to', 'dilution', 'soil', 'type', 'grade', 'group', 'letter', 'heaviness', 'means', 'of', 'method', 'name', 'pair'];
/** What rests on a row's second source. */
const LATER: readonly string[] = ['year2', 'year3'];
const PAIR = ['low', 'high'];
const MEMBERS: Readonly<Record<string, readonly string[]>> = { grade: ['N', 'P2O5', 'K2O'], budBreak: ['month', 'day'], firstFrost: ['month', 'day'] };

/** Units that a key or a table's own comment says. */
const KEY_UNITS: Readonly<Record<string, string>> = {
  percent: '%', sar: 'SAR', ppm: 'ppm', gPerL: 'g/L', kgPerHa: 'kg/ha', weeks: 'weeks', evergreenWeeks: 'weeks', days: 'days', months: 'months', years: 'years', every: 'days', ounces: 'oz',
  ozPerCup: 'oz a cup', grade: '%', cce: '%', doses: 'doses', ft: 'ft', leastFt: 'ft', outerShare: 'of the crown', share: '%', N: 'parts', P2O5: 'parts', K2O: 'parts', longest: 'months', beforeNitrogen: 'days', budBreak: '', firstFrost: '',
  bufferStart: 'pH', bufferEnd: 'pH', nearEnd: 'pH', neutralPh: 'pH', step: 'pH', acidityOver: 'meq/100g', cecUnder: 'meq/100g', saturation: '%', curve: '', acidityFactor: '', inefficiency: '', plain: '', plus: '',
  phUnder: 'pH', organicUnder: '%', organicOver: '%', threshold: 'dS/m', mgPerL: 'mg/L', ph: 'pH', old: 'years', tooOld: 'years', density: 'g/cm3', mostPh: 'pH', end: 'pH', shallow: 'in', deep: 'in',
};
const TABLE_UNITS: Readonly<Record<string, string>> = {
  GROWTH_RANGES: 'in', LEAF_RANGES: '%', SALT_STOP: 'dS/m', SALT_STOP_TENDER: 'dS/m', ORGANIC_MATTER: '%', CROWN_GUESS: 'ft',
  FIRST_DOSE: 'days from bud break', FIRST_DOSE_SAND: 'days from bud break', SECOND_DOSE: 'days from bud break', PHASES: 'days from bud break', PH_RANGES: 'pH', PH_STATEMENTS: 'pH', TREE_FRUIT_PH: 'pH', BLUEBERRY_PH: 'pH', TEXTURE_BY_CEC: 'meq/100g', LIME_WINDOW: 'days', SULPHUR_WINDOW: 'days',
  SHARES_SUM: '%', AUSTRIA_CLAY: '%', CLAY_ALONE: '%', VDLUFA_CLAY: '%', UK_FEEL: '%', AUSTRALIA_FIELD: '%', HEAVINESS_BY_CEC: 'meq/100g', SALT_LOSS: '% a dS/m', SALT_PH_ERROR: 'pH', KCL_PH_ERROR: 'pH', QUIET: 'mg/kg', QUIET_PH: 'pH', SALT_GAP: 'pH', LIMY_PH: 'pH', ORGANIC_ODD: '%', BASE_SUM: '%',
};
const PER: Readonly<Record<string, string>> = { years: ' a year of age', trunk: ' an inch of trunk', height: ' a foot of height', canopy: ' a foot of crown', row: ' a 100 ft of row' };

const spoken = (name: string): string => name.toLowerCase().replaceAll('_', ' ');

/** Printed values again: an edge stored just under a number is that number. */
const printed = (x: number): number => Number(x.toPrecision(6));

const BLANK: Known = { table: '', name: '', label: [], aside: null, unit: null, per: '', cite: null, crops: [], kinds: [], method: null, scale: null, places: [] };

/** Every figure inside, each once, in the order of the tables. */
export function register(): Row[] {
  const rows: Row[] = [];
  const seen = new Set<unknown>();
  for (const [table, module] of Object.entries(TABLES)) {
    const exported = Object.entries(module).filter(([, x]) => isThing(x));
    const bare = exported.filter(([, x]) => isCite(x));
    const lone = bare.length === 1 ? (bare[0]![1] as Cite) : null;
    for (const [name, x] of exported) {
      if (x === lone) continue;
      const crops = name.toLowerCase().split('_').filter((w) => CROPS.includes(w));
      walk(x as Thing, { ...BLANK, table, name, cite: lone, crops }, '', rows, seen);
    }
    if (lone && !rows.some((r) => r.cite === lone)) walk(lone, { ...BLANK, table, name: bare[0]![0] }, '', rows, seen);
  }
  return rows;
}

function walk(x: Thing, above: Known, key: string, rows: Row[], seen: Set<unknown>): void {
  if (isCite(x)) {
    if (!seen.has(x)) add({ ...above, cite: x }, key, null, rows);
    return;
  }
  if (isCite(x.cite)) {
    if (seen.has(x)) return;
    seen.add(x);
  }
  const here = knownOf(x, above);
  const before = rows.length;
  if (Array.isArray(x)) list(x, here, key, rows, seen);
  else for (const [k, child] of Object.entries(x)) {
    if (k === 'later' && isThing(child) && isCite(child.cite)) continue;
    if (LATER.includes(k) && isThing(x.later) && isCite(x.later.cite)) {
      walk(child as Thing, { ...here, cite: x.later.cite }, k, rows, seen);
      continue;
    }
    if (SCOPE.includes(k) || (k === 'grade' && isNamedByGrade(x)) || (['years', 'from', 'to'].includes(k) && Array.isArray(child))) continue;
    const [below, label] = CROPS.includes(k) ? [{ ...here, crops: [k] }, ''] : [here, k];
    if (k === 'rows' && Array.isArray(child) && Array.isArray(child[0])) grid(x, child as unknown[][], here, rows);
    else if (typeof child === 'number') add(below, label, child, rows);
    else if (isThing(child)) walk(child, Array.isArray(child) || isCite(child) ? below : { ...below, label: [...below.label, label] }, label, rows, seen);
  }
  if (isCite(x.cite) && rows.length === before) add(here, key, null, rows);
}

/** What an object says of the numbers in it. */
function knownOf(x: Thing, above: Known): Known {
  // Several materials of one row, two that meet, or a liquid by its three numbers.
  const group = [...(Array.isArray(x.materials) && isCite(x.cite) ? [texts(x.materials).join(', ')] : []), ...(typeof x.a === 'string' && typeof x.b === 'string' ? [`${x.a} with ${x.b}: ${String(x.rule)}`] : []), ...(isNamedByGrade(x) ? [x.grade.join('-')] : []), ...(isCite(x.cite) && texts(x.kind).length > 0 && x.id === undefined ? texts(x.kind) : [])];
  const said = ['id', 'test', 'nutrient', 'of', 'size', 'rating', ...(x.rating === undefined ? ['target'] : [])].flatMap((k) => (k === 'test' ? texts(x[k]).join(' ') || [] : x[k])).filter((v) => typeof v === 'string');
  // What has none of these names itself by what it is of.
  const own = typeof x.id === 'string' || said.length + group.length > 0 ? [] : [...OWN.flatMap((k) => texts(x[k])), ...(typeof x.number === 'number' ? [`equation ${x.number}`] : [])];
  const table = own.length > 0 && above.label.length === 0 ? [spoken(above.name)] : [];
  const year = typeof x.year === 'number' ? [`year ${x.year}`] : typeof x.under === 'number' && Number.isFinite(x.under) ? [`under ${printed(x.under)}`] : [];
  const bears = typeof x.bearing === 'boolean' ? [x.bearing ? 'bearing' : 'not bearing'] : [];
  const gives = isThing(x.gives) ? x.gives : null;
  const crops = [...texts(x.crops), ...texts(x.crop)];
  const scale = Array.isArray(x.bands) && typeof x.id === 'string' ? x.id : above.scale;
  return {
    ...above,
    label: [...above.label, ...group, ...(typeof x.id === 'string' ? [x.id] : said), ...table, ...own, ...year, ...bears],
    unit: gives ? `${String(gives.unit)}${gives.of === 'product' ? ` at ${String(gives.percentN)} % N` : ` ${String(gives.of)}`}` : typeof x.unit === 'string' ? x.unit : above.unit,
    per: gives ? PER[String(x.by)] ?? '' : above.per,
    cite: isCite(x.cite) ? x.cite : above.cite,
    crops: crops.length > 0 ? crops : above.crops,
    aside: typeof x.label === 'string' ? x.label : x.part === 'whole plant' ? x.part : above.aside,
    kinds: texts(x.kinds).length > 0 ? texts(x.kinds) : above.kinds,
    method: texts(x.method)[0] ?? texts(x.test)[0] ?? above.method,
    scale,
    places: [...above.places, ...texts(x.region), ...texts(x.countries), ...texts(x.states)],
  };
}

/** What is low to high of a product with three numbers. */
const isNamedByGrade = (x: Thing): x is Thing & { readonly grade: readonly number[] } => Array.isArray(x.grade) && typeof x.low === 'number';

/** Numbers in a row are a span or members of a grade; a number beside a word is named by it. */
function list(x: readonly unknown[], here: Known, key: string, rows: Row[], seen: Set<unknown>): void {
  const words = texts(x);
  const names = MEMBERS[key] ?? (x.length === 2 ? PAIR : x.map((_, i) => `${i + 1}`));
  x.forEach((child, i) => {
    if (typeof child === 'number') add(here, words.length > 0 ? words.join(' ') : x.length > 1 ? `${key} ${names[i]!}`.trim() : key, child, rows, key);
    else if (isThing(child)) walk(child, here, key, rows, seen);
  });
}

/** A grid: what stands first in a row names it, the goals or classes name its columns. */
function grid(x: Thing, lines: readonly (readonly unknown[])[], here: Known, rows: Row[]): void {
  const columns = [x.goals, x.classes].find(Array.isArray) as readonly (string | number)[] | undefined;
  for (const [first, ...rest] of lines) rest.forEach((v, i) => {
    if (typeof v === 'number') add(here, [String(first), ...(rest.length > 1 ? [String(columns?.[i] ?? i + 1)] : typeof x.goal === 'number' ? [String(x.goal)] : [])].join(' → '), v, rows);
  });
}

function add(here: Known, key: string, value: number | null, rows: Row[], unitKey = key): void {
  const { label, aside, per, cite, unit, ...rest } = here;
  if (!cite || (value !== null && !Number.isFinite(value))) return;
  const base = KEY_UNITS[unitKey] ?? unit ?? TABLE_UNITS[here.name] ?? null;
  const named = typeof here.label[0] === 'string' && /[.-]/.test(here.label[0]) ? label : [spoken(here.name), ...label];
  rows.push({
    ...rest, label: aside, cite, value: value === null ? null : printed(value), unit: value === null || base === null || base === '' ? null : `${base}${key === 'low' || key === 'high' ? per : ''}`,
    what: [...named, ...(here.crops.length > 0 ? [`(${[...here.crops, ...here.kinds].join(', ')})`] : []), key].filter((w, i, all) => w !== '' && w !== 'value' && all.indexOf(w) === i).join(' '),
  });
}

/** The mark that stands highest, or null where nothing is cited. */
export const bestMark = (rows: readonly Row[]): Mark | null => MARKS.find((m) => rows.some((r) => r.cite.mark === m)) ?? null;
