/** `medlar schema [COMMAND]`: JSON Schema of an answer, and the closed lists. */
import * as z from 'zod';
import { ANSWERS, closedLists, INPUTS } from '../json/schemas.ts';
import { notice } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import type { Common, Io } from './io.ts';

export function schemaCommand(name: string | undefined, options: Common, io: Io): number {
  const all: Readonly<Record<string, z.core.$ZodType>> = { ...ANSWERS, ...INPUTS };
  const names = Object.keys(all);
  const L = 'en-US';
  if (name !== undefined && !Object.hasOwn(all, name)) {
    const guess = suggest(name, names)[0];
    const why = say(L, 'say', 'one-of', { option: 'schema', choices: names.join(', '), read: name }) + (guess ? ` ${say(L, 'say', 'did-you', { guess })}` : '');
    return give({ command: 'schema', result: null, notices: [notice('usage', 'error', { why })], language: L }, options.json === true, io);
  }
  const schemaOf = (n: string): unknown => z.toJSONSchema(all[n]!, { io: 'input', unrepresentable: 'any' });
  const body = name === undefined ? { ...Object.fromEntries(names.map((n) => [n, schemaOf(n)])), lists: closedLists() } : { ...(schemaOf(name) as object), lists: closedLists() };
  io.out(`${JSON.stringify(body, null, 2)}\n`);
  return 0;
}
