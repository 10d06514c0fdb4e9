/**
 * What a lab's report is about. A report of another kind prints the same names (nitrate, potassium, pH) with numbers
 * that mean something else, so it is named and not read as a soil. Only titles and lines of results count, never prose,
 * and any sign of a soil wins: a soil report that speaks of water, compost or leaves stays a soil report.
 */
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { NoticeId } from '../words/words.ts';
import type { Line } from './text.ts';

export type ReportKind = 'soil' | 'leaf' | Stranger;
/** Kinds that are not read at all. */
type Stranger = 'water' | 'compost' | 'manure' | 'feed' | 'fertiliser';

/** `words`: what it rests on, as printed; empty for a soil. */
export type Kind = { readonly kind: ReportKind; readonly words: readonly string[] };

type Signs = {
  /** A whole line, without what follows from its first digit on. */
  readonly title: RegExp;
  /** What the lab was sent, behind "Sample type:". */
  readonly sent: RegExp;
  /** Starts of a result that no soil report prints; two of them, or one and two weak ones, tell the kind without a title. */
  readonly strong: RegExp;
  readonly weak: RegExp | null;
};

const TEST = '(?:test|analysis|analyses|report|results?|certificate)';
/** Words that may close a title: "Water test report for", "... No." */
const END = `(?:[ -]+(?:${TEST}|summary|interpretation|sheet|of|for|no|nr|number|date|sample|lab|id))*[ .:#-]*$`;
const titled = (english: string, others: string): RegExp => new RegExp(`^[ #|>-]*(?:(?:(?:${english})[ -]${TEST}${END})|(?:${others})(?: [^ ]+){0,3} *$)`, 'i');

