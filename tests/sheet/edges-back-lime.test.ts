// The back of the sheet on pH: lime, sulphur and each no, what is to be handled with care, and when to test again. Days of autumn and the eleven months of lime by hand.
import { describe, expect, test } from 'vitest';
import type { TreePlan } from '../../src/plan.ts';
import { notice } from '../../src/reason/notice.ts';
import { backOf, nextTest } from '../../src/sheet/back.ts';
import { feed } from '../bags/parts.ts';
import { can, dose, fig, limed, plan, tree, w, zone } from './parts.ts';

type More = Parameters<typeof plan>[1];
const limeOf = (trees: readonly TreePlan[], more: More = {}): string[] => backOf(plan(trees, more), w).lime.map(({ box, text }) => `${box ? '[ ] ' : ''}${text}`);
const of = (name: string, ph: Parameters<typeof limed>[0] = {}, more: object = {}): TreePlan => tree(name, more, { ph: limed(ph) });
const fine = (name: string, now: number): TreePlan => of(name, { g: 0, plan: { verdict: 'leave', reason: 'inside', now: fig(now) } });
const WHEN = '15 October-14 December 2026';
const ONCE = 'Once only: it takes up to 12 months to act. Test the soil again before any more. Keep lime a month apart from feed.';

describe('lime and sulphur', () => {
  test('what suits already, each pH once, of all or of some', () => {
    expect(limeOf([fine('A', 6.4), fine('B', 6.6), fine('C', 6.4), tree('Fig')])).toEqual(['Neither. pH 6.4, 6.6 suits what grows there.']);
    expect(limeOf([fine('A', 6.4), fine('B', 6.404), of('C')])).toEqual(['A, B: neither; pH 6.4 suits. Keep lime off where none is written.', `[ ] C: 700 g Ground limestone, ring 60 cm to 2.5 m, ${WHEN}`, ONCE]);
    expect(limeOf([of('A', { g: 0, plan: { verdict: 'leave', reason: 'near-goal' } })])).toEqual([]);
  });
  test('no pH, or none that anything is printed for', () => {
    expect(limeOf([tree('A')])).toEqual(['No pH on the report.']);
    expect(limeOf([tree('A')], { notices: [notice('ph-no-range', 'note', { zone: 'hill', tree: 'A', now: 6.2 }), notice('no-soil', 'note', { tree: 'A' })] })).toEqual(['A: the soil has pH 6.2. No publication held here prints what suits it, so neither lime nor sulfur is planned for it. Ask your extension office first.']);
  });
  test('so much of which, for each plant, on which ring and when', () => {
    const bag = { label: 'Garden lime' } as never;
    expect(limeOf([of('A', { bag }, { count: 3 })])[0]).toBe(`[ ] A: 700 g each of 3 Garden lime, ring 60 cm to 2.5 m, ${WHEN}`);
    expect(limeOf([of('A', { plan: { verdict: 'sulphur', reason: 'sulphur' } })])[0]).toBe(`[ ] A: 700 g Elemental sulfur, ring 60 cm to 2.5 m, ${WHEN}`);
    expect(limeOf([of('A', { ring: { from: fig(0.6), to: fig(0.9) } })])[0]).toBe(`[ ] A: 700 g Ground limestone, ring 60 to 90 cm, ${WHEN}`);
  });
  test('by texture, or by what is recalled, with a dagger', () => {
    expect([of('A', { plan: { reason: 'texture' } }), of('A', { plan: { dose: fig(200, 'memory') } })].map((t) => limeOf([t])[0])).toEqual([`[ ] A: 700 g † Ground limestone, ring 60 cm to 2.5 m, ${WHEN}`, `[ ] A: 700 g † Ground limestone, ring 60 cm to 2.5 m, ${WHEN}`]);
    expect(limeOf([of('A', { bed: fig(2), plan: { reason: 'texture' } })])[0]).toContain('A: 700 g † Ground');
  });
  test('dug into the bed of what is to come, as deep as the rate is for, else a spit of 6 in', () => {
    const bed = { bed: fig(2) as never };
    expect(limeOf([of('A', { ...bed, plan: { dugIn: { depthM: 0.2 } } }, { count: 3 })])[0]).toBe(`[ ] A: 700 g each of 3 Ground limestone, dug 20 cm deep into all 6 m² of the bed, ${WHEN}`);
    expect(limeOf([of('A', bed)])[0]).toBe(`[ ] A: 700 g Ground limestone, dug 15 cm deep into all 2 m² of the bed, ${WHEN}`);
    // Of a bed whose size nobody told, the ring.
    expect(limeOf([of('A', { bed: null })])[0]).toContain('ring 60 cm to 2.5 m');
  });
  test('lime is kept away from what wants acid soil in the same ground', () => {
    const two = { notices: [notice('ph-zone-two-wants', 'warning', { zone: 'hill', acid: 'Blueberries', others: 'A', low: 4, high: 5, least: 6, tree: 'Blueberries, A' }), notice('no-soil', 'note', { tree: 'B' })] };
    expect(limeOf([of('A')], two).slice(1)).toEqual([`${ONCE.slice(0, -1)}, and away from Blueberries.`]);
    expect(limeOf([of('A', { plan: { verdict: 'sulphur', reason: 'sulphur' } })], two).slice(1)).toEqual([ONCE]);
    expect(limeOf([of('A', { g: 0, plan: { reason: 'stopped-lime' } })], two)).toEqual([]);
    const sulphur = of('C', { plan: { verdict: 'sulphur', reason: 'sulphur' } });
    expect([limeOf([of('A', { g: 0, plan: { reason: 'stopped-lime' } }), sulphur], two).at(-1), limeOf([sulphur, of('A')], { notices: [...two.notices, notice('ph-zone-two-wants', 'warning', { ...two.notices[0]!.facts, acid: 'Lingonberry' })] }).at(-1)]).toEqual([ONCE, `${ONCE.slice(0, -1)}, and away from Blueberries, Lingonberry.`]);
  });
  test('each no is told; what a dose says itself, or what is for planning, is not', () => {
    const near = notice('ph-near-goal', 'note', { tree: 'B', now: 5.9, low: 6 });
    const NEAR = 'B: soil pH 5.9 is just under the 6 that suits it, too little to lime for. Leave it; test again in three years.';
    const texture = notice('ph-texture', 'note', { tree: 'A', now: 5.4, low: 6 });
    const away = notice('ph-water-undoes', 'warning', { tree: 'A', mgPerL: 200, most: 100, times: 3, depth: '25 mm' });
    const dosed = of('A', { plan: { reason: 'texture' } });
    expect(limeOf([dosed, of('B', { g: 0, plan: { reason: 'near-goal' } })], { notices: [texture, near, away] }).slice(1)).toEqual([ONCE, NEAR]);
    // The sentence stays where nothing goes on for it.
    expect(limeOf([of('A', { g: 0, plan: { reason: 'texture' } })], { notices: [texture] })).toEqual(['A: soil pH 5.4 is under the 6 that suits it. The lime is by texture alone, from weak pages, so the lesser figure is taken. Ask the lab for a buffer pH.']);
    const bed = notice('ph-sulphur-bed', 'note', { tree: 'A', now: 6.5, high: 5, soonest: 3, latest: 12, warm: 55, celsius: 13 });
    const sulphur = { plan: { verdict: 'sulphur', reason: 'sulphur' } };
    expect([limeOf([of('A', { ...sulphur, bed: null }, { crop: 'blueberry' })], { notices: [bed] }).length, limeOf([of('A', sulphur, { crop: 'blueberry' })], { notices: [bed] }).length]).toEqual([2, 3]);
  });
});

