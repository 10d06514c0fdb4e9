/** US measures of a kitchen: cups to a quarter (from three and a half tablespoons on), tablespoons to a half, teaspoons to a quarter; null under a quarter teaspoon, which no kitchen measures. */
import { UNITS } from './units.ts';

export function cupsOf(mL: number): { readonly cups: number } | { readonly spoons: number } | { readonly teaspoons: number } | null {
  const cups = mL / UNITS.cup.factor;
  const [spoons, teaspoons] = [Math.round(cups * 32) / 2, Math.round(cups * 192) / 4];
  if (cups >= 3.5 / 16) return { cups: Math.round(cups * 4) / 4 };
  if (teaspoons >= 3) return { spoons };
  return cups * 48 < 0.25 ? null : { teaspoons };
}
