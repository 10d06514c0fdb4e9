// What lines say of their sample: its name, its day, its depth; and answers to the reader's own questions (practice).
// A day of numbers alone is read where only one reading is a day, or where the report's language settles it.
import { describe, expect, test } from 'vitest';
import { answerLine } from '../../src/soil/hand.ts';
import { metaOf } from '../../src/soil/meta.ts';
import { readReport } from '../../src/soil/read.ts';
import type { Sample } from '../../src/soil/reading.ts';
import { linesOf } from '../../src/soil/text.ts';

const samples = (text: string): readonly Sample[] => readReport(text, 'r.txt').samples;
const first = (head: string, ph = 'pH 6.4'): Sample => samples(`${head}\n${ph}\n`)[0]!;

describe('its name', () => {
  test.each([
    ['sample: Front bed', 'Front bed'], ['Sample ID: 12', 'sample 12'], ['Sample # 3 - Orchard', 'Orchard'], ['SAMPLE NAME = East', 'East'], ['Sample no. 7', 'sample 7'], ['Field: Top', 'Top'], ['Probe: Garten', 'Garten'], ['Probenbezeichnung: Äpfel', 'Äpfel'], ['Muestra: Huerto', 'Huerto'], ['Parcelle : Verger', 'Verger'], ['Lab no. 123 | Sample: North', 'North'], ['Sample: | North', 'North'],
  ])('%s', (line, name) => { expect(first(line).name).toBe(name); });
  test.each(['A sample was taken', 'Sample pH 6.2', 'Sampled by: me'])('%s names none', (line) => { expect(first(line).name).toBe('sample 1'); });
  test('the next name opens the next sample; beside the name the line goes on', () => {
    expect(samples('sample: Front\npH 6.4\nsample: Back\npH 7\n').map((s) => [s.name, s.readings.map((r) => r.value)])).toEqual([['Front', [6.4]], ['Back', [7]]]);
    expect(samples('Sample: North | P 42 ppm | K 180 ppm\n').map((s) => [s.name, s.readings.map((r) => r.value)])).toEqual([['North', [42, 180]]]);
  });
  test('each year\'s test is a sample of its own', () => {
    expect(samples('2024: pH 5.8, P 22 ppm\n(2025) - pH 6.0, P 30 ppm\n').map((s) => [s.name, s.readings.map((r) => r.value)])).toEqual([['2024', [5.8, 22]], ['2025', [6, 30]]]);
    // The place is that of the line as printed.
    expect(samples('2024: pH 5.8\n2025: pH 6\n').map((s) => s.readings[0]!.place.column)).toEqual([7, 7]);
  });
});

describe('its day', () => {
  test.each([
    ['taken: 3 Nov 2025', '2025-11-03'], ['Date sampled: 11/20/2025', '2025-11-20'], ['Sample date 20/11/2025', '2025-11-20'], ['sampled on 3-Nov-2025', '2025-11-03'], ['Date collected - November 3, 2025', '2025-11-03'], ['taken: 5/5/26', '2026-05-05'],
    ['Fecha de muestreo: 3 de noviembre de 2025', '2025-11-03'], ['Fecha de toma: 3 de noviembre del 2025', '2025-11-03'], ['Probenahme: 3.11.25', '2025-11-03'], ['Probenahme am 3. März 2025', '2025-03-03'], ['Entnahmedatum 3-11-2025', '2025-11-03'], ['prelevato il 2 dicembre 2025', '2025-12-02'], ['Date de prélèvement : 1er mars 2025', '2025-03-01'], ['coletada em 5 de fevereiro de 2025', '2025-02-05'],
    ['Sample taken on November 3, 2025', '2025-11-03'], ['The samples taken on 3 November 2025 came wet', '2025-11-03'],
  ])('%s', (line, day) => { expect(first(line).taken).toBe(day); });
  test.each(['taken: soon', 'taken: 31.2.2025', 'taken: 13/11/20256', 'Report date: 3 Nov 2025', 'Printed 2025-11-03'])('%s is none', (line) => { expect(first(line).taken).toBeUndefined(); });
  test('every month in six languages', () => {
    const months = [
      ['January', 'Januar', 'enero', 'janvier', 'gennaio', 'janeiro'], ['February', 'Februar', 'febrero', 'février', 'febbraio', 'fevereiro'], ['March', 'März', 'marzo', 'mars', 'marzo', 'março'], ['April', 'April', 'abril', 'avril', 'aprile', 'abril'],
      ['May', 'Mai', 'mayo', 'mai', 'maggio', 'maio'], ['June', 'Juni', 'junio', 'juin', 'giugno', 'junho'], ['July', 'Juli', 'julio', 'juillet', 'luglio', 'julho'], ['August', 'August', 'agosto', 'août', 'agosto', 'agosto'],
      ['September', 'September', 'septiembre', 'septembre', 'settembre', 'setembro'], ['October', 'Oktober', 'octubre', 'octobre', 'ottobre', 'outubro'], ['November', 'November', 'noviembre', 'novembre', 'novembre', 'novembro'], ['December', 'Dezember', 'diciembre', 'décembre', 'dicembre', 'dezembro'],
    ];
    for (const [i, names] of months.entries()) for (const name of names) expect([name, first(`taken: 3 ${name} 2025`).taken]).toEqual([name, `2025-${String(i + 1).padStart(2, '0')}-03`]);
  });
  test('and cut short', () => {
    const short = ['ene jan gen', 'feb fev', 'mar', 'abr apr', 'may mai mag', 'jun giu', 'jul lug', 'ago aug', 'sep set sept', 'oct okt ott out', 'nov', 'dic dez dec'];
    for (const [i, names] of short.entries()) for (const name of names.split(' ')) expect([name, first(`taken: 3 ${name} 2025`).taken]).toEqual([name, `2025-${String(i + 1).padStart(2, '0')}-03`]);
  });
  test('a bare date is that of the letter where a day of sampling stands too', () => {
    expect(first('Datum: 1.12.2025\nProbenahme: 3.11.2025').taken).toBe('2025-11-03');
    expect(first('Probenahme: 3.11.2025\nDatum: 1.12.2025').taken).toBe('2025-11-03');
  });
});