describe('the next soil test', () => {
  // A sample holds for three years; lime shows eleven months after it went on: 335 days.
  const year = (zones: readonly (string | undefined)[], trees: readonly TreePlan[] = [], more: More = {}): number => nextTest(plan(trees, { zones: zones.map((taken) => zone('hill', taken === undefined ? {} : { taken })), ...more }));
  const lime = (until: string): TreePlan => of('A', { window: { from: '2026-10-15', until } });
  const waits = (last: string | null, reason = 'retest', g = 0): TreePlan => of('A', { g, last, plan: { reason, verdict: 'leave' } });
  test('three years after the sample, this year where it is due or nobody told its day', () => {
    expect([year(['2025-11-04']), year(['2020-01-01']), year([undefined]), year([]), year(['2025-11-04', '2024-03-01'])]).toEqual([2028, 2026, 2026, 2026, 2027]);
  });
  test('sooner where lime or sulphur went on: the first autumn that tells of all of it', () => {
    // 14 December 2026 and 335 days are 14 November 2027; 1 January 2027 and 335 days 2 December, after autumn.
    expect([year(['2025-11-04'], [lime('2026-12-14')]), year(['2025-11-04'], [lime('2027-01-01')]), year(['2025-11-04'], [lime('2026-12-14'), lime('2027-01-01')]), year(['2025-11-04'], [lime('2027-01-01'), lime('2026-12-14')]), year(['2020-11-04'], [lime('2026-12-14')])]).toEqual([2027, 2028, 2028, 2028, 2026]);
    expect([year(['2025-11-04'], [waits('2025-10-01')]), year(['2025-11-04'], [waits('2026-01-10')]), year(['2025-11-04'], [waits('2020-01-01')]), year(['2025-11-04'], [waits(null)]), year(['2025-11-04'], [waits('2025-10-01', 'inside')]), year(['2025-11-04'], [tree('A')])]).toEqual([2026, 2027, 2026, 2028, 2028, 2028]);
    // Autumn ends with May in the south: 14 June 2026 and 335 days are 15 May 2027, 14 July 14 June.
    const south = { where: { south: true } };
    expect([year(['2026-03-04'], [lime('2026-06-14')], south), year(['2026-03-04'], [lime('2026-07-14')], south)]).toEqual([2027, 2028]);
  });
  test('never in an autumn that is over', () => {
    const on = (today: string, south: boolean): number => year([undefined], [], { where: { south }, season: { today } });
    expect([on('2026-05-31', true), on('2026-06-01', true), on('2026-06-01', false), on('2026-11-30', false), on('2026-12-01', false)]).toEqual([2026, 2027, 2026, 2026, 2027]);
    expect(year([], [], { where: { south: true }, season: { today: '2026-07-01' } })).toBe(2027);
  });
  test('in layers where lime or sulphur went on', () => {
    const again = (trees: readonly TreePlan[]): string => backOf(plan(trees, { zones: [zone('hill', { taken: '2025-11-04' })] }), w).again;
    expect([again([tree('A')]), again([lime('2026-12-14')])]).toEqual(['fall 2028', 'fall 2027, the top 2 in (5 cm) and what is below apart, where lime or sulfur went on']);
  });
});

