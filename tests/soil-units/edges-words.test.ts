// Names, symbols, words of rating and classes in a text, asked of the matchers themselves. What is a symbol and what only looks like one, and which word belongs to which language, is practice.
import { describe, expect, test } from 'vitest';
import type { Language } from '../../src/tables/name-set.ts';
import { findClasses, findNames, knownNames, languageOf, methodCalled, wordsOf } from '../../src/soil/vocabulary.ts';

/** "potassium K": each name with the letters that hold it. */
const named = (text: string, language: Language | null = null): string => wordsOf(language).names(text).map((n) => `${n.is.item} ${text.slice(n.start, n.end)}`).join('; ');
const rated = (text: string, language: Language | null = null): string => wordsOf(language).ratings(text).map((r) => `${r.is} ${text.slice(r.start, r.end)}`).join('; ');
/** Every text of a list by what is found in it. */
const each = (find: (text: string) => string, texts: Readonly<Record<string, string>>): void => { expect(Object.keys(texts).map((t) => [t, find(t)])).toEqual(Object.entries(texts)); };

describe('a name is a whole word', () => {
  test('letters and figures go on, other signs part', () => {
    for (const sign of ['a', 'z', 'A', 'Z', '0', '9']) expect([sign, named(`zinc${sign}`), named(`${sign}zinc`)]).toEqual([sign, '', '']);
    for (const sign of ['/', ':', '`', '{', '@', '[', '-', '(', ';']) expect([sign, named(`zinc${sign}`), named(`${sign}zinc`)]).toEqual([sign, 'zinc zinc', 'zinc zinc']);
  });
  test('two blanks count as one, three do not', () => {
    each(named, { 'organic matter': 'organic-matter organic matter', 'Organic  Matter 3': 'organic-matter Organic  Matter', 'organic   matter': '', 'organicmatter': '', 'organic': '', 'organic mattering': '' });
  });
  test('the longest, each once, in order', () => {
    each(named, {
      'nitrate nitrogen 4': 'nitrate-n nitrate nitrogen', 'ca/mg ratio 6': 'ratio ca/mg ratio', 'total phosphorus': 'ratio total phosphorus', 'phosphorus, zinc': 'phosphorus phosphorus; zinc zinc', 'zinc phosphorus zinc': 'zinc zinc; phosphorus phosphorus; zinc zinc', 'zinc zinc': 'zinc zinc; zinc zinc',
      'K 90 zinc 2 P 4': 'potassium K; zinc zinc; phosphorus P', 'phosphorus (P)': 'phosphorus phosphorus; phosphorus P', '': '', ' ': '', '%OM 3': 'organic-matter %OM', 'caco3 2': 'carbonate caco3',
    });
  });
  test('with its umlauts or without', () => { each(named, { 'leitfahigkeit 2': 'salts leitfahigkeit', 'leitfaehigkeit 2': 'salts leitfaehigkeit', 'lösliche salze': '', 'losliche salze': 'salts losliche salze', 'loesliche salze': 'salts loesliche salze', 'schuttdichte': 'density schuttdichte', 'schuettdichte': 'density schuettdichte' }); });
  test('an index by its name in any letters', () => { each(named, { 'Mn-AI 40': 'manganese Mn-AI', 'MN-AI 40': 'manganese MN-AI', 'Zn-I 40': 'zinc Zn-I', 'ZN-I 40': 'zinc ZN-I' }); });
});

test('words of one language are known in it alone; English where none is', () => {
  expect(([null, 'en', 'es', 'fr', 'de', 'pt', 'it'] as const).map((l) => [wordsOf(l).language, named('the ton', l), named('fer and rame', l), named('phosphorus', l)])).toEqual([
    [null, '', '', 'phosphorus phosphorus'], ['en', '', '', 'phosphorus phosphorus'], ['es', '', '', 'phosphorus phosphorus'], ['fr', '', 'iron fer', 'phosphorus phosphorus'], ['de', 'clay ton', '', 'phosphorus phosphorus'], ['pt', '', '', 'phosphorus phosphorus'], ['it', '', 'copper rame', 'phosphorus phosphorus'],
  ]);
  expect(([null, 'en', 'es', 'fr', 'de', 'pt', 'it'] as const).map((l) => named('LR 3', l))).toEqual(['lime-requirement LR', 'lime-requirement LR', '', '', '', '', '']);
  expect(([null, 'en', 'es', 'fr', 'de', 'pt', 'it'] as const).map((l) => rated('fair, gut, fort, low', l))).toEqual(['medium fair; low low', 'medium fair; low low', 'low low', 'high fort; low low', 'optimum gut; low low', 'low low', 'low low']);
  expect([wordsOf('de') === wordsOf('de'), wordsOf('de') === wordsOf('fr')]).toEqual([true, false]);
});

