/**
 * One line a tree: facts in any order, a comma and a blank between them.
 *   tree = item *("," 1*SP item)      exactly one crop; any other fact once; case ignored
 */
import type { Cite } from '../reason/figure.ts';
import type { Notice, Place, Question } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { Crop, Size } from '../tables/crops.ts';
import { CROP_WORDS, SIZES } from '../tables/crops.ts';
import { IN_ROW } from '../tables/limits.ts';
import type { Day } from '../units/date.ts';
import { monthOf } from '../units/date.ts';
import type { Flag } from './fact-words.ts';
import { cropWord, FLAGS, MEASURES } from './fact-words.ts';
import { likelyFacts } from './likely-facts.ts';
import type { Measured } from './measure.ts';
import { lengthOf, massOf, numberOf, volumeOf } from './measure.ts';
import { likeStock, sizeOn } from './rootstock.ts';

export type Leaf = { readonly nutrient: string; readonly value: number; readonly unit: '%' | 'ppm' };

/** A feed of an earlier season: its nitrogen in grams, null where nobody weighed it, and the grams of it that this season still sets free, at the most. */
export type Carried = { readonly date: Day; readonly bag: string; readonly n: number | null; readonly frees: number; readonly cite: Cite };

/** A tree or a row of like plants. Lengths in metres, fruit in grams a plant. */
export type Tree = {
  readonly name: string;
  readonly count: number;
  readonly word: string;
  readonly crop: Crop;
  /** The crop whose figures the grower chose to borrow, where its own has none. */
  readonly fedAs?: Crop;
  readonly size?: Size;
  readonly planted?: { readonly year: number; readonly month?: number };
  /** A tree that is still to come. */
  readonly planting?: { readonly year: number; readonly month?: number };
  /** The bed or strip that is dug over for all of them, metres. */
  readonly bed?: readonly [number, number];
  readonly trunk?: { readonly m: number; readonly measured: 'round' | 'across' | null };
  readonly across?: number;
  readonly high?: number;
  readonly spacing?: readonly [number, number];
  readonly shoots?: { readonly m: number; readonly year?: number };
  readonly fruit?: { readonly g: number | null; readonly said: 'none' | 'light' | 'heavy' | 'weight'; readonly year?: number };
  readonly tub?: number;
  readonly rootstock?: string;
  /** Litres of compost that it gets a year. */
  readonly composted?: number;
  /** What meals, manures and composts of the two seasons before still set free this season, by the diary. */
  readonly carried?: readonly Carried[];
  readonly leaf: readonly Leaf[];
  readonly flags: readonly Flag[];
  readonly zone?: string;
  readonly place: Place;
};

/** Where a stretch of the tree's text stands in the file. */
export type Locate = (start: number, end: number) => Place;
export type Item = { readonly text: string; readonly place: Place };

/** The facts of a line, parted by a comma and a blank; a comma inside a number stays. */
export function itemsOf(text: string, locate: Locate): Item[] {
  const items: Item[] = [];
  let offset = 0;
  for (const part of text.split(/(,\s+)/)) {
    const lead = part.length - part.trimStart().length;
    const item = part.trim().replace(/,$/, '');
    if (item && !/^,\s*$/.test(part)) items.push({ text: item, place: locate(offset + lead, offset + lead + item.length) });
    offset += part.length;
  }
  return items;
}

export type TreeResult = { readonly tree: Tree | null; readonly notices: readonly Notice[]; readonly questions: readonly Question[] };

type Facts = {
  crop?: { word: string; count: number };
  fedAs?: Crop;
  size?: Size;
  planted?: Tree['planted'];
  planting?: Tree['planting'];
  bed?: readonly [number, number];
  trunk?: NonNullable<Tree['trunk']>;
  across?: number;
  high?: number;
  spacing?: readonly [number, number];
  shoots?: Tree['shoots'];
  fruit?: Tree['fruit'];
  tub?: number;
  rootstock?: string;
  composted?: number;
  zone?: string;
};

