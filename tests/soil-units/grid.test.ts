// Tables as labs and growers lay them out (practice): what each says to a careful reader. `told.ts` writes it a line a reading.
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import { told } from './told.ts';

const two = (a: string, b: string): string[] => [`Front: ${a}`, `Front: ${b}`];
const both = ['Front: phosphorus 42 ppm', 'Front: potassium 180 ppm', 'Back: phosphorus 12 ppm', 'Back: potassium 90 ppm'];
const byNumber = ['sample 1: phosphorus 42 ppm', 'sample 1: potassium 180 ppm', 'sample 2: phosphorus 12 ppm', 'sample 2: potassium 90 ppm'];
const PK = ['sample 1: phosphorus 42 ppm', 'sample 1: potassium 180 ppm'];
const front = [two('phosphorus 42 ppm', 'potassium 180 ppm')].flat();

test.each<[string, string, readonly string[]]>([
  // Where the table begins, how it is parted, what ends it.
  ['a table of one item', 'Sample | pH\nFront | 6.4\nBack | 7.0\n', ['Front: ph 6.4 pH', 'Back: ph 7 pH']],
  ['in wide gaps', 'Sample    pH\nFront     6.4\nBack      7.0\n', ['Front: ph 6.4 pH', 'Back: ph 7 pH']],
  ['rules between rows', 'Sample | P ppm | K ppm\n-------|-------|------\nFront | 42 | 180\n-------|-------|------\nBack | 12 | 90\n', both],
  ['samples without a head, in Markdown', '| | P ppm | K ppm |\n|---|---|---|\n| Front | 42 | 180 |\n| Back | 12 | 90 |\n', both],
  ['samples without a head, in tabs', '\tP ppm\tK ppm\nFront\t42\t180\nBack\t12\t90\n', both],
  ['limits in Markdown', '| Test | Result | Low | High |\n|---|---|---|---|\n| P ppm | 42 | 30 | 50 |\n', ['sample 1: phosphorus 42 ppm 30-50']],
  ['an empty cell between tabs', 'Test\tResult\tLow\tHigh\nP ppm\t42\t\t50\nK ppm\t180\t120\t\n', ['sample 1: phosphorus 42 ppm -50', 'sample 1: potassium 180 ppm 120-']],
  ['a row without a name', 'Test | Result | Unit\nPhosphorus | 42 | ppm\n | 38 | ppm\nZinc | 2 | ppm\n', ['sample 1: phosphorus 42 ppm', 'sample 1: zinc 2 ppm', 'unread 3']],
  ['a row of an unknown name', 'Test | Result | Unit\nPhosphorus | 42 | ppm\nZork | 12 | ppm\nZinc | 2 | ppm\n', ['sample 1: phosphorus 42 ppm', 'sample 1: zinc 2 ppm', 'unread 3']],
  ['a comma in quotes', 'Sample,P ppm,K ppm\n"Front, by the wall",42,180\n', ['Front, by the wall: phosphorus 42 ppm', 'Front, by the wall: potassium 180 ppm']],
  ['all in quotes', '"Test","Result","Unit","Range"\n"P","42","ppm","30-50"\n"K","1,180","ppm","120-200"\n', ['sample 1: phosphorus 42 ppm 30-50', 'sample 1: potassium 1180 ppm 120-200']],
  ['a decimal comma between semicolons', 'Test;Result;Unit;Low;High\nP;4,2;mg/100g;3;5\nK;18;mg/100g;10;20\n', ['sample 1: phosphorus 4.2 mg/100g 3-5', 'sample 1: potassium 18 mg/100g 10-20']],
  ['a table of commas has points for decimals, whatever the report has', 'pH-Wert: 6,4\n\nProbe,P ppm,Ca ppm\nVorn,4.125,90\n', ['sample 1: ph 6.4 pH', 'Vorn: phosphorus 4.125 ppm', 'Vorn: calcium 90 ppm']],
  ['one of tabs has those of the report', 'pH-Wert: 6,4\n\nProbe\tP ppm\tZn ppm\nVorn\t4.125\t90\n', ['sample 1: ph 6.4 pH', 'Vorn: phosphorus 4125 ppm', 'Vorn: zinc 90 ppm']],
  ['a blank line below the heads', 'Sample   P      K\n         ppm    ppm\n\nFront    42     180\n', front],
  ['blank lines between rows', 'Nutrient | Result | Range\n\nPhosphorus | 42 ppm | 30-50\n\nPotassium | 180 ppm | 120-200\n', ['sample 1: phosphorus 42 ppm 30-50', 'sample 1: potassium 180 ppm 120-200']],
  ['a rule in wide gaps, words below', 'Nutrient     Result    Range\nPhosphorus   42 ppm    30-50\n----------   ------    -----\nPotassium    180 ppm   120-200\nThank you for your custom\n', ['sample 1: phosphorus 42 ppm 30-50', 'sample 1: potassium 180 ppm 120-200', 'unread 5']],
  ['columns of two years leave open which counts', 'Nutrient | 2023 | 2024\nP ppm | 38 | 42\n', ['unread 1', 'unread 2', 'two-values 2', 'nothing-read']],
  ['one year counts', 'Test | Result 2024 | Unit\nP | 42 | ppm\n', ['sample 1: phosphorus 42 ppm']],
  ['a year alone heads an unknown column', 'Sample | P ppm | K ppm | 2023\nFront | 42 | 180 | 7\n', [...front, 'column-unknown 1']],
  ['a column twice is told', 'Sample | P ppm | P ppm | K ppm\nFront | 42 | 12 | 180\n', [...front, 'reading-twice 2']],
  ['a line of values heads none', 'P resina 9,9 mg/l, Capacidade de troca catiônica 16 cmolc/dm3\npH SMP 5,8\n', ['sample 1: phosphorus 9.9 mg/L resin', 'sample 1: cec 16 cmol/dm3', 'sample 1: buffer-ph 5.8 pH smp']],
  // Samples by number and by name.
  ['by number', 'Sample | 1 | 2\nP ppm | 42 | 12\nK ppm | 180 | 90\n', byNumber], ['No.', 'Sample No. | 1 | 2\nP ppm | 42 | 12\nK ppm | 180 | 90\n', byNumber], ['with bars about', '| Plots: | 1 | 2 |\n|---|---|---|\n| P ppm | 42 | 12 |\n| K ppm | 180 | 90 |\n', byNumber],
  ['in German', 'Probe Nr.   1     2\nP2O5 CAL    12    14\n', ['sample 1: phosphorus 12 cal P2O5', 'sample 2: phosphorus 14 cal P2O5']],
  ['in wide gaps', 'Sample    1     2     12\nP ppm     42    12    8\n', ['sample 1: phosphorus 42 ppm', 'sample 2: phosphorus 12 ppm', 'sample 12: phosphorus 8 ppm']],
  ['numbered beds', 'Test | Bed 1 | Bed 2\nP ppm | 42 | 12\n', ['Bed 1: phosphorus 42 ppm', 'Bed 2: phosphorus 12 ppm']],
  ['a name rather than a number', 'Bed | Name | P ppm | K ppm\n1 | Front | 42 | 180\n2 | Back | 12 | 90\n', both], ['none of the lab\'s numbers', 'Name | Lab no. | P ppm | K ppm\nFront | 7734 | 42 | 180\nBack | 7735 | 12 | 90\n', both],
  ['the lab\'s number is no name', 'Lab no | P ppm | K ppm\n77 | 42 | 180\n', PK], ['nor is a bare 1', 'Sample | P ppm | K ppm\n1 | 42 | 180\n', PK], ['no column of names', 'P ppm | K ppm\n42 | 180\n', PK],
  ['a name behind the values', 'P ppm | K ppm | Bed\n42 | 180 | Front\n12 | 90 | Back\n', both],
  // Rows of units and methods below the heads.
  ['a method and a unit', 'Sample    P         K        Ca\n          Olsen     ppm      ppm\nFront     42        180      900\n', ['Front: phosphorus 42 olsen', 'Front: potassium 180 ppm', 'Front: calcium 900 ppm']],
  ['units with blanks and figures', 'Sample    P         K\n          mg/100 g  mg/100 g\nFront     4.2       18\n', two('phosphorus 4.2 mg/100g', 'potassium 18 mg/100g')],
  ['a unit drawn over two columns', 'Sample    P      Ca       Mg\n          mg/l   -- meq/100 g --\nFront     20     3.5      1.2\n', [...two('phosphorus 20 mg/L', 'calcium 3.5 meq/100g'), 'Front: magnesium 1.2 meq/100g']],
  ['a short row of methods says of nothing', 'Sample | P ppm | K ppm\nOlsen | Mehlich 3\nFront | 42 | 180\n', front],
  ['a short row under an empty cell does', 'Sample | P | K ppm\n | ppm\nFront | 42 | 180\n', front],
  ['values and words by a row of both', 'Sample   P       K       Mg\n         ppm  Rating  ppm  Rating  ppm  Rating\nFront    42   high    180  low   90  medium\nBack     12   low     90   low   40  low\n', [
    ...two('phosphorus 42 ppm high', 'potassium 180 ppm low'), 'Front: magnesium 90 ppm medium', 'Back: phosphorus 12 ppm low', 'Back: potassium 90 ppm low', 'Back: magnesium 40 ppm low']],
  ['of one sample without a name', 'P       K       Mg\nppm  Rating  ppm  Rating  ppm  Rating\n42   high    180  low   90  medium\n', ['sample 1: phosphorus 42 ppm high', 'sample 1: potassium 180 ppm low', 'sample 1: magnesium 90 ppm medium']],
  ['of classes by letter', 'Probe   P2O5         K2O         Mg\n        mg/100g  Kl  mg/100g  Kl  mg/100g  Kl\nVorn    12       B   20       C   8        D\n', ['Vorn: phosphorus 12 mg/100g P2O5 low', 'Vorn: potassium 20 mg/100g K2O optimum', 'Vorn: magnesium 8 mg/100g high']],
  // What a cell may hold that is no number.
  ['a word for none made', 'Sample | P ppm | K ppm | Zn ppm\nFront | 42 | n/a | 2\n', two('phosphorus 42 ppm', 'zinc 2 ppm')], ['in German', 'Probe | P ppm | K ppm | Zn ppm\nFront | 42 | nicht bestimmt | 2\n', two('phosphorus 42 ppm', 'zinc 2 ppm')], ['in Spanish', 'Muestra | P ppm | K ppm | Zn ppm\nFront | 42 | no solicitado | 2\n', two('phosphorus 42 ppm', 'zinc 2 ppm')],
  ['a word for none found', 'Sample | P ppm | K ppm | Zn ppm\nFront | 42 | not detected | 2\n', ['Front: phosphorus 42 ppm', 'Front: potassium < ppm', 'Front: zinc 2 ppm']],
  ['traces, strokes, a point', 'Sample | P ppm | K ppm | Zn ppm\nFront | 42 | tr. | 2\nBack | 12 | -- | .\n', ['Front: phosphorus 42 ppm', 'Front: potassium < ppm', 'Front: zinc 2 ppm', 'Back: phosphorus 12 ppm']],
  ['a limit', 'Sample | P ppm | K ppm\nFront | <5 | > 400\n', two('phosphorus < 5 ppm', 'potassium > 400 ppm')],
  ['a texture', 'Sample | P ppm | K ppm | Texture\nFront | 42 | 180 | sandy loam\nBack | 12 | 90 | clay\n', [...front, 'Front: texture', ...both.slice(2), 'Back: texture']],
  ['a remark in one cell of several', 'Sample | P ppm | K ppm | Zn ppm | Ca ppm\nFront | 42 | 180 | see the next page | 900\nBack | 12 | see the next page | see the next page | 800\n', [...front, 'Front: calcium 900 ppm', 'unread 3']],
  ['a cell that names an item is under no other', 'Sample | P ppm | K ppm | Zn ppm\nFront | 42 | K 180 | 2\n', ['unread 1', 'unread 2', 'two-values 2', 'nothing-read']],
  ['gaps by their place', 'Sample          P ppm     K ppm     Zn ppm\nFront           42                  2\nBack            12        90\n', ['Front: phosphorus 42 ppm', 'Front: zinc 2 ppm', 'Back: phosphorus 12 ppm', 'Back: potassium 90 ppm']],
  ['classes behind values', 'Plot   pH    P ppm   K ppm\n1      6.4   42   H    180   L\n2      7.0   12   VL   90   M\n', ['sample 1: ph 6.4 pH', 'sample 1: phosphorus 42 ppm high', 'sample 1: potassium 180 ppm low', 'sample 2: ph 7 pH', 'sample 2: phosphorus 12 ppm very-low', 'sample 2: potassium 90 ppm medium']],
  ['a cell that is no number is told', 'Sample | P ppm | K ppm\nfront bed | 42x | 180\n', ['front bed: potassium 180 ppm', 'line-unclear 2']], ['nor is a half', 'Sample | P ppm | K ppm\nFront | 1/2 | 180\n', ['Front: potassium 180 ppm', 'not-a-number 2']],
  ['names with their accents, all in capitals', 'SAMPLE | P PPM | MG PPM\nÁCKER | 42 | 180\nJARDÍN | 12 | 90\n', ['ÁCKER: phosphorus 42 ppm', 'ÁCKER: magnesium 180 ppm', 'JARDÍN: phosphorus 12 ppm', 'JARDÍN: magnesium 90 ppm']],
  ['more unknown columns than known', 'Sample | P ppm | Foo | Bar | Baz | K ppm\nFront | 42 | a | b | c | 180\n', front], ['a line of few cells ends it', 'Sample | P ppm | K ppm | Zn ppm | Ca ppm\nFront | 42 | 180 | 2 | 900\nReported | 2024\n', [...front, 'Front: zinc 2 ppm', 'Front: calcium 900 ppm', 'unread 3']],
  // Columns that say something of their neighbour.
  ['a word of each', 'Sample | P (ppm) | P rating | K (ppm) | K rating\nFront | 42 | high | 180 | L\nBack | 12 | - | 90 | VL\n', [...two('phosphorus 42 ppm high', 'potassium 180 ppm low'), 'Back: phosphorus 12 ppm', 'Back: potassium 90 ppm very-low']],
  ['without the name again', 'Sample | P (ppm) | Rating | K (ppm) | Rating\nFront | 42 | high | 180 | low\nBack | 12 | low | 90 |\n', [...two('phosphorus 42 ppm high', 'potassium 180 ppm low'), 'Back: phosphorus 12 ppm low', 'Back: potassium 90 ppm']],
  ['one word of nobody knows what', 'Sample | P ppm | K ppm | Rating\nFront | 42 | 180 | low\n', front],
  ['indices', 'Sample | P (mg/l) | P index | K (mg/l) | K index\nFront | 18 | 2 | 150 | 1\n', two('phosphorus 18 mg/L i2', 'potassium 150 mg/L i1')],
  ['indices without the name again', 'Sample | P (mg/l) | Index | K (mg/l) | Index\nFront | 18 | 2 | 150 | 1\n', two('phosphorus 18 mg/L i2', 'potassium 150 mg/L i1')],
  ['units', 'Sample | P | P unit | K | K unit\nFront | 42 | ppm | 180 | mg/kg\n', two('phosphorus 42 ppm', 'potassium 180 mg/kg')],
  ['methods', 'Sample | P ppm | P method | K ppm | K method\nFront | 42 | Olsen | 180 | Mehlich 3\n', two('phosphorus 42 ppm olsen', 'potassium 180 ppm mehlich-3')],
  ['ranges, before the name and behind it', 'Sample | P ppm | P range | K ppm | range of K\nFront | 42 | 30-50 | 180 | (120-200)\n', two('phosphorus 42 ppm 30-50', 'potassium 180 ppm 120-200')],
  ['ranges without the name again', 'Sample | P ppm | Range | K ppm | Range\nFront | 42 | 30-50 | 180 | 120-200\n', two('phosphorus 42 ppm 30-50', 'potassium 180 ppm 120-200')],
  ['an older value', 'Sample | P ppm | Previous P | K ppm\nFront | 42 | 38 | 180\n', front], ['"level" for the value', 'Sample | Phosphorus level (ppm) | Potassium level (ppm)\nFront | 42 | 180\n', front],
  ['a word before its value', 'Sample | P_rating | P_ppm | K_ppm\nFront | high | 42 | 180\n', two('phosphorus 42 ppm high', 'potassium 180 ppm')],
  ['German classes', 'Probe | P2O5 mg/100 g | P2O5 Klasse | K2O mg/100 g | K2O Klasse\nVorn | 12 | B | 20 | C\n', ['Vorn: phosphorus 12 mg/100g P2O5 low', 'Vorn: potassium 20 mg/100g K2O optimum']],
  ['a number under a head of words', 'Sample | P ppm | P rating | K ppm\nFront | 42 | 7 | 180\n', [...front, 'column-unknown 1']],
  ['numbers as names', 'Sample | P ppm | K ppm\n12 | 42 | 180\n13 | 12 | 90\n', ['sample 12: phosphorus 42 ppm', 'sample 12: potassium 180 ppm', 'sample 13: phosphorus 12 ppm', 'sample 13: potassium 90 ppm']],
  ['a rate is told', 'Sample | P ppm | N (lb/1000 sq ft) | K ppm\nFront | 42 | 3 | 180\nBack | 12 | < 3.5 | 90\n', [...both, 'line-unclear 2', 'line-unclear 3']], ['values that cannot be', 'Sample | P ppm | K ppm\nFront | -42 | -180\nBack | 12 | 90\n', [...both.slice(2), 'value-negative 2', 'value-negative 2']], ['thousands or ones between commas', 'pH-Wert: 6,4\n\nProbe,P ppm,Ca ppm\nVorn,4.125,2.405\n', ['sample 1: ph 6.4 pH', 'Vorn: phosphorus 4.125 ppm', 'number-unclear 4']],
  ['a ratio', 'Sample | P ppm | Ca:Mg ratio | K ppm\nFront | 42 | 6.5 | 180\n', front],
])('samples down the page: %s', (_, text, expected) => { expect(told(text)).toEqual(expected); });

