/** Lines that say by which method, in which unit or of what the lines below them are. */
import { HEADING_WORDS, SATURATION } from '../tables/report-words.ts';
import type { Context } from './context.ts';
import type { Line } from './text.ts';
import { toldBy } from './told.ts';
import { findMethods, findUnits } from './patterns.ts';
import { blank } from './vocabulary.ts';

/** The context below a line that says nothing else; null for any other line. */
export function headingOf(line: Line, context: Context): Context | null {
  const text = line.text;
  const methods = findMethods(text);
  const units = findUnits(blank(text, methods));
  const rest = blank(blank(text, methods), units);
  if (/\d/.test(rest)) return null;
  const names = context.words.names(text);
  // "Base saturation (calculated)" is a heading, a sentence about it is none.
  const others = blank(rest, names).replace(SATURATION, ' ').match(/\p{L}{4,}/gu) ?? [];
  if (SATURATION.test(text) && others.filter((w) => !HEADING_WORDS.test(w)).length < 2) return { ...context, saturation: true };
  // "Olsen P" is a name that has a method.
  if (names.length > 0 || !HEADING_WORDS.test(rest)) return null;
  if (methods.length === 0 && units.length === 0) return null;
  return { ...context, saturation: false, method: methods[0]?.is ?? context.method, unit: units[0]?.is ?? context.unit };
}

/** "P2O5 und K2O nach CAL, Mg nach CaCl2": a title that says the methods of the lines below. */
export function toldMethods(line: Line, context: Context): Context {
  const told = toldBy(line, context, false);
  return told ? { ...context, methods: new Map([...context.methods, ...told.items]) } : context;
}
