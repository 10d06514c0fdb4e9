// International Journal of Current Microbiology and Applied Sciences, "Peach cv Shan-e-Punjab, recommended dose (GB Pant University)" (2018). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'in-research-rdf-peach',
  title: 'Peach cv Shan-e-Punjab, recommended dose (GB Pant University)',
  publisher: 'International Journal of Current Microbiology and Applied Sciences',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // Trees of five and six years: 420 g N a year.
  expectFigures(source.id, [
    ['peach, planted 2021, shoots 1 in', [420], { where: 'Uttarakhand, India' }],
    ['peach, planted 2020, shoots 1 in', [420], { where: 'Uttarakhand, India' }],
  ]);
});
