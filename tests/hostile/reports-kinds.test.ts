// Reports of another kind: named, never read as a soil. The texts are made up in the layouts labs use (practice);
// what each is, is said by its own title and units.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Kind } from '../../src/soil/report-kind.ts';
import { kindOfLines } from '../../src/soil/report-kind.ts';
import { linesOf } from '../../src/soil/text.ts';
import { both, GOOD } from './hold.ts';

const kindOf = (text: string): Kind => kindOfLines(linesOf(text.slice(0, 65_536)));

const OTHERS: readonly (readonly [name: string, kind: string, text: string, word: string])[] = [
  ['irrigation water', 'water', `Irrigation Water Suitability Report
Lab No: 4711   Date: 6/3/2025
pH 7.9
EC 0.82 dS/m
Calcium 68 ppm
Magnesium 22 ppm
Sodium 41 ppm
Potassium 3 ppm
Bicarbonate 244 ppm
Chloride 39 ppm
Sulfate 61 ppm
Nitrate-N 4.2 ppm
SAR 1.1
`, 'Irrigation Water Suitability Report'],
  ['a well, without a title', 'water', 'pH\t7.4\nHardness\t18 gpg\nTDS\t410 ppm\nIron\t0.4 ppm\nNitrate\t6 mg/L\n', 'Hardness'],
  ['a well, comma-separated', 'water', 'Test,Result,Unit\npH,7.2,\nTotal Hardness,210,mg/L\nTotal Dissolved Solids,380,mg/L\nTotal Coliform,absent,\nNitrate-N,3.1,mg/L\n', 'Total Hardness'],
  ['a lab for soil and water', 'water', 'Soil, Water and Forage Testing Laboratory\nSample Type: Well water\npH 7.4\nNitrate-N 12 ppm\nPotassium 4 ppm\nSodium 30 ppm\n', 'Well water'],
  ['a water report with advice on soil', 'water', 'WATER ANALYSIS REPORT\npH 8.1\nHardness 300 mg/L\nBicarbonate 310 mg/L\nSodium 90 mg/L\nWater of this kind may seal the surface of a clay soil if you use it for years.\n', 'WATER ANALYSIS REPORT'],
  ['German drinking water', 'water', 'Trinkwasseranalyse\npH-Wert 7,4\nGesamthärte 14 °dH\nNitrat 22 mg/l\nCalcium 84 mg/l\nKalium 2,1 mg/l\n', 'Trinkwasseranalyse'],
  ['Spanish irrigation water', 'water', 'Análisis de agua de riego\npH 7,8\nDureza 32 °F\nBicarbonatos 240 mg/l\nPotasio 4 mg/l\n', 'Análisis de agua de riego'],
  ['French water', 'water', "Analyse d'eau\npH 7,6\nDureté 28 °f\nNitrates 18 mg/l\nPotassium 3 mg/l\n", "Analyse d'eau"],
  ['Italian water', 'water', "Analisi dell'acqua\npH 7,5\nDurezza 30 °f\nNitrati 12 mg/l\nPotassio 2 mg/l\n", "Analisi dell'acqua"],
  ['Portuguese water', 'water', 'Análise de água\npH 7,1\nDureza 120 mg/l\nPotássio 3 mg/l\n', 'Análise de água'],
  ['compost', 'compost', 'Compost Analysis Report\nMoisture content 42.1 %\npH 7.6\nTotal Nitrogen 1.4 % dry basis\nC:N ratio 14.2\nPhosphorus 0.5 %\nPotassium 1.1 %\nOrganic matter 38 %\n', 'Compost Analysis Report'],
  ['compost, without a title', 'compost', 'As received  Dry weight\nMoisture 45.2 %\nTotal N 1.2 %  2.1 %\nC/N ratio 15\nPhosphorus 0.31 %\nPotassium 0.9 %\n', 'As received'],
  ['potting mix', 'compost', 'Potting Mix Analysis\npH 5.9\nSoluble salts 1.8 mS/cm\nNitrate-N 80 ppm\nPhosphorus 9 ppm\nPotassium 120 ppm\n', 'Potting Mix Analysis'],
  ['German compost', 'compost', 'Kompostanalyse\npH 7,8\nTrockensubstanz 61 %\nStickstoff 1,3 %\nPhosphat (P2O5) 0,7 %\nKali (K2O) 1,2 %\n', 'Kompostanalyse'],
  ['French compost', 'compost', 'Analyse de compost\nMatière sèche 55 %\nC/N 16\nAzote 1,4 %\nPotassium 1,1 %\n', 'Analyse de compost'],
  ['manure', 'manure', 'Manure Analysis Report\nMoisture 71 %\nTotal Nitrogen 12.4 lb/ton\nPhosphate (P2O5) 6.1 lb/ton\nPotash (K2O) 10.2 lb/ton\n', 'Manure Analysis Report'],
  ['manure, without a title', 'manure', 'Dry matter 8.1 %\nTotal Nitrogen 31 lb/1000 gal\nAmmonium-N 18 lb/1000 gal\nP2O5 14 lb/1000 gal\nK2O 25 lb/1000 gal\n', 'Dry matter'],
  ['poultry litter by its sample type', 'manure', 'Sample type: Poultry litter\nTotal N 3.1 %\nPhosphorus 1.4 %\nPotassium 2.2 %\n', 'Poultry litter'],
  ['German slurry', 'manure', 'Gülleanalyse\nTrockensubstanz 7,2 %\nGesamt-Stickstoff 4,1 kg/m3\nKali (K2O) 5,0 kg/m3\n', 'Gülleanalyse'],
  ['hay', 'feed', 'Forage Analysis\nCrude protein 17.2 %\nADF 31 %\nNDF 42 %\nTDN 62 %\nCalcium 1.2 %\nPhosphorus 0.28 %\nPotassium 2.3 %\n', 'Forage Analysis'],
  ['feed, without a title', 'feed', 'Crude Protein | 17.2 | %\nAcid Detergent Fiber | 31 | %\nCalcium | 1.2 | %\nPhosphorus | 0.28 | %\n', 'Crude Protein'],
  ['French fodder', 'feed', 'Analyse de fourrage\nMatière azotée totale 14 %\nCellulose brute 28 %\nPhosphore 0,3 %\n', 'Analyse de fourrage'],
  ['a label', 'fertiliser', 'GUARANTEED ANALYSIS\nTotal Nitrogen (N) 10%\nAvailable Phosphate (P2O5) 10%\nSoluble Potash (K2O) 10%\nDerived from: urea, ammonium phosphate, muriate of potash\n', 'GUARANTEED ANALYSIS'],
];

