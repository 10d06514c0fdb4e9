// The front of the sheet but for its rows: head, bags to use and not to use, the strip of the year, weights of a day, the last day.
import { describe, expect, test } from 'vitest';
import type { Feed } from '../../src/bags/doses.ts';
import type { TreePlan } from '../../src/plan.ts';
import { sheetView, stopDays } from '../../src/sheet/build.ts';
import { feed } from '../bags/parts.ts';
import { can, day, dose, fig, named, plan, RING, tree, zone } from './parts.ts';

const A4 = { paper: 'a4', large: false } as const;
const SULPHATE = feed('Sulfate of ammonia', [21, 0, 0]);
const POTASH = feed('Potash', [0, 0, 50]);
const MEAL = feed('Bone meal', [3, 15, 0]);
const fed = (t: TreePlan, ...feeds: Feed[]): TreePlan => ({ ...t, feeds });
const APPLE = fed(tree('Apple'), dose(SULPHATE, 350));
const view = (trees: readonly TreePlan[] = [APPLE], more: Parameters<typeof plan>[1] = {}) => sheetView(plan(trees, { days: [day(1, trees.flatMap((t) => t.feeds.map((f) => [t, f] as const)))], ...more }), A4);

describe('the head', () => {
  test('orchard, year, the day it was made and the newest soil test', () => {
    const { orchard, feeding, made, test: tested, use, language, paper, large } = view([APPLE], { zones: [zone('hill', { taken: '2025-11-04' }), zone('low', { taken: '2023-03-01' }), zone('top')] });
    expect({ orchard, feeding, made, tested, use, language, paper, large }).toEqual({ orchard: 'HILL', feeding: 'FEEDING 2026', made: 'Made 14 March 2026. Throw older sheets away.', tested: 'Soil test: Nov 2025', use: ['Sulfate of ammonia 21-0-0'], language: 'en-US', paper: 'a4', large: false });
    expect(sheetView(plan([APPLE]), { paper: 'letter', large: true })).toMatchObject({ paper: 'letter', large: true });
  });
  test('without a name, without a soil test, with one of no day', () => {
    expect([view([APPLE], { orchard: { name: '' } }).orchard, view().test, view([APPLE], { zones: [zone('hill')] }).test]).toEqual(['FEEDING', 'No soil test', '']);
  });
  test('each bag once, those for the can with them', () => {
    expect(view([APPLE, fed(tree('B'), dose(SULPHATE, 60)), tree('Fig', {}, { dilute: can(feed('Soluble', [20, 20, 20])) })]).use).toEqual(['Sulfate of ammonia 21-0-0', 'Soluble 20-20-20']);
    expect(view([tree('A', {}, { need: { verdict: 'none' }, nitrogen: { none: 'fed-lawn' } })], { days: [] }).use).toEqual([]);
  });
  test('the headings', () => {
    expect(view().words).toEqual({
      use: 'USE', not: 'NOT', stop: 'STOP', how: 'HOW', back: 'Back of the sheet', overleaf: 'back', limeSulphur: 'LIME, SULFUR', whySoLittle: 'WHY SO LITTLE', short: 'SHORT', assumed: 'ASSUMED', measure: 'MEASURE', test2: 'TEST AGAIN', slip: 'STORE SLIP', cut: 'cut here', caution: 'CAUTION', year: 'The year', tick: 'tick', tree: 'tree', dose: 'dose', where: 'where', fromTrunk: 'from the trunk',
    });
  });
});

