// The parts of a line as its reader would name them (practice): numbers with their signs, spans, dates, words, brackets.
import { describe, expect, test } from 'vitest';
import type { Style } from '../../src/soil/number.ts';
import type { Token } from '../../src/soil/token.ts';
import { lookFor } from '../../src/soil/token.ts';
import { wordsOf } from '../../src/soil/vocabulary.ts';

const sized = (is: { readonly value: number } | { readonly unclear: readonly [number, number] }): string => ('value' in is ? String(is.value) : `${is.unclear[0]}?${is.unclear[1]}`);
function part(t: Token): string {
  switch (t.kind) {
    case 'filler': return '';
    case 'separator': return ',';
    case 'name': return t.is.item;
    case 'unit': case 'rating': return t.is;
    case 'method': return `by ${t.is}`;
    case 'class': case 'label': return `${t.kind} ${t.is}`;
    case 'number': return `${t.sign ?? ''}${t.minus ? '-' : ''}${sized(t.is)}`;
    case 'between': return `${sized(t.low)}..${sized(t.high)}`;
    case 'word': return `"${t.text}"`;
    case 'group': return `(${parts(t.tokens)})`;
    default: return t.kind;
  }
}
const parts = (tokens: readonly Token[]): string => tokens.map(part).filter(Boolean).join(' ');
const words = { en: wordsOf('en'), fr: wordsOf('fr'), de: wordsOf('de'), es: wordsOf('es'), none: wordsOf(null) };
const look = (text: string, language: keyof typeof words = 'en', style: Style = 'point'): string => parts(lookFor(words[language], style)(text));

describe('numbers', () => {
  test.each<[string, string]>([
    ['P 42 ppm', 'phosphorus 42 ppm'], ['P .5 ppm', 'phosphorus 0.5 ppm'], ['P 42ppm', 'phosphorus 42 ppm'], ['P -3 ppm', 'phosphorus -3 ppm'], ['P -.5 ppm', 'phosphorus -0.5 ppm'], ['P - 3 ppm', 'phosphorus 3 ppm'], ['P 1,234 ppm', 'phosphorus 1234 ppm'], ['P 42', 'phosphorus 42'], ['42', '42'], ['-3', '-3'], ['>5', '>5'],
    // Never a part of a word, of a longer number, a ratio, a fraction or a list.
    ['A42', '"a42"'], ['42x3', '"42x3"'], ['42a', '"42a"'], ['A-42', '"a-42"'], ['1:2', 'by 1:2'], ['1:7', '"1" "7"'], ['1/2', '"1/2"'], ['1.2.3', '"1.2.3"'], ['6.4,5', '"6.4" , "5"'], ['1,23,4', '"1" , "23" , "4"'], ['1\'23', '"1\'23"'], ['5-10-10', ''], ['5-6-7', '"5-6-7"'], ['5 1/2', '"5" "1/2"'], ['5 ½', '"5" "½"'], ['5½', '"5½"'], ['5 ¼', '"5" "¼"'], ['5 ¾ in', '"5" "¾"'], ['5°', '"5"'], ['42.p 7', '"42.p" 7'], ['42,b', '"42" , "b"'], ['42.lawn', '42 "lawn"'], ['42 a.b 7', '42 "a.b" 7'], ['42.ab 7', '"42.ab" 7'], ['5 11/16', '"5" "11/16"'], ['5 12', '5 12'], ['42-6wk', '"42-6wk"'],
    // Signs and words of a limit.
    ['P < 5 ppm', 'phosphorus <5 ppm'], ['P <5 ppm', 'phosphorus <5 ppm'], ['P <= 5', 'phosphorus <5'], ['P ≤5', 'phosphorus <5'], ['P > 5', 'phosphorus >5'], ['P >=5', 'phosphorus >5'], ['P ≥ 5', 'phosphorus >5'], ['less than 5', '<5'], ['under 5', '<5'], ['below 5', '<5'], ['more than 5', '>5'], ['greater than 5', '>5'], ['over 5', '>5'], ['above 5', '>5'],
    ['menos de 5', '<5'], ['weniger als 5', '<5'], ['unter 5', '<5'], ['moins de 5', '<5'], ['meno di 5', '<5'], ['inferior a 5', '<5'], ['mas de 5', '>5'], ['mehr als 5', '>5'], ['uber 5', '>5'], ['Hunter 5', '"hunter" 5'], ['and in this line of many words less than 5', '"this" "line" "many" "words" <5'],
  ])('%s', (line, expected) => { expect(look(line)).toBe(expected); });
  test.each<[string, string]>([
    ['P 5-10 ppm', 'phosphorus 5..10 ppm'], ['5 - 10', '5..10'], ['5   -   10', '5..10'], ['5 to 10', '5..10'], ['5to10', '5..10'], ['5 bis 10', '5..10'], ['5..10', '5..10'], ['5 a 10', '5..10'], ['5 ate 10', '5..10'], ['.5-.8', '0.5..0.8'], ['0.5-1.5', '0.5..1.5'], ['1,200-1,400', '1200..1400'], ['5-10ppm', '5..10 ppm'],
    // A code, a list, a part of a longer number is no span.
    ['A5-10', '"a5-10"'], ['x-5-10x', '"x-5-10x"'], ['5-10x', '"5-10x"'], ['5-10:2', '"5-10" "2"'], ['5-1.2.3', '"5-1.2.3"'], ['4a10', '"4a10"'],
    // A sampling depth is none.
    ['0-6 in 42', '42'], ['0-6in 42', '42'], ['0-6 inches 42', '42'], ['0-6 inch 42', '42'], ['0-15 cm 42', '42'], ['0-15cm 42', '42'], ['0-6" 42', '42'], ['0-6\'\' 42', '42'], ['0-1 feet 42', '42'], ['0-1ft 42', '42'], ['5-10 0-6 in', '5..10'], ['5-10 inner 42', '5..10 "inner" 42'],
  ])('%s is a span', (line, expected) => { expect(look(line)).toBe(expected); });
  test.each(['3/11/2025', '3.11.25', '2025-11-03', '12:30', '3-11-2025'])('%s is a day or a time', (line) => { expect(look(`P 42 ${line} 7`)).toBe('phosphorus 42 7'); });
});

