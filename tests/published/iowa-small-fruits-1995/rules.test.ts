// Iowa State University Extension, "Fertilizing Tree and Small Fruits" (1995).
// The figures were typed a second time, from a stored text of the page.
import { OZ, expectFigures, published } from '../helpers.ts';

const source = { id: 'iowa-small-fruits-1995', title: 'Fertilizing Tree and Small Fruits', publisher: 'Iowa State University', url: 'https://hortnews.extension.iastate.edu/1995/3-24-1995/fert.html', mark: 'read' } as const;

published(source, () => {
  // About a cup of 10-10-10 a plant, currants and gooseberries; a cup is half a pound (Virginia).
  expectFigures(source.id, [
    ['redcurrant, planted 2021, shoots 1 in', [8 * 0.1 * OZ], { where: 'Iowa, US' }],
    ['gooseberry, planted 2021, shoots 1 in', [8 * 0.1 * OZ], { where: 'Iowa, US' }],
  ]);
});
