// The grower's own rules: they lead, and their mistakes are told at their lines, all at once. Sums by hand.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { LB, OZ, crown } from '../published/helpers.ts';

const FINE = 'pH 6.4\nPhosphorus 164 ppm = very high\nPotassium 400 ppm = very high\n';
const ask = async (rules: string | Buffer, facts = 'apple, standard, planted 2018, 25 ft across, shoots 3 in 2025', argv: readonly string[] = ['plan', '--json'], where = 'Michigan, US', report = FINE) => {
  const yaml = `where: ${where}\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: a.txt\ntrees:\n  A: ${facts}, bank\nstore:\n  - Sulphate of ammonia, 21-0-0, 10 lb, $20\n`;
  const run = await medlar(argv, { 'orchard.yaml': yaml, 'a.txt': report, 'rules.yaml': rules });
  return { ...run, tree: run.json?.result?.trees?.[0], errors: (run.json?.notices ?? []).filter((n) => n.severity === 'error') };
};
const rule = (over: Record<string, string> = {}): string => {
  const keys: Record<string, string> = { id: 'mine', crops: '[apple]', by: 'plant', gives: '{ of: N, unit: oz }', low: '3', from: 'my notebook', ...over };
  return Object.entries(keys).filter(([, v]) => v !== '-').map(([k, v], i) => `${i === 0 ? '- ' : '  '}${k}: ${v}\n`).join('');
};

describe('an own rule leads', () => {
  test.each<readonly [string, Record<string, string>, string, number]>([
    ['a plant', {}, '', 3 * OZ],
    ['a year of age', { by: 'years', low: '0.5' }, '', 8 * 0.5 * OZ],
    ['with a cap', { by: 'years', low: '0.5', cap: '3' }, '', 3 * OZ],
    ['an inch of trunk', { by: 'trunk', low: '1' }, ', trunk 4 in across', 4 * OZ],
    ['an inch of trunk, tape round', { by: 'trunk', low: '1' }, ', trunk 31.4159265 cm round', (10 / 2.54) * OZ],
    ['a foot of height', { by: 'height', low: '0.5' }, ', 10 ft high', 5 * OZ],
    ['a foot of crown', { by: 'canopy', low: '0.2' }, '', 5 * OZ],
    ['the ground', { by: 'area', gives: '{ of: N, unit: g/m2 }', low: '2' }, '', crown(25) * 2],
    ['the ground, kg/ha', { by: 'area', gives: '{ of: N, unit: kg/ha }', low: '30' }, '', crown(25) * 3],
    ['the ground, lb/acre', { by: 'area', gives: '{ of: N, unit: lb/acre }', low: '30' }, '', (crown(25) * 30 * LB) / 4046.8564224],
    ['the ground, lb/1000 sq ft', { by: 'area', gives: '{ of: N, unit: lb/1000 sq ft }', low: '0.5' }, '', (crown(25) * 0.5 * LB) / 92.90304],
    ['grams', { gives: '{ of: N, unit: g }', low: '80' }, '', 80],
    ['kilograms', { gives: '{ of: N, unit: kg }', low: '0.08' }, '', 80],
    ['a product', { gives: '{ of: product, unit: lb, percentN: 10 }', low: '2' }, '', 0.2 * LB],
    ['cups', { gives: '{ of: product, unit: cup, percentN: 10, ozPerCup: 8 }', low: '3' }, '', 2.4 * OZ],
    ['the years it is for', { years: '[0, 8]' }, '', 3 * OZ],
    ['the size it is for', { size: 'standard' }, '', 3 * OZ],
    ['bearing trees', { bearing: 'true' }, ', bearing', 3 * OZ],
  ])('%s', async (_, over, facts, grams) => {
    const { code, tree, stdout } = await ask(rule(over), `apple, standard, planted 2018, 25 ft across, shoots 3 in 2025${facts}`);
    expect(code, stdout).toBe(0);
    expect(tree.lead).toMatchObject({ rule: 'mine', why: 'own' });
    expect(tree.need.N).toBeCloseTo(grams, 1);
  });
  test.each<readonly [string, Record<string, string>]>([['another crop', { crops: '[pear]' }], ['other years', { years: '[20, 30]' }], ['another size', { size: 'dwarf' }], ['young trees', { bearing: 'false' }], ['other kinds', { kinds: '[cider apple]' }]])('of %s does not: Michigan leads, 0.05 lb a year', async (_, over) => {
    const { tree } = await ask(rule(over), 'apple, standard, planted 2018, 25 ft across, shoots 3 in 2025, bearing');
    expect(tree.lead).toMatchObject({ source: 'michigan-garden-fruit', why: 'here' });
    expect(tree.need.N).toBeCloseTo(8 * 0.05 * LB, 1);
  });
  test('the garden rate and the size cap still bind an apple', async () => {
    // 300 g on a crown of 12 ft: 73.5 g by 7 g/m2.
    expect((await ask(rule({ gives: '{ of: N, unit: g }', low: '300' }), 'apple, standard, planted 2018, 12 ft across, shoots 3 in 2025, bare')).tree.need.N).toBeCloseTo(crown(12) * 7, 1);
  });
  test('a crop without figures is fed by an own rule, alone by its table', async () => {
    const { tree } = await ask(rule({ crops: '[quince]' }), 'quince, planted 2018, 12 ft across');
    expect(tree).toMatchObject({ verdict: 'feed', lead: { why: 'own' } });
    expect(tree.need.N).toBeCloseTo(3 * OZ, 1);
  });
  test('the growth, the planting year and the stops still decide', async () => {
    expect((await ask(rule(), 'apple, planted 2018, 25 ft across, shoots 20 in 2025')).tree.need.N).toBe(0);
    expect((await ask(rule(), 'apple, planted 2026, 5 ft across')).tree.need.N).toBe(0);
    expect((await ask(rule(), 'apple, planted 2018, 25 ft across, drought')).tree.need.N).toBe(0);
  });
  test('where it came from can be asked', async () => {
    const { code, stdout, stderr } = await ask(rule({ from: 'Aunt Rosa 1961' }), undefined, ['why', 'A', 'N']);
    expect(code, stderr).toBe(0);
    expect(stdout).toContain('Aunt Rosa 1961');
  });
});

