// Reports as labs and growers of other countries print and type them: readings, unread lines and questions must come out exactly.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { medlar } from '../medlar.ts';
import { differences } from './match.ts';
import { tongues } from './tongues.ts';

const textOf = (name: string): string => readFileSync(new URL(`./tongues/${name}.txt`, import.meta.url), 'utf8');

describe('a soil report in another language', () => {
  for (const [name, report] of Object.entries(tongues)) {
    it(name, async () => {
      const text = textOf(name);
      const run = await medlar(['read', '--json', '-'], {}, text);
      expect(differences(run, text, report)).toEqual([]);
    });
  }
});
