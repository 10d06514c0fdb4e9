/** Units and methods as printed, by pattern. */
import type { Method, ReportUnit } from './items.ts';

/** "per", in six languages or as a stroke. */
const PER = ' ?(?:/|per|por|par|pro|je|al|an?\\b) ?';
/** "mg/kg", "mg per kg", "mg kg-1", "mg.kg-1": `top` and `bottom` are patterns without blanks; `power` is the one printed, "-1". */
const over = (top: string, bottom: string, power = '-1'): string => `${top}(?:${PER}(?:${bottom})\\b\\.?|[ .]?(?:${bottom})[ ^]?${power}(?!\\d))`;

/** "lb ENM/acre", "lb/acre ENM", "lb/acre (ENM)": lime counted by what acts. */
const acting = (of: string): string => `(?:lbs?\\.?|pounds?|#) ?(?:(?:of )?${of} ?(?:/|per|an?) ?(?:acre|ac\\b|a\\b)|(?:/|per|an?) ?(?:acre|ac\\b),? ?(?:(?:of |as )?${of}\\b|\\(${of}\\)))`;
/** "t CaO/ha", "t/ha CaO", "t/ha (CaO)"; before a number CaO is a name of its own. */
const burnt = (weight: string): string => `${weight} ?(?:cao ?(?:/|je|pro|per) ?ha\\b|(?:/|je|pro|per) ?ha\\b,? ?(?:cao\\b|\\(cao\\))(?! ?[:=]? ?\\d))`;

/** Patterns are tried in order where one of their first letters starts a word; each is linear. Text is in small letters, without accents. */
export const UNIT_PATTERNS: readonly (readonly [unit: ReportUnit, starts: string, pattern: string])[] = [
  ['lb/100sqft', 'l', 'lbs?\\.?,? ?(?:/|per) ?100 ?(?:sq\\.? ?(?:ft|feet)\\.?|square feet|ft2)'],
  ['lb/1000sqft', 'l', '(?:lbs?\\.?,? ?(?:/|per) ?1,?000 ?(?:sq\\.? ?(?:ft|feet)\\.?|square feet|ft2)|lbs?/m\\b)'],
  ['lb ENM/acre', 'lp#', acting('enm')],
  ['lb ENP/acre', 'lp#', acting('enp')],
  ['t CaO/ha', 't', burnt('t(?:onn?en?)?')],
  ['dt CaO/ha', 'd', burnt('d[tz]')],
  ['kg CaO/ha', 'k', 'kg ?cao ?(?:/|je|pro|per) ?ha\\b'],
  ['dt/ha', 'd', 'd[tz] ?(?:/|je|pro|per) ?ha\\b'],
  ['lb/acre', 'lp#', '(?:(?:lbs?\\.?|pounds?|libras?|#) ?(?:/|per|por|an?) ?(?:acre|ac\\b|a\\b)\\.?|lbs?[ .]?ac(?:re)?[ ^]?-1(?!\\d)|pp2m\\b)'],
  ['ton/acre', 't', 'tons?(?: ?100 ?%? ?ecce)? ?(?:/|per|an) ?(?:acre|ac\\b|a\\b)'],
  ['t/ha', 't', '(?:t(?:onn?es?)?|toneladas?|tonnellate)(?: ?(?:/|per|por|par|pro|je|a l\'|ad) ?(?:ha\\b|hectares?\\b|hectareas?\\b|ettaro\\b)|[ .]ha[ ^]?-1(?!\\d))'],
  ['kg/ha', 'k', '(?:kgs?|kilos?)(?: ?(?:/|per|por|par|pro|je|a l\'|ad) ?(?:ha\\b|hectares?\\b|hectareas?\\b|ettaro\\b)|[ .]ha[ ^]?-1(?!\\d))'],
  ['ppm', 'pt', '(?:parts per million(?: ?\\(ppm\\))?|partes por (?:millon|milhao)|parties par million|parti per milione|teile pro million|ppm\\b(?: ?\\(parts per million\\))?|p\\.p\\.m\\.)'],
  ['mg/100g', 'm', 'mg ?(?:p2o5|k2o|mgo|cao|p|k|mg|ca)? ?(?:/|per|in|je|pro|na|por|par|auf|%) ?100 ?g(?:r|m|ramm?s?)?\\b(?: (?:boden|soil|gleby|suelo|sol|solo|suolo|terreno))?\\.?'],
  ['mg/kg', 'mu', `(?:${over('mg', 'kg')}|${over('(?:ug|mcg)', 'g')}|milligrams? per kilogram(?:me)?\\b)`],
  ['mg/L', 'mu', `(?:${over('mg', 'l|litre|liter|litro')}|${over('(?:ug|mcg)', 'ml')}|${over('mg', 'dm3', '-3')}|${over('mg', 'dm', '-3')})`],
  ['mmolc/dm3', 'm', '(?:mmol|meq) {0,3}c{0,3} {0,3}(?:(?:/|por) ?(?:dm3|l\\b)|[ .]?dm[ ^]?-3(?!\\d))'],
  ['mmol/kg', 'm', '(?:(?:mmol {0,3}(?:c|\\+|\\(p?\\+\\))? {0,3}(?:ie ?)?|meq ?)(?:/ ?kg\\b|[ .]?kg[ ^]?-1(?!\\d)))'],
  ['meq/100g', 'm', '(?:milliequivalents? (?:per|in) 100 ?(?:grams?|g)\\b|m\\.?e\\.?q?\\.?(?: ?%)? ?(?:/|per|por|par|pro|je|su) ?100 ?(?:grs?|gms?|gramos|grammi|gramas|cm3|cc|ml|g)?\\b|m\\.?e\\.?q?\\.?[ .]?100 ?g[ ^]?-1(?!\\d)|mval ?/ ?100 ?g\\b|me%|meq ?%)'],
  ['cmol/dm3', 'c', 'cmol {0,3}c{0,3} {0,3}(?:(?:/|por) ?(?:dm3|l\\b)|[ .]?dm[ ^]?-3(?!\\d))'],
  ['cmol/kg', 'c', 'cmol {0,3}(?:c{1,3}|\\+|\\(p?\\+\\))? {0,3}(?:(?:/|per|por) ?kg\\b|[ .]?kg[ ^]?-1(?!\\d))'],
  ['g/kg', 'g\u2030', `(?:${over('g', 'kg')}|\u2030)`],
  ['g/dm3', 'g', `(?:${over('g', 'dm3|l')}|${over('g', 'dm', '-3')})`],
  // "pH | pH units | 6.1": the second is the unit.
  ['pH', 'p', '(?<=\\bph\\b[^a-z]{1,40})ph units?\\b'],
  // New Zealand's quick test: an index of its own for each cation.
  ['MAF', 'mq', '(?:maf(?: (?:qt|quick[ -]?test))?|qt|quick[ -]?test(?= units?\\b))(?: units?)?\\b'],
  ['g/m2', 'g', 'g ?(?:/|per) ?m2\\b'],
  ['g/cm3', 'gmtk', '(?:(?:g ?(?:/|por|per|par) ?(?:cm3|cc|ml)|(?:mg|t) ?/ ?m3|kg ?/ ?(?:dm3|l))\\b|g[ .]?cm[ ^]?-3(?!\\d)|mg[ .]?m[ ^]?-3(?!\\d))'],
  ['dS/m', 'd', `(?:${over('ds', 'm')}|decisiemens? per met(?:re|er)\\b)`],
  ['mS/cm', 'm', over('ms', 'cm')],
  ['mmho/cm', 'm', `(?:${over('(?:mmhos?|millimhos?)', 'cm')})`],
  ['uS/cm', 'um', over('(?:us|umhos?|micromhos?|microsiemens)', 'cm')],
  ['mS/m', 'm', over('ms', 'm')],
  // dag/kg is the Brazilian per cent.
  ['%', '%pdg', `(?:%|percent\\b|per cent\\b|pct\\b|prozent\\b|por ciento\\b|pour cent\\b|por cento\\b|per cento\\b|${over('dag', 'kg')}|g ?(?:/|%|por|per|pro) ?100 ?g\\b)`],
];

