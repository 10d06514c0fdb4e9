// Reports of kinds that growers sent later: readings, unread lines and questions must come out exactly.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { medlar } from '../medlar.ts';
import { differences } from './match.ts';
import { sent } from './sent.ts';

const textOf = (name: string): string => readFileSync(new URL(`./sent/${name}.txt`, import.meta.url), 'utf8');

describe('a soil report as sent', () => {
  for (const [name, report] of Object.entries(sent)) {
    it(name, async () => {
      const text = textOf(name);
      const run = await medlar(['read', '--json', '-'], {}, text);
      expect(differences(run, text, report)).toEqual([]);
    });
  }
});
