// `medlar read` at a terminal: a report typed from the paper. What is said and what stands in the file are written out in full.
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { enUS } from '../../src/words/en-US.ts';
import { GOOD, held, leftovers } from '../hostile/hold.ts';
import type { Run } from '../medlar.ts';
import { medlar } from '../medlar.ts';

const UNFINISHED = `# ${enUS.hand.unfinished}`;
type Sat = { run: Run; file: string | null; left: string[]; files: string[] };

/** A person at the terminal; after the last answer they press ctrl-C. */
async function sit(argv: readonly string[], answers: readonly string[], files: Readonly<Record<string, string>> = {}, file = 'soil/2025.txt'): Promise<Sat> {
  let found = { file: null as string | null, left: [] as string[], files: [] as string[] };
  const result = await medlar(argv, files, '', (folder) => {
    found = { file: existsSync(join(folder, file)) ? readFileSync(join(folder, file), 'utf8') : null, left: leftovers(folder), files: readdirSync(folder, { recursive: true }).map(String) };
  }, answers);
  held(result);
  expect(found.left).toEqual([]);
  return { run: result, ...found };
}

const SESSION = [
  'taken: 3 Nov 2025', 'pH 6.4', 'buffer pH 6.8', 'P 24 ppm', 'Penn State', 'K 180 ppm (100-200)', 'Mg 231', 'ppm', 'Ca 1500 ppm', 'Organic matter three %', 'Organic matter 4.1 %',
  'P 42 ppm', 'a', 'CEC 12 meq/100g', 'texture: loam', 'Zn 3.4 ppm', 'undo', 'Zn 4.3 ppm high', 'done',
];
const TYPED = `taken: 3 Nov 2025
pH 6.4
buffer pH 6.8
P 42 ppm
lab: Penn State
buffer pH method: Mehlich buffer
phosphorus method: Mehlich 3
K 180 ppm (100-200)
potassium method: Mehlich 3
Mg 231
magnesium unit: ppm
Ca 1500 ppm
Organic matter 4.1 %
CEC 12 meq/100g
texture: loam
Zn 4.3 ppm high
`;

