// One line of a report and all that a reader of it would say (practice): what is the value, what its unit, method, form, class and range; what is only chatter.
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import type { Reading } from '../../src/soil/reading.ts';

const read = (text: string): { readings: readonly Reading[]; codes: string[] } => {
  const report = readReport(text, 'r.txt');
  return { readings: report.samples.flatMap((s) => s.readings), codes: report.notices.map((n) => n.code) };
};
/** Only what a reading says, without what it does not say. */
const told = (r: Reading): Record<string, unknown> => Object.fromEntries(Object.entries({ item: r.item, value: r.value, unit: r.unit, form: r.form, method: r.method, rating: r.lab.rating, range: r.lab.range, index: r.index, to: r.to, below: r.below, above: r.above, tag: r.tag }).filter(([, v]) => v !== null && v !== undefined));
const P = { item: 'phosphorus', unit: 'ppm' };
const K = { item: 'potassium', unit: 'ppm' };

test.each<[string, ...Record<string, unknown>[]]>([
  // The value and its unit, before or behind, in brackets or in a cell of their own.
  ['Phosphorus 42 ppm', { ...P, value: 42 }], ['Phosphorus: 42 ppm', { ...P, value: 42 }], ['Phosphorus (ppm) 42', { ...P, value: 42 }], ['Phosphorus | 42 | ppm', { ...P, value: 42 }], ['Phosphorus (P) = 42 ppm', { ...P, value: 42 }], ['Phosphorus (42 ppm)', { ...P, value: 42 }], ['Phosphorus ppm 42', { ...P, value: 42 }],
  ['23 ppm phosphorus', { ...P, value: 23 }], ['4.1 % organic matter', { item: 'organic-matter', value: 4.1, unit: '%' }], ['% Organic matter 3.7', { item: 'organic-matter', value: 3.7, unit: '%' }], ['62 % sand, 25 % silt, 13 % clay', { item: 'sand', value: 62, unit: '%' }, { item: 'silt', value: 25, unit: '%' }, { item: 'clay', value: 13, unit: '%' }],
  ['pH 6.4, P 42 ppm, K 180 ppm', { item: 'ph', value: 6.4, unit: 'pH' }, { ...P, value: 42 }, { ...K, value: 180 }], ['P 42 ppm K 180 ppm', { ...P, value: 42 }, { ...K, value: 180 }],
  // Limits, spans and traces.
  ['Phosphorus <5 ppm', { ...P, value: 5, below: true }], ['Phosphorus > 200 ppm', { ...P, value: 200, above: true }], ['Phosphorus less than 5 ppm', { ...P, value: 5, below: true }], ['Phosphorus below 5 ppm', { ...P, value: 5, below: true }], ['Phosphorus under 5 ppm', { ...P, value: 5, below: true }], ['Phosphorus ≤ 5 ppm', { ...P, value: 5, below: true }], ['Phosphorus above 200 ppm', { ...P, value: 200, above: true }], ['Phosphorus more than 200 ppm', { ...P, value: 200, above: true }], ['Phosphorus over 200 ppm', { ...P, value: 200, above: true }], ['Phosphorus >= 200 ppm', { ...P, value: 200, above: true }], ['Phosphorus below', { item: 'phosphorus', rating: 'low' }], ['Phosphorus 42 ppm above', { ...P, value: 42, rating: 'high' }],
  ['Phosphorus not detected', { item: 'phosphorus', below: true }], ['Phosphorus BDL', { item: 'phosphorus', below: true }], ['Phosphorus none'], ['Phosphorus < detection limit'],
  // Dates, times, depths, ratios and footnotes beside a value.
  ['Phosphorus 42 ppm 3/11/2025', { ...P, value: 42 }], ['3.11.2025 Phosphorus 42 ppm', { ...P, value: 42 }], ['Phosphorus 42 ppm at 12:30', { ...P, value: 42 }], ['Phosphorus 0-6 in 42 ppm', { ...P, value: 42 }], ['Phosphorus (0-15 cm) 42 ppm', { ...P, value: 42 }], ['pH 1:2.5 6.4', { item: 'ph', value: 6.4, unit: 'pH', method: 'water' }], ['pH (1:1) 6.4', { item: 'ph', value: 6.4, unit: 'pH', method: 'water' }], ['Phosphorus 42* ppm', { ...P, value: 42 }], ['Phosphorus - 42 ppm', { ...P, value: 42 }],
  // Numbers hard against their units, without a zero, with a thousands sign; full stops that end a sentence or cut a word.
  ['Phosphorus 42ppm', { ...P, value: 42 }], ['Phosphorus .5 ppm', { ...P, value: 0.5 }], ['Phosphorus 1,234 ppm', { ...P, value: 1234 }], ['Calcium 1,234.5 ppm', { item: 'calcium', value: 1234.5, unit: 'ppm' }], ['Calcium 1\'234 ppm', { item: 'calcium', value: 1234, unit: 'ppm' }], ['Phosphorus 42 ppm. Potassium 180 ppm.', { ...P, value: 42 }, { ...K, value: 180 }], ['Avail. phosphorus 42 ppm', { ...P, value: 42 }], ['Exch. K 0.4 meq/100g', { item: 'potassium', value: 0.4, unit: 'meq/100g' }],
  ['Phosphorus 40..50 ppm', { ...P, value: 40, to: 50 }], ['Phosphorus 40 bis 50 ppm', { ...P, value: 40, to: 50 }], ['Phosphorus [30-50] 42 ppm', { ...P, value: 42, range: [30, 50] }], ['Phosphorus 42 [ppm]', { ...P, value: 42 }], ['Phosphorus (42 ppm', { ...P, value: 42 }], ['Phosphorus 42 ppm neither low nor high', { ...P, value: 42 }], ['Phosphorus 5-10-10'], ['Phosphorus ½ ppm'], ['Phosphorus 40-50 ppm', { ...P, value: 40, to: 50 }], ['Phosphorus 40 to 50 ppm', { ...P, value: 40, to: 50 }], ['Sodium trace', { item: 'sodium', below: true }], ['Sodium (trace)', { item: 'sodium', below: true }],
  // Forms.
  ['P2O5 12 mg/100 g', { item: 'phosphorus', value: 12, unit: 'mg/100g', form: 'P2O5' }], ['Potassium (K2O) 18 mg/100g', { item: 'potassium', value: 18, unit: 'mg/100g', form: 'K2O' }], ['Magnesium (MgO) 20 mg/100g', { item: 'magnesium', value: 20, unit: 'mg/100g', form: 'MgO' }], ['Phosphorus 12 mg P2O5/100 g', { item: 'phosphorus', value: 12, unit: 'mg/100g', form: 'P2O5' }], ['Nitrate 44.3 ppm NO3', { item: 'nitrate-n', value: 44.3, unit: 'ppm', form: 'NO3' }], ['Nitrate-N 10 ppm', { item: 'nitrate-n', value: 10, unit: 'ppm' }],
  // The form behind the value: 42 ppm of P2O5 are 18 of P, 44.3 of NO3 are 10 of N.
  ['Phosphorus 42 ppm P2O5', { ...P, value: 42, form: 'P2O5' }], ['Phosphorus 42 ppm (P2O5)', { ...P, value: 42, form: 'P2O5' }], ['Phosphorus 42 ppm, P2O5', { ...P, value: 42, form: 'P2O5' }], ['Phosphorus | 42 | mg/kg P2O5', { item: 'phosphorus', value: 42, unit: 'mg/kg', form: 'P2O5' }], ['Potassium 180 mg/kg as K2O high', { item: 'potassium', value: 180, unit: 'mg/kg', form: 'K2O', rating: 'high' }], ['Nitrate 44.3 ppm (NO3)', { item: 'nitrate-n', value: 44.3, unit: 'ppm', form: 'NO3' }], ['Sulfur 30 mg/kg SO4', { item: 'sulphur', value: 30, unit: 'mg/kg', form: 'SO4' }],
  ['Phosphorus 42 ppm P', { ...P, value: 42 }], ['Nitrate 10 ppm NO3-N', { item: 'nitrate-n', value: 10, unit: 'ppm' }], ['Sulfur 10 ppm SO4-S', { item: 'sulphur', value: 10, unit: 'ppm' }], ['Phosphorus 42 ppm, P2O5 n/a', { ...P, value: 42 }],
  // Methods, wherever they stand.
  ['Phosphorus 42 ppm Mehlich 3', { ...P, value: 42, method: 'mehlich-3' }], ['Phosphorus (Olsen) 18 ppm', { ...P, value: 18, method: 'olsen' }], ['Olsen P 18 ppm', { ...P, value: 18, method: 'olsen' }], ['Phosphorus, Bray P1, 18 ppm', { ...P, value: 18, method: 'bray-1' }], ['pH (1:1 water) 6.4', { item: 'ph', value: 6.4, unit: 'pH', method: 'water' }], ['pH (CaCl2) 5.8', { item: 'ph-salt', value: 5.8, unit: 'pH', method: 'cacl2' }], ['pH KCl 5.2', { item: 'ph-salt', value: 5.2, unit: 'pH', method: 'kcl' }], ['SMP buffer pH 6.8', { item: 'buffer-ph', value: 6.8, unit: 'pH', method: 'smp' }], ['pH SMP 6.8', { item: 'buffer-ph', value: 6.8, unit: 'pH', method: 'smp' }],
  // The lab's word, before or behind.
  ['Phosphorus 42 ppm High', { ...P, value: 42, rating: 'high' }], ['Phosphorus 42 ppm (high)', { ...P, value: 42, rating: 'high' }], ['Very high magnesium', { item: 'magnesium', rating: 'very-high' }], ['Phosphorus: low', { item: 'phosphorus', rating: 'low' }], ['low P 8 ppm high K 96 ppm', { ...P, value: 8, rating: 'low' }, { ...K, value: 96, rating: 'high' }],
  ['Phosphorus 42 ppm not deficient', { ...P, value: 42 }], ['Phosphorus 42 ppm low medium high', { ...P, value: 42 }],
  // The lab's range.
  ['Phosphorus 42 ppm (30-50)', { ...P, value: 42, range: [30, 50] }], ['Phosphorus 42 ppm (optimum 30-50)', { ...P, value: 42, range: [30, 50] }], ['Phosphorus 42 ppm optimum 30-50', { ...P, value: 42, range: [30, 50] }], ['Phosphorus 42 ppm optimum >30', { ...P, value: 42, range: [30, null] }], ['Phosphorus 42 ppm (<50)', { ...P, value: 42, range: [null, 50] }], ['Phosphorus 42 ppm (normal range 30 - 50)', { ...P, value: 42, range: [30, 50] }], ['Phosphorus 42 ppm (30-50 last year)', { ...P, value: 42 }], ['Phosphorus (30-50) 42 ppm', { ...P, value: 42, range: [30, 50] }], ['Phosphorus 30-50 42 ppm', { ...P, value: 42, range: [30, 50] }],
  ['Phosphorus 42 ppm (low 0-20, medium 21-40, high over 40)', { ...P, value: 42, rating: 'high' }], ['Phosphorus 12 ppm (low 0-20, medium 21-40, high over 40)', { ...P, value: 12, rating: 'low' }], ['Phosphorus 12 ppm (low <20, medium 21-40, high >40)', { ...P, value: 12, rating: 'low' }], ['Phosphorus 30 ppm (low <20, medium 21-40, high >40)', { ...P, value: 30, rating: 'medium' }],
  // Other numbers that say what they are.
  ['Phosphorus 42 ppm last year 38', { ...P, value: 42 }], ['Phosphorus 38 ppm last year, 42 ppm this year', { ...P, value: 42 }], ['Phosphorus 42 ppm (was 38)', { ...P, value: 42 }], ['Phosphorus 18 mg/L Index: 2', { item: 'phosphorus', value: 18, unit: 'mg/L', index: 2 }], ['Phosphorus 18 mg/L (index 2)', { item: 'phosphorus', value: 18, unit: 'mg/L', index: 2 }], ['Phosphorus index 2', { item: 'phosphorus', value: 2, unit: 'index' }], ['Potassium 180 ppm 0.46 meq/100g', { ...K, value: 180 }],
  // The index to come to is none of the value's.
  ['Phosphorus 12 mg/l target index 2', { item: 'phosphorus', value: 12, unit: 'mg/L' }], ['Phosphorus 12 mg/l (target index 2)', { item: 'phosphorus', value: 12, unit: 'mg/L' }], ['Phosphorus 12 mg/l Index 1 target index 2', { item: 'phosphorus', value: 12, unit: 'mg/L', index: 1 }], ['Phosphorus 12 mg/l Index 1 (target 2)', { item: 'phosphorus', value: 12, unit: 'mg/L', index: 1 }],
  ['Potassium index 2 180 ppm', { ...K, value: 180, index: 2 }], ['Potassium index 2, 180 ppm', { ...K, value: 180, index: 2 }], ['Phosphorus 12 mg/l optimum (index 2)', { item: 'phosphorus', value: 12, unit: 'mg/L', rating: 'optimum', index: 2 }], ['Phosphorus index 2 optimum', { item: 'phosphorus', value: 2, unit: 'index', rating: 'optimum' }],
  // Brackets: another test, a remark, a range with its word, the value itself.
  ['Phosphorus 42 ppm (Olsen 12)', { ...P, value: 42 }], ['Phosphorus 42 ppm (low in this soil)', { ...P, value: 42 }], ['Phosphorus 42 ppm (optimum 30-50 for apples)', { ...P, value: 42, range: [30, 50] }], ['Phosphorus 42 ppm (30-50 for apples)', { ...P, value: 42 }], ['Phosphorus (42 high)', { item: 'phosphorus', value: 42, rating: 'high' }], ['Phosphorus (optimum >30) 42 ppm', { ...P, value: 42, range: [30, null] }], ['Phosphorus (42)', { item: 'phosphorus', value: 42 }],
  // Ranges with their words, before the value and behind it; older values.
  ['Phosphorus 30-50 optimum 42 ppm', { ...P, value: 42, range: [30, 50] }], ['Phosphorus optimum range 30-50 42 ppm', { ...P, value: 42, range: [30, 50] }], ['Phosphorus 42 ppm range >30', { ...P, value: 42, range: [30, null] }], ['Phosphorus 42 ppm range 30', { ...P, value: 42 }], ['Phosphorus 42 ppm last year 30-40', { ...P, value: 42 }], ['Phosphorus 42 ppm was 38', { ...P, value: 42 }], ['Phosphorus 38 ppm last year | 42 ppm', { ...P, value: 42 }],
  ['Phosphorus 42 ppm low, then medium, then high', { ...P, value: 42 }], ['Phosphorus 42 ppm low high', { ...P, value: 42 }], ['Phosphorus 42 ppm low low', { ...P, value: 42, rating: 'low' }], ['Phosphorus 42 ppm | n/a', { ...P, value: 42 }], ['Phosphorus (CAL) 12 mg/100g C hoch', { item: 'phosphorus', value: 12, unit: 'mg/100g', method: 'cal', rating: 'high' }], ['Phosphorus 42 ppm 96 lb/acre high', { ...P, value: 42, rating: 'high' }], ['Phosphorus 42 ppm in the topsoil', { ...P, value: 42 }],
  // What was not found, or not looked for.
  ['Phosphorus n/a'], ['Phosphorus not tested'], ['Phosphorus -'],
  // Shares of the exchange sites are no contents.
  ['Potassium 4.5 %', { item: 'saturation-k', value: 4.5, unit: '%' }], ['K base saturation 4.5', { item: 'saturation-k', value: 4.5, unit: '%' }], ['Exchangeable sodium 0.2 cmol/kg', { item: 'sodium', value: 0.2, unit: 'cmol/kg' }], ['Exchangeable sodium 2 %', { item: 'saturation-na', value: 2, unit: '%' }], ['Hydrogen 1.2 meq/100g', { item: 'acidity', value: 1.2, unit: 'meq/100g' }], ['Exchangeable acidity 12 %', { item: 'saturation-h', value: 12, unit: '%' }],
  ['K 4.5 % of CEC', { item: 'saturation-k', value: 4.5, unit: '%' }], ['K 4.5 % CEC', { item: 'saturation-k', value: 4.5, unit: '%' }], ['Potassium 4.5 % CEC 12 meq/100g', { item: 'saturation-k', value: 4.5, unit: '%' }, { item: 'cec', value: 12, unit: 'meq/100g' }], ['Pottasium base saturation 4.5', { item: 'saturation-k', value: 4.5, unit: '%' }],
  // Which name is meant: its own second one, another's word in brackets, shares behind a texture.
  ['Sulfatos (S-SO4) 3.7 ppm', { item: 'sulphur', value: 3.7, unit: 'ppm' }], ['Nitrogen (NO3-N) 10 ppm', { item: 'nitrate-n', value: 10, unit: 'ppm' }], ['Lime (CaCO3) 2 %', { item: 'carbonate', value: 2, unit: '%' }], ['Texture: sandy clay loam', { item: 'texture' }], ['Texture: sand', { item: 'texture' }],
  ['Texture: sand 40 %, silt 40 %, clay 20 %', ...(['sand', 'silt', 'clay'] as const).map((item, i) => ({ item, value: [40, 40, 20][i], unit: '%' }))], ['sand 40 % silt 40 % clay 20 %', ...(['sand', 'silt', 'clay'] as const).map((item, i) => ({ item, value: [40, 40, 20][i], unit: '%' }))], ['40 % sand 40 % silt 20 % clay', ...(['sand', 'silt', 'clay'] as const).map((item, i) => ({ item, value: [40, 40, 20][i], unit: '%' }))],
  // Words of rating of one name and of the next.
  ['P very low, K low', { item: 'phosphorus', rating: 'very-low' }, { item: 'potassium', rating: 'low' }], ['P 42 ppm VH K 180 ppm M', { ...P, value: 42, rating: 'very-high' }, { ...K, value: 180, rating: 'medium' }], ['Phosphorus low 12 ppm', { ...P, value: 12, rating: 'low' }],
  // Signs of about, of give and take, of a goal.
  ['Potassium ~180 ppm', { ...K, value: 180 }], ['Potassium approx. 180 ppm', { ...K, value: 180 }], ['Potassium 180 ppm ± 5', { ...K, value: 180 }], ['Potassium 180 ppm +/- 5 ppm', { ...K, value: 180 }], ['Potassium 180 ppm target >200', { ...K, value: 180, range: [200, null] }], ['Potassium desired 200-250 found 180 ppm', { ...K, value: 180, range: [200, 250] }], ['Potassium 180 150-250 ppm', { ...K, value: 180, range: [150, 250] }], ['Potassium < 0.5 ppm (<1)', { ...K, value: 0.5, below: true, range: [null, 1] }],
  ['Potassium (2) 180 ppm', { ...K, value: 180 }], ['Potassium (2023: 170) 180 ppm', { ...K, value: 180 }], ['Potassium 180 ppm 360 lb/acre', { ...K, value: 180 }], ['Phosphorus (AAE10) 42 mg/kg', { item: 'phosphorus', value: 42, unit: 'mg/kg', tag: 'aae10' }], ['Phosphorus (Olsen, ppm) 42', { ...P, value: 42, method: 'olsen' }],
  ['Potassium......180 ppm', { ...K, value: 180 }], ['Potassium,180,ppm', { ...K, value: 180 }], ['Potassium;180;ppm', { ...K, value: 180 }], ['Potassium\t180\tppm', { ...K, value: 180 }],
  ['% K 4.5, % Mg 12, % Ca 70', { item: 'saturation-k', value: 4.5, unit: '%' }, { item: 'saturation-mg', value: 12, unit: '%' }, { item: 'saturation-ca', value: 70, unit: '%' }], ['Base saturation % K 4.5 Ca 70 Mg 12', { item: 'saturation-k', value: 4.5, unit: '%' }, { item: 'saturation-ca', value: 70, unit: '%' }, { item: 'saturation-mg', value: 12, unit: '%' }], ['K 4.5 % Ca 70 % Mg 12 % H 5 %', { item: 'saturation-k', value: 4.5, unit: '%' }, { item: 'saturation-ca', value: 70, unit: '%' }, { item: 'saturation-mg', value: 12, unit: '%' }, { item: 'saturation-h', value: 5, unit: '%' }], ['CEC 12 meq/100g, base saturation 80 %', { item: 'cec', value: 12, unit: 'meq/100g' }, { item: 'base-saturation', value: 80, unit: '%' }],
  // Symbols by their case; an answer that is none, and a carbon that is not named, are no sodium and no organic matter.
  ['Na 12 ppm', { item: 'sodium', value: 12, unit: 'ppm' }], ['NA 12 ppm'], ['Al 83 ppm', { item: 'aluminium', value: 83, unit: 'ppm' }], ['N 12 ppm', { item: 'nitrogen', value: 12, unit: 'ppm' }], ['B 0.5 ppm', { item: 'boron', value: 0.5, unit: 'ppm' }], ['S 10 ppm', { item: 'sulphur', value: 10, unit: 'ppm' }], ['C 2 %'], ['O.M. 4 %', { item: 'organic-matter', value: 4, unit: '%' }],
  ['Lime index 68', { item: 'buffer-ph', value: 68, unit: 'pH' }], ['Free lime 2 %', { item: 'carbonate', value: 2, unit: '%' }], ['Lime: low', { item: 'carbonate', rating: 'low' }], ['EC 0.4 mmhos/cm', { item: 'salts', value: 0.4, unit: 'mmho/cm' }], ['Soluble salts 0.4 dS/m (1:2)', { item: 'salts', value: 0.4, unit: 'dS/m', method: '1:2' }], ['Boron 0.5 ppm hot water', { item: 'boron', value: 0.5, unit: 'ppm', method: 'hot-water' }], ['Exchangeable sodium 0.2', { item: 'sodium', value: 0.2 }], ['Phosphorus 42 of the ppm', { ...P, value: 42 }],
  ['Optimum pH 6.5'],
  // The buffer behind the value or in its brackets (practice): never the soil's own pH, which has a colon, a value or no word of a buffer after it.
  ...['pH 6.8 buffer', 'pH 6.8 buffer pH', 'pH 6.8 in buffer', 'pH 6.8 buffer solution', 'Soil pH 6.8 buffer', 'pH: 6.8 buffer', 'pH 6.8 (lime index)', 'pH 6.8 (buffer index)', 'pH (lime index) 6.8', 'pH, buffer 6.8', 'pH (buffer) 6.8'].map((line): [string, Record<string, unknown>] => [line, { item: 'buffer-ph', value: 6.8, unit: 'pH' }]),
  ['pH 6.8 Mehlich buffer', { item: 'buffer-ph', value: 6.8, unit: 'pH', method: 'mehlich-buffer' }], ['pH 6.8 SMP', { item: 'buffer-ph', value: 6.8, unit: 'pH', method: 'smp' }], ['pH 6.8 SMP buffer', { item: 'buffer-ph', value: 6.8, unit: 'pH', method: 'smp' }], ['pH 6.8 buffer (SMP)', { item: 'buffer-ph', value: 6.8, unit: 'pH', method: 'smp' }], ['pH 6.8 buffer low', { item: 'buffer-ph', value: 6.8, unit: 'pH', rating: 'low' }],
  ['pH 6.8 buffer, P 42 ppm', { item: 'buffer-ph', value: 6.8, unit: 'pH' }, { ...P, value: 42 }], ...['pH 6.2 buffer 6.8', 'pH 6.2, buffer 6.8', 'pH 6.2 buffer pH 6.8', 'pH 6.2 | buffer | 6.8'].map((line): [string, Record<string, unknown>, Record<string, unknown>] => [line, { item: 'ph', value: 6.2, unit: 'pH' }, { item: 'buffer-ph', value: 6.8, unit: 'pH' }]),
  ...['pH 6.2 buffer: n/a', 'pH 6.2   buffer', 'pH 6.2 buffer not needed', 'pH 6.2, buffer', 'pH 6.2 buffer (not tested)', 'pH 6.2 (no buffer)'].map((line): [string, Record<string, unknown>] => [line, { item: 'ph', value: 6.2, unit: 'pH' }]),
  // A buffer's name alone, before a value of its kind (practice); a rate stays one.
  ...['SMP 5.4', 'SMP: 5.4', 'SMP 5,4', 'SMP | 5.4', 'pH SMP 5,4', 'Índice SMP 5,4'].map((line): [string, Record<string, unknown>] => [line, { item: 'buffer-ph', value: 5.4, unit: 'pH', method: 'smp' }]), ['Sikora 6.3', { item: 'buffer-ph', value: 6.3, unit: 'pH', method: 'sikora' }], ['Moore-Sikora 6.3', { item: 'buffer-ph', value: 6.3, unit: 'pH', method: 'moore-sikora' }], ['Adams-Evans 7.6', { item: 'buffer-ph', value: 7.6, unit: 'pH', method: 'adams-evans' }], ['Woodruff 6.5', { item: 'buffer-ph', value: 6.5, unit: 'pH', method: 'woodruff' }],
  ...['pH 5.2 SMP 5.4', 'pH 5.2, SMP 5.4', 'pH 5.2   SMP 5.4'].map((line): [string, Record<string, unknown>, Record<string, unknown>] => [line, { item: 'ph', value: 5.2, unit: 'pH' }, { item: 'buffer-ph', value: 5.4, unit: 'pH', method: 'smp' }]), ['SMP 5.4, P 42 ppm', { item: 'buffer-ph', value: 5.4, unit: 'pH', method: 'smp' }, { ...P, value: 42 }],
  ['Lime requirement SMP 5.4 t/ha', { item: 'lime-requirement', value: 5.4, unit: 't/ha', method: 'smp' }], ['SMP 5.4 t/ha'], ['SMP 54 ppm'],
  // One value behind two names (practice): of one thing they are its words, of two nobody can tell; an empty cell has none.
  ['Phosphorus, Olsen 42 ppm', { ...P, value: 42, method: 'olsen' }], ['Nitrogen, nitrate 12 ppm', { item: 'nitrate-n', value: 12, unit: 'ppm' }], ['Nitrogen, NO3-N 12 ppm', { item: 'nitrate-n', value: 12, unit: 'ppm' }], ['Potassium, exchangeable 180', { item: 'potassium', value: 180 }], ['Potassium, K 180 ppm', { ...K, value: 180 }], ['Phosphorus 42 ppm, potassium 180 ppm', { ...P, value: 42 }, { ...K, value: 180 }], ['Phosphorus low, potassium 180 ppm', { item: 'phosphorus', rating: 'low' }, { ...K, value: 180 }], ['Phosphorus, , potassium 180 ppm', { ...K, value: 180 }], ['Phosphorus: , potassium 180 ppm', { ...K, value: 180 }], ['Phosphorus n/a, potassium 180 ppm', { ...K, value: 180 }],
  // The symbol behind its value (practice).
  ['0.4 dS/m EC', { item: 'salts', value: 0.4, unit: 'dS/m' }], ['0.4 mmhos/cm EC', { item: 'salts', value: 0.4, unit: 'mmho/cm' }], ['0.4 dS/m CE', { item: 'salts', value: 0.4, unit: 'dS/m' }], ['pH 6.4, 0.4 dS/m EC', { item: 'ph', value: 6.4, unit: 'pH' }, { item: 'salts', value: 0.4, unit: 'dS/m' }], ['Soluble salts 0.4 dS/m EC', { item: 'salts', value: 0.4, unit: 'dS/m' }],
  // Goals, ratios and advice are no readings.
  ['Optimum pH 6.0 to 6.8'], ['Ca:Mg ratio 6.5'], ['Apply 40 lb/acre N'], ['Target pH 6.5'],
  ['Texture: sandy loam', { item: 'texture' }],
  ['Lime requirement 2 t/ha', { item: 'lime-requirement', value: 2, unit: 't/ha' }],
])('%s', (line, ...readings) => {
  // Another line stands by, so that the report is never one of nothing.
  expect(read(`${line}\nZinc 2.1 ppm\n`).readings.filter((r) => r.item !== 'zinc').map(told)).toEqual(readings);
});

