// `medlar new`: what it writes loads, plans and checks; it writes over nothing. Codes and example lines: design.md 5 and 6.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadOrchard } from '../../src/orchard/load.ts';
import { FORM_FILE, NO_ANSWERS, orchardText, reportForm, splitTree } from '../../src/orchard/new-orchard.ts';
import { readReport } from '../../src/soil/read.ts';
import { held, inFolder, leftovers } from '../hostile/hold.ts';
import type { Run } from '../medlar.ts';
import { medlar } from '../medlar.ts';

const FLAGS = [
  'new', '--name', 'Chapel Bank', '--where', 'Ohio, US', '--bud-break', '12 April', '--first-frost', '12 October',
  '--tree', 'Gate apple: apple, semi-dwarf, planted 2019, 12 ft across, shoots 6 in 2025, lower terrace', '--tree', 'Blueberries: 4 blueberry, planted 2022, top strip', '--tree', 'Lemon: lemon, tub 15 gal',
  '--zone', 'lower terrace', '--zone', 'top strip', '--shed', 'Bone meal, 3-15-0, 5 lb, half left', '--store', 'Sulphate of ammonia, 21-0-0, 4 lb, $9',
];

/** Runs and gives back what was written. */
async function written(argv: readonly string[], answers?: readonly string[]): Promise<{ run: Run; yaml: string | null; form: string | null; files: string[] }> {
  let found = { yaml: null as string | null, form: null as string | null, files: [] as string[] };
  const run = await medlar(argv, {}, '', (folder) => {
    const text = (f: string): string | null => (existsSync(join(folder, f)) ? readFileSync(join(folder, f), 'utf8') : null);
    found = { yaml: text('orchard.yaml'), form: text(FORM_FILE), files: readdirSync(folder, { recursive: true }).map(String) };
  }, answers);
  held(run);
  return { run, ...found };
}

const errors = (text: string): string[] => loadOrchard(text, 'orchard.yaml').notices.filter((n) => n.severity === 'error').map((n) => n.code);

