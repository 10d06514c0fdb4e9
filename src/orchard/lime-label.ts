/** How strong a lime is, by what its label says: in pure carbonate, each scheme of the trade by its own rule, with what was assumed. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Facts } from '../reason/notice.ts';
import type { LimeMaterial, Scheme } from '../tables/lime-materials.ts';
import {
  CAO_IN_CARBONATE, DOLOMITIC_FROM, DOLOMITIC_FROM_BRAZIL, EFFECTIVE, INDEX_GRADE, LIME_MATERIALS, NEUTRAL_SALTS, SCHEMES, SIEVE_MM, STRENGTHS, VALUE_BASES,
} from '../tables/lime-materials.ts';
import { CACO3_PER, ELEMENT_SHARE } from '../units/substance.ts';
import type { NoticeId } from '../words/words.ts';
import type { Claim, Sieve } from './lime-claims.ts';
import { claimsIn } from './lime-claims.ts';
import type { Where } from './where.ts';

/** Who reads the label: the place decides what a value is percent of, and by which sieves. */
export type Reader = Pick<Where, 'country' | 'state'>;
/** What is told of a label; who tells it adds the bag. */
export type Said = { readonly code: NoticeId; readonly facts: Facts };
type Percent = Figure<'%', 'lime'>;

export type LimeLabel = {
  readonly material: LimeMaterial;
  /** Effective strength, % of pure carbonate of lime, with what it came from. */
  readonly strength: Percent;
  /** Whose scheme of fineness counts in it. */
  readonly scheme: string | null;
  readonly dolomitic: boolean;
  readonly burns: boolean;
  readonly notes: readonly Said[];
  /** Why it cannot be used. */
  readonly faults: readonly Said[];
  /** The label without what was read of its strength. */
  readonly rest: string;
};

const definition = { source: 'definition', at: 'atomic weights', mark: 'derived' } as const;
const arithmetic = { source: 'definition', at: 'parts of a whole', mark: 'derived' } as const;
const label = { source: 'grower', at: 'label', mark: 'read' } as const;
const told = (value: number): Percent => figure(value, '%', 'lime', 'strength', label);
const shown = (x: number): number => Math.round(x * 10) / 10;
/** Two figures of one label differ where rounding does not explain it. */
const ROUNDED = 0.03;
const differ = (a: number, b: number): boolean => Math.abs(a - b) > ROUNDED * Math.max(a, b);

const names = (text: string, words: readonly string[]): boolean => words.some((n) => new RegExp(`(?:^|[^\\p{L}])${n}(?:$|[^\\p{L}])`, 'u').test(text));

/** Gypsum and Epsom salts by themselves. */
export const isNeutralSalt = (text: string): boolean => names(text.toLowerCase(), NEUTRAL_SALTS.names) && limeNamed(text) === undefined;

/** The lime that a label names. Nitrate of lime feeds, lime sulphur is a spray, and what is mixed with gypsum says nothing for sure. */
function limeNamed(text: string): LimeMaterial | undefined {
  const words = text.toLowerCase();
  return /nitrat|lime[- ]sul|sulfoc[aá]lc/.test(words) ? undefined : LIME_MATERIALS.find((m) => names(words, m.names));
}

/** Null for a label that names no lime. */
export function limeLabel(text: string, reader: Reader): LimeLabel | null {
  const material = limeNamed(text);
  if (!material || names(text.toLowerCase(), NEUTRAL_SALTS.names)) return null;
  const { claims, sieves, rest } = claimsIn(text);
  const faults = faultsOf(claims, sieves);
  const from = { claims, sieves, reader, material };
  const found = faults.length > 0 ? { strength: byMaterial(material), base: null, scheme: null, notes: [] } : strengthOf(from);
  const { strength, base } = found;
  if (faults.length === 0 && (strength.value < STRENGTHS.least || Math.max(strength.value, base?.value ?? 0) > STRENGTHS.most)) faults.push({ code: 'lime-strength-odd', facts: { read: claims.map((c) => c.read).join(', '), percent: shown(Math.max(strength.value, base?.value ?? 0)) } });
  // No effective value is above what the whole lime could do.
  if (faults.length === 0 && base && strength.value > base.value * (1 + ROUNDED)) faults.push({ code: 'lime-two-values', facts: { read: claims.map((c) => c.read).join(', ') } });
  return {
    material, strength, scheme: found.scheme, notes: faults.length > 0 ? [] : found.notes, faults, rest,
    dolomitic: material.dolomitic === true || isDolomitic(claims, reader), burns: material.burns === true || Math.max(strength.value, base?.value ?? 0) > STRENGTHS.burns,
  };
}

