/** Whose figures lead: one publication at a time, never a mix of several. */
import type { Rule } from '../tables/rule.ts';
import { DEFAULT_LEADS } from '../tables/leads.ts';
import { BORDERS } from '../tables/places.ts';
import type { Facts } from './facts.ts';
import { applyRule, fits, leadersFor } from './rules.ts';

export type Fact = 'trunk' | 'height' | 'planted' | 'spacing';
export type Lead = {
  readonly rule: Rule;
  /** The grower's own file, the orchard's own state or country, a neighbour's publisher, or the default of the crop. */
  readonly why: 'own' | 'here' | 'near' | 'default';
  /** A nearer publication that could not be used, since it goes by a fact that nobody told. */
  readonly wants: { readonly rule: Rule; readonly fact: Fact } | null;
};

/**
 * The rule that leads for this tree, of those that go by the tree itself or of those by ground alone; null where no publication prints one.
 * Order: `rules.yaml`; the orchard's own state or province; its country; a state or country that borders on it; the crop's default.
 */
export function leadOf(f: Facts, suits: (rule: Rule) => boolean = (): boolean => true, neighbours = true): Lead | null {
  const usable = leadersFor(f).filter((r) => suits(r) && (fits(r, f) || goesOn(r, f)));
  // A rule for this kind alone goes before one for the crop.
  const ranked = usable.flatMap((rule) => {
    const place = rankOf(rule, f);
    return place && (neighbours || place.why !== 'near') ? [{ rule, why: place.why, rank: place.rank - (rule.kinds ? 0.5 : 0) + (fits(rule, f) ? 0 : 0.25) }] : [];
  });
  // A stable sort keeps one publication's rules together, in its own order.
  ranked.sort((a, b) => a.rank - b.rank);
  const first = ranked.find(({ rule }) => applyRule(rule, f, rule.low) !== null);
  if (!first) return null;
  const before = ranked.slice(0, ranked.indexOf(first)).find(({ rule }) => rule.source !== first.rule.source);
  return { rule: first.rule, why: first.why, wants: before ? { rule: before.rule, fact: factOf(before.rule) } : null };
}

/** The last row of a table goes on as it ended, where the plant is older than any row. */
function goesOn(rule: Rule, f: Facts): boolean {
  if (rule.by === 'years' || !rule.years) return false;
  const end = rule.years[1] - (rule.first ?? 0);
  // What is given at planting alone is no table.
  return end > 1 && end < (f.years ?? 0) && fits(rule, { ...f, years: end })
    && !leadersFor(f).some((r) => r.source === rule.source && (r.years?.[1] ?? 99) - (r.first ?? 0) > end && (r.kinds === undefined || r.kinds.includes(f.tree.word)));
}

/** Whether any publication may lead for this crop here. */
export const mayLead = (f: Facts): boolean => leadersFor(f).some((r) => rankOf(r, f) !== null);

/** The fact that the best rule for this tree goes by, where nobody told it and so no rule can be applied. */
export function wantedFact(f: Facts): Fact | null {
  const fit = leadersFor(f).find((r) => rankOf(r, f) !== null && fits(r, f) && applyRule(r, f, r.low) === null);
  return fit ? factOf(fit) : null;
}

const factOf = (rule: Rule): Fact => (rule.by === 'trunk' ? 'trunk' : rule.by === 'height' ? 'height' : rule.by === 'row' ? 'spacing' : 'planted');

/** How near a rule stands, and why; null where it may not lead. */
function rankOf(rule: Rule, f: Facts): { rank: number; why: Lead['why'] } | null {
  if (f.rules.includes(rule)) return { rank: 0, why: 'own' };
  // The States and Canada differ too much for one page to speak for all; elsewhere the country is the region.
  const { region } = f.where;
  if (rule.region === region) return { rank: 1, why: 'here' };
  const near = (BORDERS[region ?? ''] ?? []).indexOf(rule.region);
  if (near >= 0) return { rank: 10 + near, why: 'near' };
  // Where a crop has orchard rates alone, any of them may serve.
  const place = rule.label === undefined ? DEFAULT_LEADS.indexOf(rule.source) : DEFAULT_LEADS.length;
  return place < 0 ? null : { rank: 1e6 + place, why: 'default' };
}
