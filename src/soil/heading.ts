/** Lines that say by which method, in which unit or of what the lines below them are. */
import type { Item } from '../tables/items.ts';
import { HEADING_WORDS, SATURATION } from '../tables/report-words.ts';
import type { Context } from './line.ts';
import type { Line } from './text.ts';
import { blank, findMethods, findUnits } from './vocabulary.ts';

/** The context below a line that says nothing else; null for any other line. */
export function headingOf(line: Line, context: Context): Context | null {
  const text = line.text;
  if (context.words.names(text).some((n) => n.is.item !== 'base-saturation' && n.is.item !== 'ratio')) return SATURATION.test(text) && !/\d/.test(text) ? { ...context, saturation: true } : null;
  const methods = findMethods(text);
  const units = findUnits(blank(text, methods));
  const rest = blank(blank(text, methods), units);
  if (/\d/.test(rest) || !HEADING_WORDS.test(rest)) return null;
  if (SATURATION.test(text)) return { ...context, saturation: true };
  if (methods.length === 0 && units.length === 0) return null;
  return { ...context, saturation: false, method: methods[0]?.is ?? context.method, unit: units[0]?.is ?? context.unit };
}

/** "P2O5 und K2O nach CAL, Mg nach CaCl2": a title that says the methods of the lines below. */
export function toldMethods(line: Line, context: Context): Context {
  const tokens = context.look(line.text);
  if (tokens.some((t) => t.kind === 'number' || t.kind === 'between') || !tokens.some((t) => t.kind === 'method')) return context;
  const methods = new Map(context.methods);
  let waiting: Item[] = [];
  for (const t of tokens) {
    if (t.kind === 'name' && t.is.item !== 'ratio' && t.is.item !== 'lime') waiting.push(t.is.item);
    else if (t.kind === 'method' && waiting.length > 0) {
      for (const item of waiting) methods.set(item, t.is);
      waiting = [];
    }
  }
  return { ...context, methods };
}