test.each([['depth: 0-6 in', '0-6 in'], ['Sampling depth 20 cm', '20 cm'], ['Tiefe: 0-30 cm', '0-30 cm'], ['Profundidad = 0-20 cm', '0-20 cm'], ['Depth | 8 in', '8 in'], ['depth: unknown', undefined], ['Rootdepth 8 in', undefined], ['Sample depth: 8 in', '8 in'], ['Profondeur : 30 cm', '30 cm'], ['Profondità 30 cm', '30 cm'], ['Entnahmetiefe 0-30 cm', '0-30 cm'], ['Probenahmetiefe: 30 cm', '30 cm'], ['Profundidade: 0-20 cm', '0-20 cm']])('its depth: %s', (line, depth) => { expect(first(line).depth).toBe(depth); });

describe('an answer', () => {
  const said = (text: string): unknown => {
    const report = readReport(text, 'r.txt');
    return [report.samples[0]!.readings.map((r) => [r.value, r.unit, r.method]), report.notices.map((n) => [n.code, n.facts.read]), report.questions.map((q) => [q.code, q.about])];
  };
  test.each<[string, string, unknown]>([
    ['a method', 'phosphorus method: Mehlich 3\nPhosphorus 42 ppm', [[[42, 'ppm', 'mehlich-3']], [], []]], ['below its reading, with an equals sign', 'Phosphorus 42 ppm\nP method = olsen', [[[42, 'ppm', 'olsen']], [], []]],
    ['a unit', 'phosphorus unit: ppm\nphosphorus method: bray 1\nPhosphorus 42', [[[42, 'ppm', 'bray-1']], [], []]], ['by the reader\'s own name of it', 'organic-matter unit: %\nOrganic matter 4', [[[4, '%', null]], [], []]],
    ['one that nobody knows is not asked again', 'phosphorus unit: unknown\nphosphorus method: I don\'t know\nPhosphorus 42', [[[42, null, 'unknown']], [], []]],
    ['one that is none is told', 'zinc unit: furlongs\nZinc 4', [[[4, null, null]], [['answer-unknown', 'furlongs']], [['unit-missing', 'zinc']]]], ['nor a method', 'zinc method: sorcery\nZinc 4 ppm', [[[4, 'ppm', null]], [['answer-unknown', 'sorcery']], []]],
    ['what the report says leads', 'phosphorus method: olsen\nphosphorus unit: ppm\nPhosphorus 42 mg/kg Bray 1', [[[42, 'mg/kg', 'bray-1']], [], []]],
  ])('%s', (_, text, expected) => { expect(said(`${text}\n`)).toEqual(expected); });
  test('is pointed at', () => { expect(readReport('pH 6\n  zinc unit: furlongs\n', 'r.txt').notices[0]!.place).toMatchObject({ line: 2, column: 14, length: 8 }); });
});

