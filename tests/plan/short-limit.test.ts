// A tree that grows strongly gets no nitrogen (Michigan State University Extension: long shoots, none) but wants phosphate: which bag is named as the one that stands against it.
import { expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const told = async (...bags: string[]): Promise<readonly string[]> => {
  const { json } = await medlar(['plan', '--json', '--today', '2026-03-14'], {
    'orchard.yaml': `where: Michigan, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil: soil.txt\ntrees:\n  Gate: sour cherry, planted 2015, 12 ft across, shoots 40 in 2025\nstore:\n${bags.map((b) => `  - ${b}\n`).join('')}`,
    'soil.txt': 'pH 6.5\nPhosphorus 8 ppm = low\nPotassium 200 ppm = high\n',
  });
  return json.notices.filter((n) => n.code === 'short-limit').map((n) => n.text);
};

// Nitrogen to a part of phosphate: 1 of 10-10-10, 0.2 of bone meal 3-15-0, 0.39 of 18-46-0.
test.each([[['Garden, 10-10-10, 25 lb', 'Bone meal, 3-15-0, 10 lb', 'DAP, 18-46-0, 10 lb'], 'Bone meal'], [['DAP, 18-46-0, 10 lb', 'Garden, 10-10-10, 25 lb'], 'DAP']])('%j: %s', async (bags, named) => {
  const notices = await told(...bags);
  expect(notices).toHaveLength(1);
  expect(notices[0]).toContain(named);
});
test('a bag of phosphate alone is taken', async () => { expect(await told('Garden, 10-10-10, 25 lb', 'Triple super, 0-46-0, 10 lb')).toEqual([]); });
