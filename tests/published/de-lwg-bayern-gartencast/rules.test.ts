// Bayerische Landesanstalt für Weinbau und Gartenbau, "Gartencast: Düngung von Obstgehölzen im Garten" (2018). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'de-lwg-bayern-gartencast',
  title: 'Gartencast: Düngung von Obstgehölzen im Garten',
  publisher: 'Bayerische Landesanstalt für Weinbau und Gartenbau',
  url: 'https://lwg.bayern.de/cms06/gartenakademie/gartendokumente/gartencast/186254/index.php',
  mark: 'read',
} as const;

published(source, () => {
  // Without compost, for each plant: 100 g of Hornoska (8 % N) or 70 to 100 g of Blaukorn Entec (14 % N).
  expectFigures(source.id, [
    ['apple, planted 2014, shoots 1 in', [[70 * 0.14, 100 * 0.08], 100 * 0.14], { where: 'Bavaria, Germany' }],
    ['redcurrant, planted 2018, shoots 1 in', [[70 * 0.14, 100 * 0.08], 100 * 0.14], { where: 'Bavaria, Germany' }],
  ]);
});
