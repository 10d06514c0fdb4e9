/** Whose time of feeding leads: the place's own row, a neighbour's that goes by what the tree does, else none and the usual windows hold. */
import type { Otherwise } from '../reason/figure.ts';
import { BORDERS } from '../tables/places.ts';
import type { Rule } from '../tables/rule.ts';
import { AFTER_HARVEST } from '../tables/timing.ts';
import type { TimedDose, Timing } from '../tables/windows.ts';
import { SAND_SPLIT, TIMINGS } from '../tables/windows.ts';
import type { Facts } from './facts.ts';

const isOf = (t: Timing, f: Facts): boolean => t.crops.includes(f.crop) && (t.kinds === undefined || t.kinds.includes(f.tree.word));
const fits = (t: Timing, f: Facts): boolean =>
  isOf(t, f) && (t.bearing === undefined || t.bearing === !f.young) && (t.years === undefined || (f.years !== null && f.years >= t.years[0] && f.years <= t.years[1]));
const isPlaced = (t: Timing): boolean => t.doses.some((d) => d.dates !== undefined);
/** A row for a kind before one for a crop, one for few crops before one for all; of those alike that of the publication which leads. */
const narrowest = (all: readonly Timing[], source?: string): Timing | null => {
  const breadth = (t: Timing): number => (t.kinds ? 0 : t.crops.length) + (t.cite.source === source ? 0 : 0.5);
  return [...all].sort((a, b) => breadth(a) - breadth(b))[0] ?? null;
};

/** Strawberries of June are fed when they are picked. */
const picked = (rule: Rule): Timing => ({ id: `${rule.id}.picked`, crops: rule.crops, region: rule.region, said: 'after-picking', doses: [{ phase: 'after-harvest', span: [AFTER_HARVEST.from, AFTER_HARVEST.until] }], cite: AFTER_HARVEST.cite });

/** The row that leads beside the rule that leads; a tub goes by none. */
export function timingOf(f: Facts, rule: Rule | null): Timing | null {
  if (f.tree.tub !== undefined) return null;
  if (rule?.when === 'after-harvest') return picked(rule);
  const { region, mildWinters } = f.where;
  const all = TIMINGS.filter((t) => fits(t, f));
  const here = all.filter((t) => t.region === region);
  const own = narrowest(here.filter((t) => t.label === undefined || t.cite.source === rule?.source), rule?.source);
  if (own) return own;
  const near = here.length > 0 ? [] : (BORDERS[region ?? ''] ?? []).map((r) => narrowest(all.filter((t) => t.region === r && t.label === undefined && !isPlaced(t)))).filter((t) => t !== null);
  return near[0] ?? (mildWinters === false ? null : all.find((t) => t.everywhere) ?? null);
}

/** What other publications say, those for the crop alone first; weak pages only where they are the place's own. */
export function othersOf(f: Facts, leading: Timing | null): Otherwise[] {
  const here = f.where.region;
  return TIMINGS.filter((t) => isOf(t, f) && t.said !== leading?.said && (t.label !== 'weak' || t.region === here)).sort((a, b) => a.crops.length - b.crops.length)
    .map(({ said, region, label }) => ({ said, region, ...(label ? { label } : {}) }));
}

const lostCrop = (f: Facts): boolean => f.tree.fruit?.said === 'none' && f.tree.fruit.year === f.season;

/** The printed doses of this tree: those for light soil there, and none after picking where there was nothing to pick. */
export const printedDoses = (t: Timing, f: Facts): readonly TimedDose[] =>
  (f.soil?.heaviness === 'light' && t.sand ? t.sand : t.doses).filter((d) => d.phase !== 'after-crop' || !lostCrop(f));

/** Doses a year: as the rule prints, else as its place's row, else halves on light soil while there is a crop to feed. */
export function dosesAYear(f: Facts, rule: Rule | null): number {
  if (rule?.doses !== undefined) return rule.doses;
  const timing = timingOf(f, rule);
  if (timing?.splits) return printedDoses(timing, f).length;
  return f.soil?.heaviness === 'light' && SAND_SPLIT.crops.includes(f.crop) && !lostCrop(f) ? SAND_SPLIT.doses : 1;
}
