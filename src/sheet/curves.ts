/** The whole way to the pH that suits, drawn and in a sentence: once for all plants of a zone that go the same way, some of them further. */
import type { TreePlan } from '../planned.ts';
import type { System } from '../words/show.ts';
import { showPh, showRate, showShort, showSpan } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { drawCurve } from './drawings.ts';

export type Curve = { readonly drawing: string; readonly text: string };
type Limed = TreePlan & { readonly ph: NonNullable<TreePlan['ph']> };

/** Plants that go one way, the one that goes furthest first; none that gets neither lime nor sulphur, or whose rate the lab gave for one goal alone. */
export function curveGroups(trees: readonly TreePlan[]): Limed[][] {
  const limed = trees.filter((t): t is Limed => t.ph !== null && t.ph.g > 0 && t.ph.curve.length > 1).sort((a, b) => b.ph.curve.length - a.ph.curve.length);
  const groups: Limed[][] = [];
  for (const t of limed) {
    const group = groups.find(([first]) => first!.ph.zone === t.ph.zone && first!.ph.plan.verdict === t.ph.plan.verdict && JSON.stringify(first!.ph.curve.slice(0, t.ph.curve.length)) === JSON.stringify(t.ph.curve));
    if (group) group.push(t);
    else groups.push([t]);
  }
  return groups;
}

export const curvesOf = (trees: readonly TreePlan[], language: Language, system: System): Curve[] => curveGroups(trees).map((group, i) => drawn(group, i, language, system));

function drawn(group: readonly Limed[], at: number, language: Language, system: System): Curve {
  const { curve, plan } = group[0]!.ph;
  const ends = [...new Set(group.map((t) => t.ph.curve.length))].map((length) => {
    const { ph, low, high } = curve[length - 1]!;
    const [least, most] = showSpan(showRate(low, system, language), showRate(high, system, language));
    const names = group.filter((t) => t.ph.curve.length === length).map((t) => t.tree.name).join(', ');
    return { ph, amount: low === high ? most : say(language, 'say', 'span-ph', { low: least, high: most }), names };
  });
  const list = ends.map((e) => say(language, 'sheet', 'curve-end', { trees: e.names, amount: e.amount, goal: showPh(e.ph, language) })).join('; ');
  const text = say(language, 'sheet', plan.verdict === 'lime' ? 'curve-lime' : 'curve-sulphur', { now: showPh(plan.now.value, language), list, depth: plan.dugIn ? showShort(plan.dugIn.depthM, system, language) : '' });
  // What suits all of them, else what suits the one that is led furthest.
  const [low, high] = [Math.max(...group.map((t) => t.ph.plan.suits.low)), Math.min(...group.map((t) => t.ph.plan.suits.high))];
  const band = low < high ? { low, high } : { low: plan.suits.low, high: plan.suits.high };
  return { drawing: drawCurve({ now: plan.now.value, ...band, points: curve, goals: ends.map((e) => e.ph), amount: ends[0]!.amount, label: text, name: (ph) => showPh(ph, language), id: String(at) }), text };
}
