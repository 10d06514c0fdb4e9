// Wrong usage and the ways around it. Codes and wording rules: design.md 6.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { GOOD, held, inFolder, REPORT } from '../hostile/hold.ts';

const files = { 'orchard.yaml': GOOD, 'soil/2025.txt': REPORT };

describe('exit 2, with a hint', () => {
  test.each([
    [['paln'], 'plan'], [['raed'], 'read'], [['shet'], 'sheet'], [['plan', '--jsno'], '--json'], [['plan', '--todya', '2026-03-14'], '--today'], [['schema', 'pln'], 'plan'], [['plan', 'Gate aple'], 'Gate apple'],
    [['why', 'Gate aple', 'N'], 'Gate apple'], [['sheet', 'gate appel'], 'Gate apple'], [['sheet', '--as', 'htlm'], 'html'], [['sheet', '--paper', 'a5'], 'a4'], [['why', 'Gate apple', 'bogus'], 'N, P2O5, K2O'],
    [['why', 'f99999'], 'f99999'], [['why'], 'tree'], [['plan', '--folder'], '--folder'],
  ] as const)('%j', async (argv, hint) => {
    const run = await medlar(argv, files);
    held(run);
    expect(run.code).toBe(2);
    expect(run.stdout).toBe('');
    expect(run.stderr).toContain(hint);
  });

  test.each(['2026-02-29', '2026-13-01', '2026-3-14', 'tomorrow', '14.3.2026', '', '20260314', '2026-03-14T00:00:00Z', '-1', '２０２６-03-14'])('--today %j', async (day) => {
    const run = await medlar(['plan', '--today', day], files);
    held(run);
    expect(run.code).toBe(2);
    expect(run.stderr).toContain('2026-03-14');
    const json = await medlar(['plan', '--today', day, '--json'], files);
    expect(json.code).toBe(2);
    expect(json.json).toMatchObject({ ok: false, command: 'plan', result: null });
  });

  test('a leap day that exists is taken', async () => {
    expect((await medlar(['plan', '--today', '2028-02-29'], files)).code).toBe(0);
  });

  test('wrong usage with --json is one envelope on stdout', async () => {
    for (const argv of [['paln', '--json'], ['plan', '--jsno', '--json'], ['why', '--json'], ['plan', 'Nobody', '--json'], ['why', 'Gate apple', 'bogus', '--json'], ['schema', 'bogus', '--json']]) {
      const run = await medlar(argv, files);
      expect(run.code, argv.join(' ')).toBe(2);
      expect(run.json, argv.join(' ')).toMatchObject({ schema: 1, ok: false, result: null });
      expect(run.json.notices.some((n) => n.severity === 'error')).toBe(true);
    }
  });

  test('more words than a command takes', async () => {
    for (const argv of [['plan', 'Gate apple', 'Wall plum'], ['check', 'x'], ['read', 'soil/2025.txt', 'y']]) {
      const run = await medlar(argv, files);
      held(run);
      // Design 6: 2 is wrong usage; a word left unheard would be a silent surprise.
      expect(run.code, argv.join(' ')).toBe(2);
    }
  });
});

