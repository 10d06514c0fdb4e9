/** What the label of a lime says of its strength: each value with its name, and what passes which sieve. */
import type { EffectiveId } from '../tables/lime-materials.ts';
import { INDEX_GRADE, SIEVE_MM } from '../tables/lime-materials.ts';
import { LETTER } from '../units/letters.ts';

export type ClaimOf = EffectiveId | 'cce' | 'nv' | 'tnv' | 'caco3' | 'mgco3' | 'Ca' | 'Mg' | 'CaO' | 'MgO' | 'moisture' | 'fineness' | 're';
/** `read` is the grower's own words. */
export type Claim = {
  readonly of: ClaimOf;
  readonly value: number;
  readonly unit: '%' | 'lb/ton' | null;
  /** What a neutralising value says that it is percent of. */
  readonly basis?: 'CaO' | 'CaCO3';
  /** The middle of a grade such as 80-89. */
  readonly grade?: true;
  readonly read: string;
};
export type Sieve = { readonly mm: number; readonly percent: number; readonly read: string };

/** The names of each value on labels; the longer before the shorter. */
const NAMES: readonly (readonly [of: ClaimOf, names: string])[] = [
  ['ecce', 'effective (?:calcium carbonate equivalen(?:t|ce)|cce)|ecce'],
  ['ecc', 'effective calcium carbonate|ecc'],
  ['env', 'effective neutrali[sz]ing value|env'],
  ['enp', 'effective neutrali[sz]ing power|enp'],
  ['enm', 'effective neutrali[sz]ing material|enm'],
  ['rnv', 'relative neutrali[sz]ing value|rnv'],
  ['prnt', 'prnt'],
  ['ai', 'ag(?:ricultural)? index|ai'],
  ['score', '(?:oregon )?lime score|score'],
  ['ni', 'neutrali[sz]ing index|ni'],
  ['cce', 'calcium carbonate equivalen(?:t|ce)|cce|caco3 equivalen(?:t|ce)|total neutrali[sz]ing power|tnp|pn'],
  ['tnv', 'total neutrali[sz]ing value|tnv'],
  ['nv', 'neutrali[sz]ing value|nv'],
  ['caco3', 'calcium carbonate|caco3'],
  ['mgco3', 'magnesium carbonate|mgco3'],
  ['CaO', 'calcium oxide|cao'], ['MgO', 'magnesium oxide|mgo'],
  ['Ca', 'calcium|ca'], ['Mg', 'magnesium|mg'],
  ['moisture', 'moisture|water'],
  ['fineness', 'fineness(?: (?:factor|index|rating|efficiency|guide))?|fi'],
  ['re', 're'],
];
/** Metals are told in percent; without it "mg" is a weight. */
const METALS: readonly ClaimOf[] = ['Ca', 'Mg', 'CaO', 'MgO', 'mgco3'];

const NUMBER = '(\\d{1,3}(?:,\\d{3})+(?![.,]?\\d)|\\d+(?:[.,]\\d+)?(?![.,]?\\d))';
const PER_TON = '(?:lbs?\\.?|pounds?) *(?:/|per|a) *(?:us |short )?ton';
const WEIGHT = '(?! *-?(?:kg|g|lbs?|pounds?|oz|ounces?|bags?)\\b(?! *(?:/|per|a) *(?:us |short )?ton))';
const NAME = `(${NAMES.map(([, n]) => n).join('|')})(?![${LETTER}\\d])(?: *\\((?:mg|ca|[ct]?cc?e|ecce|enp|enm|env|rnv|t?nv)\\))?`;
const BETWEEN = `(?: *\\( *(%|${PER_TON}) *\\))?(?: *[:=≥>]+| +(?:of|is|at least|min(?:imum)?\\.?)(?![${LETTER}]))* *`;
/** "(% CaO)", "as CaCO3". */
const BASIS = `(?: *\\(?(?:as|in|of|%|equivalent| )*(cao|caco3)(?![${LETTER}\\d])\\)?)?`;
const BEFORE = `(?<![${LETTER}\\d.,$£€-])`;
const CLAIM = new RegExp(`${BEFORE}(?:${NUMBER} *(%|${PER_TON})? *(?:of +|as +)?${NAME}( *(?:/|per) *ton)?|${NUMBER} *(?:lbs?|pounds?) +(?:of +)?(enp|enm|ecce) *(?:/|per|a) *ton|(nv|tnv|(?:total )?neutrali[sz]ing value)${BETWEEN}${NUMBER}${WEIGHT} *%?${BASIS}|${NAME}${BETWEEN}${NUMBER}${WEIGHT} *(%|${PER_TON})?)`, 'gi');
/** "80-89": the grade of an index, ten points wide. */
const GRADE = new RegExp(`(?<![\\d.,-])(?:(?:neutrali[sz]ing index|index|grade)(?: +(?:zone|grade|of))* *[:=]? *)?(\\d{1,2}0)-(\\d{1,2}9)(?![\\d-])(?: *(?:grade|index)(?![${LETTER}]))?`, 'gi');

