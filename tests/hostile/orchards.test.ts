// Orchard files that are wrong or unkind. Expected places are counted by hand in the text given.
import { describe, expect, test } from 'vitest';
import { both, GOOD, held, REPORT, STORE, withTrees } from './hold.ts';
import { medlar } from '../medlar.ts';

const refused = async (yaml: string, code: string, place: { line: number; column?: number }): Promise<string> => {
  let said = '';
  for (const argv of [['plan'], ['check'], ['sheet']]) {
    const { text, notices } = await both(argv, { 'orchard.yaml': yaml, 'soil/2025.txt': REPORT });
    expect(text.code).toBe(3);
    expect(notices.find((n) => n.code === code), `${code} among ${notices.map((n) => n.code).join()}`).toMatchObject({ file: 'orchard.yaml', severity: 'error', ...place });
    expect(text.stderr).toContain(`orchard.yaml, line ${place.line}: `);
    said = text.stderr;
  }
  return said;
};

test('anchors that multiply are refused, not unfolded', async () => {
  // Twelve levels of nine: unfolded it would be 9^12 facts.
  const levels = Array.from({ length: 12 }, (_, i) => `  l${i + 1}: &l${i + 1} [${Array.from({ length: 9 }, () => `*l${i}`).join(', ')}]`);
  await refused(`trees:\n  l0: &l0 [apple]\n${levels.join('\n')}\n`, 'yaml-alias', { line: 2 });
});

test('a merge key and a tag are refused', async () => {
  await refused('trees:\n  A: &a apple\n  B:\n    <<: *a\n', 'yaml-alias', { line: 2 });
  await refused('trees:\n  A: !own apple\n', 'yaml-alias', { line: 2 });
  expect((await both(['check'], { 'orchard.yaml': 'trees:\n  A: !!js/function "x"\n' })).text.code).toBe(3);
});

test('deep nesting is refused without a crash', async () => {
  const { text } = await both(['check'], { 'orchard.yaml': `trees:\n  A: ${'['.repeat(3000)}${']'.repeat(3000)}\n` });
  expect(text.code).toBe(3);
});

