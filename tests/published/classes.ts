// Shared by the tests of published rating tables: classes as printed, each tried at its middle and just at its printed edges.
import { expect, test } from 'vitest';
import { answer } from './helpers.ts';

type Rating = 'very-low' | 'low' | 'medium' | 'optimum' | 'high' | 'very-high';
type Target = 'far-below' | 'below' | 'at' | 'above';
/** Null where the publication's words do not settle it; nothing is then looked for. */
export type Class = readonly [printed: string, rating: Rating | null, target: Target | null];

interface Rated {
  readonly item: string;
  readonly rating: string | null;
  readonly target: string | null;
}

export interface Table {
  readonly where?: string;
  /** The only tree of the orchard. */
  readonly tree?: string;
  /** Lines of the report that the table asks for: texture, exchange capacity, pH. */
  readonly beside?: string;
  readonly item: string;
  /** The line as a laboratory prints it; `#` stands for the value. */
  readonly line: string;
  readonly classes: readonly Class[];
}

const MET: Readonly<Record<Rating, Target>> = { 'very-low': 'far-below', low: 'below', medium: 'below', optimum: 'at', high: 'above', 'very-high': 'above' };

/** Words that have only one sense: very low far below; low and medium below; optimum at; high and very high above. */
export function words(...classes: readonly (readonly [printed: string, rating: Rating])[]): Class[] {
  return classes.map(([printed, rating]) => [printed, rating, MET[rating]]);
}

/** "25-45" is tried at 25, 35 and 45; "<50" at 25 and 49.9; ">=24" at 24 and 29; ">137" at 137.1 and 164; "36" alone at 36. */
export function tried(printed: string): number[] {
  const [, sign, low = '', high] = /^(<=|<|>=|>|)([\d.]+)(?:-([\d.]+))?$/.exec(printed) ?? [];
  if (sign === undefined) throw new Error(`not a printed class: ${printed}`);
  const places = Math.max(...[low, high ?? ''].map((n) => n.split('.')[1]?.length ?? 0));
  const at = (value: number): number => Number(value.toFixed(places + 1));
  const near = 10 ** -(places + 1);
  const edge = Number(low);
  if (high !== undefined) {
    const top = Number(high);
    return [...new Set([edge, at((edge + top) / 2), top])].filter((value) => value > 0);
  }
  if (sign === '<') return [at(edge / 2), at(edge - near)];
  if (sign === '<=') return [at(edge / 2), edge];
  if (sign === '>=') return [edge, at(edge * 1.2)];
  if (sign === '>') return [at(edge + near), at(edge * 1.2)];
  return [edge];
}

export function orchard(where: string, tree = 'apple, planted 2015, 4 m across'): Record<string, string> {
  const south = /New Zealand|Brazil/.test(where);
  const frost = south ? 'bud-break: 20 September\nfirst-frost: 20 May' : 'bud-break: 12 April\nfirst-frost: 12 October';
  return { 'orchard.yaml': `orchard: One plant\nwhere: ${where}\n${frost}\ntrees:\n  Number one: ${tree}\n` };
}

export function expectClasses(tables: readonly Table[]): void {
  for (const { where, tree, beside, item, line, classes } of tables) {
    const files = where === undefined ? {} : orchard(where, tree);
    for (const [printed, rating, target] of classes) {
      for (const value of tried(printed)) {
        const text = [...(beside === undefined ? [] : [beside]), line.replace('#', String(value)), ''].join('\n');
        const place = [where, tree?.split(',')[0]].filter((part) => part !== undefined).join(', ');
        test(`${place}: ${text.trim().replaceAll('\n', '; ')} (${printed}): ${rating ?? '-'}, ${target ?? '-'}`, async () => {
          const { result } = (await answer(['read', '--json', '-'], files, text)) as { result: { samples: { readings: Rated[] }[] } };
          const found = result.samples.flatMap((sample) => sample.readings).filter((one) => one.item === item);
          expect(found).toHaveLength(1);
          const got = { rating: found[0]!.rating, target: found[0]!.target };
          expect(got).toEqual({ rating: rating ?? got.rating, target: target ?? got.target });
        });
      }
    }
  }
}
