// Reports that are no reports. Expected codes: design.md 6 (3 the input has mistakes, 5 a file cannot be read).
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { both, GOOD, held, inFolder, REPORT } from './hold.ts';

const orchard = (report: string | Buffer) => ({ 'orchard.yaml': GOOD, 'soil/2025.txt': report });
const PDF = Buffer.concat([Buffer.from('%PDF-1.7\n%'), Buffer.from([0xe2, 0xe3, 0xcf, 0xd3, 0, 0, 0, 1, 2, 3]), Buffer.from('\n1 0 obj\n<<>>\nendobj\n')]);
const PNG = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d, 0x49, 0x48, 0x44, 0x52]);

describe.each([['read', ['read']], ['plan', ['plan']], ['sheet', ['sheet']], ['check', ['check']]] as const)('%s', (name, argv) => {
  test.each([
    ['an empty report', '', 'report-empty'],
    ['blank lines alone', ' \n\t\n  \n', 'report-empty'],
    ['a PDF', PDF, 'not-text'],
    ['a picture', PNG, 'not-text'],
    ['NULs', 'pH 6.4\0\0\0', 'not-text'],
    ['one line of 5 MB', 'pH 6.4 '.repeat(750_000), 'line-too-long'],
    ['one long line among good ones', `pH 6.4\n${'x'.repeat(5000)}\nPotassium 180 ppm (120-200)\n`, 'line-too-long'],
    ['a pH of 47', 'pH 47\nPotassium 180 ppm (120-200)\n', 'ph-impossible'],
    ['a negative content', 'pH 6.4\nPhosphorus = -12 ppm Olsen\n', 'value-negative'],
    ['more than all of it', 'Organic matter 140 %\npH 6.4\n', 'share-impossible'],
    ['two values for one item', 'Phosphorus 42 ppm Mehlich 3\nPhosphorus 90 ppm Mehlich 3\n', 'reading-twice'],
  ] as const)('%s is refused and named', async (_, report, code) => {
    const { text, notices } = await both(argv, orchard(report));
    expect(text.code).toBe(3);
    expect(notices.map((n) => n.code)).toContain(code);
    // The message names the file, whatever was wrong in it.
    expect(text.stderr).toContain('soil/2025.txt');
    if (name === 'plan' || name === 'sheet') expect(text.stdout).toBe('');
  });
});

test('a letter without a value is told, whatever the code', async () => {
  for (const argv of [['read'], ['plan'], ['check']]) {
    const { json, text } = await both(argv, orchard('Dear grower,\nthank you for your order.\n'));
    expect([0, 3]).toContain(text.code);
    expect(json.json.notices.find((n) => n.code === 'nothing-read')?.text).toContain('soil/2025.txt');
  }
});

test('a pH of 47 is told at its line and column', async () => {
  const { notices, text } = await both(['read'], orchard('taken: 3 Nov 2025\nSoil  pH 47\n'));
  // Second line; "47" begins at the tenth sign of "Soil  pH 47".
  expect(notices.find((n) => n.code === 'ph-impossible')).toMatchObject({ file: 'soil/2025.txt', line: 2, column: 10 });
  expect(text.stderr).toContain('line 2');
  expect(text.stderr.split('\n').some((l) => /^ *\| {10}\^\^$/.test(l))).toBe(true);
});

test('lines of another tool, HTML and braces are read or left unread, never run', async () => {
  const { text, json } = await both(['read', '-'], {}, `<script>alert(1)</script>\n{{constructor}}\n\${process.exit(9)}\npH 6.4\n`);
  expect(text.code).toBe(0);
  expect(json.json.result.samples[0].readings).toHaveLength(1);
  expect(json.json.result.samples[0].unread.map((u: { line: number }) => u.line)).toEqual([1, 2, 3]);
});

test('escape codes in a report do not reach the terminal', async () => {
  const bad = `\u001b[31mpH 6.4\u001b[0m\n\u001b]0;owned\u0007Potassium 180 ppm (120-200)\n\u009b2J note\n`;
  for (const argv of [['read'], ['plan'], ['check'], ['read', 'soil/2025.txt']]) await both(argv, orchard(bad + REPORT));
});

test('a missing report exits 5 and names it', async () => {
  for (const argv of [['plan'], ['sheet'], ['check'], ['read']]) {
    const { text, notices } = await both(argv, { 'orchard.yaml': GOOD });
    expect(text.code).toBe(5);
    expect(text.stderr).toContain('soil/2025.txt');
    expect(notices.find((n) => n.code === 'file-missing')).toMatchObject({ file: 'orchard.yaml', line: 6 });
  }
  expect((await both(['read', 'nowhere.txt'], {})).text.code).toBe(5);
});

test('a folder in the place of a report exits 5', async () => {
  const { text } = await both(['plan'], { 'orchard.yaml': GOOD, 'soil/2025.txt/inside.txt': 'pH 6.4' });
  expect(text.code).toBe(5);
});

test('mistakes win over a missing file: exit 3 (design.md 6)', async () => {
  const two = GOOD.replace('  bank: soil/2025.txt', '  bank: soil/2025.txt\n  hill: soil/gone.txt');
  expect((await both(['check'], { 'orchard.yaml': two, 'soil/2025.txt': 'pH 47\n' })).text.code).toBe(3);
});

describe('paths out of the folder', () => {
  const SECRET = 'Secretium 777';
  test.each(['../../etc/passwd', '/etc/passwd', 'soil/../../x.txt', '~/x.txt', 'C:\\x.txt', '..\\x.txt'])('%s is refused', async (path) => {
    for (const argv of [['plan'], ['read'], ['check'], ['sheet']]) {
      const { text, notices } = await both(argv, { 'orchard.yaml': GOOD.replace('soil/2025.txt', path) });
      expect(text.code).toBe(3);
      expect(notices.find((n) => n.code === 'path-outside')).toMatchObject({ file: 'orchard.yaml', line: 6 });
      expect(text.stdout + text.stderr).not.toContain('root:');
    }
  });

  test.each([['plan'], ['read'], ['check'], ['sheet'], []])('a link that leads out is refused: %s', async (...argv) => {
    const outside = mkdtempSync(join(tmpdir(), 'medlar-outside-'));
    try {
      writeFileSync(join(outside, 'secret.txt'), `pH 6.4\n${SECRET}\n`);
      await inFolder({ 'orchard.yaml': GOOD, 'soil/kept.txt': '' }, async (folder, medlar) => {
        symlinkSync(join(outside, 'secret.txt'), join(folder, 'soil', '2025.txt'));
        const said = await medlar(...argv);
        held(said);
        expect(said.code).toBe(3);
        expect(said.stderr).toContain('soil/2025.txt');
        const json = await medlar(...argv, '--json');
        expect(json.stdout + json.stderr + said.stdout + said.stderr).not.toContain('Secretium');
        expect(json.json.notices.map((n) => n.code)).toContain('path-outside');
      });
    } finally {
      rmSync(outside, { recursive: true, force: true });
    }
  });

  test('a link that stays inside is read', async () => {
    await inFolder({ 'orchard.yaml': GOOD, 'soil/real.txt': REPORT }, async (folder, medlar) => {
      symlinkSync(join(folder, 'soil', 'real.txt'), join(folder, 'soil', '2025.txt'));
      expect((await medlar('plan')).code).toBe(0);
    });
  });
});
