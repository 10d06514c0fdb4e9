/**
 * What Medlar has to say beside its result: notices (told) and questions (asked).
 * They hold keys into words and the facts to fill in, never prose.
 */
import type { AskId, NoticeId } from '../words/words.ts';

export type Severity = 'error' | 'warning' | 'note';
export type Facts = Readonly<Record<string, string | number>>;

/** A place in a file: line and column count from 1, columns in code points; `source` is the line itself. */
export type Place = {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly length: number;
  readonly source: string;
};

export type Notice = {
  readonly code: NoticeId;
  readonly severity: Severity;
  readonly facts: Facts;
  readonly place?: Place;
};

/** `about` is an item of the report or a tree; an answer is a line of the report file or a fact of the tree. */
export type Question = {
  readonly code: AskId;
  readonly about: string;
  readonly facts: Facts;
  readonly choices: readonly string[];
  /** A key of words saying what the answer would change. */
  readonly changes: AskId;
  readonly place?: Place;
};

export const notice = (code: NoticeId, severity: Severity, facts: Facts = {}, place?: Place): Notice =>
  place ? { code, severity, facts, place } : { code, severity, facts };

/** Several trees of one sentence are named together, where the tree is all that differs; what belongs to a place in a file stays alone. */
export function together<T extends { readonly code: string; readonly facts: Facts; readonly place?: Place }>(all: readonly T[]): T[] {
  const seen = new Map<string, { first: T; trees: string[] }>();
  for (const one of all) {
    const { tree, crop: _crop, ...rest } = one.facts;
    const key = `${one.code} ${JSON.stringify(rest)}${tree === undefined ? ` ${seen.size}` : ''}`;
    const same = seen.get(key);
    if (same) same.trees.push(String(tree));
    else seen.set(key, { first: one, trees: [String(tree)] });
  }
  return [...seen.values()].map(({ first, trees }) => (trees.length > 1 ? { ...first, facts: { ...first.facts, tree: trees.join(', ') } } : first));
}

/** The place of `[start, end)` in one line of text, told in code points. */
export function placeIn(file: string, line: number, source: string, start: number, end: number): Place {
  const column = [...source.slice(0, start)].length + 1;
  return { file, line, column, length: Math.max(1, [...source.slice(start, end)].length), source };
}
