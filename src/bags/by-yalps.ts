/** The small solver: quick for what a home orchard asks, and the same in the page. */
import { solve } from 'yalps';
import type { Program, Solved, Sum } from './program.ts';
import { keeps } from './program.ts';

/** Branches after which it gives up: counted and not timed, so that every machine gives up at the same. */
const MOST_BRANCHES = 200;
/** Steps of one table for each of its lines, while branching: it turns in circles in some. */
const MOST_STEPS = 5;
/** Cells of its table over which branching takes too long. */
const MOST_CELLS = 15_000;

export function byYalps(program: Program, least: Sum): Solved {
  const { columns, whole, rows } = program;
  if (whole.size > 0 && (columns + rows.length) * rows.length > MOST_CELLS) return { status: 'gave-up' };
  const cells = Array.from({ length: columns }, (): [string, number][] => []);
  rows.forEach(({ of }, r) => of.forEach((n, c) => cells[c]!.push([`r${r}`, n])));
  least.forEach((n, c) => cells[c]!.push(['least', n]));
  const found = solve<string, string>({
    direction: 'minimize', objective: 'least',
    constraints: rows.map(({ least: min = -Infinity, most: max = Infinity }, r): [string, object] => [`r${r}`, { min, max }]),
    variables: cells.map((c, i): [string, [string, number][]] => [`${i}`, c]),
    integers: [...whole].map((i) => `${i}`),
  }, { maxIterations: MOST_BRANCHES, maxPivots: whole.size > 0 ? MOST_STEPS * (columns + rows.length) : 100_000 });
  if (found.status === 'infeasible') return { status: 'none' };
  if (found.status !== 'optimal') return { status: 'gave-up' };
  const x = Array.from({ length: columns }, () => 0);
  for (const [name, n] of found.variables) x[Number(name)] = whole.has(Number(name)) ? Math.round(n) : n;
  return keeps(program, x) ? { status: 'best', x } : { status: 'gave-up' };
}