describe('mistakes, at their line, all at once', () => {
  test.each<readonly [string, Record<string, string>, number]>([
    ['a misspelt crop', { crops: '[appel]' }, 2], ['an unknown base', { by: 'moon' }, 3], ['an unknown unit', { gives: '{ of: N, unit: stone }' }, 4], ['an unknown nutrient', { gives: '{ of: Mg, unit: oz }' }, 4], ['a number as text', { low: '"3"' }, 5], ['a word', { low: 'three' }, 5], ['a negative', { low: '-3' }, 5], ['1e309', { low: '1e309' }, 5], ['infinity', { low: '.inf' }, 5], ['not a number', { low: '.nan' }, 5],
    ['no crops', { crops: '[]' }, 2], ['a product without its per cent', { gives: '{ of: product, unit: lb }' }, 4], ['a cup without its weight', { gives: '{ of: product, unit: cup, percentN: 10 }' }, 4], ['a high below the low', { high: '1' }, 7], ['years backwards', { years: '[9, 3]' }, 7], ['an unknown key', { hihg: '4' }, 7], ['a rate of ground by the plant', { gives: '{ of: N, unit: g/m2 }' }, 4], ['more per cent than any feed', { gives: '{ of: product, unit: lb, percentN: 120 }' }, 4],
    ['an empty id', { id: '""' }, 1], ['a list for a number', { low: '[3]' }, 5], ['nothing', { low: '' }, 5],
  ])('%s', async (_, over, line) => {
    const { code, errors, tree } = await ask(rule(over));
    expect(code, JSON.stringify(tree?.need)).toBe(3);
    expect(errors.some((n) => n.file === 'rules.yaml' && n.line === line), JSON.stringify(errors)).toBe(true);
  });
  test('what is told of a number given as text does not say that nothing stands there', async () => {
    const { errors } = await ask(rule({ low: '"3"' }));
    expect(errors.map((n) => n.text).join(' ')).not.toMatch(/nothing is there|missing/i);
  });
  test('three at once', async () => {
    const { code, errors } = await ask(rule({ crops: '[appel]' }) + rule({ id: 'two', by: 'moon' }) + rule({ id: 'three', low: '-1' }));
    expect(code).toBe(3);
    for (const line of [2, 9, 17]) expect(errors.some((n) => n.line === line), `line ${line} among ${errors.map((n) => n.line).join()}`).toBe(true);
  });
  test('check tells them as well', async () => { expect((await ask(rule({ by: 'moon' }), undefined, ['check', '--json'])).code).toBe(3); });
  test('the same id twice', async () => { expect((await ask(rule() + rule({ low: '5' }))).code).toBe(3); });
  test('missing id, crops, by, gives, low', async () => {
    for (const key of ['crops', 'by', 'gives', 'low']) expect((await ask(rule({ [key]: '-' }))).code, key).toBe(3);
  });
});