describe('a report from Pennsylvania', () => {
  test('line by line: what is understood, what is asked, what is not', async () => {
    const { run: said, file } = await sit(['read', 'soil/2025.txt'], SESSION);
    expect(said.code).toBe(0);
    expect(file).toBe(TYPED);
    // In the order typed.
    const told = [
      'Kept.', 'soil pH 6.4: ', 'buffer pH 6.8: ', 'P 24 ppm: a question first.', 'Which lab, or which state, will do.', 'It decides whether phosphate or potash is given.', 'Penn State: P Mehlich 3, K Mehlich 3', 'P 24 ppm: ',
      'K 180 ppm: enough (lab\'s range)', 'Mg 231 ?: a question first.', 'which unit is "Mg 231" in?', 'It changes nothing you buy this year.', 'Mg 231 ppm: ', 'Ca 1500 ppm: ', 'I cannot read "three" as the value of organic matter.',
      'organic matter 4.1 %: ', 'says "P 24 ppm" already. Which is on the paper?', 'a) P 42 ppm', 'b) P 24 ppm', 'says it now.', 'CEC 12 meq/100g: ', 'Zn 3.4 ppm: ', 'Taken back: Zn 3.4 ppm', 'Zn 4.3 ppm: high (lab\'s word)',
    ];
    let at = 0;
    for (const text of told) {
      const next = said.stderr.indexOf(text, at);
      expect([text, next >= at]).toEqual([text, true]);
      at = next + text.length;
    }
    expect(said.stdout).toContain('P 42 ppm');
    expect(said.stdout).toContain('Next: medlar plan');
  });

  test('the next run asks nothing, at a terminal or not', async () => {
    const { json } = await medlar(['read', 'soil/2025.txt', '--json'], { 'soil/2025.txt': TYPED });
    expect(json.questions).toEqual([]);
    expect(json.result.samples[0].readings.map((r: { item: string; value: number; unit: string; method: string | null }) => [r.item, r.value, r.unit, r.method])).toEqual([
      // Penn State measures pH in water (Agronomy Guide, soil test methods).
      ['ph', 6.4, 'pH', 'water'], ['buffer-ph', 6.8, 'pH', 'mehlich-buffer'], ['phosphorus', 42, 'ppm', 'mehlich-3'], ['potassium', 180, 'ppm', 'mehlich-3'], ['magnesium', 231, 'ppm', expect.anything()], ['calcium', 1500, 'ppm', expect.anything()],
      ['organic-matter', 4.1, '%', null], ['cec', 12, 'meq/100g', null], ['texture', null, null, null], ['zinc', 4.3, 'ppm', null],
    ].map((r) => (r[0] === 'magnesium' || r[0] === 'calcium' ? [r[0], r[1], r[2], json.result.samples[0].readings.find((x: { item: string }) => x.item === r[0]).method] : r)));
    const again = await sit(['read', 'soil/2025.txt'], [], { 'soil/2025.txt': TYPED });
    expect([again.run.code, again.file]).toEqual([0, TYPED]);
  });

  test('left half-way by ctrl-C or an empty line, all that was accepted is there, and going on ends it', async () => {
    for (const leave of [[], ['']]) {
      const half = await sit(['read', 'soil/2025.txt'], [...SESSION.slice(0, 8), ...leave]);
      expect(half.run.code).toBe(0);
      expect(half.file).toBe(`${TYPED.slice(0, TYPED.indexOf('Ca 1500')).replace('P 42', 'P 24')}${UNFINISHED}\n`);
      expect(half.run.stderr).toContain('5 read; they are in soil/2025.txt. Go on with: medlar read soil/2025.txt');
      const rest = await sit(['read', 'soil/2025.txt'], SESSION.slice(8), { 'soil/2025.txt': half.file! });
      expect(rest.run.stderr).toContain('soil/2025.txt goes on: 5 read so far.');
      expect(rest.file).toBe(TYPED);
    }
  });

  test('left within a question, the value stands and is asked again', async () => {
    const half = await sit(['read', 'soil/2025.txt'], ['P 24 ppm']);
    expect([half.run.code, half.file]).toEqual([0, `P 24 ppm\n${UNFINISHED}\n`]);
    const rest = await sit(['read', 'soil/2025.txt'], ['done', 'Rutgers'], { 'soil/2025.txt': half.file! });
    expect(rest.file).toBe('P 24 ppm\nlab: Rutgers\nphosphorus method: Mehlich 3\n');
  });
});

