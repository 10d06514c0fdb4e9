// The bundle holds the tables as JSON: each must be what its module exports, which the tests of the tables hold against their publications.
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
type Loaded = { readonly contents: string } | null;
const { isPlain, jsonOf, tablesAsJson } = await import(`${root}/src/tables.build.mjs`) as {
  isPlain: (value: unknown) => boolean; jsonOf: (value: unknown) => string;
  tablesAsJson: (at: string) => { setup: (b: { onLoad: (filter: unknown, load: (file: { path: string }) => Loaded) => void }) => Promise<void> };
};

test('every module that is turned into JSON exports the same under the same names', async () => {
  let load: ((file: { path: string }) => Loaded) | undefined;
  await tablesAsJson(root).setup({ onLoad: (_, then) => { load = then; } });
  let turned = 0;
  for (const name of readdirSync(`${root}/src/tables`).filter((n) => n.endsWith('.ts'))) {
    const found = load!({ path: `${root}/src/tables/${name}` });
    const source: Record<string, unknown> = await import(`../../src/tables/${name.slice(0, -3)}.ts`) as Record<string, unknown>;
    if (found === null) {
      expect([name, isPlain({ ...source })]).toEqual([name, false]);
      continue;
    }
    turned += 1;
    const made: Record<string, unknown> = await import(`data:text/javascript;base64,${Buffer.from(found.contents).toString('base64')}`) as Record<string, unknown>;
    expect({ ...made }, name).toStrictEqual({ ...source });
  }
  expect(turned).toBeGreaterThan(40);
});

test('any value: either JSON keeps it whole, or it is not taken for plain', () => {
  fc.assert(fc.property(fc.anything({ withDate: true, withMap: true, withSet: true, withSparseArray: true, withNullPrototype: true, withBigInt: true, withObjectString: true }), (value) => {
    if (isPlain(value)) expect(JSON.parse(jsonOf(value))).toStrictEqual(value);
  }));
  expect(JSON.parse(jsonOf([Infinity, { most: Infinity }]))).toEqual([Infinity, { most: Infinity }]);
  expect([NaN, -0, undefined, () => 1, /x/, new Set([1]), { a: [undefined] }].map(isPlain)).toEqual(Array.from({ length: 7 }, () => false));
});