describe('names', () => {
  test('a script for a name is told as text', async () => {
    const name = '<script>alert(1)</script>';
    const yaml = withTrees([`"${name}": apple, planted 2019, 12 ft across, shoots 6 in 2025`]).replace('where:', 'orchard: "<script>alert(2)</script>"\nwhere:').replace('Sulphate of ammonia', '<script>alert(3)</script>');
    const { text } = await both(['sheet'], { 'orchard.yaml': yaml });
    expect(text.code).toBe(0);
    let html = '';
    const { readFileSync } = await import('node:fs');
    await medlar(['sheet'], { 'orchard.yaml': yaml }, '', (folder) => { html = readFileSync(`${folder}/sheet.html`, 'utf8'); });
    expect(html.toLowerCase()).not.toMatch(/<script|<\/script/);
    expect(html.toLowerCase()).toContain('&lt;script&gt;alert(1)');
  });

  test.each(['a" onload="x', "a' onload='x", '&amp;', '--> <b>', '{{orchard}}', '{tree}', '[x| y]', '$&', '%s'])('%s is told as it stands', async (name) => {
    const yaml = withTrees([`${JSON.stringify(name)}: apple, planted 2019, 12 ft across, shoots 6 in 2025`]);
    const { json } = await both(['plan'], { 'orchard.yaml': yaml });
    expect(json.code).toBe(0);
    expect(json.json.result.trees[0].name).toBe(name);
    const { readFileSync } = await import('node:fs');
    let html = '';
    await medlar(['sheet'], { 'orchard.yaml': yaml }, '', (folder) => { html = readFileSync(`${folder}/sheet.html`, 'utf8'); });
    expect(html).not.toMatch(/<[^>]*\son\w+=/i);
  });

  test('Plum #2: what YAML hides is diagnosed at the sign', async () => {
    // "  Plum #2": the sign is the eighth character of the second line.
    const said = await refused('trees:\n  Plum #2: plum, planted 2020\n', 'hidden-by-hash', { line: 2, column: 8 });
    expect(said).toContain('Plum No. 2');
  });

  test('digits alone', async () => {
    await refused(withTrees(['Gate: apple, planted 2019', '12: apple, planted 2019']), 'name-of-digits', { line: 6, column: 3 });
  });

  test('twice the same, also in another case', async () => {
    await refused(withTrees(['Gate: apple, planted 2019', 'Gate: pear, planted 2019']), 'name-twice', { line: 6 });
    await refused(withTrees(['Gate: apple, planted 2019', 'GATE: pear, planted 2019']), 'name-twice', { line: 6, column: 3 });
  });

  test('escape codes', async () => {
    const { text } = await both(['plan'], { 'orchard.yaml': withTrees(['"Gate\\e[31m": apple, planted 2019']) });
    expect(text.code).toBe(3);
    await both(['plan'], { 'orchard.yaml': withTrees([`Gate\u001b]0;x\u0007: apple, planted 2019`]) });
    await both(['plan', '\u001b[2J'], { 'orchard.yaml': withTrees(['Gate: apple, planted 2019']) });
    await both(['check'], { 'orchard.yaml': withTrees(['Gate: apple, planted 2019']).replace('Sulphate', '\u001b[31mSulphate') });
    // A name in quotation marks may hold what a bag's label holds too.
    await both(['plan'], { 'orchard.yaml': `orchard: "x\\e[31m"\n${withTrees(['Gate: apple, planted 2019, shoots 6 in 2025'])}` });
  });

  test.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype'])('%s is a name like any other', async (name) => {
    const { json } = await both(['plan'], { 'orchard.yaml': withTrees([`${name}: apple, planted 2019, 12 ft across, shoots 6 in 2025`]) });
    expect(json.code).toBe(0);
    expect(json.json.result.trees.map((t: { name: string }) => t.name)).toEqual([name]);
    const zone = await both(['plan'], { 'orchard.yaml': GOOD.replace('  bank:', `  ${name}:`).replace(', bank', `, ${name}`), 'soil/2025.txt': REPORT });
    expect(zone.json.code).toBe(0);
    // P very high in that zone: were the zone lost, potash and phosphate would be told as untested.
    expect(zone.json.json.notices.map((n) => n.code)).not.toContain('no-soil');
    expect(({} as Record<string, unknown>).planted).toBeUndefined();
  });

  test.each(['__proto__', 'constructor', 'toString', 'valueOf'])('%s as a crop, a country, a unit or a key is unknown', async (word) => {
    await refused(withTrees([`Gate: ${word}, planted 2019`]), 'item-unknown', { line: 5 });
    await refused(`where: ${word}\ntrees:\n  A: apple\n`, 'where-unknown', { line: 1 });
    await refused(withTrees([`Gate: apple, 12 ${word} across`]), 'measure-wrong', { line: 5 });
    const key = await both(['check'], { 'orchard.yaml': `${word}: x\ntrees:\n  A: apple\n` });
    expect(key.text.code).toBe(3);
    expect(key.notices.map((n) => n.code)).toContain('key-unknown');
    for (const argv of [['why', 'Gate', word], ['schema', word], ['plan', word], [word]]) {
      const said = await medlar(argv, { 'orchard.yaml': withTrees(['Gate: apple, planted 2019']) });
      held(said);
      expect(said.code).toBe(2);
    }
  });
});

describe('facts', () => {
  test('a crown of 0', async () => {
    // "  Gate: apple, 0 ft across": the fact begins at the sixteenth character.
    await refused(withTrees(['Gate: apple, 0 ft across']), 'measure-zero', { line: 5, column: 16 });
  });
  test('a crown of 60 m', async () => { await refused(withTrees(['Gate: apple, 60 m across']), 'crown-impossible', { line: 5, column: 3 }); });
  test('planted in the future', async () => { await refused(withTrees(['Gate: apple, planted 2031']), 'planted-future', { line: 5, column: 3 }); });
  test('planted in the year 1019', async () => { await refused(withTrees(['Gate: apple, planted 1019']), 'planted-long-ago', { line: 5 }); });
  test('a comma before three digits is asked, not guessed', async () => {
    await refused(withTrees(['Gate: apple, 1,250 m across']), 'number-two-ways', { line: 5 });
  });
  test('a fact twice, and two that contradict', async () => {
    await refused(withTrees(['Gate: apple, planted 2019, planted 2020']), 'fact-twice', { line: 5 });
    await refused(withTrees(['Gate: apple, bearing, not bearing']), 'fact-contrary', { line: 5 });
  });
  test('no plant at all in a row', async () => {
    const { text } = await both(['plan'], { 'orchard.yaml': withTrees(['Gate: 0 apple, planted 2019, 12 ft across, shoots 6 in 2025']) });
    expect(text.code).toBe(3);
  });
  test('a thousand million plants stay finite', async () => {
    await both(['plan'], { 'orchard.yaml': withTrees(['Gate: 1000000000 apple, planted 2019, 12 ft across, shoots 6 in 2025']) });
  });
  test('a division by nothing', async () => { await refused(withTrees(['Gate: apple, 1/0 ft across']), 'measure-wrong', { line: 5 }); });
});

