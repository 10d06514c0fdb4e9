/** View and template → the sheet as HTML or text. The built-in templates come compiled; a grower's own are compiled when read. */
import plain from '../../templates/sheet.txt.hbs';
import type { Template } from './render-html.ts';
import { hb, renderHtml } from './render-html.ts';
import type { View } from './view.ts';

export type { Template } from './render-html.ts';
export type SheetForm = 'html' | 'text';
const text: Template = hb.template(plain);

export const renderSheet = (view: View, form: SheetForm, own?: Template): string => (form === 'html' ? renderHtml(view, own) : wrap((own ?? text)(view)));

const WIDTH = 78;

/** Breaks long lines at blanks, hanging under their text. */
function wrap(text: string): string {
  return text.split('\n').map((line) => {
    const lines: string[] = [];
    let rest = line.trimEnd();
    while (rest.length > WIDTH) {
      const at = rest.lastIndexOf(' ', WIDTH);
      const cut = at > 20 ? at : WIDTH;
      lines.push(rest.slice(0, cut));
      rest = `         ${rest.slice(cut).trimStart()}`;
    }
    return [...lines, rest].join('\n');
  }).join('\n');
}
