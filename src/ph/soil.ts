/** What the planner of pH knows of a soil: from a rated report, or told piece by piece. */
import { lengthOf } from '../orchard/measure.ts';
import { organicMatterOf } from '../rating/organic.ts';
import type { Rated } from '../rating/rate.ts';
import { waterPhOf } from '../rating/salt-ph.ts';
import { classOf } from '../rating/texture.ts';
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { ReportUnit } from '../tables/items.ts';
import type { LimeTest } from '../tables/lime.ts';
import type { TextureClass } from '../tables/sulphur.ts';
import type { Unit } from '../units/units.ts';

export type PhSoil = {
  /** In water; a reading in a salt solution is raised to it, by the rule of its salt. */
  readonly now: Figure<'pH', 'soil'>;
  /** `test` is null where the buffer's name is not known. */
  readonly buffer: { readonly value: number; readonly test: Exclude<LimeTest, 'acidity'> | null } | null;
  /** Exchangeable acidity, meq/100 g. */
  readonly acidity: number | null;
  /** The lab's own rate, as printed. */
  readonly lime: Figure<Unit, 'lime'> | null;
  /** Depth in metres that the sample or the lab's rate is for. */
  readonly depthM: number | null;
  readonly texture: TextureClass | null;
  /** meq/100 g. */
  readonly cec: number | null;
  /** Calcium carbonate, %. */
  readonly carbonate: number | null;
  /** %. */
  readonly organic: number | null;
  readonly magnesium: number | null;
};

const RATE_UNITS: Partial<Record<ReportUnit, Unit>> = {
  'lb/100sqft': 'lb/100 sq ft', 'lb/1000sqft': 'lb/1000 sq ft', 'ton/acre': 'ton/acre', 't/ha': 't/ha', 'lb/acre': 'lb/acre', 'kg/ha': 'kg/ha', 'g/m2': 'g/m2',
};

/** Sikora or SMP; null for another buffer or none. */
export const bufferTest = (method: string | null): Exclude<LimeTest, 'acidity'> | null => (method === 'sikora' || method === 'smp' ? method : null);

/** A lime test index is ten times an SMP buffer pH. */
const INDEX = { least: 40, most: 80 } as const;
export const isLimeIndex = (value: number): boolean => value >= INDEX.least && value <= INDEX.most;
const bufferOf = (value: number, method: string | null): PhSoil['buffer'] =>
  isLimeIndex(value) ? { value: value / 10, test: method === null ? 'smp' : bufferTest(method) } : { value, test: bufferTest(method) };

/** Null where the report gives no pH. */
export function phSoilOf(rated: readonly Rated[], depth: string | undefined): PhSoil | null {
  const read = (item: string): Rated['reading'] | undefined => rated.find((r) => r.reading.item === item && r.reading.value !== null)?.reading;
  const value = (item: string): number | null => read(item)?.value ?? null;
  const cite = (r: Rated['reading']): Figure['cite'] => ({ source: 'lab', at: `line ${r.place.line}`, mark: 'read' });
  const [water, salt, buffer, lime] = [read('ph'), read('ph-salt'), read('buffer-ph'), read('lime-requirement')];
  const now = water ? figure(water.value!, 'pH', 'soil', 'printed-by-lab', cite(water)) : salt ? waterPhOf(salt) : null;
  if (!now) return null;
  const unit = lime?.unit ? RATE_UNITS[lime.unit] : undefined;
  const said = depth === undefined ? null : lengthOf(depth);
  return {
    now, acidity: value('acidity'), cec: value('cec'), carbonate: carbonateOf(rated), depthM: typeof said === 'number' ? said : null,
    buffer: buffer ? bufferOf(buffer.value!, buffer.method) : null,
    lime: lime && unit ? figure(lime.value!, unit, 'lime', 'printed-by-lab', cite(lime)) : null,
    texture: classOf(rated.map((r) => r.reading)),
    organic: organicMatterOf({ readings: rated.map((r) => r.reading) })?.value ?? null,
    magnesium: rated.find((r) => r.reading.item === 'magnesium')?.mgPerKg?.value ?? null,
  };
}

/** A word says that there is some, without how much: taken as the least a lab can measure, 0.1 %. */
function carbonateOf(rated: readonly Rated[]): number | null {
  const r = rated.find((x) => x.reading.item === 'carbonate')?.reading;
  if (!r) return null;
  if (r.value !== null) return r.unit === 'g/kg' ? r.value / 10 : r.value;
  return r.lab.rating === null || r.lab.rating === 'low' || r.lab.rating === 'very-low' ? null : 0.1;
}
