// Farmers Trend, "Fertiliser application and pruning of Hass and Fuerte varieties". The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ke-egerton-avocado',
  title: 'Fertiliser application and pruning of Hass and Fuerte varieties',
  publisher: 'Farmers Trend',
  url: 'https://www.farmerstrend.co.ke/fertiliser-application-and-pruning-of-hass-and-fuerte-varieties/',
  mark: 'read',
} as const;

published(source, () => {
  // CAN (26 % N) a tree in the first to the tenth year after planting.
  expectFigures(source.id, [
    ['avocado, planted 2025, shoots 1 in', [60 * 0.26], { where: 'Kenya' }],
    ['avocado, planted 2024, shoots 1 in', [85 * 0.26], { where: 'Kenya' }],
    ['avocado, planted 2023, shoots 1 in', [500 * 0.26], { where: 'Kenya' }],
    ['avocado, planted 2022, shoots 1 in', [750 * 0.26], { where: 'Kenya' }],
    ['avocado, planted 2021, shoots 1 in', [1000 * 0.26], { where: 'Kenya' }],
    ['avocado, planted 2020, shoots 1 in', [2000 * 0.26], { where: 'Kenya' }],
    ['avocado, planted 2019, shoots 1 in', [3000 * 0.26], { where: 'Kenya' }],
    ['avocado, planted 2018, shoots 1 in', [4000 * 0.26], { where: 'Kenya' }],
    ['avocado, planted 2017, shoots 1 in', [5000 * 0.26], { where: 'Kenya' }],
    ['avocado, planted 2016, shoots 1 in', [6000 * 0.26], { where: 'Kenya' }],
  ]);
});
