// A table that goes by a fact which nobody told: the tree waits and its question stands there, whatever the place (the house's own rule: refuse with a reason rather than guess).
import { expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

test.each(['Ireland', 'England, UK', 'Ohio, US', 'Georgia, US', 'California, US', 'New Zealand', 'Spain'])('an apricot without age, size or crown in %s', async (where) => {
  for (const facts of ['apricot', 'apricot, 5 m across', 'apricot, trunk 30 cm round']) {
    const { json, code } = await medlar(['plan', '--json'], { 'orchard.yaml': `where: ${where}\ntrees:\n  A: ${facts}\n  B: apricot, planted 2012\nstore:\n  - Urea 46-0-0, 10 lb\n` });
    expect([where, facts, code]).toEqual([where, facts, 0]);
    expect(json.questions.filter((q) => q.about === 'A').length).toBeGreaterThan(0);
    expect(json.result.trees[1].need.N).toBeGreaterThan(0);
  }
});
