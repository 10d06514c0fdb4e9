// Currants as growers write them (practice): known, without figures, so the tree waits and nothing is guessed.
import { expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

test.each(['red currants', 'Red currant', '3 black currants', 'white currant', 'whitecurrants', 'redcurrants', 'blackcurrant'])('%s', async (crop) => {
  const { code, json } = await medlar(['plan', '--json'], { 'orchard.yaml': `trees:\n  Hedge: ${crop}, planted 2019\n` });
  expect(code).toBe(0);
  expect(json.notices.map((n) => n.code)).toContain('stop-no-figures');
  expect(json.result.trees[0].need.N).toBe(0);
});