test('values beside a sample\'s name, and answers that are none, are pointed at where they are printed', () => {
  const at = (text: string): unknown => {
    const { samples, notices } = readReport(text, 'r.txt');
    return [samples.flatMap((s) => s.readings.map((r) => [r.asPrinted, r.place.column])), notices.map((n) => [n.place?.column, n.place?.length])];
  };
  expect(at('Sample: North | P 42 ppm | K 180 ppm\n')).toEqual([[['P 42 ppm', 17], ['K 180 ppm', 28]], []]);
  expect(at('Sample: Äpfel   P 42 ppm   K 180 furlongs\n')).toEqual([[['P 42 ppm', 17]], [[28, 5]]]);
  expect(at('Sample: | P 4 | P 4 ppm\n')).toEqual([[['P 4 ppm', 17]], []]);
  expect(at('pH 6\n zinc  unit  :  fur  longs \n')).toEqual([[['pH 6', 1]], [[17, 10]]]);
});

describe('what is asked', () => {
  const asked = (text: string): unknown => readReport(text, 'r.txt').questions.map((q) => [q.code, q.about, q.changes, q.choices[0], q.facts.sample]);
  test.each<[string, unknown]>([
    ['Phosphorus 42', [['unit-missing', 'phosphorus', 'changes-p-and-k', 'ppm', ''], ['method-missing', 'phosphorus', 'changes-p-and-k', 'mehlich-3', '']]], ['Potassium 180 ppm', [['method-missing', 'potassium', 'changes-p-and-k', 'ammonium-acetate', '']]],
    ['CEC 12', [['unit-missing', 'cec', 'changes-nothing-bought', 'meq/100g', '']]], ['Organic matter 4', [['unit-missing', 'organic-matter', 'changes-organic', '%', '']]], ['Organic carbon 2', [['unit-missing', 'organic-carbon', 'changes-organic', '%', '']]], ['Soluble salts 0.4', [['unit-missing', 'salts', 'changes-salts', 'dS/m', '']]], ['Zinc 4', [['unit-missing', 'zinc', 'changes-nothing-bought', 'ppm', '']]],
    // A word, a range, an index or a method decides.
    ['Phosphorus 42 high', [['unit-missing', 'phosphorus', 'changes-nothing-bought', 'ppm', '']]], ['Potassium 180 ppm (120-200)', []], ['Potassium index 2', []], ['Potassium 180 ppm index 2', []], ['Potassium 180 ppm Mehlich 3', []], ['Potassium low', []], ['pH 6.4', []], ['Texture: loam', []],
  ])('%s', (line, questions) => { expect(asked(`${line}\n`)).toEqual(questions); });
  test('of several samples each by its name', () => { expect(asked('sample: A\nZinc 4\nsample: B\nZinc 5\n')).toMatchObject([['unit-missing', 'zinc', 'changes-nothing-bought', 'ppm', 'A'], ['unit-missing', 'zinc', 'changes-nothing-bought', 'ppm', 'B']]); });
  test('a leaf is burnt whole: no method', () => { expect(asked('Leaf analysis report\nNitrogen 2.2 %\nPotassium 1.5 %\n')).toEqual([]); });
});

describe('as many labs head it', () => {
  test.each([
    ['Sample / Field: Front', 'Front'], ['Sample/Plot: Front', 'Front'], ['Sample  Name: Front', 'Front'], ['Sample No 7', 'sample 7'], ['Sample number: 7', 'sample 7'], ['Sample Ref.: A2', 'A2'], ['Sample ref A2', 'sample 1'], ['Sample reference: A2', 'A2'], ['Sample Identification: A2', 'A2'], ['Sample description: A2', 'A2'], ['Field  ID: A2', 'A2'], ['Field name = A2', 'A2'], ['Proben-Nr.: A2', 'A2'], ['Probe Nr: A2', 'A2'], ['Probennummer: A2', 'A2'], ['Probename: A2', 'A2'], ['Amostra: A2', 'A2'], ['Campione: A2', 'A2'], ['Échantillon : A2', 'A2'], ['Parcela: A2', 'A2'], ['  Sample: A2', 'A2'], ['My sample: A2', 'sample 1'], ['Samples: A2', 'sample 1'],
    ['Sample: *A2*', 'A2'], ['Sample: A2 :', 'A2'], ['Sample: 12-Orchard', 'Orchard'], ['Sample: 12.  Orchard', 'Orchard'], ['Sample: 123', '123'], ['Sample: A 12', 'A 12'], ['Sample: 3 beds', '3 beds'], ['Sample: upper 12: east', 'upper 12: east'], ['Sample:', 'sample 1'], ['Sample : |  | North', 'sample 1'], ['Sample: Garden pH 6.2', 'sample 1'], ['Sample: low pH corner', 'low pH corner'],
  ])('%s', (line, name) => { expect(first(line).name).toBe(name); });
  test('its day and depth beside its name', () => {
    expect(first('Field: Backyard      Date sampled: 21 Oct 2025    Depth 6 in')).toMatchObject({ name: 'Backyard', taken: '2025-10-21', depth: '6 in' });
    expect(first('Depth 6 in | Sample: Äpfel | Taken: 21 Oct 2025')).toMatchObject({ name: 'Äpfel', taken: '2025-10-21', depth: '6 in' });
    expect(first('Sample: A2   Field: North')).toMatchObject({ name: 'A2' });
  });
  test('a year before values alone', () => {
    const names = (line: string): string[] => samples(`${line}\npH 6.4\n`).map((s) => s.name);
    expect([names('  2024:P 22 ppm'), names('2024 - P 22 ppm'), names('2024: a dry year'), names('P in 2024: 22 ppm'), names('2024:')]).toEqual([['2024'], ['2024'], ['sample 1'], ['sample 1'], ['sample 1']]);
    expect(samples('2024: P 22 ppm\n')[0]!.readings.map((r) => [r.value, r.place.column])).toEqual([[22, 7]]);
  });
});

