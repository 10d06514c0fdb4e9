// Sulphur by all that is printed, what else acidifies, and the reasons against both. Each value from the publication named
// beside it; where only a copy was read it says so.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ACIDIFIERS } from '../../src/tables/acidifiers.ts';
import { CACO3_PER_SULPHUR } from '../../src/units/substance.ts';
import { medlar } from '../medlar.ts';
import { expectPrinted, figuresOf, G_PER_M2, near, ph } from '../published/ph.ts';

const partsOf = (id: string): number => ACIDIFIERS.find((a) => a.id === id)!.perSulphur;

// Worked out from atomic weights by hand: formula weight ÷ (charges ÷ 2 × 32.06).
test.each([
  ['aluminium-sulphate', 6.93], ['aluminium-sulphate-14', 6.18], ['aluminium-sulphate-dry', 3.56], ['iron-sulphate', 8.67], ['iron-sulphate-1', 5.3], ['iron-sulphate-dry', 4.74], ['iron-3-sulphate', 5.84], ['ammonium-sulphate', 2.06],
])('%s: %d parts are as acid as one of sulphur', (id, parts) => { expect(partsOf(id)).toBeCloseTo(parts, 2); });

test('published equivalents agree as far as they were rounded', () => {
  // USDA Handbook 60 (memory): 8.69 and 6.94, within 0.3 %. Royal Horticultural Society: 1,080 g of ferrous sulphate for 135 g. A&L (copy): nearly seven.
  expect(Math.abs(partsOf('iron-sulphate') / 8.69 - 1)).toBeLessThan(0.003);
  expect(Math.abs(partsOf('aluminium-sulphate') / 6.94 - 1)).toBeLessThan(0.003);
  expect(Math.abs(partsOf('iron-sulphate') / (1080 / 135) - 1)).toBeLessThan(0.1);
  expect(Math.round(partsOf('aluminium-sulphate'))).toBe(7);
  // 21.2 % nitrogen; 1.5 lb of sulphur is 10.4 lb of aluminium sulphate; 2 lb is 13.9 and 17.3 (atomic weights).
  expect(ACIDIFIERS.find((a) => a.id === 'ammonium-sulphate')!.nitrogen).toBeCloseTo(21.2, 1);
  expect(1.5 * partsOf('aluminium-sulphate')).toBeCloseTo(10.4, 1);
  expect(2 * partsOf('aluminium-sulphate')).toBeCloseTo(13.9, 1);
  expect(2 * partsOf('iron-sulphate')).toBeCloseTo(17.3, 1);
  // 12 t/ha of lime on 20 m²: 1,200 g/m², which 384 g/m² of sulphur undoes, 7.7 kg in all.
  expect(1200 / CACO3_PER_SULPHUR).toBeCloseTo(384, 0);
  expect((20 * 1200) / CACO3_PER_SULPHUR / 1000).toBeCloseTo(7.7, 1);
});

const blueberry = { crop: 'blueberry' } as const;

// Maine, wild-blueberry land from 4.5 to 4.0 (copy): 500 lb/acre.
expectPrinted('maine-254', 'lb/acre', [[{ ...blueberry, now: 4.5, goal: 4, texture: 'loam' }, 500], [{ ...blueberry, now: 6, goal: 5, texture: 'sand' }, 1000]]);
// Minnesota (copy): 1 to 2 lb on sandy, 3 to 6 lb on loam for a bed of 10 ft by 10 ft by 6 in. An answer quoting it (copy): 0.8 to 2.4 by texture.
expectPrinted('minnesota-sulphur', 'lb/100 sq ft', ([['sand', 1], ['sand', 2], ['loam', 3], ['loam', 6]] as const).map(([texture, rate]) => [{ ...blueberry, now: 6, goal: 5, texture }, rate]));
expectPrinted('minnesota-sulphur-answer', 'lb/100 sq ft', [[{ ...blueberry, now: 6, goal: 5, texture: 'sand' }, 0.8], [{ ...blueberry, now: 6, goal: 5, texture: 'clay' }, 2.4]]);
// Garden pages, weak: 10, 15 and 20 lb; 15 lb on any soil; 0.75, 1.5 to 2 and 3 lb.
expectPrinted('garden-sulphur-page', 'lb/1000 sq ft', [[{ ...blueberry, now: 6, goal: 5, texture: 'sandy loam' }, 10], [{ ...blueberry, now: 6, goal: 5, texture: 'loam' }, 15], [{ ...blueberry, now: 6, goal: 5, texture: 'clay' }, 20]]);
expectPrinted('old-house-sulphur-page', 'lb/1000 sq ft', [[{ ...blueberry, now: 6, goal: 5, texture: 'clay' }, 15]]);
expectPrinted('guides-sulphur-page', 'lb/100 sq ft', [[{ ...blueberry, now: 6, goal: 5, texture: 'sand' }, 0.75], [{ ...blueberry, now: 6, goal: 5, texture: 'loam' }, 1.5], [{ ...blueberry, now: 6, goal: 5, texture: 'loam' }, 2], [{ ...blueberry, now: 6, goal: 5, texture: 'clay' }, 3]]);
// A garden blog's bed: down 1.2 at 0.2 lb for each tenth is 2.4 lb to 100 sq ft, which is Tennessee's rate on silt loam.
expectPrinted('tennessee-blueberry-ph', 'lb/1000 sq ft', [[{ ...blueberry, now: 6.7, goal: 5.5, texture: 'silt loam' }, 24]]);

