/** A case of each door: what is called, with which files and flags. The same seed and number give the same case. */
import { strToU8, zipSync } from 'fflate';
import { DIARIES, LABELS, ORCHARDS, REPORTS, RULES, SENTENCES, TEMPLATES, TREES } from './texts.mjs';
import { CSV, mutated, NUMBERS, ODD, pick, PROTO, RULE, someName, someTree, TEMPLATE, UNITS, upTo, YAML } from './mutate.mjs';

const NAMES = ['Gate apple', 'Wall plum', 'Lawn pear', 'House apple', 'Blueberries', 'lower terrace', 'top strip', 'all'];
const RULE_TEXTS = [...RULES, '- id: mine\n  crops: [apple]\n  by: plant\n  gives: { of: N, unit: oz }\n  low: 3\n  from: my notebook\n', '- id: mine\n  crops: [apple, pear]\n  by: area\n  gives: { of: N, unit: g/m2 }\n  low: 2\n  high: 3\n  from: a leaflet\n- id: two\n  crops: [plum]\n  by: years\n  gives: { of: product, unit: cup, percentN: 10, ozPerCup: 8 }\n  low: 0.5\n  cap: 3\n  years: [0, 8]\n  bearing: true\n  from: mine\n'];
const odd = (rnd, text, others) => (rnd() < 0.75 ? mutated(rnd, text, others) : text);
const label = (rnd) => odd(rnd, pick(rnd, LABELS), LABELS);
const shortReport = (rnd) => { const all = REPORTS.filter((r) => r.length < 6000); return pick(rnd, all); };

/** An orchard put together anew, so that its parts meet as the samples' do not. */
function madeOrchard(rnd) {
  const lines = (n, of) => Array.from({ length: upTo(rnd, n) }, of);
  return {
    'orchard.yaml': [`where: ${pick(rnd, ['Ohio, US', 'Oregon, US', 'Germany', 'Spain', 'UK', 'New Zealand', 'Tasmania, Australia', 'Brazil', 'Chile', 'Florida, US', 'Texas, US', 'California, US', 'South Africa', 'Ontario, Canada'])}`, 'bud-break: 12 April', 'first-frost: 12 October', 'soil:', '  bank: a.txt', 'trees:', ...[...new Set([`  ${someName(rnd)}: ${someTree(rnd)}`, ...lines(5, () => `  ${someName(rnd)} ${upTo(rnd, 3)}: ${rnd() < 0.5 ? someTree(rnd) : pick(rnd, TREES)}`)])], 'shed:', ...lines(3, () => `  - ${JSON.stringify(pick(rnd, LABELS))}`), 'store:', '  - Sulphate of ammonia, 21-0-0, 4 lb, $9', ...lines(3, () => `  - ${JSON.stringify(pick(rnd, LABELS))}`), ''].join('\n'),
    'a.txt': shortReport(rnd),
  };
}

function folder(rnd, what) {
  const files = { ...(rnd() < 0.5 ? pick(rnd, ORCHARDS) : madeOrchard(rnd)) };
  const report = Object.keys(files).find((f) => f.endsWith('.txt'));
  if (what === 'orchard') files['orchard.yaml'] = mutated(rnd, files['orchard.yaml'], ORCHARDS.map((o) => o['orchard.yaml']), YAML);
  if (what === 'report') files[report] = mutated(rnd, rnd() < 0.5 ? files[report] : shortReport(rnd), REPORTS);
  if (what === 'diary' || rnd() < 0.15) files['diary.csv'] = mutated(rnd, pick(rnd, DIARIES), DIARIES, CSV);
  if (what === 'rules' || rnd() < 0.05) files['rules.yaml'] = mutated(rnd, pick(rnd, RULE_TEXTS), RULE_TEXTS, [...RULE, ...YAML]);
  if (what === 'template') for (const [form, text] of Object.entries(TEMPLATES)) files[`templates/sheet.${form}.hbs`] = mutated(rnd, text, Object.values(TEMPLATES), TEMPLATE);
  return files;
}