const MAY_BE_NONE: readonly Claim['of'][] = ['moisture', 'Mg', 'MgO', 'mgco3'];
const FINENESS: readonly Claim['of'][] = ['fineness', 're'];

/** Numbers that no lime has, and two that cannot both hold. */
function faultsOf(claims: readonly Claim[], sieves: readonly Sieve[]): Said[] {
  const twice = claims.filter((c, i) => claims.slice(0, i).some((d) => d.of === c.of && differ(c.value, d.value)));
  const finer = [...sieves].sort((a, b) => b.mm - a.mm);
  const rising = finer.some((s, i) => s.percent > 100 || (i > 0 && s.percent > finer[i - 1]!.percent));
  const same = finer.some((s, i) => i > 0 && isSame(s.mm, finer[i - 1]!.mm) && s.percent !== finer[i - 1]!.percent);
  const odd = claims.filter((c) => (c.value <= 0 && !MAY_BE_NONE.includes(c.of)) || (c.of === 'moisture' && c.value >= 100) || (FINENESS.includes(c.of) && c.value > 100));
  const read = (list: readonly { read: string }[]): Facts => ({ read: list.map((c) => c.read).join(', ') });
  return [
    ...(twice.length > 0 ? [{ code: 'lime-two-values', facts: read(claims.filter((c) => twice.some((t) => t.of === c.of))) } as const] : []),
    ...(rising || same ? [{ code: 'lime-two-values', facts: read(sieves) } as const] : []),
    ...(odd.length > 0 ? [{ code: 'lime-strength-odd', facts: { ...read(odd), percent: '' } } as const] : []),
  ];
}

type From = { readonly claims: readonly Claim[]; readonly sieves: readonly Sieve[]; readonly reader: Reader; readonly material: LimeMaterial };
/** `base` is what the whole lime neutralises, however coarse, where the label tells it. */
type Found = { readonly strength: Percent; readonly base: Percent | null; readonly scheme: string | null; readonly notes: readonly Said[] };

/** A measured effective value counts fineness in already and comes first; then what the whole neutralises, times its fineness; then what such a lime mostly has. */
function strengthOf(from: From): Found {
  const { claims, sieves, reader, material } = from;
  const notes: Said[] = [];
  const base = baseOf(from, notes);
  const measured = effectiveOf(claims, reader, notes);
  if (measured) return { base, strength: dried(measured.strength, claims, measured.wet), scheme: measured.scheme, notes };
  const whole = base ?? byMaterial(material);
  if (!base) notes.push({ code: 'lime-assumed', facts: { percent: material.cce, least: material.least ?? '' } });
  const fine = finenessOf(claims, sieves, reader, notes);
  if (!fine && base) notes.push({ code: 'lime-coarse', facts: { percent: shown(base.value) } });
  const strength = fine ? figure((whole.value * fine.share.value) / 100, '%', 'lime', 'lime-effective', arithmetic, [whole, fine.share]) : whole;
  return { base, strength: dried(strength, claims, false), scheme: fine?.scheme ?? null, notes };
}

const byMaterial = (m: LimeMaterial): Percent => figure(m.cce, '%', 'lime', 'lime-material', m.cite);

