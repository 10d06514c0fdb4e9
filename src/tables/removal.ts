/**
 * What a crop takes off, by weight of what is picked: kilograms a tonne or pounds a short ton.
 * `of` says whether the page prints the element or the oxide. For potash only the fruit as picked counts;
 * what a whole plant takes up for that crop is kept apart as `whole plant`.
 */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';

export type Removal = {
  readonly crops: readonly Crop[];
  /** The growers' words for it, where a figure is for some kinds of the crop only. */
  readonly kinds?: readonly string[];
  readonly region: string;
  readonly of: 'N' | 'P' | 'P2O5' | 'K' | 'K2O';
  readonly unit: 'kg/t' | 'lb/ton';
  readonly low: number;
  readonly high: number;
  /** The ton is a ton of this; of a whole plant, a ton of its fruit. */
  readonly part: 'fruit' | 'nuts in shell' | 'kernels' | 'whole plant';
  readonly label?: 'old' | 'weak';
  readonly cite: Cite;
};

type Head = Pick<Removal, 'crops' | 'kinds' | 'region' | 'unit' | 'part' | 'label' | 'cite'>;
type Span = number | readonly [number, number];
const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const derived = (source: string, at: string): Cite => ({ source, at, mark: 'derived' });

/** The figures of one publication for one crop, in the order written. */
function removalTable(head: Head, figures: Partial<Record<Removal['of'], Span>>): Removal[] {
  return (Object.entries(figures) as [Removal['of'], Span][]).map(([of, span]) => {
    const [low, high] = typeof span === 'number' ? [span, span] : span;
    return { ...head, of, low, high };
  });
}

const washington = (crop: Crop): Head => ({ crops: [crop], region: 'US-WA', unit: 'lb/ton', part: 'fruit', cite: read('washington-removal', crop) });
const tarn = (crop: Crop): Head => ({ crops: [crop], region: 'FR', unit: 'kg/t', part: 'fruit', cite: read('tarn-et-garonne', crop) });
/** Printed by the hectare beside the yield in tonnes; divided here. */
const austria = (crop: Crop): Head => ({ crops: [crop], region: 'AT', unit: 'kg/t', part: 'whole plant', cite: derived('austria-orchard', 'table of uptake by yield, page 26') });
/** Printed for 1,000 lb of kernels, with all that leaves the orchard beside them; doubled here to a ton. */
const almond = (source: string, at: string): Head => ({ crops: ['almond'], region: 'US-CA', unit: 'lb/ton', part: 'kernels', cite: derived(source, at) });
const zealand = (crops: readonly Crop[], at: string): Head => ({ crops, region: 'NZ', unit: 'kg/t', part: 'fruit', cite: read('nz-orchardist-n-removal', at) });
const campania = (crop: Crop, part: Removal['part'], at: string): Head => ({ crops: [crop], region: 'IT', unit: 'kg/t', part, cite: read('it-campania-guida', at) });

