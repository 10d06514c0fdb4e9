// University of California Statewide IPM Program, "Fertilizing citrus", 2017.
// The figures were typed a second time, from a stored text of the page itself.
import { LB, expectFigures, expectNeeds, published } from '../helpers.ts';

const source = {
  id: 'california-citrus',
  title: 'Fertilizing citrus',
  publisher: 'University of California Statewide IPM Program',
  url: 'https://ipm.ucanr.edu/PMG/GARDEN/FRUIT/CULTURAL/citfertilization.html',
  mark: 'read',
} as const;

const where = 'California, US';

// Year, the planting year being the first, and pounds of nitrogen a tree.
// The first year is given in tablespoons of an unnamed feed and is left out.
const table = [
  [2025, 0.25],
  [2024, 0.5],
  [2023, 0.75],
  [2022, 1],
  [2012, 1],
] as const;

published(source, () => {
  for (const [planted, pounds] of table) {
    const facts = `lemon, planted ${String(planted)}, 10 ft across`;
    expectFigures(source.id, [[facts, [pounds * LB], { where }]]);
    expectNeeds([[facts, { N: pounds * LB }, { where }]]);
  }
});
