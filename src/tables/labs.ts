/**
 * Which laboratory uses which method: nobody knows their extractant, but everybody knows who tested the soil, or in which state.
 * A row is a public laboratory, or what is the rule in a place. A state or country stands for its public laboratory alone:
 * a text with any other word in it ("… Laboratories, Virginia") names somebody else, and nobody is named by half.
 */
import type { Cite } from '../reason/figure.ts';
import type { Item, Method, ReportUnit } from './items.ts';

export type LabMethods = Partial<Readonly<Record<Item, Method>>>;
export type Lab = {
  /** As it is written behind `lab:` in a report file. */
  readonly name: string;
  /** Words by which it is known, small letters without accents. */
  readonly words: readonly string[];
  /** Postal letters of its state. */
  readonly code?: string;
  /** Country, and state or province. */
  readonly region: string;
  readonly methods: LabMethods;
  /** Recalled, not seen on the page of the cite. */
  readonly recalled?: LabMethods;
  /** In which unit it prints P and K where that was seen. */
  readonly unit?: ReportUnit;
  /** It measures soil by volume. */
  readonly byVolume?: true;
  readonly cite: Cite;
};

const NUTRIENTS = ['phosphorus', 'potassium', 'calcium', 'magnesium'] as const;
const all = (method: Method): LabMethods => Object.fromEntries(NUTRIENTS.map((item) => [item, method]));
const cations = (method: Method): LabMethods => ({ potassium: method, calcium: method, magnesium: method });
const cite = (source: string, at: string, mark: Cite['mark'] = 'read'): Cite => ({ source, at, mark });

const southern = (at: string): Cite => cite('southern-bulletin-409', at, 'memory');
const northCentral = (at: string): Cite => cite('ncr-221', at, 'memory');
const oregon = (at: string): Cite => cite('oregon-ec1478', at, 'memory');