/** "CAL" and "DL" are methods where a value, its unit, its class or an end follows; "cal" before a rate is Spanish lime. */
const GERMAN_METHOD = '(?:[ -]?(?:methode|method|extrakt|extract|auszug|verfahren)\\b|\\b(?=[ ]{0,3}(?:[(\\[)\\],;/|]|$|mg\\b)|[ :=|-]{1,4}(?:sehr|niedrig|gering|mittel|hoch|optimal|p2o5|k2o|[pk]\\b|[<>]?[ ]?\\d[\\d.,]{0,9}(?![ ]?(?:t|kg|tons?)[ ]?(?:/|por))(?![\\d.,]))))';

export const METHOD_PATTERNS: readonly (readonly [method: Method, starts: string, pattern: string])[] = [
  ['modified-mehlich', 'm', '(?:modified|mod\\.?) ?mehlich(?: buffer)?(?![ -]?[123i])'],
  ['mehlich-buffer', 'm', 'mehlich(?: soil)? buffer'],
  // "dS m-1" and "Mg m-3" are units.
  // Read by colour: lower than by plasma, and rated apart.
  ['mehlich-3-colorimetric', 'm', '(?:mehlich[ -]?(?:3|iii)|m-?3|m-iii)[ ,(-]{1,3}colou?rimetric\\b'],
  ['mehlich-3', 'm', '(?:meh?lich(?: no\\.?)?[ -]?(?:3|iii)\\b|(?<![gt] ?/ ?)m3\\b|(?<!g[ .]?)m-3\\b|m-iii\\b)(?![.,]\\d)'],
  ['mehlich-1', 'm', '(?:meh?lich(?: no\\.?)?[ -]?(?:1|i)\\b|m1\\b|(?<![dmu]s[ .]?)m-1\\b)(?![.,]\\d)'],
  ['modified-morgan', 'm', '(?:(?:modified|mod\\.?) ?morgan(?:\'s)?|morgan modifi(?:e|cado)\\b)'],
  ['morgan', 'm', 'morgan(?:[\'’]s)?\\b'],
  ['olsen', 'onbs', '(?:olsen(?:[ -]p\\b(?!\\.p))?|nahco3(?:[ -]p\\b)?|bicarb(?:onate)?\\b|sodium bicarbonate\\b|bicarbonato (?:sodico|de sodio|di sodio)\\b|natriumbicarbonat\\b)'],
  ['bray-2', 'bs', '(?:bray[ -]?(?:p-?)?(?:2|ii)\\b(?![.,]\\d)|strong bray\\b)'],
  ['bray-1', 'bw', '(?:bray(?:[ -](?:&|and|y|e)?[ ]?kurtz)?[ -]?(?:p-?)?(?:1|i)\\b(?![.,]\\d)|(?:weak )?bray(?:[ -](?:&|and|y|e)?[ ]?kurtz)?\\b)'],
  ['colwell', 'c', 'colwell\\b'],
  ['ab-dtpa', 'a', '(?:ab-dtpa\\b|ammonium bicarbonate[ -]dtpa\\b)'],
  ['dtpa', 'd', 'dtpa\\b'],
  ['edta', 'e', '(?<!-)edta\\b'],
  ['resin', 'r', '(?:resin|resina|resine)\\b'],
  ['joret-hebert', 'j', 'joret(?:[ -]hebert)?\\b'],
  ['dyer', 'd', 'dyer\\b'],
  // In Portugal by ammonium lactate, elsewhere by calcium lactate: a scale of its own.
  ['egner-riehm', 'e', 'egner(?:[ -]riehm)?(?:[ -]domingo)?\\b'],
  ['al', 'a', '(?:ammonium[ -]?lactate?\\b|ammonium acetate[ -]lactate\\b|lactato de amonio\\b)'],
  ['ammonium-acetate', 'an', '(?:ammonium acetate|acetato (?:amonico|de amonio|d\'ammonio|di ammonio|ammonico)|acetate d\'ammonium|ammonium-?acetat\\b|nh4oac|nh4-?acetate?\\b|amm\\.?[ -]?acet(?:ate\\b|\\.))'],
  ['ammonium-nitrate', 'an', '(?:ammonium nitrate|ammoniumnitrat\\b|nitrato (?:amonico|de amonio)|nitrate d\'ammonium|nh4no3)'],
  ['cal', 'c', `(?:cal${GERMAN_METHOD}|calcium[ -]acetat(?:e)?[ -]lactat(?:e)?(?:[ -]?methode)?)`],
  ['dl', 'd', `dl${GERMAN_METHOD}`],
  ['cat', 'c', 'cat(?:[ -]?(?:methode|method|extrakt|extract|auszug|verfahren)\\b|(?=\\)))'],
  ['hot-water', 'heab', '(?:hot[ -]water|boiling water|hws\\b|hei(?:ss|ß)wasser|agua caliente|agua quente|eau (?:chaude|bouillante)|acqua calda)'],
  ['paste', 'spe', '(?:saturated paste|saturation extract|paste\\b|ece\\b|pasta (?:saturada|satura)\\b|pate saturee\\b|sattigungsextrakt\\b|ext(?:racto|rato|rait) d[ei] saturac?[tc]i?(?:on|ao)\\b|estratto di saturazione\\b|estratto saturo\\b)'],
  ['cacl2', 'c', '(?:cacl2\\b|calciumchlorid\\b|calcium chloride\\b|cloruro (?:calcico|de calcio|di calcio)\\b|chlorure de calcium\\b|cloreto de calcio\\b)'],
  ['kcl', 'k', 'kcl\\b'],
  ['smp', 's', '(?:smp\\b|shoemaker\\b)'],
  ['moore-sikora', 'm', 'moore[ -]sikora\\b'],
  ['sikora', 's', 'sikora\\b'],
  ['adams-evans', 'a', 'adams[ -]evans'],
  ['woodruff', 'w', 'woodruff'],
  ['loi', 'lgpc', '(?:loi\\b|loss[ -]on[ -]ignition|gluhverlust\\b|perte au feu\\b|calcinacion\\b|calcinacao\\b|calcination\\b|perdita al fuoco\\b|perda por calcinacao\\b)'],
  ['walkley-black', 'w', 'walkley(?:[ -]| ?(?:&|and|y|e) ?)black'],
  ['dry-combustion', 'dc', '(?:dry[ -]combustion\\b|dumas\\b|combustion seche\\b|combustion seca\\b|combustao seca\\b|combustione secca\\b)'],
  ['water', 'hwae', '(?:acuoso\\b|aqueux\\b|acquoso\\b|aquoso\\b|wassrig\\b|h2o\\b|water\\b|wasser\\b|agua\\b|acqua\\b|eau\\b)'],
  ['1:1', '1', '1:1(?![\\d.])'],
  // 1:2.5 stands with 1:2, whose figures are used for it.
  ['1:2', '1', '1:2(?![\\d])(?:[.,]5)?'],
  ['1:5', '1', '1:5(?![\\d.])'],
];
