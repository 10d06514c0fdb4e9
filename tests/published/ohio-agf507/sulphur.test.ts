// Ohio State University, AGF-507: lb of sulphur to the acre to bring soil without free lime to pH 6.5,
// by exchange capacity. READ-2: seen in a consultant's page that names it as the source.
import { published } from '../helpers.ts';
import { expectPrinted } from '../ph.ts';

const source = {
  id: 'ohio-agf507',
  title: 'AGF-507, Soil acidification (quoted by others)',
  publisher: 'Ohio State University Extension',
  url: 'https://ohioline.osu.edu/factsheet/agf-507',
  mark: 'read',
} as const;

// Pears want 5.5 to 6.5 (FAO EcoCrop), so every row is to come down to 6.5.
const flags = { crop: 'pear', goal: 6.5 } as const;
const capacities = [5, 10, 20] as const;

// Present pH, then lb/acre at 5, 10 and 20 meq/100 g.
const table = [
  [8.5, 370, 730, 1460],
  [8.0, 340, 670, 1340],
  [7.5, 300, 600, 1200],
  [7.0, 180, 360, 720],
] as const;

published(source, () => {
  expectPrinted(source.id, 'lb/acre', table.flatMap(([now, ...cells]) =>
    cells.map((cell, at) => [{ ...flags, now, cec: capacities[at] ?? NaN }, cell] as const)));

  // In between: 60 × 14; halfway from 360 to 600; halfway from 5 to 10.
  expectPrinted(source.id, 'lb/acre', [
    [{ ...flags, now: 7.5, cec: 14 }, 840],
    [{ ...flags, now: 7.25, cec: 10 }, 480],
    [{ ...flags, now: 7.5, cec: 7.5 }, 450],
    [{ ...flags, now: 7.0, cec: 15 }, 540],
  ]);
});
