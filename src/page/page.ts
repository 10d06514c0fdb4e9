/**
 * Medlar's page for a phone: the grower's files in, plan and sheet out, all on the device.
 * For scripts: `medlar.settled()` waits until all is kept; `medlar.plan()` says whether there is a plan; `medlar.answer()` gives `{ result, questions, notices }` as `medlar plan --json` prints them for the same files.
 * The build puts 'unrun' and 'unrun-how' into the page for browsers that run no script.
 */
import { NOWHERE, parseWhere } from '../orchard/where.ts';
import type { Day } from '../units/date.ts';
import { day, isoDate } from '../units/date.ts';
import { bagsView } from './bags.ts';
import { button, el, fill } from './dom.ts';
import { homeView } from './home.ts';
import { insideOf, recall, remember, withInside } from './memory.ts';
import { planView } from './plan.ts';
import { reportView } from './report.ts';
import type { PageAnswer, Seen } from './seen.ts';
import { answerOf, mistakesOf, see, seeEarly } from './seen.ts';
import { sheetPart } from './sheet.ts';
import { SPEAKS } from './speech.ts';
import { EMPTY, factOf, treeLines } from './state.ts';
import type { State } from './state.ts';
import { storeView } from './store.ts';
import { treesView } from './trees.ts';
import type { Context, Part, View } from './view.ts';
import { PARTS, wordsOf } from './view.ts';

const VIEWS: Readonly<Record<Part, (ctx: Context) => View>> = {
  home: homeView, report: reportView, trees: treesView, bags: bagsView, plan: planView, store: storeView, sheet: sheetPart,
};

const TITLES = { home: 'title-home', report: 'title-report', trees: 'title-trees', bags: 'title-bags', plan: 'title-plan', store: 'title-store', sheet: 'title-sheet' } as const;

/** The page as it came, before anything is drawn into it. */
const original = `<!doctype html>\n${document.documentElement.outerHTML}\n`;
const inside = insideOf(document);
let state: State = inside.state ?? EMPTY;
let part: Part = 'home';

/** The last revision read or written in the browser's memory, and why nothing is kept there, where that is so. */
let revision = 0;
let trouble: 'refused' | 'newer' | null = null;
/** What another window wrote meanwhile. */
let other: { readonly state: State; readonly revision: number } | null = null;
/** Writes and looks go one after another. */
let busy: Promise<void> = Promise.resolve();

function save(): void {
  const now = state;
  busy = busy.then(async () => {
    if (now !== state || other || trouble === 'newer') return;
    const done = await remember(inside, now, revision);
    trouble = typeof done === 'string' ? done : null;
    if (typeof done !== 'string' && 'other' in done) other = { state: done.other, revision: done.revision };
    else if (typeof done !== 'string') revision = done.revision;
    showMemory();
  });
}

/** Takes what another window of the same orchard has written. */
function look(): void {
  const before = state;
  busy = busy.then(async () => {
    if (other || trouble) return;
    const found = await recall(inside);
    // What was typed meanwhile stands: writing it down will find the other and ask.
    if (typeof found === 'string' || found.revision === revision || state !== before) return;
    revision = found.revision;
    state = found.state ?? inside.state ?? EMPTY;
    draw();
  });
}

