// Every command's answer against its published shape; figures and reasons that lead somewhere. Codes: design.md 6 and 7.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ANSWERS } from '../../src/json/schemas.ts';
import type { Run } from '../medlar.ts';
import { medlar } from '../medlar.ts';

const read = (path: string): string => readFileSync(new URL(`../../samples/${path}`, import.meta.url), 'utf8');
const ORCHARDS = {
  'chapel-bank': { 'orchard.yaml': read('chapel-bank/orchard.yaml'), 'soil/2025.txt': read('chapel-bank/soil/2025.txt') },
  'two-gullies': { 'orchard.yaml': read('two-gullies/orchard.yaml'), 'soil/results.txt': read('two-gullies/soil/results.txt') },
} as const;
const REPORTS = { 'chapel-bank': 'soil/2025.txt', 'two-gullies': 'soil/results.txt' } as const;
const TREES = { 'chapel-bank': 'Wall plum', 'two-gullies': 'Row pears' } as const;

/** Ids in every field that ends in Why, however deep. */
function reasons(value: unknown, why = false): string[] {
  if (typeof value === 'string') return why ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((v) => reasons(v, why));
  if (value && typeof value === 'object') return Object.entries(value).flatMap(([key, v]) => reasons(v, why || key.endsWith('Why') || key === 'ids'));
  return [];
}

function sound(command: keyof typeof ANSWERS, run: Run): void {
  const checked = ANSWERS[command].safeParse(JSON.parse(run.stdout));
  expect(checked.success ? [] : checked.error.issues).toEqual([]);
  expect(run.stdout.endsWith('}\n')).toBe(true);
  expect(run.stdout.trim().split('\n')).toHaveLength(1);
  expect(run.json.command).toBe(command);
  expect(run.json.ok).toBe(run.code === 0);
  const ids = Object.keys(run.json.figures);
  for (const id of reasons(run.json.result)) expect(ids).toContain(id);
  for (const figure of Object.values(run.json.figures)) {
    for (const id of figure.from) expect(ids).toContain(id);
    expect(figure.text).not.toBe('');
    expect(Number.isFinite(figure.value)).toBe(true);
  }
}