/** What the whole lime neutralises, as carbonate: by its CCE, its neutralising value, or its analysis. */
function baseOf({ claims, reader }: From, notes: Said[]): Percent | null {
  const said = (of: Claim['of']): Claim | undefined => claims.find((c) => c.of === of);
  const cce = said('cce');
  const value = said('nv') ?? said('tnv');
  if (cce) return told(cce.value);
  if (value) return asCarbonate(value, reader, notes);
  const [carbonate, mgco3] = [said('caco3'), said('mgco3')];
  if (carbonate) return mgco3 ? figure(carbonate.value + CACO3_PER.MgCO3 * mgco3.value, '%', 'lime', 'lime-as-carbonate', definition, [told(carbonate.value), told(mgco3.value)]) : told(carbonate.value);
  const parts = (['Ca', 'Mg', 'CaO', 'MgO'] as const).flatMap((of) => said(of) ?? []);
  // Magnesium alone tells how much magnesium, not how strong; and element and oxide of one metal are the same twice.
  const [ca, mg] = [parts.find((p) => p.of === 'Ca') ?? parts.find((p) => p.of === 'CaO'), parts.find((p) => p.of === 'Mg') ?? parts.find((p) => p.of === 'MgO')];
  if (!ca) return null;
  const taken = [ca, ...(mg ? [mg] : [])];
  return figure(taken.reduce((sum, p) => sum + p.value * CACO3_PER[p.of as 'Ca' | 'Mg' | 'CaO' | 'MgO'], 0), '%', 'lime', 'lime-as-carbonate', definition, taken.map((p) => told(p.value)));
}

/** A neutralising value is percent of calcium oxide in some countries, of the carbonate in others; where nobody tells, the stronger is taken, which makes the lesser dose. */
function asCarbonate(value: Claim, { country }: Reader, notes: Said[]): Percent {
  const known = value.basis ? { as: value.basis, cite: definition } : VALUE_BASES.find((b) => b.countries.includes(country ?? '') && (b.only === undefined || b.only === value.of));
  const fromOxide = (value.value * 100) / CAO_IN_CARBONATE.value;
  const guessed = !known && value.of === 'nv' && fromOxide <= STRENGTHS.burns;
  if (guessed) notes.push({ code: 'lime-basis', facts: { read: value.read, percent: shown(fromOxide) } });
  return known?.as === 'CaO' || guessed ? figure(fromOxide, '%', 'lime', 'lime-as-carbonate', CAO_IN_CARBONATE.cite, [told(value.value)]) : told(value.value);
}

/** An effective value as it was measured: by the scheme of the grower's own state, else the highest. */
function effectiveOf(claims: readonly Claim[], reader: Reader, notes: Said[]): { strength: Percent; scheme: string; wet: boolean } | null {
  const own = ownScheme(reader);
  const found = claims.flatMap((c) => {
    const kind = EFFECTIVE.find((e) => e.id === c.of);
    if (!kind) return [];
    if (c.of === 'standard') return [{ id: kind.id, strength: figure((kind.pure * 100) / c.value, '%', 'lime', 'lime-standard', kind.cite, [figure(c.value, 'lb', 'lime', 'strength', label)]), wet: true, read: c.read, guessed: false }];
    const pounds = c.unit === 'lb/ton' || (c.unit === null && kind.unit === 'lb/ton' && c.value > STRENGTHS.most);
    // A short ton has 2,000 lb, which most schemes take for pure lime.
    const printed = pounds ? told(c.value / 20) : c.grade ? figure(c.value, '%', 'lime', 'strength', INDEX_GRADE.cite) : told(c.value);
    const strength = pounds && kind.unit === 'lb/ton' && kind.pure !== 2000 ? figure((printed.value * 2000) / kind.pure, '%', 'lime', 'lime-as-carbonate', kind.cite, [printed]) : printed;
    return [{ id: kind.id, strength, wet: kind.wet === true, read: c.read, guessed: kind.unit === 'lb/ton' && c.unit === null && !pounds }];
  });
  const best = found.find((f) => f.id === own?.value) ?? [...found].sort((a, b) => b.strength.value - a.strength.value)[0];
  if (!best) return null;
  if (best.guessed) notes.push({ code: 'lime-unit', facts: { read: best.read } });
  return { strength: best.strength, scheme: best.id, wet: best.wet };
}

