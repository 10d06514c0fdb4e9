// Texture: the triangle, the words of reports, the test by feel, the guess from exchange capacity.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byFeel, classOf, heavinessGuessed, heavinessOf, knownHeaviness, sharesOf, textureClass, textureNamed, usdaClass } from '../../src/rating/texture.ts';
import type { Reading, Sample } from '../../src/soil/reading.ts';
import type { Item, ReportUnit } from '../../src/tables/items.ts';
import { AUSTRALIA_FIELD, AUSTRIA_CLAY, FEEL, MINNESOTA, TEXTURE_WORDS, UK_FEEL, USDA_TRIANGLE, VDLUFA_CLAY, VDLUFA_GROUPS } from '../../src/tables/texture.ts';
import { enUS } from '../../src/words/en-US.ts';

const reading = (item: Item, value: number | null, unit: ReportUnit | null, asPrinted = `${item} ${value}`): Reading =>
  ({ item, value, unit, asPrinted, place: { file: 'r.txt', line: 1, column: 1, length: 1, source: asPrinted }, method: null, form: null, lab: { rating: null, range: null } });
const sample = (...readings: Reading[]): Sample => ({ name: 's', readings, unread: [] });
const texture = (text: string): Reading => reading('texture', null, null, text);
const shares = (sand: number, silt: number, clay: number): Reading[] => [reading('sand', sand, '%'), reading('silt', silt, '%'), reading('clay', clay, '%')];

describe('the USDA triangle', () => {
  // soil-tests.md 9, rows 18 to 25: the triangle's definition (18, 22), READ (19 to 21, 23, 24), and 25/35/40 is American clay.
  test.each([[20, 20, 60, 'clay'], [65, 10, 25, 'sandy clay loam'], [45, 40, 15, 'loam'], [90, 5, 5, 'sand'], [70, 30, 0, 'sandy loam'], [45, 35, 20, 'loam'], [70, 20, 10, 'sandy loam'], [25, 35, 40, 'clay']] as const)('%d/%d/%d is %s', (sand, silt, clay, name) => {
    expect(usdaClass(sharesOf(sand, silt, clay)!)).toBe(name);
  });

  const points: [number, number, number][] = [];
  for (let sand = 0; sand <= 100; sand++) for (let clay = 0; sand + clay <= 100; clay++) points.push([sand, 100 - sand - clay, clay]);

  test('all 5,151 points at 1 %: one class each', () => {
    expect(points).toHaveLength(5151);
    const counts = new Map<string, number>();
    for (const [sand, silt, clay] of points) {
      const holding = USDA_TRIANGLE.classes.filter((c) => c.holds({ sand, silt, clay }));
      expect([sand, silt, clay, holding.map((c) => c.name)]).toEqual([sand, silt, clay, [expect.any(String)]]);
      expect(usdaClass(sharesOf(sand, silt, clay)!)).toBe(holding[0]!.name);
      counts.set(holding[0]!.name, (counts.get(holding[0]!.name) ?? 0) + 1);
    }
    // soil-tests.md 9, row 26.
    expect(Object.fromEntries(counts)).toMatchObject({ sand: 85, 'loamy sand': 155, 'sandy loam': 565, loam: 349, 'silt loam': 840, silt: 186 });
    expect(counts.size).toBe(12);
  });

  test('any shares with any decimals: one class', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (sand, part) => {
      const s = sharesOf(sand, null, (100 - sand) * part)!;
      expect(USDA_TRIANGLE.classes.filter((c) => c.holds(s))).toHaveLength(1);
    }));
  });

  // soil-tests.md 8.2: 100 ± 1, never rescaled; silt is the rest, as with a hydrometer (practice).
  test.each([[40, 40, 20, true], [40, 41, 20, true], [40, 39, 20, true], [40, 41.1, 20, false], [40, 38.9, 20, false], [-1, 81, 20, false], [NaN, 50, 50, false], [101, 0, 0, false]])('%d, %d, %d: taken %s', (sand, silt, clay, taken) => {
    const s = sharesOf(sand, silt, clay);
    expect(s !== null).toBe(taken);
    if (s) expect([s.sand, s.clay, s.silt]).toEqual([sand, clay, 100 - sand - clay]);
  });
  test('two of three give the third; one gives nothing', () => {
    expect(sharesOf(40, 40, null)).toEqual({ sand: 40, silt: 40, clay: 20 });
    expect(sharesOf(null, 40, 20)).toEqual({ sand: 40, silt: 40, clay: 20 });
    expect(sharesOf(60, null, 50)).toBeNull();
    expect(sharesOf(null, null, 50)).toBeNull();
  });
});

