// diary.csv: RFC 4180 section 2 for its form, design.md 5 for its columns. Amounts: exact factors of the units (pound 453.59237 g, inch 0.0254 m).
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/orchard/diary.ts';
import { addition, readDiary, WHATS, withdrawalOf, writeEntry } from '../../src/orchard/diary.ts';

const HEAD = 'date,trees,what,bag,amount,note';
const read = (...lines: string[]) => readDiary(`${[HEAD, ...lines].join('\n')}\n`, 'diary.csv');
const entry = (facts: Partial<Entry>): Entry => ({ date: '2026-04-14', trees: ['Gate apple'], what: 'note', bag: null, g: null, m: null, amount: null, note: '', line: 0, ...facts });
const withoutLine = ({ line: _, ...rest }: Entry) => rest;

describe('RFC 4180, section 2', () => {
  const note = (text: string): unknown => readDiary(text, 'd').entries.map((e) => [e.trees[0], e.bag, e.note]);
  test('1, 2: records on lines of their own, with or without a last line break', () => {
    for (const end of ['', '\r\n']) expect(note(`${HEAD}\r\n2026-04-14,aaa,note,bbb,,ccc\r\n2026-04-15,zzz,note,yyy,,xxx${end}`)).toEqual([['aaa', 'bbb', 'ccc'], ['zzz', 'yyy', 'xxx']]);
  });
  test('4: spaces are part of a field', () => { expect(read('2026-04-14,aaa,note,,, b b ').entries[0]!.note).toBe(' b b '); });
  test('5: fields in quotation marks or not', () => { expect(note(`${HEAD}\r\n2026-04-14,"aaa",note,"bbb",,"ccc"\r\n2026-04-15,zzz,note,yyy,,xxx`)).toEqual([['aaa', 'bbb', 'ccc'], ['zzz', 'yyy', 'xxx']]); });
  test('6: line breaks and commas inside quotation marks', () => {
    const { entries } = readDiary(`${HEAD}\r\n2026-04-14,"aaa",note,"b,b",,"b\r\nbb"\r\n2026-04-15,zzz,note,yyy,,xxx`, 'd');
    expect(entries.map((e) => [e.bag, e.note, e.line])).toEqual([['b,b', 'b\r\nbb', 2], ['yyy', 'xxx', 4]]);
  });
  test('7: a quotation mark is doubled', () => { expect(note(`${HEAD}\r\n2026-04-14,"aaa",note,"b""bb",,"ccc"`)).toEqual([['aaa', 'b"bb', 'ccc']]); });
});

describe('a line', () => {
  test.each([
    ['2026-04-14,Gate apple,fed,Sulphate of ammonia,12 oz,', { g: 340.1942775, m: null, amount: '12 oz', bag: 'Sulphate of ammonia' }],
    ['2026-04-14,Gate apple,fed,,12 1/2 oz,day 1', { g: 354.3690390625, note: 'day 1' }],
    ['2026-04-14,Gate apple,fed,,1 lb 4 oz,', { g: 566.9904625 }],
    ['2026-04-14,Gate apple,fed,,"2,5 kg",', { g: 2500 }],
    ['2026-04-14,Gate apple,fed,,,', { g: null, amount: null }],
    ['2026-04-14,Gate apple,fed,,none,', { g: 0 }],
    ['2026-04-14,Gate apple,fed,,2 cups,', { g: null, amount: '2 cups' }],
    ['2026-11-02,Gate apple,shoots,,7 in,', { g: null, m: 0.1778 }],
    ['2026-11-02,Gate apple,shoots,,7",', { m: 0.1778, amount: '7"' }],
    ['2026-09-20,Gate apple,crop,,40 lb,', { g: 18_143.6948 }],
    ['2026-09-20,Gate apple,crop,,none,', { g: 0 }],
    ['2026-09-20,Gate apple,crop,,heavy,', { g: null, amount: 'heavy' }],
    ['2026-10-20,top strip,limed,Garden lime,5 lb,', { g: 2267.96185 }],
    ['2026-10-20,Blueberries,SULFURED,,4 oz,', { what: 'sulphured', g: 113.3980925 }],
    ['14.04.2026,Gate apple,note,,,scab', { date: '2026-04-14', note: 'scab' }],
    ['2026-04-14,Gate apple; Wall plum,note,,,x', { trees: ['Gate apple', 'Wall plum'] }],
    ['2026-04-14,"""Plum; old""; Gate apple",note,,,x', { trees: ['Plum; old', 'Gate apple'] }],
    ['2026-04-14,,note,,,frost last night', { trees: [] }],
  ] as const)('%s', (line, expected) => {
    const { entries, notices } = read(line);
    expect(notices).toEqual([]);
    expect(entries).toHaveLength(1);
    const { g, m, ...rest } = expected as Partial<Entry>;
    expect(entries[0]).toMatchObject(rest);
    for (const [has, wants] of [[entries[0]!.g, g], [entries[0]!.m, m]] as const) {
      if (typeof wants === 'number') expect(has).toBeCloseTo(wants, 8);
      else if (wants === null) expect(has).toBeNull();
    }
  });
});

