// Unit factors from definitions and from standard atomic masses (CIAAW/IUPAC abridged values:
// P 30.974, K 39.098, Mg 24.305, Ca 40.078, Na 22.990, O 15.999), and Penn State's furrow slice.
// Typed from research notes; the masses are common reference values.
import { expect, test } from 'vitest';
import { published, reading, readReport } from '../helpers.ts';

const source = {
  id: 'unit-factors',
  title: 'Standard atomic weights; What is an acre furrow slice of soil?',
  publisher: 'CIAAW (IUPAC); Penn State Extension',
  url: 'https://extension.psu.edu/what-is-an-acre-furrow-slice-of-soil',
  mark: 'derived',
} as const;

// Line, item, basis, mg of the element in a kg of soil, decimals that the notes carry.
const table = [
  ['Phosphorus 35 mg P2O5/100 g CAL', 'phosphorus', 'oxide', 152.75, 1],
  ['Phosphorus 10 mg P2O5/100 g CAL', 'phosphorus', 'oxide', 43.64, 1],
  ['Potassium 24 mg K2O/100 g CAL', 'potassium', 'oxide', 199.2, 1],
  ['Potassium 10 mg K2O/100 g CAL', 'potassium', 'oxide', 83.02, 1],
  ['Calcium 1 meq/100 g ammonium acetate', 'calcium', 'element', 200.39, 1],
  ['Calcium 4 meq/100 g ammonium acetate', 'calcium', 'element', 801.6, 1],
  ['Magnesium 1 meq/100 g ammonium acetate', 'magnesium', 'element', 121.53, 1],
  ['Potassium 1 meq/100 g ammonium acetate', 'potassium', 'element', 390.98, 1],
  ['Potassium 0.4 meq/100 g ammonium acetate', 'potassium', 'element', 156.4, 1],
  ['Potassium 1 cmol/kg ammonium acetate', 'potassium', 'element', 390.98, 1],
  ['Sodium 1 meq/100 g ammonium acetate', 'sodium', 'element', 229.9, 1],
  ['Magnesium 8 mg/100 g CAL', 'magnesium', 'element', 80, 6],
  ['Phosphorus 42 ppm Olsen', 'phosphorus', 'element', 42, 6],
  ['Phosphorus 42 mg/kg Olsen', 'phosphorus', 'element', 42, 6],
] as const;

published(source, () => {
  for (const [line, item, basis, mgPerKg, digits] of table) {
    test(`${line}: ${String(mgPerKg)} mg/kg`, async () => {
      const found = reading(await readReport(`${line}\n`), item);
      expect(found.basis).toBe(basis);
      expect(found.mgPerKg).toBeCloseTo(mgPerKg, digits);
    });
  }

  // Depth and density at which an acre weighs two million pounds: the convention and the sum agree.
  const slices = [
    ['6 in', 1.471],
    ['6.7 in', 1.317],
    ['7 in', 1.261],
    ['8 in', 1.103],
  ] as const;
  for (const [depth, density] of slices) {
    test(`60 lb/acre over ${depth} at ${String(density)} g/cm3: 30 mg/kg`, async () => {
      const report = `depth: ${depth}\nDensity ${String(density)} g/cm3\nPhosphorus 60 lb/acre Mehlich 3\n`;
      expect(reading(await readReport(report), 'phosphorus').mgPerKg).toBeCloseTo(30, 1);
    });
  }

  test('milligrams a litre are divided by the density of the prepared soil', async () => {
    const report = 'Density 1.25 g/cm3\nPhosphorus 25 mg/L Olsen\n';
    expect(reading(await readReport(report), 'phosphorus').mgPerKg).toBeCloseTo(20, 6);
  });

  test('milligrams a litre without a density stay unknown', async () => {
    expect(reading(await readReport('Phosphorus 25 mg/L Olsen\n'), 'phosphorus').mgPerKg).toBeNull();
  });
});
