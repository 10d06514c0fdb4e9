// A whole report: what its headings, titles, rules, advice and blanks are for the lines beside them (practice).
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import { LARGEST_REPORT, LONGEST_LINE } from '../../src/soil/text.ts';

/** Each sample: its name, its readings, the lines unread. */
const read = (text: string): unknown => readReport(text, 'r.txt').samples.map((s) => [s.name, s.readings.map((r) => [r.item, r.value, r.unit, r.method].filter((x) => x !== null).join(' ')), s.unread.map((u) => u.line)]);
const codes = (text: string): string[] => readReport(text, 'r.txt').notices.map((n) => n.code);
const PH = 'ph 6.4 pH';
const P = 'phosphorus 42 ppm';
const one = (readings: readonly string[], unread: readonly number[] = []): unknown => [['sample 1', readings, unread]];

describe('advice is no reading', () => {
  test.each<[string, string, unknown]>([
    ['a heading of it holds for the lines below', 'Recommendations:\nN 40 lb/acre\nP2O5 60 lb/acre\n', one([], [1, 2, 3])], ['without its colon', 'pH 6.4\nRecommendations\nN 40\n', one([PH], [2, 3])],
    ['a long heading with a point within it', 'Recommended amounts approx. for all of the old apple trees\nN 40\n', one([], [1, 2])], ['a lime need is kept', 'pH 6.4\nRecommendations\nLime 2 tons/acre\nN 40\n', one([PH, 'lime-requirement 2 ton/acre'], [2, 4])],
    ['a content ends it', 'Recommendations:\nN 40 lb/acre\nPhosphorus 42 ppm\nPotassium 180 lb/acre\n', one([P, 'potassium 180 lb/acre'], [1, 2])],
    ['a word of it before the name', 'pH 6.4\nApply phosphorus 60 lb/acre\n', one([PH], [2])], ['behind the name the value stays', 'pH 6.4\nPhosphorus 42 ppm, apply none\n', one([PH, P])],
    ['the next sample is free of it', 'sample: A\nRecommendations:\nN 40 lb/acre\nsample: B\nPotassium 180 lb/acre\n', [['A', [], [2, 3]], ['B', ['potassium 180 lb/acre'], []]]],
  ])('%s', (_, text, expected) => { expect(read(text)).toEqual(expected); });
});

describe('titles', () => {
  const two = (a: string, b: string): unknown => [[a, [PH], []], [b, ['ph 7 pH'], []]];
  test.each<[string, string, unknown]>([
    ['with a colon', 'Front bed:\npH 6.4\nBack bed:\npH 7\n', two('Front bed', 'Back bed')], ['bare', 'Front bed\npH 6.4\n\nBack bed\npH 7\n', two('Front bed', 'Back bed')], ['of Markdown', '## Front\npH 6.4\n## Back\npH 7\n', two('Front', 'Back')], ['with a number', 'Bed #1\npH 6.4\nBed #2\npH 7\n', two('Bed #1', 'Bed #2')], ['in bold', '**Front**\npH 6.4\n**Back**\npH 7\n', two('Front', 'Back')],
    ['underlined', 'The long bed by the old front wall of all\n-----\npH 6.4\nThe long bed by the old back wall of all\n-----\npH 7\n', two('The long bed by the old front wall of all', 'The long bed by the old back wall of all')], ['with their accents', 'Jardín\npH 6.4\n\nÄcker\npH 7\n', two('Jardín', 'Äcker')],
    ['with a colon within', 'North: bed:\npH 6.4\nSouth: bed:\npH 7\n', two('North: bed', 'South: bed')], ['however wide its blanks', 'The     front     bed\npH 6.4\n\nThe     back     bed\npH 7\n', two('The     front     bed', 'The     back     bed')], ['words behind a colon are none', 'Client: J. Smith, 12 Mill Lane, Oldtown\npH 6.4\n\nBack bed\npH 7\n', [['sample 1', [PH], [1]], ['Back bed', ['ph 7 pH'], []]]], ['a sentence is none', 'This is the front bed of all.\npH 6.4\nThis is the back bed of all.\npH 7\n', one([PH], [1, 3])],
    ['above a lone sample it is a line like any other', 'Results\n=======\npH 6.4\n', one([PH], [1])], ['so is a customer\'s number', 'Customer 12345\npH 6.4\n', one([PH], [1])],
  ])('%s', (_, text, expected) => { expect(read(text)).toEqual(expected); });
});

