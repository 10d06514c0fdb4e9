/** `medlar ph [ZONE]`: lime, sulphur or a reasoned no, for the trees of a zone; or for one soil told by flags. */
import { roundAmendment } from '../bags/round.ts';
import { collector } from '../json/figures.ts';
import { noticeText } from '../json/notices.ts';
import { phJson } from '../json/ph-json.ts';
import { materialOf, phRows } from '../json/plan-json.ts';
import type { Amendment } from '../orchard/amendment.ts';
import { parseBag } from '../orchard/bag.ts';
import { isNeutralSalt } from '../orchard/lime-label.ts';
import type { Orchard } from '../orchard/load.ts';
import { areaOf, lengthOf, numberOf, rateOf } from '../orchard/measure.ts';
import { NOWHERE, parseWhere } from '../orchard/where.ts';
import { curveOf } from '../ph/curve.ts';
import type { PhAsk, PhPlan } from '../ph/ph.ts';
import { phFacts, phPlan, phSentence, plantingDepth } from '../ph/ph.ts';
import type { PhSoil } from '../ph/soil.ts';
import { bufferTest, isLimeIndex, pureLime } from '../ph/soil.ts';
import type { Plan, TreePlan } from '../plan.ts';
import { textureClass } from '../rating/texture.ts';
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Notice } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import { curveGroups } from '../sheet/curves.ts';
import type { Crop } from '../tables/crops.ts';
import { CROP_WORDS } from '../tables/crops.ts';
import { LIME_TIME, SURFACE_DEPTH } from '../tables/lime.ts';
import { BUFFER_START } from '../tables/sense.ts';
import { FIZZ } from '../tables/sulphur.ts';
import { convert } from '../units/units.ts';
import { limeWindow, seasonOf, sulphurWindow } from '../when/season.ts';
import type { System } from '../words/show.ts';
import { showMass, showRate, showShort, showWindow } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { give } from './answer.ts';
import { explain } from './explain.ts';
import { openFolder } from './folder.ts';
import type { Common, Io } from './io.ts';
import { curveText, insteadText, rangesText } from './ph-text.ts';
import { planOf } from './plan.ts';

const FLAGS = ['now', 'goal', 'texture', 'buffer', 'method', 'acidity', 'cec', 'carbonate', 'fizz', 'organicMatter', 'lime', 'depth', 'area', 'material', 'crop', 'where', 'aluminium', 'baseSaturation', 'calcium', 'magnesium', 'lbc', 'ecec'] as const;
type Flag = (typeof FLAGS)[number];
export type PhOptions = Common & { readonly [F in Flag]?: string };

export async function phCommand(zone: string | undefined, options: PhOptions, io: Io): Promise<number> {
  const folder = await openFolder(options, io, options.today ?? io.today);
  const L = folder.language;
  const json = options.json === true;
  const flagged = FLAGS.some((f) => options[f] !== undefined);
  if (flagged) return forOneSoil(zone, options, folder.orchard ?? ANYWHERE, L, io);
  const refuse = (notices: readonly Notice[]): number => give({ command: 'ph', result: null, notices, language: L }, json, io);
  const none = !folder.orchard && folder.notices.every((n) => n.code === 'no-orchard');
  if (none) return refuse([notice('usage', 'error', { why: say(L, 'ph', 'needs-now') })]);
  const planned = await planOf(folder);
  if ('notices' in planned) return refuse(planned.notices);
  const { plan } = planned;
  const zones = plan.zones.map((z) => z.zone);
  if (zone !== undefined && !zones.some((z) => z.toLowerCase() === zone.toLowerCase())) {
    return refuse([notice('zone-unknown', 'error', { read: zone, guess: suggest(zone, zones).join(', '), known: zones.join(', ') })]);
  }
  const isAsked = (name: string | null): boolean => zone === undefined || name?.toLowerCase() === zone.toLowerCase();
  const trees = plan.trees.filter((t) => t.ph && isAsked(t.ph.zone));
  const figures = collector(L, plan.orchard.where.units);
  const result = { ph: trees.flatMap((t) => phRows(t, L, figures)) };
  const told = plan.notices.filter((n) => n.code.startsWith('ph-') && (n.code === 'ph-no-range' ? isAsked(String(n.facts.zone)) : trees.some((t) => String(n.facts.tree).split(', ').includes(t.tree.name))));
  return give({ command: 'ph', result, notices: [...folder.notices, ...told], figures: figures.all(), questions: plan.questions.filter((q) => q.code === 'texture-missing' || q.code === 'buffer-method'), language: L, text: zoneText(plan, trees, told, L) }, json, io);
}