describe('told at its place', () => {
  test.each<[string, string]>([
    ...['Phosphorus, potassium 42 ppm', 'Phosphorus, potassium, calcium 42 ppm', 'P, K 42 ppm', 'Phosphorus (Olsen), potassium (K) 42 ppm', 'Calcium, magnesium: low'].map((line): [string, string] => [line, 'line-shared']),
    ['Phosphorus 42 ppm 38 ppm', 'two-values'], ['Potassium 180 ppm target 200', 'two-values'], ['Potassium 4.5 % (180 ppm)', 'two-values'], ['Potassium 180 ppm 2024: 170 ppm', 'two-values'], ['Potassium ca. 180 ppm', 'line-unclear'], ['Phosphorus 42x ppm', 'line-unclear'], ['Phosphorus x42 ppm', 'not-a-number'], ['Phosphorus 4 ½ ppm', 'not-a-number'], ['Phosphorus 1/2 ppm', 'not-a-number'], ['Phosphorus 1e3 ppm', 'not-a-number'], ['Phosphorus 4 2 ppm', 'two-values'], ['Calcium 1 234 ppm', 'two-values'], ['Phosphorus #42 ppm', 'line-unclear'], ['Phosphorus not low 42 ppm', 'line-unclear'], ['Phosphorus in the topsoil 42 ppm', 'line-unclear'], ['Phosphorus 42 parts', 'line-unclear'], ['Phosphorus 42 / 50 ppm', 'two-values'], ['Phosphorus 42 ppm, 38 ppm last year', 'two-values'], ['Phosphorus 42 ppm in 38 plots', 'two-values'], ['Phosphorus 4l ppm', 'not-a-number'], ['Phosphorus 42 pmm', 'unit-unknown'], ['pH 64', 'ph-impossible'], ['pH 2.4', 'ph-impossible'], ['pH 11.1', 'ph-impossible'], ['Phosphorus -4 ppm', 'value-negative'], ['Organic matter 101 %', 'share-impossible'], ['Phosphorus 1000001 ppm', 'value-impossible'], ['Phosphours 42 ppm', 'name-unknown'],
    ['pH 2.5', ''], ['pH 11', ''], ['Organic matter 100 %', ''], ['Calcium 2.405 ppm', 'number-unclear'],
  ])('%s: %s', (line, code) => { expect(read(`${line}\nZinc 2.1 ppm\n`).codes).toEqual(code === '' ? [] : [code]); });
});

