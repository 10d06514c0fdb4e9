/**
 * The shape of a published rule for feeding a plant a year, in the unit printed, beside its reference. The grower's own
 * rules have the same shape (`rules.yaml`), checked by the same schema.
 */
import * as z from 'zod/mini';
import type { Cite } from '../reason/figure.ts';
import { MARKS } from '../reason/figure.ts';
import type { Unit } from '../units/units.ts';
import { convert, UNITS } from '../units/units.ts';
import type { Crop, Size } from './crops.ts';
import { CROP_WORDS, SIZES } from './crops.ts';

/** What the rate is multiplied by: years of age, inches of trunk, feet of height or of crown, hundreds of feet of row, ground in its own unit, or one for a plant. */
export const RULE_BASES = ['plant', 'years', 'trunk', 'height', 'canopy', 'row', 'area'] as const;
/** Weights a plant (or an inch, a foot, a year); rates of ground. `cup` needs the weight of one. */
export const RULE_UNITS = ['lb', 'oz', 'g', 'kg', 'cup', 'g/m2', 'kg/ha', 'lb/acre', 'lb/1000 sq ft', 'lb/100 sq ft'] as const satisfies readonly Unit[];
export type RuleUnit = (typeof RULE_UNITS)[number];

export type Rule = {
  readonly id: string;
  readonly source: string;
  readonly crops: readonly Crop[];
  /** The growers' words for it, where a rule is for some kinds of the crop only. */
  readonly kinds?: readonly string[] | undefined;
  readonly size?: Size | undefined;
  /** Country and state, or the word for all of a country; `climate: 'warm'` rules fit only where winters are mild. */
  readonly region: string;
  readonly climate?: 'warm' | undefined;
  readonly by: (typeof RULE_BASES)[number];
  /** A nutrient itself, or a product of so much nitrogen. */
  readonly gives: { readonly of: 'N' | 'P2O5' | 'K2O' | 'product'; readonly unit: RuleUnit; readonly percentN?: number | undefined; readonly ozPerCup?: number | undefined };
  /** Given at any age beside what grows with it. */
  readonly base?: readonly [number, number] | undefined;
  readonly low: number;
  readonly high?: number | undefined;
  /** Its own ceiling a year, in the same unit. */
  readonly cap?: number | undefined;
  /** Years since planting for which it is printed; `first: 1` where the table calls the planting year its first. */
  readonly years?: readonly [number, number] | undefined;
  readonly first?: 0 | 1 | undefined;
  /** Doses a year, where printed. */
  readonly doses?: number | undefined;
  /** Not in spring but when the crop is picked, as June-bearing strawberries are fed. */
  readonly when?: 'after-harvest' | undefined;
  readonly ground?: 'bare' | 'grass' | undefined;
  readonly bearing?: boolean | undefined;
  /** Least spacing in feet that the rate is printed for. */
  readonly spacingFt?: number | undefined;
  /** A condition that the publication prints with its rate. */
  readonly if?: 'growth-short' | 'no-soil-test' | undefined;
  /** Orchard rates, old or weak pages: they widen the span, are labelled, and never lead. */
  readonly label?: 'orchard' | 'old' | 'weak' | undefined;
  readonly cite: Cite;
};

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

/** Whether a rule gives a rate of ground. */
export const isRate = ({ gives }: Pick<Rule, 'gives'>): boolean => UNITS[gives.unit].kind === 'area rate';

/** Grams of the nutrient in so much of what a rule gives, in the rule's own unit; of a rate, g/m². */
export function gramsOf(rule: Pick<Rule, 'gives'>, amount: number): number {
  const { of, unit, percentN, ozPerCup } = rule.gives;
  const grams = unit === 'cup' ? convert(amount * (ozPerCup ?? 0), 'oz', 'g') : isRate(rule) ? convert(amount, unit, 'g/m2') : convert(amount, unit, 'g');
  return of === 'product' ? (grams * (percentN ?? 0)) / 100 : grams;
}
