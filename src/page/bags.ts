/** Bags at hand and in the store: the three numbers, the weight, the price. */
import { button, choose, el, field, fill, textInput } from './dom.ts';
import type { Field } from './dom.ts';
import type { Shelf } from './state.ts';
import { bagLines, withBag, withoutBag } from './state.ts';
import { withUnit } from './trees.ts';
import type { Context, View } from './view.ts';
import { wordsOf } from './view.ts';

const SHELVES: readonly Shelf[] = ['shed', 'store'];
const CURRENCY: Readonly<Record<string, string>> = { GB: '£', IE: '€', DE: '€', AT: '€', FR: '€', ES: '€', PT: '€', IT: '€', NL: '€', BE: '€' };

export type LabelFields = { readonly roots: readonly HTMLElement[]; readonly label: () => string; readonly clear: () => void; readonly first: HTMLElement };

/** Fields that make a label: `Sulphate of ammonia, 21-0-0, 4 lb, $9`. */
export function labelFields(ctx: Context, id: string): LabelFields {
  const w = wordsOf(ctx);
  const unit = ctx.system === 'us' ? 'lb' : 'kg';
  const currency = CURRENCY[ctx.where.country ?? ''] ?? '$';
  const number = (n: string): HTMLInputElement => textInput(`${id}-${n}`, { inputmode: 'decimal', 'aria-label': w('number', { n }), class: 'grade', placeholder: '0' });
  const grade = ['N', 'P', 'K'].map(number);
  const name: Field = field(w('bag-name'), textInput(`${id}-name`), w('bag-name-hint'));
  const weight = field(w('weight', { unit }), textInput(`${id}-weight`, { inputmode: 'decimal' }));
  const price = field(w('price', { currency }), textInput(`${id}-price`, { inputmode: 'decimal' }));
  const typed = (input: HTMLInputElement): string => input.value.trim().replace(',', '.');
  return {
    first: grade[0]!,
    roots: [
      el('fieldset', { class: 'grades' }, el('legend', {}, w('three-numbers')), el('div', { class: 'grade-row' }, grade[0]!, el('span', { 'aria-hidden': 'true' }, '–'), grade[1]!, el('span', { 'aria-hidden': 'true' }, '–'), grade[2]!)),
      el('div', { class: 'pair' }, weight.root, price.root), name.root,
    ],
    label: () => [
      name.input.value.trim(), grade.some((g) => typed(g) !== '') ? grade.map((g) => typed(g) || '0').join('-') : '',
      withUnit(weight.input.value, unit), price.input.value.trim() && (/^[\d.,]+$/.test(price.input.value.trim()) ? `${currency}${price.input.value.trim()}` : price.input.value.trim()),
    ].filter(Boolean).join(', '),
    clear: () => { for (const input of [...grade, name.input, weight.input, price.input]) input.value = ''; },
  };
}

export function bagsView(ctx: Context): View {
  const w = wordsOf(ctx);
  const fields = labelFields(ctx, 'bag');
  const shelf = field(w('shelf'), choose('bag-shelf', SHELVES.map((s) => [s, w(s)] as const)));
  const wrong = el('div', { id: 'bag-wrong', class: 'wrong', role: 'alert' });
  const heading = el('h3', { id: 'bags-heading', tabindex: -1 }, w('bags-listed'));
  const shelves = el('div', {});
  const form = el('form', { id: 'add-bag-form', novalidate: true, 'aria-label': w('add-bag') }, el('h3', {}, w('add-bag')), ...fields.roots, shelf.root, wrong, el('p', { class: 'row' }, el('button', { type: 'submit', class: 'main', id: 'add-bag' }, w('add'))));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const mistakes = ctx.edit((text) => withBag(text, shelf.input.value as Shelf, fields.label()));
    fill(wrong, ...mistakes.map((m) => el('p', {}, m)));
    if (mistakes.length > 0) return;
    fields.clear();
    fields.first.focus();
  });
  const refresh = (): void => {
    fill(shelves, ...SHELVES.flatMap((s) => {
      const lines = bagLines(ctx.state().orchard, s);
      if (lines.length === 0) return [];
      return [el('h4', {}, w(s)), el('ul', { class: 'bags' }, ...lines.map((line, i) => el('li', {}, el('span', {}, line), button(w('remove'), () => {
        ctx.edit((text) => withoutBag(text, s, i));
        heading.focus();
      }, { 'aria-label': w('remove-named', { name: line }) }))))];
    }));
    if (shelves.childElementCount === 0) fill(shelves, el('p', {}, w('no-bags-yet')));
  };
  return { root: el('div', {}, form, heading, shelves), refresh };
}