const SIGNS: readonly (readonly [Stranger | 'leaf', Signs])[] = [
  ['feed', {
    title: titled('(?:animal |livestock )?(?:feeds?|forage|hay|silage|haylage|fodder)', 'futter(?:mittel)?(?:analyse|untersuchung)|analisis de (?:forrajes?|piensos?)|analyse (?:de |du |des )?fourrages?|analisi (?:dei |del )?foragg(?:i|io)|analise de forrage(?:m|ns)'),
    sent: /^(?:hay|silage|haylage|forage|feed|futter|heu|forraje|fourrage|foraggio|forragem)/i,
    strong: /^(?:crude (?:protein|fib(?:er|re)|fat)|adf|ndf|acid detergent|neutral detergent|tdn|total digestible|rfv|rfq|relative (?:feed|forage)|net energy|nel\b|rohprotein|rohfaser|rohfett|proteina (?:cruda|bruta|grezza)|proteines? brutes?|matiere azotee|fibra (?:cruda|bruta|grezza)|cellulose brute)/i,
    weak: null,
  }],
  ['water', {
    title: titled('(?:[a-z]+ ){0,2}water(?: quality| suitability| sample)?', '(?:trink|brunnen|giess|bewasserungs|leitungs|regen)?wasser(?:analyse|untersuchung|probe|test)|(?:analisis|analise) (?:de|del|da) (?:la )?agua|analyses? (?:de l.|d.)eau|analisi (?:dell.|di )acqua'),
    sent: /^(?:[a-z]+ ){0,2}(?:water|[a-z]*wasser|agua|eau|acqua)\b/i,
    strong: /^(?:(?:total |calcium |magnesium |carbonate )?hardness|(?:gesamt|karbonat|wasser)?-?harte|dureza|durete|durezza|tds\b|total (?:dissolved|suspended) solids|solidos (?:disueltos|dissolvidos)|residuo (?:seco|fisso)|(?:total )?alkalinity|alcalini(?:dad|dade|ta)|alcalinite|turbidity|trubung|turbidez|turbidite|torbidita|(?:total |fecal |faecal )?coli(?:forms?\b|formes|formi|bacteria)|koliforme|e\.? ?coli\b|residual sodium|rsc\b|adj(?:usted)?\.? ?(?:sar|rna)|langelier|free chlorine|total chlorine)/i,
    weak: /^(?:hco3|hydrogen[ck]arbonat|bicarbonat[eio]|carbonates? \(?co3|chlorides?\b|chlorid\b|cloruros?|chlorures?|cloretos?|cloruri|cl\b|sar\b|sodium a[bd]sorption|sul(?:f|ph)ates?\b|sulfat\b|so4|nitrit(?:es?|[io])?\b|fluorides?\b)/i,
  }],
  ['manure', {
    title: titled('(?:[a-z]+ )?(?:manure|slurry|litter)', '(?:gulle|mist|stallmist|wirtschaftsdunger)-?(?:analyse|untersuchung)|analisis de (?:estiercol|purin(?:es)?)|analyse (?:de |du )?(?:fumier|lisier)|analisi (?:del )?letame|analise de (?:esterco|estrume)'),
    sent: /^(?:[a-z]+ )?(?:manure|slurry|litter|gulle|stallmist|mist|estiercol|purin|fumier|lisier|letame|esterco|estrume)\b/i,
    strong: /^(?:as[ -](?:received|is)\b|dry matter|total solids|solids\b|ammonium|ammonia|organic n(?:itrogen)?\b|(?:[a-z()0-9 ,-]{1,40})[ :=|]+[\d.,]+[ |]*(?:lbs?|pounds) ?(?:\/|per) ?(?:ton\b|1,?000 ?gal))/i,
    weak: /^(?:moisture|total n(?:itrogen)?\b|total p|total k|phosphate|potash)/i,
  }],
  ['compost', {
    title: titled('(?:finished )?(?:compost|vermicompost|mulch|potting (?:mix|soil|media)|growing (?:media|medium|mix)|soilless (?:media|mix)|substrate)', '(?:kompost|substrat)-?(?:analyse|untersuchung|probe)|analisis de(?:l)? (?:compost|composta|sustrato)|analyse (?:de |du )?(?:compost|substrat|terreau)|analisi del (?:compost|substrato)|analise de (?:composto|substrato)'),
    sent: /^(?:[a-z]+ )?(?:compost|vermicompost|kompost|composta|composto|potting (?:mix|soil)|growing media|substrate|substrat|sustrato|terreau)\b/i,
    strong: /^(?:moisture(?: content)?[ %(:|=]|as[ -](?:received|is)\b|dry (?:weight|matter|basis)|trocken(?:masse|substanz)|materia seca|matiere seche|sostanza secca|volatile solids|total solids|solvita|maturity|stability|rottegrad|salmonella|f(?:a)?ecal coliform|carbon[ :/-]+nitrogen|c[:/]n\b|bulk density[ :|=]+[\d.,]+[ |]*(?:lbs?|kg)\/(?:cu|yd|m))/i,
    weak: /^(?:total n(?:itrogen)?\b|gesamt-?stickstoff|organic (?:matter|carbon)|organische substanz|materia organica|matiere organique|sostanza organica)/i,
  }],
  ['fertiliser', {
    title: /^[ |>*-]*(?:guaranteed (?:minimum )?analysis|garantierte (?:analyse|gehalte)|e[gu]-dunge(?:mittel|produkt)|teneurs? (?:declarees?|garanties?)|engrais [cu]e|abono ce|concime ce|adubo ce|(?:ec|uk|eu) fertili[sz]er)\b/i,
    sent: /^(?:fertili[sz]er|dunger|dungemittel|engrais|abono|fertilizante|concime|adubo)\b/i,
    strong: /^(?:available phosph|soluble potash|water[ -]soluble (?:phosph|potash|k2o)|ammoniacal nitrogen|urea nitrogen|water insoluble nitrogen|derived from)/i,
    weak: null,
  }],
  ['leaf', {
    title: titled('(?:[a-z]+ )?(?:leaf|leaves|foliar|plant|tissue|petiole|needle)(?: tissue| nutrient)?', '(?:blatt|pflanzen|nadel)-?(?:analyse|untersuchung|probe)|(?:analisis|analise|diagnose|diagnostico) (?:foliar|de hojas|de folhas|de tejidos?|vegetal|de peciolos?)|(?:analyses?|diagnostic) (?:foliaires?|de feuilles|petiolaires?)|analisi (?:fogliare|delle foglie|foliare)'),
    sent: /^(?:[a-z]+ )?(?:leaf|leaves|tissue|plant tissue|petioles?|needles|blatter|blatt|hojas?|feuilles?|foglie|folhas?)\b/i,
    strong: /^(?:plant part|tissue type|leaf (?:position|age)|pflanzenorgan|organe preleve|parte de la planta)\b/i,
    weak: null,
  }],
];

const SENT = /^[ #|>-]*(?:sample (?:type|matrix|material)|type of sample|matrix|material|medium|probenart|probenmaterial|tipo (?:de|di) (?:muestra|amostra|campione)|matriz|matrice|nature de l.echantillon|type d.echantillon) *[:=|][ |]*(.+)/i;
const SENT_SOIL = /^(?:[a-z]+ )?(?:soil|boden|erde|suelo|sol|terre|terreno|suolo|solo)\b/i;
/** Names of labs and their departments say what they test, not what this is. */
const LAB = /\b(?:lab|labs|laborator(?:y|ies|io)|laboratoire|labor|university|universitat|universidad|universite|extension|services?|institut[eo]?|department|center|centre|agency|society|inc|llc|ltd|gmbh)\b/i;
/** Words of people talking. */
const PROSE = /\b(?:you|your|yours|should|may|might|can|will|would|if|when|please|recommend[a-z]*|apply|add|use|we|(?<!\bas[ -])is|are|was|were|has|have|the|this|that|sie|bitte|wird|werden|sollten?|ist|sind|der|die|das|vous|votre|nous|est|sont|les|su|usted|debe|si|puede|es|son|el|los|lo|il|gli|seu|sua|pode|deve)\b/i;
const MOST_WORDS = 14;

const SOIL_WORD = /(?<!potting )(?<!potting-)\bsoils? (?:test|analysis|report|sample|results?|ph|type|texture|series|health|information|id)\b|\b(?:boden(?:untersuchung|analyse|probe|art|gruppe|test)|(?:analisis|analise|analisi) (?:de|del|do|dei|di) (?:suelos?|solos?|terren[oi]|suol[oi])|analyses? (?:de |du )(?:sol|terre))\b/i;
const SOIL_CELL = /^(?:c\.?e\.?c\b|cation[ -]exch|exch(?:angeable|\.)|(?:percent |% )?(?:base|cation) sat|buffer ph|ph buffer|bph\b|lime (?:req|index|need|rec)|kalkbedarf|humus|(?:soil )?textur[ae]?\b|sand\b|silt\b|clay\b|arena\b|arcilla|limo\b|argile|limons?\b|sables?\b|sabbia|argilla|areia|argila|soil ph|ph[ -]?\(?(?:cacl2|kcl|wasser|1:\d|h2o|water|agua|eau|acqua)|(?:ca|mg|k|na|calcium|magnesium|potassium|sodium)[ -]saturation|kationenaustausch|capaci(?:dad|te|ta|dade) (?:d[ei] |d.)?(?:intercambio|echange|scambio|troca))/i;
const SOIL_UNIT = /\b(?:meq ?\/ ?100|cmol|mmolc|lbs?\.? ?(?:\/|per) ?ac(?:res?)?\b(?![ -]?(?:f|in))|mg ?\/ ?100 ?g|kg ?\/ ?ha\b|mehlich|olsen|bray|(?:modified )?morgan|dtpa|colwell|ammonium acetate|nh4oac|joret|egner|dyer)/i;
/** What is a soil's beside a water, a leaf or a feed, but is printed for compost too. */
const ORGANIC = /^(?:soil )?(?:organic (?:matter|material|carbon)|o\.?m\.?\b|humus|materia organica|matiere organique|sostanza organica)/i;
const PH = /^(?:soil )?ph\b/i;

type Judged = { readonly line: Line; readonly text: string; readonly isLab: boolean; readonly sent: string; readonly cells: readonly string[] };
type Found = { readonly titles: Set<string>; readonly strong: Map<string, string>; readonly weak: Map<string, string> };

/** Lines beyond these only repeat. */
const MOST_LINES = 600;

/** What a report is about; 'soil' wherever the signs are mixed or too few. Linear in the lines, and never throws. */
export function kindOfLines(lines: readonly Line[]): Kind {
  const kept: Judged[] = [];
  for (const line of lines.slice(0, MOST_LINES)) {
    const text = line.text.slice(0, 400).trim().replace(/ {2,}/g, ' | ');
    if (isProse(text)) continue;
    const judged = { line, text, isLab: LAB.test(text), sent: SENT.exec(text)?.[1] ?? '', cells: text.split(/[|;]|,(?!\d)/).map((c) => c.replace(/^[ "'#>-]+/, '')) };
    if (isSoil(judged)) return { kind: 'soil', words: [] };
    kept.push(judged);
  }
  const found = new Map<Stranger | 'leaf', Found>(SIGNS.map(([kind]) => [kind, { titles: new Set(), strong: new Map(), weak: new Map() }]));
  const holds = (sign: RegExp): boolean => kept.some(({ cells }) => cells.some((c) => sign.test(c)));
  const [organic, ph] = [holds(ORGANIC), holds(PH)];
  const shares = new Map<string, number>();
  for (const judged of kept) {
    for (const [kind, signs] of SIGNS) takeSigns(judged, signs, found.get(kind)!);
    takeShares(judged.text, shares);
  }
  const weight = ({ titles, strong, weak }: Found): number => 10 * titles.size + 2 * strong.size + weak.size;
  for (const [kind, signs] of [...found].sort((a, b) => weight(b[1]) - weight(a[1]))) {
    // Soil labs print moisture and C:N too: alone they do not make a compost.
    const own = [...signs.strong.keys()].filter((k) => !COMMON.test(k)).length;
    const told = signs.titles.size > 0 || own > 1 || (signs.weak.size > 0 && signs.strong.size > 0 && signs.strong.size + signs.weak.size > 2);
    const contrary = (organic && kind !== 'compost' && kind !== 'manure') || (ph && (kind === 'leaf' || kind === 'fertiliser'));
    if (told && !contrary) return { kind, words: [...signs.titles, ...signs.strong.values(), ...signs.weak.values()].slice(0, 4) };
  }
  return !ph && !organic && isLeaf(shares) ? { kind: 'leaf', words: [...shares.keys()].map((name) => `${name} %`) } : { kind: 'soil', words: [] };
}

const COMMON = /^(?:moisture|dry|trocken|materia seca|matiere seche|sostanza secca|c\b|carbon\b)/;

function isSoil({ text, isLab, sent, cells }: Judged): boolean {
  return (!isLab && SOIL_WORD.test(text)) || SOIL_UNIT.test(text) || SENT_SOIL.test(sent) || cells.some((c) => SOIL_CELL.test(c));
}

function takeSigns({ line, text, isLab, sent, cells }: Judged, signs: Signs, found: Found): void {
  const head = text.replace(/\d.*/, '').replace(/[ |]+$/, '');
  if ((!isLab && signs.title.test(head)) || signs.sent.test(sent)) found.titles.add(line.raw.trim().slice(0, 60));
  cells.forEach((_, i) => {
    // A name and its numbers may stand in cells of their own: the rest of the line counts with each.
    const rest = cells.slice(i, i + 4).join('|');
    const strong = signs.strong.exec(rest)?.[0];
    const weak = strong === undefined ? signs.weak?.exec(rest)?.[0] : undefined;
    if (strong !== undefined) found.strong.set(keyOf(strong), wordOf(strong));
    if (weak !== undefined) found.weak.set(keyOf(weak), wordOf(weak));
  });
}

/** A notice for a report that is neither soil nor leaf; null for these two. */
export function strangerNotice(kind: Kind, file: string): Notice | null {
  if (kind.kind === 'soil' || kind.kind === 'leaf') return null;
  return notice(SAID[kind.kind], 'error', { file, words: kind.words.join(', ') });
}

const SAID: Readonly<Record<Stranger, NoticeId>> = { water: 'report-water', compost: 'report-compost', manure: 'report-manure', feed: 'report-feed', fertiliser: 'report-fertilizer' };

/** "Hardness" and "Total hardness" are one sign. */
const keyOf = (sign: string): string => wordOf(sign).toLowerCase().replace(/(?:total|calcium|magnesium) /, '');
const wordOf = (sign: string): string => sign.replace(/[\d.,:=|(%].*/, '').trim();

function isProse(text: string): boolean {
  if (PROSE.test(text)) return true;
  const words = text.match(/\p{L}{2,}/gu)?.length ?? 0;
  const numbers = text.match(/\d[\d.,]*/g)?.length ?? 0;
  return words > MOST_WORDS && numbers * 4 < words && !text.includes('|');
}

/** Elements printed as a share of the dry matter. */
const SHARE = /(?:^|[|,;] *)(?:total )?(nitrogen|stickstoff|nitrogeno|azote|azoto|nitrogenio|n|phosphor(?:us|e)?|fosforo|p|potassium|kalium|potasio|potassio|k|calcium|kalzium|calcio|ca|magnesium|magnesio|mg)\b *(?:\((?:n|p|k|ca|mg)\))?[ :=|(]*(%|g\/kg)?[ :=|)]*(\d{1,2}(?:[.,]\d{1,3})?)(?![\d.,]) *[ |]*(%|g\/kg|percent)?/gi;
/** Bounds of what leaves of fruit plants hold, in % of dry matter; wide, since they only tell a leaf from a soil. Practice. */
const LEAF: Readonly<Record<string, readonly [number, number]>> = { N: [0.5, 6], P: [0.03, 1.2], K: [0.3, 6], Ca: [0.1, 6], Mg: [0.05, 2] };
/** Their names told apart by what the others do not have; all else is potassium. */
const SYMBOLS: readonly (readonly [string, RegExp])[] = [['N', /^[nsa]/i], ['P', /f|ph|p$/i], ['Ca', /c|z/i], ['Mg', /g/i]];

function takeShares(text: string, shares: Map<string, number>): void {
  for (const m of text.matchAll(SHARE)) {
    const unit = m[4] ?? m[2];
    const symbol = SYMBOLS.find(([, name]) => name.test(m[1]!))?.[0] ?? 'K';
    // A second value for an element (a range, a saturation) does not displace the first.
    if (unit && !shares.has(symbol)) shares.set(symbol, Number(m[3]!.replace(',', '.')) / (unit === 'g/kg' ? 10 : 1));
  }
}

/** Nitrogen, phosphorus and two more, all as shares within what leaves hold: no soil report prints its phosphorus in %. */
function isLeaf(shares: ReadonlyMap<string, number>): boolean {
  const fits = [...shares].every(([symbol, share]) => share >= LEAF[symbol]![0] && share <= LEAF[symbol]![1]);
  return fits && shares.has('N') && shares.has('P') && shares.size >= 4;
}
