/** What a plan has to say, and to ask, of pH, lime and sulphur. */
import { limeOfYear } from './bags/acidity.ts';
import type { AmendmentBag } from './bags/amend.ts';
import { isWelcome, magnesiumRule } from './bags/amend.ts';
import type { ZoneSoil } from './gather.ts';
import type { Orchard } from './orchard/load.ts';
import { phFacts, phSentence } from './ph/ph.ts';
import type { Amended, TreePlan } from './planned.ts';
import type { Notice, Question } from './reason/notice.ts';
import { notice } from './reason/notice.ts';
import { ACID_TOLD } from './tables/feed-acidity.ts';
import { sourceOf } from './tables/sources.ts';
import { convert, FOOT } from './units/units.ts';
import { showMass, showRate } from './words/show.ts';
import { say } from './words/words.ts';

/** One notice for all trees of a zone of which the same is to be said. */
export function phNotices(plans: readonly TreePlan[]): Notice[] {
  const groups = new Map<string, { ph: Amended; code: ReturnType<typeof phSentence> | 'ph-bed-missing' | 'ph-sulphur-late'; trees: string[] }>();
  for (const { ph, tree } of plans) {
    if (!ph || ph.plan.reason === 'inside') continue;
    const code = ph.bed === null ? 'ph-bed-missing' : ph.bed && ph.plan.reason === 'sulphur' && ph.window === null ? 'ph-sulphur-late' : phSentence(ph.plan, tree.crop, ph.bed !== undefined);
    // Whatever differs beside the sentence makes no second one.
    const key = `${ph.zone} ${say('en-US', 'notice', code, phFacts(ph.plan, ''))}`;
    const group = groups.get(key) ?? { ph, code, trees: [] };
    group.trees.push(tree.name);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ ph: { plan }, code, trees }) => notice(code, plan.verdict === 'leave' && plan.reason !== 'beyond' && plan.reason !== 'over-acid' ? 'note' : 'warning', phFacts(plan, trees.join(', '))));
}

/** Plants in a zone with a pH for which no range is held. */
export function withoutRange(plans: readonly TreePlan[], { zone, ph }: ZoneSoil, zones: readonly ZoneSoil[]): Notice[] {
  if (!ph) return [];
  const mine = plans.filter((p) => !p.ph && p.tree.tub === undefined && (p.tree.zone === zone || (p.tree.zone === undefined && zones.length === 1)));
  return mine.length === 0 ? [] : [notice('ph-no-range', 'note', { zone, tree: mine.map((p) => p.tree.name).join(', '), now: ph.now.value })];
}

/** The lab's own lime where none is planned. */
export function labLimeLeft(plans: readonly TreePlan[], { zone, ph }: ZoneSoil, { where }: Orchard): Notice[] {
  if (!ph?.lime || ph.lime.value === 0) return [];
  const mine = plans.filter((p) => p.ph?.zone === zone && p.ph.plan.verdict !== 'lime' && p.ph.plan.reason !== 'retest' && p.ph.plan.reason !== 'stopped-lime');
  return mine.length === 0 ? [] : [notice('ph-lab-left', 'note', { zone, tree: mine.map((p) => p.tree.name).join(', '), rate: showRate(convert(ph.lime.value, ph.lime.unit, 'g/m2'), where.units, where.language), now: Math.round(ph.now.value * 100) / 100 })];
}

/** Once for each zone: whose lime table leads where none of the grower's own place is held for the test. */
export function limeElsewhere(plans: readonly TreePlan[], { zone }: ZoneSoil, { where }: Orchard): Notice[] {
  const mine = plans.filter((p) => p.ph?.zone === zone && p.ph.plan.verdict === 'lime' && p.ph.plan.dugIn?.elsewhere);
  const source = mine[0]?.ph!.plan.dugIn!.elsewhere!.source;
  return source === undefined ? [] : [notice('ph-lime-elsewhere', 'note', { zone, tree: mine.map((p) => p.tree.name).join(', '), where: where.text, source: sourceOf(source)?.publisher ?? source })];
}

