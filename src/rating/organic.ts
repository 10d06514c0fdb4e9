/** Organic matter of a sample, from organic carbon where only that is printed. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Reading, Sample } from '../soil/reading.ts';
import { CARBON, WALKLEY_BLACK } from '../tables/carbon.ts';
import { densityOf, isPossible, lab } from './content.ts';

type Matter = Figure<'%', 'organic matter'>;

/** As printed, in percent. By volume it is divided by the density, or by one where none is printed, which is then said. */
function percentOf(reading: Reading, density: number | null): Matter | null {
  const { value, unit } = reading;
  if (value === null || !isPossible(value)) return null;
  const printed = (percent: number): Matter => figure(percent, '%', 'organic matter', 'printed-by-lab', lab(reading));
  if (unit === '%') return printed(value);
  if (unit === 'g/kg') return printed(value / 10);
  if (unit !== 'g/dm3' || (density !== null && !isPossible(1 / density))) return null;
  const volume = figure(value, unit, 'organic matter', 'printed-by-lab', lab(reading));
  return density === null
    ? figure(value / 10, '%', 'organic matter', 'matter-by-volume', { source: 'medlar', at: 'matter-by-volume', mark: 'judgement' }, [volume])
    : figure(value / 10 / density, '%', 'organic matter', 'volume-to-weight', lab(reading), [volume]);
}

/**
 * Organic matter in percent. Carbon counts 1.724 times, as labs do, with the published range beside it; what
 * Walkley-Black leaves unfound is told, not added. Null where neither is printed with a unit.
 */
export function organicMatterOf(sample: Pick<Sample, 'readings'>): Matter | null {
  const density = densityOf(sample);
  const found = (item: 'organic-matter' | 'organic-carbon'): { reading: Reading; percent: Matter } | undefined => sample.readings.flatMap((reading) => {
    const percent = reading.item === item ? percentOf(reading, density) : null;
    return percent === null ? [] : [{ reading, percent }];
  })[0];
  const matter = found('organic-matter');
  if (matter) return matter.percent;
  const carbon = found('organic-carbon');
  if (!carbon) return null;
  const printed = carbon.percent;
  const times = (factor: number): Matter => figure(printed.value * factor, '%', 'organic matter', 'carbon-range', CARBON.cite, [printed]);
  const span = [times(CARBON.low), times(CARBON.high)];
  if (carbon.reading.method !== 'walkley-black') return figure(printed.value * CARBON.convention, '%', 'organic matter', 'carbon-to-matter', CARBON.cite, [printed, ...span]);
  const whole = WALKLEY_BLACK.map((w) => figure(printed.value * w.times, '%', 'organic matter', 'carbon-whole', w.cite, [printed]));
  return figure(printed.value * CARBON.convention, '%', 'organic matter', 'carbon-found', CARBON.cite, [printed, ...span, ...whole]);
}
