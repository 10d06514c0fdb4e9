/** What a grower says was done, in one sentence, becomes lines of the diary. What can be read two ways is asked back. */
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import { MATERIALS } from '../tables/materials.ts';
import type { Day } from '../units/date.ts';
import { addDays, day, isoDate, monthDay, yearOf } from '../units/date.ts';
import type { Amount, Entry, What } from './diary.ts';
import { amountOf, isTooMuch, MOST_SHOWN, twoWays } from './diary.ts';
import { massOf, numberOf } from './measure.ts';
import type { Known, Named } from './sentence-names.ts';
import { guessName, leftOut, namesAt, tidy, unknownName } from './sentence-names.ts';

/** `without`: trees or zones that were left out of a working day; absent where none was. */
export type DayDone = { readonly day: number; readonly date: Day; readonly without?: readonly string[] };

export type SentenceResult = { readonly entries: readonly Entry[] } | DayDone | { readonly notices: readonly Notice[] };

const VERBS: Readonly<Record<string, What>> = {
  fed: 'fed', feed: 'fed', limed: 'limed', sulphured: 'sulphured', sulfured: 'sulphured', shoots: 'shoots', crop: 'crop', cropped: 'crop', harvested: 'crop', picked: 'crop', gave: 'crop', note: 'note',
};

const verbOf = (word: string): What | null => {
  const w = word.toLowerCase().replace(/:$/, '');
  return Object.hasOwn(VERBS, w) ? VERBS[w]! : null;
};

/** Reads a sentence such as `fed Gate apple 12 oz sulphate of ammonia on 14 April`; every mistake is told. */
export function readSentence(text: string, known: Known): SentenceResult {
  const whole = tidy(text).replace(/[.!]+$/, '').trim();
  const at = takeDate(whole, known.today);
  const { rest } = at;
  const faults = 'fault' in at ? [at.fault] : [];
  const date = 'fault' in at ? known.today : at.date;
  const done = /^(?:(?:did|done) day (\d{1,4})|day (\d{1,4}) (?:is )?done)(?:,? (?:except(?: for)?|without|but not) (.+))?$/i.exec(rest);
  if (done) {
    const left = done[3] === undefined ? null : leftOut(done[3], known);
    const all = [...faults, ...(left && 'notice' in left ? [left.notice] : [])];
    return all.length > 0 ? { notices: all } : { day: Number(done[1] ?? done[2]), date, ...(left && 'names' in left ? { without: left.names } : {}) };
  }
  const read = readDeed(rest, known, date);
  return 'notices' in read ? { notices: [...faults, ...read.notices] } : faults.length > 0 ? { notices: faults } : { entries: [read] };
}

// Days ----------------------------------------------------------------------------------------------------------

/** Times that are no day: asked back. */
const VAGUE = '(?:(?:last|this) )?(?:mon|tues|wednes|thurs|fri|satur|sun)day|(?:last|this) (?:week|weekend|month|year|spring|summer|autumn|fall|winter)|(?:an?|\\d{1,3}) (?:days?|weeks?|months?) ago';

const DATE = `(?:today|yesterday|${VAGUE}|\\d{4}-\\d{1,2}-\\d{1,2}|\\d{1,2}[./]\\d{1,2}[./]\\d{2,4}|\\d{1,2}(?:st|nd|rd|th|\\.)? (?:of )?MONTH(?:,? \\d{4})?|MONTH \\d{1,2}(?:st|nd|rd|th)?(?:,? \\d{4})?)`
  .replaceAll('MONTH', '(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\\p{L}*\\.?');

const IS_VAGUE = new RegExp(`^(?:${VAGUE})$`, 'i');
const LEADING = new RegExp(`^(?:on )?(?:the )?(${DATE})(?:[,:]? |$)`, 'iu');
const TRAILING = new RegExp(`(?:^|,? )(on )?(?:the )?(${DATE})$`, 'iu');
type Dated = { rest: string; date: Day } | { rest: string; fault: Notice };

