/** `medlar weigh NEED BAG…`: how much of each bag meets one need. */
import type { NeedText } from '../bags/need-text.ts';
import { parseNeed } from '../bags/need-text.ts';
import { currenciesOf } from '../bags/shop.ts';
import type { Goal, Grams, Weighed } from '../bags/weigh.ts';
import { MOST_BAGS, namedIn, weigh } from '../bags/weigh.ts';
import { noticeText } from '../json/notices.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { NUTRIENTS } from '../units/substance.ts';
import type { System } from '../words/show.ts';
import { showDose, showNutrient, showVolume } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { bagName } from '../orchard/bag.ts';
import { mixingFaults, mixingNotice } from '../orchard/mixing.ts';
import { inWaterText, solutionFaults, solutionNotes } from './in-water.ts';
import { surroundings, typedBags, weedWarnings, withStdin } from './bags.ts';
import type { Common, Io } from './io.ts';
import { EXIT } from './io.ts';

export async function weighCommand(need: string, args: readonly string[], options: Common, io: Io): Promise<number> {
  const json = options.json === true;
  const { orchard, language: L, notices: broken } = await surroundings(options, io);
  const fail = (notices: readonly Notice[], code?: number): number => give({ command: 'weigh', result: null, notices, language: L, ...(code === undefined ? {} : { code }) }, json, io);
  if (broken.length > 0) return fail(broken);
  const wanted = parseNeed(need === '-' ? await io.stdin() : need, orchard?.where.country ?? null);
  const typed = typedBags(need === '-' ? args : await withStdin(args, io), [...orchard?.shed ?? [], ...orchard?.store ?? []], orchard?.where.country ?? null);
  const mistakes = [...wanted.notices, ...typed.notices];
  if (wanted.goal === null || mistakes.length > 0) return fail(mistakes);
  if (typed.bags.length === 0) return fail([notice('bags-none', 'error')], EXIT.usage);
  if (typed.bags.length > MOST_BAGS) return fail([notice('bags-too-many', 'error', { n: typed.bags.length, most: MOST_BAGS })], EXIT.usage);

  const currencies = currenciesOf(typed.bags);
  const mixed = currencies.length > 1;
  const { solve } = await import('../bags/solve.ts');
  // Prices that cannot be compared are not.
  const weighed = weigh(wanted.goal, mixed ? typed.bags.map((b) => ({ ...b, price: null })) : typed.bags, solve);
  const used = weighed.bags.filter((w) => w.g > 0);
  const spoiled = wanted.waterL === undefined ? [] : solutionFaults(used, wanted.waterL);
  if (spoiled.length > 0) return fail(spoiled, EXIT.impossible);
  const notices = [...typed.notes, ...weedWarnings(typed.bags), ...(wanted.waterL === undefined ? mixingFaults(used.map((w) => w.bag)).map(mixingNotice) : solutionNotes(used, weighed, wanted.waterL)), ...(mixed ? [notice('currencies-mixed', 'warning', { list: currencies.join(', ') })] : [])];
  const percent = (share: number): number => Number((100 * share).toFixed(10));
  const result = {
    bags: weighed.bags.map(({ bag, g, mL }) => ({ label: bag.label, grade: { N: percent(bag.grade.N), P2O5: percent(bag.grade.P2O5), K2O: percent(bag.grade.K2O) }, g, mL })),
    supplied: weighed.supplied, ...(wanted.waterL === undefined ? {} : { waterL: wanted.waterL }), over: weighed.over, short: weighed.short,
    ...(weighed.limiting === undefined ? {} : { limiting: weighed.limiting }), ...(weighed.covering === undefined ? {} : { covering: weighed.covering }),
  };
  const lines = [...textOf(wanted, weighed, orchard?.where.units ?? wanted.units, L), ...notices.map((n) => noticeText(n, L))];
  return give({ command: 'weigh', result, notices, language: L, text: `${lines.join('\n')}\n` }, json, io);
}

function textOf({ goal: wanted, waterL }: NeedText, weighed: Weighed, system: System, L: Language): string[] {
  const goal = wanted!;
  if (waterL !== undefined) return inWaterText(weighed, waterL, system, L);
  const lines = weighed.bags.map(({ bag, g, mL }) => (g > 0
    ? say(L, 'bags', 'amount', { amount: showDose(g, system, L), bag: bagName(bag), measure: mL === null ? '' : showVolume(mL, system, L) })
    : say(L, 'bags', 'none-of', { bag: bagName(bag) })));
  const out = offList(weighed, goal, system, L);
  lines.push(out === '' ? say(L, 'bags', 'exact') : say(L, 'bags', 'nearest', { list: out }));
  const also = NUTRIENTS.filter((n) => goal[n] === undefined && weighed.supplied[n] > 0).map((nutrient) => say(L, 'bags', 'brings', { amount: showNutrient(weighed.supplied[nutrient], system, L), nutrient }));
  if (also.length > 0) lines.push(say(L, 'bags', 'also', { list: also.join(', ') }));
  if (out !== '' && weighed.limiting && weighed.limiting.g > 0) lines.push(say(L, 'bags', 'limiting', { amount: showDose(weighed.limiting.g, system, L), nutrient: weighed.limiting.nutrient }));
  if (out !== '' && weighed.covering) lines.push(say(L, 'bags', 'covering', { amount: showDose(weighed.covering.g, system, L), nutrient: weighed.covering.nutrient }));
  return lines;
}

/** "2 oz N short, 3 oz P2O5 over"; empty where all is met. */
function offList({ over, short }: { over: Grams; short: Grams }, goal: Goal, system: System, L: Language): string {
  return namedIn(goal).flatMap((nutrient) => [
    ...(over[nutrient] > 0 ? [say(L, 'bags', 'over', { amount: showNutrient(over[nutrient], system, L), nutrient })] : []),
    ...(short[nutrient] > 0 ? [say(L, 'bags', 'short', { amount: showNutrient(short[nutrient], system, L), nutrient })] : []),
  ]).join(', ');
}
