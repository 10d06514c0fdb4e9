// When publications feed. Each row beside its source, its print and where it stands in practice.md (1.1 where no other part is named).
// Months are as printed: the window must lie inside them. What the tree does is counted from bud break by hand: bloom three weeks after, petal fall five.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const SULPHATE = 'Sulphate of ammonia, 21-0-0 +24S, 50 lb, $30';
type Feed = { from: string; until: string; phase: string | null; g: number; gExact: number; fromWhy: string };
type Set = { bud?: string; frost?: string; soil?: string; today?: string; diary?: string };

async function planned(where: string, facts: string, { bud = '12 April', frost = '12 October', soil, today = '2026-01-01' }: Set = {}) {
  const run = await medlar(['plan', '--json', '--today', today], {
    'orchard.yaml': `where: ${where}\nbud-break: ${bud}\nfirst-frost: ${frost}\n${soil ? 'soil:\n  bed: soil.txt\n' : ''}trees:\n  A: ${facts}${soil ? ', bed' : ''}\nstore:\n  - ${SULPHATE}\n`,
    ...(soil ? { 'soil.txt': soil } : {}),
  });
  if (run.code !== 0) throw new Error(run.stderr + run.stdout);
  const { json } = run;
  const [tree] = json.result.trees;
  const feeds = tree.feeds as Feed[];
  return { feeds, spans: feeds.map((f) => [f.from.slice(5), f.until.slice(5)]), sources: feeds.map((f) => json.figures[f.fromWhy]?.cite.source ?? ''), why: json.figures[feeds[0]?.fromWhy ?? '']?.text as string, json, tree };
}

/** A wide crown and short shoots: one dose does not burn and growth asks for it. */
const APPLE = 'apple, planted 2019, 25 ft across, shoots 2 in 2025';
const PEAR = 'pear, planted 2019, 25 ft across, shoots 2 in 2025';
const PLUM = 'plum, planted 2019, 25 ft across, shoots 2 in 2025';
const PEACH = 'peach, planted 2019, bearing, 30 ft across, shoots 2 in 2025';
const SAND = 'taken: 3 Nov 2025\npH 6.5\ntexture: sand\n';

describe('by what the tree does: days from bud break', () => {
  test.each([
    // MSU-SF: April to mid-May, before bud break.
    ['Michigan, US', APPLE, {}, [['03-29', '04-26']], ['bud-break'], 'michigan-garden-fruit'],
    // ISU-FT: early spring before bud break.
    ['Iowa, US', APPLE, {}, [['03-29', '04-26']], ['bud-break'], 'iowa-fruit-trees'],
    // CSU-1216: spring before or at bud break.
    ['Colorado, US', PEAR, {}, [['03-29', '04-26']], ['bud-break'], 'colorado-1216'],
    // USU-KSL: at least a month before bloom, which is 3 May: by 3 April.
    ['Utah, US', APPLE, {}, [['03-15', '04-03']], ['before-bloom'], 'utah-column'],
    // Idaho prints none; Utah borders on it.
    ['Idaho, US', PLUM, {}, [['03-15', '04-03']], ['before-bloom'], 'utah-column'],
    // KSU-V: as the tree enters bloom, 3 May give or take a week.
    ['Kansas, US', APPLE, {}, [['04-26', '05-10']], ['bloom'], 'kansas-video'],
    // NCSU-QR: late winter, which ends as buds swell.
    ['North Carolina, US', APPLE, {}, [['03-01', '04-05']], ['late-winter'], 'north-carolina-quick'],
    // RHS: late winter or early spring; not in winter where winters are wet.
    ['England, UK', APPLE, {}, [['03-29', '04-26']], ['bud-break'], 'rhs-feeding'],
    ['Ireland', APPLE, {}, [['03-29', '04-26']], ['bud-break'], 'rhs-feeding'],
    // UC-SF: all in spring.
    ['California, US', APPLE, {}, [['03-29', '04-26']], ['bud-break'], 'california-stone-pome'],
    // UGA-NW: half before bud-out, half after fruiting. Bud break 20 March, last nitrogen 20 August.
    ['Georgia, US', PEAR, { bud: '20 March', frost: '12 November' }, [['03-06', '04-03'], ['07-03', '08-17']], ['bud-break', 'after-harvest'], 'georgia-springtime'],
    // L1 (verified.md 12): late winter. Bud break 10 March.
    ['Louisiana, US', 'fig, planted 2018, 60 ft across', { bud: '10 March', frost: '20 November' }, [['01-27', '03-03']], ['late-winter'], 'louisiana-fig'],
    // targets.md 7: currants in early spring.
    ['Pennsylvania, US', 'currant, planted 2018, 12 ft across', {}, [['03-29', '04-26']], ['bud-break'], 'penn-currant'],
    // ISU-2: June-bearing strawberries when they are picked, eleven to sixteen weeks after growth starts.
    ['Iowa, US', '10 strawberry, planted 2024, bearing, 6 ft across, spacing 6 x 6 ft', {}, [['07-01', '07-20']], ['after-harvest'], 'medlar'],
    // Nobody prints for Ohio but its neighbours, who agree with the usual window.
    ['Ohio, US', APPLE, {}, [['03-29', '04-26']], ['bud-break'], 'michigan-garden-fruit'],
  ] as const)('%s, %s', async (where, facts, set, spans, phases, source) => {
    const p = await planned(where, facts, set);
    expect(p.spans).toEqual(spans);
    expect(p.feeds.map((f) => f.phase)).toEqual(phases);
    expect(p.sources[0]).toBe(source);
  });
});

