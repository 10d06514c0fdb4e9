/** The grade of a mix, and the mix whose grade is balanced. */
import type { Bag } from '../orchard/bag.ts';
import type { MixingFault } from '../orchard/mixing.ts';
import { mixingFaults } from '../orchard/mixing.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import type { Grams, Solve } from './weigh.ts';
import { grams, mostOut, weigh } from './weigh.ts';

/** `grade` in % of the mix; shares sum to 1. */
export type Blend = { readonly grade: Grams; readonly parts: readonly { readonly bag: Bag; readonly share: number }[] };

/** A mix of so many parts of each bag, by weight; at least one part above zero. */
export function blend(mix: readonly { readonly bag: Bag; readonly parts: number }[]): Blend {
  const all = mix.reduce((sum, m) => sum + m.parts, 0);
  return {
    grade: grams((n) => mix.reduce((sum, m) => sum + 100 * m.bag.grade[n] * (m.parts / all), 0)),
    parts: mix.map(({ bag, parts }) => ({ bag, share: parts / all })),
  };
}

/** Why no mix is balanced: no bag brings the nutrient, or in every mix it comes out over or under the others. */
export type Unbalanced = { readonly unbalanced: 'missing' | 'over' | 'under'; readonly nutrient: Nutrient };

/** The bags that must not meet, where every mix needs both. */
export type Apart = { readonly apart: MixingFault };
const NEAR_NOTHING = 1e-9;

/** What `make` makes of the bags, without pairs that must never meet: each of such a pair is left out in turn, and the mix that weighs less is taken. */
function apart<T extends object, F extends object>(bags: readonly Bag[], make: (bags: readonly Bag[]) => T | F, usedOf: (made: T | F) => { readonly bags: readonly Bag[]; readonly weight: number } | null): T | F | Apart {
  const made = make(bags);
  const used = usedOf(made);
  const fault = used && mixingFaults(used.bags).find((f) => f.rule === 'never');
  if (!fault) return made;
  const tries = [fault.b, fault.a].map((without) => apart(bags.filter((b) => b !== without), make, usedOf)).filter((t): t is T => !('apart' in t) && usedOf(t) !== null);
  return tries.sort((x, y) => usedOf(x)!.weight - usedOf(y)!.weight)[0] ?? { apart: fault };
}

/** The richest mix with as much N as P2O5 as K2O: the one that reaches a gram of each with least weight. */
/** Where every balanced mix needs a pair that must not meet, its parts are given all the same: each can be spread by itself. */
export function balance(bags: readonly Bag[], solve: Solve): Blend | Unbalanced {
  const found = apart<Blend, Unbalanced>(bags, (some) => balanceOf(some, solve), (made) => ('parts' in made ? { bags: made.parts.filter((p) => p.share > NEAR_NOTHING).map((p) => p.bag), weight: 1 / made.grade.N } : null));
  return 'apart' in found ? balanceOf(bags, solve) : found;
}

function balanceOf(bags: readonly Bag[], solve: Solve): Blend | Unbalanced {
  const missing = NUTRIENTS.find((n) => bags.every((b) => b.grade[n] === 0));
  if (missing) return { unbalanced: 'missing', nutrient: missing };
  const one = { N: 1, P2O5: 1, K2O: 1 };
  // Here the price of a bag says nothing.
  const plain = bags.map((b) => ({ ...b, price: null, left: null }));
  const out = mostOut(one, plain, solve);
  if (out) return { unbalanced: out.over ? 'over' : 'under', nutrient: out.nutrient };
  return blend(weigh(one, plain, solve).bags.map(({ g }, i) => ({ bag: bags[i]!, parts: g })));
}

/** A batch of a stated grade: grams of each bag, and of something that feeds nothing to fill it up. */
export type Batch = { readonly parts: readonly { readonly bag: Bag; readonly g: number }[]; readonly fillerG: number };
/** Why a grade cannot be made: these bags do not bring it, or fill more than the batch. */
export type NoBatch = { readonly noBatch: 'grade' | 'full'; readonly out: Grams };

/** `grade` as shares from 0 to 1; `g` is the weight of the batch. */
export function batchOf(grade: Grams, g: number, bags: readonly Bag[], solve: Solve): Batch | NoBatch | Apart {
  return apart<Batch, NoBatch>(bags, (some) => batchFrom(grade, g, some, solve), (made) => ('parts' in made ? { bags: made.parts.filter((p) => p.g > NEAR_NOTHING * g).map((p) => p.bag), weight: g - made.fillerG } : null));
}

function batchFrom(grade: Grams, g: number, bags: readonly Bag[], solve: Solve): Batch | NoBatch {
  const plain = bags.map((b) => ({ ...b, price: null, left: null }));
  const made = weigh(grams((n) => grade[n] * g), plain, solve);
  const out = grams((n) => made.over[n] + made.short[n]);
  if (NUTRIENTS.some((n) => out[n] > 1e-6 * g)) return { noBatch: 'grade', out };
  const sum = made.bags.reduce((all, w) => all + w.g, 0);
  if (sum > g * (1 + 1e-9)) return { noBatch: 'full', out };
  return { parts: made.bags.map((w, i) => ({ bag: bags[i]!, g: w.g })), fillerG: Math.max(0, g - sum) };
}