describe.each(['chapel-bank', 'two-gullies'] as const)('%s', (name) => {
  const files = ORCHARDS[name];
  const tree = TREES[name];
  const commands: [keyof typeof ANSWERS, string[]][] = [
    ['plan', ['plan']], ['plan', ['plan', tree]], ['plan', ['plan', tree.toUpperCase()]], ['read', ['read']], ['read', ['read', REPORTS[name]]], ['sheet', ['sheet']], ['sheet', ['sheet', tree, '--as', 'text']],
    ['why', ['why', tree]], ['why', ['why', tree, 'N']], ['why', ['why', tree, 'p2o5']], ['why', ['why', tree, 'K2O']], ['why', ['why', tree, 'dose']], ['why', ['why', tree, 'date']], ['why', ['why', 'f3']], ['check', ['check']], ['medlar', []], ['sources', ['sources']], ['sources', ['sources', 'lime', '--coverage']], ['new', ['new', '--folder', 'another', '--tree', 'Apple: apple']],
  ];
  test.each(commands)('%s: %j', async (command, argv) => {
    const run = await medlar([...argv, '--json'], files);
    expect(run.code).toBe(0);
    expect(run.stderr).toBe('');
    sound(command, run);
  });

  test('a value beside its reason is the figure\'s own', async () => {
    const { json } = await medlar(['plan', '--json'], files);
    const at = (id: string): number => json.figures[id]!.value;
    for (const t of json.result.trees) {
      for (const n of ['N', 'P2O5', 'K2O'] as const) {
        expect(at(t.needWhy[n])).toBe(t.need[n]);
        expect(json.figures[t.needWhy[n]]!.of).toBe(n);
        expect([at(t.spanWhy[n][0]), at(t.spanWhy[n][1])]).toEqual(t.span[n]);
        expect(t.span[n][0]).toBeLessThanOrEqual(t.span[n][1]);
      }
      for (const feed of t.feeds) {
        expect(at(feed.gExactWhy)).toBe(feed.gExact);
        expect(json.figures[feed.fromWhy]!.unit).toBe('day');
        if (feed.ring) expect(at(feed.ringWhy.m2)).toBe(feed.ring.m2);
      }
      if (t.if) expect(at(t.ifWhy)).toBe(t.if.belowM);
    }
  });

  test('supplied, over and short follow from doses and grades', async () => {
    // By definition: supplied - need is over where positive, short where negative.
    const { json } = await medlar(['plan', '--json'], files);
    for (const t of json.result.trees) {
      for (const n of ['N', 'P2O5', 'K2O'] as const) {
        expect(t.over[n] - t.short[n]).toBeCloseTo(t.supplied[n] - t.need[n], 6);
        expect(Math.min(t.over[n], t.short[n])).toBe(0);
      }
    }
  });

  test('days hold every dose once, in walking order', async () => {
    const { json } = await medlar(['plan', '--json'], files);
    const walk = json.result.trees.map((t: { name: string }) => t.name);
    const onDays = json.result.days.flatMap((d: { doses: { tree: string; bag: string; g: number }[] }) => d.doses.map((x) => `${x.tree} ${x.bag} ${x.g}`)).sort();
    const planned = json.result.trees.flatMap((t: { name: string; feeds: { bag: string; g: number }[] }) => t.feeds.map((f) => `${t.name} ${f.bag} ${f.g}`)).sort();
    expect(onDays).toEqual(planned);
    for (const day of json.result.days) {
      const order = day.doses.map((d: { tree: string }) => walk.indexOf(d.tree));
      expect(order).toEqual([...order].sort((a, b) => a - b));
      expect(day.from <= day.until).toBe(true);
    }
  });

  test('a sheet\'s text form says what its file holds', async () => {
    let written = '';
    const run = await medlar(['sheet', '--as', 'text'], files, '', (folder) => { written = readFileSync(`${folder}/sheet.txt`, 'utf8'); });
    expect(written.startsWith(run.stdout.trimEnd())).toBe(true);
    for (const line of run.stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(78);
  });
});

test('failures keep the shape: result null, ok false', async () => {
  for (const [command, argv, files, code] of [
    ['plan', ['plan'], {}, 5], ['new', ['new'], {}, 6], ['new', ['new', '--tree', 'Apple: apple'], ORCHARDS['chapel-bank'], 5], ['read', ['read', 'none.txt'], {}, 5], ['check', ['check'], { 'orchard.yaml': 'trees: 3' }, 3],
    ['why', ['why', 'x'], ORCHARDS['chapel-bank'], 2], ['sheet', ['sheet', 'x'], ORCHARDS['chapel-bank'], 2], ['medlar', [], { 'orchard.yaml': 'trees:\n' }, 3],
  ] as const) {
    const run = await medlar([...argv, '--json'], files);
    expect(run.code).toBe(code);
    sound(command, run);
    if (command !== 'check') expect(run.json.result).toBeNull();
  }
});

describe('weigh, blend and shop', () => {
  const here = ORCHARDS['chapel-bank'];
  test.each([
    ['weigh', ['weigh', '0.5 lb N, 0 P2O5', '21-0-0', '46-0-0, 10 lb, $20'], {}, 0], ['weigh', ['weigh', '1 lb N, 1 lb K2O', '10-10-10'], {}, 0], ['weigh', ['weigh', '1 lb P2O5', '21-0-0'], {}, 0], ['weigh', ['weigh', '1 lb N', 'sulph'], here, 0], ['weigh', ['weigh', '1 lb X', '21-0-0'], {}, 3],
    ['blend', ['blend', '2x46-0-0', '0-0-60'], {}, 0], ['blend', ['blend', '--balanced', '46-0-0', '0-46-0', '0-0-60'], {}, 0], ['blend', ['blend', '--balanced', '46-0-0'], {}, 4], ['blend', ['blend', '0-0-0'], {}, 3],
    ['shop', ['shop'], here, 0], ['shop', ['shop', '24-8-16, 5 lb, $14', '21-0-0'], here, 0], ['shop', ['shop', '--need', '1 lb N, 0 P2O5', '21-0-0, 4 lb, $9', '10-10-10', 'Weed and feed, 21-0-0'], {}, 0], ['shop', ['shop'], {}, 5],
  ] as const)('%s: %j', async (command, argv, files, code) => {
    const run = await medlar([...argv, '--json'], files);
    expect(run.code).toBe(code);
    sound(command, run);
    if (code !== 0) expect(run.json.result).toBeNull();
  });
});

test('an id of the plan and of why is the same figure', async () => {
  const plan = (await medlar(['plan', '--json'], ORCHARDS['chapel-bank'])).json;
  const id = plan.result.trees[0].needWhy.N as string;
  const why = (await medlar(['why', id, '--json'], ORCHARDS['chapel-bank'])).json;
  expect(why.result.ids).toEqual([id]);
  expect(why.figures[id]).toEqual(plan.figures[id]);
  const one = (await medlar(['why', 'Gate apple', 'N', '--json'], ORCHARDS['chapel-bank'])).json;
  expect(one.result.ids).toContain(id);
});
