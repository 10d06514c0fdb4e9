/** Whose figures lead: one publication at a time, never a mix of several. */
import type { Rule } from '../tables/rule.ts';
import { NITROGEN_RULES } from '../tables/nitrogen.ts';
import { DEFAULT_LEADS } from '../tables/leads.ts';
import { BORDERS } from '../tables/places.ts';
import type { Facts } from './facts.ts';
import { applyRule, fits } from './rules.ts';

export type Lead = {
  readonly rule: Rule;
  /** The grower's own file, the orchard's own state or country, a neighbour's publisher, or the default of the crop. */
  readonly why: 'own' | 'here' | 'near' | 'default';
  /** A nearer publication that could not be used, since it goes by a fact that nobody told. */
  readonly wants: { readonly rule: Rule; readonly fact: 'trunk' | 'height' | 'planted' | 'spacing' } | null;
};

/**
 * The rule that leads for this tree, of those that go by the tree itself or of those by ground alone; null where no publication prints one.
 * Order: `rules.yaml`; the orchard's own state or province; its country; a state or country that borders on it; the crop's default.
 */
export function leadOf(f: Facts, suits: (rule: Rule) => boolean = () => true): Lead | null {
  const usable = [...f.rules, ...NITROGEN_RULES].filter((r) => r.label === undefined && suits(r) && fits(r, f));
  const ranked = usable.map((rule) => ({ rule, ...rankOf(rule, f) })).filter((x) => x.rank < Infinity);
  // A stable sort keeps one publication's rules together, in its own order.
  ranked.sort((a, b) => a.rank - b.rank);
  const first = ranked.find(({ rule }) => applyRule(rule, f, rule.low) !== null);
  if (!first) return null;
  const before = ranked.slice(0, ranked.indexOf(first)).find(({ rule }) => rule.source !== first.rule.source);
  return { rule: first.rule, why: first.why, wants: before ? { rule: before.rule, fact: factOf(before.rule) } : null };
}

const factOf = (rule: Rule): 'trunk' | 'height' | 'planted' | 'spacing' => (rule.by === 'trunk' ? 'trunk' : rule.by === 'height' ? 'height' : rule.by === 'row' ? 'spacing' : 'planted');

function rankOf(rule: Rule, f: Facts): { rank: number; why: Lead['why'] } {
  if (f.rules.includes(rule)) return { rank: 0, why: 'own' };
  const { country, region } = f.where;
  if (region !== null && rule.region === region) return { rank: 1, why: 'here' };
  if (country !== null && rule.region === country) return { rank: 2, why: 'here' };
  const near = (BORDERS[region ?? ''] ?? []).indexOf(rule.region);
  if (near >= 0) return { rank: 10 + near, why: 'near' };
  const place = DEFAULT_LEADS.indexOf(rule.source);
  return place < 0 ? { rank: Infinity, why: 'default' } : { rank: 1e6 + place, why: 'default' };
}
