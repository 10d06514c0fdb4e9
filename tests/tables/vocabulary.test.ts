// The words of reports: every set with its language and mark, no word with two meanings, every pattern with its spellings.
// Spellings and words are those of soil-test notes and dictionaries of the six languages (practice), never our own output.
import { describe, expect, test } from 'vitest';
import { findMethods, findUnits } from '../../src/soil/patterns.ts';
import type { Method, ReportUnit } from '../../src/tables/items.ts';
import { BUFFERS, ITEMS, METHODS } from '../../src/tables/items.ts';
import type { WordSet } from '../../src/tables/name-set.ts';
import { LANGUAGES } from '../../src/tables/name-set.ts';
import { INDEX_NAMES, NAME_SETS, NAMES, NAMES_BY_LANGUAGE } from '../../src/tables/names.ts';
import { RATING_LETTERS, RATING_SETS, RATING_WORDS, RATING_WORDS_BY_LANGUAGE } from '../../src/tables/rating-words.ts';
import { METHOD_PATTERNS, UNIT_PATTERNS } from '../../src/tables/report-patterns.ts';
import { PAGES } from '../../src/tables/vocabulary-pages.ts';

const bare = (word: string): string => word.normalize('NFD').replace(/\p{M}/gu, '');
const SETS: readonly WordSet[] = [...NAME_SETS, ...RATING_SETS, ...RATING_LETTERS];

describe('every set', () => {
  test('there are many', () => expect([NAME_SETS.length > 300, RATING_SETS.length > 60]).toEqual([true, true]));

  test('has its language and its mark, and what was read names a page that is listed', () => {
    const wrong = SETS.filter((s) => ![...LANGUAGES, 'any'].includes(s.language) || !['read', 'practice', 'memory'].includes(s.mark) || (s.mark === 'read') !== (s.at !== undefined) || (s.at !== undefined && !PAGES[s.at].startsWith('http')));
    expect(wrong).toEqual([]);
  });

  test('that is good in one language only is of that language', () => {
    expect(SETS.filter((s) => s.in !== undefined && s.in !== s.language)).toEqual([]);
  });

  test('every page listed is used', () => {
    expect(Object.keys(PAGES).filter((p) => !SETS.some((s) => s.at === p))).toEqual([]);
  });

  test('each language has sets that were read on a page, of names and of ratings or more names', () => {
    for (const l of LANGUAGES) expect(NAME_SETS.filter((s) => s.language === l && s.mark === 'read').length, l).toBeGreaterThan(2);
  });
});

