/** Light, medium or heavy soil, from the report's own words or its clay. */
import type { Sample } from '../soil/reading.ts';

export type Heaviness = 'light' | 'medium' | 'heavy';

const HEAVY = /\bclay\b|\bton\b|toniger|schwer/i;
const LIGHT = /\bsandy?\b|\bsand\b|sandig|lehmiger sand|leicht/i;

/** Clay %: Austria's orchard guide calls under 10 light and over 30 heavy. */
const CLAY = { light: 10, heavy: 30 } as const;

/** Light, medium or heavy by clay %, else by the texture's own words: "loamy sand" is light, "sandy clay" heavy, "clay loam" heavy. */
export function heavinessOf(sample: Sample): Heaviness | null {
  const clay = sample.readings.find((r) => r.item === 'clay')?.value;
  if (clay != null) return clay < CLAY.light ? 'light' : clay > CLAY.heavy ? 'heavy' : 'medium';
  const texture = sample.readings.find((r) => r.item === 'texture')?.asPrinted;
  if (!texture) return null;
  if (HEAVY.test(texture)) return 'heavy';
  return LIGHT.test(texture) ? 'light' : /loam|lehm|silt|schluff/i.test(texture) ? 'medium' : null;
}
