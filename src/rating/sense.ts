/**
 * What cannot be right, or is rare, in a report that was read without a fault: told, never refused, and nothing is changed.
 * In the order that matters: salts, pH, phosphorus and potassium, the rest.
 */
import type { Notice, Place, Question, Severity } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Reading, Sample } from '../soil/reading.ts';
import type { Item } from '../tables/items.ts';
import { ELEMENT_OF } from '../tables/items.ts';
import { SALT_STOP } from '../tables/limits.ts';
import { SCALES } from '../tables/ratings.ts';
import type { Quiet } from '../tables/sense.ts';
import { AGE, ALUMINIUM, BASE_SUM, BUFFER_START, CARBONATE, CEC_SUM, CONFIRMED, DEPTH, LIMY_PH, ORGANIC_ODD, QUIET, QUIET_PH, SALT_GAP } from '../tables/sense.ts';
import { SHARES_SUM } from '../tables/texture.ts';
import type { Day } from '../units/date.ts';
import { daysBetween } from '../units/date.ts';
import { MG_PER_CMOL } from '../units/substance.ts';
import { INCH } from '../units/units.ts';
import { cationSum } from './cations.ts';
import { depthOf } from './depth.ts';
import { volumeOf } from './content.ts';
import { organicMatterOf } from './organic.ts';
import type { Rated } from './rate.ts';
import { waterPhOf } from './salt-ph.ts';
import { dilutionOf, dsPerM, pasteOf } from './salts.ts';
import { heavinessGuessed, heavinessOf, knownHeaviness } from './texture.ts';

/** What the plan's own stops say again, of each tree. */
export const SAID_BY_STOPS: readonly Notice['code'][] = ['salts-first', 'organic-matter-high'];

/** A single number as printed: no span, no "less than". */
type Known = Rated & { readonly reading: Reading & { readonly value: number } };
type Facts = Notice['facts'];

/** A number beyond any soil's; the reader's own mistakes tell of it. */
const ABSURD = 1e9;

/** Everything odd about one sample of soil. `today` says how old it is. */
export function senseOf(sample: Sample, rated: readonly Rated[], context: { readonly today: Day }): Notice[] {
  if (sample.kind === 'leaf') return [];
  const sound = rated.filter((r) => r.reading.value === null || Math.abs(r.reading.value) < ABSURD);
  const c = chemistryOf(sound);
  return [...salts(sample, sound), ...acidity(c), ...contents(sound, c), ...exchange(sound, c), ...matter(sound, c), ...texture(sample, sound), ...sampling(sample, sound, context.today)];
}

type Chemistry = {
  readonly of: (item: Item) => Known | null;
  /** Soil pH as in water. */
  readonly ph: number | null;
  readonly cec: number | null;
  /** meq/100 g. */
  readonly meq: (item: Item) => number | null;
};

function chemistryOf(rated: readonly Rated[]): Chemistry {
  const first = new Map<Item, Known>();
  for (const r of rated) if (r.reading.value !== null && isSingle(r.reading) && !first.has(r.reading.item)) first.set(r.reading.item, r as Known);
  const of = (item: Item): Known | null => first.get(item) ?? null;
  const water = of('ph')?.reading.value ?? null;
  const salt = of('ph-salt');
  const charge = (item: Item): number | null => {
    const r = of(item)?.reading;
    if (!r) return null;
    if (r.unit === 'meq/100g' || r.unit === 'cmol/kg' || r.unit === 'cmol/dm3') return r.value;
    return r.unit === 'mmolc/dm3' ? r.value / 10 : null;
  };
  const meq = (item: Item): number | null => {
    const element = ELEMENT_OF[item];
    const [r, perCmol] = [of(item), element ? MG_PER_CMOL[element] : undefined];
    return charge(item) ?? (r && perCmol ? amountOf(r, perCmol) : null);
  };
  return { of, ph: water ?? (salt ? waterPhOf(salt.reading)?.value ?? null : null), cec: charge('cec'), meq };
}

