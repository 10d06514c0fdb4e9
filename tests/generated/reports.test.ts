/**
 * 2,000 made reports, each reading of which is known. None may be misread in silence; at least 97 % are read outright, the rest asked.
 * To search further: MEDLAR_SEED=7 MEDLAR_RUNS=5000 npx vitest run --config tests/vitest.config.ts tests/generated
 * To see the commonest faults, each with a line: MEDLAR_SHOW=1 (MEDLAR_SHOW=40 shows 40 kinds).
 */
import { expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import { classify } from './classify.ts';
import type { Verdict } from './classify.ts';
import { makeReport } from './report-maker.ts';

const FIRST = Number(process.env.MEDLAR_SEED ?? 20260314) % 1_000_000;
const RUNS = Number(process.env.MEDLAR_RUNS ?? 2000);
const SHOW = Number(process.env.MEDLAR_SHOW ?? 0);
type Count = Record<Verdict['outcome'], number>;
const count = (): Count => ({ right: 0, part: 0, asked: 0, silent: 0 });
type Kind = { times: number; where: Map<string, number>; examples: string[] };

test('made reports', () => {
  const all = count();
  const cells = new Map<string, Count>();
  const languages = new Map<string, Count>();
  const kinds: Record<'part' | 'asked' | 'silent', Map<string, Kind>> = { part: new Map(), asked: new Map(), silent: new Map() };
  const slips = count();
  const words = new Map<string, Count>();
  let time = 0;
  for (let seed = FIRST; seed < FIRST + RUNS; seed += 1) {
    const report = makeReport(seed);
    const before = performance.now();
    let read: ReturnType<typeof readReport> | null = null;
    let thrown = '';
    try { read = readReport(report.text, 'r.txt'); } catch (error) { thrown = String(error); }
    time += performance.now() - before;
    const lines = report.text.split(/\r\n|\n/);
    for (const v of read ? classify(report, read) : report.truths.map((t): Verdict => ({ outcome: 'silent', kind: `an exception: ${thrown}`, line: t.lines[0]!, item: t.item, detail: '', slip: t.slip, truth: t }))) {
      // A known slip of the pen may be asked about, so it counts towards silence alone.
      if (v.slip) slips[v.outcome] += 1;
      for (const c of [...(v.slip && v.outcome !== 'silent' ? [] : [all]), cells.get(`${report.layout} | ${report.language}`) ?? count(), languages.get(report.language) ?? count()].map((c, i, list) => [c, list.length - i] as const)) {
        c[0][v.outcome] += 1;
        if (c[1] === 2) cells.set(`${report.layout} | ${report.language}`, c[0]);
        if (c[1] === 1) languages.set(report.language, c[0]);
      }
      for (const word of v.slip ? [] : [...(v.truth?.printed ?? []), ...(v.truth ? report.noise.map((n) => `noise ${n}`) : [])]) {
        const w = words.get(word) ?? count();
        w[v.outcome] += 1;
        words.set(word, w);
      }
      if (v.outcome === 'right' || (v.slip && v.outcome !== 'silent')) continue;
      const key = `${v.kind}${/^(?:lost without a word|asked: unread)$/.test(v.kind) ? ` (${report.layout})` : ''}`;
      const kind = kinds[v.outcome].get(key) ?? { times: 0, where: new Map<string, number>(), examples: [] };
      kind.times += 1;
      kind.where.set(`${report.layout}/${report.language}`, (kind.where.get(`${report.layout}/${report.language}`) ?? 0) + 1);
      if (kind.examples.length < 3 && !kind.examples.some((e) => e.includes(`seed ${seed} `))) kind.examples.push(`    seed ${seed} ${report.layout} ${report.language}, line ${v.line} ${v.item}${v.slip ? ' (slip)' : ''}: ${JSON.stringify(lines[v.line - 1])}${/alone|next|tabs|CSV|Markdown|aligned/.test(report.layout) ? `\n      under ${JSON.stringify(lines[Math.max(0, v.line - 2)])}` : ''}${v.detail === '' ? '' : `\n      read ${v.detail}`}`);
      kinds[v.outcome].set(key, kind);
    }
  }
  const total = all.right + all.part + all.asked + all.silent;
  const share = (n: number): string => `${((100 * n) / total).toFixed(2)} %`;
  const table = (counts: Map<string, Count>): string => [...counts].sort((a, b) => b[1].silent - a[1].silent || (b[1].part + b[1].asked) - (a[1].part + a[1].asked)).map(([name, c]) => `  ${name.padEnd(36)} right ${String(c.right).padStart(5)}  in part ${String(c.part).padStart(4)}  asked ${String(c.asked).padStart(4)}  silent ${String(c.silent).padStart(4)}`).join('\n');
  const summary = `${RUNS} made reports from seed ${FIRST}, ${total} readings: right ${all.right} (${share(all.right)}), in part ${all.part} (${share(all.part)}), asked ${all.asked} (${share(all.asked)}), misread in silence ${all.silent} (${share(all.silent)}); slips of the pen: right ${slips.right}, in part ${slips.part}, asked ${slips.asked}, silent ${slips.silent}; ${(time / RUNS).toFixed(2)} ms a report`;
  console.log(summary);
  if (SHOW > 0) {
    for (const outcome of ['silent', 'part', 'asked'] as const) {
      console.log(`\n${outcome.toUpperCase()}: the commonest kinds\n${[...kinds[outcome]].sort((a, b) => b[1].times - a[1].times).slice(0, SHOW === 1 ? 15 : SHOW).map(([kind, k]) => `${String(k.times).padStart(5)}  ${kind}   [${[...k.where].sort((a, b) => b[1] - a[1]).slice(0, 4).map(([w, n]) => `${w} ${n}`).join(', ')}]\n${k.examples.join('\n')}`).join('\n')}`);
    }
  }
  if (SHOW > 0) {
    const bad = (c: Count): number => (c.part + c.asked + c.silent) / (c.right + c.part + c.asked + c.silent);
    const most = (list: [string, Count][]): string => list.sort((a, b) => bad(b[1]) * Math.sqrt(b[1].part + b[1].asked + b[1].silent) - bad(a[1]) * Math.sqrt(a[1].part + a[1].asked + a[1].silent)).slice(0, SHOW === 1 ? 15 : SHOW).map(([word, c]) => `  ${word.padEnd(44)} ${(100 * bad(c)).toFixed(0).padStart(3)} % not right: right ${c.right}, in part ${c.part}, asked ${c.asked}, silent ${c.silent}`).join('\n');
    console.log(`\nWHERE IT FAILS\n${['name', 'unit', 'rating', 'method', 'noise'].map((kind) => most([...words].filter(([w, c]) => w.startsWith(`${kind} `) && bad(c) > 0.02))).join('\n\n')}`);
  }
  const report = `${summary}\n${table(languages)}\n${table(cells)}`;
  expect(all.silent, report).toBe(0);
  expect(all.right / total, report).toBeGreaterThanOrEqual(0.97);
}, 240_000);