describe('words of texture', () => {
  // Classes of four as the sulphur tables part them (sand, sandy loam, loam, clay). What the two earlier readers said stays: practice.
  test.each([
    ['sand', 'sand', 'light'], ['loamy sand', 'sand', 'light'], ['Sandy loam', 'sandy loam', 'light'], ['fine sandy loam', 'sandy loam', 'light'], ['loam', 'loam', 'medium'], ['silt loam', 'loam', 'medium'], ['Silt', 'loam', 'medium'],
    ['sandy clay', 'clay', 'heavy'], ['clay loam', 'clay', 'heavy'], ['silty clay loam', 'clay', 'heavy'], ['sandy clay loam', 'clay', 'heavy'], ['CLAY', 'clay', 'heavy'],
    ['lehmiger Sand', 'sandy loam', 'light'], ['Lehm', 'loam', 'medium'], ['Schluff', 'loam', 'medium'], ['toniger Lehm', 'clay', 'heavy'], ['Ton', 'clay', 'heavy'], ['Sand', 'sand', 'light'],
  ] as const)('%s stays %s, %s', (word, means, heaviness) => {
    expect(textureNamed(`Texture: ${word}`)).toMatchObject({ means, heaviness });
  });

  // VDLUFA groups (read): sL and uL 4, strongly loamy sand 3: medium. The others: the classes' names in their languages (memory).
  test.each([
    ['Bodenart | sandiger Lehm', 'loam', 'medium', 'de'], ['Bodenart: stark lehmiger Sand', 'sandy loam', 'medium', 'de'], ['Bodenart: schwach lehmiger Sand', 'sandy loam', 'light', 'de'], ['Bodenart: lS', 'sandy loam', 'medium', 'de'], ['Bodenart sL', 'loam', 'medium', 'de'], ['Bodenart: l\'S', 'sandy loam', 'light', 'de'], ['Bodengruppe 5', 'clay', 'heavy', 'de'],
    ['Textura: franco arenoso', 'sandy loam', 'light', 'es'], ['textura franco-arcillosa', 'clay', 'heavy', 'es'], ['Arenosa', 'sand', 'light', 'es'], ['franco limoso', 'loam', 'medium', 'es'],
    ['franco-argiloso', 'clay', 'heavy', 'pt'], ['Argilosa', 'clay', 'heavy', 'pt'], ['Terreno franco', 'loam', 'medium', 'it'], ['franco sabbioso', 'sandy loam', 'light', 'it'], ['medio impasto', 'loam', 'medium', 'it'], ['argilloso', 'clay', 'heavy', 'it'],
    ['limon sableux', 'sandy loam', 'light', 'fr'], ['Texture : limono-argileuse', 'clay', 'heavy', 'fr'], ['sableux', 'sand', 'light', 'fr'], ['limon', 'loam', 'medium', 'fr'],
    ['clayey sand', 'sand', 'light', 'au'], ['medium clay', 'clay', 'heavy', 'au'], ['sandy silt loam', 'loam', 'medium', 'uk'],
  ] as const)('%s is %s, %s', (word, means, heaviness, of) => {
    const found = textureNamed(word)!;
    expect(found).toMatchObject({ means, heaviness });
    expect(found.of).toContain(of);
  });

  test('a heaviness alone, and peat, are no class', () => {
    expect(textureNamed('Soil texture: medium')).toMatchObject({ means: null, heaviness: 'medium' });
    expect(textureNamed('mittelschwerer Boden')).toMatchObject({ means: null, heaviness: 'medium' });
    expect(textureNamed('schwerer Boden')).toMatchObject({ means: null, heaviness: 'heavy' });
    expect(textureNamed('peat')).toMatchObject({ means: null, heaviness: null });
    expect(textureClass('mud')).toBeNull();
  });
  test('two words that disagree count for none; shares beside a word are no words', () => {
    expect(textureNamed('sand or clay')).toBeNull();
    expect(textureNamed('sandy loam, clay 12 %, 30 % silt, sand: 58')).toMatchObject({ means: 'sandy loam' });
    expect(textureNamed('clay / clay loam')).toMatchObject({ means: 'clay' });
  });
  test('no word stands in two rows, and each is found as itself', () => {
    const words = TEXTURE_WORDS.flatMap((r) => r.words);
    expect(new Set(words).size).toBe(words.length);
    for (const r of TEXTURE_WORDS) for (const w of r.words) expect([w, textureNamed(w)?.word, textureNamed(w)?.heaviness]).toEqual([w, w, r.heaviness]);
  });
  test('any text: a row or nothing', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), fc.constantFrom(...TEXTURE_WORDS.flatMap((r) => r.words)), (noise, word) => {
      textureNamed(noise);
      textureNamed(`${noise} ${word} ${noise}`);
    }));
  });
});

