// Instituto Agronômico, São Paulo, "Lemon yield and fruit quality affected by NPK fertilization" (2002). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'brazil-lemon-npk',
  title: 'Lemon yield and fruit quality affected by NPK fertilization',
  publisher: 'Instituto Agronômico, São Paulo',
  url: null,
  mark: 'read',
} as const;

published(source, () => {
  // The highest yield at 220 kg N a hectare and year.
  expectFigures(source.id, [
    ['lemon, planted 2014, bearing, spacing 5 x 8 m, shoots 1 in', [5 * 8 * 22], { where: 'São Paulo, Brazil' }],
  ]);
});
