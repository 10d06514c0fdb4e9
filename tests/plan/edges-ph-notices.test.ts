// What is said and asked of the pH, each notice by itself on plants made by hand: who is named, how grave it is, what is told once. What each must say stands in the sentences of the words and in DEVELOPERS.md; ranges and rates are made up.
import { describe, expect, test } from 'vitest';
import type { TreePlan } from '../../src/planned.ts';
import { labLimeLeft, limeElsewhere, phNotices, phQuestions, twoWants, withoutRange } from '../../src/ph-notices.ts';
import { sourceOf } from '../../src/tables/sources.ts';
import { codes, fig, orchardOf, phOf, plantOf, told, zoneOf } from './parts.ts';

type Ph = Parameters<typeof phOf>[1];
const at = (name: string, zone: string | null, ph: Ph = {}, tree: object = {}): TreePlan => plantOf(name, { tree: { zone: zone ?? undefined, ...tree }, ph: phOf(zone, ph) });
const as = (verdict: string, reason: string, more: object = {}): Ph => ({ plan: { verdict, reason, ...more } });

describe('what is said of each plant', () => {
  const one = (ph: Ph, tree: object = {}): string => phNotices([at('A', 'bank', ph, tree)]).map((n) => `${n.code} ${n.severity}`).join();
  test('nothing where no range is held, or where it suits', () => {
    expect(phNotices([plantOf('A'), at('B', 'bank', as('leave', 'inside'))])).toEqual([]);
  });
  test('a note where it is left alone, a warning where something is done, cannot be, or the plant suffers', () => {
    expect([one(as('leave', 'near-goal')), one(as('leave', 'retest')), one(as('leave', 'stopped-lime'))]).toEqual(['ph-near-goal note', 'ph-retest note', 'ph-stopped-lime note']);
    expect([one(as('leave', 'beyond')), one(as('leave', 'over-acid')), one(as('lime', 'lab')), one(as('cannot', 'no-rate'))]).toEqual(['ph-beyond warning', 'ph-over-acid warning', 'ph-lab warning', 'ph-no-rate warning']);
  });
  test('before planting: how large the bed is, and whether sulphur comes in time', () => {
    const sulphur = as('sulphur', 'sulphur');
    const blue = { crop: 'blueberry' };
    const open = { from: '2026-04-01', until: '2026-05-01', phase: null, why: fig(1, 'day', 'time') };
    expect([one({ ...sulphur, bed: null }, blue), one({ ...as('lime', 'lab'), bed: null })]).toEqual(['ph-bed-missing warning', 'ph-bed-missing warning']);
    const bed = fig(2, 'm2', 'crown');
    expect([one({ ...sulphur, bed }, blue), one({ ...sulphur, bed, window: open }, blue), one(sulphur, blue)]).toEqual(['ph-sulphur-late warning', 'ph-sulphur-bed warning', 'ph-sulphur warning']);
    // Lime has no months to wait: without a window it is told as ever.
    expect(one({ ...as('lime', 'lab'), bed })).toBe('ph-lab warning');
  });
  test('trees of a zone of which the same is said are named together; another zone, or another number in the sentence, is told apart', () => {
    const plans = [at('A', 'bank'), at('B', 'hill'), at('C', 'bank', { plan: { suits: { low: 6, high: 6.5, absolute: null, limeBelow: null }, goal: fig(6.2, 'pH', 'soil') } }), at('D', 'bank', { plan: { suits: { low: 5.8, high: 7, absolute: null, limeBelow: null } } })];
    expect(phNotices(plans).map((n) => [n.code, n.facts.tree, n.facts.low])).toEqual([['ph-near-goal', 'A, C', 6], ['ph-near-goal', 'B', 6], ['ph-near-goal', 'D', 5.8]]);
  });
});

