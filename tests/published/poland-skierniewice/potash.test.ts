// Research Institute of Pomology, Skierniewice, 2009: phosphate and potash in orchards.
// Typed from research notes; the page seen relays the institute's table and breaks off
// in the row used here, and no page of the institute itself was found.
import { crown, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'poland-skierniewice',
  title: 'Zalecenia nawożenia fosforem i potasem w sadach',
  publisher: 'Research Institute of Pomology, Skierniewice',
  url: null,
  mark: 'read',
} as const;

// A bearing orchard low in potash: from 80 kg K2O/ha.
const least = (80 / 10) * crown(12);
const tree = 'apple, semi-dwarf, bearing, planted 2014, 12 ft across, shoots 10 in';
const soil = (potassium: string): string =>
  `pH 6.4\nPhosphorus (P) 80 ppm  Mehlich 3  high\nPotassium (K) 60 ppm  Mehlich 3  ${potassium}\n`;

published(source, () => {
  expectNeeds([
    [tree, { K2O: least }, { soil: soil('low') }],
    [tree, { K2O: least }, { soil: soil('medium') }],
    [`${tree}, fruit 20 lb`, { K2O: least }, { soil: soil('low') }],
  ]);
});