describe('numbers of other countries', () => {
  test.each<[string, keyof typeof words, string]>([
    // A blank parts thousands where a unit follows or a limit stands before.
    ['P 2 242 mg/kg', 'fr', 'phosphorus 2242 mg/kg'], ['P 2 242mg/kg', 'fr', 'phosphorus 2242 mg/kg'], ['P 2 242,5 mg/kg', 'fr', 'phosphorus 2242.5 mg/kg'], ['P 1 234 567 mg/kg', 'de', 'phosphorus 1234567 mg/kg'], ['< 1 234', 'es', '<1234'], ['> 1 234', 'es', '>1234'], ['unter 1 234', 'de', '<1234'],
    ['P 2 242', 'fr', 'phosphorus 2 242'], ['P 2 242 mg/kg', 'en', 'phosphorus 2 242 mg/kg'], ['P 2 242 mg/kg', 'none', 'phosphorus 2 242 mg/kg'], ['2 242.5 mg/kg', 'fr', '2 242.5 mg/kg'], ['7 2 242 mg/kg', 'fr', '7 2 242 mg/kg'], ['2242 242 mg/kg', 'fr', '2242 242 mg/kg'], ['1-2 242 mg/kg', 'fr', '1..2242 mg/kg'],
    ['Calcium actif 2 242 mg/kg', 'fr', 'calcium "actif" 2242 mg/kg'], ['fourchette 1 200 - 1 400', 'fr', 'label range 1200..1400'], ['A2 242 mg/kg', 'fr', '"a2" 242 mg/kg'], ['1 200 - 1 400 mg/kg', 'fr', '1200..1400 mg/kg'], ['800-1 200', 'fr', '800..1200'], ['1 200 a 1 400', 'es', '1200..1400'], ['1 200 bis 1 400', 'de', '1200..1400'], ['1\'200 - 1 400', 'de', '1200..1400'], ['1 200  -  1 400', 'fr', '1200..1400'], ['5-10', 'fr', '5..10'], ['1 200 - 12 400', 'fr', '1200..12400'], ['P 12 242 mg/kg', 'fr', 'phosphorus 12242 mg/kg'], ['P 2 242,55 mg/kg', 'fr', 'phosphorus 2242.55 mg/kg'], ['800-1 200,5', 'fr', '800..1 200.5'],
  ])('%s in %s', (line, language, expected) => { expect(look(line, language, language === 'en' || line.includes('.') ? 'point' : 'comma')).toBe(expected); });
});

