/**
 * Lime, sulphur or a reasoned no, for one crop on one soil: inside its range leave it alone; below, this year's surface dose of lime;
 * above, sulphur where it can work, else a no with its numbers. Nothing follows a dose before a retest.
 */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Facts } from '../reason/notice.ts';
import type { Crop } from '../tables/crops.ts';
import { LIME_LEAST_WAY, PLANTING_DEPTH, TEST_DISAGREES } from '../tables/lime.ts';
import { OVER_ACID } from '../tables/ph-ranges.ts';
import { FREE_LIME_PH, SULPHUR_HOPELESS, SULPHUR_TIME, SULPHUR_WARMTH } from '../tables/sulphur.ts';
import { convert } from '../units/units.ts';
import type { Instead } from './acidifiers.ts';
import { chelateFor, insteadOf } from './acidifiers.ts';
import type { LimeNeed, NoLime } from './lime.ts';
import { limeDose, limeNeed, limeRates } from './lime.ts';
import type { PhSoil } from './soil.ts';
import { freeLime, sulphurDose, sulphurLimit, sulphurRates } from './sulphur.ts';
import type { Suits } from './suits.ts';
import { goalOf, suitsOf } from './suits.ts';

export type PhReason = 'inside' | 'goal-is-now' | 'retest' | 'tolerated' | 'tolerated-low' | 'beyond' | 'acid-enough' | 'over-acid' | 'stopped' | 'stopped-lime' | 'near-goal' | LimeNeed['by'] | NoLime | 'none-needed' | 'test-disagrees' | 'sulphur' | 'free-lime' | 'too-high';
type Rate = Figure<'g/m2', 'lime'> | Figure<'g/m2', 'sulphur'>;

export type PhPlan = {
  readonly verdict: 'leave' | 'lime' | 'sulphur' | 'cannot';
  readonly reason: PhReason;
  readonly now: Figure<'pH', 'soil'>;
  readonly goal: Figure<'pH', 'soil'>;
  readonly suits: Suits;
  /** This year's dose of the product; null where nothing is spread. */
  readonly dose: Rate | null;
  readonly dugIn: LimeNeed | null;
  /** Least and most that publications give: as it goes on for lime, for the whole way for sulphur. */
  readonly range: readonly [Rate, Rate] | null;
  /** Sulphur that free lime would swallow, and the years it would take, where the answer is no. */
  readonly swallowed: { readonly sulphur: Figure<'lb/acre', 'sulphur'>; readonly percent: number; readonly years: number } | null;
  /** All published rates behind a range. */
  readonly rates: readonly Rate[];
  /** Other acidifiers as strong as this year's sulphur. */
  readonly instead: readonly Instead[];
};

export type PhAsk = {
  /** Both null for fruit trees in general. */
  readonly crop: Crop | null;
  readonly word: string | null;
  readonly soil: PhSoil;
  readonly goal?: number;
  /** Of the product at hand: calcium carbonate equivalent, or sulphur, as a share of one. */
  readonly strength: { readonly lime: number; readonly sulphur: number };
  /** Country, with its state where that is told, as "US-OH": whose own methods and ranges lead. */
  readonly region: string | null;
  /** Lime is dug in before planting; under what stands it stays on the surface. */
  readonly digIn?: boolean;
  /** Whether salts or sodium have to be settled before anything else is spread. */
  readonly stopped: boolean;
  /** Whether lime or sulphur went on and no later sample tells what it did. */
  readonly awaitsRetest: boolean;
};

/** Null for a crop that no range is held for. */
export function phPlan(ask: PhAsk): PhPlan | null {
  const { soil } = ask;
  const suits = suitsOf(ask);
  if (!suits) return null;
  const now = soil.now;
  const goal = ask.goal === undefined ? goalOf(suits, now.value) : figure(ask.goal, 'pH', 'soil', 'told', { source: 'grower', at: 'goal', mark: 'read' });
  const base = { now, goal, suits, dose: null, dugIn: null, range: null, swallowed: null, rates: [], instead: [] };
  const way = goal.value - now.value;
  if (Math.abs(way) < 1e-9) return { ...base, verdict: 'leave', reason: ask.goal === undefined ? 'inside' : 'goal-is-now' };
  if (ask.awaitsRetest) return { ...base, verdict: 'leave', reason: 'retest' };
  const left = ask.goal === undefined ? leftAlone(ask, suits) : null;
  if (left) return { ...base, verdict: 'leave', reason: left };
  return way > 0 ? { ...base, ...limed(ask, goal, suits) } : { ...base, ...acidified(ask, goal, suits) };
}

/** A bush that wants acid soil is never limed; a tree is not above the pH from which its own place limes. */
function leftAlone({ crop, soil: { now } }: PhAsk, { low, limeBelow }: Suits): PhReason | null {
  if (now.value >= low) return null;
  if (crop === 'blueberry') return now.value < OVER_ACID.value ? 'over-acid' : 'acid-enough';
  return limeBelow && now.value >= limeBelow.value ? 'tolerated-low' : null;
}

