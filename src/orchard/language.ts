/** The language that an orchard is spoken of in: the one it names, else that of its country. */
import type { Language } from '../words/words.ts';
import { LANGUAGES } from '../words/words.ts';
import { countryIn, localLanguage, saidIn } from './where.ts';

const NAMES: Readonly<Record<string, (typeof LANGUAGES)[number]>> = { english: 'en', german: 'de', deutsch: 'de', spanish: 'es', español: 'es', espanol: 'es' };

/** "de", "en-US", "German"; "en" is that of the country. Null for any other. */
export function languageNamed(text: string, country: string | null): Language | null {
  const word = text.normalize('NFC').toLowerCase();
  const found = LANGUAGES.find((l) => l.toLowerCase() === word) ?? (Object.hasOwn(NAMES, word) ? NAMES[word]! : null);
  return found === 'en' ? (country === 'US' ? 'en-US' : 'en-GB') : found;
}

/** What `orchard.yaml` asks for, read off its text alone: its words must be there before any mistake in it is told. */
export function languageAsked(source: string): Language {
  const country = countryIn(source);
  return languageNamed(saidIn(source, 'language'), country) ?? localLanguage(country);
}
