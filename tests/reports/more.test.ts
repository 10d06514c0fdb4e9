// Reports in further layouts of labs and growers: the readings, the unread lines and the questions must come out exactly.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { medlar } from '../medlar.ts';
import { differences } from './match.ts';
import { more } from './more.ts';

const textOf = (name: string): string => readFileSync(new URL(`./more/${name}.txt`, import.meta.url), 'utf8');

describe('a soil report in another layout', () => {
  for (const [name, report] of Object.entries(more)) {
    it(name, async () => {
      const text = textOf(name);
      const run = await medlar(['read', '--json', '-'], {}, text);
      expect(differences(run, text, report)).toEqual([]);
    });
  }
});
