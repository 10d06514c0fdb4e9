/**
 * Published nitrogen rules for a plant a year, in the unit printed, each beside its reference.
 * `low` and `high` are the rule's own span; `cap` is its own ceiling. Rates of a product carry its N %.
 */
import type { Cite } from '../reason/figure.ts';
import type { Size } from './crops.ts';
import { POME, STONE, TREE_FRUIT } from './crops.ts';
import type { Rule } from './rule.ts';
import { RULES_EUROPE } from './rules-europe.ts';
import { RULES_US_SOUTH_EAST } from './rules-us-south-east.ts';
import { RULES_US_WEST } from './rules-us-west.ts';
import { RULES_WORLD } from './rules-world.ts';

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const derived = (source: string, at: string): Cite => ({ source, at, mark: 'derived' });
const N_LB = { of: 'N', unit: 'lb' } as const;
const N_OZ = { of: 'N', unit: 'oz' } as const;
const TEN = { of: 'product', unit: 'lb', percentN: 10 } as const;
/** Virginia prints half a pound of 10-10-10 as one cup. */
const TEN_CUPS = { of: 'product', unit: 'cup', percentN: 10, ozPerCup: 8 } as const;

const MICHIGAN_POME: Rule = {
  id: 'michigan.pome.years', source: 'michigan-garden-fruit', crops: POME, region: 'US-MI', by: 'years', gives: N_LB,
  low: 0.05, cap: 0.75, years: [1, 99], cite: read('michigan-garden-fruit', 'newer text, apples and pears'),
};
const PENN_STONE: Rule = {
  id: 'penn.stone.years', source: 'penn-stone', crops: STONE, region: 'US-PA', by: 'years', gives: TEN,
  low: 0.5, cap: 5, years: [1, 99], cite: read('penn-stone', 'established trees'),
};
const LOUISIANA_FIG: Rule = {
  id: 'louisiana.fig.years', source: 'louisiana-fig', crops: ['fig'], region: 'US-LA', by: 'years',
  gives: { of: 'product', unit: 'lb', percentN: 8 }, low: 1, cap: 10, years: [1, 99], cite: read('louisiana-fig', 'pounds of 8-8-8 by age'),
};
const RHS_APPLE_BARE: Rule = {
  id: 'rhs.apple.bare', source: 'rhs-feeding', crops: ['apple'], region: 'GB', by: 'area', ground: 'bare',
  gives: { of: 'product', unit: 'g/m2', percentN: 7 }, low: 100, cite: read('rhs-feeding', 'dessert apples, bare soil'),
};
const RHS_APPLE_GRASS: Rule = {
  id: 'rhs.apple.grass', source: 'rhs-feeding', crops: ['apple'], region: 'GB', by: 'area', ground: 'grass',
  gives: { of: 'product', unit: 'g/m2', percentN: 7 }, low: 140, cite: read('rhs-feeding', 'dessert apples, in grass'),
};
const RHS_PEAR_YOUNG: Rule = {
  id: 'rhs.pear.young', source: 'rhs-feeding', crops: ['pear'], region: 'GB', by: 'area', bearing: false,
  gives: { of: 'product', unit: 'g/m2', percentN: 7 }, low: 100, cite: derived('rhs-feeding', 'young pears stand in the apple heading'),
};
const RHS_PEAR_STONE: Rule = {
  id: 'rhs.pear-stone', source: 'rhs-feeding', crops: ['pear', ...STONE], region: 'GB', by: 'area',
  gives: { of: 'product', unit: 'g/m2', percentN: 7 }, low: 140, cite: read('rhs-feeding', 'established pears, cherries, plums, peaches'),
};