describe('what not to use', () => {
  const ENOUGH = 'any bag with a middle number above 0: the soil has enough phosphorus already';
  const rich = [zone('hill', { phosphorus: 'above' })];
  const lists = { orchard: { shed: [MEAL, SULPHATE], store: [feed('Balanced', [10, 10, 10]), MEAL] } };
  test('where the soil has phosphate enough, the listed bags that bring it, each once', () => {
    expect(view([APPLE], { ...lists, zones: rich }).not).toEqual([`Bone meal 3-15-0, Balanced 10-10-10; ${ENOUGH}`]);
    expect([view([APPLE], { zones: rich }).not, view([APPLE], { ...lists, zones: [zone('hill')] }).not, view([APPLE], lists).not]).toEqual([[ENOUGH], [], []]);
    // Its potassium may be rich without any harm.
    expect(view([APPLE], { zones: [{ ...rich[0], soil: { rated: [{ reading: { item: 'potassium' }, target: 'above' }, { reading: { item: 'phosphorus' }, target: 'at' }] } }] }).not).toEqual([]);
    expect(view([APPLE], { zones: rich, days: [] }).not).toEqual([]);
  });
  test('the zone is named where another, or a tub, may take it', () => {
    const HERE = ENOUGH.replace('the soil', 'in hill the soil');
    expect([view([APPLE], { zones: [...rich, zone('low')] }).not, view([APPLE, tree('Fig', { tub: 40 })], { zones: rich }).not]).toEqual([[HERE], [HERE]]);
    expect(view([APPLE], { zones: [...rich, zone('top', { phosphorus: 'above' }), zone('low')] }).not).toEqual([ENOUGH.replace('the soil', 'in hill, top the soil')]);
  });
  test('a bag that is used is not forbidden; where it brings phosphate to a plant that wants none, the truth is told', () => {
    const wants = fed(tree('B', {}, { need: { P2O5: fig(20) } }), dose(MEAL, 100, { serves: 'P2O5' }));
    expect(view([wants], { ...lists, zones: rich }).not).toEqual([`Balanced 10-10-10; ${ENOUGH}`]);
    expect(view([APPLE, fed(tree('B'), dose(SULPHATE, 10), dose(MEAL, 100))], { ...lists, zones: rich }).not).toEqual(['more of this than the sheet says: the soil has enough phosphorus already. A bag with 0 in the middle, such as 21-0-0, would be better']);
  });
  test('no weed-and-feed where there is lawn', () => {
    const WEED = 'weed-and-feed: its weed killer reaches the tree';
    expect([[], ['grass'], ['fed lawn'], ['mulch']].map((flags) => view([APPLE, tree('B', { flags })]).not)).toEqual([[], [WEED], [WEED], []]);
  });
});

describe('a day', () => {
  test('its number, window and phase, what is weighed out, and what to write', () => {
    const { rows, ...head } = view([APPLE], { days: [day(2, [[APPLE, APPLE.feeds[0]!]], { phase: 'bud-break' })] }).days[0]!;
    expect(rows).toHaveLength(1);
    expect(head).toEqual({ title: 'DAY 2', when: 'as buds show green, about 10-25 April', weigh: 'Damp ground, rain due. Weigh out 350 g.', done: 'Done on ____________  by ____________', weighs: 'bag weighs now ____________' });
    expect(view().days[0]!.when).toBe('about 10-25 April');
  });
  test('all plants together, each bag by its name where there are two', () => {
    const row = fed(tree('Row', { count: 3 }), dose(SULPHATE, 100), dose(POTASH, 60, { serves: 'K2O' }));
    // 350 + 3 × 100, 3 × 60.
    expect(view([APPLE, row]).days[0]!.weigh).toBe('Damp ground, rain due. Weigh out 650 g Sulfate of ammonia, 180 g Potash.');
  });
  test('what to do where there are several, and how', () => {
    const HOW = 'Pull mulch back. Spread evenly over the ring. Mulch back. Water. Nothing against the trunk. Cups are rough: weigh. Skip it if the ground is dry, frozen, snowy or flooded, or a storm is due.';
    const one = day(1, [[APPLE, APPLE.feeds[0]!]]);
    expect([view().lost, view([APPLE], { days: [one, day(2, [[APPLE, APPLE.feeds[0]!]])] }).lost, view([APPLE], { days: [] }).how]).toEqual(['', 'Frost took the crop? Leave out every later dose.', '']);
    // A step is 2 1/2 ft, 0.762 m (practice): no help on a ring that ends within it.
    const ring = (to: number): string => view([fed(tree('A'), dose(SULPHATE, 350, { ring: { ...RING, to: fig(to) } }))]).how;
    expect([ring(0.762), ring(0.77), view([fed(tree('Fig', { tub: 9 }), dose(SULPHATE, 30, { ring: null }))]).how]).toEqual([HOW, `${HOW} An adult's step is about 75 cm.`, HOW]);
    expect(view([tree('C'), fed(tree('Fig', { tub: 9 }), dose(SULPHATE, 30, { ring: null })), APPLE]).how).toBe(`${HOW} An adult's step is about 75 cm.`);
  });
});

