// Numbers that are none, or not what they seem. Expectations are typed from good sense: a number is read for what it
// is, or it is refused at its place; never a part of it, and never an infinity. Source of all: practice.
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import { medlar } from '../medlar.ts';

const NEXT = '\nPotassium 180 ppm Olsen\npH 6.4\n';
const first = (text: string) => {
  const report = readReport(text + (text.startsWith('pH') ? '\nPotassium 180 ppm Olsen\n' : NEXT), 'r.txt');
  const own = report.samples.flatMap((s) => s.readings).filter((r) => r.place.line === 1);
  return { report, own, notices: report.notices.filter((n) => n.place?.line === 1), unread: report.samples.flatMap((s) => s.unread).filter((u) => u.line === 1) };
};

/** Every number of the answer is a number; the other lines of the report stay as they are. */
async function sound(text: string): Promise<void> {
  // A raw NaN would be no JSON, and 1e309 is read back as an infinity.
  const { json } = await medlar(['read', '-', '--json'], {}, text);
  const walk = (node: unknown): void => {
    if (typeof node === 'number') expect(Number.isFinite(node)).toBe(true);
    else if (typeof node === 'object' && node !== null) for (const part of Object.values(node)) walk(part);
  };
  walk(json);
  // JSON writes null for what is no number: a reading has its number or a word of the lab.
  for (const sample of json.result?.samples ?? []) for (const r of sample.readings as { item: string; value: number | null; lab?: { rating: string | null } | null; rating?: string | null }[]) {
    if (r.item !== 'texture' && r.value === null) expect(r.lab?.rating ?? r.rating).toBeTruthy();
  }
  // Text for a terminal holds no infinity that the report did not print.
  const plain = await medlar(['read', '-'], {}, text);
  if (!/infinity|nan|undefined/i.test(text)) expect(plain.stdout + plain.stderr).not.toMatch(/\bNaN\b|Infinity|undefined/);
}

describe('refused at its place, which names it', () => {
  test.each([
    // what stands there, the line around it
    ['1e309', 'Phosphorus 1e309 ppm Olsen'],
    ['NaN', 'Phosphorus NaN ppm Olsen'],
    ['Infinity', 'Phosphorus Infinity ppm Olsen'],
    ['-Infinity', 'Phosphorus -Infinity ppm Olsen'],
    ['0x10', 'Phosphorus 0x10 ppm Olsen'],
    ['1.2.3', 'Phosphorus 1.2.3 ppm Olsen'],
    ['1,2,3', 'Phosphorus 1,2,3 ppm Olsen'],
    ['6.4.1', 'pH 6.4.1'],
    ['1e309', 'pH 1e309'],
    ['NaN', 'pH NaN'],
    ['-5', 'Phosphorus -5 ppm Olsen'],
    ['−5', 'Phosphorus −5 ppm Olsen'],
    ['--5', 'Phosphorus --5 ppm Olsen'],
    ['-12', 'Phosphorus = -12 ppm Olsen'],
    ['-1', 'Organic matter -1 %'],
    ['-3', 'CEC -3 meq/100g'],
    ['-0.2', 'Soluble salts -0.2 dS/m'],
    ['-6', 'pH -6'],
    ['-6.8', 'Buffer pH -6.8'],
    ['-5', 'Potassium saturation -5 %'],
    ['99999999999999999999', 'Phosphorus 99999999999999999999 ppm Olsen'],
    ['1e309', 'Potassium 1e309 lb/acre'],
    ['1e309', 'CEC 1e309 meq/100g'],
  ])('%s in "%s"', async (odd, line) => {
    const { own, notices } = first(line);
    expect(own).toEqual([]);
    const told = notices.filter((n) => n.severity === 'error');
    expect(told).toHaveLength(1);
    const at = told[0]!.place!;
    // The caret lies on the number: it starts within it, and ends no later.
    const start = [...line.slice(0, line.indexOf(odd))].length + 1;
    expect(at.column).toBeGreaterThanOrEqual(start);
    expect(at.column + at.length).toBeLessThanOrEqual(start + odd.length);
    expect(at.length).toBeGreaterThan(0);
    expect(odd).toContain(String(told[0]!.facts.read));
    await sound(line + NEXT);
  });
});

