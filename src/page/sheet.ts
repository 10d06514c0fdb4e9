/** The sheet for the shed door: seen, printed, saved. It is shown in a frame that may run nothing. */
import { sheetView } from '../sheet/build.ts';
import { renderHtml } from '../sheet/render-html.ts';
import { button, choose, el, field, fill, handOn, tick } from './dom.ts';
import { unplanned } from './plan.ts';
import type { Context, View } from './view.ts';
import { wordsOf } from './view.ts';

export function sheetPart(ctx: Context): View {
  const w = wordsOf(ctx);
  const paper = field(w('paper-size'), choose('paper-size', [['a4', 'A4'], ['letter', 'Letter']]));
  paper.input.value = ctx.where.paper;
  const large = tick('large', w('large'));
  // Same origin, so that the page may ask it to print; scripts stay off.
  const frame = el('iframe', { id: 'sheet-frame', title: w('sheet-frame'), sandbox: 'allow-same-origin allow-modals' });
  const none = el('div', {});
  let shown = '';
  const rendered = (): string => {
    const { plan } = ctx.seen();
    return plan ? renderHtml(sheetView(plan, { paper: paper.input.value as 'a4' | 'letter', large: large.input.checked })) : '';
  };
  const body = el('div', {}, el('div', { class: 'pair' }, paper.root, large.root),
    el('p', { class: 'row' },
      button(w('print'), () => { frame.contentWindow?.print(); }, { class: 'main', id: 'print' }),
      ...handOn('sheet.html', 'text/html', rendered, { save: w('save-sheet'), share: w('share-sheet') }, { id: 'sheet' })),
    frame);
  const refresh = (): void => {
    const html = rendered();
    body.hidden = html === '';
    fill(none, ...(html === '' ? unplanned(ctx) : []));
    if (html !== shown) frame.srcdoc = html;
    shown = html;
  };
  for (const input of [paper.input, large.input]) input.addEventListener('change', refresh);
  return { root: el('div', {}, none, body), refresh };
}
