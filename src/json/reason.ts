/** A figure's step as a sentence with its numbers filled in, and its cite as words. */
import { placeName } from '../orchard/where.ts';
import type { Cite, Figure, Otherwise } from '../reason/figure.ts';
import { sourceOf } from '../tables/sources.ts';
import { INCH } from '../units/units.ts';
import { showLength, showMass, showNutrient, showPh, showRate, showShort, showValue, showWater } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { numeral, say, sayIfKnown } from '../words/words.ts';

type System = 'us' | 'metric';

/** A figure's value in the grower's units. */
export function valueOf(f: Figure, language: Language, system: System): string {
  if (f.unit === 'g' && (f.of === 'N' || f.of === 'P2O5' || f.of === 'K2O' || f.of === 'MgO')) return `${showNutrient(f.value, system, language)} ${f.of}`;
  // A can's salts are weighed in grams everywhere.
  if (f.unit === 'g') return showMass(f.value, f.step === 'dilute' ? 'metric' : system, language);
  if (f.unit === 'm' && (f.of === 'growth' || f.of === 'trunk' || f.of === 'soil')) return showShort(f.value, system, language);
  if (f.unit === 'm') return showLength(f.value, system, language);
  if (f.unit === 'g/m2' && (f.of === 'lime' || f.of === 'sulphur')) return showRate(f.value, system, language);
  if (f.unit === 'm2' && system === 'us') return `${Math.round(f.value / (INCH * 12) ** 2)} sq ft`;
  if (f.unit === 'year') return f.value === 1 ? say(language, 'unit', 'years-1') : `${numeral(f.value, language)} ${say(language, 'unit', 'years')}`;
  if (f.unit === 'day') return timeOf(f.value, language);
  if (f.unit === 'pH') return showPh(f.value, language);
  if (f.unit === 'L') return showWater(f.value, system, language);
  return showValue(f.value, f.unit, language);
}

/** Days from an event: "14 days before", "12 weeks before", "38 days after". */
function timeOf(days: number, language: Language): string {
  const n = Math.abs(days);
  const weeks = n % 7 === 0 && n >= 28;
  return say(language, 'unit', days < 0 ? (weeks ? 'weeks-before' : 'days-before') : weeks ? 'weeks-after' : 'days-after', { n: weeks ? n / 7 : n });
}

export function reasonOf(f: Figure, language: Language, system: System): string {
  const facts: Record<string, string> = { value: valueOf(f, language, system), of: f.of, list: f.from.map((x) => valueOf(x, language, system)).join(', ') };
  f.from.forEach((x, i) => (facts[String(i)] = valueOf(x, language, system)));
  return [say(language, 'step', f.step, facts), ...(f.others && f.others.length > 0 ? [othersOf(f.others, language)] : [])].join(' ');
}

/** "Other publications: before buds break (Michigan, Iowa); at bloom (Kansas)." */
function othersOf(others: readonly Otherwise[], language: Language): string {
  const placed = ({ region, label }: Otherwise): string => (label ? say(language, 'say', label === 'weak' ? 'timing-weak' : 'timing-orchard', { place: placeName(region) }) : placeName(region));
  const list = [...new Set(others.map((o) => o.said))].map((said) =>
    say(language, 'say', 'timing-other', { said: say(language, 'timing', said), places: [...new Set(others.filter((o) => o.said === said).map(placed))].join(', ') }));
  return say(language, 'say', 'timing-others', { list: list.join('; ') });
}

/** "Iowa State University Extension, Should I fertilize my fruit trees? (by years since planting; read)". */
export function citeOf(cite: Cite, language: Language): string {
  const mark = say(language, 'mark', cite.mark);
  if (cite.source === 'medlar') return `${sayIfKnown(language, 'judgement', cite.at)} (${mark})`;
  const source = sourceOf(cite.source);
  const at = sayIfKnown(language, 'judgement', cite.at);
  return source ? `${source.publisher}, ${source.title}${source.year ? ` ${source.year}` : ''} (${at}; ${mark})` : at;
}