// Made anew each time, so that no test has the words of another.
let made = 0;
const nobodys = (): Language => `none ${made++}` as Language;
test('in a language that nobody has, what is good everywhere', () => {
  const language = nobodys();
  each((t) => named(t, language), {
    'Organic  Matter 3': 'organic-matter Organic  Matter', 'organic   matter': '', 'nitrate nitrogen 4': 'nitrate-n nitrate nitrogen', 'total phosphorus': 'ratio total phosphorus', 'K 90 zinc 2 P 4': 'potassium K; zinc zinc; phosphorus P', 'k 90 zinc 2': 'zinc zinc', 'leitfahigkeit 2': 'salts leitfahigkeit', 'leitfaehigkeit 2': 'salts leitfaehigkeit', 'schuttdichte': 'density schuttdichte', 'schuettdichte': 'density schuettdichte', 'loesliche salze': 'salts loesliche salze',
    'Mn-AI 40': 'manganese Mn-AI', 'MN-AI 40': 'manganese MN-AI', 'ton': '', 'fer and rame': '', 'LR 3': '',
  });
  each((t) => rated(t, nobodys()), { 'fair, gut, fort, low': 'low low', 'sehr niedrig': 'very-low sehr niedrig', 'muy bajo': 'very-low muy bajo', 'tres faible': 'very-low tres faible' });
  const suggested = knownNames(nobodys());
  expect(['phosphorus', 'potassium', 'boron', 'organic matter', 'zinc', 'iron', 'phosphorous', 'fosforo', 'Mg', 'eisen', 'leitfahigkeit'].filter((n) => suggested.includes(n))).toEqual(['phosphorus', 'potassium', 'boron', 'organic matter']);
});

describe('whose language a report is', () => {
  test.each<[string, readonly string[], Language | null]>([
    ['nothing', [], null], ['figures', ['6.4', '42'], null], ['a name of one', ['Kalium 12'], 'de'], ['of another', ['Phosphorus 12'], 'en'], ['of two alike', ['Potassium 180'], null], ['of three', ['Calcium 900', 'Magnesium 90'], null], ['a word of rating of one', ['x niedrig'], 'de'], ['of three', ['x alto'], null],
    ['of three, then of one', ['alto', 'molto alto'], 'it'], ['two of a kind outweigh one of another', ['Kupfer 2', 'Eisen 4', 'Zinc oxide', 'Iron 3'], 'de'], ['one against one', ['Kupfer 2', 'Boron 3'], null], ['the lines after the first count', ['Boron 3', 'Kupfer 2', 'Eisen 9'], 'de'], ['a symbol tells none', ['P 42', 'K 180'], null],
    ['shared by two, thrice, against one', ['potassium', 'texture', 'cec', 'kupfer'], null], ['capitals', ['NIEDRIG'], 'de'], ['Spanish by its plant', ['plomo 3'], 'es'], ['Portuguese', ['areia 40'], 'pt'], ['Italian', ['zolfo 4'], 'it'], ['French', ['plomb 4'], 'fr'],
  ])('%s', (_, lines, language) => { expect(languageOf(lines)).toBe(language); });
});

