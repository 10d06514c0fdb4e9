// Which published rule is meant for a tree, what it comes to, and when it says to feed, asked of the parts themselves.
// Made rules are read by what their columns mean (tables/rule.ts), arithmetic by hand; printed rows have their source beside them.
import { describe, expect, test } from 'vitest';
import type { Facts } from '../../src/need/facts.ts';
import { applyRule, capOf, fits, kinOf, leadersFor, leaflets, span } from '../../src/need/rules.ts';
import { dosesAYear, othersOf, printedDoses, timingOf } from '../../src/need/timing.ts';
import type { Rule } from '../../src/tables/rule.ts';
import { sourceOf } from '../../src/tables/sources.ts';
import { ACROSS, facts } from './parts.ts';

const rule = (more: Partial<Rule> = {}): Rule => ({ id: 'made', source: 'own-rules', crops: ['apple'], region: 'US-OH', by: 'plant', gives: { of: 'N', unit: 'g' }, low: 10, cite: { source: 'own-rules', at: 'made', mark: 'read' }, ...more });
const OLD = 'apple, planted 2016, bearing';

describe('a rule is meant for a tree', () => {
  const cases: [string, Partial<Rule>, Partial<Facts>, boolean][] = [
    [OLD, {}, {}, true], ['pear, planted 2016', {}, {}, false], ['apple, planted 2016, tub 60 L', {}, {}, false],
    [OLD, { kinds: ['apple'] }, {}, true], [OLD, { kinds: ['cider apple'] }, {}, false], [`${OLD}, dwarf`, { size: 'dwarf' }, {}, true], [`${OLD}, standard`, { size: 'dwarf' }, {}, false], [OLD, { size: 'dwarf' }, {}, false],
    [OLD, { bearing: true }, {}, true], [OLD, { bearing: false }, {}, false], ['apple, planted 2024', { bearing: false }, {}, true], ['apple, planted 2024', { bearing: true }, {}, false],
    [OLD, { ground: 'grass' }, {}, false], [`${OLD}, grass`, { ground: 'grass' }, {}, true], [`${OLD}, fed lawn`, { ground: 'grass' }, {}, true], [OLD, { ground: 'bare' }, {}, true], [`${OLD}, grass`, { ground: 'bare' }, {}, false], [`${OLD}, fed lawn`, { ground: 'bare' }, {}, false],
    // Ten years in the ground; the eleventh where the planting year is the first.
    [OLD, { years: [10, 12] }, {}, true], [OLD, { years: [11, 12] }, {}, false], [OLD, { years: [8, 10] }, {}, true], [OLD, { years: [8, 9] }, {}, false], [OLD, { years: [11, 12], first: 1 }, {}, true], [OLD, { years: [8, 10], first: 1 }, {}, false],
    ['apple', { years: [1, 9] }, {}, false], ['apple', { years: [1, 9], by: 'trunk' }, {}, true],
    // Twelve feet are 3.6576 m; the nearer of the two spacings counts.
    [`${OLD}, spacing 12 x 14 ft`, { spacingFt: 12 }, {}, true], [`${OLD}, spacing 11 x 14 ft`, { spacingFt: 12 }, {}, false], [OLD, { spacingFt: 12 }, {}, false],
    [OLD, { if: 'no-soil-test' }, {}, true], [OLD, { if: 'no-soil-test' }, { soil: { rated: [], heaviness: null } }, false],
    // Iowa: 8 to 15 in; nobody prints how far citrus should grow.
    [`${OLD}, shoots 8 in 2025`, { if: 'growth-short' }, {}, false], [`${OLD}, shoots 7.9 in 2025`, { if: 'growth-short' }, {}, true], ['lemon, planted 2016, shoots 30 in 2025', { crops: ['citrus'], if: 'growth-short' }, {}, true],
    [OLD, { if: 'growth-short' }, {}, true], [`${OLD}, shoots 2 in 2025`, { if: 'growth-short' }, {}, true], [`${OLD}, shoots 20 in 2025`, { if: 'growth-short' }, {}, false],
  ];
  test.each(cases)('%s: %j', (line, more, also, wanted) => { expect(fits(rule(more), facts(line, [], also))).toBe(wanted); });
  test('warm winters: not where they are known to be cold', () => {
    for (const [mildWinters, wanted] of [[true, true], [false, false], [null, true]] as const) {
      const f = facts(OLD);
      expect(fits(rule({ climate: 'warm' }), { ...f, where: { ...f.where, mildWinters } })).toBe(wanted);
    }
  });
});

