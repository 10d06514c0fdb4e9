/** `medlar shop [BAG…]`: compares bags for this orchard, or for `--need NEED`. */
import { byYalps } from '../bags/by-yalps.ts';
import { parseNeed } from '../bags/need-text.ts';
import type { Purchase } from '../bags/purchase.ts';
import { cheapest } from '../bags/purchase.ts';
import type { Ranked, Why } from '../bags/shop.ts';
import { asBought, currenciesOf, offerFor, rank } from '../bags/shop.ts';
import { keepsOf } from '../bags/keeps.ts';
import type { ClerkList } from '../bags/clerk.ts';
import { clerkList } from '../bags/clerk.ts';
import type { Goal, Grams } from '../bags/weigh.ts';
import { grams } from '../bags/weigh.ts';
import { noticeText } from '../json/notices.ts';
import { offersFor, wantedInGround } from '../json/offers.ts';
import { lineOf } from '../json/shop-words.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { CHLORIDE_SENSITIVE } from '../tables/crops.ts';
import { NUTRIENTS } from '../units/substance.ts';
import type { System } from '../words/show.ts';
import { showMass, showPrice } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say, sayIfKnown } from '../words/words.ts';
import { give, questionList } from './answer.ts';
import type { Bag } from '../orchard/bag.ts';
import { bagName } from '../orchard/bag.ts';
import type { Orchard } from '../orchard/load.ts';
import { surroundings, typedBags, withStdin } from './bags.ts';
import type { Folder } from './folder.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { EXIT } from './io.ts';
import { planWhole, strongSolver } from './plan-whole.ts';

type ShopOptions = Common & { readonly need?: string };

export async function shopCommand(args: readonly string[], options: ShopOptions, io: Io): Promise<number> {
  const json = options.json === true;
  const folder = await openFolder(options, io, options.today ?? io.today);
  const typedNeed = options.need === undefined ? null : parseNeed(options.need === '-' ? await io.stdin() : options.need);
  // With a need of its own, neither the trees nor the reports matter.
  const around = typedNeed ? await surroundings(options, io) : { orchard: folder.orchard, language: folder.language, notices: folder.notices.filter((n) => n.severity === 'error') };
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
  const alone = rank(offers);
  const found = typedNeed ? await cheapestFor(typedNeed.goal!, bags) : await togetherFor(orchard!, folder, alone);
  const tooLarge = found !== null && 'tooLarge' in found;
  const purchase = found === null || 'tooLarge' in found ? null : found;
  const ranked = alone.map((r) => asBought(r, purchase?.bags.map((b) => b.bag) ?? []));
  const list = typedNeed ? clerkList(grams((n) => typedNeed.goal![n] ?? 0), false, NUTRIENTS.filter((n) => typedNeed.goal![n] === 0)) : clerkFor(orchard!, folder);
  const notices = [...typed.notes, ...(typedNeed ? [] : folder.notices), ...(tooLarge ? [notice('purchase-too-large', 'note')] : [])];
  const asked = typedNeed ? [] : [...folder.questions, ...questions];
  const result = {
    bags: ranked.map((r) => ({ label: r.offer.bag.label, verdict: r.verdict, why: r.why, bags: r.bags, cost: r.cost, costPerNeededKg: r.costPerNeededKg, leftG: r.leftG, keeps: keepsOf(r.offer.bag), over: r.offer.over, short: r.offer.short })),
    list: { wishes: list.wishes.map(({ nutrient, feeds }) => ({ nutrient, feeds: feeds.map(({ material, g }) => ({ grade: material.sold.grade.join('-'), name: material.names[0]!, g })) })), leave: list.leave },
    purchase: purchase && { bags: purchase.bags.map(({ bag, bags: n }) => ({ label: bag.label, bags: n })), cost: purchase.cost, over: purchase.over, short: purchase.short },
  };
  const system = orchard?.where.units ?? typedNeed?.units ?? 'metric';
  const lines = [
    ...ranked.map((r) => `${bagName(r.offer.bag)}${r.offer.bag.g === null ? '' : `, ${showMass(r.offer.bag.g, system, L)}`}: ${lineOf(r, typedNeed === null, system, L)}`), ...(purchase && !isSame(purchase, ranked[0]!) ? [purchaseLine(purchase, system, L)] : []),
    ...clerkLines(list, system, L),
    ...[...typed.notes, ...notices.filter((n) => n.code === 'purchase-too-large')].map((n) => noticeText(n, L)),
    ...(asked.length > 0 ? ['', say(L, 'plan', asked.length === 1 ? 'questions-1' : 'questions-n', { n: asked.length }), questionList(asked, L)] : []),
  ];
  return give({ command: 'shop', result, notices, questions: asked, language: L, text: `${lines.join('\n')}\n` }, json, io);
}

