/** The reasons of a number: one sentence and its source; then, if wanted, all it came from. */
import { citeOf, reasonOf } from '../json/reason.ts';
import type { Plan } from '../plan.ts';
import type { Figure } from '../reason/figure.ts';
import { sourceOf } from '../tables/sources.ts';
import { el } from './dom.ts';
import type { PageWords } from './view.ts';

function sentence(f: Figure, plan: Plan): HTMLElement {
  const { language: L, units: system } = plan.orchard.where;
  const plain = f.cite.source === 'definition' || f.cite.source === 'grower' || f.cite.source === 'lab';
  const url = sourceOf(f.cite.source)?.url;
  const cite = plain ? null : el('span', { class: 'cite' }, citeOf(f.cite, L), url ? ' ' : null, url ? el('a', { href: url, rel: 'noreferrer', target: '_blank' }, url) : null);
  return el('p', {}, reasonOf(f, L, system), cite ? el('br') : null, cite);
}

function below(f: Figure, plan: Plan, seen: Set<Figure>): HTMLElement | null {
  const parts = f.from.filter((x) => !seen.has(x));
  parts.forEach((x) => seen.add(x));
  return parts.length === 0 ? null : el('ul', {}, ...parts.map((x) => el('li', {}, sentence(x, plan), below(x, plan, seen))));
}

/** A number to touch; the reasons open in `room`. */
export function number(text: string, figures: readonly Figure[], plan: Plan, room: HTMLElement, w: PageWords, attributes: Readonly<Record<string, string>> = {}): HTMLButtonElement {
  const made = el('button', { type: 'button', class: 'number', 'aria-expanded': 'false', ...attributes }, text);
  made.addEventListener('click', () => {
    const open = made.getAttribute('aria-expanded') === 'true';
    for (const other of room.parentElement?.querySelectorAll('.number[aria-expanded=true]') ?? []) other.setAttribute('aria-expanded', 'false');
    made.setAttribute('aria-expanded', String(!open));
    room.hidden = open;
    if (open) return;
    room.replaceChildren(...figures.map((f) => {
      const more = below(f, plan, new Set([f]));
      return el('div', {}, sentence(f, plan), more ? el('details', {}, el('summary', {}, w('more')), more) : null);
    }));
  });
  return made;
}
