/** `medlar blend BAG…`: the grade of a mix in parts; with `--balanced` the parts that give as much N as P2O5 as K2O; with `--to` a batch of a stated grade. */
import type { Apart, Blend } from '../bags/blend.ts';
import { balance, batchOf, blend } from '../bags/blend.ts';
import { MOST_BAGS } from '../bags/weigh.ts';
import { noticeText } from '../json/notices.ts';
import type { Bag } from '../orchard/bag.ts';
import { bagName, parseBag } from '../orchard/bag.ts';
import { amountsIn } from '../orchard/label-amounts.ts';
import type { Orchard } from '../orchard/load.ts';
import { numberOf } from '../orchard/measure.ts';
import { mixingFaults, mixingNotice } from '../orchard/mixing.ts';
import type { Notice } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import { NUTRIENTS } from '../units/substance.ts';
import { OUNCE } from '../units/units.ts';
import { showMass } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { surroundings, typedBag, weedWarnings, withStdin } from './bags.ts';
import type { Common, Io } from './io.ts';
import { EXIT } from './io.ts';

type BlendOptions = Common & { readonly balanced?: true; readonly to?: string; readonly batch?: string };

export async function blendCommand(args: readonly string[], options: BlendOptions, io: Io): Promise<number> {
  const json = options.json === true;
  const { orchard, language: L, notices: broken } = await surroundings(options, io);
  const fail = (notices: readonly Notice[], code?: number): number => give({ command: 'blend', result: null, notices, language: L, ...(code === undefined ? {} : { code }) }, json, io);
  if (broken.length > 0) return fail(broken);
  const known = [...orchard?.shed ?? [], ...orchard?.store ?? []];
  const read = joined(await withStdin(args, io)).map((text) => partOf(text, known, orchard?.where.country ?? null));
  const mistakes = read.flatMap((r) => ('notices' in r ? r.notices : []));
  if (mistakes.length > 0) return fail(mistakes);
  const mix = read.flatMap((r) => ('bag' in r ? [r] : []));
  const bags = mix.map((m) => m.bag);
  if (mix.length === 0) return fail([notice('bags-none', 'error')], EXIT.usage);
  if (options.balanced && mix.some((m) => m.told)) return fail([notice('parts-balanced', 'error')], EXIT.usage);
  if (options.balanced && mix.length > MOST_BAGS) return fail([notice('bags-too-many', 'error', { n: mix.length, most: MOST_BAGS })], EXIT.usage);

  if (options.to !== undefined || options.batch !== undefined) return toGrade(bags, options, orchard, L, json, io);
  const made = options.balanced ? balance(bags, (await import('../bags/solve.ts')).solve) : blend(mix);
  if ('unbalanced' in made) {
    const code = made.unbalanced === 'missing' ? 'balance-missing' as const : made.unbalanced === 'over' ? 'balance-over' as const : 'balance-under' as const;
    return fail([notice(code, 'error', { nutrient: made.nutrient })], EXIT.impossible);
  }
  // A weight on a label is that of the bag, not a part of the mix.
  const weights = !options.balanced && mix.every((m) => !m.told) && new Set(bags.map((b) => b.g)).size > 1;
  const notices = [...mix.flatMap((m) => m.notes), ...weedWarnings(bags), ...mixingFaults(bags).map(mixingNotice), ...(weights ? [notice('weights-no-parts', 'note')] : [])];
  const result = { grade: made.grade, parts: made.parts.map(({ bag, share }) => ({ label: bag.label, share })) };
  const lines = [...made.parts.map(({ bag, share }) => say(L, 'bags', 'part', { share: rounded(100 * share), bag: bagName(bag) })), say(L, 'bags', 'grade', { grade: gradeOf(made) }), ...notices.map((n) => noticeText(n, L))];
  return give({ command: 'blend', result, notices, language: L, text: `${lines.join('\n')}\n` }, json, io);
}

