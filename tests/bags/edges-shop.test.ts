// One bag for the whole need, whole bags of what is used, and the cheapest whole bags for a typed need: rules of design.md 6 and 7, sums by hand.
import { describe, expect, test } from 'vitest';
import { isSameProduct, purchasesOf } from '../../src/bags/buy.ts';
import { byYalps } from '../../src/bags/by-yalps.ts';
import { cheapest } from '../../src/bags/purchase.ts';
import type { Offer } from '../../src/bags/shop.ts';
import { asBought, currenciesOf, offerFor, rank, VERDICTS, WHYS } from '../../src/bags/shop.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import { dollars, feed } from './parts.ts';

const NONE = { N: 0, P2O5: 0, K2O: 0 };
const kilo = (label: string, grade: readonly [number, number, number], price: number | null = null, more: Partial<Bag> = {}): Bag => feed(label, grade, { g: 1000, price: price === null ? null : dollars(price), ...more });

describe('one bag for a typed need', () => {
  const of = (goal: Parameters<typeof offerFor>[0], bag: Bag): number[] => { const o = offerFor(goal, bag); return [o.usedG, o.over.N + o.over.P2O5 + o.over.K2O, o.short.N + o.short.P2O5 + o.short.K2O, o.unwanted.N + o.unwanted.P2O5 + o.unwanted.K2O].map((x) => Math.round(x * 1000) / 1000); };
  test('the first that is wanted and that it brings is met in full', () => {
    expect(of({ N: 100, P2O5: 50 }, kilo('A', [10, 10, 0]))).toEqual([1000, 50, 0, 0]);
    expect(of({ N: 0, P2O5: 50 }, kilo('A', [10, 10, 0]))).toEqual([500, 50, 0, 50]);
    expect(of({ N: 100, P2O5: 50 }, kilo('A', [0, 10, 0]))).toEqual([500, 0, 100, 0]);
    // What is not named is free.
    expect(of({ K2O: 50 }, kilo('A', [10, 10, 10]))).toEqual([500, 0, 0, 0]);
    expect(of({ N: 100 }, kilo('A', [0, 10, 0]))).toEqual([0, 0, 100, 0]);
    expect(of({ N: 100 }, kilo('A', [10, 0, 0], 1, { weedKiller: true }))).toEqual([0, 0, 100, 0]);
    expect(offerFor({ N: 100 }, kilo('A', [10, 0, 0])).wanted).toEqual({ N: 100, P2O5: 0, K2O: 0 });
  });
});

