/**
 * Words of a report that are neither a name, a unit, a method nor a rating: what is absent, what a number beside the
 * value is, what a column holds, what is advice. In the six languages, small letters, accents left off; practice.
 * A language is added here, in the names-*.ts files, in rating-words.ts and in report-patterns.ts.
 */

import type { Item } from './items.ts';
import { CATION_ITEMS, TRACE_ITEMS } from './items.ts';

/** No value, by the lab's own word. */
export const ABSENT = /\b(?:(?:this value )?(?:was |is )?not (?:requested|tested|determined|analy[sz]ed|measured|reported|run)|n\/a|no data|nicht (?:untersucht|bestimmt)|no (?:solicitado|determinado|analizado)|non (?:demande|determine|analyse|richiesto|determinato)|nao (?:solicitado|determinado))\b/g;
/** A test was made and found nothing. */
export const TRACE = /(?<![\p{L}\d])(?:traces?|undetect(?:ed|able)|not detected|none detected|below detection(?: limit)?|bdl|nd|n\.d\.|tr\.|trazas|traccia|tracce|tracos?|vestigios|spuren?|no detectable|nicht feststellbar|non rilevabile|non detectable|nao detectavel|indetectable|no detectado|nicht nachweisbar|n\.n\.|non detecte|non rilevato|nao detectado)(?![\p{L}])/gu;

export type Label = 'range' | 'other' | 'past' | 'index';
/** What the next number is: a range of the lab, an older value, an index; "was" says older only behind a value. */
export const LABELS: readonly (readonly [Label, RegExp])[] = [
  ['range', /\b(?:(?:guide|guideline|sufficiency|desired|normal|critical|reference) )?(?:range|target|goal|desired|ideal range|plage|fourchette|soll|sollbereich|intervallo|bereich|optimalbereich|zielbereich|faixa|limites?|sufficiency|guideline|reference|normal is|normal range|zielwert|sollwert|richtwert|referencia|rango|obiettivo)s?\b/g],
  ['past', /\b(?:was|were|had been)\b/g],
  ['index', /\b(?:index|indice|fiv|fertility index value)\b|(?<=[a-z])-a?i\d?(?![a-z\d])/g],
  ['other', /\b(?:previous(?:ly)?|last (?:year|test|time)|before|old|in (?=\d{4}\b)|years? ago|vorjahr|anterior|antes|precedent|prima)\b|\+\/-|±/g],
];
/** Signs and words of a limit, right before their number. */
export const SIGNS: readonly (readonly ['<' | '>', RegExp])[] = [['<', /(?:<=?|≤|\bless than|\bunder|\bbelow|\bmenos de|\bweniger als|\bunter|\bmoins de|\bmeno di|\binferior a) ?$/], ['>', /(?:>=?|≥|\bmore than|\bover|\babove|\bgreater than|\bmas de|\bmehr als|\buber) ?$/]];
/** Words that turn a rating round: "not deficient". */
export const NEGATED = /\b(?:not|neither|nor|never|nicht|kein\w{0,2}|weder|noch|sin|sem|nem|ne|pas|non|ni)\b[ a-z]{0,8}$/;