describe('by months: inside what is printed, in so many doses', () => {
  const WARM = { bud: '10 March', frost: '20 November' };
  test.each([
    // VT21: equal doses in March and April.
    ['Virginia, US', APPLE, {}, [['03-01', '03-31'], ['04-01', '04-30']], 'virginia-note-21'],
    // MSU-SF: mid or late April and late May.
    ['Michigan, US', PEACH, {}, [['04-11', '04-30'], ['05-21', '05-31']], 'michigan-garden-fruit'],
    ['Michigan, US', PLUM, {}, [['04-11', '04-30'], ['05-21', '05-31']], 'michigan-garden-fruit'],
    ['Michigan, US', 'cherry, planted 2019, 25 ft across, shoots 2 in 2025', {}, [['04-11', '04-30'], ['05-21', '05-31']], 'michigan-garden-fruit'],
    // G2 (verified.md 12): figs of 3 to 5 years in early spring, mid-May and mid-July; from 6 years once.
    ['Georgia, US', 'fig, planted 2022, 12 ft high, 20 ft across', WARM, [['02-24', '03-24'], ['05-08', '05-22'], ['07-08', '07-22']], 'georgia-fig'],
    ['Georgia, US', 'fig, planted 2016, 12 ft high, 60 ft across', WARM, [['02-24', '03-24']], 'georgia-fig'],
    // UC-CIT: January or February just before bloom, May, perhaps June; year 5 and after in three doses, year 2 in two (1.2).
    ['California, US', 'lemon, planted 2019, 25 ft across', { bud: '1 March', frost: '15 December' }, [['01-01', '02-28'], ['05-01', '05-31'], ['06-01', '06-30']], 'california-citrus'],
    ['California, US', 'lemon, planted 2025, 12 ft across', { bud: '1 March', frost: '15 December' }, [['01-01', '02-28'], ['05-01', '05-31']], 'california-citrus'],
    // UF-PIN: February to October; UF-TBT (1.2): 6, 5, 4, 3 and 3 doses in years 1 to 5.
    ...([[2026, 6], [2025, 5], [2024, 4], [2023, 3], [2022, 3]] as const).map(([year, n]) => ['Florida, US', `lemon, planted ${String(year)}, 25 ft across`, { bud: '1 February', frost: '31 December' }, Array.from({ length: n }, () => ['02-01', '10-31']), 'florida-citrus'] as const),
    // LSU: February, and nitrogen in May or June, from the fourth year.
    ['Louisiana, US', 'orange, planted 2020, 25 ft across', WARM, [['02-01', '02-28'], ['05-01', '06-30']], 'lsu-citrus-home'],
    // Nassau County: pecans in February and June; persimmons in January and June (verified.md 12). Baker County: apples in January.
    ['Florida, US', 'pecan, planted 2008, bearing, trunk 10 in across, 40 ft across', { bud: '10 March', frost: '1 December' }, [['02-01', '02-28'], ['06-01', '06-30']], 'fl-nassau-pecan'],
    ['Florida, US', 'persimmon, planted 2020, 25 ft across', { bud: '10 March', frost: '1 December' }, [['01-01', '01-31'], ['06-01', '06-30']], 'fl-nassau-persimmon'],
    ['Florida, US', 'apple, planted 2020, 25 ft across, shoots 2 in 2025', { bud: '10 March', frost: '1 December' }, [['01-01', '01-31']], 'fl-baker-calendar'],
    // Clemson: February is pecan time.
    ['South Carolina, US', 'pecan, planted 2008, bearing, trunk 10 in across, 60 ft across', WARM, [['02-01', '02-28']], 'clemson-pecan-blog'],
    // RHS: medlar in March, raspberries in early March.
    ['England, UK', 'medlar, planted 2016, 6 m across', {}, [['03-01', '03-31']], 'rhs-medlar'],
    ['England, UK', '10 raspberry, planted 2022, 1 m across, spacing 0.5 x 2 m', {}, [['03-01', '03-15']], 'rhs-raspberry'],
    // PNW 507: kiwifruit of the third and fourth year in March, May and July.
    ['Oregon, US', 'kiwifruit, planted 2023, 25 ft across', { bud: '25 March', frost: '1 November' }, [['03-01', '03-31'], ['05-01', '05-31'], ['07-01', '07-31']], 'pnw507-kiwifruit'],
    // UGA-1: muscadines of three years 2 lb in March and 1 lb in May; grown ones in March and early June.
    ['Georgia, US', 'muscadine, planted 2024, 20 ft across', WARM, [['03-01', '03-31'], ['05-01', '05-31']], 'ga-code-103-muscadine'],
    ['Georgia, US', 'muscadine, planted 2016, 20 ft across', WARM, [['03-01', '03-31'], ['06-01', '06-30']], 'uga-colquitt-muscadine'],
  ] as const)('%s, %s %j', async (where, facts, set, inside, source) => {
    const { feeds, spans, sources } = await planned(where, facts, set);
    expect(feeds).toHaveLength(inside.length);
    spans.forEach(([from, until], i) => expect(from! >= inside[i]![0] && until! <= inside[i]![1], `${from!} to ${until!}`).toBe(true));
    expect(new Set(sources)).toEqual(new Set([source]));
    // A window, not a day, and two doses at least two weeks apart.
    feeds.forEach((f, i) => {
      expect(Date.parse(f.until) - Date.parse(f.from)).toBeGreaterThanOrEqual(5 * 86_400_000);
      if (i > 0) expect(Date.parse(f.from) - Date.parse(feeds[i - 1]!.until)).toBeGreaterThanOrEqual(14 * 86_400_000);
    });
  });
});

