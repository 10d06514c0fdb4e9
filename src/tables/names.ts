/**
 * The names of items as printed, in six languages. They stand in sets, each with its language and its mark:
 * nutrients in names-major.ts and names-minor.ts, pH and lime in names-acidity.ts, the rest in names-soil.ts,
 * known misspellings in names-slips.ts. Names are matched as whole words, the longest first, without their accents;
 * symbols keep their case, names do not. A word that is also prose, or another thing in another language,
 * stands in NAMES_BY_LANGUAGE, good only in a report of its own language.
 */
import type { Oxide } from '../units/substance.ts';
import type { Method } from './items.ts';
import type { Language, Named, NameSet } from './name-set.ts';
import { unaccented } from './name-set.ts';
import { ACIDITY_NAMES } from './names-acidity.ts';
import { MAJOR_NAMES } from './names-major.ts';
import { MINOR_NAMES } from './names-minor.ts';
import { NAME_SLIPS } from './names-slips.ts';
import { SOIL_NAMES } from './names-soil.ts';

/** A printed name: the item, and where the name itself says so the form or the method. */
export type Name = {
  readonly name: string;
  readonly item: Named;
  readonly form?: Oxide;
  readonly loose?: true;
  readonly method?: Method;
  readonly exact?: true;
  /** A known misspelling: never to be suggested. */
  readonly slip?: true;
  /** The number behind it is an index. */
  readonly index?: true;
  /** Good only in a report of this language. */
  readonly in?: Language;
  /** The languages that have it; none for a spelling common to all. */
  readonly languages: readonly Language[];
};

export const NAME_SETS: readonly NameSet[] = [...ACIDITY_NAMES, ...SOIL_NAMES, ...MAJOR_NAMES, ...MINOR_NAMES, ...NAME_SLIPS];

/** Every name of the sets once, with all its languages. */
function flat(sets: readonly NameSet[]): Name[] {
  const names = new Map<string, Name>();
  for (const { of, form, method, exact, slip, index, loose, in: only, language, names: listed } of sets) for (const name of listed) {
    const key = `${exact ? name : unaccented(name)}|${only ?? ''}`;
    const before = names.get(key);
    const languages = [...(before?.languages ?? []), ...(language === 'any' || before?.languages.includes(language) ? [] : [language])];
    names.set(key, before ? { ...before, languages } : {
      name, item: of, ...(form ? { form } : {}), ...(method ? { method } : {}), ...(exact ? { exact } : {}), ...(slip ? { slip } : {}), ...(index ? { index } : {}), ...(loose ? { loose } : {}), ...(only ? { in: only } : {}), languages,
    });
  }
  return [...names.values()];
}

/** Names good in every report. */
export const NAMES: readonly Name[] = flat(NAME_SETS.filter((s) => !s.in && !s.index));
/** Names good only in a report of their language, which `in` says. */
export const NAMES_BY_LANGUAGE: readonly Name[] = flat(NAME_SETS.filter((s) => s.in));
/** Names of which the number is an index of the lab ("Mn-AI"). */
export const INDEX_NAMES: readonly Name[] = flat(NAME_SETS.filter((s) => s.index));