/** What is no use to this orchard, alone or in a mix. */
const REFUSED: readonly Why[] = ['feeds-nothing', 'amends', 'weed-killer', 'phosphate-unwanted', 'potash-unwanted', 'phosphate-untested', 'potash-untested', 'nitrogen-unwanted'];

/** By the quick solver, or else the strong one. */
async function cheapestFor(goal: Goal, bags: readonly Bag[]): Promise<ReturnType<typeof cheapest>> {
  const quick = cheapest(goal, bags, byYalps);
  return quick !== null && 'tooLarge' in quick ? cheapest(goal, bags, await strongSolver()) : quick;
}

/** The cheapest whole bags that serve every plant as well as these bags can: the plan's own choice. */
async function togetherFor(orchard: Orchard, { zones, today, diary }: Folder, ranked: readonly Ranked[]): Promise<Purchase | null> {
  const useful = ranked.filter((r) => !REFUSED.includes(r.why));
  // With bags for tubs alone the ground would be given them too.
  if (useful.every((r) => r.why === 'tubs')) return null;
  const bags = useful.map((r) => r.offer.bag);
  const plan = await planWhole({ ...orchard, store: [...bags] }, zones, today, { diary, known: [...orchard.shed, ...orchard.store] });
  const bought = plan.buy.filter((b) => !b.bag.amends && (b.bags ?? 0) > 0);
  if (bought.length === 0 || bought.some((b) => b.cost === null)) return null;
  const fed = plan.trees.filter((t) => t.need.verdict === 'feed');
  const total = (of: 'over' | 'short'): Grams => grams((n) => fed.reduce((sum, t) => sum + t.tree.count * t[of][n], 0));
  return { bags: bought.map(({ bag, bags: n }) => ({ bag, bags: n! })), cost: bought.reduce((sum, b) => sum + b.cost!, 0), over: total('over'), short: total('short') };
}

function clerkFor(orchard: Orchard, { zones, today, diary }: Folder): ClerkList {
  const wanted = wantedInGround(orchard, zones, today, diary);
  return clerkList(wanted, orchard.trees.some((t) => CHLORIDE_SENSITIVE.includes(t.crop)), NUTRIENTS.filter((n) => n !== 'N' && wanted[n] <= 1));
}

/** "For the clerk: 21-0-0 ammonium sulphate, 3 lb, or 46-0-0 urea, 1 1/2 lb. No weed killer. Nothing with a middle number." */
function clerkLines({ wishes, leave }: ClerkList, system: System, L: Language): string[] {
  const of = (feeds: ClerkList['wishes'][number]['feeds']): string => feeds.map(({ material, g }) => `${material.sold.grade.join('-')} ${sayIfKnown(L, 'feed', material.id)}, ${showMass(g, system, L)}`).join(say(L, 'bags', 'or'));
  if (wishes.length === 0) return [];
  return ['', say(L, 'bags', 'clerk'), ...wishes.map(({ feeds }) => `  ${of(feeds)}`), `  ${[...leave.map((n) => say(L, 'bags', n === 'N' ? 'no-first' : n === 'P2O5' ? 'no-middle' : 'no-last')), say(L, 'bags', 'no-weed')].join(' ')}`];
}

/** Whether the whole purchase is just the first bag of the list. */
const isSame = ({ bags }: Purchase, first: Ranked): boolean => bags.length === 1 && bags[0]!.bag === first.offer.bag && bags[0]!.bags === first.bags;

function purchaseLine(purchase: Purchase, system: System, L: Language): string {
  const list = purchase.bags.map(({ bag, bags: n }) => say(L, 'bags', 'some-bags', { n, unit: say(L, 'plan', n === 1 ? 'bag' : 'bags'), bag: bagName(bag), weight: showMass(bag.g!, system, L) })).join(' + ');
  return say(L, 'bags', 'purchase', { list, cost: showPrice(purchase.cost, purchase.bags[0]!.bag.price!.currency, L) });
}
