// Factors against their definitions: international yard and pound (1959), US gallon of 231 cubic inches, acre of 43,560
// square feet, and again against mathjs, whose own figures are rounded in places.
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { cupsOf } from '../../src/units/cups.ts';
import { ELEMENT_SHARE, MG_PER_CMOL } from '../../src/units/substance.ts';
import type { Unit } from '../../src/units/units.ts';
import { convert, UNITS } from '../../src/units/units.ts';

const LB = 453.59237;
const FT = 0.3048;
const CUP = (231 * 2.54 ** 3) / 16;

const DEFINED: Record<Unit, number> = {
  g: 1, kg: 1000, oz: LB / 16, lb: LB,
  m: 1, cm: 1 / 100, mm: 1 / 1000, in: FT / 12, ft: FT,
  m2: 1, 'sq ft': FT ** 2, ha: 100 * 100, acre: 43_560 * FT ** 2,
  mL: 1, L: 1000, cup: CUP, gal: 231 * 2.54 ** 3,
  'g/m2': 1, 'kg/ha': 1000 / 10_000, 'lb/acre': LB / (43_560 * FT ** 2), 'ton/acre': (2000 * LB) / (43_560 * FT ** 2), 't/ha': 1e6 / 1e4, 'dt/ha': 1e5 / 1e4, 'lb/1000 sq ft': LB / (1000 * FT ** 2), 'lb/100 sq ft': LB / (100 * FT ** 2),
  'g/mL': 1, 'oz/cup': LB / 16 / CUP, 'lb/ft3': LB / (FT * 100) ** 3, 'lb/yd3': LB / (3 * FT * 100) ** 3, 'g/L': 1,
  'lb/year': LB, 'oz/year': LB / 16, 'g/year': 1, 'lb/in': LB / (FT / 12), 'lb/ft': LB / FT,
  'kg/t': 1 / 1000, 'mg/kg': 1, ppm: 1, 'mg/100g': 1000 / 100, 'g/kg': 1e3, 'mg/L': 1, 'g/dm3': 1000, 'cmol/kg': 1, 'mmol/kg': 1 / 10, 'cmol/dm3': 1, 'mmolc/dm3': 1 / 10,
  'mS/cm': 1e-3 / 1e-2 / 0.1, 'mmho/cm': 1e-3 / 1e-2 / 0.1, 'uS/cm': 1e-6 / 1e-2 / 0.1, 'mS/m': 1e-3 / 0.1, index: 1, '%': 1, year: 1, day: 1, pH: 1, 'dS/m': 1, 'meq/100g': 1, bag: 1, dose: 1, times: 1,
};

test('every unit has a definition here, and no other', () => {
  expect(Object.keys(UNITS).sort()).toEqual(Object.keys(DEFINED).sort());
});

test.each(Object.entries(DEFINED) as [Unit, number][])('%s', (name, factor) => {
  expect(Math.abs(UNITS[name].factor / factor - 1)).toBeLessThan(1e-12);
});

describe('mathjs agrees where it knows the unit', () => {
  const KNOWN: [Unit, string, string][] = [
    ['kg', 'kg', 'g'], ['oz', 'oz', 'g'], ['lb', 'lb', 'g'], ['cm', 'cm', 'm'], ['mm', 'mm', 'm'], ['in', 'in', 'm'], ['ft', 'ft', 'm'],
    ['sq ft', 'sqft', 'm2'], ['ha', 'hectare', 'm2'], ['acre', 'acre', 'm2'], ['L', 'L', 'mL'], ['cup', 'cup', 'mL'], ['gal', 'gallon', 'mL'],
    ['kg/ha', 'kg/hectare', 'g/m2'], ['lb/acre', 'lb/acre', 'g/m2'], ['lb/ft3', 'lb/cuft', 'g/mL'], ['lb/yd3', 'lb/yd^3', 'g/mL'],
  ];
  test.each(KNOWN)('%s', (name, said, base) => {
    // Its cup and acre are rounded to four figures.
    expect(Math.abs(UNITS[name].factor / unit(`1 ${said}`).toNumber(base) - 1)).toBeLessThan(3e-4);
  });
  test.each([100, 1000] as const)('lb/%i sq ft', (n) => {
    expect(Math.abs(UNITS[`lb/${n} sq ft`].factor / (unit('1 lb/sqft').toNumber('g/m2') / n) - 1)).toBeLessThan(3e-4);
  });
});

describe('convert', () => {
  test('there and back', () => {
    const names = Object.keys(UNITS) as Unit[];
    for (const a of names) for (const b of names) {
      if (UNITS[a].kind === UNITS[b].kind) expect(convert(convert(7.25, a, b), b, a)).toBeCloseTo(7.25, 10);
      else expect(() => convert(1, a, b)).toThrow(RangeError);
    }
  });
  test('units of different kinds are both named', () => { expect(() => convert(1, 'lb', 'ft')).toThrow(/\blb\b.*\bft\b/); });
  test('by hand', () => {
    // 1 lb/1000 sq ft is 4.88 g/m2; 100 lb/acre is 112.1 kg/ha; 1 ha is 2.471 acres.
    expect(convert(1, 'lb/1000 sq ft', 'g/m2')).toBeCloseTo(4.882, 3);
    expect(convert(100, 'lb/acre', 'kg/ha')).toBeCloseTo(112.085, 3);
    expect(convert(1, 'ha', 'acre')).toBeCloseTo(2.47105, 5);
    expect(convert(1, 'gal', 'cup')).toBeCloseTo(16, 12);
  });
});