/** Reads the facts of one tree. All mistakes are told at once, each where it stands. */
export function parseTree(name: string, items: readonly Item[], zones: readonly string[], whole: Place): TreeResult {
  const notices: Notice[] = [];
  const facts: Facts = {};
  const leaf: Leaf[] = [];
  const flags: Flag[] = [];
  const seen = new Set<string>();
  for (const { text: item, place } of items.flatMap(stockApart)) {
    const read = readItem(item, zones);
    if ('unclear' in read) notices.push(notice('number-two-ways', 'error', { read: read.unclear, dot: read.unclear.replace(',', '.'), plain: read.unclear.replace(',', '') }, place));
    else if ('wrong' in read) notices.push(notice(read.wrong, 'error', { read: item, tree: name, guess: read.guess ?? '', form: read.guess ? '' : 'line', expected: read.expected ?? '' }, place));
    else {
      const key = read.key === 'flag' ? `flag ${read.flag}` : read.key === 'leaf' ? `leaf ${read.leaf.nutrient}` : read.key;
      if (seen.has(key)) {
        notices.push(notice('fact-twice', 'error', { read: item, tree: name }, place));
        continue;
      }
      seen.add(key);
      if (read.key === 'flag') flags.push(read.flag);
      else if (read.key === 'leaf') leaf.push(read.leaf);
      else Object.assign(facts, { [read.key]: read.value });
    }
  }
  if (flags.includes('bearing') && flags.includes('not bearing')) notices.push(notice('fact-contrary', 'error', { tree: name, a: 'bearing', b: 'not bearing' }, whole));
  if (facts.planted && facts.planting) notices.push(notice('fact-contrary', 'error', { tree: name, a: 'planted', b: 'planting' }, whole));
  if (!facts.crop && !notices.some((n) => n.code === 'item-unknown')) notices.push(notice('crop-missing', 'error', { tree: name }, whole));
  if (!facts.crop || notices.some((n) => n.severity === 'error')) return { tree: null, notices, questions: [] };

  const questions: Question[] = [];
  if (facts.trunk?.measured === null) {
    questions.push({ code: 'trunk-round-or-across', about: name, facts: { tree: name }, choices: ['round', 'across'], changes: 'changes-ring', place: whole });
  }
  const { crop, ...rest } = facts;
  const size = facts.size ?? (facts.rootstock === undefined ? undefined : sizeOn(facts.rootstock));
  if (facts.rootstock !== undefined && size === undefined) notices.push(notice('rootstock-unknown', 'warning', { tree: name, read: facts.rootstock, guess: likeStock(facts.rootstock).join(', ') }, whole));
  const kind = CROP_WORDS[crop.word];
  if (facts.bed && !facts.planting && crop.count === 1 && kind !== undefined && IN_ROW.crops[kind] !== undefined) notices.push(notice('bed-standing', 'warning', { tree: name }, whole));
  return {
    tree: { name, count: crop.count, word: crop.word, crop: kind ?? 'other', ...rest, ...(size ? { size } : {}), leaf, flags, place: whole },
    notices, questions,
  };
}

/** "apple on M26" holds two facts; on anything but a stock, or a name with a number as stocks have, a tree only stands. */
function stockApart(item: Item): readonly Item[] {
  const [, crop, gap, stock] = /^(.*\S)(\s+on\s+)(\S.*)$/is.exec(item.text) ?? [];
  if (!crop || !gap || !stock || !cropWord(crop.toLowerCase().replace(/^\d+\s+/, '')) || !(sizeOn(stock) || /^[a-z.-]+ ?\d+[a-z]?$/i.test(stock))) return [item];
  const at = crop.length + gap.length;
  return [{ text: crop, place: { ...item.place, length: crop.length } }, { text: `rootstock ${stock}`, place: { ...item.place, column: item.place.column + at, length: stock.length } }];
}

type Read =
  | { key: 'crop'; value: { word: string; count: number } }
  | { key: 'flag'; flag: Flag }
  | { key: 'leaf'; leaf: Leaf }
  | { key: Exclude<keyof Facts, 'crop'>; value: unknown }
  | { unclear: string }
  | { wrong: 'item-unknown' | 'measure-wrong' | 'measure-zero'; guess?: string; expected?: string };

