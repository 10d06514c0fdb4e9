// The soil's kind for rating scales, from the report's words and letters. Words: the classes' names in their languages; a sandy clay loam counts
// with the clay loams (tables/scale.ts). German letters: VDLUFA's groups (read). Shares: the American triangle.
import { expect, test } from 'vitest';
import { kindOf } from '../../src/rating/soil-kind.ts';
import type { Reading } from '../../src/soil/reading.ts';
import { FINER_WORDS, TEXTURE_WORDS, VDLUFA_GROUPS } from '../../src/tables/texture.ts';
import { made } from '../rating-units/made.ts';

const of = (...readings: Reading[]) => kindOf({ name: 's', readings, unread: [] });
const said = (text: string): Reading => made('texture', null, null, { asPrinted: text });

test.each([
  ['Texture: loamy sand', 'loamy sand'], ['sandy loam', 'sandy loam'], ['Silt Loam', 'silt loam'], ['silty clay loam', 'clay loam'], ['sandy clay', 'clay'], ['sandy', 'sand'], ['loam', 'loam'], ['Muck soil', 'organic'], ['organic soil', 'organic'], ['Soil type: organic', 'organic'],
  ['Bodenart: lehmiger Sand', 'loamy sand'], ['Bodenart: lS', 'loamy sand'], ['sandiger Lehm', 'sandy loam'], ['Bodenart: sL', 'sandy loam'], ['toniger Lehm', 'clay loam'], ['Schluff', 'silt loam'], ['schluffiger Sand', 'sand'], ['Ton', 'clay'], ['Niedermoor', 'organic'],
  ['Textura: franco arenoso', 'sandy loam'], ['limon sableux', 'sandy loam'], ['argilloso', 'clay'],
])('%s is %s', (text, kind) => { expect(of(said(text))).toBe(kind); });

test('contents on the same line are no peat', () => { expect(of(said('Texture: loam  Organic matter 3 %'))).toBe('loam'); });
test('two words that disagree leave it to the shares, in % or g/kg', () => {
  const shares = (unit: '%' | 'g/kg', n: number) => [made('sand', 60 * n, unit), made('silt', 30 * n, unit), made('clay', 10 * n, unit)];
  expect(of(said('sand or clay'))).toBeNull();
  expect(of(said('sand or clay'), ...shares('%', 1))).toBe('sandy loam');
  expect(of(...shares('g/kg', 10))).toBe('sandy loam');
});
test('every finer word is a word of texture, or a German letter or group', () => {
  const known = new Set([...TEXTURE_WORDS.flatMap((r) => r.words), ...VDLUFA_GROUPS.groups.flatMap((g) => [...g.letters, String(g.group)])]);
  expect(FINER_WORDS.flatMap(([, words]) => words).filter((w) => !known.has(w))).toEqual([]);
});
