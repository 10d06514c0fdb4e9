// Royal Horticultural Society, acidifying soil: from pH 7.0 or 7.5 to 6.0-6.5 in the top 15 cm,
// 135 to 270 g/m² of sulphur, the low end on sandy and the high end on clay soil.
// Typed from research notes of the page.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { expectPrinted, figuresOf, ph } from '../ph.ts';

const source = {
  id: 'rhs-acidifying',
  title: 'Acidifying soil',
  publisher: 'Royal Horticultural Society',
  url: 'https://rhs.org.uk/soil-composts-mulches/acidifying-soil',
  mark: 'read',
} as const;

// Pears want 5.5 to 6.5 (FAO EcoCrop).
const steps = [[7.5, 6.5], [7.5, 6.0], [7.0, 6.5], [7.0, 6.0]] as const;

published(source, () => {
  expectPrinted(source.id, 'g/m2', steps.flatMap(([now, goal]) => [
    [{ crop: 'pear', now, goal, texture: 'sand' }, 135] as const,
    [{ crop: 'pear', now, goal, texture: 'clay' }, 270] as const,
  ]));

  test('clay, 7.5 to 6.5: the range reaches 270 g/m²', async () => {
    const { row } = await ph({ crop: 'pear', now: 7.5, goal: 6.5, texture: 'clay' });
    expect(row.range?.[1]).toBeGreaterThanOrEqual(270 - 0.01);
  });

  test('not for a start or a goal that the page does not name', async () => {
    expect(figuresOf(await ph({ crop: 'pear', now: 7.0, goal: 6.0, texture: 'sand' }), source.id, 'g/m2')).not.toEqual([]);
    expect(figuresOf(await ph({ crop: 'blueberry', now: 6.0, goal: 5.0, texture: 'sand' }), source.id, 'g/m2')).toEqual([]);
  });

  test('with free lime it cannot be done', async () => {
    const { row } = await ph({ crop: 'pear', now: 7.5, goal: 6.5, texture: 'sand', carbonate: 2 });
    expect(row.verdict).toBe('cannot');
    expect(row.gPerM2).toBe(0);
  });
});
