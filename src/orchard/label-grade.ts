/** The numbers of a label: "10-10-10 +5S", "2:3:2 (22)", "NPK (Ca,S) 4-12-12 (14-29)", "27% N", "12% N, 5% P, 14% K". */
import type { Facts } from '../reason/notice.ts';
import type { OtherForm } from '../tables/materials.ts';
import { FOURTH_IS_SULPHUR, LISTED_AS, RATIO_LABELS } from '../tables/materials.ts';
import { LETTER } from '../units/letters.ts';
import type { NoticeId } from '../words/words.ts';
import { claimsIn } from './label-claims.ts';

/** Where the numbers stood. No grower types it. */
export const MARK = '\uE000';
export type Form = 'element' | 'oxide' | null;
export type Others = { readonly [F in OtherForm]?: number };

export type Read = {
  /** N, P and K in percent, as printed; null where the label prints none. */
  readonly numbers: readonly [number, number, number] | null;
  /** What P and K are, where the label itself tells. */
  readonly p: Form;
  readonly k: Form;
  readonly printed: string;
  readonly others: Others;
  /** The label with a mark for its numbers. */
  readonly rest: string;
  /** Percent by volume: told in grams a litre. */
  readonly byVolume: boolean;
  readonly faults: readonly { readonly code: NoticeId; readonly facts: Facts }[];
  readonly notes: readonly { readonly code: NoticeId; readonly facts: Facts }[];
};

