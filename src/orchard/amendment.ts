/** A bag of lime or sulphur as its label says it: what it is, and how strong. */
import type { LimeMaterial } from '../tables/lime.ts';
import { CAO_IN_CARBONATE, LIME_MATERIALS } from '../tables/lime.ts';

export type Amendment = {
  readonly kind: 'lime' | 'sulphur';
  /** Calcium carbonate equivalent, or sulphur, as a share of one. */
  readonly strength: number;
  readonly dolomitic: boolean;
  /** Hydrated or burnt: it burns skin, eyes and roots, and is never planned. */
  readonly burns: boolean;
};

const CCE = /\b(?:e?cce?|tnv|calcium carbonate equivalent) *:? *(\d+(?:[.,]\d+)?) *%?|(\d+(?:[.,]\d+)?) *%? *(?:e?cce?|caco3|calcium carbonate)\b/i;
/** The neutralising value of British and German labels, as % of calcium oxide. */
const NV = /\b(?:nv|neutrali[sz]ing value) *:? *(\d+(?:[.,]\d+)?) *%?|(\d+(?:[.,]\d+)?) *% *cao\b/i;
const PERCENT = /(\d+(?:[.,]\d+)?) *%/;
const SULPHUR = /\b(?:sul(?:ph|f)ur|schwefel)\b/i;

/** No carbonate is stronger than pure dolomite; a lime above that is hydrated or burnt, whatever it is called. */
const STRONGEST_CARBONATE = 1.15;

const share = (m: RegExpExecArray | null): number | null => (m ? Number((m[1] ?? m[2]!).replace(',', '.')) / 100 : null);

/** Null for a label that names neither; nitrate of lime, lime sulphur and gypsum do not change the pH as lime or sulphur do. */
export function amendmentOf(label: string): Amendment | null {
  const text = label.toLowerCase();
  if (/nitrate|gypsum|lime[- ]sul/.test(text)) return null;
  const material: LimeMaterial | undefined = LIME_MATERIALS.find((m) => m.names.some((n) => new RegExp(`(?:^|[^\\p{L}])${n}(?:$|[^\\p{L}])`, 'u').test(text)));
  if (material) {
    const nv = share(NV.exec(label));
    const strength = share(CCE.exec(label)) ?? (nv === null ? material.cce / 100 : nv / (CAO_IN_CARBONATE.value / 100));
    return { kind: 'lime', strength, dolomitic: material.dolomitic === true, burns: material.burns === true || strength > STRONGEST_CARBONATE };
  }
  if (!SULPHUR.test(text)) return null;
  return { kind: 'sulphur', strength: share(PERCENT.exec(label)) ?? 1, dolomitic: false, burns: false };
}
