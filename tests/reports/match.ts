// Holds an answer of `medlar read --json` against what is expected of the report, and lists every difference.

import { open } from './expectation.ts';
import type { Expected, ExpectedSample, Row } from './expectation.ts';

type Reading = {
  item?: string;
  value?: number | null;
  unit?: string | null;
  asPrinted?: string;
  line?: number;
  method?: string | null;
  basis?: string | null;
  mgPerKg?: number | null;
  lab?: { rating?: string | null; range?: readonly (number | null)[] | null };
  rating?: string | null;
  target?: string | null;
  below?: number | boolean | null;
  above?: number | boolean | null;
  to?: number | null;
};
type Sample = {
  name?: string;
  taken?: unknown;
  depth?: unknown;
  readings?: Reading[];
  unread?: { line?: number; text?: string }[];
};
type Answer = {
  command?: string;
  ok?: boolean;
  result?: { samples?: Sample[] } | null;
  questions?: { code?: string; about?: string | null }[];
  notices?: { code?: string; severity?: string; text?: string; line?: number; column?: number }[];
};
type Run = { code: number | null; json?: unknown };

const show = (value: unknown): string => (value === undefined ? 'nothing' : JSON.stringify(value));

const isEither = (value: unknown): value is { either: readonly unknown[] } =>
  typeof value === 'object' && value !== null && 'either' in value;

const choices = (expected: unknown): readonly unknown[] => (isEither(expected) ? expected.either : [expected]);

const same = (actual: unknown, expected: unknown): boolean =>
  expected === open || choices(expected).some((choice) => JSON.stringify(actual ?? null) === JSON.stringify(choice ?? null));

/** Equal to three significant digits, half a step of rounding allowed. */
const near = (actual: unknown, expected: unknown): boolean =>
  expected === open ||
  choices(expected).some((choice) =>
    typeof choice === 'number'
      ? typeof actual === 'number' && Math.abs(actual - choice) <= Math.abs(choice) * 0.005
      : (actual ?? null) === choice,
  );

const wanted = (expected: unknown): string => choices(expected).map(show).join(' or ');

/** A limit may be given as a flag beside the value, or as the number itself. */
function limit(reading: Reading, side: 'below' | 'above'): number | undefined {
  const given = reading[side];
  if (given === undefined || given === null || given === false) return undefined;
  return given === true ? (reading.value ?? undefined) : given;
}

function readingDifferences(reading: Reading, row: Row, lines: readonly string[]): string[] {
  const [line, item, value, unit, basis, method, mgPerKg, labRating, labRange, target, also = {}] = row;
  const where = `line ${wanted(line)}, ${item}`;
  const found: string[] = [];
  const check = (what: string, actual: unknown, expected: unknown, right: boolean): void => {
    if (!right) found.push(`${where}: ${what} is ${show(actual)}, not ${wanted(expected)}`);
  };

  const bounded = also.below !== undefined || also.above !== undefined;
  const limitAlone = bounded && reading.value === null && (typeof reading.below === 'number' || typeof reading.above === 'number');
  if (!limitAlone) check('value', reading.value, value, same(reading.value, value));
  check('unit', reading.unit, unit, same(reading.unit, unit));
  check('basis', reading.basis, basis, same(reading.basis, basis));
  check('method', reading.method, method, same(reading.method, method));
  check('mgPerKg', reading.mgPerKg, mgPerKg, near(reading.mgPerKg, mgPerKg));
  check('lab.rating', reading.lab?.rating, labRating, same(reading.lab?.rating, labRating));
  check('lab.range', reading.lab?.range, labRange, same(reading.lab?.range, labRange));
  check('target', reading.target, target, same(reading.target, target));
  check('to', reading.to, also.to, (reading.to ?? undefined) === also.to);
  check('below', limit(reading, 'below'), also.below, limit(reading, 'below') === also.below);
  check('above', limit(reading, 'above'), also.above, limit(reading, 'above') === also.above);
  if (typeof labRating === 'string') check("rating (the lab's word leads)", reading.rating, labRating, reading.rating === labRating);

  const printed = reading.asPrinted ?? '';
  if (printed === '' || printed !== printed.trim()) found.push(`${where}: asPrinted is ${show(reading.asPrinted)}`);
  if (typeof line === 'number' && !(lines[line - 1] ?? '').includes(printed)) {
    found.push(`${where}: asPrinted ${show(printed)} is not a piece of the line`);
  }
  if (also.words !== undefined && !printed.includes(also.words)) {
    found.push(`${where}: asPrinted ${show(printed)} does not hold ${show(also.words)}`);
  }
  return found;
}

const describeReading = (reading: Reading): string =>
  `line ${show(reading.line)}, ${reading.item ?? '?'} ${show(reading.value)} ${show(reading.unit)}`;

function rowsDifferences(readings: readonly Reading[], sample: ExpectedSample, lines: readonly string[]): string[] {
  const left = [...readings];
  const found: string[] = [];
  for (const row of sample.readings) {
    const fits = left.filter((reading) => reading.item === row[1] && same(reading.line, row[0]));
    // Of several on one line take the one that differs least.
    const best = fits
      .map((reading) => ({ reading, differences: readingDifferences(reading, row, lines) }))
      .sort((a, b) => a.differences.length - b.differences.length)[0];
    if (best === undefined) {
      found.push(`missing: line ${wanted(row[0])}, ${row[1]} ${wanted(row[2])} ${wanted(row[3])}`);
    } else {
      left.splice(left.indexOf(best.reading), 1);
      found.push(...best.differences);
    }
  }
  for (const reading of left) {
    if (!(sample.optional ?? []).includes(reading.item ?? '')) found.push(`not in the report: ${describeReading(reading)}`);
  }
  return found;
}

