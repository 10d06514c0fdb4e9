/** Loads the words that a folder, or a place told on the command line, asks for, before anything is said. */
import { join } from 'node:path';
import { ORCHARD_FILE } from '../orchard/files.ts';
import { languageAsked } from '../orchard/language.ts';
import { loadLanguage } from '../words/load.ts';
import { readText } from './files.ts';
import type { Common, Io } from './io.ts';
import { folderOf } from './folder.ts';

export async function speak(options: Common, io: Io): Promise<void> {
  const source = readText(join(folderOf(options, io), ORCHARD_FILE));
  if ('text' in source) await loadLanguage(languageAsked(source.text));
}