describe('fine', () => {
  test('read - takes the report from stdin', async () => {
    const run = await medlar(['read', '-', '--json'], {}, 'pH 6.4\nPhosphorus 42 ppm Mehlich 3\n');
    expect(run.code).toBe(0);
    expect(run.json.result.samples[0].readings.map((r: { item: string }) => r.item)).toEqual(['ph', 'phosphorus']);
    // Questions alone exit 0 (design 7): a phosphorus of no method asks.
    const asks = await medlar(['read', '-', '--json'], {}, 'Phosphorus 42 ppm\n');
    expect(asks.code).toBe(0);
    expect(asks.json.questions.map((q) => q.code)).toContain('method-missing');
    for (const q of asks.json.questions) expect(q.choices).toContain('don\'t know');
  });

  test('bare medlar: what is next in a folder, a short help elsewhere', async () => {
    const here = await medlar([], files);
    expect(here.code).toBe(0);
    expect(here.stdout).toContain('Test Bank');
    expect(here.stdout).toContain('29 March');
    const elsewhere = await medlar([], {});
    expect(elsewhere.code).toBe(0);
    expect(elsewhere.stdout).toContain('Usage: medlar');
    expect(elsewhere.stdout.split('\n').length).toBeLessThan(45);
    const json = await medlar(['--json'], {});
    expect(json.json).toMatchObject({ ok: true, command: 'medlar', result: null });
  });

  test('--help and --version', async () => {
    for (const argv of [['--help'], ['plan', '--help'], ['-h']]) {
      const run = await medlar(argv);
      expect(run.code).toBe(0);
      expect(run.stdout).toContain('Usage: medlar');
      expect(run.stderr).toBe('');
    }
    expect((await medlar(['--version'])).stdout).toMatch(/^\d+\.\d+\.\d+/);
  });

  test('--folder names the orchard from anywhere, before or after the command', async () => {
    await inFolder({ 'far/orchard.yaml': GOOD, 'far/soil/2025.txt': REPORT }, async (folder, run) => {
      for (const argv of [['plan', '--folder', 'far'], ['--folder', 'far', 'plan'], ['plan', '--folder', `${folder}/far`]]) {
        const said = await run(...argv);
        expect(said.code, argv.join(' ')).toBe(0);
        expect(said.stdout).toContain('Gate apple');
      }
      expect((await run('plan', '--folder', 'nowhere')).code).toBe(5);
      expect((await run('--folder', 'nowhere', '--json')).json).toBeTruthy();
    });
  });

  test('--json and --today before the command count too', async () => {
    const run = await medlar(['--json', '--today', '2026-08-01', 'plan'], files);
    expect(run.code).toBe(0);
    expect(run.json).toMatchObject({ command: 'plan', result: { season: 2027 } });
  });

  test('why speaks of the tree, its nutrient, its date', async () => {
    const n = await medlar(['why', 'Gate apple', 'N'], files);
    // 12 ft across at 7 g N a square metre: 73.6 g, 2.6 oz (deciding.md, worked by hand).
    expect(n.code).toBe(0);
    expect(n.stdout).toContain('2.6 oz N');
    expect(n.stdout).toContain('https://');
    const date = await medlar(['why', 'Gate apple', 'date'], files);
    expect(date.stdout).toContain('20 July');
    expect((await medlar(['why', 'f3'], files)).code).toBe(0);
    expect((await medlar(['why', 'gate APPLE'], files)).code).toBe(0);
  });

  test('schema prints JSON Schema and the closed lists', async () => {
    for (const argv of [['schema'], ...['plan', 'read', 'why', 'check', 'sheet', 'medlar', 'orchard', 'view'].map((n) => ['schema', n])]) {
      const run = await medlar(argv);
      expect(run.code, argv.join(' ')).toBe(0);
      const schema = JSON.parse(run.stdout);
      for (const list of ['crops', 'items', 'methods', 'units', 'notices', 'questions', 'steps', 'ratings', 'marks']) expect(schema.lists[list].length, list).toBeGreaterThan(2);
      if (argv.length === 2) expect(schema.type).toBe('object');
    }
    const { lists } = JSON.parse((await medlar(['schema'])).stdout);
    // Closed lists of design 7.
    expect(lists.items).toEqual(expect.arrayContaining(['ph', 'ph-salt', 'buffer-ph', 'saturation-na', 'advice', 'lime-buffer-capacity']));
    expect(lists.ratings).toEqual(['very-low', 'low', 'medium', 'optimum', 'high', 'very-high']);
  });
});

test('every code and unit that an answer uses stands in the closed lists', async () => {
  const { lists } = JSON.parse((await medlar(['schema'])).stdout);
  const { json } = await medlar(['plan', '--json'], { 'orchard.yaml': GOOD.replace('shoots 6 in 2025, ', '').replace('21-0-0', '10-10-10').replace('12 ft across', 'trunk 9 in'), 'soil/2025.txt': 'Phosphorus 164\nPotassium 60 ppm\nOrganic matter 7 %\n' });
  for (const n of json.notices) expect(lists.notices).toContain(n.code);
  for (const q of json.questions) expect(lists.questions).toContain(q.code);
  for (const f of Object.values(json.figures)) {
    expect(lists.steps).toContain(f.step);
    expect(lists.marks).toContain(f.cite.mark);
  }
});

test('no colour, ever: no escape code with or without NO_COLOR or FORCE_COLOR', async () => {
  const before = { NO_COLOR: process.env.NO_COLOR, FORCE_COLOR: process.env.FORCE_COLOR };
  try {
    for (const set of [{ NO_COLOR: '1' }, { FORCE_COLOR: '3' }, {}]) {
      delete process.env.NO_COLOR;
      delete process.env.FORCE_COLOR;
      Object.assign(process.env, set);
      for (const argv of [['plan'], ['read'], ['check'], [], ['--help'], ['why', 'Gate apple'], ['paln'], ['sheet', '--as', 'text']]) {
        const run = await medlar(argv, files);
        expect(run.stdout + run.stderr).not.toContain('\u001b');
      }
    }
  } finally {
    for (const [key, value] of Object.entries(before)) if (value === undefined) delete process.env[key]; else process.env[key] = value;
  }
});
