// What a report is of, by the titles and the results that labs print in six languages (dictionaries and labs' own forms, practice).
import { describe, expect, test } from 'vitest';
import type { Kind } from '../../src/soil/report-kind.ts';
import { kindOfLines, strangerNotice } from '../../src/soil/report-kind.ts';
import { linesOf } from '../../src/soil/text.ts';

const kindOf = (text: string): Kind => kindOfLines(linesOf(text));
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

describe('the same results in other words', () => {
  const of = (...lines: readonly string[]): string => kindOf(`${lines.join('\n')}\nPotassium 40 ppm\n`).kind;
  const STRONG: Readonly<Record<string, readonly [other: string, ...words: readonly string[]]>> = {
    water: ['Langelier index 1', 'Total hardness 200', 'Calcium hardness 90', 'Magnesium hardness 90', 'Carbonate hardness 90', 'Karbonathärte 12', 'Wasserhärte 12', 'Gesamt-Härte 12', 'Härte 12', 'Sólidos disueltos 300', 'Sólidos dissolvidos 300', 'Residuo seco 300', 'Total alkalinity 120', 'Alcalinità 120', 'Alcalinidade 120', 'Turbidité 2', 'Torbidità 2', 'Coliforms 0', 'Coliform 0', 'Coliformes 0', 'Coliformi 0', 'Faecal coliforms 0', 'Koliforme 0', 'E coli 0', 'E.coli 0', 'RSC 0.2', 'Adj. SAR 2', 'Adjusted SAR 2', 'Adj SAR 2', 'adj. RNa 2', 'Total chlorine 1', 'TDS 300', '"Hardness" 200', 'pH 7; TDS 300'],
    feed: ['ADF 30', 'Crude fibre 20', 'Relative forage quality 120', 'NEL 6', 'Proteina grezza 12', 'Protéine brute 12', 'Matière azotée 12', 'Fibra bruta 20', 'Fibra grezza 20', 'RFV 120'],
    manure: ['Solids 5', 'As received', 'As-is', 'Ammonium N 3', 'Ammonia N 3', 'Organic N 9', 'Organic nitrogen 9', 'Nitrogen 12 lb/ton', 'Nitrogen: 12.5 lbs/ton', 'Nitrogen 12 pounds per ton', 'Nitrogen | 12 | lb/1,000 gal', 'Nitrogen 12 lb/1000 gal', 'K2O 8 lb / ton', 'Total phosphorus (P2O5) 8 lb/ton', 'Calcium   12   lb/ton'],
    compost: ['Solvita 6', 'Volatile solids 30', 'Maturity 5', 'Stability 6', 'Rottegrad IV', 'Salmonella absent', 'Fecal coliform 3', 'Faecal coliform 3', 'Bulk density 800 lb/cu yd', 'Bulk density: 800 kg/m3', 'Bulk density | 800 | lbs/yd3'],
    fertiliser: ['Derived from urea', 'Available phosphate 5', 'Soluble potash 5', 'Water soluble phosphate 5', 'Water-soluble potash 5', 'Water soluble K2O 5', 'Ammoniacal nitrogen 5', 'Urea nitrogen 5', 'Water insoluble nitrogen 5'],
    leaf: ['Plant part: spur', 'Tissue type: blade', 'Leaf position: mid', 'Leaf age: 60 days', 'Pflanzenorgan: Laub', 'Organe prélevé : limbe', 'Parte de la planta: limbo'],
  };
  test.each(Object.entries(STRONG))('%s', (kind, [other, ...words]) => {
    for (const word of words) expect([word, of(word), of(other, word)]).toEqual([word, 'soil', kind]);
    // A word before it makes another thing of it.
    for (const word of words) if (!/["|;]| lb| lbs| pounds/.test(word)) expect([word, of(other, `Other ${word}`)]).toEqual([word, 'soil']);
  });
  test('what soil labs print too needs one more', () => {
    for (const word of ['Moisture content 40', 'Moisture (%) 40', 'Moisture: 40', 'Moisture | 40', 'Moisture % 40', 'As received 40', 'As-is 40', 'Dry weight 60', 'Dry matter 60', 'Dry basis 60', 'Trockenmasse 60', 'Trockensubstanz 60', 'Materia seca 60', 'Matière sèche 60', 'Sostanza secca 60', 'Carbon:nitrogen 18', 'Carbon/nitrogen 18', 'Carbon : nitrogen 18', 'C/N 18', 'C:N 18']) expect([word, of(word, 'Solvita 6', 'Total N 1.2 %')]).toEqual([word, 'compost']);
    for (const weak of ['Total nitrogen 1.2 %', 'Gesamtstickstoff 1.2 %', 'Gesamt-Stickstoff 1.2 %', 'Organic matter 40 %', 'Organic carbon 20 %', 'Organische Substanz 40 %', 'Materia orgánica 40 %', 'Matière organique 40 %', 'Sostanza organica 40 %']) expect([weak, of('Moisture 40 %', 'C:N 18', weak), of('Moisture 40 %', 'C:N 18', `Other ${weak}`)]).toEqual([weak, 'compost', 'soil']);
    for (const weak of ['Moisture 80 %', 'Total N 12', 'Total nitrogen 12', 'Total P 4', 'Total K 4']) expect([weak, of('Solids 5', 'Phosphate 4', weak), of('Solids 5', 'Phosphate 4', `Other ${weak}`)]).toEqual([weak, 'manure', 'soil']);
  });
  test('what waters hold', () => {
    for (const weak of ['Bicarbonate 200', 'Bicarbonates 200', 'HCO3 200', 'Hydrogenkarbonat 200', 'Bicarbonato 200', 'Bicarbonati 200', 'Carbonate (CO3) 5', 'Carbonates CO3 5', 'Chlorides 30', 'Chlorid 30', 'Cloruro 30', 'Chlorure 30', 'Chlorures 30', 'Cloreto 30', 'Cloretos 30', 'Cloruri 30', 'Cl 30', 'SAR 2', 'Sodium adsorption ratio 2', 'Sodium absorption ratio 2', 'Sulfates 40', 'Sulphate 40', 'Sulfat 40', 'SO4 40', 'Nitrites 0.1', 'Nitrit 0.1', 'Nitriti 0.1', 'Nitrito 0.1']) expect([weak, of('TDS 300', weak, 'Fluorides 0.2'), of('TDS 300', `Other ${weak}`, 'Fluorides 0.2')]).toEqual([weak, 'water', 'soil']);
  });
  test('what was sent', () => {
    const sent = (what: string): string => of(`| Sample type: ${what}`);
    for (const [kind, words] of Object.entries({ fertiliser: ['Fertilizer', 'Fertiliser', 'Dünger', 'Düngemittel', 'Engrais', 'Abono', 'Fertilizante', 'Concime', 'Adubo'], leaf: ['Petiole', 'Petioles', 'Needles', 'Blatt', 'Hoja', 'Hojas', 'Feuille', 'Feuilles', 'Folha', 'Foglie'], feed: ['Silage', 'Haylage', 'Heu', 'Forraje', 'Fourrage'], compost: ['Finished compost', 'Vermicompost', 'Substrat'], manure: ['Dairy manure', 'Stallmist', 'Purin'] })) for (const word of words) expect([word, sent(word), sent(`no relation of ${word}`)]).toEqual([word, kind, 'soil']);
    expect([of('# Matrix: Water'), of('The matrix: Water'), of('Water analysis report', 'Sample type: Garden soil'), of('Water analysis report', 'Sample type: Boden'), of('Water analysis report', 'Sample type: tap water near soil')]).toEqual(['water', 'soil', 'soil', 'soil', 'water']);
  });
  test('more titles of labels', () => {
    for (const title of ['- Guaranteed analysis', 'Teneur déclarée', 'Teneurs garanties', 'Engrais UE', 'EU fertilizer']) expect([title, of(title), of(`Our ${title}`)]).toEqual([title, 'fertiliser', 'soil']);
  });
});

describe('a water report or a soil\'s', () => {
  const beside = (line: string): string => kindOf(`Water analysis report\n${line}\nNitrate 12 ppm\n`).kind;
  test('names of labs say nothing', () => {
    for (const word of ['Lab', 'Labs', 'Laboratory', 'Laboratoire', 'Labor', 'University', 'Universität', 'Extension', 'Service', 'Services', 'Institut', 'Institute', 'Instituto', 'Department', 'Center', 'Agency', 'Inc', 'GmbH']) expect([word, beside(`Soil Analysis ${word}`), kindOf(`Water analysis lab ${word}\nNitrate 12 ppm\n`).kind]).toEqual([word, 'water', 'soil']);
  });
  test('a soil\'s own', () => {
    for (const line of ['Soil result', 'Soil results', 'Soils report', 'C.E.C. 12', 'C.EC 12', 'Cation-exchange 12', 'Cation exchange 12', 'Exch. K 0.4', 'Percent base saturation 80', '% cation sat 80', 'Base sat 80', 'pH buffer 6.8', 'BpH 6.8', 'Lime index 68', 'Lime need 2', 'Lime rec 2', 'Kalkbedarf 20', 'Soil texture: loam', 'Textura: franca', 'Silt 40', 'Clay 20', 'Arena 40', 'Arcilla 20', 'Limo 40', 'Argile 20', 'Limon 40', 'Limons 40', 'Sable 40', 'Sables 40', 'Sabbia 40', 'Argilla 20', 'Areia 40', 'Argila 20', 'pH (KCl) 5.2', 'pH KCl 5.2', 'pH-H2O 6.4', 'pH 1:2.5 6.4', 'pH eau 6.4', 'Ca saturation 70', 'Calcium-saturation 70', 'K saturation 4', 'Kationenaustausch 12', 'Capacidad de intercambio 12', 'Capacité d\'échange 12', 'Capacità di scambio 12', 'Capacidade de troca 12', 'Nitrate 12; sand 40']) expect([line, beside(line)]).toEqual([line, 'soil']);
    for (const unit of ['meq/100g', 'meq / 100 g', 'cmol/kg', 'mmolc/dm3', 'lb/ac', 'lbs. per acre', 'lb / acre', 'mg/100 g', 'mg / 100g', 'kg/ha', 'kg / ha', '(modified Morgan)', '(Morgan)', 'DTPA', 'Colwell', 'ammonium acetate', 'NH4OAc', 'Joret', 'Egner', 'Dyer']) expect([unit, beside(`Potassium 12 ${unit}`)]).toEqual([unit, 'soil']);
    for (const line of ['O.M. 4 %', 'OM 4 %', 'Organic material 4 %', 'Organic carbon 4 %', 'Materia orgánica 4 %', 'Matière organique 4 %', 'Sostanza organica 4 %']) expect([line, beside(line)]).toEqual([line, 'soil']);
  });
  test('what only sounds like it', () => {
    for (const line of ['Filter sand 40', 'Dissolved organic carbon 2', 'Salts 2 lb/acre-foot', 'Salts 2 lb per acre foot', 'Salts 2 lb/ac in', 'Potting-soil test']) expect([line, beside(line)]).toEqual([line, 'water']);
    for (const word of ['recommend', 'recommended', 'recommendations']) expect([word, kindOf(`Hardness ${word} 200\nTDS 300\n`).kind]).toEqual([word, 'soil']);
  });
  test('a long list of what can be tested is no result; with its numbers, or as a row of cells, it is', () => {
    const list = ['Hardness', ...'iron manganese copper zinc boron sodium potassium calcium magnesium arsenic lead uranium selenium radon'.split(' ')];
    const of = (line: string): string => kindOf(`${line}\nTDS 300\n`).kind;
    expect([of(`${list.join(' ')} 25 dollars`), of(list.map((w) => `${w} 2`).join(' ')), of(`${list.join(' | ')} | 25`), of(`${list.slice(0, 8).join(' ')} 25`)]).toEqual(['soil', 'water', 'water', 'water']);
  });
});

test('a leaf\'s shares in six languages, with unit before or behind', () => {
  const SETS = [
    ['Stickstoff 2,2 %', 'Phosphor 0,2 %', 'Kalium 1,4 %', 'Kalzium 1,6 %', 'Magnesium 0,3 %'], ['Nitrógeno 2.2 %', 'Fósforo 0.2 %', 'Potasio 1.4 %', 'Calcio 1.6 %', 'Magnesio 0.3 %'], ['Azote 22 g/kg', 'Phosphore 2 g/kg', 'Potassium 14 g/kg', 'Calcium 16 g/kg'], ['Azoto 2.2 %', 'Fosforo 0.2 %', 'Potassio 1.4 %', 'Calcio 1.6 %'], ['Nitrogênio 2.2 %', 'Fósforo 0.2 %', 'Potássio 1.4 %', 'Cálcio 1.6 %'],
    ['Total nitrogen (N) 2.2 percent', 'Phosphorus (P): 0.20 %', 'Potassium (K) = 1.4 %', 'Calcium | 1.6 | %'], ['N % 2.2', 'P (%) 0.2', 'K [%] 1.4'.replace('[%]', '%:'), 'Ca % | 1.6'], ['N 2.2 %, P 0.2 %; K 1.4 % | Ca 1.6 %'],
  ];
  for (const set of SETS) expect([set, kindOf(`${set.join('\n')}\n`).kind]).toEqual([set, 'leaf']);
  // Without a unit, or of another thing, they are none; a second number of an element is its range.
  for (const set of [['N 2.2', 'P 0.2', 'K 1.4', 'Ca 1.6'], ['Crop N 2.2 %', 'Crop P 0.2 %', 'K 1.4 %', 'Ca 1.6 %'], ['N 2.2 ppm', 'P 0.2 ppm', 'K 1.4 ppm', 'Ca 1.6 ppm']]) expect([set, kindOf(`${set.join('\n')}\n`).kind]).toEqual([set, 'soil']);
  expect(kindOf('N 2.2 %, N 9 %\nP 0.2 %\nK 1.4 %\nCa 1.6 %\n').kind).toBe('leaf');
});

test('what it rests on is told as printed', () => {
  const kind = kindOf('  Irrigation Water Report\nTotal Hardness 210\nTDS 380\nChloride 30\nSulfate 40\n');
  expect(kind).toEqual({ kind: 'water', words: ['Irrigation Water Report', 'Total Hardness', 'TDS', 'Chloride'] });
  expect(strangerNotice(kind, 'r.txt')).toMatchObject({ code: 'report-water', severity: 'error', facts: { file: 'r.txt', words: 'Irrigation Water Report, Total Hardness, TDS, Chloride' } });
  expect([strangerNotice({ kind: 'soil', words: [] }, 'r'), strangerNotice({ kind: 'leaf', words: [] }, 'r')]).toEqual([null, null]);
  expect(kindOf('N 2.21 %\nP 0.18 %\nK 1.4 %\nCa 1.6 %\n').words).toEqual(['N %', 'P %', 'K %', 'Ca %']);
});

describe('what has the most signs', () => {
  const of = (...lines: readonly string[]): string => kindOf(`${lines.join('\n')}\n`).kind;
  test.each<[string, readonly string[]]>([
    ['compost', ['Compost analysis', 'Ammonium N 3', 'Organic N 9']], ['manure', ['TDS 300', 'Alkalinity 120', 'Ammonium N 3', 'Organic N 9', 'Solids 5']], ['manure', ['TDS 300', 'Alkalinity 120', 'Ammonium N 3', 'Organic N 9', 'Total P 4', 'Total K 4']],
    // The same line is one sign, and soils have moisture, dry matter and C:N too; a carbonate hardness is a water's.
    ['soil', ['Total N 12 lb/ton', 'Moisture 80 %']], ['manure', ['Total N 12 lb/ton', 'Moisture 80 %', 'Total P 4']], ['soil', ['Moisture (%) 40', 'Moisture: 40', 'Solvita 6']], ['soil', ['Solvita 6', 'C:N 12']], ['soil', ['Solvita 6', 'C/N 12']], ['soil', ['Dry matter 60', 'Carbon:nitrogen 12', 'Moisture 20']], ['water', ['Carbonate hardness 90', 'TDS 300']],
    // Compost and manure are organic matter, and print their pH; a feed, a water and a leaf have none of the one, leaf and bag none of the other.
    ['compost', ['Compost analysis', 'Organic matter 40 %', 'pH 7.2']], ['manure', ['Manure analysis', 'Organic matter 40 %', 'pH 7.2']], ['feed', ['Silage analysis', 'pH 4.1']], ['water', ['Water analysis', 'pH 7.1']],
    ['soil', ['Silage analysis', 'Organic matter 4 %']], ['soil', ['Water analysis', 'Nitrate 12; organic matter 4 %']], ['soil', ['Leaf analysis', 'Boron 30; pH 6.4']], ['soil', ['Guaranteed analysis', 'pH 6.4']], ['leaf', ['Leaf analysis', 'Sap pH 5.8']],
  ])('%s: %j', (kind, lines) => { expect(of(...lines)).toBe(kind); });
  test.each<[string, string]>([
    ['## Hardness 200', 'TDS 300'], ['> "Hardness" 200', 'TDS 300'], ['adj.SAR 2', 'TDS 300'], ['Bicarbonates 200', 'Hardness 9\nChloride 30'], ['Water analysis report   4711', ''], ['Matrix:   Water', ''], ['Matrix | Water', ''],
  ])('%s is of a water', (line, other) => { expect(of(line, other, 'Nitrate 12 ppm')).toBe('water'); });
  test.each<[string, string]>([['Water test kit', ''], ['Water analysis fee 25', ''], ['Filter material: Compost', ''], ['Hardness sollte 200', 'TDS 300'], ['Hardness sollten 200', 'TDS 300'], ['Water analysis report', 'C.EC 12'], ['Water analysis report', 'CE.C 12'], ['Water analysis report', 'pH(KCl) 5.2'], ['Water analysis report', 'pH water 6.2'], ['Water analysis report', 'Capacidad intercambio 12'], ['Water analysis report', 'Textur lehmig']])('%s / %s is of none', (line, other) => { expect(of(line, other, 'Nitrate 12 ppm')).toBe('soil'); });
  test('a feed may be textured', () => { expect(of('Feed analysis', 'Textured 5')).toBe('feed'); });
  test('amounts in a ton, or a thousand gallons', () => {
    for (const line of ['Nitrogen;12;lb/ton', 'Nitrogen 12 lb/1000gal', 'Nitrogen 12 lb/1,000gal']) expect([line, of(line, 'Solids 5')]).toEqual([line, 'manure']);
    expect(of('Water analysis', 'Salts 2 lb/acft')).toBe('water');
  });
  test('prose by its words and numbers', () => {
    const list = (words: number, numbers: number): string => ['Hardness', ...Array<string>(words - 1).fill('iron')].map((w, i) => (i < numbers ? `${w} 25` : w)).join(' ');
    // More than fourteen words with a number to fewer than every fourth; indented it is the same.
    expect([[16, 3], [16, 4], [15, 3], [14, 3]].map(([words, numbers]) => of(list(words!, numbers!), 'TDS 300'))).toEqual(['soil', 'water', 'soil', 'water']);
    expect([of(`    ${list(16, 3)}`, 'TDS 300'), of(list(16, 3).replace('25', '2,500.5'), 'TDS 300')]).toEqual(['soil', 'soil']);
  });
  test('a leaf holds nitrogen and phosphorus', () => {
    expect([of('N 2.2 %', 'P 0.2 %', 'K 1.4 %', 'Mg 0.3 %'), of('N 2.2 %', 'K 1.4 %', 'Ca 1.6 %', 'Mg 0.3 %'), of('P 0.2 %', 'K 1.4 %', 'Ca 1.6 %', 'Mg 0.3 %'), of('N 2.2 %', 'P 0.2 %', 'K 1.4 %')]).toEqual(['leaf', 'soil', 'soil', 'soil']);
  });
});

test('each kind is told by its name, with no more than is needed', () => {
  const titles = ['Water analysis', 'Compost analysis', 'Manure analysis', 'Silage analysis', 'Guaranteed analysis'];
  expect(titles.map((title) => strangerNotice(kindOf(`${title}\n`), 'r')?.code)).toEqual(['report-water', 'report-compost', 'report-manure', 'report-feed', 'report-fertilizer']);
  expect([kindOf('Soil pH 6.4\n'), kindOf('Nitrate 12 ppm\n')]).toEqual([{ kind: 'soil', words: [] }, { kind: 'soil', words: [] }]);
  expect(kindOf('Moisture (%) 40\nSolvita 6\nTotal N 1.2 %\n').words).toEqual(['Moisture', 'Solvita', 'Total N']);
  expect(kindOf(`Sample type: Water ${'x'.repeat(60)}\n`).words.map((w) => w.length)).toEqual([60]);
});