const isSingle = (r: Reading): boolean => !r.below && !r.above && r.to === undefined;
const amountOf = (r: Known, per: number): number | null => {
  const mg = mgOf(r);
  return mg === null ? null : mg / per;
};
/** mg of the element in a kg; by volume it counts as if a litre weighed a kilogram, near enough for a doubt. */
const mgOf = ({ reading, mgPerKg }: Rated): number | null => mgPerKg?.value ?? volumeOf(reading)?.value ?? null;

const short = (x: number): number => Number(x.toPrecision(3));
const shown = (r: Reading): string => `${r.below ? '<' : r.above ? '>' : ''}${r.value}${r.to === undefined ? '' : `-${r.to}`} ${r.form ?? ''}${r.unit === null || r.unit === 'pH' ? '' : ` ${r.unit}`}`.replace(/ +/g, ' ').trim();
const at = (code: Notice['code'], severity: Severity, r: Rated, facts: Facts): Notice => notice(code, severity, facts, r.reading.place);
const over = (a: number, b: number): boolean => a > b + 1e-9 * Math.abs(b);

/** As the plan's stop has it; what no soil has is a misread unit first. */
function salts(sample: Sample, rated: readonly Rated[]): Notice[] {
  const most = QUIET.rows.find((q) => q.item === 'salts')!.high!;
  const r = rated.find((x) => x.reading.item === 'salts' && x.reading.value !== null);
  const ds = r && !r.reading.below ? dsPerM(r.reading) : null;
  if (!r || ds === null || ds > most) return [];
  const dilution = dilutionOf(r.reading);
  const held = dilution === '1:5' ? pasteOf(r.reading, heavinessOf(sample))?.value ?? null : ds;
  const limit = dilution === 'paste' || dilution === '1:5' ? SALT_STOP.paste : SALT_STOP.dilute;
  return held !== null && held > limit ? [at('salts-first', 'warning', r, { read: shown(r.reading), limit, paste: dilution === '1:5' ? short(held) : '' })] : [];
}

function acidity({ of, ph: now, meq }: Chemistry): Notice[] {
  const [water, salt, buffer, aluminium] = [of('ph'), of('ph-salt'), of('buffer-ph'), of('aluminium')];
  const found: Notice[] = [];
  for (const [r, [low, high]] of [[water, QUIET_PH.water], [salt, QUIET_PH.salt]] as const) {
    if (r && (r.reading.value < low || r.reading.value > high)) found.push(at('ph-odd', 'warning', r, { item: r.reading.item, read: r.reading.value, low, high }));
  }
  if (water && salt) {
    const gap = water.reading.value - salt.reading.value;
    const facts = { water: water.reading.value, salt: salt.reading.value };
    if (gap < 0) found.push(at('salt-ph-above', 'warning', salt, facts));
    else if (over(gap, SALT_GAP.most) && salt.reading.method !== 'kcl') found.push(at('salt-ph-far', 'warning', salt, { ...facts, gap: short(gap), most: SALT_GAP.most }));
  }
  if (buffer) {
    const { value, method } = buffer.reading;
    // A lime index is ten times a buffer pH.
    const ph = value > 14 ? value / 10 : value;
    const start = BUFFER_START.starts.find((s) => s.method === method);
    const [least, most] = start ? [start.ph, start.ph] : [Math.min(...BUFFER_START.starts.map((s) => s.ph)), Math.max(...BUFFER_START.starts.map((s) => s.ph))];
    if (over(ph, most)) found.push(at('buffer-above-start', 'warning', buffer, { read: ph, start: most, known: method ?? '' }));
    // The mixture lies between the soil's pH and the buffer's.
    else if (water && ph < Math.min(water.reading.value, least)) found.push(at('buffer-below-ph', 'warning', buffer, { read: ph, ph: water.reading.value }));
  }
  // Other extractants dissolve aluminium at any pH.
  const exchangeable = aluminium && (aluminium.reading.method === 'kcl' || ['meq/100g', 'cmol/kg', 'cmol/dm3', 'mmolc/dm3'].includes(aluminium.reading.unit ?? ''));
  const al = meq('aluminium');
  if (aluminium && exchangeable && al !== null && now !== null && now > ALUMINIUM.ph && over(al, ALUMINIUM.none)) {
    found.push(at('aluminium-high-ph', 'warning', aluminium, { read: shown(aluminium.reading), ph: short(now), limit: ALUMINIUM.ph }));
  }
  return found;
}