describe('plants without a range', () => {
  const bank = zoneOf('bank', { now: fig(5.4, 'pH', 'soil') });
  const bare = (name: string, tree: object = {}): TreePlan => plantOf(name, { tree });
  test('are named in their zone, with its pH', () => {
    const plans = [bare('A', { zone: 'bank' }), at('B', 'bank'), bare('C', { zone: 'hill' }), bare('D', { zone: 'bank', tub: 40 }), bare('E', { zone: 'bank' })];
    expect(told(withoutRange(plans, bank, [bank, zoneOf('hill')]))).toEqual([['ph-no-range', 'note', { zone: 'bank', tree: 'A, E', now: 5.4 }]]);
  });
  test('a plant that names no zone stands in the only one', () => {
    expect(codes(withoutRange([bare('A')], bank, [bank]))).toEqual(['ph-no-range']);
    expect(withoutRange([bare('A')], bank, [bank, zoneOf('hill')])).toEqual([]);
  });
  test('nothing is said of a soil without a pH, or where all have a range', () => {
    const none = zoneOf('bank');
    expect([withoutRange([bare('A', { zone: 'bank' })], none, [none]), withoutRange([at('B', 'bank')], bank, [bank])]).toEqual([[], []]);
  });
});

describe('the lab\'s own lime where none is planned', () => {
  const rate = (value: number, unit = 'g/m2') => zoneOf('bank', { now: fig(6.123, 'pH', 'soil'), lime: fig(value, unit, 'lime') });
  const plans = [at('A', 'bank', as('leave', 'none-needed')), at('B', 'bank', as('lime', 'lab')), at('C', 'hill'), at('D', 'bank', as('leave', 'retest')), at('E', 'bank', as('leave', 'stopped-lime')), at('F', 'bank'), plantOf('G', { tree: { zone: 'bank' } })];
  test('is told of the plants that get none, but where it waits for a test or for the salts, which say so themselves', () => {
    expect(told(labLimeLeft(plans, rate(150), orchardOf()))).toEqual([['ph-lab-left', 'note', { zone: 'bank', tree: 'A, F', rate: '150 g/m²', now: 6.12 }]]);
  });
  test('in the grower\'s unit: two tons (4,000 lb) to the acre of 43,560 sq ft are 91.8 lb to a thousand', () => {
    expect(labLimeLeft(plans, rate(2, 'ton/acre'), orchardOf({ where: { units: 'us' } }))[0]!.facts.rate).toBe('91.8 lb/1,000 sq ft');
  });
  test('nothing where the lab gives none, or all get it', () => {
    expect([labLimeLeft(plans, rate(0), orchardOf()), labLimeLeft(plans, zoneOf('bank', {}), orchardOf()), labLimeLeft(plans, zoneOf('bank'), orchardOf()), labLimeLeft([plans[1]!], rate(150), orchardOf())]).toEqual([[], [], [], []]);
  });
});

describe('lime by another place\'s table', () => {
  const far = (source?: string) => ({ by: 'smp', ...(source ? { elsewhere: { source, at: 'test', mark: 'read' } } : {}) });
  const limed = (name: string, zone: string, source?: string): TreePlan => at(name, zone, as('lime', 'smp', { dugIn: far(source) }));
  const bank = zoneOf('bank', {});
  test('names the plants of the zone, the place and the publisher', () => {
    const plans = [limed('A', 'bank', 'tri-state-1995'), limed('B', 'bank', 'tri-state-1995'), limed('C', 'hill', 'tri-state-1995'), limed('D', 'bank'), at('E', 'bank', as('leave', 'none-needed', { dugIn: far('tri-state-1995') })), plantOf('F', { tree: { zone: 'bank' } })];
    expect(told(limeElsewhere(plans, bank, orchardOf()))).toEqual([['ph-lime-elsewhere', 'note', { zone: 'bank', tree: 'A, B', where: 'Ohio, US', source: sourceOf('tri-state-1995')!.publisher }]]);
  });
  test('a source that is not held goes by its own name; nothing where the table is the place\'s own', () => {
    expect(limeElsewhere([limed('A', 'bank', 'a-page')], bank, orchardOf())[0]!.facts.source).toBe('a-page');
    expect([limeElsewhere([limed('A', 'bank')], bank, orchardOf()), limeElsewhere([], bank, orchardOf())]).toEqual([[], []]);
  });
});

