// University of Georgia, lime buffer capacity from one dose of calcium hydroxide and a 30-minute reading:
// lb/acre of pure calcium carbonate over 2 million lb of soil (6 to 7 in). Typed from research notes of the page (read).
import { published } from '../helpers.ts';
import { type Flags, expectPrinted } from '../ph.ts';

const source = {
  id: 'georgia-lbc',
  title: 'Determining lime requirement using the equilibrium lime buffer capacity',
  publisher: 'University of Georgia',
  url: 'https://aesl.ces.uga.edu/sera6/FACT/SERA-6-FS-3.html',
  mark: 'read',
} as const;

const flags = (lbc: number, now: number) => ({ where: 'Georgia, US', now, lbc });

// Milligrams to the kilogram for each pH unit once the soil has come to rest; 1 mg/kg is 2 lb in 2 million.
const atRest = (lbc: number): number => lbc * (1.4742 + 0.0023 * lbc);
const pounds = (lbc: number, now: number, goal: number): number => atRest(lbc) * (goal - now) * 2;

// 30-minute capacity, water pH and goal.
const points = [
  [100, 4.8, 6.0], [150, 5.0, 6.5], [200, 5.2, 6.0], [250, 4.8, 6.5], [300, 5.5, 6.5],
  [350, 5.4, 6.2], [400, 5.0, 6.0], [450, 4.6, 6.5], [500, 5.8, 6.5],
] as const;

published(source, () => {
  expectPrinted(source.id, 'lb/acre', points.map(([lbc, now, goal]): readonly [Flags, number] => [
    { ...flags(lbc, now), goal }, Number(pounds(lbc, now, goal).toFixed(1)),
  ]), 0.5);

  // By hand: 300 is 649 at rest; 1.3 pH units take 844 mg/kg.
  expectPrinted(source.id, 'lb/acre', [[{ ...flags(300, 5.2), goal: 6.5 }, 1688]], 0.5);
});
