// California Department of Food and Agriculture (FREP) and UC Davis, "Walnut Nitrogen Uptake and Partitioning (California Crop Fertilization Guidelines)". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'cdfa-walnut-removal',
  title: 'Walnut Nitrogen Uptake and Partitioning (California Crop Fertilization Guidelines)',
  publisher: 'California Department of Food and Agriculture (FREP) and UC Davis',
  url: 'https://www.cdfa.ca.gov/is/ffldrs/frep/FertilizationGuidelines/N_Walnut.html',
  mark: 'read',
} as const;

published(source, () => {
  // The range beside the weighted mean of both trials (31.9).
  expectTissue(source.id, {
    removal: [
      ['walnut', 'N', 24, 46.4, 'lb/ton'],
    ],
  });
});
