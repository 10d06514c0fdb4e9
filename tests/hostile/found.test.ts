// What the fuzzer (tests/fuzz) and the checker of patterns found, each with what should have come of it.
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { parseBag } from '../../src/orchard/bag.ts';
import { treeLines, withFact, withTree } from '../../src/page/state.ts';
import { readReport } from '../../src/soil/read.ts';
import { medlar } from '../medlar.ts';
import type { Files } from './hold.ts';
import { both, GOOD, REPORT } from './hold.ts';

/** CPU in milliseconds: a busy machine makes nothing slow. */
async function spent(act: () => unknown): Promise<number> {
  const from = process.cpuUsage();
  await act();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
}

// YAML 1.2.2, 8.2.2: "? " begins a key of any form, so that keys lie within keys; a parser writes each out within the next.
describe('brackets and keys within each other: refused at their line, at once', () => {
  test.each([
    ['keys of parts', '? '.repeat(100)], ['in a flow', '{? '.repeat(100)], ['brackets', '['.repeat(100_000)], ['maps', '{a: '.repeat(20_000)], ['over lines', '[\n'.repeat(50_000)], ['keys by lines', Array.from({ length: 60 }, (_, i) => `${' '.repeat(i)}?\n`).join('')],
  ])('%s', async (_, nest) => {
    const text = `${GOOD}x:\n${nest}\n`;
    const folders: Files[] = [{ 'orchard.yaml': text, 'soil/2025.txt': REPORT }, { 'orchard.yaml': GOOD, 'soil/2025.txt': REPORT, 'rules.yaml': `- id: mine\n  low:\n${nest}\n` }];
    for (const files of folders) {
      const ms = await spent(async () => {
        const { text: run, notices } = await both(['check'], files);
        expect(run.code).toBe(3);
        expect(notices[0]).toMatchObject({ code: 'yaml-broken', severity: 'error', file: 'rules.yaml' in files ? 'rules.yaml' : 'orchard.yaml' });
      });
      expect(ms).toBeLessThan(2000);
    }
    expect(await spent(() => {
      // The page shows it as a text that it cannot change.
      expect([treeLines(text), withFact(text, 'where', 'Ohio, US')]).toEqual([[], null]);
    })).toBeLessThan(2000);
  });
  test('a name too long for a line of YAML is written by the page, and can be changed again', () => {
    const first = withTree('where: Ohio, US\n', 'x'.repeat(1200), 'apple');
    expect(treeLines(withTree(first!, 'Second', 'pear') ?? '').map((t) => t.facts)).toEqual(['apple', 'pear']);
  });
  test('what an orchard needs of brackets is still read', async () => {
    const flow = GOOD.replace(/store:\n.*\n/, 'store: ["Feed [for all] (A), 21-0-0, 4 lb, $9", "What? 10-10-10, 5 lb"]\n');
    const run = await medlar(['check'], { 'orchard.yaml': flow, 'soil/2025.txt': REPORT });
    expect([run.code, run.stderr]).toEqual([0, '']);
  });
});

describe('a label whose bracket never ends', () => {
  const place = { file: 'b', line: 1, column: 1, length: 1, source: '' };
  test.each([',0', ',0.0', '/1', '-1,5', '; 2'])('%s, over and over', async (part) => {
    expect(await spent(() => parseBag(`Feed 10-10-10 (0+0${part.repeat(400)}x, 4 lb`, null, false, place))).toBeLessThan(500);
  });
  // A comma between digits is a decimal mark wherever it can be one (Germany, Spain).
  test.each(['(1,5+2)', '(+ 2)', '(2+12)', '(2+12,5 %)'])('%s behind the numbers is taken with them', (bracket) => {
    const { bag } = parseBag(`Feed 10-10-10 ${bracket}, 4 lb`, 'DE', false, place);
    expect([bag?.grade.N, bag?.label]).toEqual([0.1, 'Feed']);
  });
});

test('a line of one name a thousand times is no table of a thousand samples', async () => {
  const lines = Array.from({ length: 10 }, () => `Test\tR${'pH '.repeat(1300)}5 ppm\n`).join('');
  expect(await spent(() => readReport(`Phosphorus 42 ppm\n${lines}`, 'r.txt'))).toBeLessThan(10_000);
});

test('heads that begin with the name of a sample are still parted', () => {
  const { samples } = readReport('Test, Top ppm, Bottom ppm\nPhosphorus, 42, 30\nPotassium, 180, 150\n', 'r.txt');
  expect(samples.map((s) => s.readings.map((r) => [r.item, r.value]))).toEqual([[['phosphorus', 42], ['potassium', 180]], [['phosphorus', 30], ['potassium', 150]]]);
});

// A season is reckoned about a day: at the ends of the calendar there is none before or after (ISO 8601 names years 0000 to 9999).
describe('days at the ends of the calendar', () => {
  test.each(['0001-01-01', '1899-12-31', '2300-01-01', '9999-12-31'])('%s is no day to plan for', async (day) => {
    const files = { 'orchard.yaml': GOOD, 'soil/2025.txt': REPORT };
    expect((await both(['plan', '--today', day], files)).text.code).toBe(2);
    const batch = await medlar(['plan', '--batch'], {}, JSON.stringify({ files, today: day }));
    expect((JSON.parse(batch.stdout) as { notices: { code: string }[] }).notices.map((n) => n.code)).toEqual(['date-wrong']);
  });
  test.each(['1970-01-01', '2100-12-31'])('%s is one', async (day) => {
    const { text } = await both(['plan', '--today', day], { 'orchard.yaml': GOOD, 'soil/2025.txt': REPORT });
    expect([0, 3]).toContain(text.code);
  });
});