describe('keys, zones, dates', () => {
  test('an unknown key is told with the nearest', async () => {
    const said = await refused(`wehre: Ohio, US\ntrees:\n  A: apple\n`, 'key-unknown', { line: 1, column: 1 });
    expect(said).toContain('"where"');
  });
  test('every mistake at once (design.md 5)', async () => {
    const { notices } = await both(['check'], { 'orchard.yaml': withTrees(['A: aple, planted 2019', 'B: pear, 0 m across', '7: plum']) });
    expect(notices.map((n) => [n.code, n.line])).toEqual(expect.arrayContaining([['item-unknown', 5], ['measure-zero', 6], ['name-of-digits', 7]]));
  });
  test('a zone without a report', async () => { await refused(GOOD.replace('soil/2025.txt', ''), 'zone-without-report', { line: 6, column: 3 }); });
  test('a zone named like a fact', async () => { await refused(GOOD.replaceAll('bank:', 'mulch:').replace(', bank', ''), 'zone-reserved', { line: 6, column: 3 }); });
  test('a sample that is not there', async () => { await refused(GOOD.replace('2025.txt', '2025.txt, sample 9'), 'sample-unknown', { line: 6 }); });
  test('the 31st of February', async () => { await refused(GOOD.replace('12 April', '31 February'), 'date-wrong', { line: 3 }); });
  test('an empty file, a list, a number, broken YAML', async () => {
    for (const yaml of ['', '\n\n', '- a\n- b\n', '42\n', 'trees: [\n', 'trees:\n\tA: apple\n', 'trees:\n', 'trees: {}\n', 'trees:\n  A:\n', '\u0000\u0001', 'trees:\n  - apple\n', 'trees:\n  A: [apple]\n', '? [a]\n: b\n', 'trees:\n  A: apple\n---\ntrees:\n  B: pear\n']) {
      const { text } = await both(['check'], { 'orchard.yaml': yaml });
      expect(text.code, JSON.stringify(yaml)).toBe(3);
      expect(text.stderr).toContain('orchard.yaml');
    }
  });
  test('a file of one megabyte and more', async () => {
    const { text } = await both(['check'], { 'orchard.yaml': `trees:\n${'# x\n'.repeat(300_000)}` });
    expect(text.code).toBe(3);
  });
});

describe('bags', () => {
  const bag = (label: string): string => withTrees(['Gate: apple, planted 2019, 12 ft across, shoots 6 in 2025']).replace(STORE, `store:\n  - ${label}\n`);
  test.each([
    ['Sand, 0-0-0, 4 lb', 'grade-empty'], ['Odd, 150-0-0, 4 lb', 'grade-impossible'], ['Odd, 60-60-60', 'grade-impossible'], ['Something, 4 lb', 'grade-missing'],
  ] as const)('%s', async (label, code) => { await refused(bag(label), code, { line: 7, column: 5 }); });

  test('a bag of no weight is refused or has no count, never a crash', async () => {
    const { json } = await both(['plan'], { 'orchard.yaml': bag('Odd, 21-0-0, 0 lb, $9') });
    if (json.code === 0) expect(json.json.result.buy[0].bags).toBeNull();
    else expect(json.code).toBe(3);
  });
  test('a grade with a minus, a letter, a list', async () => {
    for (const label of ['Odd, -21-0-0', 'Odd, x-y-z', '[a, b]', '{ a: 21-0-0 }', '""', '21-0-0, 4 lb, 5 lb', 'Odd, 21-0-0, $nine']) {
      const { text } = await both(['check'], { 'orchard.yaml': bag(label) });
      expect([0, 3], label).toContain(text.code);
    }
  });
});