// French, Spanish and German reports part thousands by a blank.
test('thousands with a blank where the report\'s language has them', () => {
  const ca = (line: string): unknown => read(`Phosphore Olsen 35 mg/kg\n${line}\nMagnésium échangeable 120 mg/kg\n`).readings.filter((r) => r.item === 'calcium').map(told);
  const CA = { item: 'calcium', value: 2242, unit: 'mg/kg' };
  expect([ca('Calcium échangeable 2 242 mg/kg'), ca('Calcium échangeable 2 242 mg/kg (2 000 - 3 000)'), ca('Calcium échangeable < 2 242 mg/kg')]).toEqual([[CA], [{ ...CA, range: [2000, 3000] }], [{ ...CA, below: true }]]);
});

describe('what a heading says of the lines below', () => {
  test('method and unit', () => {
    expect(read('Mehlich 3 extract, ppm\nPhosphorus 42\nPotassium 180\n').readings.map(told)).toEqual([{ ...P, value: 42, method: 'mehlich-3' }, { ...K, value: 180, method: 'mehlich-3' }]);
    expect(read('Micronutrients (DTPA, ppm): Zn 2.1; Mn 14.8\n').readings.map(told)).toEqual([{ item: 'zinc', value: 2.1, unit: 'ppm', method: 'dtpa' }, { item: 'manganese', value: 14.8, unit: 'ppm', method: 'dtpa' }]);
    expect(read('P2O5 und K2O nach CAL, Mg nach CaCl2\nP2O5 12 mg/100 g\nMg 8 mg/100 g\n').readings.map(told)).toEqual([{ item: 'phosphorus', value: 12, unit: 'mg/100g', form: 'P2O5', method: 'cal' }, { item: 'magnesium', value: 8, unit: 'mg/100g', method: 'cacl2' }]);
  });
  test('shares, until a content stands there', () => {
    expect(read('Base saturation\nK 4.5\nMg 12\n').readings.map(told)).toEqual([{ item: 'saturation-k', value: 4.5, unit: '%' }, { item: 'saturation-mg', value: 12, unit: '%' }]);
    expect(read('Base saturation\nK 4.5\nPhosphorus 42 ppm\nMg 12 ppm\n').readings.map(told)).toEqual([{ item: 'saturation-k', value: 4.5, unit: '%' }, { ...P, value: 42 }, { item: 'magnesium', value: 12, unit: 'ppm' }]);
  });
  test('an index of the UK starts at 0, of Ireland at 1', () => {
    const words = (title: string): unknown => [0, 1, 2, 3, 4].map((n) => read(`${title}\nPotassium index ${n}\n`).readings[0]!.lab.rating);
    expect(words('RB209 indices')).toEqual(['very-low', 'low', 'optimum', 'high', 'high']);
    expect(words('Soil report')).toEqual([null, null, null, null, null]);
    expect([1, 2, 3, 4].map((n) => read(`Phosphorus (Morgan) index ${n}\n`).readings[0]!.lab.rating)).toEqual(['very-low', 'low', 'optimum', 'high']);
  });
});

