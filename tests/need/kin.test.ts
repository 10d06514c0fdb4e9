// Crops without figures of their own that may lead: wait, and what may be borrowed. Which crops those are is told by the tables' labels: an orchard rate, an old or a weak page never leads.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { LB } from '../published/helpers.ts';

const ask = async (facts: string, where = 'Ohio, US') => {
  const yaml = `where: ${where}\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: a.txt\ntrees:\n  A: ${facts}, bank\nstore:\n  - Sulphate of ammonia, 21-0-0, 10 lb, $20\n`;
  const run = await medlar(['plan', '--json'], { 'orchard.yaml': yaml, 'a.txt': 'pH 6.4\nPhosphorus 5 ppm = low\nPotassium 40 ppm = low\n' });
  return { ...run, tree: run.json.result?.trees[0], notices: run.json.notices, codes: run.json.notices.map((n) => n.code) };
};
const BODY = 'planted 2020, 10 ft across';

describe('no figures: wait, nothing is fed, the nearest kin is offered', () => {
  // Botany: pome fruit beside apple, mulberry and fig one family, jostaberry a cross of currants.
  test.each([['mulberry', 'fig'], ['crab apple', 'apple'], ['serviceberry', 'apple'], ['jostaberry', 'currant'], ['aronia', 'currant']])('%s: fed as %s', async (crop, kin) => {
    const { code, tree, notices } = await ask(`${crop}, ${BODY}`);
    expect(code).toBe(0);
    expect(tree).toMatchObject({ verdict: 'wait', need: { N: 0, P2O5: 0, K2O: 0 }, feeds: [], stops: ['no-figures'] });
    expect(tree.lead ?? null).toBeNull();
    expect(notices.find((n) => n.code === 'stop-no-figures')!.text).toContain(`fed as ${kin}`);
  });
  // Each has only an orchard rate or a trial in any country, and no kin is held.
  test.each(['pomegranate', 'jujube', 'pawpaw'])('%s: waits', async (crop) => {
    expect((await ask(`${crop}, ${BODY}`)).tree).toMatchObject({ verdict: 'wait', need: { N: 0, P2O5: 0, K2O: 0 }, stops: ['no-figures'] });
  });
  test.each([['pomegranate', 'Himachal, India']])('%s in %s: an orchard rate or a trial does not lead even at home', async (crop, where) => {
    expect((await ask(`${crop}, ${BODY}`, where)).tree).toMatchObject({ verdict: 'wait', need: { N: 0 } });
  });
});

describe('fed as its kin', () => {
  test.each([['quince', 'pear'], ['quince', 'apple'], ['loquat', 'pear'], ['mulberry', 'fig'], ['blackberry', 'raspberry'], ['elderberry', 'currant'], ['medlar', 'pear'], ['almond', 'peach']])('%s fed as %s: the same nitrogen, and it is said', async (crop, kin) => {
    const [borrowed, own] = [await ask(`${crop}, fed as ${kin}, standard, ${BODY}, shoots 2 in 2025`), await ask(`${kin}, standard, ${BODY}, shoots 2 in 2025`)];
    expect(borrowed.code, borrowed.stdout).toBe(0);
    expect(borrowed.codes).toContain('fed-as');
    expect(borrowed.codes).not.toContain('stop-no-figures');
    expect(borrowed.tree.need.N).toBeCloseTo(own.tree.need.N, 6);
    expect(borrowed.tree.need.N).toBeGreaterThan(0);
  });
  test('the notice names both', async () => {
    expect((await ask(`quince, fed as pear, ${BODY}, shoots 2 in 2025`)).notices.find((n) => n.code === 'fed-as')!.text).toMatch(/quince[^]*pear|pear[^]*quince/i);
  });
  test.each(['dragon fruit', 'nothing', '12', '', '__proto__', 'constructor'])('fed as "%s": refused at its place, nothing borrowed in silence', async (kin) => {
    const { code, json } = await ask(`quince, fed as ${kin}, ${BODY}`);
    if (code === 0) expect(json.result.trees[0].need.N).toBe(0);
    else {
      expect(code).toBe(3);
      expect(json.notices.some((n) => n.severity === 'error' && n.file === 'orchard.yaml' && n.line !== undefined)).toBe(true);
    }
  });
  test('fed as a crop that has no figures itself: no feed', async () => {
    const { code, json } = await ask(`quince, fed as olive, ${BODY}`);
    if (code === 0) expect(json.result.trees[0].need.N).toBe(0); else expect(code).toBe(3);
  });
  test('a pear fed as a peach: no kin, so it is refused or said', async () => {
    const { code, codes } = await ask(`pear, fed as peach, ${BODY}`);
    expect(code === 3 || codes.includes('fed-as')).toBe(true);
  });
});

describe('every word for a crop is understood', () => {
  test.each([
    'asian pear', 'nashi', 'quince', 'medlar', 'apricot', 'almond', 'walnut', 'pecan', 'hazelnut', 'filbert', 'cobnut', 'chestnut', 'persimmon', 'pomegranate', 'mulberry', 'loquat', 'avocado', 'olive', 'mango', 'guava', 'kiwifruit', 'grape', 'muscadine grape',
    'blackcurrant', 'red currant', 'gooseberry', 'raspberry', 'blackberry', 'elderberry', 'strawberry',
  ])('%s', async (crop) => {
    const { code, tree, stdout } = await ask(`${crop}, ${BODY}`);
    expect(code, stdout).toBe(0);
    expect(['feed', 'none', 'wait']).toContain(tree.verdict);
    // Never without a word of why: a waiting tree names its stop, another names who leads or why nothing.
    if (tree.verdict === 'wait') expect(tree.stops.length).toBeGreaterThan(0);
    if (tree.need.N > 0) expect(tree.lead?.source).toBeTruthy();
  });
  test('the default of an apricot is Pennsylvania\'s: half a pound of 10-10-10 a year of age', async () => {
    // 6 years: 0.3 lb N on 20 ft of crown.
    expect((await ask('apricot, standard, planted 2020, 20 ft across, shoots 2 in 2025', 'Kenya')).tree.need.N).toBeCloseTo(0.3 * LB, 1);
  });
});
