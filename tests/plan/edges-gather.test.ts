// The grower's texts put together: which test of a zone counts, what is wrong with a sample, strangers in the diary, what only the season shows; and a zone over the years. Each case by what it must mean.
import { describe, expect, test } from 'vitest';
import type { ReportText } from '../../src/gather.ts';
import { cropsOf, gather, leafExample } from '../../src/gather.ts';
import type { Entry } from '../../src/orchard/diary.ts';
import type { Notice } from '../../src/reason/notice.ts';
import { notice } from '../../src/reason/notice.ts';
import { seasonOf } from '../../src/when/season.ts';
import { yearsOf } from '../../src/years.ts';

const TODAY = '2026-03-14';
const yaml = (soil: string, trees = '  A: apple, planted 2015, bank\n', more = ''): string => `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n${soil}trees:\n${trees}${more}`;
const report = (taken: string, p = 20): string => `${taken === '' ? '' : `Sampled: ${taken}\n`}pH 6.4\nPhosphorus ${p} ppm (Mehlich 3)\nPotassium 120 ppm (Mehlich 3)\n`;
const go = (source: string, files: Record<string, string>, diary: readonly Entry[] = [], more: readonly Notice[] = []) => {
  const text = (file: string): ReportText => (files[file] === undefined ? { refused: notice('file-missing', 'error', { file, why: 'absent' }) } : { text: files[file] });
  return gather(source, text, { entries: diary, notices: more }, TODAY);
};
const codes = (g: { notices: readonly Notice[] }): string[] => g.notices.map((n) => n.code);
const entry = (trees: string[], more: Partial<Entry> = {}): Entry => ({ date: '2026-01-01', trees, what: 'fed', bag: null, g: null, m: null, amount: null, note: '', line: 4, ...more });

describe('the tests of a zone', () => {
  const three = '  bank:\n    - a.txt\n    - b.txt\n    - c.txt\n';
  test('the newest counts, the others stand behind it, the oldest first, whatever their order in the file', () => {
    const g = go(yaml(three), { 'a.txt': report('2022-11-05', 30), 'b.txt': report('2025-11-05', 40), 'c.txt': report('2019-11-05', 50) });
    expect(g.zones.map((z) => [z.zone, z.sample.taken, z.earlier.map((e) => e.sample.taken)])).toEqual([['bank', '2025-11-05', ['2019-11-05', '2022-11-05']]]);
    expect(g.zones[0]!.earlier[0]!.rated.some((r) => r.reading.value === 50)).toBe(true);
    expect(codes(g)).not.toContain('test-undated');
    // Over the years: oldest first, and what the diary has between them.
    const fed = [entry(['A'], { date: '2020-04-01', bag: 'Urea, 46-0-0', g: 100 }), entry(['A'], { date: '2023-04-01', what: 'limed', g: 700 }), entry(['A'], { date: '2026-01-02', what: 'sulphured', g: 30 }), entry(['A'], { date: '2026-01-03' })];
    const [years] = yearsOf(g.orchard!, g.zones, fed, seasonOf(g.orchard!, TODAY));
    expect(years!.taken).toEqual(['2019-11-05', '2022-11-05', '2025-11-05']);
    expect(years!.between.map((b) => [b.from, b.until, Math.round(b.N), b.lime, b.sulphur, b.unknown])).toEqual([['2019-11-05', '2022-11-05', 46, 0, 0, 0], ['2022-11-05', '2025-11-05', 0, 700, 0, 0], ['2025-11-05', TODAY, 0, 0, 30, 1]]);
    expect(years!.series.find((s) => s.item === 'phosphorus')!.points.map((p) => p.value)).toEqual([50, 30, 40]);
  });
  test('each plant of the zone counts; tubs and other zones do not; an entry unknown is one however many plants', () => {
    const g = go(yaml('  bank: a.txt\n  hill: b.txt\n', '  Row: 3 apples, planted 2015, bank\n  T: lemon, planted 2020, in a 40 l tub\n  H: apple, planted 2015, hill\n'), { 'a.txt': report('2025-01-05'), 'b.txt': report('2025-01-05') });
    const given = [entry(['Row'], { bag: 'Urea, 46-0-0', g: 100 }), entry(['Row']), entry(['T'], { bag: 'Urea, 46-0-0', g: 100 })];
    const years = yearsOf(g.orchard!, g.zones, given, seasonOf(g.orchard!, TODAY));
    expect(years.map((z) => [z.zone, z.between.map((b) => [Math.round(b.N), b.P2O5, b.K2O, b.unknown])])).toEqual([['bank', [[138, 0, 0, 1]]], ['hill', [[0, 0, 0, 0]]]]);
  });
  test('several want dates; one does not', () => {
    expect(codes(go(yaml('  bank: a.txt\n'), { 'a.txt': report('') }))).not.toContain('test-undated');
    const g = go(yaml('  bank:\n    - a.txt\n    - b.txt\n'), { 'a.txt': report('2025-11-05'), 'b.txt': report('') });
    expect(g.notices.filter((n) => n.code === 'test-undated').map((n) => [n.severity, n.facts])).toEqual([['error', { file: 'b.txt', zone: 'bank' }]]);
    expect(g.zones[0]!.sample.taken).toBe('2025-11-05');
  });
  test('of one day, or of a day to come', () => {
    const g = go(yaml('  bank:\n    - a.txt\n    - b.txt\n'), { 'a.txt': report('2025-11-05'), 'b.txt': report('2025-11-05') });
    expect(g.notices.filter((n) => n.code === 'test-same-day').map((n) => n.facts)).toEqual([{ zone: 'bank', day: '2025-11-05' }]);
    const future = (day: string): string[] => codes(go(yaml('  bank: a.txt\n'), { 'a.txt': report(day) })).filter((c) => c === 'test-future');
    expect([future('2026-03-15'), future(TODAY), future('2026-03-13')]).toEqual([['test-future'], [], []]);
  });
  test('a file that is not there is told once, though two zones name it, and the other zone goes on', () => {
    const g = go(yaml('  bank: a.txt\n  hill: a.txt\n  field: b.txt\n'), { 'b.txt': report('2025-11-05') });
    expect([codes(g).filter((c) => c === 'file-missing').length, g.zones.map((z) => z.zone), [...g.reports.keys()]]).toEqual([1, ['field'], ['b.txt']]);
  });
  test('a mistake in the orchard file ends it there', () => {
    const g = go('where: Ohio, US\ntrees:\n  A: aple\n', { 'a.txt': report('2025-11-05') }, [entry(['A'])]);
    expect([g.orchard, g.zones, g.reports.size, g.diary]).toEqual([null, [], 0, []]);
    expect(g.notices.length).toBeGreaterThan(0);
  });
  test('the diary\'s own notices are passed on', () => { expect(codes(go(yaml('  bank: a.txt\n'), { 'a.txt': report('2025-11-05') }, [], [notice('diary-tree', 'warning', { read: 'Q', guess: '' })]))).toContain('diary-tree'); });
});