describe('a symbol', () => {
  test('before a number', () => {
    each(named, {
      'the K 96': 'potassium K', 'the K .5': 'potassium K', 'the K: 96': 'potassium K', 'the K = 96': 'potassium K', 'the K < 96': 'potassium K', 'the K ≤96': 'potassium K', 'the K >= 96': 'potassium K', 'the K: < 96': 'potassium K', 'the K  96': 'potassium K', 'the K96': '', 'the K x 96': '', 'the K - 96': '', 'the K , 96': '', 'k 96': '', 'the Kx 96': '',
      'H 2.1': 'saturation-h H', 'H high': '', 'H': '', ', H,': '',
    });
  });
  test('at the start of a piece, with an end behind it', () => {
    for (const lead of ['', '   ', 'x, ', 'x,', 'x; ', 'x | ', 'x (', 'x: ', 'xx  ', 'x - ', 'x – ', 'soil ', 'exch ', 'exch. ', 'exchangeable ', 'avail ', 'avail. ', 'available ', 'extractable ', 'colwell ', 'olsen ', 'bray ', 'morgan\'s ', 'dtpa ', 'saturation ', 'sat. ', 'low ', 'medium ', 'high ', 'optimum ', 'optimal ', 'adequate ', 'sufficient ', 'deficient ', 'excessive ', 'normal ', 'average ', 'SOIL ']) expect([lead, named(`${lead}Zn`), named(`${lead}Zn: `)]).toEqual([lead, 'zinc Zn', 'zinc Zn']);
    for (const end of [' ', ':', ' :', ';', ' =', ' |', '|', ' (x)', ')', ',', '.', ' [x', ' -', '  x', ' index', ' FIV', ' is', ' was', ' nach', ' by', ' mit', ' per', ' selon', ' por', ' ppm', ' (ppm)']) expect([end, named(`K${end}`)]).toEqual([end, 'potassium K']);
    for (const lead of ['the ', 'x ', 'of ', 'unsoil ', '6 ', '42 x ']) expect([lead, named(`${lead}K`), named(`${lead}K (x)`)]).toEqual([lead, '', '']);
    for (const end of [' x', ' indexes', ' island', ' a', '*', ' and P', 'a']) expect([end, named(`K${end}`).startsWith('potassium')]).toEqual([end, false]);
  });
  test('before a method or a unit', () => { each(named, { 'Zn DTPA x': 'zinc Zn', 'Zn dtpa': 'zinc Zn', 'Zn x DTPA': '', 'K ppm x': 'potassium K', 'K x ppm': '', 'the Zn DTPA': '', 'K mg/kg': 'potassium K' }); });
  test('before a word of its own', () => { for (const word of ['not', 'nicht', 'none', 'non', 'nao', 'traces', 'trazas', 'spuren', 'nd', 'n.d.', 'n.n.', 'bdl', 'below', 'undetected', 'low', 'high', 'very', 'medium', 'optimum', 'excess', 'deficient', 'sehr', 'muy', 'tres', 'molto', 'muito', 'bajo', 'bas', 'baixo', 'alto', 'hoch', 'niedrig', 'gering', 'mittel', 'faible', 'moyen', 'eleve', 'sufficient', 'adequate']) expect([word, named(`K ${word}`), named(`K  x${word}`), named(`K x${word}`)]).toEqual([word, 'potassium K', 'potassium K', '']); });
  test('that is none', () => { each(named, { 'N.A.': '', 'N.a': '', 'N.': 'nitrogen N', 'P/Al 3': '', 'x/K 3': '', 'K/9': '', 'Ca/K': 'ratio Ca/K', 'E.C. 2': 'salts E.C.' }); });
  test('of a form behind a unit', () => { each((t) => named(t).split('; ').at(-1)!, { '44 ppm NO3': 'nitrate-n NO3', '44 ppm (NO3)': 'nitrate-n NO3', '44 mg/kg as NO3 x': 'nitrate-n NO3', '44 mg / l PO4': 'phosphorus PO4', '44 ppm SO4 x': 'sulphur SO4', '44 ppm  SO4 x': 'sulphur SO4', '44 g/kg NO3 x': '', '44 ppm x NO3 y': '', '44 ppm CO3 x': '' }); });
  test('of salts behind their unit', () => { each(named, { '0.4 dS/m EC': 'salts EC', '0.4 mS/cm EC, x': 'salts EC', '400 us/cm EC': 'salts EC', '0.4 mmhos/cm EC': 'salts EC', '0.4 mmho/cm EC;': 'salts EC', '400 umhos/cm EC | x': 'salts EC', '0.4 ds per m CE': 'salts CE', '0.4 dS/m E.C.': 'salts E.C.', '0.4 dS/m EC (x)': 'salts EC', '0.4 dS/m EC  x': 'salts EC', '0.4 dS/m EC x': '', 'dS/m EC': '', '0.4 dS/m OC': '', '0.4 ppm EC x': '' }); });
  test('between its value and a word', () => {
    for (const value of ['18 ', '18 ppm ', '18ppm ', '18 mg/kg ', '18 mg / l ', '18 mg/100 g ', '18 lb/acre ', '18 lbs/ac ', '18 kg/ha ', '18 kg/a ', '18 meq/100g ', '18 me/100 g ', '18 cmol/kg ', '18 cmolc / kg ', '18 % ']) expect([value, named(`${value}Mg low`), named(`${value}K: low`), named(`${value}P (high)`), named(`${value}Mg x`), named(`${value}S low`)]).toEqual([value, 'magnesium Mg', 'potassium K', 'phosphorus P', '', '']);
    each(named, { '18 x Mg low': '', 'ppm Mg low': '', '18 ppm Mg=low': 'magnesium Mg', '18 ppm Mg - low': 'magnesium Mg' });
  });
});