const PH_FLAGS = ['--now', '--goal', '--texture', '--buffer', '--method', '--acidity', '--cec', '--carbonate', '--fizz', '--organic-matter', '--lime', '--depth', '--area', '--material', '--crop', '--where', '--aluminium', '--base-saturation', '--calcium', '--magnesium', '--lbc', '--ecec'];
const PH_VALUES = ['5.2', '6.5', '4', '9', 'loam', 'sandy loam', 'clay', 'smp', 'sikora', 'adams-evans', '2.1', '12 meq/100g', '4 %', 'none', 'strong', '2 tons/acre', '5 t/ha', '6 in', '20 cm', '100 sq ft', '10 m2', 'Garden lime, CCE 90', 'Sulphur, 90 %', 'apple', 'blueberry', 'Ohio, US', 'Germany', 'Brazil', 'Poland', 'Georgia, US'];
const NEEDS = ['1 lb N', '0.5 lb N, 0 P2O5', '10 g N, 5 g K2O', '1 lb N, 1 lb P2O5, 1 lb K2O', '100 ppm N', '1 oz MgO', '12 kg/ha N', 'constructor', '0 N', '-1 lb N'];
const value = (rnd) => { const r = rnd(); return r < 0.5 ? pick(rnd, PH_VALUES) : r < 0.7 ? pick(rnd, NUMBERS) : r < 0.8 ? `${pick(rnd, NUMBERS)} ${pick(rnd, UNITS)}` : r < 0.9 ? mutated(rnd, pick(rnd, PH_VALUES), PH_VALUES) : pick(rnd, [...ODD, ...PROTO, '']); };
const DAYS = ['2026-03-14', '2026-07-01', '1970-01-01', '2100-12-31', '0001-01-01', '9999-12-31', '2024-02-29', '2026-02-30', 'today', '', '2026-3-1', '１２'];
const READS = [['plan'], ['check'], ['read'], ['years'], ['shop'], ['ph'], ['why', 'Gate apple'], ['why', 'Wall plum', 'N'], ['why', 'f3'], [], ['plan', 'Gate apple'], ['diary'], ['schema', 'plan']];

/** A zip of an orchard, with bytes changed, cut, or files that lie about themselves. */
function zipOf(rnd) {
  const names = ['../x.txt', '/etc/x.txt', 'C:\\x.txt', 'a/../../b.yaml', 'soil/__proto__/x.txt', 'constructor.txt', '__MACOSX/orchard.yaml', 'x/'.repeat(200) + 'a.txt', 'ORCHARD.YAML', 'deep/orchard.yaml', 'photo.jpg', 'a.zip', '\0.txt'];
  const files = Object.entries(folder(rnd, pick(rnd, ['orchard', 'report', 'diary', ''])));
  if (rnd() < 0.4) files.push([pick(rnd, names), pick(rnd, [...REPORTS, 'x'.repeat(100_000)])]);
  const bytes = zipSync(Object.fromEntries(files.map(([name, text]) => [name, strToU8(text)])), { level: upTo(rnd, 1) * 6 });
  for (let i = rnd() < 0.6 ? upTo(rnd, 12) : 0; i > 0; i -= 1) {
    // Mostly where a zip says where things are: at its head and in the directory at its end.
    const at = rnd() < 0.5 ? bytes.length - 1 - upTo(rnd, Math.min(300, bytes.length - 1)) : rnd() < 0.5 ? upTo(rnd, Math.min(60, bytes.length - 1)) : upTo(rnd, bytes.length - 1);
    bytes[at] = pick(rnd, [0, 255, upTo(rnd, 255), bytes[at] ^ (1 << upTo(rnd, 7))]);
  }
  return rnd() < 0.1 ? bytes.slice(0, upTo(rnd, bytes.length)) : rnd() < 0.1 ? bytes.slice(upTo(rnd, bytes.length)) : bytes;
}

