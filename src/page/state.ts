/** What the page keeps: the texts of the grower's own files, and nothing beside them. Edits keep comments and order. */
import { Document, isMap, isScalar, isSeq, LineCounter, YAMLMap, YAMLSeq } from 'yaml';
import type { Pair, Scalar } from 'yaml';
import { zoneLines } from '../orchard/load.ts';
import { parseYaml, unreadable } from '../orchard/yaml.ts';
import { isReserved } from '../orchard/tree.ts';
import { readReport } from '../soil/read.ts';
import type { Rule } from '../tables/rule.ts';

/**
 * `orchard.yaml`, the reports by the names it gives them, and `diary.csv`; empty where there is none. `others` are files that are only
 * carried along; `rules` those of the grower's own `rules.yaml`, as the command that made the page has read them.
 */
export type State = {
  readonly orchard: string; readonly reports: Readonly<Record<string, string>>; readonly diary: string;
  readonly others?: Readonly<Record<string, string>>; readonly rules?: readonly Rule[];
};

export const EMPTY: State = { orchard: '', reports: {}, diary: '' };
export const FIRST_REPORT = 'soil/report.txt';

export const written = (state: State): string => JSON.stringify(state);

/** What was kept or put inside the page; null for anything that is no such thing. What the texts say is for the loaders to judge. */
export function stateOf(json: string | null | undefined): State | null {
  if (!json || json.trim() === '') return null;
  try {
    const read = JSON.parse(json) as Partial<State> | null;
    if (!read || typeof read.orchard !== 'string' || typeof read.reports !== 'object' || read.reports === null) return null;
    const texts = (of: object): Record<string, string> => Object.fromEntries(Object.entries(of).filter(([, text]) => typeof text === 'string'));
    return {
      orchard: read.orchard, reports: texts(read.reports), diary: typeof read.diary === 'string' ? read.diary : '',
      ...(read.others && typeof read.others === 'object' ? { others: texts(read.others) } : {}), ...(Array.isArray(read.rules) ? { rules: read.rules } : {}),
    };
  } catch {
    return null;
  }
}

/** Texts as last read; nothing read here is changed. */
let lastRead: { readonly text: string; readonly doc: Document; readonly counter: LineCounter } | null = null;
function readAs(text: string): { readonly doc: Document; readonly counter: LineCounter } {
  if (lastRead?.text !== text) {
    const counter = new LineCounter();
    lastRead = { text, counter, doc: parseYaml(unreadable(text, '') ? '[' : text, counter) };
  }
  return lastRead;
}

/** A text to be changed. */
const docOf = (text: string): Document => (text.trim() === '' ? new Document({}) : readAs(text).doc.clone());

/** The orchard's text after a change; null where it is no sound YAML, so that nothing can be changed but by hand. */
function edited(text: string, change: (doc: Document) => void): string | null {
  const doc = docOf(text);
  if (doc.errors.length > 0) return null;
  if (doc.contents === null) (doc as { contents: unknown }).contents = new YAMLMap();
  if (!isMap(doc.contents)) return null;
  change(doc);
  return sound(doc);
}

/** The text of a document; null for one that cannot be written, as with a name of YAML's own (an alias) that stands for nothing, or not so that it reads again. */
function sound(doc: Document): string | null {
  try {
    const text = doc.toString({ lineWidth: 0 });
    return readAs(text).doc.errors.length === 0 ? text : null;
  } catch {
    return null;
  }
}

/** Sets a fact of the whole orchard (`where`, `bud-break`); an empty one is taken out. */
export const withFact = (text: string, key: string, value: string): string | null => edited(text, (doc) => {
  if (value === '') doc.delete(key);
  else doc.set(key, value);
});

function mapAt(doc: Document, key: string): YAMLMap {
  if (!isMap(doc.get(key, true))) doc.set(key, new YAMLMap());
  return doc.get(key, true) as YAMLMap;
}

export const withTree = (text: string, name: string, facts: string): string | null => edited(text, (doc) => { mapAt(doc, 'trees').set(doc.createNode(name), facts); });

export const withoutTree = (text: string, index: number): string | null => edited(text, (doc) => { mapAt(doc, 'trees').items.splice(index, 1); });

export const withTreeFacts = (text: string, index: number, facts: string): string | null => edited(text, (doc) => {
  const pair = mapAt(doc, 'trees').items[index];
  if (pair) pair.value = doc.createNode(facts);
});

export type Shelf = 'shed' | 'store';

export const withBag = (text: string, shelf: Shelf, label: string): string | null => edited(text, (doc) => {
  if (!isSeq(doc.get(shelf, true))) doc.set(shelf, new YAMLSeq());
  (doc.get(shelf, true) as YAMLSeq).add(doc.createNode(label));
});

