// One tree on one day: what its row says of weight, bag, cup, place and condition, in grams and metres and by the layout of the sheet (sketches.md).
import { describe, expect, test } from 'vitest';
import type { Feed } from '../../src/bags/doses.ts';
import type { TreePlan } from '../../src/plan.ts';
import { conditionOf, isTiny, sheetView } from '../../src/sheet/build.ts';
import { renderSheet } from '../../src/sheet/render.ts';
import type { Row } from '../../src/sheet/view.ts';
import { feed } from '../bags/parts.ts';
import { can, day, dose, fig, named, plan, tree, w } from './parts.ts';

const A4 = { paper: 'a4', large: false } as const;
const SULPHATE = feed('Sulfate of ammonia', [21, 0, 0]);
const POTASH = feed('Potash', [0, 0, 50]);
const FED = tree('Gate apple');
/** The rows of the first day, on which each tree gets its doses. */
const rows = (doses: readonly (readonly [TreePlan, readonly Feed[]])[], more: Parameters<typeof plan>[1] = {}): Row[] => {
  const trees = doses.map(([t, feeds]) => ({ ...t, feeds }));
  return sheetView(plan(trees, { days: [day(1, trees.flatMap((t) => t.feeds.map((f) => [t, f] as const)))], ...more }), A4).days[0]!.rows;
};
const row = (feeds: readonly Feed[], t: TreePlan = FED, more: Parameters<typeof plan>[1] = {}): Row => rows([[t, feeds]], more)[0]!;
const first = (feeds: readonly Feed[], t: TreePlan = FED): Row['doses'][number] => row(feeds, t).doses[0]!;

describe('a dose', () => {
  test('number, name, weight, cup and ring, on paper and in plain text', () => {
    const r = row([dose(SULPHATE, 350, { mL: 250 })]);
    expect({ ...r, ring: '' }).toEqual({
      number: '1', name: 'GATE APPLE', fed: true, doses: [{ amount: '350 g', plants: '', product: '', only: '', cups: 'about 250 mL' }], where: '60 cm to 2.5 m', ring: '',
      lines: ['[ ] 1 GATE APPLE         350 g            ring 60 cm to 2.5 m from the trunk', '        about 250 mL'],
    });
    // The crown is 4 m across, its edge 2 m from the trunk.
    expect(named(r.ring, 'svg')[0]!['aria-label']).toBe('Ring from 60 cm to 2.5 m from the trunk; crown edge dashed at 2 m.');
    expect([named(r.ring, 'pattern')[0]!.id, named(r.ring, 'circle').map((c) => c.r)]).toEqual(['h12026-04-10', ['5.3', '1.27', '4.24', '.7']]);
  });
  test('what rests on memory or judgement has a dagger', () => {
    expect(first([dose(SULPHATE, 350)], tree('A', {}, { need: { N: fig(100, 'memory') } })).amount).toBe('350 g †');
    expect(first([dose(POTASH, 350, { serves: 'K2O' })], tree('A', {}, { need: { N: fig(100, 'memory') } })).amount).toBe('350 g');
    expect(first([dose(POTASH, 350, { serves: 'K2O' })], tree('A', {}, { need: { K2O: fig(100, 'judgement') } })).amount).toBe('350 g †');
  });
  // Half an ounce is 14.17 g.
  test('for each plant of a row, or over all of them where it is under half an ounce', () => {
    const three = tree('Row', { count: 3 });
    expect(first([dose(SULPHATE, 350, { mL: 250 })], three)).toEqual({ amount: '350 g', plants: 'each of 3', product: '', only: '', cups: 'about 250 mL' });
    expect(first([dose(SULPHATE, 14, { mL: 10 })], three)).toEqual({ amount: '42 g over all 3', plants: '', product: '', only: '', cups: 'about 30 mL' });
    expect(first([dose(SULPHATE, 14, { mL: 10 })])).toEqual({ amount: '14 g', plants: '', product: '', only: '', cups: 'about 10 mL' });
    expect([isTiny(14.17), isTiny(28.349523125 / 2), isTiny(14.2)]).toEqual([true, false, false]);
    expect(row([dose(SULPHATE, 14)], tree('Row', { count: 10 })).lines).toEqual(['[ ] 1 ROW                140 g over all 10 ring 60 cm to 2.5 m from the trunk']);
    expect(row([dose(SULPHATE, 350)], three).lines).toEqual(['[ ] 1 ROW                350 g each of 3  ring 60 cm to 2.5 m from the trunk']);
  });
  test('in ounces and feet', () => {
    // 12 1/2 oz are 354.4 g; 2 ft are 0.6096 m, 7 1/2 ft 2.286 m.
    const r = row([dose(SULPHATE, 354.369, { ring: { from: fig(0.6096), to: fig(2.286) } })], FED, { where: { units: 'us' } });
    expect([r.doses[0]!.amount, r.where, r.lines[0]]).toEqual(['12 1/2 oz', '2 to 7 1/2 ft', '[ ] 1 GATE APPLE         12 1/2 oz        ring 2 to 7 1/2 ft from the trunk']);
  });
  test('two bags on one ring: each named, the place told once', () => {
    const r = row([dose(SULPHATE, 350, { mL: 250 }), dose(POTASH, 60, { serves: 'K2O' })]);
    expect(r.doses.map((d) => d.product)).toEqual(['Sulfate of ammonia', 'Potash']);
    expect(r.lines).toEqual(['[ ] 1 GATE APPLE         350 g            ring 60 cm to 2.5 m from the trunk', '        Sulfate of ammonia, about 250 mL', `${' '.repeat(25)}60 g             `, '        Potash']);
  });
  test('a name that leaves no room has a line of its own', () => {
    expect(row([dose(SULPHATE, 350)], tree('x'.repeat(18))).lines).toEqual([`[ ] 1 ${'X'.repeat(18)} 350 g            ring 60 cm to 2.5 m from the trunk`]);
    expect(row([dose(SULPHATE, 350)], tree('x'.repeat(19))).lines).toEqual([`[ ] 1 ${'X'.repeat(19)}`, `${' '.repeat(25)}350 g            ring 60 cm to 2.5 m from the trunk`]);
  });
  test('in a tub or a bed there is no ring', () => {
    const tub = row([dose(SULPHATE, 30, { ring: null })], tree('Fig', { tub: 40 }));
    expect([tub.where, tub.ring, tub.lines]).toEqual(['on the mix in the tub', '', ['[ ] 1 FIG                30 g             on the mix in the tub']]);
    // Two square metres for each of three.
    const bed = row([dose(SULPHATE, 30)], tree('Row', { count: 3 }, { facts: { bed: fig(2) } }));
    expect([bed.where, bed.ring, bed.lines]).toEqual(['dug into all 6 m² of the bed', '', ['[ ] 1 ROW                30 g each of 3   dug into all 6 m² of the bed']]);
  });
});

