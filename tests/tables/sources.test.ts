// The publications stand in several files; of an id that stands in two of them, one would be lost in silence.
import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';

test('each publication stands once', () => {
  const folder = new URL('../../src/tables/', import.meta.url);
  const files = readdirSync(folder).filter((name) => /^sources.*\.ts$/.test(name));
  const ids = files.flatMap((name) => [...readFileSync(new URL(name, folder), 'utf8').matchAll(/^ {2}'?([\w-]+)'?: \{ title:/gm)].map((m) => m[1]!));
  expect([files.length > 5, ids.length > 300, ids.filter((id, i) => ids.indexOf(id) !== i)]).toEqual([true, true, []]);
});