describe('as it stands on the paper', () => {
  test.each<[string, ...string[]]>([
    ['pH 6.4, Zinc 2.1 ppm; Boron 0.5 ppm |', 'pH 6.4', 'Zinc 2.1 ppm', 'Boron 0.5 ppm'], ['**Zinc** 2.1 ppm *, **Boron** 0.5 ppm', 'Zinc 2.1 ppm', 'Boron 0.5 ppm'], ['Zinc 2.1 ppm - Boron 0.5 ppm -', 'Zinc 2.1 ppm', 'Boron 0.5 ppm'], ['Soil (pH 6.4, zinc 2.1 ppm)', 'pH 6.4', 'zinc 2.1 ppm'], ['Zinc (2.1 ppm)', 'Zinc (2.1 ppm)'], ['Very high magnesium', 'Very high magnesium'], ['4.1 % organic matter', '4.1 % organic matter'], ['Sandy loam | pH 6.4', 'pH 6.4', 'Sandy loam'], ['pH 6.4, Texture: sandy loam, by hand', 'pH 6.4', 'Texture: sandy loam, by hand'], ['Phosphorus (P) - 42 ppm', 'Phosphorus (P) - 42 ppm'], ['Ärger: Zinc 2.1 ppm', 'Zinc 2.1 ppm'],
  ])('%s', (line, ...expected) => { expect(read(`${line}\n`).readings.map((r) => r.asPrinted)).toEqual(expected); });
  test.each<[string, string, number, number]>([['Zinc 2.1 ppm, boron 0.5 ppm', 'boron', 15, 13], ['pH 6.4 | Sandy loam | zinc 2.1 ppm', 'texture', 10, 10], ['pH 6.4, texture: loam', 'texture', 9, 13]])('%s: the place of %s', (line, item, column, length) => { expect(read(`${line}\n`).readings.find((r) => r.item === item)!.place).toMatchObject({ line: 1, column, length, file: 'r.txt' }); });
  test('an index of North Carolina by its name alone', () => { expect(['P-I 25', 'K-I 60', 'Zinc index 25', 'P-index 42 ppm'].map((line) => read(`${line}\n`).readings.map((r) => r.scheme ?? ''))).toEqual([['north-carolina.index'], ['north-carolina.index'], [''], ['']]); });
  test('a test in brackets beside a method', () => { expect(read('Phosphorus (AAE10) 42 mg/kg\nPotassium (X10) 180 mg/kg Olsen\n').readings.map((r) => r.tag ?? '')).toEqual(['aae10', '']); });
});