/** The day a sentence names, at its beginning or end; today where it names none. A note may hold days of its own. */
function takeDate(text: string, today: Day): Dated {
  const first = LEADING.exec(text);
  if (first) return dated(first[1]!, text.slice(first[0].length), today);
  const last = TRAILING.exec(text);
  const isNote = /^note\b/i.test(text) || / note:? /i.test(text);
  if (!last || (isNote && (!last[1] || IS_VAGUE.test(last[2]!)))) return { rest: text, date: today };
  return dated(last[2]!, text.slice(0, last.index), today);
}

function dated(said: string, rest: string, today: Day): Dated {
  const date = IS_VAGUE.test(said) ? null : dayOf(said, today);
  if (date === null) return { rest, fault: notice('diary-date', 'error', { read: said }) };
  return date > today ? { rest, fault: notice('diary-future', 'error', { read: said }) } : { rest, date };
}

/** A day without a year is the latest such day up to today. */
function dayOf(said: string, today: Day): Day | null {
  const t = said.toLowerCase().replace(/(\d)(?:st|nd|rd|th)\b/, '$1').replace(' of ', ' ');
  if (t === 'today') return today;
  if (t === 'yesterday') return addDays(today, -1);
  const full = isoDate(t);
  if (full !== null) return full;
  const at = monthDay(t);
  const leapYear = /^29\b|\b29$/.test(t) && /feb/.test(t);
  if (!at && !leapYear) return null;
  const { month, date } = at ?? { month: 2, date: 29 };
  for (let year = yearOf(today); year > yearOf(today) - 9; year--) {
    const d = isoDate(day(year, month, date));
    if (d !== null && d <= today) return d;
  }
  return null;
}

// Names ---------------------------------------------------------------------------------------------------------

type Fault = { readonly notices: readonly Notice[] };
const fault = (n: Notice): Fault => ({ notices: [n] });

function readDeed(text: string, known: Known, date: Day): Entry | Fault {
  const unread = (guess = ''): Fault => fault(notice('diary-sentence', 'error', { read: text, guess }));
  // Gate apple gave 40 lb
  const before = namesAt(text, known, null);
  if (before && 'named' in before) {
    const m = /^(?:(?:was|were) )?(\S+)(?: |$)(.*)$/i.exec(before.rest);
    const what = m ? verbOf(m[1]!) : null;
    if (what) return entryOf(what, before.named, m![2]!.trim(), known, date, unread);
    // "Gate apple 12 oz 21-0-0" can only be a feed; "Gate apple 12 oz" might be a crop.
    const feed = /^\d/.test(before.rest) ? entryOf('fed', before.named, before.rest, known, date, unread) : null;
    if (feed && ('notices' in feed || (feed.bag !== null && isBag(feed.bag, known)))) return feed;
    if (feed) return unread('fed, crop');
  }
  const [verb = '', ...others] = text.split(' ');
  const what = verbOf(verb);
  const after = others.join(' ');
  if (!what) {
    // A misspelt name before the verb, or a misspelt verb.
    const at = text.split(' ').findIndex((w) => verbOf(w) !== null);
    if (before && 'notice' in before) return fault(before.notice);
    return at > 0 && !before ? fault(unknownName(text.split(' ').slice(0, at).join(' '), known)) : unread(suggest(before && 'rest' in before ? before.rest.split(' ')[0]! : verb, Object.keys(VERBS)).join(', '));
  }
  if (after === '') return unread();
  // "gave Gate apple 12 oz" would be a crop to one and a feed to another.
  if (verb.toLowerCase() === 'gave') return unread('fed, crop');
  const names = namesAt(after, known, what);
  if (names && 'notice' in names) return fault(names.notice);
  if (names) return entryOf(what, names.named, names.rest, known, date, unread);
  if (what === 'note') return guessName(after, known).length > 0 ? fault(unknownName(after, known)) : entryOf(what, [], after, known, date, unread);
  // fed 12 oz sulphate of ammonia to Gate apple
  for (const m of [...after.matchAll(/ (?:to|on|for) /gi)].reverse()) {
    const last = namesAt(after.slice(m.index + m[0].length), known, what);
    if (last && 'named' in last && last.rest === '') return entryOf(what, last.named, after.slice(0, m.index), known, date, unread);
  }
  return fault(unknownName(after, known));
}