describe('read for what it is, or refused; never in part', () => {
  test.each([
    ['1.2e2', 120], ['1.2E2', 120], ['1.2E+02', 120], ['1.2e+2', 120], ['12e3', 12000], ['1e-3', 0.001], ['5E-01', 0.5], ['1.2 x 10^2', 120], ['1.2×10²', 120], ['1.2 * 10^2', 120], ['10²', 100],
    ['1½', 1.5], ['½', 0.5], ['1/2', 0.5], ['1 1/2', 1.5], ['1_000', 1000], ['12 34', null], ['4O', null], ['l2', null], ['6.4e', null], ['42,5.1', null], ['1,23,456', null], ['12,34', 12.34], ['1.234.5', null], ['4 2', null],
    ['٤٢', 42], ['四二', null], ['IV', null], ['#REF!', null], ['#DIV/0!', null], ['null', null], ['undefined', null], ['TRUE', null], ['$42', null], ['42?', 42], ['42*', 42], ['~42', 42], ['ca. 42', 42], ['42.', 42], ['+42', 42], ['042', 42], ['.42', 0.42], ['0', 0], ['-0', 0],
  ] as const)('%s', async (printed, value) => {
    const { own, notices, unread } = first(`Phosphorus ${printed} ppm Olsen`);
    if (own.length > 0) {
      expect(own.map((r) => [r.item, r.value === 0 ? 0 : r.value, r.unit])).toEqual([['phosphorus', value, 'ppm']]);
      expect(own[0]!.to).toBeUndefined();
    } else expect(notices.length + unread.length).toBeGreaterThan(0);
    await sound(`Phosphorus ${printed} ppm Olsen${NEXT}`);
  });

  test.each(['1.2e2', '1.2E+02', '12e3', '1e-3'])('%s is not only a warning: it is read, or it is an error', (printed) => {
    const { own, notices } = first(`Phosphorus ${printed} ppm Olsen`);
    expect(own.length > 0 || notices.some((n) => n.severity === 'error')).toBe(true);
  });

  test.each(['42', '0', '0.5', '1,234', '.5'])('%s, which is sound, is read outright', (printed) => {
    const { own, notices } = first(`Phosphorus ${printed} ppm Olsen`);
    expect(own.map((r) => r.value)).toEqual([Number(printed.replace(',', ''))]);
    expect(notices).toEqual([]);
  });

  test('a true negative stays: exchangeable sodium of growers.md U11', () => {
    expect(first('Exchangeable Sodium = -5.81%').own.map((r) => [r.value, r.unit])).toEqual([[-5.81, '%']]);
  });

  test('a dash between name and value is no minus: growers.md U7', () => {
    for (const dash of ['-', '–', '—']) expect(first(`Potassium ${dash} 193 ppm`).own.map((r) => r.value)).toEqual([193]);
  });
});

describe('elsewhere than in the value', () => {
  test.each(['Phosphorus 42 ppm Olsen (1e309-2e309)', 'Phosphorus 42 ppm Olsen (NaN-50)', 'Phosphorus 42 ppm Olsen (30-Infinity)', 'Phosphorus 42 ppm Olsen (-5-50)', 'Phosphorus 42 ppm Olsen  <1e309', 'Phosphorus 42 ppm Olsen, 1e309 lb/acre', 'Phosphorus 1e309-2e309 ppm Olsen', 'Phosphorus < 1e309 ppm Olsen', 'Phosphorus > Infinity ppm Olsen', 'Phosphorus index 1e309', 'Phosphorus 42 ppm Olsen index 99999999999999999999'])('%s', async (line) => {
    const { own } = first(line);
    for (const r of own) {
      expect(Number.isFinite(r.value ?? 0)).toBe(true);
      expect(r.value === null || r.value === 42).toBe(true);
      for (const edge of [...(r.lab.range ?? []), r.to ?? 0]) expect(edge === null || (Number.isFinite(edge) && edge >= 0 && edge < 1e7)).toBe(true);
    }
    await sound(line + NEXT);
  });

  test.each([
    ['comma-separated', 'Test,Result,Unit\nPhosphorus,{},ppm\nPotassium,180,ppm\n'],
    ['tabs', 'Test\tResult\tUnit\nPhosphorus\t{}\tppm\nPotassium\t180\tppm\n'],
    ['Markdown', '| Test | Result | Unit |\n|---|---|---|\n| Phosphorus | {} | ppm |\n| Potassium | 180 | ppm |\n'],
    ['a header of names', 'Sample | P (ppm) | K (ppm)\nOld bed | {} | 180\n'],
  ])('in a table: %s', async (_, table) => {
    for (const odd of ['1e309', 'NaN', '0x10', '1.2.3', '--5', '-5', '1.2e2', '12e3', 'Infinity']) {
      const text = table.replace('{}', odd);
      const { samples, notices } = readReport(text, 'r.txt');
      const readings = samples.flatMap((s) => s.readings);
      const sense: Readonly<Record<string, number>> = { '1.2e2': 120, '12e3': 12000 };
      const phosphorus = readings.filter((r) => r.item === 'phosphorus');
      for (const r of phosphorus) expect([odd, r.value]).toEqual([odd, sense[odd]]);
      if (phosphorus.length === 0) expect([odd, notices.some((n) => n.severity === 'error')]).toEqual([odd, true]);
      // Its neighbour keeps its own value.
      expect([odd, readings.filter((r) => r.item === 'potassium').map((r) => r.value)]).toEqual([odd, [180]]);
      await sound(text);
    }
  });
});
