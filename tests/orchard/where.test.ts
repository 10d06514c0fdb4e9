// Where an orchard is: states and provinces by name or letters. Letters: the postal services of the United States and of Canada (memory).
import { describe, expect, test } from 'vitest';
import { parseWhere } from '../../src/orchard/where.ts';
import { medlar } from '../medlar.ts';

const US = 'AL alabama, AK alaska, AZ arizona, AR arkansas, CA california, CO colorado, CT connecticut, DE delaware, FL florida, GA georgia, HI hawaii, ID idaho, IL illinois, IN indiana, IA iowa, KS kansas, KY kentucky, '
  + 'LA louisiana, ME maine, MD maryland, MA massachusetts, MI michigan, MN minnesota, MS mississippi, MO missouri, MT montana, NE nebraska, NV nevada, NH new hampshire, NJ new jersey, NM new mexico, NY new york, '
  + 'NC north carolina, ND north dakota, OH ohio, OK oklahoma, OR oregon, PA pennsylvania, RI rhode island, SC south carolina, SD south dakota, TN tennessee, TX texas, UT utah, VT vermont, VA virginia, WA washington, '
  + 'WV west virginia, WI wisconsin, WY wyoming, DC district of columbia';
const CA = 'AB alberta, BC british columbia, MB manitoba, NB new brunswick, NL newfoundland and labrador, NS nova scotia, NT northwest territories, NU nunavut, ON ontario, PE prince edward island, QC quebec, SK saskatchewan, YT yukon';
const pairs = (list: string): [string, string][] => list.split(', ').map((p) => [p.slice(0, 2), p.slice(3)]);

test('fifty states and the District, thirteen provinces and territories', () => {
  expect([pairs(US).length, pairs(CA).length]).toEqual([51, 13]);
});
test.each(pairs(US))('%s, US is %s', (code, name) => {
  for (const said of [`${code}, US`, `${code.toLowerCase()}, usa`, `${name}, United States`, `Springfield, ${code}, US`, `${code[0]!}.${code[1]!}., U.S.A.`]) expect([said, parseWhere(said)]).toMatchObject([said, { country: 'US', state: name, text: said }]);
});
test.each(pairs(CA))('%s, Canada is %s', (code, name) => {
  for (const said of [`${code}, Canada`, `${name}, CA`, `Windsor, ${code.toLowerCase()}, Canada`]) expect([said, parseWhere(said)]).toMatchObject([said, { country: 'CA', state: name, paper: 'letter', units: 'metric' }]);
});

describe('states and towns', () => {
  test('letters are a state in their own country alone', () => {
    expect(parseWhere('ON, US')?.state).toBe('on');
    expect(parseWhere('NJ, Canada')?.state).toBe('nj');
    expect(parseWhere('WA, Australia')).toMatchObject({ country: 'AU', state: 'wa', south: true });
    expect(parseWhere('Québec, Canada')?.state).toBe('quebec');
  });
  test('the part nearest to the country; a town of a state’s name is no state', () => {
    expect(parseWhere('Delaware, Ohio, US')?.state).toBe('ohio');
    expect(parseWhere('Washington, DC, US')?.state).toBe('district of columbia');
    expect(parseWhere('Nevada, IA, USA')?.state).toBe('iowa');
  });
  // Frost is rare in Florida and Hawaii, not in Vermont: practice.
  test('mild winters by letters too', () => {
    expect([parseWhere('FL, US'), parseWhere('HI, US'), parseWhere('VT, US'), parseWhere('Florida, US')].map((w) => w?.mildWinters)).toEqual([true, true, false, true]);
  });
});

// What hangs on the state is the same by name and by letters.
const read = async (where: string, line: string): Promise<any> => (await medlar(['read', '-', '--json'], { 'orchard.yaml': `where: ${where}\ntrees:\n  A: apple\n` }, `${line}\n`)).json.result.samples[0].readings[0];
test.each([
  // Rutgers: 60 lb/acre of P by Mehlich-3 is medium. Washington EM119E: 200 ppm K is optimal. North Carolina: an index of 50 and less is medium.
  ['New Jersey', 'NJ', 'Phosphorus 60 lb/acre Mehlich 3', 'medium'], ['Washington', 'WA', 'Potassium 200 ppm ammonium acetate', 'optimum'], ['North Carolina', 'NC', 'P-I 40', 'medium'],
])('scales: %s and %s', async (name, code, line, rating) => {
  for (const where of [`${name}, US`, `${code}, US`, `${code.toLowerCase()}, USA`]) expect([where, (await read(where, line)).rating]).toEqual([where, rating]);
});
test('a town called Washington does not take the state’s table', async () => {
  const { ratingCite, ours } = await read('Washington, PA, US', 'Potassium 200 ppm ammonium acetate');
  const home = await read('WA, US', 'Potassium 200 ppm ammonium acetate');
  expect(home.ours.scale).toBe('washington.potassium');
  // Salts by Washington alone are rated at home only where a paste is named; potassium serves fruit anywhere, so the word is the same.
  expect([ratingCite?.source, ours?.scale]).toEqual(['washington-em119e', 'washington.potassium']);
});

test.each([['Bayern, Deutschland', 'DE'], ['Tirol, Österreich', 'AT'], ['Valencia, España', 'ES'], ['Puglia, Italia', 'IT'], ['Polska', 'PL'], ['Paraná, Brasil', 'BR'], ['Gelderland, Nederland', 'NL']])('a country by its own name: %s', (said, country) => {
  expect(parseWhere(said)).toMatchObject({ country, units: 'metric' });
});
test('the year of the growth with a word before it or without', async () => {
  const { json } = await medlar(['plan', '--json', '--today', '2026-03-14'], { 'orchard.yaml': 'where: Ohio, US\ntrees:\n  A: apple, planted 2019, 12 ft across, shoots 6 in in 2025, bearing\n  B: apple, planted 2019, 12 ft across, shoots 6 in 2025, bearing\n' });
  const [a, b] = (json.result as { trees: { need: { N: number } }[] }).trees;
  expect(a!.need.N).toBe(b!.need.N);
});
