/** A feed in water: how much of each bag makes so strong a litre, and whether that dissolves and stays dissolved. */
import type { Bag } from '../orchard/bag.ts';
import type { MixingFault } from '../orchard/mixing.ts';
import { mixingFaults } from '../orchard/mixing.ts';
import { SOLUBILITIES, TAP_CELSIUS } from '../tables/solubility.ts';

/** g of it that a litre of tap water takes; null where no figure is held. */
export const dissolves = ({ material }: Pick<Bag, 'material'>): number | null => SOLUBILITIES.find((s) => s.material === material?.id)?.at.find(([celsius]) => celsius === TAP_CELSIUS)?.[1] ?? null;

/** Why a bag is no feed for the can: coated grains let nothing go, and what grew or lived leaves sludge. */
export const undissolved = ({ slow, organic, liquid }: Pick<Bag, 'slow' | 'organic' | 'liquid'>): 'slow' | 'organic' | null => (liquid ? null : slow ? 'slow' : organic !== null ? 'organic' : null);

/** Whether its label or its kind says that it dissolves. */
export const isSoluble = (bag: Bag): boolean => bag.liquid || bag.soluble === true || dissolves(bag) !== null;

/** What clouds or spoils the can. */
export const inOneCan = (bags: readonly Bag[]): MixingFault[] => mixingFaults(bags).filter((f) => f.rule !== 'fresh');