describe('names', () => {
  test('are in small letters, unless a symbol that keeps its case', () => {
    expect(NAME_SETS.filter((s) => !s.exact).flatMap((s) => s.names).filter((n) => n !== n.toLowerCase() || n !== n.trim() || n === '')).toEqual([]);
  });

  test('stand for a known item, by a known method', () => {
    expect(NAME_SETS.filter((s) => ![...ITEMS, 'ratio', 'lime'].includes(s.of) || (s.method && !METHODS.includes(s.method)))).toEqual([]);
  });

  // What a name means may not hang on which of two sets stands first.
  test.each([...LANGUAGES, 'any'] as const)('no name of %s means two things', (l) => {
    const meaning = new Map<string, string>();
    const twice: string[] = [];
    for (const s of NAME_SETS.filter((x) => x.language === l || x.language === 'any')) for (const n of s.names) {
      const key = s.exact ? n : bare(n);
      const means = `${s.of} ${s.form ?? ''} ${s.method ?? ''} ${s.index ? 'index' : ''}`;
      if (meaning.has(key) && meaning.get(key) !== means) twice.push(key);
      meaning.set(key, means);
    }
    expect(twice).toEqual([]);
  });

  test('no name good in every report means two things, whatever the languages', () => {
    const meaning = new Map<string, string>();
    for (const s of NAME_SETS.filter((x) => !x.in && !x.index)) for (const n of s.names) {
      const key = s.exact ? n : bare(n);
      const means = `${s.of} ${s.form ?? ''}`;
      expect([key, meaning.get(key) ?? means]).toEqual([key, means]);
      meaning.set(key, means);
    }
  });

  test('stand once in their list, with all their languages', () => {
    for (const list of [NAMES, NAMES_BY_LANGUAGE, INDEX_NAMES]) {
      const keys = list.map((n) => `${n.exact ? n.name : bare(n.name)} ${n.in ?? ''}`);
      expect(new Set(keys).size).toBe(keys.length);
    }
    expect(NAMES.find((n) => bare(n.name) === 'fosforo')!.languages).toEqual(['es', 'pt', 'it']);
    expect(NAMES.filter((n) => n.in || n.index)).toEqual([]);
  });

  test('a misspelling is no name of another thing, and is spelt as no name is', () => {
    const right = new Set(NAME_SETS.filter((s) => !s.slip).flatMap((s) => s.names));
    const slips = NAME_SETS.filter((s) => s.slip).flatMap((s) => s.names);
    expect(slips.length).toBeGreaterThan(30);
    expect(slips.filter((n) => right.has(n))).toEqual([]);
  });

  // Words that are also prose, a place, or another thing in another language.
  test.each(['fer', 'bore', 'arena', 'ton', 'limo', 'limon', 'rame', 'cal', 'calce', 'sable', 'T', 't', 'V', 'LI', 'Ac', 'LR', 'NC'])('"%s" is good in its own language only', (word) => {
    expect(NAMES.map((n) => n.name)).not.toContain(word);
    expect(NAMES_BY_LANGUAGE.map((n) => n.name)).toContain(word);
  });

  const MAIN = ['ph', 'organic-matter', 'nitrogen', 'phosphorus', 'potassium', 'calcium', 'magnesium', 'sulphur', 'sodium', 'boron', 'zinc', 'manganese', 'copper', 'iron', 'cec', 'salts', 'texture', 'sand', 'silt', 'clay', 'carbonate', 'organic-carbon', 'lime-requirement', 'base-saturation', 'density', 'acidity'] as const;
  test.each(LANGUAGES)('%s names every main item', (l) => {
    expect(MAIN.filter((item) => !NAME_SETS.some((s) => s.language === l && s.of === item))).toEqual([]);
  });

  // The elements in the six languages (dictionaries), in the order P, K, Ca, Mg, S, Na, B, Zn, Mn, Cu, Fe.
  const ELEMENTS = ['phosphorus', 'potassium', 'calcium', 'magnesium', 'sulphur', 'sodium', 'boron', 'zinc', 'manganese', 'copper', 'iron'] as const;
  test.each([
    ['en', ['phosphorus', 'potassium', 'calcium', 'magnesium', 'sulphur', 'sodium', 'boron', 'zinc', 'manganese', 'copper', 'iron']],
    ['es', ['fósforo', 'potasio', 'calcio', 'magnesio', 'azufre', 'sodio', 'boro', 'zinc', 'manganeso', 'cobre', 'hierro']],
    ['fr', ['phosphore', 'potassium', 'calcium', 'magnésium', 'soufre', 'sodium', 'bore', 'zinc', 'manganèse', 'cuivre', 'fer']],
    ['de', ['phosphor', 'kalium', 'calcium', 'magnesium', 'schwefel', 'natrium', 'bor', 'zink', 'mangan', 'kupfer', 'eisen']],
    ['pt', ['fósforo', 'potássio', 'cálcio', 'magnésio', 'enxofre', 'sódio', 'boro', 'zinco', 'manganês', 'cobre', 'ferro']],
    ['it', ['fosforo', 'potassio', 'calcio', 'magnesio', 'zolfo', 'sodio', 'boro', 'zinco', 'manganese', 'rame', 'ferro']],
  ] as const)('%s: the elements by their names', (l, words) => {
    const of = (word: string) => [...NAMES, ...NAMES_BY_LANGUAGE.filter((n) => n.in === l)].find((n) => bare(n.name) === bare(word));
    expect(words.map((w) => [w, of(w)?.item])).toEqual(words.map((w, i) => [w, ELEMENTS[i]]));
    expect(words.filter((w) => !of(w)!.languages.includes(l))).toEqual([]);
  });

  // Total phosphorus, saturation of aluminium, a pH to be reached: numbers that must not be taken for what a tree finds.
  test.each(['total phosphorus', 'phosphore total', 'fósforo total', 'fosforo totale', 'gesamtphosphor', 'target ph', 'ziel-ph', 'enr', 'c/n', 'saturação por alumínio'])('"%s" is known and never read', (name) => {
    expect(NAMES.find((n) => n.name === name)?.item).toBe('ratio');
  });

  test('organic carbon is not organic matter, ammonium is not nitrate, active lime is not all lime', () => {
    const item = (name: string) => NAMES.find((n) => n.name === name)?.item;
    expect(['organic carbon', 'SOC', 'carbone organique', 'carbonio organico', 'corg'].map(item)).toEqual(Array(5).fill('organic-carbon'));
    expect(['nh4-n', 'ammonium nitrogen', 'azote ammoniacal'].map(item)).toEqual(Array(3).fill('ammonium-n'));
    expect(['calcaire actif', 'caliza activa', 'calcare attivo'].map(item)).toEqual(Array(3).fill('active-carbonate'));
  });

  test('a buffer by its own name is a buffer pH', () => {
    for (const m of BUFFERS) expect(NAMES.some((n) => n.item === 'buffer-ph' && n.method === m), m).toBe(true);
  });
});

