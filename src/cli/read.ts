/** `medlar read [REPORT]`: what was understood, how it rates, what must be asked. */
import { relative, resolve } from 'node:path';
import { cropsOf, leafExample } from '../gather.ts';
import { collector } from '../json/figures.ts';
import { noticeText } from '../json/notices.ts';
import { readJson } from '../json/read-json.ts';
import type { RatedSample } from '../json/read-json.ts';
import { leafText, ratingText, summary, takenAs } from '../json/read-words.ts';
import { ORCHARD_FILE } from '../orchard/files.ts';
import type { Where } from '../orchard/where.ts';
import { NOWHERE } from '../orchard/where.ts';
import { densityNotes } from '../rating/convert.ts';
import type { Region } from '../rating/rate.ts';
import { rateSample, ratingNotices, schemeNotes } from '../rating/rate.ts';
import { inOrder, senseOf } from '../rating/sense.ts';
import type { Notice, Question } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { readReport } from '../soil/read.ts';
import type { Report } from '../soil/read.ts';
import { dateOrderIn } from '../units/date.ts';
import { showDay } from '../words/show.ts';
import { say } from '../words/words.ts';
import { give, questionList } from './answer.ts';
import type { ReportFile } from './files.ts';
import { readReportFile, reason, reportOf } from './files.ts';
import { folderOf, openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';

type Home = Where & Pick<Region, 'crops'>;

export async function readCommand(named: string | undefined, options: Common, io: Io): Promise<number> {
  const byHand = io.ask ? await (await import('./read-hand.ts')).readByHand(named, options, io) : null;
  if (typeof byHand === 'number') return byHand;
  const file = byHand ? byHand.file : named;
  const folder = await openFolder(options, io, options.today ?? io.today);
  const where: Home = { ...(folder.orchard?.where ?? NOWHERE), crops: cropsOf(folder.orchard?.trees ?? []) };
  const json = options.json === true;
  if (file === undefined) return readAll(folder.orchard?.zones.map((z) => z.file) ?? [], where, options, io, folder.notices);
  const name = file === '-' ? 'stdin' : file;
  const found = file === '-' ? await fromStdin(io) : readReportFile(resolve(io.cwd, file), file);
  if ('refused' in found) return give({ command: 'read', result: null, notices: [found.refused], language: where.language }, json, io);
  // Without its place a report is rated less: why there is none is told, and the report read all the same.
  const placeless = folder.orchard ? [] : folder.notices.filter((n) => n.severity === 'error' && n.place?.file === ORCHARD_FILE).map((n): Notice => ({ ...n, severity: 'warning' }));
  return answer([reportIn(found, name, where)], [name], where, options, io, placeless);
}

async function fromStdin(io: Io): Promise<ReportFile> {
  try {
    return io.bytes ? reportOf(await io.bytes(), 'stdin') : { text: await io.stdin(), notices: [] };
  } catch (e) {
    return { refused: notice('file-missing', 'error', { file: '-', why: reason(e) }) };
  }
}

function reportIn(found: Extract<ReportFile, { text: string }>, name: string, { country }: Home): Report {
  const report = readReport(found.text, name, dateOrderIn(country));
  return { ...report, notices: [...found.notices, ...report.notices] };
}

/** Without a name: every report of the orchard. */
function readAll(files: readonly string[], where: Home, options: Common, io: Io, notices: Parameters<typeof give>[0]['notices']): number {
  const blocking = notices.filter((n) => n.severity === 'error' && (n.place === undefined || n.place.file === ORCHARD_FILE));
  if (files.length === 0 || blocking.length > 0) {
    const told = blocking.length > 0 ? blocking : [notice('no-orchard', 'error', { folder: options.folder ?? io.cwd })];
    return give({ command: 'read', result: null, notices: told, language: where.language }, options.json === true, io);
  }
  const names = [...new Set(files)];
  const reports = names.flatMap((name) => {
    const found = readReportFile(resolve(folderOf(options, io), name), name);
    return 'text' in found ? [reportIn(found, name, where)] : [];
  });
  return answer(reports, names, where, options, io);
}

function answer(reports: readonly Report[], files: readonly string[], where: Home, options: Common, io: Io, beside: readonly Notice[] = []): number {
  const samples: RatedSample[] = reports.flatMap((r) => r.samples).map((sample) => ({ sample, rated: rateSample(sample, where) }));
  const odd = samples.map((s) => [...senseOf(s.sample, s.rated, { today: options.today ?? io.today }), ...schemeNotes(s.rated), ...densityNotes(s.rated)]);
  const notices = [...beside, ...reports.flatMap((r) => r.notices), ...odd.flat(), ...samples.flatMap((s) => ratingNotices(s.rated))];
  const questions = inOrder(reports.flatMap((r) => r.questions));
  const figures = collector(where.language, where.units);
  const text = [
    ...samples.map((s, i) => sampleText(s, questions, odd[i]!, where)),
    ...(questions.length > 0 ? [questionList(questions, where.language), ...questions.filter((q) => q.choices.length > 0).slice(0, 1).map((q) => say(where.language, 'read', 'answers', { file: relative('', files[0] ?? ''), example: exampleAnswer(q) }))] : []),
    ...(samples.some((s) => s.rated.length > 0) ? [say(where.language, 'read', 'next')] : []),
  ].join('\n');
  return give({ command: 'read', result: readJson(samples, figures), figures: figures.all(), notices, questions, language: where.language, text: `${text}\n` }, options.json === true, io);
}

const exampleAnswer = (q: Question): string => `${q.about} ${q.code === 'unit-missing' ? 'unit' : 'method'}: ${q.choices[0] ?? ''}`;

function sampleText({ sample, rated }: RatedSample, questions: readonly Question[], odd: readonly Notice[], where: Home): string {
  const L = where.language;
  const leaf = sample.kind === 'leaf';
  const crops = [...new Set(where.crops)].flatMap((c) => c ?? []);
  const mine = questions.filter((q) => q.about === 'layout' || rated.some((r) => r.reading.place.line === q.place?.line));
  const asked = mine.length === 0 ? say(L, 'read', 'asked0') : mine.length === 1 ? say(L, 'read', 'asked1') : say(L, 'read', 'askedN', { n: mine.length });
  const lines = rated.length + sample.unread.length;
  const head = say(L, 'read', lines === 1 ? 'head1' : 'head', { name: sample.name, lines, read: rated.length, asked, unread: sample.unread.length });
  const [line, paper, taken, rating] = say(L, 'read', 'columns').split('|') as [string, string, string, string];
  const rows: [number, string, string, string][] = rated.map((r) => {
    const q = questions.findIndex((x) => x.place?.line === r.reading.place.line && x.about === r.reading.item);
    return [r.reading.place.line, r.reading.asPrinted, takenAs(r, where), q >= 0 && r.rating === null ? say(L, 'read', 'see-question', { n: q + 1 }) : leaf ? leafText(r, where, crops) : ratingText(r, where)];
  });
  for (const u of sample.unread) rows.push([u.line, u.text, say(L, 'read', 'not-a-reading'), '']);
  rows.sort((a, b) => a[0] - b[0]);
  const clip = (t: string, n: number): string => ([...t].length > n ? `${[...t].slice(0, n - 1).join('')}…` : t.padEnd(n));
  const table = rows.map(([n, p, t, r]) => `${String(n).padStart(4)}  ${clip(p.replace(/\s+/g, ' '), 36)}  ${clip(t, 20)}  ${r}`.trimEnd());
  // Warnings are told with their line, below; a note has nobody to tell it but the table.
  const notes = odd.filter((n) => n.severity === 'note').map((n) => noticeText(n, L));
  const dated = sample.taken ? `, ${say(L, 'read', 'taken', { day: showDay(sample.taken, L, true) })}` : '';
  return [`${head}${dated}`, '', `${line.padEnd(4)}  ${paper.padEnd(36)}  ${taken.padEnd(20)}  ${rating}`, ...table, '', ...notes, leaf ? say(L, 'read', 'so-leaf', { example: leafExample(sample) }) : summary(rated, where), ''].join('\n');
}
