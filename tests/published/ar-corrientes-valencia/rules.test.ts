// Cultivos Tropicales, "Efecto de inyecciones nutritivas al tronco en la productividad de naranja valencia" (2015). The figures were typed a second time, from a stored text of the page.
import { expectFigures, published } from '../helpers.ts';

const source = {
  id: 'ar-corrientes-valencia',
  title: 'Efecto de inyecciones nutritivas al tronco en la productividad de naranja valencia',
  publisher: 'Cultivos Tropicales',
  url: 'http://scielo.sld.cu/scielo.php?script=sci_arttext&pid=S0258-59362015000200019',
  mark: 'read',
} as const;

published(source, () => {
  // The full dose: 3 kg of 15-6-15-6 a plant and year.
  expectFigures(source.id, [
    ['orange, planted 2012, bearing, shoots 1 in', [3000 * 0.15], { where: 'Corrientes, Argentina' }],
  ]);
});
