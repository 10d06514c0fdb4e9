// What a report is of, by the titles and the results that labs print in six languages (dictionaries and labs' own forms, practice).
import { describe, expect, test } from 'vitest';
import { kindOf, kindOfLines, strangerNotice } from '../../src/soil/report-kind.ts';
import { linesOf } from '../../src/soil/text.ts';

const VALUES = 'pH 7.1\nNitrate 12 ppm\nPotassium 40 ppm\n';
const titled = (title: string): string => kindOf(`${title}\n${VALUES.replace('pH 7.1\n', '')}`).kind;

describe('a title', () => {
  const TITLES: Readonly<Record<string, readonly string[]>> = {
    feed: ['Feed analysis', 'Animal feed report', 'Livestock feed test', 'Forage analysis report', 'Hay test results', 'Silage report', 'Haylage analysis', 'Fodder test', 'Futteranalyse', 'Futtermitteluntersuchung', 'Futtermittelanalyse', 'Análisis de forraje', 'Análisis de forrajes', 'Análisis de piensos', 'Analyse de fourrage', 'Analyse des fourrages', 'Analyse du fourrage', 'Analisi foraggi', 'Analisi del foraggio', 'Analisi dei foraggi', 'Análise de forragem', 'Análise de forragens'],
    water: ['Water analysis', 'Irrigation water quality report', 'Well water test results', 'Water suitability report', 'Water sample report', 'Drinking water certificate', 'Trinkwasseranalyse', 'Brunnenwasseruntersuchung', 'Gießwasserprobe'.replace('ß', 'ss'), 'Leitungswassertest', 'Regenwasseranalyse', 'Wasseranalyse', 'Análisis de agua', 'Análisis del agua', 'Análise da água', 'Análise de água', 'Analyse d\'eau', 'Analyse de l\'eau', 'Analyses d\'eau', 'Analisi dell\'acqua', 'Analisi di acqua'],
    manure: ['Manure analysis', 'Poultry manure report', 'Slurry test', 'Poultry litter analysis', 'Gülleanalyse', 'Mist-Untersuchung', 'Stallmistanalyse', 'Wirtschaftsdüngeranalyse', 'Análisis de estiércol', 'Análisis de purines', 'Análisis de purin', 'Analyse de fumier', 'Analyse du lisier', 'Analisi letame', 'Analisi del letame', 'Análise de esterco', 'Análise de estrume'],
    compost: ['Compost analysis', 'Finished compost test report', 'Vermicompost test', 'Mulch analysis', 'Potting mix analysis', 'Potting media report', 'Growing media analysis', 'Growing medium report', 'Soilless media test', 'Substrate analysis', 'Kompostanalyse', 'Kompost-Untersuchung', 'Substratprobe', 'Análisis de compost', 'Análisis del sustrato', 'Analyse de compost', 'Analyse du substrat', 'Analyse de terreau', 'Analisi del compost', 'Analisi del substrato', 'Análise de composto', 'Análise de substrato'],
    fertiliser: ['Guaranteed analysis', 'Guaranteed minimum analysis', 'Garantierte Gehalte', 'Garantierte Analyse', 'EG-Düngemittel', 'EU-Düngeprodukt', 'Teneurs déclarées', 'Teneur garantie', 'Engrais CE', 'Abono CE', 'Concime CE', 'Adubo CE', 'EC fertilizer', 'UK fertiliser'],
    leaf: ['Leaf analysis', 'Apple leaf analysis report', 'Foliar test', 'Plant tissue analysis', 'Tissue test report', 'Petiole analysis', 'Needle analysis', 'Blattanalyse', 'Pflanzenuntersuchung', 'Blattprobe', 'Nadelanalyse', 'Análisis foliar', 'Análisis de hojas', 'Análisis de tejidos', 'Análise foliar', 'Análise de folhas', 'Diagnóstico foliar', 'Analyse foliaire', 'Analyses foliaires', 'Analyse de feuilles', 'Diagnostic foliaire', 'Analisi fogliare', 'Analisi delle foglie'],
  };
  test.each(Object.entries(TITLES))('%s', (kind, titles) => { for (const title of titles) expect([title, titled(title)]).toEqual([title, kind]); });
  test('with a number, a date or a sign around it', () => { expect(['# Water analysis report', '| Water test report for', 'WATER ANALYSIS REPORT No. 4711', 'Water analysis - summary', 'Water test report date: 3/11/2025', '> Compost test'].map(titled)).toEqual(['water', 'water', 'water', 'water', 'water', 'compost']); });
  test('within a sentence, or as a lab\'s own name, it tells nothing', () => {
    for (const line of ['We also offer water analysis', 'Please ask for a compost test', 'Water Testing Laboratory', 'State University Forage Testing Services', 'Your water analysis is on the way', 'Water is life']) expect([line, titled(line)]).toEqual([line, 'soil']);
  });
});

