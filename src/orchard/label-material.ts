/** The material that a label names, or failing a name the one whose grade it prints. */
import type { Material, Span } from '../tables/materials.ts';
import { MATERIALS } from '../tables/materials.ts';
import { LETTER } from '../units/letters.ts';

/** Small letters without accents, both spellings of sulphur as one, no hyphens, commas or ampersands between words. */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[’`´]/g, '\'').replace(/sulf/g, 'sulph').replace(/ *& */g, ' and ').replace(/[-‐‑–—_,.()/]+/g, ' ').replace(/\s+/g, ' ');

type Named = { readonly material: Material; readonly name: string; readonly code: boolean };
const NAMES: readonly Named[] = MATERIALS.flatMap((material) => [
  ...[...new Set(material.names.map(plain))].map((name) => ({ material, name, code: false })),
  ...(material.codes ?? []).map((name) => ({ material, name, code: true })),
]).sort((a, b) => b.name.length - a.name.length);

const OF_WORD = /[\p{L}\d]/u;
/** Where a name stands as a word of its own; -1 where it does not. Six hundred patterns would take longer to make than to look. */
function wordAt(text: string, name: string): number {
  for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
    if (!OF_WORD.test(text.charAt(at - 1)) && !OF_WORD.test(text.charAt(at + name.length))) return at;
  }
  return -1;
}

/** The longest name in the words; `before` is what stands in front of it, in plain letters. */
export function materialNamed(text: string): { readonly material: Material; readonly before: string } | null {
  const words = plain(text);
  for (const { material, name, code } of NAMES) {
    const within = code ? text : words;
    const at = wordAt(within, name);
    if (at >= 0) return { material, before: within.slice(0, at) };
  }
  return null;
}

/** Whether the numbers of a label can be those of a material: a blend with urea is no urea. */
export function fits(material: Material, printed: readonly number[]): boolean {
  const { grade } = material.sold;
  if (printed[grade.indexOf(Math.max(...grade))]! === 0) return false;
  return spansOf(material).every(([, most], i) => printed[i]! <= 3 || (most > 0 && printed[i]! <= 3 * most));
}

/** N, P2O5 and K2O: least and most of what is sold so. */
export const spansOf = ({ sold: { grade }, spread }: Material): Span[] =>
  [spread?.n, spread?.p2o5, spread?.k2o].map((span, i): Span => [Math.min(span?.[0] ?? Infinity, grade[i]!), Math.max(span?.[1] ?? 0, grade[i]!)]);

/** Some minerals are known by their numbers. */
export const materialOfGrade = (printed: readonly number[]): Material | null => MATERIALS.find((m) => m.byGrade && m.sold.grade.every((x, i) => x === printed[i])) ?? null;

/** "Urea 46 %", "UAN 32": the number right behind the name of what has one nutrient; a short name needs no percent sign. */
export function strengthBehind({ material }: { readonly material: Material }, text: string): readonly [number, number, number] | null {
  const { grade } = material.sold;
  const chief = grade.findIndex((x) => x > 0);
  if (chief < 0 || grade.filter((x) => x > 0).length > 1) return null;
  const flat = text.normalize('NFD').replace(/\p{M}/gu, '').replace(/[-‐‑–—_]/g, ' ');
  const low = flat.toLowerCase().replace(/sulf/g, 'sulph');
  const codes = (material.codes ?? []).map((c) => new RegExp(`^ *(\\d{1,2}(?:[.,]\\d+)?)(?![\\d.,]*\\d)(?! *(?:kg|g|lbs?|oz|l|ml|gal)(?![${LETTER}\\d]))`, 'i').exec(behind(flat, c)));
  const names = [...material.names].sort((a, b) => b.length - a.length).map((n) => /^[ ,:]*\(?(\d{1,3}(?:[.,]\d+)?) *%/.exec(behind(low, plain(n))));
  const m = [...codes, ...names].find((x) => x !== null);
  const value = m ? Number(m[1]!.replace(',', '.')) : 0;
  return value > 0 ? [chief === 0 ? value : 0, chief === 1 ? value : 0, chief === 2 ? value : 0] : null;
}

const behind = (text: string, name: string): string => (wordAt(text, name) < 0 ? '' : text.slice(wordAt(text, name) + name.length));
