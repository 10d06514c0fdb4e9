/** What is mutated: texts as growers and labs write them, from the samples and the tests. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (path) => readFileSync(join(root, path), 'utf8');
const filesUnder = (path, ending) => readdirSync(join(root, path), { recursive: true }).map(String).filter((f) => f.endsWith(ending)).sort().map((f) => read(`${path}/${f}`));

/** Strings of a test's source that look like what a grower types: labels, sentences, lines of a report. */
const quotedIn = (path, fits) => [...new Set([...read(path).matchAll(/(?<![\\\w])'((?:[^'\\\n]|\\.)*)'/g)].map((m) => m[1].replaceAll("\\'", "'").replaceAll('\\n', '\n')).filter(fits))];
const typedIn = (folders, fits) => [...new Set(folders.flatMap((f) => readdirSync(join(root, f)).filter((n) => n.endsWith('.ts')).sort().flatMap((n) => quotedIn(`${f}/${n}`, fits))))];

export const REPORTS = [...filesUnder('tests/reports', '.txt'), read('samples/chapel-bank/soil/2025.txt'), read('samples/two-gullies/soil/results.txt')];
export const ORCHARDS = [
  { 'orchard.yaml': read('samples/chapel-bank/orchard.yaml'), 'soil/2025.txt': read('samples/chapel-bank/soil/2025.txt') },
  { 'orchard.yaml': read('samples/two-gullies/orchard.yaml'), 'soil/results.txt': read('samples/two-gullies/soil/results.txt') },
];
export const LABELS = typedIn(['tests/orchard', 'tests/bags', 'tests/ph'], (s) => /\d/.test(s) && /\d+ ?[-–] ?\d+ ?[-–] ?\d+|(?:lb|kg|oz|%|CCE|ENM)\b/.test(s) && s.length < 160 && !s.includes('\n') && !s.includes('${'));
export const SENTENCES = typedIn(['tests/orchard', 'tests/cli', 'tests/plan'], (s) => /^(?:fed|limed|sulphured|note|shoots|crop|day \d|done|undo|yesterday|on )/i.test(s) && s.length < 160 && !s.includes('\n'));
export const DIARIES = [...typedIn(['tests/orchard', 'tests/plan', 'tests/cli', 'tests/hostile'], (s) => s.startsWith('date') && s.includes('trees')), 'date,trees,what,bag,amount,note\n2025-06-01,Gate apple,fed,Sulphate of ammonia 21-0-0,12 oz,\n2025-07-01,Wall plum,limed,Garden lime,2 lb,first half\n2026-02-01,Gate apple,shoots,,9 in,\n'];
export const RULES = typedIn(['tests/need'], (s) => s.startsWith('- id:') || s.includes('\n- id:'));
export const TREES = typedIn(['tests/hostile', 'tests/orchard', 'tests/bags', 'tests/need'], (s) => /(?:planted|across|apple|plum|blueberry|tub)/.test(s) && s.length < 200 && !s.includes('\n') && !s.includes('${'));
export const TEMPLATES = { html: read('templates/sheet.html.hbs'), txt: read('templates/sheet.txt.hbs') };
