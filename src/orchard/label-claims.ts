/** Nutrients told by name and percent: "27% N", "N 21%", "27N", "available phosphate (P2O5) 5 %", "120 g/L N". */
import type { Facts } from '../reason/notice.ts';
import type { OtherForm } from '../tables/materials.ts';
import { LETTER } from '../units/letters.ts';
import type { NoticeId } from '../words/words.ts';

type Told = 'N' | 'P' | 'P2O5' | 'K' | 'K2O';
export type Claims = {
  readonly nutrients: { readonly [T in Told]?: number };
  readonly others: { readonly [F in OtherForm]?: number };
  /** In grams a litre. */
  readonly byVolume: boolean;
  readonly rest: string;
  readonly faults: readonly { readonly code: NoticeId; readonly facts: Facts }[];
};

/** Oxides before what they begin with. */
const NAMES: readonly (readonly [Told | OtherForm, string])[] = [
  ['N', '(?:total |gesamt-?)?(?:nitrogen|stickstoff|nitr[oó]geno|azote)(?: *\\(N\\))?|N'],
  ['P2O5', 'P2O5|P₂O₅|(?:available |citrate[- ]soluble |soluble )?(?<!(?:rock|ammonium|potassium|colloidal|magnesium|super|urea|bone)[ -])(?:phosphate|phosphoric acid|phosphat|phosphorus pentoxide|fosfato)(?: *\\(P2O5\\))?'],
  ['P', '(?:phosphorus|phosphor|phosphore|f[oó]sforo)(?: *\\(P\\))?|P'],
  ['K2O', 'K2O|K₂O|(?:water[- ]soluble |soluble )?(?:potash|potassium oxide|kaliumoxid|potasa|potasse|kali)(?: *\\(K2O\\))?'],
  ['K', '(?:potassium|kalium|potasio)(?: *\\(K\\))?|K'],
  ['SO3', 'SO3|SO₃|sul(?:ph|f)ur trioxide'], ['S', '(?:sul(?:ph|f)ur|schwefel|azufre|soufre|zolfo|enxofre)(?: *\\(S\\))?|S'],
  ['CaO', 'CaO|calcium oxide'], ['Ca', '(?:calcium|calcio)(?: *\\(Ca\\))?|Ca'], ['MgO', 'MgO|magnesium oxide'], ['Mg', '(?:magnesium|magnesio)(?: *\\(Mg\\))?|Mg'], ['Cl', 'chloride|chlorine|Cl'],
];
const NAME = `(?:${NAMES.map(([, pattern], i) => `(?<n${i}>${pattern})`).join('|')})(?![${LETTER}\\d])`;
const PERCENT = `(?<![\\d.,-])(?<value>\\d+(?:[.,]\\d+)?) *(?<unit>%|percent(?![${LETTER}])|g */ *L(?![${LETTER}])|g per lit(?:er|re))`;
/** What each claim holds: without it the large patterns, slow to be made ready, are spared. */
const IN_PERCENT = /%|percent|g *\/ *l|g per lit/i;
/** The number first, or the name first: a label keeps to one way. */
const NUMBER_FIRST = new RegExp(`${PERCENT} *(?:of |as |total )?(?<![${LETTER}])${NAME}`, 'gi');
const NAME_FIRST = new RegExp(`(?<![${LETTER}\\d.,\'’])${NAME} *(?:is |of |[:=.…]+)? *${PERCENT}`, 'gi');
const GLUED = new RegExp(`(?<![${LETTER}\\d.,-])(?<value>\\d+(?:[.,]\\d+)?)(?<unit>)(?:${NAMES.map(([form], i) => `(?<n${i}>${form})`).join('|')})(?![${LETTER}\\d])`, 'g');
/** The element told again behind its oxide: "5 % P2O5 (2.2 % P)". */
const AGAIN = /\( *\d+(?:[.,]\d+)? *% *(?:P|K|Mg|Ca|S) *\)/g;
/** A claim followed by these is a part of the whole: "7 % N as nitrate". */
const PART = /^ *(?:as |from |in |\(?(?:nitri|nitrat|ammon|ure|organi|slow|water|of which))/i;

export function claimsIn(text: string): Claims {
  const nutrients: { [T in Told]?: number } = {};
  const others: { [F in OtherForm]?: number } = {};
  const faults: Claims['faults'][number][] = [];
  let byVolume = false;
  const clean = text.replace(AGAIN, ' ');
  const told = IN_PERCENT.test(clean);
  const [numberAt, nameAt] = told ? [clean.search(NUMBER_FIRST), clean.search(NAME_FIRST)] : [-1, -1];
  const first = nameAt >= 0 && (numberAt < 0 || nameAt < numberAt) ? NAME_FIRST : NUMBER_FIRST;
  const take = (...found: unknown[]): string => {
    const groups = found.at(-1) as Readonly<Record<string, string | undefined>>;
    const [whole, source, at] = [found[0] as string, found.at(-2) as string, found.at(-3) as number];
    const form = NAMES.find((_, i) => groups[`n${i}`] !== undefined)![0];
    const value = Number(groups.value!.replace(',', '.')) / (groups.unit!.startsWith('g') ? 10 : 1);
    if (groups.unit!.startsWith('g')) byVolume = true;
    const known = isTold(form) ? nutrients[form] : others[form];
    const part = PART.test(source.slice(at + whole.length));
    if (known !== undefined && Math.abs(known - value) > 0.01 && !part) faults.push({ code: 'grade-two-values', facts: { read: `${known} %, ${whole.trim()}` } });
    else if (known === undefined && isTold(form)) nutrients[form] = value;
    else if (known === undefined && !isTold(form)) others[form] = value;
    return ' ';
  };
  const rest = (told ? clean.replace(first, take) : clean).replace(GLUED, take);
  return { nutrients, others, byVolume, rest: rest === text ? text : tidy(rest), faults };
}

const TOLD: readonly string[] = ['N', 'P', 'P2O5', 'K', 'K2O'];
const isTold = (form: Told | OtherForm): form is Told => TOLD.includes(form);

/** No brackets without words, no plus or bar that joined two claims. */
const tidy = (text: string): string => text.replace(/\( *[,;+]* *\)/g, ' ').replace(/ [+|/;] (?= *(?:$|,|\n))/g, ' ').replace(/(?<=^|,)\s*[+|/;]\s*(?=,|$)/g, ' ').replace(/[ \t]+/g, ' ').replace(/ ,/g, ',').trim();