const DASH = ' *[-‐‑‒–—−/:] *';
const PART = '(\\d+(?:[.,]\\d{1,2})?)';
const SYMBOL = `(SO3|S|CaO|Ca|MgO|Mg|Cl|Fe|Mn|Zn|Cu|Mo|Na2O|Na|Si|B|TE|ME)(?![${LETTER}\\d])`;
const NAMED = `n-?p-?k:? *(?:\\(([${LETTER}\\d,; +]{1,30})\\) *)?`;
const TRIPLES: readonly RegExp[] = [
  new RegExp(`(?:${NAMED})?(?<![\\d.,])${PART}(${DASH})${PART}(${DASH})${PART}`, 'i'),
  new RegExp(`(?:${NAMED})?(?<![\\d.,])${PART}( *\\+ *)${PART}( *\\+ *)${PART}(?!\\d)`, 'i'),
  new RegExp(`${NAMED}(?<![\\d.,])${PART}( )${PART}( )${PART}(?![\\d.,]*\\d)`, 'i'),
  new RegExp(`(?<![${LETTER}\\d])(x{0})N *[:=]? *${PART} *%?([ ,;/-]*)P(?:2O5)? *[:=]? *${PART} *%?([ ,;/-]*)K(?:2O)? *[:=]? *${PART} *%?(?![${LETTER}\\d])`),
];
/** A number in a list: where a comma or point can be its decimal mark it is, so that there is one way to read the list. */
const DECIMALS = '[.,]\\d+(?!\\d|\\.\\d)';
const LISTED = `\\d+(?:${DECIMALS}|(?!\\d|${DECIMALS}))`;
/** What follows the third number and belongs to it. */
const TAIL: readonly (readonly ['named' | 'bracket' | 'fourth' | 'passed', RegExp])[] = [
  ['named', new RegExp(`^ *(?:[-+–] *)?(?:\\( *)?(?:\\+ *)?${PART} *%? *${SYMBOL} *\\)?`, 'i')],
  ['bracket', new RegExp(`^ *-? *\\(( *\\+? *${LISTED}(?: *[-/+;,] *${LISTED})*) *%?\\)`)],
  ['passed', new RegExp(`^ *\\+ *(?:TE|ME|trace elements|micros?|micronutrients)(?![${LETTER}\\d])`, 'i')],
  ['fourth', new RegExp(`^[-–:](\\d+(?:[.,]\\d{1,2})?)(?![\\d.,]*\\d)(?! *(?:kg|g|lbs?|oz|pounds?|ounces?|l|ml|gal)(?![${LETTER}\\d]))`, 'i')],
  ['fourth', new RegExp(`^ *\\+ *(\\d+(?:[.,]\\d{1,2})?)(?![\\d.,]*\\d)(?! *(?:kg|g|lbs?|oz|pounds?|ounces?|l|ml|gal)(?![${LETTER}\\d]))(?! *%? *[${LETTER}])`, 'i')],
  ['passed', new RegExp(`^ *\\+ *\\d+(?:[.,]\\d+)? *%? *(?!(?:kg|g|lbs?|oz|pounds?|ounces?|l|ml|gal)(?![${LETTER}\\d]))[${LETTER}]+`, 'i')],
];
const BEGINS_TAIL = /^ *[-+–:(\d]/;
const number = (text: string): number => Number(text.replace(',', '.'));
const FORMS: readonly OtherForm[] = ['SO3', 'S', 'CaO', 'Ca', 'MgO', 'Mg', 'Cl'];
const formOf = (symbol: string): OtherForm | undefined => FORMS.find((f) => f.toLowerCase() === symbol.toLowerCase());

/** Reads the numbers of a label; without any, `numbers` is null. */
export function gradeIn(text: string, country: string | null): Read {
  const clean = text.replaceAll(MARK, ' ');
  const found = TRIPLES.map((t) => t.exec(clean)).filter((m) => m !== null).sort((a, b) => a.index - b.index)[0];
  return found ? triple(clean, found, country) : claimed(clean);
}

/** Numbers told by their names alone. */
function claimed(text: string): Read {
  const { nutrients, others, rest, byVolume, faults } = claimsIn(text);
  const { N, P, P2O5, K, K2O } = nutrients;
  const [p, k] = [P2O5 ?? P, K2O ?? K];
  const none = N === undefined && p === undefined && k === undefined;
  const numbers = none ? null : [N ?? 0, p ?? 0, k ?? 0] as const;
  return {
    numbers, others, byVolume, notes: [], faults, printed: numbers ? numbers.join('-') : '', rest,
    p: P2O5 !== undefined ? 'oxide' : null, k: K2O !== undefined ? 'oxide' : null,
  };
}

function triple(text: string, m: RegExpExecArray, country: string | null): Read {
  const parts = [m[2]!, m[4]!, m[6]!].map((n) => n.replace(',', '.'));
  const numbers = parts.map(Number) as [number, number, number];
  const listed = (m[1] ?? '').split(/[,;+ ]+/).filter(Boolean);
  const tail = tailOf(text.slice(m.index + m[0].length), listed);
  const end = m.index + m[0].length + tail.length;
  const before = text.slice(0, m.index);
  const read = text.slice(m.index, end).trim();
  const faults: Read['faults'][number][] = [];
  const notes: Read['notes'][number][] = [];
  // A dash that touches the number is a minus, or nobody knows.
  if (/(?:^|[\s(,])[-−–]$/.test(before)) faults.push({ code: 'grade-negative', facts: { read: `-${read}` } });
  const others: { [F in OtherForm]?: number } = { ...tail.others };
  const form = ratioOf(numbers, /:/.test(m[3]!) && /:/.test(m[5]!), tail.bracket, country);
  const sum = numbers.reduce((a, b) => a + b, 0);
  const shared = (total: number): [number, number, number] => numbers.map((x) => (x * total) / sum) as [number, number, number];
  const asFacts = ([n, p, k]: readonly [number, number, number]): Facts => ({ n: tenth(n), p: tenth(p), k: tenth(k) });
  if (form === 'ask') faults.push({ code: 'grade-ratio', facts: { read, percent: parts.join('-'), ...asFacts(shared(tail.bracket!)) } });
  if (form === 'total') faults.push({ code: 'grade-ratio-total', facts: { read } });
  const ratio = typeof form === 'number' ? form : null;
  if (ratio === null && form === null && tail.bracket !== null) notes.push({ code: 'grade-bracket', facts: { read } });
  if (tail.fourth !== null) {
    if (FOURTH_IS_SULPHUR.countries.some((c) => c === country)) others.S ??= tail.fourth;
    else notes.push({ code: 'grade-bracket', facts: { read } });
  }
  // What else the words around it claim: the other nutrients count, a nitrogen above the first number cannot be.
  const around = claimsIn(`${before} ${MARK} ${text.slice(end)}`);
  if ((around.nutrients.N ?? 0) > numbers[0] * 1.03 + 0.5 && ratio === null) faults.push({ code: 'grade-two-values', facts: { read: `${parts.join('-')}, ${around.nutrients.N!} % N` } });
  const values = ratio !== null && sum > 0 ? shared(ratio) : numbers;
  if (ratio !== null) notes.push({ code: 'grade-ratio-taken', facts: { read, ...asFacts(values) } });
  return {
    numbers: values, others: { ...around.others, ...others }, byVolume: around.byVolume, faults, notes, rest: around.rest,
    p: ratio !== null ? 'element' : /P2O5/.test(m[0]) ? 'oxide' : null, k: ratio !== null ? 'element' : /K2O/.test(m[0]) ? 'oxide' : null,
    printed: ratio !== null ? read : parts.join('-'),
  };
}

const tenth = (x: number): number => Math.round(x * 10) / 10;

type Tail = { readonly length: number; readonly others: Others; readonly bracket: number | null; readonly fourth: number | null };

function tailOf(text: string, listed: readonly string[]): Tail {
  const others: { [F in OtherForm]?: number } = {};
  let [length, bracket, fourth]: [number, number | null, number | null] = [0, null, null];
  const bare: string[] = [];
  while (BEGINS_TAIL.test(text.slice(length))) {
    const next = TAIL.map(([kind, pattern]) => ({ kind, m: pattern.exec(text.slice(length)) })).find((x) => x.m !== null);
    if (!next) break;
    length += next.m![0].length;
    const form = next.kind === 'named' ? formOf(next.m![2]!) : undefined;
    if (form) others[form] = number(next.m![1]!);
    if (next.kind === 'bracket' || next.kind === 'fourth') bare.push(...next.m![1]!.split(/[^\d.,]+/).filter(Boolean));
    if (next.kind === 'bracket') bracket = number(bare.at(-1)!);
    if (next.kind === 'fourth') fourth = number(bare.at(-1)!);
  }
  // The list in front names what the brackets hold.
  const held = bare.length < listed.length ? bare.flatMap((b) => b.split(',')) : bare;
  if (listed.length > 0 && listed.length === held.length) {
    listed.forEach((symbol, i) => {
      const form = Object.hasOwn(LISTED_AS.forms, symbol) ? LISTED_AS.forms[symbol as keyof typeof LISTED_AS.forms] : formOf(symbol);
      if (form) others[form] = number(held[i]!);
    });
    return { length, others, bracket: null, fourth: null };
  }
  return { length, others, bracket, fourth };
}

/** How far above its parts a total must be, to be one beyond doubt outside the countries that write so. */
const FAR = 1.5;

/** The total in percent where the three numbers are a ratio; `ask` where they may be, `total` where it lacks its total. */
function ratioOf(numbers: readonly number[], colons: boolean, bracket: number | null, country: string | null): number | 'ask' | 'total' | 'sum' | null {
  const sum = numbers.reduce((a, b) => a + b, 0);
  const home = RATIO_LABELS.countries.some((c) => c === country);
  if (bracket === null) return home && colons && sum > 0 && numbers.every((x) => Number.isInteger(x) && x < 10) ? 'total' : null;
  if (Math.abs(bracket - sum) < 1e-9) return home && colons ? bracket : 'sum';
  if (home && (colons || bracket > sum)) return bracket;
  if (bracket < sum) return null;
  return sum > 0 ? (colons && bracket >= FAR * sum ? bracket : 'ask') : null;
}
