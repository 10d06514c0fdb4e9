/** Who borders on whom: a publisher is near where its state or country does. Nearest first is not told by a border, so the order is that of the tables. */
const US: Readonly<Record<string, string>> = {
  AL: 'MS TN GA FL', AK: '', AZ: 'CA NV UT NM', AR: 'MO TN MS LA TX OK', CA: 'OR NV AZ', CO: 'WY NE KS OK NM UT', CT: 'NY MA RI', DE: 'MD PA NJ', DC: 'MD VA', FL: 'GA AL', GA: 'FL AL TN NC SC', HI: '',
  ID: 'MT WY UT NV OR WA', IL: 'WI IA MO KY IN', IN: 'MI OH KY IL', IA: 'MN WI IL MO NE SD', KS: 'NE MO OK CO', KY: 'IN OH WV VA TN MO IL', LA: 'TX AR MS', ME: 'NH', MD: 'PA DE VA WV DC', MA: 'RI CT NY NH VT',
  MI: 'OH IN WI', MN: 'WI IA SD ND', MS: 'LA AR TN AL', MO: 'IA IL KY TN AR OK KS NE', MT: 'ND SD WY ID', NE: 'SD IA MO KS CO WY', NV: 'ID UT AZ CA OR', NH: 'VT ME MA', NJ: 'DE PA NY', NM: 'AZ UT CO OK TX',
  NY: 'NJ PA VT MA CT', NC: 'VA TN GA SC', ND: 'MN SD MT', OH: 'PA WV KY IN MI', OK: 'KS MO AR TX NM CO', OR: 'CA NV ID WA', PA: 'NY NJ DE MD WV OH', RI: 'CT MA', SC: 'GA NC', SD: 'ND MN IA NE WY MT',
  TN: 'KY VA NC GA AL MS AR MO', TX: 'NM OK AR LA', UT: 'ID WY CO NM AZ NV', VT: 'NY NH MA', VA: 'NC TN KY WV MD DC', WA: 'ID OR', WV: 'OH PA MD VA KY', WI: 'MI MN IA IL', WY: 'MT SD NE CO UT ID',
};
const CANADA: Readonly<Record<string, string>> = { AB: 'BC SK', BC: 'AB', MB: 'ON SK', NB: 'NS QC PE', NL: 'QC', NS: 'NB PE', ON: 'QC MB', PE: 'NB NS', QC: 'ON NB NL', SK: 'AB MB' };
/** Countries whose gardens and leaflets are much alike; an ocean is no border. */
const COUNTRIES: Readonly<Record<string, string>> = {
  GB: 'IE', IE: 'GB', DE: 'AT CH', AT: 'DE CH', CH: 'DE AT FR', NL: 'BE DE GB', BE: 'NL FR DE', FR: 'BE CH', ES: 'PT', PT: 'ES', IT: 'CH FR', PL: 'CZ DE', CZ: 'PL AT DE', DK: 'SE DE', SE: 'DK NO', NO: 'SE DK', AU: 'NZ', NZ: 'AU', AR: 'CL', CL: 'AR', UY: 'BR AR',
};

/** Region → the regions that border on it, as "US-MI". */
export const BORDERS: Readonly<Record<string, readonly string[]>> = Object.fromEntries([
  ...([['US', US], ['CA', CANADA]] as const).flatMap(([country, list]) => Object.entries(list).map(([from, to]) => [`${country}-${from}`, to.split(' ').filter(Boolean).map((x) => `${country}-${x}`)] as const)),
  ...Object.entries(COUNTRIES).map(([from, to]) => [from, to.split(' ')] as const),
]);