const onePK = (p: string, k: string): string[] => [`sample 1: ${p}`, `sample 1: ${k}`];
const topBottom = ['Top: phosphorus 18 mg/L i2', 'Top: potassium 150 mg/L i1', 'Bottom: phosphorus 9 mg/L i0', 'Bottom: potassium 241 mg/L i2'];
test.each<[string, string, readonly string[]]>([
  // The columns of a lone sample.
  ['the unit and method in the head', 'Test | Olsen (mg/l) | Index\nP | 18 | 2\nK | 150 | 1\n', onePK('phosphorus 18 mg/L olsen i2', 'potassium 150 mg/L olsen i1')],
  ['an own method leads', 'Test | Result (Mehlich 3) | Rating\nP ppm | 42 | high\nBray P1 ppm | 30 | low\n', ['sample 1: phosphorus 42 ppm mehlich-3 high', 'sample 1: phosphorus 30 ppm bray-1 low']],
  ['an own unit leads, pH has none', 'Test | Result (ppm) | Optimum\nPhosphorus | 42 | 30-50\nPotassium (meq/100g) | 0.5 | -\npH | 6.4 | (6.0-6.8)\n', [...onePK('phosphorus 42 ppm 30-50', 'potassium 0.5 meq/100g'), 'sample 1: ph 6.4 pH 6-6.8']],
  ['limits, one or both', 'Test | Result | Low | High\nPhosphorus ppm | 42 | 30 | 50\nPotassium ppm | 180 | (120) | -\nZinc ppm | 2 | -- | 8\n', [...onePK('phosphorus 42 ppm 30-50', 'potassium 180 ppm 120-'), 'sample 1: zinc 2 ppm -8']],
  ['methods of many words', 'Element | Method | Result ppm\nP | Olsen (0.5 M NaHCO3) | 42\nK | our own | 180\n', onePK('phosphorus 42 ppm olsen', 'potassium 180 ppm')],
  ['the unit for a head', 'Nutrient | ppm | Class\nPhosphorus | 42 | high\nPotassium | 180 | low\n', onePK('phosphorus 42 ppm high', 'potassium 180 ppm low')],
  ['numbers under an unknown head', 'Determinand,Result,Foo\nP ppm,42,7\nK ppm,180,8\n', [...PK, 'column-unknown 1']], ['words under one', 'Determinand,Result,Foo\nP ppm,42,dry\nK ppm,180,wet\n', PK],
  ['units under an unknown head', 'Analysis | Value | xx\nP | 42 | ppm\nK | 180 | ppm\n', PK], ['words of rating under one', 'Analysis | Value | xx\nP ppm | 42 | low\nK ppm | 180 | high\n', onePK('phosphorus 42 ppm low', 'potassium 180 ppm high')],
  ['a word before the value, a value left out', 'Nutrient | Rating | Result\nP ppm | low | 12\nK | high |\n', onePK('phosphorus 12 ppm low', 'potassium high')],
  ['units and methods of other columns are none of the value\'s', 'Test | Result | Apply (lb/acre, Olsen)\nP | 42 | 60\n', ['sample 1: phosphorus 42', 'column-unknown 1']], ['a unit in its own cell leads', 'Test | Result (ppm)\nP | 42\nK | 0.5 meq/100g\npH | 6.4\n', [...onePK('phosphorus 42 ppm', 'potassium 0.5 meq/100g'), 'sample 1: ph 6.4 pH']],
  ['gaps by their place', 'Element      Result    Unit     Method\nPhosphorus   42        ppm      Olsen\nPotassium    180       ppm\nZinc         <0.5      ppm      DTPA\n', [...onePK('phosphorus 42 ppm olsen', 'potassium 180 ppm'), 'sample 1: zinc < 0.5 ppm dtpa']],
  ['what is no result', 'Analysis       Result     Deviation     Previous result\nP ppm          42         3             38\nK ppm          180        -5            170\n', PK],
  // Marks and bars under the lab's words.
  ['values under words', 'Nutrient | Low | Medium | High\nPhosphorus ppm | | 42 |\nPotassium ppm | 90 | - | -\n', onePK('phosphorus 42 ppm medium', 'potassium 90 ppm low')], ['limits under words, no value', 'Nutrient | Low | Medium | High\nPhosphorus ppm | 20 | 42 | 60\n', ['unread 2', 'nothing-read']],
  ['marks', 'Nutrient | Result | Low | Medium | High\nPhosphorus | 42 ppm | - | x | -\nPotassium | 180 ppm | ✓ | |\nZinc | 2 ppm | | | #\nBoron | 1 ppm | no | yes | no\n', [...onePK('phosphorus 42 ppm medium', 'potassium 180 ppm low'), 'sample 1: zinc 2 ppm high', 'sample 1: boron 1 ppm']],
  ['marks in wide gaps', 'Test         Result    Low    Medium    High\nPhosphorus   42 ppm           x\nPotassium    180 ppm   X\nZinc         2 ppm                       ✓\nBoron        1 ppm     XXXXXXXXXXX\n', [...onePK('phosphorus 42 ppm medium', 'potassium 180 ppm low'), 'sample 1: zinc 2 ppm high', 'sample 1: boron 1 ppm']],
  ['bars', '                        Low       Medium    High\nPhosphorus 42 ppm       ##############\nPotassium 90 ppm        ====\nMagnesium 40 ppm        ■■■■■■■■■■■■■■■■■■■■■■■\nCalcium 900 ppm         ███████████\nZinc 2 ppm\n', ['sample 1: phosphorus 42 ppm medium', 'sample 1: potassium 90 ppm low', 'sample 1: magnesium 40 ppm high', 'sample 1: calcium 900 ppm medium', 'sample 1: zinc 2 ppm']],
  // Samples across the page.
  ['two rows of heads, in gaps', '        Top              Bottom\n        mg/l    Index    mg/l    Index\nP       18      2        9       0\nK       150     1        241     2\n', topBottom], ['between bars', 'Nutrient | Top | | Bottom |\n | mg/l | Index | mg/l | Index\nP | 18 | 2 | 9 | 0\nK | 150 | 1 | 241 | 2\n', topBottom],
  ['a rule between them', '| Nutrient | Top | | Bottom | |\n|---|---|---|---|---|\n| | mg/l | Index | mg/l | Index |\n| P | 18 | 2 | 9 | 0 |\n| K | 150 | 1 | 241 | 2 |\n', topBottom],
  ['the sample before', 'Nutrient | Top mg/l | Top index | Bottom mg/l | Bottom index\nP | 18 | 2 | 9 | 0\nK | 150 | 1 | 241 | 2\n', topBottom], ['the sample behind', 'Nutrient | mg/l (Top) | index (Top) | mg/l (Bottom) | index (Bottom)\nP | 18 | 2 | 9 | 0\nK | 150 | 1 | 241 | 2\n', topBottom],
  ['samples of two words', 'Nutrient | Top bed: mg/l | Top bed: index | End bed: mg/l | End bed: index\nP | 18 | 2 | 9 | 0\n', ['Top bed: phosphorus 18 mg/L i2', 'End bed: phosphorus 9 mg/L i0']],
  ['a unit for both', 'Nutrient | Unit | Front value | Back value\nP | ppm | 42 | 12\nK | ppm | 180 | 90\n', both], ['bare names', 'Nutrient | Unit | Front | Back\nP | ppm | 42 | 12\nK | ppm | 180 | 90\n', both], ['in gaps', 'Nutrient   Front   Back\nP ppm      42      12\nK ppm      180     90\n', both],
  ['a method for both', 'Nutrient | Method | Front | Back\nP | Olsen | 42 ppm | 12 ppm\n', ['Front: phosphorus 42 ppm olsen', 'Back: phosphorus 12 ppm olsen']],
  ['a range for both', 'Nutrient | Front | Back | Range\nP ppm | 42 | 12 | (30-50)\n', ['Front: phosphorus 42 ppm 30-50', 'Back: phosphorus 12 ppm 30-50']],
  ['empty cells, traces, unknown names', 'Nutrient | Front | Back\nP ppm | 42 |\nK ppm | - | 90\nZn ppm | trace | 2\nGravel | 3 | 5\n', ['Front: phosphorus 42 ppm', 'Front: zinc < ppm', 'Back: potassium 90 ppm', 'Back: zinc 2 ppm', 'unread 5']],
  ['kinds over items', 'Sample        Index            mg/l\n              P    K    Mg     P    K    Mg\nFront         2    1    3      18   150  160\n', [...two('phosphorus 18 mg/L i2', 'potassium 150 mg/L i1'), 'Front: magnesium 160 mg/L i3']],
  // A kit's table with single blanks.
  ['no name', 'Area pH N P K\n6.7 1 4 2\n', ['sample 1: ph 6.7 pH', 'sample 1: nitrogen 1', 'sample 1: phosphorus 4', 'sample 1: potassium 2']], ['a limit; a number for a name leaves a doubt', 'Area pH N P K\nBed 6.7 1 4 <2\n2 6.8 1 4 2\n', ['Bed: ph 6.7 pH', 'Bed: nitrogen 1', 'Bed: phosphorus 4', 'Bed: potassium < 2', 'unread 3']], ['a number within the name too', 'Area pH N P\nBed 1 6.7 1 4\n', ['unread 1', 'unread 2', 'nothing-read']],
])('items down the page: %s', (_, text, expected) => { expect(told(text)).toEqual(expected); });