describe('what a rule comes to', () => {
  const grams = (more: Partial<Rule>, line = OLD): number | null => applyRule(rule(more), facts(line), rule(more).low)?.value ?? null;
  test.each<[string, Partial<Rule>, string, number | null]>([
    ['a plant', {}, OLD, 10], ['each year', { by: 'years' }, OLD, 100], ['each year, the planting year being the first', { by: 'years', first: 1 }, OLD, 110], ['each year, untold', { by: 'years' }, 'apple', null],
    ['an inch of trunk', { by: 'trunk' }, `${OLD}, trunk 4 in across`, 40], ['an inch of trunk, by its girth', { by: 'trunk' }, `${OLD}, trunk 12 in round`, 120 / Math.PI], ['an inch of trunk, untold', { by: 'trunk' }, OLD, null],
    ['a foot of height', { by: 'height' }, `${OLD}, 12 ft high`, 120], ['a foot of height, untold', { by: 'height' }, OLD, null],
    ['a foot of crown', { by: 'canopy' }, OLD, (10 * ACROSS) / 0.3048], ['ground, g/m²', { by: 'area', gives: { of: 'N', unit: 'g/m2' } }, OLD, 100],
    // 10 lb to 100 ft of row, the plants 3 ft apart; untold, a raspberry stands 3 ft apart (Virginia), and nobody says it of an apple.
    ['a row', { by: 'row', gives: { of: 'N', unit: 'lb' } }, 'raspberry, planted 2016, spacing 3 x 8 ft', 10 * 453.59237 * 0.03], ['a row, untold', { by: 'row', gives: { of: 'N', unit: 'lb' } }, 'raspberry, planted 2016', 10 * 453.59237 * 0.03], ['a row, nowhere told', { by: 'row' }, OLD, null],
    // An orchard's kg/ha is for all the ground of the tree, 12 m²; a garden's g/m² for the ten under its crown.
    ['all its ground', { by: 'area', gives: { of: 'N', unit: 'kg/ha' }, low: 100 }, `${OLD}, spacing 3 x 4 m`, 120], ['under its crown', { by: 'area', gives: { of: 'N', unit: 'g/m2' } }, `${OLD}, spacing 3 x 4 m`, 100],
    ['all its ground, an acre of 4046.8564224 m²', { by: 'area', gives: { of: 'N', unit: 'lb/acre' }, low: 100 }, `${OLD}, spacing 3 x 4 m`, (12 * 100 * 453.59237) / 4046.8564224], ['all its ground by an orchard page in g/m²', { by: 'area', gives: { of: 'N', unit: 'g/m2' }, label: 'orchard' }, `${OLD}, spacing 3 x 4 m`, 120],
    // A cup of eight ounces of a tenth of nitrogen; a ceiling of four cups.
    ['cups', { by: 'years', gives: { of: 'product', unit: 'cup', percentN: 10, ozPerCup: 8 }, low: 1, cap: 4 }, OLD, 4 * 8 * 28.349523125 * 0.1],
  ])('%s', (_, more, line, wanted) => {
    const value = grams(more, line);
    if (wanted === null) expect(value).toBeNull();
    else expect(value).toBeCloseTo(wanted, 6);
  });
  test('its step, and what it came from', () => {
    expect(applyRule(rule({ by: 'years', cap: 50 }), facts(OLD), 10)).toMatchObject({ value: 50, step: 'rule-capped' });
    expect(applyRule(rule({ by: 'years', cap: 100 }), facts(OLD), 10)).toMatchObject({ value: 100, step: 'rule' });
    expect(applyRule(rule({ years: [1, 12] }), facts(OLD), 10)!.step).toBe('table-year');
    expect(applyRule(rule(), facts(OLD), 10, 5)).toMatchObject({ value: 15, unit: 'g', of: 'N', step: 'rule', cite: { source: 'own-rules' }, from: [{ of: 'tree', unit: 'year' }] });
    for (const [by, of, unit] of [['area', 'crown', 'm2'], ['canopy', 'crown', 'm'], ['trunk', 'trunk', 'm']] as const) expect(applyRule(rule({ by }), facts(`${OLD}, trunk 4 in across`), 10)!.from, by).toMatchObject([{ of, unit }]);
    expect(applyRule(rule({ by: 'height' }), facts(`${OLD}, 12 ft high`), 10)!.from[0]).toMatchObject({ unit: 'm', of: 'tree', step: 'told' });
    expect(applyRule(rule({ by: 'row' }), facts('raspberry, planted 2016'), 10)!.from[0]).toMatchObject({ unit: 'm', of: 'tree', step: 'in-row' });
  });
  test('its ceiling: the cap, else the high end of a row; none for ground', () => {
    expect([capOf(rule({ cap: 40 })), capOf(rule({ high: 30 })), capOf(rule()), capOf(rule({ by: 'years', high: 30 })), capOf(rule({ gives: { of: 'N', unit: 'g/m2' }, cap: 4 }))]).toEqual([40, 30, Infinity, Infinity, Infinity]);
  });
  test('every rule that fits, low and high; of the own rules those for the nutrient and the crop', () => {
    const own = [rule({ low: 7, high: 9 }), rule({ low: 3, gives: { of: 'K2O', unit: 'g' } }), rule({ low: 1, crops: ['pear'] })];
    const f = facts(OLD, [], { rules: own });
    expect(span(f, 'N', (r) => own.includes(r)).map((x) => x.value)).toEqual([7, 9]);
    expect(span(f, 'K2O', (r) => own.includes(r)).map((x) => [x.value, x.of])).toEqual([[3, 'K2O']]);
    // Beside what grows with it something at any age: 5 to 7.
    const based = rule({ low: 3, base: [5, 7] });
    expect(span(facts(OLD, [], { rules: [based] }), 'N', (r) => r === based).map((x) => x.value)).toEqual([8, 10]);
    const product = rule({ gives: { of: 'product', unit: 'g', percentN: 10 }, low: 50 });
    expect(span(facts(OLD, [], { rules: [product] }), 'N', (r) => r === product).map((x) => x.value)).toEqual([5]);
    expect(span(facts('apple, planted 2016, tub 60 L', [], { rules: own }), 'N')).toEqual([]);
  });
  test('leaflets are of the own country, where three publications speak there', () => {
    for (const line of [OLD, 'peach, planted 2016, bearing']) {
      const sources = [...new Set(leaflets(facts(line)).map((x) => x.cite.source))];
      expect(sources.length).toBeGreaterThanOrEqual(3);
      // The Royal Horticultural Society's figures are Britain's.
      expect(sources).not.toContain('rhs-feeding');
      for (const source of sources) expect(sourceOf(source)).toBeDefined();
    }
    expect(leaflets(facts(OLD, [], {}, 'Kenya')).map((x) => x.cite.source)).toContain('rhs-feeding');
  });
  test('a page for all of the States is one of the country\'s', () => { expect(leaflets(facts('blueberry, planted 2016')).map((x) => x.cite.source)).toContain('eorg-blueberry'); });
  // Oregon's tables are for orchards, the Post's of 1977 old: no leaflets of today's gardens.
  test('no leaflet is an orchard\'s', () => { for (const where of ['Ohio, US', 'Kenya']) for (const not of ['oregon-fg23', 'post-1977', 'nmsu-h319-apple']) expect(leaflets(facts(`${OLD}, dwarf`, [], {}, where)).map((x) => x.cite.source)).not.toContain(not); });
  test('the nearest kin that has rules', () => { expect(['quince', 'mulberry', 'aronia', 'crab apple', 'serviceberry'].map(kinOf)).toEqual(['pear', 'fig', 'currant', 'apple', 'apple']); });
  test('who may lead: pages for gardens; where there are none, orchard rates of ground', () => {
    for (const rules of [[], [rule()]]) {
      const hazels = leadersFor({ crop: 'hazelnut', rules });
      expect(hazels.length).toBeGreaterThan(0);
      expect(hazels.every((r) => r.label === 'orchard' && r.by === 'area')).toBe(true);
      const apples = leadersFor({ crop: 'apple', rules });
      expect(apples.slice(0, rules.length)).toEqual(rules);
      expect(apples.every((r) => r.label === undefined)).toBe(true);
      expect(leadersFor({ crop: 'other', rules })).toEqual([]);
    }
  });
  test('a plant that nobody knows has no kin', () => { expect(kinOf('no such plant')).toBeNull(); });
});