describe('headings of method and unit', () => {
  test.each<[string, string, unknown]>([
    ['a method, until the next', 'Mehlich 3\nPhosphorus 42 ppm\nOlsen\nPotassium 180 ppm\n', one([`${P} mehlich-3`, 'potassium 180 ppm olsen'])], ['named as such', 'Extractant: Morgan\nPhosphorus 42 ppm\n', one([`${P} morgan`])], ['a unit', 'ppm\nPhosphorus 42\n', one([P])],
    ['a unit is for contents alone', 'Results in mg/kg\nPhosphorus 42\nCEC 12\n', one(['phosphorus 42 mg/kg', 'cec 12'])], ['the line\'s own leads', 'Nutrients (lb/acre)\nPhosphorus 42\nBoron 1 ppm\n', one(['phosphorus 42 lb/acre', 'boron 1 ppm'])],
    ['pH has no extract of nutrients, nor has nitrogen', 'Mehlich 3\npH 6.4\nNitrate-N 10 ppm\n', one([PH, 'nitrate-n 10 ppm'])], ['a sentence is none', 'We used Mehlich 3 on Monday\nPhosphorus 42 ppm\n', one([P], [1])],
    ['pH in a salt, told beside it or as an answer', 'pH 6.4 (CaCl2)\n', one(['ph-salt 6.4 pH cacl2'])], ['as an answer', 'pH 6.4\nph method: CaCl2\n', one(['ph-salt 6.4 pH cacl2'])],
    // Pennsylvania's lab extracts by Mehlich 3 (tables/labs.ts, read).
    ['a lab\'s own methods', 'lab: Penn State\nPhosphorus 42 ppm\nPotassium 180 ppm Olsen\n', one([`${P} mehlich-3`, 'potassium 180 ppm olsen'])], ['of a lab nobody knows', 'lab: Nowhere\nPhosphorus 42 ppm\n', one([P])],
  ])('%s', (_, text, expected) => { expect(read(text)).toEqual(expected); });
});

describe('lines broken by copying', () => {
  test.each<[string, string, unknown]>([
    ['a name over two lines', 'Organic\nMatter 4 %\n', one(['organic-matter 4 %'])], ['with its rest', 'Cation Exchange\nCapacity 12 meq/100g\n', one(['cec 12 meq/100g'])], ['a unit below', 'Phosphorus 42\nppm\n', one([P])], ['each name over its value', 'Phosphorus\n42 ppm\nPotassium\n180 ppm\n', one([P, 'potassium 180 ppm'])],
    ['a unit that does not fit is none of it', 'Phosphorus 42\ndS/m\n', one(['phosphorus 42'])], ['two values below a name are not joined', 'Phosphorus\n42 ppm\n38 ppm\n', one([], [1, 2, 3])], ['a heading over the name it does not end', 'Nitrogen\nPhosphorus 42 ppm\n', one([P], [1])],
  ])('%s', (_, text, expected) => { expect(read(text)).toEqual(expected); });
  test('the place of what was put together is its own line', () => {
    expect(readReport('Cation Exchange\nCapacity 12 meq/100g\n', 'r.txt').samples[0]!.readings[0]).toMatchObject({ asPrinted: 'Cation Exchange Capacity 12 meq/100g', place: { line: 1 } });
  });
});

