// Whose pH range leads, what stands beside it, and the answer from outside it. Figures from the publications named:
// Tennessee SP307-A 6.0 to 6.5 for fruit trees; Washington EM119E 6.0 to 7.5; Nebraska 5.6 to 7.0; Florida HS1234 5.8 to 7.0
// for most fruit and SL253 6.0 to 6.5 for citrus, limed below 5.5; Georgia fig 5.5 to 6.5; FAO EcoCrop for the world.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

type Row = { tree: string; verdict: string; reason: string; now: number; goal: number; suits: [number, number]; gPerM2: number; ranges: { source: string; low: number; high: number }[]; freeLime?: { percent: number; years: number } };

const folder = (where: string, trees: readonly string[], soil: string, more = ''): Record<string, string> => ({
  'orchard.yaml': `where: ${where}\n${more}soil:\n  bed: soil.txt\ntrees:\n${trees.map((t) => `  ${t}, planted 2019, 6 ft across, bed\n`).join('')}`, 'soil.txt': `${soil}\n`,
});
const planned = async (where: string, trees: readonly string[], soil: string, more = '') => {
  const { json } = await medlar(['plan', '--json'], folder(where, trees, soil, more));
  return { json, rows: json.result.ph as Row[], codes: json.notices.map((n) => n.code), text: (code: string) => json.notices.find((n) => n.code === code)?.text ?? '' };
};
const row = async (where: string, tree: string, ph: number): Promise<Row> => (await planned(where, [`A: ${tree}`], `Soil pH ${String(ph)}\nTexture: loam`)).rows[0]!;

// The grower's own state or country, else tree fruit there, else the world's (with Washington's for tree fruit).
test.each([
  ['Tennessee, US', 'apple', 6, 6.5], ['Nebraska, US', 'pear', 5.6, 7], ['Washington, US', 'apple', 6, 7.5], ['Florida, US', 'peach', 6, 6.5], ['Florida, US', 'plum', 5.8, 7], ['Georgia, US', 'fig', 5.5, 6.5], ['Florida, US', 'orange', 6, 6.5],
  ['Tennessee, US', 'blueberry', 4.8, 5.5], ['Ontario, Canada', 'blueberry', 4.2, 5], ['Georgia, US', 'blueberry', 4, 5.5],
  // No state of their own: 6 to 7.5 widened by EcoCrop's low; EcoCrop's optimum alone; a kind of citrus with the genus (5 to 6.5); blueberry as the extension services have it.
  ['Ohio, US', 'apple', 6, 7.5], ['Ohio, US', 'plum', 5.5, 7.5], ['Ohio, US', 'quince', 6, 6.5], ['Ohio, US', 'blueberry', 4, 5.3], ['Spain', 'lemon', 5, 7], ['Ohio, US', 'sour cherry', 6, 7.5], ['Ohio, US', 'crab apple', 6.2, 7],
  // A page without a publisher (6.0 to 7.8) and a figure from memory (6.0 to 6.8) never lead; nor does a single number (muscadine 6.0, blueberry 5.0 and 4.5).
  ['California, US', 'fig', 6, 7], ['Ohio, US', 'raspberry', 5.5, 6.5], ['Florida, US', 'muscadine', 6, 7], ['North Carolina, US', 'blueberry', 4, 5.3], ['Utah, US', 'blueberry', 4, 5.3],
] as const)('%s, %s: %d to %d', async (where, tree, low, high) => { expect((await row(where, tree, 6.2)).suits).toEqual([low, high]); });

test('all that is printed stands in the answer, the leading range first', async () => {
  // Apple: Tennessee leads at home; Washington, Nebraska, California's handout and EcoCrop beside it.
  const { ranges } = await row('Tennessee, US', 'apple', 6.2);
  expect(ranges[0]).toEqual({ source: 'ut-sp307a', low: 6, high: 6.5 });
  for (const r of [{ source: 'washington-em119e', low: 6, high: 7.5 }, { source: 'nebraska-fruit-column', low: 5.6, high: 7 }, { source: 'edible-trees-handout', low: 6.5, high: 7 }, { source: 'fao-ecocrop', low: 6, high: 7 }]) expect(ranges).toContainEqual(r);
  // Tennessee: a peach and a fig are no apple.
  expect((await row('Ohio, US', 'fig', 6.5)).ranges.map((r) => r.source).sort()).toEqual(['edible-trees-handout', 'fao-ecocrop', 'georgia-fig-column']);
  const blueberry = (await row('Ohio, US', 'blueberry', 4.8)).ranges;
  expect(blueberry).toContainEqual({ source: 'florida-hs1234', low: 4.5, high: 5.5 });
  // Every source stops at 5.5.
  expect(Math.max(...blueberry.map((r) => r.high))).toBe(5.5);
});

