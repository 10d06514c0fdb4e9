/** How a command answers: JSON in one envelope, or text; the exit code follows from what was found. */
import { noticeJson, noticeText, questionJson, questionText } from '../json/notices.ts';
import type { Notice, Question } from '../reason/notice.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import type { Io } from './io.ts';
import { EXIT, tame } from './io.ts';

export type Answer = {
  readonly command: string;
  readonly result: unknown;
  readonly notices: readonly Notice[];
  readonly questions?: readonly Question[];
  readonly figures?: Readonly<Record<string, unknown>>;
  /** The result as text; said on stdout. */
  readonly text?: string;
  readonly code?: number;
  readonly language: Language;
};

const FILE_CODES: readonly string[] = ['file-missing', 'file-unwritable', 'file-edited', 'no-orchard'];

/** Mistakes in the input win over files that cannot be read, and both over questions. */
function codeOf(notices: readonly Notice[]): number {
  const errors = notices.filter((n) => n.severity === 'error');
  if (errors.some((n) => n.code === 'usage' || n.code === 'tree-unknown' || n.code === 'figure-unknown' || n.code === 'zone-unknown')) return EXIT.usage;
  if (errors.some((n) => !FILE_CODES.includes(n.code))) return EXIT.mistakes;
  return errors.length > 0 ? EXIT.file : EXIT.fine;
}

export function give(answer: Answer, json: boolean, io: Io): number {
  const { language, notices, questions = [] } = answer;
  const code = answer.code ?? codeOf(notices);
  if (json) {
    const body = JSON.stringify({
      medlar: MEDLAR_VERSION, schema: 1, command: answer.command, ok: code === EXIT.fine, result: answer.result ?? null,
      questions: questions.map((q) => questionJson(q, language)), notices: notices.map((n) => noticeJson(n, language)), figures: answer.figures ?? {},
    });
    // JSON leaves these as they are, and a terminal may obey them.
    io.out(`${body.replace(/[\u007f-\u009f]/g, (c) => `\\u00${c.charCodeAt(0).toString(16)}`)}\n`);
    return code;
  }
  if (answer.text) io.out(tame(answer.text));
  const errors = notices.filter((n) => n.severity === 'error');
  // A plan tells its own warnings; those that point into a file are told here.
  const told = notices.filter((n) => n.severity === 'error' || (n.severity === 'warning' && (n.place !== undefined || answer.command === 'read')));
  if (told.length > 0) io.err(tame(told.map((n) => diagnostic(n, language)).join('\n')));
  if (errors.length > 0 && answer.command === 'check') io.err(`${say(language, 'say', errors.length === 1 ? 'mistakes1' : 'mistakesN', { n: errors.length })}\n`);
  return code;
}

/** Where, what was read, what was expected; the line with a caret under the fault. */
function diagnostic(n: Notice, language: Language): string {
  const text = noticeText(n, language);
  if (!n.place) return `${text}\n`;
  const { file, line, column, length, source } = n.place;
  const from = Math.max(0, column - 50);
  const shown = [...source].slice(from, from + 78).join('');
  const gutter = String(line).padStart(5);
  const lead = [...shown].slice(0, column - 1 - from).map((c) => (c === '\t' ? '\t' : ' ')).join('');
  const caret = '^'.repeat(Math.max(1, Math.min(length, [...shown].length - (column - 1 - from))));
  return `${say(language, 'say', 'what-wrong', { file, line })}${text}\n${gutter} | ${shown}\n${' '.repeat(5)} | ${lead}${caret}\n`;
}

/** Questions as a numbered list, each with what it would change. */
export function questionList(questions: readonly Question[], language: Language): string {
  return questions.map((q, i) => {
    const choices = [...q.choices, say(language, 'ask', 'dont-know')].map((c, k) => `${String.fromCharCode(97 + k)}) ${c}`).join('  ');
    return `${i + 1}  ${questionText(q, language)}${q.choices.length > 0 ? `\n   ${choices}` : ''}\n   ${say(language, 'ask', q.changes)}`;
  }).join('\n');
}
