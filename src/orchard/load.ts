/** `orchard.yaml` → checked data, or every mistake at its line and column. */
import { isAlias, isMap, isPair, isScalar, isSeq, LineCounter, visit } from 'yaml';
import type { Document, Node, Pair, Scalar, YAMLMap } from 'yaml';
import type { Notice, Place, Question } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { Rule } from '../tables/rule.ts';
import { monthDay } from '../units/date.ts';
import { FLAGS } from './fact-words.ts';
import type { Bag } from './bag.ts';
import { bagName, parseBag } from './bag.ts';
import { KEYS, likelyKeys, shapeFaults } from './shape.ts';
import { parseYaml, unreadable } from './yaml.ts';
import type { Item, Tree } from './tree.ts';
import { isReserved, itemsOf, parseTree } from './tree.ts';
import { languageNamed } from './language.ts';
import type { Ban } from './bans.ts';
import { BANS, bansOf } from './bans.ts';
import type { Water } from './water.ts';
import { waterOf } from './water.ts';
import { LANGUAGES, spoken } from '../words/words.ts';
import type { Where } from './where.ts';
import { COUNTRY_NAMES, NOWHERE, parseWhere, withCountry } from './where.ts';

export type MonthDay = { readonly month: number; readonly date: number };
/** A report, and which of its samples; `byLab` where its own recommendation is followed. */
export type ZoneTest = { readonly file: string; readonly sample: string | null; readonly byLab: boolean; readonly place: Place };
/** Of several tests the first in the file, with the others behind it: which is the newest, their dates tell. */
export type Zone = ZoneTest & { readonly name: string; readonly others: readonly ZoneTest[] };

export type Orchard = {
  readonly name: string;
  readonly where: Where;
  readonly budBreak: MonthDay | null;
  readonly lastFrost: MonthDay | null;
  readonly firstFrost: MonthDay | null;
  /** What it is watered with, where its alkalinity is told. */
  readonly water: Water | null;
  /** What is never fed here. */
  readonly never: readonly Ban[];
  readonly zones: readonly Zone[];
  readonly trees: readonly Tree[];
  readonly shed: readonly Bag[];
  readonly store: readonly Bag[];
  /** The grower's own rules, from `rules.yaml`. */
  readonly rules: readonly Rule[];
};

export type OrchardResult = { readonly orchard: Orchard | null; readonly notices: readonly Notice[]; readonly questions: readonly Question[] };

/** The zone that a tree stands in: the one it names, else the only one there is. */
export const zoneOf = (tree: Tree, { zones }: Pick<Orchard, 'zones'>): string | undefined => tree.zone ?? (zones.length === 1 ? zones[0]!.name : undefined);

/** Behind a zone's report: follow what the lab recommends. */
const BY_LAB = 'by the lab';
const LARGEST_ORCHARD = 1_000_000;

export function loadOrchard(source: string, file: string): OrchardResult {
  if (source.trim() === '') return failed(notice('orchard-empty', 'error', { file }));
  if (source.includes('\0')) return failed(notice('not-text', 'error', { file }));
  if (source.length > LARGEST_ORCHARD) return failed(notice('report-too-large', 'error', { file, size: source.length, most: LARGEST_ORCHARD }));
  const lines = source.split(/\r\n|\n|\r/);
  const fault = unreadable(source, file);
  if (fault) return failed(fault);
  const counter = new LineCounter();
  const doc = parseYaml(source, counter);
  const at: At = (start, end = start + 1) => {
    const from = counter.linePos(Math.min(start, source.length));
    const to = counter.linePos(Math.min(end, source.length));
    const line = lines[from.line - 1] ?? '';
    return placeIn(file, from.line, line, from.col - 1, to.line === from.line ? to.col - 1 : line.length);
  };
  const buried = hidden(lines, file);
  // What YAML says of a line that lost its end is only an echo.
  const notices = buried.some((n) => n.severity === 'error') ? buried : [...buried, ...syntax(doc, at)];
  if (notices.some((n) => n.severity === 'error')) return { orchard: null, notices, questions: [] };
  if (!isMap(doc.contents)) return failed(notice('orchard-shape', 'error', { expected: 'trees' }, at(0)));
  notices.push(...misshapen(doc.contents, at));
  if (notices.some((n) => n.severity === 'error')) return { orchard: null, notices, questions: [] };
  return build(doc.contents, at, notices);
}

