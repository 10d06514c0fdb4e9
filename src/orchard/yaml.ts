/** A file of YAML as a document, within a moment whatever stands in it. */
import { isScalar, parseDocument, visit, YAMLParseError } from 'yaml';
import type { Document, LineCounter } from 'yaml';
import type { Notice } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';

const DEEPEST = 20;
/** Brackets, and the sign of a key that stands for itself. The sign is looked for first and what stands before it then: the other way round a line of blanks takes hours. */
const NESTS = /[[{}\]]|\?(?<=(?:^|[-?:[{,])[ \t]*\?)(?=[ \t\r\n]|$)/gm;

/** No line of a grower's is longer, and what stands late in a longer one takes ever longer to place. */
const LONGEST_LINE = 100_000;

/** Where brackets, or keys that begin with "? ", stand deeper in each other than any orchard needs: YAML takes minutes for a hundred of them. Below 0 where none do. */
function tooDeepAt(source: string): number {
  let depth = 0;
  let keys = 0;
  for (const { 0: sign, index } of source.matchAll(NESTS)) {
    if (sign === '?') keys += 1;
    else depth = sign === '[' || sign === '{' ? depth + 1 : Math.max(0, depth - 1);
    if (depth > DEEPEST || keys > DEEPEST) return index;
  }
  return -1;
}

/** The text as YAML 1.2, as long as before: by 1.1, which a first line may ask for, "no" is a truth and "12:30" a number. */
const asYaml12 = (source: string): string => source.replace(/^(\uFEFF?%YAML[ \t]+1\.)1(?=\s)/gm, '$12');

/** What keeps YAML from taking a file apart within a moment, at its place: a line too long, or one nested too deep. */
export function unreadable(source: string, file: string): Notice | null {
  const lines = source.split(/\r\n|\n|\r/);
  const long = lines.findIndex((l) => l.length > LONGEST_LINE);
  if (long >= 0) return notice('line-too-long', 'error', { length: lines[long]!.length, most: LONGEST_LINE }, placeIn(file, long + 1, lines[long]!.slice(0, 60), 0, 1));
  const at = tooDeepAt(source);
  if (at < 0) return null;
  const before = source.slice(0, at).split(/\r\n|\n|\r/);
  const [line, column] = [before.length, before.at(-1)!.length];
  return notice('yaml-broken', 'error', { yaml: 'nesting' }, placeIn(file, line, lines[line - 1]!, column, column + 1));
}

/** A text that is not `unreadable`, as a document. A key told twice stands among its errors: YAML's own check compares each key with every other, minutes for a large orchard. */
export function parseYaml(source: string, lineCounter: LineCounter): Document {
  const doc: Document = parseDocument(asYaml12(source), { lineCounter, prettyErrors: false, strict: true, merge: false, uniqueKeys: false });
  visit(doc, {
    Map: (_, map) => {
      const seen = new Set<string>();
      for (const { key } of map.items) {
        if (!isScalar(key)) continue;
        const id = `${typeof key.value} ${String(key.value)}`;
        if (seen.has(id)) doc.errors.push(new YAMLParseError([key.range?.[0] ?? 0, key.range?.[1] ?? 1], 'DUPLICATE_KEY', 'twice'));
        seen.add(id);
      }
    },
  });
  return doc;
}
