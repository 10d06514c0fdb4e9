/**
 * Medlar's page for a phone: the grower's files in, plan and sheet out, all on the device.
 * For scripts: `medlar.answer()` gives `{ result, questions, notices }` as `medlar plan --json` prints them for the same files.
 * The build puts 'unrun' and 'unrun-how' into the page for browsers that run no script.
 */
import { jitless } from './jitless.ts';
import { NOWHERE, parseWhere } from '../orchard/where.ts';
import type { Day } from '../units/date.ts';
import { day, isoDate } from '../units/date.ts';
import { bagsView } from './bags.ts';
import { el } from './dom.ts';
import { homeView } from './home.ts';
import { insideOf, recall, remember, withInside } from './memory.ts';
import { planView } from './plan.ts';
import { reportView } from './report.ts';
import type { PageAnswer, Seen } from './seen.ts';
import { answerOf, mistakesOf, see, seeEarly } from './seen.ts';
import { sheetPart } from './sheet.ts';
import { EMPTY, factOf } from './state.ts';
import type { State } from './state.ts';
import { storeView } from './store.ts';
import { treesView } from './trees.ts';
import type { Context, Part, View } from './view.ts';
import { PARTS, wordsOf } from './view.ts';

const VIEWS: Readonly<Record<Part, (ctx: Context) => View>> = {
  home: homeView, report: reportView, trees: treesView, bags: bagsView, plan: planView, store: storeView, sheet: sheetPart,
};

const TITLES = { home: 'title-home', report: 'title-report', trees: 'title-trees', bags: 'title-bags', plan: 'title-plan', store: 'title-store', sheet: 'title-sheet' } as const;

// Used, so that the import stays and comes first.
if (jitless !== true) throw new Error('zod would make up code');

/** The page as it came, before anything is drawn into it. */
const original = `<!doctype html>\n${document.documentElement.outerHTML}\n`;
const inside = insideOf(document);
let state: State = recall(inside) ?? inside.state ?? EMPTY;
let kept = remember(inside, state, true);
let part: Part = 'home';

/** The day on the device's clock; `#today=2026-03-14` in the address plans as if it were that day. */
function today(): Day {
  const told = isoDate(/[#&]today=([^&]*)/.exec(location.hash)?.[1] ?? '');
  const now = new Date();
  return told ?? day(now.getFullYear(), now.getMonth() + 1, now.getDate());
}

/** Kept until the state or the day changes. */
function memo(of: (state: State, today: Day) => Seen): () => Seen {
  let [last, when, made]: [State | null, Day, Seen | null] = [null, '', null];
  return () => {
    if (!made || last !== state || when !== today()) [last, when, made] = [state, today(), of(state, today())];
    return made;
  };
}
const seen = memo(see);
const early = memo(seeEarly);

function take(next: State): void {
  state = next;
  kept = remember(inside, state);
  draw();
}

function edit(change: (orchard: string) => string | null): string[] {
  const orchard = change(state.orchard);
  if (orchard === null) return [wordsOf(context())('mend-first')];
  const before = mistakesOf(early());
  const next = { ...state, orchard };
  const mistakes = mistakesOf(seeEarly(next, today())).filter((m) => !before.includes(m));
  if (mistakes.length === 0) take(next);
  return mistakes;
}

function context(): Context {
  const where = parseWhere(factOf(state.orchard, 'where')) ?? NOWHERE;
  return { language: where.language, system: where.units, today, state: () => state, seen, early, kept: () => kept, take, edit, go, copy: () => withInside(original, state) };
}

const bar = el('header', {});
const main = el('main', { id: 'main' });
let drawn: { place: string; views: Readonly<Record<Part, View>>; sections: Readonly<Record<Part, HTMLElement>>; tabs: readonly (readonly [Part, HTMLElement])[]; notKept: HTMLElement } | null = null;

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
  const { sections, tabs, views, notKept } = drawn!;
  for (const p of PARTS) sections[p].hidden = p !== part;
  for (const [p, tab] of tabs) {
    if (p === part) tab.setAttribute('aria-current', 'page');
    else tab.removeAttribute('aria-current');
  }
  notKept.hidden = kept;
  views[part].refresh();
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
  const notKept = el('p', { class: 'not-kept', role: 'status' }, w('not-kept'));
  document.documentElement.lang = ctx.language;
  bar.replaceChildren(el('h1', {}, 'Medlar'), el('nav', { 'aria-label': w('parts') }, ...tabs.map(([, tab]) => tab)));
  main.replaceChildren(notKept, ...PARTS.map((p) => sections[p]));
  drawn = { place, views, sections, tabs, notKept };
}

function go(to: Part): void {
  part = to;
  draw();
  scrollTo(0, 0);
  document.getElementById(`${to}-title`)?.focus({ preventScroll: true });
}

(globalThis as unknown as { medlar: { answer: () => PageAnswer } }).medlar = { answer: () => answerOf(seen()) };
document.body.append(bar, main);
addEventListener('hashchange', draw);
draw();

// Only the small site has a worker; a page opened as a file has none and needs none.
if (location.protocol.startsWith('http') && 'serviceWorker' in navigator && document.querySelector('link[rel=manifest]')) void navigator.serviceWorker.register('worker.js').catch(() => undefined);