test('why lists them with their marks; the sheet does not', async () => {
  const files = folder('Ohio, US', ['A: apple'], 'Soil pH 6.4');
  const why = (await medlar(['why', 'A', 'lime'], files)).stdout;
  for (const said of ['6 to 7.5', 'Nebraska', 'Food and Agriculture Organization', '5.6 to 7']) expect(why).toContain(said);
  let sheet = '';
  await medlar(['sheet', '--as', 'text'], files, '', (at) => { sheet = readFileSync(`${at}/sheet.txt`, 'utf8'); });
  expect(sheet).toContain('6.4');
  expect(sheet).not.toContain('Nebraska');
});

test.each([
  // Quince 6 to 6.5, at most 7: tolerated at 6.8, beyond at 7.3. Sweet cherry's 7.0 lies inside of Washington's 7.5.
  ['Ohio, US', 'quince', 6.8, 'leave', 'tolerated'], ['Ohio, US', 'quince', 7.3, 'leave', 'beyond'], ['Ohio, US', 'cherry', 7.3, 'leave', 'inside'], ['Ohio, US', 'fig', 7.4, 'leave', 'tolerated'],
  // Florida citrus 6.0 to 6.5, limed below 5.5 alone.
  ['Florida, US', 'orange', 5.7, 'leave', 'tolerated-low'], ['Florida, US', 'orange', 5.3, 'lime', 'texture'], ['Spain', 'lemon', 5.7, 'leave', 'inside'], ['Spain', 'lemon', 4.7, 'lime', 'texture'],
  // Acid enough, or too acid: neither sulphur nor lime.
  ['Tennessee, US', 'blueberry', 4.5, 'leave', 'acid-enough'], ['Ohio, US', 'blueberry', 4.2, 'leave', 'inside'], ['Ohio, US', 'blueberry', 3.8, 'leave', 'over-acid'],
  ['Ohio, US', 'blueberry', 8.4, 'cannot', 'too-high'], ['Ohio, US', 'pear', 8.4, 'cannot', 'too-high'], ['Ohio, US', 'blueberry', 5.8, 'sulphur', 'sulphur'],
] as const)('%s, %s at pH %d: %s, %s', async (where, tree, ph, verdict, reason) => {
  const r = await row(where, tree, ph);
  expect([r.verdict, r.reason]).toEqual([verdict, reason]);
  if (verdict === 'leave' || verdict === 'cannot') expect(r.gPerM2).toBe(0);
});

test('a pear in a lawn at pH 4.2 is limed, not left to be tolerated', async () => {
  const { rows } = await planned('Ohio, US', ['A: pear, fed lawn'], 'Soil pH 4.2\nTexture: loam');
  expect(rows[0]!.verdict).toBe('lime');
  expect(rows[0]!.gPerM2).toBeGreaterThan(0);
});

test('the goal from above is the top of what leads: 5.5 in Tennessee, EcoCrop\'s 5.0 elsewhere', async () => {
  expect((await row('Tennessee, US', 'blueberry', 6)).goal).toBe(5.5);
  expect((await row('Ohio, US', 'blueberry', 6)).goal).toBe(5);
  expect((await row('Ontario, Canada', 'blueberry', 6)).goal).toBe(5);
});

test('one zone with two wants says so once, with its plants', async () => {
  // Blueberry 4.0 to 5.3, plum 5.5 to 7.5, apple 6 to 7.5: the least of the others is 5.5.
  const { json, codes, text } = await planned('Ohio, US', ['B1: blueberry', 'B2: blueberry', 'P: plum', 'A: apple'], 'Soil pH 5.4\nTexture: loam');
  expect(codes.filter((c) => c === 'ph-zone-two-wants')).toHaveLength(1);
  const said = text('ph-zone-two-wants');
  for (const part of ['B1, B2', 'P, A', '4 to 5.3', '5.5 or more', 'tub']) expect(said).toContain(part);
  expect(json.ok).toBe(true);
  expect((await planned('Ohio, US', ['P: plum', 'A: apple', 'Q: quince'], 'Soil pH 5.4\nTexture: loam')).codes).not.toContain('ph-zone-two-wants');
  expect((await planned('Ohio, US', ['P: plum', 'B: blueberry, tub 15 gal'], 'Soil pH 5.4\nTexture: loam')).codes).not.toContain('ph-zone-two-wants');
  // Figs of 6 to 7 stand with pecans of 5.5 to 7.
  expect((await planned('Ohio, US', ['F: fig', 'P: pecan'], 'Soil pH 6.2')).codes).not.toContain('ph-zone-two-wants');
});