describe('what is told of a line, and where', () => {
  test.each<[string, string, Record<string, string | number>, number, number]>([
    ['Phosphorus 42 ppm 38 ppm', 'two-values', { item: 'phosphorus', a: '42', b: '38' }, 19, 2], ['Calcium 2.405 mg/kg', 'number-unclear', { read: '2.405', a: 2.405, b: 2405 }, 9, 5], ['Phosphorus: 42 zork', 'line-unclear', { name: 'Phosphorus', read: '42' }, 1, 14], ['Phosphorus =  42 zork', 'line-unclear', { name: 'Phosphorus', read: '42' }, 1, 16], ['Phosphorus 42 pmm', 'unit-unknown', { read: 'pmm', guess: 'ppm' }, 15, 3], ['pH 64', 'ph-impossible', { item: 'ph', read: '64' }, 4, 2], ['Phosphorus -4 ppm', 'value-negative', { item: 'phosphorus', read: '4' }, 12, 2], ['Zork base saturation 4.5', 'line-unclear', { name: 'Zork', read: '4.5' }, 1, 24], ['Boron 0.5 ppm, phosphorus and potassium 42 ppm', 'line-shared', { name: 'phosphorus and potassium 42 ppm' }, 16, 31], ['P & Potassium 42 ppm', 'line-shared', { name: 'P & Potassium 42 ppm' }, 1, 20],
  ])('%s: %s', (line, code, facts, column, length) => { expect(readReport(`${line}\nZinc 2.1 ppm\n`, 'r.txt').notices).toMatchObject([{ code, severity: /unclear|two|shared/.test(code) && code !== 'number-unclear' ? 'warning' : 'error', facts, place: { file: 'r.txt', line: 1, column, length } }]); });
  test('a span that reads two ways', () => { expect(readReport('pH 6,4\nCalcium 900 - 1,234 mg/kg\n', 'r.txt').notices).toMatchObject([{ code: 'number-unclear', facts: { read: '900 - 1,234', a: 1.234, b: 1234 }, place: { line: 2, column: 9, length: 11 } }]); });
  test('a form that is meant', () => { expect(readReport('pH-Wert 6.4, Kali 12 mg/100 g\n', 'r.txt').notices).toMatchObject([{ code: 'form-meant', severity: 'warning', facts: { item: 'potassium', form: 'K2O', read: 'Kali' }, place: { line: 1, column: 14 } }]); });
});

