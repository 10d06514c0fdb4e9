// Shared by the tests that ask the parts of a sheet themselves: plans made by hand, with only what a sheet reads, and the elements of a drawing.
import type { Feed } from '../../src/bags/doses.ts';
import type { Dilute } from '../../src/bags/dilute.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import type { Plan, TreePlan, WorkingDay } from '../../src/plan.ts';
import type { Amended } from '../../src/planned.ts';
import type { Figure, Mark } from '../../src/reason/figure.ts';
import { figure } from '../../src/reason/figure.ts';
import { say } from '../../src/words/words.ts';
import type { Words } from '../../src/sheet/back.ts';

export const w: Words = (key, facts) => say('en-US', 'sheet', key, facts);
export const fig = (value: number, mark: Mark = 'read', source = 'made'): Figure => figure(value, 'g', 'N', 'told', { source, at: 'made', mark });
export const NONE = { N: 0, P2O5: 0, K2O: 0 };

type Loose<T> = { readonly [K in keyof T]?: unknown };
/** A tree four metres wide, well fed with 100 g of nitrogen, unless told otherwise. */
export function tree(name: string, more: Loose<TreePlan['tree']> = {}, rest: Loose<Omit<TreePlan, 'need' | 'facts'>> & { need?: object; nitrogen?: object; facts?: object } = {}): TreePlan {
  const { need, nitrogen, facts, ...own } = rest;
  return {
    tree: { name, crop: 'apple', count: 1, flags: [], ...more }, facts: { crop: more.crop ?? 'apple', crown: { diameter: fig(4), guessed: false }, ...facts },
    need: { verdict: 'feed', stops: [], N: fig(100), P2O5: fig(0), K2O: fig(0), nitrogen: { none: null, followed: null, ifBelow: null, ...nitrogen }, leaflets: [], ...need },
    ring: null, last: { day: '2026-07-20', printed: false }, feeds: [], dilute: null, tooLittle: false, fed: [], supplied: NONE, over: NONE, short: NONE, ph: null, ...own,
  } as unknown as TreePlan;
}

export const RING = { from: fig(0.6), to: fig(2.5) } as unknown as NonNullable<Feed['ring']>;
export const dose = (bag: Bag, g: number, more: Loose<Feed> = {}): Feed => ({ bag, serves: 'N', g, planned: { step: 'dose' }, mL: null, window: { from: '2026-04-10', until: '2026-04-25' }, ring: RING, ...more }) as unknown as Feed;

const SEASON = { year: 2026, today: '2026-03-14', budBreak: '2026-04-14', firstFrost: '2026-10-12', lastNitrogen: '2026-07-20', lastNitrogenEvergreen: '2026-08-10', lastFigure: fig(-84), assumed: [] };
export const day = (number: number, doses: readonly (readonly [TreePlan, Feed])[], more: Loose<WorkingDay> = {}): WorkingDay =>
  ({ number, from: '2026-04-10', until: '2026-04-25', phase: null, doses: doses.map(([plan, feed]) => ({ plan, feed })), ...more }) as WorkingDay;
export const zone = (name: string, { taken, phosphorus = 'at' }: { taken?: string; phosphorus?: string } = {}): Plan['zones'][number] =>
  ({ zone: name, sample: { taken }, soil: { rated: [{ reading: { item: 'phosphorus' }, target: phosphorus }] } }) as unknown as Plan['zones'][number];

/** Ohio in grams and metres. */
const WHERE = { text: 'Ohio, US', country: 'US', region: 'US-OH', south: false, units: 'metric', language: 'en-US' };
export function plan(trees: readonly TreePlan[], more: Loose<Omit<Plan, 'orchard' | 'season'>> & { orchard?: object; where?: object; season?: object } = {}): Plan {
  const { orchard, where, season, ...own } = more;
  return { orchard: { name: 'Hill', where: { ...WHERE, ...where }, shed: [], store: [], never: [], ...orchard }, season: { ...SEASON, ...season }, sure: true, zones: [], trees, days: [], buy: [], notices: [], questions: [], ...own } as unknown as Plan;
}

/** Twelve grams in nine litres every week of spring. */
export const can = (bag: Bag, more: Loose<Dilute> = {}): Dilute => ({ bag, g: fig(12), waterL: 9, weeks: 1, times: 16, from: '2026-04-01', until: '2026-07-15', ...more }) as Dilute;
/** 700 g of lime on a ring from 60 cm to 2.5 m, in late autumn. */
export const limed = (more: Loose<Omit<Amended, 'plan'>> & { plan?: object } = {}): Amended => {
  const { plan: own, ...rest } = more;
  return { zone: 'hill', curve: [], bag: null, g: 700, ring: RING, window: { from: '2026-10-15', until: '2026-12-14' }, last: null, plan: { verdict: 'lime', reason: 'buffer', now: fig(5.4), goal: fig(6.5), suits: { low: 6, high: 7 }, dose: fig(200), dugIn: null, ...own }, ...rest } as unknown as Amended;
};

export type Element = { readonly name: string; readonly text: string; readonly [attribute: string]: string };
/** The elements of a drawing in their order, with their attributes and the text in them. */
export const elements = (svg: string): Element[] => [...svg.matchAll(/<(\w+)((?: [\w-]+="[^"]*")*)\/?>([^<]*)/g)].map(([, name, attributes, text]) => ({ name: name!, text: text!, ...Object.fromEntries([...attributes!.matchAll(/ ([\w-]+)="([^"]*)"/g)].map((m) => [m[1], m[2]])) }));
export const named = (svg: string, name: string): Element[] => elements(svg).filter((e) => e.name === name);
/** The paths as they are drawn. */
export const paths = (svg: string): string[] => elements(svg).filter((e) => e.name === 'path').map((e) => e.d!);