describe('handle with care', () => {
  const LABEL = 'The label, local rules and your extension office outrank this sheet. Wear gloves; wash hands. Keep children and pets off until it is watered in. Sweep up spills; keep feed away from wells and water.';
  const POISON = 'Swallowed? Rinse the mouth, drink water, call poison control, 1-800-222-1222.';
  const LIME = 'Lime and sulfur: a calm day, gloves, goggles, dust mask. Rinse eyes 15 minutes. Store sulfur cool, away from fire and from nitrate feeds.';
  const made = (id: string, label: string, grade: [number, number, number], more: object = {}) => feed(label, grade, { material: { id, ...more } as never });
  const UREA = made('urea', 'Urea', [46, 0, 0]);
  const cautions = (trees: readonly TreePlan[], more: More = {}): string[] => backOf(plan(trees, { days: [{ doses: trees.flatMap((t) => t.feeds.map((f) => ({ plan: t, feed: f }))) } as never], ...more }), w).cautions;
  const fed = (...bags: ReturnType<typeof feed>[]): TreePlan => ({ ...tree('A'), feeds: bags.map((b) => dose(b, 100)) });
  test('nothing where nothing goes on; label and poison line where anything does', () => {
    expect([cautions([tree('A')]), cautions([fed(feed('Balanced', [10, 10, 10]))]), cautions([of('A')]), cautions([of('A', { g: 0 })])]).toEqual([[], [LABEL, POISON], [LABEL, POISON, LIME], []]);
    expect(cautions([fed(UREA)], { where: { country: 'GB' } })[1]).toBe('Swallowed? Rinse the mouth, drink water, call your poison line.');
  });
  test('dogs, urea, fire, raw manure, and what must never meet', () => {
    expect(cautions([fed(made('bone-meal', 'Bone meal', [3, 15, 0], { temptsDogs: true }))])).toEqual([LABEL, POISON, 'Dogs eat Bone meal: store it shut, water it in.']);
    expect(cautions([fed(UREA)])).toEqual([LABEL, POISON, 'Urea loses strength on the surface: water it in the same day, half an inch (13 mm).']);
    expect(cautions([fed(made('x', 'Saltpetre', [13, 0, 44], { oxidiser: true }), feed('Manure', [1, 1, 1], { fresh: true }))]).slice(2)).toEqual(['Saltpetre 13-0-44 feeds a fire: keep it from fuel, oil, straw, sawdust and heat.', 'Manure 1-1-1 is raw: dig it in at least 90 days before harvest, and 120 where fruit touches the soil, as strawberries do. If it was composted, say so.']);
    // Urea and superphosphate never, urea and muriate on the day itself (mixing table).
    expect(cautions([fed(UREA, made('superphosphate', 'Super', [0, 20, 0]))]).slice(3)).toEqual(['Never mix Urea 46-0-0 with Super 0-20-0, nor store them together: they draw water and turn to slush.']);
    expect(cautions([fed(UREA, made('potassium-chloride', 'Muriate', [0, 0, 60]))]).slice(3)).toEqual([]);
  });
  test('a white crust on a tub that is fed', () => {
    const CRUST = 'A white crust on a tub is salt: flush it with plain water.';
    const tub = (more: object): TreePlan => tree('Fig', { tub: 40 }, more);
    expect([cautions([tub({ dilute: can(feed('Soluble', [20, 20, 20])) })]), cautions([tub({ feeds: [dose(feed('Coated', [14, 14, 14]), 30)] })]), cautions([tub({}), fed(feed('Balanced', [10, 10, 10]))]), cautions([fed(feed('Balanced', [10, 10, 10])), tub({ feeds: [dose(feed('Coated', [14, 14, 14]), 30)] })])]).toEqual([[LABEL, POISON, CRUST], [LABEL, POISON, CRUST], [LABEL, POISON], [LABEL, POISON, CRUST]]);
  });
});
