// Förderverein Streuobstwiesen an Murg und Oos e.V., "Nährstoffversorgung unserer Bäume, Teil 2" (2022). The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'streuobst-murg-oos',
  title: 'Nährstoffversorgung unserer Bäume, Teil 2',
  publisher: 'Förderverein Streuobstwiesen an Murg und Oos e.V.',
  url: 'https://www.streuobstwiesen-murg-oos.de/stammt-2022-6-2',
  mark: 'read',
} as const;

published(source, () => {
  // With each tonne of apples.
  expectTissue(source.id, {
    removal: [
      ['apple', 'N', 0.4, 0.4, 'kg/t'],
      ['apple', 'P2O5', 0.125, 0.125, 'kg/t'],
      ['apple', 'K', 1.1, 1.4, 'kg/t'],
    ],
  });
});
