// Shared by the tests of published figures: a one-plant orchard, a pasted report,
// and the few ways in which a printed figure is looked for in an answer.
import { describe, expect, test } from 'vitest';
import type { Answer } from '../medlar.ts';
import { CROP_WORDS } from '../../src/tables/crops.ts';
import { medlar } from '../medlar.ts';

export const LB = 453.59237;
export const OZ = 28.349523125;
export const TODAY = '2026-03-14';

/** Ground under a round crown, in square metres, from its spread in feet. */
export function crown(feet: number): number {
  return (Math.PI / 4) * (feet * 0.3048) ** 2;
}

interface Source {
  readonly id: string;
  readonly title: string;
  readonly publisher: string;
  /** The publisher's own address; null where only copies were found. */
  readonly url: string | null;
  readonly mark: 'read' | 'derived' | 'memory' | 'practice';
}

export function published(source: Source, cases: () => void): void {
  describe(`${source.publisher}: ${source.title}`, cases);
}

// ── What an answer holds, as far as these tests look ─────────────────────────

interface Figure {
  readonly value: number;
  readonly unit: string;
  readonly of: string;
  readonly cite: { readonly source: string; readonly at: string; readonly mark: string };
}

interface Amounts<T = number> {
  readonly N: T;
  readonly P2O5: T;
  readonly K2O: T;
}

interface Feed {
  readonly bag: string;
  readonly g: number;
  readonly gExact: number;
  readonly mL: number | null;
  readonly from: string;
  readonly until: string;
  readonly ring: { readonly fromM: number; readonly toM: number; readonly m2: number } | null;
}

interface Tree {
  readonly name: string;
  readonly count: number;
  readonly verdict: 'feed' | 'none' | 'wait';
  readonly need: Amounts;
  readonly needWhy: Amounts<string>;
  readonly span: { readonly N: readonly [number, number] };
  readonly if?: { readonly code: string; readonly belowM: number } | null;
  readonly feeds: readonly Feed[];
  readonly supplied: Amounts;
  readonly over: Amounts;
  readonly short: Amounts;
}

interface Day {
  readonly from: string;
  readonly until: string;
  readonly doses: readonly {
    readonly tree: string;
    readonly count: number;
    readonly bag: string;
    readonly g: number;
  }[];
}

interface Plan {
  readonly result: {
    readonly season: number;
    readonly trees: readonly Tree[];
    readonly days: readonly Day[];
    readonly buy: readonly {
      readonly bag: string;
      readonly bags: number;
      readonly cost: number | null;
      readonly leftG: number;
    }[];
  };
  readonly figures: Readonly<Record<string, Figure>>;
}

interface Reading {
  readonly item: string;
  readonly value: number | null;
  readonly unit: string | null;
  readonly method: string | null;
  readonly basis: string | null;
  readonly mgPerKg?: number | null;
  readonly lab: { readonly rating: string | null };
  readonly target: string | null;
}

interface Read {
  readonly result: { readonly samples: readonly { readonly readings: readonly Reading[] }[] };
}

// ── Asking ───────────────────────────────────────────────────────────────────

export async function answer(
  args: readonly string[],
  files: Readonly<Record<string, string>> = {},
  stdin?: string,
): Promise<Answer> {
  const run = await medlar([...args], { ...files }, stdin);
  if (run.code !== 0) throw new Error(`exit ${String(run.code)}: ${run.stderr}\n${run.stdout}`);
  return run.json;
}

export async function planFolder(
  files: Readonly<Record<string, string>>,
  today = TODAY,
): Promise<Plan> {
  return (await answer(['plan', '--json', '--today', today], files));
}

export interface Setting {
  /** Place, for the publishers of that place to lead. */
  readonly where?: string;
  /** The soil report, as text. */
  readonly soil?: string;
  /** What the store sells; ammonium sulphate when left out. */
  readonly bags?: readonly string[];
}

/** An orchard of one plant, season 2026: bud break 12 April, first frost 12 October. */
export async function onePlant(facts: string, setting: Setting = {}): Promise<Plan> {
  const { where, soil, bags = ['Sulphate of ammonia, 21-0-0 +24S, 10 lb, $20'] } = setting;
  const lines = ['orchard: One plant'];
  if (where !== undefined) lines.push(`where: ${where}`);
  lines.push('bud-break: 12 April', 'first-frost: 12 October');
  if (soil !== undefined) lines.push('soil:', '  north bed: soil/report.txt');
  lines.push('trees:', `  Number one: ${facts}${soil === undefined ? '' : ', north bed'}`, 'store:');
  lines.push(...bags.map((bag) => `  - ${bag}`), '');
  const files: Record<string, string> = { 'orchard.yaml': lines.join('\n') };
  if (soil !== undefined) files['soil/report.txt'] = soil;
  return planFolder(files);
}

export function only(plan: Plan): Tree {
  const [tree] = plan.result.trees;
  if (tree === undefined || plan.result.trees.length !== 1) throw new Error('one plant expected');
  return tree;
}

export async function readReport(
  text: string,
  files: Readonly<Record<string, string>> = {},
): Promise<readonly Reading[]> {
  const read = (await answer(['read', '--json', '-'], files, text)) as Read;
  return read.result.samples.flatMap((sample) => sample.readings);
}

export function reading(readings: readonly Reading[], item: string): Reading {
  const found = readings.filter((one) => one.item === item);
  const [first] = found;
  if (first === undefined || found.length !== 1) {
    throw new Error(`${String(found.length)} readings of ${item}`);
  }
  return first;
}

