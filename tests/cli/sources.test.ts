// `medlar sources`: every table and cite inside, and coverage by the rule of design.md 9: covered only when an input that names it reaches a published answer.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { held } from '../hostile/hold.ts';
import type { Answer, FigureJson } from '../medlar.ts';
import { medlar } from '../medlar.ts';

type Row = { table: string; what: string; value: number | null; unit: string | null; at: string; mark: string };
type Source = { id: string; title: string; publisher: string; year: number | null; url: string | null; mark: string | null; figures: number; rows?: Row[] };
type Coverage = { crops: Record<string, { nitrogen: number; growth: number; potash: number; ph: number }> } & Record<'methods' | 'scales' | 'languages' | 'lime' | 'regions', Record<string, number>>;

const sources = async (...argv: string[]): Promise<Source[]> => (await medlar(['sources', ...argv, '--json'])).json.result.sources as Source[];
const one = async (id: string): Promise<Source> => (await sources(id)).find((s) => s.id === id)!;
const values = (s: Source, what: RegExp): [number | null, string | null][] => s.rows!.filter((r) => what.test(r.what)).map((r) => [r.value, r.unit]);

describe('the list', () => {
  test('publications with their best mark and number of figures; plain text says the same', async () => {
    const all = await sources();
    const text = await medlar(['sources']);
    held(text);
    expect(text.code).toBe(0);
    expect(all.length).toBeGreaterThan(50);
    expect(all.map((s) => s.id)).not.toContain('grower');
    for (const s of all) {
      expect(s.rows).toBeUndefined();
      expect(s.mark === null).toBe(s.figures === 0);
      expect(text.stdout).toContain(s.id);
      expect(text.stdout).toContain(s.title);
    }
    expect(text.stdout.match(/no figure/g)?.length ?? 0).toBe(all.filter((s) => s.figures === 0).length);
  });

  // Figures as the publications print them; each stands again under tests/published.
  test('rows hold what was printed, with its unit', async () => {
    // Michigan: 0.05 lb N a year of age, at most 0.75 lb (tests/published/michigan-garden-fruit).
    expect(values(await one('michigan-garden-fruit'), /^michigan\.pome/)).toEqual([[0.05, 'lb N a year of age'], [0.75, 'lb N']]);
    // Weinsberg table 1, kg/ha: P2O5 40, 20, 0; K2O 150, 80, 0 (tests/published/weinsberg).
    expect(values(await one('weinsberg'), /weinsberg\.(?:p2o5|k2o) .* low$/)).toEqual([[40, 'kg/ha'], [20, 'kg/ha'], [0, 'kg/ha'], [150, 'kg/ha'], [80, 'kg/ha'], [0, 'kg/ha']]);
    // EcoCrop: apple 6 to 7 at best, 4.5 to 8 at all (tests/published/fao-ecocrop, PHOPMN and PHOPMX, PHMIN and PHMAX).
    expect(values(await one('fao-ecocrop'), /malus-domestica/)).toEqual([[6, 'pH'], [7, 'pH'], [4.5, 'pH'], [8, 'pH']]);
    // Rutgers, Mehlich-3 phosphorus, lb/acre: low begins at 25, and it is stored just under that edge.
    expect(values(await one('rutgers-levels'), /phosphorus very-low/)).toEqual([[25, 'lb/acre']]);
    // Oregon EM 9585: at a Sikora buffer of 6.4, to pH 6.4: 2.1 tons an acre.
    expect(values(await one('oregon-em9585'), /6\.4 → 6\.4$/)).toEqual([[2.1, 'ton/acre']]);
  });

  // Texture, salts, carbon, extractants, indexes, pH in salts, checks, soil facts and labs: the figures as soil-tests.md 4, 5, 2 and 8 copies them from the page named.
  test.each([
    ['plos-salinity', /1:1 light slope/, [3.01, null]], ['plum-salinity', /threshold/, [2.6, 'dS/m']], ['carbon-review', /convention/, [1.724, null]], ['walkley-black-new-zealand', /times/, [1.25, null]],
    ['midwest-house-conversion', /phosphorus mehlich-3 bray-1 slope/, [0.7, null]], ['north-carolina-rates', /equation 15 slope/, [-3.2, 'lb/acre']], ['poland-ph', /slope/, [11.58, null]], ['new-south-wales-1988', /slope/, [1.05, null]],
    ['agvise-texture', /light/, [10, 'meq/100g']], ['australia-field-texture', /light clay clay high/, [40, '%']], ['purdue-smp', /smp ph/, [7.5, 'pH']], ['brazil-interpretation', /aluminium ph/, [5.6, 'pH']],
    ['penn-state-sheet', /density/, [1.33, 'g/cm3']], ['midwest-cec', /factor/, [12, null]], ['ussl-salt-tolerance', /threshold/, [1, 'dS/m']], ['norganics-compost', /weight/, [950, 'lb/yd3']], ['ohio-anr-34', /low/, [0.8, '%']], ['uc-almond-compost', /high/, [10, '%']],
    // Materials, what they set free, what must not meet (materials.md 1 to 3 and 7).
    ['ifa-factors', /ammonium-sulphate others S low/, [24, '%']], ['north-carolina-natural', /blood-meal spread n high/, [15, '%']], ['bulk-density-handout', /28-0-0 low/, [10.67, 'lb/gal']], ['bulk-density-handout', /urea ozPerCup high/, [6.4, 'oz a cup']], ['nofa-appendix', /horse-manure bulk low/, [800, 'lb/yd3']],
    ['cornell-css412', /horse-manure organic N year1 high/, [30, '%']], ['hartz-johnstone-2006', /blood-meal N year1 low/, [66, '%']], ['medlar', /blood-meal N year2 high/, [5, '%']], ['iowa-pmr1003', /manure minerals P2O5 low/, [80, '%']], ['usda-nop-205-203', /touching/, [120, 'day']],
    ['ipni-seap-3024', /urea with superphosphate: never/, [null, null]], ['pet-poison-helpline', /dogs/, [null, null]], ['south-africa-grades', /ratio labels/, [null, null]],
    ['california-clover', /mean/, [92, 'lb/acre']], ['bavaria-overfed-gardens', /litres/, [1.5, null]], ['salinity-classes', /paste/, [2, 'dS/m']], ['clemson-peach', /month/, [8, null]], ['louisiana-citrus-column', /date/, [30, null]], ['rutgers-levels', /manganese index slope/, [3.75, null]],
  ] as const)('%s is listed with its figure', async (id, what, figure) => { expect(values(await one(id), what)).toContainEqual(figure); });
  test('a laboratory whose method was seen is listed', async () => {
    for (const [id, name] of [['missouri-procedures', 'Missouri'], ['ontario-accredited', 'Ontario'], ['scotland-phosphorus', 'Scotland']] as const) expect((await one(id)).rows!.map((r) => r.what).join()).toContain(name);
  });
  test('a laboratory’s place is no scale of that place', async () => {
    const { regions } = (await medlar(['sources', '--coverage', '--json'])).json.result.coverage as Coverage;
    expect(Object.keys(regions).filter((p) => !/^[A-Z]{2}(?:-[A-Z]{2})?$/.test(p))).toEqual([]);
  });

  test('a rule that two tables hold is listed once', async () => {
    const rows = (await sources('michigan.pome.years')).flatMap((s) => s.rows!);
    expect(rows).toHaveLength(2);
  });
});

