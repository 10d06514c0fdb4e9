/** The season's plan, and the strong solver behind the quick one: loaded only when that gives up. */
import { byYalps } from '../bags/by-yalps.ts';
import type { Solver } from '../bags/program.ts';
import type { Plan, PlanOptions } from '../plan.ts';
import { planSeason } from '../plan.ts';

type Season = Parameters<typeof planSeason>;

export async function planWhole(orchard: Season[0], zones: Season[1], today: Season[2], options: PlanOptions = {}): Promise<Plan> {
  const quick = planSeason(orchard, zones, today, options);
  if (quick.sure) return quick;
  return planSeason(orchard, zones, today, { ...options, solver: await strongSolver() });
}

export async function strongSolver(): Promise<Solver> {
  const { highsSolver } = await import('../bags/by-highs.ts');
  const strong = await highsSolver();
  return (program, least) => {
    const found = byYalps(program, least);
    return found.status === 'best' ? found : strong(program, least);
  };
}
