/** A report whose typing was not ended yet: its last line says so. */
import { say } from '../words/words.ts';

/** The same in every language, and no part of a hand's text. */
const UNFINISHED = `# ${say('en-US', 'hand', 'unfinished')}`;

export const isUnfinished = (text: string): boolean => text.split('\n').includes(UNFINISHED);
export const finish = (text: string): string => text.split('\n').filter((l) => l !== UNFINISHED).join('\n');
/** The text as it is kept until typing is ended. */
export const unfinished = (text: string): string => `${text}${UNFINISHED}\n`;
