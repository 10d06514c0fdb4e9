/**
 * Published rules of Europe and Turkey for feeding a plant a year, in the unit printed, each beside its reference.
 * Sums over doses or over two products of one table, and per cent taken from a sister page, are marked derived.
 */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';
import { TREE_FRUIT } from './crops.ts';
import type { Rule } from './rule.ts';

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const derived = (source: string, at: string): Cite => ({ source, at, mark: 'derived' });
const N_HA = { of: 'N', unit: 'kg/ha' } as const;
const P2O5_HA = { of: 'P2O5', unit: 'kg/ha' } as const;
const K2O_HA = { of: 'K2O', unit: 'kg/ha' } as const;
const GROWMORE = { of: 'product', unit: 'g/m2', percentN: 7 } as const;
/** The two feeds that the Bavarian garden academy names, with the per cent that its leaflet prints. */
const BLAUKORN = { of: 'product', unit: 'g', percentN: 14 } as const;
const HORNOSKA = { of: 'product', unit: 'g', percentN: 8 } as const;

/** What Bavaria calls fruit trees and berry bushes; what the Polish weekly calls fruit bushes. */
const TREES_AND_BUSHES: readonly Crop[] = [...TREE_FRUIT, 'currant', 'gooseberry'];

/** A table by age: from, until, low, high. */
const byAge = (id: string, rule: Omit<Rule, 'id' | 'low' | 'high' | 'years'>, rows: readonly (readonly [from: number, until: number, low: number, high: number])[]): Rule[] =>
  rows.map(([from, until, low, high]) => ({ ...rule, id: `${id}.${from}`, low, ...(high > low ? { high } : {}), years: [from, until] as const }));

/** Citrus: the compound feed (10 or 15 % N) and the later ammonium sulphate (21 %) of each row added up. The first row is the planting year. */
const TOROS_CITRUS: readonly Rule[] = [
];

/**
 * Olive: one of the compound feeds (10, 15 or 20 % N) and one of two nitrates (26 or 33 %) of each row added up;
 * the low end without watering, the high end with it. The age is counted as in the citrus table of the same guide.
 */

/** A need that the soil may cover in part; the page prints P and K by letter only, so they are left out. */

const CAMPANIA_HAZELNUT: readonly Rule[] = byAge('campania.hazelnut', { source: 'it-campania-guida', crops: ['hazelnut'], region: 'IT', by: 'area', gives: N_HA, first: 1, label: 'orchard', cite: read('it-campania-guida', 'hazelnut, first to fifth year') },
  [[1, 1, 30, 30], [2, 2, 50, 50], [3, 3, 100, 100], [4, 4, 120, 120], [5, 5, 150, 150]]);

/** Nothing in the first year of life where the ground was fed before planting. */
const MONFERRATO_HAZELNUT: readonly Rule[] = [
];

/** Aragón prints ceilings for trees being formed. */
const ARAGON: readonly Rule[] = [
  ...byAge('aragon.formation.p2o5', { source: 'es-espada-frutales', crops: TREE_FRUIT, region: 'ES', by: 'area', gives: P2O5_HA, first: 1, label: 'orchard', cite: read('es-espada-frutales', 'trees being formed, most to be given') }, [[1, 1, 0, 10], [2, 2, 0, 15]]),
  ...byAge('aragon.formation.k2o', { source: 'es-espada-frutales', crops: TREE_FRUIT, region: 'ES', by: 'area', gives: K2O_HA, first: 1, label: 'orchard', cite: read('es-espada-frutales', 'trees being formed, most to be given') }, [[1, 1, 0, 20], [2, 2, 0, 40]]),
];

