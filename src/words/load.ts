/** The words of a language beside English, loaded when they are asked for. */
import { marksOf } from './marks.ts';
import type { Language } from './words.ts';
import { learn } from './words.ts';

export async function loadLanguage(language: Language): Promise<void> {
  if (language === 'de') learn(language, (await import('./de.ts')).de, marksOf(language));
  if (language === 'es') learn(language, (await import('./es.ts')).es, marksOf(language));
}
