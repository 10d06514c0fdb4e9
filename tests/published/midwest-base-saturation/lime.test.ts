// Lime from exchange capacity and base saturation, in American units: 1 meq/100 g over 2 million lb of soil takes
// 1,000 lb of calcium carbonate to the acre. Typed from research notes of the page (derived).
// The saturation wanted is not printed; at pH 7 it is full by the capacity's definition, so that is asked for.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { figuresOf, ph } from '../ph.ts';

const source = {
  id: 'midwest-base-saturation',
  title: 'Lime requirement from cation exchange capacity and base saturation',
  publisher: 'Midwestern soil laboratories',
  url: null,
  mark: 'derived',
} as const;

async function pounds(cec: number, saturation: number): Promise<number[]> {
  const asked = await ph({ where: 'Ohio, US', now: 4.8, goal: 7, cec, 'base-saturation': saturation });
  return figuresOf(asked, source.id, 'lb/acre').map((figure) => figure.value);
}

function expectPair(some: readonly number[], others: readonly number[], wanted: number, measure: (one: number, other: number) => number, within: number): void {
  const fits = some.some((one) => others.some((other) => Math.abs(measure(one, other) - wanted) <= within));
  expect(fits, `${String(wanted)} between [${some.join(', ')}] and [${others.join(', ')}]`).toBe(true);
}

// Exchange capacity, two saturations now, and lb/acre that the lower takes more: CEC x difference / 100 x 1,000.
const steps = [
  [5, 20, 40, 1000], [8, 30, 45, 1200], [10, 40, 50, 1000], [12, 25, 50, 3000],
  [15, 35, 55, 3000], [18, 45, 50, 900], [20, 30, 40, 2000], [25, 20, 36, 4000],
] as const;

published(source, () => {
  for (const [cec, low, high, more] of steps) {
    test(`CEC ${String(cec)}: ${String(low)} % saturated takes ${String(more)} lb/acre more than ${String(high)} %`, async () => {
      expectPair(await pounds(cec, low), await pounds(cec, high), more, (one, other) => one - other, 0.5);
    });
  }

  test('twice the exchange capacity takes twice the lime', async () => {
    expectPair(await pounds(20, 40), await pounds(10, 40), 2, (one, other) => one / other, 0.001);
  });
});
