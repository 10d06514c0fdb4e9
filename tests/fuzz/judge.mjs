/** What must hold of every answer, however bad the input. Each fault is a sentence; none is what is hoped for. */
import { existsSync, lstatSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const CODES = [0, 2, 3, 4, 5, 6];
const SHOWN = /\bNaN\b|\bundefined\b|Infinity\b|\[object Object\]/;
const CRASH = /^\s+at \S+ ?\(|^\s+at (?:file|node):|\b(?:Type|Range|Reference|Syntax|Internal)Error\b|wrong in Medlar itself/m;
/** Beside breaks and tabs nothing below a blank and no C1 code; in text no mark of direction either. */
const CODES_OF_TERMINALS = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/;
const DIRECTIONS = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/;
/** Commands that write nothing; `diary` with a sentence, `sheet`, `new`, `page` and `years --as html` do. */
const READS = ['read', 'plan', 'why', 'shop', 'weigh', 'blend', 'ph', 'check', 'schema', 'sources'];
const MADE = /^(?:sheet|calendar|years|medlar|site)[^/]*|^orchard\.yaml$|^soil\/|^diary\.csv$/;

const treeOf = (at) => Object.fromEntries(readdirSync(at, { recursive: true }).map(String).filter((f) => lstatSync(join(at, f)).isFile()).sort().map((f) => [f, readFileSync(join(at, f)).toString('latin1')]));
const told = (text) => (text.length > 300 ? `${text.slice(0, 300)}...` : text);

/** The prototypes as they are; anything that a key of a file adds to them is a fault. */
const KEPT = [Object.prototype, Array.prototype, Function.prototype, String.prototype].map((of) => [of, Reflect.ownKeys(of).length]);
const polluted = () => KEPT.some(([of, n]) => Reflect.ownKeys(of).length !== n);

/** CPU spent since `from`, so that a busy machine makes nothing slow. */
const spent = (from) => { const { user, system } = process.cpuUsage(from); return (user + system) / 1000; };

async function ran(doors, root, argv, files, stdin, today) {
  const folder = join(root, 'orchard');
  rmSync(root, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const before = treeOf(folder);
  let [stdout, stderr] = ['', ''];
  const from = process.cpuUsage();
  let code = null;
  let thrown = null;
  try {
    code = await doors.run(argv, { cwd: folder, today, out: (t) => { stdout += t; }, err: (t) => { stderr += t; }, stdin: () => Promise.resolve(stdin), bytes: () => Promise.resolve(Buffer.from(stdin)) });
  } catch (e) {
    thrown = e;
  }
  return { code, thrown, stdout, stderr, ms: spent(from), before, after: existsSync(folder) ? treeOf(folder) : {}, beside: readdirSync(root) };
}

function faultsOf({ doors }, argv, files, stdin, r) {
  const faults = [];
  if (r.thrown) return [`threw ${r.thrown.stack ?? r.thrown}`.split('\n').slice(0, 6).join('\n')];
  if (!CODES.includes(r.code)) faults.push(`exit code ${r.code}`);
  const given = `${argv.join(' ')}\n${Object.entries(files).flat().join('\n')}\n${stdin}`;
  for (const [where, text] of [['stdout', r.stdout], ['stderr', r.stderr]]) {
    for (const [what, pattern] of [['a value that is none', SHOWN], ['a crash', CRASH]]) {
      const m = pattern.exec(text);
      if (m && !given.includes(m[0].trim())) faults.push(`${what} on ${where}: ${told(text.slice(Math.max(0, m.index - 100), m.index + 150))}`);
    }
    const m = CODES_OF_TERMINALS.exec(text) ?? (argv.includes('--json') || argv.includes('--batch') || argv[0] === 'schema' ? null : DIRECTIONS.exec(text));
    if (m) faults.push(`a code of the terminal (${m[0].charCodeAt(0).toString(16)}) on ${where}: ${JSON.stringify(told(text.slice(Math.max(0, m.index - 60), m.index + 60)))}`);
  }
  if (r.beside.length !== 1) faults.push(`written beside the folder: ${r.beside.join(', ')}`);
  const changed = Object.keys(r.before).filter((f) => r.after[f] !== r.before[f]);
  const added = Object.keys(r.after).filter((f) => !(f in r.before));
  if (READS.includes(argv[0]) || argv.length === 0) {
    if (changed.length + added.length > 0) faults.push(`${argv[0]} wrote ${[...changed, ...added].join(', ')}`);
  } else {
    if (changed.some((f) => !(argv[0] === 'diary' && f === 'diary.csv' && r.after[f]?.startsWith(r.before[f]))) && !argv.includes('--force')) faults.push(`${argv[0]} changed ${changed.join(', ')}`);
    for (const f of added) if (f.includes('.tmp') || f.endsWith('.lock') || (!MADE.test(f) && argv[0] !== 'page')) faults.push(`${argv[0]} left ${f}`);
  }
  if (polluted()) faults.push('a prototype was changed');
  // Help and version are text whatever else is asked.
  const helps = ['-h', '--help', '-V', '--version'].some((f) => argv.includes(f));
  if (argv.includes('--json') && r.stdout !== '' && !helps) faults.push(...shape(doors, r.stdout, r.code));
  if (argv.includes('--batch') && !helps) for (const line of r.stdout.split('\n').filter(Boolean)) faults.push(...shape(doors, line, null));
  if (r.code !== 0 && r.stderr.trim() === '' && !argv.includes('--json')) faults.push(`exit ${r.code} and not a word on stderr`);
  return faults;
}

function shape({ ANSWERS }, text, code) {
  let answer;
  try {
    answer = JSON.parse(text);
  } catch (e) {
    return [`no JSON: ${e.message}: ${told(text)}`];
  }
  // Help, version and schema answer in their own form.
  if (!Array.isArray(answer.notices)) return [];
  const faults = [];
  const known = Object.hasOwn(ANSWERS, answer.command) ? ANSWERS[answer.command] : undefined;
  const checked = known?.safeParse(answer);
  if (checked && !checked.success) faults.push(`not the shape of ${answer.command}: ${JSON.stringify(checked.error.issues).slice(0, 500)}`);
  if (code !== null && answer.ok !== (code === 0)) faults.push(`ok is ${answer.ok} with exit ${code}`);
  if (answer.notices.some((n) => n.code === 'fault')) faults.push(`a fault of ours: ${JSON.stringify(answer.notices.filter((n) => n.code === 'fault')).slice(0, 400)}`);
  if (!answer.ok && !answer.notices.some((n) => n.severity === 'error')) faults.push('not ok, and no error says why');
  const ids = new Set(Object.keys(answer.figures ?? {}));
  const walk = (v, key) => {
    if (typeof v === 'string') { if (key.endsWith('Why') && !ids.has(v)) faults.push(`${key} ${v} is no figure`); } else if (Array.isArray(v)) for (const x of v) walk(x, key);
    else if (v && typeof v === 'object') for (const [k, x] of Object.entries(v)) walk(x, key.endsWith('Why') ? key : k);
  };
  walk(answer.result, '');
  for (const f of Object.values(answer.figures ?? {})) if (f.from.some((id) => !ids.has(id)) || f.text === '' || f.value === null) faults.push(`a figure leads nowhere: ${JSON.stringify(f).slice(0, 200)}`);
  return faults;
}

/** A content with its number is read, asked about, told as a mistake or listed as unread: never passed over. Blank leaves of tables and letters of labs have no name of a content. */
const CONTENT = /^\s*(?:phosphorus|potassium|calcium|magnesium|zinc|boron|copper|manganese|iron|sodium|organic matter)\s*[:=|]?\s*\d+(?:\.\d+)?\s*(?:ppm|mg\/kg|%|lb\/acre|meq\/100 ?g)\s*$/i;

const alike = (line) => line.trim().toLowerCase().replaceAll(',', '.').replace(/\s+/g, ' ');

/** The soil room by itself: places lie within their lines, numbers are numbers, each plain line of a content is accounted for. */
export function judgeReport({ readReport, LONGEST_LINE }, text) {
  const faults = [];
  const report = readReport(text, 'r.txt');
  const lines = text.split(/\r\n|\n|\r/);
  const readings = report.samples.flatMap((s) => s.readings);
  const places = [...readings.map((r) => r.place), ...report.notices.flatMap((n) => (n.place ? [n.place] : [])), ...report.questions.flatMap((q) => (q.place ? [q.place] : []))];
  for (const p of places) {
    const line = lines[p.line - 1];
    if (line === undefined || p.column < 1 || p.length < 1 || p.column - 1 + p.length > Math.max(1, [...line].length)) faults.push(`a place outside its line: ${JSON.stringify({ ...p, source: undefined })} of ${JSON.stringify(told(line ?? ''))}`);
  }
  for (const r of readings) for (const n of [r.value, r.to ?? null, ...(r.lab.range ?? [])]) if (n !== null && (!Number.isFinite(n) || Math.abs(n) >= 1e7)) faults.push(`no number of a soil: ${r.item} ${n} in ${JSON.stringify(told(r.asPrinted))}`);
  const known = new Set([...places.map((p) => p.line), ...report.samples.flatMap((s) => s.unread.map((u) => u.line))]);
  const whole = report.notices.some((n) => n.severity === 'error' && !n.place);
  // The same line again says nothing new, nor the same value of the same content in another line.
  const said = (line) => { const [, name, n, unit] = /^\s*([a-z ]+?)\s*[:=|]?\s*(\d+(?:\.\d+)?)\s*(.*?)\s*$/i.exec(line); return readings.some((r) => r.item.startsWith(name.toLowerCase().replace(' ', '-')) && r.value === Number(n) && String(r.unit).toLowerCase() === unit.toLowerCase().replace('100 g', '100g')); };
  if (!whole) lines.forEach((line, i) => { if (lines.findIndex((l) => alike(l) === alike(line)) === i && line.length <= LONGEST_LINE && CONTENT.test(line) && !known.has(i + 1) && !said(line)) faults.push(`line ${i + 1} is neither read nor told: ${JSON.stringify(told(line))}`); });
  return faults;
}

/** The page without a browser: what it keeps, shows and changes of texts that somebody typed. */
function judgePage({ page, see, seeEarly, answerOf, mistakesOf, judge, withUnit, withInside, readReport }, { files, typed, today }) {
  const { 'orchard.yaml': orchard, 'diary.csv': diary = '', ...reports } = files;
  const faults = [];
  let state = { ...page.EMPTY, orchard, diary, reports };
  const look = (s) => {
    const kept = page.stateOf(page.written(s));
    if (JSON.stringify(kept) !== JSON.stringify(s)) faults.push('a state is not what was kept of it');
    for (const seen of [see(s, today), seeEarly(s, today)]) {
      const said = `${JSON.stringify(answerOf(seen))}\n${mistakesOf(seen).join('\n')}`;
      const m = SHOWN.exec(said);
      if (m && !`${orchard}${diary}${typed.join()}${Object.values(reports).join()}`.includes(m[0])) faults.push(`the page would show ${told(said.slice(Math.max(0, m.index - 80), m.index + 80))}`);
    }
    page.treeLines(s.orchard);
    page.zoneFiles(s.orchard);
    for (const shelf of ['shed', 'store']) page.bagLines(s.orchard, shelf);
    for (const key of ['where', 'bud-break', ...typed.slice(0, 1)]) page.factOf(s.orchard, key);
  };
  look(state);
  const [a, b, c, d, e, f] = typed;
  const edits = [(t) => page.withTree(t, page.freeName(t, a), b), (t) => page.withTreeFacts(t, 0, c), (t) => page.withBag(t, 'store', d), (t) => page.withBag(t, 'shed', b), (t) => page.withFact(t, 'where', e), (t) => page.withoutBag(t, 'store', 0), (t) => page.withoutTree(t, 0), (t) => page.withTree(t, f, '')];
  for (const edit of edits) {
    const next = edit(state.orchard);
    if (next === null) continue;
    state = { ...state, orchard: next };
    // What the page wrote is YAML again, so that its next change is possible.
    if (page.withFact(next, 'bud-break', '12 April') === null) faults.push(`the page wrote what it cannot change again: ${JSON.stringify(told(next))}`);
  }
  look(state);
  look(page.withReport(state, page.FIRST_REPORT, Object.values(reports)[0] ?? '', 'garden'));
  withUnit(a, 'kg');
  const seen = see(state, today);
  judge({ language: seen.where.language, system: seen.where.units, today: () => today, seen: () => seen }, typed);
  if (!withInside('<script type="application/json" id="orchard"></script>', state).endsWith('</script>') || /<\/script>.*<\/script>/s.test(withInside('<script type="application/json" id="orchard"></script>', state))) faults.push('a text ends the block that holds it');
  for (const text of Object.values(reports)) readReport(text, 'r.txt');
  if (polluted()) faults.push('a prototype was changed');
  return faults;
}

async function judgeZip({ opened, page, folderOf }, { bytes }) {
  const { state, notices } = await opened([{ path: 'o.zip', bytes }], page.EMPTY);
  const faults = [];
  for (const [name] of folderOf(state)) if (/^\/|\\|:|\0/.test(name) || name.split('/').includes('..')) faults.push(`a name that leads out of the folder: ${JSON.stringify(name)}`);
  if (state.orchard === '' && Object.keys(state.reports).length === 0 && notices.length === 0) faults.push('nothing was taken, and nothing told');
  if (polluted()) faults.push('a prototype was changed');
  return faults;
}

/** All faults of one case, and the longest that a part of it took. */
export async function judged(doors, root, c) {
  const from = process.cpuUsage();
  const guarded = async (act) => {
    try {
      return await act();
    } catch (e) {
      return [`threw ${e.stack ?? e}`.split('\n').slice(0, 6).join('\n')];
    }
  };
  if (c.door === 'page' || c.door === 'zip') {
    const faults = await guarded(() => (c.door === 'page' ? judgePage(doors, c) : judgeZip(doors, c)));
    return { faults, ms: spent(from) };
  }
  const faults = [];
  const { argv, files, stdin = '', today } = c;
  const first = await ran(doors, root, argv, files, stdin, today);
  faults.push(...faultsOf({ doors }, argv, files, stdin, first));
  let { ms } = first;
  if (c.thorough) {
    const again = await ran(doors, root, argv, files, stdin, today);
    if (again.stdout !== first.stdout || again.stderr !== first.stderr || JSON.stringify(again.after) !== JSON.stringify(first.after)) faults.push('run twice, it answers otherwise');
  }
  if (!argv.includes('--json') && !argv.includes('--batch') && !argv.includes('--')) {
    // At the end it would be the value of a flag that has none.
    const at = argv[0]?.startsWith('-') ? 0 : Math.min(1, argv.length);
    const asked = [...argv.slice(0, at), '--json', ...argv.slice(at)];
    const json = await ran(doors, root, asked, files, stdin, today);
    faults.push(...faultsOf({ doors }, asked, files, stdin, json).map((f) => `--json: ${f}`));
    if (json.code !== first.code && !first.thrown && !json.thrown) faults.push(`exit ${first.code} as text, ${json.code} with --json`);
    ms = Math.max(ms, json.ms);
  }
  if (c.report !== undefined || (c.name === 'stdin')) faults.push(...await guarded(() => judgeReport(doors, c.report ?? stdin)));
  return { faults, ms };
}
