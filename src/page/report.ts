/** The soil report: typed or pasted, each line answered at once in the words of `read`. */
import { cropsOf, leafExample } from '../gather.ts';
import { questionText, noticeText } from '../json/notices.ts';
import { citeOf } from '../json/reason.ts';
import { leafText, ratingText, summary, takenAs } from '../json/read-words.ts';
import { densityNotes } from '../rating/convert.ts';
import { rateSample, schemeNotes } from '../rating/rate.ts';
import type { Question } from '../reason/notice.ts';
import type { Sample } from '../soil/reading.ts';
import { showDay } from '../words/show.ts';
import { say } from '../words/words.ts';
import { button, choose, el, field, fill } from './dom.ts';
import type { Child } from './dom.ts';
import { dateOrderIn } from '../units/date.ts';
import { readOnce } from './seen.ts';
import { FIRST_REPORT, withReport } from './state.ts';
import type { Context, View } from './view.ts';
import { wordsOf } from './view.ts';

/** A pasted book is read whole, but not shown whole. */
const MOST_ROWS = 200;

export function reportView(ctx: Context): View {
  const w = wordsOf(ctx);
  const names = (): string[] => (Object.keys(ctx.state().reports).length > 0 ? Object.keys(ctx.state().reports) : [FIRST_REPORT]);
  const which = el('div', {});
  const answers = el('div', { id: 'answers' });
  const paper = field(w('paper'), el('textarea', { id: 'paper', rows: 9, spellcheck: 'false', autocapitalize: 'off', autocomplete: 'off' }), w('paper-hint'));
  let file = names()[0]!;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const take = (): void => {
    clearTimeout(waiting);
    waiting = undefined;
    ctx.take(withReport(ctx.state(), file, paper.input.value, w('garden')));
  };
  paper.input.addEventListener('input', () => {
    clearTimeout(waiting);
    waiting = setTimeout(take, 200);
  });
  paper.input.addEventListener('change', () => { if (waiting !== undefined) take(); });

  const answer = (line: string): void => {
    paper.input.value = `${paper.input.value.replace(/\s*$/, '')}\n${line}\n`;
    take();
    answers.querySelector<HTMLElement>('button, h3')?.focus();
  };
  const refresh = (): void => {
    if (!names().includes(file)) file = names()[0]!;
    const select = choose('which', names().map((n) => [n, n]));
    select.value = file;
    select.addEventListener('change', () => { file = select.value; refresh(); });
    fill(which, names().length > 1 ? field(w('which'), select).root : null);
    const text = ctx.state().reports[file] ?? '';
    if (waiting === undefined && paper.input.value !== text) paper.input.value = text;
    fill(answers, ...(text.trim() === '' ? [] : answered(text, file, ctx, answer)));
  };
  return { root: el('div', {}, which, paper.root, answers), refresh };
}

/** What was understood, sample by sample; then what must be asked, and what is wrong. */
function answered(text: string, file: string, ctx: Context, answer: (line: string) => void): Child[] {
  const w = wordsOf(ctx);
  const { samples, notices, questions } = readOnce(text, file, dateOrderIn(ctx.early().where.country));
  return [
    ...(notices.length > 0 ? [el('ul', { class: 'wrong' }, ...notices.slice(0, MOST_ROWS).map((n) => el('li', {}, n.place ? w('on-line', { line: n.place.line, text: noticeText(n, ctx.language) }) : noticeText(n, ctx.language))))] : []),
    ...(questions.length > 0 ? [el('h3', { tabindex: -1 }, w('asked')), ...questions.slice(0, MOST_ROWS).map((q, i) => questionBox(q, i, ctx, answer))] : []),
    ...samples.filter((s) => s.readings.length + s.unread.length > 0).map((s) => sampleBox(s, questions, ctx)),
  ];
}

/** Items as a report names them; the others are their own name. */
const NAMES: Readonly<Record<string, string>> = { salts: 'soluble salts' };

function questionBox(q: Question, i: number, ctx: Context, answer: (line: string) => void): HTMLElement {
  const L = ctx.language;
  const what = q.code === 'unit-missing' ? 'unit' : 'method';
  // Words with hyphens are written apart in a report: "ammonium acetate".
  const line = (said: string): string => `${NAMES[q.about] ?? q.about.replaceAll('-', ' ')} ${what}: ${what === 'method' ? said.replaceAll('-', ' ') : said}`;
  return el('fieldset', { class: 'question' }, el('legend', {}, questionText(q, L)), el('p', { class: 'hint' }, say(L, 'ask', q.changes)),
    q.choices.length === 0 ? null : el('p', { class: 'row' }, ...q.choices.map((c, k) => button(c, () => { answer(line(c)); }, { id: `answer-${i}-${k}` })), button(say(L, 'ask', 'dont-know'), () => { answer(line('unknown')); }, { id: `answer-${i}-unknown` })));
}

function sampleBox(sample: Sample, questions: readonly Question[], ctx: Context): HTMLElement {
  const w = wordsOf(ctx);
  const L = ctx.language;
  const { where } = ctx.early();
  const rated = rateSample(sample, where);
  const crops = cropsOf(ctx.seen().orchard?.trees ?? []);
  const rows = [
    ...rated.map((r) => {
      const open = questions.some((q) => q.place?.line === r.reading.place.line && q.about === r.reading.item) && r.rating === null;
      return { line: r.reading.place.line, paper: r.reading.asPrinted, taken: takenAs(r, where), rating: open ? w('see-question') : sample.kind === 'leaf' ? leafText(r, where, crops) : ratingText(r, where), cite: open ? null : r.cite };
    }),
    ...sample.unread.map((u) => ({ line: u.line, paper: u.text, taken: '', rating: say(L, 'read', 'not-a-reading'), cite: null })),
  ].sort((a, b) => a.line - b.line);
  const [, paper, , rating] = say(L, 'read', 'columns').split('|') as [string, string, string, string];
  return el('section', { class: 'sample' },
    el('h3', {}, sample.taken ? `${sample.name}, ${say(L, 'read', 'taken', { day: showDay(sample.taken, L, true) })}` : sample.name),
    rated.length > 0 ? el('p', { class: 'so' }, sample.kind === 'leaf' ? say(L, 'read', 'so-leaf', { example: leafExample(sample) }) : summary(rated, where)) : null,
    el('table', {},
      el('thead', {}, el('tr', {}, el('th', { scope: 'col' }, paper), el('th', { scope: 'col' }, w('taken', { rating })))),
      el('tbody', {}, ...rows.slice(0, MOST_ROWS).map((r) => el('tr', {}, el('td', { class: 'paper' }, r.paper), el('td', {}, r.taken ? el('strong', {}, r.taken) : null, r.taken ? el('br') : null, r.cite && r.rating && r.cite.source !== 'lab' ? el('details', {}, el('summary', {}, r.rating), el('span', { class: 'cite' }, citeOf(r.cite, L))) : r.rating))))),
    rows.length > MOST_ROWS ? el('p', {}, w('more-lines', { n: rows.length - MOST_ROWS })) : null,
    ...[...schemeNotes(rated), ...densityNotes(rated)].map((n) => el('p', { class: 'hint' }, noticeText(n, L))));
}
