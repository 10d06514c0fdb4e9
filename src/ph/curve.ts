/** Amount against pH: what the whole way to each tenth takes, with how far publications lie apart. */
import { limeRates } from './lime.ts';
import type { PhAsk, PhPlan } from './ph.ts';
import { phPlan } from './ph.ts';

/** g/m² of pure sulphur in all, or of pure lime dug in, to reach a pH. */
export type CurvePoint = { readonly ph: number; readonly low: number; readonly high: number };

/** From the pH that is there to the goal; nothing where neither lime nor sulphur goes on, or the lab's rate knows one goal alone. */
export function curveOf(ask: PhAsk, plan: PhPlan): CurvePoint[] {
  if ((plan.verdict !== 'lime' && plan.verdict !== 'sulphur') || plan.reason === 'lab') return [];
  const [from, to] = [plan.now.value, plan.goal.value];
  // What lies nearer than half a hundredth is the pH that is there.
  const tenths = Array.from({ length: Math.ceil(Math.abs(from - to) * 10 - 0.05) }, (_, i) => Math.round((to + (from > to ? i : -i) / 10) * 100) / 100).reverse();
  const points = tenths.flatMap((ph): CurvePoint[] => {
    const { goal, dugIn, range } = phPlan({ ...ask, goal: ph })!;
    // A goal that the test's table raised is no goal of its own.
    if (Math.abs(goal.value - ph) > 1e-9) return [];
    if (plan.verdict === 'lime') {
      if (!dugIn) return [];
      const rates = [dugIn.dugIn, ...limeRates(dugIn, true)].map((r) => r.value);
      return [{ ph, low: Math.min(...rates), high: Math.max(...rates) }];
    }
    return range ? [{ ph, low: range[0].value, high: range[1].value }] : [];
  });
  // A rule that goes by the present pH alone draws no way.
  if (points.length > 1 && points[0]!.low === points.at(-1)!.low && points[0]!.high === points.at(-1)!.high) return [];
  return [{ ph: from, low: 0, high: 0 }, ...points];
}