/** A batch of a stated grade; without a weight a hundred of the orchard's own. */
async function toGrade(bags: readonly Bag[], { to = '', batch }: BlendOptions, orchard: Orchard | null, L: Language, json: boolean, io: Io): Promise<number> {
  const fail = (of: Notice, code: number = EXIT.usage): number => give({ command: 'blend', result: null, notices: [of], language: L, code }, json, io);
  const system = orchard?.where.units ?? (/kg|kilo|\bg\b|gram|tonne/i.test(batch ?? '') ? 'metric' : 'us');
  const wanted = parseBag(to, null, false, placeIn('', 1, to, 0, to.length)).bag;
  if (!wanted || wanted.printed === '') return fail(notice('blend-to', 'error', { read: to }));
  const told = batch === undefined ? null : amountsIn(batch, orchard?.where.country ?? 'US').weights[0];
  if (batch !== undefined && typeof told !== 'number') return fail(notice('blend-batch', 'error', { read: batch }));
  const g = typeof told === 'number' ? told : 100 * (system === 'us' ? OUNCE * 16 : 1000);
  const made = batchOf(wanted.grade, g, bags, (await import('../bags/solve.ts')).solve);
  if ('apart' in made) return fail(apartNotice(made), EXIT.impossible);
  if ('noBatch' in made) {
    const list = NUTRIENTS.filter((n) => made.out[n] > 1e-6 * g).map((n) => n).join(', ');
    return fail(notice(made.noBatch === 'full' ? 'batch-full' : 'batch-out', 'error', { grade: wanted.printed, list }), EXIT.impossible);
  }
  const notices = [...weedWarnings(bags), ...mixingFaults(bags).map(mixingNotice)];
  const result = { grade: { N: 100 * wanted.grade.N, P2O5: 100 * wanted.grade.P2O5, K2O: 100 * wanted.grade.K2O }, parts: made.parts.map(({ bag, g: mine }) => ({ label: bag.label, share: mine / g, g: mine })), fillerG: made.fillerG };
  const lines = [...made.parts.map(({ bag, g: mine }) => say(L, 'bags', 'amount', { amount: showMass(mine, system, L), bag: bagName(bag), measure: '' })), ...(made.fillerG > 1 ? [say(L, 'bags', 'filler', { amount: showMass(made.fillerG, system, L) })] : []), say(L, 'bags', 'batch', { amount: showMass(g, system, L), grade: wanted.printed }), ...notices.map((n) => noticeText(n, L))];
  return give({ command: 'blend', result, notices, language: L, text: `${lines.join('\n')}\n` }, json, io);
}

const apartNotice = ({ apart: { a, b } }: Apart): Notice => notice('mix-apart', 'error', { a: bagName(a), b: bagName(b) });

const rounded = (x: number): number => Number(x.toFixed(2));
const gradeOf = ({ grade }: Blend): string => [grade.N, grade.P2O5, grade.K2O].map(rounded).join('-');

/** `2 x 46-0-0` reaches us in three words where nobody quotes it. */
function joined(args: readonly string[]): string[] {
  const whole: string[] = [];
  for (const arg of args) {
    const last = whole.at(-1);
    if (last !== undefined && /^[\d.,/ ]+[x×*]?$/i.test(last)) whole[whole.length - 1] = `${last} ${arg}`;
    else whole.push(arg.trim());
  }
  return whole;
}

/** "2x46-0-0" or "46-0-0"; `told` where the parts were given. */
function partOf(text: string, known: readonly Bag[], country: string | null): { bag: Bag; notes: readonly Notice[]; parts: number; told: boolean } | { notices: readonly Notice[] } {
  const m = /^(-?[\d.,/ ]*\d) *[x×*] *(\S.*)$/i.exec(text);
  const typed = typedBag(m ? m[2]! : text, known, country);
  const parts = m ? numberOf(m[1]!) : 1;
  const wrong = parts !== null && typeof parts === 'object' ? [notice('number-two-ways', 'error', { read: parts.unclear, dot: parts.unclear.replace(',', '.'), plain: parts.unclear.replace(',', '') })]
    : parts === null || !(parts > 0 && parts <= MOST_PARTS) ? [notice('part-wrong', 'error', { read: text })] : [];
  if ('notices' in typed || wrong.length > 0 || typeof parts !== 'number') return { notices: [...wrong, ...('notices' in typed ? typed.notices : [])] };
  return { ...typed, parts, told: m !== null };
}

/** More than these parts of one bag is a slip of the keys. */
const MOST_PARTS = 1_000_000;
