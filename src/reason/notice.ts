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

/** The place of `[start, end)` in one line of text, told in code points. */
export function placeIn(file: string, line: number, source: string, start: number, end: number): Place {
  const column = [...source.slice(0, start)].length + 1;
  return { file, line, column, length: Math.max(1, [...source.slice(start, end)].length), source };
}