/** Once for each zone: its most acid plants, where what suits them ends below the least that others take, with the pH at which all of the acid ones can stand together. */
export function twoWants(plans: readonly TreePlan[], { zone }: ZoneSoil): Notice[] {
  const mine = plans.flatMap((p) => (p.ph?.zone === zone ? [{ name: p.tree.name, suits: p.ph.plan.suits }] : []));
  const high = Math.min(...mine.map((m) => m.suits.high));
  const others = mine.filter((m) => m.suits.low > high);
  if (others.length === 0) return [];
  const least = Math.min(...others.map((m) => m.suits.low));
  const acid = mine.filter((m) => m.suits.high < least);
  const names = (list: typeof mine): string => list.map((m) => m.name).join(', ');
  return [notice('ph-zone-two-wants', 'warning', { zone, tree: names([...acid, ...others]), acid: names(acid), others: names(others), low: Math.max(...acid.map((m) => m.suits.low)), high, least })];
}

/** A zone whose lime hangs on a buffer without a name, or whose lime or sulphur on a texture that nobody told. */
export function phQuestions(plans: readonly TreePlan[], zones: readonly ZoneSoil[]): Question[] {
  const limed = (z: ZoneSoil): boolean => plans.some(({ ph }) => ph?.zone === z.zone && ph.plan.reason === 'texture');
  const buffers = zones.filter((z) => z.ph?.buffer?.test === null && limed(z))
    .map((z): Question => ({ code: 'buffer-method', about: z.zone, facts: { zone: z.zone, value: z.ph!.buffer!.value }, choices: ['SMP', 'Sikora', 'Mehlich buffer', 'Adams-Evans'], changes: 'changes-lime' }));
  const textures = zones.filter((z) => z.ph?.texture === null && plans.some(({ ph }) => ph?.zone === z.zone && (ph.plan.reason === 'texture' || (ph.plan.reason === 'sulphur' && z.ph?.cec === null))))
    .map((z): Question => ({ code: 'texture-missing', about: z.zone, facts: { zone: z.zone }, choices: ['sand', 'sandy loam', 'loam', 'clay'], changes: 'changes-lime' }));
  return [...buffers, ...textures];
}

/** What the year's feed does to the pH, told once for a zone and only where it matters: near the low edge, under lime, and where acid soil is wanted. */
export function acidityNotices(plans: readonly TreePlan[], { shed, store, where }: Orchard): Notice[] {
  const us = where.units === 'us';
  const groups = new Map<string, { code: 'feed-acid-low' | 'feed-acid-limed' | 'feed-acid-welcome' | 'feed-basic'; lime: number; first: TreePlan; trees: string[] }>();
  for (const plan of plans) {
    const lime = limeOfYear(plan, [...shed, ...store])?.value ?? 0;
    const low = plan.ph?.plan.suits.low;
    const isAcid = lime < -ACID_TOLD.value;
    const isNear = low !== undefined && Math.abs(plan.ph!.plan.now.value - low) <= ACID_TOLD.near + 1e-9;
    const isLimed = plan.ph?.plan.verdict === 'lime' && plan.ph.g > 0;
    const blue = lime > 0 ? 'feed-basic' : isAcid ? 'feed-acid-welcome' : null;
    const code = plan.tree.crop === 'blueberry' ? blue : isAcid && isLimed ? 'feed-acid-limed' : isAcid && isNear ? 'feed-acid-low' : null;
    if (!code) continue;
    const key = `${plan.ph?.zone ?? ''} ${code} ${low ?? ''}`;
    const group = groups.get(key);
    if (group) group.trees.push(plan.tree.name);
    groups.set(key, { code, first: plan, trees: [plan.tree.name], ...group, lime: Math.max(group?.lime ?? 0, Math.abs(lime)) });
  }
  return [...groups.values()].map(({ code, lime, first, trees }) => notice(code, code === 'feed-basic' ? 'warning' : 'note', {
    trees: trees.join(', '), amount: showMass(lime * (us ? 100 * FOOT * FOOT : 10), where.units, where.language), area: us ? '100 sq ft' : '10 m²',
    ...(code === 'feed-acid-low' ? edge(first.ph!.plan) : {}),
  }));
}