describe('a broken line is told at its place; the rest is read', () => {
  const good = '2026-04-15,Wall plum,note,,,good';
  test.each([
    ['2026-04-14,Gate apple,fed', 'diary-fields', 1], ['2026-04-14,Gate apple,fed,,12 oz,,', 'diary-fields', 1],
    [',Gate apple,fed,,12 oz,', 'diary-date', 1], ['April,Gate apple,fed,,12 oz,', 'diary-date', 1], ['April 2026,Gate apple,fed,,12 oz,', 'diary-date', 1], ['2026-02-30,Gate apple,fed,,12 oz,', 'diary-date', 1],
    ['14/14/2026,Gate apple,fed,,12 oz,', 'diary-date', 1], ['3/4/2026,Gate apple,fed,,12 oz,', 'diary-date', 1],
    ['2026-04-14,Gate apple,feed,,12 oz,', 'diary-what', 23], ['2026-04-14,Gate apple,,,12 oz,', 'diary-what', 23],
    ['2026-04-14,Gate apple,fed,,12,', 'diary-amount', 28], ['2026-04-14,Gate apple,fed,,a lot,', 'diary-amount', 28], ['2026-04-14,Gate apple,shoots,,7 oz,', 'diary-amount', 31], ['2026-04-14,Gate apple,crop,,2 cups,', 'diary-amount', 29],
    ['2026-04-14,Gate apple,fed,,"1,250 g",', 'number-two-ways', 28],
    ['2026-04-14,,fed,,12 oz,', 'diary-trees', 12],
    // More than the most by plain sense: 20 kg of feed, 4 m of shoot, 500 kg of fruit (practice).
    ['2026-04-14,Gate apple,fed,,1500 kg,', 'diary-too-much', 28], ['2026-04-14,Gate apple,shoots,,50 ft,', 'diary-too-much', 31], ['2026-04-14,Gate apple,crop,,5000 lb,', 'diary-too-much', 29],
    ['2026-04-14,"Gate apple,fed,,12 oz,', 'diary-quote', 12], ['2026-04-14,"Gate" apple,fed,,12 oz,', 'diary-quote', 12],
  ] as const)('%s', (line, code, column) => {
    const { entries, notices } = read(good, line, good);
    expect(notices).toHaveLength(1);
    expect(notices[0]).toMatchObject({ code, severity: 'warning', place: { file: 'diary.csv', line: 3, column, source: line } });
    expect(entries.map((e) => e.line)).toEqual([2, 4]);
  });
  test('all mistakes of a line at once', () => { expect(read('14 Aprl 2026,,fedd,,12 oz,').notices.map((n) => n.code)).toEqual(['diary-date', 'diary-what']); });
  test('an open quotation mark gives up its own line only', () => {
    const { entries, notices } = read('2026-04-14,"Gate apple,fed,,1 oz,', '2026-04-15,"Wall plum",fed,,2 oz,"a, b"', good);
    expect(notices.map((n) => n.place!.line)).toEqual([2]);
    expect(entries.map((e) => [e.line, e.note])).toEqual([[3, 'a, b'], [4, 'good']]);
  });
  test('no diary at all without its columns', () => {
    for (const text of ['hello\n2026-04-14,Gate apple,fed,,1 oz,\n', '2026-04-14,Gate apple,fed,,1 oz,\n', 'date,trees,what,bag,amount\n']) {
      const { entries, notices } = readDiary(text, 'diary.csv');
      expect(entries).toEqual([]);
      expect(notices).toMatchObject([{ code: 'diary-head', severity: 'error', place: { line: 1 } }]);
    }
  });
  test('empty, blank lines, rows of bare commas', () => {
    expect(readDiary('', 'd')).toEqual({ entries: [], notices: [] });
    expect(readDiary(' \n', 'd')).toEqual({ entries: [], notices: [] });
    const { entries, notices } = read('', ',,,,,', good, '', ',,,,,');
    expect(notices).toEqual([]);
    expect(entries.map((e) => e.line)).toEqual([4]);
  });
});