describe('what is left aside, and what is told', () => {
  test('empty lines of a form, comments and rules', () => {
    expect(read('# my notes\ntaken:\npH: 6.4\nPhosphorus:\n-----\nPotassium:\n')).toEqual(one([PH]));
    expect(read('Dear grower, thank you.\npH 6.4\n')).toEqual(one([PH], [1]));
  });
  test('a form that nobody filled in, and a text of other things', () => {
    const [form] = readReport('pH:\nPhosphorus:\n', 'r.txt').notices;
    expect(form).toMatchObject({ code: 'form-blank', severity: 'warning', place: { line: 1 } });
    expect([codes('Dear grower\nwe thank you\n'), codes('pH:\nDear grower, we thank you.\n'), codes(''), codes(' \n\t\n')]).toEqual([['nothing-read'], ['nothing-read'], ['report-empty'], ['report-empty']]);
  });
  test('a line too long is named and the others are read', () => {
    const report = readReport(`pH 6.4\n${'x'.repeat(LONGEST_LINE + 1)}\nPhosphorus 42 ppm\n`, 'r.txt');
    expect([report.notices.map((n) => [n.code, n.facts.length, n.place?.line]), report.samples[0]!.readings.length]).toEqual([[['line-too-long', LONGEST_LINE + 1, 2]], 2]);
    expect(codes(`pH 6.4\n${'x'.repeat(LONGEST_LINE)}\n`)).toEqual([]);
  });
  test('a report too large is refused', () => {
    expect(codes('pH 6.4\n'.repeat(LARGEST_REPORT / 7 + 1))).toEqual(['report-too-large']);
    expect(codes('x'.repeat(LARGEST_REPORT + 1))).toEqual(['line-too-long']);
  });
});

// Water, compost, feed and the rest print the same names; a title tells, any sign of a soil wins.
describe('what the report is of', () => {
  test.each([['Water analysis report\nNitrate-N 4 ppm\npH 7.1\n', 'report-water'], ['Compost test report\nMoisture 40 %\nC:N 18\n', 'report-compost'], ['Forage analysis\nCrude protein 12 %\nADF 30 %\n', 'report-feed'], ['Guaranteed analysis\nTotal nitrogen 10 %\nAvailable phosphate 10 %\n', 'report-fertilizer'], ['Manure analysis\nTotal N 12 lb/ton\nP2O5 8 lb/ton\n', 'report-manure']])('%s', (text, code) => { expect(codes(text)).toEqual([code]); });
  test.each(['Water analysis report\nCEC 12 meq/100g\npH 7.1\n', 'Compost test report\nSoil pH 6.4\nPhosphorus 42 ppm Mehlich 3\n'])('%s is a soil', (text) => { expect(codes(text)).toEqual([]); });
  test('shares as leaves hold them, of four elements, are a leaf', () => {
    const kind = (text: string): string | undefined => readReport(text, 'r.txt').samples[0]!.kind;
    expect([kind('Nitrogen 2.2 %\nPhosphorus 0.2 %\nPotassium 1.5 %\nCalcium 1.4 %\n'), kind('Nitrogen 2.2 %\nPhosphorus 0.2 %\nPotassium 1.5 %\n'), kind('Nitrogen 2.2 %\nPhosphorus 9 %\nPotassium 1.5 %\nCalcium 1.4 %\n'), kind('pH 6.4\nNitrogen 2.2 %\nPhosphorus 0.2 %\nPotassium 1.5 %\nCalcium 1.4 %\n')]).toEqual(['leaf', undefined, undefined, undefined]);
    expect(kind('Nitrogen 22 g/kg\nPhosphorus 2 g/kg\nPotassium 15 g/kg\nCalcium 14 g/kg\n')).toBe('leaf');
  });
});

describe('what is not of this soil', () => {
  test.each<[string, string, unknown]>([
    ['below a heading of it', 'Nutrients removed by 10 bushels\nP 5 ppm\nK 20 ppm\nSoil results\nPhosphorus 42 ppm\n', one([P], [1, 2, 3, 4])], ['values two lines below', 'Crop removal\nfor a good year\nP 5 ppm\n', one([], [1, 2, 3])], ['a span', 'Crop removal\nP 5 to 7 ppm\n', one([], [1, 2])],
    ['the next sample is free of it', 'Crop removal\nP 5 ppm\nsample: B\nPhosphorus 42 ppm\n', [['B', [P], [1, 2]]]], ['a heading of it without values', 'Crop removal\nThank you for your order.\n\n\nPhosphorus 42 ppm\n', one([P], [1, 2])], ['a sentence about it', 'Crop removal is told on page 2.\nPhosphorus 42 ppm\n', one([P], [1])], ['a heading of the soil\'s own', 'Crop removal and soil contents\nPhosphorus 42 ppm\n', one([P], [1])],
    ['in one line', 'Your compost supplies: P 20 ppm, K 60 ppm\nPhosphorus 42 ppm\n', one([P], [1])], ['behind the value', 'Phosphorus 42 ppm, your compost supplies more\n', one([P])],
  ])('%s', (_, text, expected) => { expect(read(text)).toEqual(expected); });
});

