/** A soil's texture: from sand, silt and clay, from the report's own words, by feel, or guessed from its exchange capacity. */
import type { Cite } from '../reason/figure.ts';
import type { Reading, Sample } from '../soil/reading.ts';
import type { Item } from '../tables/items.ts';
import { SALT_STOP } from '../tables/limits.ts';
import type { TextureClass } from '../tables/sulphur.ts';
import type { FeelAnswer, FeelId, Heaviness, Shares, TextureRow, TextureScheme, UsdaClass } from '../tables/texture.ts';
import { AUSTRIA_CLAY, CLAY_ALONE, FEEL, HEAVINESS_BY_CEC, HEAVINESS_WORDS, SHARES_SUM, TEXTURE_WORDS, USDA_TRIANGLE, VDLUFA_GROUPS } from '../tables/texture.ts';
import type { Unit } from '../units/units.ts';
import { convert, UNITS } from '../units/units.ts';

export type { Heaviness } from '../tables/texture.ts';

/** Whose word a texture is, what it means for lime and sulphur, and how heavy it is. */
export type Named = { readonly word: string; readonly of: readonly TextureScheme[]; readonly means: TextureClass | null; readonly heaviness: Heaviness | null; readonly cite: Cite };

const fine = (x: number): number => Math.round(x * 1e6) / 1e6;

/**
 * Three shares of which one may be missing (%) → all three. Silt, or the missing one, is the rest to 100, as labs have it.
 * Null for two missing, anything below 0, or three that miss 100 by more than rounding.
 */
export function sharesOf(sand: number | null, silt: number | null, clay: number | null): Shares | null {
  const given = [sand, silt, clay].filter((x): x is number => x !== null);
  if (given.length < 2 || given.some((x) => !(x >= 0 && x <= 100))) return null;
  const sum = fine(given.reduce((a, b) => a + b, 0));
  if (given.length === 3 ? Math.abs(sum - 100) > SHARES_SUM.within : sum > 100) return null;
  const [s, c] = [fine(sand ?? 100 - silt! - clay!), fine(clay ?? 100 - sand! - silt!)];
  // Three shares of 101 % with hardly any silt: the rest may fall just under nothing.
  return { sand: s, clay: c, silt: Math.max(0, fine(100 - s - c)) };
}

/** The American class of shares that sum to 100. */
export function usdaClass(shares: Shares): UsdaClass {
  return USDA_TRIANGLE.classes.find((c) => c.holds(shares))?.name ?? 'clay';
}

/** Small letters without accents; anything else is a blank. */
const plain = (text: string): string => text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '').replace(/ß/g, 'ss').replace(/[^a-z0-9%.,]+/g, ' ');

/** "clay 22 %" and "22 % clay" are shares, no names. */
const SHARE = /\b(?:sand|silt|clay|ton|schluff|arena|limo|arcilla|sable|limon|argile|sabbia|argilla|areia|argila) ?\d+(?:[.,]\d+)? ?%?|\b\d+(?:[.,]\d+)? ?% ?(?:sand|silt|clay|ton|schluff|arena|limo|arcilla|sable|limon|argile|sabbia|argilla|areia|argila)\b/g;

/** Contents that stand on the same line. */
const CONTENT = /\borganic (?:matter|carbon)\b/g;

const dictionary = (rows: readonly TextureRow[]): { readonly rowOf: ReadonlyMap<string, TextureRow>; readonly pattern: RegExp } => {
  const rowOf = new Map(rows.flatMap((r) => r.words.map((w) => [w, r] as const)));
  return { rowOf, pattern: new RegExp(`\\b(?:${[...rowOf.keys()].sort((a, b) => b.length - a.length).join('|')})\\b`, 'g') };
};
const CLASSES = dictionary(TEXTURE_WORDS);
const ALONE = dictionary(HEAVINESS_WORDS);

/** The texture that a line or a grower names; null for none, or for two that disagree. */
export function textureNamed(text: string): Named | null {
  const lettered = germanLetters(text);
  if (lettered) return lettered;
  const words = plain(text).replace(SHARE, ' ').replace(/[0-9%.,]+/g, ' ').replace(/ +/g, ' ').replace(CONTENT, ' ');
  for (const { rowOf, pattern } of [CLASSES, ALONE]) {
    const found = (words.match(pattern) ?? []).map((word): Named => ({ word, ...pick(rowOf.get(word)!) }));
    if (found.length > 0) return found.every((f) => f.means === found[0]!.means && f.heaviness === found[0]!.heaviness) ? found[0]! : null;
  }
  return null;
}

const pick = ({ of, means, heaviness, cite }: TextureRow): Omit<Named, 'word'> => ({ of, means, heaviness, cite });

