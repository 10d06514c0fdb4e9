/** How deep a sample goes. */
import { INCH } from '../units/units.ts';

const LENGTH: Readonly<Record<string, number>> = { mm: 0.001, cm: 0.01, m: 1, in: INCH, inch: INCH, inches: INCH, '"': INCH, ft: 12 * INCH, foot: 12 * INCH, feet: 12 * INCH };

/** Metres to the lower end of a printed depth: "0-15 cm", "6 in", "0 to 8 inches"; null without a unit. */
export function depthOf(text: string): number | null {
  const m = /(\d{1,4}(?:[.,]\d{1,3})?)\s?(mm|cm|m|inches|inch|in|"|ft|foot|feet)(?![a-z])/i.exec(text);
  return m ? Number(m[1]!.replace(',', '.')) * LENGTH[m[2]!.toLowerCase()]! : null;
}