describe('which sample of a report', () => {
  const TWO = 'Sample: North\npH 6.4\nPhosphorus 20 ppm (Mehlich 3)\n\nSample: South\npH 5.9\nPhosphorus 30 ppm (Mehlich 3)\n';
  const of = (said: string): [unknown, unknown[]] => { const g = go(yaml(`  bank: a.txt${said}\n`), { 'a.txt': TWO }); return [g.zones[0]?.sample.name ?? null, g.notices.filter((n) => n.code.startsWith('sample-')).map((n) => [n.code, n.facts])]; };
  test('by its name, large or small, or by its number', () => {
    expect([of(', South')[0], of(', south')[0], of(', sample 2')[0], of(', sample 1')[0]]).toEqual(['South', 'South', 'South', 'North']);
    expect(of(', South')[1]).toEqual([]);
  });
  test('unnamed the first is taken and that is told; a name unknown with the nearest', () => {
    expect(of('')).toEqual(['North', [['sample-unnamed', { file: 'a.txt', known: 'North, South' }]]]);
    expect(of(', Sout')).toEqual([null, [['sample-unknown', { read: 'Sout', file: 'a.txt', guess: 'South', known: 'North, South' }]]]);
    expect([of(', sample 3')[0], of(', sample 2 b')[0], of(', a sample 2')[0]]).toEqual([null, null, null]);
  });
});

