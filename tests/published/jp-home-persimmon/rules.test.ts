// くだもの・科学・健康ジャーナル, "家庭で楽しむ果物作り 第17回 カキの施肥について(その2)". The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'jp-home-persimmon',
  title: '家庭で楽しむ果物作り 第17回 カキの施肥について(その2)',
  publisher: 'くだもの・科学・健康ジャーナル',
  url: 'http://moduep.mizubasyou.com/kachan/kachan_17.html',
  mark: 'read',
} as const;

published(source, () => {
  // A large mature tree (15 years and more): 0.5 to 0.7 kg N, or about half of it (2.5 to 3.5 kg of a 10 % compound).
  expectFigures(source.id, [
    ['persimmon, planted 2006, bearing, shoots 1 in', [[2500 * 0.1, 500], [3500 * 0.1, 700]], { where: 'Japan' }],
  ]);
});
