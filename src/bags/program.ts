/** Linear programs in plain data, and several aims in the order of their weight. What solves them is passed in. */

/** `of` has the number that goes with a column. */
export type Sum = ReadonlyMap<number, number>;
export type Row = { readonly of: Sum; readonly least?: number; readonly most?: number };
/** Columns from nought up, counted from 0; those of `whole` are whole numbers. */
export type Program = { readonly columns: number; readonly whole: ReadonlySet<number>; readonly rows: readonly Row[] };
/** The least of a sum. `gave-up`: a limit was reached before the least was sure; with what had been found by then, if anything. */
export type Solved = { readonly status: 'best'; readonly x: readonly number[] } | { readonly status: 'none' } | { readonly status: 'gave-up'; readonly x?: readonly number[] };
export type Solver = (program: Program, least: Sum) => Solved;

/** An aim, and how far a later one may take it off its least. A `minor` one is let go where it takes too long; an aim of `parts` is as well met by parts of what is whole, rounded up. */
export type Aim = { readonly of: Sum; readonly within: number; readonly minor?: true; readonly parts?: true };

/** The first aim first, the next among what is as good, and so on. What served the aims before serves where the next one's program is too narrow for the solver's arithmetic. */
export function inOrder(program: Program, aims: readonly Aim[], solver: Solver): Solved {
  let rows = program.rows;
  let best: readonly number[] | null = null;
  let sure = true;
  for (const { of, within, minor, parts } of aims) {
    const solved = solver({ ...program, rows, ...(parts ? { whole: new Set() } : {}) }, of);
    // What served the aims before keeps every row: where a solver finds none after all, its arithmetic failed.
    const found: Solved = best && solved.status === 'none' ? { status: 'gave-up' } : solved;
    if (found.status !== 'none' && found.x) best = parts ? roundedUp(program, found.x) : found.x;
    if (!best) return found;
    if (found.status === 'gave-up') {
      if (minor && !found.x) continue;
      sure &&= minor === true;
    }
    rows = [...rows, { of, most: valueOf(of, best) + within }];
  }
  return best === null ? { status: 'none' } : { status: sure ? 'best' : 'gave-up', x: best };
}

export const roundedUp = ({ whole }: Program, x: readonly number[]): number[] => x.map((v, c) => (whole.has(c) ? Math.ceil(v - 1e-7) : v));

export const valueOf = (of: Sum, x: readonly number[]): number => [...of].reduce((sum, [column, n]) => sum + n * x[column]!, 0);

/** Whether x keeps every row, whole numbers and nought, by plain arithmetic: what a solver says is believed only then. */
export function keeps({ columns, whole, rows }: Program, x: readonly number[], slack = 1e-6): boolean {
  return x.length === columns && x.every((v, i) => v >= -slack && (!whole.has(i) || Math.abs(v - Math.round(v)) <= slack))
    && rows.every(({ of, least = -Infinity, most = Infinity }) => {
      const value = valueOf(of, x);
      const off = slack * Math.max(1, ...[...of].map(([c, n]) => Math.abs(n * x[c]!)));
      return value >= least - off && value <= most + off;
    });
}