describe('ranked', () => {
  const offer = (bag: Bag, more: Partial<Offer> = {}): Offer => ({ bag, usedG: 500, supplied: { N: 100, P2O5: 0, K2O: 0 }, over: NONE, short: NONE, wanted: { N: 100, P2O5: 0, K2O: 0 }, unwanted: NONE, ...more });
  const told = (...offers: Offer[]): string[] => rank(offers).map((r) => `${r.offer.bag.label}: ${r.verdict}, ${r.why}`);
  const a = kilo('A', [20, 0, 0], 10);
  const surplus = (n: 'N' | 'P2O5' | 'K2O', g: number, more: Partial<Offer> = {}): Partial<Offer> => ({ unwanted: { ...NONE, [n]: g }, over: { ...NONE, [n]: g }, ...more });
  test.each<[string, Partial<Offer>, string]>([
    ['nothing amiss', {}, 'buy, best'], ['feeds nothing', { usedG: 0 }, 'leave, feeds-nothing'],
    // Over a gram that is not wanted; over 8 % and a gram that is short (rounding).
    ['phosphate', surplus('P2O5', 2), 'leave, phosphate-unwanted'], ['a gram of it', surplus('P2O5', 1), 'buy, best'], ['untested', surplus('P2O5', 2, { untested: ['P2O5'] }), 'leave, phosphate-untested'], ['potash', surplus('K2O', 2), 'leave, potash-unwanted'], ['potash untested', surplus('K2O', 2, { untested: ['K2O'] }), 'leave, potash-untested'],
    ['phosphate, the other untested', surplus('P2O5', 2, { untested: ['K2O'] }), 'leave, phosphate-unwanted'], ['nitrogen', surplus('N', 2), 'leave, nitrogen-unwanted'],
    ['short, as the only one', { short: { N: 20, P2O5: 0, K2O: 0 } }, 'buy, best'],
  ])('%s', (_, more, wanted) => { expect(told(offer(a, more))).toEqual([`A: ${wanted}`]); });
  test('weed killer, lime', () => {
    expect(told(offer({ ...a, weedKiller: true }))).toEqual(['A: leave, weed-killer']);
    expect(told(offer({ ...a, amends: { kind: 'lime', strength: 1, dolomitic: false, burns: false } }))).toEqual(['A: leave, amends']);
  });
  test('short where another is not: from 8 % and a gram', () => {
    const short = (n: number, wanted = 100): Partial<Offer> => ({ short: { N: n, P2O5: 0, K2O: 0 }, wanted: { N: wanted, P2O5: 0, K2O: 0 } });
    const b = kilo('B', [20, 0, 0], 1);
    expect(told(offer(a), offer(b, short(9)))).toEqual(['A: buy, best', 'B: leave, short']);
    expect(told(offer(a), offer(b, short(8)))).toEqual(['B: buy, best', 'A: fine, dearer']);
    expect(told(offer(a), offer(b, short(0.9, 1)))).toEqual(['B: buy, best', 'A: fine, dearer']);
  });
  test('the order: unwanted phosphate, potash, nitrogen, then short, then over, then the cost', () => {
    const [p, k, n] = [offer(kilo('P', [1, 1, 0], 1), surplus('P2O5', 5)), offer(kilo('K', [1, 0, 1], 2), surplus('K2O', 50)), offer(kilo('N', [1, 0, 0], 3), surplus('N', 90))];
    const short = offer(kilo('S', [1, 0, 0], 4), { short: { N: 95, P2O5: 0, K2O: 0 } });
    const other = offer(kilo('T', [1, 0, 0], 4), { wanted: { N: 100, P2O5: 100, K2O: 100 }, short: { N: 0, P2O5: 50, K2O: 48 } });
    const over = offer(kilo('O', [1, 0, 0], 5), { wanted: { N: 100, P2O5: 100, K2O: 0 }, over: { N: 0, P2O5: 99, K2O: 0 } });
    const dear = offer(kilo('D', [1, 0, 0], 99));
    const list = [p, k, n, short, other, over, dear];
    for (const offers of [list, list.toReversed()]) expect(rank(offers).map((r) => r.offer.bag.label).join('')).toBe('DOTSNKP');
    // 98 g of both are short, or 60 g of one.
    expect(told(other, offer(kilo('U', [1, 0, 0], 9), { wanted: { N: 100, P2O5: 100, K2O: 100 }, short: { N: 0, P2O5: 60, K2O: 0 } }))[0]).toBe('U: buy, best');
    expect(told(over, dear)).toEqual(['D: buy, best', 'O: fine, surplus']);
  });
  test('of a fit: cost, then the cost of what is needed, then by name; without a price last', () => {
    expect(told(offer(kilo('B', [20, 0, 0], 10)), offer(a))).toEqual(['A: buy, best', 'B: fine, alike']);
    expect(told(offer(kilo('B', [20, 0, 0])), offer(kilo('C', [20, 0, 0], 11)), offer(a))).toEqual(['A: buy, best', 'C: fine, dearer', 'B: fine, no-price']);
    // A bag of either; a kilogram holds more than half of one.
    expect(told(offer(a), offer(kilo('B', [40, 0, 0], 10), { usedG: 250 }))).toEqual(['B: buy, best', 'A: fine, dearer']);
    expect(told(offer(kilo('B', [20, 0, 0])), offer(kilo('A', [20, 0, 0])))).toEqual(['A: buy, best', 'B: fine, alike']);
    expect(told(offer(kilo('B', [20, 0, 0], 10 * (1 + 1e-10))), offer(a))).toEqual(['A: buy, best', 'B: fine, alike']);
  });
  test('bags, cost and what is left; a needed kilogram', () => {
    // 1.5 kg: two bags at $10, half a kilogram left; $15 for 0.1 kg of N that was needed.
    expect(rank([offer(a, { usedG: 1500 })])[0]).toMatchObject({ bags: 2, cost: 20, leftG: 500, costPerNeededKg: 150 });
    expect(rank([offer(a, { usedG: 1000 })])[0]).toMatchObject({ bags: 1, cost: 10, leftG: 0 });
    expect(rank([offer(a, { usedG: 1500, supplied: { N: 300, P2O5: 0, K2O: 0 } })])[0]!.costPerNeededKg).toBe(150);
    expect(rank([offer(a, { wanted: { N: 100, P2O5: 40, K2O: 20 }, supplied: { N: 100, P2O5: 10, K2O: 90 } })])[0]!.costPerNeededKg).toBeCloseTo(5 / 0.13, 9);
    expect(rank([offer(a, { supplied: NONE })])[0]!.costPerNeededKg).toBeNull();
    for (const g of [null, 0]) expect(rank([offer({ ...a, g })])[0]).toMatchObject({ bags: null, cost: null, leftG: null, costPerNeededKg: null });
    expect(rank([offer({ ...a, price: null })])[0]).toMatchObject({ bags: 1, cost: null, leftG: 500, costPerNeededKg: null });
    expect(rank([offer(a, { usedG: 0 })])[0]).toMatchObject({ bags: 0, cost: 0 });
    expect(rank([offer({ ...a, g: null }, { usedG: 0 })])[0]).toMatchObject({ bags: 0, leftG: null });
    expect(rank([offer(a)])[0]).not.toHaveProperty('fit');
  });
  test('a bag that tubs take though the ground should not: for the tubs alone', () => {
    const [tub] = rank([offer(a, { ...surplus('P2O5', 20), tubG: 200 })]);
    expect(tub).toMatchObject({ verdict: 'fine', why: 'tubs', bags: 1, leftG: 800 });
    expect(told(offer(a, { ...surplus('N', 20), tubG: 200 }))).toEqual(['A: leave, nitrogen-unwanted']);
    expect(told(offer(a, { ...surplus('N', 20), usedG: 200, tubG: 200 }))).toEqual(['A: leave, nitrogen-unwanted']);
    expect(told(offer(a, { tubG: 200 }))).toEqual(['A: buy, best']);
    expect(told(offer(a, { usedG: 0, tubG: 200 }))).toEqual(['A: fine, tubs']);
    // Short of what the ground wants, and taken by nothing but the tubs; or by the ground too.
    const short = { short: { N: 50, P2O5: 0, K2O: 0 } };
    const b = kilo('B', [20, 0, 0], 99);
    expect(told(offer(a, { ...short, usedG: 200, tubG: 200 }), offer(b))).toEqual(['B: buy, best', 'A: fine, tubs']);
    expect(told(offer(a, { ...short, usedG: 300, tubG: 200 }), offer(b))).toEqual(['B: buy, best', 'A: leave, short']);
  });
  test('too little alone, but bought with others', () => {
    const [, short] = rank([offer(kilo('B', [20, 0, 0], 99)), offer(a, { short: { N: 50, P2O5: 0, K2O: 0 } })]);
    expect(asBought(short!, [a])).toMatchObject({ verdict: 'fine', why: 'together' });
    expect(asBought(short!, [])).toBe(short);
    const [best] = rank([offer(a)]);
    expect(asBought(best!, [a])).toBe(best);
  });
  test('currencies once each; the words that a verdict can have', () => {
    expect(currenciesOf([a, kilo('B', [1, 0, 0]), kilo('C', [1, 0, 0], 3), { ...a, price: { amount: 1, currency: '£' } }])).toEqual(['$', '£']);
    expect([VERDICTS.length, new Set(WHYS).size]).toEqual([3, 16]);
  });
});

