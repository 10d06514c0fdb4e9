/** A bag as its label says it: name, grade, weight, price, what is left, and words that matter. */
import type { Cite } from '../reason/figure.ts';
import type { Notice, Place } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Material } from '../tables/materials.ts';
import { ELEMENTAL_LABELS, MATERIALS } from '../tables/materials.ts';
import { ELEMENT_SHARE } from '../units/substance.ts';
import { massOf, numberOf } from './measure.ts';

/** N, P2O5 and K2O as shares from 0 to 1. */
export type Grade = { readonly N: number; readonly P2O5: number; readonly K2O: number };

export type Bag = {
  readonly label: string;
  /** The three numbers as printed. */
  readonly printed: string;
  readonly grade: Grade;
  /** Where the label prints P and K as elements: the rule by which they became oxides. */
  readonly elemental?: Cite;
  readonly g: number | null;
  readonly price: { readonly amount: number; readonly currency: string } | null;
  /** Grams in hand; only for what stands in the shed. */
  readonly left: number | null;
  readonly material: Material | null;
  readonly slow: boolean;
  readonly liquid: boolean;
  readonly chloride: boolean;
  readonly weedKiller: boolean;
  readonly place: Place;
};

export type BagResult = { readonly bag: Bag | null; readonly notices: readonly Notice[] };

const GRADE = /(?:npk *)?(\d+(?:\.\d+)?) *[-–/:] *(\d+(?:\.\d+)?) *[-–/:] *(\d+(?:\.\d+)?)(?: *\+ *[\d.]+ *[A-Za-z]+)*/i;
const PRICE = /^(?:([$£€])|([A-Z]{1,2}\$)) *(\d+(?:[.,]\d{1,2})?)$|^(\d+(?:[.,]\d{1,2})?) *([$£€]|USD|EUR|GBP|AUD|NZD)$/;
const LEFT = /^(?:(half|quarter|third|all|none|three quarters|two thirds)|(.+?))(?: +(?:of it|full))? +left$|^(half|quarter) full$/i;
const SHARE: Readonly<Record<string, number>> = { half: 1 / 2, quarter: 1 / 4, third: 1 / 3, all: 1, none: 0, 'three quarters': 3 / 4, 'two thirds': 2 / 3 };

/** Reads a label such as `Sulphate of ammonia, 21-0-0 +24S, 4 lb, $9`. */
export function parseBag(text: string, country: string | null, inShed: boolean, place: Place): BagResult {
  const notices: Notice[] = [];
  const parts = text.split(/,\s+/).map((p) => p.trim()).filter(Boolean);
  let label = '';
  let grade: [number, number, number] | null = null;
  let printed = '';
  let g: number | null = null;
  let price: Bag['price'] = null;
  let left: { share?: number; g?: number } | null = null;
  const words = text.toLowerCase();
  for (const part of parts) {
    const graded = GRADE.exec(part);
    const weight = massOf(part);
    const cost = PRICE.exec(part);
    const rest = LEFT.exec(part);
    if (graded && grade === null) {
      grade = [Number(graded[1]), Number(graded[2]), Number(graded[3])];
      printed = `${graded[1]!}-${graded[2]!}-${graded[3]!}`;
      label ||= part.slice(0, graded.index).trim();
    } else if (typeof weight === 'number') g = weight;
    else if (weight) notices.push(notice('number-two-ways', 'error', { read: weight.unclear, dot: weight.unclear.replace(',', '.'), plain: weight.unclear.replace(',', '') }, place));
    else if (cost) price = { amount: Number((cost[3] ?? cost[4]!).replace(',', '.')), currency: cost[1] ?? cost[2] ?? cost[5]! };
    else if (rest) {
      const said = (rest[1] ?? rest[3] ?? '').toLowerCase();
      const share = Object.hasOwn(SHARE, said) ? SHARE[said] : undefined;
      const amount = rest[2] ? massOf(rest[2]) : null;
      left = share !== undefined ? { share } : typeof amount === 'number' ? { g: amount } : null;
      if (!left) notices.push(notice('bag-part-unknown', 'error', { read: part, bag: text }, place));
    } else if (!label) label = part;
    else if (/^[$£€]/.test(part) || /^\d/.test(part) || numberOf(part) !== null) notices.push(notice('bag-part-unknown', 'error', { read: part, bag: text }, place));
    else if (!/weed|herbicide|slow|coated|controlled|release|liquid|soluble|organic|sulphate|sulfate|chloride|muriate|granul|crystal|pellet/i.test(part)) label += `, ${part}`;
  }
  const material = materialOf(label, grade);
  grade ??= material ? [...material.grade] : null;
  if (grade === null) {
    notices.push(notice('grade-missing', 'error', { bag: text }, place));
    return { bag: null, notices };
  }
  printed ||= grade.join('-');
  const fault = faultOf(grade, country);
  if (fault) {
    notices.push(notice(fault, 'error', { read: printed, bag: label || text }, place));
    return { bag: null, notices };
  }
  const elemental = country ? ELEMENTAL_LABELS[country] : undefined;
  const [n, p, k] = grade;
  const oxide = elemental ? { P2O5: 1 / ELEMENT_SHARE.P2O5.share, K2O: 1 / ELEMENT_SHARE.K2O.share } : { P2O5: 1, K2O: 1 };
  if (notices.length > 0) return { bag: null, notices };
  const inHand = left?.g ?? (g === null ? null : g * (left?.share ?? 1));
  return {
    notices,
    bag: {
      label: label || printed, printed, place, g, price, material,
      grade: { N: n / 100, P2O5: (p * oxide.P2O5) / 100, K2O: (k * oxide.K2O) / 100 },
      ...(elemental ? { elemental } : {}),
      left: inShed ? inHand : null,
      slow: /slow|coated|controlled/.test(words),
      liquid: /liquid/.test(words),
      chloride: k > 0 && carriesChloride(words, material),
      weedKiller: /(?<!sea ?)weed|herbicide|moss ?kill|2,4-d|dicamba|atrazine/.test(words),
    },
  };
}

/** The potash of a blend is nearly always chloride unless the label says sulphate or names something grown (memory). */
function carriesChloride(words: string, material: Material | null): boolean {
  if (/chloride[- ]free|no chloride/.test(words)) return false;
  if (/chloride|muriate/.test(words)) return true;
  if (/sul(?:ph|f)ate/.test(words)) return false;
  if (material && material.id !== '10-10-10') return material.chloride === true;
  return !/organic|meal|manure|seaweed|kelp|compost|\bash\b/.test(words);
}

function faultOf(grade: readonly number[], country: string | null): 'grade-empty' | 'grade-impossible' | null {
  const sum = grade.reduce((a, b) => a + b, 0);
  if (sum === 0) return 'grade-empty';
  const [n = 0, p = 0, k = 0] = grade;
  const elemental = country !== null && ELEMENTAL_LABELS[country] !== undefined;
  const held = elemental ? n + p / ELEMENT_SHARE.P2O5.share + k / ELEMENT_SHARE.K2O.share : sum;
  return held > 100 ? 'grade-impossible' : null;
}

/** The material a label names; failing a name, the one whose grade it prints. */
function materialOf(label: string, grade: readonly [number, number, number] | null): Material | null {
  const words = label.toLowerCase();
  const named = MATERIALS.find((m) => m.names.some((n) => new RegExp(`\\b${n}\\b`).test(words)));
  if (named) return named;
  return grade ? MATERIALS.find((m) => m.temptsDogs === undefined && m.grade.every((x, i) => x === grade[i])) ?? null : null;
}
