/** What the lines of a report said, in order → its samples: where one ends and the next begins. */
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Method } from '../tables/items.ts';
import { ELEMENT_OF } from '../tables/items.ts';
import type { Reading, Unread } from './reading.ts';
import { saysTheSame } from './same.ts';
import type { Told } from './told.ts';
import { methodFor } from './told.ts';

export type Event =
  | { readonly kind: 'sample'; readonly name: string }
  /** A line that may be the name of a sample: the lines below decide. */
  | { readonly kind: 'heading'; readonly name: string; readonly line: number; readonly text: string }
  | { readonly kind: 'gap' }
  | { readonly kind: 'taken' | 'depth'; readonly is: string; readonly weak: boolean }
  | { readonly kind: 'unread'; readonly line: number; readonly text: string }
  /** A line below the values that says their methods. */
  | { readonly kind: 'told'; readonly told: Told }
  | { readonly kind: 'readings'; readonly readings: readonly Reading[] };

/** What is told for all counts from one reading to another. */
type ToldHere = { readonly told: Told; readonly from: number; readonly to: number };

export type Draft = { name: string; named: boolean; heading: Unread | null; taken?: string; depth?: string; readings: Reading[]; unread: Unread[]; told: ToldHere[] };

const fresh = (name: string | null): Draft => ({ name: name ?? '', named: name !== null, heading: null, readings: [], unread: [], told: [] });

/** The samples of a report. A thing said twice that no new sample explains is a mistake, told in `notices`. */
export function samplesOf(events: readonly Event[], notices: Notice[]): Draft[] {
  let draft = fresh(null);
  const drafts = [draft];
  const byName = new Map<string, Draft>();
  const open = (name: string | null): void => {
    draft = fresh(name);
    drafts.push(draft);
  };
  events.forEach((event, i) => {
    switch (event.kind) {
      case 'sample':
        // The same name again: a second table of the same samples.
        if (byName.has(event.name)) draft = byName.get(event.name)!;
        else if (!draft.named && draft.readings.every((r) => r.value === null)) [draft.name, draft.named] = [event.name, true];
        else open(event.name);
        byName.set(event.name, draft);
        break;
      case 'heading':
        if (repeats(draft, following(events, i + 1))) open(event.name);
        else if (draft.readings.length === 0 && !draft.named && !draft.heading) draft.heading = { line: event.line, text: event.name };
        else draft.unread.push({ line: event.line, text: event.text });
        break;
      case 'taken':
        // A bare "Datum" may be that of the letter: it never displaces a day of sampling.
        if (!(draft.taken && event.weak)) draft.taken = event.is;
        break;
      case 'depth':
        if (!(draft.depth && event.weak)) draft.depth = event.is;
        break;
      case 'unread':
        draft.unread.push({ line: event.line, text: event.text });
        break;
      case 'told': {
        const last = draft.told.at(-1);
        const to = draft.readings.length;
        draft.told.push({ told: event.told, from: !last ? 0 : last.to === to ? last.from : last.to, to });
        break;
      }
      case 'readings':
        if (beginsAnew(draft, events, i, event.readings)) open(null);
        for (const reading of event.readings) keep(draft, reading, notices);
        break;
      default:
    }
  });
  const all = ofAll(events);
  return named(withTold(drafts.map((d) => ({ ...all, ...d }))), events);
}

/** A day or a depth that stands once and above all samples is of each of them; a heading names one only where nothing plainer does. */
function ofAll(events: readonly Event[]): Pick<Draft, 'taken' | 'depth'> {
  const areNamed = events.some((e) => e.kind === 'sample');
  const begin = events.findIndex((e) => e.kind === 'sample' || e.kind === 'readings' || (e.kind === 'heading' && !areNamed));
  const only = (kind: 'taken' | 'depth'): string | undefined => {
    const [first, ...others] = events.flatMap((e, i) => (e.kind === kind ? [{ is: e.is, i }] : []));
    return first && others.length === 0 && first.i < begin ? first.is : undefined;
  };
  const [taken, depth] = [only('taken'), only('depth')];
  return { ...(taken === undefined ? {} : { taken }), ...(depth === undefined ? {} : { depth }) };
}

/** Readings without a method or unit have what a line below says, in their own sample or else for the whole report; two that differ say nothing. */
function withTold(drafts: readonly Draft[]): Draft[] {
  if (drafts.every((d) => d.told.length === 0)) return [...drafts];
  const only = <T>(all: readonly (T | null)[]): T | null => {
    const found = [...new Set(all.filter((x) => x !== null))];
    return found.length === 1 ? found[0]! : null;
  };
  const everywhere = drafts.flatMap((d) => d.told);
  const pick = <T>(d: Draft, i: number, of: (told: Told) => T | null): T | null => {
    const here = d.told.filter(({ told, from, to }) => of(told) !== null && (told.items.size > 0 || (i >= from && i < to)));
    const elsewhere = d.told.some(({ told }) => told.items.size === 0) ? everywhere.filter(({ told }) => told.items.size > 0) : everywhere;
    return only((here.length > 0 ? here : elsewhere).map(({ told }) => of(told)));
  };
  return drafts.map((d) => ({
    ...d, readings: d.readings.map((r, i) => ({ ...r, method: r.method ?? pick(d, i, (told) => methodOf(r, d.readings, told)), unit: r.unit ?? (ELEMENT_OF[r.item] && r.value !== null ? pick(d, i, (told) => told.unit) : null) })),
  }));
}

