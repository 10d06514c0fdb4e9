// California Department of Food and Agriculture (FREP) and UC Davis, "Olive Nitrogen Uptake and Partitioning (California Crop Fertilization Guidelines)". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'cdfa-frep-olive',
  title: 'Olive Nitrogen Uptake and Partitioning (California Crop Fertilization Guidelines)',
  publisher: 'California Department of Food and Agriculture (FREP) and UC Davis',
  url: 'https://www.cdfa.ca.gov/is/ffldrs/frep/FertilizationGuidelines/N_Olive.html',
  mark: 'read',
} as const;

published(source, () => {
  // The range beside the weighted mean of all trials (6.28).
  expectTissue(source.id, {
    removal: [
      ['olive', 'N', 4, 11.1, 'lb/ton'],
    ],
  });
});