const EACH = /^(?:each|a plant|per plant|a tree|per tree|apiece)\b *,?|,? *\b(?:each|a plant|per plant|a tree|per tree|apiece)$/i;
const ALL = /^(?:in all|altogether|in total|total(?= of |$))\b *,?|,? *\b(?:in all|altogether|in total|total)$/i;
const FILLER = /^(?:of|with|using|the|some)(?: |$)|^[,:;] */i;

/** What was done to plants already found: amount, bag or words. */
function entryOf(what: What, named: readonly Named[], text: string, known: Known, date: Day, unread: () => Fault): Entry | Fault {
  const trees = named.map((n) => n.name);
  const entry = { date, trees, what, bag: null, g: null, m: null, amount: null, note: '', line: 0 };
  if (what === 'note') return text === '' ? unread() : { ...entry, note: text };

  let share: 'each' | 'all' | null = null;
  /** Takes "each", "in all" and little words off both ends. */
  const strip = (t: string): string => {
    for (let rest = t.trim(); ;) {
      const fewer = rest.replace(FILLER, '').replace(EACH, () => { share = 'each'; return ''; }).replace(ALL, () => { share = 'all'; return ''; }).trim();
      if (fewer === rest) return rest;
      rest = fewer;
    }
  };
  let rest = listedBag(text, known) === null ? strip(text) : text;
  let amount: (Amount & { said: string }) | null = null;
  if (listedBag(rest, known) === null) {
    const found = takeAmount(what, rest);
    if ('unclear' in found) return fault(notice('number-two-ways', 'error', twoWays(found)));
    amount = found.amount;
    rest = listedBag(found.rest.replace(FILLER, ''), known) === null ? strip(found.rest) : found.rest.replace(FILLER, '');
  }
  // "-5 g" is no amount, and no bag either.
  if (/(?:^|\s)[-−–] ?\d/.test(rest.replace(GRADE, ' ')) && listedBag(rest, known) === null) return fault(notice('diary-negative', 'error', { read: rest }));
  if (amount !== null && amount.g === 0 && what !== 'crop' && /\d/.test(amount.said)) return fault(notice('diary-negative', 'error', { read: amount.said }));
  if (amount === null && (what === 'shoots' || what === 'crop')) return rest === '' ? unread() : fault(notice('diary-amount', 'error', { read: rest }));
  if (amount?.said === '0') amount = { ...amount, said: 'none' };
  if (what === 'shoots' || what === 'crop') return rest !== '' ? unread() : shared({ ...entry, ...measured(amount) }, named, share);
  if (/^[\d.,]/.test(rest) && !GRADE.test(rest) && listedBag(rest, known) === null) return fault(notice('diary-amount', 'error', { read: rest }));
  const bag = rest === '' ? null : bagOf(rest, known);
  if (bag !== null && typeof bag !== 'string') return fault(bag);
  return shared({ ...entry, ...measured(amount), bag }, named, share);
}

const measured = (a: (Amount & { said: string }) | null): Pick<Entry, 'g' | 'm' | 'amount'> => ({ g: a?.g ?? null, m: a?.m ?? null, amount: a?.said ?? null });

/** The amount at the beginning or the end, as many words as can be read. */
function takeAmount(what: What, text: string): { amount: (Amount & { said: string }) | null; rest: string } | { unclear: string } {
  const words = text === '' ? [] : text.split(' ');
  for (const atEnd of [false, true]) {
    for (let n = Math.min(words.length, 6); n > 0; n--) {
      const said = (atEnd ? words.slice(-n) : words.slice(0, n)).join(' ').replace(/[ ,;:]+$/, '');
      const read = amountOf(what, said);
      if (read === null) continue;
      if ('unclear' in read) return read;
      return { amount: { ...read, said }, rest: (atEnd ? words.slice(0, -n) : words.slice(n)).join(' ') };
    }
  }
  return { amount: null, rest: text };
}