const FIRST: readonly Item[] = ['phosphorus', 'potassium'];
const rank = (item: Item): number => (FIRST.includes(item) ? FIRST.indexOf(item) : FIRST.length);

/** Values outside of what soils mostly hold, with what may be behind it. Nothing at all is the lab's own rounding. */
function contents(rated: readonly Rated[], c: Chemistry): Notice[] {
  const sorted = [...rated].sort((a, b) => rank(a.reading.item) - rank(b.reading.item));
  return sorted.flatMap((r) => {
    const { reading } = r;
    const { item } = reading;
    const amount = reading.unit === null || reading.unit === 'index' ? null : ELEMENT_OF[item] ? mgOf(r) : item === 'cec' ? cecOf(reading) : item === 'salts' ? dsPerM(reading) : item === 'organic-matter' ? percentOf(reading) : null;
    const quiet = QUIET.rows.find((q) => q.item === item && (!q.methods || (reading.method !== null && q.methods.includes(reading.method))));
    if (!quiet || amount === null || !Number.isFinite(amount) || reading.value === null || reading.value <= 0 || reading.below || isConfirmed(item, c)) return [];
    const factor = amount / reading.value;
    const unit = `${reading.form ?? ''} ${reading.unit}`.trim();
    const facts = { item, read: shown(reading), unit };
    if (!reading.above && over(quiet.low, (reading.to === undefined ? 1 : reading.to / reading.value) * amount)) return [at('value-low', 'warning', r, { ...facts, low: short(quiet.low / factor), why: lowCause(quiet, amount, reading) })];
    if (quiet.high !== null && over(amount, quiet.high) && !excused(item, c)) return [at('value-high', 'warning', r, { ...facts, high: short(quiet.high / factor), why: highCause(quiet, reading) })];
    return [];
  });
}

const WEIGHTS: readonly (Reading['unit'])[] = ['ppm', 'mg/kg', 'mg/L'];
const lowCause = (q: Quiet, amount: number, r: Reading): string => (q.nearZero && amount < q.nearZero.under && WEIGHTS.includes(r.unit) ? q.nearZero.why : 'perhaps-unit');
/** A figure that stands in lb/acre or as an oxide already has another cause. */
const highCause = (q: Quiet, r: Reading): string => (ELEMENT_OF[r.item] && q.why !== 'perhaps-sprays' && q.why !== 'perhaps-limy' && (r.form !== null || !WEIGHTS.includes(r.unit)) ? 'perhaps-unit' : q.why);

/** Limy soils hold any amount of calcium, peat has any CEC. */
const excused = (item: Item, { ph, of }: Chemistry): boolean =>
  (item === 'calcium' && ((ph !== null && ph > LIMY_PH.over) || (of('carbonate')?.reading.value ?? 0) > 0)) || (item === 'cec' && (percentOf(of('organic-matter')?.reading ?? null) ?? 0) > ORGANIC_ODD.perKg);

const SATURATION: Partial<Record<Item, Item>> = { potassium: 'saturation-k', calcium: 'saturation-ca', magnesium: 'saturation-mg', sodium: 'saturation-na' };
/** Whether the printed saturation and CEC give the content back: then its unit is right. */
function isConfirmed(item: Item, { of, cec, meq }: Chemistry): boolean {
  const saturation = SATURATION[item] ? of(SATURATION[item])?.reading.value : undefined;
  const held = meq(item);
  return saturation !== undefined && cec !== null && held !== null && held > 0 && !over(Math.abs((saturation / 100) * cec - held), CONFIRMED.within * held);
}

const cecOf = (r: Reading): number | null => (r.unit === 'meq/100g' || r.unit === 'cmol/kg' || r.unit === 'cmol/dm3' ? r.value : r.unit === 'mmolc/dm3' && r.value !== null ? r.value / 10 : null);
const percentOf = (r: Reading | null): number | null => (r === null || r.value === null ? null : r.unit === '%' ? r.value : r.unit === 'g/kg' ? r.value / 10 : null);

