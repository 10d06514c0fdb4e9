/** On organic soil no table of mineral soil is followed: its own where the place has one, else the lab is asked. */
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { type Flags, ph } from '../published/ph.ts';

/** Every way to a rate, each with a place where it leads. */
const WAYS: readonly (readonly [string, Flags])[] = [
  ['a buffer by its own table', { where: 'Oregon, US', method: 'sikora', buffer: 6 }],
  ['a buffer by the general table', { method: 'smp', buffer: 6 }],
  ['a buffer without a table', { where: 'Missouri, US', method: 'woodruff', buffer: 6 }],
  ['an equation', { where: 'Kansas, US', method: 'smp', buffer: 6 }],
  ['acidity', { where: 'Pennsylvania, US', acidity: 8 }],
  ['lime buffer capacity', { where: 'Georgia, US', lbc: 300 }],
  ['saturations', { cec: 20, 'base-saturation': 50 }],
  ['aluminium', { where: 'Brazil', aluminium: 2, texture: 'sand' }],
  ['effective capacity', { where: 'New South Wales, Australia', ecec: 5 }],
  ['a country by pH', { where: 'Poland', texture: 'loam' }],
  ['the texture', { texture: 'loam' }],
  ['nothing', {}],
];

describe('more organic matter than mineral soil has', () => {
  test.each(WAYS)('%s: refused', async (_, flags) => {
    const { row } = await ph({ now: 5, goal: 6, 'organic-matter': 21, ...flags });
    expect(row).toMatchObject({ verdict: 'cannot', reason: 'organic-soil', gPerM2: 0, dugIn: null });
  });
  test.each(WAYS.filter(([, f]) => f['method'] !== 'woodruff'))('%s: followed up to 20 %%', async (_, flags) => {
    expect((await ph({ now: 5, goal: 6, 'organic-matter': 20, ...flags })).row.verdict).toBe('lime');
  });
  test('Germany takes over 15 % for no mineral soil, Britain over 10 %', async () => {
    const germany = (matter: number) => ph({ where: 'Germany', now: 5, goal: 6.5, texture: 'loam', 'organic-matter': matter });
    expect((await germany(15)).row.verdict).toBe('lime');
    expect((await germany(16)).row).toMatchObject({ verdict: 'cannot', reason: 'organic-soil' });
  });
  test('the lab\'s own rate stands', async () => {
    expect((await ph({ now: 5, goal: 5.6, 'organic-matter': 60, lime: '1 ton/acre' })).row.verdict).toBe('lime');
  });
  test('what suits is left alone, sulphur has nothing to do with it', async () => {
    expect((await ph({ now: 6.3, crop: 'apple', 'organic-matter': 60 })).row.verdict).toBe('leave');
  });
});

describe('a report', () => {
  const plan = (soil: string, where = 'Illinois, US') => medlar(['plan', '--json'], { 'orchard.yaml': `where: ${where}\nsoil:\n  bed: a.txt\ntrees:\n  A: apple, planted 2019, bed\n`, 'a.txt': soil });
  test.each(['pH 5.0\nTexture: muck\n', 'pH 5.0\nOrganic matter 35 %\nTexture: loam\n', 'pH 5.0\nSMP buffer pH 6.0\nTexture: peat\n'])('%j: the lab is asked, and told why', async (soil) => {
    const { json } = await plan(soil);
    expect(json.result.ph[0]).toMatchObject({ verdict: 'cannot', reason: 'organic-soil', g: 0 });
    expect(json.notices.map((n) => n.text).join(' ')).toContain('this soil is organic');
  });
  test('a number counts before the word', async () => {
    expect((await plan('pH 5.0\nTexture: peat\nOrganic matter 6 %\n')).json.result.ph[0].verdict).toBe('lime');
  });
});