describe('spreadsheets', () => {
  test('a byte order mark, semicolons, columns elsewhere and more of them', () => {
    const text = '\ufeffTrees;What;Date;Weather;Amount;Bag;Note\r\n"Gate apple; Wall plum";fed;14.04.2026;dry;2,5 kg;"a;b";x\r\n';
    const { entries, notices } = readDiary(text, 'd');
    expect(notices).toEqual([]);
    expect(entries).toEqual([{ date: '2026-04-14', trees: ['Gate apple', 'Wall plum'], what: 'fed', bag: 'a;b', g: 2500, m: null, amount: '2,5 kg', note: 'x', line: 2 }]);
    const added = addition(text, [entry({ trees: ['A', 'B'], note: 'y;z' })], 'd');
    expect(added).toEqual({ text: '"A; B";note;2026-04-14;;;;"y;z"\r\n', first: 3 });
  });
  test('what a spreadsheet would run as a formula stands behind an apostrophe', () => {
    // OWASP, CSV Injection: cells that begin with = + - @.
    for (const begin of ['=', '+', '-', '@']) {
      const evil = entry({ trees: [`${begin}1+1`], bag: `${begin}cmd`, note: `${begin}2` });
      const line = writeEntry(evil);
      expect(line).toBe(`2026-04-14,'${begin}1+1,note,'${begin}cmd,,'${begin}2\n`);
      expect(withoutLine(read(line.trimEnd()).entries[0]!)).toEqual(withoutLine(evil));
    }
    expect(writeEntry(entry({ note: "'tis" }))).toContain(",'tis\n");
  });
});

