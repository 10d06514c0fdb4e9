// New Zealand Avocado, "Nutrient removal with harvest". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'nz-avocado-removal',
  title: 'Nutrient removal with harvest',
  publisher: 'New Zealand Avocado',
  url: 'https://industry.nzavocado.co.nz/grow/nutrient-removal-with-harvest/',
  mark: 'read',
} as const;

published(source, () => {
  // What 10 tonnes of fruit take away, as elements.
  expectTissue(source.id, {
    removal: [
      ['avocado', 'N', 32.7 / 10, 32.7 / 10, 'kg/t'],
      ['avocado', 'P', 4.8 / 10, 4.8 / 10, 'kg/t'],
      ['avocado', 'K', 51.1 / 10, 51.1 / 10, 'kg/t'],
    ],
  });
});
