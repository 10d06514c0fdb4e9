/** Units and methods as printed, by pattern. */
import type { Method, ReportUnit } from './items.ts';

/** Patterns are tried in order where one of their first letters starts a word; each is linear. */
export const UNIT_PATTERNS: readonly (readonly [unit: ReportUnit, starts: string, pattern: string])[] = [
  ['lb/100sqft', 'l', 'lbs?\\.?,? ?(?:/|per) ?100 ?(?:sq\\.? ?(?:ft|feet)\\.?|square feet|ft2)'],
  ['lb/1000sqft', 'l', '(?:lbs?\\.?,? ?(?:/|per) ?1,?000 ?(?:sq\\.? ?(?:ft|feet)\\.?|square feet|ft2)|lbs?/m\\b)'],
  ['lb/acre', 'lp', '(?:lbs?\\.?|pounds?) ?(?:/|per|an?) ?(?:acre|ac\\b|a\\b)\\.?'],
  ['ton/acre', 't', 'tons? ?(?:/|per|an) ?(?:acre|ac\\b|a\\b)'],
  ['t/ha', 't', 't(?:onnes?)? ?(?:/|per) ?ha\\b'],
  ['kg/ha', 'k', 'kg ?(?:/|per) ?ha\\b'],
  ['ppm', 'p', '(?:parts per million(?: ?\\(ppm\\))?|ppm\\b(?: ?\\(parts per million\\))?|p\\.p\\.m\\.)'],
  ['mg/100g', 'm', 'mg ?(?:p2o5|k2o|mgo|cao|p|k|mg|ca)? ?(?:/|per|in|je|pro|na|por|par) ?100 ?g(?:r|ramm?s?)?\\b(?: (?:boden|soil|gleby))?\\.?'],
  ['mg/kg', 'mu', '(?:mg ?(?:/|per) ?kg\\b|ug ?/ ?g\\b)'],
  ['mg/L', 'm', '(?:mg ?(?:/|per) ?(?:l|litre|liter)\\b|mg ?/ ?dm3)'],
  ['mmolc/dm3', 'm', 'mmol ?c? */ ?dm3'],
  ['meq/100g', 'm', '(?:m\\.?e\\.?q?\\.?(?: ?%)? ?(?:/|per) ?100 ?(?:g|cm3|ml)?\\b|me%|meq%)'],
  ['cmol/kg', 'c', 'cmol ?c? *(?:/ ?(?:kg|dm3)|kg-1)'],
  ['g/kg', 'g', 'g ?(?:/|per) ?kg\\b'],
  ['g/m2', 'g', 'g ?(?:/|per) ?m2\\b'],
  ['g/cm3', 'g', 'g ?/ ?(?:cm3|cc|ml)\\b'],
  ['dS/m', 'd', 'ds ?(?:/|per) ?m\\b'],
  ['mS/cm', 'm', 'ms ?(?:/|per) ?cm\\b'],
  ['mmho/cm', 'm', 'mmhos? ?(?:/|per) ?cm\\b'],
  ['uS/cm', 'u', 'us ?(?:/|per) ?cm\\b'],
  ['mS/m', 'm', 'ms ?(?:/|per) ?m\\b'],
  ['%', '%p', '(?:%|percent\\b|pct\\b|prozent\\b)'],
];

/** "CAL" and "DL" are methods where a value, its unit, its class or an end follows; "cal" before a rate is Spanish lime. */
const GERMAN_METHOD = '(?:[ -]?(?:methode|method|extrakt|extract|auszug|verfahren)\\b|\\b(?=[ ]{0,3}(?:[)\\],;/|]|$|mg\\b)|[ :=|-]{1,4}(?:sehr|niedrig|gering|mittel|hoch|optimal|p2o5|k2o|[pk]\\b|[<>]?[ ]?\\d[\\d.,]{0,9}(?![ ]?(?:t|kg|tons?)[ ]?(?:/|por))(?![\\d.,]))))';

export const METHOD_PATTERNS: readonly (readonly [method: Method, starts: string, pattern: string])[] = [
  ['mehlich-buffer', 'm', 'mehlich buffer'],
  ['mehlich-3', 'm', '(?:mehlich[ -]?(?:3|iii)\\b|m-?3\\b|m-iii\\b)(?![.,]\\d)'],
  ['mehlich-1', 'm', '(?:mehlich[ -]?(?:1|i)\\b|m-?1\\b)(?![.,]\\d)'],
  ['modified-morgan', 'm', '(?:modified|mod\\.?) ?morgan(?:\'s)?'],
  ['morgan', 'm', 'morgan(?:[\'’]s)?\\b'],
  ['olsen', 'onb', '(?:olsen(?:[ -]p\\b)?|nahco3(?:[ -]p\\b)?|bicarb(?:onate)?\\b)'],
  ['bray-2', 'bs', '(?:bray[ -]?(?:p-?)?(?:2|ii)\\b(?![.,]\\d)|strong bray\\b)'],
  ['bray-1', 'bw', '(?:bray[ -]?(?:p-?)?(?:1|i)\\b(?![.,]\\d)|(?:weak )?bray\\b)'],
  ['colwell', 'c', 'colwell\\b'],
  ['ab-dtpa', 'a', 'ab-dtpa\\b'],
  ['dtpa', 'd', 'dtpa\\b'],
  ['resin', 'r', '(?:resin|resina)\\b'],
  ['ammonium-acetate', 'an', '(?:ammonium acetate|acetato amonico|nh4oac|amm\\.? acetate)'],
  ['ammonium-nitrate', 'an', '(?:ammonium nitrate|nh4no3)'],
  ['cal', 'c', `(?:cal${GERMAN_METHOD}|calcium[ -]acetat(?:e)?[ -]lactat(?:e)?(?:[ -]?methode)?)`],
  ['dl', 'd', `dl${GERMAN_METHOD}`],
  ['hot-water', 'h', '(?:hot[ -]water|hws\\b)'],
  ['paste', 'spe', '(?:saturated paste|saturation extract|paste\\b|ece\\b)'],
  ['cacl2', 'c', 'cacl2\\b'],
  ['kcl', 'k', 'kcl\\b'],
  ['smp', 's', 'smp\\b'],
  ['sikora', 's', 'sikora\\b'],
  ['adams-evans', 'a', 'adams[ -]evans'],
  ['woodruff', 'w', 'woodruff'],
  ['loi', 'l', '(?:loi\\b|loss[ -]on[ -]ignition)'],
  ['walkley-black', 'w', 'walkley[ -]black'],
  ['water', 'hwa', '(?:h2o\\b|water\\b|wasser\\b|agua\\b)'],
  ['1:1', '1', '1:1(?![\\d.])'],
  ['1:2', '1', '1:2(?![\\d])(?:\\.5)?'],
  ['1:5', '1', '1:5(?![\\d.])'],
];
