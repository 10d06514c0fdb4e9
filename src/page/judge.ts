/** Verdicts on bags for this orchard: those of `medlar shop`, in its words. */
import type { Verdict } from '../bags/shop.ts';
import { currenciesOf, rank } from '../bags/shop.ts';
import { noticeText } from '../json/notices.ts';
import { offersFor } from '../json/offers.ts';
import { lineOf } from '../json/shop-words.ts';
import { parseBag } from '../orchard/bag.ts';
import { notice, placeIn } from '../reason/notice.ts';
import type { Day } from '../units/date.ts';
import type { Language } from '../words/words.ts';
import type { Seen } from './seen.ts';

/** What a verdict hangs on. */
export type Judging = { readonly language: Language; readonly system: 'us' | 'metric'; readonly today: () => Day; readonly seen: () => Pick<Seen, 'orchard' | 'zones' | 'where' | 'plan'> };

export type Judged = { readonly entered: string; readonly verdict: Verdict; readonly said: string };

/** Best first. What cannot be read is told instead; without a plan there is no verdict. */
export function judge(ctx: Judging, labels: readonly string[]): { verdicts: readonly Judged[]; mistakes: readonly string[] } {
  const { orchard, zones, where, plan } = ctx.seen();
  const read = labels.map((label) => ({ label, ...parseBag(label, where.country, false, placeIn('', 1, label, 0, label.length), where.state) }));
  const bags = read.flatMap(({ label, bag }) => (bag ? [{ label, bag: { ...bag, left: null } }] : []));
  const currencies = currenciesOf(bags.map(({ bag }) => bag));
  // A note tells how a label was taken; a mistake leaves no bag.
  const mistakes = [...read.flatMap((r) => r.notices.filter((n) => n.severity === 'error' || r.bag === null)), ...(currencies.length > 1 ? [notice('currencies-mixed', 'error', { list: currencies.join(', ') })] : [])];
  if (mistakes.length > 0) return { verdicts: [], mistakes: mistakes.map((n) => noticeText(n, ctx.language)) };
  if (!orchard || !plan || bags.length === 0) return { verdicts: [], mistakes: [] };
  const { offers } = offersFor(orchard, zones, ctx.today(), bags.map(({ bag }) => bag));
  const verdicts = rank(offers).map((r): Judged => {
    const { label: entered } = bags.find(({ bag }) => bag === r.offer.bag)!;
    const notes = read.find(({ label }) => label === entered)!.notices.map((n) => noticeText(n, ctx.language));
    return { entered, verdict: r.verdict, said: [lineOf(r, true, ctx.system, ctx.language), ...notes].join(' ') };
  });
  return { verdicts, mistakes: [] };
}