describe('whose time of feeding leads', () => {
  const source = (line: string, where: string, more: Partial<Facts> = {}, by: Rule | null = null): string | null => timingOf(facts(line, [], more, where), by)?.cite.source ?? null;
  test.each([
    // VT21 for Virginia; Michigan borders on Ohio and Utah on Idaho; a row of months serves no neighbour; in a tub no row holds.
    [OLD, 'Virginia, US', 'virginia-note-21'], [OLD, 'Ohio, US', 'michigan-garden-fruit'], ['plum, planted 2016', 'Idaho, US', 'utah-column'], ['apple, planted 2016, tub 60 L', 'Virginia, US', null],
    ['medlar, planted 2016', 'England, UK', 'rhs-medlar'], [OLD, 'England, UK', 'rhs-feeding'],
    // Georgia's grown muscadines have a row of their own.
    ['muscadine, planted 2016', 'Georgia, US', 'uga-colquitt-muscadine'], ['muscadine, planted 2024', 'Georgia, US', 'ga-code-103-muscadine'],
  ])('%s in %s: %s', (line, where, wanted) => { expect(source(line, where)).toBe(wanted); });
  // G2: figs of 3 to 5 years in early spring, mid-May and mid-July; from 6 years once. Its first year is that of planting.
  test.each([['2022', 3], ['2021', 1], ['2016', 1]])('Georgia fig planted %s: %i', (planted, doses) => { expect(timingOf(facts(`fig, planted ${planted}`, [], {}, 'Georgia, US'), null)!.doses).toHaveLength(doses); });
  test('a rule of June-bearing strawberries is fed when they are picked', () => {
    expect(timingOf(facts('strawberry, planted 2024', [], {}, 'Iowa, US'), rule({ crops: ['strawberry'], when: 'after-harvest' }))).toMatchObject({ said: 'after-picking', doses: [{ phase: 'after-harvest', span: [80, 110] }] });
  });
  test('others: what is said already is left out, weak pages stay at home, the narrowest first', () => {
    const ohio = facts(OLD);
    const leading = timingOf(ohio, null);
    const others = othersOf(ohio, leading);
    expect(others.length).toBeGreaterThan(3);
    expect(others.map((o) => o.said)).not.toContain(leading!.said);
    expect(others.some((o) => o.label === 'weak')).toBe(false);
    expect(othersOf(facts(OLD, [], {}, 'Tasmania, Australia'), null).some((o) => o.label === 'weak' && o.region === 'AU')).toBe(true);
  });
});