function zoneText(plan: Plan, trees: readonly TreePlan[], told: readonly Notice[], L: Language): string {
  if (trees.length === 0) return `${told.map((n) => noticeText(n, L)).join('\n') || say(L, 'ph', 'no-soil')}\n`;
  const fine = trees.filter((t) => t.ph!.plan.reason === 'inside').map((t) => noticeText(toldOf(t.ph!.plan, t.tree.crop, t.tree.name, false), L));
  const system = plan.orchard.where.units;
  const doses = trees.filter((t) => t.ph!.g > 0).map((t) => {
    const ph = t.ph!;
    return `  ${say(L, 'ph', 'dose', { tree: t.tree.name, amount: t.tree.count > 1 ? say(L, 'plan', 'each', { amount: showMass(ph.g, system, L), count: t.tree.count }) : showMass(ph.g, system, L), rate: showRate(ph.plan.dose!.value, system, L), material: materialOf(ph, L) ?? '', dug: ph.bed ? showShort(ph.plan.dugIn?.depthM ?? plantingDepth(), system, L) : '', window: showWindow(ph.window!.from, ph.window!.until, L) })}`;
  });
  const limed = trees.filter((t) => t.ph!.g > 0 && t.ph!.plan.verdict === 'lime');
  const expected = limed.length > 0 ? [expectLime(limed.some((t) => t.ph!.bed === undefined), L, system)] : [];
  const instead = [...new Set(trees.filter((t) => t.ph!.g > 0).map((t) => insteadText(t.ph!.plan, L, system).join('\n')).filter(Boolean))];
  const curves = curveGroups(trees).flatMap((group) => {
    const { curve, plan: { verdict } } = group[0]!.ph;
    // Whose way ends at a pH is named there.
    const ends = new Map(group.map((t) => [t.ph.curve.at(-1)!.ph, group.filter((o) => o.ph.curve.length === t.ph.curve.length).map((o) => o.tree.name).join(', ')]));
    return curveText(curve, verdict, L, system, ends);
  });
  return `${[...fine, ...told.map((n) => noticeText(n, L)), ...doses, ...expected, ...instead, ...curves, '', say(L, 'ph', 'next-why', { tree: trees[0]!.tree.name })].join('\n')}\n`;
}

/** What lime does in its year. */
const expectLime = (onTop: boolean, L: Language, system: System): string => say(L, 'ph', 'expect-lime', { months: LIME_TIME.months, depth: onTop ? showShort(convert(SURFACE_DEPTH.value, SURFACE_DEPTH.unit, 'm'), system, L) : '' });

/** The reason of a verdict. A goal that was asked for is not measured against what suits. */
function toldOf(plan: PhPlan, crop: Crop | null, tree: string, asked: boolean): Notice {
  const code = asked && (plan.verdict === 'lime' || plan.verdict === 'sulphur') ? 'ph-asked' : phSentence(plan, crop);
  return notice(code, plan.verdict === 'leave' ? 'note' : 'warning', phFacts(plan, tree));
}

const ANYWHERE: Orchard = { name: '', where: NOWHERE, budBreak: null, lastFrost: null, firstFrost: null, water: null, never: [], zones: [], trees: [], shed: [], store: [], rules: [] };

type Told = { readonly soil: PhSoil; readonly goal: number | undefined; readonly crop: string | null; readonly area: number | null; readonly material: { readonly label: string; readonly amends: Amendment } | null };