export const withoutBag = (text: string, shelf: Shelf, index: number): string | null => edited(text, (doc) => {
  const bags = doc.get(shelf, true);
  if (!isSeq(bags)) return;
  bags.items.splice(index, 1);
  if (bags.items.length === 0) doc.delete(shelf);
});

const textOf = (node: unknown): string => {
  if (!isScalar<string | number | boolean | null>(node) || node.value === null) return '';
  return (node.type === 'PLAIN' ? node.source ?? String(node.value) : String(node.value)).trim();
};

export const factOf = (text: string, key: string): string => textOf((readAs(text).doc.contents as YAMLMap | null)?.get?.(key, true));

export type TreeLine = { readonly name: string; readonly facts: string; readonly from: number; readonly until: number; readonly oneLine: boolean };

/** The trees as they stand in the text, with the lines they take. */
export function treeLines(text: string): TreeLine[] {
  const { doc, counter } = readAs(text);
  const trees = isMap(doc.contents) ? doc.contents.get('trees', true) : null;
  if (!isMap(trees)) return [];
  return trees.items.map((pair: Pair) => {
    const key = pair.key as Scalar;
    const value = pair.value as Scalar | null;
    const from = counter.linePos(key.range?.[0] ?? 0).line;
    const end = value?.range?.[1] ?? key.range?.[1] ?? 0;
    return { name: textOf(key), facts: isScalar(value) ? textOf(value) : text.slice((value as Scalar | null)?.range?.[0] ?? end, end).trim(), from, until: Math.max(from, counter.linePos(end).line), oneLine: value === null || isScalar(value) };
  });
}

export function bagLines(text: string, shelf: Shelf): string[] {
  const { doc } = readAs(text);
  const bags = isMap(doc.contents) ? doc.contents.get(shelf, true) : null;
  return isSeq(bags) ? bags.items.map(textOf) : [];
}

/** The reports that the zones name. */
export function zoneFiles(text: string): string[] {
  const { doc } = readAs(text);
  const zones = isMap(doc.contents) ? zoneLines(doc.contents) : [];
  return [...new Set(zones.flatMap((z) => z.lines.map((line) => textOf(line).split(/,\s+/)[0]!)))];
}

/** A name that no tree bears: "Apple", "Apple 2". */
export function freeName(text: string, wanted: string): string {
  const taken = new Set(treeLines(text).map((t) => t.name.toLowerCase()));
  for (let n = 1; ; n += 1) {
    const name = n === 1 ? wanted : `${wanted} ${n}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
}

/**
 * A report's text, and a zone for each of its samples. Zones that a tree names, or that belong to another report, are left;
 * where there are such, none is made.
 */
export function withReport(state: State, file: string, report: string, garden: string): State {
  const reports = { ...state.reports, [file]: report };
  const { doc } = readAs(state.orchard);
  const zones = (isMap(doc.contents) ? zoneLines(doc.contents) : []).map((z) => ({ name: z.name, of: z.lines.map(textOf) }));
  const facts = treeLines(state.orchard).map((t) => t.facts.toLowerCase().split(/,\s+/));
  const own = zones.every((z) => z.of.every((of) => of === file || of.startsWith(`${file}, `)) && !facts.some((f) => f.includes(z.name.toLowerCase())));
  if (!own) return { ...state, reports };
  const orchard = edited(state.orchard, (d) => {
    const wanted = report.trim() === '' ? [] : zonesFor(report, file, garden);
    if (wanted.length === 0) d.delete('soil');
    else if (wanted.map(String).join('\n') !== zones.map((z) => `${z.name},${z.of.join(',')}`).join('\n')) {
      d.delete('soil');
      const map = mapAt(d, 'soil');
      for (const [name, of] of wanted) map.set(d.createNode(name), of);
    }
  });
  const { [file]: _, ...others } = reports;
  return { ...state, orchard: orchard ?? state.orchard, reports: report.trim() === '' ? others : reports };
}

function zonesFor(report: string, file: string, garden: string): [name: string, of: string][] {
  const { samples } = readReport(report, file);
  if (samples.length < 2) return [[garden, file]];
  const names = new Set<string>();
  return samples.map((s, i) => {
    const plain = s.name.toLowerCase().replace(/[^\p{L}\p{N} -]/gu, ' ').replace(/\s+/g, ' ').trim();
    const name = plain === '' || isReserved(plain) || names.has(plain) ? `${garden} ${i + 1}` : plain;
    names.add(name);
    return [name, `${file}, sample ${i + 1}`];
  });
}
