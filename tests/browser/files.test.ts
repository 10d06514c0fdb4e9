// The files of an orchard in and out of a zip, without a browser: packed by us and read by fflate, packed by fflate and read by us, and any damage to it.
import fc from 'fast-check';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { opened, packed } from '../../src/page/files.ts';
import { EMPTY } from '../../src/page/state.ts';

const FILES = { 'orchard.yaml': 'where: Ohio, US\nsoil:\n  top: soil/2025.txt\ntrees:\n  A: apple\n', 'soil/2025.txt': 'pH 6.4\n'.repeat(200), 'diary.csv': 'date,trees,what,bag,amount,note\n' };
const STATE = { orchard: FILES['orchard.yaml'], reports: { 'soil/2025.txt': FILES['soil/2025.txt'] }, diary: FILES['diary.csv'] };
const bytesOf = (files: Readonly<Record<string, string>>): Record<string, Uint8Array> => Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)]));

test('there and back, by two packers', async () => {
  const ours = await packed(STATE);
  expect(Object.fromEntries(Object.entries(unzipSync(ours)).map(([name, data]) => [name, strFromU8(data)]))).toEqual(FILES);
  for (const bytes of [ours, zipSync(bytesOf(FILES), { level: 9 }), zipSync(bytesOf(FILES), { level: 0 }), zipSync(Object.fromEntries(Object.entries(bytesOf(FILES)).map(([n, b]) => [`garden/2026/${n}`, b])))]) {
    const { state, notices } = await opened([{ path: 'mine.zip', bytes }], EMPTY);
    expect([state, notices]).toEqual([STATE, []]);
  }
});

test('names that lead out are not written, and not read', async () => {
  const odd = { ...STATE, reports: { ...STATE.reports, '../up.txt': 'x', '/root.txt': 'x', 'a\\b.txt': 'x', 'c:/d.txt': 'x', 'a//b.txt': 'x' } };
  expect(Object.keys(unzipSync(await packed(odd))).sort()).toEqual(Object.keys(FILES).sort());
  const sly = zipSync({ ...bytesOf(FILES), '../soil/2025.txt': strToU8('pH 9'), '/soil/2025.txt': strToU8('pH 9'), 'x/../soil/2025.txt': strToU8('pH 9') });
  expect((await opened([{ path: 'sly.zip', bytes: sly }], EMPTY)).state).toEqual(STATE);
});

describe('damage', () => {
  const good = zipSync(bytesOf(FILES));
  test('cut anywhere', { timeout: 60_000 }, async () => {
    for (let at = 0; at < good.length; at += 1) {
      const { state } = await opened([{ path: 'cut.zip', bytes: good.slice(0, at) }], STATE);
      expect([at, state.orchard.length]).toEqual([at, FILES['orchard.yaml'].length]);
    }
  });
  test('any bytes changed: what is taken stands there as it was packed', { timeout: 120_000 }, async () => {
    await fc.assert(fc.asyncProperty(fc.array(fc.tuple(fc.nat(good.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 }), async (changes) => {
      const bytes = good.slice();
      for (const [at, value] of changes) bytes[at] = value;
      const before = { ...STATE, orchard: 'trees:\n  B: pear\n' };
      const { state } = await opened([{ path: 'damaged.zip', bytes }], before);
      // A name may be damaged, so that a file is missed; no content may.
      expect([before.orchard, STATE.orchard]).toContain(state.orchard);
      for (const text of Object.values(state.reports)) expect(Object.values(FILES)).toContain(text);
      expect(state.diary).toBe(STATE.diary);
    }), { numRuns: 1500 });
  });
  test('a bomb, however small it says it is', async () => {
    const bomb = zipSync({ 'orchard.yaml': new Uint8Array(30_000_000).fill(32) }, { level: 9 });
    expect(bomb.length).toBeLessThan(100_000);
    const lying = bomb.slice();
    // The central directory's size before packing, at 24 from its mark (PKWARE APPNOTE 4.3.12).
    const dir = lying.findIndex((b, i) => b === 0x50 && lying[i + 1] === 0x4b && lying[i + 2] === 1 && lying[i + 3] === 2);
    new DataView(lying.buffer).setUint32(dir + 24, 10, true);
    for (const bytes of [bomb, lying]) {
      const { state, notices } = await opened([{ path: 'bomb.zip', bytes }], STATE);
      expect([state, notices.map((n) => n.code)]).toEqual([STATE, ['zip-broken']]);
    }
  });
});
