// California Walnut Board / UC Cooperative Extension, "Nitrogen Management for Mature, Bearing Orchards – Research Update". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'walnut-board-n',
  title: 'Nitrogen Management for Mature, Bearing Orchards – Research Update',
  publisher: 'California Walnut Board / UC Cooperative Extension',
  url: 'https://walnuts.org/resource/nitrogen-management-mature-bearing-orchards-research-update',
  mark: 'read',
} as const;

published(source, () => {
  // The mean of six orchards in three years, a ton in the shell.
  expectTissue(source.id, {
    removal: [
      ['walnut', 'N', 29, 29, 'lb/ton'],
    ],
  });
});
