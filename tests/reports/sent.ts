// Kinds of reports that growers sent, and what a careful reader takes from each. All are invented: made-up places and
// numbers. The form is that of expected.ts; layouts are practice.
// mg/kg by definition: mg/100 g x 10; P2O5 x 0.4364; K2O x 0.8301. mg/L without a density is no mg/kg.

import { either, open } from './expectation.ts';
import type { Expected } from './expectation.ts';

export const sent: Readonly<Record<string, Expected>> = {
  // "K rating" beside "K (ppm)": the lab's word for that item.
  'rating-columns-csv': {
    samples: [
      {
        name: 'North rows',
        readings: [
          [2, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, 'ppm', 'element', null, 41, 'optimum', null, 'at'],
          [2, 'potassium', 156, 'ppm', 'element', null, 156, 'low', null, 'below'],
          [2, 'magnesium', 146, 'ppm', 'element', null, 146, 'optimum', null, 'at'],
        ],
      },
      {
        name: 'South rows',
        readings: [
          [3, 'ph', 5.8, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 12, 'ppm', 'element', null, 12, 'low', null, 'below'],
          [3, 'potassium', 88, 'ppm', 'element', null, 88, 'very-low', null, 'far-below'],
          [3, 'magnesium', 97, 'ppm', 'element', null, 97, 'medium', null, 'below'],
        ],
      },
    ],
  },

  // Letters under "P rating": L, H, VL.
  'rating-columns-tabs': {
    samples: [
      {
        name: 'B-1',
        readings: [
          [2, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 22, 'ppm', 'element', 'mehlich-3', 22, 'low', null, 'below'],
          [2, 'potassium', 196, 'ppm', 'element', 'mehlich-3', 196, 'high', null, 'above'],
          [2, 'organic-matter', 3.4, '%', null, null, null, null, null, open],
        ],
      },
      {
        name: 'B-2',
        readings: [
          [3, 'ph', 6, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 61, 'ppm', 'element', 'mehlich-3', 61, 'high', null, 'above'],
          [3, 'potassium', 78, 'ppm', 'element', 'mehlich-3', 78, 'very-low', null, 'far-below'],
          [3, 'organic-matter', 2.9, '%', null, null, null, null, null, open],
        ],
      },
    ],
  },

  'rating-columns-spaced': {
    samples: [
      {
        name: 'Hilltop',
        readings: [
          [2, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 18, 'ppm', 'element', null, 18, 'low', null, 'below'],
          [2, 'potassium', 140, 'ppm', 'element', null, 140, 'medium', null, 'below'],
          [2, 'calcium', 1202, 'ppm', 'element', null, 1202, 'optimum', null, 'at'],
        ],
      },
      {
        name: 'Orchard',
        readings: [
          [3, 'ph', 6.6, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 55, 'ppm', 'element', null, 55, 'high', null, 'above'],
          [3, 'potassium', 243, 'ppm', 'element', null, 243, 'very-high', null, 'above'],
          [3, 'calcium', 1600, 'ppm', 'element', null, 1600, 'optimum', null, 'at'],
        ],
      },
    ],
  },

  // "Bewertung" A to E: A very low, C the goal, D high. 18 mg/100 g P2O5 = 78.6 mg/kg P, 9 mg/100 g K2O = 74.7 mg/kg K.
  'rating-columns-german': {
    samples: [
      {
        name: 'Garten',
        readings: [
          [2, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 18, 'mg/100g', 'oxide', null, 78.6, 'optimum', null, 'at'],
          [2, 'potassium', 9, 'mg/100g', 'oxide', null, 74.7, 'low', null, 'below'],
        ],
      },
      {
        name: 'Wiese',
        readings: [
          [3, 'ph', 5.9, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 6, 'mg/100g', 'oxide', null, 26.2, 'very-low', null, 'far-below'],
          [3, 'potassium', 24, 'mg/100g', 'oxide', null, 199, 'high', null, 'above'],
        ],
      },
    ],
  },

  // "Rating" behind each item, and last year's phosphorus.
  'rating-columns-bare': {
    samples: [
      {
        name: 'A',
        readings: [
          [2, 'ph', 6.3, 'pH', null, null, null, 'optimum', null, 'at'],
          [2, 'phosphorus', 41, 'ppm', 'element', null, 41, 'optimum', null, 'at'],
          [2, 'potassium', 156, 'ppm', 'element', null, 156, 'low', null, 'below'],
        ],
      },
      {
        name: 'B',
        readings: [
          [3, 'ph', 5.8, 'pH', null, null, null, 'low', null, 'below'],
          [3, 'phosphorus', 12, 'ppm', 'element', null, 12, 'low', null, 'below'],
          [3, 'potassium', 88, 'ppm', 'element', null, 88, 'very-low', null, 'far-below'],
        ],
      },
    ],
  },

  // A rating in figures is a scale of the lab's own: no word and no index is made of it.
  'rating-columns-of-numbers': {
    samples: [
      { name: 'A', readings: [[2, 'phosphorus', 41, 'ppm', 'element', null, 41, null, null, open], [2, 'potassium', 156, 'ppm', 'element', null, 156, null, null, open]] },
      { name: 'B', readings: [[3, 'phosphorus', 12, 'ppm', 'element', null, 12, null, null, open], [3, 'potassium', 88, 'ppm', 'element', null, 88, null, null, open]] },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
  },

  // Names of two samples in one row, "mg/l" and "Index" under each.
  'two-names-spaced': {
    samples: [
      {
        name: 'Top orchard',
        readings: [
          [3, 'phosphorus', 34, 'mg/L', 'element', 'olsen', null, null, null, open],
          [4, 'potassium', 165, 'mg/L', 'element', null, null, null, null, open],
          [5, 'magnesium', 48, 'mg/L', 'element', null, null, null, null, open],
          [6, 'ph', 6.2, 'pH', null, null, null, null, null, open],
        ],
      },
      {
        name: 'Bottom orchard',
        readings: [
          [3, 'phosphorus', 18, 'mg/L', 'element', 'olsen', null, null, null, open],
          [4, 'potassium', 95, 'mg/L', 'element', null, null, null, null, open],
          [5, 'magnesium', 70, 'mg/L', 'element', null, null, null, null, open],
          [6, 'ph', 6.8, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
  },

  'two-names-tabs': {
    samples: [
      {
        name: 'Home Field',
        readings: [
          [3, 'phosphorus', 28, 'mg/L', 'element', null, null, null, null, open],
          [4, 'potassium', 150, 'mg/L', 'element', null, null, null, null, open],
          [5, 'magnesium', 70, 'mg/L', 'element', null, null, null, null, open],
          [6, 'ph', 6.4, 'pH', null, null, null, null, null, open],
        ],
      },
      {
        name: 'Far Field',
        readings: [
          [3, 'phosphorus', 14, 'mg/L', 'element', null, null, null, null, open],
          [4, 'potassium', 260, 'mg/L', 'element', null, null, null, null, open],
          [5, 'magnesium', 110, 'mg/L', 'element', null, null, null, null, open],
          [6, 'ph', 5.9, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // Units in the names of the items; each sample has a texture of its own.
  'two-names-csv': {
    samples: [
      {
        name: either('1 Walled garden', 'Walled garden'),
        readings: [
          [3, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [4, 'phosphorus', 28, 'mg/L', 'element', null, null, null, null, open],
          [5, 'potassium', 150, 'mg/L', 'element', null, null, null, null, open],
          [6, 'texture', null, null, null, null, null, null, null, open, { words: 'sandy loam' }],
        ],
      },
      {
        name: either('2 Paddock', 'Paddock'),
        readings: [
          [3, 'ph', 5.9, 'pH', null, null, null, null, null, open],
          [4, 'phosphorus', 14, 'mg/L', 'element', null, null, null, null, open],
          [5, 'potassium', 260, 'mg/L', 'element', null, null, null, null, open],
          [6, 'texture', null, null, null, null, null, null, null, open, { words: 'clay loam' }],
        ],
      },
    ],
  },

  // "Index" and "mg/l (Available)" each over P, K and Mg; a row a sample, whose name is not the lab's number.
  'kinds-over-items': {
    samples: [
      {
        name: 'Top orchard',
        readings: [
          [3, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 34.2, 'mg/L', 'element', null, null, null, null, open],
          [3, 'potassium', 165, 'mg/L', 'element', null, null, null, null, open],
          [3, 'magnesium', 48, 'mg/L', 'element', null, null, null, null, open],
        ],
      },
      {
        name: 'Bottom orchard',
        readings: [
          [4, 'ph', 6.8, 'pH', null, null, null, null, null, open],
          [4, 'phosphorus', 18, 'mg/L', 'element', null, null, null, null, open],
          [4, 'potassium', 95, 'mg/L', 'element', null, null, null, null, open],
          [4, 'magnesium', 70, 'mg/L', 'element', null, null, null, null, open],
        ],
      },
    ],
  },

  'names-in-heads': {
    samples: [
      { name: 'Top', readings: [[2, 'phosphorus', 34, 'mg/L', 'element', null, null, null, null, open], [3, 'potassium', 165, 'mg/L', 'element', null, null, null, null, open], [4, 'magnesium', 48, 'mg/L', 'element', null, null, null, null, open]] },
      { name: 'Bottom', readings: [[2, 'phosphorus', 18, 'mg/L', 'element', null, null, null, null, open], [3, 'potassium', 95, 'mg/L', 'element', null, null, null, null, open], [4, 'magnesium', 70, 'mg/L', 'element', null, null, null, null, open]] },
    ],
  },

  'two-results': {
    samples: [
      { name: 'A', readings: [[2, 'phosphorus', 41, 'ppm', 'element', 'mehlich-3', 41, null, null, open], [3, 'potassium', 156, 'ppm', 'element', null, 156, null, null, open], [4, 'ph', 6.3, 'pH', null, null, null, null, null, open]] },
      { name: 'B', readings: [[2, 'phosphorus', 18, 'ppm', 'element', 'mehlich-3', 18, null, null, open], [3, 'potassium', 95, 'ppm', 'element', null, 95, null, null, open], [4, 'ph', 5.9, 'pH', null, null, null, null, null, open]] },
    ],
    ask: ['method-missing potassium'],
  },

  // An extractant below the values serves those above it; nitrate is not Mehlich 3's.
  'method-last': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, 'ppm', 'element', 'mehlich-3', 41, null, null, open],
          [3, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, null, open],
          [4, 'magnesium', 146, 'ppm', 'element', 'mehlich-3', 146, null, null, open],
          [5, 'nitrate-n', 12, 'ppm', 'element', null, 12, null, null, open],
        ],
        mayBeUnread: [7],
      },
    ],
  },

  // Of phosphorus alone: potassium's is asked.
  'method-of-one': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.8, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 18, 'ppm', 'element', 'olsen', 18, null, null, open],
          [3, 'potassium', 210, 'ppm', 'element', null, 210, null, null, open],
        ],
        mayBeUnread: [4],
      },
    ],
    ask: ['method-missing potassium'],
  },

  // One line for both samples.
  'methods-of-two-samples': {
    samples: [
      {
        name: 'East bed',
        readings: [
          [2, 'ph', 6.1, 'pH', null, either('water', '1:1'), null, null, null, open],
          [2, 'phosphorus', 22, 'ppm', 'element', 'mehlich-3', 22, null, null, open],
          [2, 'potassium', 140, 'ppm', 'element', 'mehlich-3', 140, null, null, open],
          [2, 'organic-matter', 3.2, '%', null, 'loi', null, null, null, open],
        ],
      },
      {
        name: 'West bed',
        readings: [
          [4, 'ph', 6.4, 'pH', null, either('water', '1:1'), null, null, null, open],
          [4, 'phosphorus', 35, 'ppm', 'element', 'mehlich-3', 35, null, null, open],
          [4, 'potassium', 180, 'ppm', 'element', 'mehlich-3', 180, null, null, open],
          [4, 'organic-matter', 2.8, '%', null, 'loi', null, null, null, open],
        ],
        mayBeUnread: [6],
      },
    ],
  },

  // The method beside phosphorus stays; boron's own is told.
  'method-of-others': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'phosphorus', 41, 'ppm', 'element', 'bray-1', 41, null, null, open],
          [2, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, null, open],
          [3, 'calcium', 1202, 'ppm', 'element', 'mehlich-3', 1202, null, null, open],
          [4, 'zinc', 2.1, 'ppm', 'element', 'mehlich-3', 2.1, null, null, open],
          [5, 'boron', 0.6, 'ppm', 'element', 'hot-water', 0.6, null, null, open],
        ],
        mayBeUnread: [7, 8],
      },
    ],
  },

  // 18 mg/100 g P2O5 = 78.6 mg/kg P, 21 mg/100 g K2O = 174 mg/kg K.
  'method-last-german': {
    samples: [
      {
        name: open,
        readings: [
          [2, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 18, 'mg/100g', 'oxide', 'cal', 78.6, null, null, open],
          [4, 'potassium', 21, 'mg/100g', 'oxide', 'cal', 174, null, null, open],
          [5, 'magnesium', 9, 'mg/100g', 'element', 'cacl2', 90, null, null, open],
        ],
        mayBeUnread: [1, 6],
      },
    ],
  },

  // Each bed has its own; Olsen says nothing of potassium, and the other bed's extractant is not taken for it.
  'method-of-each-bed': {
    samples: [
      {
        name: 'Bed 1',
        readings: [
          [2, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 22, 'mg/kg', 'element', 'olsen', 22, null, null, open],
          [4, 'potassium', 160, 'mg/kg', 'element', null, 160, null, null, open],
        ],
        mayBeUnread: [5],
      },
      {
        name: 'Bed 2',
        readings: [
          [8, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [9, 'phosphorus', 41, 'mg/kg', 'element', 'mehlich-3', 41, null, null, open],
          [10, 'potassium', 130, 'mg/kg', 'element', 'mehlich-3', 130, null, null, open],
        ],
        mayBeUnread: [11],
      },
    ],
    ask: ['method-missing potassium'],
  },

  // Unit and methods below a table of two samples.
  'method-below-table': {
    samples: [
      {
        name: 'Ridge',
        readings: [
          [2, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 18, 'mg/kg', 'element', 'olsen', 18, null, null, open],
          [2, 'potassium', 140, 'mg/kg', 'element', 'ammonium-acetate', 140, null, null, open],
          [2, 'magnesium', 96, 'mg/kg', 'element', 'ammonium-acetate', 96, null, null, open],
        ],
      },
      {
        name: 'Hollow',
        readings: [
          [3, 'ph', 6.6, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 33, 'mg/kg', 'element', 'olsen', 33, null, null, open],
          [3, 'potassium', 210, 'mg/kg', 'element', 'ammonium-acetate', 210, null, null, open],
          [3, 'magnesium', 150, 'mg/kg', 'element', 'ammonium-acetate', 150, null, null, open],
        ],
        mayBeUnread: [5],
      },
    ],
  },

  // Sentences that speak of a method are no statement of this report's.
  'method-in-prose': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, 'ppm', 'element', null, 41, null, null, open],
          [3, 'potassium', 156, 'ppm', 'element', null, 156, null, null, open],
        ],
        unread: [4, 5],
      },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
  },

  // A method behind each value, not before the next.
  'method-behind-each': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'phosphorus', 22, 'ppm', 'element', 'olsen', 22, null, null, open],
          [3, 'potassium', 156, 'ppm', 'element', 'ammonium-acetate', 156, null, null, open],
        ],
        mayBeUnread: [2, 4],
      },
    ],
  },

  // New Zealand. MAF quick-test units are no content: they stand as their own unit. Olsen's has none here and is asked.
  'quick-test-line': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'phosphorus', 22, null, 'element', 'olsen', null, null, null, open],
          [1, 'potassium', 8, 'MAF', 'element', null, null, null, null, null],
          [1, 'calcium', 9, 'MAF', 'element', null, null, null, null, null],
          [1, 'magnesium', 21, 'MAF', 'element', null, null, null, null, null],
          [1, 'sodium', 5, 'MAF', 'element', null, null, null, null, null],
          [1, 'ph', 6.1, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['unit-missing phosphorus'],
  },

  'quick-test-before': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 34, 'mg/L', 'element', 'olsen', null, null, null, open],
          [4, 'potassium', 8, 'MAF', 'element', null, null, null, null, null],
          [5, 'calcium', 9, 'MAF', 'element', null, null, null, null, null],
          [6, 'magnesium', 21, 'MAF', 'element', null, null, null, null, null],
          [7, 'sodium', 5, 'MAF', 'element', null, null, null, null, null],
        ],
        mayBeUnread: [1, 8],
      },
    ],
  },

  // The lab's range rates them all the same.
  'quick-test-ranges': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.1, 'pH', null, null, null, open, [5.8, 6.5], 'at'],
          [3, 'phosphorus', 22, 'mg/L', 'element', 'olsen', null, open, [20, 30], 'at'],
          [4, 'potassium', 8, 'MAF', 'element', null, null, open, [5, 8], 'at'],
          [5, 'calcium', 9, 'MAF', 'element', null, null, open, [4, 10], 'at'],
          [6, 'magnesium', 21, 'MAF', 'element', null, null, open, [8, 10], 'above'],
          [7, 'sodium', 5, 'MAF', 'element', null, null, open, [2, 12], 'at'],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // A microgram in a millilitre is a milligram in a litre.
  'quick-test-csv': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 22, 'mg/L', 'element', 'olsen', null, null, null, open],
          [4, 'potassium', 8, 'MAF', 'element', null, null, null, null, null],
          [5, 'calcium', 9, 'MAF', 'element', null, null, null, null, null],
          [6, 'magnesium', 21, 'MAF', 'element', null, null, null, null, null],
        ],
      },
    ],
  },

  // A heading of quick tests is none of Olsen's phosphorus.
  'quick-test-heading': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'calcium', 9, 'MAF', 'element', null, null, null, null, null],
          [1, 'potassium', 8, 'MAF', 'element', null, null, null, null, null],
          [1, 'phosphorus', 22, null, 'element', 'olsen', null, null, null, open],
          [1, 'magnesium', 21, 'MAF', 'element', null, null, null, null, null],
          [1, 'sodium', 5, 'MAF', 'element', null, null, null, null, null],
          [2, 'ph', 6.1, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['unit-missing phosphorus'],
  },

  // Texas: a critical level, to be reached, beside each result; bars and the advice behind them are no readings.
  'critical-stars': {
    samples: [
      {
        name: 'Back orchard',
        readings: [
          [5, 'ph', 6.3, 'pH', null, null, null, null, [5.8, null], 'at'],
          [6, 'salts', 85, 'uS/cm', null, null, null, null, null, open],
          [7, 'nitrate-n', 7, 'ppm', 'element', null, 7, null, null, open],
          [8, 'phosphorus', 41, 'ppm', 'element', 'mehlich-3', 41, null, [50, null], 'below'],
          [9, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, [175, null], 'below'],
          [10, 'calcium', 2405, 'ppm', 'element', 'mehlich-3', 2405, null, [180, null], 'at'],
          [11, 'magnesium', 243, 'ppm', 'element', 'mehlich-3', 243, null, [50, null], 'at'],
          [12, 'sulphur', 11, 'ppm', 'element', 'mehlich-3', 11, null, [13, null], 'below'],
          [13, 'sodium', 14, 'ppm', 'element', 'mehlich-3', 14, null, null, open],
          [14, 'lime-requirement', 0, 'ton/acre', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 16, 17],
      },
    ],
  },

  'critical-strokes': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 12, 'ppm', 'element', null, 12, null, [50, null], 'far-below'],
          [3, 'potassium', 96, 'ppm', 'element', null, 96, null, [175, null], 'below'],
          [4, 'zinc', 0.45, 'ppm', 'element', null, 0.45, null, [0.27, null], 'at'],
        ],
      },
    ],
  },

  'critical-tabs': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 12, 'ppm', 'element', null, 12, null, [50, null], 'far-below'],
          [3, 'potassium', 196, 'ppm', 'element', null, 196, null, [175, null], 'at'],
          [4, 'ph', 6.9, 'pH', null, null, null, null, [6.1, null], 'at'],
        ],
      },
    ],
  },

  // "12,50" is two cells, never 12.5.
  'critical-csv': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 12, 'ppm', 'element', null, 12, null, [50, null], 'far-below'],
          [3, 'potassium', 196, 'ppm', 'element', null, 196, null, [175, null], 'at'],
          [4, 'boron', 0.4, 'ppm', 'element', null, 0.4, null, [0.6, null], 'below'],
        ],
      },
    ],
  },

  // A column that nobody knows beside results: told, its numbers left out.
  'strange-heads': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 12, 'ppm', 'element', null, 12, null, null, open],
          [3, 'potassium', 196, 'ppm', 'element', null, 196, null, null, open],
          [4, 'boron', 0.4, 'ppm', 'element', null, 0.4, null, null, open],
        ],
      },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
  },

  // What a compost brings is no content of the soil, whatever its unit.
  'compost-below': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, 'ppm', 'element', 'mehlich-3', 41, null, null, open],
          [3, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, null, open],
        ],
        unread: [6, 7, 8, 9],
        mayBeUnread: [5],
      },
    ],
  },

  // Nor is what a crop takes, or a compost told of in one line.
  'removed-by-crop': {
    samples: [
      {
        name: either('sample 1', 'Soil test results'),
        readings: [
          [2, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 22, 'ppm', 'element', 'bray-1', 22, null, null, open],
          [4, 'potassium', 140, 'ppm', 'element', null, 140, null, null, open],
        ],
        unread: [7, 8, 9, 10],
        mayBeUnread: [1, 6],
      },
    ],
    ask: ['method-missing potassium'],
  },

  'uptake-tabs': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 34, 'mg/kg', 'element', 'olsen', 34, null, null, open],
          [3, 'potassium', 180, 'mg/kg', 'element', null, 180, null, null, open],
        ],
        unread: [5, 6, 7],
        mayBeUnread: [4],
      },
    ],
    ask: ['method-missing potassium'],
  },

  // 18 mg/100 g P2O5 = 78.6 mg/kg P, 21 mg/100 g K2O = 174 mg/kg K.
  'removed-german': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 18, 'mg/100g', 'oxide', 'cal', 78.6, null, null, open],
          [3, 'potassium', 21, 'mg/100g', 'oxide', 'cal', 174, null, null, open],
        ],
        unread: [5, 6, 8, 9],
        mayBeUnread: [4, 7],
      },
    ],
  },

  // The soil's own values follow.
  'compost-above': {
    samples: [
      {
        name: either('sample 1', 'Soil'),
        readings: [
          [either(5, 6), 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [7, 'phosphorus', 41, 'ppm', 'element', 'mehlich-3', 41, null, null, open],
          [8, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, null, open],
        ],
        unread: [2, 3, 4],
        mayBeUnread: [1, 5],
      },
    ],
  },

  // 45 mg/kg P2O5 = 19.6 mg/kg P, 180 mg/kg K2O = 149 mg/kg K.
  'removed-french': {
    samples: [
      {
        name: either('sample 1', 'Analyse de sol'),
        readings: [
          [2, 'ph', 6.8, 'pH', null, 'water', null, null, null, open],
          [3, 'phosphorus', 45, 'mg/kg', 'oxide', 'olsen', 19.6, null, null, open],
          [4, 'potassium', 180, 'mg/kg', 'oxide', null, 149, null, null, open],
        ],
        unread: [6, 7, 9, 10],
        mayBeUnread: [1, 5, 8],
      },
    ],
    ask: ['method-missing potassium'],
  },

  // A texture that shares its line: named or bare, in several languages, its shares in brackets.
  'texture-lines': {
    samples: [
      {
        name: 'one',
        readings: [
          [2, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [2, 'texture', null, null, null, null, null, null, null, open, { words: 'loam' }],
          [2, 'phosphorus', 22, 'ppm', 'element', 'bray-1', 22, null, null, open],
        ],
      },
      {
        name: 'two',
        readings: [
          [4, 'texture', null, null, null, null, null, null, null, open, { words: 'Silt loam' }],
          [4, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [4, 'organic-matter', 4.1, '%', null, null, null, null, null, open],
        ],
      },
      {
        name: 'three',
        readings: [
          [6, 'texture', null, null, null, null, null, null, null, open, { words: 'Sandy clay loam' }],
          [6, 'sand', 55, '%', null, null, null, null, null, open],
          [6, 'silt', 20, '%', null, null, null, null, null, open],
          [6, 'clay', 25, '%', null, null, null, null, null, open],
          [6, 'ph', 6.2, 'pH', null, null, null, null, null, open],
        ],
      },
      {
        name: 'four',
        readings: [
          [8, 'ph', 5.9, 'pH', null, null, null, null, null, open],
          [8, 'texture', null, null, null, null, null, null, null, open, { words: 'sandy loam' }],
          [8, 'phosphorus', 22, 'ppm', 'element', 'mehlich-3', 22, null, null, open],
        ],
      },
    ],
  },

  'texture-line-german': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'texture', null, null, null, null, null, null, null, open, { words: 'lehmiger Sand' }],
          [1, 'ph', 5.8, 'pH', null, null, null, null, null, open],
          [1, 'phosphorus', 12, 'mg/100g', 'oxide', 'cal', 52.4, null, null, open],
        ],
      },
    ],
  },

  'texture-line-italian': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'texture', null, null, null, null, null, null, null, open, { words: 'franco sabbioso' }],
          [1, 'ph', 7.2, 'pH', null, null, null, null, null, open],
          [1, 'phosphorus', 14, 'mg/kg', 'element', 'olsen', 14, null, null, open],
        ],
      },
    ],
  },

  // A class behind each value of the row: "11 B" is no boron. 24 mg/100 g P2O5 = 105 mg/kg P, 11 mg/100 g K2O = 91.3 mg/kg K.
  'german-row-of-classes': {
    samples: [
      {
        name: either('4711', 'sample 1'),
        readings: [
          [4, 'texture', null, null, null, null, null, null, null, open, { words: 'sL' }],
          [4, 'ph', 6.3, 'pH', null, null, null, 'optimum', null, 'at'],
          [4, 'phosphorus', 24, 'mg/100g', 'oxide', null, 105, 'high', null, 'above'],
          [4, 'potassium', 11, 'mg/100g', 'oxide', null, 91.3, 'low', null, 'below'],
          [4, 'magnesium', 9, 'mg/100g', 'element', null, 90, 'optimum', null, 'at'],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  'letters-in-row': {
    samples: [
      {
        name: 'North',
        readings: [
          [2, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, 'ppm', 'element', null, 41, 'high', null, 'above'],
          [2, 'potassium', 88, 'ppm', 'element', null, 88, 'low', null, 'below'],
          [2, 'magnesium', 146, 'ppm', 'element', null, 146, 'medium', null, 'below'],
        ],
      },
      {
        name: 'South',
        readings: [
          [3, 'ph', 5.9, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 12, 'ppm', 'element', null, 12, 'very-low', null, 'far-below'],
          [3, 'potassium', 196, 'ppm', 'element', null, 196, 'medium', null, 'below'],
          [3, 'magnesium', 97, 'ppm', 'element', null, 97, 'low', null, 'below'],
        ],
      },
    ],
  },

  // Three samples by number; the row of their depths is no depth of any one.
  'numbered-samples': {
    samples: [
      { name: 'sample 1', readings: [[3, 'ph', 6.3, 'pH', null, null, null, null, null, open], [4, 'phosphorus', 41, 'ppm', 'element', null, 41, null, null, open], [5, 'potassium', 156, 'ppm', 'element', null, 156, null, null, open]] },
      { name: 'sample 2', readings: [[3, 'ph', 5.9, 'pH', null, null, null, null, null, open], [4, 'phosphorus', 12, 'ppm', 'element', null, 12, null, null, open], [5, 'potassium', 88, 'ppm', 'element', null, 88, null, null, open]] },
      { name: 'sample 3', readings: [[3, 'ph', 6.8, 'pH', null, null, null, null, null, open], [4, 'phosphorus', 22, 'ppm', 'element', null, 22, null, null, open], [5, 'potassium', 196, 'ppm', 'element', null, 196, null, null, open]], unread: [2] },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
  },

  // A forum post: the misspelt name is told, and so are the short names behind potash.
  forum: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 5.4, 'pH', null, null, null, null, null, open],
          [2, 'buffer-ph', 6.7, 'pH', null, null, null, null, null, open],
          [3, 'potassium', 88, null, 'element', null, null, 'low', null, 'below'],
          [4, 'organic-matter', 2.6, '%', null, null, null, null, null, open],
          [4, 'cec', 7, null, null, null, null, null, null, open],
        ],
        unread: [5],
        mayBeUnread: [1],
      },
    ],
    ask: ['unit-missing potassium', 'unit-missing cec'],
    mayAsk: ['method-missing buffer-ph'],
    mistakes: [{ line: 3, column: 1, offers: 'phosphorus' }],
  },

  // Letters under "status", a lime need among the columns.
  'lime-and-status': {
    samples: [
      {
        name: 'Long Rig',
        readings: [
          [3, 'ph', 5.8, 'pH', null, null, null, null, null, open],
          [3, 'lime-requirement', 5, 't/ha', null, null, null, null, null, open],
          [3, 'phosphorus', 4.2, 'mg/L', 'element', null, null, 'low', null, 'below'],
          [3, 'potassium', 110, 'mg/L', 'element', null, null, 'medium', null, 'below'],
          [3, 'magnesium', 95, 'mg/L', 'element', null, null, 'medium', null, 'below'],
        ],
        mayBeUnread: [1],
      },
      {
        name: 'Back Park',
        readings: [
          [4, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [4, 'lime-requirement', 0, 't/ha', null, null, null, null, null, open],
          [4, 'phosphorus', 9.8, 'mg/L', 'element', null, null, 'medium', null, 'below'],
          [4, 'potassium', 240, 'mg/L', 'element', null, null, 'high', null, 'above'],
          [4, 'magnesium', 150, 'mg/L', 'element', null, null, 'high', null, 'above'],
        ],
      },
    ],
  },

  // As many cells as heads, yet "ppm" stands before the first: 41 is never potassium's. Nothing is read.
  'rows-of-kinds': { code: [3] },
};