describe('parts of the year', () => {
  const SC = { bud: '10 March', frost: '10 November' };
  // CLEM: between bloom and petal fall, two months later in May, after harvest only if fruit was picked (1.5); not after 15 August (1.4).
  test('South Carolina peach: three doses, the last after picking', async () => {
    const { feeds, spans, sources } = await planned('South Carolina, US', PEACH, SC);
    expect(spans).toEqual([['03-24', '04-14'], ['05-01', '05-31'], ['06-23', '08-07']]);
    expect(feeds.map((f) => f.phase)).toEqual(['petal-fall', 'month', 'after-crop']);
    expect(sources[0]).toBe('clemson-peach');
    expect(Math.max(...feeds.map((f) => f.gExact))).toBeCloseTo(Math.min(...feeds.map((f) => f.gExact)), 6);
  });
  test('no fruit, no third dose', async () => {
    const { feeds } = await planned('South Carolina, US', `${PEACH}, fruit none 2026`, SC);
    expect(feeds.map((f) => f.phase)).toEqual(['petal-fall', 'month']);
  });
  test('not bearing: two', async () => { expect((await planned('South Carolina, US', PEACH.replace('bearing', 'not bearing'), SC)).feeds).toHaveLength(2); });
  test('a frost so early that picking comes after the last day: two whole doses, none cut', async () => {
    const early = await planned('South Carolina, US', PEACH, { bud: '12 April', frost: '12 October' });
    expect(early.feeds).toHaveLength(2);
    expect(early.feeds.reduce((sum, f) => sum + f.gExact * 0.21, 0)).toBeCloseTo(early.tree.need.N, 1);
  });
  // UC-PCH: one third to one half in spring for early, one half to two thirds for later varieties: a half lies in both.
  test('California peach: half in spring', async () => {
    const { feeds, spans } = await planned('California, US', PEACH.replace('30 ft', '60 ft'));
    expect(spans[0]).toEqual(['03-29', '04-26']);
    const share = feeds[0]!.gExact / feeds.reduce((sum, f) => sum + f.gExact, 0);
    for (const [low, high] of [[1 / 3, 1 / 2], [1 / 2, 2 / 3]]) expect(share >= low! - 1e-9 && share <= high! + 1e-9).toBe(true);
  });
  // UGA-1: 2 lb in March, 1 lb in May.
  test('Georgia muscadine of the third year: two parts to one', async () => {
    const { feeds } = await planned('Georgia, US', 'muscadine, planted 2024, 20 ft across', { bud: '10 March', frost: '20 November' });
    expect(feeds[0]!.gExact / feeds[1]!.gExact).toBeCloseTo(2, 6);
  });
  // NCSU-QR (1.2): sandy soil, half late winter, half May; the second dropped if frost took the crop.
  test('sand in North Carolina', async () => {
    const { feeds, spans } = await planned('North Carolina, US', APPLE, { soil: SAND });
    expect(spans[0]).toEqual(['03-01', '04-05']);
    expect(spans[1]![0]! >= '05-01' && spans[1]![1]! <= '05-31').toBe(true);
    expect(feeds).toHaveLength(2);
    expect(feeds[0]!.gExact).toBeCloseTo(feeds[1]!.gExact, 6);
  });
  test('sand elsewhere: halves from bloom on, unless frost took the crop', async () => {
    const whole = await planned('Ohio, US', APPLE, { soil: SAND });
    expect(whole.feeds.map((f) => f.phase)).toEqual(['bloom', 'later']);
    // Bloom from 26 April to 10 May; the next dose 24 days on.
    expect(whole.spans).toEqual([['04-26', '05-10'], ['06-03', '06-17']]);
    expect(whole.feeds[0]!.gExact).toBeCloseTo(whole.feeds[1]!.gExact, 6);
    expect((await planned('Ohio, US', `${APPLE}, fruit none 2026`, { soil: SAND })).feeds).toHaveLength(1);
  });
  // ISU-FT, RHS (1.2): one dose on loam or heavier. W1: 2 lb of 10-10-10 in March, again in April. W10: half and half.
  test.each([['Iowa, US', APPLE, 1], ['England, UK', APPLE, 1], ['Virginia, US', APPLE, 2], ['Michigan, US', PLUM, 2]] as const)('%s, %s on loam: %i', async (where, facts, n) => {
    const { feeds } = await planned(where, facts);
    expect(feeds).toHaveLength(n);
    for (const f of feeds) expect(f.gExact).toBeCloseTo(feeds[0]!.gExact, 6);
  });
  // VT21, AZ-YAV, MSU-SF (1.3): nothing in the year of planting.
  test.each(['Virginia, US', 'Michigan, US', 'Arizona, US'])('%s: none in the planting year', async (where) => {
    expect((await planned(where, 'apple, planted March 2026, 3 ft across', { today: '2026-04-01' })).feeds).toHaveLength(0);
  });
});

