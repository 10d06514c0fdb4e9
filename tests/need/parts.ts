// Shared by the tests that ask the parts of a need themselves: the facts of one tree on ten square metres of crown, season 2026.
import type { Facts } from '../../src/need/facts.ts';
import { isYoung } from '../../src/need/facts.ts';
import { crownOf } from '../../src/orchard/geometry.ts';
import { loadOrchard } from '../../src/orchard/load.ts';
import type { Rated } from '../../src/rating/rate.ts';
import { told } from '../../src/reason/figure.ts';

const SEASON = 2026;
/** Ten square metres under a round crown. */
export const ACROSS = Math.sqrt(40 / Math.PI);
export type Value = { item: string; target?: string; value?: number; unit?: string; method?: string; word?: string; rating?: string; by?: string };

const rated = ({ item, target = null, value = null, unit = 'mg/kg', method = null, word = null, rating = null, by = 'word' }: Partial<Record<keyof Value, unknown>>): Rated =>
  ({ reading: { item, value, unit, method, lab: { rating: word }, place: { line: 1 } }, mgPerKg: value === null ? null : told(value as number, 'mg/kg', 'soil', 'test'), rating, target, by, cite: null, ours: null, near: null }) as unknown as Rated;

export function facts(line: string, soil: readonly Value[] = [], more: Partial<Facts> = {}, where = 'Ohio, US'): Facts {
  const orchard = loadOrchard(`where: ${where}\ntrees:\n  A: ${line}\n`, 'orchard.yaml').orchard!;
  const tree = { ...orchard.trees[0]!, across: ACROSS };
  const years = tree.planted ? SEASON - tree.planted.year : null;
  return {
    tree, crop: tree.fedAs ?? tree.crop, rules: [], season: SEASON, years, young: isYoung(tree, years), crown: crownOf(tree, years), where: orchard.where, advice: [], byLab: false, lastN: null,
    soil: soil.length === 0 ? null : { rated: soil.map(rated), heaviness: null }, ...more,
  };
}
