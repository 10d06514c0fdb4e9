// Journal of Horticultural Sciences, "Pomegranate, graded doses (PAU Ludhiana)" (2013). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'in-research-rdf-pomegranate',
  title: 'Pomegranate, graded doses (PAU Ludhiana)',
  publisher: 'Journal of Horticultural Sciences',
  url: 'https://doi.org/10.24154/jhs.v8i2.238',
  mark: 'read',
} as const;

published(source, () => {
  // The best treatment: 300 g N a plant.
  expectFigures(source.id, [
    ['pomegranate, planted 2018, bearing, shoots 1 in', [300], { where: 'Punjab, India' }],
  ]);
});