describe('winters that are wet', () => {
  // OSU-WELL (1.6): none in winter; nitrate goes below the roots before spring.
  test.each([
    ['Oregon, US', APPLE, '25 February', [['03-01', '03-11']]], ['Washington, US', APPLE, '25 February', [['03-01', '03-11']]], ['England, UK', APPLE, '1 March', [['03-01', '03-15']]],
    // RHS prints February for quince and late March after it.
    ['England, UK', 'quince, planted 2016, 8 m across', '1 April', [['03-01', '03-11'], ['03-25', '03-31']]],
  ] as const)('%s, %s, bud break %s', async (where, facts, bud, spans) => {
    expect((await planned(where, facts, { bud })).spans).toEqual(spans);
  });
});

describe('how others differ', () => {
  test('Kansas apple: one sentence with each school and its places', async () => {
    const { why } = await planned('Kansas, US', APPLE);
    for (const part of ['before buds break (Michigan, Iowa, Colorado)', 'at least a month before bloom (Utah)', 'March and April (Virginia)', 'late in winter (North Carolina)', 'late in winter or early in spring (United Kingdom)', 'all in spring, or in spring and just after harvest (California)']) expect(why).toContain(part);
    expect(why).not.toContain('Kansas');
    expect(why.match(/Other publications: [^.]*\.$/)).not.toBeNull();
  });
  test('`why` names the source and the others', async () => {
    const { stdout } = await medlar(['why', 'A', '--today', '2026-01-01'], { 'orchard.yaml': `where: Michigan, US\nbud-break: 12 April\nfirst-frost: 12 October\ntrees:\n  A: ${APPLE}\nstore:\n  - ${SULPHATE}\n` });
    expect(stdout).toMatch(/The window opens 14 days before bud break\. Other publications: .*at bloom \(Kansas\).*\n.*Michigan State University Extension, Spring fertilization of garden fruits/);
  });
  test('cherry: the research on when roots take nitrogen up', async () => { expect((await planned('Ohio, US', 'sweet cherry, planted 2019, 25 ft across, shoots 2 in 2025')).why).toContain('from four to five weeks after bloom (Michigan, for orchards)'); });
  test('weak pages stay in their own country', async () => {
    expect((await planned('Tasmania, Australia', APPLE, { bud: '12 October', frost: '12 April' })).why).toContain('March and September (Australia, a weak page)');
    expect((await planned('Ohio, US', APPLE)).why).not.toContain('weak page');
  });
});

