// Worked conversions of soil readings, each with its own source; they can be seen in the answer of `read`.
import { expect, test } from 'vitest';
import { published, reading, readReport } from '../helpers.ts';

const source = {
  id: 'soil-worked',
  title: 'Worked conversions of soil readings',
  publisher: 'several, named beside each',
  url: null,
  mark: 'derived',
} as const;

const table = [
  // Ohio State, Understanding Soil Test Reports: 60 lb P an acre are 30 ppm.
  ['Phosphorus 60 lb/acre Mehlich 3', 'phosphorus', 30, 6],
  // Lecture notes (coursehero 6307340), read: 4 meq of calcium are 800 ppm, by a rounded weight of 200; exactly 801.6.
  ['Calcium 4 meq/100 g', 'calcium', 801.56, 2],
  // Clemson's sample: pounds an acre, halved by the lab's own doubling.
  ['Calcium 400 lb/acre', 'calcium', 200, 6],
  // Washington EM119E's footnote: 0.4 meq of potassium; the table rounds 156 to 150.
  ['Potassium 0.4 meq/100 g', 'potassium', 156.39, 2],
  // Definitions: a percentage is ten grams in a kilogram; milligrams in 100 g are ten times as many in a kilogram.
  ['Total nitrogen 0.15 %', 'nitrogen', 1500, 6],
  ['Magnesium 8 mg/100 g', 'magnesium', 80, 6],
  ['Total nitrogen 1.5 g/kg', 'nitrogen', 1500, 6],
] as const;

// Forms by atomic weight (IUPAC): 44.27 of nitrate are 10 of nitrogen, 29.96 of sulphate and 24.97 of SO3 are 10 of sulphur, 30.66 of phosphate 10 of phosphorus.
const forms = [
  ['NO3 44.27 ppm', 'nitrate-n', 10], ['SO4 29.96 ppm', 'sulphur', 10], ['SO3 2.497 mg/100 g', 'sulphur', 10], ['PO4 30.66 ppm', 'phosphorus', 10],
  ['P2O5 22.91 ppm', 'phosphorus', 10], ['K2O 12.046 mg/100 g', 'potassium', 100], ['Magnesium 16.583 mg MgO/100 g', 'magnesium', 100], ['CaO 139.92 mg/100 g', 'calcium', 1000],
] as const;

// North Carolina's Circular 1, recalled: P-I 100 is 120 mg/dm3, K-I 100 is 195.5; over a weight per volume of 1.2 that is 100 and 162.9 mg/kg.
const northCarolina = {
  'orchard.yaml': 'orchard: One plant\nwhere: Raleigh, North Carolina, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  north bed: soil.txt\ntrees:\n  Number one: apple, planted 2014, 12 ft across, north bed\nstore:\n  - 10-10-10, 40 lb, $20\n',
  'soil.txt': 'pH 6.4\n',
};

published(source, () => {
  for (const [line, item, mgPerKg] of forms) {
    test(`${line}: ${String(mgPerKg)} mg/kg of the element`, async () => {
      const found = reading(await readReport(`${line}\n`), item);
      expect(found.basis).toBe('oxide');
      expect(found.mgPerKg! / mgPerKg).toBeCloseTo(1, 3);
    });
  }

  test('North Carolina\'s indices, with the density on the report, and there alone', async () => {
    const report = 'P-I 100\nK-I 100\nDensity 1.2 g/cm3\n';
    const there = await readReport(report, northCarolina);
    expect(reading(there, 'phosphorus').mgPerKg).toBeCloseTo(100, 6);
    expect(reading(there, 'potassium').mgPerKg).toBeCloseTo(162.92, 2);
    expect(reading(await readReport(report), 'phosphorus').mgPerKg ?? null).toBeNull();
  });

  // 0.3 cmol of charge of potassium in a litre, 117.3 mg, over a density of 1.2.
  test('charge in a litre, over the density', async () => {
    expect(reading(await readReport('Density 1.2 g/cm3\nPotassium 0.3 cmolc/dm3\n'), 'potassium').mgPerKg).toBeCloseTo(97.745, 2);
    expect(reading(await readReport('Density 1.2 g/cm3\nPotassium 3 mmolc/dm3\n'), 'potassium').mgPerKg).toBeCloseTo(97.745, 2);
  });

  // 100 ppm over 8 in at 1.33 g/cm3: 241 lb/acre (row of the notes), which is 270.1 kg/ha.
  test('kg/ha over the depth and density of the report', async () => {
    expect(reading(await readReport('depth: 8 in\nDensity 1.33 g/cm3\nPotassium 270.1 kg/ha\n'), 'potassium').mgPerKg).toBeCloseTo(100, 0);
  });

  for (const [line, item, mgPerKg, digits] of table) {
    test(`${line}: ${String(mgPerKg)} mg/kg`, async () => {
      expect(reading(await readReport(`${line}\n`), item).mgPerKg).toBeCloseTo(mgPerKg, digits);
    });
  }

  test('4 meq of calcium: within the rounding of 200 for 200.4 of the notes\' 800 ppm', async () => {
    const found = reading(await readReport('Calcium 4 meq/100 g\n'), 'calcium').mgPerKg!;
    expect(Math.abs(found / 800 - 1)).toBeLessThan(0.0025);
  });

  test('pounds an acre: neither depth nor density comes between', async () => {
    const report = 'depth: 8 in\nDensity 1.1 g/cm3\nPhosphorus 60 lb/acre Mehlich 3\n';
    expect(reading(await readReport(report), 'phosphorus').mgPerKg).toBeCloseTo(30, 6);
  });
});