describe('what is not known', () => {
  test('don\'t know everywhere ends every question', async () => {
    const { run: said, file } = await sit(['read', 'soil/2025.txt'], ['P 42 ppm', "don't know", 'K 180', '', 'Mg 231', 'h', 'done']);
    expect(said.code).toBe(0);
    expect(file).toBe('P 42 ppm\nlab: unknown\nphosphorus method: unknown\nK 180\npotassium method: unknown\npotassium unit: unknown\nMg 231\nmagnesium unit: unknown\n');
    expect(said.stderr).toContain('Then the cautious road');
    const again = await sit(['read', 'soil/2025.txt'], [], { 'soil/2025.txt': file! });
    expect([again.run.code, again.file]).toEqual([0, file]);
  });

  test('a lab that nobody here knows is kept by name; its methods are unknown', async () => {
    const { run: said, file } = await sit(['read', 'soil/2025.txt'], ['P 42 ppm', 'Joe\'s Soils', '', 'done']);
    expect(said.stderr).toContain('I hold no methods of "Joe\'s Soils".');
    expect(file).toBe('P 42 ppm\nlab: Joe\'s Soils\nphosphorus method: unknown\n');
  });

  test('a mistyped state is suggested, never taken', async () => {
    const { run: said, file } = await sit(['read', 'soil/2025.txt'], ['P 42 ppm', 'Pensylvania', 'Pennsylvania', 'done']);
    expect(said.stderr).toContain('Is it pennsylvania?');
    expect(file).toBe('P 42 ppm\nlab: Penn State\nphosphorus method: Mehlich 3\n');
  });

  test('a state of two methods asks which', async () => {
    expect((await sit(['read', 'soil/2025.txt'], ['P 42 ppm', 'Oregon', 'eastern Oregon', 'done'])).file).toBe('P 42 ppm\nlab: eastern Oregon\nphosphorus method: Olsen\n');
    expect((await sit(['read', 'soil/2025.txt'], ['P 42 ppm', 'Oregon', '', 'done'])).file).toBe('P 42 ppm\nlab: unknown\nphosphorus method: unknown\n');
  });

  test('a lab whose method goes by the soil: the paper is asked for it', async () => {
    expect((await sit(['read', 'soil/2025.txt'], ['P 42 ppm', 'Minnesota', 'Bray 1', 'done'])).file).toBe('P 42 ppm\nlab: University of Minnesota\nphosphorus method: Bray 1\n');
  });

  test('the method itself is an answer', async () => {
    expect((await sit(['read', 'soil/2025.txt'], ['P 42 ppm', 'Olsen', 'done'])).file).toBe('P 42 ppm\nphosphorus method: Olsen\n');
  });

  test('texture by feel', async () => {
    const { file, run: said } = await sit(['read', 'soil/2025.txt'], ['pH 6.4', 'texture', 'a', 'a', 'b', 'c', 'done']);
    expect(said.code).toBe(0);
    expect(file).toMatch(/^pH 6\.4\ntexture: \S.*\n$/);
    expect((await sit(['read', 'soil/2025.txt'], ['pH 6.4', 'texture', '', 'done'])).file).toBe('pH 6.4\n');
  });
});

