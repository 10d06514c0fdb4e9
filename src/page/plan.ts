/** The season's plan: what to buy first, then the days, then what each tree needs. Touch a number: why. */
import { valueOf } from '../json/reason.ts';
import { noticeText, questionText } from '../json/notices.ts';
import type { Plan, TreePlan } from '../plan.ts';
import { phFigures } from '../planned.ts';
import { isWeak } from '../reason/figure.ts';
import { idleReason } from '../sheet/back.ts';
import { sheetView } from '../sheet/build.ts';
import { diluteText } from '../sheet/can.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { showDay, showLength, showDose, showShort, showSpan, showVolume, showWindow } from '../words/show.ts';
import { say } from '../words/words.ts';
import { button, el, fill, list } from './dom.ts';
import type { Child } from './dom.ts';
import { diaryPart, doneBox } from './done.ts';
import { mistakesOf } from './seen.ts';
import { treeLines } from './state.ts';
import type { Context, PageWords, View } from './view.ts';
import { wordsOf } from './view.ts';
import { number } from './why.ts';

export function planView(ctx: Context): View {
  const root = el('div', { id: 'plan-body' });
  return { root, refresh: () => { fill(root, ...(ctx.seen().plan ? planned(ctx.seen().plan!, ctx) : unplanned(ctx))); } };
}

/** Why there is no plan, and where to go. */
export function unplanned(ctx: Context): Child[] {
  const w = wordsOf(ctx);
  if (treeLines(ctx.state().orchard).length === 0) return [el('p', {}, w('plan-wants-trees')), el('p', {}, button(w('next-trees'), () => { ctx.go('trees'); }, { class: 'main' }))];
  return [el('p', {}, w('plan-stopped')), list(mistakesOf(ctx.seen()), { class: 'wrong' }), el('p', {}, button(w('mend'), () => { ctx.go('home'); }))];
}

function planned(plan: Plan, ctx: Context): Child[] {
  const w = wordsOf(ctx);
  const L = ctx.language;
  const view = sheetView(plan, { paper: plan.orchard.where.paper, large: false });
  const told = plan.notices.filter((n) => n.severity !== 'error').map((n) => noticeText(n, L));
  const questions = plan.questions.map((q) => `${questionText(q, L)} ${say(L, 'ask', q.changes)}`);
  const watered = plan.trees.filter((t) => t.dilute);
  const idle = plan.trees.filter((t) => t.feeds.length === 0 && !t.dilute);
  return [
    el('section', { id: 'total', 'aria-label': w('total') }, el('h3', {}, w('total')), list(view.back.slip, { class: 'total' }), ...view.not.map((n) => el('p', {}, el('strong', {}, `${view.words.not} `), n))),
    ...plan.days.map((day, i) => el('section', { class: 'day' }, el('h3', {}, view.days[i]!.title), el('p', {}, `${view.days[i]!.when}. ${view.days[i]!.weigh}`), ...plan.trees.flatMap((t) => doseRows(plan, t, day, w)), doneBox(plan, day, ctx))),
    watered.length > 0 ? el('section', { class: 'day' }, ...watered.map((t) => canRow(plan, t, w))) : null,
    idle.length > 0 ? el('section', {}, el('h3', {}, w('unfed')), ...idle.map((t) => el('p', { class: 'idle' }, el('strong', {}, t.tree.name), ` ${say(L, 'plan', t.need.verdict === 'wait' ? 'wait' : 'nothing', { why: idleReason(t, L) })}`))) : null,
    plan.days.length > 0 ? el('p', { class: 'stop' }, el('strong', {}, `${view.words.stop} `), view.stop) : null,
    el('section', {}, el('h3', {}, w('needs')), el('p', { class: 'hint' }, w('needs-hint')), ...plan.trees.map((t) => needRow(plan, t, w))),
    view.back.lime.length > 0 ? el('section', {}, el('h3', {}, view.words.limeSulphur), ...view.back.lime.map(({ text }) => el('p', {}, text))) : null,
    view.back.assumed.length > 0 ? el('section', {}, el('h3', {}, w('assumed')), list(view.back.assumed)) : null,
    told.length > 0 ? el('section', {}, el('h3', {}, w('worth')), list(told)) : null,
    questions.length > 0 ? el('section', {}, el('h3', {}, w('asked')), list(questions)) : null,
    ...diaryPart(plan, ctx),
    el('p', {}, button(w('next-sheet'), () => { ctx.go('sheet'); }, { class: 'main' })),
    el('p', { class: 'hint' }, view.back.foot),
  ];
}