test('a word of one language alone, where a number and a unit leave no doubt', () => {
  each((t) => named(t).replace('zinc zinc; ', ''), {
    'fer 42 mg/kg': 'iron fer', 'Fer: 42 mg/kg': 'iron Fer', 'fer (fe) 42 ppm': 'iron fer', 'fer < 42 ppm': 'iron fer', 'fer .5 ppm': 'iron fer', 'fer | 42 | ppm': 'iron fer', 'fer=4 ppm': 'iron fer', 'zinc 2, fer 42 ppm': 'iron fer', 'zinc 2; fer 42 ppm': 'iron fer', 'zinc 2 | fer 42 ppm': 'iron fer', '(fer 42 ppm': 'iron fer', '  fer 42 ppm': 'iron fer', 'x  fer 42 ppm': 'iron fer', 'rame 2 ppm': 'copper rame', 'bore 1 ppm': 'boron bore', 'sable 40 %': 'sand sable',
    'x fer 42 ppm': '', 'fer 42': '', 'fer mg/kg': '', 'fer x 42 ppm': '', 'fer (iii) 42 ppm': '', 'cal 12 ppm': '', 'ton 40 %': 'clay ton', 't 12 ppm': '',
  });
});

test('a buffer by its name before a value of its kind', () => {
  each(named, {
    'SMP 6.4': 'buffer-ph SMP', 'smp: 6,42': 'buffer-ph smp', 'SMP = 6.4': 'buffer-ph SMP', 'SMP | 3.0': 'buffer-ph SMP', 'Sikora 7.1': 'buffer-ph Sikora', 'Moore-Sikora 7.1': 'buffer-ph Moore-Sikora', 'Adams Evans 7.8': 'buffer-ph Adams Evans', 'adams-evans 8.9': 'buffer-ph adams-evans', 'Woodruff 6.8': 'buffer-ph Woodruff', 'zinc 2, SMP 6.4': 'zinc zinc; buffer-ph SMP', 'zinc 2 SMP 6.4': 'zinc zinc; buffer-ph SMP', 'zinc; SMP 6.4': 'zinc zinc; buffer-ph SMP', 'zinc|SMP 6.4': 'zinc zinc; buffer-ph SMP', 'x  SMP 6.4': 'buffer-ph SMP',
    'SMP 2.9': '', 'SMP 9.1': '', 'SMP 6': '', 'SMP 6.423': '', 'SMP 6.4 t/ha': '', 'SMP 6.4 tons': '', 'SMP 6.4%': '', 'SMP 6.4 lb': '', 'SMP 6.4 kg': '', 'SMP 6.4 meq': '', 'by SMP 6.4': '', 'xSMP 6.4': '', 'SMP x 6.4': '', 'SMP 6.4.2': '', 'SMP buffer 6.4': 'buffer-ph SMP buffer',
  });
  expect(findNames('SMP 6.4').map((n) => [n.is.name, n.is.method, n.is.languages, n.start, n.end])).toEqual([['smp', 'smp', [], 0, 3]]);
});

