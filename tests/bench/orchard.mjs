/** An orchard of `n` trees on one soil, of several kinds, ages and sizes. */
const CROPS = ['apple, dwarf', 'pear, semi-dwarf', 'peach', 'plum', 'tart cherry', 'sweet cherry', 'apple, standard', 'quince'];
export const REPORT = 'Soil pH 5.5\nBuffer pH (SMP) 6.6\nPhosphorus 18 ppm LOW\nPotassium 95 ppm LOW\nTexture sandy loam\n';
const STORE = ['Urea, 46-0-0, 50 lb, $30', 'Sulfate of ammonia, 21-0-0, 40 lb, $25', '10-10-10, 40 lb, $20', 'Triple superphosphate, 0-46-0, 40 lb, $30', 'Sulfate of potash, 0-0-50, 40 lb, $40'];
export const orchardOf = (n) => `where: Pennsylvania, US\nlast-frost: 10 May\nfirst-frost: 8 October\nsoil:\n  hill: a.txt\ntrees:\n${Array.from({ length: n }, (_, i) => `  T${i + 1}: ${CROPS[i % CROPS.length]}, planted ${2005 + ((7 * i) % 18)}, ${6 + ((5 * i) % 14)} ft across, shoots ${3 + (i % 7)} in 2025, hill\n`).join('')}store:\n${STORE.map((b) => `  - ${b}\n`).join('')}`;