describe('a tree without a dose', () => {
  const idle = tree('Pear', {}, { need: { verdict: 'none' }, nitrogen: { none: 'fed-lawn' } });
  test('is told on the first day, with the reason, and not again', () => {
    const trees = [{ ...FED, feeds: [dose(SULPHATE, 350)] }, idle];
    const view = sheetView(plan(trees, { days: [day(1, [[trees[0]!, dose(SULPHATE, 350)]]), day(2, [[trees[0]!, dose(SULPHATE, 350)]])] }), A4);
    expect(view.days.map((d) => d.rows.map((r) => r.name))).toEqual([['GATE APPLE', 'PEAR'], ['GATE APPLE']]);
    expect(view.days[0]!.rows[1]).toEqual({ number: '2', name: 'PEAR', fed: false, doses: [{ amount: 'NOTHING', plants: '', product: '', only: '', cups: '' }], where: 'the fed lawn feeds it', ring: '', lines: [' x  2 PEAR               NOTHING          the fed lawn feeds it'] });
    expect(view.idle).toEqual([]);
  });
  test('is on no day but its own where it is fed later', () => {
    const [a, b] = [{ ...FED, feeds: [dose(SULPHATE, 350)] }, { ...tree('Plum'), feeds: [dose(SULPHATE, 60)] }];
    expect(sheetView(plan([a, b], { days: [day(1, [[a, a.feeds[0]!]]), day(2, [[b, b.feeds[0]!]])] }), A4).days.map((d) => d.rows.map((r) => `${r.number} ${r.name}`))).toEqual([['1 GATE APPLE'], ['2 PLUM']]);
  });
  test('waits where something has to be settled first', () => {
    const wait = tree('Pear', {}, { need: { verdict: 'wait', stops: [{ id: 'salts' }] } });
    expect([sheetView(plan([wait]), A4).idle[0]!.doses[0]!.amount, sheetView(plan([wait]), A4).idle[0]!.where]).toEqual(['WAIT', 'too much salt in the soil']);
  });
});