/** Cations, their sum and their shares. */
function exchange(rated: readonly Rated[], c: Chemistry): Notice[] {
  return [...sums(rated, c), ...saturations(c), ...order(c)];
}

function sums(rated: readonly Rated[], { of, cec, meq, ph }: Chemistry): Notice[] {
  if (cec === null || cec <= 0) return [];
  const summed = cationSum({ readings: rated.map((r) => r.reading) });
  if (!summed) {
    return (['calcium', 'magnesium', 'potassium', 'sodium'] as const).flatMap((item) => {
      const held = meq(item);
      return held !== null && over(held, cec * (1 + CEC_SUM.off)) ? [at('cation-over-cec', 'warning', of(item)!, { item, read: shown(of(item)!.reading), meq: short(held), cec: short(cec) })] : [];
    });
  }
  const share = of('saturation-h')?.reading.value;
  // An acidity that is only worked out from a buffer pH is no sum of the lab's.
  const printed = of('acidity') && summed.acidity ? summed.acidity.value : share === undefined ? null : (share / 100) * cec;
  const off = (summed.bases + (printed ?? 0) - cec) / cec;
  // Where acidity is not told, an acid soil holds more than its cations; so it does where potassium is not told.
  const whole = (printed !== null || (ph !== null && ph >= CEC_SUM.neutral)) && summed.ions.K !== undefined;
  if (!over(off, CEC_SUM.off) && !(whole && over(-off, CEC_SUM.off))) return [];
  const facts = { sum: short(summed.bases + (printed ?? 0)), cec: short(cec), ions: Object.keys(summed.ions).join(', '), acidity: printed === null ? '' : short(printed) };
  return [at('cec-sum', Math.abs(off) > CEC_SUM.far ? 'warning' : 'note', of('cec')!, facts)];
}

function saturations({ of, ph }: Chemistry): Notice[] {
  const value = (item: Item): number | null => of(item)?.reading.value ?? null;
  const [ca, mg, k, na, h] = (['saturation-ca', 'saturation-mg', 'saturation-k', 'saturation-na', 'saturation-h'] as const).map(value) as [number | null, number | null, number | null, number | null, number | null];
  if (ca === null || mg === null || k === null) return [];
  const sum = ca + mg + k + (na ?? 0) + (h ?? 0);
  const whole = h !== null || (ph !== null && ph >= CEC_SUM.neutral);
  const wrong = over(sum, 100 + BASE_SUM.within) || (whole && over(100 - BASE_SUM.within, sum));
  return wrong ? [at('base-sum', 'warning', of('saturation-ca')!, { sum: short(sum), expected: whole ? `${100 - BASE_SUM.within}-${100 + BASE_SUM.within}` : `<= ${100 + BASE_SUM.within}` })] : [];
}

/** Charges stand mostly in the order calcium, magnesium, potassium. */
function order({ of, meq }: Chemistry): Notice[] {
  const charges: readonly Item[] = ['calcium', 'magnesium', 'potassium'];
  const byContent = meq('magnesium') !== null;
  const held = (item: Item): { n: number; r: Known; read: string } | null => {
    const r = of(byContent ? item : SATURATION[item]!);
    const n = byContent ? meq(item) : r?.reading.value ?? null;
    return r && n !== null && n > 0 ? { n, r, read: shown(r.reading) } : null;
  };
  const [ca, mg, k] = charges.map(held) as [ReturnType<typeof held>, ReturnType<typeof held>, ReturnType<typeof held>];
  return [
    ...(ca && mg && over(mg.n, ca.n) ? [at('magnesium-over-calcium', 'warning', mg.r, { mg: mg.read, ca: ca.read })] : []),
    ...(mg && k && over(k.n, mg.n) ? [at('potassium-over-magnesium', 'note', k.r, { k: k.read, mg: mg.read })] : []),
  ];
}

