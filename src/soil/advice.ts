/**
 * What the lab itself recommends: amounts of a nutrient or of a product of three numbers, for an area or a tree.
 * Taken from the lines of a sample that are no readings; a line that names no amount, no area or no nutrient gives nothing.
 */
import type { Unit } from '../units/units.ts';
import { groundIn } from './ground.ts';
import type { Sample } from './reading.ts';

export type AdviceOf = 'N' | 'P2O5' | 'K2O' | 'P' | 'K';
/** One amount: of one nutrient in `unit` for an area, or for one tree where `per` is a tree. `product` is what it was told in. */
export type Advice = { readonly of: AdviceOf; readonly value: number; readonly unit: Extract<Unit, 'lb/acre' | 'lb/1000 sq ft' | 'lb/100 sq ft' | 'kg/ha' | 'g/m2' | 'lb' | 'g'>; readonly per: 'area' | 'tree'; readonly product: string | null; readonly line: number };

const NUMBER = String.raw`(\d+ \d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)?)`;
const SPAN = String.raw`${NUMBER}(?:\s*(?:-|–|to)\s*${NUMBER})?`;
const WEIGHT = String.raw`(lbs?|pounds?|oz|ounces?|kgs?|kilo(?:gram)?s?|grams?|g)\b\.?`;
const AREA = String.raw`(acres?|ac|a|hectares?|ha|1,?000\s*(?:sq\.?|square)\s*(?:ft|feet|foot)|1,?000\s*ft2|100\s*(?:sq\.?|square)\s*(?:ft|feet|foot)|100\s*ft2|(?:sq\.?|square)\s*(?:ft|feet|foot)|m2|m²|(?:sq\.?|square)\s*(?:m|met(?:re|er)s?)|trees?|plants?|bush(?:es)?)\b`;
const WHAT = String.raw`((?:actual\s+)?(?:nitrogen|n|p2o5|phosphates?|phosphorus|p|k2o|potash|potassium|k)\b|\d{1,2}(?:\.\d+)?-\d{1,2}(?:\.\d+)?-\d{1,2}(?:\.\d+)?(?![\d-]))`;
const PER = String.raw`\s*(?:\/|per|an?|pro|je|por|par|for each|each)\s*(?:each\s+|every\s+)?`;

/** "2 lb of actual N per 1000 sq ft"; "2 lb/1000 sq ft of N"; "N: 60 lb/acre", "10-10-10 at 10 lb per 1000 sq ft". */
const FORMS: readonly { readonly pattern: RegExp; readonly what: number; readonly low: number; readonly weight: number; readonly area: number }[] = [
  { pattern: new RegExp(`${SPAN}\\s*${WEIGHT}\\s*(?:of\\s+)?(?:an?\\s+)?${WHAT}[^\\d.;,]{0,25}?${PER}${AREA}`, 'gi'), low: 1, weight: 3, what: 4, area: 5 },
  { pattern: new RegExp(`${SPAN}\\s*${WEIGHT}${PER}${AREA}\\.?\\s*(?:of\\s+)?${WHAT}`, 'gi'), low: 1, weight: 3, area: 4, what: 5 },
  { pattern: new RegExp(`\\b${WHAT}[^\\d;,]{0,15}?${SPAN}\\s*${WEIGHT}${PER}${AREA}`, 'gi'), what: 1, low: 2, weight: 4, area: 5 },
];

