// More layouts that labs and growers use, and what a careful reader takes from each. All are invented: made-up places
// and numbers, soils whose cations add up to their exchange capacity. The form is that of expected.ts.
// mg/kg by definition: lb/acre / 2; meq/100 g x atomic mass / charge x 10 (Ca 200.39, Mg 121.53, K 390.98, Al 89.94).

import { either, open } from './expectation.ts';
import type { Expected } from './expectation.ts';

export const more: Readonly<Record<string, Expected>> = {
  // Two readings side by side on a line, blanks between; a report number in the head.
  'side-by-side': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 61, 'ppm', 'element', 'mehlich-3', 61, null, null, open],
          [2, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [3, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, null, open],
          [3, 'buffer-ph', 6.9, 'pH', null, null, null, null, null, open],
          [4, 'calcium', 1202, 'ppm', 'element', 'mehlich-3', 1202, null, null, open],
          [4, 'organic-matter', 3.4, '%', null, null, null, null, null, open],
          [5, 'magnesium', 146, 'ppm', 'element', 'mehlich-3', 146, null, null, open],
          [5, 'cec', 8.0, 'meq/100g', null, null, null, null, null, open],
          [6, 'zinc', 2.8, 'ppm', 'element', 'mehlich-3', 2.8, null, null, open],
          [6, 'sodium', 11, 'ppm', 'element', 'mehlich-3', 11, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
    mayAsk: ['method-missing buffer-ph'],
  },

  // Bold and italic marks in a table, the unit beside the value. "Slightly acid" names a class of pH, which may count as the lab's word.
  // The place in the title may serve as the sample's name.
  'markdown-bold': {
    samples: [
      {
        name: either('sample 1', 'Pear Tree Bank'),
        readings: [
          [5, 'ph', 6.1, 'pH', null, either('1:1', 'water'), null, open, null, open],
          [6, 'phosphorus', 18, 'ppm', 'element', null, 18, 'low', null, 'below'],
          [7, 'potassium', 313, 'ppm', 'element', null, 313, 'high', null, 'above'],
          [8, 'calcium', 2405, 'ppm', 'element', null, 2405, 'optimum', null, 'at'],
          [9, 'magnesium', 365, 'ppm', 'element', null, 365, 'very-high', null, 'above'],
          [10, 'cec', 16.3, 'meq/100g', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 3, 4],
      },
    ],
  },

  // A row a sample, the unit in each head. 0.50 and 0.20 meq of K x 390.98, 8 and 4 of Ca x 200.39, 2 and 0.8 of Mg x 121.53.
  'csv-units-in-head': {
    samples: [
      {
        name: 'Top row',
        readings: [
          [2, 'ph', 6.2, 'pH', null, 'water', null, null, null, open],
          [2, 'phosphorus', 14.5, 'mg/kg', 'element', 'olsen', 14.5, null, null, open],
          [2, 'potassium', 0.5, 'meq/100g', 'element', null, 195, null, null, open],
          [2, 'calcium', 8, 'meq/100g', 'element', null, 1600, null, null, open],
          [2, 'magnesium', 2, 'meq/100g', 'element', null, 243, null, null, open],
          [2, 'cec', 12, 'meq/100g', null, null, null, null, null, open],
          [2, 'organic-matter', 3.9, '%', null, null, null, null, null, open],
        ],
        mayBeUnread: [1],
      },
      {
        name: 'Hedge row',
        readings: [
          [3, 'ph', 5.8, 'pH', null, 'water', null, null, null, open],
          [3, 'phosphorus', 22, 'mg/kg', 'element', 'olsen', 22, null, null, open],
          [3, 'potassium', 0.2, 'meq/100g', 'element', null, 78.2, null, null, open],
          [3, 'calcium', 4, 'meq/100g', 'element', null, 802, null, null, open],
          [3, 'magnesium', 0.8, 'meq/100g', 'element', null, 97.2, null, null, open],
          [3, 'cec', 6, 'meq/100g', null, null, null, null, null, open],
          [3, 'organic-matter', 2.6, '%', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['method-missing potassium'],
    mayAsk: ['method-missing calcium', 'method-missing magnesium'],
  },

  // Everything in quotes, commas between thousands in values and ranges; ranges in lb/acre as printed.
  'csv-quoted': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'calcium', 2405, 'lb/acre', 'element', null, 1200, 'optimum', [2000, 3000], 'at'],
          [3, 'magnesium', 292, 'lb/acre', 'element', null, 146, 'optimum', [150, 300], 'at'],
          [4, 'potassium', 156, 'lb/acre', 'element', null, 78, 'low', [240, 320], 'below'],
          [5, 'phosphorus', 1012, 'lb/acre', 'element', null, 506, 'very-high', [60, 100], 'above'],
          [6, 'organic-matter', 3.1, '%', null, null, null, null, null, open],
          [7, 'ph', 6.4, 'pH', null, null, null, 'optimum', [6.2, 6.8], 'at'],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // Tabs, empty cells, a column of methods, the range in two columns. Boron has no result: its range is no value.
  // P 9 is under half of 20; S 7 is below a lower limit that stands alone.
  'tab-methods': {
    samples: [
      {
        name: 'Old Quince Walk',
        taken: '2025-10-14',
        readings: [
          [4, 'ph', 5.9, 'pH', null, either('1:1', 'water'), null, null, [6.0, 7.0], 'below'],
          [5, 'phosphorus', 9, 'ppm', 'element', 'bray-1', 9, null, [20, 40], 'far-below'],
          [6, 'potassium', 196, 'ppm', 'element', 'ammonium-acetate', 196, null, [120, 180], 'above'],
          [7, 'magnesium', 243, 'ppm', 'element', 'ammonium-acetate', 243, null, null, open],
          [8, 'sulphur', 7, 'ppm', 'element', null, 7, null, [10, null], 'below'],
          [10, 'zinc', 1.4, 'ppm', 'element', 'dtpa', 1.4, null, [1.0, null], 'at'],
        ],
        unread: [9],
        mayBeUnread: [3],
      },
    ],
  },

  // Items down, samples across, the unit in the item's name. One extract for the nutrients, named above the table.
  'samples-across': {
    samples: [
      {
        name: 'Front',
        readings: [
          [4, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [5, 'phosphorus', 44, 'ppm', 'element', 'mehlich-3', 44, null, null, open],
          [6, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, null, open],
          [7, 'calcium', 1202, 'ppm', 'element', 'mehlich-3', 1202, null, null, open],
          [8, 'magnesium', 146, 'ppm', 'element', 'mehlich-3', 146, null, null, open],
          [9, 'cec', 8, 'meq/100g', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 3],
      },
      {
        name: 'Back',
        readings: [
          [4, 'ph', 5.7, 'pH', null, null, null, null, null, open],
          [5, 'phosphorus', 12, 'ppm', 'element', 'mehlich-3', 12, null, null, open],
          [6, 'potassium', 78, 'ppm', 'element', 'mehlich-3', 78, null, null, open],
          [7, 'calcium', 801, 'ppm', 'element', 'mehlich-3', 801, null, null, open],
          [8, 'magnesium', 97, 'ppm', 'element', 'mehlich-3', 97, null, null, open],
          [9, 'cec', 6, 'meq/100g', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // A row a sample, units in a second row of the head, which has no unit under pH.
  'samples-down': {
    samples: [
      {
        name: 'Apples',
        readings: [
          [3, 'ph', 6.5, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 38, 'ppm', 'element', null, 38, null, null, open],
          [3, 'potassium', 196, 'ppm', 'element', null, 196, null, null, open],
          [3, 'calcium', 1604, 'ppm', 'element', null, 1604, null, null, open],
          [3, 'magnesium', 243, 'ppm', 'element', null, 243, null, null, open],
          [3, 'cec', 12, 'meq/100g', null, null, null, null, null, open],
          [3, 'organic-matter', 4, '%', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 2],
      },
      {
        name: 'Plums',
        readings: [
          [4, 'ph', 6, 'pH', null, null, null, null, null, open],
          [4, 'phosphorus', 25, 'ppm', 'element', null, 25, null, null, open],
          [4, 'potassium', 78, 'ppm', 'element', null, 78, null, null, open],
          [4, 'calcium', 801, 'ppm', 'element', null, 801, null, null, open],
          [4, 'magnesium', 97, 'ppm', 'element', null, 97, null, null, open],
          [4, 'cec', 6, 'meq/100g', null, null, null, null, null, open],
          [4, 'organic-matter', 2.4, '%', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
    mayAsk: ['method-missing calcium', 'method-missing magnesium'],
  },

  // Two samples, each under an underlined heading, a rule of dashes between. "Very low" is far below.
  dashed: {
    samples: [
      {
        name: 'West slope',
        readings: [
          [3, 'ph', 6.8, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 51, 'ppm', 'element', null, 51, 'high', null, 'above'],
          [3, 'potassium', 196, 'ppm', 'element', null, 196, 'optimum', null, 'at'],
          [4, 'magnesium', 243, 'ppm', 'element', null, 243, 'high', null, 'above'],
        ],
        mayBeUnread: [1, 2, 6],
      },
      {
        name: 'East slope',
        readings: [
          [10, 'ph', 5.4, 'pH', null, null, null, null, null, open],
          [11, 'phosphorus', 8, 'ppm', 'element', null, 8, 'very-low', null, 'far-below'],
          [12, 'potassium', 78, 'ppm', 'element', null, 78, 'low', null, 'below'],
          [13, 'magnesium', 97, 'ppm', 'element', null, 97, 'medium', null, 'below'],
        ],
        mayBeUnread: [6, 8, 9],
      },
    ],
  },

  // Each name on a line and its value on the next. The line may be that of the name or of the value.
  'name-then-value': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [either(1, 2), 'ph', 6.6, 'pH', null, null, null, null, null, open],
          [either(3, 4), 'phosphorus', 27, 'ppm', 'element', null, 27, null, null, open],
          [either(5, 6), 'potassium', 156, 'ppm', 'element', null, 156, null, null, open],
          [either(7, 8), 'calcium', 1202, 'ppm', 'element', null, 1202, null, null, open],
          [either(9, 10), 'magnesium', 146, 'ppm', 'element', null, 146, null, null, open],
          [either(11, 12), 'organic-matter', 3.8, '%', null, null, null, null, null, open],
          [either(13, 14), 'cec', 8, 'meq/100g', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
    mayAsk: ['method-missing calcium', 'method-missing magnesium'],
  },

  // Six names, then six values and nothing else, in the order of the names: there is one way to pair them.
  'names-then-values': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [either(1, 8), 'ph', 6.7, 'pH', null, null, null, null, null, open],
          [either(2, 9), 'organic-matter', 3.1, '%', null, null, null, null, null, open],
          [either(3, 10), 'phosphorus', 19, 'ppm', 'element', 'olsen', 19, null, null, open],
          [either(4, 11), 'potassium', 313, 'ppm', 'element', 'ammonium-acetate', 313, null, null, open],
          [either(5, 12), 'magnesium', 365, 'ppm', 'element', 'ammonium-acetate', 365, null, null, open],
          [either(6, 13), 'calcium', 2405, 'ppm', 'element', 'ammonium-acetate', 2405, null, null, open],
        ],
      },
    ],
  },

  // Five names and five lines under them, but one is a range: a value is lost, and nobody can say which. Asked, not paired.
  'names-then-too-few': { askSomething: true },

  // Bars without a scale say nothing of the rating; they are no values either.
  bars: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'phosphorus', 23, 'ppm', 'element', null, 23, null, null, open],
          [2, 'potassium', 196, 'ppm', 'element', null, 196, null, null, open],
          [3, 'magnesium', 243, 'ppm', 'element', null, 243, null, null, open],
          [4, 'ph', 6.3, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
    mayAsk: ['method-missing magnesium'],
  },

  // A bar ends under the word that is meant: 6 of 10 signs of low, 6 of medium, 7 of high.
  'bars-under-words': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 12, 'ppm', 'element', 'bray-1', 12, 'low', null, 'below'],
          [3, 'potassium', 196, 'ppm', 'element', 'ammonium-acetate', 196, 'medium', null, 'below'],
          [4, 'magnesium', 243, 'ppm', 'element', 'ammonium-acetate', 243, 'high', null, 'above'],
          [5, 'ph', 6.2, 'pH', null, either('1:1', 'water'), null, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // A cross in the column of the word. "Low" and "High" head columns of crosses here, not the ends of a range.
  'cross-under-word': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [3, 'phosphorus', 12, 'ppm', 'element', null, 12, 'low', null, 'below'],
          [4, 'potassium', 196, 'ppm', 'element', null, 196, 'medium', null, 'below'],
          [5, 'magnesium', 243, 'ppm', 'element', null, 243, 'high', null, 'above'],
          [7, 'ph', 6.2, 'pH', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 2],
      },
    ],
  },

  // Stars, with their key.
  stars: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 12, 'ppm', 'element', null, 12, 'low', null, 'below'],
          [4, 'potassium', 313, 'ppm', 'element', null, 313, 'high', null, 'above'],
          [5, 'magnesium', 146, 'ppm', 'element', null, 146, 'medium', null, 'below'],
          [6, 'boron', 0.1, 'ppm', 'element', null, 0.1, 'very-low', null, 'far-below'],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // Found, desired, deviation: only what was found is a reading. One desired figure is no range, so the distance from it
  // may be told or left; either is right, and so is asking for the method.
  'found-desired': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.4, 'pH', null, null, null, null, open, open],
          [3, 'phosphorus', 88, 'lb/acre', 'element', null, 44, null, open, either('below', null)],
          [4, 'potassium', 156, 'lb/acre', 'element', null, 78, null, open, either('below', null)],
          [5, 'calcium', 2405, 'lb/acre', 'element', null, 1200, null, open, open],
          [6, 'magnesium', 292, 'lb/acre', 'element', null, 146, null, open, open],
        ],
        mayBeUnread: [1],
      },
    ],
    mayAsk: ['method-missing phosphorus', 'method-missing potassium', 'method-missing calcium', 'method-missing magnesium'],
  },

  // Result, desired level, percent of desired, units beside the values. As above.
  'percent-of-desired': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 30, 'ppm', 'element', null, 30, null, open, either('below', null)],
          [3, 'potassium', 196, 'ppm', 'element', null, 196, null, open, open],
          [4, 'magnesium', 243, 'ppm', 'element', null, 243, null, open, either('above', null)],
          [5, 'sulphur', 8, 'ppm', 'element', null, 8, null, open, either('far-below', 'below', null)],
          [6, 'organic-matter', 3.9, '%', null, null, null, null, null, open],
          [7, 'ph', 6.1, 'pH', null, null, null, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
    mayAsk: ['method-missing phosphorus', 'method-missing potassium', 'method-missing magnesium', 'method-missing sulphur'],
  },

  // Arrows, with their key above.
  arrows: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [3, 'ph', 6, 'pH', null, 'water', null, 'optimum', null, 'at'],
          [4, 'phosphorus', 9, 'mg/kg', 'element', 'olsen', 9, 'low', null, 'below'],
          [5, 'potassium', 313, 'mg/kg', 'element', null, 313, 'high', null, 'above'],
          [6, 'calcium', 2405, 'mg/kg', 'element', null, 2405, 'optimum', null, 'at'],
          [7, 'magnesium', 365, 'mg/kg', 'element', null, 365, 'high', null, 'above'],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // Signs in brackets, with their key. "Too high" is high or very high: above the target either way.
  'plus-minus': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.4, 'pH', null, null, null, 'optimum', null, 'at'],
          [3, 'phosphorus', 14, 'ppm', 'element', null, 14, either('low', 'very-low'), null, either('below', 'far-below')],
          [4, 'potassium', 313, 'ppm', 'element', null, 313, either('high', 'very-high'), null, 'above'],
          [5, 'magnesium', 146, 'ppm', 'element', null, 146, 'optimum', null, 'at'],
          [6, 'boron', 0.2, 'ppm', 'element', null, 0.2, either('low', 'very-low'), null, either('below', 'far-below')],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // Capitals without a full stop. "NO 7" is a number of a soil, no nitrogen oxide. What the sample is called is not settled.
  telegraph: {
    samples: [
      {
        name: open,
        readings: [
          [1, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [1, 'phosphorus', 18, 'ppm', 'element', 'olsen', 18, null, null, open],
          [1, 'potassium', 196, 'ppm', 'element', 'ammonium-acetate', 196, null, null, open],
          [2, 'magnesium', 243, 'ppm', 'element', null, 243, null, null, open],
          [2, 'organic-matter', 3.7, '%', null, null, null, null, null, open],
          [2, 'zinc', 2.2, 'ppm', 'element', 'dtpa', 2.2, null, null, open],
        ],
      },
    ],
    mayAsk: ['method-missing magnesium'],
  },

  // Running text. A name ends one line and its value begins the next; "the same extract" may be followed back or asked.
  // The older organic matter, the trees and the telephone are no readings.
  email: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [3, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 44, 'ppm', 'element', 'mehlich-3', 44, null, null, open],
          [either(3, 4), 'potassium', 78, 'ppm', 'element', either('mehlich-3', null), 78, null, null, open],
          [4, 'magnesium', 243, 'ppm', 'element', null, 243, 'high', null, 'above'],
          [4, 'organic-matter', 3.2, '%', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 5, 7],
      },
    ],
    mayAsk: ['method-missing potassium'],
  },

  // The error behind the value is neither a value nor the end of a span.
  uncertainty: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.42, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 18, 'mg/kg', 'element', 'olsen', 18, null, null, open],
          [3, 'potassium', 196, 'mg/kg', 'element', 'ammonium-acetate', 196, null, null, open],
          [4, 'magnesium', 243, 'mg/kg', 'element', 'ammonium-acetate', 243, null, null, open],
          [5, 'boron', 0.62, 'mg/kg', 'element', 'hot-water', 0.62, null, null, open],
          [6, 'organic-matter', 3.9, '%', null, 'loi', null, null, null, open],
          [7, 'clay', 18, '%', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // Limits and words for nothing found. Not requested and n/a are no readings; cadmium is no item.
  limits: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 7.1, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 200, 'ppm', 'element', 'mehlich-3', either(200, null), null, null, open, { above: 200 }],
          [3, 'potassium', 313, 'ppm', 'element', 'mehlich-3', 313, null, null, open],
          [4, 'boron', 0.2, 'ppm', 'element', null, either(0.2, null), null, null, open, { below: 0.2 }],
          [5, 'copper', null, null, open, null, null, open, null, open, { words: 'trace' }],
          [6, 'lead', null, null, open, null, null, open, null, open, { words: 'ND' }],
        ],
        unread: [9],
        mayBeUnread: [7, 8, 10],
      },
    ],
    mayAsk: ['method-missing boron', 'method-missing copper', 'method-missing lead'],
  },

  // N. Carolina abbreviations in a row. Humic matter (HM%) is only a part of organic matter: no item.
  // Ca% and Mg% are shares of the exchange sites. Index 124 is very high and 19 low on that state's scale; what 42 and more mean
  // for trees is not settled. W/V is always g/cm3; the exchange capacity has no unit. What the sample is called is not settled.
  'index-columns': {
    samples: [
      {
        name: open,
        readings: [
          [3, 'density', 1.12, either('g/cm3', null), null, null, null, null, null, open],
          [3, 'cec', 6.8, null, null, null, null, null, null, open],
          [3, 'base-saturation', 84, '%', null, null, null, null, null, open],
          [3, 'acidity', 1.1, null, null, null, null, null, null, open],
          [3, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 124, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, 'above'],
          [3, 'potassium', 19, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, 'below'],
          [3, 'saturation-ca', 63, '%', null, null, null, null, null, open],
          [3, 'saturation-mg', 19, '%', null, null, null, null, null, open],
          [3, 'sulphur', 42, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, open],
          [3, 'manganese', 88, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, open],
          [3, 'zinc', 140, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, open],
          [3, 'copper', 96, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, open],
        ],
        mayBeUnread: [1, 2],
      },
    ],
    ask: ['unit-missing cec'],
    mayAsk: ['unit-missing acidity', 'unit-missing density'],
  },

  // The same index a line each, with the lab's key: 8 is very low, 22 low. For metals the scale's upper end is not settled.
  'index-lines': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 5.4, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 8, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, 'far-below'],
          [4, 'potassium', 22, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, 'below'],
          [5, 'manganese', 41, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, open],
          [6, 'zinc', 130, 'index', either(null, 'element'), either(null, 'mehlich-3'), null, open, null, open],
          [7, 'cec', 5.1, 'meq/100g', null, null, null, null, null, open],
          [8, 'acidity', 1.7, 'meq/100g', null, null, null, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // The unit in the title. Below stands advice, which may be kept as advice or a lime need but is never a content.
  'advice-below': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 36, 'lb/acre', 'element', null, 18, 'medium', null, 'below'],
          [4, 'potassium', 156, 'lb/acre', 'element', null, 78, 'low', null, 'below'],
          [5, 'calcium', 2405, 'lb/acre', 'element', null, 1200, 'high', null, 'above'],
          [6, 'magnesium', 292, 'lb/acre', 'element', null, 146, 'high', null, 'above'],
        ],
        optional: ['advice', 'lime-requirement'],
        mayBeUnread: [1, 8, 9, 10, 11, 12],
      },
    ],
  },

  // Saturations on one line, metals on one line with one extract and unit for all.
  'saturation-line': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [1, 'cec', 8, 'meq/100g', null, null, null, null, null, open],
          [2, 'saturation-k', 5, '%', null, null, null, null, null, open],
          [2, 'saturation-mg', 15, '%', null, null, null, null, null, open],
          [2, 'saturation-ca', 75, '%', null, null, null, null, null, open],
          [2, 'saturation-h', 5, '%', null, null, null, null, null, open],
          [3, 'phosphorus', 33, 'ppm', 'element', 'bray-1', 33, null, null, open],
          [3, 'potassium', 156, 'ppm', 'element', 'ammonium-acetate', 156, null, null, open],
          [4, 'zinc', 2.1, 'ppm', 'element', 'dtpa', 2.1, null, null, open],
          [4, 'manganese', 14.8, 'ppm', 'element', 'dtpa', 14.8, null, null, open],
          [4, 'copper', 0.9, 'ppm', 'element', 'dtpa', 0.9, null, null, open],
          [4, 'iron', 31, 'ppm', 'element', 'dtpa', 31, null, null, open],
          [5, 'boron', 0.7, 'ppm', 'element', 'hot-water', 0.7, null, null, open],
        ],
      },
    ],
  },

  // Missouri's terms. The salt pH is taken in CaCl2 there, but the paper does not say so. "NA" is neutralizable acidity, not sodium.
  'salt-and-acidity': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph-salt', 5.6, 'pH', null, either('cacl2', null), null, null, null, open],
          [2, 'acidity', 2, 'meq/100g', null, null, null, null, null, open],
          [3, 'organic-matter', 2.3, '%', null, null, null, null, null, open],
          [4, 'phosphorus', 34, 'lb/acre', 'element', 'bray-1', 17, 'medium', null, 'below'],
          [5, 'calcium', 2405, 'lb/acre', 'element', null, 1200, 'medium', null, 'below'],
          [6, 'magnesium', 292, 'lb/acre', 'element', null, 146, 'high', null, 'above'],
          [7, 'potassium', 156, 'lb/acre', 'element', null, 78, 'low', null, 'below'],
          [8, 'cec', 9.4, 'meq/100g', null, null, null, null, null, open],
        ],
      },
    ],
    mayAsk: ['method-missing ph-salt'],
  },

  // A lime test index is a buffer pH times ten: printed as 68, meaning 6.8. M3 is Mehlich 3. Shares of the sites on one line.
  'lime-test-index': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 5.9, 'pH', null, either('1:1', 'water'), null, null, null, open],
          [2, 'buffer-ph', either(68, 6.8), either('index', 'pH'), null, null, null, null, null, open],
          [3, 'phosphorus', 22, 'ppm', 'element', 'mehlich-3', 22, null, null, open],
          [4, 'potassium', 78, 'ppm', 'element', 'mehlich-3', 78, null, null, open],
          [5, 'calcium', 801, 'ppm', 'element', 'mehlich-3', 801, null, null, open],
          [6, 'magnesium', 97, 'ppm', 'element', 'mehlich-3', 97, null, null, open],
          [7, 'cec', 6, 'meq/100g', null, null, null, null, null, open],
          [8, 'saturation-ca', 66.7, '%', null, null, null, null, null, open],
          [8, 'saturation-mg', 13.3, '%', null, null, null, null, null, open],
          [8, 'saturation-k', 3.3, '%', null, null, null, null, null, open],
          [8, 'saturation-h', 16.7, '%', null, null, null, null, null, open],
        ],
      },
    ],
    mayAsk: ['method-missing buffer-ph'],
  },

  // The UK index in brackets rates the value before it: target 2, of which 2- is the lower half. By volume, no density: no mg/kg.
  // That scale implies the extracts, which are not printed.
  'uk-brackets': {
    samples: [
      {
        name: 'Long Border',
        taken: '2025-10-23',
        readings: [
          [3, 'ph', 6.7, 'pH', null, null, null, null, null, open],
          [4, 'phosphorus', 28, 'mg/L', 'element', either(null, 'olsen'), null, open, null, 'above'],
          [5, 'potassium', 150, 'mg/L', 'element', either(null, 'ammonium-nitrate'), null, open, null, 'at'],
          [6, 'magnesium', 70, 'mg/L', 'element', either(null, 'ammonium-nitrate'), null, open, null, 'at'],
        ],
        mayBeUnread: [7],
      },
    ],
  },

  // Extract, unit and index in the head. Morgan's names the Irish scale, whose target is 3.
  'irish-columns': {
    samples: [
      {
        name: 'Haggard field',
        readings: [
          [3, 'phosphorus', 4.2, 'mg/L', 'element', 'morgan', null, open, null, 'below'],
          [4, 'potassium', 110, 'mg/L', 'element', 'morgan', null, open, null, 'at'],
          [5, 'magnesium', 60, 'mg/L', 'element', 'morgan', null, open, null, 'at'],
          [7, 'ph', 5.9, 'pH', null, null, null, null, null, open],
          [8, 'lime-requirement', 5, 't/ha', null, null, null, null, null, open],
        ],
        mayBeUnread: [2],
      },
    ],
  },

  // Australian. The unit stands before the value; 1:5 is a dilution, no value. Two potassiums, both printed.
  // Ca 4.00 x 200.39, Mg 0.80 x 121.53, K 0.20 x 390.98, Al 0.10 x 89.94. The phosphorus buffering index is no item.
  'unit-before-value': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'phosphorus', 31, 'mg/kg', 'element', 'colwell', 31, null, null, open],
          [2, 'potassium', 88, 'mg/kg', 'element', 'colwell', 88, null, null, open],
          [3, 'ph-salt', 5.2, 'pH', null, 'cacl2', null, null, null, open],
          [4, 'ph', 5.9, 'pH', null, either('water', '1:5'), null, null, null, open],
          [5, 'salts', 0.07, 'dS/m', null, '1:5', null, null, null, open],
          [6, 'calcium', 4, 'cmol/kg', 'element', null, 802, null, null, open],
          [7, 'magnesium', 0.8, 'cmol/kg', 'element', null, 97.2, null, null, open],
          [8, 'potassium', 0.2, 'cmol/kg', 'element', null, 78.2, null, null, open],
          [9, 'aluminium', 0.1, 'cmol/kg', 'element', null, 8.99, null, null, open],
          [10, 'cec', 5.1, 'cmol/kg', null, null, null, null, null, open],
        ],
        unread: [11],
      },
    ],
    mayAsk: ['method-missing calcium', 'method-missing magnesium', 'method-missing potassium', 'method-missing aluminium'],
  },

  // New Zealand. Quick-test (MAF) units stand as their own unit, never as a content; their ranges
  // hold all the same. By volume with the density printed: 24 / 0.86.
  // "Medium range" heads the range to be in; whether its word is each line's rating is not settled.
  'quick-test': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 5.9, 'pH', null, null, null, open, [5.8, 6.2], 'at'],
          [3, 'phosphorus', 24, 'mg/L', 'element', 'olsen', 27.9, open, [20, 30], 'at'],
          [4, 'potassium', 7, 'MAF', 'element', null, null, open, [5, 8], 'at'],
          [5, 'calcium', 9, 'MAF', 'element', null, null, open, [4, 10], 'at'],
          [6, 'magnesium', 22, 'MAF', 'element', null, null, open, [8, 10], 'above'],
          [7, 'cec', 17, 'meq/100g', null, null, null, open, [12, 25], open],
          [8, 'base-saturation', 68, '%', null, null, null, open, [50, 85], open],
          [9, 'saturation-k', 3, '%', null, null, null, null, null, open],
          [10, 'saturation-ca', 52, '%', null, null, null, null, null, open],
          [11, 'saturation-mg', 12.2, '%', null, null, null, null, null, open],
          [12, 'saturation-na', 0.8, '%', null, null, null, null, null, open],
          [13, 'density', 0.86, 'g/cm3', null, null, null, open, [0.6, 1.0], open],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // A scanned page: l for 1, O for 0, B for 8. Each is told at its place and not guessed; the rest is read.
  scanned: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [5, 'magnesium', 146, 'ppm', 'element', null, 146, 'optimum', null, 'at'],
          [8, 'cec', 8, 'meq/100g', null, null, null, null, null, open],
        ],
        mayBeUnread: [2, 3, 4, 6, 7],
      },
    ],
    mistakes: [
      { line: 2, column: 12 },
      { line: 3, column: 11 },
      { line: 4, column: 9 },
      { line: 6, column: 6 },
      { line: 7, column: 16 },
    ],
  },

  // Bullets, long and short dashes, a hyphen and blanks that do not break, a thin blank. No dash is a minus.
  // "Optimum" before a range may be its name or the lab's word.
  bullets: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, 'ppm', 'element', 'mehlich-3', 41, null, null, open],
          [3, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, null, open],
          [4, 'calcium', 1202, 'ppm', 'element', null, 1202, 'optimum', null, 'at'],
          [5, 'magnesium', 146, 'ppm', 'element', null, 146, open, [100, 150], 'at'],
          [6, 'boron', 0.4, 'ppm', 'element', null, 0.4, null, [0.5, 1.0], 'below'],
          [7, 'organic-matter', 3.4, '%', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // Last year's column stands before this year's.
  'last-year': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [3, 'phosphorus', 41, 'ppm', 'element', null, 41, 'optimum', null, 'at'],
          [4, 'potassium', 156, 'ppm', 'element', null, 156, 'low', null, 'below'],
          [5, 'magnesium', 146, 'ppm', 'element', null, 146, 'optimum', null, 'at'],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // The older value in words, behind the new one and, on the last line, before it.
  'last-year-in-words': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.2, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, 'ppm', 'element', null, 41, 'optimum', null, 'at'],
          [3, 'potassium', 156, 'ppm', 'element', null, 156, 'low', null, 'below'],
          [4, 'magnesium', 146, 'ppm', 'element', null, 146, 'optimum', null, 'at'],
        ],
      },
    ],
  },

  // Addresses, telephones, dates and numbers of laboratory, client and order: "P 4471" is an order. Of three dates one is the sampling's.
  'head-full-of-numbers': {
    samples: [
      {
        name: 'B-14',
        taken: '2025-10-14',
        depth: { printed: '0-8 in', metres: 0.2032 },
        readings: [
          [9, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [10, 'phosphorus', 61, 'ppm', 'element', 'mehlich-3', 61, null, null, open],
          [11, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, null, open],
          [12, 'magnesium', 146, 'ppm', 'element', 'mehlich-3', 146, null, null, open],
        ],
        mayBeUnread: [1, 2, 3, 4],
      },
    ],
  },

  // Virginia's letters: M- and M are medium, H- is high; SUFF is sufficient. The unit in the head; pounds an acre are halved.
  'letters-with-signs': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'phosphorus', 24, 'lb/acre', 'element', null, 12, 'medium', null, 'below'],
          [3, 'potassium', 156, 'lb/acre', 'element', null, 78, 'medium', null, 'below'],
          [4, 'calcium', 2405, 'lb/acre', 'element', null, 1200, 'high', null, 'above'],
          [5, 'magnesium', 292, 'lb/acre', 'element', null, 146, 'very-high', null, 'above'],
          [6, 'zinc', 2.4, 'lb/acre', 'element', null, 1.2, 'optimum', null, 'at'],
          [8, 'ph', 6.2, 'pH', null, null, null, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // Letters and bare numbers: every unit is asked.
  'no-units': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, null, 'element', null, null, null, null, open],
          [3, 'potassium', 156, null, 'element', null, null, null, null, open],
          [4, 'magnesium', 146, null, 'element', null, null, null, null, open],
          [5, 'cec', 8, null, null, null, null, null, null, open],
          [6, 'organic-matter', 3.4, '%', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['unit-missing phosphorus', 'unit-missing potassium', 'unit-missing magnesium', 'unit-missing cec'],
    mayAsk: ['method-missing phosphorus', 'method-missing potassium', 'method-missing magnesium'],
  },

  // A scanned page again: a naught in a name, "rn" for "m" in two units. Each is told, and what was meant is offered.
  'scanned-words': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [5, 'boron', 0.4, 'ppm', 'element', null, 0.4, 'low', null, 'below'],
        ],
        mayBeUnread: [2, 3, 4],
      },
    ],
    mistakes: [
      { line: 2, column: 1, offers: 'phosphorus' },
      { line: 3, column: 15, offers: 'ppm' },
      { line: 4, column: 15, offers: 'mg/kg' },
    ],
  },

  // The value itself stands in the column of its rating. Such columns are no range.
  'value-under-word': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [3, 'phosphorus', 12, 'ppm', 'element', null, 12, 'low', null, 'below'],
          [4, 'potassium', 196, 'ppm', 'element', null, 196, 'medium', null, 'below'],
          [5, 'magnesium', 243, 'ppm', 'element', null, 243, 'high', null, 'above'],
          [7, 'ph', 6.2, 'pH', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 2],
      },
    ],
  },

  // The lab prints its classes beside the value: none of their words stands for this soil until the value is put among them.
  // Which class is the goal is not printed, so the range is open; the classes rate, so no method is asked.
  'classes-printed': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'phosphorus', 12, 'ppm', 'element', null, 12, 'low', open, 'below'],
          [2, 'potassium', 196, 'ppm', 'element', null, 196, 'medium', open, 'below'],
          [3, 'magnesium', 243, 'ppm', 'element', null, 243, 'high', open, 'above'],
          [4, 'ph', 6.2, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // Three phosphorus tests of one soil: weak and strong Bray on one line, bicarbonate (Olsen) on the next. All are kept.
  'two-phosphorus': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 33, 'ppm', 'element', 'bray-1', 33, null, null, open],
          [2, 'phosphorus', 51, 'ppm', 'element', 'bray-2', 51, null, null, open],
          [3, 'phosphorus', 22, 'ppm', 'element', 'olsen', 22, null, null, open],
          [4, 'potassium', 156, 'ppm', 'element', 'ammonium-acetate', 156, null, null, open],
        ],
      },
    ],
  },

  // Dots and a rule lead from the name to the value; ".6" has no naught and a blank before it.
  leaders: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.3, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 41, 'ppm', 'element', 'mehlich-3', 41, null, null, open],
          [3, 'potassium', 156, 'ppm', 'element', 'mehlich-3', 156, null, null, open],
          [4, 'magnesium', 146, 'ppm', 'element', 'mehlich-3', 146, null, null, open],
          [5, 'boron', 0.6, 'ppm', 'element', 'hot-water', 0.6, null, null, open],
          [6, 'organic-matter', 3.4, '%', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // One place at two depths: two samples. A depth counts to its lower end: 6 in is 0.1524 m, 12 in is 0.3048 m.
  'two-depths': {
    samples: [
      {
        name: 'North plot, upper',
        depth: { printed: '0-6 in', metres: 0.1524 },
        readings: [
          [3, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [4, 'phosphorus', 61, 'ppm', 'element', 'mehlich-3', 61, null, null, open],
          [5, 'potassium', 196, 'ppm', 'element', 'mehlich-3', 196, null, null, open],
        ],
      },
      {
        name: 'North plot, lower',
        depth: { printed: '6-12 in', metres: 0.3048 },
        readings: [
          [9, 'ph', 5.9, 'pH', null, null, null, null, null, open],
          [10, 'phosphorus', 22, 'ppm', 'element', 'mehlich-3', 22, null, null, open],
          [11, 'potassium', 78, 'ppm', 'element', 'mehlich-3', 78, null, null, open],
        ],
      },
    ],
  },

  // Units written out. 392 / 2; 8.0 x 200.39.
  'units-in-words': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [2, 'phosphorus', 18, 'ppm', 'element', 'olsen', 18, null, null, open],
          [3, 'potassium', 392, 'lb/acre', 'element', 'ammonium-acetate', 196, null, null, open],
          [4, 'calcium', 8, 'meq/100g', 'element', null, 1600, null, null, open],
          [5, 'magnesium', 243, 'mg/kg', 'element', null, 243, null, null, open],
          [6, 'cec', 12, 'meq/100g', null, null, null, null, null, open],
          [7, 'organic-matter', 3.9, '%', null, null, null, null, null, open],
        ],
      },
    ],
    mayAsk: ['method-missing calcium', 'method-missing magnesium'],
  },
};