describe('absurd amounts are refused', () => {
  test.each<readonly [string, Record<string, string>]>([
    ['900 lb N a plant', { gives: '{ of: N, unit: lb }', low: '900' }], ['40 kg N a plant', { gives: '{ of: N, unit: kg }', low: '40' }], ['a low that is fine, a high that is not', { gives: '{ of: N, unit: lb }', high: '900' }], ['1000 g/m2', { by: 'area', gives: '{ of: N, unit: g/m2 }', low: '1000' }], ['5000 lb an acre', { by: 'area', gives: '{ of: N, unit: lb/acre }', low: '5000' }], ['50 lb a year of age', { by: 'years', gives: '{ of: N, unit: lb }', low: '50' }],
  ])('%s', async (_, over) => {
    const { code, errors, tree } = await ask(rule(over));
    expect(code, JSON.stringify(tree?.need)).toBe(3);
    expect(errors.map((n) => n.code)).toContain('rule-absurd');
    expect(errors[0]).toMatchObject({ file: 'rules.yaml' });
  });
  test('what many years or a wide crown make of a modest rate stays within bounds', async () => {
    // A pound a year of age at sixty years would be 27 kg of N: no publication prints 3 kg.
    const { code, tree } = await ask(rule({ crops: '[fig]', by: 'years', gives: '{ of: N, unit: lb }', low: '1' }), 'fig, planted 1966, 25 ft across, shoots 1 in 2025');
    if (code === 0) expect(tree.need.N).toBeLessThanOrEqual(3000);
    else expect(code).toBe(3);
  });
});