/** Georgia's fig figures, of 10-10-10: by age while young, then by height. */
const GEORGIA_FIG: readonly Rule[] = [
  { id: 'georgia.fig.new', source: 'georgia-fig', crops: ['fig'], region: 'US-GA', by: 'plant', gives: { of: 'product', unit: 'oz', percentN: 10 }, low: 4.5, years: [0, 0], doses: 3, cite: read('georgia-fig', 'new figs, 1 1/2 oz three times') },
  { id: 'georgia.fig.second', source: 'georgia-fig', crops: ['fig'], region: 'US-GA', by: 'plant', gives: { of: 'product', unit: 'oz', percentN: 10 }, low: 9, years: [1, 1], doses: 3, cite: read('georgia-fig', 'second year, 3 oz three times') },
  { id: 'georgia.fig.3-5', source: 'georgia-fig', crops: ['fig'], region: 'US-GA', by: 'height', gives: TEN, low: 1, years: [2, 4], doses: 3, cite: read('georgia-fig', 'years 3 to 5, 1/3 lb a foot three times') },
  { id: 'georgia.fig.6.wide', source: 'georgia-fig', crops: ['fig'], region: 'US-GA', by: 'height', gives: TEN, low: 1, cap: 10, years: [5, 99], spacingFt: 20, cite: read('georgia-fig', 'from 6 years, 1 lb a foot at 20 ft spacing') },
  { id: 'georgia.fig.6', source: 'georgia-fig', crops: ['fig'], region: 'US-GA', by: 'height', gives: TEN, low: 0.5, cap: 5, years: [5, 99], cite: read('georgia-fig', 'from 6 years, 1/2 lb a foot at 10 ft spacing') },
];

/** A table by the year in the ground, the planting year as its first; the last row holds from there on. */
const byYear = (id: string, rule: Omit<Rule, 'id' | 'low' | 'by' | 'first'>, rows: readonly (readonly [year: number, low: number, high: number, doses: number])[]): Rule[] =>
  rows.map(([year, low, high, doses], i) => ({
    ...rule, id: `${id}.${year}`, by: 'plant' as const, first: 1 as const, low, ...(high > low ? { high } : {}), doses, years: [year, i === rows.length - 1 ? 99 : year] as const,
  }));

/** Florida: lb of N a tree and number of doses. */
const FLORIDA_CITRUS = byYear('florida.citrus', { source: 'florida-citrus', crops: ['citrus'], region: 'US-FL', gives: N_LB, cite: read('florida-citrus', 'table of nitrogen by year') },
  [[1, 0.15, 0.3, 6], [2, 0.3, 0.6, 5], [3, 0.45, 0.9, 4], [4, 0.8, 1, 3], [5, 1.1, 1.4, 3]]);
/** California's first year is three tablespoons, which is a measure and not a weight: none is derived from it here. */
const CALIFORNIA_CITRUS = byYear('california.citrus', { source: 'california-citrus', crops: ['citrus'], region: 'US-CA', gives: N_LB, cite: read('california-citrus', 'nitrogen by year') },
  [[2, 0.25, 0.25, 2], [3, 0.5, 0.5, 2], [4, 0.75, 0.75, 3], [5, 1, 1, 3]]);

/** Highbush blueberry: oz of ammonium sulphate a bush; New York prints the same, or urea at half. */
const OZ_OF = (percentN: number): Rule['gives'] => ({ of: 'product', unit: 'oz', percentN });
const PENN_BLUEBERRY = byYear('penn.blueberry', { source: 'penn-blueberry', crops: ['blueberry'], region: 'US-PA', gives: OZ_OF(21), cite: read('penn-blueberry', 'ammonium sulphate by year') },
  [[1, 0, 0, 1], [2, 4, 4, 1], [3, 5, 5, 1], [4, 6, 6, 1], [5, 7, 7, 1], [6, 8, 8, 1]]);
const NEW_YORK_BLUEBERRY = byYear('new-york.blueberry', { source: 'new-york-home-fruit', crops: ['blueberry'], region: 'US-NY', gives: OZ_OF(21), cite: read('new-york-home-fruit', 'blueberries, ammonium sulphate by year') },
  [[1, 0, 0, 1], [2, 4, 4, 1], [3, 5, 5, 1], [4, 6, 6, 1], [5, 7, 7, 1], [6, 8, 8, 1]]);
const NEW_YORK_BLUEBERRY_UREA = byYear('new-york.blueberry.urea', { source: 'new-york-home-fruit', crops: ['blueberry'], region: 'US-NY', gives: OZ_OF(46), cite: read('new-york-home-fruit', 'blueberries, urea by year') },
  [[1, 0, 0, 1], [2, 2, 2, 1], [3, 2.5, 2.5, 1], [4, 3, 3, 1], [5, 3.5, 3.5, 1], [6, 4, 4, 1]]);

