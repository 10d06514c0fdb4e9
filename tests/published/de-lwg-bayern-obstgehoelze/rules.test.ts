// Bayerische Landesanstalt für Weinbau und Gartenbau, "Hinweise zur Düngung von Obstgehölzen im Garten". The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'de-lwg-bayern-obstgehoelze',
  title: 'Hinweise zur Düngung von Obstgehölzen im Garten',
  publisher: 'Bayerische Landesanstalt für Weinbau und Gartenbau',
  url: 'https://lwg.bayern.de/cms06/gartenakademie/gartendokumente/infoschriften/124869/index.php',
  mark: 'read',
} as const;

published(source, () => {
  // First 3 to 4 years: on the planting disc 10 g of Blaukorn Entec (14 % N) or 15 g of Hornoska (8 % N) a year.
  expectFigures(source.id, [
    ['apple, planted 2025, shoots 1 in', [[10 * 0.14, 15 * 0.08]], { where: 'Bavaria, Germany' }],
    ['plum, planted 2024, shoots 1 in', [[10 * 0.14, 15 * 0.08]], { where: 'Bavaria, Germany' }],
    ['blackcurrant, planted 2025, shoots 1 in', [[10 * 0.14, 15 * 0.08]], { where: 'Bavaria, Germany' }],
    ['gooseberry, planted 2024, shoots 1 in', [[10 * 0.14, 15 * 0.08]], { where: 'Bavaria, Germany' }],
  ]);
});
