/** Words of a label that change what a bag is good for: slow, liquid, weed killer, chloride, nitrate, fresh; and how its numbers are meant. */
import type { Material, MaterialKind } from '../tables/materials.ts';
import { LETTER } from '../units/letters.ts';

/** How the numbers are meant, and what was weighed, with the label without these words. */
export type Sayings = {
  readonly rest: string;
  /** P and K as elements or as oxides, where the label says so. */
  readonly basis: 'element' | 'oxide' | null;
  /** Percent by volume: grams in 100 mL. */
  readonly byVolume: boolean;
  /** Percent of the nitrogen that is slow, or percent of the bag where `ofBag`. */
  readonly slow: { readonly percent: number; readonly ofBag: boolean } | null;
  /** g/mL. */
  readonly density: number | null;
  /** Grams of one level cup, by the grower's own scale. */
  readonly cup: number | null;
};

const NUM = '(\\d+(?:[.,]\\d+)?)';
const GRAMS: Readonly<Record<string, number>> = { g: 1, gram: 1, grams: 1, kg: 1000, oz: 453.59237 / 16, ounce: 453.59237 / 16, ounces: 453.59237 / 16, lb: 453.59237, lbs: 453.59237, pound: 453.59237, pounds: 453.59237 };
const MASS_UNIT = '(g|grams?|oz|ounces?|lbs?|pounds?)';
const CUP = new RegExp(`(?<![${LETTER}\\d/.,])(?<!(?:[\\d/]|half|half an?) +)(?:(?:one|an?|1) +)?(?:level +)?cup(?:ful)?(?: of (?:it|this|mine))?(?: weighs| is| holds| =|:|=)? *${NUM} *${MASS_UNIT}(?![${LETTER}\\d])|(?<![${LETTER}\\d.,])${NUM} *${MASS_UNIT} *(?:/|per|an?|the|one) *(?:level +)?cup(?:ful)?(?![${LETTER}\\d])`, 'i');
const DENSITY = new RegExp(`(?:(?:density|weighs|dichte|densidad|densite|densité|weight)[:= ]*)?(?<![${LETTER}\\d.,])${NUM} *(kg */ *L|g */ *(?:mL|cc|cm3|cm³)|kg */ *dm3|kg per lit(?:er|re)|(?:lbs?|pounds?) *(?:/|per|an?) *(?:US )?gal(?:lon)?)(?![${LETTER}\\d])|(?:density|specific gravity|sp\\.? ?gr\\.?|\\bsg\\b|dichte|densidad)[:= ]*${NUM}(?! *[${LETTER}\\d/%])`, 'i');
const LB_PER_GAL = 453.59237 / 3785.411784;
const BY_VOLUME = new RegExp(`(?<![${LETTER}])\\(?(?:% *)?(?:[wm] ?/ ?v|weight by volume|g(?:rams?)? ?(?:/|per) ?100 ?ml)\\)?(?![${LETTER}\\d])`, 'i');
const BY_WEIGHT = new RegExp(`(?<![${LETTER}\\d])\\(?(?:% *)?(?:[wm] ?/ ?[wm]|weight by weight)\\)?(?![${LETTER}\\d])`, 'i');
const BASIS = new RegExp(`(?<![${LETTER}\\d])\\(?(?:(?:(?:given |told |printed )?(?:as|in) )(?:the )?(?:pure )?(elements?|elemental|oxides?)|(elemental)(?! *sul)|(oxides?)(?! *of))\\)?(?![${LETTER}\\d])`, 'i');
const SLOW = '(?:slow(?:ly)?|controlled|timed|extended|polymer[- ]coated|resin[- ]coated|coated)';
const SLOW_SHARE = new RegExp(`(?<![\\d.,])${NUM} *% *(?:of (?:the |its )?(?:N|nitrogen) (?:is |as )?)?(${SLOW}|water[- ]insoluble|SRN|WIN)(?![${LETTER}\\d])(?:[- ](?:release[d]?|available))?(?: (?:nitrogen|N))?(?![${LETTER}\\d])|(?<![${LETTER}])${SLOW}[- ]releas(?:e|ed|ing)(?: (?:nitrogen|N))?[: ]+${NUM} *%`, 'i');

const number = (text: string): number => Number(text.replace(',', '.'));

/** A cup is 250 mL where kitchens are metric; what is told is that of a US cup. */
export function sayingsIn(text: string, country: string | null): Sayings {
  const cup = /cup/i.test(text) ? CUP.exec(text) : null;
  let rest = cup ? text.replace(CUP, ' ') : text;
  const heavy = DENSITY.exec(rest);
  if (heavy) rest = rest.replace(DENSITY, ' ');
  // Each large pattern is asked only where a word of it stands: making it ready takes longer than all else.
  const byVolume = /\/ ?v|volume|100 ?ml/i.test(rest) && BY_VOLUME.test(rest);
  if (byVolume) rest = rest.replace(BY_VOLUME, ' ');
  if (/\/ ?[wm]|by weight/i.test(rest)) rest = rest.replace(BY_WEIGHT, ' ');
  const basis = /element|oxide/i.test(rest) ? BASIS.exec(rest) : null;
  if (basis) rest = rest.replace(BASIS, ' ');
  const slow = rest.includes('%') ? SLOW_SHARE.exec(rest) : null;
  if (slow) rest = rest.replace(SLOW_SHARE, ' ');
  const weighed = cup ? number((cup[1] ?? cup[3])!) * GRAMS[(cup[2] ?? cup[4])!.toLowerCase()]! : null;
  return {
    rest,
    basis: basis === null ? null : /ox/i.test(basis[0]) ? 'oxide' : 'element',
    byVolume,
    slow: slow ? { percent: number((slow[1] ?? slow[3])!), ofBag: /slowly available|insoluble|WIN/i.test(slow[0]) } : null,
    density: heavy ? number((heavy[1] ?? heavy[3])!) * (/lb|pound/i.test(heavy[2] ?? '') ? LB_PER_GAL : 1) : null,
    cup: weighed === null ? null : country === null || country === 'US' ? weighed : (weighed * 236.5882365) / 250,
  };
}

