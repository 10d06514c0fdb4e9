// Shared by the tests of published lime and sulphur figures: asking by flags, the units that
// the publications print, and the ways in which a printed figure is looked for in an answer.
import { expect, test } from 'vitest';
import { type FigureJson, medlar } from '../medlar.ts';
import { LB } from './helpers.ts';

// International foot and pound; an acre is 43,560 sq ft and a short ton 2,000 lb.
export const INCH = 0.0254;
const SQUARE_FOOT = 0.3048 ** 2;
const ACRE = 43_560 * SQUARE_FOOT;

/** Grams to a square metre in one of each printed unit. */
export const G_PER_M2 = {
  'ton/acre': (2000 * LB) / ACRE,
  'lb/acre': LB / ACRE,
  'lb/1000 sq ft': LB / (1000 * SQUARE_FOOT),
  'lb/100 sq ft': LB / (100 * SQUARE_FOOT),
  'kg/ha': 0.1,
  't/ha': 100,
  'g/m2': 1,
} as const;

export type PrintedUnit = keyof typeof G_PER_M2;

export interface Row {
  readonly zone: string | null;
  readonly tree: string | null;
  readonly now: number;
  readonly goal: number;
  readonly reason: string;
  readonly verdict: 'leave' | 'lime' | 'sulphur' | 'cannot';
  readonly gPerM2: number;
  readonly g: number | null;
  readonly range: readonly [number, number] | null;
  readonly doses: readonly { readonly g: number; readonly gPerM2: number }[];
  readonly dugIn: { readonly gPerM2: number; readonly depthM: number } | null;
}

export interface Asked {
  readonly rows: readonly Row[];
  readonly figures: Readonly<Record<string, FigureJson>>;
}

/** Flags of `medlar ph` by their long names. */
export type Flags = Readonly<Record<string, string | number>>;

export async function askPh(args: readonly string[], files: Readonly<Record<string, string>> = {}): Promise<Asked> {
  const run = await medlar(['ph', ...args, '--json'], files);
  const rows = run.json?.result?.ph as Row[] | undefined;
  if (!Array.isArray(rows)) throw new Error(`exit ${String(run.code)}: ${run.stderr}\n${run.stdout}`);
  return { rows, figures: run.json.figures };
}

export async function ph(flags: Flags): Promise<Asked & { readonly row: Row }> {
  const asked = await askPh(Object.entries(flags).flatMap(([name, value]) => [`--${name}`, String(value)]));
  const [row] = asked.rows;
  if (row === undefined || asked.rows.length !== 1) throw new Error(`one row expected, not ${String(asked.rows.length)}`);
  return { ...asked, row };
}

/** The answer's figures under a source, in the unit that the source prints. */
export function figuresOf({ figures }: Asked, source: string, unit: PrintedUnit): FigureJson[] {
  return Object.values(figures).filter((figure) => figure.cite.source === source && figure.unit === unit);
}

export function said(flags: Flags): string {
  return Object.entries(flags).map(([name, value]) => `${name} ${String(value)}`).join(', ');
}

export type Case = readonly [flags: Flags, value: number];

/** Each printed value must stand among the answer's figures under that source and unit; `within` is how finely it is printed. */
export function expectPrinted(source: string, unit: PrintedUnit, cases: readonly Case[], within = 0.005): void {
  for (const [flags, value] of cases) {
    test(`${said(flags)}: ${String(value)} ${unit}`, async () => {
      const values = figuresOf(await ph(flags), source, unit).map((figure) => figure.value);
      expect(values.some((one) => Math.abs(one - value) <= within), `${String(value)} among [${values.join(', ')}]`).toBe(true);
    });
  }
}

/** A table of goals by columns and readings by rows, with what is asked for a cell. */
export function expectTable(
  source: string, unit: PrintedUnit, goals: readonly number[], rows: readonly (readonly number[])[], flags: (reading: number) => Flags,
): void {
  const cases = rows.flatMap(([reading = NaN, ...cells]): Case[] => {
    if (cells.length !== goals.length) throw new Error(`row ${String(reading)} has ${String(cells.length)} cells`);
    return cells.map((cell, at): Case => [{ ...flags(reading), goal: goals[at] ?? NaN }, cell]);
  });
  expectPrinted(source, unit, cases);
}

/** Within a tenth of a percent: conversions are exact, only the answer's own last digit may be rounded. */
export function near(value: number | null | undefined, wanted: number): void {
  expect(Math.abs((value ?? NaN) - wanted), `${String(value)} for ${String(wanted)}`).toBeLessThanOrEqual(Math.max(0.05, wanted / 1000));
}
