// A Purdue educator on a growers' list, November 2006: 7, 11 and 17 lb of sulphur to 1000 sq ft for a unit
// of pH on sandy soil, loam and clay. READ-2: seen in the list's archive, not with the publisher.
import { published } from '../helpers.ts';
import { expectPrinted } from '../ph.ts';

const source = {
  id: 'purdue-sulphur',
  title: 'Lowering the pH of garden soil (quoted by others)',
  publisher: 'Purdue Extension',
  url: null,
  mark: 'read',
} as const;

// Pears want 5.5 to 6.5 (FAO EcoCrop), so pH 7.5 is to come down.
const flags = { crop: 'pear', now: 7.5 } as const;

published(source, () => {
  expectPrinted(source.id, 'lb/1000 sq ft', [
    [{ ...flags, goal: 6.5, texture: 'sand' }, 7],
    [{ ...flags, goal: 6.5, texture: 'loam' }, 11],
    [{ ...flags, goal: 6.5, texture: 'clay' }, 17],
    [{ ...flags, goal: 6.0, texture: 'sand' }, 10.5],
    [{ ...flags, goal: 6.0, texture: 'loam' }, 16.5],
    [{ ...flags, goal: 6.0, texture: 'clay' }, 25.5],
  ]);
});