/**
 * The amount for one plant. "In all" is divided by the plants, evenly: of trees of unlike size nobody knows the shares, and
 * the sum stays right. An amount for several plants can mean either, so it must say.
 */
function shared(entry: Entry, named: readonly Named[], share: 'each' | 'all' | null): Entry | Fault {
  const plants = named.reduce((sum, n) => sum + Math.max(1, n.count), 0);
  if (entry.amount === null) return entry;
  const one = plants === 1 || share === 'each' || entry.g === 0 || entry.what === 'shoots' || /^(?:light|heavy)$/i.test(entry.amount) ? entry : share === 'all' ? split(entry, entry.amount, plants) : eachOrAll(entry, entry.amount, named, plants);
  return 'notices' in one || !isTooMuch(one.what, one) ? one : fault(notice('diary-too-much', 'error', { read: entry.amount, what: one.what, most: MOST_SHOWN[one.what] }));
}

/** The amount times `by`, in the unit typed where it is one number and a unit; null where it is neither that nor a weight. */
function scaled(g: number | null, amount: string, by: number): string | null {
  const m = /^(.+?) *(\p{L}+)\.?$/u.exec(amount);
  const number = m ? numberOf(m[1]!) : null;
  const short = (n: number): number => Number(n.toPrecision(4));
  if (typeof number === 'number') return `${short(number * by)} ${m![2]!}`;
  return g === null ? null : `${short(g * by)} g`;
}

function split(entry: Entry, said: string, plants: number): Entry | Fault {
  const amount = scaled(entry.g, said, 1 / plants);
  if (amount === null) return fault(notice('diary-amount', 'error', { read: said }));
  // Read back from what is written, so that the file and the answer agree.
  const g = entry.g === null ? null : massOf(amount);
  return g === null || typeof g === 'number' ? { ...entry, amount, g } : fault(notice('diary-amount', 'error', { read: said }));
}

function eachOrAll({ g }: Entry, read: string, named: readonly Named[], plants: number): Fault {
  return fault(notice('diary-each-or-all', 'error', { read, n: plants, trees: named.map((n) => n.name).join(', '), sum: scaled(g, read, plants) ?? '', part: scaled(g, read, 1 / plants) ?? '' }));
}

// Bags ----------------------------------------------------------------------------------------------------------

const GRADE = /\d+(?:[.,]\d+)? *[-–/:] *\d+(?:[.,]\d+)? *[-–/:] *\d+(?:[.,]\d+)?/;

/** Labels are compared without case, in one spelling. */
const plain = (text: string): string => tidy(text).toLowerCase().replaceAll('sulph', 'sulf').replace(/ *[-–/:] *(?=\d)/g, '-');

/** The label of a listed bag by its name, its grade, or both; null where none or several fit. */
function listedBag(text: string, known: Known): string | null {
  const read = plain(text);
  const fit = (of: (b: Known['bags'][number]) => string[]): string | null => {
    const labels = [...new Set(known.bags.filter((b) => of(b).map(plain).includes(read)).map((b) => b.label))];
    return labels.length === 1 ? labels[0]! : null;
  };
  return fit((b) => [b.label, `${b.label} ${b.printed}`, `${b.label}, ${b.printed}`, `${b.printed} ${b.label}`]) ?? fit((b) => [b.printed]);
}

/** A listed bag, a known material or a grade. */
const isBag = (text: string, known: Known): boolean => GRADE.test(text) || known.bags.some((b) => b.label === text) || MATERIALS.some((m) => m.names.some((n) => plain(n) === plain(text)));

/** A listed bag's label; any other bag as typed, unless it looks like a listed one misspelt. */
function bagOf(text: string, known: Known): string | Notice {
  const listed = listedBag(text, known);
  if (listed !== null) return listed;
  if (isBag(text, known)) return text;
  const guess = known.bags.filter((b) => suggest(plain(text), [plain(b.label)]).length > 0).map((b) => b.label);
  return guess.length > 0 ? notice('diary-bag', 'error', { read: text, guess: [...new Set(guess)].join(', ') }) : text;
}
