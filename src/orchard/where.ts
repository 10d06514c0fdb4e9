import type { Language } from '../words/words.ts';
import { spoken } from '../words/words.ts';

/** What `where` decides: country, state, hemisphere, units, paper, language, and whether winters are mild. */
export type Where = {
  readonly text: string;
  readonly country: string | null;
  /** In the US and Canada the full name in small letters, however it was written; elsewhere the part before the country. */
  readonly state: string | null;
  /** Country and state or province by their letters, as "US-OH"; the country alone elsewhere; null where nothing is told. */
  readonly region: string | null;
  readonly south: boolean;
  readonly units: 'us' | 'metric';
  readonly paper: 'a4' | 'letter';
  readonly language: Language;
  readonly mildWinters: boolean | null;
};

const COUNTRIES: Readonly<Record<string, string>> = {
  us: 'US', usa: 'US', 'united states': 'US', uk: 'GB', gb: 'GB', 'united kingdom': 'GB', england: 'GB', scotland: 'GB', wales: 'GB', 'northern ireland': 'GB',
  ireland: 'IE', ie: 'IE', canada: 'CA', ca: 'CA', australia: 'AU', au: 'AU', 'new zealand': 'NZ', nz: 'NZ', 'south africa': 'ZA', za: 'ZA',
  chile: 'CL', cl: 'CL', argentina: 'AR', ar: 'AR', brazil: 'BR', br: 'BR', uruguay: 'UY', germany: 'DE', de: 'DE', austria: 'AT', at: 'AT', switzerland: 'CH',
  france: 'FR', fr: 'FR', spain: 'ES', es: 'ES', portugal: 'PT', italy: 'IT', it: 'IT', poland: 'PL', pl: 'PL', netherlands: 'NL', belgium: 'BE', denmark: 'DK',
  sweden: 'SE', norway: 'NO', finland: 'FI', 'czech republic': 'CZ', czechia: 'CZ', slovakia: 'SK', hungary: 'HU', slovenia: 'SI', croatia: 'HR', serbia: 'RS', romania: 'RO', bulgaria: 'BG', greece: 'GR', turkey: 'TR', turkiye: 'TR', ukraine: 'UA', lithuania: 'LT', latvia: 'LV', estonia: 'EE', luxembourg: 'LU',
  deutschland: 'DE', osterreich: 'AT', schweiz: 'CH', espana: 'ES', italia: 'IT', polska: 'PL', brasil: 'BR', belgique: 'BE', nederland: 'NL', danmark: 'DK', sverige: 'SE', norge: 'NO', suomi: 'FI',
  india: 'IN', japan: 'JP', 'south korea': 'KR', korea: 'KR', china: 'CN', taiwan: 'TW', bangladesh: 'BD', pakistan: 'PK', nepal: 'NP', 'sri lanka': 'LK', philippines: 'PH', thailand: 'TH', vietnam: 'VN', indonesia: 'ID',
  iran: 'IR', israel: 'IL', egypt: 'EG', morocco: 'MA', tunisia: 'TN', kenya: 'KE', uganda: 'UG', tanzania: 'TZ', ethiopia: 'ET', zimbabwe: 'ZW', nigeria: 'NG', mexico: 'MX', peru: 'PE', colombia: 'CO', paraguay: 'PY', bolivia: 'BO',
};
const SOUTH: readonly string[] = ['AU', 'NZ', 'ZA', 'ZW', 'TZ', 'CL', 'AR', 'BR', 'UY', 'PY', 'BO', 'PE'];
const MILD_STATES: readonly string[] = ['florida', 'georgia', 'california', 'arizona', 'texas', 'louisiana', 'alabama', 'mississippi', 'south carolina', 'hawaii', 'nevada'];
/** States and provinces by the letters that stand on letters there; what is planned knows them by their names. */
const STATES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  US: {
    al: 'alabama', ak: 'alaska', az: 'arizona', ar: 'arkansas', ca: 'california', co: 'colorado', ct: 'connecticut', de: 'delaware', dc: 'district of columbia', fl: 'florida', ga: 'georgia',
    hi: 'hawaii', id: 'idaho', il: 'illinois', in: 'indiana', ia: 'iowa', ks: 'kansas', ky: 'kentucky', la: 'louisiana', me: 'maine', md: 'maryland', ma: 'massachusetts', mi: 'michigan',
    mn: 'minnesota', ms: 'mississippi', mo: 'missouri', mt: 'montana', ne: 'nebraska', nv: 'nevada', nh: 'new hampshire', nj: 'new jersey', nm: 'new mexico', ny: 'new york', nc: 'north carolina',
    nd: 'north dakota', oh: 'ohio', ok: 'oklahoma', or: 'oregon', pa: 'pennsylvania', ri: 'rhode island', sc: 'south carolina', sd: 'south dakota', tn: 'tennessee', tx: 'texas', ut: 'utah',
    vt: 'vermont', va: 'virginia', wa: 'washington', wv: 'west virginia', wi: 'wisconsin', wy: 'wyoming',
  },
  CA: {
    ab: 'alberta', bc: 'british columbia', mb: 'manitoba', nb: 'new brunswick', nl: 'newfoundland and labrador', ns: 'nova scotia', nt: 'northwest territories', nu: 'nunavut', on: 'ontario',
    pe: 'prince edward island', qc: 'quebec', sk: 'saskatchewan', yt: 'yukon',
  },
};