// ── Looking ──────────────────────────────────────────────────────────────────

/** Grams of nitrogen that the answer shows under a source. */
export function nitrogenBy(plan: Plan, source: string): number[] {
  return Object.values(plan.figures)
    .filter((figure) => figure.of === 'N' && figure.unit === 'g' && figure.cite.source === source)
    .map((figure) => figure.value);
}

/** A figure in grams; a list of figures where the print can be taken in more than one way. */
type Printed = number | readonly number[];

function shows(values: readonly number[], printed: Printed): boolean {
  const wanted = typeof printed === 'number' ? [printed] : printed;
  return wanted.some((grams) => values.some((value) => Math.abs(value - grams) < 0.05));
}

type Rule = readonly [facts: string, grams: readonly Printed[], setting?: Setting];

/** Each rule's printed figures must stand among the answer's figures, under that source. */
export function expectFigures(source: string, rules: readonly Rule[]): void {
  for (const [facts, grams, setting] of rules) {
    test(`${facts}: ${grams.map(label).join(' and ')}`, async () => {
      const values = nitrogenBy(await onePlant(facts, setting), source);
      for (const printed of grams) {
        expect(shows(values, printed), `${label(printed)} among ${values.join(', ')}`).toBe(true);
      }
    });
  }
}

function label(printed: Printed): string {
  const all = typeof printed === 'number' ? [printed] : printed;
  return all.map((grams) => `${grams.toFixed(1)} g`).join(' or ');
}

type Need = readonly [facts: string, need: Partial<Amounts>, setting?: Setting];

/** The need itself, where one procedure must end at a printed figure. */
export function expectNeeds(needs: readonly Need[]): void {
  for (const [facts, need, setting] of needs) {
    const wanted = Object.entries(need) as [keyof Amounts, number][];
    const said = wanted.map(([what, grams]) => `${grams.toFixed(1)} g ${what}`).join(', ');
    const soil = setting?.soil === undefined ? '' : ` (${setting.soil.replaceAll('\n', '; ')})`;
    test(`${facts}${soil}: needs ${said}`, async () => {
      const tree = only(await onePlant(facts, setting));
      for (const [what, grams] of wanted) {
        expect(Math.abs(tree.need[what] - grams), `${what} ${String(tree.need[what])}`).toBeLessThan(0.1);
      }
    });
  }
}

type Target = 'far-below' | 'below' | 'at' | 'above';
type Band = readonly [value: number, target: Target];

interface Scale {
  readonly item: string;
  /** The line as a laboratory prints it; `#` stands for the value. */
  readonly line: string;
  readonly bands: readonly Band[];
}

/** Values at, just under and just over each printed edge, several items to one report. */
export function expectTargets(
  scales: readonly Scale[],
  heading = '',
  files: Readonly<Record<string, string>> = {},
): void {
  const reports = new Map<number, Promise<readonly Reading[]>>();
  const report = (row: number): Promise<readonly Reading[]> => {
    const asked = reports.get(row);
    if (asked !== undefined) return asked;
    const lines = scales.flatMap(({ line, bands }) => {
      const band = bands[row];
      return band === undefined ? [] : [line.replace('#', String(band[0]))];
    });
    const text = [...(heading === '' ? [] : [heading]), ...lines, ''].join('\n');
    const fresh = readReport(text, files);
    reports.set(row, fresh);
    return fresh;
  };
  for (const { item, line, bands } of scales) {
    bands.forEach(([value, target], row) => {
      const name = [heading, line.replace('#', String(value))].filter((part) => part !== '');
      test(`${name.join(', ')}: ${target}`, async () => {
        expect(reading(await report(row), item).target).toBe(target);
      });
    });
  }
}

type Range = readonly [crop: string, what: string, low: number, high: number, unit: string];

interface Row {
  readonly table: string;
  readonly what: string;
  readonly value: number | null;
  readonly unit: string | null;
}

/** Leaf ranges, wanted growth and what a crop takes off, as `sources` lists them for one publication. */
export function expectTissue(id: string, tables: { readonly leaf?: readonly Range[]; readonly growth?: readonly Range[]; readonly removal?: readonly Range[] }): void {
  for (const [table, ranges] of Object.entries(tables)) {
    for (const [crop, what, low, high, unit] of ranges) {
      test(`${table}: ${crop}, ${what} ${low.toPrecision(4)} to ${high.toPrecision(4)} ${unit}`, async () => {
        const { result } = await answer(['sources', id, '--json']);
        const found = (result.sources as { id: string; rows?: Row[] }[]).find((s) => s.id === id)?.rows ?? [];
        const names = [crop, CROP_WORDS[crop] ?? crop];
        const age = (text: string): boolean => (table === 'growth' ? text.includes(' not bearing ') === (what === 'not bearing') : text.split(/[ ,()]+/).includes(what));
        const mine = found.filter((r) => r.table === table && age(r.what) && names.some((name) => new RegExp(`[(, ]${name}[,)]`).test(r.what)));
        const ends = (end: string): number[] => mine.filter((r) => r.what.endsWith(end) && r.unit?.startsWith(unit)).map((r) => r.value!);
        const near = (x: number) => (y: number): boolean => Math.abs(x - y) <= 1e-4 * Math.max(1, Math.abs(x));
        expect(ends('low').some(near(low)), `${String(low)} among ${ends('low').join(', ')}`).toBe(true);
        expect(ends('high').some(near(high)), `${String(high)} among ${ends('high').join(', ')}`).toBe(true);
      });
    }
  }
}
