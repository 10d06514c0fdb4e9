/** A bag of lime or sulphur as its label says it: what it is, and how strong. */
import type { LimeLabel, Reader } from './lime-label.ts';
import { limeLabel } from './lime-label.ts';

export type Amendment = {
  readonly kind: 'lime' | 'sulphur';
  /** Effective calcium carbonate equivalent, or sulphur, as a share of one. */
  readonly strength: number;
  readonly dolomitic: boolean;
  /** Hydrated or burnt: it burns skin, eyes and roots, and is never planned. */
  readonly burns: boolean;
  /** How a lime's strength was read. */
  readonly lime?: LimeLabel;
};

const PERCENT = /(\d+(?:[.,]\d+)?) *%/;
const SULPHUR = /\b(?:sul(?:ph|f)ur|schwefel|azufre|soufre|zolfo|enxofre)\b/i;

const share = (m: RegExpExecArray | null): number | null => (m ? Number(m[1]!.replace(',', '.')) / 100 : null);

/** Null for a label that names neither; nitrate of lime, lime sulphur and gypsum do not change the pH as lime or sulphur do. */
export function amendmentOf(label: string, reader: Reader): Amendment | null {
  if (/nitrat|gypsum|lime[- ]sul|sulfoc[aá]lc/i.test(label)) return null;
  const lime = limeLabel(label, reader);
  if (lime) return { kind: 'lime', strength: lime.strength.value / 100, dolomitic: lime.dolomitic, burns: lime.burns, lime };
  if (!SULPHUR.test(label)) return null;
  return { kind: 'sulphur', strength: share(PERCENT.exec(label)) ?? 1, dolomitic: false, burns: false };
}