test.each([
  // Ontario: feasible below 6.5. Tennessee: for each tenth above 5.5. Minnesota: from 5.5 to 7.0. Maine: wild blueberries.
  ['ontario-blueberry-ph', 'kg/ha', { ...blueberry, now: 6.5, goal: 5 }, { ...blueberry, now: 6.6, goal: 5 }],
  ['tennessee-blueberry-ph', 'lb/1000 sq ft', { ...blueberry, now: 6, goal: 5.5 }, { ...blueberry, now: 6, goal: 5.4 }],
  ['minnesota-sulphur', 'lb/100 sq ft', { crop: 'pear', now: 7, goal: 6.5 }, { crop: 'pear', now: 7.1, goal: 6.5 }],
  ['maine-254', 'lb/acre', { ...blueberry, now: 6, goal: 5 }, { crop: 'pear', now: 7, goal: 6.5 }],
] as const)('%s serves inside of what it prints alone', async (source, unit, inside, outside) => {
  expect(figuresOf(await ph({ ...inside, texture: 'loam' }), source, unit).length).toBeGreaterThan(0);
  const held = figuresOf(await ph({ ...outside, texture: 'loam' }), source, unit).filter((f) => f.step === 'sulphur-rule');
  expect(held).toEqual([]);
});

test('a weak page is shown, never followed', async () => {
  // Clay, down 0.3: a garden page gives 4.5 lb to 1000 sq ft, the least of the rest is Purdue's 17 × 0.3 = 5.1.
  const { row } = await ph({ ...blueberry, now: 5.5, goal: 5.2, texture: 'clay' });
  near(row.range?.[0], 4.5 * G_PER_M2['lb/1000 sq ft']);
  near(row.gPerM2, 5.1 * G_PER_M2['lb/1000 sq ft']);
});

type Instead = { material: string; gPerM2: number; atOnceGPerM2?: number; nitrogenGPerM2?: number }[];
test('instead of sulphur: by the acid they make; no aluminium for blueberries; iron at most 7 lb to 100 sq ft in one go', async () => {
  const acid = await ph({ ...blueberry, now: 6, goal: 5, texture: 'sand' });
  const instead = (acid.row as unknown as { instead: Instead }).instead;
  expect(instead.map((i) => i.material)).toEqual(['iron-sulphate', 'ammonium-sulphate']);
  near(instead[0]!.gPerM2, acid.row.gPerM2 * 8.67);
  near(instead[0]!.atOnceGPerM2, 7 * G_PER_M2['lb/100 sq ft']);
  near(instead[1]!.nitrogenGPerM2, acid.row.gPerM2 * 2.06 * 0.212);
  const pear = (await ph({ crop: 'pear', now: 7, goal: 6.5, texture: 'loam' })).row as unknown as { instead: Instead };
  expect(pear.instead.map((i) => i.material)).toContain('aluminium-sulphate');
  // A bed kept at 5.5 or lower (a garden page, weak).
  expect(((await ph({ crop: 'pear', now: 6, goal: 5.5, texture: 'loam' })).row as unknown as { instead: Instead }).instead.map((i) => i.material)).not.toContain('aluminium-sulphate');
  // In a product of 90 % the sulphur is the same, so is what stands for it.
  const product = await ph({ ...blueberry, now: 6, goal: 5, texture: 'sand', material: 'Sulphur, 90 %' });
  near((product.row as unknown as { instead: Instead }).instead[0]!.gPerM2, instead[0]!.gPerM2);
});

test('a soil that fizzes is not acidified, one that does not may be', async () => {
  for (const fizz of ['strong', 'weak']) {
    const { row } = await ph({ ...blueberry, now: 6.5, texture: 'sand', fizz });
    expect([row.verdict, (row as unknown as { reason: string }).reason, row.gPerM2]).toEqual(['cannot', 'free-lime', 0]);
  }
  expect((await ph({ ...blueberry, now: 6.5, texture: 'sand', fizz: 'none' })).row.verdict).toBe('sulphur');
  // That nothing is heard does not undo what the lab found.
  expect((await ph({ ...blueberry, now: 6.5, texture: 'sand', fizz: 'none', carbonate: 1 })).row.verdict).toBe('cannot');
  const wrong = await medlar(['ph', '--now', '6.5', '--fizz', 'loud']);
  expect([wrong.code, wrong.stderr.includes('strong, weak or none')]).toEqual([2, true]);
});

