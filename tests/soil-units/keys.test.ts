// Keys that labs print for their own signs: stars, arrows, plus and minus, classes of an index (practice).
import { expect, test } from 'vitest';
import { keysOf, signOf } from '../../src/soil/keys.ts';
import { linesOf } from '../../src/soil/text.ts';
import { wordsOf } from '../../src/soil/vocabulary.ts';

const keys = (text: string): ReturnType<typeof keysOf> => keysOf(linesOf(text), wordsOf('en'));
const signs = (text: string): string => [...keys(text).signs].map((pair) => pair.join(' ')).join(', ');
const index = (text: string): unknown => keys(text).index;

test.each<[string, string]>([
  ['* low ** medium *** high', '* low, ** medium, *** high'], ['* = low, ** = medium, *** = high, **** = very high', '* low, ** medium, *** high, **** very-high'], ['****** very high * very low', '****** very-high, * very-low'],
  ...[...'↓↑→↘↗←↔⇓⇑▲▼'].map((arrow): [string, string] => [`${arrow} low ${arrow}${arrow} high`, `${arrow} low, ${arrow}${arrow} high`]), ['↑↑↑ very high ↓↓↓ very low', '↑↑↑ very-high, ↓↓↓ very-low'],
  ['(+) high (-) low', '(+) high, (-) low'], ['(+++) very high (---) very low', '(+++) very-high, (---) very-low'], ['(−−−) very low (−) low', '(−−−) very-low, (−) low'], ['(0) medium (=) high', '(0) medium, (=) high'], ['↓ below ↔ within ↑ above', '↓ low, ↔ optimum, ↑ high'],
  // One sign, a sign without its word, numbers: no key.
  ['* low', ''], ['* low ** see overleaf', ''], ['* low ** high *** see overleaf', ''], ['low * high', ''], ['* 42 low ** 12 high', ''], ['P 42 * low ** high', '* low, ** high'], ['******* low ******** high', ''], ['(++++) high (----) low', ''], ['* withindoors ** high', ''],
])('%s', (line, expected) => { expect([signs(`pH 6\n${line}`), [...keys(`pH 6\n${line}`).lines]]).toEqual([expected, expected ? [2] : []]); });

test('a key on a long line is one', () => { expect(signs(`* low ** high ${'and so on '.repeat(60)}`)).toBe('* low, ** high'); });

test.each<[string, unknown]>([
  ['Index: low 0-25, medium 26-50, high 51-100', [[25, 'low'], [50, 'medium'], [100, 'high']]], ['Index 0-25 low, 26-50 medium, 51-100 high', [[25, 'low'], [50, 'medium'], [100, 'high']]], ['Indices: low 0 to 25, medium 26  to  50, high over 50', [[25, 'low'], [50, 'medium'], [Infinity, 'high']]],
  ['Index: high above 50, medium 26 - 50, low below 26', [[25.999, 'low'], [50, 'medium'], [Infinity, 'high']]], ['Index: low <26, medium 26-50, high >50', [[25.999, 'low'], [50, 'medium'], [Infinity, 'high']]], ['Index: low < 26, medium 26-50, high > 50', [[25.999, 'low'], [50, 'medium'], [Infinity, 'high']]], ['Index: under 26 low, 26-50 medium, over 50 high', [[25.999, 'low'], [50, 'medium'], [Infinity, 'high']]],
  // Two classes, or numbers that are none of an index.
  ['Index: low 0-25, high 26-100', []], ['Range: low 0-25, medium 26-50, high 51-100', []], ['Index: 0-25, 26-50, 51-100', []], ['Reindex: low 0-25, medium 26-50, high 51-100', []], ['Index:', []],
])('%s', (line, expected) => { expect([index(line), [...keys(line).lines]]).toEqual([expected, (expected as unknown[]).length > 0 ? [1] : []]); });

test.each<[string, boolean]>([
  ['Figures in brackets are indices', true], ['The number in parentheses is the index', true], ['values  in  brackets: Index', true], ['Value in brackets = index', true], ['Result (Index)', true], ['Figure in brackets: index', true], ['Figures in brackets are ranges', false], ['Configures in brackets the index', false], ['Index 2', false], ['Figures in bracketsindex', false],
])('an index in brackets: %s', (line, expected) => { expect(keys(line).indexBeside).toBe(expected); });

test('the last sign of a line, behind its number, stands for its word', () => {
  const key = keys('* low ** medium *** high');
  const sign = (raw: string): unknown => signOf(linesOf(raw)[0]!, key);
  expect([sign('P 42 ppm **'), sign('P * 42 ppm ***'), sign('P ** 42 ppm'), sign('** P'), sign('P 42 ppm'), sign('P 42 ppm ****'), signOf(linesOf('P 42 **')[0]!, keys('pH 6'))]).toEqual(['medium', 'high', null, null, null, null, null]);
});
