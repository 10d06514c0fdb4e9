// The outer shape of orchard.yaml as the loader checks it, against the schema that editors are given (`medlar schema orchard`), a library's own check (zod).
import fc from 'fast-check';
import type { YAMLMap } from 'yaml';
import { Document } from 'yaml';
import { describe, expect, test } from 'vitest';
import { INPUTS } from '../../src/json/schemas.ts';
import { loadOrchard } from '../../src/orchard/load.ts';
import { KEYS, shapeFaults } from '../../src/orchard/shape.ts';

const leaf = fc.oneof(fc.string(), fc.integer(), fc.boolean(), fc.constant(null), fc.constant('apple'));
const value = fc.oneof({ weight: 3, arbitrary: leaf }, fc.array(leaf, { maxLength: 3 }), fc.dictionary(fc.constantFrom('a', 'b', 'c'), fc.oneof(leaf, fc.array(leaf, { maxLength: 2 }), fc.dictionary(fc.constantFrom('x', 'y'), fc.oneof(leaf, fc.array(leaf, { maxLength: 2 }), fc.record({ z: leaf })))), { maxKeys: 3 }));
const file = fc.dictionary(fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...KEYS) }, fc.constant('tress')), value, { maxKeys: 4 });

test('the same files pass, and the same keys are at fault', () => {
  expect(Object.keys(INPUTS.orchard.shape).sort()).toEqual([...KEYS].sort());
  let refused = 0;
  fc.assert(fc.property(file, (data) => {
    const { unknown, faults } = shapeFaults(new Document(data).contents as unknown as YAMLMap);
    const own = new Set([...unknown.map((u) => u.key), ...faults.map((f) => f.path[0]!)]);
    const checked = INPUTS.orchard.safeParse(data);
    const theirs = checked.success ? [] : checked.error.issues.flatMap((i) => (i.code === 'unrecognized_keys' ? i.keys : [String(i.path[0])]));
    if (theirs.length > 0) refused++;
    expect([...own].sort()).toEqual([...new Set(theirs)].filter((k) => k !== 'trees' || 'trees' in data).sort());
  }), { numRuns: 2000 });
  expect(refused).toBeGreaterThan(200);
});

describe('each where it stands', () => {
  test.each([
    ['trees:\n  A: apple\nshed: ash\n', 'shed', 3, 7], ['trees:\n  A:\n    planted: [2019, [1]]\n', 'trees → A → planted → 1', 3, 21], ['soil:\n  top:\n    - a.txt\n    - b: c\ntrees:\n  A: apple\n', 'soil → top → 1', 4, 7], ['trees:\n', 'trees', 1, 7],
  ] as const)('%j', (source, key, line, column) => {
    const [first] = loadOrchard(source, 'orchard.yaml').notices;
    expect(first).toMatchObject({ code: 'value-misshapen', facts: { key }, place: { line, column } });
  });
  test('one report for all trees', () => {
    const { orchard } = loadOrchard('where: Ohio, US\nsoil: soil.txt, sample 2\ntrees:\n  A: apple\n', 'orchard.yaml');
    expect(orchard!.zones).toMatchObject([{ name: 'soil', file: 'soil.txt', sample: 'sample 2', others: [] }]);
    expect(loadOrchard('soil:\n  - a.txt\n  - b.txt\ntrees:\n  A: apple\n', 'orchard.yaml').orchard!.zones).toMatchObject([{ name: 'soil', file: 'a.txt', others: [{ file: 'b.txt' }] }]);
  });
});
