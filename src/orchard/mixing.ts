/** Which bags must not meet, and what each can do to whom handles or finds it. */
import type { Cite } from '../reason/figure.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Hazard, MaterialClass, Mixing, MixingRule } from '../tables/mixing.ts';
import { HAZARDS, MATERIAL_CLASSES, MIXING } from '../tables/mixing.ts';
import { MANURE_TO_HARVEST } from '../tables/release.ts';
import type { NoticeId } from '../words/words.ts';
import type { Bag } from './bag.ts';
import { bagName } from './bag.ts';

export type MixingFault = { readonly a: Bag; readonly b: Bag; readonly rule: MixingRule; readonly why: NoticeId; readonly cite: Cite };

/** Lime and ash also where they come as an amendment; `any` is what feeds. */
function isOf(bag: Bag, of: MaterialClass): boolean {
  if (of === 'any') return !bag.amends;
  if (of === 'lime') return bag.amends?.kind === 'lime' || bag.organic === 'ash';
  return bag.material !== null && (MATERIAL_CLASSES[of] as readonly string[]).includes(bag.material.id);
}

/** The first row of the table for each two bags, in the order of the bags; the same material twice is one. */
export function mixingFaults(bags: readonly Bag[]): MixingFault[] {
  return bags.flatMap((a, i) => bags.slice(i + 1).flatMap((b): MixingFault[] => {
    if (a.material !== null && a.material === b.material) return [];
    const row = MIXING.find((m: Mixing) => (isOf(a, m.a) && isOf(b, m.b)) || (isOf(a, m.b) && isOf(b, m.a)));
    return row ? [{ a, b, rule: row.rule, why: row.why, cite: row.cite }] : [];
  }));
}

export const mixingNotice = ({ a, b, why, rule }: MixingFault): Notice => notice(why, rule === 'never' ? 'warning' : 'note', { a: bagName(a), b: bagName(b) });

/** In the order of the table. */
export function hazardsOf(bag: Bag): Hazard[] {
  const { material } = bag;
  const told: Readonly<Record<Hazard, boolean>> = {
    dogs: material?.temptsDogs === true, oxidiser: material?.oxidiser === true, dust: bag.amends?.kind === 'lime', caustic: bag.amends?.burns === true || bag.organic === 'ash' || bag.amends?.lime?.material.id === 'wood-ash',
    stock: false, 'fresh-manure': bag.fresh === true,
  };
  return (Object.keys(HAZARDS) as Hazard[]).filter((h) => told[h] || (material !== null && HAZARDS[h].materials.includes(material.id)));
}

export const hazardNotice = (bag: Bag, hazard: Hazard): Notice => notice(HAZARDS[hazard].why, 'warning', { bag: bagName(bag), ...(hazard === 'fresh-manure' ? { above: MANURE_TO_HARVEST.above, touching: MANURE_TO_HARVEST.touching } : {}) });