describe('the last day', () => {
  const lemon = (name = 'Lemon'): TreePlan => fed(tree(name, { crop: 'citrus' }), dose(SULPHATE, 350));
  test('that of the season, of evergreens beside it, of evergreens alone', () => {
    expect([stopDays(plan([APPLE])), stopDays(plan([APPLE, lemon(), lemon('Orange')])), stopDays(plan([lemon()]))]).toEqual([{ day: '2026-07-20', evergreen: null }, { day: '2026-07-20', evergreen: { trees: 'Lemon, Orange', day: '2026-08-10' } }, { day: '2026-08-10', evergreen: null }]);
    // A loquat that is fed as a pear ends with the pear, as it is planned.
    expect(stopDays(plan([APPLE, tree('Loquat', { crop: 'loquat' }, { facts: { crop: 'pear' } })]))).toEqual({ day: '2026-07-20', evergreen: null });
    expect(view([APPLE, lemon()]).stop).toBe('No nitrogen after 20 July, even if a day was missed. Lemon: 10 August.');
    expect(view([lemon()]).stop).toBe('No nitrogen after 10 August, even if a day was missed.');
  });
  test('with a dagger where it is assumed, and what a place prints of its own', () => {
    const peach = (name: string, on: string): TreePlan => tree(name, { crop: 'peach' }, { last: { day: on, printed: true } });
    expect(view([APPLE], { season: { lastFigure: fig(-84, 'judgement') } }).stop).toBe('No nitrogen after 20 July, even if a day was missed. †');
    expect(view([APPLE, peach('P', '2026-06-15'), peach('Q', '2026-06-15'), peach('R', '2026-07-15')]).stop).toBe('No nitrogen after 20 July, even if a day was missed. P, Q: none after 15 June. R: none after 15 July.');
  });
});

describe('the year as a strip', () => {
  const texts = (svg: string, y: string): string[] => named(svg, 'text').filter((t) => t.y === y).map((t) => t.text);
  test('begins with the month of two weeks before bud break or the first day, and ends three weeks after frost', () => {
    // 10 April less 15 days is 26 March; 12 October and 20 days are 1 November.
    const { strip } = view();
    expect(named(strip, 'svg')[0]!['aria-label']).toBe('The year from 1 March to 1 November: 10-25 April; stop after 20 July.');
    expect(texts(strip, '19')).toEqual(['Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct']);
    expect(texts(strip, '6.6')).toEqual(['STOP', '1']);
    const late = view([APPLE], { days: [day(1, [[APPLE, APPLE.feeds[0]!]], { from: '2026-05-20', until: '2026-06-01' })], season: { budBreak: '2026-04-16' } }).strip;
    expect(named(late, 'svg')[0]!['aria-label']).toBe('The year from 1 April to 1 November: 20 May-1 June; stop after 20 July.');
    // 10 March less 15 days is 23 February.
    const early = view([APPLE], { days: [day(1, [[APPLE, APPLE.feeds[0]!]], { from: '2026-03-10', until: '2026-03-20' })] }).strip;
    expect(named(early, 'svg')[0]!['aria-label']).toBe('The year from 1 February to 1 November: 10-20 March; stop after 20 July.');
    expect(view([APPLE], { days: [] }).strip).toBe('');
  });
  // 1 March to 1 November are 245 days on 178 mm: 20 July is the 141st, 10 August the 162nd.
  test('the bar stands at the last day, and its label names that day', () => {
    const bar = (svg: string): (string | undefined)[] => [named(svg, 'rect')[0]!.x, /stop after (.*)\.$/.exec(named(svg, 'svg')[0]!['aria-label']!)![1]];
    expect(bar(view().strip)).toEqual(['102.44', '20 July']);
    expect(bar(view([fed(tree('Lemon', { crop: 'citrus' }), dose(SULPHATE, 350))]).strip)).toEqual(['117.7', '10 August']);
  });
  test('two days, two numbers', () => {
    const two = view([APPLE], { days: [day(1, [[APPLE, APPLE.feeds[0]!]]), day(3, [[APPLE, APPLE.feeds[0]!]], { from: '2026-05-20', until: '2026-06-01' })] }).strip;
    expect([texts(two, '6.6'), named(two, 'svg')[0]!['aria-label']]).toEqual([['STOP', '1', '3'], 'The year from 1 March to 1 November: 10-25 April; 20 May-1 June; stop after 20 July.']);
  });
});