describe('where it starts', () => {
  test('a report that stands there: only what is open is asked, and the answers join it', async () => {
    const { run: said, file } = await sit(['read', 'soil/2025.txt'], ['a', 'Georgia'], { 'soil/2025.txt': 'Lab sheet\r\n\r\npH 6.4\r\nMagnesium 231\r\nPhosphorus 42 lb/acre' });
    expect(said.code).toBe(0);
    expect(said.stderr).toContain('2 questions about soil/2025.txt.');
    expect(file).toBe('Lab sheet\r\n\r\npH 6.4\r\nMagnesium 231\r\nPhosphorus 42 lb/acre\r\nmagnesium unit: ppm\r\nlab: University of Georgia\r\nphosphorus method: Mehlich 1\r\n');
  });

  // Penn State extracts by Mehlich 3 (Agronomy Guide, soil testing procedures).
  test('a lab that stands in the report is not asked for again, nor its methods', async () => {
    const whole = 'lab: Penn State\n\npH 6.4\nPhosphorus 42 ppm\n';
    const { run: said, file } = await sit(['read', 'soil/2025.txt'], [], { 'soil/2025.txt': whole });
    expect([said.code, file]).toEqual([0, whole]);
    expect(said.stdout).toContain('no question');
    const unit = await sit(['read', 'soil/2025.txt'], ['a'], { 'soil/2025.txt': `${whole}Magnesium 231\n` });
    expect(unit.run.stderr).toContain('1 question about soil/2025.txt.');
    expect(unit.file).toBe(`${whole}Magnesium 231\nmagnesium unit: ppm\n`);
  });

  test('left within these, the report is told all the same', async () => {
    const { run: said, file } = await sit(['read', 'soil/2025.txt'], [], { 'soil/2025.txt': 'pH 6.4\nMagnesium 231\n' });
    expect([said.code, file]).toEqual([0, 'pH 6.4\nMagnesium 231\n']);
    expect(said.stdout).toContain('Magnesium 231');
  });

  test('without a terminal, with --json and for stdin nothing is asked', async () => {
    expect((await medlar(['read', 'soil/2025.txt'])).code).toBe(5);
    for (const argv of [['read', 'soil/2025.txt', '--json'], ['read', '--json']]) expect((await sit(argv, ['pH 6.4'])).file).toBeNull();
    const piped = await medlar(['read', '-'], {}, 'pH 6.4\nMagnesium 231\n', undefined, ['a']);
    expect(piped.stderr).not.toContain('a) ppm');
  });

  test('no orchard: a file of this year, and what to do next', async () => {
    const { run: said, file } = await sit(['read'], ['pH 6.4', 'done'], {}, 'soil/2026.txt');
    expect([said.code, file]).toEqual([0, 'pH 6.4\n']);
    expect(said.stderr).toContain('No orchard.yaml here yet. Make one with medlar new, and name soil/2026.txt under its "soil:".');
  });

  test('an orchard whose report is not there', async () => {
    const { run: said, file, files } = await sit(['read'], ['pH 6.4', 'P 164 ppm very high', 'done'], { 'orchard.yaml': GOOD });
    expect([said.code, file]).toEqual([0, 'pH 6.4\nP 164 ppm very high\n']);
    expect(files.sort()).toEqual(['orchard.yaml', 'soil', 'soil/2025.txt']);
    expect(said.stdout).toContain('very high (lab\'s word)');
  });

  test('a path that leads out of the orchard is never written', async () => {
    const { run: said, files } = await sit(['read'], ['pH 6.4', 'done'], { 'orchard.yaml': GOOD.replace('soil/2025.txt', '../medlar-out.txt') });
    expect(said.code).not.toBe(0);
    expect(files).toEqual(['orchard.yaml']);
    expect(existsSync(join(tmpdir(), 'medlar-out.txt'))).toBe(false);
  });

  test('a fault of orchard.yaml comes first', async () => {
    const { run: said, files } = await sit(['read'], ['pH 6.4'], { 'orchard.yaml': GOOD.replace('12 ft across', '12 ftt across') });
    expect([said.code, files]).toEqual([3, ['orchard.yaml']]);
  });

  test('the form of a new orchard is filled in', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'medlar-'));
    try {
      const io = (answers: string[]) => ({ cwd: folder, today: '2026-03-14' as const, out: () => undefined, err: () => undefined, stdin: () => Promise.resolve(''), ask: () => (answers.length > 0 ? Promise.resolve(answers.shift()!) : Promise.reject(new Error('closed'))) });
      await run(['new', '--where', 'Pennsylvania, US', '--tree', 'Apple: apple, planted 2019, top strip', '--zone', 'lower terrace', '--zone', 'top strip'], io([]));
      expect(await run(['read'], io(['taken: 3 Nov 2025', 'pH 6.4', 'P 42 ppm', 'Penn State', 'next', 'pH 5.9', 'done']))).toBe(0);
      const lines = readFileSync(join(folder, 'soil/report.txt'), 'utf8').split('\n').filter((l) => l !== '' && !/^#|:$/.test(l));
      expect(lines).toEqual(['Sample 1: lower terrace', 'taken: 3 Nov 2025', 'pH 6.4', 'P 42 ppm', 'Sample 2: top strip', 'pH 5.9', 'phosphorus method: Mehlich 3', 'lab: Penn State']);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test.each(['söil/mein Bericht (2).txt', './-x.txt', 'a\u001b[2Jb.txt', '日本.txt', "O'Brien's #1.txt"])('a file called %j', async (name) => {
    const { run: said, file } = await sit(['read', name], ['pH 6.4', 'done'], {}, name);
    expect([said.code, file]).toEqual([0, 'pH 6.4\n']);
  });
});

describe('what can go wrong', () => {
  test('nothing typed, nothing written', async () => {
    for (const answers of [[], [''], ['done'], ['thank you', 'undo', 'list', 'help', '']]) {
      const { run: said, files } = await sit(['read', 'soil/2025.txt'], answers);
      expect([answers, said.code, files]).toEqual([answers, 6, []]);
      expect(said.stderr).toContain('Nothing was typed, so nothing was written.');
    }
  });

  test('a name close to one that is there is asked about', async () => {
    const { run: said } = await sit(['read', 'soil/2052.txt'], [], { 'soil/2025.txt': 'pH 6.4\n' });
    expect(said.stderr).toContain('Is it soil/2025.txt that you mean?');
  });

  test('a file that cannot be written is said in plain words', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'medlar-'));
    try {
      let err = '';
      const answers = ['pH 6.4', 'P 42 ppm'];
      const code = await run(['read', 'report.txt'], { cwd: folder, today: '2026-03-14', out: () => undefined, err: (t) => { err += t; }, stdin: () => Promise.resolve(''), ask: () => {
        // Meanwhile a folder takes the file's place.
        mkdirSync(join(folder, 'report.txt'), { recursive: true });
        return Promise.resolve(answers.shift() ?? '');
      } });
      expect(code).toBe(5);
      expect(err).toMatch(/report\.txt.*folder/s);
      expect(err).not.toMatch(/EISDIR|Error/);
      expect(readdirSync(folder)).toEqual(['report.txt']);
      expect(answers).toEqual(['P 42 ppm']);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  // Root may write anywhere.
  test.skipIf(process.getuid?.() === 0)('a folder that may not be written is said before anything is typed', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'medlar-'));
    try {
      chmodSync(folder, 0o555);
      let err = '';
      let asked = 0;
      const code = await run(['read', 'soil/2025.txt'], { cwd: folder, today: '2026-03-14', out: () => undefined, err: (t) => { err += t; }, stdin: () => Promise.resolve(''), ask: () => { asked++; return Promise.resolve('pH 6.4'); } });
      expect([code, asked]).toEqual([5, 0]);
      expect(err).toContain('I cannot write soil/2025.txt: access is denied');
    } finally {
      chmodSync(folder, 0o755);
      rmSync(folder, { recursive: true, force: true });
    }
  });

  /** A terminal that a test looks into: `at` runs before each answer. */
  async function watched(answers: readonly string[], at: (n: number, folder: string) => void, waiting?: (n: number) => boolean): Promise<{ file: string; err: string }> {
    const folder = mkdtempSync(join(tmpdir(), 'medlar-'));
    try {
      let n = 0;
      let err = '';
      const ask = (): Promise<string> => {
        at(n, folder);
        return n < answers.length ? Promise.resolve(answers[n++]!) : Promise.reject(new Error('closed'));
      };
      await run(['read', 'r.txt'], { cwd: folder, today: '2026-03-14', out: () => undefined, err: (t) => { err += t; }, stdin: () => Promise.resolve(''), ask, ...(waiting ? { waiting: () => waiting(n) } : {}) });
      return { file: readFileSync(join(folder, 'r.txt'), 'utf8'), err };
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }

  test('each line is in the file before the next is asked for', async () => {
    const seen: (string | null)[] = [];
    await watched(['pH 6.4', 'K 180 ppm high', 'undo'], (_, folder) => { seen.push(existsSync(join(folder, 'r.txt')) ? readFileSync(join(folder, 'r.txt'), 'utf8') : null); });
    expect(seen).toEqual([null, 'pH 6.4\n', 'pH 6.4\nK 180 ppm high\n', 'pH 6.4\n'].map((t) => (t === null ? null : `${t}${UNFINISHED}\n`)));
  });

  test('what another program wrote meanwhile is gone on with', async () => {
    const { file, err } = await watched(['pH 6.4', 'K 180 ppm high', 'done'], (n, folder) => { if (n === 1) writeFileSync(join(folder, 'r.txt'), `pH 6.5\n${UNFINISHED}\n`); });
    expect(file).toBe('pH 6.5\nK 180 ppm high\n');
    expect(err).toContain('r.txt was changed outside');
  });

  test('lines pasted together are all taken, over empty lines; questions come after them', async () => {
    const pasted = ['pH 6.4', '', 'P 24 ppm', 'P 42 ppm', 'K 180 ppm high', 'Penn State', 'done'];
    const { file, err } = await watched(pasted, () => undefined, (n) => n < 5);
    expect(file).toBe('pH 6.4\nP 24 ppm\nK 180 ppm high\nlab: Penn State\nphosphorus method: Mehlich 3\npotassium method: Mehlich 3\n');
    expect(err).toContain('says "P 24 ppm" already, so "P 42 ppm" was not taken.');
  });
});