describe('hostile files: 0 or 3, told, and never a stack trace', () => {
  const MANY = Array.from({ length: 10_000 }, (_, i) => rule({ id: `r${i}`, crops: '[pear]' })).join('');
  const cases: readonly (readonly [string, string | Buffer])[] = [
    ['empty', ''], ['blank lines', '\n\n  \n'], ['a comment', '# nothing yet\n'], ['null', 'null\n'], ['a number', '12\n'], ['a text', 'feed them well\n'], ['an empty list', '[]\n'], ['a mapping', 'apple: 3 oz\n'], ['not YAML', '- id: [\n  }{ :: -\n\t%'], ['tabs', '-\tid: a\n\tcrops: [apple]\n'], ['a list of numbers', '- 1\n- 2\n'], ['a list of nulls', '-\n-\n'], ['a list of lists', '- [[[apple]]]\n'],
    ['10,000 rules', MANY], ['10,000 mistakes', MANY.replaceAll('oz', 'stone')],
    ['a __proto__ key', '- __proto__: { low: 5 }\n  id: a\n  crops: [apple]\n  by: plant\n  gives: { of: N, unit: oz }\n  low: 1\n  from: x\n'], ['__proto__ within gives', rule({ gives: '{ __proto__: { percentN: 10 }, of: product, unit: lb }' })], ['constructor as a crop', rule({ crops: '[constructor]' })], ['__proto__ as a crop', rule({ crops: '[__proto__]' })], ['__proto__ as an id', rule({ id: '__proto__' })], ['toString as a unit', rule({ gives: '{ of: N, unit: toString }' })], ['hasOwnProperty as a base', rule({ by: 'hasOwnProperty' })],
    ['anchors', `- &a { id: a, crops: [apple], by: plant, gives: { of: N, unit: oz }, low: 1, from: x }\n- *a\n`], ['a merge', `- &a { id: a, crops: [apple], by: plant, gives: { of: N, unit: oz }, low: 1, from: x }\n- <<: *a\n  id: b\n`],
    ['an alias for a value', `- { id: a, crops: &c [apple], by: plant, gives: { of: N, unit: oz }, low: 1, from: x }\n- { id: b, crops: *c, by: plant, gives: { of: N, unit: oz }, low: 1, from: x }\n`], ['an alias to nowhere', rule({ low: '*none' })],
    ['anchors that multiply', `- &l0 [apple]\n${Array.from({ length: 12 }, (_, i) => `- &l${i + 1} [${Array.from({ length: 9 }, () => `*l${i}`).join(', ')}]`).join('\n')}\n`], ['a tag', '- !!js/function "x"\n'], ['two documents', `${rule()}---\n${rule({ id: 'b' })}`], ['a key twice', `${rule()}  low: 9\n`], ['deep nesting', `${'['.repeat(3000)}${']'.repeat(3000)}\n`], ['NULs', Buffer.from([0, 1, 2, 3])], ['not UTF-8', Buffer.from([0xff, 0xfe, 0x41])], ['a byte order mark', `\ufeff${rule()}`],
    ['escape codes', rule({ from: '"\\u001b[31mred"' })], ['a script', rule({ from: '"<script>alert(1)</script>"' })], ['a very long text', rule({ from: 'x'.repeat(200_000) })], ['line ends of Windows', rule().replaceAll('\n', '\r\n')], ['a huge cap', rule({ cap: '1e308' })], ['nought doses', rule({ doses: '0' })], ['half a dose', rule({ doses: '1.5' })], ['a billion doses', rule({ doses: '1e9' })], ['0', rule({ low: '0' })], ['hexadecimal', rule({ low: '0x10' })], ['a date', rule({ low: '2026-03-14' })], ['years of text', rule({ years: '["a", "b"]' })], ['years without end', rule({ years: '[0, .inf]' })], ['a negative year', rule({ years: '[-5, 5]' })],
  ];
  test.each(cases)('%s', async (_, text) => {
    for (const argv of [['plan', '--json'], ['plan'], ['check']]) {
      const { code, stdout, stderr, errors, tree } = await ask(text, undefined, argv);
      expect([0, 3], stderr.slice(0, 500)).toContain(code);
      expect(stdout + stderr).not.toMatch(/^\s+at \S+ ?\(|^\s+at (?:file|node):|\b(?:Type|Range|Reference|Syntax)Error:|wrong in Medlar itself|\[object Object\]|\bNaN\b|\bundefined\b/m);
      expect(stdout + stderr).not.toMatch(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/);
      if (argv.includes('--json') && code === 3) expect(errors.some((n) => n.file === 'rules.yaml' || n.text.includes('rules.yaml')), JSON.stringify(errors).slice(0, 500)).toBe(true);
      if (code === 3 && !argv.includes('--json')) expect(stderr).toContain('rules.yaml');
      if (tree) for (const of of ['N', 'P2O5', 'K2O']) { expect(Number.isFinite(tree.need[of])).toBe(true); expect(tree.need[of]).toBeGreaterThanOrEqual(0); }
    }
  });
  test('a prototype is not changed', () => { expect(({} as { low?: number }).low).toBeUndefined(); });
  test('no rules at all changes nothing', async () => { for (const none of ['', '[]\n', '# later\n']) expect((await ask(none)).tree.lead).toMatchObject({ source: 'michigan-garden-fruit', why: 'here' }); });
});

test('any rule: 0 or 3; what is fed is finite, never below nought and within 3 kg', async () => {
  const number = fc.oneof(fc.integer({ min: -2, max: 400 }).map(String), fc.double({ min: 0, max: 1e4, noNaN: true }).map(String), fc.constantFrom('0', '"1"', '1e309', '-0', '.5', '1_000', '~', 'true', '1e-320'));
  await fc.assert(fc.asyncProperty(
    fc.constantFrom('plant', 'years', 'trunk', 'height', 'canopy', 'row', 'area', 'moon'), fc.constantFrom('N', 'P2O5', 'K2O', 'product', 'S'), fc.constantFrom('lb', 'oz', 'g', 'kg', 'cup', 'g/m2', 'kg/ha', 'lb/acre', 'lb/1000 sq ft', 'lb/100 sq ft', 'stone'), number, number, fc.boolean(), fc.constantFrom('apple', 'quince', 'fig', 'strawberry'),
    async (by, of, unit, low, high, extra, crop) => {
      const { code, tree, stdout, stderr } = await ask(rule({ crops: `[${crop}]`, by, gives: `{ of: ${of}, unit: ${unit}${extra ? ', percentN: 10, ozPerCup: 8' : ''} }`, low, ...(extra ? { high } : {}) }), `${crop}, planted 1970, 25 ft across, 20 ft high, trunk 20 in across, shoots 1 in 2025`);
      expect([0, 3], stderr).toContain(code);
      expect(stdout + stderr).not.toMatch(/\bNaN\b|Infinity|\bat .*\.ts:\d/);
      if (code === 0) for (const n of ['N', 'P2O5', 'K2O']) { expect(tree.need[n], n).toBeGreaterThanOrEqual(0); expect(tree.need[n], `${by} ${of} ${unit} ${low} ${high}`).toBeLessThanOrEqual(3000); }
    }), { numRuns: 150 });
});