/** The key of the sentence that says a plan: a tree that stands too high is spoken of otherwise than a bush that wants acid soil, and a bush far from it otherwise than one that is near. */
export function phSentence(plan: PhPlan, crop: Crop | null, bed = false): `ph-${PhReason}` | 'ph-too-high-tree' | 'ph-free-lime-tree' | 'ph-sulphur-hard' | 'ph-sulphur-bed' {
  if (crop !== 'blueberry' && (plan.reason === 'too-high' || plan.reason === 'free-lime')) return `ph-${plan.reason}-tree`;
  if (bed && plan.reason === 'sulphur') return 'ph-sulphur-bed';
  return plan.reason === 'sulphur' && plan.now.value > SULPHUR_HOPELESS.hard ? 'ph-sulphur-hard' : `ph-${plan.reason}`;
}

/** Of hundreds of years nobody knows the last. */
const about = (years: number): number => (years < 100 ? years : Math.round(years / 10) * 10);

/** What that sentence is filled with. */
export function phFacts({ now, goal, suits, swallowed, range }: PhPlan, tree: string): Facts {
  const shown = (value: number): number => Math.round(value * 100) / 100;
  return {
    tree, now: shown(now.value), goal: shown(goal.value), low: suits.low, high: suits.high, years: swallowed ? about(swallowed.years) : (range ? Math.ceil(range[0].value / sulphurLimit().value) : 0), percent: swallowed?.percent ?? 0,
    least: suits.absolute?.[0].value ?? '', most: suits.absolute?.[1].value ?? '', below: suits.limeBelow?.value ?? '', chelate: chelateFor(now.value), soonest: SULPHUR_TIME.months[0], latest: SULPHUR_TIME.months[1], warm: SULPHUR_WARMTH.fahrenheit, celsius: Math.round((SULPHUR_WARMTH.fahrenheit - 32) / 1.8),
  };
}

/** Metres that the ground of a tree to come is dug. */
export const plantingDepth = (): number => convert(PLANTING_DEPTH.value, PLANTING_DEPTH.unit, 'm');

type Found = Pick<PhPlan, 'verdict' | 'reason'> & Partial<PhPlan>;

function limed({ soil: told, strength, region, goal: asked, digIn = false, stopped }: PhAsk, wanted: Figure<'pH', 'soil'>, suits: Suits): Found {
  if (stopped) return { verdict: 'leave', reason: 'stopped-lime' };
  const now = told.now.value;
  if (asked === undefined && wanted.value - now < LIME_LEAST_WAY.value - 1e-9) return { verdict: 'leave', reason: 'near-goal' };
  // A tree is planted in a whole spit, however shallow the sample; the lab's own rate is for its own layer.
  const soil = digIn && !told.lime && told.depthM !== null ? { ...told, depthM: Math.max(told.depthM, plantingDepth()) } : told;
  const need = limeNeed(soil, wanted, region, { low: asked ?? suits.low, high: asked ?? suits.high });
  if (typeof need === 'string') return { verdict: 'cannot', reason: need };
  const { goal } = need;
  const dose = limeDose(need, strength.lime, soil, digIn);
  if (dose.value <= 0) return { verdict: 'leave', reason: suits.low - now > TEST_DISAGREES.value ? 'test-disagrees' : 'none-needed', goal, dugIn: need };
  const rates = limeRates(need, digIn);
  const sorted = [...rates].sort((a, b) => a.value - b.value);
  return { verdict: 'lime', reason: need.by, goal, dose, dugIn: need, range: sorted.length > 1 ? [sorted[0]!, sorted.at(-1)!] : null, rates: sorted };
}

function acidified({ crop, soil, strength, goal: asked, stopped, digIn = false }: PhAsk, goal: Figure<'pH', 'soil'>, { absolute, high }: Suits): Found {
  const { all: rates, followed } = sulphurRates(soil, goal, crop);
  const range = rates.length > 0 ? [rates[0]!, rates.at(-1)!] as const : null;
  const now = soil.now.value;
  const limy = (soil.carbonate ?? 0) > 0;
  const tooHigh = now > (crop === 'blueberry' ? SULPHUR_HOPELESS.value : FREE_LIME_PH.value);
  if (limy || tooHigh) {
    const percent = limy ? soil.carbonate! : 1;
    const sulphur = freeLime(percent);
    const years = Math.ceil(convert(sulphur.value, sulphur.unit, 'g/m2') / sulphurLimit().value);
    return { verdict: 'cannot', reason: limy ? 'free-lime' : 'too-high', range, rates, swallowed: { sulphur, percent, years } };
  }
  if (crop !== 'blueberry' && asked === undefined) return { verdict: 'leave', reason: absolute && now > Math.max(absolute[1].value, high) ? 'beyond' : 'tolerated' };
  if (stopped) return { verdict: 'leave', reason: 'stopped', range, rates };
  if (!followed) return { verdict: 'cannot', reason: 'no-rate' };
  return { verdict: 'sulphur', reason: 'sulphur', range, rates, dose: sulphurDose(followed, strength.sulphur, digIn), instead: insteadOf(sulphurDose(followed, 1, digIn), crop, goal.value) };
}