describe('whole bags of what is used', () => {
  const a = kilo('A', [20, 0, 0], 10);
  const of = (used: readonly (readonly [Bag, number])[], store: readonly Bag[] = [], shed: readonly Bag[] = []) => purchasesOf(new Map(used), store, shed).map((p) => [p.bag.left === null ? `${p.bag.label} ${p.bag.g}` : `${p.bag.label} in the shed`, p.needG, p.bags, p.cost, p.leftG]);
  test('so many, what they cost and what is left', () => {
    expect(of([[a, 1500]])).toEqual([['A 1000', 1500, 2, 20, 500]]);
    expect(of([[a, 1000], [kilo('B', [1, 0, 0]), 10]])).toEqual([['A 1000', 1000, 1, 10, 0], ['B 1000', 10, 1, null, 990]]);
    expect(of([[a, 0], [kilo('B', [1, 0, 0]), -1]])).toEqual([]);
    for (const g of [null, 0]) expect(of([[{ ...a, g }, 500]])).toEqual([[`A ${g}`, 500, null, null, null]]);
  });
  test('of several sizes the cheapest that hold it, the largest told first; then least left over, then fewest', () => {
    const five = kilo('A', [20, 0, 0], 30, { g: 5000 });
    expect(of([[a, 1500]], [a, five])).toEqual([['A 1000', 1500, 2, 20, 500]]);
    expect(of([[a, 3500]], [a, five])).toEqual([['A 5000', 3500, 1, 30, 1500]]);
    expect(of([[a, 6500]], [a, five])).toEqual([['A 5000', 5000, 1, 30, 0], ['A 1000', 1500, 2, 20, 500]]);
    expect(of([[five, 6500]], [a, five])).toEqual([['A 5000', 5000, 1, 30, 0], ['A 1000', 1500, 2, 20, 500]]);
    // $20 for two of one or one of two kilograms; $10 for one kilogram or for three.
    const two = kilo('A', [20, 0, 0], 20, { g: 2000 });
    for (const [first, other] of [[a, two], [two, a]] as const) expect(of([[first, 1500]], [other])).toEqual([['A 2000', 1500, 1, 20, 500]]);
    expect(of([[a, 900]], [kilo('A', [20, 0, 0], 10, { g: 3000 })])).toEqual([['A 1000', 900, 1, 10, 100]]);
    // One without price or weight is no choice beside one with both.
    expect(of([[a, 3500]], [kilo('A', [20, 0, 0], null, { g: 5000 }), { ...five, g: null }, { ...five, g: 0 }])).toEqual([['A 1000', 3500, 4, 40, 500]]);
    expect(of([[kilo('A', [20, 0, 0]), 3500]], [five])).toEqual([['A 1000', 3500, 4, null, 500]]);
    expect(of([[kilo('A', [20, 0, 0]), 3500]], [kilo('A', [20, 0, 0], null, { g: 3600 })])).toEqual([['A 3600', 3500, 1, null, 100]]);
  });
  test('more mixes of sizes than can be tried: one size serves', () => {
    // 20 kg: 200 of 100 g at $1 or 400 of 50 g at $0.60 are 80,601 mixes.
    const [small, tiny] = [kilo('A', [20, 0, 0], 1, { g: 100 }), kilo('A', [20, 0, 0], 0.6, { g: 50 })];
    expect(of([[tiny, 20_000]], [small, tiny])).toEqual([['A 100', 20_000, 200, 200, 0]]);
    expect(of([[tiny, 20_050]], [small, tiny])).toEqual([['A 100', 20_050, 201, 201, 50]]);
    expect(of([[tiny, 1050]], [small, tiny])).toEqual([['A 100', 1000, 10, 10, 0], ['A 50', 50, 1, 0.6, 0]]);
  });
  test('out of the shed first, and no more than is there', () => {
    const mine = kilo('A', [20, 0, 0], null, { left: 600 });
    expect(of([[mine, 0]])).toEqual([]);
    expect(of([[mine, 500]])).toEqual([['A in the shed', 500, 0, 0, 100]]);
    expect(of([[mine, 700]])).toEqual([['A in the shed', 700, 0, 0, 0]]);
    expect(of([[a, 500]], [a], [mine])).toEqual([['A in the shed', 500, 0, 0, 100]]);
    expect(of([[a, 900]], [a], [mine])).toEqual([['A in the shed', 600, 0, 0, 0], ['A 1000', 300, 1, 10, 700]]);
    expect(of([[a, 600 + 1e-7]], [a], [mine])).toEqual([['A in the shed', 600, 0, 0, 0]]);
    expect(of([[a, 900]], [a], [mine, { ...mine, left: 200 }, { ...mine, left: 0 }])).toEqual([['A in the shed', 600, 0, 0, 0], ['A in the shed', 200, 0, 0, 0], ['A 1000', 100, 1, 10, 900]]);
    expect(of([[a, 500]], [a], [{ ...mine, label: 'Other' }])).toEqual([['A 1000', 500, 1, 10, 500]]);
    // What is used of it by itself is not taken again.
    expect(of([[mine, 400], [a, 500]], [a], [mine])).toEqual([['A in the shed', 400, 0, 0, 200], ['A 1000', 500, 1, 10, 500]]);
    // Two of the store's sizes share what stands in the shed.
    const five = kilo('A', [20, 0, 0], 30, { g: 5000 });
    expect(of([[a, 400], [five, 100]], [a, five], [mine])).toEqual([['A in the shed', 400, 0, 0, 200], ['A in the shed', 100, 0, 0, 100]]);
    expect(of([[a, 500], [five, 500]], [a, five], [mine])).toEqual([['A in the shed', 500, 0, 0, 100], ['A in the shed', 100, 0, 0, 0], ['A 1000', 400, 1, 10, 600]]);
  });
  test('the same product: name, numbers, coat, strength and currency', () => {
    expect(isSameProduct(a, { ...a, label: 'a', g: 5 })).toBe(true);
    expect(isSameProduct(a, { ...a, price: null })).toBe(true);
    expect(isSameProduct({ ...a, price: null }, a)).toBe(true);
    for (const other of [{ label: 'B' }, { printed: '21-0-0' }, { slow: true }, { amends: { kind: 'lime', strength: 1, dolomitic: false, burns: false } as const }, { price: { amount: 10, currency: '£' } }]) expect(isSameProduct(a, { ...a, ...other })).toBe(false);
  });
});