describe('search', () => {
  test.each([
    [['lime'], 'oregon-em9585'], [['LIME', 'sikora'], 'oregon-em9585'], [['lime sikora'], 'oregon-em9585'], [['cherry'], 'tennessee-cherries'], [['sulfur', 'ohio'], 'ohio-agf507'], [['Sulphur'], 'michigan-sulphur'],
    [['weinsberg'], 'weinsberg'], [['US-MD', 'dwarf'], 'maryland-pear'], [['royal'], 'rhs-feeding'],
  ])('%j finds %s', async (words, id) => {
    const found = await sources(...words);
    expect(found.map((s) => s.id)).toContain(id);
    for (const s of found) expect(s.rows).toBeDefined();
    expect(found.length).toBeLessThan((await sources()).length);
  });

  test('all words have to be true: fewer words find at least as much', async () => {
    const [lime, both] = [await sources('lime'), await sources('lime', 'georgia')];
    expect(both.length).toBeGreaterThan(0);
    expect(lime.map((s) => s.id)).toEqual(expect.arrayContaining(both.map((s) => s.id)));
  });

  test('only the rows that match are shown, the count is of all', async () => {
    const pear = (await sources('pear')).find((s) => s.id === 'washington-removal')!;
    expect(pear.rows!.length).toBeLessThan(pear.figures);
    for (const r of pear.rows!) expect(`${r.what} ${r.at}`).toContain('pear');
  });

  test('as text at most twelve rows of a publication, in plain words; as JSON all', async () => {
    const text = (await medlar(['sources', 'lime', 'oregon-em9585'])).stdout;
    const { rows } = await one('oregon-em9585');
    expect(rows!.length).toBeGreaterThan(12);
    expect(text.match(/^ {6}(?=\S+: )/gm)).toHaveLength(12);
    expect(text).toContain(`${rows!.length - 12} more`);
    expect((await medlar(['sources', 'umass-sample-2014'])).stdout).toContain('umass potassium very low up to  50 ppm');
  });

  test('suggestions are publications, crops and tables, no parts of a row', async () => {
    // "bulk", "half" and "talk" stand within rows or names only.
    for (const word of ['kalk']) expect((await medlar(['sources', word])).stdout).not.toContain('Did you mean');
    expect((await medlar(['sources', 'michgan'])).stdout).toContain('michigan');
  });

  test('nothing found: exit 0, an empty list, a word that would find something', async () => {
    const { code, json } = await medlar(['sources', 'chery', '--json']);
    expect([code, json.ok, json.result.sources]).toEqual([0, true, []]);
    const text = await medlar(['sources', 'chery']);
    expect(text.code).toBe(0);
    expect(text.stdout).toContain('cherry');
    const odd = await medlar(['sources', '((\u001b[2J', '.*']);
    held(odd);
    expect(odd.code).toBe(0);
  });
});

