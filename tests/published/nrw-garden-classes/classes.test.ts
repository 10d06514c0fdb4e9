// Landwirtschaftskammer Nordrhein-Westfalen, Gartentipp 40: K2O (CAL) and magnesium (CaCl2) of the home garden, mg/100 g.
// Typed a second time from notes of the page (proves typing, not the reading). A very low, B low, C the target, D high,
// E very high. The phosphate row is left out: its heading and its figures contradict each other.
import { type Class, expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'nrw-garden-classes', title: 'Gartentipp 40', publisher: 'Landwirtschaftskammer Nordrhein-Westfalen', url: 'http://lwk-wl.de/verbraucher/garten/gartentipp040.htm', mark: 'read',
} as const;

const letters = (a: string, b: string, c: string, d: string, e: string): Class[] => words([a, 'very-low'], [b, 'low'], [c, 'optimum'], [d, 'high'], [e, 'very-high']);
const potash = (texture: string, classes: readonly Class[]) => ({ where: 'Germany', beside: `Texture: ${texture}`, item: 'potassium', line: 'K2O # mg/100 g CAL', classes });
const magnesium = (texture: string, classes: readonly Class[]) => ({ where: 'Germany', beside: `Texture: ${texture}`, item: 'magnesium', line: 'Magnesium # mg/100 g CaCl2', classes });

published(source, () => {
  expectClasses([
    potash('sand', letters('<=2', '3-5', '6-12', '13-19', '>=20')),
    potash('loamy sand', letters('<=3', '4-9', '10-18', '19-32', '>=33')),
    potash('loam', letters('<=3', '4-9', '10-18', '19-32', '>=33')),
    potash('clay loam', letters('<=5', '6-13', '14-24', '25-38', '>=39')),
    potash('clay', letters('<=5', '6-13', '14-24', '25-38', '>=39')),
    magnesium('sand', letters('<=1', '2', '3-4', '5-7', '>=8')),
    magnesium('loamy sand', letters('<=1', '2', '3-4', '5-7', '>=8')),
    magnesium('loam', letters('<=2', '3', '4-6', '7-10', '>=11')),
    magnesium('clay', letters('<=3', '4-5', '6-9', '10-14', '>=15')),
  ]);
});