describe('classes by their letters', () => {
  const classed = (text: string): string => findClasses(text, wordsOf('de')).map((c) => `${c.is} ${text.slice(c.start, c.end)}`).join('; ');
  test('behind a value and its name', () => {
    each(classed, {
      'Phosphor 12 mg/100 g A': 'very-low A', 'Phosphor 12 B': 'low B', 'Phosphor 12 (C)': 'optimum (C)', 'Phosphor 12 [D]': 'high [D]', 'Phosphor 12 mg/100 g E': 'very-high E', 'Phosphor 12 F': 'very-high F', 'Phosphor 12 C;': 'optimum C', 'Phosphor 12 C, x': 'optimum C', 'Phosphor 12 C | x': 'optimum C', 'Phosphor 12 C (x)': 'optimum C', 'Phosphor 12 C  x': 'optimum C', 'Phosphor 12 C   ': 'optimum C',
      'Phosphor 12 C; Kalium 14 D': 'optimum C; high D', 'Phosphor 12 C, Kalium 14': 'optimum C', 'Bor (B)': '', 'Phosphor C': '', 'Phosphor 12 Cx': '', 'Phosphor 12 xC': '', 'Phosphor 12 C x': '', 'Phosphor 12 G': '', 'Phosphor 12 /C': '', 'Phosphor 12 -C': '', 'Phosphor 12 .C': '', 'Phosphor 12 B, 3': '', 'Phosphor 12 B; < 3': '', 'Phosphor 12 B | 3': '', 'Phosphor 12 B  3': '', 'mg/100 g C': '', '': '', 'Phosphor 12 c': '',
    });
  });
  test('in a row, one behind each value', () => { each(classed, { '6,3 C   24 D   11 B': 'optimum C; high D; low B', '6,3 | C | 24 | D | 11 | A': 'optimum C; high D; very-low A', '6,3 C 24 D': '', '6,3 Cx 24 D 11 B': '', '6,3C 24 D 11 B': '' }); });
});

describe('words of rating', () => {
  test('by a letter behind its value', () => {
    each(rated, {
      '42 VL': 'very-low VL', '42 L': 'low L', '42 M': 'medium M', '42 h': 'high h', '42) vh': 'very-high vh', '42% H': 'high H', '42|M|': 'medium M', '42 | M | 3': 'medium M', '42 M+': 'medium M+', '42 L-': 'low L-', '42 M, x': 'medium M', '42 M; x': 'medium M', '42 M)': 'medium M', '42 M  x': 'medium M', '42 M Zinc': 'medium M',
      '42 M x': '', '42 Mx': '', '42M': '', 'x M': '', '42 vL': '', '42 m deep': '', '42 X': '',
    });
  });
  test('by a class with its word', () => { each(rated, { 'Klasse a': 'very-low Klasse a', 'klasse: B': 'low klasse: B', 'Gehaltsklasse C': 'optimum Gehaltsklasse C', 'stufe d': 'high stufe d', 'Versorgungsstufe E': 'very-high Versorgungsstufe E', 'class F': 'very-high class F', 'Versorgungsklasse  c': 'optimum Versorgungsklasse  c', 'Gehaltsstufe c': 'optimum Gehaltsstufe c', 'klasse g': '', 'klasse cd': '', 'subclass c': '' }); });
  test('by words, the longest, as whole words', () => { each(rated, { 'Very Low': 'very-low Very Low', 'very  low': 'very-low very  low', 'very   low': 'low low', 'lower': '', 'below': 'low below', 'high, low': 'high high; low low', 'medium-low': 'medium medium-low', 'óptimo': '', 'optimo': 'optimum optimo' }); });
});

test('names to suggest: no symbol, slip or ratio, none of four letters, those of the report\'s language and of English', () => {
  const [none, german, spanish] = [knownNames(null), knownNames('de'), knownNames('es')];
  const known = (name: string): boolean[] => [none, german, spanish].map((list) => list.includes(name));
  expect(['phosphorus', 'boron', 'phosphor', 'leitfahigkeit', 'leitfähigkeit', 'plomo', 'plomb', 'rame'].map(known)).toEqual([[true, true, true], [true, true, true], [false, true, false], [false, true, false], [false, false, false], [false, false, true], [false, false, false], [false, false, false]]);
  expect(['phosphorous', 'phosphurus', 'zinc', 'iron', 'K', 'Mn-AI', 'target ph', 'cadmium', 'kupfer'].map(known).map((k) => k[0])).toEqual([false, false, false, false, false, false, false, false, false]);
  expect(knownNames('de')).toBe(german);
});

test('a method as a grower calls it', () => { expect(['cal', ' CAL ', 'cal x', 'bray-1', ' Olsen ', 'Mehlich 3', 'unknown', '?', 'sorcery', ''].map(methodCalled)).toEqual(['cal', 'cal', null, 'bray-1', 'olsen', 'mehlich-3', 'unknown', 'unknown', null, null]); });