describe('words, names, brackets', () => {
  test.each<[string, string]>([
    ['P (Olsen) 18 ppm', 'phosphorus (by olsen) 18 ppm'], ['P [Olsen] 18 ppm', 'phosphorus (by olsen) 18 ppm'], ['P (30-50) 18 (x) 5', 'phosphorus (30..50) 18 () 5'], ['P 42 (low)', 'phosphorus 42 (low)'], ['P 42 ppm (was 38, low)', 'phosphorus 42 ppm (label past 38 , low)'], ['P (42 ppm', 'phosphorus 42 ppm'], ['(a1) (b2) 3', '("a1") ("b2") 3'], ['P 1.2 mmol(+)/kg', 'phosphorus 1.2 mmol/kg'],
    ['P 42, K 180', 'phosphorus 42 , potassium 180'], ['P 42; K 180', 'phosphorus 42 , potassium 180'], ['P 42 | K 180', 'phosphorus 42 , potassium 180'], ['P 42  K 180', 'phosphorus 42 potassium 180'],
    // A full stop parts sentences, unless it cuts a word short or a number goes on.
    ['P 42 ppm. K 180 ppm', 'phosphorus 42 ppm , potassium 180 ppm'], ['P 42. K 180', 'phosphorus 42 , potassium 180'], ['OM 4 %. K 180', 'organic-matter 4 % , potassium 180'], ['P (low). K 180', 'phosphorus (low) , potassium 180'], ['soil. 42', '42'], ['soil.x', '"soil.x"'],
    ...['exch', 'avail', 'sat', 'org', 'ext', 'no', 'nr', 'cond', 'amm', 'est', 'tot'].map((short): [string, string] => [`Zeta ${short}. lawn`, `"zeta" ${/^(?:exch|avail|no|est)$/.test(short) ? '' : `"${short}" `}"lawn"`]),
    ['Zeta breast. lawn', '"zeta" "breast" , "lawn"'],
    // Signs about a word are none of it.
    ['\'lawn\'', '"lawn"'], ['//lawn', '"lawn"'], ['..lawn', '"lawn"'], ['-lawn', '"lawn"'], ['o\'brien', '"o\'brien"'], ['A/B', '"a/b"'], ['#7a', '"#7a"'], ['a&b', '"a&b"'], ['a@b', '"a@b"'], ['$', '"$"'], ['€', '"€"'], ['£', '"£"'], ['xxx lawn', '"lawn"'], ['xxa', '"xxa"'], ['axx', '"axx"'], ['is', ''],
    // No word of rating where it is turned round, or where a limit follows.
    ['P 42 not low', 'phosphorus 42 "not" "low"'], ['in this long line of an orchard P 42 not low', '"this" "long" "line" "orchard" phosphorus 42 "not" "low"'], ['not low P 42', '"not" "low" phosphorus 42'], ['not low, said the lab of this old orchard', '"not" "low" , "said" "lab" "this" label other "orchard"'], ['P 42 low', 'phosphorus 42 low'], ['P below 5', 'phosphorus <5'], ['P below', 'phosphorus low'], ['P 42 above normal', 'phosphorus 42 high'], ['P low below 5', 'phosphorus low <5'],
    ['P not tested', 'phosphorus absent'], ['Phosphorus n/a', 'phosphorus absent'], ['P trace', 'phosphorus trace'], ['P not detected', 'phosphorus trace'],
    ['P 42 last year 38', 'phosphorus 42 label other 38'], ['P 42 range 30-50', 'phosphorus 42 label range 30..50'], ['P index 2', 'phosphorus label index 2'], ['P 42 low, K 180 high', 'phosphorus 42 low , potassium 180 high'], ['P-I 42', 'phosphorus 42'], ['P 12 mg/l -I 2', 'phosphorus 12 mg/L 2'], ['P 12 p.p.m. low', 'phosphorus 12 ppm low'], ['P 12 very low', 'phosphorus 12 very-low'], ['P (low)42', 'phosphorus (low) 42'], ['P-index 2', 'phosphorus label index 2'],
  ])('%s', (line, expected) => { expect(look(line)).toBe(expected); });
  test('a German class is looked for where it is asked for', () => {
    const german = lookFor(words.de, 'comma');
    const line = 'P 12 mg/100g C';
    expect([parts(german(line)), parts(german(line, true)), parts(german(line)), parts(german(line, true))]).toEqual(['phosphorus 12 mg/100g "c"', 'phosphorus 12 mg/100g class optimum', 'phosphorus 12 mg/100g "c"', 'phosphorus 12 mg/100g class optimum']);
    expect(parts(german('K 42 mg/100g (D)', true))).toBe('potassium 42 mg/100g (class high)');
  });
  test('each part stands where it is printed, left to right', () => {
    const line = 'Soil P (30-50 ppm) less than 5 ppm, low. Thanks';
    const at = (tokens: readonly Token[]): string[] => tokens.flatMap((t) => (t.kind === 'filler' ? [] : t.kind === 'number' || t.kind === 'between' ? [t.printed] : t.kind === 'group' ? [line.slice(t.start, t.end), ...at(t.tokens)] : [line.slice(t.start, t.end)]));
    expect(at(lookFor(words.en, 'point')(line))).toEqual(['P', '(30-50 ppm)', '30-50', 'ppm', '5', 'ppm', ',', 'low', '.', 'Thanks']);
  });
  // A sign, its number and a depth are no words.
  test.each([['P < 5', 'phosphorus _ <5'], ['P -5', 'phosphorus -5'], ['P 0-6 in 42', 'phosphorus _ 42'], ['P is 42', 'phosphorus _ 42']])('%s', (line, expected) => {
    expect(lookFor(words.en, 'point')(line).map((t) => (t.kind === 'filler' ? '_' : part(t))).join(' ')).toBe(expected);
  });
});