test.each(OTHERS)('%s', (_, kind, text, word) => {
  const found = kindOf(text);
  expect(found.kind).toBe(kind);
  expect(found.words.join(', ')).toContain(word);
});

const LEAVES: readonly (readonly [string, string])[] = [
  ['a plant tissue report', 'Plant Tissue Analysis\nNitrogen 2.21 %\nPhosphorus 0.18 %\nPotassium 1.4 %\nCalcium 1.6 %\nMagnesium 0.31 %\nBoron 32 ppm\nZinc 21 ppm\n'],
  ['leaves by their numbers alone', 'N 2.21 %\nP 0.18 %\nK 1.4 %\nCa 1.6 %\nMg 0.31 %\nB 32 ppm\nZn 21 ppm\n'],
  ['the unit before the value', 'N (%) 2.21\nP (%) 0.18\nK (%) 1.4\nCa (%) 1.6\nMg (%) 0.31\nB (ppm) 32\n'],
  ['a table', 'Element | Result | Unit\nNitrogen | 2.21 | %\nPhosphorus | 0.18 | %\nPotassium | 1.40 | %\nCalcium | 1.60 | %\nZinc | 21 | ppm\n'],
  ['grams to the kilogram', 'Azoto 22,1 g/kg\nFosforo 1,8 g/kg\nPotassio 14 g/kg\nCalcio 16 g/kg\nBoro 32 mg/kg\n'],
  ['a lab for soil and plants', 'Soil and Plant Analysis Laboratory\nSample type: Apple leaves\nNitrogen 2.2 %\nPotassium 1.3 %\n'],
  ['German', 'Blattanalyse\nStickstoff 2,2 %\nPhosphor 0,18 %\nKalium 1,4 %\n'],
  ['Spanish', 'Análisis foliar\nNitrógeno 2,2 %\nFósforo 0,18 %\nPotasio 1,4 %\n'],
  ['French', 'Analyse foliaire\nAzote 2,2 %\nPhosphore 0,18 %\nPotassium 1,4 %\n'],
  ['Italian', 'Analisi fogliare\nAzoto 2,2 %\nFosforo 0,18 %\n'],
  ['Portuguese', 'Análise foliar\nNitrogênio 2,2 %\nFósforo 0,18 %\n'],
];
test.each(LEAVES)('leaf: %s', (_, text) => { expect(kindOf(text).kind).toBe('leaf'); });