export const REMOVAL: readonly Removal[] = [
  ...removalTable(washington('apple'), { K: [2.0, 3.9] }), ...removalTable(washington('pear'), { K: 3.0 }), ...removalTable(washington('cherry'), { K: [2.9, 6.3] }),
  ...removalTable({ crops: ['peach'], region: 'US-CA', unit: 'lb/ton', part: 'fruit', cite: derived('california-peach-removal', '86 lb K in 15 tons') }, { K: 86 / 15 }),
  ...removalTable(tarn('plum'), { K2O: [2.3, 4.6] }),
  ...removalTable({ crops: ['citrus'], region: 'BR', unit: 'kg/t', part: 'fruit', cite: read('bragantia-citrus', 'mean of nine kinds, printed in grams') }, { K: 1.513 }),

  // Washington: the rest of the table. Its peach stands well above California's and is marked down.
  ...removalTable(washington('apple'), { N: [0.9, 2.1], P: [0.2, 0.4] }),
  ...removalTable({ ...washington('apple'), cite: read('washington-removal', 'green apple') }, { N: 3.1, P: 0.4, K: 3.4 }),
  ...removalTable(washington('pear'), { N: [1.3, 2.7], P: 0.6 }),
  ...removalTable(washington('cherry'), { N: [1.9, 5.0], P: [0.5, 0.9] }),
  ...removalTable(washington('apricot'), { N: [8.3, 11], P: 1.3, K: 6.6 }),
  ...removalTable({ ...washington('peach'), label: 'weak' }, { N: [4.5, 12], P: 1.2, K: 8.1 }),
  ...removalTable({ crops: ['peach'], region: 'US-CA', unit: 'lb/ton', part: 'fruit', cite: derived('california-peach-removal', '68 lb N and 11 lb P in 15 tons') }, { N: 68 / 15, P: 11 / 15 }),

  // Tarn-et-Garonne, oxides.
  ...removalTable(tarn('apple'), { N: [1, 2], P2O5: [0.4, 0.8], K2O: [1.5, 3] }),
  ...removalTable(tarn('pear'), { N: [1, 2], P2O5: [0.5, 1], K2O: [1.5, 3] }),
  ...removalTable(tarn('peach'), { N: [2, 4], P2O5: [0.6, 1.2], K2O: [2.5, 5] }),
  ...removalTable(tarn('plum'), { N: [2.4, 4.8], P2O5: [0.2, 0.4] }),
  ...removalTable({ ...tarn('plum'), kinds: ['prune'], cite: read('tarn-et-garonne', 'Ente prune') }, { N: 1.2, P2O5: 0.6, K2O: 3 }),
  ...removalTable(tarn('cherry'), { N: [2.4, 4.8], P2O5: [0.6, 1.2], K2O: [2, 4] }),
  ...removalTable(tarn('kiwifruit'), { N: [2, 3], P2O5: [1, 2], K2O: [3, 4] }),
  ...removalTable({ ...tarn('hazelnut'), part: 'nuts in shell' }, { N: 13.5, P2O5: 3.5, K2O: 7.5 }),

  // Fruit elsewhere.
  ...removalTable({ crops: ['apple'], region: 'DK', unit: 'kg/t', part: 'fruit', cite: read('dk-okoportalen-frugt', 'a tonne of apples, from a trial in New Zealand') }, { N: 0.44, P: 0.1, K: 1.19 }),
  ...removalTable({ crops: ['apple'], region: 'DE', unit: 'kg/t', part: 'fruit', cite: read('streuobst-murg-oos', 'a tonne of apples') }, { N: 0.4, P2O5: 0.125, K: [1.1, 1.4] }),
  ...removalTable({ crops: ['apple', 'pear', 'plum', 'cherry'], region: 'DE', unit: 'kg/t', part: 'fruit', cite: derived('de-oekolandbau-obst', '20 kg N in 25 t of pome or stone fruit') }, { N: 20 / 25 }),
  ...removalTable(zealand(['apple', 'pear'], 'pome fruit'), { N: [0.6, 1.1] }),
  ...removalTable(zealand(['peach'], 'peach and nectarine'), { N: 1.2 }),
  ...removalTable(zealand(['kiwifruit'], 'kiwifruit'), { N: [0.93, 1.63] }),
  ...removalTable(zealand(['avocado'], 'avocado'), { N: [1.13, 2.2] }),
  ...removalTable(zealand(['citrus'], 'citrus, varies'), { N: 2.9 }),
  ...removalTable({ crops: ['avocado'], region: 'NZ', unit: 'kg/t', part: 'fruit', cite: derived('nz-avocado-removal', '10 t at 32 % dry matter') }, { N: 32.7 / 10, P: 4.8 / 10, K: 51.1 / 10 }),
  ...removalTable({ crops: ['citrus'], region: 'BR', unit: 'kg/t', part: 'fruit', cite: read('bragantia-citrus', 'mean of nine kinds, printed in grams') }, { N: 1.906, P: 0.173 }),
  ...removalTable({ crops: ['citrus'], kinds: ['orange'], region: 'US-FL', unit: 'kg/t', part: 'fruit', cite: read('brazil-florida-hamlin', 'Hamlin orange, fruit') }, { N: 1.2, P: 0.18, K: 1.54 }),
  ...removalTable({ crops: ['citrus'], kinds: ['mandarin'], region: 'IN', unit: 'kg/t', part: 'fruit', cite: derived('punjab-kinnow-removal', 'Kinnow mandarin, 40 t') }, { N: 96 / 40, P: 10.8 / 40, K: 78.8 / 40 }),
  ...removalTable({ crops: ['citrus'], kinds: ['orange'], region: 'US-FL', unit: 'lb/ton', part: 'fruit', label: 'old', cite: derived('florida-1910-orange', '300 boxes of 80 lb') }, { N: 28.3 / 12, P2O5: 12.7 / 12, K2O: 70.3 / 12 }),
  ...removalTable({ crops: ['olive'], region: 'ES', unit: 'kg/t', part: 'fruit', cite: read('olive-removal-cordoba', 'fresh fruit, mean of two orchards') }, { N: 2.87, K: 4.42 }),
  ...removalTable({ crops: ['olive'], region: 'US-CA', unit: 'lb/ton', part: 'fruit', cite: read('cdfa-frep-olive', 'fresh olives, all trials, mean 6.28') }, { N: [4, 11.1] }),
  ...removalTable({ crops: ['olive'], region: 'US-CA', unit: 'lb/ton', part: 'fruit', cite: read('uc-olive-removal', 'four oil olives, of Portugal and California') }, { N: [6.3, 8.23] }),
  ...removalTable(campania('olive', 'fruit', 'page 93, fruit, first reference'), { N: 10, P2O5: 2.3, K2O: 4.4 }),
  ...removalTable(campania('olive', 'fruit', 'page 93, fruit, third reference'), { N: 8, K2O: 9.5 }),
  ...removalTable({ crops: ['olive'], region: 'US-TX', unit: 'lb/ton', part: 'fruit', cite: derived('tpsl-olive', 'mature orchard, 9 tons') }, { N: 130 / 9, P2O5: 31 / 9, K2O: 157 / 9 }),

  // Nuts.
  ...removalTable(almond('uc-almond-removal', 'kernels with hulls, shells, leaves and sticks'), { N: 65 * 2, P: 8 * 2, K: 76 * 2 }),
  ...removalTable(almond('uc-almond-removal-2010', 'by weight of kernels'), { N: 58 * 2, P: 7 * 2, K: 51 * 2 }),
  ...removalTable(almond('uc-almond-demand', 'kernels with hulls, shells and leaves'), { N: [60 * 2, 65 * 2] }),
  ...removalTable({ crops: ['walnut'], region: 'US-CA', unit: 'lb/ton', part: 'nuts in shell', cite: read('cdfa-walnut-removal', 'nuts with hulls, all trials, mean 31.9') }, { N: [24, 46.4] }),
  ...removalTable({ crops: ['walnut'], region: 'US-CA', unit: 'lb/ton', part: 'nuts in shell', cite: read('walnut-board-n', 'mean of six orchards') }, { N: 29 }),
  ...removalTable(campania('hazelnut', 'nuts in shell', 'page 91, fruit'), { N: 28.2, P2O5: 4.3, K2O: 12.5 }),

  // What the whole plant takes up for a ton of fruit.
  ...removalTable(campania('hazelnut', 'whole plant', 'page 91, fruit, wood and leaves'), { N: 31, P2O5: 13.5, K2O: 29 }),
  ...removalTable(campania('olive', 'whole plant', 'page 93, fruit, wood and leaves, first reference'), { N: 24.8, P2O5: 4.8, K2O: 20 }),
  ...removalTable(campania('olive', 'whole plant', 'page 93, fruit, wood and leaves, third reference'), { N: 20, P2O5: 4.3, K2O: 17.5 }),
  ...removalTable({ crops: ['olive'], region: 'ES', unit: 'kg/t', part: 'whole plant', cite: read('es-olivo-garcia', 'taken up a year by weight of olives') }, { N: [15, 20], P2O5: [4, 5], K2O: [20, 25] }),
  ...removalTable(austria('gooseberry'), { N: 90 / 17, P2O5: 45 / 17, K2O: 115 / 17 }),
  ...removalTable(austria('strawberry'), { N: 120 / 20, P2O5: 45 / 20, K2O: 170 / 20 }),
  ...removalTable(austria('raspberry'), { N: 60 / 15, P2O5: 40 / 15, K2O: 90 / 15 }),
  ...removalTable(austria('blackberry'), { N: 70 / 20, P2O5: 45 / 20, K2O: 85 / 20 }),
  ...removalTable(austria('blueberry'), { N: 40 / 15, P2O5: 35 / 15, K2O: 75 / 15 }),
  ...removalTable(austria('elderberry'), { N: 175 / 12, P2O5: 50 / 12, K2O: 110 / 12 }),
  ...removalTable({ crops: ['grape'], region: 'ZA', unit: 'kg/t', part: 'whole plant', cite: read('za-table-grape-uptake', 'table 8, by weight of grapes') }, { N: 3.93, P: 0.7, K: 3.2 }),
  ...removalTable({ crops: ['persimmon'], region: 'JP', unit: 'kg/t', part: 'whole plant', label: 'old', cite: derived('persimmon-japan-uptake', '40 trees with 1,425 kg of fruit') }, { N: 8.55 / 1.425, P2O5: 2.3 / 1.425, K2O: 7.33 / 1.425 }),
];
