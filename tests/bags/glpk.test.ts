// Every whole-number program of generated orchards against GLPK's glpsol (5.0, without cuts), where that is installed:
// the same least, and none where none. MEDLAR_ORCHARDS=1000 for all of them.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { allot } from '../../src/bags/allot.ts';
import { highsSolver } from '../../src/bags/by-highs.ts';
import { byYalps } from '../../src/bags/by-yalps.ts';
import type { Program, Solved, Solver, Sum } from '../../src/bags/program.ts';
import { valueOf } from '../../src/bags/program.ts';
import { orchardOf } from './orchards.ts';

const MANY = Number(process.env.MEDLAR_ORCHARDS ?? 60);
const installed = spawnSync('glpsol', ['--version']).status === 0;

/** The program in the text that glpsol reads with --lp; written here, apart from the one for HiGHS. */
function lpText({ columns, whole, rows }: Program, least: Sum): string {
  const terms = (sum: Sum): string => [...sum].filter(([, n]) => n !== 0).map(([c, n]) => `${n < 0 ? '-' : '+'}${Math.abs(n).toFixed(15)} c${c}`).join('\n') || '0 c0';
  const limits = rows.flatMap(({ of, least: low, most: high }) => [...(low === undefined ? [] : [`${terms(of)} >= ${low.toFixed(12)}`]), ...(high === undefined ? [] : [`${terms(of)} <= ${high.toFixed(12)}`])]);
  return `Minimize\nz: ${terms(least)}\nSubject To\n${limits.join('\n')}\nBounds\n${Array.from({ length: columns }, (_, c) => `0 <= c${c}`).join('\n')}\n${whole.size > 0 ? `General\n${[...whole].map((c) => `c${c}`).join('\n')}\n` : ''}End\n`;
}

/** The least by glpsol and how far its columns miss the rows by plain arithmetic; null where nothing keeps the rows, undefined where it ran out of time. */
function byGlpsol(program: Program, least: Sum, folder: string): { value: number; off: number } | null | undefined {
  const [model, answer] = [join(folder, 'model.lp'), join(folder, 'answer.txt')];
  writeFileSync(model, lpText(program, least));
  spawnSync('glpsol', ['--lp', model, '--write', answer, '--tmlim', '10']);
  const text = readFileSync(answer, 'utf8');
  // "s mip ROWS COLUMNS STATUS OBJECTIVE": o best, n none, f found, u unknown; columns in the order in which the text names them first.
  const [, status, value] = /^s mip \d+ \d+ (\w) (\S+)/m.exec(text) ?? [];
  if (status !== 'o') return status === 'n' ? null : undefined;
  const order = [...new Set([...readFileSync(model, 'utf8').matchAll(/(?<![\d.])c(\d+)/g)].map((m) => Number(m[1])))];
  const x = Array.from({ length: program.columns }, () => 0);
  for (const [, j, v] of text.matchAll(/^j (\d+) (\S+)$/gm)) x[order[Number(j) - 1]!] = Number(v);
  expect(valueOf(least, x)).toBeCloseTo(Number(value), 3);
  const off = Math.max(0, ...program.rows.map(({ of, least: low = -Infinity, most: high = Infinity }) => Math.max(low - valueOf(of, x), valueOf(of, x) - high)));
  return { value: Number(value), off };
}

test.skipIf(!installed)('glpsol finds no better, and none where none was found', { timeout: 3_600_000 }, async () => {
  const highs = await highsSolver();
  const folder = mkdtempSync(join(tmpdir(), 'medlar-glpk-'));
  let [best, none, late, loose] = [0, 0, 0, 0];
  try {
    for (let seed = 1; seed <= MANY; seed += 4) {
      const asked: { program: Program; least: Sum; found: Solved }[] = [];
      const ours: Solver = (program, least) => {
        const quick = byYalps(program, least);
        const found = quick.status === 'best' ? quick : highs(program, least);
        if (program.whole.size > 0) asked.push({ program, least, found });
        return found;
      };
      const { plants, shed, store } = orchardOf(seed);
      allot(plants, shed, store, ours);
      for (const { program, least, found } of asked) {
        // A later aim's program holds what was found before: that a solver finds none there is its arithmetic, and known.
        if (found.status === 'gave-up' || (found.status === 'none' && program !== asked[0]!.program)) continue;
        const theirs = byGlpsol(program, least, folder);
        if (theirs === undefined) late++;
        else if (found.status === 'none') {
          expect(theirs, `${seed}: none`).toBeNull();
          none++;
        } else {
          expect(theirs, `${seed}: some`).not.toBeNull();
          const [mine, { value, off }] = [valueOf(least, found.x), theirs!];
          // Its columns are believed only where they keep the rows.
          if (value < mine && off > 1e-7) loose++;
          else expect(Math.abs(mine - value), `${seed}: ${mine} and ${value}, off by ${off}`).toBeLessThan(1e-4 * Math.max(1, Math.abs(value)));
          best++;
        }
      }
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  console.log(`${best} programs with the same least, ${none} with none, ${late} too long for glpsol, ${loose} where it missed a row`);
  expect(best - loose).toBeGreaterThan(MANY);
});
