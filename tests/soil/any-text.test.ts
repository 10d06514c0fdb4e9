// Any text at all: a result, never an exception; places that exist; chatter that changes nothing; work that grows with length.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rateSample } from '../../src/rating/rate.ts';
import type { Report } from '../../src/soil/read.ts';
import { readReport } from '../../src/soil/read.ts';

const WORDS = ['pH', 'Phosphorus', 'P', 'K', 'K2O', 'P2O5', '(P)', 'Potassium', 'Magnesium', 'Organic matter', 'EC', 'Sample', 'Sample 2:', 'taken:', 'depth:', 'method:', 'unit:', 'phosphorus method: Mehlich 3', 'Mehlich 3', 'Olsen', 'ppm', 'mg/kg', 'lb/acre', 'mg/100 g', 'meq/100g', '%', 'dS/m',
  'low', 'very high', 'optimum', 'range', '30-50', '(120-200)', '6.4', '1,234', '0,5', '<2', '>', '-12', '1e9', '999999999999999999999', '.', ',', ';', ':', '|', '\t', '  ', '\n', '\r\n', '---', '=', '**', '“', '₂', '—', '\u00a0', '\ufeff', '💧', 'index', 'Base saturation', 'Texture', 'loam', 'Test,Result,Unit', 'Ca:Mg', 'buffer pH', '3 Nov 2025', '3/11/2025', 'unknown', '1:2'];
const reportish = fc.array(fc.constantFrom(...WORDS), { maxLength: 60 }).map((w) => w.join(' '));
const tight = fc.array(fc.constantFrom(...WORDS), { maxLength: 40 }).map((w) => w.join(''));
const anything = fc.oneof(fc.string({ maxLength: 400 }), fc.string({ unit: 'binary', maxLength: 400 }), reportish, tight);

function sound(text: string, report: Report): void {
  const lines = text.split(/\r\n|\n|\r/);
  for (const sample of report.samples) {
    for (const r of sample.readings) {
      expect(r.place.line).toBeGreaterThanOrEqual(1);
      expect(r.place.line).toBeLessThanOrEqual(lines.length);
      if (r.value !== null) expect(Number.isFinite(r.value)).toBe(true);
      expect(r.asPrinted.trim()).not.toBe('');
    }
    for (const u of sample.unread) expect(lines[u.line - 1]!.trim()).toBe(u.text);
    for (const rated of rateSample(sample, { country: 'US', state: null })) if (rated.mgPerKg) expect(Number.isFinite(rated.mgPerKg.value)).toBe(true);
  }
  for (const n of report.notices) {
    if (!n.place) continue;
    const line = lines[n.place.line - 1]!;
    expect(line).toBeDefined();
    expect(n.place.column).toBeGreaterThanOrEqual(1);
    expect(n.place.column).toBeLessThanOrEqual(Math.max(1, [...line].length));
    expect(n.place.column + n.place.length - 1).toBeLessThanOrEqual(Math.max(1, [...line].length));
  }
}

test('any text', () => {
  fc.assert(fc.property(anything, (text) => { sound(text, readReport(text, 'r.txt')); }), { numRuns: 1500 });
});

test('the same text twice gives the same answer', () => {
  fc.assert(fc.property(reportish, (text) => { expect(readReport(text, 'r.txt')).toEqual(readReport(text, 'r.txt')); }), { numRuns: 200 });
});

describe('chatter', () => {
  const LINES = ['pH 6.4', 'Phosphorus 42 ppm Mehlich 3 optimum 30-50', 'Potassium (K) 180 ppm  120-200', 'Magnesium 231 ppm = high', 'Organic matter 4.1 %', 'Zinc 3.4 ppm = high', 'Calcium 1180 mg/kg'];
  const CHATTER = ['thank', 'you', 'for', 'your', 'order', 'kind', 'regards', 'office', 'call', 'us', 'on', 'Monday', 'about', 'this', 'letter', 'page', '2', 'of', '14', 'Mill', 'Lane', '555-0123'];
  const chatter = fc.array(fc.constantFrom(...CHATTER), { minLength: 1, maxLength: 8 }).map((w) => w.join(' '));
  const bare = (text: string): unknown => readReport(text, 'r.txt').samples.map((s) => s.readings.map(({ place: _, ...r }) => r));

  test('a line that names nothing changes no reading, wherever it stands', () => {
    fc.assert(fc.property(fc.subarray(LINES, { minLength: 1 }), chatter, fc.nat(), (lines, said, at) => {
      const spot = at % (lines.length + 1);
      expect(bare([...lines.slice(0, spot), said, ...lines.slice(spot)].join('\n'))).toEqual(bare(lines.join('\n')));
    }), { numRuns: 400 });
  });
  test('blank lines, blanks at the ends and other line ends change nothing', () => {
    fc.assert(fc.property(fc.subarray(LINES, { minLength: 1 }), fc.constantFrom('\r\n', '\n\n', '\r', ' \n', '\n   \n'), (lines, end) => {
      expect(bare(lines.join(end))).toEqual(bare(lines.join('\n')));
    }));
  });
  test('the order of the lines changes nothing but the order', () => {
    const sorted = (text: string): unknown[] => (bare(text) as { item: string }[][])[0]!.sort((a, b) => (a.item < b.item ? -1 : 1));
    fc.assert(fc.property(fc.shuffledSubarray(LINES, { minLength: LINES.length }), (lines) => { expect(sorted(lines.join('\n'))).toEqual(sorted(LINES.join('\n'))); }));
  });
});

describe('length', () => {
  test('20,000 lines of letter beside one reading', () => {
    const letter = Array.from({ length: 20_000 }, (_, i) => `line ${i} of a long letter to the grower`);
    const { samples } = readReport([...letter, 'pH 6.4'].join('\n'), 'r.txt');
    expect(samples[0]!.readings.map((r) => [r.item, r.place.line])).toEqual([['ph', 20_001]]);
  });
  test('20,000 samples', () => {
    const text = Array.from({ length: 20_000 }, (_, i) => `Sample: bed ${i}\npH 6.${i % 10}\n`).join('');
    const { samples } = readReport(text, 'r.txt');
    expect(samples).toHaveLength(20_000);
    expect(samples.every((s) => s.readings.length === 1)).toBe(true);
  });
  test.each(['P ', '1 ', '1,', '1.', '1-', '( ', '(P', '[', 'ph ', '  ', '\t', '| ', 'a', '<', '-', 'low ', 'P2O5 ', 'ppm ', '1 - 1 ', 'not ', 'to ', '12:', 'Sample ', 'base saturation ', 'is is ', 'pH 6.4 ', ',,', '=', ':', '%', '"', '\u00a0', 'mg /', 'mg  ', 'P (', 'is', '1 to '])('a line of 3,999 signs of %j ends', (piece) => {
    const line = piece.repeat(4000).slice(0, 3999);
    for (const text of [line, `Phosphorus ${line}`.slice(0, 3999), `${line}!`, `x${line}y`, `taken: ${line}`, `phosphorus method: ${line}`, Array.from({ length: 50 }, () => line).join('\n')]) sound(text, readReport(text, 'r.txt'));
  });
});
