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
  const out = (own ?? builtIn[form])(form === 'html' ? bound(view) : view);
  return form === 'text' ? wrap(out) : out;
}

/** Amounts, lengths and days that a line may not break within. */
const APART = /(?<=\d) (?=\d+\/\d|(?:oz|lb|g|kg|t|ft|in|cm|m|mL|L|cups?|teaspoons?|tablespoons?|N|%|(?:January|February|March|April|May|June|July|August|September|October|November|December))(?![\p{L}\d]))|(?<=\d (?:oz|g|lb|kg)) (?=†)/gu;

/** Every text of the view with no-break blanks inside its amounts; drawings stay as they are. */
function bound<T>(value: T): T {
  if (typeof value === 'string') return (value.startsWith('<svg') ? value : value.replace(APART, '\u00a0')) as T;
  if (Array.isArray(value)) return value.map(bound) as T;
  return (value !== null && typeof value === 'object' ? Object.fromEntries(Object.entries(value).map(([k, v]) => [k, bound(v)])) : value) as T;
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