describe('coverage', async () => {
  const covered = (await medlar(['sources', '--coverage', '--json'])).json.result.coverage as Coverage;
  const ORCHARD = 'where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: soil.txt\n';
  const plan = async (line: string): Promise<Answer> => (await medlar(['plan', '--json'], { 'orchard.yaml': `${ORCHARD}trees:\n  Tree: ${line}, bank\nstore:\n  - Sulphate of ammonia, 21-0-0, 4 lb, $9\n  - Sulphate of potash, 0-0-50, 4 lb, $9\n`, 'soil.txt': 'pH 4.0\nPotassium 150 ppm (120-200)\nPhosphorus 40 ppm (30-50)\n' })).json;
  const chain = (json: Answer, id: string, seen = new Set<string>()): FigureJson[] => {
    if (seen.has(id)) return [];
    seen.add(id);
    const f = json.figures[id]!;
    return [f, ...f.from.flatMap((i) => chain(json, i, seen))];
  };
  const published = (f: FigureJson): boolean => ['read', 'derived'].includes(f.cite.mark) && !['medlar', 'grower', 'lab', 'definition'].includes(f.cite.source);
  const from = (...pick: string[]): fc.Arbitrary<string> => fc.constantFrom(...pick);

  test('counts only with the flag; text prints none', async () => {
    expect((await medlar(['sources', '--json'])).json.result.coverage).toBeUndefined();
    const text = await medlar(['sources', '--coverage']);
    held(text);
    // Nobody here prints anything for a mulberry but its pH.
    expect(text.stdout).toMatch(/^mulberry +none +none +none +\d+$/m);
    expect(text.stdout).toMatch(/^jujube +none +none +none +none$/m);
    expect(text.stdout).toMatch(/^apple +\d/m);
  });

  test('a crop with nitrogen reaches a published rule, one without reaches none', async () => {
    await fc.assert(fc.asyncProperty(from(...Object.keys(covered.crops)), async (crop) => {
      const json = await plan(`${crop}, planted 2019, 12 ft across, bearing, shoots 4 in 2025`);
      const tree = json.result.trees[0];
      const reached = [tree.needWhy.N, ...tree.spanWhy.N, ...tree.rulesWhy].flatMap((id: string) => chain(json, id)).filter((f) => f.of === 'N' && published(f) && f.step !== 'per-area' && f.step !== 'size-cap');
      expect([crop, reached.length > 0]).toEqual([crop, covered.crops[crop]!.nitrogen > 0]);
    }), { numRuns: 25 });
  });

  test('growth: a tree grown beyond the range is refused nitrogen by a published range', async () => {
    await fc.assert(fc.asyncProperty(from(...Object.keys(covered.crops)), async (crop) => {
      const json = await plan(`${crop}, planted 2019, 12 ft across, bearing, shoots 60 in 2025`);
      const reached = Object.values(json.figures).filter((f) => (f.step === 'growth-range' || f.of === 'growth') && published(f));
      const none = json.result.trees[0].none;
      expect([crop, reached.length > 0 || none === 'growth-above']).toEqual([crop, covered.crops[crop]!.growth > 0]);
    }), { numRuns: 25 });
  });

  test('potash: what the fruit took is replaced by a published figure', async () => {
    await fc.assert(fc.asyncProperty(from(...Object.keys(covered.crops)), async (crop) => {
      const json = await plan(`${crop}, planted 2015, 12 ft across, bearing, shoots 4 in 2025, fruit 40 lb 2025`);
      const reached = chain(json, json.result.trees[0].needWhy.K2O).filter((f) => f.step === 'removal' && published(f));
      expect([crop, reached.length > 0]).toEqual([crop, covered.crops[crop]!.potash > 0]);
    }), { numRuns: 25 });
  });

  test('pH: a range to hold the value against', async () => {
    await fc.assert(fc.asyncProperty(from(...Object.keys(covered.crops)), async (crop) => {
      const json = await plan(`${crop}, planted 2015, 12 ft across`);
      expect([crop, json.result.ph.length > 0]).toEqual([crop, covered.crops[crop]!.ph > 0]);
    }), { numRuns: 25 });
  });

  /** How a report names each method. */
  const NAMED: Readonly<Record<string, string>> = {
    'mehlich-1': 'Mehlich 1', 'mehlich-3': 'Mehlich 3', olsen: 'Olsen', 'bray-1': 'Bray 1', 'bray-2': 'Bray 2', morgan: 'Morgan', 'modified-morgan': 'Modified Morgan', 'ammonium-acetate': 'ammonium acetate', 'ammonium-nitrate': 'ammonium nitrate',
    cal: 'CAL method', dl: 'DL method', colwell: 'Colwell', 'ab-dtpa': 'AB-DTPA', resin: 'resin', dtpa: 'DTPA', 'hot-water': 'hot water', water: 'water', cacl2: 'CaCl2', kcl: 'KCl', '1:5': '1:5', loi: 'LOI', 'walkley-black': 'Walkley-Black',
  };
  test('a method with a scale is rated by a published one, one without is not', async () => {
    await fc.assert(fc.asyncProperty(from(...Object.keys(NAMED)), async (method) => {
      const lines = [
        ...['phosphorus', 'potassium', 'magnesium', 'calcium', 'sulphur', 'zinc', 'boron'].flatMap((item) => ['ppm', 'mg/L'].map((unit) => [item, unit] as const)),
        ...(method === '1:5' ? [['salts', 'dS/m'] as const] : []),
      ];
      let reached = 0;
      for (const where of ['Ohio, US', 'Cork, Ireland', 'Kent, UK', 'Austria', 'Poland', 'Australia']) for (const [item, unit] of lines) {
        const { json } = await medlar(['read', 'soil.txt', '--json'], { 'orchard.yaml': `where: ${where}\ntrees:\n  A: apple\n`, 'soil.txt': `texture: loam\n${item} 60 ${unit}\n${item} method: ${NAMED[method]!}\n` });
        const r = json.result.samples[0].readings.find((x: { item: string }) => x.item === item);
        expect(r.method).toBe(method);
        if (r.ratingCite && ['read', 'derived'].includes(r.ratingCite.mark)) reached++;
      }
      expect([method, reached > 0]).toEqual([method, covered.methods[method]! > 0]);
    }), { numRuns: 8 });
  });

  test('a language with words is read in them', async () => {
    // The words for phosphorus and potassium in each language (dictionaries).
    const said: Readonly<Record<string, [string, string]>> = {
      English: ['Phosphorus', 'Potassium'], German: ['Phosphor', 'Kalium'], Spanish: ['Fósforo', 'Potasio'], French: ['Phosphore', 'Potassium'], Italian: ['Fosforo', 'Potassio'], Dutch: ['Fosfor', 'Kalium'], Polish: ['Fosfor', 'Potas'], Portuguese: ['Fósforo', 'Potássio'],
    };
    expect(Object.keys(covered.languages).sort()).toEqual(Object.keys(said).sort());
    for (const [language, [p, k]] of Object.entries(said)) {
      const { json } = await medlar(['read', '-', '--json'], {}, `${p} 12 ppm Olsen\n${k} 160 ppm ammonium acetate\n`);
      const rated = (json.result?.samples ?? []).flatMap((s: { readings: { ratingCite?: { source: string } }[] }) => s.readings).filter((r: { ratingCite?: { source: string } }) => r.ratingCite?.source === 'washington-em119e');
      expect([language, rated.length === 2]).toEqual([language, covered.languages[language]! > 0]);
    }
  });

  test('places: those with rules or scales of their own, and others none', () => {
    // Ten states and the UK have rules, Ireland an index of its own (README, design.md 4); North Rhine-Westphalia's chamber prints garden classes (soil-tests.md 3.1).
    for (const place of ['US-MI', 'US-PA', 'US-IA', 'US', 'GB', 'IE', 'DE']) expect(covered.regions[place], place).toBeGreaterThan(0);
    for (const place of ['PE', 'EG']) expect(covered.regions[place], place).toBe(0);
  });

  test('scales on memory alone are none', () => {
    // RB209's edges are recalled, not yet seen (tables/ratings.ts, mark memory).
    expect(covered.scales['uk.potassium']).toBe(0);
    expect(covered.scales['uk.phosphorus']).toBeGreaterThan(0);
  });

  test('tests that set a lime rate', () => {
    // Oregon's Sikora, Iowa's SMP and Penn State's acidity tables stand in tables/lime.ts.
    for (const t of ['sikora', 'smp', 'acidity']) expect(covered.lime[t], t).toBeGreaterThan(0);
    for (const t of ['woodruff', 'adams-evans']) expect(covered.lime[t], t).toBe(0);
  });
});