/** The doors with how often each is tried. */
export const DOORS = {
  report: (rnd) => { const files = { 'r.txt': mutated(rnd, pick(rnd, REPORTS), REPORTS) }; return { argv: ['read', 'r.txt'], files, report: files['r.txt'] }; },
  stdin: (rnd) => ({ argv: ['read', '-'], files: {}, stdin: mutated(rnd, shortReport(rnd), REPORTS) }),
  orchard: (rnd) => ({ argv: pick(rnd, READS), files: folder(rnd, 'orchard') }),
  reports: (rnd) => ({ argv: pick(rnd, READS), files: folder(rnd, 'report') }),
  made: (rnd) => ({ argv: pick(rnd, [['plan'], ['plan'], ['sheet'], ['sheet', '--as', 'text'], ['sheet', '--as', 'ics'], ['shop'], ['ph'], ['years'], ['page']]), files: folder(rnd, '') }),
  labels: (rnd) => ({ argv: [...pick(rnd, [['weigh', odd(rnd, pick(rnd, NEEDS), NEEDS)], ['blend'], ['blend', '--balanced'], ['blend', '--to', pick(rnd, ['10-10-10', '5-1-1', '0-0-0', '1:1:1', 'x'])], ['blend', '--batch', pick(rnd, ['10 lb', '1 kg', '0 g', '1e309 kg', 'x'])], ['shop', '--need', odd(rnd, pick(rnd, NEEDS), NEEDS)], ['shop']]), ...Array.from({ length: 1 + upTo(rnd, 3) }, () => label(rnd))], files: rnd() < 0.4 ? folder(rnd, '') : {} }),
  sentence: (rnd) => { const files = folder(rnd, ''); const said = Array.from({ length: 1 + upTo(rnd, 2) }, () => odd(rnd, pick(rnd, SENTENCES).replace(/\bA\b/, pick(rnd, NAMES)), SENTENCES)); return rnd() < 0.7 ? { argv: ['diary', said[0], ...(rnd() < 0.2 ? ['--again'] : [])], files } : { argv: ['diary', '-'], files, stdin: said.join(pick(rnd, ['\n', '\r\n', '\r'])) }; },
  diary: (rnd) => ({ argv: pick(rnd, [['plan'], ['diary'], ['years'], ['diary', 'undo'], ['diary', 'note Gate apple buds'], ['check'], ['sheet'], ['shop'], ['diary', 'done day 1']]), files: folder(rnd, 'diary') }),
  template: (rnd) => ({ argv: ['sheet', ...(rnd() < 0.5 ? ['--as', 'text'] : [])], files: folder(rnd, 'template') }),
  rules: (rnd) => ({ argv: pick(rnd, [['plan'], ['check'], ['why', 'Gate apple'], ['sheet']]), files: folder(rnd, 'rules') }),
  ph: (rnd) => ({ argv: ['ph', ...Array.from({ length: 1 + upTo(rnd, 6) }, () => [pick(rnd, PH_FLAGS), value(rnd)]).flat(), ...(rnd() < 0.1 ? ['--wat'] : [])], files: rnd() < 0.3 ? folder(rnd, '') : {} }),
  flags: (rnd) => ({ argv: [pick(rnd, ['plan', 'sheet', 'why', 'years', 'shop', 'sources', 'schema', 'check', 'page', 'read', 'nope', 'constructor', 'help', '--version', '-h', 'new', 'diary']), ...Array.from({ length: upTo(rnd, 5) }, () => pick(rnd, ['--today', pick(rnd, DAYS), '--folder', '.', 'nowhere', '--as', 'text', 'html', 'ics', 'pdf', '--paper', 'a4', 'letter', '--large', '--force', '--open', '--coverage', '--help', '--', '-', '--json', '--site', 'site', 'Gate apple', 'N', 'lime', 'f1', '--need', '1 lb N', '--again', '--batch', ...PROTO, ...ODD, '--today=', '--json=1', '--no-json', '-x', '', ' ']))], files: rnd() < 0.8 ? folder(rnd, '') : {} }),
  new: (rnd) => ({ argv: ['new', ...Array.from({ length: 1 + upTo(rnd, 6) }, () => pick(rnd, [['--tree', `${someName(rnd).replaceAll('"', '')}: ${someTree(rnd)}`], ['--tree', odd(rnd, pick(rnd, TREES), TREES)], ['--where', pick(rnd, ['Ohio, US', 'Germany', 'Spain', 'x', '__proto__', value(rnd)])], ['--name', value(rnd)], ['--zone', value(rnd)], ['--store', label(rnd)], ['--shed', label(rnd)], ['--bud-break', pick(rnd, ['12 April', '31 February', value(rnd)])], ['--first-frost', '12 October'], ['--last-frost', value(rnd)]])).flat()], files: {} }),
  batch: (rnd) => ({ argv: ['plan', '--batch'], files: {}, stdin: Array.from({ length: 1 + upTo(rnd, 3) }, () => { const line = JSON.stringify({ files: folder(rnd, pick(rnd, ['orchard', 'report', 'diary', 'rules', ''])), ...(rnd() < 0.3 ? { today: pick(rnd, DAYS) } : {}) }); return rnd() < 0.7 ? line : mutated(rnd, line, [line, '{"files":{"__proto__":"x"}}', '[]', 'null', '{"files":[]}', '{"files":{"orchard.yaml":5}}', '{"__proto__":{"files":{}}}']); }).join('\n') }),
  page: (rnd) => ({ door: 'page', files: folder(rnd, pick(rnd, ['orchard', 'report', 'diary', 'rules', ''])), typed: Array.from({ length: 6 }, () => odd(rnd, pick(rnd, [...TREES, ...LABELS, ...NUMBERS, ...PROTO, 'where', 'trees', 'soil']), LABELS)) }),
  zip: (rnd) => ({ door: 'zip', files: {}, bytes: zipOf(rnd) }),
};
const WEIGHTS = { report: 6, stdin: 1, orchard: 5, reports: 4, made: 4, labels: 6, sentence: 5, diary: 4, template: 2, rules: 3, ph: 4, flags: 3, new: 2, batch: 2, page: 4, zip: 2 };
const WHEEL = Object.entries(WEIGHTS).flatMap(([door, n]) => Array.from({ length: n }, () => door));

export function makeCase(dice, seed, number) {
  const rnd = dice((seed * 1_000_003 + number) >>> 0);
  rnd();
  const door = pick(rnd, WHEEL);
  return { name: door, today: rnd() < 0.7 ? '2026-03-14' : pick(rnd, ['2025-07-01', '2026-12-31', '2024-02-29', '1970-01-01', '2100-06-01']), thorough: rnd() < 0.25, ...DOORS[door](rnd) };
}