/** "pH in CaCl2" is of the salt pH where both are printed. */
function methodOf(r: Reading, all: readonly Reading[], told: Told): Method | null {
  const method = methodFor(r.item, told) ?? (r.item === 'ph-salt' ? methodFor('ph', told) : null);
  const salt = method === 'cacl2' || method === 'kcl';
  return (r.item === 'ph-salt' && !salt) || (r.item === 'ph' && salt && all.some((o) => o.item === 'ph-salt')) ? null : method;
}

/** A heading above the first sample is its name only where a second sample has one too; else it is a line like any other. */
function named(drafts: readonly Draft[], events: readonly Event[]): Draft[] {
  const several = drafts.filter((d) => d.readings.length > 0).length > 1;
  return drafts.map((d) => {
    if (!d.heading) return d;
    if (several && !d.named) return { ...d, name: d.heading.text, named: true };
    const event = events.find((e) => e.kind === 'heading' && e.line === d.heading!.line);
    return event?.kind === 'heading' ? { ...d, unread: [{ line: event.line, text: event.text }, ...d.unread] } : d;
  });
}

/** The readings from here to the next heading or sample. */
function following(events: readonly Event[], from: number): Reading[] {
  const found: Reading[] = [];
  for (let i = from; i < events.length; i++) {
    const e = events[i]!;
    if (e.kind === 'heading' || e.kind === 'sample') break;
    if (e.kind === 'readings') found.push(...e.readings);
  }
  return found;
}

const conflicts = (draft: Draft, r: Reading): boolean => r.value !== null && draft.readings.some((e) => clash(e, r));
/** One test of one thing with two answers. */
const clash = (a: Reading, b: Reading): boolean => isSame(a, b) && a.value !== null && (a.value !== b.value || a.unit !== b.unit || a.form !== b.form) && !saysTheSame(a, b);
const repeats = (draft: Draft, next: readonly Reading[]): boolean => next.some((r) => draft.readings.some((e) => e.value !== null && r.value !== null && isSame(e, r)));

/** A whole line said again, or a block that starts again with the thing that came first. */
function beginsAnew(draft: Draft, events: readonly Event[], i: number, readings: readonly Reading[]): boolean {
  const again = readings.filter((r) => draft.readings.some((e) => e.value !== null && isSame(e, r)));
  if (again.length === 0 || !again.some((r) => conflicts(draft, r))) return false;
  if (readings.length > 1) return again.length === readings.length;
  const first = draft.readings[0]!;
  const afterGap = events[i - 1]?.kind === 'gap';
  return afterGap && isSame(first, readings[0]!) && following(events, i + 1).some((r) => draft.readings.some((e) => clash(e, r)));
}

const family = (unit: Reading['unit']): string => (unit === null ? '?' : /^(?:ppm|mg\/|lb\/acre|kg\/ha|g\/kg)/.test(unit) ? 'mass' : /meq|mol/.test(unit) ? 'charge' : unit);

/** The same item by the same method, as far as the report says; "Colwell K 88 mg/kg" and "exch. K 0.2 cmol/kg" are two tests. */
function isSame(a: Reading, b: Reading): boolean {
  if (a.item !== b.item || a.tag !== b.tag || !(a.method === b.method || a.method === null || b.method === null)) return false;
  return a.method === b.method || family(a.unit) === family(b.unit) || a.unit === null || b.unit === null;
}

const isIndex = (r: Reading): boolean => r.unit === 'index';

/** Adds a reading; a later line that gives only a word for an item already read is that item's word. */
function keep(draft: Draft, reading: Reading, notices: Notice[]): void {
  const at = draft.readings.findIndex((r) => isSame(r, reading));
  const earlier = draft.readings[at];
  if (!earlier) {
    draft.readings.push(reading);
  } else if (reading.value === null && !reading.below) {
    if (earlier.lab.rating === null) draft.readings[at] = { ...earlier, lab: { ...earlier.lab, rating: reading.lab.rating } };
  } else if (earlier.value === null && !earlier.below && reading.place.line - earlier.place.line < 3) {
    draft.readings[at] = { ...reading, lab: { rating: reading.lab.rating ?? earlier.lab.rating, range: reading.lab.range } };
  } else if (isIndex(earlier) !== isIndex(reading) && earlier.index === undefined && earlier.value !== null) {
    // "Phosphorus 18 mg/l" and "P index 2" are one test told twice.
    const [measured, index] = isIndex(reading) ? [earlier, reading] : [reading, earlier];
    draft.readings[at] = { ...measured, index: index.value!, lab: { rating: measured.lab.rating ?? index.lab.rating, range: measured.lab.range } };
  } else if (earlier.value === null ? reading.value !== null || !earlier.below : clash(earlier, reading)) {
    notices.push(notice('reading-twice', 'error', { item: reading.item, first: earlier.asPrinted, line: earlier.place.line, second: reading.asPrinted }, reading.place));
  } else {
    // Said again: what the first did not say of itself, its method or the lab's word, counts.
    draft.readings[at] = { ...earlier, method: earlier.method ?? reading.method, lab: { rating: earlier.lab.rating ?? reading.lab.rating, range: earlier.lab.range ?? reading.lab.range } };
  }
}
