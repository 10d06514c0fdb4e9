// Austria, Richtlinien für die sachgerechte Düngung im Obstbau, p. 15: the letters as words, boron (ÖNORM L 1090), and
// phosphorus (CAL; its figures are memory, only that they do not depend on the soil was read). Typed a second time from
// notes of a copy (proves typing). A very low, B low, C the target, D high, E very high.
import { type Class, expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'austria-orchard', title: 'Richtlinien für die sachgerechte Düngung im Obstbau', publisher: 'Federal ministry of agriculture, Austria', url: null, mark: 'read',
} as const;

const letters = (a: string, b: string, c: string, d: string, e: string): Class[] => words([a, 'very-low'], [b, 'low'], [c, 'optimum'], [d, 'high'], [e, 'very-high']);
const on = (beside: string) => ({ where: 'Austria', beside });
const light = on('Clay 5 %');
const medium = on('Clay 20 %');
const heavy = on('Clay 40 %');
const K = { item: 'potassium', line: 'Potassium # mg/kg CAL' };
const Mg = { item: 'magnesium', line: 'Magnesium # mg/kg CAT method' };
const B = { item: 'boron', line: 'Boron # mg/kg' };

published(source, () => {
  expectClasses([
    { ...light, ...K, classes: letters('<50', '50-87', '88-178', '179-291', '>291') },
    { ...medium, ...K, classes: letters('<66', '66-112', '113-212', '213-332', '>332') },
    { ...heavy, ...K, classes: letters('<83', '83-137', '138-245', '246-374', '>374') },
    { ...heavy, ...K, classes: words(['140', 'optimum']) },
    { ...light, ...Mg, classes: words(['<50', 'low'], ['50-75', 'optimum'], ['76-150', 'high'], ['>150', 'very-high']) },
    { ...medium, ...Mg, classes: letters('<30', '30-55', '56-105', '106-190', '>190') },
    { ...heavy, ...Mg, classes: letters('<40', '40-75', '76-135', '136-220', '>220') },
    { ...light, ...B, classes: words(['<0.2', 'very-low'], ['0.2-2.0', 'optimum'], ['>2.0', 'very-high']) },
    { ...medium, ...B, classes: words(['<0.3', 'very-low'], ['0.3-2.5', 'optimum'], ['>2.5', 'very-high']) },
    { ...heavy, ...B, classes: words(['<0.3', 'very-low'], ['0.3-2.5', 'optimum'], ['>2.5', 'very-high']) },
    // Memory.
    { where: 'Austria', item: 'phosphorus', line: 'Phosphorus # mg/kg CAL', classes: letters('<26', '26-46', '47-111', '112-174', '>174') },
    { ...heavy, item: 'phosphorus', line: 'Phosphorus # mg/kg CAL', classes: letters('<26', '26-46', '47-111', '112-174', '>174') },
  ]);
});