const planned = async (soil: string, tree = 'blueberry', more = '') => {
  const { json } = await medlar(['plan', '--json'], { 'orchard.yaml': `where: Ohio, US\n${more}soil:\n  bed: soil.txt\ntrees:\n  A: ${tree}, planted 2019, 6 ft across, bed\n`, 'soil.txt': `${soil}\n` });
  return { row: json.result.ph[0] as { verdict: string; reason: string; gPerM2: number; freeLime?: { years: number } }, said: json.notices.map((n) => n.text).join('\n'), codes: json.notices.map((n) => n.code) };
};

test('a word for carbonate alone is a no', async () => {
  const { row, said } = await planned('Soil pH 6.6\nFree lime: high\nTexture: sand');
  expect([row.verdict, row.reason, row.gPerM2]).toEqual(['cannot', 'free-lime', 0]);
  // 0.1 %: 640 lb/acre, 71.7 g/m², at 34.2 a year: three years.
  expect(row.freeLime!.years).toBe(3);
  for (const word of ['tub', 'raised bed', 'another crop']) expect(said).toContain(word);
});

test('salts or sodium come before sulphur', async () => {
  for (const line of ['Soluble salts 3 mmho/cm (saturated paste)', 'SAR 20']) {
    const { row } = await planned(`Soil pH 6\nTexture: sand\n${line}`);
    expect([line, row.verdict, row.reason, row.gPerM2]).toEqual([line, 'leave', 'stopped', 0]);
  }
  expect((await planned('Soil pH 6\nTexture: sand\nSoluble salts 0.5 mmho/cm (saturated paste)')).row.verdict).toBe('sulphur');
});

test.each([
  // EDDHA above 7.2 (Colorado); DTPA to about 7, EDTA to 6.5 (a supplier's agronomist).
  ['fig', 7.4, 'EDDHA'], ['quince', 6.8, 'DTPA'], ['pear', 8.4, 'EDDHA'],
])('%s at pH %d: the chelate %s', async (tree, now, chelate) => { expect((await planned(`Soil pH ${now}`, tree)).said).toContain(`chelate ${chelate}`); });

test('water over 100 mg/L of alkalinity undoes the sulphur: in so many waterings', async () => {
  // Sand, 6.0 to 5.0: 7 lb/1000 sq ft is 34.2 g/m², which is 34.2 × 3.122 = 106.7 g of lime; an inch at 200 mg/L brings 5.08 g/m²: 21.
  const { said, codes } = await planned('Soil pH 6\nTexture: sand', 'blueberry', 'water: alkalinity 200 ppm\n');
  expect(codes).toContain('ph-water-undoes');
  expect(said).toContain('21 waterings of an inch');
  expect((await planned('Soil pH 6\nTexture: sand', 'blueberry', 'water: alkalinity 90 ppm\n')).codes).not.toContain('ph-water-undoes');
  expect((await planned('Soil pH 4.8\nTexture: sand', 'blueberry', 'water: alkalinity 200 ppm\n')).codes).not.toContain('ph-water-undoes');
});

const tenths = (low: number, high: number): fc.Arbitrary<number> => fc.integer({ min: Math.round(low * 10), max: Math.round(high * 10) }).map((n) => n / 10);
const texture = fc.constantFrom('sand', 'sandy loam', 'loam', 'clay');
const RUNS = { numRuns: 30 };

test('a lower goal never takes less sulphur', async () => {
  await fc.assert(fc.asyncProperty(tenths(5.6, 7), tenths(4.5, 5.5), tenths(4.5, 5.5), texture, async (now, a, b, word) => {
    const [low, high] = [Math.min(a, b), Math.max(a, b)];
    const dose = async (goal: number): Promise<number> => (await ph({ ...blueberry, now, goal, texture: word })).row.gPerM2;
    expect(await dose(low)).toBeGreaterThanOrEqual((await dose(high)) - 1e-9);
  }), RUNS);
});

test('a purer product never needs more', async () => {
  await fc.assert(fc.asyncProperty(tenths(5.4, 7), texture, fc.integer({ min: 30, max: 100 }), fc.integer({ min: 30, max: 100 }), async (now, word, a, b) => {
    const dose = async (percent: number): Promise<number> => (await ph({ ...blueberry, now, texture: word, material: `Sulphur, ${String(percent)} %` })).row.gPerM2;
    expect(await dose(Math.max(a, b))).toBeLessThanOrEqual((await dose(Math.min(a, b))) + 1e-9);
  }), RUNS);
});
