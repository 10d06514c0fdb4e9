/** Weight, volume, price and what is left, found anywhere in the words of a label: "40-lb bag $21.50", "2,5 kg", "2 cu ft", "12,50 €". */
import type { Measured } from './measure.ts';
import { massOf, numberOf } from './measure.ts';
import type { Volume } from './label-volume.ts';
import { volumesIn, VOLUME_UNIT, volumeOfUnit } from './label-volume.ts';

export type Price = { readonly amount: number; readonly currency: string };
/** A number that can be read two ways, with both. */
export type TwoWays = { readonly read: string; readonly a: string; readonly b: string };

export type Amounts = {
  /** The words without the amounts. */
  readonly rest: string;
  readonly weights: readonly Measured[];
  /** Null where the number is none. */
  readonly prices: readonly (Price | TwoWays | null)[];
  readonly left: { readonly share?: number; readonly g?: number } | null;
  /** Grams that the price is for, where it is told by weight. */
  readonly per: number | null;
  /** Millilitres; null where the number is none. */
  readonly volumes: readonly Volume[];
  /** Millilitres that the price is for. */
  readonly perVolume: number | null;
};

const SHARE: Readonly<Record<string, number>> = { half: 1 / 2, quarter: 1 / 4, third: 1 / 3, all: 1, none: 0, 'three quarters': 3 / 4, 'two thirds': 2 / 3 };
/** Said of a bag by itself. */
const STATE: Readonly<Record<string, number>> = { full: 1, unopened: 1, empty: 0 };
const CURRENCIES: Readonly<Record<string, string>> = { USD: '$', US$: '$', EUR: '€', GBP: '£', AUD: 'A$', AU$: 'A$', NZD: 'NZ$', CAD: 'C$', CA$: 'C$' };
const CODE = '(?:USD|EUR|GBP|AUD|NZD|CAD)';
const NUMBER = '\\d+(?:[.,]\\d+)*';
const WEIGHT = '(\\d+ +\\d+/\\d+|\\d+/\\d+|\\d+(?:[.,]\\d+)?) *-? *(kg|kilos?|grams?|g|ounces?|oz|pounds?|lbs?|(?:short |metric )?tons?|tonnes?|t)\\b\\.?';
const PRICE = new RegExp(`(?<![\\w.,-])(?:([A-Z]{0,2}[$£€]|${CODE}) *(${NUMBER})|(${NUMBER}) *([$£€]|${CODE}(?!\\w)))(?![\\w])`, 'g');
/** Behind a price: the weight that it buys. */
const PER = ' *(?:/|(?:per|an?|the)\\b) *(kg|kilo|ounce|oz|pound|lb|(?:short |metric )?ton|tonne|t)\\b\\.?';
const PRICED = new RegExp(`${PRICE.source}${PER}`, 'gi');
const PRICED_VOLUME = new RegExp(`${PRICE.source} *(?:/|(?:per|an?|the)\\b) *${VOLUME_UNIT}`, 'giu');
const MASS = new RegExp(`(?<![\\w.,/-])${WEIGHT}`, 'gi');
const ABOUT = '(?:(?:about|roughly|ca\\.?|nearly|almost|~) *)?';
/** "half left", "about a third of it left", "1/3 left", "50 % remaining", "20 lb left", "half a bag used": a word, a fraction, a percent or a weight, and what became of it. */
const LEFT = new RegExp(`(?<![\\w.,/-])${ABOUT}(?:(?:an? |one )?(${Object.keys(SHARE).reverse().map((w) => w.replace(' ', '[- ]')).join('|')})|(\\d+/\\d+)|(\\d+(?:[.,]\\d+)?) *%|${WEIGHT})(?: +(?:of it|of the bag|an? bag|the bag|bag|full))? +(left|full|remaining|used)(?!\\w)`, 'i');
const IS_STATE = new RegExp(`^\\s*${ABOUT}(${Object.keys(STATE).join('|')})\\s*$`, 'i');
const BEFORE = /^(?:(?:bags?|sacks?|box|tubs?|buckets?|pails?|jars?|bottles?|packs?|packets?|of|each)(?!\w) *)+/i;
const AFTER = /(?: *(?<!\w)(?:bags?|sacks?|box|tubs?|of|for|at|each|@))+$/i;
/** Said beside a weight or a volume. */
const HELD_IN = / *(?<!\w)(?:buckets?|pails?|jugs?|bottles?|cans?|canisters?|drums?)$/i;
/** "40lb$21.50" */
const TOUCHING = /(?<=\d *(?:kg|g|oz|lbs?|l|gal))(?=[$£€])/gi;