describe('what was sent', () => {
  const sent = (line: string): string => kindOf(`${line}\nNitrate 12 ppm\nPotassium 40 ppm\n`).kind;
  test.each<[string, readonly string[]]>([
    ['water', ['Sample type: Well water', 'Matrix: Water', 'Type of sample = irrigation water', 'Probenart: Brunnenwasser', 'Tipo de muestra: Agua de riego', 'Tipo de amostra: Água', 'Nature de l\'échantillon : Eau', 'Tipo di campione: Acqua']], ['compost', ['Sample type: Compost', 'Material: potting mix', 'Probenmaterial: Kompost', 'Matriz: Composto', 'Matrice : Terreau']],
    ['manure', ['Sample type: Poultry litter', 'Sample matrix: dairy slurry', 'Probenart: Gülle', 'Tipo de muestra: Estiércol', 'Matrice: Letame', 'Type d\'échantillon : Fumier']], ['feed', ['Sample material: Hay', 'Medium | Silage', 'Probenart: Heu']], ['leaf', ['Sample type: Leaf', 'Sample type: Apple leaves', 'Sample type: Plant tissue', 'Probenart: Blätter', 'Tipo de muestra: Hojas', 'Matrice: foglie', 'Tipo de amostra: folhas']], ['soil', ['Sample type: Soil', 'Sample type: Garden soil', 'Probenart: Boden', 'Sample type: paint']],
  ])('%s', (kind, lines) => { for (const line of lines) expect([line, sent(line)]).toEqual([line, kind]); });
});

describe('results that no soil report prints', () => {
  const of = (...lines: string[]): string => kindOf(`${lines.join('\n')}\n`).kind;
  test('two of them tell the kind', () => {
    for (const [kind, words] of [
      ['water', ['Hardness', 'Total hardness', 'Gesamthärte', 'Dureza', 'Dureté', 'Durezza', 'TDS', 'Total dissolved solids', 'Total suspended solids', 'Residuo fisso', 'Alkalinity', 'Alcalinidad', 'Alcalinité', 'Turbidity', 'Trübung', 'Turbidez', 'Total coliform', 'Fecal coliform', 'E. coli', 'Residual sodium carbonate', 'Langelier index', 'Free chlorine']],
      ['feed', ['Crude protein', 'Crude fiber', 'Crude fat', 'ADF', 'NDF', 'Acid detergent fiber', 'Neutral detergent fiber', 'TDN', 'Total digestible nutrients', 'RFV', 'RFQ', 'Relative feed value', 'Net energy', 'Rohprotein', 'Rohfaser', 'Rohfett', 'Proteína cruda', 'Proteína bruta', 'Protéines brutes', 'Fibra cruda', 'Cellulose brute']],
    ] as const) for (const [i, word] of words.entries()) {
      // One alone tells nothing; beside another, all.
      const other = words[(i + 5) % words.length]!;
      expect([word, of(`${word} 12`, 'Potassium 40 ppm'), of(`${word} 12`, `${other} 30`, 'Potassium 40 ppm')]).toEqual([word, 'soil', kind]);
    }
  });
  test('one with two weak ones', () => {
    for (const weak of ['Bicarbonate 200', 'HCO3 200', 'Sulfate 61', 'Nitrite 0.1', 'Fluoride 0.2', 'Cloruros 30', 'Hydrogencarbonat 200']) expect([weak, of('Hardness 200', weak, 'Chloride 30'), of('Hardness 200', weak)]).toEqual([weak, 'water', 'soil']);
  });
  test('the same said again is one sign', () => { expect(of('Hardness 200', 'Total hardness 200', 'Calcium hardness 150')).toBe('soil'); });
  test('moisture and C:N are printed of soils too', () => {
    expect([of('Moisture 20 %', 'C:N 12'), of('Moisture 20 %', 'C:N 12', 'Total N 1.2 %'), of('Moisture 20 %', 'Solvita 6', 'Salmonella absent')]).toEqual(['soil', 'compost', 'compost']);
  });
});

