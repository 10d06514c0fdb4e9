/** Open questions of a report, asked in place: each once, the lab in place of a method. */
import { questionText } from '../json/notices.ts';
import { ratingText, takenAs } from '../json/read-words.ts';
import { rateSample } from '../rating/rate.ts';
import type { Question } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import { answer, answerLine, labAnswer, labOf, questionsOf, reportOf, typeLab } from '../soil/hand.ts';
import type { Reading } from '../soil/reading.ts';
import type { Lab } from '../tables/labs.ts';
import { LAB_WORDS, labMethods, labNamed, methodName } from '../tables/labs.ts';
import { say, sayIfKnown } from '../words/words.ts';
import type { Sitting } from './sitting.ts';
import { asked, choose, keep, tell } from './sitting.ts';

/** As it stands in the report now: the method of a lab named before is known of it. */
export function readingText(s: Sitting, reading: Pick<Reading, 'item' | 'value' | 'place'>, beforeQuestions: boolean): string {
  const rated = reportOf(s.hand).samples.flatMap((sample) => rateSample(sample, s.home));
  const r = rated.find((x) => x.reading.item === reading.item && x.reading.place.line === reading.place.line) ?? rated.find((x) => x.reading.item === reading.item && x.reading.value === reading.value);
  if (!r) return say(s.language, 'hand', 'kept');
  const open = beforeQuestions && questionsOf(s.hand).some((q) => q.about === r.reading.item && isAsked(s, q));
  return open ? say(s.language, 'hand', 'read-asked', { taken: takenAs(r, s.home) }) : say(s.language, 'hand', 'read', { taken: takenAs(r, s.home), rating: ratingText(r, s.home) });
}

export const keyOf = (q: Question): string => `${q.code} ${q.about}`;

/** Whether a question waits that a line of the report can answer. */
const isAsked = (s: Sitting, q: Question): boolean => answerLine(q, '') !== null && !s.asked.has(keyOf(q));

export function labText(s: Sitting, named: string): string {
  const L = s.language;
  if (labOf(s.hand) === 'unknown') return say(L, 'hand', 'lab-unknown');
  const known = labMethods(named);
  if (!known) return say(L, 'hand', 'lab-other', { named, guess: suggest(named, LAB_WORDS)[0] ?? '' });
  const lab: Lab | null = labNamed(named);
  const shown = (['phosphorus', 'potassium', 'buffer-ph'] as const).filter((i) => known[i]);
  if (shown.length === 0) return say(L, 'hand', 'lab-silent', { named });
  const methods = shown.map((i) => `${sayIfKnown(L, 'item', i)} ${methodName(known[i]!)}`).join(', ');
  return say(L, 'hand', shown.some((i) => lab?.methods[i] === undefined) ? 'lab-memory' : 'lab-taken', { named, methods });
}

/** What is open in the report is asked once, the lab in place of the method. */
export async function questions(s: Sitting): Promise<void> {
  for (;;) {
    const q = questionsOf(s.hand).find((x) => isAsked(s, x));
    if (!q) return;
    s.asked.add(keyOf(q));
    if (q.code === 'method-missing' && labOf(s.hand) === null) await askLab(s, q);
    else await askChoice(s, q);
    const about = reportOf(s.hand).samples.flatMap((x) => x.readings).find((r) => r.item === q.about);
    if (about && !questionsOf(s.hand).some((x) => x.about === q.about && isAsked(s, x))) tell(s.io, readingText(s, about, false));
  }
}

async function askChoice(s: Sitting, q: Question): Promise<void> {
  const L = s.language;
  const usual = q.code === 'unit-missing' ? labNamed(labOf(s.hand) ?? '')?.unit : undefined;
  const choices = usual !== undefined && q.choices.includes(usual) ? [usual, ...q.choices.filter((c) => c !== usual)] : q.choices;
  const shown = q.code === 'method-missing' ? choices.map((c) => methodName(c as Parameters<typeof methodName>[0])) : choices;
  const at = await choose(s, `${questionText(q, L)}\n${say(L, 'ask', q.changes)}`, [...shown, say(L, 'ask', 'dont-know')]);
  const next = answer(s.hand, q, choices[at] ?? 'unknown');
  if (next) keep(s, next);
}

async function askLab(s: Sitting, q: Question): Promise<void> {
  const L = s.language;
  let question = say(L, 'hand', 'lab-question', { question: questionText(q, L), changes: say(L, 'ask', q.changes) });
  let other: string | null = null;
  for (;;) {
    const said = labAnswer(await asked(s, question));
    if (said.is === 'other' && other !== said.named) {
      other = said.named;
      question = `${labText(s, said.named)}\n${say(L, 'hand', 'prompt')}`;
      continue;
    }
    if (said.is === 'method') {
      const next = answer(s.hand, q, said.method);
      if (next) keep(s, next);
      return;
    }
    let named = said.is === 'labs' ? said.names[0]! : other ?? 'unknown';
    if (said.is === 'labs' && said.names.length > 1) {
      const at = await choose(s, say(L, 'hand', 'lab-which', { named: said.names.join(', ') }), [...said.names, say(L, 'ask', 'dont-know')]);
      named = said.names[at] ?? 'unknown';
    }
    keep(s, typeLab(s.hand, named).hand);
    tell(s.io, said.is === 'labs' && named !== 'unknown' ? labText(s, named) : say(L, 'hand', 'lab-unknown'));
    // Where the method goes by the soil, the paper is asked.
    if (questionsOf(s.hand).some((x) => x.code === q.code && x.about === q.about)) await askChoice(s, q);
    return;
  }
}

/** The questions of a report that stands there already. */
export async function answering(s: Sitting): Promise<void> {
  const n = questionsOf(s.hand).filter((q) => isAsked(s, q)).length;
  tell(s.io, say(s.language, 'hand', n === 1 ? 'asks1' : 'asks', { n, file: s.target.shown }));
  await questions(s);
}
