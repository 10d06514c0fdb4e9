/** What the planner of pH knows of a soil: from a rated report, or told piece by piece. */
import { depthOf } from '../rating/depth.ts';
import { organicMatterOf } from '../rating/organic.ts';
import type { Rated } from '../rating/rate.ts';
import { waterPhOf } from '../rating/salt-ph.ts';
import { kindIn } from '../rating/soil-kind.ts';
import { classOf } from '../rating/texture.ts';
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import { cationSum } from '../rating/cations.ts';
import type { ReportUnit } from '../tables/items.ts';
import { BUFFERS } from '../tables/items.ts';
import { EFFECTIVE } from '../tables/lime-materials.ts';
import type { BufferTest } from '../tables/lime-tests.ts';
import type { TextureClass } from '../tables/sulphur.ts';
import type { CountedLime } from '../units/substance.ts';
import { CACO3_PER } from '../units/substance.ts';
import type { Unit } from '../units/units.ts';

export type PhSoil = {
  /** In water; a reading in a salt solution is raised to it, by the rule of its salt. */
  readonly now: Figure<'pH', 'soil'>;
  /** `test` is null where the buffer's name is not known. */
  readonly buffer: { readonly value: number; readonly test: BufferTest | null } | null;
  /** Exchangeable acidity, meq/100 g, and of the same what else is held there. */
  readonly acidity: number | null;
  readonly aluminium: number | null;
  readonly calcium: number | null;
  readonly exchangeableMagnesium: number | null;
  /** The exchange capacity at the soil's own pH. */
  readonly ecec: number | null;
  /** Share of the exchange capacity that calcium, magnesium, potassium and sodium fill, %. */
  readonly baseSaturation: number | null;
  /** Georgia's lime buffer capacity, mg of calcium carbonate to the kg and pH unit: read after 30 minutes, or already as at equilibrium. */
  readonly bufferCapacity: { readonly value: number; readonly after: '30 minutes' | 'equilibrium' } | null;
  /** The lab's own rate, of pure lime. */
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
  /** The report calls it peat or muck. */
  readonly peat?: true;
  readonly magnesium: number | null;
};

const RATE_UNITS: Partial<Record<ReportUnit, Unit>> = {
  'lb/100sqft': 'lb/100 sq ft', 'lb/1000sqft': 'lb/1000 sq ft', 'ton/acre': 'ton/acre', 't/ha': 't/ha', 'lb/acre': 'lb/acre', 'kg/ha': 'kg/ha', 'g/m2': 'g/m2', 'dt/ha': 'dt/ha',
};
const COUNTED_UNITS: Partial<Record<ReportUnit, readonly [Unit, CountedLime]>> = {
  'lb ENM/acre': ['lb/acre', 'ENM'], 'lb ENP/acre': ['lb/acre', 'ENP'], 't CaO/ha': ['t/ha', 'CaO'], 'dt CaO/ha': ['dt/ha', 'CaO'], 'kg CaO/ha': ['kg/ha', 'CaO'],
};

const TON_LB = 2000;
/** A rate of lime in pure carbonate: from calcium oxide by their weights, from what acts by how much of that a ton of pure fine lime has. */
export function pureLime(printed: Figure<Unit, 'lime' | CountedLime>): Figure<Unit, 'lime'> {
  if (printed.of === 'lime') return printed as Figure<Unit, 'lime'>;
  if (printed.of === 'CaO') return figure(printed.value * CACO3_PER.CaO, printed.unit, 'lime', 'lime-from-oxide', { source: 'definition', at: 'atomic weights', mark: 'derived' }, [printed]);
  const { pure, cite } = EFFECTIVE.find((e) => e.id === printed.of.toLowerCase())!;
  return figure((printed.value * TON_LB) / pure, printed.unit, 'lime', printed.of === 'ENM' ? 'lime-from-enm' : 'lime-from-enp', cite, [printed, figure(pure, 'lb', printed.of, 'lime-ton-has', cite)]);
}

