/** `medlar shop [BAG…]`: compares bags for this orchard, or for `--need NEED`. */
import { parseNeed } from '../bags/need-text.ts';
import type { Purchase } from '../bags/purchase.ts';
import { cheapest, MOST_IN_ALL, MOST_KINDS } from '../bags/purchase.ts';
import type { Ranked, Why } from '../bags/shop.ts';
import { currenciesOf, offerFor, rank } from '../bags/shop.ts';
import type { Goal } from '../bags/weigh.ts';
import { noticeText } from '../json/notices.ts';
import { offersFor, wantedInGround } from '../json/offers.ts';
import { lineOf } from '../json/shop-words.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { System } from '../words/show.ts';
import { showMass, showPrice } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { give, questionList } from './answer.ts';
import { bagName } from '../orchard/bag.ts';
import { surroundings, typedBags, withStdin } from './bags.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { EXIT } from './io.ts';

type ShopOptions = Common & { readonly need?: string };

export async function shopCommand(args: readonly string[], options: ShopOptions, io: Io): Promise<number> {
  const json = options.json === true;
  const folder = openFolder(options, io, options.today ?? io.today);
  const typedNeed = options.need === undefined ? null : parseNeed(options.need === '-' ? await io.stdin() : options.need);
  // With a need of its own, neither the trees nor the reports matter.
  const around = typedNeed ? surroundings(options, io) : { orchard: folder.orchard, language: folder.language, notices: folder.notices.filter((n) => n.severity === 'error') };
  const { orchard, language: L } = around;
  const fail = (notices: readonly Notice[], code?: number): number => give({ command: 'shop', result: null, notices, language: L, ...(code === undefined ? {} : { code }) }, json, io);
  if (around.notices.length > 0) return fail(around.notices);
  const store = orchard?.store ?? [];
  const typed = typedBags(options.need === '-' ? args : await withStdin(args, io), [...store, ...orchard?.shed ?? []], orchard?.where.country ?? null);
  const mistakes = [...typedNeed?.notices ?? [], ...typed.notices];
  if (mistakes.length > 0) return fail(mistakes);
  // Everything here would have to be bought.
  const bags = (args.length > 0 ? typed.bags : store.filter((b) => !b.amends)).map((b) => ({ ...b, left: null }));
  if (bags.length === 0) return fail([notice('bags-none', 'error')], EXIT.usage);
  const currencies = currenciesOf(bags);
  if (currencies.length > 1) return fail([notice('currencies-mixed', 'error', { list: currencies.join(', ') })]);

  const { offers, questions } = typedNeed ? { offers: bags.map((b) => offerFor(typedNeed.goal!, b)), questions: [] } : offersFor(orchard!, folder.zones, folder.today, bags, folder.diary);
  const ranked = rank(offers);
  const goal: Goal = typedNeed ? typedNeed.goal! : wantedInGround(orchard!, folder.zones, folder.today, folder.diary);
  const eligible = ranked.filter((r) => typedNeed !== null || !REFUSED.includes(r.why)).map((r) => r.offer.bag);
  const found = cheapest(goal, eligible, (await import('../bags/solve.ts')).solve);
  const tooLarge = found !== null && 'tooLarge' in found;
  const purchase = found === null || 'tooLarge' in found ? null : found;
  const notices = [...(typedNeed ? [] : folder.notices), ...(tooLarge ? [notice('purchase-too-large', 'note', { kinds: MOST_KINDS, bags: MOST_IN_ALL })] : [])];
  const asked = typedNeed ? [] : [...folder.questions, ...questions];
  const result = {
    bags: ranked.map((r) => ({ label: r.offer.bag.label, verdict: r.verdict, why: r.why, bags: r.bags, cost: r.cost, costPerNeededKg: r.costPerNeededKg, leftG: r.leftG, over: r.offer.over, short: r.offer.short })),
    purchase: purchase && { bags: purchase.bags.map(({ bag, bags: n }) => ({ label: bag.label, bags: n })), cost: purchase.cost, over: purchase.over, short: purchase.short },
  };
  const system = orchard?.where.units ?? typedNeed?.units ?? 'metric';
  const lines = [
    ...ranked.map((r) => `${bagName(r.offer.bag)}${r.offer.bag.g === null ? '' : `, ${showMass(r.offer.bag.g, system)}`}: ${lineOf(r, typedNeed === null, system, L)}`), ...(purchase && !isSame(purchase, ranked[0]!) ? [purchaseLine(purchase, system, L)] : []),
    ...notices.filter((n) => n.code === 'purchase-too-large').map((n) => noticeText(n, L)),
    ...(asked.length > 0 ? ['', say(L, 'plan', asked.length === 1 ? 'questions-1' : 'questions-n', { n: asked.length }), questionList(asked, L)] : []),
  ];
  return give({ command: 'shop', result, notices, questions: asked, language: L, text: `${lines.join('\n')}\n` }, json, io);
}

/** What is no use to this orchard, alone or in a mix. */
const REFUSED: readonly Why[] = ['feeds-nothing', 'amends', 'weed-killer', 'phosphate-unwanted', 'potash-unwanted', 'phosphate-untested', 'potash-untested', 'nitrogen-unwanted'];

/** Whether the whole purchase is just the first bag of the list. */
const isSame = ({ bags }: Purchase, first: Ranked): boolean => bags.length === 1 && bags[0]!.bag === first.offer.bag && bags[0]!.bags === first.bags;

function purchaseLine(purchase: Purchase, system: System, L: Language): string {
  const list = purchase.bags.map(({ bag, bags: n }) => say(L, 'bags', 'some-bags', { n, unit: say(L, 'plan', n === 1 ? 'bag' : 'bags'), bag: bagName(bag), weight: showMass(bag.g!, system) })).join(' + ');
  return say(L, 'bags', 'purchase', { list, cost: showPrice(purchase.cost, purchase.bags[0]!.bag.price!.currency) });
}