/** Small letters without accents and points: "N.J." is nj, "Québec" quebec. */
const plain = (text: string): string => text.trim().toLowerCase().normalize('NFD').replace(/[\p{M}.]/gu, '').replace(/\s+/g, ' ');

/** The name of a state or province told by its name or letters; null for a town. */
function stateNamed(said: string, country: string): string | null {
  const names = STATES[country] ?? {};
  const word = plain(said);
  return Object.hasOwn(names, word) ? names[word]! : Object.values(names).includes(word) ? word : null;
}

/** A state told without its country: "Ohio" → "Ohio, United States". */
export function withCountry(said: string): string | null {
  const country = Object.keys(STATES).find((c) => stateNamed(said, c) !== null);
  return country === undefined ? null : `${said}, ${placeName(country)}`;
}

/** What is spoken in a country, unless `language` in orchard.yaml says otherwise. */
const LOCAL: Readonly<Record<string, Language>> = { US: 'en-US', DE: 'de', AT: 'de', ES: 'es', MX: 'es', CL: 'es', AR: 'es', UY: 'es', PE: 'es', CO: 'es', PY: 'es', BO: 'es' };
export const localLanguage = (country: string | null): Language => LOCAL[country ?? ''] ?? 'en-GB';

/** Metric, A4, north and English where nothing is told. */
export const NOWHERE: Where = { text: '', country: null, state: null, region: null, south: false, units: 'metric', paper: 'a4', language: 'en-GB', mildWinters: null };

/** "Ohio, US" → United States, north, pounds, Letter. Null where the last part is no country that is known. */
export function parseWhere(text: string): Where | null {
  const parts = text.split(',').map((p) => p.trim().toLowerCase()).filter(Boolean);
  const last = parts.at(-1) ?? '';
  const country = Object.hasOwn(COUNTRIES, plain(last)) ? COUNTRIES[plain(last)] : undefined;
  if (!country) return null;
  const before = parts.slice(0, -1).reverse();
  // The part nearest to the country that names a state: a town may share its name with one.
  const state = before.flatMap((p) => stateNamed(p, country) ?? [])[0] ?? before[0] ?? null;
  const us = country === 'US';
  const letters = Object.entries(STATES[country] ?? {}).find(([, name]) => name === state)?.[0];
  return {
    text, country, state, region: letters ? `${country}-${letters.toUpperCase()}` : country, south: SOUTH.includes(country), units: us ? 'us' : 'metric',
    paper: us || country === 'CA' || country === 'MX' ? 'letter' : 'a4', language: spoken(localLanguage(country)),
    mildWinters: state && us ? MILD_STATES.includes(state) : us ? null : ['GB', 'IE', 'DE', 'AT', 'PL', 'CA', 'CH', 'SE', 'NO', 'DK', 'FI', 'CZ', 'SK', 'HU', 'UA', 'LT', 'LV', 'EE', 'LU'].includes(country) ? false : null,
  };
}

/** "US-MI" → Michigan, "GB" → UK. */
export function placeName(region: string): string {
  const [country = '', letters = ''] = region.toLowerCase().split('-');
  const name = STATES[country.toUpperCase()]?.[letters] ?? Object.entries(COUNTRIES).find(([word, code]) => code === country.toUpperCase() && word.length > 3)?.[0] ?? region;
  return withCapitals(name);
}

const withCapitals = (name: string): string => name.split(' ').map((w) => (w === 'of' || w === 'and' ? w : `${w[0]!.toUpperCase()}${w.slice(1)}`)).join(' ');

export const COUNTRY_NAMES: readonly string[] = Object.keys(COUNTRIES).filter((c) => c.length > 3).map((c) => withCapitals(c));

/** The country that the text of an orchard file tells, before it is read as a whole. */
export const countryIn = (orchardText: string): string | null => parseWhere(saidIn(orchardText, 'where'))?.country ?? null;

/** What stands behind a key at the margin of an orchard file, without quotation marks; empty where it is not there. */
export const saidIn = (orchardText: string, key: 'where' | 'language'): string => new RegExp(`^${key}:[ \\t]*["']?([^#"'\\r\\n]*)`, 'm').exec(orchardText)?.[1]?.trim() ?? '';
