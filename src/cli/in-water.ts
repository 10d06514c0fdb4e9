/** A feed in water, for `weigh "150 ppm N" BAG…`: its words, and why it is refused. */
import { dissolves, inOneCan, isSoluble, undissolved } from '../bags/strength.ts';
import type { Grams, Weighed } from '../bags/weigh.ts';
import { bagName } from '../orchard/bag.ts';
import { mixingNotice } from '../orchard/mixing.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { POT_STRENGTH } from '../tables/solubility.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { convert } from '../units/units.ts';
import type { System } from '../words/show.ts';
import { showVolume } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';

type Used = Weighed['bags'];

/** Two figures: a letter scale shows no more. */
const two = (x: number): number => Number(x.toPrecision(2));

const ppm = (g: number, waterL: number): number => Math.round((1000 * g) / waterL);

/** More than dissolves, and pairs that cloud the can. */
export function solutionFaults(used: Used, waterL: number): Notice[] {
  return [
    ...used.flatMap(({ bag, g }) => {
      const most = dissolves(bag);
      const why = undissolved(bag);
      if (why) return [notice(why === 'slow' ? 'solution-slow' : 'solution-organic', 'error', { bag: bagName(bag) })];
      return most !== null && g / waterL > most ? [notice('solution-limit', 'error', { bag: bagName(bag), most, read: two(g / waterL) })] : [];
    }),
    ...inOneCan(used.map((w) => w.bag)).map((f): Notice => ({ ...mixingNotice(f), severity: 'error' })),
  ];
}

export function solutionNotes(used: Used, { supplied }: Weighed, waterL: number): Notice[] {
  const n = ppm(supplied.N, waterL);
  return [
    ...used.filter(({ bag }) => !isSoluble(bag)).map(({ bag }) => notice('solution-grains', 'note', { bag: bagName(bag) })),
    ...(n > POT_STRENGTH.high ? [notice('solution-strong', 'warning', { low: POT_STRENGTH.low, high: POT_STRENGTH.high, read: n })] : []),
  ];
}

const GALLON_L = convert(1, 'gal', 'L');

export function inWaterText({ bags, supplied, over, short }: Weighed, waterL: number, system: System, L: Language): string[] {
  const water = system === 'us' ? `${two(waterL / GALLON_L)} gal` : `${two(waterL)} L`;
  const lines = bags.map(({ bag, g, mL }) => {
    if (g <= 0) return say(L, 'bags', 'none-of', { bag: bagName(bag) });
    const [much, unit] = bag.liquid && mL !== null ? [mL, 'mL'] : [g, 'g'];
    if (waterL === 1) return say(L, 'bags', 'in-each', { each: two(much), gallon: two(much * GALLON_L), unit, bag: bagName(bag) });
    return say(L, 'bags', 'in-water', { amount: `${two(much)} ${unit}`, bag: bagName(bag), water, measure: mL === null || unit === 'mL' ? '' : showVolume(mL, system, L) });
  });
  const list = NUTRIENTS.filter((n) => supplied[n] > 0).map((nutrient) => say(L, 'bags', 'ppm', { n: ppm(supplied[nutrient], waterL), nutrient })).join(', ');
  const off = (grams: Grams, key: 'over' | 'short'): string[] => NUTRIENTS.filter((n) => grams[n] > 0).map((nutrient) => say(L, 'bags', key, { amount: `${ppm(grams[nutrient], waterL)} ppm`, nutrient }));
  const missed = [...off(over, 'over'), ...off(short, 'short')].join(', ');
  return [...lines, ...(missed === '' ? [] : [say(L, 'bags', 'nearest', { list: missed })]), say(L, 'bags', 'water-brings', { list })];
}