describe('units of a quick test', () => {
  // New Zealand's MAF units have no content; the lab's own word or range rates them.
  test('are told once, where nothing rates them', () => {
    const { notices } = readReport('pH 6.1\nPotassium 7 MAF\nCalcium 9 MAF\n', 'r.txt');
    expect(notices).toMatchObject([{ code: 'quick-test', severity: 'note', facts: { item: 'potassium' }, place: { line: 2 } }]);
    expect([codes('Potassium 7 MAF medium\n'), codes('Potassium 7 MAF (5-8)\n'), codes('pH 6.1\n')]).toEqual([[], [], []]);
  });
});

test('commas of a row are none of its numbers', () => {
  // Twelve and fifty, or twelve and a half: nobody can tell.
  expect([codes('pH 6.4\nZinc,12,50,ppm\n'), codes('pH 6.4\nCalcium,1,234,ppm\n'), codes('pH 6.4\nCalcium 1,234 ppm\n')]).toEqual([['two-values'], ['two-values'], []]);
});

describe('day and depth', () => {
  const when = (text: string): unknown => readReport(text, 'r.txt').samples.map((s) => [s.taken, s.depth, s.unread.map((u) => u.line)]);
  test.each<[string, unknown]>([
    ['Probenahme: 3.11.2025\nDatum: 7.11.2025\nP2O5 12 mg/100 g\n', [['2025-11-03', undefined, []]]], ['Datum: 7.11.2025\nProbenahme: 3.11.2025\nP2O5 12 mg/100 g\n', [['2025-11-03', undefined, []]]], ['Datum: 7.11.2025\nP2O5 12 mg/100 g\n', [['2025-11-07', undefined, []]]], ['Probenahme: 1.11.2025\nDatum der Probenahme: 3.11.2025\nP2O5 12 mg/100 g\n', [['2025-11-03', undefined, []]]],
    ['depth: 6 in\npH 6.4\n', [[undefined, '6 in', []]]], ['Soil was sampled on 3 Nov 2025 to 6 inches\npH 6.4\n', [['2025-11-03', '6 inches', []]]], ['The soil, depth (cm): 15, was dry\npH 6.4\n', [[undefined, '15 cm', []]]], ['taken: 3 Nov 2025\ndepth: 6 in\nSoil was sampled on 5 Nov 2025 to 8 inches\npH 6.4\n', [['2025-11-03', '6 in', []]]],
    ['pH 6.4 (0-15 cm deep)\n', [[undefined, '0-15 cm', []]]],
  ])('%j', (text, expected) => { expect(when(text)).toEqual(expected); });
  test('a day that reads two ways', () => {
    const { notices, samples } = readReport('pH 6.4\nSoil was sampled on 5/11/2025\n', 'r.txt');
    expect([samples[0]!.taken, notices]).toMatchObject([undefined, [{ code: 'taken-two-ways', facts: { read: '5/11/2025' }, place: { line: 2, column: 21, length: 9 } }]]);
    expect(codes('taken: 5/11/2025\npH 6.4\n')).toEqual(['taken-two-ways']);
    expect(readReport('Analyse de sol\nPhosphore Olsen 35 mg/kg\nCalcium échangeable 900 mg/kg\nPrélevé le 5/11/2025\n', 'r.txt').samples[0]!.taken).toBe('2025-11-05');
  });
});

