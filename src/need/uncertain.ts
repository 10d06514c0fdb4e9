/**
 * How far an answer would move: by the rule that leads, by the lab's own scatter, by the measure of the tree; one at a time.
 * And which open question, answered, would move it most.
 */
import type { Figure } from '../reason/figure.ts';
import type { Question } from '../reason/notice.ts';
import { COMMON_WORDS } from '../tables/ratings.ts';
import type { Nutrient } from '../units/substance.ts';
import { NUTRIENTS } from '../units/substance.ts';
import type { Facts } from './facts.ts';
import { groundOf, isToCome } from './facts.ts';
import type { Need } from './need.ts';
import { decided } from './need.ts';
import { fits, leadersFor } from './rules.ts';

export type Range = readonly [low: number, high: number];
export type Uncertain = {
  /** Grams a plant; the need itself lies within. */
  readonly range: Readonly<Record<Nutrient, Range>>;
  /** The open question whose answers lie furthest apart, with the nutrient that it moves and how far. */
  readonly narrow: { readonly question: Question; readonly of: Nutrient; readonly range: Range } | null;
};

/** A crown is measured to about a tenth; a guessed one may be half as wide again, or half. */
const MEASURED = 0.1;
const GUESSED = 0.5;
/** A full crop on a square metre of crown, where nobody weighed it: Switzerland's norm for apples, in grams. */
const FULL_CROP = 4000;

type Amounts = Readonly<Record<Nutrient, number>>;

export function uncertaintyOf(f: Facts, need: Need): Uncertain {
  const found: Amounts = { N: need.N.value, P2O5: need.P2O5.value, K2O: need.K2O.value };
  if (need.verdict === 'wait' || f.tree.tub !== undefined || isToCome(f) || need.nitrogen.none === 'size-unknown') return { range: spread([found]), narrow: null };
  const variants = [...crowns(f), ...scatters(f), ...rules(f)].map(amountsOf);
  // Fed on a condition: what the growth turns out to be decides, so nothing is the other answer about the shoots.
  const conditional = need.nitrogen.ifBelow ? [{ ...found, N: 0 }] : [];
  const moved = need.questions.map((question) => {
    const range = spread([found, ...answersTo(question, f).map(amountsOf), ...(question.code === 'shoots-missing' ? conditional : [])]);
    const of = NUTRIENTS.reduce((a, b) => (width(range[b]) > width(range[a]) ? b : a));
    return { question, of, range: range[of] };
  }).filter((m) => width(m.range) > 0);
  const most = moved.reduce<Uncertain['narrow']>((a, b) => (a && width(a.range) >= width(b.range) ? a : b), null);
  return { range: spread([found, ...variants, ...conditional]), narrow: most };
}

const width = ([low, high]: Range): number => high - low;

function spread(all: readonly Amounts[]): Record<Nutrient, Range> {
  const of = (n: Nutrient): Range => [Math.min(...all.map((a) => a[n])), Math.max(...all.map((a) => a[n]))];
  return { N: of('N'), P2O5: of('P2O5'), K2O: of('K2O') };
}

function amountsOf(f: Facts): Amounts {
  const { nitrogen, p, k } = decided(f);
  return { N: nitrogen.need.value, P2O5: p.need.value, K2O: k.need.value };
}

const scaled = <T extends Figure>(x: T, by: number): T => ({ ...x, value: x.value * by });

/** The crown narrower and wider by the share that it is known to. */
function crowns(f: Facts): Facts[] {
  const off = f.crown.guessed ? GUESSED : MEASURED;
  return [1 - off, 1 + off].map((by) => ({ ...f, crown: { ...f.crown, diameter: scaled(f.crown.diameter, by), area: scaled(f.crown.area, by * by) } }));
}

/** Each value that lies within the lab's own scatter of another class, in that class. */
function scatters(f: Facts): Facts[] {
  const { soil } = f;
  if (!soil) return [];
  return soil.rated.flatMap((r) => {
    const { near } = r;
    return near === null ? [] : [{ ...f, soil: { ...soil, rated: soil.rated.map((x) => (x === r ? { ...r, rating: near, target: COMMON_WORDS[near] } : x)) } }];
  });
}

/** Each other publication that could lead, in turn. */
const rules = (f: Facts): Facts[] => leadersFor(f).filter((rule) => fits(rule, f)).map((rule) => ({ ...f, rules: [rule] }));

/** The tree as it would be by each of the likely answers. */
function answersTo({ code }: Question, f: Facts): Facts[] {
  switch (code) {
    case 'planted-missing': return [2, 5, 10].map((years) => ({ ...f, years }));
    case 'crown-missing': return crowns({ ...f, crown: { ...f.crown, guessed: true } });
    case 'fruit-weight': return [0, FULL_CROP * groundOf(f).value].map((g) => ({ ...f, tree: { ...f.tree, fruit: { said: 'weight' as const, g } } }));
    case 'fed-last-year': return [0, 1e6].map((lastN) => ({ ...f, lastN }));
    default: return [];
  }
}
