// Michigan State University, lb of sulphur to the acre to bring blueberry ground to pH 4.5.
// READ-2: seen in a supplier's page quoting the university, not with the publisher.
import { published } from '../helpers.ts';
import { expectPrinted } from '../ph.ts';

const source = {
  id: 'michigan-sulphur',
  title: 'Sulphur to lower soil pH to 4.5 (quoted by others)',
  publisher: 'Michigan State University',
  url: null,
  mark: 'read',
} as const;

const textures = ['sand', 'loam', 'clay'] as const;

// Present pH, then lb/acre to 4.5 on sand, loam and clay.
const table = [
  [6.0, 530, 1540, 2300],
  [6.5, 660, 2020, 3030],
  [7.0, 840, 2560, 3830],
] as const;

// Rows 5.0 (175, 530, 800) and 5.5 (350, 1,030, 1,600) by difference, since blueberries may stand as they are at 5.0.
const differences = [
  [6.0, 5.0, 530 - 175, 1540 - 530, 2300 - 800],
  [6.0, 5.5, 530 - 350, 1540 - 1030, 2300 - 1600],
  [6.5, 5.0, 660 - 175, 2020 - 530, 3030 - 800],
  [7.0, 5.0, 840 - 175, 2560 - 530, 3830 - 800],
  [5.5, 5.0, 350 - 175, 1030 - 530, 1600 - 800],
  // Halfway between rows.
  [6.25, 4.5, (530 + 660) / 2, (1540 + 2020) / 2, (2300 + 3030) / 2],
  [6.0, 4.75, 530 - 175 / 2, 1540 - 530 / 2, 2300 - 800 / 2],
] as const;

published(source, () => {
  const cases = [...table.map(([now, ...cells]) => [now, 4.5, ...cells] as const), ...differences]
    .flatMap(([now, goal, ...cells]) => cells.map((cell, at) => [{ crop: 'blueberry', now, goal, texture: textures[at] ?? '' }, cell] as const));
  expectPrinted(source.id, 'lb/acre', cases);
});
