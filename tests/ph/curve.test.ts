// Amount against pH. Ontario on loam: 110 kg/ha for each tenth; Purdue on clay 17 lb to 1000 sq ft for a unit (copy); Oregon EM 9585, Sikora.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
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

test('lime: as wide as the publications of one test lie apart', () => {
  // Pennsylvania, acidity 6.5, to 6.5: 110 lb to 1000 sq ft in the garden table; its field rule 840 × 6.5 lb an acre, which is 125.
  const points = curve({ ...ask('apple', soil(5.6, { acidity: 6.5 })), region: 'US-PA' });
  const end = points.find((p) => p.ph === 6.5)!;
  expect([end.low, end.high].map((g) => Math.round(g / G_PER_M2['lb/1000 sq ft']))).toEqual([110, 125]);
});

test('the sheet draws it and says it, once for plants that share it; a plant without lime has none', async () => {
  const files = { 'orchard.yaml': 'where: Oregon, US\nsoil:\n  bed: soil.txt\n  top: top.txt\ntrees:\n  A: apple, planted 2012, 12 ft across, bed\n  B: apple, planted 2012, 12 ft across, bed\n  C: apple, planted 2012, 12 ft across, top\n', 'soil.txt': 'Soil pH 5.3\nSikora buffer pH 6.4\ndepth: 6 in\n', 'top.txt': 'Soil pH 6.5\n' };
  let html = '';
  await medlar(['sheet'], files, '', (folder) => { html = readFileSync(join(folder, 'sheet.html'), 'utf8'); });
  const said = [...html.matchAll(/<svg class="curve" role="img" aria-label="([^"]*)"/g)].map((m) => m[1]!);
  expect(said).toHaveLength(1);
  // Oregon lists 1.5 tons an acre to pH 6.0 and 2.1 to 6.4; 45.9 lb to 1000 sq ft is a ton an acre.
  const [, amount, goal] = /^From pH 5\.3 .* 6 in deep: A, B ([\d.]+) lb\/1,000 sq ft to ([\d.]+)\./.exec(said[0]!)!;
  expect(Number(goal)).toBeGreaterThan(6);
  expect(Number(goal)).toBeLessThanOrEqual(6.8);
  expect(Number(amount)).toBeGreaterThan(1.5 * 45.9);
  expect(Number(amount)).toBeLessThan(2.9 * 45.9);
  expect(html).not.toMatch(/NaN|Infinity|undefined/);
});

test('ph says it line by line, once for a zone', async () => {
  const files = { 'orchard.yaml': 'where: Ohio, US\nsoil:\n  bed: soil.txt\n  top: top.txt\ntrees:\n  A: blueberry, planted 2019, 6 ft across, bed\n  B: blueberry, planted 2019, 6 ft across, bed\n  C: apple, planted 2019, 6 ft across, top\n', 'soil.txt': 'Soil pH 6\nTexture: sand\n', 'top.txt': 'Soil pH 6.5\n' };
  // Sand, 6.0 to 5.0: Purdue's 7 lb to Maine's 1,000 lb an acre, 23 lb to 1000 sq ft.
  const { stdout } = await medlar(['ph'], files);
  expect(stdout.match(/^ {2}pH 5\.5 .*$/gm)).toHaveLength(1);
  expect(stdout).toMatch(/^ {2}pH 5 {5}7 to 23 lb\/1,000 sq ft {3}A, B$/m);
});