describe('heaviness and class of a sample', () => {
  // Austria's orchard guide: under 10 % clay light, over 30 % heavy.
  test.each([[9.9, 'light'], [10, 'medium'], [30, 'medium'], [30.1, 'heavy']] as const)('clay %d % is %s', (clay, heaviness) => {
    expect(knownHeaviness(sample(reading('clay', clay, '%'), texture('loam')))).toBe(heaviness);
    expect(knownHeaviness(sample(reading('clay', clay * 10, 'g/kg')))).toBe(heaviness);
  });
  test('clay as the rest of sand and silt; not of shares that contradict each other', () => {
    expect(knownHeaviness(sample(reading('sand', 30, '%'), reading('silt', 35, '%')))).toBe('heavy');
    expect(knownHeaviness(sample(...shares(30, 35, 20), texture('loam')))).toBe('medium');
    expect(knownHeaviness(sample(...shares(10, 10, 40)))).toBeNull();
    expect(classOf(shares(10, 10, 40))).toBeNull();
  });
  test('the class: the word, then the triangle, then clay alone', () => {
    expect(classOf([texture('sand'), ...shares(20, 20, 60)])).toBe('sand');
    // 40/48/12 is an American loam; by clay alone it counted as a sandy loam.
    expect(classOf(shares(40, 48, 12))).toBe('loam');
    expect([9, 19, 25, 31].map((c) => classOf([reading('clay', c, '%')]))).toEqual(['sand', 'sandy loam', 'loam', 'clay']);
  });
});

describe('guessed from exchange capacity', () => {
  const of = (cec: number, ph: number, ...more: Reading[]): Sample => sample(reading('cec', cec, 'meq/100g'), reading('ph', ph, 'pH'), ...more);
  // AGVISE: to 10 sandy, 11 to 20 and 21 to 30 loams, over 30 clayey; pH under 7.3, no salinity, organic matter under 20 %.
  test.each([[10, 'light'], [11, 'medium'], [20, 'medium'], [30, 'medium'], [31, 'heavy']] as const)('CEC %d is %s', (cec, heaviness) => {
    expect(heavinessGuessed(of(cec, 6.5))).toMatchObject({ heaviness, cec, ph: 6.5 });
    expect(heavinessOf(of(cec, 6.5))).toBe(heaviness);
    expect(knownHeaviness(of(cec, 6.5))).toBeNull();
  });
  test('not on limy, salty or peaty soil, nor without a pH or a unit', () => {
    expect(heavinessGuessed(of(15, 7.2))).not.toBeNull();
    expect(heavinessGuessed(of(15, 7.3))).toBeNull();
    expect(heavinessGuessed(of(15, 6, reading('organic-matter', 19.9, '%')))).not.toBeNull();
    expect(heavinessGuessed(of(15, 6, reading('organic-matter', 20, '%')))).toBeNull();
    expect(heavinessGuessed(of(15, 6, reading('salts', 0.9, 'dS/m')))).not.toBeNull();
    expect(heavinessGuessed(of(15, 6, reading('salts', 1.1, 'dS/m')))).toBeNull();
    expect(heavinessGuessed(sample(reading('cec', 15, 'meq/100g')))).toBeNull();
    expect(heavinessGuessed(sample(reading('cec', 15, null), reading('ph', 6, 'pH')))).toBeNull();
    expect(heavinessGuessed(sample(reading('cec', 150, 'mmolc/dm3'), reading('ph', 6, 'pH')))).toMatchObject({ cec: 15 });
  });
  // What is only known as a limit or a span is no value to guess from; by charge ten mmolc are one meq; a paste is salty over 4 dS/m, the other extracts over 1 (Washington EM119E).
  test('limits and spans are no values; each unit of charge', () => {
    const cec = (more: Partial<Reading>): Reading => ({ ...reading('cec', 15, 'meq/100g'), ...more });
    const guess = (c: Reading, ...more: Reading[]) => heavinessGuessed(sample(c, reading('ph', 6, 'pH'), ...more))?.cec ?? null;
    expect([guess(cec({ below: true })), guess(cec({ above: true })), guess(cec({ to: 20 })), guess(cec({ value: 0 })), guess(cec({ unit: 'ppm' }))]).toEqual([null, null, null, null, null]);
    expect([guess(cec({})), guess(cec({ unit: 'cmol/kg' })), guess(cec({ unit: 'cmol/dm3' })), guess(cec({ unit: 'mmolc/dm3', value: 150 }))]).toEqual([15, 15, 15, 15]);
    const ec = (value: number, method: Reading['method'], unit: ReportUnit | null = 'dS/m'): Reading => ({ ...reading('salts', value, unit), method });
    expect([guess(cec({}), ec(4, 'paste')), guess(cec({}), ec(4.1, 'paste')), guess(cec({}), ec(1, '1:1')), guess(cec({}), ec(1.1, '1:1')), guess(cec({}), ec(1100, '1:1', 'uS/cm')), guess(cec({}), ec(900, '1:1', 'uS/cm'))]).toEqual([15, null, 15, null, null, 15]);
    // Salts without a unit may be many.
    expect([guess(cec({}), ec(0.1, '1:1', null)), guess(cec({}), ec(0.1, '1:1', 'ppm'))]).toEqual([null, null]);
  });
  test('what is told wins', () => { expect(heavinessOf(of(40, 6, texture('sand')))).toBe('light'); });
});