/** From this share on a bag counts as slow. */
const MOSTLY = 0.5;

/** The share of the nitrogen that is slow. A label that says slow or coated and no share means all of it. */
export function slowShareOf(slow: Sayings['slow'], percentN: number, words: string, material: Material | null): number {
  if (slow) return Math.min(1, slow.ofBag && percentN > 0 && slow.percent <= percentN ? slow.percent / percentN : slow.percent / 100);
  const said = /slow|\bsr\b|coated|controlled|langzeit|depot|lib[eé]raci[oó]n (?:lenta|controlada)|lib[eé]ration (?:lente|contr[oô]l[eé]e)|lent[ao] cessione|cessione (?:lenta|controllata)|libera[cç][aã]o (?:lenta|controlada)/.test(words) && !/(?:not|no) slow/.test(words);
  return said || material?.slow ? 1 : 0;
}
export const isSlow = (share: number): boolean => share >= MOSTLY;

export const saysLiquid = (words: string): boolean => /liquid|emulsion|hydroly[sz]|fl[uü]ssig|l[ií]quid[oe]|\bw ?\/ ?v\b|\bsolution\b/.test(words);

/** Sold in litres it is no liquid for that. */
export const saysSolid = (words: string): boolean => /pellet|granul|powder|prill|crumb|\bmeal\b|pulver|polvo|poudre/.test(words);

const WEED_KILLERS = /(?<!sea ?)weed(?!(?:s|[- ]?seeds?)?[- ]free)|herbi[cz]id|moss ?(?:kill|control|out)|moosvernichter|gegen moos|unkraut|moosfrei|d[eé]sherbant|anti-?mousse|malas? hierbas?|matamalezas|malezas|2,4-?d\b|dicamba|atrazine|mcpa|mcpp|mecoprop|quinclorac|triclopyr|fluroxypyr|clopyralid|dithiopyr|prodiamine|pendimethalin|trifluralin|glyphosate?|pre-?emergent|crabgrass/;
/** Kills what grows beside the tree, and the tree. */
export const killsWeeds = (words: string): boolean => WEED_KILLERS.test(words.replace(/(?:no|without|free of|ohne|sin|sans) (?:weed ?-?killers?|herbicides?|herbicidas?|unkrautvernichter|d[eé]sherbants?|weeds?(?: seeds?)?)/g, ' '));

/** The potash of a blend is nearly always chloride unless the label says sulphate or names something grown (memory). */
export function carriesChloride(words: string, material: Material | null): boolean {
  if (/chlorid(?:e)?[- ]?(?:free|frei|arm)|no chloride|without chloride|sin cloro|sans chlore/.test(words)) return false;
  if (/chloride|muriate|chlorid\b|cloruro|chlorure/.test(words)) return true;
  if (/sul(?:ph|f)at/.test(words)) return false;
  if (material && material.id !== '10-10-10') return material.chloride === true;
  return !/organic|meal|manure|seaweed|kelp|compost|\bash\b/.test(words);
}

/** Whether it brings nitrate: by name, by what it is, or by a grade that nothing else has. */
export function bringsNitrate(words: string, material: Material | null, grade: { readonly N: number; readonly P2O5: number; readonly K2O: number }): boolean {
  if (/(?:no|without|free of) nitrat|nitrat(?:e)?[- ]?(?:free|frei)/.test(words)) return false;
  return material?.nitrate === true || /nitrat|nitric|saltpet|salpeter|nitro-?chalk|salitre/.test(words) || (grade.N > 0.32 && grade.N < 0.355 && grade.P2O5 === 0 && grade.K2O === 0);
}

/** What grew or lived, by the material, or else by what the label says. */
export function organicKind(words: string, material: Material | null): Exclude<MaterialKind, 'mineral'> | null {
  if (material && material.id !== '10-10-10') return material.kind === 'mineral' ? null : material.kind;
  if (/organo|mineral/.test(words)) return null;
  if (/compost/.test(words)) return 'compost';
  if (/manure|\bdung\b|guano/.test(words)) return 'manure';
  return /\bmeal\b|\borganic\b(?! matter)|\bbiologi(?:sch|que)|org[aá]nico/.test(words) ? 'meal' : null;
}

/** Raw manure. What prints its three numbers was dried or composted before it was bagged (practice), unless it says fresh. */
export function isFresh(words: string, material: Material | null, graded: boolean): boolean {
  if (material?.fresh !== true) return false;
  if (/\bfresh\b|\braw\b|\bfrisch|\bfresco|\bfrais/.test(words)) return true;
  return !graded && !/compost|rotted|\baged\b|dried|pellet|dehydrat|sterili[sz]|cured|ma[dt]ur|verrottet|abgelagert|curad|curtid/.test(words);
}

/** Sold to be dissolved; soluble in citrate, or slowly, is not meant. */
export const saysSoluble = (words: string): boolean => /(?<!citrate[- ]|in|slowly )soluble|crystal|wasserl[oö]slich|hidrosoluble|idrosolubil|hidrossol[uú]vel/.test(words);
