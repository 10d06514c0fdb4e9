// `figures.txt` lists every shipped number, so that a changed one is a changed line. It detects change and proves nothing: what a figure should be is checked under tests/published.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { register } from '../../src/tables/register.ts';
import { FILE, figures } from './figures.mjs';

const listed = readFileSync(FILE, 'utf8').split('\n').filter((line) => line !== '' && !line.startsWith('#'));
const line = (start: string): string[] | undefined => listed.find((l) => l.startsWith(start))?.split(' | ').slice(2);

describe('figures.txt', () => {
  test('is what the tables hold: write it with "npm run figures", and name what changed in CHANGELOG.md', async () => {
    const held = (await figures()).split('\n').filter((l) => l !== '' && !l.startsWith('#'));
    const [was, is] = [new Set(listed), new Set(held)];
    expect({ gone: listed.filter((l) => !is.has(l)), added: held.filter((l) => !was.has(l)) }).toEqual({ gone: [], added: [] });
    expect(held).toEqual(listed);
  });

  test('holds whatever `sources` tells', () => {
    const short = (value: string): string => (value.startsWith('under ') ? value.slice(6) : String(Number(Number(value).toPrecision(6))));
    const all = new Set(listed.map((l) => l.split(' | ')).map(([, , value, , source, at, mark]) => [short(value!), source, at!.trim(), mark].join(' | ')));
    const told = register().filter(({ value }) => value !== null).map(({ value, cite }) => [String(value), cite.source, cite.at, cite.mark].join(' | '));
    expect(told.length).toBeGreaterThan(3000);
    expect(told.filter((t) => !all.has(t))).toEqual([]);
  });

  // As typed from the publications under tests/published/michigan-garden-fruit, rutgers-levels and oregon-em9585.
  test('tells a figure as it is printed', () => {
    expect(line('rules | RULES michigan.pome.years low |')).toEqual(['0.05', 'lb N by years', 'michigan-garden-fruit', expect.any(String), 'read']);
    expect(listed.filter((l) => l.startsWith('scales-us |') && l.includes(' | under 25 | lb/acre | rutgers-levels |'))).toHaveLength(1);
    expect(listed.some((l) => l.startsWith('lime-tests |') && l.includes(' | 2.1 | ton/acre | oregon-em9585 |'))).toBe(true);
  });

  test('sees the numbers in a table\'s own code: the sides of the USDA triangle (Soil Survey Manual, chapter 3)', () => {
    // "silt + 1.5 clay < 15": sand.
    expect(listed.filter((l) => l.startsWith('texture | USDA_TRIANGLE classes sand holds |')).map((l) => l.split(' | ')[2])).toEqual(['1.5 (in code)', '15 (in code)']);
  });
});
