/** A published rule for feeding a plant a year, in the unit printed, beside its reference. The grower's own rules (`rules.yaml`) are the same; `rule-shape.ts` checks both. */
import type { Cite } from '../reason/figure.ts';
import type { Unit } from '../units/units.ts';
import { convert, UNITS } from '../units/units.ts';
import type { Crop, Size } from './crops.ts';

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

/** Whether a rule gives a rate of ground. */
export const isRate = ({ gives }: Pick<Rule, 'gives'>): boolean => UNITS[gives.unit].kind === 'area rate';

/** Grams of the nutrient in so much of what a rule gives, in the rule's own unit; of a rate, g/m². */
export function gramsOf(rule: Pick<Rule, 'gives'>, amount: number): number {
  const { of, unit, percentN, ozPerCup } = rule.gives;
  const grams = unit === 'cup' ? convert(amount * (ozPerCup ?? 0), 'oz', 'g') : isRate(rule) ? convert(amount, unit, 'g/m2') : convert(amount, unit, 'g');
  return of === 'product' ? (grams * (percentN ?? 0)) / 100 : grams;
}
