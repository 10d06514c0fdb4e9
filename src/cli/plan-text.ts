/** A plan in a few lines: what each tree gets, what to buy, when to stop. */
import type { Feed } from '../bags/doses.ts';
import { bagName } from '../orchard/bag.ts';
import { plantingDepth } from '../ph/ph.ts';
import type { Plan, TreePlan } from '../plan.ts';
import { printedStops } from '../plan-notices.ts';
import { idleReason } from '../sheet/back.ts';
import { isTiny, stopDays } from '../sheet/build.ts';
import { diluteText } from '../sheet/can.ts';
import { together } from '../reason/notice.ts';
import { showDay, showDose, showMass, showPrice, showShort, showWindow } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { noticeText } from '../json/notices.ts';
import { materialOf } from '../json/plan-json.ts';

function treeLine(plan: Plan, t: TreePlan, width: number): string {
  const { language: L, units: system } = plan.orchard.where;
  const name = `  ${t.tree.name.padEnd(width)}`;
  if (t.need.verdict === 'wait') return `${name}  ${say(L, 'plan', 'wait', { why: idleReason(t, L) })}`;
  if (t.dilute) return `${name}  ${diluteText(t.dilute, L, system)}`;
  if (t.feeds.length === 0) return `${name}  ${say(L, 'plan', 'nothing', { why: idleReason(t, L) })}`;
  const { ifBelow } = t.need.nitrogen;
  const only = ifBelow ? say(L, 'plan', 'only', { length: showShort(ifBelow.value, system, L) }) : '';
  const doses = t.feeds.map((f) => {
    const amount = showDose(f.g, system, L);
    const said = t.tree.count === 1 ? amount : isTiny(f.g) ? say(L, 'plan', 'over-all', { amount: showDose(f.g * t.tree.count, system, L), count: t.tree.count }) : say(L, 'plan', 'each', { amount, count: t.tree.count });
    return `${f.serves === 'N' ? only : ''}${say(L, 'plan', 'dose', { amount: said, bag: f.bag.label })}, ${whenOf(f, L)}`;
  });
  return doses.map((d, i) => (i === 0 ? `${name}  ${d}` : `${' '.repeat(width + 4)}${d}`)).join('\n');
}

/** "as buds show green, 29 March-26 April". */
function whenOf({ window }: Feed, L: Language): string {
  const phase = window.phase ? say(L, 'phase', window.phase) : '';
  return say(L, 'plan', 'when', { phase, window: showWindow(window.from, window.until, L) });
}

export function treeLines(plan: Plan): string {
  const width = Math.max(...plan.trees.map((t) => t.tree.name.length), 4);
  return plan.trees.map((t) => treeLine(plan, t, width)).join('\n');
}

/** Lime and sulphur of this year, a line a tree. */
export function phLines(plan: Plan): string[] {
  const { language: L, units: system } = plan.orchard.where;
  return plan.trees.filter((t) => (t.ph?.g ?? 0) > 0).map((t) => {
    const said = showMass(t.ph!.g, system, L);
    const amount = t.tree.count > 1 ? say(L, 'plan', 'each', { amount: said, count: t.tree.count }) : said;
    return say(L, 'plan', 'ph-line', { tree: t.tree.name, amount, material: materialOf(t.ph!, L) ?? '', dug: t.ph!.bed ? showShort(t.ph!.plan.dugIn?.depthM ?? plantingDepth(), system, L) : '', window: showWindow(t.ph!.window!.from, t.ph!.window!.until, L) });
  });
}

export function buyLines(plan: Plan): string[] {
  const { language: L, units: system } = plan.orchard.where;
  return plan.buy.map((p) => {
    const bag = `${bagName(p.bag)}${p.bag.g ? `, ${showMass(p.bag.g, system, L)}` : ''}`;
    const need = showMass(p.needG, system, L);
    if (p.bag.left !== null) return say(L, 'plan', 'in-shed', { bag: p.bag.label, need, left: showMass(p.leftG!, system, L) });
    if (p.bags === null) return say(L, 'plan', p.bag.unlisted ? 'buy-any' : 'buy-unknown', { bag, need });
    return say(L, 'plan', 'buy-line', { bags: p.bags, unit: say(L, 'plan', p.bags === 1 ? 'bag' : 'bags'), bag, need, left: showMass(p.leftG!, system, L), cost: p.cost === null ? '' : showPrice(p.cost, p.bag.price!.currency, L) });
  });
}

/** Warnings and notes of a plan, a line each. */
export function noticeLines(plan: Plan): string[] {
  return together(plan.notices.filter((n) => n.severity !== 'error')).map((n) => noticeText(n, plan.orchard.where.language));
}

export function stopLine(plan: Plan): string {
  const { language } = plan.orchard.where;
  const { day, evergreen } = stopDays(plan);
  return [
    say(language, 'plan', 'stop', { day: showDay(day, language) }), ...(evergreen ? [say(language, 'sheet', 'stop-evergreen', { trees: evergreen.trees, day: showDay(evergreen.day, language) })] : []),
    ...printedStops(plan).map((s) => say(language, 'sheet', 'stop-printed', { ...s, day: showDay(s.day, language) })),
  ].join(' ');
}
