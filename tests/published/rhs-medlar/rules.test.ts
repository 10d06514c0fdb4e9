// Royal Horticultural Society, "Medlars (advice profile)". The figures were typed a second time, from a stored text of the page.
import { crown, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'rhs-medlar',
  title: 'Medlars (advice profile)',
  publisher: 'Royal Horticultural Society',
  url: 'https://www.rhs.org.uk/advice/profile?PID=131',
  mark: 'read',
} as const;

published(source, () => {
  // In March a general fertiliser such as Growmore (7-7-7), 70 g a square metre over the rooting area.
  expectFigures(source.id, [
    ['medlar, planted 2012, 16 ft across, grass, shoots 1 in', [crown(16) * 70 * 0.07], { where: 'England, UK' }],
    ['medlar, planted 2019, 8 ft across, bare, shoots 1 in', [crown(8) * 70 * 0.07], { where: 'England, UK' }],
  ]);
});