/** All rules; `need/lead.ts` says which of them leads. */
export const RULES: readonly Rule[] = [
  MICHIGAN_POME, PENN_STONE, LOUISIANA_FIG, RHS_APPLE_BARE, RHS_APPLE_GRASS, RHS_PEAR_YOUNG, RHS_PEAR_STONE, ...GEORGIA_FIG,
  ...FLORIDA_CITRUS, ...CALIFORNIA_CITRUS, ...PENN_BLUEBERRY, ...NEW_YORK_BLUEBERRY, ...NEW_YORK_BLUEBERRY_UREA,
  { id: 'michigan.stone.years', source: 'michigan-garden-fruit', crops: STONE, region: 'US-MI', by: 'years', gives: TEN, low: 0.5, cap: 5, years: [1, 99], doses: 2, cite: read('michigan-garden-fruit', 'stone fruit by age; its cap taken a tree, not an inch') },
  { id: 'michigan.stone.trunk', source: 'michigan-garden-fruit', crops: STONE, region: 'US-MI', by: 'trunk', gives: TEN, low: 1, cap: 5, years: [1, 99], doses: 2, cite: read('michigan-garden-fruit', 'stone fruit by trunk') },
  { id: 'penn.stone.planting', source: 'penn-stone', crops: STONE, region: 'US-PA', by: 'plant', gives: { of: 'product', unit: 'oz', percentN: 10 }, low: 8, years: [0, 0], cite: read('penn-stone', 'planting season') },
  { id: 'maryland.stone.planting', source: 'maryland-stone', crops: STONE, region: 'US-MD', by: 'plant', gives: { of: 'product', unit: 'oz', percentN: 10 }, low: 8, years: [0, 0], cite: read('maryland-stone', 'worked in before planting') },
  { id: 'maryland.stone.years', source: 'maryland-stone', crops: STONE, region: 'US-MD', by: 'years', gives: TEN, low: 0.5, cap: 5, years: [1, 99], cite: read('maryland-stone', 'established trees') },
  { id: 'maryland.pear.planting', source: 'maryland-pear', crops: ['pear'], region: 'US-MD', by: 'plant', gives: { of: 'product', unit: 'oz', percentN: 10 }, low: 16, years: [0, 0], cite: read('maryland-pear', 'planting season, 8 oz twice') },
  { id: 'maryland.pear.dwarf', source: 'maryland-pear', crops: ['pear'], size: 'dwarf', region: 'US-MD', by: 'years', gives: TEN, base: [0.5, 1], low: 0.25, cap: 2.5, years: [1, 99], cite: read('maryland-pear', 'dwarf') },
  { id: 'maryland.pear.semi', source: 'maryland-pear', crops: ['pear'], size: 'semi-dwarf', region: 'US-MD', by: 'years', gives: TEN, base: [0.5, 1], low: 0.25, cap: 5, years: [1, 99], cite: read('maryland-pear', 'semi-dwarf') },
  { id: 'maryland.pear.standard', source: 'maryland-pear', crops: ['pear'], size: 'standard', region: 'US-MD', by: 'years', gives: TEN, base: [0.5, 1], low: 0.25, cap: 10, years: [1, 99], cite: read('maryland-pear', 'standard') },
  { id: 'maine.young', source: 'maine-fertilization', crops: TREE_FRUIT, region: 'US-ME', by: 'plant', gives: N_OZ, low: 0.5, years: [0, 3], cite: read('maine-fertilization', 'first few years') },
  { id: 'maine.mature', source: 'maine-fertilization', crops: TREE_FRUIT, size: 'semi-dwarf', region: 'US-ME', by: 'plant', gives: N_OZ, low: 3, years: [5, 99], cite: read('maine-fertilization', 'mature semi-dwarf') },
  { id: 'iowa.years', source: 'iowa-fruit-trees', crops: TREE_FRUIT, region: 'US-IA', by: 'years', gives: N_LB, low: 0.1, cap: 1, years: [1, 99], if: 'growth-short', cite: read('iowa-fruit-trees', 'by years since planting') },
  { id: 'utah.years', source: 'utah-nitrogen', crops: TREE_FRUIT, region: 'US-UT', by: 'years', gives: N_OZ, low: 1, cap: 8, years: [1, 99], cite: read('utah-nitrogen', 'a beginning point') },
  { id: 'virginia.years', source: 'virginia-note-21', crops: TREE_FRUIT, region: 'US-VA', by: 'years', gives: TEN, low: 1, cap: 10, years: [1, 99], doses: 2, cite: read('virginia-note-21', 'complete feed, half in March and half in April') },
  { id: 'north-carolina.years', source: 'north-carolina-quick', crops: TREE_FRUIT, region: 'US-NC', by: 'years', gives: TEN, low: 0.75, high: 1, years: [1, 99], if: 'no-soil-test', cite: read('north-carolina-quick', 'without a soil test') },
  { id: 'colorado.pome.trunk', source: 'colorado-1216', crops: POME, region: 'US-CO', by: 'trunk', gives: N_LB, low: 0.1, years: [1, 99], cite: read('colorado-1216', 'apple and pear, trunk at 1 ft') },
  { id: 'colorado.stone.trunk', source: 'colorado-1216', crops: STONE, region: 'US-CO', by: 'trunk', gives: N_LB, low: 0.125, years: [1, 99], cite: read('colorado-1216', 'stone fruit, trunk at 1 ft') },
  { id: 'georgia.years', source: 'georgia-springtime', crops: ['peach', 'plum'], region: 'US-GA', climate: 'warm', by: 'years', gives: TEN_CUPS, low: 1, cap: 12, years: [1, 99], cite: read('georgia-springtime', 'one cup of 10-10-10 a year of age') },
  { id: 'georgia.pear.years', source: 'georgia-springtime', crops: ['pear'], region: 'US-GA', climate: 'warm', by: 'years', gives: TEN_CUPS, low: 1, cap: 12, years: [1, 99], doses: 2, cite: read('georgia-springtime', 'one cup of 10-10-10 a year of age') },
  { id: 'kansas.1-2', source: 'kansas-home-orchard', crops: TREE_FRUIT, region: 'US-KS', by: 'plant', gives: TEN_CUPS, low: 0.75, years: [1, 2], cite: read('kansas-home-orchard', 'years 1 and 2, three times the cups of 27-3-3') },
  { id: 'kansas.3-4', source: 'kansas-home-orchard', crops: TREE_FRUIT, region: 'US-KS', by: 'plant', gives: TEN_CUPS, low: 1.5, years: [3, 4], cite: read('kansas-home-orchard', 'years 3 and 4') },
  { id: 'kansas.5-10', source: 'kansas-home-orchard', crops: TREE_FRUIT, region: 'US-KS', by: 'plant', gives: TEN_CUPS, low: 3, high: 6, years: [5, 10], cite: read('kansas-home-orchard', 'years 5 to 10') },
  { id: 'kansas.over-10', source: 'kansas-home-orchard', crops: TREE_FRUIT, region: 'US-KS', by: 'plant', gives: TEN_CUPS, low: 6, high: 9, years: [11, 99], cite: read('kansas-home-orchard', 'over 10 years') },
  { id: 'tennessee.apple.trunk', source: 'tennessee-apples', crops: ['apple'], region: 'US-TN', by: 'trunk', gives: N_LB, low: 0.1, years: [1, 99], label: 'orchard', cite: read('tennessee-apples', 'trunk at 1 ft') },
  { id: 'tennessee.cherry.years', source: 'tennessee-cherries', crops: ['cherry'], kinds: ['tart cherry', 'sour cherry'], region: 'US-TN', by: 'years', gives: N_LB, low: 0.1, cap: 1, years: [1, 99], label: 'orchard', cite: read('tennessee-cherries', 'tart cherry by age') },
  { id: 'tennessee.plum.young', source: 'tennessee-cherries', crops: ['plum'], region: 'US-TN', by: 'plant', gives: N_LB, low: 0.3, bearing: false, years: [1, 99], label: 'orchard', cite: read('tennessee-cherries', 'plum, not bearing') },
  { id: 'tennessee.plum.bearing', source: 'tennessee-cherries', crops: ['plum'], region: 'US-TN', by: 'plant', gives: N_LB, low: 1, bearing: true, years: [1, 99], label: 'orchard', cite: read('tennessee-cherries', 'plum, bearing') },
  { id: 'oregon.apple.1', source: 'oregon-fg23', crops: ['apple'], region: 'US-OR', by: 'plant', gives: N_LB, low: 0, high: 0.125, years: [1, 1], label: 'orchard', cite: read('oregon-fg23', 'year 1') },
  { id: 'oregon.apple.2', source: 'oregon-fg23', crops: ['apple'], region: 'US-OR', by: 'plant', gives: N_LB, low: 0.25, years: [2, 2], label: 'orchard', cite: read('oregon-fg23', 'year 2') },
  { id: 'oregon.apple.3-5', source: 'oregon-fg23', crops: ['apple'], region: 'US-OR', by: 'plant', gives: N_LB, low: 1 / 4, high: 1 / 3, years: [3, 5], label: 'orchard', cite: read('oregon-fg23', 'years 3 to 5') },
  { id: 'oregon.apple.6-7', source: 'oregon-fg23', crops: ['apple'], region: 'US-OR', by: 'plant', gives: N_LB, low: 1 / 3, high: 1 / 2, years: [6, 7], label: 'orchard', cite: read('oregon-fg23', 'years 6 and 7') },
  { id: 'oregon.prune.3-5', source: 'oregon-fg24', crops: ['plum'], kinds: ['prune'], region: 'US-OR', by: 'plant', gives: N_LB, low: 1 / 4, high: 1 / 3, years: [3, 5], label: 'orchard', cite: read('oregon-fg24', 'years 3 to 5') },
  { id: 'oregon.prune.6-7', source: 'oregon-fg24', crops: ['plum'], kinds: ['prune'], region: 'US-OR', by: 'plant', gives: N_LB, low: 1 / 3, high: 1 / 2, years: [6, 7], label: 'orchard', cite: read('oregon-fg24', 'years 6 and 7') },
  { id: 'oregon.prune.8-10', source: 'oregon-fg24', crops: ['plum'], kinds: ['prune'], region: 'US-OR', by: 'plant', gives: N_LB, low: 1 / 2, high: 3 / 4, years: [8, 10], label: 'orchard', cite: read('oregon-fg24', 'years 8 to 10') },
  { id: 'oregon.peach.1', source: 'oregon-fg53', crops: ['peach'], region: 'US-OR', by: 'plant', gives: N_LB, low: 0, high: 1 / 2, years: [1, 1], label: 'orchard', cite: read('oregon-fg53', 'year 1') },
  { id: 'oregon.peach.2', source: 'oregon-fg53', crops: ['peach'], region: 'US-OR', by: 'plant', gives: N_LB, low: 1 / 2, years: [2, 2], label: 'orchard', cite: read('oregon-fg53', 'year 2') },
  { id: 'oregon.peach.3-5', source: 'oregon-fg53', crops: ['peach'], region: 'US-OR', by: 'plant', gives: N_LB, low: 1 / 2, high: 3 / 4, years: [3, 5], label: 'orchard', cite: read('oregon-fg53', 'years 3 to 5') },
  { id: 'oregon.peach.6-7', source: 'oregon-fg53', crops: ['peach'], region: 'US-OR', by: 'plant', gives: N_LB, low: 3 / 4, high: 1, years: [6, 7], label: 'orchard', cite: read('oregon-fg53', 'years 6 and 7') },
  { id: 'oregon.peach.8-10', source: 'oregon-fg53', crops: ['peach'], region: 'US-OR', by: 'plant', gives: N_LB, low: 1.5, high: 2, years: [8, 10], label: 'orchard', cite: read('oregon-fg53', 'years 8 to 10') },
  { id: 'california.mature.sulphate', source: 'california-stone-pome', crops: TREE_FRUIT, region: 'US-CA', climate: 'warm', by: 'plant', gives: { of: 'product', unit: 'lb', percentN: 21 }, low: 3, high: 5, bearing: true, years: [5, 99], cite: read('california-stone-pome', 'mature trees, ammonium sulphate') },
  { id: 'post.1977.dwarf-apple', source: 'post-1977', crops: ['apple'], size: 'dwarf', region: 'US', by: 'plant', gives: TEN, low: 5, high: 10, bearing: true, years: [5, 99], label: 'old', cite: read('post-1977', 'dwarf apple') },
  { id: 'post.1977.large-apple', source: 'post-1977', crops: ['apple'], size: 'standard', region: 'US', by: 'plant', gives: TEN, low: 15, bearing: true, years: [5, 99], label: 'old', cite: read('post-1977', 'large apple') },
  { id: 'post.1977.dwarf-stone', source: 'post-1977', crops: ['peach', 'plum', 'cherry'], size: 'dwarf', region: 'US', by: 'plant', gives: TEN, low: 4, high: 8, bearing: true, years: [5, 99], label: 'old', cite: read('post-1977', 'dwarf stone fruit') },
  ...RULES_US_SOUTH_EAST, ...RULES_US_WEST, ...RULES_EUROPE, ...RULES_WORLD,
];

/** Size caps: Maryland prints them for pear; on another fruit they are our judgement. lb of 10-10-10 a tree. */
export const SIZE_CAP: Readonly<Record<Size, { lb: number; percentN: number }>> = {
  dwarf: { lb: 2.5, percentN: 10 }, 'semi-dwarf': { lb: 5, percentN: 10 }, standard: { lb: 10, percentN: 10 },
};