function forOneSoil(zone: string | undefined, options: PhOptions, folder: Orchard, L: Language, io: Io): number {
  const where = options.where === undefined ? null : parseWhere(options.where);
  const orchard = where ? { ...folder, where } : folder;
  const json = options.json === true;
  const told = readFlags(zone, options, orchard, L);
  if ('notices' in told) return give({ command: 'ph', result: null, notices: told.notices, language: L }, json, io);
  const { soil, goal, crop, area, material } = told;
  const strength = { lime: material?.amends.strength ?? 1, sulphur: material?.amends.strength ?? 1 };
  const ask: PhAsk = { crop: crop === null ? null : CROP_WORDS[crop]!, word: crop, soil, ...(goal === undefined ? {} : { goal }), strength, region: orchard.where.region, stopped: false, awaitsRetest: false };
  const plan = phPlan(ask)!;
  const wrong = material && (plan.verdict === 'lime' || plan.verdict === 'sulphur') && material.amends.kind !== plan.verdict;
  if (wrong) return give({ command: 'ph', result: null, notices: [notice('usage', 'error', { why: say(L, 'ph', plan.verdict === 'lime' ? 'sulphur-lowers' : 'lime-raises', { now: plan.now.value, goal: plan.goal.value }) })], language: L }, json, io);
  const season = seasonOf(orchard, options.today ?? io.today);
  const window = plan.verdict === 'lime' ? limeWindow(season) : plan.verdict === 'sulphur' ? sulphurWindow(season) : null;
  const system = orchard.where.text === '' && /(?:lb|ft|acre|in)\b/.test([options.lime, options.area, options.depth].join(' ')) ? 'us' : orchard.where.units;
  const g = area === null ? null : plan.dose && window ? roundAmendment(plan.dose.value * area, system) : 0;
  const label = plan.dose ? material?.label ?? say(L, 'plan', plan.verdict === 'lime' ? 'any-lime' : 'any-sulphur') : null;
  const figures = collector(L, system);
  const curve = curveOf(ask, plan);
  const row = phJson(plan, { zone: null, tree: null, material: label, g, window, curve }, figures);
  const why = toldOf(plan, crop === null ? null : CROP_WORDS[crop]!, crop ?? say(L, 'ph', 'fruit-trees'), goal !== undefined);
  const lime = plan.verdict === 'lime' ? material?.amends.lime : undefined;
  const read = (lime?.notes ?? []).map((n) => notice(n.code, 'note', { ...n.facts, bag: material!.label }));
  const doubted = aboveStart(soil);
  const notices = plan.reason === 'inside' || plan.reason === 'goal-is-now' ? doubted : [why, ...doubted, ...read];
  const dose = plan.dose && window ? [say(L, 'ph', 'dose-flags', { rate: showRate(plan.dose.value, system, L), material: label ?? '', window: showWindow(window.from, window.until, L), amount: g === null ? '' : showMass(g, system, L) })] : [];
  // Beside a no an amount would read as a dose; JSON has it.
  const range = plan.range && plan.verdict !== 'cannot' ? [say(L, 'ph', plan.verdict === 'lime' ? 'range-lime' : 'range-sulphur', { low: showRate(plan.range[0].value, system, L), high: showRate(plan.range[1].value, system, L) })] : [];
  const roots = [...(plan.dose ? [plan.dose] : []), ...(lime && lime.strength.from.length > 0 ? [lime.strength] : []), ...(plan.swallowed ? [plan.swallowed.sulphur] : []), ...(plan.dose || plan.swallowed ? [] : [plan.goal])];
  const text = [noticeText(why, L), ...doubted.map((n) => noticeText(n, L)), ...dose, ...(dose.length > 0 && plan.verdict === 'lime' ? [expectLime(true, L, system)] : []), ...range, ...insteadText(plan, L, system), ...curveText(curve, plan.verdict, L, system), ...read.map((n) => noticeText(n, L)), '', ...roots.map((f) => explain(f, L, system)), '', rangesText(plan, L)].join('\n');
  return give({ command: 'ph', result: { ph: [row] }, notices, figures: figures.all(), language: L, text: `${text}\n` }, json, io);
}

/** No soil gives a buffer a pH above its own. */
function aboveStart({ buffer }: PhSoil): Notice[] {
  const start = BUFFER_START.starts.find((s) => s.method === buffer?.test)?.ph;
  return buffer && start !== undefined && buffer.value > start ? [notice('buffer-above-start', 'warning', { read: buffer.value, start, known: buffer.test ?? '' })] : [];
}

