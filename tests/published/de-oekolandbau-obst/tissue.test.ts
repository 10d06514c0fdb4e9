// oekolandbau.de (BLE), "Nährstoffbedarf von Kern- und Steinobst". The figures were typed a second time, from a stored text of the page.
import { expectTissue, published } from '../helpers.ts';

const source = {
  id: 'de-oekolandbau-obst',
  title: 'Nährstoffbedarf von Kern- und Steinobst',
  publisher: 'oekolandbau.de (BLE)',
  url: 'https://oekolandbau.de/landwirtschaft/pflanze/spezieller-pflanzenbau/obstbau/grundlagen-kern-und-steinobst/kulturtechnik/naehrstoffbedarf-von-kern-und-steinobst/',
  mark: 'read',
} as const;

published(source, () => {
  // Pome and stone fruit alike: what 25 t take away. Phosphorus is printed as the element, potash as Kali.
  expectTissue(source.id, {
    removal: [
      ['apple', 'N', 20 / 25, 20 / 25, 'kg/t'],
      ['plum', 'N', 20 / 25, 20 / 25, 'kg/t'],
    ],
  });
});