const failed = (n: Notice): OrchardResult => ({ orchard: null, notices: [n], questions: [] });
type At = (start: number, end?: number) => Place;

/** YAML takes ` #` for a comment, so that `Plum #2: …` loses its end without a word. */
function hidden(lines: readonly string[], file: string): Notice[] {
  const notices: Notice[] = [];
  lines.forEach((line, i) => {
    const start = line.search(/(?<=\s)#(?=[^\s#])/);
    const before = start < 0 ? '' : line.slice(0, start).trim();
    const said = before.replace(/^-\s+/, '');
    if (said === '' || said === '-' || /[#'"]/.test(said)) return;
    const key = !said.includes(':') && said === before;
    notices.push(notice('hidden-by-hash', key ? 'error' : 'warning', { hidden: line.slice(start), key: said }, placeIn(file, i + 1, line, start, line.length)));
  });
  return notices;
}

function syntax(doc: Document, at: At): Notice[] {
  const notices: Notice[] = [];
  for (const e of doc.errors) {
    if (e.code === 'DUPLICATE_KEY') notices.push(notice('name-twice', 'error', { read: '' }, at(e.pos[0], e.pos[1])));
    else notices.push(notice('yaml-broken', 'error', { yaml: e.code.toLowerCase().replace(/_/g, ' ') }, at(e.pos[0], e.pos[1])));
  }
  visit(doc, (_, node) => {
    if (isAlias(node) || (node && typeof node === 'object' && 'anchor' in node && node.anchor)) {
      const range = (node as Node).range;
      notices.push(notice('yaml-alias', 'error', {}, at(range?.[0] ?? 0, range?.[1])));
      return visit.BREAK;
    }
    if (node && typeof node === 'object' && 'tag' in node && typeof node.tag === 'string') {
      const range = (node as Node).range;
      notices.push(notice('yaml-alias', 'error', {}, at(range?.[0] ?? 0, range?.[1])));
      return visit.BREAK;
    }
    return undefined;
  });
  return notices;
}

/** What has another shape than its key wants, each at its own place. */
function misshapen(map: YAMLMap, at: At): Notice[] {
  const { unknown, faults } = shapeFaults(map);
  const placed = (node: Node | null, key: string): Place => {
    const range = node?.range ?? map.items.map((p) => p.key as Node).find((k) => isScalar(k) && String(k.value) === key)?.range;
    return at(range?.[0] ?? 0, range?.[1]);
  };
  return [
    ...unknown.map(({ key, node }) => notice('key-unknown', 'error', { read: key, guess: likelyKeys(key).join(', '), expected: KEYS.join(', ') }, placed(node, key))),
    ...(map.has('trees') ? [] : [notice('trees-missing', 'error', {}, at(0))]),
    ...faults.map(({ path, node }) => notice('value-misshapen', 'error', { key: path.join(' → '), expected: path[0]! }, placed(node, path[0]!))),
  ];
}

function build(map: YAMLMap, at: At, notices: Notice[]): OrchardResult {
  const questions: Question[] = [];
  const whole = (s: Scalar | null | undefined): Place => (s?.range ? at(s.range[0], s.range[1]) : at(0));
  const said = (key: string): Scalar | null => {
    const node = map.get(key, true);
    return isScalar(node) && node.value !== null ? node : null;
  };
  const where = inLanguage(whereOf(said('where'), whole, notices), said('language'), whole, notices);
  const date = (key: 'bud-break' | 'last-frost' | 'first-frost'): MonthDay | null => {
    const s = said(key);
    const read = s ? monthDay(textOf(s)) : null;
    if (s && !read) notices.push(notice('date-wrong', 'error', { key, read: textOf(s) }, whole(s)));
    return read;
  };
  const dates = { budBreak: date('bud-break'), lastFrost: date('last-frost'), firstFrost: date('first-frost') };

  const wet = said('water');
  const read = wet ? waterOf(textOf(wet)) : null;
  if (wet && (read === null || read === 'hardness')) notices.push(notice(read === 'hardness' ? 'water-hardness' : 'water-wrong', 'error', { read: textOf(wet) }, whole(wet)));
  const water = typeof read === 'object' ? read : null;

  const banned = said('never');
  const never = banned ? bansOf(textOf(banned)) : [];
  if (banned && never === null) notices.push(notice('never-wrong', 'error', { read: textOf(banned), list: BANS.join(', ') }, whole(banned)));

  const zones: Zone[] = [];
  for (const { key, name, lines } of zoneLines(map)) {
    if (isReserved(name)) notices.push(notice('zone-reserved', 'error', { zone: name }, whole(key)));
    if (lines.length === 0) {
      notices.push(notice('zone-without-report', 'error', { zone: name }, whole(key)));
      continue;
    }
    const tests = lines.map((line): ZoneTest => {
      const [path, ...said] = textOf(line).split(/,\s+/);
      const rest = said.filter((part) => part.toLowerCase() !== BY_LAB);
      if (/^(?:[/\\~]|[A-Za-z]:)|(?:^|[/\\])\.\.(?:[/\\]|$)/.test(path!)) notices.push(notice('path-outside', 'error', { path: path! }, whole(line)));
      return { file: path!, sample: rest.length > 0 ? rest.join(', ') : null, byLab: rest.length < said.length, place: whole(line) };
    });
    zones.push({ name, ...tests[0]!, others: tests.slice(1) });
  }

  const trees: Tree[] = [];
  const names = new Map<string, Place>();
  for (const pair of pairsOf(map.get('trees', true))) {
    const name = textOf(pair.key).trim();
    const place = whole(pair.key);
    if (/^\d+$/.test(name)) notices.push(notice('name-of-digits', 'error', { name }, place));
    if (/[\u0000-\u001f\u007f-\u009f]/.test(name)) notices.push(notice('name-control', 'error', {}, place));
    if (names.has(name.toLowerCase())) notices.push(notice('name-twice', 'error', { read: name }, place));
    names.set(name.toLowerCase(), place);
    const items = treeItems(pair.value, at);
    if (items.length === 0) {
      notices.push(notice('crop-missing', 'error', { tree: name }, place));
      continue;
    }
    const read = parseTree(name, items, zones.map((z) => z.name), place);
    notices.push(...read.notices);
    questions.push(...read.questions);
    if (read.tree) trees.push(read.tree);
  }
  if (names.size === 0) notices.push(notice('trees-missing', 'error', {}, at(0)));

  const bagsOf = (key: 'shed' | 'store'): Bag[] => {
    const list = map.get(key, true);
    if (!isSeq(list)) return [];
    return list.items.flatMap((node) => {
      if (!isScalar(node)) return [];
      const { bag, notices: found } = parseBag(textOf(node), where.country, key === 'shed', whole(node), where.state);
      notices.push(...found);
      return bag ? [bag] : [];
    });
  };
  const [shed, store] = toldApart(bagsOf('shed'), bagsOf('store')) as [Bag[], Bag[]];
  const labels = new Set<string>();
  for (const bag of [...shed, ...store]) {
    const id = `${bag.label} ${bag.printed} ${bag.g ?? ''}`;
    if (labels.has(id) && store.includes(bag) && !shed.some((s) => `${s.label} ${s.printed} ${s.g ?? ''}` === id)) notices.push(notice('name-twice', 'error', { read: bag.label }, bag.place));
    labels.add(id);
  }
  if (notices.some((n) => n.severity === 'error')) return { orchard: null, notices, questions };
  const named = said('orchard');
  return {
    orchard: {
      name: named ? textOf(named) : '', where, ...dates, water, never: never ?? [], zones, trees, shed, store, rules: [],
    },
    notices, questions,
  };
}

function whereOf(s: Scalar | null, whole: (s: Scalar) => Place, notices: Notice[]): Where {
  if (!s) return NOWHERE;
  const where = parseWhere(textOf(s));
  if (!where) {
    const last = textOf(s).split(',').at(-1)!.trim();
    notices.push(notice('where-unknown', 'error', { read: textOf(s), guess: withCountry(last) ?? suggest(last, COUNTRY_NAMES).join(', ') }, whole(s)));
  }
  return where ?? NOWHERE;
}

/** In the language that is told, where its words are here. */
function inLanguage(where: Where, s: Scalar | null, whole: (s: Scalar) => Place, notices: Notice[]): Where {
  if (!s) return where;
  const read = textOf(s);
  const language = languageNamed(read, where.country);
  if (!language) notices.push(notice('language-unknown', 'error', { read, guess: suggest(read, LANGUAGES).join(', '), list: LANGUAGES.join(', ') }, whole(s)));
  return language ? { ...where, language: spoken(language) } : where;
}

/** Bags of one name and other numbers are called by both everywhere, so that nobody weighs out the wrong one. */
function toldApart(...lists: readonly Bag[][]): Bag[][] {
  const numbers = new Map<string, Set<string>>();
  for (const { label, printed } of lists.flat()) numbers.set(label.toLowerCase(), (numbers.get(label.toLowerCase()) ?? new Set()).add(printed));
  return lists.map((list) => list.map((bag) => (numbers.get(bag.label.toLowerCase())!.size > 1 ? { ...bag, label: bagName(bag) } : bag)));
}

type ScalarPair = { key: Scalar; value: unknown };
const pairsOf = (node: unknown): ScalarPair[] =>
  isMap(node) ? node.items.flatMap((p: Pair) => (isPair(p) && isScalar(p.key) ? [{ key: p.key, value: p.value }] : [])) : [];

export type ZoneLines = { readonly key: Scalar; readonly name: string; readonly lines: readonly Scalar[] };

/** The zones with their reports as they are written; `soil: report.txt` is one zone called soil. */
export function zoneLines(map: YAMLMap): ZoneLines[] {
  const node = map.get('soil', true);
  const pairs = isMap(node) ? pairsOf(node) : map.items.flatMap((p) => (isScalar(p.key) && textOf(p.key) === 'soil' && p.value !== null ? [{ key: p.key, value: p.value }] : []));
  return pairs.filter(({ value }) => isMap(node) || isSeq(value) || (isScalar(value) && value.value !== null)).map(({ key, value }) => ({
    key, name: textOf(key), lines: (isSeq(value) ? value.items : [value]).filter((v): v is Scalar => isScalar(v) && v.value !== null && textOf(v) !== ''),
  }));
}

/** A scalar as the grower typed it, so that 1.50 stays 1.50 and a date stays a date. */
const textOf = (s: Scalar): string => (s.type === 'PLAIN' ? s.source ?? String(s.value) : String(s.value)).trim();

/** The facts of a tree: one line, or a mapping of the same facts. */
function treeItems(value: unknown, at: At): Item[] {
  if (isScalar(value) && value.value !== null) {
    const range = value.range!;
    const quoted = value.type === 'QUOTE_DOUBLE' || value.type === 'QUOTE_SINGLE';
    // Folded over several lines a fact stands nowhere to be pointed at by itself.
    const oneLine = (quoted || value.type === 'PLAIN') && at(range[0]).line === at(range[1] - 1).line;
    const begin = range[0] + (quoted ? 1 : 0);
    return itemsOf(textOf(value), (start, end) => (oneLine ? at(begin + start, begin + end) : at(range[0], range[1])));
  }
  return pairsOf(value).flatMap(({ key, value: v }) => {
    const name = textOf(key).toLowerCase();
    const values = isSeq(v) ? v.items.filter(isScalar) : isScalar(v) ? [v] : [];
    return values.flatMap((s): Item[] => {
      const range = s.range ?? key.range!;
      const place = at(range[0], range[1]);
      const t = textOf(s);
      if (name === 'flags') return [{ text: t, place }];
      if (FLAGS.some((f) => f === name)) return s.value === false ? [] : [{ text: name, place }];
      if (name === 'crop' || name === 'size' || name === 'zone') return [{ text: t, place }];
      return [{ text: name === 'across' || name === 'high' ? `${t} ${name}` : `${name} ${t}`, place }];
    });
  });
}