describe('rating words', () => {
  test('are in small letters', () => {
    expect(RATING_SETS.flatMap((s) => s.words).filter((w) => w !== w.toLowerCase() || w !== w.trim())).toEqual([]);
  });

  test('no word means two ratings, whatever the languages', () => {
    const meaning = new Map<string, string>();
    const twice: string[] = [];
    for (const s of RATING_SETS) for (const w of s.words) {
      if (meaning.has(bare(w)) && meaning.get(bare(w)) !== s.rating) twice.push(w);
      meaning.set(bare(w), s.rating);
    }
    expect(twice).toEqual([]);
  });

  test.each(LANGUAGES)('%s has words for all five steps and the target', (l) => {
    expect(new Set(RATING_SETS.filter((s) => s.language === l).map((s) => s.rating))).toEqual(new Set(['very-low', 'low', 'medium', 'optimum', 'high', 'very-high']));
  });

  // Dictionaries; the words of kits and of Virginia are those of the report abbreviations.
  test.each([
    ['very-low', ['very low', 'muy bajo', 'très faible', 'sehr gering', 'muito baixo', 'molto basso', 'depleted', 'extremely low']],
    ['low', ['low', 'baja', 'faibles', 'niedrig', 'baixa', 'bassa', 'deficient', 'def']],
    ['medium', ['medium', 'medio', 'moyen', 'mittel', 'médio', 'medio']],
    ['optimum', ['sufficient', 'adequate', 'óptimo', 'satisfaisant', 'optimal', 'adequado', 'sufficiente', 'suff']],
    ['high', ['high', 'alto', 'élevé', 'zu hoch', 'elevado', 'elevato', 'surplus']],
    ['very-high', ['excessive', 'muy alto', 'très élevé', 'sehr hoch', 'muito alto', 'molto alto', 'extremely high']],
  ] as const)('%s', (rating, words) => {
    expect(words.map((w) => [w, RATING_WORDS.find(([x]) => x === w)?.[1]])).toEqual(words.map((w) => [w, rating]));
  });

  test.each(['bas', 'fort', 'media', 'gut', 'ok', 'rico', 'forte', 'bon'])('"%s" is good in its own language only', (word) => {
    expect(RATING_WORDS.map(([w]) => w)).not.toContain(word);
    expect(RATING_WORDS_BY_LANGUAGE.map(([w]) => w)).toContain(word);
  });
});

