/** The view as the sheet's HTML, by the built-in template or the grower's own. */
import Handlebars from 'handlebars/runtime.js';
import html from '../../templates/sheet.html.hbs';
import { monthNames } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import type { View } from './view.ts';

export type Template = (view: View) => string;

/** Templates come compiled and need the small runtime alone. */
export const hb = (Handlebars as unknown as typeof import('handlebars')).create();
const builtIn: Template = hb.template(html);

export const renderHtml = (view: View, own: Template = builtIn): string => own(bound(view, apart(view.language as Language)));

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
