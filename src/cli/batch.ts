/**
 * `medlar plan --batch`: a filter. One orchard a line in, as JSON; its answer a line out, as `plan --json` gives it, in the same order.
 * Nothing is kept from line to line, and a line that is wrong gets an answer of its own and stops nothing.
 */
import { gather } from '../gather.ts';
import { collector } from '../json/figures.ts';
import { planJson } from '../json/plan-json.ts';
import { DIARY_FILE, ORCHARD_FILE, RULES_FILE } from '../orchard/files.ts';
import { readDiary } from '../orchard/diary.ts';
import { languageAsked } from '../orchard/language.ts';
import { loadRules } from '../orchard/own-rules.ts';
import { countryIn } from '../orchard/where.ts';
import { notice } from '../reason/notice.ts';
import type { Day } from '../units/date.ts';
import { canBeToday, isoDate } from '../units/date.ts';
import { loadLanguage } from '../words/load.ts';
import { spoken } from '../words/words.ts';
import type { Answer } from './answer.ts';
import { give } from './answer.ts';
import type { Io } from './io.ts';
import { EXIT } from './io.ts';
import { planWhole } from './plan-whole.ts';

/** The texts of an orchard's folder: `files` by their paths in it. `today` where the plan is for another day. */
type Folder = { readonly files: Readonly<Record<string, string>>; readonly today?: string };

/** A line longer than this is no orchard; it is passed over to its end. */
const LONGEST = 8_000_000;

export async function batch(io: Io, today: Day): Promise<number> {
  for await (const line of linesOf(io.chunks?.() ?? once(io))) {
    if (line !== null && line.trim() === '') continue;
    give(await answerTo(line, today), true, io);
    await io.rested?.();
  }
  return EXIT.fine;
}

async function* once(io: Io): AsyncGenerator<Uint8Array> {
  yield Buffer.from(await io.stdin());
}

/** The lines, one at a time; null for one that is too long. */
async function* linesOf(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<string | null> {
  let held: Uint8Array[] = [];
  let size = 0;
  const taken = (): string | null => {
    const line = size > LONGEST ? null : Buffer.concat(held).toString('utf8');
    [held, size] = [[], 0];
    return line;
  };
  const hold = (part: Uint8Array): void => {
    size += part.length;
    // Too long already: its end is waited for, and nothing of it kept.
    if (size > LONGEST) held = [];
    else held.push(part);
  };
  for await (const chunk of chunks) {
    let from = 0;
    for (let end = chunk.indexOf(10); end >= 0; end = chunk.indexOf(10, from)) {
      hold(chunk.subarray(from, end));
      yield taken();
      from = end + 1;
    }
    hold(chunk.subarray(from));
  }
  if (size > 0) yield taken();
}

const WRONG: Answer = { command: 'plan', result: null, notices: [], language: 'en-US' };

async function answerTo(line: string | null, today: Day): Promise<Answer> {
  const folder = line === null ? null : folderIn(line);
  if (!folder) return { ...WRONG, notices: [notice('batch-line', 'error', { most: LONGEST, example: '{"files":{"orchard.yaml":"...","soil/2025.txt":"..."}}' })] };
  const when = folder.today === undefined ? today : isoDate(folder.today);
  if (when === null || !canBeToday(when)) return { ...WRONG, notices: [notice('date-wrong', 'error', { key: 'today', read: folder.today! })] };
  const text = (name: string): string | undefined => (Object.hasOwn(folder.files, name) ? folder.files[name] : undefined);
  const source = text(ORCHARD_FILE) ?? '';
  await loadLanguage(languageAsked(source));
  const language = spoken(languageAsked(source));
  try {
    const [diary, rules] = [text(DIARY_FILE), text(RULES_FILE)];
    const found = gather(source, (file, place) => {
      const report = text(file);
      return report === undefined ? { refused: notice('file-missing', 'error', { file, why: 'absent' }, place) } : { text: report };
    }, diary === undefined ? { entries: [], notices: [] } : readDiary(diary, DIARY_FILE, countryIn(source)), when, rules === undefined ? undefined : loadRules(rules));
    const { orchard, notices, questions, zones } = found;
    if (!orchard || notices.some((n) => n.severity === 'error')) return { command: 'plan', result: null, notices, questions, language };
    const plan = await planWhole(orchard, zones, when, { diary: found.diary });
    const figures = collector(language, orchard.where.units);
    return { command: 'plan', result: planJson(plan, figures), notices: [...notices, ...plan.notices], questions: [...questions, ...plan.questions], figures: figures.all(), language };
  } catch (e) {
    // A fault of ours in one orchard is no reason to leave the others unplanned.
    return { ...WRONG, notices: [notice('fault', 'error', { why: e instanceof Error ? e.message : String(e) })], language };
  }
}

function folderIn(line: string): Folder | null {
  try {
    const read = JSON.parse(line) as Partial<Folder> | null;
    if (!read || typeof read.files !== 'object' || read.files === null || !Object.values(read.files).every((t) => typeof t === 'string')) return null;
    if (read.today !== undefined && typeof read.today !== 'string') return null;
    return { files: read.files, ...(read.today === undefined ? {} : { today: read.today }) };
  } catch {
    return null;
  }
}