describe('doses a year', () => {
  const light: Partial<Facts> = { soil: { rated: [], heaviness: 'light' } };
  const doses = (line: string, where: string, more: Partial<Facts> = {}, by: Rule | null = null): number => dosesAYear(facts(line, [], more, where), by);
  test.each<[string, string, Partial<Facts>, number]>([
    // NCSU-QR: sandy soil in halves, none of the second where frost took the crop; one dose on loam. Others print no number.
    [OLD, 'Ohio, US', {}, 1], [OLD, 'Ohio, US', light, 2], [`${OLD}, fruit none 2026`, 'Ohio, US', light, 1], [`${OLD}, fruit none 2025`, 'Ohio, US', light, 2], ['blueberry, planted 2016', 'Ohio, US', light, 1], [OLD, 'Ohio, US', { soil: { rated: [], heaviness: 'medium' } }, 1],
    // VT21: equal doses in March and April. CLEM: the third only where fruit was picked, none where the tree bears nothing.
    [OLD, 'Virginia, US', {}, 2], ['peach, planted 2016, bearing', 'South Carolina, US', {}, 3], ['peach, planted 2016, bearing, fruit none 2026', 'South Carolina, US', {}, 2], ['peach, planted 2016, not bearing', 'South Carolina, US', {}, 2],
  ])('%s in %s %j: %i', (line, where, more, wanted) => { expect(doses(line, where, more)).toBe(wanted); });
  test('a rule that prints a number is followed', () => { expect(doses(OLD, 'Virginia, US', {}, rule({ doses: 4 }))).toBe(4); });
  test('North Carolina on sand: half late in winter, half in May', () => {
    const of = (more: Partial<Facts>) => { const f = facts(OLD, [], more, 'North Carolina, US'); return printedDoses(timingOf(f, null)!, f); };
    expect(of(light)).toHaveLength(2);
    expect(of({})).toHaveLength(1);
  });
});
