// University of Tennessee, blueberries: 2.0 lb of sulphur to 1000 sq ft for each tenth above pH 5.5 on silt
// loam, a third more on clay, a third less on sand. Typed from research notes of the page.
import { published } from '../helpers.ts';
import { expectPrinted } from '../ph.ts';

const source = {
  id: 'tennessee-blueberry-ph',
  title: 'Home garden fruit and nuts: blueberries',
  publisher: 'University of Tennessee',
  url: 'https://utcrops.com/soil/home-garden-fruit-and-nuts/blueberries',
  mark: 'read',
} as const;

const flags = { crop: 'blueberry', goal: 5.5 } as const;

published(source, () => {
  // Eight tenths above 5.5.
  expectPrinted(source.id, 'lb/1000 sq ft', [
    [{ ...flags, now: 6.3, texture: 'silt loam' }, 16.0],
    [{ ...flags, now: 6.3, texture: 'clay' }, 21.3],
    [{ ...flags, now: 6.3, texture: 'sand' }, 10.7],
    [{ ...flags, now: 6.0, texture: 'silt loam' }, 10],
    [{ ...flags, now: 6.0, texture: 'clay' }, 13.3],
    [{ ...flags, now: 6.0, texture: 'sand' }, 6.7],
  ], 0.05);
});