describe('the cheapest whole bags for a typed need', () => {
  const of = (goal: Parameters<typeof cheapest>[0], ...bags: Bag[]) => { const p = cheapest(goal, bags, byYalps); return p && 'bags' in p ? [p.bags.map((b) => `${b.bags} ${b.bag.label}`).join(', '), p.cost, ...Object.values(p.over).map(Math.round), ...Object.values(p.short).map(Math.round)] : p; };
  const [a, b] = [kilo('A', [20, 0, 0], 10), kilo('B', [0, 0, 50], 20)];
  test('what is needed of each', () => {
    expect(of({ N: 300 }, a)).toEqual(['2 A', 20, 0, 0, 0, 0, 0, 0]);
    expect(of({ N: 100, K2O: 600 }, b, a)).toEqual(['1 A, 2 B', 50, 0, 0, 0, 0, 0, 0]);
    expect(of({ N: 100, P2O5: 40, K2O: 50 }, a, b)).toEqual(['1 A, 1 B', 30, 0, 0, 0, 0, 40, 0]);
    expect(of({ N: 100, P2O5: 50 }, kilo('C', [10, 10, 0], 1))).toEqual(['1 C', 1, 0, 50, 0, 0, 0, 0]);
  });
  test('none that brings what is not wanted or nothing that is, none without price or weight, no weed killer', () => {
    expect(of({ N: 100, P2O5: 0 }, kilo('C', [10, 10, 0], 1))).toBeNull();
    expect(of({ N: 100 }, b)).toBeNull();
    expect(of({ N: 100, P2O5: 0 }, kilo('C', [10, 10, 0], 1), a)).toEqual(['1 A', 10, 0, 0, 0, 0, 0, 0]);
    for (const more of [{ price: null }, { g: null }, { g: 0 }, { weedKiller: true }]) expect(of({ N: 100 }, { ...a, ...more })).toBeNull();
  });
  test('at one cost fewer bags, then the first by name', () => {
    const two = kilo('Z', [20, 0, 0], 20, { g: 2000 });
    expect(of({ N: 300 }, a, two)).toEqual(['1 Z', 20, 0, 0, 0, 0, 0, 0]);
    for (const bags of [[a, kilo('0', [20, 0, 0], 10)], [kilo('0', [20, 0, 0], 10), a]]) expect(of({ N: 100 }, ...bags)).toEqual(['1 0', 10, 0, 0, 0, 0, 0, 0]);
  });
});