const PZn = ['sample 1: phosphorus 42 ppm', 'sample 1: zinc 2 ppm'];
const vorn = ['Vorn: phosphorus 12 ppm', 'Vorn: potassium 20 ppm'];
test.each<[string, string, readonly string[]]>([
  // Where a table begins and what parts it.
  ['a bar before a row is an empty cell where the head has none', 'Sample| P ppm | K ppm | Zn ppm\n| 42 | 180 | 2\n', ['sample 1: phosphorus 42 ppm', 'sample 1: potassium 180 ppm', 'sample 1: zinc 2 ppm']],
  ['one head makes no table', 'Result\nP ppm | 42 | high\n', ['sample 1: phosphorus 42 ppm high', 'unread 1']], ['nor does one before a bar', 'Result |\nP ppm | 42 | high\n', ['sample 1: phosphorus 42 ppm high', 'unread 1']],
  ['a comma in a head of wide gaps', 'Sample, bed     P ppm     K ppm\nFront           42        180\nBack            12        90\n', both],
  ['two rows of heads below a line, a line behind', 'Spring report\n        Top              Bottom\n        mg/l    Index    mg/l    Index\nP       18      2        9       0\nZinc 2 ppm\n', ['Top: phosphorus 18 mg/L i2', 'unread 1', 'Bottom: phosphorus 9 mg/L i0', 'Bottom: zinc 2 ppm']],
  ['a line behind a table of samples', 'Report\nSample | P ppm | K ppm\nFront | 42 | 180\nGreetings\n', [...front, 'unread 1', 'unread 4']], ['a line behind a kit\'s table', 'Report\nArea pH N P\nBed 6.7 1 4\nGreetings\n', ['Bed: ph 6.7 pH', 'Bed: nitrogen 1', 'Bed: phosphorus 4', 'unread 1', 'unread 4']],
  ['a blank behind the bars', '| Test | Result | Unit |  \n  | P | 42 | ppm |  \n  | Zn | 2 | ppm |\n', PZn], ['lines of plus signs', '+------+--------+------+\n| Test | Result | Unit |\n+======+========+======+\n| P    | 42     | ppm  |\n+------+--------+------+\n| Zn   | 2      | ppm  |\n+------+--------+------+\n', PZn],
  ['a semicolon in quotes', 'Sample;P ppm;K ppm\n"Front; by the wall";42;180\n', ['Front; by the wall: phosphorus 42 ppm', 'Front; by the wall: potassium 180 ppm']], ['a lone quote between bars', 'Sample | P ppm | K ppm\n6" Front | 42 | 180\n', ['6" Front: phosphorus 42 ppm', '6" Front: potassium 180 ppm']], ['blanks within quotes', 'Sample,P ppm,K ppm\n" Front ", 42 ,180\n', front],
  // Heads.
  ['samples named by number: fields', 'Fields | 1 | 2\nP ppm | 42 | 12\nK ppm | 180 | 90\n', byNumber], ['a number above 99 is no sample', 'Sample | 1 | 100\nP ppm | 42 | 12\n', ['unread 1', 'unread 2', 'two-values 2', 'nothing-read']],
  ['a depth in the head', 'Sample | P ppm 0-6 in | K ppm 0 to 15cm | Zn ppm 10 cm\nFront | 42 | 180 | 2\n', [...front, 'Front: zinc 2 ppm']], ['a unit of a hundred in the head', 'Sample | P mg / 100 g | K mg/100g\nFront | 4 | 18\n', two('phosphorus 4 mg/100g', 'potassium 18 mg/100g')],
  ['a method with its number in a head', 'Test | Result (Mehlich3) | Unit\nP | 42 | ppm\nZn | 2 | ppm\n', PZn.map((r) => r + ' mehlich-3')], ['a unit of area in a head', 'Test | Result (lb/acre) | Optimum\nP | 42 | 30-50\nK | 180 | 120-200\n', ['sample 1: phosphorus 42 lb/acre 30-50', 'sample 1: potassium 180 lb/acre 120-200']], ['a unit of a hundred grams', 'Test | Result (mg/100 g) | Rating\nP | 4 | low\nK | 18 | high\n', ['sample 1: phosphorus 4 mg/100g low', 'sample 1: potassium 18 mg/100g high']],
  ['a number sign and a number', 'Test | Bed #1 | Bed #2\nP ppm | 42 | 12\n', ['Bed #1: phosphorus 42 ppm', 'Bed #2: phosphorus 12 ppm']], ['short words with numbers', 'Test | Bed no. 1 | Bed no 2\nP ppm | 42 | 12\n', ['Bed no. 1: phosphorus 42 ppm', 'Bed no 2: phosphorus 12 ppm']], ['letters with numbers head nothing', 'Test | A1 | A2\nP ppm | 42 | 12\n', ['unread 1', 'unread 2', 'two-values 2', 'nothing-read']],
  ['a ratio of samples is none', 'Sample | P ppm | Ca:Mg | K ppm\nFront | 42 | 6.5 | 180\n', front],
  // Rows of units and what else may stand below the heads.
  ['a unit and a method in one row', 'Sample | P | K\n | ppm | ppm Olsen\nFront | 42 | 180\n', two('phosphorus 42 ppm', 'potassium 180 ppm olsen')], ['methods alone', 'Sample | P ppm | K ppm\n | Olsen | Mehlich 3\nFront | 42 | 180\n', two('phosphorus 42 ppm olsen', 'potassium 180 ppm mehlich-3')], ['oxides below the heads', 'Sample    P         K\n          ppm P2O5  ppm K2O\nFront     42        180\n', two('phosphorus 42 ppm P2O5', 'potassium 180 ppm K2O')],
  ['a unit drawn with single strokes is none', 'Sample    P ppm  Ca       Mg\n                 -- meq/100g --\nFront     20     3.5      1.2\n', [...two('phosphorus 20 ppm', 'calcium 3.5 meq/100g'), 'Front: magnesium 1.2 meq/100g']],
  ['no value under the kinds', 'Sample   P       K       Mg\n         ppm  Rating  ppm  Rating  ppm  Rating\nFront    42   high    180  low\n', ['unread 1', 'unread 2', 'unread 3', 'nothing-read']],
  // Cells.
  ['signs before numbers', 'Sample | P ppm | K ppm | Zn ppm\nFront | ~42 | = 180 | +2\nBack | .5 | < 4 | >9\n', ['Front: phosphorus 42 ppm', 'Front: potassium 180 ppm', 'Front: zinc 2 ppm', 'Back: phosphorus 0.5 ppm', 'Back: potassium < 4 ppm', 'Back: zinc > 9 ppm']],
  ['an index in the cell', 'Sample | P | K ppm | Zn ppm\nFront | index 2 | 180 | 2\n', ['Front: phosphorus 2 index', 'Front: potassium 180 ppm', 'Front: zinc 2 ppm']], ['a word of rating in the cell', 'Sample | P | K ppm\nFront | very high | 180\n', two('phosphorus very-high', 'potassium 180 ppm')], ['a remark in one of three', 'Sample | P ppm | K ppm | Zn ppm\nFront | 42 | see the next page please | 2\n', ['unread 1', 'unread 2', 'nothing-read']],
  ['a texture of many words', 'Sample | P ppm | K ppm | Texture\nFront | 42 | 180 | silty clay loam over gravel\n', [...front, 'Front: texture']],
  ['classes with signs behind values', 'Plot   pH    P ppm   K ppm\nA      6.4   <42   H+    180   VH\n', ['A: ph 6.4 pH', 'A: phosphorus < 42 ppm high', 'A: potassium 180 ppm very-high']], ['German classes behind values', 'Bodenart: Lehm, Humus 3,2 %\n\nProbe   pH    P2O5 mg/100g   K2O mg/100g\nVorn    6,4   12   B    20   C\n', ['sample 1: texture', 'sample 1: organic-matter 3.2 %', 'Vorn: ph 6.4 pH', 'Vorn: phosphorus 12 mg/100g P2O5 low', 'Vorn: potassium 20 mg/100g K2O optimum']],
  ['bars in rows below gaps', 'Sample     P ppm     K ppm\nFront    | 42      | 180\nBack     | 12      | 90\n', both], ['cells that stand over other heads', 'P ppm     K ppm     Zn ppm\n42        180       2\n          38        90        3        4\n', [...PZn.slice(0, 1), 'sample 1: potassium 180 ppm', 'sample 1: zinc 2 ppm', 'unread 3']],
  ['a cell that no head stands over', 'Sample     P ppm     K ppm\nFront                42     180\n', ['unread 1', 'unread 2', 'nothing-read']],
  ['too many cells end the table', 'Sample | P ppm | K ppm\nFront | 42 | 180\nBack | 12 | 90 | 3 | 4 | 5\n', [...front, 'unread 3']],
  // Classes and words beside values.
  ['a class of F in German', 'Probe | P2O5 mg/100 g | P2O5 Klasse | K2O mg/100 g | K2O Klasse\nVorn | 90 | F | 20 | CC\n', ['Vorn: phosphorus 90 mg/100g P2O5 very-high', 'Vorn: potassium 20 mg/100g K2O']], ['small letters', 'Sample | P ppm | P rating | K ppm | K rating\nFront | 42 | vh | 180 | l-\n', two('phosphorus 42 ppm very-high', 'potassium 180 ppm low')],
  ['strokes for none', 'Sample | P ppm | P range | K ppm | K rating\nFront | 42 | -- | 180 | ...\n', front], ['a unit of its own column leads', 'Sample | P | P units | K ppm\nFront | 42 | mg/kg | 180\n', two('phosphorus 42 mg/kg', 'potassium 180 ppm')],
  ['heads in brackets', 'Sample | P (ppm) | P (rating) | K (ppm) | K - rating:\nFront | 42 | high | 180 | low\n', two('phosphorus 42 ppm high', 'potassium 180 ppm low')], ['heads with a word between', 'Sample | P ppm | Rating for P | K ppm | Rating of K\nFront | 42 | high | 180 | low\n', two('phosphorus 42 ppm high', 'potassium 180 ppm low')], ['in Spanish', 'Muestra | P ppm | Interpretación de P | K ppm | Interpretación de K\nNorte | 42 | alto | 180 | bajo\n', ['Norte: phosphorus 42 ppm high', 'Norte: potassium 180 ppm low']],
  ['in German words', 'Probe | P ppm | P Bewertung | K ppm | K Bewertung\nVorn | 12 | niedrig | 20 | hoch\n', ['Vorn: phosphorus 12 ppm low', 'Vorn: potassium 20 ppm high']], ['of a letter under a word that is no class', 'Probe | P ppm | P Status | K ppm | K Status\nVorn | 12 | x | 20 | x\n', vorn],
])('tables: %s', (_, text, expected) => { expect(told(text)).toEqual(expected); });