/** One tree on one day: its amounts, then once for all of them the ring and the window. */
function doseRows(plan: Plan, t: TreePlan, day: Plan['days'][number], w: PageWords): HTMLElement[] {
  const { language: L, units: system } = plan.orchard.where;
  const several = new Set(plan.days.flatMap((d) => d.doses.map((x) => x.feed.bag))).size > 1;
  const feeds = day.doses.filter((d) => d.plan === t).map((d) => d.feed);
  const [first] = feeds;
  if (!first) return [];
  const room = el('div', { class: 'room', hidden: true });
  const lines = feeds.flatMap((feed, i) => {
    const small = [several ? feed.bag.label : '', t.tree.count > 1 ? say(L, 'sheet', 'each', { count: t.tree.count }) : '', feed.mL === null ? '' : say(L, 'sheet', 'about', { cups: showVolume(feed.mL, system, L) })].filter(Boolean).join(', ');
    return [
      el('div', { class: 'dose-line' }, i === 0 ? el('strong', { class: 'tree-name' }, t.tree.name) : el('span', {}), number(`${showDose(feed.g, system, L)}${isWeak(t.need[feed.serves]) ? ' †' : ''}`, [feed.planned], plan, room, w, { 'data-tree': t.tree.name })),
      el('div', { class: 'hint' }, small),
    ];
  });
  const only = t.need.nitrogen.ifBelow && feeds.some((f) => f.serves === 'N') ? say(L, 'sheet', 'only-if', { length: showShort(t.need.nitrogen.ifBelow.value, system, L) }) : '';
  const [from, to] = first.ring ? showSpan(showLength(first.ring.from.value, system, L), showLength(first.ring.to.value, system, L)) : ['', ''];
  const windows = feeds.filter((f, i) => feeds.findIndex((g) => g.window.from === f.window.from && g.window.until === f.window.until) === i);
  return [el('div', { class: 'dose' }, ...lines, only ? el('div', {}, el('strong', {}, only)) : null,
    el('div', { class: 'row' },
      first.ring ? number(say(L, 'sheet', 'ring', { from, to }), [first.ring.from, first.ring.to, first.ring.area], plan, room, w) : say(L, 'sheet', 'tub'),
      ...windows.map((f) => number(showWindow(f.window.from, f.window.until, L), [f.window.why], plan, room, w))),
    room)];
}

function canRow(plan: Plan, t: TreePlan, w: PageWords): HTMLElement {
  const room = el('div', { class: 'room', hidden: true });
  return el('div', { class: 'dose' }, el('strong', { class: 'tree-name' }, t.tree.name), el('div', {}, number(diluteText(t.dilute!, plan.orchard.where.language, plan.orchard.where.units), [t.dilute!.g], plan, room, w)), room);
}

function needRow(plan: Plan, t: TreePlan, w: PageWords): HTMLElement {
  const { language: L, units: system } = plan.orchard.where;
  const room = el('div', { class: 'room', hidden: true });
  return el('div', { class: 'need' }, el('strong', {}, t.tree.name),
    el('div', { class: 'row' }, ...NUTRIENTS.map((n) => number(valueOf(t.need[n], L, system), [t.need[n]], plan, room, w)),
      ...(phFigures(t).length > 0 ? [number(w('soil-ph'), phFigures(t), plan, room, w)] : []), number(w('last-day', { day: showDay(t.last.day, L) }), [t.last.why], plan, room, w)), room);
}
