/** View and template → the sheet as HTML or text. The built-in templates come compiled; a grower's own are compiled when read. */
import Handlebars from 'handlebars/runtime.js';
import html from '../../templates/sheet.html.hbs';
import plain from '../../templates/sheet.txt.hbs';
import type { View } from './view.ts';

export type SheetForm = 'html' | 'text';
export type Template = (view: View) => string;

const hb = (Handlebars as unknown as typeof import('handlebars')).create();
const builtIn: Readonly<Record<SheetForm, Template>> = { html: hb.template(html), text: hb.template(plain) };

export function renderSheet(view: View, form: SheetForm, own?: Template): string {
  const out = (own ?? builtIn[form])(view);
  return form === 'text' ? wrap(out) : out;
}

const WIDTH = 78;

/** Breaks long lines at blanks, hanging under their text. */
function wrap(text: string): string {
  return text.split('\n').map((line) => {
    if (line.length <= WIDTH) return line.trimEnd();
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
