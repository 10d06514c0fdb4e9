/** The cations of a sample summed, to hold against the exchange capacity that the report prints. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Reading, Sample } from '../soil/reading.ts';
import type { Item, Method } from '../tables/items.ts';
import { CLEMSON_ACIDITY, MIDWEST_ACIDITY } from '../tables/soil-facts.ts';
import { MG_PER_CMOL } from '../units/substance.ts';
import { contentOf, densityOf, lab, volumeOf } from './content.ts';

type Charge = Figure<'meq/100g', 'acidity'>;
type Ion = 'Ca' | 'Mg' | 'K' | 'Na';

/** meq in 100 g, or in 100 cm³ where `by` is volume. `acidity` and `sum` are null where nothing tells how much acidity there is. */
export type CationSum = {
  readonly by: 'weight' | 'volume';
  readonly ions: Readonly<Partial<Record<Ion, number>>>;
  readonly bases: number;
  readonly acidity: Charge | null;
  readonly sum: number | null;
};

const IONS: readonly (readonly [Ion, Item])[] = [['Ca', 'calcium'], ['Mg', 'magnesium'], ['K', 'potassium'], ['Na', 'sodium']];
/** Buffers that start at pH 8.00. No other starts higher than SMP's 7.5, so a nameless one that reads over it is of this kind. */
const FROM_EIGHT: readonly (Method | null)[] = ['adams-evans', 'moore-sikora'];
const SMP_START = 7.5;

/** 8 × (8.00 − buffer pH), meq/100 g; South Carolina's lab. */
export const clemsonAcidity = (buffer: number): number => Math.max(0, CLEMSON_ACIDITY.factor * (CLEMSON_ACIDITY.start - buffer));
/** 12 × (7 − buffer pH), meq/100 g, none from 7.0 up; a Midwestern lab with an SMP buffer. */
export const midwestAcidity = (buffer: number): number => Math.max(0, MIDWEST_ACIDITY.factor * (MIDWEST_ACIDITY.start - buffer));

/** Ca + Mg + K + Na and acidity. Null without calcium and magnesium, or where some stand by weight and some by volume. */
export function cationSum(sample: Pick<Sample, 'readings'>): CationSum | null {
  const density = densityOf(sample);
  const reading = (item: Item): Reading | undefined => sample.readings.find((r) => r.item === item && r.value !== null && !r.below);
  const found = IONS.flatMap(([ion, item]) => {
    const r = reading(item);
    const weight = r ? contentOf(r, density) : null;
    const content = weight ?? (r ? volumeOf(r) : null);
    return content ? [{ ion, by: weight ? 'weight' as const : 'volume' as const, meq: content.value / MG_PER_CMOL[ion]! }] : [];
  });
  const by = found[0]?.by;
  if (!by || found.some((f) => f.by !== by) || !found.some((f) => f.ion === 'Ca') || !found.some((f) => f.ion === 'Mg')) return null;
  const bases = found.reduce((total, f) => total + f.meq, 0);
  const acidity = acidityOf(sample);
  return { by, ions: Object.fromEntries(found.map((f) => [f.ion, f.meq])), bases, acidity, sum: acidity === null ? null : bases + acidity.value };
}

/** As printed; else from the buffer pH by the lab's own rule where the buffer is known; none in a soil of pH 7 and over. */
function acidityOf(sample: Pick<Sample, 'readings'>): Charge | null {
  const read = (item: Item): Reading | undefined => sample.readings.find((r) => r.item === item && r.value !== null);
  const [printed, buffer, ph] = [read('acidity'), read('buffer-ph'), read('ph')?.value ?? null];
  if (printed) return figure(printed.unit === 'mmolc/dm3' || printed.unit === 'mmol/kg' ? printed.value! / 10 : printed.value!, 'meq/100g', 'acidity', 'printed-by-lab', lab(printed));
  if ((ph ?? 0) >= 7) return figure(0, 'meq/100g', 'acidity', 'acidity-none', { source: 'definition', at: 'pH 7', mark: 'derived' });
  if (!buffer) return null;
  const value = buffer.value! > 14 ? buffer.value! / 10 : buffer.value!;
  const from = [figure(value, 'pH', 'soil', 'printed-by-lab', lab(buffer))];
  if (FROM_EIGHT.includes(buffer.method) || (buffer.method === null && value > SMP_START)) {
    return figure(clemsonAcidity(value), 'meq/100g', 'acidity', 'acidity-from-buffer', CLEMSON_ACIDITY.cite, from);
  }
  if (buffer.method !== 'smp') return null;
  return figure((ph ?? 0) > MIDWEST_ACIDITY.mostPh ? 0 : midwestAcidity(value), 'meq/100g', 'acidity', 'acidity-from-buffer', MIDWEST_ACIDITY.cite, from);
}
