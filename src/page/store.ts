/** In front of the bags: three numbers in, a verdict for this orchard out, each against all that were entered. */
import { button, el, fill } from './dom.ts';
import { labelFields } from './bags.ts';
import { judge } from './judge.ts';
import { unplanned } from './plan.ts';
import { withBag } from './state.ts';
import type { Context, View } from './view.ts';
import { wordsOf } from './view.ts';

export function storeView(ctx: Context): View {
  const w = wordsOf(ctx);
  const fields = labelFields(ctx, 'shop');
  const wrong = el('div', { id: 'shop-wrong', class: 'wrong', role: 'alert' });
  const verdicts = el('div', { id: 'verdicts', 'aria-live': 'polite' });
  const labels: string[] = [];
  const form = el('form', { id: 'shop-form', novalidate: true, 'aria-label': w('store') }, el('p', {}, w('store-hint')), ...fields.roots, wrong, el('p', { class: 'row' }, el('button', { type: 'submit', class: 'main', id: 'judge' }, w('judge'))));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const label = fields.label();
    const { mistakes } = judge(ctx, labels.includes(label) ? labels : [...labels, label]);
    fill(wrong, ...mistakes.map((m) => el('p', {}, m)));
    if (mistakes.length > 0) return;
    if (!labels.includes(label)) labels.push(label);
    fields.clear();
    refresh();
    fields.first.focus();
  });
  const refresh = (): void => {
    if (!ctx.seen().plan) {
      fill(verdicts, ...unplanned(ctx));
      return;
    }
    fill(verdicts, ...judge(ctx, labels).verdicts.map((v) => el('section', { class: `verdict ${v.verdict}`, 'data-verdict': v.verdict },
      el('h3', {}, v.entered), el('p', {}, el('strong', { class: 'said' }, v.said.slice(0, v.said.indexOf('.') + 1)), v.said.slice(v.said.indexOf('.') + 1)),
      el('p', { class: 'row' },
        button(w('list-it'), () => { const mistakes = ctx.edit((text) => withBag(text, 'store', v.entered));
          fill(wrong, ...(mistakes.length > 0 ? mistakes : [w('added', { name: v.entered })]).map((m) => el('p', {}, m))); }, { 'aria-label': w('list-named', { name: v.entered }) }),
        button(w('remove'), () => {
          labels.splice(labels.indexOf(v.entered), 1);
          refresh();
          fields.first.focus();
        }, { 'aria-label': w('remove-named', { name: v.entered }) })))));
  };
  return { root: el('div', {}, form, verdicts), refresh };
}
