/** The language that an orchard is spoken of in: the one it names, else that of its country. */
import type { Language } from '../words/words.ts';
import { LANGUAGES } from '../words/words.ts';
import { localLanguage, parseWhere } from './where.ts';

/** "de", "en-US"; "en" is that of the country. Null for any other. */
export function languageNamed(text: string, country: string | null): Language | null {
  const found = LANGUAGES.find((l) => l.toLowerCase() === text.toLowerCase());
  return found === 'en' ? (country === 'US' ? 'en-US' : 'en-GB') : found ?? null;
}

/** What `orchard.yaml` asks for, read off its text alone: its words must be there before any mistake in it is told. */
export function languageAsked(source: string): Language {
  const said = (key: string): string => new RegExp(`^${key}:[ \\t]*["']?([^#"'\\r\\n]*)`, 'm').exec(source)?.[1]?.trim() ?? '';
  const country = parseWhere(said('where'))?.country ?? null;
  return languageNamed(said('language'), country) ?? localLanguage(country);
}
