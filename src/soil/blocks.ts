/** Tables, and names before their values, as what they say: each value is read as a line of its own and placed where it stands. */
import type { Notice, Question } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Grid } from './grid.ts';
import { headingOf } from './heading.ts';
import type { Context } from './context.ts';
import { readLine } from './line.ts';
import { asTyped, metaOf } from './meta.ts';
import type { Pairs } from './pairs.ts';
import type { Event } from './samples.ts';
import type { Line } from './text.ts';
import { LONGEST_LINE, spot } from './text.ts';
import { lookFor } from './token.ts';

/** The rows of a table, each value read as a line of its own and placed at its cell. */
export function gridEvents(grid: Grid, header: Line, context: Context, notices: Notice[]): Event[] {
  const { file } = context;
  const own = grid.commas ? { ...context, style: 'point' as const, look: lookFor(context.words, 'point') } : context;
  const bySample = new Map<string | null, Event[]>();
  const silent = new Set(grid.rows.map((row) => row.line));
  for (const row of grid.rows) {
    const list = bySample.get(row.sample) ?? [];
    bySample.set(row.sample, list);
    let got = 0;
    const lost: Notice[] = [];
    for (const piece of row.lines) {
      const place = spot(row.line, file, piece.start, piece.end);
      const text = piece.text.slice(0, LONGEST_LINE);
      const meta = metaOf({ number: row.line.number, raw: text, text }, context.dates);
      if (meta?.taken) {
        list.push({ kind: 'taken', is: meta.taken, weak: false });
        got++;
        continue;
      }
      const found = readLine({ number: row.line.number, raw: text, text }, own);
      const cell = row.line.text.slice(piece.start, piece.end).trim();
      if (found.readings.length + found.notices.length === 0 && /^[<>]?\s?\d[\d.,]*$/.test(cell)) lost.push(notice('line-unclear', 'warning', { name: text.split('|')[0]!.trim(), read: cell }, place));
      notices.push(...found.notices.map((n) => ({ ...n, place })));
      got += found.readings.length + found.notices.filter((n) => n.severity === 'error').length;
      list.push(...found.readings.map((r): Event => ({ kind: 'readings', readings: [{ ...r, asPrinted: row.lines.length > 1 || row.sample !== null ? row.line.raw.slice(piece.start, piece.end).trim() : row.line.raw.trim(), place }] })));
    }
    if (got > 0) notices.push(...lost);
    if (got > 0) silent.delete(row.line);
  }
  const unread = [...silent].map((line): Event => ({ kind: 'unread', line: line.number, text: line.raw.trim() }));
  const lineOf = new Map(grid.rows.flatMap((r) => (r.sample !== null && r.line.text.includes(r.sample) ? [[r.sample, r.line] as const] : [])));
  const typed = (name: string): string => asTyped(name, lineOf.get(name) ?? header);
  const named = [...bySample.keys()].filter((k) => k !== null).length;
  const several = named > 1;
  const told = [...bySample].flatMap(([sample, readings]): Event[] => [
    ...(sample !== null && (several || !/^\d*$/.test(sample)) && (several || grid.rows.length === 1) ? [{ kind: 'sample' as const, name: /^\d{1,2}$/.test(sample) ? `sample ${sample}` : typed(sample) }] : []),
    ...readings,
  ]);
  return [...told, ...unread];
}

/** Names paired with their values; else one question, and every line unread. */
export function pairEvents(found: Pairs, context: Context, events: Event[], notices: Notice[], questions: Question[]): void {
  const read = found.pairs?.map(({ name, value }) => ({ name, value, result: readLine({ number: value.number, raw: value.raw, text: `${name.text.trim()} | ${value.text.trim()}` }, found.headings.reduce((c, h) => headingOf(h, c) ?? c, context)) }));
  if (read?.every(({ result }) => result.readings.length === 1 && result.notices.every((n) => n.severity === 'warning'))) {
    for (const { name, value, result } of read) {
      const place = spot(value, context.file, 0, value.raw.length);
      notices.push(...result.notices.map((n) => ({ ...n, place })));
      events.push({ kind: 'readings', readings: result.readings.map((r) => ({ ...r, asPrinted: `${name.raw.trim()} ${value.raw.trim()}`, place })) });
    }
    return;
  }
  const place = spot(found.first, context.file, 0, found.first.raw.length);
  questions.push({ code: 'layout-unclear', about: 'layout', facts: { line: found.first.number, sample: '', read: found.first.raw.trim(), item: 'layout' }, choices: [], changes: 'changes-p-and-k', place });
  for (const line of found.lines) events.push({ kind: 'unread', line: line.number, text: line.raw.trim() });
}
