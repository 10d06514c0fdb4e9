/** `medlar new`: a few questions, or flags; writes `orchard.yaml` and a form for the soil report. Writes over nothing. */
import { existsSync, rmSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { noticeText } from '../json/notices.ts';
import { ORCHARD_FILE } from '../orchard/files.ts';
import { loadOrchard } from '../orchard/load.ts';
import type { NewOrchard } from '../orchard/new-orchard.ts';
import { FORM_FILE, languageOf, NO_ANSWERS, orchardText, reportForm, splitTree } from '../orchard/new-orchard.ts';
import { seasonMistakes } from '../gather.ts';
import { localLanguage, parseWhere } from '../orchard/where.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Day } from '../units/date.ts';
import { seasonOf } from '../when/season.ts';
import { loadLanguage } from '../words/load.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { leadsOut } from './files.ts';
import { folderOf } from './folder.ts';
import type { Common, Io } from './io.ts';
import { EXIT, tame } from './io.ts';
import { writeWhole } from './write.ts';

type NewOptions = Common & {
  readonly name?: string; readonly where?: string; readonly budBreak?: string; readonly lastFrost?: string; readonly firstFrost?: string;
  readonly tree?: readonly string[]; readonly zone?: readonly string[]; readonly shed?: readonly string[]; readonly store?: readonly string[];
};


export async function newCommand(options: NewOptions, io: Io): Promise<number> {
  const json = options.json === true;
  const folder = folderOf(options, io);
  const files = [ORCHARD_FILE, FORM_FILE].map((f) => ({ path: join(folder, f), shown: relative(io.cwd, join(folder, f)) || f }));
  const typed = fromFlags(options);
  await learnAt(typed.answers.where);
  const stop = (notices: readonly Notice[], code?: number): number => give({ command: 'new', result: null, notices, language: languageOf(typed.answers), ...(code === undefined ? {} : { code }) }, json, io);

  const there = files.filter((f) => existsSync(f.path)).map((f) => notice('file-edited', 'error', { file: f.shown }));
  if (there.length > 0) return stop(there);
  const out = files.filter((f) => leadsOut(folder, dirname(f.path))).map((f) => notice('link-outside', 'error', { file: dirname(f.shown) }));
  if (out.length > 0) return stop(out);
  const today = options.today ?? io.today;
  const early = [...typed.notices, ...faults(typed.answers, today)];
  if (early.length > 0) return stop(early);
  if (typed.answers.trees.length === 0 && (json || !io.ask)) return stop([notice('answer-needed', 'error')], EXIT.answer);

  const answers = typed.answers.trees.length === 0 && io.ask ? await interview(typed.answers, today, io.ask, io) : typed.answers;
  if (answers === null) return stop([notice('new-ended', 'error')], EXIT.answer);
  const failed = writeBoth(files, [orchardText(answers), reportForm(answers)]);
  if (failed) return stop([failed]);
  const shown = files.map((f) => f.shown);
  const L = languageOf(answers);
  return give({ command: 'new', result: { files: shown }, notices: [], language: L, text: `${say(L, 'new', 'written', { files: shown.join(', ') })}\n${say(L, 'new', 'next', { report: shown[1]! })}\n` }, json, io);
}

/** The words of where the orchard lies. */
const learnAt = (where: string): Promise<void> => loadLanguage(localLanguage(parseWhere(where)?.country ?? null));

function fromFlags(o: NewOptions): { answers: NewOrchard; notices: Notice[] } {
  const lines = (o.tree ?? []).map((t) => ({ typed: t, tree: splitTree(t) }));
  const text = (x: string | undefined): string => (x === undefined || isUnknown(x) ? '' : x.trim());
  const list = (x: readonly string[] | undefined): string[] => (x ?? []).map(text).filter(Boolean);
  return {
    answers: {
      ...NO_ANSWERS, name: text(o.name), where: text(o.where), budBreak: text(o.budBreak), lastFrost: text(o.lastFrost), firstFrost: text(o.firstFrost),
      zones: list(o.zone), trees: lines.flatMap((l) => l.tree ?? []), shed: list(o.shed), store: list(o.store),
    },
    notices: lines.flatMap((l) => (l.tree ? [] : [notice('tree-nameless', 'error', { read: l.typed })])),
  };
}

/** Holds the place of a tree while the other answers are checked. */
const STAND_IN = { name: 'tree', line: 'apple' };

/** What the loader itself would say of the file; names that stand there twice first, since YAML hides the rest behind them. */
function faults(o: NewOrchard, today: Day): Notice[] {
  const twice = [o.zones, o.trees.map((t) => t.name)].flatMap((names) => repeated(names).map((read) => notice('name-twice', 'error', { read })));
  const once = { ...o, zones: unique(o.zones, (z) => z), trees: o.trees.length > 0 ? unique(o.trees, (t) => t.name) : [STAND_IN] };
  const commas = once.zones.filter((z) => z.includes(',')).map((zone) => notice('zone-reserved', 'error', { zone }));
  const { orchard, notices } = loadOrchard(orchardText(once), ORCHARD_FILE);
  const season = orchard ? seasonMistakes(orchard, seasonOf(orchard, today)) : [];
  const errors = [...notices, ...season].filter((n) => n.severity === 'error');
  // The file is not written yet, so a place in it would mislead.
  return [...twice, ...commas, ...errors.map(({ code, severity, facts }) => ({ code, severity, facts }))];
}

const same = (name: string): string => name.trim().toLowerCase();
const repeated = (names: readonly string[]): string[] => names.filter((n, i) => names.findIndex((m) => same(m) === same(n)) < i);
const unique = <T>(all: readonly T[], name: (x: T) => string): T[] => all.filter((x, i) => all.findIndex((y) => same(name(y)) === same(name(x))) === i);

const isUnknown = (text: string): boolean => /^(?:|don['’]?t know|do not know|not known|unknown|no idea|wei(?:ß|ss) nicht|unbekannt|no s[eé]|\?+|-)$/i.test(text.trim());
const isNo = (text: string): boolean => isUnknown(text) || /^(?:no|none|nein|keine[rns]?|ningun[oa]|nada)\.?$/i.test(text.trim());

type Ask = NonNullable<Io['ask']>;

/** Asks what the flags left open; each answer is checked at once and asked again. Null where the grower leaves. */
async function interview(given: NewOrchard, today: Day, ask: Ask, io: Io): Promise<NewOrchard | null> {
  let o = given;
  const put = (text: string): void => io.err(tame(`${text}\n`));
  const q = (key: QuestionKey, facts = {}): Promise<string> => ask(say(languageOf(o), 'new', key, facts));
  /** Takes the next state if nothing is wrong with it, else says what is. */
  const take = (next: NewOrchard): boolean => {
    const wrong = faults(next, today);
    if (wrong.length === 0) o = next;
    else put(wrong.map((n) => noticeText(n, languageOf(next))).join('\n'));
    return wrong.length === 0;
  };
  const once = async (key: QuestionKey, set: (answer: string) => NewOrchard): Promise<void> => {
    for (;;) {
      const answer = (await q(key)).trim();
      if (isNo(answer) || take(set(answer))) return;
    }
  };
  /** One a line, until an empty one. */
  const many = async (first: QuestionKey, next: QuestionKey, add: (answer: string) => NewOrchard | null): Promise<void> => {
    for (let n = 1; ; n++) {
      const answer = (await q(n === 1 ? first : next)).trim();
      if (isNo(answer)) return;
      const state = add(answer);
      if (!state) put(noticeText(notice('tree-nameless', 'error', { read: answer }), languageOf(o)));
      else take(state);
    }
  };
  const addTree = (answer: string): NewOrchard | null => {
    const tree = splitTree(answer);
    return tree && { ...o, trees: [...o.trees, tree] };
  };
  try {
    put(say(languageOf(o), 'new', 'hello'));
    if (!o.name) await once('q-name', (name) => ({ ...o, name }));
    if (!o.where) await once('q-where', (where) => ({ ...o, where }));
    await learnAt(o.where);
    if (!o.budBreak && !o.lastFrost) await once('q-spring', (day) => (/\bfrost\b/i.test(day) ? { ...o, lastFrost: dayOf(day) } : { ...o, budBreak: dayOf(day) }));
    if (!o.firstFrost) await once('q-frost', (day) => ({ ...o, firstFrost: dayOf(day) }));
    await once('q-lab', (lab) => ({ ...o, lab }));
    if (o.lab && o.zones.length === 0) await once('q-zones', (zones) => ({ ...o, zones: zones.split(',').map((z) => z.trim()).filter(Boolean) }));
    await many('q-tree', 'q-tree-next', addTree);
    if (o.trees.length === 0) await many('q-tree-needed', 'q-tree-next', addTree);
    if (o.trees.length === 0) return null;
    if (o.shed.length === 0) await many('q-shed', 'q-bag-next', (bag) => ({ ...o, shed: [...o.shed, bag] }));
    if (o.store.length === 0) await many('q-store', 'q-bag-next', (bag) => ({ ...o, store: [...o.store, bag] }));
    return o;
  } catch {
    // The terminal was closed, or the grower pressed ctrl-C or ctrl-D; the question's line is still open.
    put('');
    return null;
  }
}
type QuestionKey = 'q-name' | 'q-where' | 'q-spring' | 'q-frost' | 'q-lab' | 'q-zones' | 'q-tree' | 'q-tree-needed' | 'q-tree-next' | 'q-shed' | 'q-store' | 'q-bag-next';

/** "last frost 3 May", "about 12 April": the day alone. */
const dayOf = (text: string): string => text.replace(/\b(?:last|first|frost|about|around|on|early|late|spring|autumn|fall)\b[:,]?/gi, '').trim() || text;

/** Both or neither. */
function writeBoth(files: readonly { readonly path: string; readonly shown: string }[], texts: readonly [string, string]): Notice | null {
  const [orchard, form] = files as [typeof files[number], typeof files[number]];
  const failed = writeWhole(form.path, form.shown, texts[1]);
  if (failed) return failed;
  const late = writeWhole(orchard.path, orchard.shown, texts[0]);
  if (late) rmSync(form.path, { force: true });
  return late;
}
