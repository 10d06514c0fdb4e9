// LVWO Weinsberg (Baden-Württemberg), "Düngung im Obstbau - ein Leitfaden", table 1, newer of two versions.
// The figures were typed a second time, from a stored text of the page itself.
import { crown, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'weinsberg',
  title: 'Düngung im Obstbau - ein Leitfaden',
  publisher: 'Staatliche Lehr- und Versuchsanstalt für Wein- und Obstbau Weinsberg',
  url: 'http://www.lvwo-bw.de/pb/,Lde/Startseite/Fachinformationen/Duengung+im+Obstbau+-+ein+Leitfaden',
  mark: 'read',
} as const;

// kg/ha a year: phosphate 40 low, 0 high; potash 150 low, 0 high.
const perM2 = (kgHa: number): number => kgHa / 10;
const ground = crown(12);
const tree = 'apple, semi-dwarf, bearing, planted 2014, 12 ft across, shoots 10 in';
const soil = (phosphorus: string, potassium: string): string =>
  `pH 6.4\nPhosphorus (P) 40 ppm  Mehlich 3  ${phosphorus}\nPotassium (K) 100 ppm  Mehlich 3  ${potassium}\n`;

published(source, () => {
  // Phosphate by distance from target; at target nothing (Ontario, Michigan and Washington).
  expectNeeds([
    [tree, { P2O5: perM2(40) * ground }, { soil: soil('very low', 'high') }],
    [tree, { P2O5: perM2(40) * ground }, { soil: soil('low', 'high') }],
    [tree, { P2O5: perM2(40) * ground }, { soil: soil('medium', 'high') }],
    [tree, { P2O5: 0 }, { soil: soil('optimum', 'high') }],
    [tree, { P2O5: 0 }, { soil: soil('high', 'high') }],
    [tree, { P2O5: 0 }, { soil: soil('very high', 'high') }],
  ]);

  // Potash: the low class is the most, reached far below target or under a very heavy crop.
  expectNeeds([
    [tree, { K2O: perM2(150) * ground }, { soil: soil('high', 'very low') }],
    [`${tree}, fruit 300 lb`, { K2O: perM2(150) * ground }, { soil: soil('high', 'low') }],
    [tree, { K2O: 0 }, { soil: soil('high', 'high') }],
    [`${tree}, fruit 100 lb`, { K2O: 0 }, { soil: soil('high', 'very high') }],
  ]);
});
