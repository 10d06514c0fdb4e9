/** What `where` decides: country, state, hemisphere, units, paper, language, and whether winters are mild. */
export type Where = {
  readonly text: string;
  readonly country: string | null;
  readonly state: string | null;
  readonly south: boolean;
  readonly units: 'us' | 'metric';
  readonly paper: 'a4' | 'letter';
  readonly language: 'en-US' | 'en-GB';
  readonly mildWinters: boolean | null;
};

const COUNTRIES: Readonly<Record<string, string>> = {
  us: 'US', usa: 'US', 'united states': 'US', uk: 'GB', gb: 'GB', 'united kingdom': 'GB', england: 'GB', scotland: 'GB', wales: 'GB', 'northern ireland': 'GB',
  ireland: 'IE', ie: 'IE', canada: 'CA', ca: 'CA', australia: 'AU', au: 'AU', 'new zealand': 'NZ', nz: 'NZ', 'south africa': 'ZA', za: 'ZA',
  chile: 'CL', cl: 'CL', argentina: 'AR', ar: 'AR', brazil: 'BR', br: 'BR', uruguay: 'UY', germany: 'DE', de: 'DE', austria: 'AT', at: 'AT', switzerland: 'CH',
  france: 'FR', fr: 'FR', spain: 'ES', es: 'ES', portugal: 'PT', italy: 'IT', it: 'IT', poland: 'PL', pl: 'PL', netherlands: 'NL', belgium: 'BE', denmark: 'DK',
  sweden: 'SE', norway: 'NO', india: 'IN', japan: 'JP', mexico: 'MX',
};
const SOUTH: readonly string[] = ['AU', 'NZ', 'ZA', 'CL', 'AR', 'BR', 'UY'];
const MILD_STATES: readonly string[] = ['florida', 'georgia', 'california', 'arizona', 'texas', 'louisiana', 'alabama', 'mississippi', 'south carolina', 'hawaii', 'nevada'];
/** State abbreviations as they stand on American letters, where they cannot be taken for a country. */
const STATE_CODES: Readonly<Record<string, string>> = {
  fl: 'florida', ga: 'georgia', az: 'arizona', tx: 'texas', la: 'louisiana', al: 'alabama', ms: 'mississippi', sc: 'south carolina', oh: 'ohio', mi: 'michigan',
  ia: 'iowa', ut: 'utah', pa: 'pennsylvania', me: 'maine', md: 'maryland', va: 'virginia', ny: 'new york', or: 'oregon', wa: 'washington', ca: 'california',
};

/** Metric, A4, north and English where nothing is told. */
export const NOWHERE: Where = { text: '', country: null, state: null, south: false, units: 'metric', paper: 'a4', language: 'en-GB', mildWinters: null };

/** "Ohio, US" → United States, north, pounds, Letter. Null where the last part is no country that is known. */
export function parseWhere(text: string): Where | null {
  const parts = text.split(',').map((p) => p.trim().toLowerCase()).filter(Boolean);
  const last = parts.at(-1) ?? '';
  const country = Object.hasOwn(COUNTRIES, last) ? COUNTRIES[last] : undefined;
  if (!country) return null;
  const said = parts.length > 1 ? parts.at(-2)! : null;
  const state = said && country === 'US' && Object.hasOwn(STATE_CODES, said) ? STATE_CODES[said]! : said;
  const us = country === 'US';
  return {
    text, country, state, south: SOUTH.includes(country), units: us ? 'us' : 'metric',
    paper: us || country === 'CA' || country === 'MX' ? 'letter' : 'a4', language: us ? 'en-US' : 'en-GB',
    mildWinters: state && us ? MILD_STATES.includes(state) : us ? null : ['GB', 'IE', 'DE', 'AT', 'PL', 'CA', 'CH', 'SE', 'NO', 'DK'].includes(country) ? false : null,
  };
}

export const COUNTRY_NAMES: readonly string[] = Object.keys(COUNTRIES).filter((c) => c.length > 3);
