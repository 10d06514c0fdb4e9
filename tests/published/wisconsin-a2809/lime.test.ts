// University of Wisconsin Extension, A2809, 2012, lime by the Sikora buffer and the water pH:
// ton/acre of lime of neutralising index 60-69, 7 in deep. Typed from research notes of the page
// (memory, and doubted there: high beside the neighbours and not smooth between goals, so it leads nowhere; asked for the
// goals that the table which leads in its place serves too).
import { published } from '../helpers.ts';
import { type Flags, expectPrinted } from '../ph.ts';

const source = {
  id: 'wisconsin-a2809',
  title: 'Nutrient Application Guidelines for Field, Vegetable and Fruit Crops in Wisconsin',
  publisher: 'University of Wisconsin Extension',
  url: null,
  mark: 'memory',
} as const;

const flags = (now: number, buffer: number) => ({ where: 'Wisconsin, US', now, method: 'sikora', buffer });

const equations = [
  [5.6, (b: number, now: number) => 51.0 - 5.40 * b - 2.67 * now],
  [5.8, (b: number, now: number) => 57.2 - 5.55 * b - 3.50 * now],
  [6.0, (b: number, now: number) => 72.7 - 7.59 * b - 3.78 * now],
  [6.3, (b: number, now: number) => 103 - 12.6 * b - 3.18 * now],
  [6.5, (b: number, now: number) => 134 - 17.2 * b - 2.73 * now],
  [6.6, (b: number, now: number) => 152 - 20.3 * b - 2.17 * now],
  [6.8, (b: number, now: number) => 195 - 28.4 * b + 0.144 * now],
] as const;

// Buffer pH and water pH; every goal needs lime at each.
const readings = [[6.7, 4.8], [6.6, 5.0], [6.5, 4.8], [6.4, 4.6], [6.3, 4.8], [6.2, 5.0], [6.1, 4.6], [6.0, 4.8]] as const;

published(source, () => {
  expectPrinted(source.id, 'ton/acre', equations.flatMap(([goal, tons]) => readings.map(([b, now]): readonly [Flags, number] => [
    { ...flags(now, b), goal }, Number(tons(b, now).toFixed(3)),
  ])));

  // By hand, to a tenth: buffer pH 6.4, water pH 5.2.
  expectPrinted(source.id, 'ton/acre', [
    [{ ...flags(5.2, 6.4), goal: 6.0 }, 4.5],
    [{ ...flags(5.2, 6.4), goal: 6.5 }, 9.7],
    [{ ...flags(5.2, 6.4), goal: 6.8 }, 14.0],
  ], 0.05);

  // Halfway between two goals at buffer pH 6.4, water pH 5.0:
  // 6.0 is 72.7 - 48.576 - 18.9 = 5.224 and 6.3 is 103 - 80.64 - 15.9 = 6.46;
  // 6.6 is 152 - 129.92 - 10.85 = 11.23 and 6.8 is 195 - 181.76 + 0.72 = 13.96.
  expectPrinted(source.id, 'ton/acre', [
    [{ ...flags(5.0, 6.4), goal: 6.15 }, 5.842],
    [{ ...flags(5.0, 6.4), goal: 6.7 }, 12.595],
  ]);
});
