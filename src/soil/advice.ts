/**
 * What the lab itself recommends: amounts of a nutrient or of a product of three numbers, for an area or a tree.
 * Taken from the lines of a sample that are no readings; a line that names no amount, no area or no nutrient gives nothing.
 */
import type { Unit } from '../units/units.ts';
import { groundIn } from './ground.ts';
import type { Sample } from './reading.ts';

export type AdviceOf = 'N' | 'P2O5' | 'K2O' | 'P' | 'K';
/** One amount: of one nutrient in `unit` for an area, or for one tree where `per` is a tree. `product` is what it was told in. */
export type Advice = { readonly of: AdviceOf; readonly value: number; readonly unit: Extract<Unit, 'lb/acre' | 'lb/1000 sq ft' | 'lb/100 sq ft' | 'kg/ha' | 'g/m2' | 'lb' | 'g'>; readonly per: 'area' | 'tree'; readonly product: string | null; readonly line: number };

/** The names of nutrients, as labs print them. */
const NAMES: Readonly<Record<string, AdviceOf>> = { nitrogen: 'N', n: 'N', p2o5: 'P2O5', phosphate: 'P2O5', phosphates: 'P2O5', k2o: 'K2O', potash: 'K2O', phosphorus: 'P', p: 'P', potassium: 'K', k: 'K' };

const NUMBER = String.raw`(?<![\d.,])(\d+ \d+\/\d+|\d+\/\d+|\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:[.,]\d+)?)`;
const SPAN = String.raw`${NUMBER}(?:\s*(?:-|–|to)\s*${NUMBER})?`;
const WEIGHT = String.raw`(lbs?|pounds?|oz|ounces?|kgs?|kilo(?:gram)?s?|grams?|g)\b\.?`;
const AREA = String.raw`((?:acres?|ac|a|hectares?|ha|(?:1,?000|100)?\s*(?:(?:sq\.?|square)\s*(?:ft|feet|foot)|ft2)|m2|(?:sq\.?|square)\s*(?:m|met(?:re|er)s?)|trees?|plants?|bush(?:es)?)\b|m²)`;
// A fourth number of a product is its sulphur.
const WHAT = String.raw`(?:actual\s+)?((?:${Object.keys(NAMES).join('|')})\b|(?<![\d.-])\d{1,2}(?:\.\d+)?(?:-\d{1,2}(?:\.\d+)?){2,3}S?(?![\d-]))`;
const PER = String.raw`\s*(?:\/|per|an?|pro|je|por|par|for each|each)\s*(?:each\s+|every\s+)?`;
const AMOUNT_FIRST = `${SPAN}\\s*${WEIGHT}\\s*(?:of\\s+)?(?:an?\\s+)?${WHAT}`;
const NAME_FIRST = `\\b${WHAT}[^\\d;,]{0,15}?${SPAN}\\s*${WEIGHT}`;

/** "2 lb of actual N per 1000 sq ft"; "2 lb/1000 sq ft of N"; "N: 60 lb/acre", "10-10-10 at 10 lb per 1000 sq ft". */
const FORMS: readonly { readonly pattern: RegExp; readonly what: number; readonly low: number; readonly weight: number; readonly area: number }[] = [
  { pattern: new RegExp(`${AMOUNT_FIRST}[^\\d.;,]{0,25}?${PER}${AREA}`, 'gi'), low: 1, weight: 3, what: 4, area: 5 },
  { pattern: new RegExp(`${SPAN}\\s*${WEIGHT}${PER}${AREA}\\.?\\s*(?:of\\s+)?${WHAT}`, 'gi'), low: 1, weight: 3, area: 4, what: 5 },
  { pattern: new RegExp(`${NAME_FIRST}${PER}${AREA}`, 'gi'), what: 1, low: 2, weight: 4, area: 5 },
];

/** A line that forbids, bounds, looks back, or speaks of another crop or of what is no feed, recommends nothing for a tree. */
const NOT_ADVICE = /\b(?:not|never|don.?t|more than|at most|up to|max(?:imum|imal)?|exceed|nicht|kein\w*|h[oö]chstens|bis zu|lawns?|turf|grass|corn|maize|wheat|pasture|vegetables?|last year|previous(?:ly)?|applied|leaves|compost|manure|removes?|removal|contains?)\b|(?:^|\s)-\d|\de\d/i;

/** A line whose names stand behind their amounts ends with one. */
const NAMES_BEHIND = new RegExp(`${WEIGHT}(?:${PER}${AREA}\\.?)?\\s?(?:of\\s+)?${WHAT}\\D*$`, 'i');
/** Amounts without a ground of their own. */
const ALONE = { before: new RegExp(`${NAME_FIRST}(?!${PER}${AREA})`, 'gi'), behind: new RegExp(`${AMOUNT_FIRST}(?![^\\d.;,]{0,25}?${PER}${AREA})`, 'gi') };
/** "N 2 lb" below "per 1,000 sq ft:" says its ground there. */
const onGround = (text: string, ground: string): string => text.replace(NAMES_BEHIND.test(text) ? ALONE.behind : ALONE.before, (said) => `${said} per ${ground};`);