export const RULES_EUROPE: readonly Rule[] = [
  { id: 'rhs.cooking-apple.bare', source: 'rhs-feeding', crops: ['apple'], kinds: ['cooking apple'], region: 'GB', by: 'area', ground: 'bare', gives: GROWMORE, low: 150, cite: derived('rhs-feeding', 'cooking apples, half as much again as 100') },
  { id: 'rhs.cooking-apple.grass', source: 'rhs-feeding', crops: ['apple'], kinds: ['cooking apple'], region: 'GB', by: 'area', ground: 'grass', gives: GROWMORE, low: 210, cite: derived('rhs-feeding', 'cooking apples, half as much again as 140') },
  { id: 'rhs.quince', source: 'rhs-quince', crops: ['quince'], region: 'GB', by: 'area', gives: { of: 'N', unit: 'g/m2' }, low: 100 * 0.07 + 35 * 0.21, doses: 2, cite: derived('rhs-quince', '100 g/m² of a general feed of 7 % in February and 35 g/m² of sulphate of ammonia in late March') },
  { id: 'rhs.raspberry', source: 'rhs-raspberry', crops: ['raspberry'], region: 'GB', by: 'area', gives: GROWMORE, low: 30, years: [1, 99], doses: 1, cite: read('rhs-raspberry', 'general feed in early March') },
  { id: 'rhs.raspberry.weak', source: 'rhs-raspberry', crops: ['raspberry'], region: 'GB', by: 'area', gives: { of: 'N', unit: 'g/m2' }, low: 30 * 0.07 + 30 * 0.21, years: [1, 99], doses: 2, if: 'growth-short', cite: derived('rhs-raspberry', 'weak growth, with 30 g/m² of sulphate of ammonia') },
  { id: 'rhs.raspberry.planting', source: 'rhs-raspberry', crops: ['raspberry'], region: 'GB', by: 'area', gives: GROWMORE, low: 90, years: [0, 0], doses: 1, cite: read('rhs-raspberry', 'forked in before planting') },
  { id: 'rhs.medlar', source: 'rhs-medlar', crops: ['medlar'], region: 'GB', by: 'area', gives: GROWMORE, low: 70, cite: read('rhs-medlar', 'feeding, in March over the rooting area') },

  { id: 'bavaria.young.blaukorn', source: 'de-lwg-bayern-obstgehoelze', crops: TREES_AND_BUSHES, region: 'DE', by: 'plant', gives: BLAUKORN, low: 10, years: [1, 4], first: 1, doses: 1, cite: read('de-lwg-bayern-obstgehoelze', 'newly planted, first 3 to 4 years, 14-7-17') },
  { id: 'bavaria.young.hornoska', source: 'de-lwg-bayern-obstgehoelze', crops: TREES_AND_BUSHES, region: 'DE', by: 'plant', gives: HORNOSKA, low: 15, years: [1, 4], first: 1, doses: 1, cite: read('de-lwg-bayern-obstgehoelze', 'newly planted, first 3 to 4 years, 8-4-10') },
  // The talk prints no age; it is held to the years after those of the academy's own leaflet for the newly planted.
  { id: 'bavaria.grown.blaukorn', source: 'de-lwg-bayern-gartencast', crops: TREES_AND_BUSHES, region: 'DE', by: 'plant', gives: BLAUKORN, low: 70, high: 100, years: [5, 99], first: 1, doses: 2, cite: derived('de-lwg-bayern-gartencast', 'without compost; per cent from the leaflet of the academy') },
  { id: 'bavaria.grown.hornoska', source: 'de-lwg-bayern-gartencast', crops: TREES_AND_BUSHES, region: 'DE', by: 'plant', gives: HORNOSKA, low: 100, years: [5, 99], first: 1, cite: derived('de-lwg-bayern-gartencast', 'without compost; per cent from the leaflet of the academy') },
  { id: 'austria.meadow', source: 'at-arge-streuobst', crops: TREE_FRUIT, size: 'standard', region: 'AT', by: 'area', ground: 'grass', gives: { of: 'product', unit: 'g/m2', percentN: 12 }, low: 50, high: 60, cite: derived('at-arge-streuobst', 'meadow orchard trees, 12-8-16 by crown area') },
  { id: 'austria.pear', source: 'austria-orchard', crops: ['pear'], region: 'AT', by: 'area', gives: N_HA, low: 80, doses: 2, bearing: true, label: 'orchard', cite: derived('austria-orchard', 'pear, 40 twice at 40 to 50 t/ha') },
  { id: 'austria.apricot.n', source: 'at-obstwein-technik-marille', crops: ['apricot'], region: 'AT', by: 'area', gives: N_HA, low: 70, high: 110, bearing: true, label: 'orchard', cite: read('at-obstwein-technik-marille', 'apricot, from under 10 to over 15 t/ha') },
  { id: 'austria.apricot.p2o5', source: 'at-obstwein-technik-marille', crops: ['apricot'], region: 'AT', by: 'area', gives: P2O5_HA, low: 35, high: 55, bearing: true, label: 'orchard', cite: read('at-obstwein-technik-marille', 'apricot, from under 10 to over 15 t/ha') },
  { id: 'austria.apricot.k2o', source: 'at-obstwein-technik-marille', crops: ['apricot'], region: 'AT', by: 'area', gives: K2O_HA, low: 60, high: 90, bearing: true, label: 'orchard', cite: read('at-obstwein-technik-marille', 'apricot, from under 10 to over 15 t/ha') },
  { id: 'austria.cherry.n', source: 'at-obstwein-technik-marille', crops: ['cherry'], kinds: ['cherry', 'sweet cherry'], region: 'AT', by: 'area', gives: N_HA, low: 70, bearing: true, label: 'orchard', cite: read('at-obstwein-technik-marille', 'cherry in full bearing, 8 to 12 t/ha') },


  ...CAMPANIA_HAZELNUT, ...MONFERRATO_HAZELNUT,
  ...ARAGON,

  // By the tree where there are at most ten on 1000 square metres, which is 10 metres apart; closer than that by the ground.
 ...TOROS_CITRUS,
];
