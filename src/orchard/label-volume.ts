/** Volumes on a label: "2 cu ft", "1 cubic yard", "40 L", "1 gal", "5-gallon pail"; and what is a measure of no size: a bale. */
import { LETTER } from '../units/letters.ts';
import { FOOT } from '../units/units.ts';
import type { Measured } from './measure.ts';
import { numberOf } from './measure.ts';

/** Millilitres, and whether such a unit is one of liquids. */
export type Volume = { readonly mL: Measured; readonly ofLiquid: boolean; readonly read: string };

const CUBIC_FOOT = (FOOT * 100) ** 3;
const GALLON = 3785.411784;
const IMPERIAL_GALLON = 4546.09;
/** Where a gallon is the imperial one. */
const IMPERIAL: readonly string[] = ['GB', 'IE', 'AU', 'NZ', 'ZA', 'IN'];
const BUSHEL = 35_239.07;

type Row = { readonly unit: string; readonly mL: (gallon: number) => number; readonly ofLiquid: boolean };
const ROWS: readonly Row[] = [
  { unit: 'cu(?:bic)?\\.? *(?:ft|feet|foot)\\.?|ft3|ft³|cf', mL: () => CUBIC_FOOT, ofLiquid: false },
  { unit: 'cu(?:bic)?\\.? *(?:yards?|yds?)\\.?|yd3|yd³|cy|yards?|yds?', mL: () => 27 * CUBIC_FOOT, ofLiquid: false },
  { unit: 'cu(?:bic)?\\.? *(?:m|met(?:er|re)s?)|m3|m³', mL: () => 1e6, ofLiquid: false },
  { unit: 'bushels?|bu', mL: () => BUSHEL, ofLiquid: false },
  { unit: 'fl\\.? *oz\\.?|(?:fluid|liquid) ounces?', mL: (gallon) => (gallon === GALLON ? gallon / 128 : gallon / 160), ofLiquid: true },
  { unit: 'gal(?:lon)?s?\\.?', mL: (gallon) => gallon, ofLiquid: true },
  { unit: 'quarts?|qts?', mL: (gallon) => gallon / 4, ofLiquid: true },
  { unit: 'pints?|pts?', mL: (gallon) => gallon / 8, ofLiquid: true },
  { unit: 'millilit(?:er|re)s?|ml|cc', mL: () => 1, ofLiquid: true },
  { unit: 'lit(?:er|re)s?|litros?|ltrs?|l', mL: () => 1000, ofLiquid: true },
];
export const VOLUME_UNIT = `(${ROWS.map((r) => r.unit).join('|')})(?![${LETTER}\\d])`;
const VOLUME = new RegExp(`(?<![${LETTER}\\d.,/-])(\\d+ +\\d+/\\d+|\\d+/\\d+|\\d+(?:[.,]\\d+)?) *-? *${VOLUME_UNIT}`, 'gi');
/** A measure that has no size of its own. */
const VAGUE = new RegExp(`(?<![${LETTER}\\d.,/])(?:an?|one|\\d+(?:[.,]\\d+)?|half an?|per|/) *-?(?:big |large |small |full )?(?:bales?|buckets?|pails?|wheel ?barrows?|barrows?|barrow ?loads?|(?:truck|trailer|pick-?up|cart)[- ]?loads?|loads?|scoops?|shovels?(?:ful)?|spades?(?:ful)?|buckets?ful)(?![${LETTER}\\d])`, 'i');

const rowOf = (unit: string): Row => ROWS.find((r) => new RegExp(`^(?:${r.unit})$`, 'i').test(unit))!;
export const volumeOfUnit = (unit: string, country: string | null): number => rowOf(unit).mL(IMPERIAL.includes(country ?? '') ? IMPERIAL_GALLON : GALLON);

export function volumesIn(text: string, country: string | null): { readonly volumes: readonly Volume[]; readonly rest: string } {
  const volumes: Volume[] = [];
  const rest = text.replace(VOLUME, (read: string, n: string, unit: string) => {
    const value = numberOf(n);
    volumes.push({ mL: typeof value === 'number' ? value * volumeOfUnit(unit, country) : value, ofLiquid: rowOf(unit).ofLiquid, read: read.trim() });
    return ' ';
  });
  return { volumes, rest };
}

/** What a label counts in bales, buckets or loads, where it gives neither weight nor volume. */
export const vagueMeasure = (text: string): string | null => (/bale|bucket|pail|barrow|load|scoop|shovel|spade/i.test(text) ? VAGUE.exec(text)?.[0]?.trim() ?? null : null);
