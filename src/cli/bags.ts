/** Bags on the command line: names of the folder's bags, or labels; and the folder itself, which these commands can do without. */
import { existsSync } from 'node:fs';
import { bagName, parseBag } from '../orchard/bag.ts';
import type { Bag } from '../orchard/bag.ts';
import type { Orchard } from '../orchard/load.ts';
import { notice, placeIn } from '../reason/notice.ts';
import type { Notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { Language } from '../words/words.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';

export type Surroundings = { readonly orchard: Orchard | null; readonly language: Language; readonly notices: readonly Notice[] };

/** The orchard of the folder where there is one. Its reports do not matter here, its own mistakes do. */
export async function surroundings(options: Common, io: Io): Promise<Surroundings> {
  const folder = await openFolder(options, io, options.today ?? io.today);
  const { orchard, language } = folder;
  const none = folder.notices.some((n) => n.code === 'no-orchard') && (options.folder === undefined || existsSync(folder.path));
  return { orchard, language, notices: orchard || none ? [] : folder.notices };
}

/** A lone `-` stands for the lines of stdin. */
export async function withStdin(args: readonly string[], io: Io): Promise<string[]> {
  if (!args.includes('-')) return [...args];
  const lines = (await io.stdin()).split(/\r\n|\n|\r/).map((l) => l.trim()).filter(Boolean);
  return args.flatMap((a) => (a === '-' ? lines : [a]));
}

/** A bag, with what there is to say of how its label was taken; or what is wrong with it. */
export type TypedBag = { readonly bag: Bag; readonly notes: readonly Notice[] } | { readonly notices: readonly Notice[] };

/** What is typed stands in no file. */
const placeless = (notices: readonly Notice[]): Notice[] => notices.map((n) => notice(n.code, n.severity, n.facts));

/** `known` are the folder's bags; a name may be cut short where that leaves no doubt. */
export function typedBag(text: string, known: readonly Bag[], country: string | null): TypedBag {
  const said = text.trim().toLowerCase();
  const named = known.find((b) => b.label.toLowerCase() === said);
  if (named) return { bag: named, notes: [] };
  const begun = said === '' ? [] : known.filter((b) => b.label.toLowerCase().startsWith(said));
  const labels = [...new Set(begun.map((b) => b.label))];
  const { bag, notices } = parseBag(text, country, false, placeIn('', 1, text, 0, text.length));
  if (labels.length === 1 && (!bag || bag.label.toLowerCase() !== bag.printed.toLowerCase())) return { bag: begun[0]!, notes: [] };
  if (bag) return { bag, notes: placeless(notices) };
  if (labels.length > 1) return { notices: [notice('bag-two', 'error', { read: text, known: labels.join(', ') })] };
  const guess = suggest(said, known.map((b) => b.label)).join(', ');
  if (guess !== '' || notices.every((n) => n.code === 'grade-missing')) return { notices: [notice('bag-unknown', 'error', { read: text, guess })] };
  return { notices: placeless(notices) };
}

/** All of them with their notes, or all that is wrong with them. */
export function typedBags(args: readonly string[], known: readonly Bag[], country: string | null): { readonly bags: readonly Bag[]; readonly notices: readonly Notice[]; readonly notes: readonly Notice[] } {
  const read = args.map((a) => typedBag(a, known, country));
  return { bags: read.flatMap((r) => ('bag' in r ? [r.bag] : [])), notes: read.flatMap((r) => ('bag' in r ? r.notes : [])), notices: read.flatMap((r) => ('notices' in r ? r.notices : [])) };
}

/** Weed killers are named wherever such a bag is only calculated with. */
export const weedWarnings = (bags: readonly Bag[]): Notice[] => [...new Set(bags)].filter((b) => b.weedKiller).map((b) => notice('bag-weed-killer', 'warning', { bag: bagName(b) }));