/** What a column of a table holds. */
export type Role = 'name' | 'value' | 'unit' | 'method' | 'low' | 'high' | 'range' | 'rating' | 'index' | 'skip';
/** Heads of columns, the first that fits. */
export const ROLES: readonly (readonly [Role, RegExp])[] = [
  ['range', /(?:\bdesirable level|\brange|bereich|\brango|intervall[oe]|plage|faixa|normale?s?|referencias?|reference|riferimento|souhaitable|ottimal[ei]|optimos|otimos|desejavel)\b/],
  ['skip', /(?:\b(?:previous|precedente?|anterior|vorjahr|letzte[rs]?)\b|^(?:last|before|old|prior)(?: (?:result|value|test|year|time|reading|sample)s?)?$|^(?:previous|desired|target level|ideal|deviation|difference|change|% ?of|percent of|needed|required|vorjahr|anterior|laboratory|lab ?(?:no|id|number)|#|no\.?)\b)/],
  ['index', /\bind(?:ex|ices)$/],
  ['unit', /^(?:units?|einheit(?:en)?|unidad(?:es)?|unidade|unites?|unita|u\.?m\.?|masseinheit)(?: (?:of|di|de) (?:measure|misura|medida|mesure))?$/],
  ['method', /^(?:method|extractant|extractor|extrator|extracteur|estraente|extraktionsmittel|extract|methode|metodo|procedure|verfahren|extraktion)s?$/],
  ['low', /^(?:low|min|minimum|minimo|mini|from|lower(?: limit)?|von|cl|crit(?:ical)?\.?(?: (?:level|value|limit)s?)?)$/],
  ['high', /^(?:high|max|maximum|massimo|maximo|maxi|to|upper(?: limit)?|bis)$/],
  ['range', /\b(?:range|optimum|optimal|optimo|target|guideline|sufficiency|normale?s?|rango|referencia|zielbereich|richtwert|zielwert|sollwert|faixa|intervall[oe]|adequate|souhaitable|ottimale|desejavel|seuils?)\b/],
  ['name', /^(?:test|nutrient|nutriment|nutriente|element|analysis|analyte|item|parameter|determinand|determination|measurement|parametro|parametre|determinacion|determinacao|determinazione|analisis|analise|analisi|analyse|elemento|symbol|nahrstoff|merkmal|untersuchung|property|characteristic|bestimmung|what)s?\b/],
  ['value', /^(?:soil[ -]test(?: (?:results?|values?|levels?))?$|results?|values?|found|level found|level|reading|wert|messwert|ergebnis|gehalt|resultado|valor|resultat|valeur|risultato|valore|teneur|contenido|teor|your (?:soil|value|result|level|test|sample)|this year|current|amount|concentration)s?\b/],
  ['rating', /^(?:rating|status|interpretation|interpretacion|interpretazione|comment|class|klasse|gehaltsklasse|versorgungsklasse|gehaltsstufe|stufe|bewertung|einstufung|beurteilung|calificacion|interpretacao|classe|nivel|valutazione|giudizio|appreciation|valoracion|evaluacion|evaluation|avaliacao|niveau|level)s?$/],
];

/** A heading of shares of the exchange sites, over the lines below or before the names of its line. */
export const SATURATION = /\b(?:cation|base) sat(?:uration\b|\.|\b)|\bsaturation ?%|% ?saturation|basensattigung|saturacion de bases|saturation en bases|saturacao por bases/i;
/** All that a heading of a method or unit may hold beside them. */
export const HEADING_WORDS = /^(?:[\s:;,.()/|&-]|\b(?:extract(?:able|ion|ant|ed)?|method|methods|results?|in|units?|by|using|with|methode|verfahren|nach|all|values?|nutrients?|soil|test|analysis|available|exchangeable|major|minor|macronutrients|micronutrients|are|given|as|for|the|cations?|anions?|base|saturation|percent|%)\b)*$/i;
/** A line that says a unit for all values says so. */
export const OF_ALL = /\b(?:all|results?|values?|alle|werte|todos|resultados|valores|tous|resultats|valeurs|tutti|risultati|valori)\b/i;
/** Words that name several items at once. */
export const ITEM_GROUPS: readonly (readonly [readonly Item[], RegExp])[] = [
  [CATION_ITEMS, /\b(?:exchangeable |basic )?(?:cations|bases)\b|\b(?:kationen|cationes|cationi)\b/gi],
  [TRACE_ITEMS, /\b(?:micronutrients|micros|trace elements|minor elements|spurenelemente|mikronahrstoffe|micronutrientes|oligoelementos|oligo-elements|microelementi)\b/gi],
];
/** Words that a line of methods below the values may hold; any other word may turn its meaning. */
export const TOLD_WORDS = /^(?:extract(?:s|able|ion|ions|ant|ants|ed|ing)?|method|methods|methodology|used|uses|was|were|been|are|is|determined|measured|analy[sz]ed|analysis|tested|test|tests|reported|samples?|soils?|nutrients?|elements?|minerals?|results?|values?|all|other|others|both|each|report|this|these|lab|laboratory|solution|buffer|icp|icp-oes|icp-aes|oes|universal|major|minor|macronutrients?|available|exchangeable|after|on|from|sodium|methode|methoden|verfahren|extraktionsmittel|untersuchung|bestimmt|gemessen|metodo|metodos|extractante|extractor|extractores|determinado|determinados|por|con|con el|methodes?|extraction|extracteur|dose|doses|selon|par|metodi|estratto|estrazione|estraente|determinati|secondo|extrator|determinacao|extraidos?|pelo|com|note|notes)$/i;
/** Words of a German report, in which a lone letter A to E is a class. */
export const GERMAN = /\b(?:phosphat|phosphor|kali|kalium|ph-wert|gehaltsklassen?|gehaltsstufen?|versorgungsstufen?|bodenart|bodenuntersuchung|bodenprobe|entnahmetiefe|probenahme)\b/i;
/** Advice: amounts to bring out. Below such a heading no number is a content. */
export const ADVICE = /\b(?:removal|crop (?:need|removal|uptake)|nutrient advice|fertility guidelines|(?<=^\s*)(?:add|use|apply)\b|recommend(?:ed|ations?|s)?|suggest(?:ed|ions?)|appl(?:y|ication rates?)|fertili[sz]er (?:needed|rates?|required|program)|nutrients? (?:needed|required)|amounts? to apply|to apply|dungeempfehlung|empfehlung(?:en)?|recomendacion(?:es)?|recomendacao|recomendacoes|abonado|conseils?|preconisations?|consigli(?:o)?|concimazione)\b/i;
/** What was done to the soil before: never a need of it. It wants a day or a yes, and no word that makes it advice or a no. */
export const LIMED = /\b(?:limed|gekalkt|chaulee?|encalad[oa]|calcitat[oa])\b|\blime\b[^.;]{0,40}\b(?:applied|spread)\b/i;
export const LIMED_WHEN = /\b(?:19|20)\d{2}\b|\b\d{1,2}[./-]\d{2}\b|\blast (?:year|fall|autumn|spring|summer|winter)\b|\bago\b|: ?(?:yes|ja|oui|si|sim)\b/i;
export const NOT_LIMED = /\b(?:if|when|unless|should|must|can|will|would|be|apply|needs?|needed|require\w*|recommend\w*|not|never|no|none|wenn|falls|nicht|nie|kein\w*|non|jamais|nunca)\b/i;
const BROUGHT = 'compost|manure|mulch|fertili[sz]ers?|irrigation|prunings|kompost|mist|gulle|dunger|estiercol|abono|fumier|engrais|letame|concime|esterco|adubo|composto|composta';
/** A heading of what something else than this soil holds, brings or takes: nothing below it is a content of the soil. */
export const ELSEWHERE = new RegExp([
  `\\b(?:nutrients?|elements?|amounts?|nahrstoffe|nutrientes|elementi nutritivi)\\b.{0,30}\\b(?:suppl(?:y|ied)|provided|contributed|added|delivered|from|in|removed|taken|used|von|aus|mit|del|du|dal|do|da)\\b.{0,24}\\b(?:${BROUGHT}|crops?|fruits?|harvest|leaves)\\b`,
  `\\b(?:${BROUGHT})\\b.{0,24}\\b(?:analysis|test|contributes?|suppl(?:y|ies)|provides?|brings?|contains?|contents?|holds|zugefuhrt|liefert|enthalt|bringt|aporta|apporte|apporta)\\b`,
  `\\b(?:zufuhr|aportes?|aportacion(?:es)?|apports?|apporti|aportes)\\b.{0,24}\\b(?:${BROUGHT})\\b`,
  '\\b(?:crop|nutrients?|fruit) (?:removal|uptake|offtake|demand|requirements?)\\b|\\b(?:removed|exported|taken (?:up|off|out)|takes (?:up|off|out)|used) (?:by|per|in|with|from)\\b|\\b(?:nahrstoff)?(?:entzug|entzuge|abfuhr)\\b|\\b(?:exportations?|extracciones|exportaciones|asportazioni|exportacao|extracao) (?:par|por|del?|della|pela|da|do)\\b',
].join('|'), 'i');
/** What speaks of the soil again. */
export const OF_SOIL = /\b(?:soils?|boden[a-z]*|suelos?|sols?|terres?|terren[oi]|suol[oi]|solos?)\b/i;
/** Words before the day on which the soil was taken, and before other days. */
export const SAMPLED = /\b(?:sampled|sampling|sample date|samples? (?:taken|collected|drawn|pulled)|collected|taken|drawn|pulled|proben?nahme|entnahme|entnommen|gezogen|muestreo|muestread[ao]s?|tomad[ao]s?|toma|extraid[ao]s?|prelevements?|prelevee?s?|prelievo|prelevat[ioae]|campionamento|campionat[oaie]|coleta|coletad[ao]s?|colheita|colhid[ao]s?|amostragem)\b/gi;
export const OTHER_DAYS = /\b(?:received|arrived|reported|report(?: date)?|printed|issued|analy[sz]ed|analysis|tested|completed|logged|eingang|eingegangen|erhalten|bericht[a-z]*|ausgabe|analyse|recepcion|recibid[ao]s?|informe|emision|recue?s?|reception|rapport|editee?|ricevut[oaie]|ricezione|rapporto|emess[oa]|emissione|recebid[ao]s?|recebimento|laudo|emissao|planted|due)\b/gi;
export const DEPTH_WORDS = '\\bdepths?\\b|\\b(?:[a-z]*tiefe|profundidad|profondeur|profundidade|profondita)\\b';
/** "Raise pH to 6.5" is no reading. */
export const GOAL = /^(?:raise|lower|bring|increase|reduce|decrease|adjust|maintain|keep|aim|target|desired|optimal|ideal|anheben|subir|elevar|bajar|relever|aumentare|portare|corregir)$/;
/** "Add lime if the pH is below 6" is no reading. */
export const CONDITION = /^(?:if|when|whenever|unless|until|wenn|falls|bei|si|cuando|lorsque|quand|se|quando)$/;
