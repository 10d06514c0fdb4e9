// Rutgers NJAES Soil Testing Laboratory, organic matter levels by texture, % by weight. Typed a second time from a stored
// text of the page itself, which puts finer textures under silt loam. The printed bands share their edges, so each is
// tried just inside them. The page does not say which level to aim at: the word alone is tested.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'rutgers-organic-matter', title: 'Interpretation of Organic Matter Levels in New Jersey Soils', publisher: 'Rutgers New Jersey Agricultural Experiment Station',
  url: 'https://njaes.rutgers.edu/soil-testing-lab/organic-matter-levels.php', mark: 'read',
} as const;

const five = (veryLow: string, low: string, medium: string, high: string, veryHigh: string): Class[] =>
  [[veryLow, 'very-low', null], [low, 'low', null], [medium, 'medium', null], [high, 'high', null], [veryHigh, 'very-high', null]];
const table = (beside: string, classes: readonly Class[]) => ({ where: 'New Jersey, US', beside, item: 'organic-matter', line: 'Organic matter # %', classes });

published(source, () => {
  expectClasses([
    table('Texture: loamy sand', five('<0.5', '0.51-0.99', '1.01-1.49', '1.51-1.99', '>2.0')),
    table('Texture: sandy loam', five('<1.0', '1.01-1.49', '1.51-1.99', '2.01-2.49', '>2.5')),
    table('Texture: loam', five('<1.5', '1.51-1.99', '2.01-2.99', '3.01-3.99', '>4.0')),
    table('Texture: silt loam', five('<1.5', '1.51-2.49', '2.51-3.99', '4.01-4.99', '>5')),
    table('Texture: clay loam', five('<1.5', '1.51-2.49', '2.51-3.99', '4.01-4.99', '>5')),
    // The worked row: 2.2 % is very high, high, medium, low.
    table('Texture: loamy sand', [['2.2', 'very-high', null]]),
    table('Texture: sandy loam', [['2.2', 'high', null]]),
    table('Texture: loam', [['2.2', 'medium', null]]),
    table('Texture: silt loam', [['2.2', 'low', null]]),
  ]);
});
