// Whose figures lead, asked of the parts themselves. What each publication prints stands in tables/rules*.ts with its page; the order is told in need/lead.ts; borders by the map.
import { describe, expect, test } from 'vitest';
import type { Facts } from '../../src/need/facts.ts';
import type { Lead } from '../../src/need/lead.ts';
import { leadOf, mayLead, wantedFact } from '../../src/need/lead.ts';
import type { Rule } from '../../src/tables/rule.ts';
import { facts } from './parts.ts';

const OLD = 'apple, planted 2016, bearing';
const made = (source: string, more: Partial<Rule> = {}): Rule => ({ id: 'made', source, crops: ['apple'], region: 'US-OH', by: 'plant', gives: { of: 'N', unit: 'g' }, low: 10, cite: { source, at: 'made', mark: 'read' }, ...more });
const lead = (line: string, where = 'Ohio, US', more: Partial<Facts> = {}): Lead | null => leadOf(facts(line, [], more, where));
const said = (line: string, where = 'Ohio, US'): readonly [string, string] | null => { const l = lead(line, where); return l && [l.rule.source, l.why]; };

describe('where nobody wrote a rule of their own', () => {
  test.each<[string, string, string, string]>([
    [OLD, 'Michigan, US', 'michigan-garden-fruit', 'here'],
    // Ohio borders on Pennsylvania, which has no page for apples, and on Michigan.
    [OLD, 'Ohio, US', 'michigan-garden-fruit', 'near'],
    // Both print stone fruit: the first of the neighbours in the list of borders.
    ['peach, planted 2016, bearing', 'Ohio, US', 'penn-stone', 'near'],
    // Maryland's neighbour Pennsylvania stands first among its borders.
    ['blueberry, planted 2016', 'Maryland, US', 'penn-blueberry', 'near'],
    // The page of a country leads in that country, but not in the States, whose own differ too much: Ohio's bushes are fed by Pennsylvania.
    [OLD, 'Kent, UK', 'rhs-feeding', 'here'], ['blueberry, planted 2016', 'Ohio, US', 'penn-blueberry', 'near'],
    [OLD, 'Ireland', 'rhs-feeding', 'near'], [OLD, 'Poland', 'de-lwg-bayern-gartencast', 'near'],
    // Far from every publisher the default of the crop: the first in its list that prints a rule.
    ['peach, planted 2016, bearing', 'Kenya', 'penn-stone', 'default'], [OLD, 'Kenya', 'michigan-garden-fruit', 'default'], ['medlar, planted 2016', 'Ohio, US', 'rhs-medlar', 'default'],
    ['blueberry, planted 2016', 'Kenya', 'penn-blueberry', 'default'],
    // Elderberries have an orchard's rate by ground alone, and no list of defaults names it.
    ['elderberry, planted 2016, bearing', 'Kenya', 'missouri-elderberry', 'default'],
    // One kind's own row goes before the crop's.
    ['cooking apple, planted 2016, bearing, bare', 'Kent, UK', 'rhs-feeding', 'here'],
  ])('%s in %s: %s (%s)', (line, where, source, why) => { expect(said(line, where)).toEqual([source, why]); });
  test('nowhere told, and a town without a country', () => {
    const f = facts(OLD);
    const nowhere = { ...f, where: { ...f.where, country: null, region: null } };
    expect(leadOf(nowhere)).toMatchObject({ why: 'default', rule: { source: 'michigan-garden-fruit' } });
  });
  test('one kind\'s own row goes before the crop\'s', () => {
    expect(lead('cooking apple, planted 2016, bearing, bare', 'Kent, UK')!.rule.low).toBe(150);
    expect(lead('apple, planted 2016, bearing, bare', 'Kent, UK')!.rule.low).toBe(100);
  });
  test('those that suit, and without neighbours', () => {
    const f = facts(OLD);
    expect(leadOf(f, (r) => r.by === 'area')).toMatchObject({ why: 'default', rule: { source: 'rhs-feeding' } });
    // Without its neighbour Michigan, Ohio's apples go by the next of the defaults.
    expect(leadOf(f, (r) => r.by === 'area' || r.source === 'michigan-garden-fruit', false)).toMatchObject({ why: 'default', rule: { source: 'rhs-feeding' } });
    expect(leadOf(f, () => false)).toBeNull();
    // A stranger's page that no list of defaults names leads nowhere: Utah's ounce a year is not for Kenya.
    expect(leadOf(facts(OLD, [], {}, 'Kenya'), (r) => r.source === 'utah-nitrogen')).toBeNull();
  });
  test('whether anybody may lead', () => {
    expect([OLD, 'elderberry, planted 2016', 'pomegranate, planted 2016', 'mulberry, planted 2016'].map((line) => mayLead(facts(line)))).toEqual([true, true, false, false]);
    // Taiwan prints a row for pears of its own, and no list of defaults names it.
    expect([mayLead(facts('asian pear, planted 2016')), mayLead(facts('asian pear, planted 2016', [], {}, 'Taiwan'))]).toEqual([false, true]);
    // For hazels Italy's orchard rates of ground are all that may lead, anywhere.
    expect(mayLead(facts('hazelnut, planted 2016', [], {}, 'Virginia, US'))).toBe(true);
  });
});

