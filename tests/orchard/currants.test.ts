// Currants as growers write them (practice). Penn State prints 6 to 8 oz of 10-10-10 for a currant bush, every year: the low end leads where no publisher is near.
import { expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { OZ } from '../published/helpers.ts';

test.each(['red currants', 'Red currant', '3 black currants', 'white currant', 'whitecurrants', 'redcurrants', 'blackcurrant'])('%s', async (crop) => {
  const { code, json } = await medlar(['plan', '--json'], { 'orchard.yaml': `trees:\n  Hedge: ${crop}, planted 2019\n` });
  expect(code).toBe(0);
  expect(json.notices.map((n) => n.code)).not.toContain('stop-no-figures');
  expect(json.result.trees[0].need.N).toBeCloseTo(6 * 0.1 * OZ, 3);
});
