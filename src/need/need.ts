/** One tree's N, P2O5 and K2O for the year, with its span, its conditions and its refusals. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Question } from '../reason/notice.ts';
import { sourceOf } from '../tables/sources.ts';
import type { AskId } from '../words/words.ts';
import { advised, isFollowed, isUnclear } from './advice.ts';
import type { Facts } from './facts.ts';
import { growthOf, has, isToCome, organicMatter } from './facts.ts';
import { ORGANIC_MATTER } from '../tables/limits.ts';
import type { Magnesia } from './magnesium.ts';
import { magnesiumOf } from './magnesium.ts';
import { wantedFact } from './lead.ts';
import type { NitrogenNeed } from './nitrogen.ts';
import { nitrogenOf } from './nitrogen.ts';
import type { Phosphate, Potash, SoilNeed } from './potash.ts';
import { phosphateOf, potashOf } from './potash.ts';
import type { Nitrogen } from './rules.ts';
import { leaflets, span } from './rules.ts';
import type { Stop } from './stops.ts';
import { stopsOf } from './stops.ts';

export type Need = {
  readonly verdict: 'feed' | 'none' | 'wait';
  readonly stops: readonly Stop[];
  readonly nitrogen: NitrogenNeed;
  readonly N: Nitrogen;
  readonly P2O5: Phosphate;
  readonly K2O: Potash;
  /** Told, not bagged. */
  readonly MgO: Magnesia | null;
  readonly span: { readonly N: readonly [Nitrogen, Nitrogen]; readonly P2O5: readonly [Phosphate, Phosphate]; readonly K2O: readonly [Potash, Potash] };
  /** Every published nitrogen rule that fits. */
  readonly rules: readonly Nitrogen[];
  /** Of those the garden leaflets of the grower's own country. */
  readonly leaflets: readonly Nitrogen[];
  readonly questions: readonly Question[];
};

export function needOf(f: Facts): Need {
  const stops = [...stopsOf(f)];
  const organic = organicMatter(f)?.value ?? null;
  if (organic !== null && organic > ORGANIC_MATTER.notSoil) {
    stops.push({ id: 'not-soil', cite: ORGANIC_MATTER.cite, value: organic });
  }
  if (stops.some((s) => s.id === 'no-figures')) return refused(f, stops);
  if (f.tree.tub === undefined && !isToCome(f) && f.years === null && f.crown.guessed) return unmeasured(f, stops);
  const { nitrogen, p, k } = decided(f);
  const labN = advised(f, 'N');
  const rules = [...span(f, 'N'), ...(labN ? [labN] : [])];
  const spanN = spanOf(nitrogen.need, rules);
  const halted = stops.length > 0;
  const N = halted ? stopped('N', stops[0]!, nitrogen.need) : nitrogen.need;
  const P2O5 = halted ? stopped('P2O5', stops[0]!, p.need) : p.need;
  const K2O = halted ? stopped('K2O', stops[0]!, k.need) : k.need;
  const any = N.value > 0 || P2O5.value > 0 || K2O.value > 0;
  return {
    verdict: halted ? 'wait' : any ? 'feed' : 'none',
    stops, nitrogen, N, P2O5, K2O, MgO: halted ? null : magnesiumOf(f), rules, leaflets: leaflets(f), span: { N: spanN, P2O5: p.span, K2O: k.span },
    questions: halted ? [] : questionsOf(f, nitrogen, k),
  };
}

/** The lab's nitrogen in place of ours, where the grower follows it and it is not too much. */
function byLab(f: Facts, ours: NitrogenNeed): NitrogenNeed {
  const lab = isFollowed(f) ? advised(f, 'N') : null;
  if (!lab) return ours;
  return { need: lab, none: lab.value === 0 ? 'table-none' : null, ifBelow: null, cap: Infinity, doses: 1, followed: lab.cite, lead: null, half: null };
}

/** Nitrogen, phosphate and potash as decided, whatever the stops. */
export const decided = (f: Facts): { nitrogen: NitrogenNeed; p: SoilNeed<Phosphate>; k: SoilNeed<Potash> } =>
  ({ nitrogen: byLab(f, nitrogenOf(f)), p: { ...phosphateOf(f), ...labNeed(f, 'P2O5') }, k: { ...potashOf(f), ...labNeed(f, 'K2O') } });

/** The lab's phosphate or potash in place of ours. */
function labNeed<S extends 'P2O5' | 'K2O'>(f: Facts, of: S): { need?: Figure<'g', S>; ask?: null } {
  const lab = isFollowed(f) ? advised(f, of) : null;
  return lab ? { need: lab, ask: null } : {};
}