test('a negative number is pointed at with its sign', () => { expect(readReport('Phosphorus -4 ppm\n', 'r.txt').notices[0]!.place).toMatchObject({ column: 12, length: 2 }); });

describe('a letter is a class in a German report alone', () => {
  test.each([['A', 'very-low'], ['B', 'low'], ['C', 'optimum'], ['D', 'high'], ['E', 'very-high']] as const)('%s', (letter, rating) => {
    expect(read(`P2O5 CAL 12 mg/100 g ${letter}\n`).readings[0]!.lab.rating).toBe(rating);
    expect(read(`Phosphorus Olsen 12 ppm ${letter}\n`).readings[0]?.lab.rating ?? null).toBeNull();
  });
});

describe('lines that belong together', () => {
  test('a name over its value, a value over its unit, a name broken over two lines', () => {
    expect(read('Zinc 2.1 ppm\n\nPhosphorus\n42 ppm\n').readings.map(told)).toContainEqual({ ...P, value: 42 });
    expect(read('Phosphorus in leaves\n42 ppm\n').readings).toEqual([]);
    expect(read('Phosphorus: 11.6\nppm\nZinc 2.1 ppm\n').readings.map(told)).toContainEqual({ ...P, value: 11.6 });
    expect(read('Electrical\nConductivity: 0.1 dS/m\n').readings.map(told)).toEqual([{ item: 'salts', value: 0.1, unit: 'dS/m' }]);
  });
  test('names first, then as many values', () => {
    expect(read('Phosphorus\nPotassium\nMagnesium\n42 ppm\n180 ppm\n90 ppm\n').readings.map(told)).toEqual([{ ...P, value: 42 }, { ...K, value: 180 }, { item: 'magnesium', value: 90, unit: 'ppm' }]);
    expect(read('Phosphorus\nPotassium\nMagnesium\nppm\n42\n180\n90\n').readings.map(told)).toEqual([{ ...P, value: 42 }, { ...K, value: 180 }, { item: 'magnesium', value: 90, unit: 'ppm' }]);
    expect(read('Phosphorus\nPotassium\nMagnesium\nMehlich 3, ppm\n42 high\n180 low\n90\n').readings.map(told)).toEqual([{ ...P, value: 42, method: 'mehlich-3', rating: 'high' }, { ...K, value: 180, method: 'mehlich-3', rating: 'low' }, { item: 'magnesium', value: 90, unit: 'ppm', method: 'mehlich-3' }]);
    expect(read('pH\nPhosphorus (ppm)\nPotassium (ppm)\n6.4\n42\n180\n').readings.map(told)).toEqual([{ item: 'ph', value: 6.4, unit: 'pH' }, { ...P, value: 42 }, { ...K, value: 180 }]);
    // Where a line more, a gap, a remark or a second number leaves a doubt, all is asked.
    const names = 'Phosphorus\nPotassium\nMagnesium\n';
    for (const values of ['42\n\n180\n90\n', 'these are yours\n42\n180\n90\n', '42 38\n180 170\n90 80\n', '42\n180\n90\n12\n']) {
      const doubt = readReport(`${names}${values}`, 'r.txt');
      expect([values, doubt.samples.flatMap((s) => s.readings), doubt.questions.map((q) => q.code)]).toEqual([values, [], ['layout-unclear']]);
    }
    expect(read('Phosphorus low\nPotassium low\nMagnesium low\n42\n180\n90\n').readings.map(told)).toEqual(['phosphorus', 'potassium', 'magnesium'].map((item) => ({ item, rating: 'low' })));
    const report = readReport('Phosphorus\nPotassium\nMagnesium\n42 ppm\n180 ppm\n', 'r.txt');
    expect([report.samples.flatMap((s) => s.readings), report.questions.map((q) => [q.code, q.place?.line]), report.samples.flatMap((s) => s.unread.map((u) => u.line))]).toEqual([[], [['layout-unclear', 1]], [1, 2, 3, 4, 5]]);
  });
});

