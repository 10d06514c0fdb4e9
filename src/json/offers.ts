/** Bags held against one orchard's season by the plan's own rules: what each alone would bring, and what is still wanted. */
import type { Offer } from '../bags/shop.ts';
import type { Grams } from '../bags/weigh.ts';
import { grams } from '../bags/weigh.ts';
import type { ZoneSoil } from '../gather.ts';
import type { Bag } from '../orchard/bag.ts';
import type { Entry } from '../orchard/diary.ts';
import type { Orchard } from '../orchard/load.ts';
import type { TreePlan } from '../plan.ts';
import { planSeason } from '../plan.ts';
import type { Question } from '../reason/notice.ts';
import type { Day } from '../units/date.ts';
import type { Nutrient } from '../units/substance.ts';

/** Each bag alone for what the season of the whole orchard still wants, by the plan's own rules. */
export function offersFor(orchard: Orchard, zones: readonly ZoneSoil[], today: Day, bags: readonly Bag[], diary: readonly Entry[] = []): { offers: Offer[]; questions: readonly Question[] } {
  let questions: readonly Question[] = [];
  const forTubs = tubWeights(orchard, zones, today, bags, diary);
  const offers = bags.map((bag): Offer => {
    const plan = planSeason({ ...orchard, store: [bag] }, zones, today, { diary, known: [...orchard.shed, ...orchard.store] });
    questions = plan.questions;
    const fed = plan.trees.filter((t) => t.need.verdict === 'feed');
    const total = (of: (t: (typeof fed)[number]) => number): number => fed.reduce((sum, t) => sum + t.tree.count * of(t), 0);
    const brings = (t: (typeof fed)[number], n: Nutrient): number => weightOf(t, bag) * bag.grade[n];
    // What the diary has and what the shed brings is off the need.
    const wants = (t: (typeof fed)[number], n: Nutrient): number => Math.max(0, t.need[n].value - (t.supplied[n] - brings(t, n)));
    const beyond = (t: (typeof fed)[number], n: Nutrient): number => Math.max(0, brings(t, n) - wants(t, n));
    return {
      bag, usedG: total((t) => weightOf(t, bag)), tubG: forTubs.get(bag) ?? 0, supplied: grams((n) => total((t) => brings(t, n))), over: grams((n) => total((t) => beyond(t, n))),
      short: grams((n) => total((t) => Math.max(0, wants(t, n) - brings(t, n)))), wanted: grams((n) => total((t) => wants(t, n))),
      untested: untestedIn(zones),
      // A gram a plant is a trace.
      unwanted: grams((n) => total((t) => (wants(t, n) === 0 && beyond(t, n) > 1 ? beyond(t, n) : 0))),
    };
  });
  return { offers, questions };
}

/** Grams of a bag for one plant, spread or in its water. */
const weightOf = ({ feeds, dilute }: TreePlan, bag: Bag): number => feeds.reduce((sum, f) => sum + (f.bag === bag ? f.g : 0), 0) + (dilute?.bag === bag ? dilute.times * dilute.g.value : 0);

/** What the tubs alone would take of each bag, the best of all of them chosen for each. */
function tubWeights(orchard: Orchard, zones: readonly ZoneSoil[], today: Day, store: readonly Bag[], diary: readonly Entry[]): ReadonlyMap<Bag, number> {
  const tubs = orchard.trees.filter((t) => t.tub !== undefined);
  if (tubs.length === 0) return new Map();
  const plan = planSeason({ ...orchard, trees: tubs, store }, zones, today, { diary, known: [...orchard.shed, ...orchard.store] });
  return new Map(store.map((bag) => [bag, plan.trees.reduce((sum, t) => sum + t.tree.count * weightOf(t, bag), 0)]));
}

/** What no soil test of this orchard rates. */
function untestedIn(zones: readonly ZoneSoil[]): Nutrient[] {
  const rated = (item: string): boolean => zones.some((z) => z.soil.rated.some((r) => r.reading.item === item && r.target !== null));
  return [...(rated('phosphorus') ? [] : (['P2O5'] as const)), ...(rated('potassium') ? [] : (['K2O'] as const))];
}

/** What the plants in the ground still want beside what stands in the shed; tubs take a feed of their own. */
export function wantedInGround(orchard: Orchard, zones: readonly ZoneSoil[], today: Day, diary: readonly Entry[]): Grams {
  const { trees } = planSeason({ ...orchard, store: [] }, zones, today, { diary, known: [...orchard.shed, ...orchard.store] });
  const still = (t: (typeof trees)[number], n: Nutrient): number => t.need[n].value - t.supplied[n];
  return grams((n) => trees.filter((t) => t.tree.tub === undefined && t.need.verdict === 'feed').reduce((sum, t) => sum + t.tree.count * Math.max(0, still(t, n)), 0));
}
