/** What stands below a verdict of pH: all printed ranges, other acidifiers, the amount at each tenth. */
import { citeOf } from '../json/reason.ts';
import type { CurvePoint } from '../ph/curve.ts';
import type { PhPlan } from '../ph/ph.ts';
import type { System } from '../words/show.ts';
import { showRate, showSpan } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { numeral, say } from '../words/words.ts';

/** Every printed pH range that fits, the leading one first. */
export function rangesText({ suits: { ranges } }: PhPlan, L: Language): string {
  const lines = ranges.map(([low, high]) => `  ${(low.value === high.value ? numeral(low.value, L) : say(L, 'say', 'span-ph', { low: low.value, high: high.value })).padEnd(12)} ${citeOf(low.cite, L)}`);
  return [say(L, 'say', 'why-ranges'), ...lines].join('\n');
}

/** Nothing where no sulphur goes on. */
export function insteadText({ instead }: PhPlan, L: Language, system: System): string[] {
  if (instead.length === 0) return [];
  const lines = instead.map((i) => `  ${say(L, 'ph', 'instead-line', { material: say(L, 'ph', i.id as 'iron-sulphate'), rate: showRate(i.rate.value, system, L), most: i.atOnce && i.rate.value > i.atOnce.value ? showRate(i.atOnce.value, system, L) : '', nitrogen: i.nitrogen === null ? '' : showRate(i.nitrogen, system, L) })}`);
  return [say(L, 'ph', 'instead'), ...lines, ...(instead.some((i) => i.id === 'aluminium-sulphate') ? [] : [`  ${say(L, 'ph', 'no-aluminium')}`])];
}

/** What the whole way to each tenth takes; `ends` names at a pH the plants that go no further. */
export function curveText(curve: readonly CurvePoint[], verdict: PhPlan['verdict'], L: Language, system: System, ends: ReadonlyMap<number, string> = new Map()): string[] {
  if (curve.length < 2) return [];
  const amount = ({ low, high }: CurvePoint): string => {
    const [a, b] = showSpan(showRate(low, system, L), showRate(high, system, L));
    return low === high ? b : say(L, 'say', 'span-ph', { low: a, high: b });
  };
  return [say(L, 'ph', verdict === 'lime' ? 'curve-lime' : 'curve-sulphur'), ...curve.slice(1).map((p) => `  pH ${numeral(p.ph, L).padEnd(5)} ${amount(p)}${ends.has(p.ph) ? `   ${ends.get(p.ph)!}` : ''}`)];
}
