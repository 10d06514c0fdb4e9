// A lab's lime rate that counts something else than the carbonate: kept as printed, turned into pure lime with its step. Wordings are practice.
// Factors: pure lime has 800 lb ENM to a ton (Missouri) and 2,000 lb ENP (Minnesota, Ohio); CaCO3 100.086 ÷ CaO 56.077 = 1.785.
import { describe, expect, test } from 'vitest';
import { rateOf } from '../../src/orchard/measure.ts';
import { phSoilOf, pureLime } from '../../src/ph/soil.ts';
import { rateSample } from '../../src/rating/rate.ts';
import { figure } from '../../src/reason/figure.ts';
import { readReport } from '../../src/soil/read.ts';
import { told } from './told.ts';

const lime = (line: string): unknown => {
  const found = phSoilOf(rateSample(readReport(`pH 5.2\n${line}\n`, 'r.txt').samples[0]!, { country: null, state: null }), undefined)!.lime!;
  return [Number(found.value.toFixed(2)), found.unit, found.of, found.step, found.from[0]?.value];
};

describe.each<[string, readonly string[], string, unknown]>([
  ['ENM', ['Lime requirement 1600 lb ENM/acre', 'Lime requirement 1,600 lb/acre ENM', 'Lime requirement (ENM) 1600 lb/acre', 'ENM requirement 1600 lb/acre', 'Effective neutralizing material (ENM): 1600 lb/acre', '1600 lb ENM/acre'], '1600 lb ENM/acre', [4000, 'lb/acre', 'lime', 'lime-from-enm', 1600]],
  ['ENP', ['Lime 3000 lb ENP/acre', 'Lime: 3,000 lb/acre (ENP)', '3,000 lb/acre ENP'], '3000 lb ENP/acre', [3000, 'lb/acre', 'lime', 'lime-from-enp', 3000]],
  ['CaO in dt', ['Kalkbedarf 20 dt CaO/ha', 'Kalkbedarf: 20 dt/ha CaO', 'Kalkbedarf (CaO) 20 dt/ha', 'Kalkbedarf CaO 20 dt/ha', 'Kalkbedarf (dt CaO/ha): 20', 'Kalk 20 dt CaO je ha'], '20 dt CaO/ha', [35.7, 'dt/ha', 'lime', 'lime-from-oxide', 20]],
  ['CaO in t', ['2 t CaO/ha', 'Kalkbedarf\n2 t CaO/ha', 'Lime requirement 2 t/ha CaO', 'Lime requirement 2 t/ha (CaO)', 'Lime requirement (CaO) 2 t/ha'], '2 t CaO/ha', [3.57, 't/ha', 'lime', 'lime-from-oxide', 2]],
  ['CaO in kg', ['Kalkbedarf 400 kg CaO/ha'], '400 kg CaO/ha', [713.92, 'kg/ha', 'lime', 'lime-from-oxide', 400]],
  ['carbonate', ['Lime requirement 2 t/ha', 'Lime requirement 2 t/ha CaCO3'], '2 t/ha', [2, 't/ha', 'lime', 'printed-by-lab', undefined]],
  ['carbonate in dt', ['Kalkbedarf 20 dt/ha'], '20 dt/ha', [20, 'dt/ha', 'lime', 'printed-by-lab', undefined]],
])('%s', (_, lines, printed, pure) => {
  test.each(lines)('%s', (line) => {
    expect(told(`pH 5.2\n${line}\n`)).toEqual(['sample 1: ph 5.2 pH', `sample 1: lime-requirement ${printed}`]);
    expect(lime(line)).toEqual(pure);
  });
});

test.each<[string, readonly string[]]>([
  // A pair that nobody prints is told, and what has its own name is no lime.
  ['Lime requirement (ENM) 2 tons/acre', ['unread 2', 'line-unclear 2']], ['Calcium 2 t CaO/ha', ['unread 2']],
  ['Kalkbedarf, CaO 210 mg/100g', ['sample 1: calcium 210 mg/100g CaO']], ['Calcium 2000 kg/ha CaO', ['sample 1: calcium 2000 kg/ha CaO']],
])('%s', (line, rest) => { expect(told(`pH 5.2\n${line}\n`)).toEqual(['sample 1: ph 5.2 pH', ...rest]); });

test.each<[string, number | null]>([
  ['1600 lb ENM/acre', 4000], ['1600 lb/acre ENM', 4000], ['3000 lb ENP/acre', 3000], ['20 dt CaO/ha', 35.7], ['2 t/ha CaO', 3.57], ['2 t/ha', 2], ['20 dt/ha', 20], ['2 tons ENM/acre', null], ['1600 lb ENX/acre', null],
])('as a flag: %s', (text, pure) => {
  const rate = rateOf(text);
  expect(rate && Number(pureLime(figure(rate.value, rate.unit, rate.of, 'told', { source: 'grower', at: '--lime', mark: 'read' })).value.toFixed(2))).toBe(pure);
});