export const LABS: readonly Lab[] = [
  { name: 'Penn State', words: ['penn state', 'pennsylvania state', 'psu', 'pennsylvania'], code: 'PA', region: 'US, Pennsylvania', unit: 'ppm',
    methods: { ph: 'water', 'buffer-ph': 'mehlich-buffer', ...all('mehlich-3') }, cite: cite('penn-agronomy-guide', 'soil testing procedures') },
  { name: 'Rutgers', words: ['rutgers', 'new jersey'], code: 'NJ', region: 'US, New Jersey', unit: 'lb/acre', methods: all('mehlich-3'), cite: cite('rutgers-levels', 'Mehlich-3 values') },
  { name: 'University of Delaware', words: ['delaware'], code: 'DE', region: 'US, Delaware', methods: all('mehlich-3'), cite: cite('delaware-recommendations', 'table 1') },
  { name: 'Virginia Tech', words: ['virginia tech', 'virginia polytechnic', 'vce', 'virginia'], code: 'VA', region: 'US, Virginia', unit: 'lb/acre', methods: all('mehlich-1'), cite: cite('delaware-recommendations', 'table 1') },
  { name: 'North Carolina', words: ['north carolina', 'ncda', 'ncda cs', 'nc'], code: 'NC', region: 'US, North Carolina', unit: 'index', byVolume: true,
    methods: { ph: '1:1', ...all('mehlich-3') }, recalled: { 'buffer-ph': 'mehlich-buffer' }, cite: cite('north-carolina-report', 'soil testing methodology') },
  { name: 'Clemson', words: ['clemson', 'south carolina'], code: 'SC', region: 'US, South Carolina', unit: 'lb/acre', methods: all('mehlich-1'), cite: cite('clemson-extractants', 'state laboratories') },
  { name: 'University of Georgia', words: ['georgia', 'uga'], code: 'GA', region: 'US, Georgia', unit: 'lb/acre', methods: all('mehlich-1'), cite: cite('clemson-extractants', 'state laboratories') },
  { name: 'University of Kentucky', words: ['kentucky'], code: 'KY', region: 'US, Kentucky', methods: all('mehlich-3'), cite: cite('clemson-extractants', 'state laboratories') },
  { name: 'University of Florida', words: ['florida', 'ifas', 'uf ifas'], code: 'FL', region: 'US, Florida', methods: {}, recalled: all('mehlich-3'), cite: cite('florida-ss620', 'Mehlich-3 for acid mineral soils', 'memory') },
  { name: 'Louisiana State', words: ['louisiana', 'lsu'], code: 'LA', region: 'US, Louisiana', methods: {}, recalled: all('mehlich-3'), cite: southern('Louisiana') },
  { name: 'University of Arkansas', words: ['arkansas'], code: 'AR', region: 'US, Arkansas', methods: {}, recalled: all('mehlich-3'), cite: southern('Arkansas') },
  { name: 'Oklahoma State', words: ['oklahoma'], code: 'OK', region: 'US, Oklahoma', methods: {}, recalled: all('mehlich-3'), cite: southern('Oklahoma') },
  { name: 'Texas A&M', words: ['texas', 'texas a m', 'tamu', 'agrilife'], code: 'TX', region: 'US, Texas', methods: {}, recalled: all('mehlich-3'), cite: southern('Texas') },

  { name: 'University of Massachusetts', words: ['massachusetts', 'umass'], code: 'MA', region: 'US, Massachusetts', unit: 'ppm',
    methods: { ph: '1:1', 'organic-matter': 'loi', ...all('modified-morgan') }, cite: cite('umass-sample-2014', 'headings of the report') },
  { name: 'University of Connecticut', words: ['uconn', 'university of connecticut', 'connecticut'], code: 'CT', region: 'US, Connecticut', unit: 'lb/acre', methods: all('modified-morgan'), cite: cite('connecticut-agronomic', 'Modified Morgan') },
  { name: 'University of Vermont', words: ['vermont', 'uvm'], code: 'VT', region: 'US, Vermont', methods: {}, recalled: all('modified-morgan'), cite: cite('vermont-br1390', 'soil test categories', 'memory') },
  { name: 'University of Maine', words: ['maine', 'umaine'], code: 'ME', region: 'US, Maine', methods: {}, recalled: all('modified-morgan'), cite: cite('maine-interpreting', 'standard soil test', 'memory') },
  { name: 'University of New Hampshire', words: ['new hampshire', 'unh'], code: 'NH', region: 'US, New Hampshire', methods: all('mehlich-3'), recalled: { 'buffer-ph': 'mehlich-buffer' }, cite: cite('new-hampshire-report', 'soil test descriptions') },

  { name: 'University of Missouri', words: ['missouri', 'mizzou'], code: 'MO', region: 'US, Missouri',
    methods: { ph: 'cacl2', 'buffer-ph': 'woodruff', 'organic-matter': 'loi', phosphorus: 'bray-1', ...cations('ammonium-acetate'), salts: '1:1' }, cite: cite('missouri-procedures', 'soil test procedures') },
  // Phosphorus by Bray or Olsen, as the pH is: the report says which.
  { name: 'University of Minnesota', words: ['minnesota', 'umn'], code: 'MN', region: 'US, Minnesota', methods: { ph: '1:1', 'buffer-ph': 'sikora', 'organic-matter': 'loi' }, recalled: { potassium: 'ammonium-acetate' }, cite: cite('minnesota-soil-lab', 'soil pH; organic matter') },
  { name: 'University of Wisconsin', words: ['wisconsin', 'uw madison'], code: 'WI', region: 'US, Wisconsin', methods: {}, recalled: { phosphorus: 'bray-1', potassium: 'bray-1' }, cite: northCentral('Wisconsin') },
  { name: 'Kansas State', words: ['kansas', 'k state'], code: 'KS', region: 'US, Kansas', methods: {}, recalled: { phosphorus: 'mehlich-3', ...cations('ammonium-acetate') }, cite: northCentral('Kansas') },
  { name: 'North Dakota State', words: ['north dakota', 'ndsu'], code: 'ND', region: 'US, North Dakota', methods: {}, recalled: { phosphorus: 'olsen', ...cations('ammonium-acetate') }, cite: northCentral('North Dakota') },
  { name: 'South Dakota', words: ['south dakota', 'sdsu'], code: 'SD', region: 'US, South Dakota', methods: { phosphorus: 'olsen', potassium: 'ammonium-acetate' }, cite: cite('south-dakota-kits', 'recommended methods') },
  { name: 'eastern Washington', words: ['eastern washington', 'central washington', 'wsu', 'washington state', 'washington'], code: 'WA', region: 'US, Washington', unit: 'ppm',
    methods: { phosphorus: 'olsen', ...cations('ammonium-acetate') }, cite: cite('washington-em119e', 'soil recommended ranges') },
  { name: 'western Washington', words: ['western washington', 'washington'], code: 'WA', region: 'US, Washington', methods: {}, recalled: { phosphorus: 'bray-1', ...cations('ammonium-acetate') }, cite: oregon('west of the Cascades') },
  { name: 'western Oregon', words: ['western oregon', 'willamette valley', 'oregon'], code: 'OR', region: 'US, Oregon', methods: {}, recalled: { phosphorus: 'bray-1', ...cations('ammonium-acetate') }, cite: oregon('west of the Cascades') },
  { name: 'eastern Oregon', words: ['eastern oregon', 'central oregon', 'oregon'], code: 'OR', region: 'US, Oregon', methods: {}, recalled: { phosphorus: 'olsen', ...cations('ammonium-acetate') }, cite: oregon('east of the Cascades') },

  { name: 'Ontario', words: ['ontario', 'omafra', 'omafa'], code: 'ON', region: 'CA, Ontario', unit: 'mg/L', byVolume: true, methods: { phosphorus: 'olsen', potassium: 'ammonium-acetate', magnesium: 'ammonium-acetate' }, cite: cite('ontario-accredited', 'table 1') },
  { name: 'Quebec', words: ['quebec'], code: 'QC', region: 'CA, Quebec', methods: { phosphorus: 'mehlich-3' }, recalled: cations('mehlich-3'), cite: cite('canada-soil-test-p', 'Quebec') },

  { name: 'England and Wales', words: ['england', 'wales', 'uk', 'united kingdom', 'great britain', 'britain'], region: 'GB', unit: 'mg/L', byVolume: true,
    methods: {}, recalled: { phosphorus: 'olsen', potassium: 'ammonium-nitrate', magnesium: 'ammonium-nitrate' }, cite: cite('uk-rb209', 'index table', 'memory') },
  { name: 'Northern Ireland', words: ['northern ireland', 'afbi', 'uk', 'united kingdom'], region: 'GB, Northern Ireland', unit: 'mg/L', byVolume: true,
    methods: { phosphorus: 'olsen' }, recalled: { potassium: 'ammonium-nitrate', magnesium: 'ammonium-nitrate' }, cite: cite('northern-ireland-2019-81', 'schedule 5, paragraph 10') },
  { name: 'Scotland', words: ['scotland', 'sruc', 'sac', 'uk', 'united kingdom', 'great britain', 'britain'], region: 'GB, Scotland', unit: 'mg/L', byVolume: true,
    methods: { phosphorus: 'modified-morgan' }, recalled: { potassium: 'modified-morgan', magnesium: 'modified-morgan' }, cite: cite('scotland-phosphorus', 'abstract') },
  { name: 'Ireland', words: ['ireland', 'teagasc', 'republic of ireland', 'eire'], region: 'IE', unit: 'mg/L', byVolume: true, methods: { phosphorus: 'morgan', potassium: 'morgan', magnesium: 'morgan' }, cite: cite('ireland-index', 'index system, Morgan’s') },
  { name: 'Germany', words: ['germany', 'deutschland', 'lufa', 'vdlufa', 'landwirtschaftskammer', 'nordrhein westfalen', 'nrw', 'niedersachsen', 'bayern', 'bavaria', 'baden wurttemberg', 'hessen', 'rheinland pfalz', 'schleswig holstein'], code: 'DE', region: 'DE', unit: 'mg/100g',
    methods: { ph: 'cacl2' }, recalled: { phosphorus: 'cal', potassium: 'cal', magnesium: 'cacl2' }, cite: cite('nrw-garden-40', 'pH targets') },
  { name: 'Austria', words: ['austria', 'osterreich', 'ages'], region: 'AT', unit: 'mg/kg', methods: { potassium: 'cal' }, recalled: { ph: 'cacl2', phosphorus: 'cal', magnesium: 'cacl2' }, cite: cite('austria-orchard', 'p. 15') },
];