describe('units', () => {
  // Ways in which each unit is printed (practice); text comes with small letters and without accents or raised signs.
  const SPELT: readonly (readonly [ReportUnit, readonly string[]])[] = [
    ['ppm', ['ppm', 'p.p.m.', 'parts per million', 'partes por millon', 'partes por milhao', 'parties par million', 'parti per milione', 'teile pro million']],
    ['mg/kg', ['mg/kg', 'mg / kg', 'mg per kg', 'mg kg-1', 'mg.kg-1', 'mg kg^-1', 'mg por kg', 'mg je kg', 'ug/g', 'ug g-1']],
    ['mg/L', ['mg/l', 'mg/litre', 'mg per liter', 'mg/dm3', 'mg dm-3', 'mg.dm-3', 'mg l-1']],
    ['mg/100g', ['mg/100g', 'mg/100 g', 'mg p2o5/100 g', 'mg in 100 g', 'mg pro 100 g boden', 'mg/100 gr']],
    ['lb/acre', ['lb/acre', 'lbs/acre', 'lbs/a', 'lb/ac', 'pounds per acre', 'lb per acre', 'libras por acre', 'lb ac-1', 'pp2m', '#/acre']],
    ['kg/ha', ['kg/ha', 'kg ha-1', 'kg.ha-1', 'kg por ha', 'kg per hectare', 'kg/hectare']],
    ['t/ha', ['t/ha', 'tonnes/ha', 't ha-1', 'toneladas por ha', 't/hectare']],
    ['meq/100g', ['meq/100g', 'meq/100 g', 'me/100g', 'meq/100 ml', 'meq/100 cm3', 'meq per 100 g', 'm.e./100 g', 'meq 100 g-1', 'mval/100 g', 'meq/100 gramos', 'meq%']],
    ['cmol/kg', ['cmol/kg', 'cmol kg-1', 'cmolc/kg', 'cmolc kg-1', 'cmol+/kg', 'cmol   /kg']],
    ['cmol/dm3', ['cmolc/dm3', 'cmolc dm-3', 'cmolc.dm-3', 'cmol/l']],
    ['mmolc/dm3', ['mmolc/dm3', 'mmolc dm-3', 'mmolc.dm-3', 'mmol c/dm3']],
    ['mmol/kg', ['mmol/kg', 'mmolc/kg', 'mmolc kg-1', 'meq/kg', 'meq kg-1']],
    ['%', ['%', 'percent', 'per cent', 'prozent', 'por ciento', 'pour cent', 'por cento', 'per cento', 'dag/kg', 'dag kg-1', 'g/100 g']],
    ['g/kg', ['g/kg', 'g kg-1', 'g.kg-1', 'g per kg', '‰']],
    ['g/dm3', ['g/dm3', 'g dm-3', 'g.dm-3']],
    ['g/cm3', ['g/cm3', 'g/cc', 'g/ml', 'g cm-3', 'mg/m3', 'mg m-3', 't/m3', 'kg/dm3', 'kg/l']],
    ['dS/m', ['ds/m', 'ds m-1', 'ds per m', 'ds.m-1']],
    ['mS/cm', ['ms/cm', 'ms cm-1']],
    ['mmho/cm', ['mmho/cm', 'mmhos/cm', 'mmhos cm-1', 'millimhos/cm']],
    ['uS/cm', ['us/cm', 'us cm-1', 'umhos/cm', 'micromhos/cm']],
    ['mS/m', ['ms/m', 'ms m-1']],
  ];
  test.each(SPELT)('%s in all its spellings', (unit, spellings) => {
    for (const s of spellings) {
      expect([s, findUnits(`12 ${s}`).map((u) => [u.is, u.end])]).toEqual([s, [[unit, 3 + s.length]]]);
      // A unit is no method: "dS m-1" is not Mehlich 1.
      expect([s, findMethods(`12 ${s}`)]).toEqual([s, []]);
      expect([s, UNIT_PATTERNS.find(([u]) => u === unit)![1].includes(s[0]!)]).toEqual([s, true]);
    }
  });
  test('each unit has one row', () => expect(new Set(UNIT_PATTERNS.map(([u]) => u)).size).toBe(UNIT_PATTERNS.length));

  // Nothing of these is a unit.
  test.each(['mg', 'kg per tree', 'mg kg', 'ds', 'germ', 'dag', 'meq', 'pounds', 'ms', 'cmol', 'mg k-1'])('"%s" is none', (text) => {
    expect(findUnits(`12 ${text}`)).toEqual([]);
  });
});

