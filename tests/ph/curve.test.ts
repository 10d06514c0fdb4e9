// Amount against pH. Ontario on loam: 110 kg/ha for each tenth; Purdue on clay 17 lb to 1000 sq ft for a unit (copy); Oregon EM 9585, Sikora.
import { expect, test } from 'vitest';
import { curveOf } from '../../src/ph/curve.ts';
import type { PhAsk } from '../../src/ph/ph.ts';
import { phPlan } from '../../src/ph/ph.ts';
import type { PhSoil } from '../../src/ph/soil.ts';
import { told } from '../../src/reason/figure.ts';
import { medlar } from '../medlar.ts';
import { G_PER_M2 } from '../published/ph.ts';

const soil = (ph: number, more: Partial<PhSoil> = {}): PhSoil => ({ now: told(ph, 'pH', 'soil', 'test'), buffer: null, acidity: null, aluminium: null, baseSaturation: null, calcium: null, exchangeableMagnesium: null, ecec: null, bufferCapacity: null, lime: null, depthM: null, texture: null, cec: null, carbonate: null, organic: null, magnesium: null, ...more });
const ask = (crop: 'blueberry' | 'apple', ground: PhSoil): PhAsk => ({ crop, word: crop, soil: ground, strength: { lime: 1, sulphur: 1 }, region: null, stopped: false, awaitsRetest: false });
const curve = (a: PhAsk): ReturnType<typeof curveOf> => curveOf(a, phPlan(a)!);

test('sulphur: a point for each tenth down to the goal, more for every one', () => {
  const points = curve(ask('blueberry', soil(5.8, { texture: 'clay' })));
  expect(points.map((p) => p.ph)).toEqual([5.8, 5.7, 5.6, 5.5, 5.4, 5.3, 5.2, 5.1, 5]);
  // The least of all pages on clay is a garden page's 15 lb to 1000 sq ft for a unit (weak), as the range shows it.
  expect(points.at(-1)!.low).toBeCloseTo(0.8 * 15 * G_PER_M2['lb/1000 sq ft'], 6);
  points.slice(1).forEach((p, i) => {
    expect(p.low).toBeGreaterThan(points[i]!.low);
    expect(p.high).toBeGreaterThanOrEqual(p.low);
  });
});

test('lime: up to the goal by the test\'s own table, dug in', () => {
  const points = curve(ask('apple', soil(5.5, { buffer: { value: 6.4, test: 'sikora' } })));
  expect([points[0], points.at(-1)!.ph]).toEqual([{ ph: 5.5, low: 0, high: 0 }, 6.5]);
  // At a buffer of 6.4, to pH 6.0: 1.5 tons an acre; to 6.4: 2.1.
  expect(points.find((p) => p.ph === 6)!.low).toBeCloseTo(1.5 * G_PER_M2['ton/acre'], 6);
  expect(points.find((p) => p.ph === 6.4)!.low).toBeCloseTo(2.1 * G_PER_M2['ton/acre'], 6);
});

test('nothing to draw where nothing goes on, or where the lab\'s rate knows one goal alone', () => {
  expect(curve(ask('apple', soil(6.5)))).toEqual([]);
  expect(curve(ask('blueberry', soil(8.4)))).toEqual([]);
  expect(curve(ask('apple', soil(5.5, { lime: { ...told(40, 'lb/1000 sq ft', 'lime', 'test') } })))).toEqual([]);
});

test('ph says it line by line, once for a zone', async () => {
  const files = { 'orchard.yaml': 'where: Ohio, US\nsoil:\n  bed: soil.txt\n  top: top.txt\ntrees:\n  A: blueberry, planted 2019, 6 ft across, bed\n  B: blueberry, planted 2019, 6 ft across, bed\n  C: apple, planted 2019, 6 ft across, top\n', 'soil.txt': 'Soil pH 6\nTexture: sand\n', 'top.txt': 'Soil pH 6.5\n' };
  // Sand, 6.0 to 5.0: Purdue's 7 lb to Maine's 1,000 lb an acre, 23 lb to 1000 sq ft.
  const { stdout } = await medlar(['ph'], files);
  expect(stdout.match(/^ {2}pH 5\.5 .*$/gm)).toHaveLength(1);
  expect(stdout).toMatch(/^ {2}pH 5 {5}7 to 23 lb\/1,000 sq ft$/m);
});
