// Harder reports, as growers posted them, with what a careful reader takes from each.
// They await the wider reader: values split over lines, all names before all values, kits, running text.
// Until then no test imports this file. The form is that of expected.ts.

import { either, open } from './expectation.ts';
import type { Expected } from './expectation.ts';

export const later: Readonly<Record<string, Expected>> = {
  // http://worldwidecanneries.com/dko.164.12/ (read)
  // Asterisks from bold type, names and values split over lines. "Lime: Low" is carbonate. 111 is a sample number,
  // the date is the report's, not the sampling's. What was not requested is no reading.
  u2: {
    samples: [
      {
        name: either('111', 'sample 1'),
        readings: [
          [4, 'ph', 6.1, 'pH', null, null, null, null, null, open],
          [either(5, 6), 'salts', 0.1, 'mmho/cm', null, null, null, null, null, open],
          [7, 'carbonate', null, null, null, null, null, 'low', null, open],
          [either(8, 9), 'texture', null, null, null, null, null, null, null, open, { words: 'Sandy' }],
          [either(12, 13), 'organic-matter', 0.8, '%', null, null, null, null, null, open],
          [14, 'nitrate-n', 15.0, 'ppm', 'element', null, 15.0, null, null, open],
          [either(15, 16), 'phosphorus', 11.6, 'ppm', 'element', null, 11.6, null, null, open],
        ],
        mayBeUnread: [1, 2, 3, 10, 11],
      },
    ],
    ask: ['method-missing phosphorus'],
    mayAsk: ['method-missing salts', 'method-missing nitrate-n'],
  },

  // https://ask.extension.org/questions/463270 (read)
  // A second pH begins a second sample; a full stop follows the unit.
  u3: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 7.1, 'pH', null, null, null, null, null, open],
          [1, 'organic-matter', 5.1, '%', null, null, null, null, null, open],
          [1, 'phosphorus', 26, 'ppm', 'element', null, 26, null, null, open],
          [1, 'potassium', 68, 'ppm', 'element', null, 68, null, null, open],
        ],
      },
      {
        name: 'sample 2',
        readings: [
          [2, 'ph', 7.6, 'pH', null, null, null, null, null, open],
          [2, 'organic-matter', 4.8, '%', null, null, null, null, null, open],
          [2, 'phosphorus', 13, 'ppm', 'element', null, 13, null, null, open],
          [2, 'potassium', 41, 'ppm', 'element', null, 41, null, null, open],
        ],
      },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
  },

  // https://scribd.com/document/258603620/Sample-Sample-Soil-Test (read)
  // All names, then all values, ranges among them: nothing may be paired, and it must ask.
  u5: { askSomething: true },

  // https://www.100flowers.win/Article/questionandanswer/lawns/201608/36949.html (read)
  // " - " is no minus sign. No units: neither ppm nor lb/acre fits the exchange capacity, so each is asked.
  // A saturation can only be a percentage. Ratios are not contents.
  u7: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 7.5, 'pH', null, null, null, null, null, open],
          [2, 'organic-matter', 3.8, either(null, '%'), null, null, null, null, null, open],
          [3, 'cec', 18.8, null, null, null, null, null, null, open],
          [4, 'saturation-k', 2.2, either('%', null), null, null, null, null, null, open],
          [5, 'saturation-mg', 18, either('%', null), null, null, null, null, null, open],
          [6, 'saturation-ca', 79.7, either('%', null), null, null, null, null, null, open],
          [9, 'phosphorus', 35, null, 'element', null, null, null, null, open],
          [10, 'potassium', 193, null, 'element', null, null, null, null, open],
          [11, 'magnesium', 463, null, 'element', null, null, null, null, open],
          [12, 'calcium', 5114, null, 'element', null, null, null, null, open],
        ],
        mayBeUnread: [7, 8],
      },
    ],
    ask: ['unit-missing cec', 'unit-missing phosphorus', 'unit-missing potassium', 'unit-missing magnesium', 'unit-missing calcium'],
    mayAsk: [
      'unit-missing organic-matter',
      'unit-missing saturation-k',
      'unit-missing saturation-mg',
      'unit-missing saturation-ca',
      'method-missing phosphorus',
      'method-missing potassium',
      'method-missing magnesium',
      'method-missing calcium',
    ],
  },

  // https://thegreengreengrassofhome.blogspot.com/2009/04/soil-test-results_2031.html (read)
  // Numbers in brackets are chatter, but for the range of the salts. The saturation line holds three readings, none of them contents.
  u9: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 7.2, 'pH', null, null, null, either('high', null), null, open],
          [2, 'buffer-ph', 7.1, 'pH', null, null, null, null, null, open],
          [3, 'nitrogen', 10, 'ppm', 'element', null, 10, null, null, open],
          [4, 'phosphorus', 9, 'ppm', 'element', null, 9, either('low', null), null, open],
          [5, 'potassium', 321, 'ppm', 'element', null, 321, null, null, open],
          [6, 'calcium', 3185, 'ppm', 'element', null, 3185, null, null, open],
          [7, 'magnesium', 269, 'ppm', 'element', null, 269, null, null, open],
          [9, 'organic-matter', 4.6, '%', null, null, null, null, null, open],
          [10, 'cec', 15.9, 'meq/100g', null, null, null, null, null, open],
          [11, 'aluminium', 19, 'ppm', 'element', null, 19, null, null, open],
          [12, 'boron', 0.4, 'ppm', 'element', null, 0.4, null, null, open],
          [13, 'manganese', 7.0, 'ppm', 'element', null, 7.0, null, null, open],
          [14, 'zinc', 1.8, 'ppm', 'element', null, 1.8, null, null, open],
          [15, 'copper', 0.5, 'ppm', 'element', null, 0.5, null, null, open],
          [16, 'iron', 1.4, 'ppm', 'element', null, 1.4, null, null, open],
          [17, 'sulphur', 45.7, 'ppm', 'element', null, 45.7, null, null, open],
          [18, 'salts', 0.26, 'dS/m', null, null, null, open, [0.08, 0.5], open],
          [19, 'saturation-k', 4.4, '%', null, null, null, null, null, open],
          [19, 'saturation-mg', 11.7, '%', null, null, null, null, null, open],
          [19, 'saturation-ca', 84.1, '%', null, null, null, null, null, open],
          [20, 'lead', null, null, open, null, null, open, null, open, { words: 'Undetectable' }],
        ],
        mayBeUnread: [8],
      },
    ],
    ask: ['method-missing potassium'],
    mayAsk: [
      'method-missing phosphorus',
      'method-missing calcium',
      'method-missing magnesium',
      'method-missing nitrogen',
      'method-missing buffer-ph',
      'method-missing aluminium',
      'method-missing boron',
      'method-missing manganese',
      'method-missing zinc',
      'method-missing copper',
      'method-missing iron',
      'method-missing sulphur',
    ],
  },

  // https://thedemogarden.org/tag/compost/page/2/ (read)
  // Four samples by their headings; true zeros and true negatives; a thousand with a comma. Sodium in % is a share of the sites.
  u11: {
    samples: [
      {
        name: 'Sand #1',
        readings: [
          [2, 'ph', 8.3, 'pH', null, null, null, null, null, open],
          [3, 'organic-matter', 0, '%', null, null, null, null, null, open],
          [4, 'nitrogen', 1, 'ppm', 'element', null, 1, null, null, open],
          [5, 'phosphorus', 4, 'ppm', 'element', null, 4, null, null, open],
          [6, 'potassium', 21, 'ppm', 'element', null, 21, null, null, open],
          [7, 'saturation-na', 0.5, '%', null, null, null, null, null, open],
          [8, 'salts', 0.44, 'mS/cm', null, null, null, null, null, open],
        ],
      },
      {
        name: 'Sand #2',
        readings: [
          [11, 'ph', 8.6, 'pH', null, null, null, null, null, open],
          [12, 'organic-matter', 0, '%', null, null, null, null, null, open],
          [13, 'nitrogen', 1, 'ppm', 'element', null, 1, null, null, open],
          [14, 'phosphorus', 4, 'ppm', 'element', null, 4, null, null, open],
          [15, 'potassium', 31, 'ppm', 'element', null, 31, null, null, open],
          [16, 'saturation-na', 0.07, '%', null, null, null, null, null, open],
          [17, 'salts', 0.4, 'mS/cm', null, null, null, null, null, open],
        ],
      },
      {
        name: 'Compost #1',
        readings: [
          [20, 'ph', 8.0, 'pH', null, null, null, null, null, open],
          [21, 'organic-matter', 13, '%', null, null, null, null, null, open],
          [22, 'nitrogen', 12, 'ppm', 'element', null, 12, null, null, open],
          [23, 'phosphorus', 585, 'ppm', 'element', null, 585, null, null, open],
          [24, 'potassium', 2110, 'ppm', 'element', null, 2110, null, null, open],
          [25, 'saturation-na', -5.81, '%', null, null, null, null, null, open],
          [26, 'salts', 6.05, 'mS/cm', null, null, null, null, null, open],
        ],
      },
      {
        name: 'Compost #2',
        readings: [
          [29, 'ph', 7.8, 'pH', null, null, null, null, null, open],
          [30, 'organic-matter', 13, '%', null, null, null, null, null, open],
          [31, 'nitrogen', 4, 'ppm', 'element', null, 4, null, null, open],
          [32, 'phosphorus', 385, 'ppm', 'element', null, 385, null, null, open],
          [33, 'potassium', 1740, 'ppm', 'element', null, 1740, null, null, open],
          [34, 'saturation-na', -4.81, '%', null, null, null, null, null, open],
          [35, 'salts', 4.31, 'mS/cm', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['method-missing phosphorus', 'method-missing potassium'],
    mayAsk: ['method-missing salts', 'method-missing nitrogen'],
  },

  // https://slideserve.com/manju/soil-and-leaf-testing-why (read)
  // Cations in % are shares of the exchange sites, never contents. 2010 is the year.
  u12: {
    samples: [
      {
        name: either('2010', 'sample 1'),
        taken: open,
        readings: [
          [1, 'saturation-k', 2.7, '%', null, null, null, null, null, open],
          [1, 'saturation-ca', 44, '%', null, null, null, null, null, open],
          [1, 'saturation-mg', 6.3, '%', null, null, null, null, null, open],
          [1, 'ph', 5.9, 'pH', null, null, null, null, null, open],
        ],
      },
    ],
    otherQuestions: true,
  },

  // http://permies.com/u/243245/ (read)
  // Words stand before the names. "Average" is medium or enough: not settled. 4.1 without % is asked.
  u14: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'ph', 5.9, 'pH', null, null, null, null, null, open],
          [1, 'phosphorus', 8, 'ppm', 'element', null, 8, 'low', null, 'below'],
          [1, 'potassium', 96, 'ppm', 'element', null, 96, either('medium', 'optimum', null), null, open],
          [1, 'magnesium', 200, 'ppm', 'element', null, either(200, null), 'very-high', null, 'above', { above: 200 }],
          [1, 'organic-matter', 4.1, null, null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['unit-missing organic-matter'],
    mayAsk: ['method-missing potassium'],
  },

  // http://nomad.yosemite.net/?p=443 (read)
  // A kit: steps from 0 to 5 with words, never ppm. The last line is what the kit advises.
  u15: {
    samples: [
      {
        name: either('SE border', 'sample 1'),
        readings: [
          [2, 'ph', 6.7, 'pH', null, null, null, either('optimum', null), null, open],
          [2, 'nitrogen', either(0, null), either('index', null), open, null, null, either('very-low', 'low'), null, open],
          [2, 'phosphorus', either(5, null), either('index', null), open, null, null, either('very-high', 'high'), null, 'above'],
          [2, 'potassium', either(5, null), either('index', null), open, null, null, either('very-high', 'high'), null, 'above'],
        ],
        optional: ['advice'],
        mayBeUnread: [1, 3],
      },
    ],
    otherQuestions: true,
  },

  // https://jackiedelia.com/garden/soil/oh-no-my-soil-report-is-in/ (read)
  // Words only for N and P. So much organic matter is a potting mix: it may well ask.
  u16: {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [1, 'nitrogen', null, null, open, null, null, 'very-low', null, 'far-below'],
          [1, 'phosphorus', null, null, open, null, null, 'low', null, 'below'],
          [2, 'ph', 8.2, 'pH', null, null, null, open, null, open],
          [3, 'organic-matter', 17.96, '%', null, null, null, null, null, open],
        ],
      },
    ],
    otherQuestions: true,
  },
};