/** The pH and the lowest that suits, or that the two are one. */
function edge({ now, suits: { low } }: Amended['plan']): Record<string, string | number> {
  const is = Math.round(now.value * 100) / 100;
  return is === low ? { now: is, low: '', at: 'edge' } : { now: is, low, at: '' };
}

/** What the labels of the lime left open, which lime is not taken and why, and where the soil wants one with magnesium. */
export function limeNotices(plans: readonly TreePlan[], zones: readonly ZoneSoil[], { shed, store, where }: Orchard): Notice[] {
  const us = where.units === 'us';
  const [ground, area] = us ? [100 * FOOT * FOOT, '100 sq ft'] : [10, '10 m²'];
  const limed = plans.filter((p) => p.ph?.plan.verdict === 'lime');
  if (limed.length === 0) return [];
  // One bag serves several zones: of what its ash brings the most is told.
  const used = new Map<AmendmentBag, number>();
  for (const { ph } of limed) if (ph!.bag) used.set(ph!.bag, Math.max(used.get(ph!.bag) ?? 0, ph!.plan.dose!.value));
  const labels = [...used].flatMap(([bag, dose]) => {
    const { notes, material } = bag.amends.lime!;
    const most = material.most && convert(material.most.value, material.most.unit, 'g/m2') * ground;
    const ash = material.potash ? [notice('lime-ash', 'warning', { bag: bag.label, potash: showMass((dose * ground * material.potash.percent) / 100, where.units, where.language), area, most: most ? `${showMass(most, where.units, where.language)} / ${area}` : '' })] : [];
    return [...notes.map((n) => notice(n.code, 'note', { ...n.facts, bag: bag.label })), ...ash];
  });
  const listed = [...shed, ...store].filter((b) => b.amends?.kind === 'lime');
  const burning = listed.filter((b) => b.amends!.burns).map((b) => notice('lime-burns', 'warning', { bag: b.label }));
  const byZone = zones.flatMap((z) => {
    const mine = limed.filter((p) => p.ph!.zone === z.zone);
    const [first] = mine;
    if (!first || !z.ph) return [];
    const ash = listed.filter((b) => b.amends!.lime!.material.potash && !mine.some((p) => isWelcome(b, { potash: p.need.K2O.value > 0, ph: z.ph!.now.value })));
    const { wants, source, under } = magnesiumRule(z.ph, where);
    // What dolomite is made of brings magnesium to a soil that has too much of it already.
    const rich = z.soil.rated.some((r) => r.reading.item === 'magnesium' && r.target === 'above') ? mine.find((p) => p.ph!.bag?.amends.dolomitic) : undefined;
    // Also where the shed's own lasts for some of the plants alone.
    const without = wants && mine.some((p) => !p.ph!.bag?.amends.dolomitic);
    return [
      ...ash.map((b) => notice('lime-ash-left', 'note', { zone: z.zone, bag: b.label })),
      ...(rich ? [notice('lime-calcitic', 'note', { zone: z.zone, bag: rich.ph!.bag!.label })] : []),
      ...(without ? [notice('lime-dolomitic', 'note', { zone: z.zone, source: sourceOf(source)?.publisher ?? '', under: under ?? '', now: Math.round(z.ph.magnesium ?? 0) })] : []),
    ];
  });
  // One lime may stand in the shed and in the store.
  return [...new Map([...labels, ...burning, ...byZone].map((n) => [JSON.stringify(n), n])).values()];
}
