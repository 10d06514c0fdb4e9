// wissen.obstwein-technik.eu, "Besonderheiten bei der Düngung von Obstarten: Marille und Kirsche". The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'at-obstwein-technik-marille',
  title: 'Besonderheiten bei der Düngung von Obstarten: Marille und Kirsche',
  publisher: 'wissen.obstwein-technik.eu',
  url: 'https://wissen.obstwein-technik.eu/doku.php?do=export_raw&id=2._pflege-_und_kulturmassnahmen%3A1_naehrstoffversorgung%3A05_besonderheiten_bei_der_duengung_von_obstarten%3A03_marille_und_kirsche',
  mark: 'read',
} as const;

published(source, () => {
  // Cherries in full bearing: the standard is 70 kg N a hectare and year. (The apricots go by yield.)
  expectFigures(source.id, [
    ['sweet cherry, planted 2014, bearing, spacing 4 x 5 m, shoots 1 in', [4 * 5 * 7], { where: 'Austria' }],
    ['cherry, planted 2010, bearing, spacing 5 x 6 m, shoots 1 in', [5 * 6 * 7], { where: 'Austria' }],
  ]);
});
