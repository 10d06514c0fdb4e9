/** What the diary knows of one tree: what it was fed this season and last, what of that still sets nitrogen free, its growth and crop, and when lime or sulphur went on. */
import type { Day } from '../units/date.ts';
import { addDays, yearOf } from '../units/date.ts';
import type { Nutrient } from '../units/substance.ts';
import { amendmentOf } from './amendment.ts';
import type { Bag } from './bag.ts';
import { holdsGrade, parseBag } from './bag.ts';
import type { Entry } from './diary.ts';
import { mostFreed } from './release.ts';
import type { Carried, Tree } from './tree.ts';

export type Amounts = Readonly<Record<Nutrient, number>>;
/**
 * `brought` is what feeds in the season it was given, null where bag or amount is not known: of the nitrogen of a meal, manure or compost
 * the most that its first year sets free. `holds` is all that was in it, where that is more.
 */
export type Fed = { readonly date: Day; readonly bag: string | null; readonly g: number | null; readonly brought: Amounts | null; readonly holds?: Amounts };

export type History = {
  readonly thisSeason: readonly Fed[];
  /** Null where the diary holds nothing at all of last season: then nobody knows. */
  readonly lastSeason: readonly Fed[] | null;
  readonly carried: readonly Carried[];
  readonly amended: readonly Day[];
  readonly shoots: { readonly m: number; readonly year: number } | null;
  readonly fruit: NonNullable<Tree['fruit']> | null;
};

/** A season runs from one autumn frost to the next; growth and fruit belong to the year whose buds broke last. */
export type Bounds = { readonly year: number; readonly budBreak: Day; readonly firstFrost: Day };

const NOTHING: History = { thisSeason: [], lastSeason: null, carried: [], amended: [], shoots: null, fruit: null };

export function historyOf(tree: Tree, zone: string | undefined, entries: readonly Entry[], bounds: Bounds, bags: readonly Bag[], country: string | null): History {
  if (entries.length === 0) return NOTHING;
  const mine = entriesOf(tree, zone, entries);
  const [start, before, earlier] = [addDays(bounds.firstFrost, -365), addDays(bounds.firstFrost, -730), addDays(bounds.firstFrost, -1095)];
  // Lime or sulphur written down as a feed is still lime or sulphur.
  const isAmendment = (e: Entry): boolean => e.what === 'limed' || e.what === 'sulphured' || (e.what === 'fed' && e.bag !== null && bagOf(e, bags) === undefined && amendmentOf(e.bag, { country, state: null }) !== null);
  const feeds = mine.filter((e) => e.what === 'fed' && !isAmendment(e)).map((e): Feeding => ({ entry: e, date: e.date, bag: e.bag === null ? null : bagOf(e, bags) ?? parsed(e, e.bag, country) }));
  const fed = feeds.map((f) => fedBy(f, tree));
  const within = (from: Day, until: Day) => (e: { readonly date: Day }): boolean => e.date > from && e.date <= until;
  const newest = (what: Entry['what']): Entry | undefined => mine.filter((e) => e.what === what).sort((a, b) => (a.date < b.date ? 1 : -1))[0];
  const [shoots, crop] = [newest('shoots'), newest('crop')];
  const grewIn = (date: Day): number => yearOf(date) - (date.slice(5) < bounds.budBreak.slice(5) ? 1 : 0);
  return {
    thisSeason: fed.filter(within(start, bounds.firstFrost)),
    lastSeason: entries.some(within(before, start)) ? fed.filter(within(before, start)) : null,
    carried: [...feeds.filter(within(before, start)).flatMap((f) => carriedFrom(f, 2, tree)), ...feeds.filter(within(earlier, before)).flatMap((f) => carriedFrom(f, 3, tree))],
    amended: mine.filter(isAmendment).map((e) => e.date),
    shoots: shoots?.m == null ? null : { m: shoots.m, year: grewIn(shoots.date) },
    fruit: crop ? fruitOf(crop, grewIn(crop.date)) : null,
  };
}

function fruitOf(e: Entry, year: number): History['fruit'] {
  if (e.g !== null) return { said: e.g === 0 ? 'none' : 'weight', g: e.g, year };
  const said = e.amount?.toLowerCase();
  if (said === 'none') return { said, g: 0, year };
  return said === 'light' || said === 'heavy' ? { said, g: null, year } : null;
}

/** The listed feed that an entry names, by its label or the numbers on it. */
function bagOf(e: Entry, bags: readonly Bag[]): Bag | undefined {
  const word = e.bag?.toLowerCase() ?? '';
  return bags.find((b) => !b.amends && b.label.toLowerCase() === word) ?? bags.find((b) => holdsGrade(word, b.printed)) ?? bags.find((b) => !b.amends && word.startsWith(`${b.label.toLowerCase()} in `));
}