/** "Bodenart: sL", "Bodengruppe 4". */
function germanLetters(text: string): Named | null {
  const group = /boden(?:art(?:en)?)?gruppe\W{0,3}([1-6])\b/i.exec(text)?.[1];
  const letters = /bodenart\W{1,4}([A-Za-z][A-Za-z'´’]{0,2})\W*$/i.exec(text)?.[1]?.replace(/[´’]/g, '\'');
  const found = VDLUFA_GROUPS.groups.find((g) => (group ? g.group === Number(group) : letters !== undefined && (g.letters as readonly string[]).includes(letters)));
  return found ? { word: group ?? letters!, of: ['de'], means: found.means, heaviness: found.heaviness, cite: VDLUFA_GROUPS.cite } : null;
}

/** The texture a report or a grower names, as the lime and sulphur tables part it; null for a word that names none. */
export const textureClass = (text: string): TextureClass | null => textureNamed(text)?.means ?? null;

const CLASS_OF: Readonly<Record<UsdaClass, TextureClass>> = Object.fromEntries(USDA_TRIANGLE.classes.map((c) => [c.name, CLASSES.rowOf.get(c.name)!.means])) as Record<UsdaClass, TextureClass>;

type Read = Pick<Reading, 'item' | 'value' | 'unit' | 'asPrinted'>;
const share = (readings: readonly Read[], item: Item): number | null => {
  const r = readings.find((x) => x.item === item && x.value !== null);
  return r ? (r.unit === 'g/kg' ? r.value! / 10 : r.value) : null;
};
/** Sand, silt and clay of a report in percent; null where they are too few or contradict each other. */
export const sharesIn = (readings: readonly Read[]): Shares | null => sharesOf(share(readings, 'sand'), share(readings, 'silt'), share(readings, 'clay'));
/** Clay %, not where the three shares contradict each other. */
const clayOf = (readings: readonly Read[]): number | null => {
  const three = (['sand', 'silt', 'clay'] as const).every((i) => share(readings, i) !== null);
  const clay = three || share(readings, 'clay') === null ? sharesIn(readings)?.clay ?? null : share(readings, 'clay');
  return clay !== null && clay >= 0 && clay <= 100 ? clay : null;
};

/** As the lime and sulphur tables part it: by the report's word, the triangle, or clay alone. */
export function classOf(readings: readonly Read[]): TextureClass | null {
  const text = readings.find((r) => r.item === 'texture')?.asPrinted;
  const word = text === undefined ? null : textureClass(text);
  if (word) return word;
  const shares = sharesIn(readings);
  if (shares) return CLASS_OF[usdaClass(shares)];
  const clay = clayOf(readings);
  if (clay === null) return null;
  return clay < CLAY_ALONE.sand ? 'sand' : clay < CLAY_ALONE.sandyLoam ? 'sandy loam' : clay > CLAY_ALONE.clay ? 'clay' : 'loam';
}

/** Light, medium or heavy by clay %, else by the texture's own words. */
export function knownHeaviness(sample: Sample): Heaviness | null {
  const clay = clayOf(sample.readings);
  if (clay !== null) return clay < AUSTRIA_CLAY.light ? 'light' : clay > AUSTRIA_CLAY.heavy ? 'heavy' : 'medium';
  const text = sample.readings.find((r) => r.item === 'texture')?.asPrinted;
  return text === undefined ? null : textureNamed(text)?.heaviness ?? null;
}

/** As known, else as guessed: for scales that go by heaviness. */
export const heavinessOf = (sample: Sample): Heaviness | null => knownHeaviness(sample) ?? heavinessGuessed(sample)?.heaviness ?? null;

/** A guess from exchange capacity, only below pH 7.3, without salts and on mineral soil; with the two values it rests on. */
export function heavinessGuessed(sample: Sample): { readonly heaviness: Heaviness; readonly cec: number; readonly ph: number; readonly cite: Cite } | null {
  const read = (item: Item): Reading | undefined => sample.readings.find((r) => r.item === item && r.value !== null && !r.below && !r.above && r.to === undefined);
  const [cecRead, ph, salts] = [read('cec'), read('ph')?.value ?? null, read('salts')];
  const organic = share(sample.readings, 'organic-matter');
  const cec = !cecRead ? null : cecRead.unit === 'meq/100g' || cecRead.unit === 'cmol/kg' || cecRead.unit === 'cmol/dm3' ? cecRead.value! : cecRead.unit === 'mmolc/dm3' ? cecRead.value! / 10 : null;
  const saline = salts !== undefined && (conductivity(salts) ?? Infinity) > (salts.method === 'paste' ? SALT_STOP.paste : SALT_STOP.dilute);
  if (cec === null || !(cec > 0) || ph === null || ph >= HEAVINESS_BY_CEC.phUnder || saline || (organic !== null && organic >= HEAVINESS_BY_CEC.organicUnder)) return null;
  return { heaviness: cec <= HEAVINESS_BY_CEC.light ? 'light' : cec <= HEAVINESS_BY_CEC.medium ? 'medium' : 'heavy', cec, ph, cite: HEAVINESS_BY_CEC.cite };
}

/** dS/m; null without a unit of conductivity. */
const conductivity = ({ value, unit }: Pick<Reading, 'value' | 'unit'>): number | null =>
  (value === null || unit === null || !Object.hasOwn(UNITS, unit) || UNITS[unit as Unit].kind !== 'conductivity' ? null : convert(value, unit as Unit, 'dS/m'));

/** What is asked next, or what was found; `line` is written into the report behind "texture:". */
export type Feel =
  | { readonly id: FeelId; readonly ask: (typeof FEEL)['steps'][FeelId]['ask']; readonly answers: readonly FeelAnswer['key'][] }
  | { readonly line: string; readonly name: FeelAnswer['key']; readonly means: TextureClass; readonly heaviness: Heaviness; readonly cite: Cite };

/** Walks the test by feel along the answers given so far (keys of words); null for an answer that was not offered. */
export function byFeel(answers: readonly string[]): Feel | null {
  let id = FEEL.first;
  for (const [i, said] of answers.entries()) {
    const answer = FEEL.steps[id].answers.find((a) => a.key === said);
    if (!answer) return null;
    if ('found' in answer) {
      const { means, heaviness } = textureNamed(answer.found)!;
      return i === answers.length - 1 ? { line: answer.found, name: answer.name, means: means!, heaviness: heaviness!, cite: FEEL.cite } : null;
    }
    id = answer.next;
  }
  return { id, ask: FEEL.steps[id].ask, answers: FEEL.steps[id].answers.map((a) => a.key) };
}
