/** The strong solver, HiGHS. Heavy to load: only ever imported when the small one has given up. */
import load from 'highs';
import type { Program, Solver, Sum } from './program.ts';
import { keeps } from './program.ts';

/** For one aim. */
const MOST_SECONDS = 0.7;

/** HiGHS takes a program as text; columns have names of our own, since some words mean something to it. */
export async function highsSolver(): Promise<Solver> {
  const highs = await load();
  return (program, least) => {
    const text = textOf(program, least);
    const solve = (presolve: 'on' | 'off'): ReturnType<typeof highs.solve> | null => {
      try {
        return highs.solve(text, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-9, time_limit: MOST_SECONDS, random_seed: 0, presolve });
      } catch {
        return null;
      }
    };
    // Its preparation fails on a few programs that it solves well without.
    const found = solve('on') ?? solve('off');
    if (!found) return { status: 'gave-up' };
    if (found.Status === 'Infeasible') return { status: 'none' };
    const [best, late] = [found.Status === 'Optimal', found.Status === 'Time limit reached'];
    if (!best && !late) return { status: 'gave-up' };
    const columns = found.Columns as Readonly<Record<string, { readonly Primal?: number } | undefined>>;
    const x = Array.from({ length: program.columns }, (_, i) => columns[`x${i}`]?.Primal ?? 0).map((v, i) => (program.whole.has(i) ? Math.round(v) : Math.max(0, v)));
    return keeps(program, x) ? { status: best ? 'best' : 'gave-up', x } : { status: 'gave-up' };
  };
}

/** Its columns are from nought up unless told otherwise. */
function textOf({ whole, rows }: Program, least: Sum): string {
  const sum = (of: Sum): string => [...of].map(([c, n]) => `${n < 0 ? '-' : '+'} ${Math.abs(n)} x${c}`).join('\n ');
  const lines = rows.flatMap(({ of, least: min = -Infinity, most: max = Infinity }, r) => (min === max
    ? [`e${r}: ${sum(of)} = ${min}`]
    : [...(min > -Infinity ? [`l${r}: ${sum(of)} >= ${min}`] : []), ...(max < Infinity ? [`m${r}: ${sum(of)} <= ${max}`] : [])]));
  return ['Minimize', `least: ${sum(least)}`, 'Subject To', ...lines, 'General', ...[...whole].map((i) => `x${i}`), 'End'].join('\n');
}