describe('more days', () => {
  test.each([
    ['  taken 3 Nov 2025', '2025-11-03'], ['Sampled: 3 Nov 2025', '2025-11-03'], ['Sampling date | 3 Nov 2025', '2025-11-03'], ['Date of sampling = 3 Nov 2025', '2025-11-03'], ['Date taken: 3 Nov 2025', '2025-11-03'], ['Entnahme: 3.11.2025', '2025-11-03'], ['Probenahmedatum 3.11.2025', '2025-11-03'], ['Entnommen am 3.11.2025', '2025-11-03'], ['Datum der Probenahme: 3.11.2025', '2025-11-03'], ['Datum der Entnahme: 3.11.2025', '2025-11-03'], ['Tomada el 3 de noviembre de 2025', '2025-11-03'], ['Extraida el 3 de noviembre de 2025', '2025-11-03'], ['Prélevé le 3 novembre 2025', '2025-11-03'], ['Prélevée le 3 novembre 2025', '2025-11-03'], ['Prélèvement du 3 novembre 2025', '2025-11-03'], ['Prélèvement le 3 novembre 2025', '2025-11-03'], ['Date de collecte : 3 novembre 2025', '2025-11-03'], ['Data di prelievo: 3 novembre 2025', '2025-11-03'], ['Data do campionamento: 3 novembre 2025', '2025-11-03'], ['Data da coleta: 3 de novembro de 2025', '2025-11-03'], ['Data de colheita: 3 de novembro de 2025', '2025-11-03'], 
    ['taken  on  3 Nov 2025', '2025-11-03'], ['Coletada em: 3 de novembro de 2025', '2025-11-03'], ['Data di campionamento: 3 novembre 2025', '2025-11-03'], ['Data de amostragem: 3 de novembro de 2025', '2025-11-03'], ['Date de prélèvement : 3 novembre 2025', '2025-11-03'], ['Sample date | 3 Nov 2025 |', '2025-11-03'], ['Prélevé le : 3 novembre 2025', '2025-11-03'], ['taken: 12-Nov-2025', '2025-11-12'], ['taken: 13-11-2025', '2025-11-13'], ['taken: 13.11.25', '2025-11-13'], ['taken: 15º de noviembre de 2025', '2025-11-15'], ['taken: 11/13/25', '2025-11-13'], ['taken: 13/11/2025', '2025-11-13'], ['taken: 2025-11-13', '2025-11-13'],
    ['Data da amostragem 3 de novembro de 2025', '2025-11-03'], ['Entnahme: 3. November 2025', '2025-11-03'], ['taken: 3-November-2025', '2025-11-03'], ['Date sampled: 3 Nov 2025', '2025-11-03'], ['Date sampled:  | 3 Nov 2025', '2025-11-03'], ['Fecha de toma: 3 del noviembre 2025', '2025-11-03'], ['taken: 1ª de marzo de 2025', '2025-03-01'], ['Sampled am 3 Nov 2025', '2025-11-03'], ['Sample date: 3 Nov 2025', '2025-11-03'], ['Sampling date: 3 Nov 2025', '2025-11-03'], ['Datum: 3.11.2025', '2025-11-03'], ['Date of sampling: 3 Nov 2025', '2025-11-03'], ['Date collected: 3 Nov 2025', '2025-11-03'], ['Fecha de muestreo: 3 de noviembre de 2025', '2025-11-03'], ['Probenahme: 3.11.2025', '2025-11-03'],
  ])('%s', (line, day) => { expect([first(line).taken, metaOf(linesOf(line)[0]!, null)?.taken]).toEqual([day, day]); });
  test('behind a stroke for who took it', () => { for (const line of ['Sampled on / by grower: 3 Nov 2025', 'Sampled on/by us: 3 Nov 2025']) expect(first(line).taken).toBe('2025-11-03'); });
  test.each(['Mistaken: 3 Nov 2025', 'taken: 3/11/20256', 'taken: 113/11/2025', 'taken: 3.11.2', 'taken: 32 Nov 2025', 'We had it taken 3 Nov 2024 to the lab'])('%s is none of its lines', (line) => { expect(first(line).taken).not.toBe('2025-11-03'); });
  test('months of every language, whatever else the line says', () => {
    for (const [day, name] of [['01', 'Januar'], ['02', 'februar'], ['03', 'März'], ['05', 'mai'], ['06', 'Juni'], ['07', 'Juli'], ['10', 'Oktober'], ['12', 'Dezember']] as const) expect(first(`taken: 3 ${name} 2025`).taken).toBe(`2025-${day}-03`);
  });
  test('a day that two continents read differently is asked about, where the language does not settle it', () => {
    const report = readReport('pH 6.4\n  taken: | 3/11/2025\n', 'r.txt');
    expect([report.samples[0]!.taken, report.notices.map((n) => [n.code, n.severity, n.facts, n.place?.line, n.place?.column, n.place?.length])]).toEqual([undefined, [['taken-two-ways', 'warning', { read: '3/11/2025', a: '2025-03-11', b: '2025-11-03' }, 2, 12, 9]]]);
    expect(readReport('pH 6.4\ntaken: 5/5/2025\n', 'r.txt')).toMatchObject({ notices: [], samples: [{ taken: '2025-05-05' }] });
    const spanish = readReport('Fósforo 12 ppm Olsen\nPotasio 180 ppm\nFecha de muestreo: 3/11/2025\n', 'r.txt');
    expect([spanish.samples[0]!.taken, spanish.notices]).toEqual(['2025-11-03', []]);
  });
});

