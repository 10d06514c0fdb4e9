// Several names in a line (practice): which value, unit, form and word belongs to which. `told.ts` writes a line a reading.
import { expect, test } from 'vitest';
import { told } from './told.ts';

const one = (...readings: string[]): string[] => readings.map((r) => (/^[a-z-]+ \d+$/.test(r) && /^(?:unread|reading|two|line)/.test(r) ? r : `sample 1: ${r}`));
const shares = one('sand 62 %', 'silt 25 %', 'clay 13 %');

test.each<[string, string, readonly string[]]>([
  // Numbers before their names, then behind.
  ['shares before their names', '62 % sand, 25 % silt, 13 % clay', shares], ['a name with its value behind ends them', '62 % sand, 25 % silt, 13 % clay, pH 6.4', [...shares, ...one('ph 6.4 pH')]], ['without commas', '62 % sand 25 % silt 13 % clay; OM 3.4 %; P 42 ppm', [...shares, ...one('organic-matter 3.4 %', 'phosphorus 42 ppm')]],
  ['one stands before them', 'pH 6.4, 62 % sand, 25 % silt, 13 % clay', [...one('ph 6.4 pH'), ...shares]], ['before and behind', 'pH 6.4, 62 % sand, 25 % silt, 13 % clay, P 42 ppm', [...one('ph 6.4 pH'), ...shares, ...one('phosphorus 42 ppm')]],
  ['contents before their names', '4.1 % organic matter, 23 ppm phosphorus, K 180 ppm', one('organic-matter 4.1 %', 'phosphorus 23 ppm', 'potassium 180 ppm')],
  ['a trace, then a number before its name', 'Zinc trace, 3.4 % organic matter', one('zinc <', 'organic-matter 3.4 %')], ['a percent sign before each', 'pH 6.4; organic matter 3.4 %; % K 4.5; % Mg 12', one('ph 6.4 pH', 'organic-matter 3.4 %', 'saturation-k 4.5 %', 'saturation-mg 12 %')],
  ['no commas, all behind', 'P 42 ppm K 180 ppm Zn 2 ppm', one('phosphorus 42 ppm', 'potassium 180 ppm', 'zinc 2 ppm')],
  ['in brackets', '(sand 55 %, silt 20 %, clay 25 %)', one('sand 55 %', 'silt 20 %', 'clay 25 %')], ['two in brackets', 'P 42 ppm ( K 180 ppm, Mg 90 ppm )', one('phosphorus 42 ppm', 'potassium 180 ppm', 'magnesium 90 ppm')],
  // Two names of one thing.
  ['with a method between', 'Phosphorus, Olsen, P 18 ppm', one('phosphorus 18 ppm olsen')], ['the method before the brackets', 'Phosphorus Olsen (P) 18 ppm', one('phosphorus 18 ppm olsen')], ['the method within them', 'Phosphorus (P, Olsen) 18 ppm', one('phosphorus 18 ppm olsen')], ['once more behind a colon', 'Phosphorus: P 42 ppm', one('phosphorus 42 ppm')], ['far apart', 'Phosphorus - - - - P 42 ppm', one('phosphorus 42 ppm')],
  ['nitrogen of nitrate', 'Nitrate nitrogen (NO3-N) 10 ppm', one('nitrate-n 10 ppm')], ['lime as carbonate', 'Lime (carbonate) 2 %', one('carbonate 2 %')], ['an unknown word whose brackets name it', 'Sulfatos (SO4-S) 3.7 ppm, Fosforo (P) 12 ppm', one('sulphur 3.7 ppm', 'phosphorus 12 ppm')], ['brackets of two things name none', 'Nutrients (P, K) 42', ['unread 1', 'nothing-read']], ['a number before them', 'Item 3 (P) 42 ppm', ['unread 1', 'nothing-read']],
  // 180 of K2O are 149 of K: the form behind the value is its own.
  ['the form in brackets', 'Potassium 180 ppm (K2O)', one('potassium 180 ppm K2O')], ['without a unit', 'Potassium 180 (K2O)', one('potassium 180 K2O')], ['without brackets', 'Phosphorus 42 P2O5', one('phosphorus 42 P2O5')], ['in a cell of its own', 'Phosphorus | 42 | mg/kg | P2O5', one('phosphorus 42 mg/kg P2O5')], ['of two names', 'Phosphorus 42 mg/kg P2O5, Potassium 180 mg/kg K2O', one('phosphorus 42 mg/kg P2O5', 'potassium 180 mg/kg K2O')],
  ['a name with its own value is no form', 'Phosphorus 42 ppm K2O 180 ppm', one('phosphorus 42 ppm', 'potassium 180 ppm K2O')], ['the same in two forms', 'Phosphorus 42 ppm | P2O5 96 ppm', one('phosphorus 42 ppm', 'reading-twice 1')],
  // Textures and their parts; shares of the exchange sites.
  ['a part with a share is no texture', 'Texture: clay 20 %', one('clay 20 %')], ['a texture and a share', 'Texture: loam, sand 40 %', one('texture', 'sand 40 %')],
  ['a share of CEC', 'Magnesium 12 % CEC', one('saturation-mg 12 %')], ['a share beside CEC', 'Potassium 4.5 % | CEC 12 meq/100g', one('saturation-k 4.5 %', 'cec 12 meq/100g')], ['behind CEC', 'CEC 12 meq/100g K 4.5 %', one('cec 12 meq/100g', 'saturation-k 4.5 %')], ['a slip of the first word', 'Pottasium base saturation 4.5, Calcium base saturation 70', one('saturation-k 4.5 %', 'saturation-ca 70 %')],
  // Words of rating.
  ['behind each', 'P 8 ppm low, K 96 ppm high', one('phosphorus 8 ppm low', 'potassium 96 ppm high')], ['before each', 'low P, high K', one('phosphorus low', 'potassium high')], ['before each and its value', 'low P 8 ppm, high K 96 ppm', one('phosphorus 8 ppm low', 'potassium 96 ppm high')], ['before the first alone', 'very high in P 80 ppm, K 90 ppm', one('phosphorus 80 ppm very-high', 'potassium 90 ppm')],
  ['a method before the second', 'P (Olsen) 18 ppm, Mehlich 3 K 180 ppm', one('phosphorus 18 ppm olsen', 'potassium 180 ppm mehlich-3')],
])('%s', (_, line, expected) => { expect(told(`${line}\n`)).toEqual(expected); });
