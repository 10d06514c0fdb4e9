// No text may keep a pattern busy. Each pattern of the sources is proven linear (recheck, by automata), or else the checker's own attack on it,
// and runs of its own words, go through the doors by which a text comes to it, as long as a line of a report may be: a second or two at the most.
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { beforeAll, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import type { Files } from './hold.ts';
import type { Pattern } from './patterns.ts';
import { literals, madeWhile } from './patterns.ts';

type Pump = { readonly prefix: string; readonly pump: string };
type Verdict = { readonly status: 'safe' | 'vulnerable' | 'unknown'; readonly complexity?: { readonly type: string }; readonly attack?: { readonly pumps: readonly Pump[]; readonly suffix: string } };
// The checker as plain JavaScript: it starts no program of its own.
const { checkSync } = createRequire(import.meta.url)('recheck/lib/browser.js') as { checkSync: (source: string, flags: string, options: { timeout: number }) => Verdict };

/** The longest line of a report (`LONGEST_LINE` of soil/text.ts). */
const LONGEST = 4000;
/** Of CPU for one answer; a cubic pattern would take minutes. */
const MOST_MS = 2500;

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
let patterns: Pattern[] = [];

beforeAll(async () => {
  const made = await madeWhile(async () => {
    const { readReport } = await import('../../src/soil/read.ts');
    for (const file of readdirSync(new URL('../reports/', import.meta.url)).filter((f) => f.endsWith('.txt'))) readReport(read(`tests/reports/${file}`), file);
    const files = { 'orchard.yaml': read('samples/chapel-bank/orchard.yaml'), 'soil/2025.txt': read('samples/chapel-bank/soil/2025.txt') };
    for (const argv of [['plan'], ['sheet'], ['shop'], ['ph'], ['years'], ['diary', 'fed Gate apple 5 oz bone meal on 3 March'], ['weigh', '100 ppm N', '10-10-10'], ['blend', '10-10-10', '21-0-0'], ['ph', '--now', '5.2', '--goal', '6.5', '--texture', 'loam', '--material', 'Garden lime, CCE 90, 95 % passes 60 mesh']]) await medlar(argv, files);
  });
  const all = new Map([...literals(), ...made].map((p) => [`/${p.source}/${p.flags}`, p]));
  patterns = [...all.values()];
}, 300_000);

/** What makes this pattern go back, as far as anybody can tell: the checker's attack, or the pattern's own words over and over. */
function attacksOn({ source }: Pattern, { attack }: Verdict): string[] {
  if (attack) {
    const size = attack.pumps.reduce((sum, p) => sum + p.pump.length, 0);
    return [300, LONGEST].map((n) => attack.pumps.map((p) => p.prefix + p.pump.repeat(Math.max(1, Math.floor(n / size)))).join('') + attack.suffix);
  }
  const words = [...new Set(source.match(/[a-z]{2,}/gi) ?? [])].slice(0, 4).join(' ');
  return [`1 ${words} `, `${words},`].map((s) => s.repeat(Math.ceil(LONGEST / s.length)).slice(0, LONGEST));
}

const quoted = (text: string): string => JSON.stringify(text);
const orchard = (more: string, tree = 'apple'): Files => ({ 'orchard.yaml': `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\ntrees:\n  A: ${quoted(tree)}\n${more}` });
/** Every way by which somebody else's text, or a careless hand's, comes in. */
const DOORS: Readonly<Record<string, (text: string) => readonly [argv: readonly string[], files: Files]>> = {
  report: (s) => [['read', 'r.txt'], { 'r.txt': `pH 6.4\n${s}\nPhosphorus ${s}\n` }],
  tree: (s) => [['check'], orchard('', `apple, ${s}`)],
  bag: (s) => [['check'], orchard(`store:\n  - ${quoted(`Feed 10-10-10 ${s}`)}\n  - ${quoted(`Garden lime ${s}`)}\n`)],
  orchard: (s) => [['sheet'], orchard(`orchard: ${quoted(`a${s}`)}\nwater: ${quoted(`200 mg/L ${s}`)}\n`)],
  key: (s) => [['check'], orchard(`x${s}: 1\n`)],
  sentence: (s) => [['diary', `fed A ${s}`], orchard('')],
  diary: (s) => [['check'], { ...orchard(''), 'diary.csv': `date,trees,what,bag,amount,note\n2025-01-01,A,fed,"x ${s}","1 ${s}","${s}"\n${s}\n` }],
  flags: (s) => [['ph', '--now', `5 ${s}`, '--lime', `1 ${s}`, '--carbonate', `4 ${s}`], {}],
  need: (s) => [['weigh', `1 lb N ${s}`, '10-10-10'], {}],
};

test('there are as many as the sources hold', () => {
  expect(patterns.length).toBeGreaterThan(700);
  expect(patterns.filter((p) => p.source.length > 1000).length).toBeGreaterThan(0);
});

test('none is exponential; where one is not proven linear, no attack on it lasts', { timeout: 3_600_000 }, async () => {
  const counts = { safe: 0, vulnerable: 0, unknown: 0 };
  const slow: string[] = [];
  for (const [door, of] of Object.entries(DOORS)) await medlar(...of(door));
  for (const p of patterns) {
    const verdict = checkSync(p.source, p.flags.replace('d', ''), { timeout: 500 });
    counts[verdict.status] += 1;
    if (verdict.complexity?.type === 'exponential') slow.push(`${p.at}: exponential: ${p.source.slice(0, 120)}`);
    if (verdict.status === 'safe') continue;
    for (const text of attacksOn(p, verdict)) for (const [door, of] of Object.entries(DOORS)) {
      const from = process.cpuUsage();
      await medlar(...of(text));
      const { user } = process.cpuUsage(from);
      if (user > MOST_MS * 1000) slow.push(`${p.at} by the door ${door}: ${Math.round(user / 1000)} ms on ${quoted(text.slice(0, 40))}…`);
    }
  }
  console.log(`${patterns.length} patterns: ${counts.safe} proven linear, ${counts.vulnerable} polynomial and ${counts.unknown} undecided, whose attacks end in time at every door`);
  expect(slow).toEqual([]);
});
