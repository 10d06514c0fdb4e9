/** What a rule may hold, checked: those inside, and those of the grower's own `rules.yaml`. */
import * as z from 'zod/mini';
import { MARKS } from '../reason/figure.ts';
import { CROP_WORDS, SIZES } from './crops.ts';
import type { Rule } from './rule.ts';
import { isRate, RULE_BASES, RULE_UNITS } from './rule.ts';

const positive = z.number().check(z.nonnegative(), z.refine(Number.isFinite));
const pair = z.tuple([positive, positive]);

/** The keys of a rule and what each may hold: of those inside, and of the grower's own file. */
export const ruleShape = z.strictObject({
  id: z.string().check(z.minLength(1)),
  source: z.string().check(z.minLength(1)),
  crops: z.array(z.enum([...new Set(Object.values(CROP_WORDS))])).check(z.minLength(1)),
  kinds: z.optional(z.array(z.enum(Object.keys(CROP_WORDS)))),
  size: z.optional(z.enum(SIZES)),
  region: z.string(),
  climate: z.optional(z.literal('warm')),
  by: z.enum(RULE_BASES),
  gives: z.strictObject({ of: z.enum(['N', 'P2O5', 'K2O', 'product']), unit: z.enum(RULE_UNITS), percentN: z.optional(z.number().check(z.positive(), z.lte(82))), ozPerCup: z.optional(z.number().check(z.positive())) }),
  base: z.optional(pair),
  low: positive,
  high: z.optional(positive),
  cap: z.optional(positive),
  years: z.optional(pair),
  first: z.optional(z.union([z.literal(0), z.literal(1)])),
  doses: z.optional(z.number().check(z.positive(), z.lte(12))),
  when: z.optional(z.literal('after-harvest')),
  ground: z.optional(z.enum(['bare', 'grass'])),
  bearing: z.optional(z.boolean()),
  spacingFt: z.optional(positive),
  if: z.optional(z.enum(['growth-short', 'no-soil-test'])),
  label: z.optional(z.enum(['orchard', 'old', 'weak'])),
  cite: z.strictObject({ source: z.string(), at: z.string().check(z.minLength(1)), mark: z.enum(MARKS) }),
});

/** What the keys of one rule must be to each other; what is wrong is told by a key of words. */
export function withSense<T extends z.ZodMiniType<Pick<Rule, 'gives' | 'low' | 'high' | 'years' | 'by'>>>(shape: T): T {
  return shape.check(
    z.refine((r) => r.gives.of !== 'product' || r.gives.percentN !== undefined, { path: ['gives'], message: 'rule-percent' }),
    z.refine((r) => r.gives.unit !== 'cup' || r.gives.ozPerCup !== undefined, { path: ['gives'], message: 'rule-cup' }),
    z.refine((r) => r.high === undefined || r.high >= r.low, { path: ['high'], message: 'rule-span' }),
    z.refine((r) => r.years === undefined || r.years[1] >= r.years[0], { path: ['years'], message: 'rule-years' }),
    z.refine((r) => (r.by === 'area') === isRate(r), { path: ['gives'], message: 'rule-area' }),
  );
}