/** The day on the device's clock; `#today=2026-03-14` in the address plans as if it were that day. */
function today(): Day {
  const told = isoDate(/[#&]today=([^&]*)/.exec(location.hash)?.[1] ?? '');
  const now = new Date();
  return told ?? day(now.getFullYear(), now.getMonth() + 1, now.getDate());
}

/** The last two are kept: the state as it is, and the one that an edit tries. */
function memo(of: (state: State, today: Day) => Seen): (of?: State) => Seen {
  let kept: { readonly state: State; readonly today: Day; readonly seen: Seen }[] = [];
  return (now = state) => {
    const day = today();
    const found = kept.find((k) => k.state === now && k.today === day) ?? { state: now, today: day, seen: of(now, day) };
    kept = [found, ...kept.filter((k) => k !== found)].slice(0, 2);
    return found.seen;
  };
}
const seen = memo(see);
const withOneTree = memo(seeEarly);
const early = (now = state): Seen => (treeLines(now.orchard).length > 0 ? seen(now) : withOneTree(now));

function take(next: State): void {
  state = next;
  draw();
  save();
}

function edit(change: (orchard: string) => string | null): string[] {
  const orchard = change(state.orchard);
  if (orchard === null) return [wordsOf(context())('mend-first')];
  const before = mistakesOf(early());
  const next = { ...state, orchard };
  const mistakes = mistakesOf(early(next)).filter((m) => !before.includes(m));
  if (mistakes.length === 0) take(next);
  return mistakes;
}

function context(): Context {
  const where = parseWhere(factOf(state.orchard, 'where')) ?? NOWHERE;
  return { language: where.language, system: where.units, where, today, state: () => state, seen: () => seen(), early: () => early(), kept: () => trouble === null, take, edit, go, copy: () => withInside(original, state) };
}

const bar = el('header', {});
const main = el('main', { id: 'main' });
let drawn: { place: string; views: Readonly<Record<Part, View>>; sections: Readonly<Record<Part, HTMLElement>>; tabs: readonly (readonly [Part, HTMLElement])[]; kept: HTMLElement } | null = null;

/** Whether a finger or a mouse button is down: what it is on must stay until it is lifted. */
let held = false;
addEventListener('pointerdown', () => { held = true; }, true);
for (const end of ['pointerup', 'pointercancel']) addEventListener(end, () => { held = false; }, true);

/** A change is told before the next field has the focus: the page is built anew only when both have come to rest. */
function rebuildSoon(): void {
  setTimeout(() => {
    if (held) rebuildSoon();
    else if (drawn && drawn.place !== factOf(state.orchard, 'where')) {
      const field = document.activeElement;
      const typed = field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement ? field.value : null;
      build(factOf(state.orchard, 'where'));
      const again = field?.id ? document.getElementById(field.id) : null;
      again?.focus();
      draw();
      if (typed !== null && (again instanceof HTMLInputElement || again instanceof HTMLTextAreaElement)) again.value = typed;
    }
  }, 30);
}

/** Builds everything anew where the language, units or labels change; otherwise brings what is shown up to date. */
function draw(): void {
  const place = factOf(state.orchard, 'where');
  if (!drawn) build(place);
  else if (drawn.place !== place) rebuildSoon();
  showPart();
  showMemory();
  drawn!.views[part].refresh();
}

function showPart(): void {
  const { sections, tabs } = drawn!;
  for (const p of PARTS) sections[p].hidden = p !== part;
  for (const [p, tab] of tabs) {
    if (p === part) tab.setAttribute('aria-current', 'page');
    else tab.removeAttribute('aria-current');
  }
}

/** Says where nothing is kept, and asks which counts where two windows changed the same orchard. */
function showMemory(): void {
  if (!drawn) return;
  const w = wordsOf(context());
  const mine = other;
  drawn.kept.hidden = trouble === null && !mine;
  if (mine) fill(drawn.kept, w('two-windows'), ' ', button(w('take-other'), () => { settle(mine.state, mine.revision, false); }, { id: 'take-other' }), ' ', button(w('keep-mine'), () => { settle(state, mine.revision, true); }, { id: 'keep-mine' }));
  else fill(drawn.kept, w(trouble === 'newer' ? 'newer' : 'not-kept'));
}

function settle(next: State, theirs: number, write: boolean): void {
  other = null;
  revision = theirs;
  state = { ...next };
  draw();
  if (write) save();
}

function build(place: string): void {
  const ctx = context();
  const w = wordsOf(ctx);
  const views = Object.fromEntries(PARTS.map((p) => [p, VIEWS[p](ctx)])) as Record<Part, View>;
  const sections = Object.fromEntries(PARTS.map((p) => [p, el('section', { id: p, 'aria-labelledby': `${p}-title` }, el('h2', { id: `${p}-title`, tabindex: -1 }, w(TITLES[p])), views[p].root)])) as Record<Part, HTMLElement>;
  const tabs = PARTS.map((p) => {
    const tab = el('button', { type: 'button', id: `tab-${p}` }, w(p));
    tab.addEventListener('click', () => { go(p); });
    return [p, tab] as const;
  });
  const kept = el('p', { class: 'not-kept', role: 'status', hidden: true });
  document.documentElement.lang = SPEAKS ?? ctx.language;
  bar.replaceChildren(el('h1', {}, 'Medlar'), el('nav', { 'aria-label': w('parts') }, ...tabs.map(([, tab]) => tab)));
  main.replaceChildren(kept, ...PARTS.map((p) => sections[p]));
  drawn = { place, views, sections, tabs, kept };
}

function go(to: Part): void {
  part = to;
  draw();
  scrollTo(0, 0);
  document.getElementById(`${to}-title`)?.focus({ preventScroll: true });
}

function start(): void {
  (globalThis as unknown as { medlar: { answer: () => PageAnswer; plan: () => boolean; settled: () => Promise<void> } }).medlar = { answer: () => answerOf(seen()), plan: () => seen().plan !== null, settled: () => busy };
  document.body.append(bar, main);
  addEventListener('hashchange', draw);
  addEventListener('focus', look);
  document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') look(); });
  // The page is seen before the report in it is read.
  build(factOf(state.orchard, 'where'));
  showPart();
  setTimeout(draw);
}

busy = recall(inside).then((found) => {
  if (typeof found === 'string') trouble = found;
  else {
    ({ revision } = found);
    state = found.state ?? state;
  }
  start();
});

// Only the small site has a worker; a page opened as a file has none and needs none.
if (location.protocol.startsWith('http') && 'serviceWorker' in navigator && document.querySelector('link[rel=manifest]')) void navigator.serviceWorker.register('worker.js').catch(() => undefined);