describe('writing', () => {
  test('plain, and in quotation marks only where needed', () => {
    expect(writeEntry(entry({ what: 'fed', bag: 'Sulphate of ammonia', amount: '12 oz', g: 340 }))).toBe('2026-04-14,Gate apple,fed,Sulphate of ammonia,12 oz,\n');
    expect(writeEntry(entry({ trees: ['Gate apple', 'Plum; old'], note: 'a "b", c' }))).toBe('2026-04-14,"Gate apple; ""Plum; old""",note,,,"a ""b"", c"\n');
  });
  test('a first line where there is none; a line end where one lacks', () => {
    expect(addition('', [entry({})], 'd')).toEqual({ text: `${HEAD}\n2026-04-14,Gate apple,note,,,\n`, first: 2 });
    expect(addition(HEAD, [entry({})], 'd')).toEqual({ text: '\n2026-04-14,Gate apple,note,,,\n', first: 2 });
    expect(addition('hello\n', [entry({})], 'd')).toMatchObject({ notice: { code: 'diary-head' } });
  });

  const name = fc.oneof(fc.string({ minLength: 1, maxLength: 12 }), fc.string({ unit: fc.constantFrom('"', ';', ',', ' ', '=', "'", '\n', '\r', 'a', '+', '\t', '@', '-'), minLength: 1, maxLength: 8 })).filter((s) => !s.includes('\0'));
  const written = fc.record({
    date: fc.constantFrom('2026-04-14', '2025-12-31', '2024-02-29'), trees: fc.array(name, { minLength: 1, maxLength: 3 }), what: fc.constantFrom(...WHATS.filter((w) => w !== 'shoots' && w !== 'withdrawn')),
    bag: fc.option(name.map((s) => s.trim()).filter((s) => s !== '')), note: name, amount: fc.constantFrom(null, '0 g', '500 g', '1,5 kg'),
  }).map(({ amount, ...rest }): Entry => ({ ...rest, amount, m: null, g: amount === null || rest.what === 'note' ? null : { '0 g': 0, '500 g': 500, '1,5 kg': 1500 }[amount], line: 0 }));

  test('what is written is read back, whatever stands in names and notes', () => {
    fc.assert(fc.property(fc.array(written, { minLength: 1, maxLength: 4 }), (all) => {
      const { entries, notices } = readDiary(`${HEAD}\n${all.map((e) => writeEntry(e)).join('')}`, 'd');
      expect(notices).toEqual([]);
      expect(entries.map(withoutLine)).toEqual(all.map(withoutLine));
    }), { numRuns: 1000 });
  });

  test('what is taken back stands no longer, whatever stands in names and notes; the rest does', () => {
    fc.assert(fc.property(fc.array(written, { minLength: 1, maxLength: 4 }), fc.nat(3), (all, k) => {
      const gone = all[k % all.length]!;
      const { entries, notices } = readDiary(`${HEAD}\n${[...all, withdrawalOf(gone, '2026-05-01')].map((e) => writeEntry(e)).join('')}`, 'd');
      expect(notices).toEqual([]);
      const rest = all.map(withoutLine);
      // Of entries that differ in their note alone the last goes.
      const same = (e: Entry): boolean => e.what === gone.what && e.date === gone.date && e.bag === gone.bag && e.amount === gone.amount && e.trees.join(';') === gone.trees.join(';');
      rest.splice(all.findLastIndex(same), 1);
      expect(entries.map(withoutLine)).toEqual(rest);
    }), { numRuns: 500 });
  });

  test('whatever stands before: what is added is read back, or refused; never an exception; every place exists', () => {
    const junk = fc.string({ unit: fc.constantFrom('"', ',', '\n', '\r\n', ';', 'a', '2026-04-14', 'note', 'fed', ' ', '12 oz', '\ufeff'), maxLength: 30 });
    fc.assert(fc.property(junk, fc.boolean(), written, (text, hasHead, e) => {
      const source = hasHead ? `${HEAD}\n${text}` : text;
      const before = readDiary(source, 'd');
      const lines = source.split(/\r\n|\n|\r/);
      for (const { place } of before.notices) {
        expect(place!.line).toBeLessThanOrEqual(lines.length);
        expect(place!.column).toBeLessThanOrEqual([...lines[place!.line - 1]!].length + 1);
      }
      const added = addition(source, [e], 'd');
      if ('notice' in added) return;
      const after = readDiary(source + added.text, 'd').entries;
      expect(after.slice(0, -1)).toEqual(before.entries);
      expect(withoutLine(after.at(-1)!)).toEqual(withoutLine(e));
    }), { numRuns: 2000 });
  });

  test('a long file of open quotation marks is read in linear time', () => {
    const start = performance.now();
    readDiary(`${HEAD}\n${'2026-04-14,"Gate apple,fed,,1 oz,\n'.repeat(20_000)}`, 'd');
    expect(performance.now() - start).toBeLessThan(5000);
  });
});

// Excel writes 10 March as 3/10/2026 in the United States and as 10/03/2026 in Britain (its short date by region).
describe('dates as a spreadsheet leaves them', () => {
  const days = (lines: readonly string[], country: string | null) => readDiary([HEAD, ...lines.map((d) => `${d},Gate apple,note,,,`), ''].join('\n'), 'd', country).entries.map((e) => e.date);
  test('by the country', () => {
    expect(days(['3/10/2026'], 'US')).toEqual(['2026-03-10']);
    expect(days(['3/10/2026'], 'GB')).toEqual(['2026-10-03']);
    expect(days(['3/10/2026'], null)).toEqual([]);
  });
  test('a date of the same file that can be read but one way outranks the country', () => {
    expect(days(['3/10/2026', '25/4/2026'], 'US')).toEqual(['2026-10-03', '2026-04-25']);
    expect(days(['3/10/2026', '4/25/2026'], 'GB')).toEqual(['2026-03-10', '2026-04-25']);
    expect(days(['3/10/2026', '4/25/2026', '25/4/2026'], 'US')).toEqual([]);
  });
});