describe('from flags', () => {
  test('what was said stands in the file, and loads', async () => {
    const { run, yaml, form } = await written(FLAGS);
    expect(run.code).toBe(0);
    expect(run.stdout).toContain('Next: fill in soil/report.txt, then medlar read');
    const { orchard, notices } = loadOrchard(yaml!, 'orchard.yaml');
    expect(notices).toEqual([]);
    expect(orchard!.name).toBe('Chapel Bank');
    expect(orchard!.where).toMatchObject({ country: 'US', state: 'ohio' });
    expect([orchard!.budBreak, orchard!.firstFrost]).toEqual([{ month: 4, date: 12 }, { month: 10, date: 12 }]);
    expect(orchard!.trees.map((t) => [t.name, t.count, t.crop, t.zone ?? null])).toEqual([['Gate apple', 1, 'apple', 'lower terrace'], ['Blueberries', 4, 'blueberry', 'top strip'], ['Lemon', 1, 'citrus', null]]);
    expect(orchard!.zones.map((z) => [z.name, z.file, z.sample])).toEqual([['lower terrace', 'soil/report.txt', 'sample 1'], ['top strip', 'soil/report.txt', 'sample 2']]);
    expect([orchard!.shed.map((b) => b.printed), orchard!.store.map((b) => b.printed)]).toEqual([['3-15-0'], ['21-0-0']]);
    expect(form).toMatch(/^Sample 1: lower terrace$/m);
    expect(form).toMatch(/^Sample 2: top strip$/m);
  });

  test('with the blank form plan, check and read run', async () => {
    await inFolder({}, async (folder, run) => {
      expect((await run(...FLAGS)).code).toBe(0);
      for (const argv of [['plan'], ['check'], ['read'], ['sheet'], []]) {
        const said = await run(...argv);
        held(said);
        expect(said.code, argv.join(' ')).toBe(0);
      }
      const plan = await run('plan', '--json');
      expect(plan.json.notices.filter((n) => n.code === 'form-blank')).toHaveLength(1);
      expect(plan.json.result.trees[0].need.P2O5).toBe(0);
      expect(leftovers(folder)).toEqual([]);
    });
  });

  test('a filled form is read, each value in its sample', async () => {
    const filled: Readonly<Record<string, string>> = {
      taken: '3 Nov 2025', depth: '6 in', pH: '6.4', 'buffer pH': '6.9', 'Phosphorus (P)': '42 ppm optimum', 'Potassium (K)': '180 ppm (120-200)', 'Magnesium (Mg)': '231 ppm', 'Calcium (Ca)': '1500 ppm',
      'Organic matter': '4.1 %', CEC: '12 meq/100g', texture: 'sandy loam', 'phosphorus method': 'Mehlich 3', 'potassium method': 'unknown', 'buffer pH method': 'SMP',
    };
    await inFolder({}, async (folder, run) => {
      await run(...FLAGS);
      const path = join(folder, FORM_FILE);
      const names = [...readFileSync(path, 'utf8').matchAll(/^([^#\n]+):$/gm)].map((m) => m[1]!);
      // Every line of the form is filled in here: a new one has to be given its value.
      expect([...new Set(names)].sort()).toEqual(Object.keys(filled).sort());
      writeFileSync(path, readFileSync(path, 'utf8').replace(/^([^#\n]+):$/gm, (_, name: string) => `${name}: ${filled[name]!}`));
      const { json, code } = await run('read', '--json');
      expect(code).toBe(0);
      expect(json.notices).toEqual([]);
      expect(json.result.samples.map((s: { name: string }) => s.name)).toEqual(['lower terrace', 'top strip']);
      for (const sample of json.result.samples) {
        expect(sample).toMatchObject({ taken: '2025-11-03', depth: '6 in' });
        expect(sample.readings.map((r: { item: string; value: number | null; unit: string | null }) => [r.item, r.value, r.unit])).toEqual([
          ['ph', 6.4, 'pH'], ['buffer-ph', 6.9, 'pH'], ['phosphorus', 42, 'ppm'], ['potassium', 180, 'ppm'], ['magnesium', 231, 'ppm'], ['calcium', 1500, 'ppm'], ['organic-matter', 4.1, '%'], ['cec', 12, 'meq/100g'], ['texture', null, null],
        ]);
        expect(sample.readings[1].method).toBe('smp');
        expect(sample.readings[2]).toMatchObject({ method: 'mehlich-3', lab: { rating: 'optimum' } });
        expect(sample.readings[3].lab.range).toEqual([120, 200]);
      }
      expect((await run('plan')).code).toBe(0);
    });
  });

  test('a form filled in by half, or with blanks behind the colons, stops nothing', async () => {
    await inFolder({}, async (folder, run) => {
      await run(...FLAGS);
      const path = join(folder, FORM_FILE);
      const blank = readFileSync(path, 'utf8');
      writeFileSync(path, blank.replace(/:$/gm, ':  '));
      expect((await run('plan')).code).toBe(0);
      writeFileSync(path, blank.replace(/^pH:$/m, 'pH: 6.4'));
      const { json, code } = await run('read', '--json');
      expect(code).toBe(0);
      expect(json.result.samples.map((s: { readings: unknown[] }) => s.readings.length)).toEqual([1, 0]);
    });
  });

  test('one zone, or none: one sample, and every tree in the ground stands in it', async () => {
    for (const [zone, name] of [[[], 'garden'], [['--zone', 'Back yard'], 'Back yard']] as const) {
      const { yaml, form } = await written(['new', '--where', 'Ohio, US', '--tree', 'Apple: apple', '--tree', 'Lemon: lemon, tub 60 L', ...zone]);
      const { orchard } = loadOrchard(yaml!, 'orchard.yaml');
      expect(orchard!.zones.map((z) => [z.name, z.sample])).toEqual([[name, null]]);
      expect(orchard!.trees.map((t) => t.zone ?? null)).toEqual([name, null]);
      expect(form!.match(/^Sample \d/gm)).toHaveLength(1);
    }
  });

  test('what is not known stands as a comment with an example', async () => {
    const { run, yaml } = await written(['new', '--tree', 'Apple: apple', '--where', 'don\'t know', '--bud-break', '?']);
    expect(run.code).toBe(0);
    for (const key of ['orchard', 'where', 'bud-break', 'first-frost', 'shed', 'store']) expect(yaml).toMatch(new RegExp(`^# ${key}:`, 'm'));
    expect(loadOrchard(yaml!, 'orchard.yaml').notices).toEqual([]);
    // The commented examples hold too, once the marks are taken away.
    const all = yaml!.replace(/^# ((?:orchard|where|bud-break|first-frost|shed|store):.*|  - .*)$/gm, '$1');
    expect(loadOrchard(all, 'orchard.yaml')).toMatchObject({ notices: [], orchard: { budBreak: { month: 4, date: 12 }, shed: [{ printed: '3-15-0' }] } });
  });

  test('names that YAML would misread come back as they were', async () => {
    const names = ['Plum #2', 'yes', 'No', 'null', '~', '- dash', 'Tree: the big one', '"quoted"', "O'Brien", '*star', '&and', '1.5', '0x1F', '{x}', '[x]', '# first', '@home', '`tick`', '2019-01-01', '日本', '<<', '=', '?', 'a\\b', '12 a'];
    const { run, yaml } = await written(['new', ...names.flatMap((n) => ['--tree', `${n}: apple`])]);
    expect(run.stderr).toBe('');
    // splitTree takes a pair of quotation marks for YAML's own.
    expect(loadOrchard(yaml!, 'orchard.yaml').orchard!.trees.map((t) => t.name)).toEqual(names.map((n) => (n === '"quoted"' ? 'quoted' : n)));
  });

  test('any name is refused or comes back', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }), fc.string({ minLength: 1, maxLength: 30 }), (name, zone) => {
      const tree = splitTree(`${name}: apple`);
      fc.pre(tree !== null);
      const o = { ...NO_ANSWERS, name: zone, lab: zone, trees: [tree] };
      const { orchard, notices } = loadOrchard(orchardText(o), 'orchard.yaml');
      const found = notices.filter((n) => n.severity === 'error').map((n) => n.code);
      if (found.length > 0) expect(found.every((c) => c === 'name-of-digits' || c === 'name-control')).toBe(true);
      else {
        expect(orchard!.trees[0]!.name).toBe(tree.name);
        expect(orchard!.name).toBe(zone.trim());
      }
      const { samples, notices: told } = readReport(reportForm({ ...o, zones: [zone, `pH 5 ${name}`, 'sample 1'] }), 'f');
      expect(told.map((n) => n.code)).toEqual(['form-blank']);
      expect(samples.map((s) => s.readings.length)).toEqual([0, 0, 0]);
      // The file speaks of them by number, so no name may be another's number.
      expect([samples[0]!.name, samples[1]!.name]).not.toContain('sample 3');
    }));
  });

  test('all mistakes at once, nothing written', async () => {
    const { run, files } = await written([
      'new', '--where', 'Ohoi', '--bud-break', '31 April', '--tree', 'Gate apple: aple', '--tree', '12: apple', '--tree', 'no colon', '--tree', 'Pear: pear, 12 ft acros', '--tree', 'PEAR: pear', '--tree', 'Late: plum, planted 2099',
      '--zone', 'apple', '--store', 'Mystery bag', '--json',
    ]);
    expect(run.code).toBe(3);
    expect(run.json.result).toBeNull();
    expect(files).toEqual([]);
    const codes = run.json.notices.map((n) => n.code);
    for (const code of ['where-unknown', 'date-wrong', 'item-unknown', 'name-of-digits', 'tree-nameless', 'name-twice', 'zone-reserved', 'grade-missing']) expect(codes).toContain(code);
    expect(run.json.notices.find((n) => n.code === 'item-unknown')!.text).toContain('apple');
    const late = await written(['new', '--tree', 'Late: plum, planted 2099']);
    expect([late.run.code, late.files]).toEqual([3, []]);
  });

  test('without a terminal and without a tree: exit 6, with a line of flags that works', async () => {
    for (const argv of [['new'], ['new', '--name', 'x'], ['new', '--json']]) {
      const { run, files } = await written(argv);
      expect(run.code).toBe(6);
      expect(files).toEqual([]);
      const said = argv.includes('--json') ? run.json.notices[0]!.text : run.stderr;
      const line = /medlar (new .*)/.exec(said)![1]!;
      const flags = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((m) => m[1] ?? m[2]!);
      expect((await medlar(flags)).code).toBe(0);
    }
    // Mistakes win over questions (design 6).
    expect((await medlar(['new', '--bud-break', 'soon'])).code).toBe(3);
  });

  test('writes over nothing: exit 5, the file as it was', async () => {
    for (const file of ['orchard.yaml', FORM_FILE]) {
      await inFolder({ [file]: 'mine\n' }, async (folder, run) => {
        const said = await run(...FLAGS, '--json');
        expect(said.code).toBe(5);
        expect(said.json.notices.map((n) => n.code)).toEqual(['file-edited']);
        expect(said.json.notices[0]!.text).toContain(file);
        expect(readFileSync(join(folder, file), 'utf8')).toBe('mine\n');
        expect(readdirSync(folder, { recursive: true }).map(String).filter((f) => /\.(?:yaml|txt|tmp)$/.test(f))).toEqual([file]);
      });
    }
  });

  test('makes the folder that --folder names; a file in its way is exit 5', async () => {
    await inFolder({ plain: 'x' }, async (folder, run) => {
      const made = await run(...FLAGS, '--folder', 'a/b', '--json');
      expect(made.code).toBe(0);
      expect(made.json.result.files).toEqual(['a/b/orchard.yaml', 'a/b/soil/report.txt']);
      expect(existsSync(join(folder, 'a/b/orchard.yaml'))).toBe(true);
      expect((await run('check', '--folder', 'a/b')).code).toBe(0);
      const blocked = await run(...FLAGS, '--folder', 'plain');
      held(blocked);
      expect(blocked.code).toBe(5);
      expect(leftovers(folder)).toEqual([]);
    });
  });

  test('a form that cannot be written leaves no orchard.yaml behind, and the other way round', async () => {
    await inFolder({ soil: 'in the way' }, async (folder, run) => {
      expect((await run(...FLAGS)).code).toBe(5);
      expect(readdirSync(folder)).toEqual(['soil']);
    });
  });
});

describe('at a terminal', () => {
  const DONT = 'don\'t know';

  test('answers become the file; a wrong tree line is told and asked again', async () => {
    const { run, yaml } = await written(['new'], [
      'Chapel Bank', 'Ohio', 'Ohio, US', 'last frost 3 May', 'about 12 October', 'Penn State', 'lower terrace, top strip',
      'Gate apple: aple, planted 2019, lower terrace', 'Gate apple: apple, planted 2019, lower terrace', 'just words', 'gate APPLE: pear', 'Plum #2: plum, planted 2024, top strip', '',
      'Bone meal, 3-15-0, 5 lb, half left', '', 'no grade at all', 'Sulfate of ammonia, 21-0-0, 4 lb, $9', '',
    ]);
    expect(run.code).toBe(0);
    expect(run.stderr).toContain('Did you mean "apple"');
    expect(run.stderr).toContain('just words');
    const { orchard, notices } = loadOrchard(yaml!, 'orchard.yaml');
    expect(notices).toEqual([]);
    expect(orchard).toMatchObject({ name: 'Chapel Bank', budBreak: null, lastFrost: { month: 5, date: 3 }, firstFrost: { month: 10, date: 12 } });
    expect(orchard!.trees.map((t) => [t.name, t.word, t.zone])).toEqual([['Gate apple', 'apple', 'lower terrace'], ['Plum #2', 'plum', 'top strip']]);
    expect([orchard!.shed.length, orchard!.store.length]).toEqual([1, 1]);
    expect(yaml).toContain('Penn State');
  });

  // Penn State extracts by Mehlich 3 (Agronomy Guide, soil testing procedures; tests/published/penn-agronomy-guide).
  test.each([['Penn State', []], ['my county office', ['method-missing']], ['pH 6.4', ['method-missing']]] as const)('the lab "%s", told once, is asked for again only where it tells nothing', (lab, asked) => {
    const form = reportForm({ ...NO_ANSWERS, lab });
    const { samples, questions } = readReport(form.replace('Phosphorus (P):', '$& 42 ppm'), FORM_FILE);
    expect(samples.flatMap((s) => s.readings).map((r) => [r.item, r.value])).toEqual([['phosphorus', 42]]);
    expect(questions.map((q) => q.code)).toEqual(asked);
  });

  test.each(['', DONT, 'Don’t know', 'unknown', '?'])('%j to all but the tree takes the cautious road', async (unknown) => {
    const { run, yaml } = await written(['new'], [unknown, unknown, unknown, unknown, unknown, 'Apple: apple', unknown, unknown, unknown]);
    expect(run.code).toBe(0);
    expect(errors(yaml!)).toEqual([]);
    const plan = await medlar(['plan'], { 'orchard.yaml': yaml!, [FORM_FILE]: reportForm(NO_ANSWERS) });
    expect(plan.code).toBe(0);
  });

  test('every question says that it may stay open and what that changes', async () => {
    const { run } = await written(['new'], [DONT, DONT, DONT, DONT, 'a lab', DONT, DONT, 'Apple: apple', DONT, DONT, DONT]);
    expect(run.code).toBe(0);
    expect(run.stderr).toContain('don\'t know');
    expect(run.stderr.match(/[Ww]ithout/g)!.length).toBeGreaterThanOrEqual(8);
  });

  test('no tree at all, or a closed terminal: exit 6, nothing written', async () => {
    for (const answers of [[], ['Chapel Bank'], [DONT, DONT, DONT, DONT, DONT, DONT, DONT], ['x', '', '', '', '', 'Apple: apple']]) {
      const { run, files } = await written(['new'], answers);
      expect(run.code).toBe(6);
      expect(files).toEqual([]);
      expect(run.stderr).toContain('Nothing was written');
    }
  });

  test('flags answer their own questions; with a tree nothing is asked; JSON never asks', async () => {
    const some = await written(['new', '--name', 'Chapel Bank', '--where', 'Ohio, US', '--bud-break', '12 April', '--first-frost', '12 October'], ['', 'Apple: apple', '', '', '']);
    expect(some.run.code).toBe(0);
    expect(some.yaml).toContain('bud-break: 12 April');
    const all = await written(FLAGS, []);
    expect([all.run.code, all.run.stderr]).toEqual([0, '']);
    expect((await written(['new', '--json'], ['x'])).run.code).toBe(6);
  });

  test('asks nothing where an orchard stands already', async () => {
    const run = await medlar(['new'], { 'orchard.yaml': 'mine\n' }, '', undefined, ['Chapel Bank']);
    expect(run.code).toBe(5);
    expect(run.stderr).not.toContain('?');
  });
});
