/** Holds the arrows between rooms: each room knows only those before it, type imports included. Says what breaks them, and ends with 1. */
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { cruise } from 'dependency-cruiser';
import extractTSConfig from 'dependency-cruiser/config-utl/extract-ts-config';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Rooms in one row do not know each other, save the first row, and those said in `beside`. */
const rows = [
  ['units', 'reason', 'tables', 'words'],
  ['soil', 'rating', 'orchard'],
  ['need', 'ph', 'when'],
  ['bags'],
  ['gather.ts'],
  ['planned.ts'],
  ['ph-notices.ts'],
  ['plan-notices.ts', 'plan-days.ts'],
  ['plan-lime.ts', 'plan-left.ts'],
  ['plan.ts'],
  ['years.ts', 'done.ts'],
  ['sheet', 'json'],
  ['cli', 'page'],
];

const beside = { json: ['sheet'], units: rows[0], reason: rows[0], tables: rows[0], words: rows[0], rating: ['soil'] };

const rooms = rows.flat();
const buildFiles = ['build.mjs', 'page.build.mjs', 'tables.build.mjs', 'licences.build.mjs', 'release.mjs', 'arrows.mjs'];
const declarations = ['version.d.ts', 'licences.build.d.mts', 'release.d.mts'];

const inRoom = (room) => (room.endsWith('.ts') ? `^src/${room.replaceAll('.', '\\.')}$` : `^src/${room}/`);
const inRooms = (list) => list.map(inRoom);
const outside = buildFiles.map((name) => `^src/${name.replaceAll('.', '\\.')}$`);

const forbidden = [
  ...rows.flatMap((row, i) => row.map((room) => ({
    name: `${room} looks only back`,
    severity: 'error',
    from: { path: inRoom(room) },
    to: { path: '^src/', pathNot: inRooms([...rows.slice(0, i).flat(), ...(beside[room] ?? []), room]) },
  }))),
  { name: 'index.ts opens every room but the doors', severity: 'error', from: { path: '^src/index\\.ts$' }, to: { path: ['^src/cli/', '^src/page/', ...outside] } },
  { name: 'no ring', severity: 'error', from: {}, to: { circular: true } },
  { name: 'the core knows no platform', severity: 'error', from: { path: '^src/', pathNot: ['^src/cli/', ...outside] }, to: { dependencyTypes: ['core'] } },
  { name: 'only sheet opens templates', severity: 'error', from: { path: '^src/', pathNot: ['^src/sheet/', ...outside] }, to: { path: '^templates/' } },
  { name: 'src knows no tests', severity: 'error', from: { path: '^src/' }, to: { path: '^tests/' } },
  { name: 'what is imported is there', severity: 'error', from: {}, to: { couldNotResolve: true } },
];

const strangers = readdirSync(`${root}/src`)
  .filter((name) => !name.startsWith('.') && !name.endsWith('.json'))
  .filter((name) => ![...rooms, 'index.ts', ...buildFiles, ...declarations].includes(name));

process.chdir(root);
const { output } = await cruise(
  ['src'],
  { ruleSet: { forbidden }, validate: true, tsPreCompilationDeps: true, doNotFollow: { path: 'node_modules' }, exclude: { path: outside }, tsConfig: { fileName: 'tsconfig.json' } },
  undefined,
  { tsConfig: extractTSConfig(`${root}/tsconfig.json`) },
);
const { summary, modules } = output;

// A compiler the cruiser cannot use makes it see nothing, or no type imports, and call that well.
const seen = modules.filter(({ source }) => /^src\/.*\.ts$/.test(source)).length;
const lines = [
  ...(seen === 0 ? ['no module of src was seen'] : []),
  ...(modules.some(({ dependencies }) => dependencies.some(({ typeOnly, dependencyTypes }) => typeOnly || dependencyTypes.includes('type-only'))) ? [] : ['no type import was seen']),
  ...strangers.map((name) => `src/${name} belongs to no room`),
  ...summary.violations.map(({ from, to, rule, cycle }) => `${rule.name}: ${from} → ${cycle ? cycle.map((step) => step.name ?? step).join(' → ') : to}`),
];
for (const line of new Set(lines)) console.error(line);
if (lines.length > 0) {
  console.error(`${new Set(lines).size} broken, ${seen} modules seen`);
  process.exitCode = 1;
}