// Tennessee: sulphur for blueberries is worked in before planting, over 30 lb to 1,000 sq ft two thirds of it first; it wants 3 to 12 months (Ontario).
describe('a bed of blueberries still to be planted', () => {
  const row = async (ph: string, texture: string, planting: string, bed = ', bed 20 x 5 ft') => {
    const run = await medlar(['ph', '--json', '--today', '2026-03-01'], { 'orchard.yaml': `where: Ohio, US\nsoil:\n  a: a.txt\ntrees:\n  Blues: 6 blueberry, planting ${planting}${bed}, a\n`, 'a.txt': `Soil pH ${ph}\nTexture: ${texture}\ndepth: 6 in\n` });
    return { row: (run.json.result as { ph: { verdict: string; g: number; gPerM2: number; range: [number, number] | null; doses: { from: string; until: string }[] }[] }).ph[0]!, codes: run.json.notices.map((n) => n.code) };
  };
  const LB_1000 = 453.59237 / (1000 * 0.3048 ** 2);
  test('the whole way goes through the whole bed, months before', async () => {
    // The least page on sand is Purdue's 7 lb to a unit: 1.4 units from 6.4 to 5.0 are 9.8 lb; a sixth of 100 sq ft each.
    const { row: r, codes } = await row('6.4', 'sand', 'March 2027');
    expect(r.gPerM2).toBeCloseTo(9.8 * LB_1000, 4);
    expect(Math.abs(r.g - (9.8 / 10 / 6) * 453.59237)).toBeLessThan(15);
    expect([r.doses[0]!.from, r.doses[0]!.until <= '2026-12-01']).toEqual(['2026-03-01', true]);
    expect(codes).toContain('ph-sulphur-bed');
  });
  test('too late for this planting: it is put off, nothing goes on', async () => {
    const { row: r, codes } = await row('6.4', 'sand', 'April 2026');
    expect([r.g, r.doses, codes.includes('ph-sulphur-late')]).toEqual([0, [], true]);
  });
  test('without a bed its size is asked for', async () => expect((await row('6.4', 'sand', 'March 2027', '')).codes).toContain('ph-bed-missing'));
  test('over 30 lb two thirds go first', async () => {
    // Purdue on clay: 17 lb to a unit, 1.9 units are 32.3 lb.
    expect((await row('6.9', 'clay', 'March 2027')).row.gPerM2).toBeCloseTo(((32.3 * 2) / 3) * LB_1000, 4);
  });
});

test('another place\'s lime table is told by its publisher where the own has none for the test', async () => {
  const limed = async (where: string, test: string) => planned(where, ['A: apple'], `Soil pH 5.2\n${test}\nTexture: loam`);
  const ohio = await limed('Ohio, US', 'Mehlich buffer pH 6.1');
  expect(ohio.rows[0]!.verdict).toBe('lime');
  for (const part of ['bed', 'Ohio', 'North Carolina']) expect(ohio.text('ph-lime-elsewhere')).toContain(part);
  expect((await limed('North Carolina, US', 'Mehlich buffer pH 6.1')).codes).not.toContain('ph-lime-elsewhere');
  expect((await limed('Ohio, US', 'SMP buffer pH 6.5')).codes).not.toContain('ph-lime-elsewhere');
  expect((await limed('Ohio, US', 'Lime requirement 2 tons/acre')).codes).not.toContain('ph-lime-elsewhere');
});

test('where lime or sulphur goes on, the sheet says which plants to keep it from', async () => {
  const sheet = async (ph: string): Promise<string> => (await medlar(['sheet', '--as', 'text'], folder('Ohio, US', ['B: blueberry', 'A: apple'], `Soil pH ${ph}\nTexture: loam`))).stdout.replace(/\s+/g, ' ');
  expect(await sheet('5.4')).toContain('and away from B.');
  expect(await sheet('7.3')).not.toContain('and away from B.');
});