const bare = (pattern: string): string => pattern.replace(/\((?!\?)/g, '(?:');
/** "2 lb N, 1 lb P2O5 and 3 lb K2O per 1000 sq ft": the ground behind the last is that of all. */
const LIST = new RegExp(bare(`(?:(?:${AMOUNT_FIRST}|${NAME_FIRST})\\s*(?:,\\s*(?:and\\s)?|and\\s|&|\\+|plus\\s)\\s*)+(?:${AMOUNT_FIRST}|${NAME_FIRST})(?=[^\\d.;,]{0,25}?${PER}`) + `${AREA})`, 'gi');

/** What every form above holds; most lines do not, and are spared the larger patterns. */
const WEIGHED = /\d\s*(?:lbs?|pounds?|oz|ounces?|kgs?|kilo(?:gram)?s?|grams?|g)\b/gi;

/** Every amount that the sample's lines recommend, in their order; each stretch of a line counts once. */
export function adviceOf(sample: Sample): Advice[] {
  let below: { readonly ground: string; readonly line: number } | null = null;
  return sample.unread.flatMap(({ line, text }) => {
    const ground = groundIn(text);
    // A heading holds for the lines right below it.
    if (ground !== null) below = { ground, line };
    else if (below && line - below.line <= 2) below = { ...below, line };
    else below = null;
    return amountsIn(text, line, ground === null && below ? below.ground : null);
  });
}

/** The amounts that one line recommends; `ground` where a heading above told it, else it may head the line itself. */
export function amountsIn(printed: string, line: number, ground: string | null = null): Advice[] {
  const weights = printed.length > 400 ? 0 : printed.match(WEIGHED)?.length ?? 0;
  if (weights === 0 || NOT_ADVICE.test(printed)) return [];
  // "Recommendation, per 1,000 sq ft: N 2 lb, P2O5 1 lb".
  const own = ground ?? groundIn(printed.slice(0, printed.indexOf(':') + 1));
  const text = own === null ? printed : onGround(printed, own);
  let rest = weights > 1 ? text.replace(LIST, onGround) : text;
  const found: { at: number; advice: Advice[] }[] = [];
  // "P2O5 40 lb/acre K2O 60 lb/acre": the first amount is none of potash.
  for (const { pattern, ...groups } of NAMES_BEHIND.test(text) ? FORMS : FORMS.toReversed()) {
    for (const m of rest.matchAll(pattern)) {
      found.push({ at: m.index, advice: read(m[groups.what]!, m[groups.low]!, m[groups.weight]!, m[groups.area]!, line) });
      rest = rest.slice(0, m.index) + ' '.repeat(m[0].length) + rest.slice(m.index + m[0].length);
    }
  }
  return found.sort((a, b) => a.at - b.at).flatMap((x) => x.advice);
}

function read(what: string, low: string, weight: string, area: string, line: number): Advice[] {
  const first = weight[0]!.toLowerCase();
  const ground = groundOf(area.toLowerCase().replace(/[\s.,]/g, ''), first !== 'g' && first !== 'k');
  // The lower end of a span.
  const amount = numberOf(low) * (first === 'o' ? 1 / 16 : first === 'k' ? 1000 : 1);
  if (!ground || !Number.isFinite(amount)) return [];
  const said = { unit: ground.unit, per: ground.unit === 'lb' || ground.unit === 'g' ? 'tree' as const : 'area' as const, line };
  const value = amount * ground.times;
  const of = NAMES[what.toLowerCase()];
  if (of) return [{ of, value, product: null, ...said }];
  const [n, p, k] = what.split('-').map(Number) as [number, number, number];
  if (n + p + k > 100) return [];
  return ([['N', n], ['P2O5', p], ['K2O', k]] as const).flatMap(([nutrient, percent]) => (percent > 0 ? [{ of: nutrient, value: (value * percent) / 100, product: what, ...said }] : []));
}

/** Pounds go with acres and feet, grams with metres and hectares; `times` makes pounds or grams of the ground those of the unit. */
function groundOf(ground: string, pounds: boolean): { readonly unit: Advice['unit']; readonly times: number } | null {
  if (/^[tpb]/.test(ground)) return { unit: pounds ? 'lb' : 'g', times: 1 };
  if (/[hm]/.test(ground)) return pounds ? null : ground.startsWith('h') ? { unit: 'kg/ha', times: 0.001 } : { unit: 'g/m2', times: 1 };
  if (!pounds) return null;
  if (ground.startsWith('a')) return { unit: 'lb/acre', times: 1 };
  if (ground.startsWith('1000')) return { unit: 'lb/1000 sq ft', times: 1 };
  return { unit: 'lb/100 sq ft', times: ground.startsWith('100') ? 1 : 100 };
}

function numberOf(text: string): number {
  const fraction = /(?:(\d+) )?(\d+)\/(\d+)/.exec(text);
  if (fraction) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
  return Number(/,\d{3}(?!\d)/.test(text) && !text.startsWith('0') ? text.replaceAll(',', '') : text.replace(',', '.'));
}