/** Methods as they are written into a report file; the rest by their id. */
const METHOD_NAMES: Partial<Readonly<Record<Method, string>>> = {
  'mehlich-1': 'Mehlich 1', 'mehlich-3': 'Mehlich 3', olsen: 'Olsen', 'bray-1': 'Bray 1', 'bray-2': 'Bray 2', morgan: 'Morgan', 'modified-morgan': 'Modified Morgan', 'ammonium-acetate': 'ammonium acetate',
  'ammonium-nitrate': 'ammonium nitrate', cal: 'CAL', dl: 'DL', colwell: 'Colwell', 'ab-dtpa': 'AB-DTPA', dtpa: 'DTPA', resin: 'resin', cacl2: 'CaCl2', kcl: 'KCl', smp: 'SMP', sikora: 'Sikora', 'mehlich-buffer': 'Mehlich buffer',
  'adams-evans': 'Adams-Evans', woodruff: 'Woodruff', loi: 'LOI', 'walkley-black': 'Walkley-Black',
};
export const methodName = (method: Method): string => METHOD_NAMES[method] ?? method;

/** What may stand beside a laboratory's own words. */
const FILLER = new Set(('the of and for in at to my our from by state university universitat college extension cooperative service services agricultural agriculture analytical soil soils plant water testing test tests '
  + 'lab labs laboratory laboratories public department dept agronomic division program programme center centre us usa united states america canada cs a m').split(' '));

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^\p{L}\d]+/gu, ' ').trim();

