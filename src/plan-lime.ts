/** Lime or sulphur of each plant, and what of it is to buy. */
import type { AmendmentBag } from './bags/amend.ts';
import { amendmentBagOf, magnesiumRule, withinOwnLimit } from './bags/amend.ts';
import type { Purchase } from './bags/buy.ts';
import { purchasesOf } from './bags/buy.ts';
import { roundAmendment } from './bags/round.ts';
import type { Bag } from './orchard/bag.ts';
import { amendmentBag } from './orchard/bag.ts';
import { ringOf } from './orchard/geometry.ts';
import type { Orchard } from './orchard/load.ts';
import type { Tree } from './orchard/tree.ts';
import { curveOf } from './ph/curve.ts';
import type { PhAsk } from './ph/ph.ts';
import { phPlan } from './ph/ph.ts';
import { windowOptionsOf } from './plan-days.ts';
import type { Amended, Draft, TreePlan } from './planned.ts';
import { AMENDMENT_RETEST } from './tables/timing.ts';
import type { Day } from './units/date.ts';
import { addDays } from './units/date.ts';
import type { Season } from './when/season.ts';
import { isTold, limeWindow, plantingWindow, sulphurBedWindow, sulphurWindow } from './when/season.ts';
import { firstDay } from './when/windows.ts';
import type { Language } from './words/words.ts';
import { say } from './words/words.ts';

/** Lime or sulphur of every plant, in walking order: out of the shed while that holds a plant's whole dose. */
export function allAmended(drafts: readonly Draft[], season: Season, orchard: Orchard): (Amended | null)[] {
  const left = new Map(orchard.shed.map((b) => [b, b.left ?? Infinity]));
  const ways = new Map<string, Way | null>();
  return drafts.map((draft) => {
    let bags: readonly Bag[] = [...orchard.shed, ...orchard.store];
    for (;;) {
      const found = amendedOf(draft, season, orchard, bags, ways);
      const [bag, g] = [found?.bag ?? null, (found?.g ?? 0) * draft.facts.tree.count];
      const open = bag ? left.get(bag) : undefined;
      if (bag === null || open === undefined) return found;
      if (g <= open * (1 + 1e-9)) {
        left.set(bag, open - g);
        return found;
      }
      bags = bags.filter((b) => b !== bag);
    }
  });
}

/** What is asked of a soil for a kind of plant, however large it is: the same answer for all of that kind on it. */
type Way = Pick<Amended, 'plan' | 'curve'>;

function wayOf(ask: PhAsk, lime: AmendmentBag | null): Way | null {
  const asked = phPlan(ask);
  if (!asked) return null;
  const plan = asked.dose?.of === 'lime' && lime ? { ...asked, dose: withinOwnLimit(asked.dose, lime.amends) } : asked;
  return { plan, curve: curveOf(ask, plan) };
}

/** Lime or sulphur over the ring of one plant, or lime dug into the bed of one to come; a tub stands in its own mix and has no zone here. */
function amendedOf({ facts, need, last, zone, history }: Draft, season: Season, orchard: Orchard, bags: readonly Bag[], ways: Map<string, Way | null>): Amended | null {
  if (!zone?.ph) return null;
  const stopped = need.stops.some((s) => s.id === 'salts' || s.id === 'sodium');
  const wants = { magnesium: magnesiumRule(zone.ph, orchard.where).wants, potash: need.K2O.value > 0, ph: zone.ph.now.value };
  const [lime, sulphur] = [amendmentBagOf('lime', bags, wants), amendmentBagOf('sulphur', bags, wants)];
  const strength = { lime: lime?.amends.strength ?? 1, sulphur: sulphur?.amends.strength ?? 1 };
  const digIn = facts.bed !== undefined;
  const ask: PhAsk = { crop: facts.tree.crop, word: facts.tree.word, soil: zone.ph, strength, region: orchard.where.region, digIn, stopped, awaitsRetest: awaitsRetest(history.amended, zone.sample.taken ?? null, season.today) };
  const key = JSON.stringify({ ...ask, soil: zone.zone, own: lime?.label });
  const way = ways.get(key) ?? wayOf(ask, lime);
  ways.set(key, way);
  if (!way) return null;
  const { plan, curve } = way;
  const dug = digIn && (plan.verdict === 'lime' || plan.verdict === 'sulphur');
  const planting = facts.bed ? plantingWindow(season, facts.tree.planting!) : null;
  const window = dug ? planting && (plan.verdict === 'lime' ? planting : sulphurBedWindow(season, planting)) : plan.verdict === 'lime' ? limeWindow(season, firstDay(season, { ...windowOptionsOf(facts, need), last: last.day }), last.day) : plan.verdict === 'sulphur' ? sulphurWindow(season) : null;
  // Lime and sulphur go on the plain ring: a wider one only thins nitrogen.
  const ring = ringOf(facts.tree, facts.crown);
  const area = dug ? facts.bed?.value ?? 0 : ring.area.value;
  return {
    zone: zone.zone, plan, curve, ring, ...(dug ? { bed: facts.bed ?? null } : {}), last: [...history.amended].sort().at(-1) ?? null, bag: plan.verdict === 'lime' ? lime : plan.verdict === 'sulphur' ? sulphur : null, window,
    g: plan.dose && window ? roundAmendment(plan.dose.value * area, orchard.where.units) : 0,
  };
}

/** Whether lime or sulphur went on and no sample a year later tells what it did. Without a date of the sample, three years are waited. */
function awaitsRetest(amended: readonly Day[], taken: Day | null, today: Day): boolean {
  return amended.some((d) => (taken === null ? addDays(d, Math.round(AMENDMENT_RETEST.longest * 30.44)) > today : !isTold(d, taken)));
}

export function amendmentPurchases(plans: readonly TreePlan[], orchard: Orchard): Purchase[] {
  const plain = new Map<string, Bag>();
  const used = new Map<Bag, number>();
  for (const { ph, tree } of plans) {
    if (!ph || ph.g <= 0) continue;
    const kind = ph.plan.verdict === 'lime' ? 'lime' : 'sulphur';
    const bag: Bag = ph.bag ?? plain.get(kind) ?? unlisted(kind, tree, orchard.where.language);
    // What no bag serves is bought by itself, also where a listed bag served another plant.
    if (ph.bag === null) plain.set(kind, bag);
    used.set(bag, (used.get(bag) ?? 0) + ph.g * tree.count);
  }
  return purchasesOf(used, orchard.store);
}

/** Where no bag is listed, the plain material. */
const unlisted = (kind: 'lime' | 'sulphur', tree: Tree, language: Language): Bag =>
  amendmentBag(say(language, 'plan', `any-${kind}`), { kind, strength: 1, dolomitic: false, burns: false }, { g: null, price: null, left: null, place: tree.place, unlisted: true });
