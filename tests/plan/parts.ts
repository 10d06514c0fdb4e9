/** Shared by the tests that ask for single notices: plants of a plan as plain data, with no more in them than what is said of them goes by. */
import type { AmendmentBag } from '../../src/bags/amend.ts';
import type { ZoneSoil } from '../../src/gather.ts';
import type { Orchard } from '../../src/orchard/load.ts';
import type { PhPlan } from '../../src/ph/ph.ts';
import type { Amended, TreePlan } from '../../src/planned.ts';
import type { Figure } from '../../src/reason/figure.ts';
import { figure } from '../../src/reason/figure.ts';
import type { Notice } from '../../src/reason/notice.ts';
import type { Season } from '../../src/when/season.ts';
import { feed } from '../bags/parts.ts';

const cite = { source: 'grower', at: 'test', mark: 'read' } as const;
export const fig = (value: number, unit = 'g', of = 'N', more: { step?: string; from?: readonly Figure[]; source?: string } = {}): Figure =>
  figure(value, unit as 'g', of as 'N', (more.step ?? 'told') as 'told', { ...cite, ...(more.source === undefined ? {} : { source: more.source }) }, more.from ?? []);

type Deep<T> = { readonly [K in keyof T]?: unknown };

/** An orchard in Ohio that reads in metric, unless it is told otherwise. */
export const orchardOf = ({ where, ...more }: Deep<Orchard> = {}): Orchard => ({
  shed: [], store: [], never: [], zones: [], trees: [], rules: [], water: null, ...more,
  where: { text: 'Ohio, US', country: 'US', state: 'ohio', region: 'US-OH', south: false, units: 'metric', paper: 'a4', language: 'en-US', mildWinters: null, ...(where as object | undefined) },
}) as Orchard;

export const seasonAt = (today = '2026-03-14', assumed: Season['assumed'] = []): Season => ({ year: 2026, today, assumed }) as unknown as Season;

type Made = { tree?: object; need?: object; facts?: object } & Deep<Omit<TreePlan, 'tree' | 'need' | 'facts'>>;

/** A bearing apple with soil under it, a crown of ten square metres, a need of 100 g of N and nothing else, and nothing short. */
export function plantOf(name: string, { tree, need, facts, ...more }: Made = {}): TreePlan {
  const own = { name, count: 1, word: 'apple', crop: 'apple', leaf: [], flags: [], ...tree };
  return {
    tree: own, feeds: [], mostPlanned: 0, dilute: null, tooLittle: false, fed: [], ph: null, ring: null,
    supplied: { N: 100, P2O5: 0, K2O: 0 }, over: { N: 0, P2O5: 0, K2O: 0 }, short: { N: 0, P2O5: 0, K2O: 0 },
    last: { day: '2026-07-15', why: fig(0, 'day', 'time'), printed: false }, ...more,
    facts: { tree: own, crop: own.crop, season: 2026, years: 11, crown: { area: fig(10, 'm2', 'crown'), share: null, guessed: false }, soil: { rated: [], heaviness: null }, advice: [], byLab: false, ...facts },
    need: { verdict: 'feed', stops: [], N: fig(100), P2O5: fig(0, 'g', 'P2O5'), K2O: fig(0, 'g', 'K2O'), MgO: null, nitrogen: { lead: null, half: null }, ...need },
  } as unknown as TreePlan;
}

/** pH 5.5, where 6.0 to 7.0 suit. */
export const phOf = (zone: string | null, { plan, ...more }: Deep<Omit<Amended, 'plan'>> & { plan?: Deep<PhPlan> } = {}): Amended => ({
  zone, g: 0, bag: null, window: null, last: null, curve: [], ...more,
  plan: { verdict: 'leave', reason: 'near-goal', now: fig(5.5, 'pH', 'soil'), goal: fig(6.5, 'pH', 'soil'), suits: { low: 6, high: 7, absolute: null, limeBelow: null }, dose: null, dugIn: null, range: null, swallowed: null, rates: [], instead: [], ...plan },
}) as unknown as Amended;

/** A zone by its name; of its soil only what is given. */
export const zoneOf = (zone: string, ph: object | null = null, more: Deep<ZoneSoil> = {}): ZoneSoil =>
  ({ zone, earlier: [], soil: { rated: [], heaviness: null }, advice: [], byLab: false, ...more, ph: ph && { now: fig(5.5, 'pH', 'soil'), buffer: null, lime: null, texture: null, cec: null, magnesium: null, ...ph } }) as unknown as ZoneSoil;

/** A bag of lime of pure carbonate, of a plain material. */
export const limeOf = (label: string, { amends, material, notes }: { amends?: object; material?: object; notes?: readonly unknown[] } = {}): AmendmentBag =>
  ({ ...feed(label, [0, 0, 0]), amends: { kind: 'lime', strength: 1, dolomitic: false, burns: false, lime: { notes: notes ?? [], material: { ...material } }, ...amends } }) as unknown as AmendmentBag;

export const told = (notices: readonly Notice[]): [string, string, object][] => notices.map((n) => [n.code, n.severity, n.facts]);
export const codes = (notices: readonly Notice[]): string[] => notices.map((n) => n.code);