test.each([['Depth: 0 - 6 in', '0 - 6 in'], ['Depth 8 in (20 cm)', '8 in (20 cm)'], ['Depth: 0-6"', '0-6"'], ['Depth|8|in', '8 in'], ['Depth 8 in, Lab 12', '8 in'], ['Depth: 8 in 2025', '8 in'], ['Depth: 8 in, 2 bags', '8 in, 2 bags']])('depths: %s', (line, depth) => { expect(first(line).depth).toBe(depth); });

test('values behind a depth are read', () => {
  for (const line of ['Depth 8 in, pH: 6.4, P 22 ppm', 'Depth 8 in pH=6.4 P 22 ppm', 'Depth: 8 in; pH 6.4; P 22 ppm']) {
    const [sample] = samples(`${line}\n`);
    expect([line, sample!.depth, sample!.readings.map((r) => r.value)]).toEqual([line, '8 in', [6.4, 22]]);
  }
});

describe('answers that are none', () => {
  const codes = (line: string): string[] => readReport(`pH 6.4\n${line}\n`, 'r.txt').notices.map((n) => n.code);
  test.each(['Ca:Mg ratio unit: furlongs', 'lime unit: furlongs', 'Our zinc unit: furlongs', 'the unit: furlongs', 'zinc units: furlongs'])('%s', (line) => { expect(codes(line)).toEqual([]); });
  test.each(['zinc  unit:furlongs', '  Zinc unit : furlongs', 'Zn unit=  furlongs', 'zinc method: furlongs'])('%s', (line) => { expect(codes(line)).toEqual(['answer-unknown']); });
});

test('each choice that a question offers answers it', () => {
  for (const line of ['Phosphorus 42', 'Potassium 180', 'CEC 12', 'Organic matter 4', 'Organic carbon 2', 'Soluble salts 0.4', 'Zinc 4']) {
    for (const q of readReport(`${line}\n`, 'r.txt').questions) for (const choice of q.choices) {
      const report = readReport(`${line}\n${answerLine(q, choice)!}\n`, 'r.txt');
      expect([line, choice, report.notices.map((n) => n.code), report.questions.some((o) => o.code === q.code), report.samples[0]!.readings.map((r) => (q.code === 'unit-missing' ? r.unit : r.method))]).toEqual([line, choice, [], false, [choice]]);
    }
  }
});