test('sources says what every rule gives', async () => {
  for (const argv of [['sources', 'aragon'], ['sources', 'aragon', '--json']]) expect((await medlar(argv)).stdout).not.toContain('undefined');
});

// UAX 14 and ECMA-262: U+2028, U+2029 and line feeds end a line, and a full stop in a pattern does not match them.
test.each(['"\\u2028"', '"a\\u2028b"', '"a\\nb"', '"\\n"', '""'])('a zone, a fact, a tree or a bag named %s', async (name) => {
  for (const text of [`soil:\n  ${name}: a.txt\ntrees:\n  A: apple\n`, `trees:\n  A: [apple, ${name}]\n`, `trees:\n  ${name}: apple\n`, `trees:\n  A: apple\nstore:\n  - ${name}\n`, `orchard: ${name}\ntrees:\n  A: apple\n`]) {
    const { text: run } = await both(['check'], { 'orchard.yaml': `where: Ohio, US\n${text}`, 'a.txt': REPORT });
    expect([0, 3, 5]).toContain(run.code);
  }
});

test('the page shows a tree whose line holds an alias that leads nowhere, as it stands', () => {
  expect(treeLines('trees:\n  A: [apple, *gone]\n  B: pear\n').map((t) => [t.name, t.facts])).toEqual([['A', '[apple, *gone]'], ['B', 'pear']]);
});

// YAML 1.2.2, 7.1: an alias must follow its anchor; and "-" with a line break begins a list (8.2.1).
test('the page changes nothing of a text that could not be written, or not so that it reads again', () => {
  expect([withFact('soil: *gone\ntrees:\n  A: apple\n', 'where', 'Ohio, US'), withTree('trees:\n  A: [apple, *gone]\n', 'B', 'pear')]).toEqual([null, null]);
  for (const fact of ['-\n\n  2 oz each', '-', '- a', '? b', ': c', '# d', '&e', '*f', '!g', '%h', '@i', '`j', '[', '{', '"', "'", '|', '>', 'a: b', 'a #b', '---', '...']) {
    const text = withFact('trees:\n  A: apple\n', 'where', fact);
    if (text === null) expect(fact).toContain('\n');
    else expect([parse(text), parse(withFact(text, 'where', 'Ohio, US')!)]).toEqual([{ trees: { A: 'apple' }, where: fact }, { trees: { A: 'apple' }, where: 'Ohio, US' }]);
  }
});

test.each([['a bag', 'trees:\n  A: apple\nstore:\n  - '], ['a tree', 'trees:\n  A: apple, ']])('%s of 60,000 signs is refused at once', async (_, before) => {
  const ms = await spent(async () => {
    const { text, notices } = await both(['check'], { 'orchard.yaml': `where: Ohio, US\n${before}Feed 5 % N ${'a '.repeat(30_000)}\n` });
    expect([text.code, notices.map((n) => n.code)]).toEqual([3, ['value-misshapen']]);
  });
  expect(ms).toBeLessThan(3000);
});

// A report may print no day, and "over 200" is no value to set beside others.
test.each(['', 'taken: 3 Nov 2025\n'])('years of a zone whose one test has a value without an end, day "%s"', async (taken) => {
  const { text } = await both(['years'], { 'orchard.yaml': GOOD, 'soil/2025.txt': `${taken}pH 5.9\nMagnesium > 200 ppm\n` });
  expect([text.code, text.stdout.includes('5.9'), text.stdout.includes('Mg')]).toEqual([0, true, false]);
});
// Which of two tests came first nobody can say without their days.
test('years of a zone with two undated tests asks for both days', async () => {
  const orchard = GOOD.replace('  bank: soil/2025.txt\n', '  bank:\n    - soil/2025.txt\n    - soil/old.txt\n');
  const { text, notices } = await both(['years'], { 'orchard.yaml': orchard, 'soil/2025.txt': 'pH 5.9\nOlsen P 18 ppm\n', 'soil/old.txt': 'pH 5.8\nMehlich 3 P 42 ppm\n' });
  expect([text.code, notices.map((n) => n.code)]).toEqual([3, ['test-undated', 'test-undated']]);
});

// YAML 1.1 (yaml.org/type/bool, yaml.org/type/int) makes a truth of "no" and 750 of "12:30"; a grower's words are neither, whatever the first line asks for.
test.each(['%YAML 1.1\n---\n', '\uFEFF%YAML 1.1\n---\n', '%YAML\t1.1 # old\n---\n'])('a file that asks for YAML 1.1 reads as any other: %j', async (head) => {
  const text = GOOD.replace('store:', '  no: apple, planted 2019, 10 ft across, shoots 10 in\n  12:30: pear, planted 2019, 10 ft across, shoots 10 in\nstore:');
  const { json } = await both(['plan'], { 'orchard.yaml': head + text, 'soil/2025.txt': REPORT });
  expect((json.json.result as { trees: { name: string }[] }).trees.map((t) => t.name)).toEqual(['Gate apple', 'no', '12:30']);
  expect(treeLines(head + text).map((t) => t.name)).toEqual(['Gate apple', 'no', '12:30']);
});