describe('methods', () => {
  const SPELT: readonly (readonly [Method, readonly string[]])[] = [
    ['mehlich-1', ['mehlich 1', 'mehlich-1', 'mehlich i', 'mehlich no. 1', 'm1']], ['mehlich-3-colorimetric', ['mehlich 3 colorimetric', 'm3 (colorimetric']], ['mehlich-3', ['mehlich 3', 'mehlich-iii', 'mehlich3', 'm-3', 'm3', 'm-iii']],
    ['olsen', ['olsen', 'nahco3', 'bicarb', 'bicarbonate', 'sodium bicarbonate', 'bicarbonato sodico', 'bicarbonato de sodio']],
    ['bray-1', ['bray 1', 'bray-1', 'bray p1', 'bray i', 'weak bray', 'bray', 'bray-kurtz 1', 'bray y kurtz 1']], ['bray-2', ['bray 2', 'bray p2', 'bray ii', 'strong bray']],
    ['morgan', ['morgan', 'morgan\'s']], ['modified-morgan', ['modified morgan', 'mod. morgan', 'morgan modifie']], ['ab-dtpa', ['ab-dtpa']], ['dtpa', ['dtpa']], ['edta', ['edta']],
    ['resin', ['resin', 'resina', 'resine']], ['joret-hebert', ['joret-hebert', 'joret hebert']], ['dyer', ['dyer']], ['egner-riehm', ['egner-riehm', 'egner riehm', 'egner-riehm-domingo']], ['al', ['ammonium lactate', 'ammoniumlactat']],
    ['ammonium-acetate', ['ammonium acetate', 'amm. acetate', 'amm-acet.', 'nh4oac', 'acetato amonico', 'acetato de amonio', 'acetate d\'ammonium', 'acetato d\'ammonio', 'ammoniumacetat']], ['ammonium-nitrate', ['ammonium nitrate', 'nh4no3', 'nitrato de amonio', 'ammoniumnitrat']],
    ['cal', ['cal-methode', 'cal extrakt', 'calcium-acetat-lactat']], ['dl', ['dl-methode']], ['cat', ['cat-methode', 'cat-auszug']], ['colwell', ['colwell']],
    ['hot-water', ['hot water', 'hot-water', 'hws', 'heißwasser', 'heisswasser', 'agua caliente', 'eau chaude', 'eau bouillante', 'agua quente', 'acqua calda']], ['water', ['h2o', 'water', 'wasser', 'agua', 'acqua', 'eau']],
    ['cacl2', ['cacl2', 'calciumchlorid', 'cloruro de calcio', 'chlorure de calcium']], ['kcl', ['kcl']], ['paste', ['saturated paste', 'saturation extract', 'pasta saturada', 'pate saturee', 'pasta satura', 'sattigungsextrakt', 'extracto de saturacion', 'estratto di saturazione']],
    ['smp', ['smp']], ['sikora', ['sikora']], ['moore-sikora', ['moore-sikora', 'moore sikora']], ['mehlich-buffer', ['mehlich buffer']], ['modified-mehlich', ['modified mehlich', 'modified mehlich buffer']], ['adams-evans', ['adams-evans', 'adams evans']], ['woodruff', ['woodruff']],
    ['loi', ['loi', 'loss on ignition', 'loss-on-ignition', 'gluhverlust', 'perte au feu', 'calcinacion']], ['walkley-black', ['walkley-black', 'walkley black', 'walkley & black', 'walkley y black']], ['dry-combustion', ['dry combustion', 'dumas', 'combustion seche']],
    ['1:1', ['1:1']], ['1:2', ['1:2', '1:2.5', '1:2,5']], ['1:5', ['1:5']],
  ];
  test.each(SPELT)('%s in all its spellings', (method, spellings) => {
    for (const s of spellings) {
      expect([s, findMethods(`by ${s}`).map((m) => [m.is, m.end])]).toEqual([s, [[method, 3 + s.length]]]);
      expect([s, METHOD_PATTERNS.find(([m]) => m === method)![1].includes(s[0]!)]).toEqual([s, true]);
    }
  });
  test('every method but the unknown has a pattern and a spelling here', () => {
    expect(METHODS.filter((m) => m !== 'unknown' && (!METHOD_PATTERNS.some(([x]) => x === m) || !SPELT.some(([x]) => x === m)))).toEqual([]);
  });
  test.each(['cat', 'the cat sat', 'category', 'niveau', 'beau', 'al', 'modified', 'mehlich'])('"%s" names no method', (text) => {
    expect(findMethods(text)).toEqual([]);
  });
});

// A pattern that backs up over itself would take minutes on these.
test('no pattern grows slow on a long line', () => {
  const start = performance.now();
  for (const piece of ['mg ', 'cmol   ', 'm.e.', 'mmol c', 'bray - ', 'lbs., ', 'mg p2o5 ', 'g ', '% ', 'cal    ', 'mehlich ', '1:2']) {
    const line = piece.repeat(Math.ceil(4000 / piece.length));
    findUnits(line);
    findMethods(line);
  }
  expect(performance.now() - start).toBeLessThan(2000);
});
