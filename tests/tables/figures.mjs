/**
 * Every number that the tables ship, one a line, for whoever reviews a change: `npm run figures` writes `figures.txt` anew,
 * `figures.test.ts` holds it to the tables. It detects change and proves nothing.
 * A line: table, row, value, unit, source, place in it, mark. Numbers in a table's own code are told as they stand in it.
 */
import { readdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
export const FILE = fileURLToPath(new URL('figures.txt', import.meta.url));
const HEAD = `# Every number that src/tables ships, and the units it is converted by: table | row | value | unit | source | place | mark.
# This file shows what a change changes, and proves nothing: what a figure should be is checked under tests/published.
# Written by "npm run figures". A figure that changes here is named in CHANGELOG.md with its source.
`;

/** Publications have years, a register has none of its own, and a folder's numbers are not shipped. */
const NO_TABLES = /^(?:sources.*|source|register|coverage|rule-shape)\.ts$/;
/** These gather the rows of other files, whose names say more; they come last and add what is their own. */
const GATHERERS = ['materials.ts', 'ratings.ts', 'rules.ts'];
/** What a row is for or how often, not how much: its unit is another. */
const OTHER_UNIT = ['years', 'first', 'doses', 'spacingFt', 'percentN', 'ozPerCup', 'cec', 'dates', 'depthIn', 'goals', 'classes'];
/** What rests on a row's second publication. */
const LATER = ['year2', 'year3'];

async function tables() {
  const names = readdirSync(`${root}/src/tables`).filter((name) => name.endsWith('.ts') && !NO_TABLES.test(name)).sort((a, b) => GATHERERS.indexOf(a) - GATHERERS.indexOf(b) || (a < b ? -1 : 1));
  const files = [...names.map((name) => [name.slice(0, -3), `./src/tables/${name}`]), ...['units', 'substance'].map((name) => [name, `./src/units/${name}.ts`])];
  const contents = files.map(([name, path]) => `export * as ${JSON.stringify(name)} from ${JSON.stringify(path)};`).join('\n');
  const { outputFiles: [bundle] } = await build({ stdin: { contents, resolveDir: root, loader: 'ts' }, bundle: true, write: false, format: 'esm', platform: 'neutral', target: 'es2022', logLevel: 'error' });
  const modules = await import(`data:text/javascript;base64,${Buffer.from(bundle.text).toString('base64')}`);
  return files.map(([name]) => [name, modules[name]]);
}

const isThing = (x) => typeof x === 'object' && x !== null && !(x instanceof RegExp);
const isCite = (x) => isThing(x) && typeof x.source === 'string' && typeof x.at === 'string' && typeof x.mark === 'string';

/** As the publication prints it: an edge stored just under a number is told as "under" it. */
function printed(x) {
  if (!Number.isFinite(x)) return String(x);
  const short = Number(x.toPrecision(6));
  return short !== x && Math.abs(short - x) <= 2e-9 * Math.max(1, Math.abs(x)) ? `under ${short}` : String(Number(x.toPrecision(9)));
}

const unitOf = (x, unit) => (isThing(x.gives) ? `${x.gives.unit} ${x.gives.of}${typeof x.by === 'string' ? ` by ${x.by}` : ''}` : typeof x.unit === 'string' ? x.unit : unit);

/** What names a member of a list: its id, else its own short words, else its place. */
function nameOf(x, i) {
  if (typeof x.id === 'string') return x.id;
  const words = Object.entries(x).filter(([k]) => k !== 'unit' && k !== 'cite' && (!Array.isArray(x) || typeof x[k] === 'string'))
    .flatMap(([, v]) => (typeof v === 'string' ? [v] : Array.isArray(v) && v.every((y) => typeof y === 'string') ? [v.slice(0, 4).join(' ')] : []));
  return words.length > 0 ? words.join(', ').slice(0, 80) : String(i);
}

/** The numbers that stand in the text of a function. */
const numbersIn = (code) => [...code.toString().replace(/(['"`/])(?:\\.|(?!\1)[^\\\n])*\1/g, '').matchAll(/(?<![\w$.])\d[\d_]*(?:\.\d+)?(?:e-?\d+)?/g)].map(([n]) => Number(n.replaceAll('_', '')));

/** What two files hold in common is told where it stands first. */
function walk(x, path, unit, cite, lines, seen) {
  if (isThing(x) && seen.has(x)) return;
  if (isThing(x) && isCite(x.cite)) seen.add(x);
  const line = (value) => lines.push([...path, value, unit ?? '', cite?.source ?? '', cite?.at ?? '', cite?.mark ?? '']);
  if (typeof x === 'number') line(printed(x));
  else if (typeof x === 'function') for (const n of numbersIn(x)) line(`${printed(n)} (in code)`);
  else if (isCite(x)) return;
  else if (isThing(x)) {
    const [u, c] = [unitOf(x, unit), isCite(x.cite) ? x.cite : cite];
    const all = x instanceof Map ? [...x] : Object.entries(x);
    for (const [k, child] of all) walk(child, [path[0], `${path[1]} ${Array.isArray(x) && isThing(child) ? nameOf(child, k) : String(k)}`], OTHER_UNIT.includes(k) ? null : u, LATER.includes(k) && isCite(x.later?.cite) ? x.later.cite : c, lines, seen);
  }
}

export async function figures() {
  const lines = [];
  const seen = new Set();
  for (const [table, module] of await tables()) {
    const lone = Object.values(module).filter(isCite);
    for (const name of Object.keys(module).sort()) walk(module[name], [table, name], null, lone.length === 1 ? lone[0] : null, lines, seen);
  }
  return HEAD + lines.map((cells) => cells.map((c) => c.replaceAll('|', '/').replace(/\s+/g, ' ').trim()).join(' | ')).join('\n') + '\n';
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(FILE, await figures());