describe('any sign of a soil wins', () => {
  test.each(['Soil test report', 'Soil pH 6.4', 'CEC 12 meq/100g', 'Buffer pH 6.8', 'Base saturation 80 %', 'Texture: loam', 'Bodenuntersuchung', 'Humus 3 %', 'Phosphorus 42 ppm Mehlich 3', 'Potassium 120 lb/acre', 'K2O CAL 12 mg/100 g', 'Sand 40 %', 'Análisis de suelo', 'Analyse de sol', 'Analisi del terreno', 'Análise de solo', 'Lime requirement 2 t', 'Exchangeable calcium 900', 'pH (CaCl2) 5.8', 'P Olsen 12'])('%s', (line) => {
    expect(kindOf(`Water analysis report\nHardness 12\nTDS 300\n${line}\n`).kind).toBe('soil');
  });
  test('but not a potting soil\'s title, nor a lab for soils', () => {
    expect(kindOf('Potting soil analysis\nNitrate 80 ppm\n').kind).toBe('compost');
    expect(kindOf('Soil Testing Laboratory\nWater analysis report\nNitrate 12 ppm\n').kind).toBe('water');
  });
});

describe('a leaf by its numbers', () => {
  const leaf = (n: number, p: number, k: number, ca: number, mg: number | null = null, more = ''): string => kindOf(`Nitrogen ${n} %\nPhosphorus ${p} %\nPotassium ${k} %\nCalcium ${ca} %\n${mg === null ? '' : `Magnesium ${mg} %\n`}${more}`).kind;
  // Bounds of report-kind.ts, practice: N 0.5 to 6, P 0.03 to 1.2, K 0.3 to 6, Ca 0.1 to 6, Mg 0.05 to 2.
  test('all within what leaves hold', () => {
    expect([leaf(0.5, 0.03, 0.3, 0.1, 0.05), leaf(6, 1.2, 6, 6, 2)]).toEqual(['leaf', 'leaf']);
    expect([leaf(0.4, 0.2, 1, 1), leaf(6.1, 0.2, 1, 1), leaf(2, 0.02, 1, 1), leaf(2, 1.3, 1, 1), leaf(2, 0.2, 0.2, 1), leaf(2, 0.2, 6.1, 1), leaf(2, 0.2, 1, 0.05), leaf(2, 0.2, 1, 6.1), leaf(2, 0.2, 1, 1, 0.04), leaf(2, 0.2, 1, 1, 2.1)]).toEqual(Array(10).fill('soil'));
  });
  test('a pH or an organic matter is a soil\'s', () => { expect([leaf(2, 0.2, 1, 1, 0.3, 'pH 6.4\n'), leaf(2, 0.2, 1, 1, 0.3, 'Organic matter 4 %\n')]).toEqual(['soil', 'soil']); });
});

test('what it rests on is told as printed', () => {
  const kind = kindOfLines(linesOf('Irrigation Water Report\nTotal Hardness 210\nTDS 380\nChloride 30\nSulfate 40\n'));
  expect(kind).toEqual({ kind: 'water', words: ['Irrigation Water Report', 'Total Hardness', 'TDS', 'Chloride'] });
  expect(strangerNotice(kind, 'r.txt')).toMatchObject({ code: 'report-water', severity: 'error', facts: { file: 'r.txt', words: 'Irrigation Water Report, Total Hardness, TDS, Chloride' } });
  expect([strangerNotice({ kind: 'soil', words: [] }, 'r'), strangerNotice({ kind: 'leaf', words: [] }, 'r')]).toEqual([null, null]);
  expect(kindOf('N 2.21 %\nP 0.18 %\nK 1.4 %\nCa 1.6 %\n').words).toEqual(['N %', 'P %', 'K %', 'Ca %']);
});
