/** The answer of `plan`. Amounts of `trees` are for one plant; `buy` is for the orchard. */
import { limeOfYear } from '../bags/acidity.ts';
import type { Feed } from '../bags/doses.ts';
import type { Bag } from '../orchard/bag.ts';
import type { Plan, TreePlan } from '../plan.ts';
import { uncertaintyOf } from '../need/uncertain.ts';
import type { Figure } from '../reason/figure.ts';
import { NUTRIENTS } from '../units/substance.ts';
import type { Nutrient } from '../units/substance.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import type { Collector } from './figures.ts';
import { phJson } from './ph-json.ts';

const each = <T>(of: (n: Nutrient) => T): Record<Nutrient, T> => Object.fromEntries(NUTRIENTS.map((n) => [n, of(n)])) as Record<Nutrient, T>;

export function planJson(plan: Plan, figures: Collector): unknown {
  return {
    season: plan.season.year,
    lastNitrogen: plan.season.lastNitrogen,
    lastNitrogenWhy: figures.id(plan.season.lastFigure),
    trees: plan.trees.map((t) => treeJson(t, [...plan.orchard.shed, ...plan.orchard.store], figures)),
    days: plan.days.map((d) => ({
      number: d.number, from: d.from, until: d.until, phase: d.phase,
      doses: d.doses.map(({ plan: t, feed }) => ({ tree: t.tree.name, count: t.tree.count, bag: feed.bag.label, g: feed.g, mL: feed.mL })),
    })),
    buy: plan.buy.map((p) => ({ bag: p.bag.label, needG: p.needG, bags: p.bags, cost: p.cost, leftG: p.leftG })),
    ph: plan.trees.flatMap((t) => phRows(t, plan.orchard.where.language, figures)),
  };
}

/** One row a tree whose soil was tested. */
export function phRows(t: TreePlan, language: Language, figures: Collector): unknown[] {
  if (!t.ph) return [];
  return [phJson(t.ph.plan, { zone: t.ph.zone, tree: t.tree.name, material: materialOf(t.ph, language), g: t.ph.g, window: t.ph.window, curve: t.ph.curve, digIn: t.ph.bed !== undefined }, figures)];
}

/** The bag's own name, or the plain material where none is listed. */
export function materialOf({ bag, plan }: NonNullable<TreePlan['ph']>, language: Language): string | null {
  if (plan.verdict !== 'lime' && plan.verdict !== 'sulphur') return null;
  return bag?.label ?? say(language, 'plan', `any-${plan.verdict}`);
}

function treeJson(t: TreePlan, bags: readonly Bag[], figures: Collector): unknown {
  const { need } = t;
  const feedLime = limeOfYear(t, bags);
  const uncertain = uncertaintyOf(t.facts, need);
  const ids = (pair: readonly [Figure, Figure]): [string, string] => [figures.id(pair[0]), figures.id(pair[1])];
  const result = {
    name: t.tree.name, count: t.tree.count, verdict: need.verdict,
    need: each((n) => need[n].value), needWhy: each((n) => figures.id(need[n])),
    span: each((n): [number, number] => [need.span[n][0].value, need.span[n][1].value]), spanWhy: each((n) => ids(need.span[n])),
    MgO: need.MgO?.value ?? null, ...(need.MgO ? { MgOWhy: figures.id(need.MgO) } : {}),
    lead: need.nitrogen.lead ? { source: need.nitrogen.lead.rule.source, rule: need.nitrogen.lead.rule.id, why: need.nitrogen.lead.why } : null,
    rulesWhy: need.rules.map((r) => figures.id(r)),
    ...(need.nitrogen.ifBelow && need.verdict === 'feed' ? { if: { code: 'shoots-below', belowM: need.nitrogen.ifBelow.value }, ifWhy: figures.id(need.nitrogen.ifBelow) } : {}),
    ...(need.nitrogen.none ? { none: need.nitrogen.none } : {}),
    stops: need.stops.map((s) => s.id), last: t.last.day, lastWhy: figures.id(t.last.why),
    ...(t.tree.tub === undefined
      ? { crown: { diameterM: t.facts.crown.diameter.value, m2: t.facts.crown.area.value }, crownWhy: { diameterM: figures.id(t.facts.crown.diameter), m2: figures.id(t.facts.crown.area) } }
      : { crown: null }),
    feeds: t.feeds.map((f) => feedJson(f, figures)),
    dilute: t.dilute && { bag: t.dilute.bag.label, g: t.dilute.g.value, gWhy: figures.id(t.dilute.g), waterL: t.dilute.waterL, everyWeeks: t.dilute.weeks, times: t.dilute.times, from: t.dilute.from, until: t.dilute.until },
    fed: t.fed.map((f) => ({ date: f.date, bag: f.bag, g: f.g })),
    supplied: t.supplied, over: t.over, short: t.short,
    feedLime: feedLime?.value ?? null, ...(feedLime ? { feedLimeWhy: figures.id(feedLime) } : {}),
    range: uncertain.range, narrow: uncertain.narrow ? { question: uncertain.narrow.question.code, of: uncertain.narrow.of, range: uncertain.narrow.range } : null,
  };
  return result;
}

function feedJson(f: Feed, figures: Collector): unknown {
  return {
    bag: f.bag.label, g: f.g, gExact: f.planned.value, gExactWhy: figures.id(f.planned), mL: f.mL,
    from: f.window.from, fromWhy: figures.id(f.window.why), until: f.window.until, phase: f.window.phase,
    ring: f.ring && { fromM: f.ring.from.value, toM: f.ring.to.value, m2: f.ring.area.value },
    ...(f.ring ? { ringWhy: { fromM: figures.id(f.ring.from), toM: figures.id(f.ring.to), m2: figures.id(f.ring.area) } } : {}),
  };
}
