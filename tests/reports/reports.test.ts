// Each report goes in as the grower typed it; the readings, the unread lines and the questions must come out exactly.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { medlar } from '../medlar.ts';
import { expected } from './expected.ts';
import { later } from './later.ts';
import { differences } from './match.ts';

const textOf = (name: string): string => readFileSync(new URL(`./${name}.txt`, import.meta.url), 'utf8');

describe('a soil report, as typed', () => {
  for (const [name, report] of Object.entries({ ...expected, ...later })) {
    it(name, async () => {
      const text = textOf(name);
      const run = await medlar(['read', '--json', '-'], {}, text);
      expect(differences(run, text, report)).toEqual([]);
    });
  }
});
