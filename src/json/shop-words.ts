/** The verdict on a bag in words. */
import { keepsOf } from '../bags/keeps.ts';
import { ROUNDING } from '../bags/round.ts';
import type { Ranked } from '../bags/shop.ts';
import type { Grams } from '../bags/weigh.ts';
import { NUTRIENTS } from '../units/substance.ts';
import type { System } from '../words/show.ts';
import { showMass, showNutrient, showPrice } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';

/** Kilograms in a pound. */
const KG_IN_POUND = 0.45359237;

/** "BUY 1. $9 feeds them all. 3 lb over; it keeps." */
export function lineOf(r: Ranked, forTrees: boolean, system: System, L: Language): string {
  const { bag, usedG, over, short, wanted } = r.offer;
  const cost = r.cost === null ? '' : showPrice(r.cost, bag.price!.currency, L);
  const amount = showMass(usedG, system, L);
  const list = (of: Grams): string => NUTRIENTS.filter((n) => of[n] > ROUNDING * wanted[n] && of[n] > 1).map((n) => `${showNutrient(of[n], system, L)} ${n}`).join(', ');
  if (r.verdict === 'leave') return say(L, 'bags', 'leave', { why: say(L, 'shop', r.why, { list: r.why === 'short' ? list(short) : list(over), cost, amount }) });
  const left = r.leftG !== null && r.leftG > 1 ? showMass(r.leftG, system, L) : '';
  // What a weight of nutrient costs that is needed; surplus is worth nothing.
  const dear: Readonly<Record<string, string>> = r.costPerNeededKg === null || cost === '' ? {} : { rate: showPrice(Math.round(r.costPerNeededKg * (system === 'us' ? KG_IN_POUND : 1) * 100) / 100, bag.price!.currency, L), unit: say(L, 'bags', system === 'us' ? 'a-pound' : 'a-kilo') };
  if (r.verdict === 'fine') return say(L, 'bags', 'fine', { why: say(L, 'shop', r.why, { list: list(over), cost, amount }), n: r.bags ?? '', ...dear });
  const missing = list(short);
  const price = cost || amount;
  const all = missing !== '' ? say(L, 'bags', 'still-short', { price, list: missing }) : say(L, 'bags', forTrees ? 'feeds-all' : 'meets-need', { price });
  return say(L, 'bags', 'buy', { n: r.bags ?? '', all, left, keeps: say(L, 'bags', keepsOf(bag)), more: list(over), ...dear });
}
