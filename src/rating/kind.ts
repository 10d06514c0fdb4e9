/** The soil's kind as rating scales part soils, which is finer than the lime and sulphur tables' parts. */
import type { Sample } from '../soil/reading.ts';
import type { Kind } from '../tables/ratings.ts';
import type { UsdaClass } from '../tables/texture.ts';
import { sharesOf, textureNamed, usdaClass } from './texture.ts';

/** Tried in order: a sandy clay loam is a clay loam, a "lehmiger Sand" a loamy sand, a "sandiger Lehm" a sandy loam. */
const WORDS: readonly (readonly [pattern: RegExp, kind: Kind])[] = [
  [/\b(?:peat|muck|organic|moor|torf)/i, 'organic'], [/loamy (?:fine |coarse )?sand|lehmiger sand/i, 'loamy sand'], [/clay loam|toniger lehm/i, 'clay loam'], [/\bclay|\bton\b|toniger/i, 'clay'],
  [/sandy loam|sandiger lehm/i, 'sandy loam'], [/silt|schluff/i, 'silt loam'], [/loam|lehm/i, 'loam'], [/\bsandy?\b|sandig/i, 'sand'],
];

const OF_CLASS: Readonly<Record<UsdaClass, Kind>> = {
  sand: 'sand', 'loamy sand': 'loamy sand', 'sandy loam': 'sandy loam', loam: 'loam', 'silt loam': 'silt loam', silt: 'silt loam',
  'sandy clay loam': 'clay loam', 'clay loam': 'clay loam', 'silty clay loam': 'clay loam', 'sandy clay': 'clay', 'silty clay': 'clay', clay: 'clay',
};

/** By the report's own words, else by its sand, silt and clay; null where it tells neither. */
export function kindOf(sample: Sample): Kind | null {
  const texture = sample.readings.find((r) => r.item === 'texture')?.asPrinted;
  const said = texture === undefined ? null : WORDS.find(([pattern]) => pattern.test(texture))?.[1] ?? textureNamed(texture)?.means ?? null;
  if (said) return said;
  const part = (item: 'sand' | 'silt' | 'clay'): number | null => sample.readings.find((r) => r.item === item)?.value ?? null;
  const shares = sharesOf(part('sand'), part('silt'), part('clay'));
  return shares ? OF_CLASS[usdaClass(shares)] : null;
}
