// Day and depth of sampling among other words of a line, as labs and growers write them (practice).
import { expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';

/** The day, the depth, the lines unread and the notices of a report that begins with the line. */
function said(line: string): unknown {
  const { samples, notices } = readReport(`${line}\nZinc 2.1 ppm\n`, 'r.txt');
  const { taken, depth, unread } = samples[0]!;
  return [taken, depth, unread.map((u) => u.line), notices.map((n) => n.code)];
}
const day = '2025-11-03';

test.each<[string, string | undefined, string | undefined, boolean?]>([
  // The last word before a day says whose it is; without one, a word right behind it.
  ['Soil sampled 3 Nov 2025 to 6 inches, received 5 Nov 2025 by the lab', day, '6 inches'], ['The lab received it on 5 Nov 2025, we had taken it on 3 Nov 2025', day, undefined], ['Reported 9 Nov 2025, received 5 Nov 2025, all sampled 3 Nov 2025', day, undefined], ['By the lab on 3 Nov 2025 (sampled) and on 5 Nov 2025 (received)', day, undefined], ['On 3 Nov 2025 by hand, sampled with care', undefined, undefined, true],
  ['Received by the lab on 5 Nov 2025 with thanks', undefined, undefined, true], ['Sampled by us, received by the lab 5 Nov 2025 with thanks', undefined, undefined, true], ['A visit on 5 Nov 2025 to the orchard', undefined, undefined, true],
  // Ways to print a day.
  ['We sampled on 2025-11-03 with a probe', day, undefined], ['We sampled on 3rd of November 2025 with a probe', day, undefined], ['We sampled on November 3rd, 2025 with a probe', day, undefined], ['We sampled on Nov. 3, 2025 with a probe', day, undefined], ['We sampled on 13/11/2025 with a probe', '2025-11-13', undefined], ['We sampled on 13/11/25 with a probe', '2025-11-13', undefined], ['We sampled on 13 November 2025 with a probe', '2025-11-13', undefined],
  // A language that puts the day first.
  ['Muestreo del campo 03/11/2025 con sonda', day, undefined], ['Muestreo del campo el 13 de noviembre de 2025 con sonda', '2025-11-13', undefined],
  // Depth with its word or, in a line of sampling, without.
  ['Soil of the old orchard, depth 0-6 in, dry', undefined, '0-6 in'], ['Soil of the old orchard, depth (cm): 15 and dry', undefined, '15 cm'], ['Soil of the old orchard, 0-20 cm deep and dry', undefined, '0-20 cm'], ['Soil of the old orchard, depth of 15 cm, dry', undefined, '15 cm'], ['We sampled on 3 Nov 2025 from 0 to 15 cm below the grass', day, '0 to 15 cm'], ['We sampled down to 6" below the grass', undefined, '6"'], ['The top 0-15 cm of the old orchard', undefined, undefined, true],
])('%s', (line, taken, depth, listed) => { expect(said(line)).toEqual([taken, depth, listed ? [1] : [], []]); });

test('a day of sampling that reads two ways is told', () => {
  expect(said('We sampled on 03/11/2025 with a probe')).toEqual([undefined, undefined, expect.anything(), [expect.stringMatching(/^(?:date|taken)/)]]);
  expect(said('We received it on 03/11/2025 with thanks')).toEqual([undefined, undefined, [1], []]);
  expect(said(`We sampled on 3 Nov 2025 ${'and wrote '.repeat(30)}`)).toEqual([undefined, undefined, [1], []]);
});

test('each sample of a table has the day of its own column', () => {
  const { samples } = readReport('Nutrient | Front | Back\nDate sampled | 2025-11-03 | 2025-11-04\nP ppm | 42 | 12\n', 'r.txt');
  expect(samples.map((s) => [s.name, s.taken, s.unread])).toEqual([['Front', day, []], ['Back', '2025-11-04', []]]);
});
