// What each report says, line by line, as a careful reader takes it.
// u1 to u13: numbers, names, units and layout as a grower posted them on a public page (address above each; mark: read),
// chatter in other words. All others are invented: made-up places and numbers.

import { either, open } from './expectation.ts';
import type { Expected } from './expectation.ts';

export const expected: Readonly<Record<string, Expected>> = {
  // https://growinggreener.blogspot.com/2015/12/soil-test-report-12815.html (read)
  // The lab's words decide; the older pH of the last line must not win; bracketed ranges are no values.
  u1: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 227, 'ppm', 'element', null, 227, 'very-high', null, 'above'],
          [3, 'potassium', 431, 'ppm', 'element', null, 431, 'very-high', null, 'above'],
          [4, 'calcium', 1405, 'ppm', 'element', null, 1405, 'high', null, 'above'],
          [5, 'magnesium', 222, 'ppm', 'element', null, 222, 'high', null, 'above'],
          [6, 'boron', 0.7, 'ppm', 'element', null, 0.7, 'medium', null, 'below'],
          [7, 'sulphur', 3.7, 'ppm', 'element', null, 3.7, 'medium', null, 'below'],
          [9, 'organic-matter', 8.8, '%', null, null, null, 'high', null, open],
          [11, 'salts', 0.14, 'mS/cm', null, null, null, 'low', null, open],
          [12, 'zinc', 1.7, 'ppm', 'element', null, 1.7, 'high', null, 'above'],
          [13, 'manganese', 4.0, 'ppm', 'element', null, 4.0, 'very-high', [0.7, 1.4], 'above'],
          [14, 'copper', 0.7, 'ppm', 'element', null, 0.7, 'high', null, 'above'],
          [15, 'iron', 46.5, 'ppm', 'element', null, 46.5, 'very-high', [2.5, 5.0], 'above'],
          [17, 'ph', 5.31, 'pH', null, null, null, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // https://walterreeves.com/food-gardening/blueberry-growing-with-high-calcium (read)
  // lb/acre is halved by convention. No word, range or method for P and K: asked. Calcium has the lab's word.
  u4: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'calcium', 1088, 'lb/acre', 'element', null, 544, 'high', null, 'above'],
          [3, 'phosphorus', 21, 'lb/acre', 'element', null, 10.5, null, null, open],
          [4, 'potassium', 83, 'lb/acre', 'element', null, 41.5, null, null, open],
          [5, 'magnesium', 101, 'lb/acre', 'element', null, 50.5, null, null, open],
          [6, 'zinc', 12, 'lb/acre', 'element', null, 6.0, null, null, open],
          [7, 'ph', 5.3, 'pH', null, null, null, null, null, open],
        ],
        mayBeUnread: [2],
      },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
    mayAsk: ['method-missing magnesium', 'method-missing zinc'],
  },

  // http://idahopumpkin.tripod.com/soil_test.html (read)
  // Names come again under a heading, as shares of the exchange sites. ECe is a paste's conductivity, not exchange capacity.
  u6: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 7.5, 'pH', null, null, null, null, null, open],
          [2, 'organic-matter', 2.3, '%', null, null, null, 'low', null, open],
          [4, 'nitrogen', 116, 'ppm', 'element', null, 116, 'very-high', null, 'above'],
          [5, 'phosphorus', 121, 'ppm', 'element', null, 121, 'very-high', null, 'above'],
          [6, 'potassium', 911, 'ppm', 'element', null, 911, 'high', null, 'above'],
          [7, 'magnesium', 499, 'ppm', 'element', null, 499, 'medium', null, 'below'],
          [8, 'calcium', 3118, 'ppm', 'element', null, 3118, 'medium', null, 'below'],
          [9, 'sodium', 176, 'ppm', 'element', null, 176, 'medium', null, open],
          [10, 'sulphur', 495, 'ppm', 'element', null, 495, 'very-high', null, 'above'],
          [11, 'zinc', 3.3, 'ppm', 'element', null, 3.3, 'medium', null, 'below'],
          [15, 'saturation-k', 10.2, '%', null, null, null, null, null, open],
          [16, 'saturation-mg', 18.0, '%', null, null, null, null, null, open],
          [17, 'saturation-ca', 68.4, '%', null, null, null, null, null, open],
          [18, 'saturation-na', 3.4, '%', null, null, null, null, null, open],
          [20, 'cec', 22.8, 'meq/100g', null, null, null, null, null, open],
          [22, 'salts', 6.3, 'dS/m', null, 'paste', null, null, null, open],
        ],
      },
    ],
  },

  // https://gartenfreunde.de/gartenpraxis/gartenpflege/boden-untersuchen/?seite=2 (read)
  // Oxides in mg/100 g: 35 x 4.364 = 153 mg P/kg, 20 x 8.302 = 166 mg K/kg; magnesium is the element.
  // The sample's name stands behind the humus; two lines of heading; the first column is the pH, whatever its head says.
  u8: {
    samples: [
      {
        name: 'Obstgarten',
        readings: [
          [1, 'texture', null, null, null, null, null, null, null, open, { words: 'lehmiger Sand' }],
          [2, 'organic-matter', null, null, null, null, null, 'low', null, open, { words: 'schlecht' }],
          [5, 'ph', 6.5, 'pH', null, null, null, 'optimum', null, 'at'],
          [5, 'phosphorus', 35, 'mg/100g', 'oxide', null, 153, 'very-high', null, 'above'],
          [5, 'potassium', 20, 'mg/100g', 'oxide', null, 166, 'high', null, 'above'],
          [5, 'magnesium', 3, 'mg/100g', 'element', null, 30, 'very-low', null, 'far-below'],
        ],
      },
    ],
  },

  // https://plantersplace.com/?p=57356 (read)
  // A range glued to its unit; the lab's word a line later; lime by area, whose goal (6.5) is no reading.
  u10: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, 'ppm', 'element', null, 41, 'very-high', [4, 14], 'above'],
          [4, 'lime-requirement', 3.75, 'lb/100sqft', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // http://yellowfarmhousegarden.com/?cat=21 (read)
  // Words for P, K and Mg, none for Ca. The exchange capacity has no unit: asked (mmol would be ten times more).
  u13: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 7.6, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 58, 'ppm', 'element', null, 58, 'optimum', null, 'at'],
          [3, 'potassium', 67, 'ppm', 'element', null, 67, 'low', null, 'below'],
          [4, 'magnesium', 202, 'ppm', 'element', null, 202, 'high', null, 'above'],
          [5, 'calcium', 2443, 'ppm', 'element', null, 2443, null, null, open],
          [6, 'cec', 14.1, null, null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['unit-missing cec'],
    mayAsk: ['method-missing calcium'],
  },

  // Invented. Columns parted by tabs, with empty cells; thousands commas in a value and a range.
  'tab-columns': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [3, 'ph', 6.4, 'pH', null, null, null, 'optimum', [6.0, 7.0], 'at'],
          [4, 'organic-matter', 4.1, '%', null, null, null, 'medium', null, open],
          [5, 'phosphorus', 164, 'ppm', 'element', null, 164, 'very-high', [30, 50], 'above'],
          [6, 'potassium', 98, 'ppm', 'element', null, 98, 'low', [120, 200], 'below'],
          [7, 'calcium', 1240, 'ppm', 'element', null, 1240, 'optimum', [1000, 1500], 'at'],
          [8, 'magnesium', 231, 'ppm', 'element', null, 231, 'very-high', [50, 120], 'above'],
          [9, 'zinc', 3.4, 'ppm', 'element', null, 3.4, 'optimum', [1.0, 7.6], 'at'],
          [10, 'cec', 9.2, 'meq/100g', null, null, null, null, null, open],
        ],
        unread: [11],
        mayBeUnread: [1],
      },
    ],
  },

  // Invented. A Markdown table; the ranges alone decide. P 6 is under half of 15, B 0.4 under half of 1.0.
  'markdown-table': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [3, 'ph', 5.8, 'pH', null, either('1:1', 'water'), null, open, [6.0, 6.8], 'below'],
          [4, 'phosphorus', 6, 'mg/kg', 'element', 'olsen', 6.0, null, [15, 40], 'far-below'],
          [5, 'potassium', 212, 'mg/kg', 'element', 'ammonium-acetate', 212, null, [150, 250], 'at'],
          [6, 'magnesium', 305, 'mg/kg', 'element', 'ammonium-acetate', 305, null, [60, 300], 'above'],
          [7, 'boron', 0.4, 'mg/kg', 'element', 'hot-water', 0.4, null, [1.0, 1.5], 'far-below'],
          [8, 'sulphur', 11.5, 'mg/kg', 'element', null, 11.5, null, [9, 20], 'at'],
        ],
        unread: [10],
      },
    ],
  },

  // Invented. Columns parted by commas, commas inside quotes, the range in two columns, one of them empty.
  'comma-columns': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.9, 'pH', null, 'water', null, null, [6.0, 7.5], 'at'],
          [3, 'phosphorus', 27, 'ppm', 'element', 'mehlich-3', 27, 'low', [36, 68], 'below'],
          [4, 'potassium', 171, 'ppm', 'element', 'mehlich-3', 171, 'high', [73, 138], 'above'],
          [5, 'calcium', 1450, 'ppm', 'element', 'mehlich-3', 1450, null, null, open],
          [6, 'magnesium', 88, 'ppm', 'element', 'mehlich-3', 88, 'optimum', [72, 147], 'at'],
          [7, 'organic-matter', 3.3, '%', null, 'loi', null, null, null, open],
          [8, 'salts', 0.21, 'dS/m', null, '1:2', null, null, [null, 0.6], open],
        ],
      },
    ],
  },

  // Invented. All capitals: MG is magnesium, CA calcium; pounds an acre are halved.
  capitals: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [3, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [4, 'buffer-ph', 6.8, 'pH', null, null, null, null, null, open],
          [5, 'phosphorus', 88, 'lb/acre', 'element', null, 44, 'very-high', null, 'above'],
          [6, 'potassium', 240, 'lb/acre', 'element', null, 120, 'medium', null, 'below'],
          [7, 'calcium', 1850, 'lb/acre', 'element', null, 925, 'high', null, 'above'],
          [8, 'magnesium', 96, 'lb/acre', 'element', null, 48, 'low', null, 'below'],
          [9, 'zinc', 3.2, 'ppm', 'element', null, 3.2, null, null, open],
          [10, 'cec', 7.4, 'meq/100g', null, null, null, null, null, open],
          [11, 'organic-matter', 2.9, '%', null, null, null, null, null, open],
        ],
        unread: [12],
        mayBeUnread: [1, 2],
      },
    ],
    mayAsk: ['method-missing buffer-ph', 'method-missing zinc'],
  },

  // Invented. Two readings a line, a comma between; the method behind the unit.
  'two-a-line': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [1, 'organic-matter', 3.2, '%', null, null, null, null, null, open],
          [2, 'phosphorus', 38, 'ppm', 'element', 'bray-1', 38, null, null, open],
          [2, 'potassium', 145, 'ppm', 'element', 'ammonium-acetate', 145, null, null, open],
          [3, 'calcium', 1620, 'ppm', 'element', null, 1620, 'high', null, 'above'],
          [3, 'magnesium', 190, 'ppm', 'element', null, 190, 'optimum', null, 'at'],
          [4, 'sulphur', 9, 'ppm', 'element', null, 9.0, 'low', null, 'below'],
          [4, 'boron', 0.6, 'ppm', 'element', null, 0.6, 'medium', null, 'below'],
          [5, 'cec', 11.3, 'meq/100g', null, null, null, null, null, open],
          [5, 'salts', 0.18, 'dS/m', null, '1:1', null, null, null, open],
        ],
      },
    ],
  },

  // Invented. The unit stands in the name. 7.1 meq of calcium x 200.39 = 1420 mg/kg.
  'unit-in-name': {
    samples: [
      {
        name: 'Gate bed',
        readings: [
          [2, 'phosphorus', 42, 'ppm', 'element', null, 42, null, null, open],
          [3, 'potassium', 155, 'ppm', 'element', null, 155, null, null, open],
          [4, 'calcium', 7.1, 'meq/100g', 'element', null, 1420, null, null, open],
          [5, 'organic-matter', 3.6, '%', null, null, null, null, null, open],
          [6, 'ph', 6.5, 'pH', null, null, null, null, null, open],
        ],
      },
      {
        name: 'Wall bed',
        readings: [
          [9, 'phosphorus', 42, 'mg/kg', 'element', null, 42, null, null, open],
          [10, 'potassium', 97, 'mg/kg', 'element', null, 97, null, null, open],
          [11, 'magnesium', 118, 'mg/kg', 'element', null, 118, null, null, open],
          [12, 'salts', 0.2, 'dS/m', null, null, null, null, null, open],
          [13, 'cec', 9.9, 'meq/100g', null, null, null, null, null, open],
          [14, 'ph', 6.8, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
    mayAsk: ['method-missing calcium', 'method-missing magnesium', 'method-missing salts'],
  },

  // Invented. Method and unit in a heading hold for the lines under it, not for pH, not after the next heading.
  'method-heading': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [3, 'organic-matter', 4.4, '%', null, null, null, null, null, open],
          [6, 'phosphorus', 52, 'ppm', 'element', 'mehlich-3', 52, null, null, open],
          [7, 'potassium', 118, 'ppm', 'element', 'mehlich-3', 118, null, null, open],
          [8, 'calcium', 1310, 'ppm', 'element', 'mehlich-3', 1310, null, null, open],
          [9, 'magnesium', 142, 'ppm', 'element', 'mehlich-3', 142, null, null, open],
          [10, 'zinc', 4.1, 'ppm', 'element', 'mehlich-3', 4.1, null, null, open],
          [13, 'cec', 9.0, 'meq/100g', null, null, null, null, null, open],
          [14, 'salts', 0.11, 'dS/m', null, '1:2', null, null, null, open],
        ],
        mayBeUnread: [1, 12],
      },
    ],
  },

  // Invented. The range is printed before the value, in four ways. Ca 480 is under half of 1000.
  'range-first': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'phosphorus', 42, 'ppm', 'element', null, 42, open, [30, 50], 'at'],
          [2, 'potassium', 98, 'ppm', 'element', null, 98, open, [120, 200], 'below'],
          [3, 'magnesium', 131, 'ppm', 'element', null, 131, open, [50, 120], 'above'],
          [4, 'sulphur', 15.8, 'ppm', 'element', null, 15.8, open, [10, null], 'at'],
          [5, 'calcium', 480, 'ppm', 'element', null, 480, open, [1000, 1500], 'far-below'],
          [6, 'ph', 6.6, 'pH', null, null, null, open, [6.0, 7.0], 'at'],
        ],
      },
    ],
  },

  // Invented. Spanish names, decimal commas; 0,450 cannot be thousands. 0.62 meq of K x 390.98 = 242; Ca 9.8 x 200.39; Mg 1.9 x 121.53.
  spanish: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 7.2, 'pH', null, 'water', null, null, null, open],
          [3, 'organic-matter', 2.35, '%', null, null, null, null, null, open],
          [4, 'phosphorus', 18.4, 'mg/kg', 'element', 'olsen', 18.4, null, null, open],
          [5, 'potassium', 0.62, 'meq/100g', 'element', 'ammonium-acetate', 242, null, null, open],
          [6, 'calcium', 9.8, 'meq/100g', 'element', null, 1960, 'high', null, 'above'],
          [7, 'magnesium', 1.9, 'meq/100g', 'element', null, 231, 'medium', null, 'below'],
          [8, 'boron', 0.45, 'mg/kg', 'element', null, 0.45, 'low', null, 'below'],
          [9, 'salts', 0.18, 'dS/m', null, '1:5', null, null, null, open],
          [10, 'cec', 14.2, 'meq/100g', null, null, null, null, null, open],
          [11, 'texture', null, null, null, null, null, null, null, open, { words: 'franco arenoso' }],
        ],
        unread: [12],
        mayBeUnread: [1],
      },
    ],
  },

  // Invented. German content classes: C is the target. 9 x 4.364 = 39.3 mg P/kg, 27 x 8.302 = 224 mg K/kg.
  // CaCl2 after the pH makes it a salt pH; after magnesium it is the extract.
  'german-letters': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'texture', null, null, null, null, null, null, null, open, { words: 'sandiger Lehm' }],
          [3, 'ph-salt', 6.1, 'pH', null, 'cacl2', null, 'optimum', null, 'at'],
          [4, 'phosphorus', 9, 'mg/100g', 'oxide', 'cal', 39.3, 'low', null, 'below'],
          [5, 'potassium', 27, 'mg/100g', 'oxide', 'cal', 224, 'high', null, 'above'],
          [6, 'magnesium', 8, 'mg/100g', 'element', 'cacl2', 80, 'optimum', null, 'at'],
          [7, 'boron', 0.35, 'mg/kg', 'element', null, 0.35, 'very-low', null, 'far-below'],
          [8, 'organic-matter', 3.4, '%', null, null, null, null, null, open],
        ],
        unread: [9],
        mayBeUnread: [1],
      },
    ],
  },

  // Invented, in the form of German labels. The method stands between name and value; C is the target, D above it (VDLUFA, practice).
  // mg P/kg: 38, 21.2, 12 x 4.364; mg K/kg: 6.5, 9.5 x 8.302; Mg and B are elements. "% C" behind humus is carbon, no class.
  // Day before month in a German date; the day of sampling stands before that of the letter.
  'german-labels': {
    samples: [
      {
        name: 'Garten',
        taken: '2026-10-20',
        depth: { printed: '20 cm', metres: 0.2 },
        readings: [
          [4, 'phosphorus', 38, 'mg/100g', 'oxide', 'cal', 166, 'high', null, 'above'],
          [5, 'potassium', 6.5, 'mg/100g', 'oxide', 'cal', 54.0, 'low', null, 'below'],
          [6, 'magnesium', 4.2, 'mg/100g', 'element', 'cacl2', 42, null, null, null],
          [7, 'ph-salt', 6.2, 'pH', null, 'cacl2', null, 'optimum', null, 'at'],
        ],
      },
      {
        name: 'Hofwiese',
        taken: '2026-10-12',
        depth: { printed: '20 cm', metres: 0.2 },
        readings: [
          [11, 'phosphorus', 21.2, 'mg/100g', 'oxide', 'cal', 92.5, null, null, null],
          [12, 'potassium', 9.5, 'mg/100g', 'oxide', 'cal', 78.9, null, null, null],
          [13, 'magnesium', 8.1, 'mg/100g', 'element', 'cacl2', 81, 'very-high', null, 'above'],
          [14, 'boron', 0.35, 'mg/kg', 'element', null, 0.35, 'very-low', null, 'far-below'],
        ],
      },
      {
        name: 'Böschung',
        taken: '2026-10-03',
        readings: [
          [18, 'potassium', 6.5, 'mg/100g', 'oxide', 'cal', 54.0, 'low', null, 'below'],
          [19, 'phosphorus', 12, 'mg/100g', 'oxide', 'dl', 52.4, 'high', null, 'above'],
          [20, 'magnesium', 8, 'mg/100g', 'element', 'cacl2', 80, 'optimum', null, 'at'],
          [21, 'organic-matter', 3.1, '%', null, null, null, null, null, null],
        ],
      },
    ],
  },

  // Invented. Where word and letter differ the word wins; "(B)" behind boron is its symbol, no class. No oxide is printed, so elements.
  'class-beside-word': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          // A bare "Phosphat" or "Kali" is P2O5 or K2O, told as such: 380 of P2O5 hold 165.8 of P, 270 of K2O 224.1 of K.
          [1, 'phosphorus', 38, 'mg/100g', 'oxide', 'cal', 165.8, 'low', null, 'below'],
          [2, 'potassium', 27, 'mg/100g', 'oxide', 'cal', 224.1, 'high', null, 'above'],
          [2, 'magnesium', 9, 'mg/100g', 'element', null, 90, 'low', null, 'below'],
          [3, 'boron', 0.35, 'mg/kg', 'element', null, 0.35, 'very-low', null, 'far-below'],
        ],
      },
    ],
  },

  // Invented. Outside German reports a letter B or C says nothing.
  'no-german-class': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'phosphorus', 42, 'ppm', 'element', 'mehlich-3', 42, null, null, open],
          [2, 'zinc', 3, 'ppm', 'element', null, 3, null, null, null],
        ],
      },
    ],
  },

  // Invented. The digit of a method is no value: Mehlich 3, Bray 1, P1. "Bray 1.5 ppm" is 1.5 by Bray (1 where no number is named).
  // Weak Bray is Bray 1, strong Bray is Bray 2 (memory, names of Midwestern labs).
  'method-between': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 212, 'ppm', 'element', 'mehlich-3', 212, null, null, open],
          [3, 'potassium', 112, 'ppm', 'element', 'mehlich-3', 112, null, null, open],
        ],
      },
      { name: 'sample 2', readings: [[5, 'phosphorus', 31, 'ppm', 'element', 'olsen', 31, null, null, open]] },
      { name: 'sample 3', readings: [[7, 'phosphorus', 31, 'ppm', 'element', 'bray-1', 31, null, null, open]] },
      { name: 'sample 4', readings: [[9, 'phosphorus', 31, 'ppm', 'element', 'bray-1', 31, null, null, open]] },
      { name: 'sample 5', readings: [[11, 'phosphorus', 31, 'ppm', 'element', 'bray-1', 31, null, null, open]] },
      { name: 'sample 6', readings: [[13, 'phosphorus', 1.5, 'ppm', 'element', 'bray-1', 1.5, null, null, open]] },
      {
        name: 'sample 7',
        readings: [
          [15, 'phosphorus', 212, 'ppm', 'element', 'mehlich-3', 212, null, null, open],
          [16, 'potassium', 90, 'ppm', 'element', 'ammonium-acetate', 90, null, null, open],
        ],
      },
      { name: 'sample 8', readings: [[18, 'phosphorus', 14, 'ppm', 'element', 'olsen', 14, null, null, open]] },
      { name: 'sample 9', readings: [[20, 'phosphorus', 22, 'ppm', 'element', 'bray-1', 22, null, null, open]] },
      { name: 'sample 10', readings: [[22, 'phosphorus', 45, 'ppm', 'element', 'bray-2', 45, null, null, open]] },
    ],
  },

  // Invented. A method's digit alone, a method that does not exist, an unknown word: no value. The rest is advice and prose.
  'lost-lines': {
    samples: [{ name: 'sample 1', readings: [[1, 'ph', 6.4, 'pH', null, null, null, null, null, open]], unread: [2, 3, 4, 5, 6, 7, 8] }],
  },

  // Invented. An index is no content. On the UK scale 2 is the target; "2-" is the lower half of 2, not a negative.
  'uk-letter': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [6, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [7, 'phosphorus', 3, 'index', either(null, 'element'), either(null, 'olsen'), null, open, null, 'above'],
          [8, 'potassium', 2, 'index', either(null, 'element'), either(null, 'ammonium-nitrate'), null, open, null, 'at'],
          [9, 'magnesium', 1, 'index', either(null, 'element'), either(null, 'ammonium-nitrate'), null, open, null, 'below'],
          [10, 'organic-matter', 5.2, '%', null, null, null, null, null, open],
        ],
        unread: [3, 12],
        mayBeUnread: [1, 4, 13],
      },
    ],
  },

  // Invented. Unit in the head of the column; the index rates the value beside it and is no second reading.
  // By volume, without a density: no mg/kg.
  'uk-table': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 34, 'mg/L', 'element', 'olsen', null, open, null, 'above'],
          [3, 'potassium', 165, 'mg/L', 'element', 'ammonium-nitrate', null, open, null, 'at'],
          [4, 'magnesium', 48, 'mg/L', 'element', 'ammonium-nitrate', null, open, null, 'below'],
          [6, 'ph', 6.2, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // Invented. The Irish index has its target at 3, and Morgan's names the Irish scale.
  irish: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 6.4, 'mg/L', 'element', 'morgan', null, open, null, 'at'],
          [3, 'potassium', 88, 'mg/L', 'element', 'morgan', null, open, null, 'below'],
          [4, 'magnesium', 130, 'mg/L', 'element', 'morgan', null, open, null, 'above'],
          [5, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [6, 'lime-requirement', 2.5, 't/ha', null, null, null, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // Invented. Two pH scales in one report; cmol(+)/kg is meq/100 g: Ca 6.2 x 200.39, Mg 1.4 x 121.53, Na 0.2 x 229.90.
  // Organic carbon is not organic matter, and there is no item for it.
  australian: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph-salt', 5.4, 'pH', null, 'cacl2', null, null, null, open],
          [3, 'ph', 6.1, 'pH', null, 'water', null, null, null, open],
          [4, 'phosphorus', 38, 'mg/kg', 'element', 'colwell', 38, null, null, open],
          [5, 'potassium', 210, 'mg/kg', 'element', 'colwell', 210, null, null, open],
          [6, 'salts', 0.09, 'dS/m', null, '1:5', null, null, null, open],
          [7, 'calcium', 6.2, 'cmol/kg', 'element', null, 1240, null, null, open],
          [8, 'magnesium', 1.4, 'cmol/kg', 'element', null, 170, null, null, open],
          [9, 'sodium', 0.2, 'cmol/kg', 'element', null, 46.0, null, null, open],
          [10, 'cec', 8.3, 'cmol/kg', null, null, null, null, null, open],
          [11, 'organic-carbon', 2.1, '%', null, null, null, null, null, open],
          [12, 'zinc', 1.9, 'mg/kg', 'element', 'dtpa', 1.9, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
    mayAsk: ['method-missing calcium', 'method-missing magnesium', 'method-missing sodium'],
  },

  // Invented. Answers are lines of the same file: neither readings nor unread, and what they answer is not asked again.
  answers: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 42, 'ppm', 'element', 'mehlich-3', 42, null, null, open],
          [3, 'potassium', 180, 'ppm', 'element', 'ammonium-acetate', 180, null, null, open],
          [4, 'calcium', 1450, 'ppm', 'element', null, 1450, null, null, open],
          [5, 'magnesium', 210, 'ppm', 'element', null, 210, 'optimum', null, 'at'],
        ],
      },
    ],
    mayAsk: ['method-missing calcium'],
  },

  // Invented. "Unknown" is an answer: kept as such, and not asked again.
  'answers-unknown': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 42, 'ppm', 'element', 'unknown', 42, null, null, open],
          [3, 'potassium', 180, 'ppm', 'element', 'unknown', 180, null, null, open],
        ],
      },
    ],
  },

  // Invented. Two samples with name, date and depth. A bare range in brackets is the lab's. One unit is missing: asked.
  'two-samples': {
    samples: [
      {
        name: 'Lower terrace',
        taken: '2025-11-03',
        depth: { printed: '6 in', metres: 0.1524 },
        readings: [
          [4, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [5, 'phosphorus', 164, 'ppm', 'element', null, 164, 'very-high', null, 'above'],
          [6, 'potassium', 180, 'ppm', 'element', null, 180, open, [120, 200], 'at'],
          [7, 'organic-matter', 4.1, '%', null, null, null, null, null, open],
        ],
      },
      {
        name: 'Top strip',
        taken: '2025-11-12',
        depth: { printed: '8 in', metres: 0.2032 },
        readings: [
          [12, 'ph', 6.6, 'pH', null, null, null, null, null, open],
          [13, 'phosphorus', 88, 'ppm', 'element', null, 88, 'very-high', null, 'above'],
          [14, 'potassium', 240, 'ppm', 'element', null, 240, open, [120, 200], 'above'],
          [15, 'magnesium', 231, null, 'element', null, null, null, null, open],
        ],
      },
    ],
    ask: ['unit-missing magnesium'],
    mayAsk: ['method-missing magnesium'],
  },

  // Invented. Limits, words for next to nothing, and a span, which is not a range.
  bounds: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.0, 'pH', null, null, null, null, null, open],
          [2, 'boron', 0.5, 'ppm', 'element', null, either(0.5, null), 'low', null, 'below', { below: 0.5 }],
          [3, 'potassium', 200, 'ppm', 'element', null, either(200, null), 'very-high', null, 'above', { above: 200 }],
          [4, 'nitrate-n', 1, 'ppm', 'element', null, either(1, null), null, null, open, { below: 1 }],
          [5, 'copper', null, null, open, null, null, open, null, open, { words: 'trace' }],
          [6, 'lead', null, null, open, null, null, open, null, open, { words: 'not detected' }],
          [7, 'magnesium', 60, 'ppm', 'element', null, open, 'low', null, 'below', { to: 80 }],
        ],
      },
    ],
  },

  // Invented. Commas between thousands, once with decimals behind.
  thousands: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.7, 'pH', null, null, null, null, null, open],
          [2, 'calcium', 2443, 'ppm', 'element', null, 2443, 'high', null, 'above'],
          [3, 'potassium', 1120, 'lb/acre', 'element', null, 560, 'very-high', null, 'above'],
          [4, 'magnesium', 1005.5, 'lb/acre', 'element', null, 503, 'very-high', null, 'above'],
          [5, 'phosphorus', 72, 'lb/acre', 'element', null, 36, 'optimum', null, 'at'],
          [6, 'cec', 15.2, 'meq/100g', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // Invented. Five lines with a mistake, each told at its place; the three good ones are read all the same.
  'bad-lines': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'boron', 0.6, 'ppm', 'element', null, 0.6, 'medium', null, 'below'],
          [4, 'zinc', 3.4, 'ppm', 'element', null, 3.4, 'high', null, 'above'],
          [8, 'organic-matter', 4.1, '%', null, null, null, null, null, open],
        ],
        mayBeUnread: [2, 3, 5, 6, 7],
      },
    ],
    mistakes: [
      { line: 2, column: 1, offers: 'phosphorus' },
      { line: 3, column: 11 },
      { line: 5, column: 15, offers: 'ppm' },
      { line: 6, column: 4 },
      { line: 7, column: 9 },
    ],
  },

  // Invented. A letter full of numbers and without a reading.
  'no-readings': { code: [0, 3] },

  // Invented. Byte order mark, CRLF, blanks that do not break, subscripts, en dash, micro sign, a thin blank in a thousand.
  // 80 x 0.4364 = 34.9 mg P/kg, 240 x 0.8302 = 199 mg K/kg; the range is for the oxide, as printed.
  'odd-characters': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 80, 'mg/kg', 'oxide', 'olsen', 34.9, null, null, open],
          [3, 'potassium', 240, 'mg/kg', 'oxide', null, 199, open, [150, 250], 'at'],
          [4, 'calcium', 1450, 'mg/kg', 'element', null, 1450, 'high', null, 'above'],
          [5, 'salts', 140, 'uS/cm', null, '1:5', null, null, null, open],
        ],
      },
    ],
  },

  // Invented. The same four names under two headings: contents, then shares of the exchange sites.
  // Ca 6.40 x 200.39, Mg 1.55 x 121.53, K 0.45 x 390.98, Na 0.06 x 229.90; with acidity 1.54 they sum to 10.0.
  exchange: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'calcium', 6.4, 'meq/100g', 'element', 'ammonium-acetate', 1280, null, null, open],
          [3, 'magnesium', 1.55, 'meq/100g', 'element', 'ammonium-acetate', 188, null, null, open],
          [4, 'potassium', 0.45, 'meq/100g', 'element', 'ammonium-acetate', 176, null, null, open],
          [5, 'sodium', 0.06, 'meq/100g', 'element', 'ammonium-acetate', 13.8, null, null, open],
          [8, 'saturation-ca', 64, '%', null, null, null, null, null, open],
          [9, 'saturation-mg', 15.5, '%', null, null, null, null, null, open],
          [10, 'saturation-k', 4.5, '%', null, null, null, null, null, open],
          [11, 'saturation-na', 0.6, '%', null, null, null, null, null, open],
          [12, 'saturation-h', 15.4, '%', null, null, null, null, null, open],
          [14, 'acidity', 1.54, 'meq/100g', null, null, null, null, null, open],
          [15, 'cec', 10.0, 'meq/100g', null, null, null, null, null, open],
          [16, 'density', 1.08, 'g/cm3', null, null, null, null, null, open],
          [17, 'ph', 6.0, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // Invented. A column of earlier values stands before the new ones.
  'previous-column': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 48, 'ppm', 'element', null, 48, 'high', null, 'above'],
          [4, 'potassium', 122, 'ppm', 'element', null, 122, 'medium', null, 'below'],
          [5, 'magnesium', 70, 'ppm', 'element', null, 70, 'optimum', null, 'at'],
        ],
      },
    ],
  },

  // Invented. Four lines on lime, each another thing: a lime index is a buffer pH times ten; free lime is carbonate.
  'lime-words': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 5.5, 'pH', null, null, null, null, null, open],
          [2, 'buffer-ph', either(68, 6.8), either('index', 'pH'), null, null, null, null, null, open],
          [3, 'lime-requirement', 4, 'ton/acre', null, null, null, null, null, open],
          [4, 'carbonate', null, null, null, null, null, 'low', null, open],
          [5, 'phosphorus', 12, 'ppm', 'element', null, 12, 'low', null, 'below'],
          [6, 'potassium', 88, 'ppm', 'element', null, 88, 'low', null, 'below'],
        ],
      },
    ],
    mayAsk: ['method-missing buffer-ph'],
  },

  // Invented. By volume, with the density printed: 30 / 1.2, 180 / 1.2, 66 / 1.2.
  'by-volume': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'density', 1.2, 'g/cm3', null, null, null, null, null, open],
          [3, 'phosphorus', 30, 'mg/L', 'element', 'olsen', 25, null, null, open],
          [4, 'potassium', 180, 'mg/L', 'element', null, 150, 'optimum', null, 'at'],
          [5, 'magnesium', 66, 'mg/L', 'element', null, 55, 'optimum', null, 'at'],
          [6, 'ph', 6.5, 'pH', null, null, null, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
  },
};
