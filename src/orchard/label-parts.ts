/** The parts of a label between its commas: name, weight, volume, price, what is left; every part that cannot be read is told. */
import type { Notice, Place } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Price } from './label-amounts.ts';
import { amountsIn } from './label-amounts.ts';
import { MARK } from './label-grade.ts';
import { vagueMeasure } from './label-volume.ts';
import { numberOf } from './measure.ts';

export type Parts = {
  readonly label: string;
  readonly g: number | null;
  readonly mL: number | null;
  readonly ofLiquid: boolean;
  readonly price: Price | null;
  readonly left: { readonly share?: number; readonly g?: number } | null;
  /** Grams, or millilitres, that the price is for. */
  readonly per: number | null;
  readonly perVolume: number | null;
  readonly notices: readonly Notice[];
};
/** `told`: the numbers as the label prints them, marked or claimed. `noVolume`: sold by weight alone. `lime`: its strength is read elsewhere, so no number may remain. */
type About = { readonly whole: string; readonly country: string | null; readonly place: Place; readonly told: string | null; readonly noVolume: boolean; readonly lime: boolean };

/** A number or a currency that stands alone, such as a weight without its unit. */
const LOST = /[$£€]|^[-+]?\d(?![\d.,]*\s*%)|(?:^|\s)[-+]?\d[\d.,]*$|\bleft$/;
/** 2,000 lb in grams, rounded down. */
const TON = 900_000;
/** A price by a measure that says no weight, or a rate. */
const BY_MEASURE = /(?:^| )(?:per|an?|\/) *(?:cubic )?(?:yards?|yd|m3|m³|bale|scoop|bucket|load|cu(?:bic)? ft|acre|hectare|ha|[\d,]* *(?:sq\.? ?ft|square feet|m2|m²))$/i;
const STRENGTH = /^\d+(?:[.,]\d+)? *%/;
const SAYS_NO_NAME = /weed|herbicide|slow|coated|controlled|release|liquid|soluble|organic|sulphate|sulfate|chloride|muriate|granul|crystal|pellet/i;

export function partsIn(text: string, about: About): Parts {
  const { country, place, whole } = about;
  const notices: Notice[] = [];
  let label = '';
  let g: number | null = null;
  let mL: number | null = null;
  let per: number | null = null;
  let perVolume: number | null = null;
  let ofLiquid = false;
  let price: Price | null = null;
  let left: Parts['left'] = null;
  const unknown = (part: string): unknown => notices.push(notice('bag-part-unknown', 'error', { read: part.replaceAll(MARK, about.told ?? '').trim(), bag: whole }, place));
  const twoWays = (read: string): unknown => notices.push(notice('number-two-ways', 'error', { read, dot: read.replace(',', '.'), plain: read.replace(',', '') }, place));
  const parts = text.split(/,\s+/).map((p) => p.replace(/^[\s,;]+|[\s,;]+$/g, '')).filter(Boolean);
  let graded = about.told !== null && !text.includes(MARK);
  for (const part of parts) {
    const here = part.includes(MARK);
    // A bag known by its grade alone has it as its name too.
    if (!here && part.replace(/ *[-‐‑‒–—−/:] */g, '-') === about.told) continue;
    graded ||= here;
    for (const [at, piece] of part.split(MARK).entries()) {
      const found = amountsIn(piece, country);
      per ??= found.per;
      perVolume ??= found.perVolume;
      for (const weight of found.weights) {
        if (weight !== null && typeof weight === 'object') twoWays(weight.unclear);
        // A second weight is the same in other units, or nobody knows which holds.
        else if (!weight || (g !== null && Math.abs(weight - g) > 0.03 * g)) unknown(part);
        else g ??= weight;
      }
      for (const volume of found.volumes) {
        if (volume.mL !== null && typeof volume.mL === 'object') twoWays(volume.mL.unclear);
        else if (!volume.mL || about.noVolume || (mL !== null && Math.abs(volume.mL - mL) > 0.03 * mL)) unknown(part);
        else {
          mL ??= volume.mL;
          ofLiquid ||= volume.ofLiquid;
        }
      }
      if (found.perVolume !== null && about.noVolume) unknown(part);
      for (const cost of found.prices) {
        if (cost && 'read' in cost) notices.push(notice('number-unclear', 'error', { ...cost }, place));
        else if (!cost || price !== null) unknown(part);
        else price = cost;
      }
      if (found.left) left = found.left;
      if (found.left && found.left.g === undefined && found.left.share === undefined) unknown(part);
      const rest = found.rest.replace(at === 0 && here ? /[\s:(,–-]+$/ : /[\s,;]+$/, '');
      if (/^[\s(),;:.+]*$/.test(rest)) continue;
      const vague = about.noVolume ? null : vagueMeasure(rest);
      if (vague !== null) {
        if (found.volumes.length + found.weights.length === 0) notices.push(notice('bag-measure-vague', 'error', { read: vague, bag: whole }, place));
        continue;
      }
      if ((here && at === 1 && !LOST.test(rest)) || (!about.lime && STRENGTH.test(rest))) continue;
      if (BY_MEASURE.test(rest)) unknown(part);
      // Whatever is a number on a bag of lime has been read by now.
      else if (about.lime && /\d/.test(rest)) unknown(part);
      else if (/[$£€]|\bleft$/.test(rest) || ((label !== '' || graded) && (LOST.test(rest) || numberOf(rest) !== null))) unknown(part);
      else if (label === '') label = rest.replace(/ *:$/, '');
      else if (!SAYS_NO_NAME.test(rest)) label += `, ${rest}`;
    }
  }
  // Tons without a price may be meant for an acre.
  if (notices.length === 0 && g !== null && g >= TON && price === null && left === null) unknown(parts.find((p) => /\d *t(?:on|\b)/i.test(p)) ?? whole);
  return { label, g, mL, ofLiquid, price, left, per, perVolume, notices };
}