describe('a lab\'s own signs', () => {
  test('stars, arrows and signs in brackets by the key that the report prints', () => {
    const report = read('Key: * low ** adequate *** high\nPhosphorus 42 ppm ***\nPotassium 180 ppm *\nMagnesium 90 ppm\n');
    expect(report.readings.map((r) => r.lab.rating)).toEqual(['high', 'low', null]);
    expect(read('↓ low ↑ high\nPhosphorus 42 ppm ↑\nPotassium 180 ppm ↓\n').readings.map((r) => r.lab.rating)).toEqual(['high', 'low']);
    expect(read('Phosphorus 42 ppm ***\n').readings.map((r) => r.lab.rating)).toEqual([null]);
  });
  test('classes of an index, before their words or behind them', () => {
    expect(read('Index: 0-25 low, 26-50 medium, 51-100 high, over 100 very high\nPotassium index 25\nPhosphorus index 26\nZinc index 101\n').readings.map((r) => r.lab.rating)).toEqual(['low', 'medium', 'very-high']);
    expect(read('Index: low 0-25, medium 26-50, high 51-100, very high over 100\nPotassium index 25\nPhosphorus index 26\nZinc index 101\n').readings.map((r) => r.lab.rating)).toEqual(['low', 'medium', 'very-high']);
  });
  test('every kind of sign, each key on one line of its own', () => {
    const rated = (key: string, ...signs: readonly string[]): unknown => read(`${key}\n${signs.map((sign, i) => `${['Phosphorus', 'Potassium', 'Magnesium'][i]!} ${42 + i} ppm ${sign}\n`).join('')}`).readings.map((r) => r.lab.rating);
    expect(rated('(--) very low, (-) low, (0) within, (+) high, (++) very high', '(--)', '(0)', '(++)')).toEqual(['very-low', 'optimum', 'very-high']);
    expect(rated('(−−) very low, (−) low, (=) medium', '(−−)', '(−)', '(=)')).toEqual(['very-low', 'low', 'medium']);
    expect(rated('↓↓ very low   ↓ low   ↑ high', '↓↓', '↓', '↑')).toEqual(['very-low', 'low', 'high']);
    expect(rated('(+++) very high, (+) high', '(+++)', '(+)')).toEqual(['very-high', 'high']);
    // One sign alone, one whose word is none, or one among numbers is no key.
    expect([rated('* low', '*'), rated('* low ** see notes', '*'), rated('* low 12 ** high 30', '*')]).toEqual([[null], [null], [null]]);
    // The line's last sign, behind its number.
    expect([rated('* low ** high', '* **'), read('* low ** high\n** Phosphorus 42 ppm\n').readings.map((r) => r.lab.rating)]).toEqual([['high'], [null]]);
  });
  test('classes of an index in other words', () => {
    const rated = (key: string, ...values: readonly number[]): unknown => values.map((v) => read(`${key}\nPotassium index ${v}\n`).readings[0]!.lab.rating);
    expect(rated('Indices: very high above 100, high 51 to 100, medium 26 to 50, low under 26', 10, 25, 50, 51, 100, 101)).toEqual(['low', 'low', 'medium', 'high', 'high', 'very-high']);
    expect(rated('Index: <26 low, 26 - 50 medium, >50 high', 10, 26, 51)).toEqual(['low', 'medium', 'high']);
    expect(rated('Index: below 26 low, 26-50 medium, over 50 high', 10, 26, 51)).toEqual(['low', 'medium', 'high']);
    expect(rated('Index: 0-25 low, 26-50 high', 10)).toEqual([null]);
  });
  test.each(['Numbers in parentheses are the indices', 'Number in brackets: index', 'Values in brackets show the index', 'Value  in  brackets is the index', 'Figure in brackets = index', 'Results (index)'])('%s', (head) => { expect(read(`${head}\nPhosphorus 18 mg/L (2)\n`).readings.map((r) => r.index)).toEqual([2]); });
  test('what a number in brackets is', () => {
    expect(read('Figures in brackets are indices\nPhosphorus 18 mg/L (2)\n').readings.map(told)).toEqual([{ item: 'phosphorus', value: 18, unit: 'mg/L', index: 2 }]);
    expect(read('Phosphorus 18 mg/L (2)\n').readings.map(told)).toEqual([{ item: 'phosphorus', value: 18, unit: 'mg/L' }]);
  });
});

