/** US cups to a quarter; tablespoons under one eighth of a cup. */
import { UNITS } from './units.ts';

export function cupsOf(mL: number): { readonly cups: number } | { readonly spoons: number } {
  const cups = mL / UNITS.cup.factor;
  return cups >= 0.125 ? { cups: Math.max(0.25, Math.round(cups * 4) / 4) } : { spoons: Math.max(0.5, Math.round(cups * 32) / 2) };
}