function isDepth(actual: unknown, depth: { printed: string; metres: number }): boolean {
  if (typeof actual === 'number') return Math.abs(actual - depth.metres) < 0.001;
  return typeof actual === 'string' && actual.replaceAll(/\s+/g, ' ') === depth.printed;
}

function sampleDifferences(actual: Sample, expected: ExpectedSample, lines: readonly string[]): string[] {
  const found: string[] = [];
  if (!same(actual.name, expected.name)) found.push(`name is ${show(actual.name)}, not ${wanted(expected.name)}`);
  if (!same(actual.taken, expected.taken)) found.push(`taken is ${show(actual.taken)}, not ${wanted(expected.taken)}`);
  if (expected.depth === undefined ? (actual.depth ?? undefined) !== undefined : !isDepth(actual.depth, expected.depth)) {
    found.push(`depth is ${show(actual.depth)}, not ${show(expected.depth)}`);
  }
  found.push(...rowsDifferences(actual.readings ?? [], expected, lines));

  const unread = (actual.unread ?? []).map(({ line }) => line);
  for (const line of expected.unread ?? []) {
    if (!unread.includes(line)) found.push(`line ${String(line)} is not listed as unread`);
  }
  const allowed = [...(expected.unread ?? []), ...(expected.mayBeUnread ?? [])];
  for (const line of unread) {
    if (line === undefined || !allowed.includes(line)) found.push(`line ${show(line)} is listed as unread`);
  }
  if (new Set(unread).size !== unread.length) found.push(`an unread line is listed twice: ${show(unread)}`);
  return found;
}

function questionDifferences(answer: Answer, expected: Expected): string[] {
  const questions = answer.questions ?? [];
  const asked = questions.map(({ code, about }) => `${code ?? '?'} ${about ?? ''}`.trim());
  const ask = expected.ask ?? [];
  const allowed = [...ask, ...(expected.mayAsk ?? [])];
  const othersAllowed = expected.otherQuestions === true || expected.askSomething === true || allowed.length > 0;
  const found = ask.filter((question) => !asked.includes(question)).map((question) => `not asked: ${question}`);
  for (const question of asked) {
    const ofUnitOrMethod = /^(?:unit|method)-missing\b/.test(question);
    const right = allowed.includes(question) || (othersAllowed && !ofUnitOrMethod) || expected.askSomething === true;
    if (!right) found.push(`asked without need: ${question}`);
  }
  if (expected.askSomething === true && questions.length === 0) found.push('nothing is asked');
  return found;
}

function mistakeDifferences(answer: Answer, mistakes: NonNullable<Expected['mistakes']>): string[] {
  const errors = (answer.notices ?? []).filter(({ severity }) => severity === 'error');
  const found: string[] = [];
  for (const { line, column, offers } of mistakes) {
    const here = errors.filter((notice) => notice.line === line);
    if (here.length !== 1) found.push(`line ${String(line)} has ${String(here.length)} errors, not 1`);
    for (const notice of here) {
      if (notice.column !== column) found.push(`line ${String(line)}: the error is at column ${show(notice.column)}, not ${String(column)}`);
      if (offers !== undefined && !(notice.text ?? '').toLowerCase().includes(offers)) {
        found.push(`line ${String(line)}: ${show(notice.text)} does not offer ${offers}`);
      }
    }
  }
  for (const notice of errors) {
    if (notice.code !== 'nothing-read' && !mistakes.some(({ line }) => line === notice.line)) found.push(`an error of no line at fault: ${show(notice)}`);
  }
  return found;
}

/** Every difference between the answer and what is expected of it; none when all is right. */
export function differences(run: Run, text: string, expected: Expected): string[] {
  const mistakes = expected.mistakes ?? [];
  const codes = expected.code ?? [mistakes.length > 0 ? 3 : 0];
  const answer = (run.json ?? {}) as Answer;
  const found: string[] = [];
  if (run.code === null || !codes.includes(run.code)) found.push(`exit code ${show(run.code)}, not ${codes.join(' or ')}`);
  if (answer.command !== 'read') found.push(`command is ${show(answer.command)}`);
  if (answer.ok !== (run.code === 0)) found.push(`ok is ${show(answer.ok)} with exit code ${show(run.code)}`);

  const lines = text.split(/\r?\n/);
  const samples = answer.result?.samples ?? [];
  if (expected.samples === undefined) {
    for (const reading of samples.flatMap((sample) => sample.readings ?? [])) {
      found.push(`not in the report: ${describeReading(reading)}`);
    }
  } else {
    if (samples.length !== expected.samples.length) {
      found.push(`${String(samples.length)} samples, not ${String(expected.samples.length)}`);
    }
    for (const [index, sample] of expected.samples.entries()) {
      const actual = samples[index];
      if (actual === undefined) continue;
      found.push(...sampleDifferences(actual, sample, lines).map((difference) => `sample ${String(index + 1)}: ${difference}`));
    }
  }
  return [...found, ...questionDifferences(answer, expected), ...mistakeDifferences(answer, mistakes)];
}