describe('labs, answers and questions', () => {
  test.each<[string, string, unknown]>([
    ['a laboratory below', 'Phosphorus 42 ppm\n  LABORATORY = Penn State \n', one([`${P} mehlich-3`])], ['another word', 'Phosphorus 42 ppm\nCollab: Penn State\n', one([P], [2])], ['an answer after the lab', 'lab: Penn State\nPhosphorus 42 ppm\nphosphorus method: Olsen\n', one([`${P} olsen`])], ['both answers', 'Phosphorus 42\nphosphorus unit: ppm\nphosphorus method: Olsen\n', one([`${P} olsen`])],
    ['a unit nobody knows', 'Phosphorus 42\nphosphorus unit: unknown\n', one(['phosphorus 42'])], ['the paper\'s own unit stands', 'Phosphorus 42 ppm\nphosphorus unit: lb/acre\n', one([P])], ['pH in potassium chloride', 'pH 6.4\npH method: KCl\n', one(['ph-salt 6.4 pH kcl'])], ['in water', 'pH 6.4\npH method: water\n', one(['ph 6.4 pH water'])], ['another item in a salt', 'Magnesium 9 mg/100 g\nmagnesium method: CaCl2\n', one(['magnesium 9 mg/100g cacl2'])],
  ])('%s', (_, text, expected) => { expect(read(text)).toEqual(expected); });
  test('a question names its sample where there are several', () => {
    const asks = (text: string): unknown => readReport(text, 'r.txt').questions.map((q) => [q.code, q.about, q.facts?.['sample'] ?? '']);
    expect([asks('Calcium 900\n'), asks('sample: A\nCalcium 900\nsample: B\nCalcium 800\n')]).toEqual([[['unit-missing', 'calcium', '']], [['unit-missing', 'calcium', 'A'], ['unit-missing', 'calcium', 'B']]]);
  });
});

describe('refused', () => {
  const first = (text: string): unknown => readReport(text, 'r.txt').notices[0];
  test('with what it is', () => {
    expect(first(' \n')).toMatchObject({ code: 'report-empty', severity: 'error', facts: { file: 'r.txt' } });
    expect(first('%PDF-1.4\n')).toMatchObject({ code: 'not-text', severity: 'error', facts: { file: 'r.txt', why: 'pdf' } });
    expect(first('pH 6.4\n'.repeat(LARGEST_REPORT / 5))).toMatchObject({ code: 'report-too-large', severity: 'error', facts: { file: 'r.txt', size: LARGEST_REPORT / 5 * 7, most: LARGEST_REPORT } });
    expect(first(`${'x'.repeat(LARGEST_REPORT)}${'\n'.repeat(8)}`)).toMatchObject({ code: 'line-too-long', severity: 'error', facts: { length: LARGEST_REPORT + 8, most: LONGEST_LINE }, place: { line: 1, column: 1, length: 1, source: 'x'.repeat(60) } });
    expect(codes(`${'x'.repeat(LARGEST_REPORT)}${'\n'.repeat(9)}`)).toEqual(['report-too-large']);
  });
  test('a form that nobody filled in', () => {
    expect(readReport('# my notes\nsample:\ntaken:\n Soil pH:\n', 'r.txt').notices).toMatchObject([{ code: 'form-blank', facts: { file: 'r.txt' }, place: { line: 4, column: 1, length: 9 } }]);
    expect([codes('taken:\ndepth:\n'), codes('pH:   \nPhosphorus:   \n'), codes('Dear Sir:\npH:\n'), codes('pH: not tested\n')]).toEqual([['nothing-read'], ['form-blank'], ['form-blank'], ['nothing-read']]);
    expect(read('pH 6.4\nDear Sir:\nDepth:\nSample A:\n#1 of 2\nPhosphorus:\n')).toEqual(one([PH], [2, 5]));
  });
});