/** A ton is 2,000 lb in the United States, a tonne elsewhere. */
function weightOf(n: string, unit: string, country: string | null): Measured {
  if (!/^(?:short |metric )?t/i.test(unit)) return massOf(`${n} ${unit}`);
  const short = /^short/i.test(unit) || (/^tons?$/i.test(unit) && (country === null || country === 'US'));
  const one = massOf(`${n} ${short ? 'lb' : 'kg'}`);
  return typeof one === 'number' ? one * (short ? 2000 : 1000) : one;
}

/** What is left of a bag; nothing in it where what was said is no amount, as a weight that was used. */
function leftIn(kept: RegExpExecArray, country: string | null): NonNullable<Amounts['left']> {
  const said = kept[1]?.toLowerCase().replace('-', ' ') ?? '';
  if (kept.length === 2) return { share: STATE[said]! };
  const [fraction, percent, n, unit, how] = kept.slice(2);
  const isUsed = how!.toLowerCase() === 'used';
  const weight = n === undefined ? null : weightOf(n, unit!, country);
  if (weight !== null) return typeof weight === 'number' && !isUsed ? { g: weight } : {};
  const share = said !== '' ? SHARE[said]! : fraction !== undefined ? numberOf(fraction) : Number(percent!.replace(',', '.')) / 100;
  return typeof share === 'number' && share <= 1 ? { share: isUsed ? 1 - share : share } : {};
}

export function amountsIn(text: string, country: string | null): Amounts {
  const kept = LEFT.exec(text) ?? IS_STATE.exec(text);
  let words = (kept ? text.replace(kept[0], ' ') : text).replace(TOUCHING, ' ');
  const left = kept && leftIn(kept, country);
  const prices: Amounts['prices'][number][] = [];
  let per: number | null = null;
  let perVolume: number | null = null;
  const priced = (sign: string | undefined, n: string | undefined, m: string | undefined, mark: string | undefined): string => {
    const amount = priceOf((n ?? m)!);
    const currency = (sign ?? mark)!.toUpperCase();
    prices.push(typeof amount === 'number' ? { amount, currency: CURRENCIES[currency] ?? currency } : amount);
    return ' ';
  };
  if (/\/|\b(?:per|an?|the)\b/i.test(words)) words = words.replace(PRICED, (_, sign: string | undefined, n: string | undefined, m: string | undefined, mark: string | undefined, unit: string) => {
    per = weightOf('1', unit, country) as number;
    return priced(sign, n, m, mark);
  }).replace(PRICED_VOLUME, (_, sign: string | undefined, n: string | undefined, m: string | undefined, mark: string | undefined, unit: string) => {
    perVolume = volumeOfUnit(unit, country);
    return priced(sign, n, m, mark);
  });
  words = words.replace(PRICE, (_, ...found: (string | undefined)[]) => priced(found[0], found[1], found[2], found[3]));
  const held = volumesIn(words, country);
  words = held.rest;
  const weights: Measured[] = [];
  words = words.replace(MASS, (_, n: string, unit: string) => {
    weights.push(weightOf(n, unit, country));
    return ' ';
  });
  words = words.replace(/\s+/g, ' ').replace(/\( *\)/g, '').trim();
  if (weights.length + held.volumes.length > 0) words = words.replace(HELD_IN, '');
  const taken = prices.length + weights.length + held.volumes.length > 0 || kept !== null;
  return { rest: taken ? words.replace(BEFORE, '').replace(AFTER, '').trim() : words, weights, prices, left, per, volumes: held.volumes, perVolume };
}

/** "21.50", "12,50", "1,299.00"; "1.299" and "1.299,00" can be read two ways. */
function priceOf(text: string): number | TwoWays | null {
  if (/^\d+(?:[.,]\d{1,2})?$/.test(text)) return Number(text.replace(',', '.'));
  if (/^\d{1,3}(?:,\d{3})+\.\d{1,2}$/.test(text)) return Number(text.replaceAll(',', ''));
  const m = /^(\d{1,3})[.,](\d{3})(?:,(\d{1,2}))?$/.exec(text);
  return m ? { read: text, a: `${m[1]!}${m[2]!}${m[3] ? `.${m[3]}` : ''}`, b: `${m[1]!}.${m[2]!}` } : null;
}