test.each<[string, string, readonly string[]]>([
  // Which column is what.
  ['two results: the second is told', 'Test | Result | Result\nP ppm | 42 | 12\n', ['sample 1: phosphorus 42 ppm', 'column-unknown 1']], ['"level" alone is the value', 'Test | Level | Rating\nP ppm | 42 | high\n', ['sample 1: phosphorus 42 ppm high']], ['behind a result it is a word', 'Test | Result | Level\nP ppm | 42 | high\n', ['sample 1: phosphorus 42 ppm high']], ['an unknown head over names', 'Foo | Result\nP ppm | 42\n', ['sample 1: phosphorus 42 ppm']], ['one word of rating heads no marks', 'Test | Result | Medium\nP ppm | 42 | 30\n', ['sample 1: phosphorus 42 ppm', 'column-unknown 1']],
  ['no head over the names', '             Result    Unit\nPhosphorus   42        ppm\nZinc         2         ppm\n', PZn], ['unknown columns in gaps leave a doubt', 'Element   Result   Foo   Bar\nP ppm     42       7     8\n', ['unread 1', 'unread 2', 'two-values 2', 'nothing-read']],
  ['a rule and a blank line before units', 'Analysis | Value | xx\n\n---|---|---\nP | 42 | ppm\n', ['sample 1: phosphorus 42 ppm']], ['a blank line ends a table of gaps', 'Element      Result   Unit\n\nPhosphorus   42       ppm\n\nPotassium 180 ppm\n', PK], ['a row of gaps without a name ends it', 'Element      Result   Unit\nPhosphorus   42       ppm\n             38       ppm\n', ['sample 1: phosphorus 42 ppm', 'unread 3']],
  ['a limit under an unknown head', 'Determinand,Result,Foo\nP ppm,42,<7\nK ppm,180,dry\n', [...PK, 'column-unknown 1']], ['a number with letters under one', 'Determinand,Result,Foo\nP ppm,42,7x\n', ['sample 1: phosphorus 42 ppm']], ['a letter and a number under one', 'Determinand,Result,Foo\nP ppm,42,x7\n', ['sample 1: phosphorus 42 ppm']],
  ['an unknown name', 'Test | Result\nP ppm | 42\nPotazzium ppm | 180\n', ['sample 1: phosphorus 42 ppm', 'unread 3']], ['in gaps', 'Nutrient   Front   Back\nP ppm      42      12\nGravel     3       5\nThanks\n', ['Front: phosphorus 42 ppm', 'Back: phosphorus 12 ppm', 'unread 3', 'unread 4']],
  ['strokes in brackets', 'Test | Result | Unit | Range\npH | 6.4 | - | (--)\nP | 42 | ppm | (30-50)\n', ['sample 1: ph 6.4 pH', 'sample 1: phosphorus 42 ppm 30-50']], ['a unit over the names', 'Nutrient (ppm) | Result | Rating\nP | 42 | low\n', ['sample 1: phosphorus 42 ppm low']], ['a method over the names', 'Nutrient (Mehlich 3) | Result | Unit\nP | 42 | ppm\n', ['sample 1: phosphorus 42 ppm mehlich-3']], ['a word over the unit of no value', 'Nutrient | Range (ppm) | Result\nP | 30-50 | 42\n', ['sample 1: phosphorus 42 30-50']],
  ['an index of the lab', 'Test | Result | Index\nP ppm | 42 | 3\n', ['sample 1: phosphorus 42 ppm i3']], ['none beside an older one', 'Test | Result | Last year | Desired level\nP ppm | 42 | 38 | 50\n', ['sample 1: phosphorus 42 ppm']],
  // Samples across the page.
  ['a name twice is none of samples', 'Nutrient | Top | | Top |\n | mg/l | Index | mg/l | Index\nP | 18 | 2 | 9 | 0\n', ['sample 1: phosphorus 18 mg/L i2', 'unread 1', 'column-unknown 2']], ['columns uneven', 'Nutrient | Top mg/l | Top index | Bottom mg/l\nP | 18 | 2 | 9\n', ['unread 1', 'unread 2', 'two-values 2', 'nothing-read']], ['one sample alone', 'Nutrient | Top mg/l | Top index\nP | 18 | 2\n', ['unread 1', 'unread 2', 'two-values 2', 'nothing-read']],
  ['a method for both behind them', 'Nutrient | Front value | Back value | Method\nP ppm | 42 | 12 | Olsen\n', ['Front: phosphorus 42 ppm olsen', 'Back: phosphorus 12 ppm olsen']], ['a range for both', 'Nutrient | Front value | Back value | Range\nP ppm | 42 | 12 | 30-50\n', ['Front: phosphorus 42 ppm 30-50', 'Back: phosphorus 12 ppm 30-50']], ['an older value', 'Nutrient | Front value | Back value | Previous\nP ppm | 42 | 12 | 38\n', ['Front: phosphorus 42 ppm', 'Back: phosphorus 12 ppm']],
  ['three samples over kinds', 'Nutrient | A | | B | | C |\n | mg/l | Index | mg/l | Index | mg/l | Index\nP | 18 | 2 | 9 | 0 | 30 | 3\n', ['A: phosphorus 18 mg/L i2', 'B: phosphorus 9 mg/L i0', 'C: phosphorus 30 mg/L i3']], ['one column each', 'Nutrient | Top | Bottom\n | mg/l | mg/l\nP | 18 | 9\nK | 150 | 241\n', ['Top: phosphorus 18 mg/L', 'Top: potassium 150 mg/L', 'Bottom: phosphorus 9 mg/L', 'Bottom: potassium 241 mg/L']], ['heads in the upper row alone', 'Nutrient | Method | Top | | Bottom |\n | | mg/l | Index | mg/l | Index\nP | Olsen | 18 | 2 | 9 | 0\n', ['Top: phosphorus 18 mg/L olsen i2', 'Bottom: phosphorus 9 mg/L olsen i0']], ['in gaps too', 'Nutrient   Method   Top             Bottom\n                    mg/l   Index    mg/l    Index\nP          Olsen    18     2        9       0\n', ['Top: phosphorus 18 mg/L olsen i2', 'Bottom: phosphorus 9 mg/L olsen i0']],
  ['samples in brackets and behind strokes', 'Nutrient | (Top) mg/l | (Top) index | (Bottom) mg/l | (Bottom) index\nP | 18 | 2 | 9 | 0\n', ['Top: phosphorus 18 mg/L i2', 'Bottom: phosphorus 9 mg/L i0']], ['a stroke behind the kind', 'Nutrient | mg/l - Top | index - Top | mg/l - Bottom | index - Bottom\nP | 18 | 2 | 9 | 0\n', ['Top: phosphorus 18 mg/L i2', 'Bottom: phosphorus 9 mg/L i0']],
  // Letters that mean other words elsewhere; kits.
  ['letters of no Spanish class', 'Muestra | P ppm | Interpretación de P | K ppm | Interpretación de K\nNorte | 42 | A | 180 | B\n', ['Norte: phosphorus 42 ppm', 'Norte: potassium 180 ppm']],
  ['steps and words of a kit', 'Area pH N P\nSE border 6.7/good 0/depleted 4/surplus\n', ['SE border: ph 6.7 pH optimum', 'SE border: nitrogen 0 index very-low', 'SE border: phosphorus 4 index high']], ['decimal commas of a kit', 'pH-Wert: 6,4\nBereich pH N P K\nBeet 6,7 1 4 2\n', ['sample 1: ph 6.4 pH', 'Beet: ph 6.7 pH', 'Beet: nitrogen 1', 'Beet: phosphorus 4', 'Beet: potassium 2']], ['a number behind a letter names a bed', 'Area pH N P K\nB2 6.7 1 4 2\n', ['B2: ph 6.7 pH', 'B2: nitrogen 1', 'B2: phosphorus 4', 'B2: potassium 2']], ['two names are no table', 'Area pH N\nBed 6.7 1\n', ['unread 1', 'unread 2', 'nothing-read']], ['a letter before a number', 'Area pH N P\nBed x6.7 1 4\n', ['unread 1', 'unread 2', 'nothing-read']], ['a head that names nothing', 'Area pH N P stones\nBed 6.7 1 4 7\n', ['unread 1', 'unread 2', 'nothing-read']],
])('columns: %s', (_, text, expected) => { expect(told(text)).toEqual(expected); });