describe('the grower\'s own rules', () => {
  const by = (rules: readonly Rule[], line = OLD): string | null => lead(line, 'Ohio, US', { rules })?.rule.source ?? null;
  test('go before every publication', () => { expect(lead(OLD, 'Michigan, US', { rules: [made('mine')] })).toMatchObject({ why: 'own', wants: null, rule: { source: 'mine' } }); });
  // Ten years in the ground. The last row of a table goes on; a rate a year does not, as it would grow for ever; nor what is given at planting alone.
  test.each<[string, Partial<Rule>, boolean]>([
    ['the last row goes on', { years: [3, 5] }, true], ['a row for this year', { years: [9, 10] }, true], ['a row for a later year', { years: [11, 12] }, false],
    ['at planting and in the first year', { years: [0, 1] }, false], ['the first two years, that of planting being the first', { years: [1, 2], first: 1 }, false], ['up to the second year', { years: [1, 2] }, true],
    ['a last row whose first year is that of planting', { years: [3, 5], first: 1 }, true], ['a rate a year, up to the fifth', { years: [1, 5], by: 'years' }, false], ['a row for grass, on bare ground', { years: [3, 5], ground: 'grass' }, false],
  ])('%s', (_, more, leads) => { expect(by([made('mine', more)])).toBe(leads ? 'mine' : 'michigan-garden-fruit'); });
  test('a plant of untold age goes on by no row', () => { expect(by([made('mine', { years: [3, 5] })], 'apple, bearing')).not.toBe('mine'); });
  test('only the last row of a table goes on', () => {
    const rows = (...more: Partial<Rule>[]): number | null => lead(OLD, 'Ohio, US', { rules: more.map((m, i) => made('mine', { low: i + 1, ...m })) })?.rule.low ?? null;
    expect(rows({ years: [3, 5] }, { years: [6, 8] })).toBe(2);
    expect(rows({ years: [6, 8] }, { years: [3, 5] })).toBe(1);
    // The second row is for another kind, so the first is the last for this tree; for this kind, it is the second.
    expect(rows({ years: [3, 5] }, { years: [6, 8], kinds: ['cider apple'] })).toBe(1);
    expect(rows({ years: [3, 5] }, { years: [6, 8], kinds: ['apple'] })).toBe(2);
    // Year 6 where that of planting is the first is year 5: both end alike.
    expect(rows({ years: [3, 5] }, { years: [6, 6], first: 1 })).toBe(1);
    expect(rows({ years: [3, 5], first: 1 }, { years: [3, 5] })).toBe(2);
    // A row without an end is the last, though it is for grass and this tree has none.
    expect(rows({ years: [3, 5] }, { ground: 'grass' })).toBe(0.05);
    expect(by([made('mine', { years: [3, 5] }), made('another', { years: [6, 8] })])).toBe('mine');
  });
  test('a row for its year goes before one that goes on, a kind\'s before the crop\'s', () => {
    expect(by([made('ended', { years: [3, 5] }), made('fitting')])).toBe('fitting');
    expect(by([made('crop'), made('kind', { kinds: ['apple'] })])).toBe('kind');
    expect(by([made('crop'), made('kind', { kinds: ['apple'], years: [3, 5] })])).toBe('kind');
    expect(by([made('first'), made('second')])).toBe('first');
  });
});

describe('a fact that nobody told', () => {
  test('the better page is named with the fact that it goes by', () => {
    // Colorado goes by the trunk; untold, its neighbour Kansas leads.
    expect(lead(OLD, 'Colorado, US')).toMatchObject({ why: 'near', rule: { source: 'kansas-home-orchard' }, wants: { fact: 'trunk', rule: { source: 'colorado-1216' } } });
    expect(lead(`${OLD}, trunk 4 in across`, 'Colorado, US')).toMatchObject({ why: 'here', rule: { source: 'colorado-1216' }, wants: null });
  });
  test.each<[Partial<Rule>, string, string]>([
    [{ by: 'height' }, OLD, 'height'], [{ by: 'row' }, OLD, 'spacing'], [{ by: 'trunk' }, OLD, 'trunk'], [{ by: 'years' }, 'apple, bearing', 'planted'],
  ])('%j', (more, line, fact) => {
    const rules = [made('mine', more), made('another')];
    expect(lead(line, 'Ohio, US', { rules })).toMatchObject({ rule: { source: 'another' }, wants: { fact, rule: { source: 'mine' } } });
    // Of one and the same page nothing more is wanted.
    expect(lead(line, 'Ohio, US', { rules: [made('mine', more), made('mine')] })!.wants).toBeNull();
    expect(wantedFact(facts(line, [], { rules }))).toBe(fact);
  });
  test('no rule can be applied: what it would take', () => {
    // Georgia's grown figs go by their height, its pecans by the trunk, once they bear.
    expect(wantedFact(facts('fig, planted 2016', [], {}, 'Georgia, US'))).toBe('height');
    expect(leadOf(facts('fig, planted 2016, 10 ft high', [], {}, 'Georgia, US'))).toMatchObject({ why: 'here', rule: { source: 'georgia-fig' }, wants: null });
    expect(wantedFact(facts('pecan, planted 2016, bearing', [], {}, 'Georgia, US'))).toBe('trunk');
    expect(wantedFact(facts('mulberry, planted 2016'))).toBeNull();
    expect(wantedFact(facts(`${OLD}, trunk 4 in across`, [], {}, 'Michigan, US'))).toBeNull();
    // Colorado's trunk is no fact for Kenya.
    expect(wantedFact(facts(OLD, [], {}, 'Kenya'))).toBeNull();
    expect(wantedFact(facts(OLD, [], {}, 'Colorado, US'))).toBe('trunk');
  });
});