/** Every word with the laboratories it may mean, the longest first. */
const WORDS: readonly (readonly [words: string, labs: readonly Lab[]])[] = [...new Set(LABS.flatMap((l) => l.words))]
  .sort((a, b) => b.length - a.length)
  .map((words) => [words, LABS.filter((l) => l.words.includes(words))]);
/** Words worth suggesting for a mistyped one. */
export const LAB_WORDS: readonly string[] = WORDS.map(([words]) => words).filter((w) => w.length > 3);

/** The laboratories that a text names: several where it leaves open which, none where it holds a word of anybody else. */
export function labsNamed(text: string): readonly Lab[] {
  const typed = text.trim().slice(0, 200);
  // Postal letters are a word of their own only in capitals, or where nothing else stands there.
  const code = /^[a-z]{2}$/i.test(typed) ? typed.toUpperCase() : /[,\s]\(?([A-Z]{2})\)?\.?$/.exec(typed)?.[1];
  const coded = code === undefined ? [] : LABS.filter((l) => l.code === code);
  let rest = ` ${plain(coded.length > 0 ? typed.replace(/\(?[A-Za-z]{2}\)?\.?$/, '') : typed)} `;
  let found: readonly Lab[] | null = coded.length > 0 ? coded : null;
  for (const [words, labs] of WORDS) {
    if (!rest.includes(` ${words} `)) continue;
    rest = rest.replaceAll(` ${words} `, ' ');
    const both: readonly Lab[] = found === null ? labs : found.filter((l) => labs.includes(l));
    found = both;
  }
  return rest.split(' ').every((w) => w === '' || FILLER.has(w)) ? found ?? [] : [];
}

/** The one laboratory that a text names; null where none or several are. */
export function labNamed(text: string): Lab | null {
  const labs = labsNamed(text);
  return labs.length === 1 ? labs[0]! : null;
}

export const methodsOf = (lab: Lab): LabMethods => ({ ...lab.recalled, ...lab.methods });

/** By which methods a report of this laboratory was made: those on which all that the text may name agree. Null where it names none. */
export function labMethods(text: string): LabMethods | null {
  const [first, ...others] = labsNamed(text).map(methodsOf);
  if (!first) return null;
  return Object.fromEntries(Object.entries(first).filter(([item, method]) => others.every((o) => o[item as Item] === method)));
}