function labLime(r: Rated['reading'], cite: Figure['cite']): PhSoil['lime'] {
  const plain = r.unit ? RATE_UNITS[r.unit] : undefined;
  const [unit, of] = (r.unit ? COUNTED_UNITS[r.unit] : undefined) ?? [plain, 'lime' as const];
  return unit ? pureLime(figure(r.value!, unit, of, 'printed-by-lab', cite)) : null;
}

/** Null for what is no buffer, or none that is known. */
export const bufferTest = (method: string | null): BufferTest | null => (BUFFERS.find((b) => b === method) as BufferTest | undefined) ?? null;

/** A lime test index is ten times an SMP buffer pH. */
const INDEX = { least: 40, most: 80 } as const;
export const isLimeIndex = (value: number): boolean => value >= INDEX.least && value <= INDEX.most;
const bufferOf = (value: number, method: string | null): PhSoil['buffer'] =>
  isLimeIndex(value) ? { value: value / 10, test: method === null ? 'smp' : bufferTest(method) } : { value, test: bufferTest(method) };

const TENTHS: readonly (ReportUnit | null)[] = ['mmolc/dm3', 'mmol/kg'];
const CHARGED: readonly (ReportUnit | null)[] = ['mmolc/dm3', 'meq/100g', 'cmol/kg', 'cmol/dm3'];

/** As printed; else calcium, magnesium, potassium and, where it is told, sodium; else what acidity leaves. Null for a share that is none. */
function baseSaturationOf(value: (item: string) => number | null): number | null {
  const [ca, mg, k, na, h] = ['saturation-ca', 'saturation-mg', 'saturation-k', 'saturation-na', 'saturation-h'].map(value);
  const found = value('base-saturation') ?? (ca != null && mg != null && k != null ? ca + mg + k + (na ?? 0) : h == null ? null : 100 - h);
  return found !== null && found >= 0 && found <= 100 ? found : null;
}

/** Null where the report gives no pH. */
export function phSoilOf(rated: readonly Rated[], depth: string | undefined): PhSoil | null {
  const read = (item: string): Rated['reading'] | undefined => rated.find((r) => r.reading.item === item && r.reading.value !== null)?.reading;
  const value = (item: string): number | null => read(item)?.value ?? null;
  const cite = (r: Rated['reading']): Figure['cite'] => ({ source: 'lab', at: `line ${r.place.line}`, mark: 'read' });
  const [water, salt, buffer, lime] = [read('ph'), read('ph-salt'), read('buffer-ph'), read('lime-requirement')];
  const now = water ? figure(water.value!, 'pH', 'soil', 'printed-by-lab', cite(water)) : salt ? waterPhOf(salt) : null;
  if (!now) return null;
  const charge = (item: string): number | null => { const r = read(item); return r ? (TENTHS.includes(r.unit) ? r.value! / 10 : r.value!) : null; };
  const ions = cationSum({ readings: rated.map((r) => r.reading) })?.ions;
  return {
    now, acidity: charge('acidity'), cec: charge('cec'), ecec: null,
    // By charge alone: aluminium of a strong extract is not what the soil exchanges.
    aluminium: CHARGED.includes(read('aluminium')?.unit ?? null) ? charge('aluminium') : null,
    calcium: ions?.Ca ?? null, exchangeableMagnesium: ions?.Mg ?? null, baseSaturation: baseSaturationOf(value),
    // Laboratories print it as at equilibrium now; an older one would ask for more.
    bufferCapacity: value('lime-buffer-capacity') === null ? null : { value: value('lime-buffer-capacity')!, after: 'equilibrium' },
    carbonate: carbonateOf(rated), depthM: depth === undefined ? null : depthOf(depth),
    buffer: buffer ? bufferOf(buffer.value!, buffer.method) : null,
    lime: lime ? labLime(lime, cite(lime)) : null,
    texture: classOf(rated.map((r) => r.reading)), ...(kindIn(rated.map((r) => r.reading)) === 'organic' ? { peat: true } : {}),
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
