/** Notices and questions with their sentences said. */
import type { Facts, Notice, Question } from '../reason/notice.ts';
import type { Language } from '../words/words.ts';
import { say, sayIfKnown } from '../words/words.ts';

export type NoticeJson = { code: string; severity: string; text: string; file?: string; line?: number; column?: number };
export type QuestionJson = { code: string; text: string; about: string; choices: string[]; changes: string };

/** Facts that are keys themselves, said in words: an item of the report, the cause of a failure. */
const spoken = (facts: Facts, language: Language): Facts => ({
  ...facts,
  ...(typeof facts.item === 'string' ? { item: sayIfKnown(language, 'item', facts.item) } : {}),
  ...(typeof facts.labRating === 'string' ? { labRating: sayIfKnown(language, 'rating', facts.labRating) } : {}),
  ...(typeof facts.ourRating === 'string' ? { ourRating: sayIfKnown(language, 'rating', facts.ourRating) } : {}),
  ...(typeof facts.heaviness === 'string' ? { heaviness: sayIfKnown(language, 'feel', facts.heaviness) } : {}),
  ...(typeof facts.why === 'string' ? { why: sayIfKnown(language, 'cause', facts.why) } : {}),
});

export const noticeText = (n: Notice, language: Language): string => say(language, 'notice', n.code, spoken(n.facts, language));
export const questionText = (q: Question, language: Language): string => say(language, 'ask', q.code, spoken(q.facts, language));

export function noticeJson(n: Notice, language: Language): NoticeJson {
  const place = n.place ? { file: n.place.file, line: n.place.line, column: n.place.column } : {};
  return { code: n.code, severity: n.severity, text: noticeText(n, language), ...place };
}

export function questionJson(q: Question, language: Language): QuestionJson {
  return {
    code: q.code, text: questionText(q, language), about: q.about,
    choices: [...q.choices, say(language, 'ask', 'dont-know')], changes: say(language, 'ask', q.changes),
  };
}