/** What a grower is shown of each value: as printed, with its place. */
const shown = (text: string): unknown[][] => readReport(text, 'r.txt').samples.flatMap((s) => s.readings.map((r) => [r.asPrinted, r.place.line, r.place.column, r.place.length]));
test('a value of several in its row is shown as its cell, a lone one with its row', () => {
  expect(shown('Sample | P ppm | K ppm\nFront | 42 | 180\n')).toEqual([['42', 2, 9, 2], ['180', 2, 14, 3]]);
  expect(shown('Test | Result\n  P ppm | 42\n  K ppm | 180\n')).toEqual([['P ppm | 42', 2, 11, 2], ['K ppm | 180', 3, 11, 3]]);
  expect(shown('Area pH N P\nBed 6.7 1 <4\n').at(-1)).toEqual(['<4', 2, 11, 2]);
  expect(shown('Test | Result | Low | Medium | High\n  P ppm | | | x |\n')).toEqual([['P ppm | | | x |', 2, 3, 5]]);
  expect(shown('Nutrient | Front | Back\nP ppm | 42 | 12\n')).toEqual([['42', 2, 9, 2], ['12', 2, 14, 2]]);
});
test('what a table leaves unclear or unread is told as it stands', () => {
  const rate = (cell: string): unknown[] => readReport(`Sample | P ppm | N (lb/1000 sq ft)\nFront | 42 | ${cell}\n`, 'r.txt').notices.map((n) => [n.facts, n.place?.column, n.place?.length]);
  for (const cell of ['3', '3.5', '<3', '< 3.5', '13']) expect([cell, rate(cell)]).toEqual([cell, [[{ name: 'N (lb/1000 sq ft)', read: cell }, 14, cell.length]]]);
  expect(readReport('Test | Result\nP ppm | 42\n   | 38\n', 'r.txt').samples[0]!.unread).toEqual([{ line: 3, text: '| 38' }]);
  const [question] = readReport('Zinc 2 ppm\n  Phosphorus\nPotassium\nMagnesium\n42\n180\n', 'r.txt').questions.filter((q) => q.code === 'layout-unclear');
  expect([question!.facts, question!.choices, question!.place?.column]).toEqual([{ line: 2, sample: '', read: 'Phosphorus', item: 'layout' }, [], 1]);
});