const parsed = (e: Entry, label: string, country: string | null): Bag | null => parseBag(label, country, false, { file: 'diary.csv', line: e.line, column: 1, length: 1, source: '' }).bag;

type Feeding = { readonly entry: Entry; readonly date: Day; readonly bag: Bag | null };

/** What went on a tree from one day (left out) to another: whole grams of N, P2O5 and K2O, and of lime and sulphur as they were given; `unknown` counts what has no amount or no known bag. */
export type Given = Amounts & { readonly lime: number; readonly sulphur: number; readonly unknown: number };

export function givenBetween(tree: Tree, zone: string | undefined, entries: readonly Entry[], from: Day, until: Day, bags: readonly Bag[], country: string | null): Given {
  const within = entriesOf(tree, zone, entries).filter((e) => e.date > from && e.date <= until);
  const feeds = within.filter((e) => e.what === 'fed').map((e) => ({ g: e.g, bag: e.bag === null ? null : bagOf(e, bags) ?? parsed(e, e.bag, country) }));
  const known = feeds.flatMap(({ g, bag }) => (g !== null && bag !== null ? [{ g, bag }] : []));
  const sum = (n: Nutrient): number => known.reduce((all, { g, bag }) => all + g * bag.grade[n], 0);
  const spread = (what: Entry['what'], kind: 'lime' | 'sulphur'): number => within.reduce((all, e) => all + (e.what === what ? e.g ?? 0 : 0), 0) + known.reduce((all, { g, bag }) => all + (bag.amends?.kind === kind ? g : 0), 0);
  return {
    N: sum('N'), P2O5: sum('P2O5'), K2O: sum('K2O'), lime: spread('limed', 'lime'), sulphur: spread('sulphured', 'sulphur'),
    unknown: feeds.length - known.length + within.filter((e) => (e.what === 'limed' || e.what === 'sulphured') && e.g === null).length,
  };
}

function entriesOf(tree: Tree, zone: string | undefined, entries: readonly Entry[]): Entry[] {
  const names = [tree.name, zone, 'all', 'all trees'].filter((n) => n !== undefined).map((n) => n.toLowerCase());
  return entries.filter((e) => e.trees.some((t) => names.includes(t.toLowerCase())));
}

/** Compost of a tree whose yearly compost is told is that compost, and taken off its need already. */
const isToldCompost = (bag: Bag, tree: Tree): boolean => tree.composted !== undefined && bag.organic === 'compost';

/** N, P2O5 and K2O of a feed, by the bag's listed grade or the one written down. */
function fedBy({ entry: { date, bag: label, g }, bag }: Feeding, tree: Tree): Fed {
  if (g === null || bag === null) return { date, bag: label, g, brought: null };
  const holds = { N: g * bag.grade.N, P2O5: g * bag.grade.P2O5, K2O: g * bag.grade.K2O };
  const share = isToldCompost(bag, tree) ? 0 : mostFreed(bag, 1)?.share ?? 1;
  return share === 1 || holds.N === 0 ? { date, bag: label, g, brought: holds } : { date, bag: label, g, brought: { ...holds, N: holds.N * share }, holds };
}

/** What an earlier feed still sets free in its second or third year. */
function carriedFrom({ entry: { date, g }, bag }: Feeding, year: 2 | 3, tree: Tree): Carried[] {
  const freed = bag && !isToldCompost(bag, tree) ? mostFreed(bag, year) : null;
  if (!bag || !freed || freed.share === 0 || bag.grade.N === 0 || g === 0) return [];
  const n = g === null ? null : g * bag.grade.N;
  return [{ date, bag: bag.label, n, frees: (n ?? 0) * freed.share, cite: freed.cite }];
}

/** The tree with the diary's newer facts in place of the folder's older ones. */
export function withHistory(tree: Tree, history: History, season: number): Tree {
  const older = (year: number | undefined, newer: { year?: number } | null): boolean => newer?.year !== undefined && newer.year >= (year ?? season - 1);
  return {
    ...tree,
    ...(history.carried.length > 0 ? { carried: history.carried } : {}),
    ...(older(tree.shoots?.year, history.shoots) || (history.shoots && !tree.shoots) ? { shoots: history.shoots! } : {}),
    ...(older(tree.fruit?.year, history.fruit) || (history.fruit && !tree.fruit) ? { fruit: history.fruit! } : {}),
  };
}
