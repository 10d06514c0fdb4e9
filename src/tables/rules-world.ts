/**
 * Published feeding rules from Asia, Africa, Australia, New Zealand and South America, in the unit printed.
 * Figures by the age of the tree are those of small growers; rates of whole orchards, trials and weak pages are labelled.
 */
import type { Cite } from '../reason/figure.ts';
import type { Rule } from './rule.ts';

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const derived = (source: string, at: string): Cite => ({ source, at, mark: 'derived' });
const N_G = { of: 'N', unit: 'g' } as const;
const N_KG = { of: 'N', unit: 'kg' } as const;
const P_G = { of: 'P2O5', unit: 'g' } as const;
const K_G = { of: 'K2O', unit: 'g' } as const;
const N_M2 = { of: 'N', unit: 'g/m2' } as const;
const P_M2 = { of: 'P2O5', unit: 'g/m2' } as const;
const K_M2 = { of: 'K2O', unit: 'g/m2' } as const;
const N_HA = { of: 'N', unit: 'kg/ha' } as const;
const P_HA = { of: 'P2O5', unit: 'kg/ha' } as const;
const K_HA = { of: 'K2O', unit: 'kg/ha' } as const;
const OF_G = (percentN: number): Rule['gives'] => ({ of: 'product', unit: 'g', percentN });
const OF_KG = (percentN: number): Rule['gives'] => ({ of: 'product', unit: 'kg', percentN });
/** Kilograms of the element to kilograms of the oxide. */
const P_ELEMENT = 0.43642;
const K_ELEMENT = 0.83013;

/** Calcium ammonium nitrate of 26 % N; its superphosphate is printed without a percent. */
const KENYA_AVOCADO = { source: 'ke-egerton-avocado', crops: ['avocado'], region: 'KE', by: 'plant', gives: OF_G(26), cite: read('ke-egerton-avocado', 'CAN by year after planting') } as const;
/** Urea; triple superphosphate and muriate of potash are printed without a percent. */
const BANGLADESH_MANGO = { source: 'bd-frg-2018-mango', crops: ['mango'], region: 'BD', by: 'plant', gives: OF_G(46), cite: read('bd-frg-2018-mango', 'mango, urea by age of tree') } as const;
/** Printed a season, two seasons a year, each season's amount in three doses. */
const TAIWAN_GUAVA = { source: 'tw-afa-guava', crops: ['guava'], region: 'TW', by: 'plant', doses: 6, cite: derived('tw-afa-guava', 'guava, a season by age, two seasons a year') } as const;
const TAIWAN_CITRUS = { source: 'tw-afa-citrus', crops: ['citrus'], region: 'TW', by: 'plant', cite: read('tw-afa-citrus', 'table 3, young trees') } as const;
const TAIWAN_PEAR = { source: 'tw-pear', crops: ['asian-pear'], region: 'TW', by: 'plant', years: [15, 15], cite: read('tw-pear', 'a tree of 15 years, from the state handbook') } as const;
/** kg a 10 a are grams a square metre; the rates include two tonnes of cattle manure where it is given. */
const GUNMA_APPLE = { source: 'jp-gunma-fruit', crops: ['apple'], size: 'standard', region: 'JP', by: 'area', label: 'orchard' } as const;
const GUNMA_DWARF = { source: 'jp-gunma-fruit', crops: ['apple'], size: 'dwarf', region: 'JP', by: 'area', label: 'orchard' } as const;
const GUNMA_PEAR = { source: 'jp-gunma-fruit', crops: ['asian-pear'], region: 'JP', by: 'area', label: 'orchard' } as const;
const GUNMA_PEACH = { source: 'jp-gunma-fruit', crops: ['peach'], region: 'JP', by: 'area', label: 'orchard' } as const;
const gunma = (at: string): Cite => derived('jp-gunma-fruit', at);
/** Printed for 20 to 50 t of fruit a hectare: both ends are taken, for no yield is known. */
const WA_NAVEL = { source: 'au-wa-citrus-nutrition', crops: ['citrus'], kinds: ['orange'], region: 'AU', by: 'area', bearing: true, label: 'orchard' } as const;
const WA_MANDARIN = { source: 'au-wa-citrus-nutrition', crops: ['citrus'], kinds: ['mandarin', 'tangerine', 'satsuma', 'clementine'], region: 'AU', by: 'area', bearing: true, label: 'orchard' } as const;
const WA_LEMON = { source: 'au-wa-citrus-nutrition', crops: ['citrus'], kinds: ['orange', 'lemon', 'grapefruit'], region: 'AU', by: 'area', bearing: true, label: 'orchard' } as const;
const KIWI_BEARING = { source: 'in-icar-ecourse-kiwifruit', crops: ['kiwifruit'], region: 'IN', by: 'plant', years: [8, 99], bearing: true, cite: read('in-icar-ecourse-kiwifruit', 'full bearing vines, from 8 years') } as const;
const MANDSAUR_GUAVA = { source: 'in-research-rdf-guava', crops: ['guava'], region: 'IN', by: 'plant', years: [7, 7], label: 'orchard', cite: read('in-research-rdf-guava', 'the full dose, trees of 7 years') } as const;
/** Printed in three classes of yield: lowest and highest are taken, for no yield is known. */

