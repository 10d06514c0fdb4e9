/**
 * A figure is a number that remembers where it came from. Published steps wrap it once;
 * the arithmetic inside a step is plain. A figure without a step and a cite does not compile.
 */
import type { Substance } from '../units/substance.ts';
import type { Unit } from '../units/units.ts';
import type { SaidId, StepId } from '../words/words.ts';

/**
 * How far a figure can be trusted: `read` in the publication or a copy, `derived` from it by arithmetic,
 * `memory` recalled and not yet seen, `practice` common practice without a source, `judgement` our own.
 */
export type Mark = 'read' | 'derived' | 'memory' | 'practice' | 'judgement';
export const MARKS: readonly Mark[] = ['read', 'derived', 'memory', 'practice', 'judgement'];

/** The publication (a key of the sources table), the place in it, and the mark. For a judgement, `at` keys its reason in words. */
export type Cite = { readonly source: string; readonly at: string; readonly mark: Mark };

/** What another publication says of the same, and whose it is. */
export type Otherwise = { readonly said: SaidId; readonly region: string; readonly label?: 'orchard' | 'weak' };

export type Figure<U extends Unit = Unit, S extends Substance = Substance> = {
  readonly value: number;
  readonly unit: U;
  readonly of: S;
  readonly step: StepId;
  readonly from: readonly Figure[];
  readonly cite: Cite;
  /** Where publications disagree and no number tells how. */
  readonly others?: readonly Otherwise[];
};

/** Wraps a value. Throws a RangeError for a value that is not finite, so that no NaN can reach paper. */
export function figure<U extends Unit, S extends Substance>(
  value: number, unit: U, of: S, step: StepId, cite: Cite, from: readonly Figure[] = [],
): Figure<U, S> {
  if (!Number.isFinite(value)) throw new RangeError(`${step} gave ${value} ${unit} of ${of}`);
  return { value, unit, of, step, from, cite };
}

/** What the grower wrote, told by the line it stands on. */
export function told<U extends Unit, S extends Substance>(value: number, unit: U, of: S, at: string): Figure<U, S> {
  return figure(value, unit, of, 'told', { source: 'grower', at, mark: 'read' });
}

/** The marks that decided a figure: its own and those of what it came from; of several candidates only the one that was taken. */
function marksOf(root: Figure): Set<Mark> {
  const seen = new Set<Figure>();
  const marks = new Set<Mark>();
  const walk = (f: Figure): void => {
    if (seen.has(f)) return;
    seen.add(f);
    marks.add(f.cite.mark);
    (f.step === 'smallest' ? f.from.filter((x) => x.value === f.value) : f.from).forEach(walk);
  };
  walk(root);
  return marks;
}

/** Whether memory or our own judgement decided a figure: on paper it gets a dagger. */
export const isWeak = (f: Figure): boolean => marksOf(f).has('memory') || marksOf(f).has('judgement');
