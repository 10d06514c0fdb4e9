// Austrian fruit-growing course wiki, "Interpretation der Bodenanalyse": best pH of most fruit 5 to 6 on light soil (under
// 10 % clay), 6.5 to 6.8 on heavy (over 30 % clay); humus 1 to 2.5 % on light, 2.5 to 4 % on heavy. Typed a second time
// from notes of the page (proves typing, not the reading). Ranges without words.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'austria-fruit-wiki', title: 'Interpretation der Bodenanalyse', publisher: 'Obst- und Weintechnik course wiki, Austria', url: 'https://wissen.obstwein-technik.eu/', mark: 'read' } as const;
const light = { where: 'Austria', beside: 'Clay 5 %' } as const;
const heavy = { where: 'Austria', beside: 'Clay 40 %' } as const;

const range = (under: string, inside: string, over: string): Class[] => [[under, null, 'below'], [inside, null, 'at'], [over, null, 'above']];

published(source, () => {
  expectClasses([
    { ...light, item: 'ph', line: 'pH #', classes: range('4.7-4.9', '5-6', '6.1-6.3') },
    { ...heavy, item: 'ph', line: 'pH #', classes: range('6.2-6.4', '6.5-6.8', '6.9-7.1') },
    { ...light, item: 'organic-matter', line: 'Humus # %', classes: range('0.6-0.9', '1-2.5', '2.6-3') },
    { ...heavy, item: 'organic-matter', line: 'Humus # %', classes: range('1.5-2.4', '2.5-4', '4.1-5') },
  ]);
});