// A units' row as Georgia's form has it: a single blank between units, none over the pH; the layout is ours, its names and units the lab's (University of Georgia).
describe('a row of units parted by single blanks', () => {
  const values = ['sample 1: lime-buffer-capacity 352 ppm', 'sample 1: ph 5.47 pH', ...([['calcium', 591], ['potassium', 61], ['magnesium', 80], ['manganese', 15], ['phosphorus', 22], ['zinc', 3]] as const).map(([item, v]) => `sample 1: ${item} ${v} lb/acre`)];
  test('one for each head but the pH', () => {
    expect(told('LBC  pH  Ca  K  Mg  Mn  P  Zn\n(ppm CaCO3/pH)   lbs/Acre lbs/Acre lbs/Acre lbs/Acre lbs/Acre lbs/Acre\n352   5.47   591   61   80   15   22   3\n')).toEqual(values);
  });
  test('one for each element', () => {
    expect(told('LBC  pH  Ca  K  Mg  Mn  P  Zn\nlbs/Acre lbs/Acre lbs/Acre lbs/Acre lbs/Acre lbs/Acre\n352  5.47  591  61  80  15  22  3\n').slice(1)).toEqual(values.slice(1));
  });
  test('each its own', () => {
    expect(told('pH   Ca   K   CEC\nppm lb/acre meq/100g\n5.4  591  61  8\n')).toEqual(['sample 1: ph 5.4 pH', 'sample 1: calcium 591 ppm', 'sample 1: potassium 61 lb/acre', 'sample 1: cec 8 meq/100g']);
  });
  test('of another number: nothing is guessed', () => {
    const said = told('LBC  pH  Ca  K  Mg\nlbs/Acre lbs/Acre\n352  5.47  591  61  80\n');
    expect(said.filter((line) => line.includes('lb/acre'))).toEqual([]);
  });
});
// Where gaps are not alike, places count: this row has a cell that no head stands over.
test('cells parted evenly go by their turn', () => {
  expect(told('pH  Ca ppm  K ppm  Mg ppm\n5.4  591  61  80\n')).toEqual(['sample 1: ph 5.4 pH', 'sample 1: calcium 591 ppm', 'sample 1: potassium 61 ppm', 'sample 1: magnesium 80 ppm']);
});