export const RULES_WORLD: readonly Rule[] = [
  { id: 'kenya.avocado.1', ...KENYA_AVOCADO, low: 60, years: [1, 1] },
  { id: 'kenya.avocado.2', ...KENYA_AVOCADO, low: 85, years: [2, 2] },
  { id: 'kenya.avocado.3', ...KENYA_AVOCADO, low: 500, years: [3, 3] },
  { id: 'kenya.avocado.4', ...KENYA_AVOCADO, low: 750, years: [4, 4] },
  { id: 'kenya.avocado.5', ...KENYA_AVOCADO, low: 1000, years: [5, 5] },
  { id: 'kenya.avocado.6', ...KENYA_AVOCADO, low: 2000, years: [6, 6] },
  { id: 'kenya.avocado.7', ...KENYA_AVOCADO, low: 3000, years: [7, 7] },
  { id: 'kenya.avocado.8', ...KENYA_AVOCADO, low: 4000, years: [8, 8] },
  { id: 'kenya.avocado.9', ...KENYA_AVOCADO, low: 5000, years: [9, 9] },
  { id: 'kenya.avocado.10', ...KENYA_AVOCADO, low: 6000, years: [10, 10] },
  { id: 'bangladesh.mango.0-1', ...BANGLADESH_MANGO, low: 100, years: [0, 1] },
  { id: 'bangladesh.mango.2-4', ...BANGLADESH_MANGO, low: 250, years: [2, 4] },
  { id: 'bangladesh.mango.5-7', ...BANGLADESH_MANGO, low: 500, years: [5, 7] },
  { id: 'bangladesh.mango.8-10', ...BANGLADESH_MANGO, low: 750, years: [8, 10] },
  { id: 'bangladesh.mango.11-15', ...BANGLADESH_MANGO, low: 1000, years: [11, 15] },
  { id: 'bangladesh.mango.16-20', ...BANGLADESH_MANGO, low: 1500, years: [16, 20] },
  { id: 'bangladesh.mango.over-20', ...BANGLADESH_MANGO, low: 2000, years: [21, 99] },
  { id: 'bangladesh.mango.trial', source: 'bd-bari-mango-trial', crops: ['mango'], region: 'BD', by: 'plant', gives: N_G, low: 960, bearing: true, label: 'orchard', cite: read('bd-bari-mango-trial', 'best treatment of a trial, beside 20 kg of cow dung') },
  { id: 'taiwan.guava.1-2.n', ...TAIWAN_GUAVA, gives: N_G, low: 2 * 60, years: [1, 2] },
  { id: 'taiwan.guava.3-4.n', ...TAIWAN_GUAVA, gives: N_G, low: 2 * 120, years: [3, 4] },
  { id: 'taiwan.guava.5-6.n', ...TAIWAN_GUAVA, gives: N_G, low: 2 * 200, years: [5, 6] },
  { id: 'taiwan.guava.7-8.n', ...TAIWAN_GUAVA, gives: N_G, low: 2 * 250, years: [7, 8] },
  { id: 'taiwan.guava.9-10.n', ...TAIWAN_GUAVA, gives: N_G, low: 2 * 300, years: [9, 10] },
  { id: 'taiwan.guava.11.n', ...TAIWAN_GUAVA, gives: N_G, low: 2 * 400, years: [11, 99] },
  { id: 'taiwan.guava.1-2.p', ...TAIWAN_GUAVA, gives: P_G, low: 2 * 60, years: [1, 2] },
  { id: 'taiwan.guava.3-4.p', ...TAIWAN_GUAVA, gives: P_G, low: 2 * 120, years: [3, 4] },
  { id: 'taiwan.guava.5-6.p', ...TAIWAN_GUAVA, gives: P_G, low: 2 * 120, years: [5, 6] },
  { id: 'taiwan.guava.7-8.p', ...TAIWAN_GUAVA, gives: P_G, low: 2 * 140, years: [7, 8] },
  { id: 'taiwan.guava.9-10.p', ...TAIWAN_GUAVA, gives: P_G, low: 2 * 180, years: [9, 10] },
  { id: 'taiwan.guava.11.p', ...TAIWAN_GUAVA, gives: P_G, low: 2 * 200, years: [11, 99] },
  { id: 'taiwan.guava.1-2.k', ...TAIWAN_GUAVA, gives: K_G, low: 2 * 60, years: [1, 2] },
  { id: 'taiwan.guava.3-4.k', ...TAIWAN_GUAVA, gives: K_G, low: 2 * 120, years: [3, 4] },
  { id: 'taiwan.guava.5-6.k', ...TAIWAN_GUAVA, gives: K_G, low: 2 * 200, years: [5, 6] },
  { id: 'taiwan.guava.7-8.k', ...TAIWAN_GUAVA, gives: K_G, low: 2 * 250, years: [7, 8] },
  { id: 'taiwan.guava.9-10.k', ...TAIWAN_GUAVA, gives: K_G, low: 2 * 300, years: [9, 10] },
  { id: 'taiwan.guava.11.k', ...TAIWAN_GUAVA, gives: K_G, low: 2 * 400, years: [11, 99] },
  { id: 'taiwan.citrus.1-3.n', ...TAIWAN_CITRUS, gives: N_G, low: 75, years: [1, 3] },
  { id: 'taiwan.citrus.1-3.p', ...TAIWAN_CITRUS, gives: P_G, low: 75, years: [1, 3] },
  { id: 'taiwan.citrus.1-3.k', ...TAIWAN_CITRUS, gives: K_G, low: 75, years: [1, 3] },
  { id: 'taiwan.citrus.5.n', ...TAIWAN_CITRUS, gives: N_G, low: 150, years: [5, 5] },
  { id: 'taiwan.citrus.5.p', ...TAIWAN_CITRUS, gives: P_G, low: 150, years: [5, 5] },
  { id: 'taiwan.citrus.5.k', ...TAIWAN_CITRUS, gives: K_G, low: 150, years: [5, 5] },
  { id: 'taiwan.asian-pear.15.n', ...TAIWAN_PEAR, gives: N_G, low: 830 },
  { id: 'taiwan.asian-pear.15.p', ...TAIWAN_PEAR, gives: P_G, low: 500 },
  { id: 'taiwan.asian-pear.15.k', ...TAIWAN_PEAR, gives: K_G, low: 640 },
  { id: 'gunma.apple.4-5.n', ...GUNMA_APPLE, gives: N_M2, low: 5, years: [4, 5], cite: gunma('apple, young, 30 trees a 10 a') },
  { id: 'gunma.apple.4-5.p', ...GUNMA_APPLE, gives: P_M2, low: 2, years: [4, 5], cite: gunma('apple, young, 30 trees a 10 a') },
  { id: 'gunma.apple.4-5.k', ...GUNMA_APPLE, gives: K_M2, low: 3, years: [4, 5], cite: gunma('apple, young, 30 trees a 10 a') },
  { id: 'gunma.apple.7-8.n', ...GUNMA_APPLE, gives: N_M2, low: 8, years: [7, 8], cite: gunma('apple, not yet full-grown, 30 trees a 10 a') },
  { id: 'gunma.apple.7-8.p', ...GUNMA_APPLE, gives: P_M2, low: 4, years: [7, 8], cite: gunma('apple, not yet full-grown, 30 trees a 10 a') },
  { id: 'gunma.apple.7-8.k', ...GUNMA_APPLE, gives: K_M2, low: 6, years: [7, 8], cite: gunma('apple, not yet full-grown, 30 trees a 10 a') },
  { id: 'gunma.apple.12.n', ...GUNMA_APPLE, gives: N_M2, low: 15, years: [12, 99], cite: gunma('apple, full-grown, 15 trees a 10 a') },
  { id: 'gunma.apple.12.p', ...GUNMA_APPLE, gives: P_M2, low: 8, years: [12, 99], cite: gunma('apple, full-grown, 15 trees a 10 a') },
  { id: 'gunma.apple.12.k', ...GUNMA_APPLE, gives: K_M2, low: 12, years: [12, 99], cite: gunma('apple, full-grown, 15 trees a 10 a') },
  { id: 'gunma.apple.dwarf.4-5.n', ...GUNMA_DWARF, gives: N_M2, low: 5, years: [4, 5], cite: gunma('dwarf apple, young, 100 to 130 trees a 10 a') },
  { id: 'gunma.apple.dwarf.4-5.p', ...GUNMA_DWARF, gives: P_M2, low: 3, years: [4, 5], cite: gunma('dwarf apple, young, 100 to 130 trees a 10 a') },
  { id: 'gunma.apple.dwarf.4-5.k', ...GUNMA_DWARF, gives: K_M2, low: 3, years: [4, 5], cite: gunma('dwarf apple, young, 100 to 130 trees a 10 a') },
  { id: 'gunma.apple.dwarf.5-6.n', ...GUNMA_DWARF, gives: N_M2, low: 10, years: [5, 6], cite: gunma('dwarf apple, nearly full-grown, 100 to 130 trees a 10 a') },
  { id: 'gunma.apple.dwarf.5-6.p', ...GUNMA_DWARF, gives: P_M2, low: 5, years: [5, 6], cite: gunma('dwarf apple, nearly full-grown, 100 to 130 trees a 10 a') },
  { id: 'gunma.apple.dwarf.5-6.k', ...GUNMA_DWARF, gives: K_M2, low: 5, years: [5, 6], cite: gunma('dwarf apple, nearly full-grown, 100 to 130 trees a 10 a') },
  { id: 'gunma.apple.dwarf.grown.n', ...GUNMA_DWARF, gives: N_M2, low: 10, bearing: true, cite: gunma('dwarf apple, full-grown, 100 to 130 trees a 10 a') },
  { id: 'gunma.apple.dwarf.grown.p', ...GUNMA_DWARF, gives: P_M2, low: 5, bearing: true, cite: gunma('dwarf apple, full-grown, 100 to 130 trees a 10 a') },
  { id: 'gunma.apple.dwarf.grown.k', ...GUNMA_DWARF, gives: K_M2, low: 5, bearing: true, cite: gunma('dwarf apple, full-grown, 100 to 130 trees a 10 a') },
  { id: 'gunma.asian-pear.7-10.n', ...GUNMA_PEAR, gives: N_M2, low: 10, years: [7, 10], cite: gunma('Kosui, not yet full-grown, 33 trees a 10 a') },
  { id: 'gunma.asian-pear.7-10.p', ...GUNMA_PEAR, gives: P_M2, low: 8, years: [7, 10], cite: gunma('Kosui, not yet full-grown, 33 trees a 10 a') },
  { id: 'gunma.asian-pear.7-10.k', ...GUNMA_PEAR, gives: K_M2, low: 10, years: [7, 10], cite: gunma('Kosui, not yet full-grown, 33 trees a 10 a') },
  { id: 'gunma.asian-pear.12.n', ...GUNMA_PEAR, gives: N_M2, low: 15, high: 22, years: [12, 99], cite: gunma('full-grown: Nijisseiki 15 kg a 10 a, Kosui and Hosui 22') },
  { id: 'gunma.asian-pear.12.p', ...GUNMA_PEAR, gives: P_M2, low: 18, years: [12, 99], cite: gunma('Kosui, full-grown, 20 trees a 10 a') },
  { id: 'gunma.asian-pear.12.k', ...GUNMA_PEAR, gives: K_M2, low: 18, years: [12, 99], cite: gunma('Kosui, full-grown, 20 trees a 10 a') },
  { id: 'gunma.peach.2-3.n', ...GUNMA_PEACH, gives: N_M2, low: 3, years: [2, 3], cite: gunma('Hakuho, young, 33 trees a 10 a') },
  { id: 'gunma.peach.2-3.p', ...GUNMA_PEACH, gives: P_M2, low: 2, years: [2, 3], cite: gunma('Hakuho, young, 33 trees a 10 a') },
  { id: 'gunma.peach.2-3.k', ...GUNMA_PEACH, gives: K_M2, low: 3, years: [2, 3], cite: gunma('Hakuho, young, 33 trees a 10 a') },
  { id: 'gunma.peach.5-6.n', ...GUNMA_PEACH, gives: N_M2, low: 9, years: [5, 6], cite: gunma('Hakuho, not yet full-grown, 33 trees a 10 a') },
  { id: 'gunma.peach.5-6.p', ...GUNMA_PEACH, gives: P_M2, low: 8, years: [5, 6], cite: gunma('Hakuho, not yet full-grown, 33 trees a 10 a') },
  { id: 'gunma.peach.5-6.k', ...GUNMA_PEACH, gives: K_M2, low: 9, years: [5, 6], cite: gunma('Hakuho, not yet full-grown, 33 trees a 10 a') },
  { id: 'gunma.peach.8-10.n', ...GUNMA_PEACH, gives: N_M2, low: 12, years: [8, 10], cite: gunma('Hakuho, full-grown, 33 trees a 10 a') },
  { id: 'gunma.peach.8-10.p', ...GUNMA_PEACH, gives: P_M2, low: 10, years: [8, 10], cite: gunma('Hakuho, full-grown, 33 trees a 10 a') },
  { id: 'gunma.peach.8-10.k', ...GUNMA_PEACH, gives: K_M2, low: 12, years: [8, 10], cite: gunma('Hakuho, full-grown, 33 trees a 10 a') },
  { id: 'gunma.peach.10.n', ...GUNMA_PEACH, gives: N_M2, low: 15, years: [10, 99], cite: gunma('Hakuho, full-grown, 20 trees a 10 a') },
  { id: 'gunma.peach.10.p', ...GUNMA_PEACH, gives: P_M2, low: 12, years: [10, 99], cite: gunma('Hakuho, full-grown, 20 trees a 10 a') },
  { id: 'gunma.peach.10.k', ...GUNMA_PEACH, gives: K_M2, low: 15, years: [10, 99], cite: gunma('Hakuho, full-grown, 20 trees a 10 a') },
  { id: 'japan.persimmon.orchard.n', source: 'jp-home-persimmon', crops: ['persimmon'], region: 'JP', by: 'plant', gives: N_KG, low: 0.5, high: 0.7, years: [15, 99], bearing: true, label: 'orchard', cite: read('jp-home-persimmon', 'orchard tree from 15 years, 30 trees a 10 a') },
  { id: 'japan.persimmon.orchard.p', source: 'jp-home-persimmon', crops: ['persimmon'], region: 'JP', by: 'area', gives: P_M2, low: 15, high: 23, years: [15, 99], bearing: true, label: 'orchard', cite: derived('jp-home-persimmon', 'orchard from 15 years, kg a 10 a') },
  { id: 'japan.persimmon.orchard.k', source: 'jp-home-persimmon', crops: ['persimmon'], region: 'JP', by: 'area', gives: K_M2, low: 18, high: 25, years: [15, 99], bearing: true, label: 'orchard', cite: derived('jp-home-persimmon', 'orchard from 15 years, kg a 10 a') },
  { id: 'western-australia.navel.n', ...WA_NAVEL, gives: N_HA, low: 60, high: 150, cite: read('au-wa-citrus-nutrition', 'table 1, navel oranges, 20 to 50 t/ha') },
  { id: 'western-australia.navel.p', ...WA_NAVEL, gives: P_HA, low: 14 / P_ELEMENT, high: 35 / P_ELEMENT, cite: derived('au-wa-citrus-nutrition', 'table 1, navel oranges, 20 to 50 t/ha, the element P') },
  { id: 'western-australia.navel.k', ...WA_NAVEL, gives: K_HA, low: 60 / K_ELEMENT, high: 150 / K_ELEMENT, cite: derived('au-wa-citrus-nutrition', 'table 1, navel oranges, 20 to 50 t/ha, the element K') },
  { id: 'western-australia.mandarin.n', ...WA_MANDARIN, gives: N_HA, low: 76, high: 190, cite: read('au-wa-citrus-nutrition', 'table 2, mandarins, 20 to 50 t/ha') },
  { id: 'western-australia.mandarin.p', ...WA_MANDARIN, gives: P_HA, low: 14 / P_ELEMENT, high: 35 / P_ELEMENT, cite: derived('au-wa-citrus-nutrition', 'table 2, mandarins, 20 to 50 t/ha, the element P') },
  { id: 'western-australia.mandarin.k', ...WA_MANDARIN, gives: K_HA, low: 80 / K_ELEMENT, high: 200 / K_ELEMENT, cite: derived('au-wa-citrus-nutrition', 'table 2, mandarins, 20 to 50 t/ha, the element K') },
  { id: 'western-australia.lemon.n', ...WA_LEMON, gives: N_HA, low: 40, high: 100, cite: read('au-wa-citrus-nutrition', 'table 3, Valencia, lemon, grapefruit, 20 to 50 t/ha') },
  { id: 'western-australia.lemon.p', ...WA_LEMON, gives: P_HA, low: 14 / P_ELEMENT, high: 35 / P_ELEMENT, cite: derived('au-wa-citrus-nutrition', 'table 3, Valencia, lemon, grapefruit, 20 to 50 t/ha, the element P') },
  { id: 'western-australia.lemon.k', ...WA_LEMON, gives: K_HA, low: 60 / K_ELEMENT, high: 150 / K_ELEMENT, cite: derived('au-wa-citrus-nutrition', 'table 3, Valencia, lemon, grapefruit, 20 to 50 t/ha, the element K') },
  { id: 'india.kiwifruit.years', source: 'in-icar-ecourse-kiwifruit', crops: ['kiwifruit'], region: 'IN', by: 'years', gives: OF_KG(15), low: 0.5, years: [1, 7], cite: read('in-icar-ecourse-kiwifruit', 'mixture of 15 % N a year of age') },
  { id: 'india.kiwifruit.bearing.n', ...KIWI_BEARING, gives: N_G, low: 800, doses: 2 },
  { id: 'india.kiwifruit.bearing.p', ...KIWI_BEARING, gives: P_G, low: 560, doses: 1 },
  { id: 'india.kiwifruit.bearing.k', ...KIWI_BEARING, gives: K_G, low: 1200, doses: 1 },
  { id: 'india.walnut.years', source: 'in-icar-ecourse-walnut', crops: ['walnut'], region: 'IN', by: 'years', gives: OF_KG(15), low: 0.5, years: [1, 16], doses: 1, cite: derived('in-icar-ecourse-walnut', 'half a kilo a year to 16 years, which comes to the 8 kg of a full tree') },
  { id: 'india.walnut.bearing', source: 'in-icar-ecourse-walnut', crops: ['walnut'], region: 'IN', by: 'plant', gives: OF_KG(15), low: 8, years: [17, 99], doses: 1, cite: read('in-icar-ecourse-walnut', 'full bearing trees, after 16 years') },
  { id: 'india.fig.1-2', source: 'in-icar-ecourse-fig', crops: ['fig'], region: 'IN', by: 'plant', gives: N_G, low: 75, years: [1, 2], cite: read('in-icar-ecourse-fig', 'plants of 1 to 2 years') },
  { id: 'india.fig.5', source: 'in-icar-ecourse-fig', crops: ['fig'], region: 'IN', by: 'plant', gives: N_G, low: 300, years: [5, 99], cite: read('in-icar-ecourse-fig', 'from the 5th year') },
  { id: 'pantnagar.peach.5-6', source: 'in-research-rdf-peach', crops: ['peach'], region: 'IN', by: 'plant', gives: N_G, low: 420, years: [5, 6], label: 'orchard', cite: read('in-research-rdf-peach', 'the recommended dose that the trial starts from') },
  { id: 'mandsaur.guava.7.n', ...MANDSAUR_GUAVA, gives: N_G, low: 600 },
  { id: 'mandsaur.guava.7.p', ...MANDSAUR_GUAVA, gives: P_G, low: 400 },
  { id: 'mandsaur.guava.7.k', ...MANDSAUR_GUAVA, gives: K_G, low: 300 },
  { id: 'punjab.pomegranate.trial', source: 'in-research-rdf-pomegranate', crops: ['pomegranate'], region: 'IN', by: 'plant', gives: N_G, low: 300, bearing: true, label: 'orchard', cite: read('in-research-rdf-pomegranate', 'best yield of a trial, beside manure') },
  { id: 'corrientes.orange.full', source: 'ar-corrientes-valencia', crops: ['citrus'], kinds: ['orange'], region: 'AR', by: 'plant', gives: OF_KG(15), low: 3, doses: 2, bearing: true, label: 'orchard', cite: read('ar-corrientes-valencia', 'the full soil dose of a trial, 15-6-15-6') },
  { id: 'sao-paulo.lemon.trial', source: 'brazil-lemon-npk', crops: ['citrus'], kinds: ['lemon'], region: 'BR', by: 'area', gives: N_HA, low: 220, doses: 3, bearing: true, label: 'orchard', cite: read('brazil-lemon-npk', 'nitrogen of the best yield over six harvests') },
];