/** Wet lime: what a value does not count in already. */
function dried(strength: Percent, claims: readonly Claim[], wet: boolean): Percent {
  const water = claims.find((c) => c.of === 'moisture');
  return water && !wet ? figure(strength.value * (1 - water.value / 100), '%', 'lime', 'lime-dry', arithmetic, [strength, told(water.value)]) : strength;
}

const ownScheme = ({ country, state }: Reader): Scheme | undefined => SCHEMES.find((s) => s.country === country && (!s.states || (state !== null && s.states.includes(state))));

/** The share that acts: by the sieves in the scheme of the state, else in that scheme of the country which makes the lesser dose; else by a number whose scheme is known. */
function finenessOf(claims: readonly Claim[], sieves: readonly Sieve[], reader: Reader, notes: Said[]): { share: Percent; scheme: string } | null {
  const own = ownScheme(reader);
  const reactivity = claims.find((c) => c.of === 're');
  if (reactivity) return { share: told(reactivity.value), scheme: 'prnt' };
  const number = claims.find((c) => c.of === 'fineness');
  if (sieves.length === 0) {
    if (number) notes.push({ code: own ? 'lime-fineness-here' : 'lime-fineness-nowhere', facts: { read: number.read, scheme: own?.name ?? '' } });
    return number && own ? { share: told(number.value), scheme: own.value } : null;
  }
  const all = SCHEMES.filter((s) => s.country === (reader.country ?? 'US')).map((scheme) => ({ scheme, ...spanBy(scheme, sieves) }));
  // A scheme whose sieves the label leaves out says little of it.
  const answered = all.filter((x) => x.high - x.low <= 1);
  const others = answered.length > 0 ? answered : all;
  const best = all.find((x) => x.scheme === own) ?? [...others].sort((a, b) => b.high - a.high)[0];
  if (!best) return null;
  const { scheme, high } = best;
  const low = own ? best.low : Math.min(...others.map((x) => x.low));
  notes.push({ code: own ? 'lime-by-sieves' : 'lime-by-sieves-abroad', facts: { scheme: scheme.name, percent: shown(high), low: high - low > 1 ? shown(low) : '' } });
  return { share: figure(high, '%', 'lime', 'lime-fineness', scheme.cite, sieves.map((s) => told(s.percent))), scheme: scheme.value };
}

const isSame = (a: number, b: number): boolean => !differ(a, b);
const openingOf = (mesh: number): number => SIEVE_MM.map((t) => t.meshes[mesh]).find((mm) => mm !== undefined)!;

/** Least and most that act. Of a sieve the label leaves out no more is known than the next finer and the next coarser one tell. */
function spanBy({ passing, between, over = 0 }: Scheme, sieves: readonly Sieve[]): { readonly low: number; readonly high: number } {
  const rows = Object.entries(passing ?? between!).map(([mesh, share]) => ({ mm: openingOf(Number(mesh)), share }));
  const counts = passing ? rows : rows.map((r, i) => ({ mm: r.mm, share: r.share - (i === 0 ? over : rows[i - 1]!.share) }));
  const through = (mm: number): readonly [number, number] => {
    const printed = sieves.find((s) => isSame(s.mm, mm));
    if (printed) return [printed.percent, printed.percent];
    return [Math.max(0, ...sieves.filter((s) => s.mm < mm).map((s) => s.percent)), Math.min(100, ...sieves.filter((s) => s.mm > mm).map((s) => s.percent))];
  };
  const sum = (end: 0 | 1): number => 100 * over + counts.reduce((total, c) => total + c.share * through(c.mm)[end], 0);
  return { low: sum(0), high: sum(1) };
}

/** By the magnesium on the label. */
function isDolomitic(claims: readonly Claim[], { country }: Reader): boolean {
  const percent = (of: Claim['of']): number => claims.find((c) => c.of === of)?.value ?? 0;
  const oxide = Math.max(percent('MgO'), percent('Mg') / ELEMENT_SHARE.MgO.share, (percent('mgco3') * CACO3_PER.MgCO3) / CACO3_PER.MgO);
  return country === 'BR' ? oxide > DOLOMITIC_FROM_BRAZIL.percent : oxide * ELEMENT_SHARE.MgO.share >= DOLOMITIC_FROM.percent;
}
