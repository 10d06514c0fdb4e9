/** A need as typed: "0.5 lb N, 0.2 lb P2O5", "N 500 g", "12 oz nitrogen, 0 phosphate"; or a strength: "150 ppm N", "100 mg/L N, 150 mg/L K in 2 gal". */
import { volumesIn } from '../orchard/label-volume.ts';
import { massOf, numberOf } from '../orchard/measure.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { LETTER } from '../units/letters.ts';
import type { Nutrient } from '../units/substance.ts';
import { ELEMENT_SHARE } from '../units/substance.ts';
import type { Goal } from './weigh.ts';

/** `goal` is null where anything is wrong; `units` are those of the first amount. Of a strength the goal is that of `waterL` litres. */
export type NeedText = { readonly goal: Goal | null; readonly units: 'us' | 'metric'; readonly waterL?: number; readonly notices: readonly Notice[] };

/** What growers call the nutrients. An element counts as the oxide that holds it. */
const NAMES: Readonly<Record<string, { readonly of: Nutrient; readonly share?: number }>> = {
  n: { of: 'N' }, nitrogen: { of: 'N' },
  phosphate: { of: 'P2O5' }, p: { of: 'P2O5', share: ELEMENT_SHARE.P2O5.share }, phosphorus: { of: 'P2O5', share: ELEMENT_SHARE.P2O5.share },
  potash: { of: 'K2O' }, k: { of: 'K2O', share: ELEMENT_SHARE.K2O.share }, potassium: { of: 'K2O', share: ELEMENT_SHARE.K2O.share },
};

/** Grams that a home orchard can mean: a hundredth of a gram to ten tonnes. */
const LEAST = 0.01;
const MOST = 10_000_000;

/** mg in a litre, as it is written of feeds in water. */
const STRENGTH = new RegExp(`(?<=\\d) *(?:ppm|mg */ *l(?:it(?:er|re))?)(?![${LETTER}])`, 'i');
const MASS = new RegExp(`\\d *(?:kg|kilos?|g|grams?|oz|ounces?|lbs?|pounds?)(?![${LETTER}])`, 'i');
/** A drop of water to a cistern, litres. */
const WATER = { least: 0.1, most: 10_000 };

/** Longer than any amount with its nutrient. */
const LONGEST = 60;

/** `country` tells which gallon. */
export function parseNeed(text: string, country: string | null = null): NeedText {
  return STRENGTH.test(text) ? strengthOf(text, country) : amountsOf(text);
}

/** A strength is a need of each litre. */
function strengthOf(text: string, country: string | null): NeedText {
  const inWater = / in (\S.*)$/iu.exec(text);
  const { volumes, rest } = inWater ? volumesIn(inWater[1]!, country) : { volumes: [], rest: '' };
  const mL = inWater ? volumes[0]?.mL : 1000;
  const plain = inWater ? text.slice(0, inWater.index) : text;
  if (MASS.test(plain)) return { goal: null, units: 'metric', notices: [notice('need-mixed', 'error', { read: plain.slice(0, LONGEST) })] };
  const of = amountsOf(plain.replace(new RegExp(STRENGTH, 'giu'), ' g'));
  const known = typeof mL === 'number' && volumes.length <= 1 && rest.trim() === '' && mL >= 1000 * WATER.least && mL <= 1000 * WATER.most;
  const notices = known ? of.notices : [...of.notices, notice('need-water', 'error', { read: inWater![1]! })];
  const litres = known ? mL / 1000 : 1;
  const goal = of.goal && notices.length === 0 ? (Object.fromEntries(Object.entries(of.goal).map(([n, g]) => [n, (g / 1000) * litres])) as Goal) : null;
  return { goal, units: inWater && /gal|oz|quart|pint/i.test(inWater[1]!) ? 'us' : 'metric', waterL: litres, notices };
}

function amountsOf(text: string): NeedText {
  const notices: Notice[] = [];
  const goal: Partial<Record<Nutrient, number>> = {};
  const plain = text.replace(/(\d)(?=[\u00bc-\u00be\u2150-\u215e])/g, '$1 ').normalize('NFKC').replace(/\u2044/g, '/').replace(/\u2212/g, '-').replace(/\bP2O5\b/gi, 'phosphate').replace(/\bK2O\b/gi, 'potash');
  // A comma between two digits belongs to a number.
  const parts = plain.split(/,(?!\d)|(?<!\d),|[;+&\n]|\band\b/i).map((p) => p.trim()).filter(Boolean);
  for (const part of parts) {
    const read = partOf(part);
    if ('wrong' in read) notices.push(read.wrong);
    else if (goal[read.of] !== undefined) notices.push(notice('need-twice', 'error', { read: part, nutrient: read.of }));
    else goal[read.of] = read.g;
  }
  if (parts.length === 0) notices.push(notice('need-empty', 'error'));
  else if (notices.length === 0 && Object.values(goal).every((g) => g === 0)) notices.push(notice('need-nothing', 'error', { read: text.trim() }));
  return { goal: notices.length > 0 ? null : goal, units: /^[olp]/i.test(/\d *(oz|ounces?|lbs?|pounds?|kg|kilos?|g|grams?)\b/i.exec(plain)?.[1] ?? '') ? 'us' : 'metric', notices };
}

function partOf(part: string): { of: Nutrient; g: number } | { wrong: Notice } {
  const wrong = (code: 'need-wrong' | 'need-negative' | 'need-absurd'): { wrong: Notice } => ({ wrong: notice(code, 'error', { read: part.slice(0, LONGEST) }) });
  if (part.length > LONGEST) return wrong('need-wrong');
  const m = /^(.*?\d.*?)(?: +of)? +(\p{L}+)$/u.exec(part) ?? /^(.*\d)(\p{L})$/u.exec(part);
  const turned = /^(\p{L}+)[ :=]+([-\d].*)$/u.exec(part);
  const [amount, word] = m && named(m[2]!) ? [m[1]!, m[2]!] : turned && named(turned[1]!) ? [turned[2]!, turned[1]!] : ['', ''];
  const name = named(word);
  if (!name) return wrong('need-wrong');
  if (/^-\s*[\d.]/.test(amount)) return wrong('need-negative');
  const bare = numberOf(amount);
  const g = bare === 0 ? 0 : massOf(amount);
  const unclear = typeof bare === 'object' && bare !== null ? bare : typeof g === 'object' && g !== null ? g : null;
  if (unclear) return { wrong: notice('number-two-ways', 'error', { read: unclear.unclear, dot: unclear.unclear.replace(',', '.'), plain: unclear.unclear.replace(',', '') }) };
  if (typeof g !== 'number') return wrong('need-wrong');
  const oxide = g / (name.share ?? 1);
  if (oxide > MOST || (oxide > 0 && oxide < LEAST)) return wrong('need-absurd');
  return { of: name.of, g: oxide };
}

const named = (word: string): (typeof NAMES)[string] | undefined => (Object.hasOwn(NAMES, word.toLowerCase()) ? NAMES[word.toLowerCase()] : undefined);