/** Every flag that cannot be read is told at once, each with an example. */
function readFlags(zone: string | undefined, o: PhOptions, orchard: Orchard, L: Language): Told | { notices: Notice[] } {
  const notices: Notice[] = [];
  const wrong = (flag: string, read: string, key: Parameters<typeof say<'ph'>>[2]): null => {
    notices.push(notice('usage', 'error', { why: say(L, 'ph', key, { flag: `--${flag}`, read }) }));
    return null;
  };
  const number = (flag: Flag, name: string, low: number, high: number, key: Parameters<typeof say<'ph'>>[2]): number | null => {
    const read = o[flag];
    if (read === undefined) return null;
    const n = numberOf(read.replace(/ *%$/, ''));
    return typeof n === 'number' && n >= low && n <= high ? n : wrong(name, read, typeof n === 'number' && flag === 'buffer' && isLimeIndex(n) ? 'flag-index' : key);
  };
  const measured = <T>(flag: Flag, read: (text: string) => T | null, key: Parameters<typeof say<'ph'>>[2]): T | null => {
    const text = o[flag];
    return text === undefined ? null : read(text) ?? wrong(flag, text, key);
  };
  const at = (flag: string): Figure['cite'] => ({ source: 'grower', at: `--${flag}`, mark: 'read' });
  if (zone !== undefined) wrong('now', zone, 'zone-or-flags');
  const now = number('now', 'now', 2.5, 11, 'flag-ph');
  if (o.now === undefined) notices.push(notice('usage', 'error', { why: say(L, 'ph', 'needs-now') }));
  const goal = number('goal', 'goal', 3, 8.5, 'flag-ph');
  const buffer = number('buffer', 'buffer', 4, 8, 'flag-ph');
  const test = measured('method', (t) => bufferTest(t.toLowerCase()), 'flag-method');
  if (buffer !== null && o.method === undefined) wrong('method', '', 'flag-method-missing');
  const crop = measured('crop', (t) => cropOf(t), 'flag-crop');
  const capacity = number('lbc', 'lbc', 0, 2000, 'flag-number');
  measured('where', parseWhere, 'flag-where');
  const rate = measured('lime', (t) => rateOf(t), 'flag-rate');
  const soil: PhSoil = {
    now: figure(now ?? 7, 'pH', 'soil', 'told', at('now')), buffer: buffer === null ? null : { value: buffer, test },
    acidity: number('acidity', 'acidity', 0, 60, 'flag-number'), cec: number('cec', 'cec', 0, 200, 'flag-number'), carbonate: fizzing(number('carbonate', 'carbonate', 0, 100, 'flag-number'), measured('fizz', fizzOf, 'flag-fizz')), organic: number('organicMatter', 'organic-matter', 0, 100, 'flag-number'),
    aluminium: number('aluminium', 'aluminium', 0, 60, 'flag-number'), baseSaturation: number('baseSaturation', 'base-saturation', 0, 100, 'flag-number'), ecec: number('ecec', 'ecec', 0, 200, 'flag-number'),
    calcium: number('calcium', 'calcium', 0, 200, 'flag-number'), exchangeableMagnesium: number('magnesium', 'magnesium', 0, 200, 'flag-number'), bufferCapacity: capacity === null ? null : { value: capacity, after: '30 minutes' },
    lime: rate && pureLime(figure(rate.value, rate.unit, rate.of, 'told', at('lime'))), magnesium: null,
    depthM: measured('depth', (t) => plain(lengthOf(t)), 'flag-depth'), texture: measured('texture', textureClass, 'flag-texture'),
  };
  const area = measured('area', areaOf, 'flag-area');
  const material = o.material === undefined ? null : materialNamed(o.material, orchard);
  if (Array.isArray(material)) notices.push(...material.map((n) => notice('usage', 'error', { why: noticeText(n, L) })));
  else if (o.material !== undefined && !material) wrong('material', o.material, isNeutralSalt(o.material) ? 'no-lime-salt' : 'flag-material');
  if (!material || Array.isArray(material)) return notices.length > 0 ? { notices } : { soil, goal: goal ?? undefined, crop, area, material: null };
  const { label, amends } = material;
  const mostPh = amends.lime?.material.mostPh?.ph ?? Infinity;
  if (soil.now.value > mostPh) notices.push(notice('usage', 'error', { why: say(L, 'ph', 'ash-ph', { read: label, ph: mostPh }) }));
  if (amends.burns) wrong('material', label, 'burns');
  return notices.length > 0 ? { notices } : { soil, goal: goal ?? undefined, crop, area, material };
}

const FIZZES = ['strong', 'weak', 'none'] as const;
type Fizz = (typeof FIZZES)[number];
const fizzOf = (text: string): Fizz | null => FIZZES.find((f) => f === text.trim().toLowerCase()) ?? null;

/** A soil that fizzes holds some lime, whatever else is told; that none is heard does not prove that there is none. */
const fizzing = (carbonate: number | null, fizz: Fizz | null): number | null => (fizz === 'strong' || fizz === 'weak' ? Math.max(carbonate ?? 0, FIZZ.percent) : carbonate);

const plain = (n: ReturnType<typeof lengthOf>): number | null => (typeof n === 'number' && n > 0 ? n : null);

function cropOf(text: string): string | null {
  const word = text.trim().toLowerCase();
  return [word, word.replace(/ies$/, 'y'), word.replace(/s$/, '')].find((w) => Object.hasOwn(CROP_WORDS, w)) ?? null;
}

/** A listed bag by its name, or a label such as "Garden lime, CCE 90"; what is wrong with it, or null for no lime or sulphur. */
function materialNamed(text: string, { shed, store, where }: Orchard): Told['material'] | Notice[] {
  const listed = [...shed, ...store].find((b) => b.amends && b.label.toLowerCase() === text.trim().toLowerCase());
  const read = listed ? { bag: listed, notices: [] } : parseBag(text, where.country, false, placeIn('', 1, text, 0, text.length), where.state);
  const { bag } = read;
  if (bag?.amends) return bag.amends.strength > 0 && bag.amends.strength < 3 ? { label: bag.label, amends: bag.amends } : null;
  // What is typed stands in no file.
  const wrong = read.notices.filter((n) => n.code !== 'grade-missing' && n.severity === 'error').map((n) => notice(n.code, n.severity, n.facts));
  return wrong.length > 0 ? wrong : null;
}