describe('a season that is under way', () => {
  // CLEM again: planned on 1 June, the first two are past; picking is still to come, and nothing is crowded into what is left.
  test('South Carolina on 1 June: the missed dose opens again, picking keeps its own time', async () => {
    const { feeds } = await planned('South Carolina, US', PEACH, { bud: '10 March', frost: '10 November', today: '2026-06-01' });
    expect(feeds[0]).toMatchObject({ from: '2026-06-01', phase: null });
    for (const [i, f] of feeds.entries()) {
      expect(f.until <= '2026-08-15').toBe(true);
      if (i > 0) expect(Date.parse(f.from) - Date.parse(feeds[i - 1]!.until)).toBeGreaterThanOrEqual(24 * 86_400_000);
    }
  });
  // VT21: in mid-April March has passed and April is open.
  test('Virginia on 10 April: from that day on, the second dose well after', async () => {
    const { feeds } = await planned('Virginia, US', APPLE, { today: '2026-04-10' });
    expect(feeds.map((f) => f.from)).toEqual(['2026-04-10', '2026-05-18']);
  });
  test('a printed month late in the year is no late dose: June in Georgia is whole', async () => {
    // UGA Colquitt: established muscadines in March and June.
    const { feeds, tree } = await planned('Georgia, US', 'muscadine, planted 2016, 20 ft across', { bud: '10 March', frost: '20 November' });
    expect(feeds.reduce((sum, f) => sum + f.gExact * 0.21, 0)).toBeCloseTo(tree.need.N, 1);
  });
});
