/** What was done: a working day ticked off, and the season's diary; in the lines of `diary.csv`, as `medlar diary` writes them. */
import { doneAlready, dosesOf, lately, writtenLast } from '../done.ts';
import { entryText } from '../json/diary-words.ts';
import { noticeText } from '../json/notices.ts';
import { DIARY_FILE } from '../orchard/files.ts';
import type { Entry } from '../orchard/diary.ts';
import { addition, withdrawalOf } from '../orchard/diary.ts';
import type { Plan, WorkingDay } from '../plan.ts';
import { isoDate } from '../units/date.ts';
import { showDay } from '../words/show.ts';
import { button, el, field, fill, list, textInput, tick } from './dom.ts';
import type { Child } from './dom.ts';
import { see } from './seen.ts';
import type { Context } from './view.ts';
import { wordsOf } from './view.ts';

/** What the last writing said; it outlives a plan drawn anew. */
let said = '';

/** Adds entries to the diary; gives back what stands against it. */
function write(ctx: Context, entries: readonly Entry[]): string | null {
  const added = addition(ctx.state().diary, entries, DIARY_FILE);
  if ('notice' in added) return noticeText(added.notice, ctx.language);
  ctx.take({ ...ctx.state(), diary: ctx.state().diary + added.text });
  return null;
}

/** The trees of a day to tick, the date, and the line that writes them down. */
export function doneBox(plan: Plan, { number, doses }: WorkingDay, ctx: Context): HTMLElement {
  const w = wordsOf(ctx);
  const names = [...new Set(doses.map((d) => d.plan.tree.name))];
  const ticks = names.map((name, i) => ({ name, ...tick(`fed-${number}-${i}`, name) }));
  for (const t of ticks) t.input.checked = true;
  const date = field(w('done-on'), textInput(`done-on-${number}`, { type: 'date', max: ctx.today(), value: ctx.today() }));
  const act = (): void => {
    const on = isoDate(date.input.value);
    const fed = ticks.filter((t) => t.input.checked).map((t) => t.name);
    if (on === null || on > ctx.today()) return date.mistakes([w('done-when')]);
    if (fed.length === 0) return date.mistakes([w('done-none')]);
    // The day as it was planned on that date.
    const then = on === ctx.today() ? plan : see(ctx.state(), on).plan;
    const day = then?.days.find((d) => d.number === number);
    const entries = day ? dosesOf({ ...day, doses: day.doses.filter((d) => fed.includes(d.plan.tree.name)) }, number, on, plan.orchard.where.units) : [];
    if (entries.length === 0) return date.mistakes([w('done-not-then')]);
    const stands = doneAlready([{ day: number, date: on, trees: fed }], ctx.seen().diary, plan.orchard);
    said = w('done-written', { day: showDay(on, ctx.language), list: entries.map((e) => entryText(e, plan.orchard, ctx.language)).join('; ') });
    const wrong = stands ? noticeText(stands, ctx.language) : write(ctx, entries);
    if (wrong !== null) date.mistakes([wrong]);
  };
  return el('details', { class: 'done' }, el('summary', {}, w('done-title', { n: number })), ...ticks.map((t) => t.root), date.root, el('p', {}, button(w('write-down'), act, { class: 'main', id: `done-${number}` })));
}

/** The diary of the last twelve months, with a way to take back what was written last. */
export function diaryPart(plan: Plan, ctx: Context): Child[] {
  const w = wordsOf(ctx);
  const { diary } = ctx.seen();
  const lines = lately(diary, ctx.today());
  const note = el('p', { id: 'diary-said', role: 'status' }, said);
  if (diary.length === 0 && said === '') return [];
  const undo = (): void => {
    const gone = writtenLast(diary);
    said = w('taken-back');
    const wrong = write(ctx, gone.toReversed().map((e) => withdrawalOf(e, ctx.today())));
    if (wrong !== null) fill(note, wrong);
  };
  return [el('section', { id: 'diary' }, el('h3', {}, w('diary')), note, list(lines.map((e) => `${showDay(e.date, ctx.language, true)}: ${entryText(e, plan.orchard, ctx.language)}`)),
    diary.length > 0 ? el('p', {}, button(w('take-back'), undo, { id: 'undo' })) : null)];
}
