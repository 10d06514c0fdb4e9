// What stands behind a name, part by part, as a careful reader takes it (practice): goals, older values, classes and remarks are none of the value's.
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import type { Reading } from '../../src/soil/reading.ts';

const told = (r: Reading): string => [r.value, r.to && `to ${r.to}`, r.unit, r.method, r.lab.rating, r.lab.range && `[${r.lab.range.map((n) => n ?? '').join('-')}]`, r.index !== undefined && `index ${r.index}`, r.below && 'below', r.tag].filter((x) => x !== null && x !== undefined && x !== false).join(' ');
/** The readings beside the zinc that stands by, and what is said. */
const read = (line: string, head = ''): string => {
  const report = readReport(`${head}${line}\nZinc 2.1 ppm\n`, 'r.txt');
  return [...report.samples.flatMap((s) => s.readings).filter((r) => r.item !== 'zinc').map(told), ...report.notices.map((n) => n.code)].join('; ');
};

test.each([
  // Not tested: what else stands there is no value, unless one stands before it.
  ['Phosphorus not tested 30-50', ''], ['Phosphorus n/a high', ''], ['Phosphorus 42 ppm high, sulphur n/a', '42 ppm high'],
  // A range by its word is no value, whatever the word; without it, it is.
  ['Phosphorus range 30-50', 'line-unclear'], ['Phosphorus optimum range 30-50 ppm', 'line-unclear'], ['Phosphorus 30-50 ppm', '30 to 50 ppm'], ['Phosphorus 30-50 ppm optimum', '30 to 50 ppm optimum'], ['Phosphorus last year 30-50', 'line-unclear'],
  ['Phosphorus 30-50 low 12 ppm', '12 ppm low [30-50]'], ['Phosphorus 42 ppm optimum range 30-50', '42 ppm [30-50]'], ['Phosphorus 42 ppm optimum range >30', '42 ppm [30-]'], ['Phosphorus 42 ppm high range 30-38', '42 ppm high [30-38]'],
  ['Phosphorus target (30-50) 42 ppm', '42 ppm [30-50]'], ['Phosphorus 12 ppm target (30-50)', '12 ppm [30-50]'], ['Phosphorus 12 ppm optimum (>30 ppm)', '12 ppm [30-]'], ['Phosphorus 42 ppm optimum (2024)', '42 ppm optimum'], ['Phosphorus 42 ppm optimum (30-50)', '42 ppm optimum [30-50]'], ['Phosphorus 52 ppm optimum (30-50)', '52 ppm [30-50]'], ['Phosphorus 42 ppm optimum (<50)', '42 ppm optimum [-50]'], ['Phosphorus 42 ppm 30-50 20-60', '42 ppm [30-50]'], ['Phosphorus 42 ppm >30 >20', '42 ppm [30-]'], ['Phosphorus 42 ppm range >30 >20', '42 ppm [30-]'], ['Phosphorus (30-50) 42 ppm 20-60', '42 ppm [30-50]'], ['Phosphorus 42 ppm, range in 2024 30-40', '42 ppm [30-40]'],
  // Older values.
  ['Phosphorus 42 ppm | last year | 38 ppm', '42 ppm'], ['Phosphorus 42 ppm, last year 30-40', '42 ppm'], ['Phosphorus 42 ppm optimum last year 38 ppm', '42 ppm optimum'], ['Phosphorus 38 ppm last year | 42 ppm low', '42 ppm low'], ['Phosphorus 42 ppm was low', '42 ppm low'], ['Phosphorus was 42 ppm', '42 ppm'], ['Phosphorus 38-40 ppm last year', '38 to 40 ppm'],
  ['Phosphorus trace last year', 'below'], ['Phosphorus 42 ppm last year, high', '42 ppm high'],
  // Two words that disagree are a remark's; three or a row of them a scale's.
  ['Phosphorus 12 ppm low, should be medium', '12 ppm low'], ['Phosphorus 12 ppm low | medium | high', '12 ppm'], ['Phosphorus 12 ppm low | low', '12 ppm low'],
  // The index of the value, and the one to come to; an index in words.
  ['Phosphorus 18 mg/L Index (RB209) 2', '18 mg/L optimum index 2'], ['Phosphorus 18 mg/l target index 2-3', '18 mg/L'], ['Phosphorus 18 mg/l optimum index 2-3', '18 mg/L'], ['Phosphorus 18 mg/l (target index 2-3)', '18 mg/L'], ['Phosphorus index 1 target index 2-3', '1 index [2-3]'], ['Phosphorus 18 mg/l (index 2, optimum)', '18 mg/L optimum index 2'], ['Phosphorus 18 mg/l (index 3, high)', '18 mg/L high index 3'], ['Phosphorus 18 mg/l index 2 index 3', '18 mg/L index 2'], ['Phosphorus 18 mg/l (index 2) (index 3)', '18 mg/L index 2'], ['Potassium index 2, 180 ppm, >120', '180 ppm [120-] index 2'],
  // Brackets: classes with their words before or behind, at their edges; the word of another number; a word among remarks.
  ['Phosphorus 20 ppm (low <20, medium 20-40, high >40)', '20 ppm medium'], ['Phosphorus 40 ppm (low <20, medium 20-40, high >40)', '40 ppm medium'], ['Phosphorus 19 ppm (low <20, medium 20-40, high >40)', '19 ppm low'], ['Phosphorus 41 ppm (low <20, medium 20-40, high >40)', '41 ppm high'], ['Phosphorus 40 ppm (low under 40, high over 40)', '40 ppm'], ['Phosphorus 15 ppm (low 0-20, high over 20)', '15 ppm low'], ['Phosphorus 42 ppm (low <20, medium 21-40)', '42 ppm'], ['Phosphorus (low <20, medium 20-40, high >40) 30 ppm', '30 ppm medium'], ['Phosphorus 30 ppm (low <20, medium 20-40, high >40) high', '30 ppm high'],
  ['Phosphorus 30 ppm (0-20 low, 21-40 medium, over 40 high)', '30 ppm medium'], ['Phosphorus 12 ppm (0-20 low, 21-40 medium, over 40 high)', '12 ppm low'], ['Phosphorus 60 ppm (0-20 low, 21-40 medium, over 40 high)', '60 ppm high'],
  ['Phosphorus 42 ppm (optimum 30-50)', '42 ppm [30-50]'], ['Phosphorus 42 ppm (38 low)', '42 ppm'], ['Phosphorus 42 ppm (low 30)', '42 ppm'], ['Phosphorus 42 ppm (goal 30-50 for trees)', '42 ppm [30-50]'], ['Phosphorus 42 ppm (high for trees)', '42 ppm'], ['Phosphorus 42 ppm (low 30-50 for trees)', '42 ppm'], ['Phosphorus 42 ppm (target >50 for trees)', '42 ppm [50-]'], ['Phosphorus 42 ppm (was 30-38)', '42 ppm'], ['Phosphorus 42 ppm (last year <30)', '42 ppm'],
  ['Phosphorus (<5 ppm)', '5 ppm below'], ['Phosphorus (target >50) 42', '42 [50-]'], ['Phosphorus (42 low) ppm', '42 ppm low'], ['Phosphorus (42 for trees)', 'line-unclear'], ['Phosphorus (42) 18 ppm high', '18 ppm high'], ['Phosphorus (42) (38)', '42'], ['Phosphorus (trace) ppm', 'ppm below'], ['Phosphorus (trace) 12 ppm', '12 ppm'], ['Phosphorus (ppm) 42 mg/kg', '42 ppm'],
  ['Organic matter 4.5 % (4.1 %)', '4.5 %'], ['Potassium 4.5 % (12)', '4.5 %'], ['Potassium 180 ppm (0.46 meq/100g)', '180 ppm'], ['Potassium 4.5 % (trace)', '4.5 %'],
  // A method in brackets with a number is another test's, but for the value in the same brackets.
  ['Phosphorus (Olsen 12 ppm)', '12 ppm olsen'], ['Phosphorus 42 ppm (Olsen)', '42 ppm olsen'],
  // Another extract by its sign, with a figure in it, alone in its brackets.
  ['Phosphorus (AAE10) 42 mg/kg', '42 mg/kg aae10'], ['Phosphorus (plants) 42 mg/kg', '42 mg/kg'], ['Phosphorus (AAE10 H2O10) 42 mg/kg', '42 mg/kg'],
  // The same said in another unit explains itself; a second number in the same one does not.
  ['Potassium 180 ppm 175 ppm', 'two-values'], ['Potassium 180 175 ppm', 'two-values'], ['Potassium 180 ppm 360 lb/acre', '180 ppm'],
  // A word where the unit belongs.
  ['Phosphorus 42 pmm high', 'unit-unknown'], ['Phosphorus 42 high pmm', '42 high'], ['Phosphorus 42 ppm pmm', '42 ppm'],
  ['Phosphorus high for trees, 42 ppm', '42 ppm high'], ['Phosphorus is high where roots are deep', ''],
])('%s: %s', (line, expected) => { expect(read(line)).toBe(expected); });

describe('figures in brackets that the report calls indices', () => {
  const HEAD = 'Figures in brackets are indices\n';
  test.each([['Phosphorus 18 mg/L (2)', '18 mg/L index 2'], ['Phosphorus 18 mg/L (38 ppm)', '18 mg/L'], ['Phosphorus 18 mg/L (1) (2)', '18 mg/L index 1'], ['Phosphorus 18 mg/L (<30)', '18 mg/L [-30]']])('%s: %s', (line, expected) => { expect(read(line, HEAD)).toBe(expected); });
});