const MESH = `(?:#|no\\.? *)?(\\d+(?:[.,]\\d+)?) *(mm|µm|μm|um|microns?|mesh)?(?![${LETTER}\\d])(?: *(?:sieve|screen|mesh))*`;
const PASSING = '(?:will +)?(?:(?:pass(?:es|ing)?|through|thru|finer than|smaller than|less than|under|below|<|durch) *)+(?:an? +|the +)?';
const SIEVES = new RegExp(`${BEFORE}(?:${NUMBER} *%? *(?:(${PASSING})|(?:retained|held|stays) on +|(?=\\d+ *mesh))${MESH}|${PASSING}${MESH} *[:=]? *${NUMBER} *%?|(\\d+)(?: *mesh *[:=]? *(?=[\\d.,]+ *%)| *mesh *[:=] *| *= *)${NUMBER} *%?)`, 'gi');

/** "2,400 lb equal to 1 ton of standard lime", "ACE 2,400 lb": by law on the labels of North Carolina. */
const TO_A_TON = '(?:1|one|an?) +ton +(?:of +)?(?:standard +)?(?:ag(?:ricultural)? *)?lim(?:e(?:stone)?|ing material)';
const POUNDS = `${NUMBER} *(?:lbs?\\.?|pounds?)`;
const STANDARD = new RegExp(`${BEFORE}(?:${POUNDS} +(?:of +(?:this|the) +[${LETTER}]+ +)?(?:(?:is|are|=) *)?(?:equals?|equivalent|=)(?: +to)? +${TO_A_TON}|${TO_A_TON} +(?:equals?|=|is(?: equal to)?) *${POUNDS}|ace(?: *[:=]? *)${POUNDS})(?![${LETTER}])`, 'gi');

const numberOf = (text: string): number => Number(/^\d{1,3}(?:,\d{3})+$/.test(text) ? text.replaceAll(',', '') : text.replace(',', '.'));

export function claimsIn(text: string): { readonly claims: readonly Claim[]; readonly sieves: readonly Sieve[]; readonly rest: string } {
  const claims: Claim[] = [];
  const sieves: Sieve[] = [];
  const rest = text
    .replace(STANDARD, (read: string, ...m: (string | undefined)[]) => {
      const pounds = numberOf((m[0] ?? m[1] ?? m[2])!);
      claims.push({ of: 'standard', value: pounds, unit: 'lb/ton', read: read.trim() });
      return ' ';
    })
    .replace(SIEVES, (read: string, ...m: (string | undefined)[]) => {
      const [before, verb, mesh1, unit1, mesh2, unit2, after2, mesh3, after3] = m;
      const mm = openingOf((mesh1 ?? mesh2 ?? mesh3)!, unit1 ?? unit2);
      if (mm === null) return read;
      const percent = numberOf((before ?? after2 ?? after3)!);
      sieves.push({ mm, percent: before !== undefined && verb === undefined && /retained|held|stays/i.test(read) ? 100 - percent : percent, read: read.trim() });
      return ' ';
    })
    .replace(GRADE, (read: string, low: string, high: string) => {
      if (Number(high) - Number(low) !== 9) return read;
      claims.push({ of: 'ni', value: Number(low) + INDEX_GRADE.middle, unit: null, grade: true, read: read.trim() });
      return ' ';
    })
    .replace(CLAIM, (read: string, ...m: (string | undefined)[]) => {
      const [value1, unit1, name1, perTon, value2, name2, name3, unit3, value3, basis, name4, unit4, value4, unit5] = m;
      const name = (name1 ?? name2 ?? name3 ?? name4)!.toLowerCase();
      const of = NAMES.find(([, n]) => new RegExp(`^(?:${n})$`, 'i').test(name))![0];
      const unit = unit1 ?? unit3 ?? unit4 ?? unit5;
      const percent = unit === '%' || (name3 !== undefined && read.includes('%'));
      if (METALS.includes(of) && !percent) return read;
      const pounds = value2 !== undefined || perTon !== undefined || (unit !== undefined && unit !== '%');
      claims.push({
        of, value: numberOf((value1 ?? value2 ?? value3 ?? value4)!), unit: pounds ? 'lb/ton' : percent ? '%' : null, read: read.trim(),
        ...(basis ? { basis: basis.toLowerCase() === 'cao' ? 'CaO' : 'CaCO3' } : name === 'pn' ? { basis: 'CaCO3' } : {}),
      });
      return ' ';
    });
  return { claims, sieves, rest };
}

/** A mesh, or an opening told in millimetres; null for a mesh that no table here has. */
function openingOf(text: string, unit: string | undefined): number | null {
  const n = numberOf(text);
  if (unit === undefined || unit.toLowerCase() === 'mesh') return SIEVE_MM.map((t) => t.meshes[n]).find((mm) => mm !== undefined) ?? null;
  return unit.toLowerCase() === 'mm' ? n : n / 1000;
}