// Practice: what was done to the soil is no reading of it, and no need.
describe('the report says that the soil was limed', () => {
  test.each(['limed: October 2025', 'Limed in 2024', 'limed: May 2025', 'Limed: yes', 'Last limed: 10/2025', 'Lime applied 2 t/ha in autumn 2025', 'Lime 2 t/ha applied in 2024', '2 t/ha lime applied in 2024', 'Lime applied last fall, 2 tons/acre', 'Lime last applied: spring 2024', 'gekalkt: Oktober 2025'])('%s', (line) => {
    expect(readReport(`${line}\nZinc 2.1 ppm\n`, 'r.txt')).toMatchObject({ samples: [{ readings: [{ item: 'zinc' }] }], notices: [{ code: 'report-limed', severity: 'warning', facts: { read: line }, place: { line: 1 } }] });
  });
  test.each(['Limed: no', 'Lime applied: none', 'Never limed', 'unlimed', 'Not limed in 2024', 'If limed in 2024, test again', 'Lime should be applied in 2026', 'Limed soils hold more calcium'])('not here: %s', (line) => { expect(read(`${line}\nZinc 2.1 ppm\n`).codes).toEqual([]); });
  test('beside a reading', () => { expect(read('pH 6.4, limed in 2024\n')).toMatchObject({ readings: [{ item: 'ph', value: 6.4 }], codes: ['report-limed'] }); });
  test.each(['Lime requirement 2 t/ha (2026)', 'Lime requirement 2 t/ha (lime applied before 2026)', 'Lime 2 t/ha, applied to 6 in'])('a need: %s', (line) => { expect(read(`${line}\n`)).toMatchObject({ readings: [{ item: 'lime-requirement', value: 2, unit: 't/ha' }], codes: [] }); });
});

// As a laboratory of the mountain west lays its names out: the name, a dash, its letter, the extract in brackets.
describe('a name and its letter behind a dash', () => {
  test.each([
    ['Phosphorus - P (Olsen)     11 mg/kg       Low', 'phosphorus', 11, 'olsen'], ['Potassium – K (Olsen)  212 mg/kg  Adequate', 'potassium', 212, 'olsen'], ['Copper - Cu (DTPA) 1.2 ppm', 'copper', 1.2, 'dtpa'],
    ['Nitrate-Nitrogen - N 9.4 mg/kg', 'nitrate-n', 9.4, null], ['Nitrate - N (KCl) 9.4 ppm', 'nitrate-n', 9.4, 'kcl'],
  ])('%s', (line, item, value, method) => {
    expect(readReport(line, 'a.txt').samples[0]!.readings).toEqual([expect.objectContaining({ item, value, method })]);
  });
});