describe('by feel', () => {
  // Bodenwelten, steps 1 to 6; a shiny face is clay.
  test.each([
    [['no', 'no', 'no'], 'Sand', 'light'], [['no', 'no', 'yes'], 'schwach lehmiger Sand', 'light'], [['no', 'yes'], 'lehmiger Sand', 'light'], [['yes', 'no'], 'stark sandiger Lehm', 'medium'],
    [['yes', 'yes', 'loudly'], 'sandiger Lehm', 'medium'], [['yes', 'yes', 'hardly', 'dull'], 'Lehm', 'medium'], [['yes', 'yes', 'hardly', 'slightly'], 'toniger Lehm', 'heavy'], [['yes', 'yes', 'hardly', 'shiny'], 'Ton', 'heavy'],
  ])('%j is %s, %s', (answers, line, heaviness) => {
    const found = byFeel(answers)!;
    expect(found).toMatchObject({ line, heaviness });
    // The line it writes means the same when it is read again.
    expect(textureNamed(`texture: ${line}`)).toMatchObject({ heaviness });
    for (let n = 0; n < answers.length; n++) expect(byFeel(answers.slice(0, n))).toMatchObject({ answers: expect.arrayContaining([answers[n]]) as unknown });
  });
  test('an answer that was not offered, or one too many', () => {
    expect(byFeel(['perhaps'])).toBeNull();
    expect(byFeel(['no', 'yes', 'yes'])).toBeNull();
  });
  test('every question and answer has its words', () => {
    const keys = Object.values(FEEL.steps).flatMap((s) => [s.ask, ...s.answers.flatMap((a) => ('found' in a ? [a.key, a.name] : [a.key]))]);
    for (const k of keys) expect(enUS.feel[k].length).toBeGreaterThan(0);
  });
});

describe('groups of other countries, as printed', () => {
  test('Germany: light 1 and 2, medium 3 and 4, heavy 5; group 6 is bog (elsa-agrar, after VDLUFA)', () => {
    expect(VDLUFA_GROUPS.groups.map((g) => [g.group, g.heaviness])).toEqual([[1, 'light'], [2, 'light'], [3, 'medium'], [4, 'medium'], [5, 'heavy'], [6, null]]);
    // memory
    expect(VDLUFA_CLAY.from).toEqual([5, 12, 17, 25]);
  });
  test('Austria, Minnesota, the UK, Australia', () => {
    expect([AUSTRIA_CLAY.light, AUSTRIA_CLAY.heavy]).toEqual([10, 30]);
    expect(MINNESOTA.groups.map((g) => g.letter).join('')).toBe('CMFPK');
    expect(MINNESOTA.organicOver).toBe(19);
    expect([UK_FEEL.gritty.sandOver, UK_FEEL.gritty.clayUnder, UK_FEEL.silky.clayUnder, UK_FEEL.sticky.clayOver, UK_FEEL.peaty.organicOver]).toEqual([50, 18, 35, 30, 20]);
    const clay = (grade: string): unknown => AUSTRALIA_FIELD.grades.find((g) => g.grade === grade)!.clay;
    expect(['sand', 'clayey sand', 'sandy loam', 'sandy clay loam', 'clay loam', 'light clay', 'medium clay'].map(clay)).toEqual([[null, 5], [5, 10], [10, 20], [20, 30], [30, 35], [35, 40], [45, 55]]);
  });
  test('Minnesota gathers the American classes: their heaviness is the words\' own', () => {
    for (const g of MINNESOTA.groups) for (const c of g.classes) expect([c, textureNamed(c)?.heaviness]).toEqual([c, g.heaviness]);
  });
});