const SOIL = 'pH 6.4\nPhosphorus 42 ppm Mehlich 3\nPotassium 180 ppm\nCEC 11.2 meq/100g\n';
describe('a soil report stays one', () => {
  test.each([
    ['advice on irrigation water', `${SOIL}Have your irrigation water tested for hardness, TDS, bicarbonate and coliform.\n`],
    ['a heading for water left empty', `${SOIL}Water analysis\nnot requested\n`],
    ['compost advice', `${SOIL}Spread 1 inch of compost; finished compost has a C:N ratio under 20 and 40 % moisture.\n`],
    ['a compost heading', `${SOIL}Compost analysis\n`],
    ['manure in a recommendation', `pH 6.4\nPhosphorus 42 ppm\nPotassium 180 ppm\nManure: 20 lb per 100 sq ft\nDairy manure 10 lb N/ton\n`],
    ['leaves in a sentence', `pH 6.4\nPhosphorus 42 ppm\nPotassium 180 ppm\nSend a leaf sample in July.\nLeaf analysis\n`],
    ['a list of what the lab sells', 'pH 6.4\nPhosphorus 42 ppm\nPotassium 180 ppm\nWater test: not done\nForage test: not done\nLeaf test: not done\n'],
    ['salinity of a paste extract', 'Soil salinity\npH 7.9\nECe 3.1 dS/m\nBicarbonate 4.1 meq/L\nChloride 9 meq/L\nSulfate 11 meq/L\nSAR 6.2\nSodium 14 meq/L\nCEC 22 meq/100g\n'],
    ['chloride, SAR and sulfate without hardness', 'pH 7.9\nEC 3.1 dS/m\nChloride 90 ppm\nSulfate 110 ppm\nSAR 6.2\nPhosphorus 22 ppm\nPotassium 190 ppm\n'],
    ['base saturation in %, as of U12', '2010: K: 2.7% Ca: 44% , Mg:6.3% pH: 5.9\n'],
    ['saturation under a heading', 'Cation saturation\nK 3 %\nCa 5 %\nMg 1 %\nPhosphorus 42 ppm\nNitrogen 1 %\n'],
    ['a French soil with C/N and total nitrogen', 'pH eau 6,8\nMatière organique 2,4 %\nC/N 9,8\nAzote total 1,4 g/kg\nP2O5 Olsen 60 mg/kg\nArgile 18 %\n'],
    ['an Italian soil', 'Analisi del terreno\npH 7,2\nAzoto totale 1,2 g/kg\nSostanza organica 2,1 %\nC/N 10\nFosforo assimilabile 22 mg/kg\n'],
    ['soil moisture', 'pH 6.4\nMoisture 12 %\nOrganic matter 4 %\nPhosphorus 42 ppm\nPotassium 180 ppm\n'],
    ['a bed called compost', 'Sample: Compost bed\npH 6.4\nPhosphorus 42 ppm\nPotassium 180 ppm\n'],
    ['a bed called by the water', 'Sample: Water meadow\npH 6.4\nPhosphorus 42 ppm\n'],
    ['the sender said so', 'Sample type: soil\nHardness 3\nTDS 120\npH 6.4\n'],
    ['soil and leaf in one text', `${SOIL}Leaf analysis\nN 2.2 %\nP 0.18 %\nK 1.4 %\nCa 1.6 %\n`],
    ['a label behind the report', `${SOIL}Guaranteed analysis 10-10-10\n`],
    ['a letter', 'Dear grower,\nthank you for your order of a water test.\n'],
    ['nothing', ''],
  ])('%s', (_, text) => { expect(kindOf(text)).toEqual({ kind: 'soil', words: [] }); });

  const reports = fileURLToPath(new URL('../reports', import.meta.url));
  const files = readdirSync(reports, { recursive: true }).map(String).filter((f) => f.endsWith('.txt') && !/leaf|foliar|water|compost-|manure/.test(f));
  test('the reports are there', () => { expect(files.length).toBeGreaterThan(40); });
  test.each(files)('tests/reports/%s', (file) => { expect(kindOf(readFileSync(`${reports}/${file}`, 'utf8'))).toEqual({ kind: 'soil', words: [] }); });
});

test('a report of any size is judged at once', () => {
  const long = ['Hardness '.repeat(200_000), 'pH 6.4\n'.repeat(300_000), 'crude, '.repeat(200_000), 'a '.repeat(500_000), '('.repeat(500_000), 'Sample type: '.repeat(50_000), `${'x '.repeat(150)}\n`.repeat(3000), `${'N '.repeat(190)}%\n`.repeat(3000), `${'Total N ,,,, '.repeat(30)}%\n`.repeat(3000), `${'test '.repeat(79)}\n`.repeat(3000), `water${' test'.repeat(79)}!\n`.repeat(3000)];
  const start = performance.now();
  for (const text of long) kindOf(text);
  // Eleven texts of up to 3 MB; a pattern that stalls takes minutes.
  expect(performance.now() - start).toBeLessThan(5000);
});

describe.each([['read', ['read']], ['plan', ['plan']], ['check', ['check']]] as const)('%s says so and stops', (_, argv) => {
  test.each(OTHERS)('%s', async (_name, kind, text, word) => {
    const { text: said, notices, json } = await both(argv, { 'orchard.yaml': GOOD, 'soil/2025.txt': text });
    expect(said.code).toBe(3);
    expect(notices.filter((n) => n.severity === 'error').map((n) => n.code)).toEqual([`report-${kind.replace('fertiliser', 'fertilizer')}`]);
    expect(said.stderr).toContain('soil/2025.txt');
    expect(said.stderr).toContain(word);
    for (const sample of json.json.result?.samples ?? []) expect(sample.readings).toEqual([]);
  });
});
