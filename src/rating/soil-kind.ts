/** The soil's kind as rating scales part soils, which is finer than the lime and sulphur tables' parts. */
import type { Sample } from '../soil/reading.ts';
import type { Kind } from '../tables/ratings.ts';
import type { UsdaClass } from '../tables/texture.ts';
import { FINER_WORDS } from '../tables/texture.ts';
import { sharesIn, textureNamed, usdaClass } from './texture.ts';

const KIND_OF: ReadonlyMap<string, Kind> = new Map(FINER_WORDS.flatMap(([kind, words]) => words.map((w) => [w, kind] as const)));

const OF_CLASS: Readonly<Record<UsdaClass, Kind>> = {
  sand: 'sand', 'loamy sand': 'loamy sand', 'sandy loam': 'sandy loam', loam: 'loam', 'silt loam': 'silt loam', silt: 'silt loam',
  'sandy clay loam': 'clay loam', 'clay loam': 'clay loam', 'silty clay loam': 'clay loam', 'sandy clay': 'clay', 'silty clay': 'clay', clay: 'clay',
};

export const kindOf = (sample: Sample): Kind | null => kindIn(sample.readings);

/** By the report's own words, else by its sand, silt and clay; null where it tells neither. */
export function kindIn(readings: Sample['readings']): Kind | null {
  const texture = readings.find((r) => r.item === 'texture')?.asPrinted;
  const named = texture === undefined ? null : textureNamed(texture);
  const said = named ? KIND_OF.get(named.word) ?? named.means : null;
  if (said) return said;
  const shares = sharesIn(readings);
  return shares ? OF_CLASS[usdaClass(shares)] : null;
}
