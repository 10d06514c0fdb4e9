/**
 * What a template is given: finished strings and drawings, no arithmetic left. `medlar schema sheet` prints its schema;
 * a template that names a field which is not here is refused.
 */
import * as z from 'zod';

const text = z.string();

const HEADINGS = ['use', 'not', 'stop', 'how', 'back', 'overleaf', 'limeSulphur', 'whySoLittle', 'short', 'assumed', 'measure', 'test2', 'slip', 'cut', 'caution', 'year', 'tick', 'tree', 'dose', 'where', 'fromTrunk'] as const;
type Heading = (typeof HEADINGS)[number];
const row = z.strictObject({
  number: text.meta({ description: 'place in the walk' }), name: text, fed: z.boolean(),
  doses: z.array(z.strictObject({ amount: text, plants: text.meta({ description: 'said where the amount is for one plant of several' }), product: text.meta({ description: 'said where more than one product is used' }), only: text.meta({ description: 'the condition of this dose' }), cups: text.meta({ description: 'a rough kitchen measure; empty where none is held or it is too little to measure' }) })),
  where: text, ring: text.meta({ description: 'drawing, SVG' }), lines: z.array(text).meta({ description: 'the row as padded lines of plain text' }),
});

export const viewSchema = z.strictObject({
  language: text, paper: text, large: z.boolean(), orchard: text, feeding: text, made: text, test: text,
  use: z.array(text), not: z.array(text), strip: text.meta({ description: 'the year as a strip, SVG' }),
  days: z.array(z.strictObject({ title: text, when: text, weigh: text, rows: z.array(row), done: text, weighs: text })),
  idle: z.array(row).meta({ description: 'all trees, where no day of feeding is planned' }),
  stop: text, lost: text, how: text,
  back: z.strictObject({
    lime: z.array(z.strictObject({ box: z.boolean().meta({ description: 'whether it is something to do, with a box to tick' }), text })), curves: z.array(z.strictObject({ drawing: text.meta({ description: 'pH against amount, SVG' }), text })), crowded: z.boolean().meta({ description: 'whether the back leaves no room for these drawings on paper' }), whyLead: text.meta({ description: 'what stands in parentheses below' }), why: z.array(z.strictObject({ name: text, text })), short: z.array(text), assumed: z.array(text), measure: text, again: text,
    balanceLead: text, balances: z.array(z.strictObject({ name: text, drawing: text.meta({ description: 'need against supply, SVG; for the screen alone' }), text })),
    slip: z.array(text), cautions: z.array(text), foot: text,
  }),
  words: z.strictObject(Object.fromEntries(HEADINGS.map((k) => [k, text])) as Record<Heading, typeof text>).meta({ description: 'headings' }),
});

export type View = z.infer<typeof viewSchema>;
export type Row = z.infer<typeof row>;
