/** View and template → the sheet as HTML or text. The built-in templates come compiled; a grower's own are compiled when read. */
import Handlebars from 'handlebars/runtime.js';
import html from '../../templates/sheet.html.hbs';
import plain from '../../templates/sheet.txt.hbs';
import { monthNames } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import type { View } from './view.ts';

export type SheetForm = 'html' | 'text';
export type Template = (view: View) => string;

const hb = (Handlebars as unknown as typeof import('handlebars')).create();
const builtIn: Readonly<Record<SheetForm, Template>> = { html: hb.template(html), text: hb.template(plain) };

export function renderSheet(view: View, form: SheetForm, own?: Template): string {
  const out = (own ?? builtIn[form])(form === 'html' ? bound(view, apart(view.language as Language)) : view);
  return form === 'text' ? wrap(out) : out;
}

const MEASURES = ['cups', 'cup', 'tablespoons', 'tablespoon', 'teaspoons', 'teaspoon'] as const;

/** The blanks of amounts, lengths and days, where no line may break: "2 kg", "12. April", "12 de abril". */
function apart(language: Language): RegExp {
  const words = [...monthNames(language), ...MEASURES.map((key) => say(language, 'unit', key))].join('|');
  return new RegExp(`(?<=\\d) (?=\\d+\\/\\d|(?:oz|lb|g|kg|t|ft|in|cm|m|mL|L|N|%|(?:de )?(?:${words}))(?![\\p{L}\\d]))|(?<=\\d\\.|\\d de) (?=(?:${words})(?![\\p{L}\\d]))|(?<=\\d (?:oz|g|lb|kg)) (?=†)`, 'gu');
}

/** Every text of the view with no-break blanks inside its amounts; drawings stay as they are. */
function bound<T>(value: T, blanks: RegExp): T {
  if (typeof value === 'string') return (value.startsWith('<svg') ? value : value.replace(blanks, '\u00a0')) as T;
  if (Array.isArray(value)) return value.map((v) => bound(v as unknown, blanks)) as T;
  return (value !== null && typeof value === 'object' ? Object.fromEntries(Object.entries(value).map(([k, v]) => [k, bound(v as unknown, blanks)])) : value) as T;
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