/** The lowest and highest of what is followed and of all rules that fit. */
function spanOf(chosen: Nitrogen, rules: readonly Nitrogen[]): readonly [Nitrogen, Nitrogen] {
  const all = [chosen, ...rules];
  return [all.reduce((a, b) => (b.value < a.value ? b : a)), all.reduce((a, b) => (b.value > a.value ? b : a))];
}

const stopped = <S extends 'N' | 'P2O5' | 'K2O'>(of: S, stop: Stop, would: Figure): Figure<'g', S> => figure(0, 'g', of, 'stopped', stop.cite, [would]);

/** Neither age nor width: any dose would be a guess of a guess, so none until one is told. */
function unmeasured(f: Facts, stops: readonly Stop[]): Need {
  const zero = <S extends 'N' | 'P2O5' | 'K2O'>(of: S): Figure<'g', S> => figure(0, 'g', of, 'none', { source: 'medlar', at: 'size-unknown', mark: 'judgement' });
  const [N, P2O5, K2O] = [zero('N'), zero('P2O5'), zero('K2O')];
  const rules = span(f, 'N');
  const known = has(f, 'fed lawn') ? 'fed-lawn' : has(f, 'pruned hard') ? 'pruned-hard' : null;
  const nitrogen: NitrogenNeed = { need: N, none: known ?? 'size-unknown', ifBelow: null, cap: 0, doses: 0, followed: null, lead: null, half: null };
  const questions = (known ? [] : (['planted-missing', 'crown-missing'] as const)).map((code): Question => ({ code, about: f.tree.name, facts: { tree: f.tree.name, crop: f.tree.word }, choices: [], changes: 'changes-nitrogen', place: f.tree.place }));
  return { verdict: stops.length > 0 ? 'wait' : 'none', stops, nitrogen, N, P2O5, K2O, MgO: null, rules, leaflets: leaflets(f), span: { N: spanOf(N, rules), P2O5: [P2O5, P2O5], K2O: [K2O, K2O] }, questions: stops.length > 0 ? [] : questions };
}

function refused(f: Facts, stops: readonly Stop[]): Need {
  const stop = stops[0]!;
  const nothing = <S extends 'N' | 'P2O5' | 'K2O'>(of: S): Figure<'g', S> => figure(0, 'g', of, 'stopped', stop.cite, [f.crown.area]);
  const [N, P2O5, K2O] = [nothing('N'), nothing('P2O5'), nothing('K2O')];
  const nitrogen: NitrogenNeed = { need: N, none: null, ifBelow: null, cap: 0, doses: 0, followed: null, lead: null, half: null };
  return { verdict: 'wait', stops, nitrogen, N, P2O5, K2O, MgO: null, rules: span(f, 'N'), leaflets: [], span: { N: [N, N], P2O5: [P2O5, P2O5], K2O: [K2O, K2O] }, questions: [] };
}

const FACT_ASKED = { trunk: 'trunk-missing', height: 'height-missing', spacing: 'spacing-missing' } as const;

/** What the grower could still tell, each with "don't know" and what it changes. */
function questionsOf(f: Facts, nitrogen: NitrogenNeed, potash: SoilNeed<Potash>): Question[] {
  const { tree } = f;
  const ask = (code: AskId, changes: AskId): Question => ({ code, about: tree.name, facts: { tree: tree.name, crop: tree.word }, choices: [], changes, place: tree.place });
  const questions: Question[] = [];
  if (tree.tub !== undefined) return questions;
  if (isToCome(f)) return f.bed === null ? [ask('bed-missing', 'changes-planting')] : [];
  const idle = nitrogen.none === 'fed-lawn' || nitrogen.none === 'planting-year' || nitrogen.none === 'pruned-hard';
  if (!idle && f.years === null) questions.push(ask('planted-missing', 'changes-nitrogen'));
  const wanted = nitrogen.lead?.wants ?? null;
  const fact = nitrogen.none === 'fact-missing' ? wantedFact(f) : wanted?.fact ?? null;
  const source = wanted ? sourceOf(wanted.rule.source)?.publisher ?? '' : '';
  if (!idle && fact && fact !== 'planted') questions.push({ ...ask(FACT_ASKED[fact], 'changes-nitrogen'), facts: { tree: tree.name, crop: tree.word, source } });
  if (!idle && f.crown.guessed) questions.push(ask('crown-missing', 'changes-nitrogen'));
  if (nitrogen.ifBelow && growthOf(f) === null) questions.push(ask('shoots-missing', 'changes-nitrogen'));
  if (nitrogen.none === 'growth-within') questions.push(ask('fed-last-year', 'changes-nitrogen'));
  if (f.byLab && f.advice.some(isUnclear)) questions.push(ask('advice-form', 'changes-p-and-k'));
  if (potash.ask) questions.push(ask('fruit-weight', 'changes-potash'));
  return questions;
}
