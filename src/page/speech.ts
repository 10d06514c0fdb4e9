/** The language that a page speaks whatever the orchard's: none here, so English. The build puts another language's words into a page of its own (`src/page.build.mjs`). */
import type { Language } from '../words/words.ts';

export const SPEAKS: Language | null = null;