/** One fact. */
function readItem(item: string, zones: readonly string[]): Read {
  const asTyped = item.toLowerCase().replace(/\s+/g, ' ');
  const flag = FLAGS.find((f) => f === asTyped);
  if (flag) return { key: 'flag', flag };
  const zone = zones.find((z) => z.toLowerCase() === asTyped);
  if (zone) return { key: 'zone', value: zone };
  const lower = nameFirst(asTyped);
  const size = SIZES.find((s) => s === lower || s.replace('-', ' ') === lower);
  if (size) return { key: 'size', value: size };

  const crop = /^(?:(\d+) +)?(.*)$/s.exec(lower)!;
  const word = cropWord(crop[2]!);
  if (word && crop[1] && Number(crop[1]) === 0) return { wrong: 'measure-zero' };
  if (word) return { key: 'crop', value: { word, count: crop[1] ? Number(crop[1]) : 1 } };

  const planted = /^(planted|planting) +(?:(\p{L}+)\.? +)?(\d{4})$/u.exec(lower);
  if (planted) {
    const key = planted[1] as 'planted' | 'planting';
    const month = planted[2] ? monthOf(planted[2]) : undefined;
    return month === null ? { wrong: 'measure-wrong', expected: key } : { key, value: { year: Number(planted[3]), ...(month ? { month } : {}) } };
  }
  const bed = /^bed +(.+?) +x +(.+)$/.exec(lower);
  if (bed) return sides('bed', bed[1]!, bed[2]!);
  const trunk = /^trunk +(.+?)(?: +(round|across))?$/.exec(lower);
  if (trunk) return measure('trunk', lengthOf(trunk[1]!), (m) => ({ m, measured: trunk[2] ?? null }));
  const wide = /^(.+) +(?:(across|wide)|high|tall)$/.exec(lower);
  if (wide) return measure(wide[2] ? 'across' : 'high', lengthOf(wide[1]!));
  const spacing = /^spacing +(.+?)(?: +x +(.+))?$/.exec(lower);
  if (spacing) return sides('spacing', spacing[1]!, spacing[2] ?? spacing[1]!);
  const shoots = /^shoots +(.+?)(?:(?:(?<=[a-z"]) +in)? +(\d{4}))?$/.exec(lower);
  if (shoots) {
    const none = /^(?:none|0)\b/.test(shoots[1]!);
    return none ? { key: 'shoots', value: { m: 0, ...(shoots[2] ? { year: Number(shoots[2]) } : {}) } } : measure('shoots', lengthOf(shoots[1]!), (m) => ({ m, ...(shoots[2] ? { year: Number(shoots[2]) } : {}) }));
  }
  const fruit = /^fruit +(.+?)(?: +(\d{4}))?$/.exec(lower);
  if (fruit) {
    const year = fruit[2] ? { year: Number(fruit[2]) } : {};
    if (fruit[1] === 'none' || fruit[1] === 'light' || fruit[1] === 'heavy') return { key: 'fruit', value: { said: fruit[1], g: fruit[1] === 'none' ? 0 : null, ...year } };
    return measure('fruit', massOf(fruit[1]!), (g) => ({ said: 'weight', g, ...year }));
  }
  const tub = /^tub +(.+)$/.exec(lower);
  if (tub) return measure('tub', volumeOf(tub[1]!));
  const compost = /^compost +(.+)$/.exec(lower);
  if (compost) return measure('composted', volumeOf(compost[1]!));
  const kin = /^fed as +(?:an? +)?(.+)$/.exec(lower);
  if (kin) {
    const as = cropWord(kin[1]!);
    return as !== null && CROP_WORDS[as] !== undefined ? { key: 'fedAs', value: CROP_WORDS[as] } : { wrong: 'item-unknown', guess: suggest(kin[1]!, Object.keys(CROP_WORDS)).map((c) => `fed as ${c}`).join(', ') };
  }
  const stock = /^(?:rootstock +(.+)|(.+) +rootstock)$/.exec(lower);
  // "on M26" counts only for a stock that is known: a tree stands on many things.
  if (stock || (lower.startsWith('on ') && sizeOn(lower.slice(3)))) return { key: 'rootstock', value: item.trim().replace(/^on +/i, '').replace(/\s*\brootstock\b\s*/i, ' ').trim() };
  const leaf = /^leaf +([a-z]+) +([\d.,]+) *(%|ppm)$/.exec(lower);
  if (leaf) {
    const value = numberOf(leaf[2]!);
    const nutrient = ['n', 'p', 'k', 'ca', 'mg', 's', 'b', 'zn', 'mn', 'fe', 'cu'].includes(leaf[1]!) ? leaf[1]![0]!.toUpperCase() + leaf[1]!.slice(1) : null;
    if (typeof value === 'number' && nutrient) return { key: 'leaf', leaf: { nutrient, value, unit: leaf[3] as '%' | 'ppm' } };
    return value !== null && typeof value === 'object' ? value : { wrong: 'measure-wrong', expected: 'leaf' };
  }
  // Zones may end in these words: "north bed", "new planting".
  const fact = MEASURES.find((f) => lower.startsWith(`${f} `) || lower.endsWith(` ${f}`)) ?? (['planting', 'bed'] as const).find((f) => /\d/.test(lower) && lower.startsWith(`${f} `));
  if (fact) return { wrong: 'measure-wrong', expected: fact };
  return { wrong: 'item-unknown', guess: likelyFacts(item, lower, zones) };
}

/** "15 gal tub", "in a 60 L pot", "7 in shoots" with the name of what is measured first. */
const nameFirst = (text: string): string => text
  .replace(/^(?:in (?:an? )?)?(\d.*?) +(tub|pot|container|trunk|shoots|spacing)$/, '$2 $1')
  .replace(/^(?:in (?:an? )?)?(?:tub|pot|container)(?: of)? +(?=\d)/, 'tub ');

/** Two lengths; the first takes the second's unit where it has none of its own. */
function sides(key: 'spacing' | 'bed', a: string, b: string): Read {
  const other = lengthOf(b);
  const first = lengthOf(a) ?? (typeof numberOf(a) === 'number' ? lengthOf(`${a} ${b.replace(/^[\d.,/ ]+/, '')}`) : null);
  return typeof other === 'number' ? measure(key, first, (m) => [m, other]) : { wrong: 'measure-wrong', expected: key };
}

function measure(key: Exclude<keyof Facts, 'crop'>, measured: Measured, shape: (n: number) => unknown = (n) => n): Read {
  if (measured === null) return { wrong: 'measure-wrong', expected: key };
  if (typeof measured !== 'number') return measured;
  return measured <= 0 || !Number.isFinite(measured) ? { wrong: 'measure-zero', expected: key } : { key, value: shape(measured) };
}

/** Words that a zone may not be called by, since a tree's line could not tell them from a fact. */
export function isReserved(name: string): boolean {
  const read = readItem(name, []);
  return !('wrong' in read) || read.wrong === 'measure-wrong';
}