/** A line that forbids, bounds, looks back, or speaks of another crop or of what is no feed, recommends nothing for a tree. */
const NOT_ADVICE = /\b(?:not|never|don'?t|no more|more than|at most|up to|maximum|exceed|lawns?|turf|grass|corn|maize|wheat|pasture|vegetables?|vegetable garden|last year|previous(?:ly)?|applied|leaves|compost|manure|removes?|removal|contains?)\b|(?:^|\s)-\d|\de\d/i;

const NAME_FIRST = new RegExp(`\\b${WHAT}[^\\d;,]{0,15}?${SPAN}\\s*${WEIGHT}(?!${PER}${AREA})`, 'gi');
const AMOUNT_FIRST = new RegExp(`${SPAN}\\s*${WEIGHT}\\s*(?:of\\s+)?${WHAT}(?![^\\d.;,]{0,25}?${PER}${AREA})`, 'gi');
/** "N 2 lb" below "per 1,000 sq ft:" says its ground there. */
const onGround = (text: string, ground: string): string => text.replace(/^\D*?\d+(?:[.,]\d+)?\s*(?:lb|pound|oz|ounce|k?g\b)/i.test(text) && !new RegExp(`^\\W*${WHAT}`, 'i').test(text) ? AMOUNT_FIRST : NAME_FIRST, (said) => `${said} per ${ground};`);

/** Every amount that the sample's lines recommend, in their order; each stretch of a line counts once. */
export function adviceOf(sample: Sample): Advice[] {
  let below: { readonly ground: string; readonly line: number } | null = null;
  return sample.unread.flatMap(({ line, text }) => {
    const ground = groundIn(text);
    // A heading holds for the lines right below it.
    if (ground !== null) below = { ground, line };
    else if (below && line - below.line <= 2) below = { ...below, line };
    else below = null;
    return amountsIn(ground === null && below ? onGround(text, below.ground) : text, line);
  });
}

/** The amounts that one line recommends. */
export function amountsIn(text: string, line: number): Advice[] {
  let rest = text.length > 400 || NOT_ADVICE.test(text) ? '' : text;
  const found: { at: number; advice: Advice[] }[] = [];
  for (const { pattern, ...groups } of FORMS) {
    for (const m of rest.matchAll(pattern)) {
      const advice = read(m[groups.what]!, m[groups.low]!, m[groups.weight]!, m[groups.area]!, line);
      if (advice.length > 0) found.push({ at: m.index, advice });
      rest = rest.slice(0, m.index) + ' '.repeat(m[0].length) + rest.slice(m.index + m[0].length);
    }
  }
  return found.sort((a, b) => a.at - b.at).flatMap((x) => x.advice);
}

const NAMES: readonly (readonly [RegExp, AdviceOf])[] = [[/nitrogen|^n$/i, 'N'], [/p2o5|phosphate/i, 'P2O5'], [/k2o|potash/i, 'K2O'], [/phosphorus|^p$/i, 'P'], [/potassium|^k$/i, 'K']];

function read(what: string, low: string, weight: string, area: string, line: number): Advice[] {
  const kilos = /^k/i.test(weight);
  const [grams, pounds] = [/^g/i.test(weight) || kilos, /^(?:lb|pound|oz|ounce)/i.test(weight)];
  const unit = unitOf(area, pounds);
  // The lower end of a span; a kilo is a thousand grams, an ounce a sixteenth of a pound.
  const amount = numberOf(low) * (/^sq/.test(area.toLowerCase().replace(/[\s.,]/g, '')) && unit === 'lb/100 sq ft' ? 100 : 1) * (/^o/i.test(weight) ? 1 / 16 : kilos && unit !== 'kg/ha' ? 1000 : grams && unit === 'kg/ha' && !kilos ? 0.001 : 1);
  if (unit === null || !Number.isFinite(amount)) return [];
  const per = unit === 'lb' || unit === 'g' ? 'tree' as const : 'area' as const;
  if (/^\d/.test(what)) {
    const [n, p, k] = what.split('-').map(Number) as [number, number, number];
    if (n + p + k > 100) return [];
    return ([['N', n], ['P2O5', p], ['K2O', k]] as const).flatMap(([of, percent]) => (percent > 0 ? [{ of, value: (amount * percent) / 100, unit, per, product: what, line }] : []));
  }
  const of = NAMES.find(([pattern]) => pattern.test(what.replace(/^actual\s+/i, '')))?.[1];
  return of ? [{ of, value: amount, unit, per, product: null, line }] : [];
}

/** Pounds go with acres and feet, grams and kilos with metres and hectares. */
function unitOf(area: string, pounds: boolean): Advice['unit'] | null {
  const ground = area.toLowerCase().replace(/[\s.,]/g, '');
  if (/^(?:tree|plant|bush)/.test(ground)) return pounds ? 'lb' : 'g';
  if (/^(?:acres?|ac|a)$/.test(ground)) return pounds ? 'lb/acre' : null;
  if (ground.startsWith('1000')) return pounds ? 'lb/1000 sq ft' : null;
  if (ground.startsWith('100') || /^sq(?:uare)?f/.test(ground)) return pounds ? 'lb/100 sq ft' : null;
  if (/^(?:ha|hectares?)$/.test(ground)) return pounds ? null : 'kg/ha';
  return pounds ? null : 'g/m2';
}

function numberOf(text: string): number {
  const fraction = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text);
  return fraction ? Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]) : Number(text.replace(',', '.'));
}