describe('one soil for plants that want two', () => {
  const wants = (name: string, low: number, high: number, zone = 'bank'): TreePlan => at(name, zone, { plan: { suits: { low, high, absolute: null, limeBelow: null } } });
  const of = (...plans: TreePlan[]): [string, string, object][] => told(twoWants(plans, zoneOf('bank', {})));
  test('the acid ones are told from the others, with what suits all of the acid ones at once', () => {
    // FAO EcoCrop: cranberry 5 to 5.5; blueberry as it is acted on, 4.0 to 5.3. Both live in one bed of 5.0 to 5.3.
    expect(of(wants('Apple', 6, 7), wants('Blue', 4, 5.3), wants('Cran', 5, 5.5), wants('Fig', 6.2, 7))).toEqual([['ph-zone-two-wants', 'warning', { zone: 'bank', tree: 'Blue, Cran, Apple, Fig', acid: 'Blue, Cran', others: 'Apple, Fig', low: 5, high: 5.3, least: 6 }]]);
  });
  test('what can live with the acid ones is named with neither', () => {
    // A plant from 5.2 on meets the blueberry, and the apple too.
    expect(of(wants('Blue', 4, 5.3), wants('Plum', 5.2, 7), wants('Apple', 6, 7))[0]![2]).toEqual({ zone: 'bank', tree: 'Blue, Apple', acid: 'Blue', others: 'Apple', low: 4, high: 5.3, least: 6 });
    // One whose best ends where the others begin can have both.
    expect(of(wants('Blue', 4, 5.3), wants('Nut', 5, 6), wants('Apple', 6, 7))[0]![2]).toMatchObject({ acid: 'Blue', others: 'Apple' });
  });
  test('ranges that meet in a point suit one soil', () => {
    expect([of(wants('A', 5, 6), wants('B', 6, 7)), of(wants('A', 5, 6)), of()]).toEqual([[], [], []]);
  });
  test('another zone\'s plants and those without a range do not count', () => {
    expect(of(wants('Blue', 4, 5.3), wants('Apple', 6, 7, 'hill'), plantOf('X', { tree: { zone: 'bank' } }))).toEqual([]);
  });
});

describe('what is asked', () => {
  const texture = at('A', 'bank', as('cannot', 'texture'));
  const sulphur = at('A', 'bank', as('sulphur', 'sulphur'));
  const of = (plans: readonly TreePlan[], ph: object | null): string[] => phQuestions(plans, [zoneOf('bank', ph), zoneOf('hill', null)]).map((q) => q.code);
  const smp = { buffer: { value: 6.2, test: 'smp' }, texture: 'loam' };
  test('the name of a buffer, where the lime would otherwise go by texture', () => {
    const unnamed = { buffer: { value: 6.2, test: null }, texture: 'loam' };
    expect(phQuestions([texture], [zoneOf('bank', unnamed)])).toEqual([{ code: 'buffer-method', about: 'bank', facts: { zone: 'bank', value: 6.2 }, choices: ['SMP', 'Sikora', 'Mehlich buffer', 'Adams-Evans'], changes: 'changes-lime' }]);
    expect([of([texture], smp), of([sulphur], unnamed), of([at('A', 'hill', as('cannot', 'texture'))], unnamed), of([plantOf('A')], unnamed), of([texture], { texture: 'loam' })]).toEqual([[], [], [], [], []]);
  });
  test('the texture, where lime goes by it, or sulphur does and no exchange capacity tells it', () => {
    expect(phQuestions([texture], [zoneOf('bank', {})])).toEqual([{ code: 'texture-missing', about: 'bank', facts: { zone: 'bank' }, choices: ['sand', 'sandy loam', 'loam', 'clay'], changes: 'changes-lime' }]);
    expect([of([sulphur], {}), of([sulphur], { cec: 8 }), of([texture], { cec: 8 }), of([texture], { texture: 'loam' }), of([at('A', 'bank')], {}), of([at('A', 'hill', as('lime', 'texture'))], {}), of([texture], null), of([plantOf('A')], {})])
      .toEqual([['texture-missing'], [], ['texture-missing'], [], [], [], [], []]);
  });
  test('several zones, the buffers before the textures', () => {
    const zones = [zoneOf('bank', { buffer: { value: 6.2, test: null } }), zoneOf('hill', { buffer: { value: 6.4, test: null } })];
    expect(phQuestions([texture, at('B', 'hill', as('cannot', 'texture'))], zones).map((q) => `${q.code} ${q.about}`)).toEqual(['buffer-method bank', 'buffer-method hill', 'texture-missing bank', 'texture-missing hill']);
  });
});
