// ARGE Streuobst Österreich, "Düngerempfehlung bei Streuobstbäume" (2024). The figures were typed a second time, from a stored text of the page.
import { crown, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'at-arge-streuobst',
  title: 'Düngerempfehlung bei Streuobstbäume',
  publisher: 'ARGE Streuobst Österreich',
  url: 'https://argestreuobst.at/blog/2024/03/24/duengerempfehlung-bei-streuobstbaeume',
  mark: 'read',
} as const;

published(source, () => {
  // A complete fertiliser 12:8:16, 5 to 6 kg for 100 square metres of crown (0.5 to 0.6 kg for 10).
  expectFigures(source.id, [
    ['apple, standard, planted 2006, 20 ft across, grass, shoots 1 in', [crown(20) * 50 * 0.12, crown(20) * 60 * 0.12], { where: 'Austria' }],
    ['pear, standard, planted 1996, 26 ft across, grass, shoots 1 in', [crown(26) * 50 * 0.12, crown(26) * 60 * 0.12], { where: 'Austria' }],
    ['plum, standard, planted 2012, 12 ft across, grass, shoots 1 in', [crown(12) * 50 * 0.12, crown(12) * 60 * 0.12], { where: 'Austria' }],
  ]);
});
