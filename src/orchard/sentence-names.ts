/** Whose deed a sentence tells: names of trees, joined by commas and "and", and who was left out. */
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { Day } from '../units/date.ts';
import type { What } from './diary.ts';
import { lengthOf, massOf } from './measure.ts';

/** `count`: how many plants a row or a zone holds. `printed`: the three numbers of a bag. */
export type Known = {
  readonly trees: readonly { readonly name: string; readonly count: number }[];
  readonly zones: readonly { readonly name: string; readonly count: number }[];
  readonly bags: readonly { readonly label: string; readonly printed: string }[];
  readonly today: Day;
};

/** Blanks as one, no control characters, accents composed: the form in which names are compared. */
export const tidy = (text: string): string => text.normalize('NFC').replace(/[\s\u0000-\u001f\u007f-\u009f]+/g, ' ').trim();

export type Named = { readonly name: string; readonly count: number };
const ofWord = /[\p{L}\p{N}]/u;

/** The longest known name at the beginning of a text. "Plum 2 oz" is two ounces for Plum, even where a Plum 2 grows. */
function nameAt(text: string, known: Known): { found: Named[]; length: number } | null {
  const all = /^(?:all(?: of)?(?: the)? (?:trees|plants)|everything|all)(?=$|[ ,])/i.exec(text);
  const names: Named[] = [...known.trees, ...known.zones];
  const fit = names.filter(({ name }) => {
    const n = tidy(name);
    if (n === '' || text.slice(0, n.length).toLowerCase() !== n.toLowerCase()) return false;
    const next = text.slice(n.length);
    if (next !== '' && ofWord.test(n.at(-1)!) && ofWord.test(next[0]!)) return false;
    const figure = /\d+$/.exec(n)?.[0];
    const measure = figure ? `${figure} ${next.trim().split(' ')[0]!}` : '';
    return massOf(measure) === null && lengthOf(measure) === null;
  }).sort((a, b) => tidy(b.name).length - tidy(a.name).length)[0];
  if (fit) return { found: [fit], length: tidy(fit.name).length };
  return all ? { found: [...known.trees], length: all[0].length } : null;
}

const JOINT = /^(?: *[,;] (?:and )?| *& *| and | plus )/i;
const THE = /^the /i;

/** The names at the beginning of a text, and what follows them. */
export function namesAt(text: string, known: Known, what: What | null): { named: Named[]; rest: string } | { notice: Notice } | null {
  const named: Named[] = [];
  for (let rest = text; ;) {
    const at = nameAt(rest, known) ?? (THE.test(rest) ? nameAt(rest.replace(THE, ''), known) : null);
    if (!at) return named.length === 0 ? null : { notice: unknownName(rest, known) };
    rest = (THE.test(rest) && !nameAt(rest, known) ? rest.replace(THE, '') : rest).slice(at.length);
    named.push(...at.found.filter((f) => !named.some((n) => n.name === f.name)));
    const joint = JOINT.exec(rest);
    if (!joint) return { named, rest: rest.replace(/^ *[,:;]/, '').trim() };
    const next = rest.slice(joint[0].length);
    // After a comma the bag, the amount or the words of a note may follow as well as a name.
    const loose = /^ *[,;] $/.test(joint[0]) || what === 'note';
    const isName = nameAt(next.replace(THE, ''), known) !== null || nameAt(next, known) !== null || (loose ? guessName(next, known).length > 0 : true);
    if (!isName) return { named, rest: next };
    rest = next;
  }
}

/** Names that a misspelt beginning may stand for. */
export function guessName(text: string, known: Known): string[] {
  const words = text.replace(THE, '').split(/ (?=\d)|[,;:]/)[0]!.split(' ');
  const names = [...known.trees, ...known.zones].map((n) => n.name);
  for (let n = Math.min(words.length, 6); n > 0; n--) {
    const guess = suggest(words.slice(0, n).join(' '), names);
    if (guess.length > 0) return guess;
  }
  return [];
}

export function unknownName(text: string, known: Known): Notice {
  const read = text.replace(THE, '').split(/ (?=\d)|[,;:]/)[0]!.trim();
  return notice('tree-unknown', 'error', { read: read || text, guess: guessName(text, known).join(', '), known: [...known.trees, ...known.zones].map((n) => n.name).join(', ') });
}

/** The names after "day 1 done except". */
export function leftOut(text: string, known: Known): { names: string[] } | { notice: Notice } {
  const read = namesAt(text, known, null);
  if (read && 'notice' in read) return read;
  return read && read.rest === '' ? { names: read.named.map((n) => n.name) } : { notice: unknownName(read ? read.rest : text, known) };
}

// Deeds ---------------------------------------------------------------------------------------------------------