function matter(rated: readonly Rated[], { of, ph }: Chemistry): Notice[] {
  const organic = rated.find((r) => r.reading.item === 'organic-matter' && r.reading.value !== null) ?? rated.find((r) => r.reading.item === 'organic-carbon' && r.reading.value !== null);
  const percent = organic && !organic.reading.below ? organicMatterOf({ readings: [organic.reading] })?.value ?? null : null;
  const carbonate = of('carbonate');
  const lime = percentOf(carbonate?.reading ?? null);
  return [
    ...(organic && percent !== null && over(percent, ORGANIC_ODD.potting) ? [at('organic-matter-high', 'warning', organic, { read: shown(organic.reading), high: ORGANIC_ODD.potting, why: over(percent, ORGANIC_ODD.perKg) && organic.reading.unit === '%' ? 'perhaps-per-kg' : 'perhaps-potting' })] : []),
    ...(carbonate && lime !== null && ph !== null && ph < CARBONATE.phUnder && over(lime, CARBONATE.percent) ? [at('carbonate-acid', 'warning', carbonate, { read: shown(carbonate.reading), ph: short(ph) })] : []),
  ];
}

function texture(sample: Sample, rated: readonly Rated[]): Notice[] {
  const found: Notice[] = [];
  const three = (['sand', 'silt', 'clay'] as const).map((item) => rated.find((r) => r.reading.item === item && r.reading.value !== null));
  if (three.every((r) => r !== undefined)) {
    const sum = three.reduce((all, r) => all + (r.reading.unit === 'g/kg' ? r.reading.value! / 10 : r.reading.value!), 0);
    if (over(Math.abs(sum - 100), SHARES_SUM.within)) found.push(at('shares-sum', 'warning', three[0]!, { sum: short(sum) }));
  }
  const guess = knownHeaviness(sample) === null ? heavinessGuessed(sample) : null;
  const scaled = guess ? rated.filter((r) => r.by === 'scale' && SCALES.some((s) => s.soil && s.id === r.ours?.scale)) : [];
  if (guess && scaled.length > 0) {
    const symbols = scaled.map((r) => ELEMENT_OF[r.reading.item] ?? (r.reading.item === 'ph' ? 'pH' : r.reading.item));
    found.push(at('texture-guessed', 'note', scaled[0]!, { heaviness: guess.heaviness, cec: short(guess.cec), ph: guess.ph, items: [...new Set(symbols)].join(', ') }));
  }
  return found;
}

const YEAR = 365.25;
/** What was sampled how deep and when; told at the sample's first line, for lack of its own. */
function sampling(sample: Sample, rated: readonly Rated[], today: Day): Notice[] {
  const first = rated[0]?.reading.place;
  const where: Place | undefined = first ? { ...first, column: 1, length: 1 } : undefined;
  const said = sample.depth === undefined ? null : depthOf(sample.depth);
  const depth = said === null ? null : Number((said / INCH).toFixed(3));
  const years = sample.taken === undefined ? NaN : daysBetween(sample.taken, today) / YEAR;
  const facts = { taken: sample.taken ?? '', years: Number(years.toFixed(1)) };
  return [
    ...(depth !== null && depth <= DEPTH.shallow ? [notice('depth-shallow', 'note', { depth: sample.depth! }, where)] : []),
    ...(depth !== null && depth > DEPTH.deep ? [notice('depth-deep', 'note', { depth: sample.depth! }, where)] : []),
    ...(years > AGE.tooOld ? [notice('test-too-old', 'warning', facts, where)] : years > AGE.old ? [notice('test-old', 'note', facts, where)] : []),
  ];
}

/** The order in which questions matter: what stops all feeding, the pH, phosphate and potash, the rest. */
const ASKED: readonly string[] = ['salts', 'sar', 'saturation-na', 'lead', 'ph', 'ph-salt', 'buffer-ph', 'acidity', 'phosphorus', 'potassium'];
const place = (about: string): number => (ASKED.includes(about) ? ASKED.indexOf(about) : ASKED.length);
export const inOrder = (questions: readonly Question[]): Question[] => [...questions].sort((a, b) => place(a.about) - place(b.about));