describe('more titles', () => {
  const names = (a: string, b: string): unknown => readReport(`${a}\npH 6.4\n\n${b}\npH 7\n`, 'r.txt').samples.map((s) => s.name);
  test.each<[string, string]>([['Bed # 12:', 'Bed #3:'], ['The bed by the old barn of all #1', 'The bed by the old barn of all #2'], ['The bed by the old front barn:', 'The bed by the old back barn:'], ['### Front', '# Back'], ['One two three four five', 'Five four three two one']])('%s', (a, b) => { expect(names(a, b)).toEqual([a, b].map((t) => t.replace(/^#+ |:$/g, ''))); });
  test.each<[string, string]>([['One two three four five six', 'Six five four three two one'], ['Front bed.', 'Back bed.'], ['Front, ', 'Back, '], ['Really?', 'Indeed!'], [`${'Long '.repeat(12)}title:`, `${'Tall '.repeat(12)}title:`]])('no title: %s', (a, b) => { expect(names(a, b)).not.toContain(b); });
});

describe('smaller things', () => {
  const told = (text: string): unknown => readReport(`${text}\n`, 'r.txt').notices.map((n) => [n.code, n.severity, n.facts, n.place?.line, n.place?.column]);
  test.each<[string, string, unknown]>([
    // Advice: what it takes with it, what ends it, what only speaks of it.
    ['lime without its unit', 'pH 6.4\nRecommendations:\nLime 46\n', one([PH], [2, 3])], ['humus is none of it', 'Recommendations:\nOrganic matter 4\n', one(['organic-matter 4'], [1])], ['a day between', 'pH 6.4\nRecommendations:\ntaken: 3 Nov 2025\nN 40 lb/acre\n', one([PH], [2, 4])], ['a sentence is no heading of it', 'We recommend a test each year.\nPotassium 180 lb/acre\n', one(['potassium 180 lb/acre'], [1])], ['a long line of it is', 'pH 6.4\nThese are the amounts that we recommend for all your old trees\nPotassium 180 lb/acre\n', one([PH, 'potassium 180 lb/acre'], [2])], ['a line of it in some words', 'pH 6.4\nWhat we recommend for your old trees\nPotassium 180 lb/acre\n', one([PH], [2, 3])], ['a line of twelve words is a sentence', 'pH 6.4\nAs we recommend it to a man of a few old trees\nPotassium 180 lb/acre\n', one([PH, 'potassium 180 lb/acre'], [2])],
    // Headings of shares.
    ['pH ends no shares', 'Base saturation\nK 4.5\npH 6.4\nMg 12\n', one(['saturation-k 4.5 %', PH, 'saturation-mg 12 %'])], ['a content among others does', 'Base saturation\nK 4.5\nPhosphorus 42 ppm, pH 6.4\nMg 12\n', one(['saturation-k 4.5 %', P, PH, 'magnesium 12'])], ['none without them', 'pH 6.4\nMg 12\n', one([PH, 'magnesium 12'])], ...['Base saturation (calculated)', 'Computed base saturation, percent', 'Cation saturation of K, Ca and Mg', 'Exchangeable cations: % saturation', 'Basensättigung'].map((head): [string, string, unknown] => [head, `${head}\nK 4.5\n`, one(['saturation-k 4.5 %'])]), ['a sentence about shares is no heading', 'Please ask us for base saturation next time\nPotassium 180\n', one(['potassium 180'], [1])],
    ['what follows a block of names and values', 'Phosphorus\nPotassium\nMagnesium\n42 ppm\n180 ppm\n90 ppm\nZinc 2.1 ppm\nBoron 0.5 ppm\n', one([P, 'potassium 180 ppm', 'magnesium 90 ppm', 'zinc 2.1 ppm', 'boron 0.5 ppm'])],
    ['a line of blanks is a gap', 'pH 6.4\nPhosphorus 42 ppm\n   \npH 7\nPhosphorus 12 ppm\n', [['sample 1', [PH, P], []], ['sample 2', ['ph 7 pH', 'phosphorus 12 ppm'], []]]],
    // Of something else.
    ['an indented heading of it', '    Crop removal\nP 5 ppm\n', one([], [1, 2])], ['a long line about it', 'The crop removal of a good year is the sum of all that your trees have put in wood and fruit\nP 5 ppm\n', one(['phosphorus 5 ppm'], [1])], ['a line of it and of the soil', 'Your soil with its compost contains P 20 ppm\n', one(['phosphorus 20 ppm'])], ['its own values on the heading\'s line', 'Crop removal: P 5 ppm\nPhosphorus 42 ppm\n', one([P], [1])],
    // Lines of a form and remarks.
    ['a number within a remark', 'pH 6.4\nThe pit # 2 is dry.\nNote: pH:\n', one([PH], [2, 3])], ['a lab close to its colon', 'lab:Penn State\nPhosphorus 42 ppm\n', one([`${P} mehlich-3`])], ['a long remark with its day', `pH 6.4\nThe soil was sampled on 3 Nov 2025, and ${'we thank you '.repeat(8)}for it.\n`, one([PH], [2])],
  ])('%s', (_, text, expected) => { expect(read(text)).toEqual(expected); });
  test('amounts below their ground are no misread contents', () => {
    expect([codes('Soil pH 5.2\nRecommendation, per 1,000 sq ft:\nN 2 lb P2O5 1 lb K2O 3 lb\n'), codes('Soil pH 5.2\nRecommended: 5 g N/m2, 8 g K2O/m2\n'), codes('Phosphorus 42 lb\n')]).toEqual([[], [], ['line-unclear', 'nothing-read']]);
  });
  test('a column without a known head', () => { expect(told('Test | Result | Zork\npH | 6.4 | 12\nP ppm | 42 | 3')).toEqual([['column-unknown', 'warning', { read: 'Zork' }, 1, 17]]); });
  test('nothing read, and one sample of two', () => {
    expect(told('Dear grower, we thank you.')).toEqual([['nothing-read', 'error', { file: 'r.txt' }, undefined, undefined]]);
    expect([codes('sample: A\nsample: B\npH 6.4\n'), codes('Note: call us\npH:\n'), told('# soil pH: by hand\nPhosphorus:')]).toEqual([[], ['nothing-read'], [['form-blank', 'warning', { file: 'r.txt' }, 2, 1]]]);
  });
  test('a day that only another tongue settles', () => {
    expect([codes('taken: 5/11/2025\nP 42 ppm\n'), codes('taken: 5/11/2025\nOrganic matter 4 %\nSoil pH 6.4\nNitrogen 3 ppm high\n')]).toEqual([['taken-two-ways'], ['taken-two-ways']]);
    expect(readReport('Bodenuntersuchung\nPhosphor 12 mg/100 g hoch\nEntnommen 5/11/2025\n', 'r.txt').samples[0]!.taken).toBe('2025-11-05');
  });
  test.each(['Datum 7.11.2025', 'Datum:7.11.2025', '  Datum = 7.11.2025', 'Datum | 7.11.2025'])('%s may be that of the letter', (line) => { expect(readReport(`Probenahme: 3.11.2025\n${line}\nP2O5 12 mg/100 g\n`, 'r.txt').samples[0]!.taken).toBe('2025-11-03'); });
  test('signs and classes rate one value, and an index alone', () => {
    const rated = (text: string): unknown => readReport(text, 'r.txt').samples[0]!.readings.map((r) => r.lab.rating);
    expect(rated('Key: * low ** adequate *** high\nPhosphorus 42 ppm, potassium 180 ppm ***\n')).toEqual([null, null]);
    expect(rated('Index: 0-25 low, 26-50 medium, 51-100 high, over 100 very high\nPotassium 20 ppm\nPhosphorus index 20\nZinc index low\n')).toEqual([null, 'low', 'low']);
  });
  test('an unread line as it stands', () => { expect(readReport('  **My results**  \npH 6.4\n', 'r.txt').samples[0]!.unread).toEqual([{ line: 1, text: '**My results**' }]); });
});

test('names first, their values after: each shown with its name', () => {
  const { samples } = readReport('pH CaCl2\nEquiv. water pH\nCa ppm\n4.87\n5.47\n591\n', 'a.txt');
  expect(samples[0]!.readings.map((r) => [r.asPrinted, r.place.line])).toEqual([['pH CaCl2 4.87', 4], ['Equiv. water pH 5.47', 5], ['Ca ppm 591', 6]]);
});

// A range runs from the lower to the higher number; one that does not is a slip of the pen or no range.
describe('a range that runs downwards', () => {
  const read = (text: string) => readReport(text, 'r.txt');
  test.each(['Potassium 41 ppm (30-5)', 'Potassium 41 ppm optimum range 50-30 ppm', 'Test | Result | Unit | Range\nPotassium | 41 | ppm | 50-30'])('%s rates nothing and is told', (text) => {
    const { samples, notices } = read(`${text}\n`);
    expect(samples[0]!.readings).toMatchObject([{ item: 'potassium', value: 41, lab: { rating: null, range: null } }]);
    expect(notices).toMatchObject([{ code: 'range-reversed', severity: 'warning', facts: { item: 'potassium', read: expect.stringMatching(/^(?:30-5|50-30)$/) }, place: { line: text.includes('|') ? 2 : 1 } }]);
  });
  test.each(['Potassium 41 ppm (30-50)', 'Potassium 41 ppm (41-41)', 'Potassium 41 ppm (>30)', 'Potassium 41 ppm (<50)'])('%s rates', (text) => {
    expect(read(`${text}\n`).notices).toEqual([]);
    expect(read(`${text}\n`).samples[0]!.readings[0]!.lab.range).not.toBeNull();
  });
});