describe('a tub fed in its water', () => {
  const soluble = feed('Soluble', [20, 20, 20], { cupG: 240 });
  // Twelve of 240 g a cup of 236.6 mL are 11.8 mL.
  const WHERE = 'in 9 L of water, once a week, 1 April to 15 July (16 times)';
  test('weight, cup, water and weeks; always by judgement', () => {
    expect(sheetView(plan([tree('Fig', { count: 2 }, { dilute: can(soluble) })]), A4).idle).toEqual([{
      number: '1', name: 'FIG', fed: true, doses: [{ amount: '12 g †', plants: 'each of 2', product: '', only: '', cups: 'about 12 mL' }], where: WHERE, ring: '', lines: [`[ ] 1 FIG                12 g † each of 2 ${WHERE}`, '        about 12 mL'],
    }]);
    expect(sheetView(plan([tree('Fig', {}, { dilute: can(feed('Soluble', [20, 20, 20])) })]), A4).idle[0]).toMatchObject({ doses: [{ amount: '12 g †', plants: '', cups: '' }], lines: [`[ ] 1 FIG                12 g †           ${WHERE}`] });
  });
  test('names its bag where there are two, on the days and without any', () => {
    const [fig1, fig2] = [tree('Fig', {}, { dilute: can(soluble) }), tree('Lime', {}, { dilute: can(feed('Citrus salt', [12, 4, 8])) })];
    const idle = sheetView(plan([fig1, fig2]), A4).idle;
    expect([idle.map((r) => r.doses[0]!.product), idle.map((r) => r.lines[1])]).toEqual([['Soluble', 'Citrus salt'], ['        Soluble, about 12 mL', '        Citrus salt']]);
    // The table of a sheet without days says of each what its text does.
    const cells = [...renderSheet(sheetView(plan([{ ...fig1, tree: { ...fig1.tree, count: 2 } }, fig2]), A4), 'html').matchAll(/<span class="no">(.*?)<\/td>/g)].map((m) => m[1]!.replaceAll(/<[^>]*>/g, ' ').replaceAll(/\s+/g, ' ').trim());
    expect(cells).toEqual(['12 g † each of 2 Soluble about 12 mL', '12 g † Citrus salt']);
    expect(rows([[FED, [dose(SULPHATE, 350)]], [fig1, []]]).map((r) => r.doses[0]!.product)).toEqual(['Sulfate of ammonia', 'Soluble']);
  });
});

describe('the condition of a dose', () => {
  const below = { nitrogen: { ifBelow: fig(0.2032) } };
  const two = (t: TreePlan, serves: Feed['serves'] = 'N') => { const fed = { ...t, feeds: [dose(SULPHATE, 350, { serves })] }; return { fed, all: plan([fed], { where: { units: 'us' }, days: [day(2, [[fed, fed.feeds[0]!]]), day(3, [[fed, fed.feeds[0]!]])] }) }; };
  test('holds whole on the tree\'s first day, shortly on later ones', () => {
    const { fed, all } = two(tree('A', {}, below));
    // 8 in are 20.32 cm.
    expect([conditionOf(all, fed, 2, w), conditionOf(all, fed, 3, w)]).toEqual(['only if last year\'s shoots were under 8 in', '(if fed on day 2)']);
    expect(sheetView(all, A4).days.map((d) => [d.rows[0]!.doses[0]!.only, d.rows[0]!.lines[1]])).toEqual([['only if last year\'s shoots were under 8 in', '        only if last year\'s shoots were under 8 in'], ['(if fed on day 2)', '        (if fed on day 2)']]);
  });
  test('of another tree, or for another nutrient, is none of its own', () => {
    const [a, b] = [tree('A', {}, below), { ...tree('B'), feeds: [] }];
    const all = plan([a, b], { days: [day(1, [[b, dose(SULPHATE, 60)], [a, dose(POTASH, 60, { serves: 'K2O' })]]), day(2, [[a, dose(SULPHATE, 60)]])] });
    expect([conditionOf(all, b, 1, w), conditionOf(all, a, 2, w)]).toEqual(['', 'only if last year\'s shoots were under 20 cm']);
    const { all: potash } = two(tree('A', {}, below), 'K2O');
    expect(sheetView(potash, A4).days.map((d) => d.rows[0]!.doses[0]!.only)).toEqual(['', '']);
  });
  test('is met once the diary has nitrogen for the tree', () => {
    const said = (fed: readonly object[]): string => { const { fed: t, all } = two(tree('A', {}, { ...below, fed })); return conditionOf(all, t, 2, w); };
    expect([said([{ date: '2026-04-01', brought: { N: 10 } }]), said([{ date: '2026-04-01', brought: { N: 0 } }]) === '', said([{ date: '2026-04-01', brought: null }]) === '']).toEqual(['', false, false]);
  });
});