describe('what is said of a report', () => {
  const ODD = 'Sampled: 2019-11-05\npH 6.4\nPhosphorus 20 ppm (Mehlich 3)\nGloop 12 zz\n';
  const all = (files: Record<string, string>, soil = '  bank:\n    - a.txt\n    - b.txt\n') => go(yaml(soil), files);
  test('of the newest everything; what is unclear in an earlier one changes nothing any more', () => {
    const [old, fresh] = [all({ 'a.txt': report('2025-11-05'), 'b.txt': ODD }), all({ 'a.txt': report('2016-11-05'), 'b.txt': ODD })];
    const own = (g: ReturnType<typeof all>): number => g.notices.filter((n) => n.place?.file === 'b.txt' && n.severity !== 'error').length + g.questions.filter((q) => q.place?.file === 'b.txt').length;
    expect([own(old), own(fresh) > 0]).toEqual([0, true]);
  });
  test('a notice that came with its text is passed on, of an earlier one where it is an error', () => {
    const passed = (severity: 'error' | 'note', day: string): number => gather(yaml('  bank:\n    - a.txt\n    - b.txt\n'), (file): ReportText => ({ text: file === 'a.txt' ? report('2020-11-05') : report(day), ...(file === 'b.txt' ? { notices: [notice('report-too-large', severity, {})] } : {}) }), { entries: [], notices: [] }, TODAY).notices.filter((n) => n.code === 'report-too-large').length;
    expect([passed('note', '2025-11-05'), passed('note', '2015-11-05'), passed('error', '2015-11-05')]).toEqual([1, 0, 1]);
  });
  test('what is rare in a value is told once, though two zones share the sample', () => {
    const odd = 'Sampled: 2025-11-05\npH 9.6\nPhosphorus 20 ppm (Mehlich 3)\n';
    expect(codes(all({ 'a.txt': odd }, '  bank: a.txt\n  hill: a.txt\n')).filter((c) => c === 'ph-odd')).toHaveLength(1);
  });
  test('a leaf is no soil', () => {
    const leaf = 'Leaf analysis\nSample: L\nNitrogen 1.9 %\nPhosphorus 0.2 %\nPotassium 1.2 %\n';
    const g = all({ 'a.txt': leaf }, '  bank: a.txt\n');
    expect([g.zones, g.notices.filter((n) => n.code === 'leaf-as-soil').map((n) => [n.severity, n.facts, n.place?.line])]).toEqual([[], [['error', { file: 'a.txt', example: 'N 1.9 %' }, 5]]]);
  });
});

test('lines of the diary whose tree stands nowhere', () => {
  const g = go(yaml('  bank: a.txt\n', '  Gate: apple, planted 2015, bank\n'), { 'a.txt': report('2025-11-05') }, [entry(['gate']), entry(['BANK']), entry(['all']), entry(['All trees']), entry(['everything']), entry(['Gaet', 'Gate'], { line: 9 }), entry(['allium']), entry(['not all'])]);
  expect(g.notices.filter((n) => n.code === 'diary-tree').map((n) => [n.severity, n.facts, n.place?.file, n.place?.line])).toEqual([['warning', { read: 'Gaet', guess: 'Gate' }, 'diary.csv', 9], ['warning', { read: 'allium', guess: '' }, 'diary.csv', 4], ['warning', { read: 'not all', guess: '' }, 'diary.csv', 4]]);
});

test('what only the season shows', () => {
  const of = (facts: string): string[] => codes(go(yaml('  bank: a.txt\n', `  A: apple, ${facts}, bank\n`), { 'a.txt': report('2025-11-05') })).filter((c) => /^planted-|impossible/.test(c));
  // The season is 2026: planted in it is well, after it not; three hundred years are, 301 are not.
  expect([of('planted 2026'), of('planted 2027'), of('planted 1726'), of('planted 1725')]).toEqual([[], ['planted-future'], [], ['planted-long-ago']]);
  const said = (facts: string): unknown[] => go(yaml('  bank: a.txt\n', `  A: apple, ${facts}, bank\n`), { 'a.txt': report('2025-11-05') }).notices.filter((n) => /^planted-|impossible/.test(n.code)).map((n) => [n.severity, n.facts, n.place?.line]);
  expect([said('planted 2027'), said('planted 1725'), said('planted 2015, 41 m across')]).toEqual([[['error', { tree: 'A', read: 2027, season: 2026 }, 7]], [['error', { tree: 'A', read: 1725 }, 7]], [['error', { tree: 'A' }, 7]]]);
  // A hundred metres of spacing or of bed are the most.
  expect([of('planted 2015, spacing 100 m x 3 m'), of('planted 2015, spacing 101 m x 3 m'), of('planted 2015, spacing 3 m x 101 m'), of('planting October 2026, bed 101 m x 2 m')]).toEqual([[], ['ground-impossible'], ['ground-impossible'], ['ground-impossible']]);
  // Forty metres of crown are the widest.
  expect([of('planted 2015, 40 m across'), of('planted 2015, 41 m across')]).toEqual([[], ['crown-impossible']]);
});

test('a crop without figures goes by its word; the leaf\'s example by what its sample holds', () => {
  expect(cropsOf([{ crop: 'apple', word: 'Apfel' }, { crop: 'other', word: 'banana' }] as never)).toEqual(['apple', 'banana']);
  const leaf = (item: string, value: number | null, unit: string): string => leafExample({ readings: [{ item: 'boron', value: 30, unit: '%' }, { item, value, unit }] } as never);
  expect([leaf('nitrogen', 1.9, '%'), leaf('nitrogen', null, '%'), leaf('nitrogen', 19000, 'ppm'), leaf('potassium', 1.2, '%')]).toEqual(['N 1.9 %', 'N 2.1 %', 'N 2.1 %', 'N 2.1 %']);
});