describe('oxides, against figures in print', () => {
  // UK fertiliser labels: 0.436 and 0.83; the other way 2.29 and 1.2; Penn State's roundings 2.3, 1.2, 1.6 (soil-tests.md 2.3).
  test('P2O5', () => {
    expect(ELEMENT_SHARE.P2O5.share).toBeCloseTo(0.436, 3);
    expect((1 / ELEMENT_SHARE.P2O5.share).toFixed(2)).toBe('2.29');
    expect((1 / ELEMENT_SHARE.P2O5.share).toFixed(1)).toBe('2.3');
  });
  test('K2O', () => {
    expect(ELEMENT_SHARE.K2O.share).toBeCloseTo(0.83, 2);
    expect((1 / ELEMENT_SHARE.K2O.share).toFixed(1)).toBe('1.2');
  });
  test.each([['P2O5', 2.2913], ['K2O', 1.2046], ['MgO', 1.6583], ['CaO', 1.3992], ['SO3', 2.4971], ['NO3', 4.4266]] as const)('%s: x %f', (oxide, factor) => {
    expect(Math.abs(1 / ELEMENT_SHARE[oxide].share - factor)).toBeLessThan(1.5e-4);
  });
  // Definition: the element that is not oxygen. Sodium: 2 × 22.990 of 2 × 22.990 + 15.999 (IUPAC).
  test.each([['P2O5', 'P'], ['K2O', 'K'], ['MgO', 'Mg'], ['CaO', 'Ca'], ['Na2O', 'Na'], ['SO3', 'S'], ['SO4', 'S'], ['NO3', 'N'], ['PO4', 'P']] as const)('%s holds %s', (oxide, element) => { expect(ELEMENT_SHARE[oxide].element).toBe(element); });
  test('every oxide is here', () => { expect(Object.keys(ELEMENT_SHARE).sort()).toEqual(['CaO', 'K2O', 'MgO', 'NO3', 'Na2O', 'P2O5', 'PO4', 'SO3', 'SO4'].sort()); });
  test('Na2O', () => { expect(ELEMENT_SHARE.Na2O.share).toBeCloseTo(45.98 / 61.979, 9); });
  test('charge: 1 meq/100 g is 391 ppm K, 200 Ca, 121.5 Mg, 230 Na', () => {
    expect(MG_PER_CMOL.K).toBeCloseTo(390.98, 1);
    expect(MG_PER_CMOL.Ca).toBeCloseTo(200.39, 1);
    expect(MG_PER_CMOL.Mg).toBeCloseTo(121.5, 0);
    expect(MG_PER_CMOL.Na).toBeCloseTo(229.9, 0);
  });
});

// Definition: a US cup is 16 tablespoons, a tablespoon 3 teaspoons. A kitchen's smallest measure is a quarter teaspoon.
test('cups to a quarter, tablespoons to a half, teaspoons to a quarter, nothing smaller', () => {
  expect(cupsOf(CUP * 1.45)).toEqual({ cups: 1.5 });
  expect(cupsOf(CUP * 0.23)).toEqual({ cups: 0.25 });
  expect(cupsOf(UNITS.cup.factor * 0.21875)).toEqual({ cups: 0.25 }); // Three and a half tablespoons of sixteen: nearer to a quarter cup than a cook would count spoons.
  expect(cupsOf(CUP * 0.218)).toEqual({ spoons: 3.5 });
  expect(cupsOf(CUP * 0.13)).toEqual({ spoons: 2 });
  expect(cupsOf(CUP / 16)).toEqual({ spoons: 1 });
  expect(cupsOf(CUP / 48)).toEqual({ teaspoons: 1 });
  expect(cupsOf(CUP / 48 / 4)).toEqual({ teaspoons: 0.25 });
  expect(cupsOf(CUP / 48 / 5)).toBeNull();
});
// By arithmetic: marks a quarter apart, from a quarter on, are off by a third at the most (0.375 shown as 0.25 or 0.5).
test('a measure is never far from what it measures', () => {
  for (let mL = 1.3; mL < 3000; mL *= 1.01) {
    const m = cupsOf(mL)!;
    const shown = 'cups' in m ? m.cups * CUP : 'spoons' in m ? (m.spoons * CUP) / 16 : (m.teaspoons * CUP) / 48;
    expect(shown / mL, String(mL)).toBeLessThan(1.34);
    expect(shown / mL, String(mL)).toBeGreaterThan(0.66);
  }
});
