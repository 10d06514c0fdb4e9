// Reports of other countries and what a careful reader takes from each. All are invented: made-up places and numbers,
// soils whose cations fit their exchange capacity. The form is that of expected.ts.
// mg/kg by definition: P2O5 x 0.4364, K2O x 0.8301, MgO x 0.603, CaO x 0.7147; meq/100 g x 200.39 Ca, 121.53 Mg, 390.98 K,
// 229.90 Na; mg/100 g x 10; g/kg and per mille x 1000; lb/acre / 2. By volume (mg/dm3, cmolc/dm3, mmolc/dm3) without a
// density there is no mg/kg.
// "Normal", "correct", "adecuado", "anzustreben" and class C are the target; "medio", "moyen", "médio" are medium.
// The exchange capacity by Metson is one by ammonium acetate: told or left open, either is right. Total nitrogen is no
// plant food of today: it may be converted or not.
// In a text with decimal commas a point before three digits parts thousands, and the text itself settles it.

import { either, open } from './expectation.ts';
import type { Expected } from './expectation.ts';

export const tongues: Readonly<Record<string, Expected>> = {
  // ── Spain ──────────────────────────────────────────────────────────────────

  // 2.204 beside 8,1 is a thousand. The ratio C/N is no content. "Oxidable" hints at wet oxidation without naming it.
  'es-lista': {
    samples: [
      {
        name: 'Bancal de los albaricoqueros',
        taken: '2026-02-14',
        depth: { printed: '0-30 cm', metres: 0.3 },
        readings: [
          [7, 'ph', 8.1, 'pH', null, 'water', null, null, null, open],
          [8, 'salts', 0.24, 'mS/cm', null, '1:5', null, null, null, open],
          [9, 'organic-matter', 1.6, '%', null, either(null, 'walkley-black'), null, 'low', null, open],
          [10, 'nitrogen', 0.11, '%', 'element', null, either(1100, null), null, null, open],
          [12, 'phosphorus', 22, 'mg/kg', 'element', 'olsen', 22, 'optimum', null, 'at'],
          [13, 'potassium', 274, 'mg/kg', 'element', 'ammonium-acetate', 274, 'optimum', null, 'at'],
          [14, 'calcium', 2204, 'mg/kg', 'element', 'ammonium-acetate', 2204, 'high', null, 'above'],
          [15, 'magnesium', 352, 'mg/kg', 'element', 'ammonium-acetate', 352, 'high', null, 'above'],
          [16, 'sodium', 92, 'mg/kg', 'element', 'ammonium-acetate', 92, 'low', null, open],
          [17, 'cec', 15, 'meq/100g', null, null, null, null, null, open],
          [18, 'carbonate', 34, '%', null, null, null, 'very-high', null, open],
          [19, 'active-carbonate', 9.5, '%', null, null, null, 'high', null, open],
          [20, 'texture', null, null, null, null, null, null, null, open, { words: 'franco-arcillosa' }],
        ],
        unread: [11],
        mayBeUnread: [1, 2, 22],
      },
    ],
    mayAsk: ['method-missing nitrogen'],
  },

  // Semicolons between columns, commas in numbers, normal range before the lab's word. P 9.4 is under half of 20.
  // K 0.30 x 390.98, Ca 9.50 x 200.39, Mg 2.00 x 121.53, Na 0.20 x 229.90; together 12.0.
  'es-columnas': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 7.8, 'pH', null, 'water', null, 'high', [6.5, 7.5], 'above'],
          [3, 'salts', 0.21, 'dS/m', null, '1:5', null, 'optimum', [0.2, 0.4], open],
          [4, 'organic-matter', 2.1, '%', null, 'walkley-black', null, 'optimum', [1.8, 2.5], open],
          [5, 'phosphorus', 9.4, 'mg/kg', 'element', 'olsen', 9.4, 'very-low', [20, 35], 'far-below'],
          [6, 'potassium', 0.3, 'meq/100g', 'element', 'ammonium-acetate', 117.3, 'low', [0.4, 0.7], 'below'],
          [7, 'calcium', 9.5, 'meq/100g', 'element', 'ammonium-acetate', 1904, 'low', [10, 14], 'below'],
          [8, 'magnesium', 2, 'meq/100g', 'element', 'ammonium-acetate', 243, 'optimum', [1.5, 2.5], 'at'],
          [9, 'sodium', 0.2, 'meq/100g', 'element', 'ammonium-acetate', 46, 'optimum', [null, 1], open],
          [10, 'cec', 12, 'meq/100g', null, either(null, 'ammonium-acetate'), null, 'optimum', [10, 20], open],
          [11, 'carbonate', 18.2, '%', null, null, null, 'optimum', [null, 20], open],
          [12, 'iron', 3.1, 'mg/kg', 'element', 'dtpa', 3.1, 'low', [4, 10], 'below'],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // A letter. Last year's potassium and the telephone are no readings. "Menos de" is a limit.
  'es-correo': {
    samples: [
      {
        name: 'sample 1',
        taken: '2026-03-03',
        readings: [
          [2, 'ph', 6.7, 'pH', null, 'water', null, null, null, open],
          [2, 'organic-matter', 2.8, '%', null, null, null, null, null, open],
          [2, 'cec', 14.5, 'meq/100g', null, null, null, null, null, open],
          [3, 'phosphorus', 31, 'mg/kg', 'element', 'olsen', 31, 'high', null, 'above'],
          [3, 'potassium', 0.25, 'meq/100g', 'element', null, 97.7, 'low', null, 'below'],
          [4, 'calcium', 11.4, 'meq/100g', 'element', null, 2284, null, null, open],
          [4, 'magnesium', 2.6, 'meq/100g', 'element', null, 316, null, null, open],
          [6, 'boron', 0.2, 'mg/kg', 'element', null, either(0.2, null), null, null, open, { below: 0.2 }],
          [6, 'copper', null, null, open, null, null, open, null, open, { words: 'trazas' }],
        ],
        mayBeUnread: [1, 5, 7],
      },
    ],
    mayAsk: ['method-missing calcium', 'method-missing magnesium', 'method-missing boron', 'method-missing copper'],
  },

  // Capitals in two columns, decimal points. 1:5 is the dilution, "100 G" belongs to the unit. What the sample is called is not settled.
  'es-mayusculas': {
    samples: [
      {
        name: open,
        readings: [
          [2, 'ph', 7.4, 'pH', null, null, null, null, null, open],
          [2, 'salts', 0.31, 'dS/m', null, '1:5', null, null, null, open],
          [3, 'organic-matter', 3.2, '%', null, null, null, null, null, open],
          [3, 'phosphorus', 48, 'ppm', 'element', 'olsen', 48, 'high', null, 'above'],
          [4, 'potassium', 1.1, 'meq/100g', 'element', null, 430, 'very-high', null, 'above'],
          [4, 'calcium', 12.5, 'meq/100g', 'element', null, 2505, 'optimum', null, 'at'],
          [5, 'magnesium', 4.2, 'meq/100g', 'element', null, 510, 'high', null, 'above'],
          [5, 'sodium', 0.7, 'meq/100g', 'element', null, 161, 'optimum', null, open],
          [6, 'cec', 18.5, 'meq/100g', null, null, null, null, null, open],
          [6, 'texture', null, null, null, null, null, null, null, open, { words: 'FRANCA' }],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // ── Latin America ──────────────────────────────────────────────────────────

  // Mexico. Tabs, decimal points, seven steps: with "moderately low" below it and "moderately high" above it, "medio" may be the
  // target or short of it. "n.d." is not detected or not determined: a reading without a value, or none.
  // Ca 7.5, Mg 2.4, K 0.5, Na 0.1 and acidity 1.5 make 12.0.
  'mx-tabla': {
    samples: [
      {
        name: 'Huerta de aguacate, loma',
        taken: '2026-01-12',
        depth: { printed: '0-30 cm', metres: 0.3 },
        readings: [
          [6, 'ph', 5.6, 'pH', null, either('1:2', 'water'), null, open, null, open],
          [7, 'organic-matter', 4.1, '%', null, null, null, 'high', null, open],
          [8, 'phosphorus', 14, 'ppm', 'element', 'bray-1', 14, 'low', null, 'below'],
          [9, 'nitrate-n', 18.2, 'ppm', 'element', null, 18.2, 'medium', null, either('below', 'at')],
          [10, 'potassium', 196, 'ppm', 'element', null, 196, either('low', 'medium'), null, 'below'],
          [11, 'calcium', 1503, 'ppm', 'element', null, 1503, 'medium', null, either('below', 'at')],
          [12, 'magnesium', 292, 'ppm', 'element', null, 292, 'medium', null, either('below', 'at')],
          [13, 'sodium', 23, 'ppm', 'element', null, 23, 'low', null, open],
          [14, 'acidity', 1.5, 'cmol/kg', null, null, null, null, null, open],
          [15, 'cec', 12, 'cmol/kg', null, null, null, 'medium', null, open],
          [16, 'iron', 42.6, 'ppm', 'element', 'dtpa', 42.6, 'high', null, 'above'],
          [17, 'zinc', 1.2, 'ppm', 'element', 'dtpa', 1.2, either('low', 'medium'), null, 'below'],
        ],
        optional: ['boron'],
        mayBeUnread: [1, 5, 18],
      },
    ],
    mayAsk: ['method-missing boron'],
  },

  // Argentina. "pH actual" is the one in water. Nt is all nitrogen, PSI the share of sodium on the sites (0.3 of 16.2), CO organic carbon.
  // 9/10/25 stands beside 13/10/25, so the day leads; leaving it untold is right too. The ratio is no calcium.
  'ar-lote': {
    samples: [
      {
        name: 'Monte de ciruelos',
        taken: either('2025-10-09', undefined),
        readings: [
          [4, 'ph', 6.1, 'pH', null, either('water', null), null, null, null, open],
          [5, 'organic-carbon', 1.74, '%', open, null, null, null, null, open],
          [6, 'organic-matter', 3, '%', null, null, null, null, null, open],
          [7, 'nitrogen', 0.162, '%', 'element', null, either(1620, null), null, null, open],
          [8, 'phosphorus', 17.5, 'ppm', 'element', 'bray-1', 17.5, null, null, open],
          [9, 'nitrate-n', 11.3, 'mg/kg', 'element', null, 11.3, null, null, open],
          [10, 'calcium', 9.6, 'cmol/kg', 'element', null, 1924, null, null, open],
          [11, 'magnesium', 2.1, 'cmol/kg', 'element', null, 255, null, null, open],
          [12, 'potassium', 1.8, 'cmol/kg', 'element', null, 704, null, null, open],
          [13, 'sodium', 0.3, 'cmol/kg', 'element', null, 69, null, null, open],
          [14, 'cec', 16.2, 'cmol/kg', null, null, null, null, null, open],
          [15, 'base-saturation', 85, '%', null, null, null, null, null, open],
          [16, 'saturation-na', 1.9, '%', null, null, null, null, null, open],
        ],
        unread: [17],
        mayBeUnread: [1, 3],
      },
    ],
    ask: ['method-missing potassium'],
    mayAsk: ['method-missing calcium', 'method-missing magnesium', 'method-missing sodium', 'method-missing nitrogen', 'method-missing nitrate-n'],
  },

  // Honduras, by a lab in English units. 2,004 beside 5.9 is a thousand. CICE is the effective exchange capacity: 0.3 + 5 + 1.4 + 1.3.
  // The lime advised may be kept as a lime need, and is never a calcium.
  'hn-unidades-inglesas': {
    samples: [
      {
        name: 'Mandarinas arriba',
        readings: [
          [4, 'ph', 5.9, 'pH', null, null, null, null, null, open],
          [5, 'phosphorus', 36, 'lb/acre', 'element', 'mehlich-3', 18, 'low', null, 'below'],
          [6, 'potassium', 235, 'lb/acre', 'element', 'mehlich-3', 117.5, 'medium', null, 'below'],
          [7, 'calcium', 2004, 'lb/acre', 'element', 'mehlich-3', 1002, 'optimum', null, 'at'],
          [8, 'magnesium', 340, 'lb/acre', 'element', 'mehlich-3', 170, 'optimum', null, 'at'],
          [9, 'sulphur', 14, 'ppm', 'element', 'mehlich-3', 14, 'low', null, 'below'],
          [10, 'organic-matter', 5.2, '%', null, null, null, null, null, open],
          [11, 'acidity', 1.3, 'meq/100g', null, null, null, null, null, open],
          [12, 'cec', 8, 'meq/100g', null, null, null, null, null, open],
        ],
        optional: ['lime-requirement', 'advice'],
        mayBeUnread: [1, 2, 13],
      },
    ],
  },

  // Mexico. The text writes decimal points, yet 2.405 ppm of calcium would be next to none and 2405 fits the exchange capacity
  // (12 + 2 + 0.4 of 15). By the text it is the one, by the soil the other: told at its place, never taken as 2.405.
  'mx-punto': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.4, 'pH', null, null, null, null, null, open],
          [3, 'organic-matter', 2.9, '%', null, null, null, null, null, open],
          [4, 'phosphorus', 16, 'ppm', 'element', 'olsen', 16, null, null, open],
          [5, 'potassium', 156, 'ppm', 'element', 'ammonium-acetate', 156, null, null, open],
          [7, 'magnesium', 243, 'ppm', 'element', 'ammonium-acetate', 243, null, null, open],
          [8, 'cec', 15, 'meq/100g', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 6],
      },
    ],
    mistakes: [{ line: 6, column: 22 }],
  },

  // ── France ─────────────────────────────────────────────────────────────────

  // Oxides in mg/kg, a blank between thousands. P2O5 64, K2O 188, MgO 192, CaO 2242. C/N is no content.
  'fr-liste': {
    samples: [
      {
        name: 'Verger du haut',
        taken: '2026-03-06',
        depth: { printed: '0-25 cm', metres: 0.25 },
        readings: [
          [6, 'ph', 6.4, 'pH', null, 'water', null, 'optimum', null, 'at'],
          [7, 'ph-salt', 5.6, 'pH', null, 'kcl', null, null, null, open],
          [8, 'organic-matter', 2.7, '%', null, null, null, 'optimum', null, open],
          [10, 'phosphorus', 64, 'mg/kg', 'oxide', 'olsen', 27.9, 'low', null, 'below'],
          [11, 'potassium', 188, 'mg/kg', 'oxide', null, 156, 'optimum', null, 'at'],
          [12, 'magnesium', 192, 'mg/kg', 'oxide', null, 116, 'high', null, 'above'],
          [13, 'calcium', 2242, 'mg/kg', 'oxide', null, 1602, 'optimum', null, 'at'],
          [14, 'cec', 11, 'meq/100g', null, either(null, 'ammonium-acetate'), null, null, null, open],
          [15, 'base-saturation', 85, '%', null, null, null, null, null, open],
          [16, 'carbonate', 1, 'g/kg', null, null, null, null, null, open, { below: 1 }],
          [17, 'boron', 0.42, 'mg/kg', 'element', 'hot-water', 0.42, 'low', null, 'below'],
          [18, 'copper', 12.6, 'mg/kg', 'element', 'edta', 12.6, 'very-high', null, 'above'],
        ],
        unread: [9],
        mayBeUnread: [1, 2, 19],
      },
    ],
  },

  // A Markdown table in g/kg, ranges with a long dash between, some cells empty. The place in the title may serve as a name.
  // P2O5 210 mg/kg, K2O 350, MgO 70.
  'fr-souhaitable': {
    samples: [
      {
        name: either('sample 1', 'parcelle des Combettes', 'Parcelle des Combettes', 'Combettes', 'des Combettes'),
        readings: [
          [5, 'ph', 8.2, 'pH', null, 'water', null, 'high', [7, 7.5], 'above'],
          [6, 'carbonate', 312, 'g/kg', null, null, null, 'very-high', null, open],
          [7, 'active-carbonate', 78, 'g/kg', null, null, null, 'high', [null, 50], open],
          [8, 'organic-matter', 18.4, 'g/kg', null, null, null, 'low', [20, 25], open],
          [9, 'phosphorus', 0.21, 'g/kg', 'oxide', 'joret-hebert', 91.6, 'optimum', [0.2, 0.3], 'at'],
          [10, 'potassium', 0.35, 'g/kg', 'oxide', null, 291, 'high', [0.2, 0.28], 'above'],
          [11, 'magnesium', 0.07, 'g/kg', 'oxide', null, 42.2, 'very-low', [0.15, 0.2], 'far-below'],
          [12, 'cec', 14.2, 'meq/100g', null, either(null, 'ammonium-acetate'), null, null, null, open],
        ],
        mayBeUnread: [1, 3, 4],
      },
    ],
  },

  // Two plots across, the unit behind the name, the day of sampling in a row of its own. No extract but Dyer's is named.
  'fr-deux-parcelles': {
    samples: [
      {
        name: 'Parcelle des pommiers',
        taken: '2025-11-18',
        readings: [
          [4, 'ph', 5.8, 'pH', null, 'water', null, null, null, open],
          [5, 'ph-salt', 5, 'pH', null, 'kcl', null, null, null, open],
          [6, 'organic-matter', 4.6, '%', null, null, null, null, null, open],
          [7, 'phosphorus', 0.28, 'g/kg', 'oxide', 'dyer', 122, null, null, open],
          [8, 'potassium', 0.16, 'g/kg', 'oxide', null, 133, null, null, open],
          [9, 'magnesium', 0.14, 'g/kg', 'oxide', null, 84.4, null, null, open],
          [10, 'calcium', 1.4, 'g/kg', 'oxide', null, 1001, null, null, open],
          [11, 'cec', 9, 'meq/100g', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 2],
      },
      {
        name: 'Parcelle du puits',
        taken: '2025-11-18',
        readings: [
          [4, 'ph', 6.3, 'pH', null, 'water', null, null, null, open],
          [5, 'ph-salt', 5.5, 'pH', null, 'kcl', null, null, null, open],
          [6, 'organic-matter', 3.9, '%', null, null, null, null, null, open],
          [7, 'phosphorus', 0.41, 'g/kg', 'oxide', 'dyer', 179, null, null, open],
          [8, 'potassium', 0.31, 'g/kg', 'oxide', null, 257, null, null, open],
          [9, 'magnesium', 0.22, 'g/kg', 'oxide', null, 133, null, null, open],
          [10, 'calcium', 1.96, 'g/kg', 'oxide', null, 1401, null, null, open],
          [11, 'cec', 10, 'meq/100g', null, null, null, null, null, open],
        ],
      },
    ],
    ask: ['method-missing potassium'],
    mayAsk: ['method-missing magnesium', 'method-missing calcium'],
  },

  // A letter: per mille is g/kg, and 0,055 of it 55 mg/kg. The phosphate advised is no reading. 05/03 is the fifth of March in
  // French; leaving it untold is right too.
  'fr-courrier': {
    samples: [
      {
        name: 'sample 1',
        taken: either('2026-03-05', undefined),
        readings: [
          [2, 'ph', 7.1, 'pH', null, 'water', null, null, null, open],
          [2, 'organic-matter', 3.1, '%', null, null, null, null, null, open],
          [2, 'cec', 13.5, 'meq/100g', null, null, null, null, null, open],
          [3, 'phosphorus', 0.055, 'g/kg', 'oxide', 'olsen', 24, 'low', null, 'below'],
          [3, 'potassium', 0.31, 'g/kg', 'oxide', null, 257, 'high', null, 'above'],
          [4, 'magnesium', 240, 'ppm', 'oxide', null, 145, 'very-high', null, 'above'],
          [4, 'calcium', 3083, 'ppm', 'oxide', null, 2203, 'optimum', null, 'at'],
          [5, 'iron', 38, 'mg/kg', 'element', 'edta', 38, null, null, open],
          [5, 'zinc', 2.4, 'mg/kg', 'element', 'edta', 2.4, null, null, open],
          [5, 'copper', null, null, open, null, null, open, null, open, { words: 'non détecté' }],
        ],
        optional: ['advice'],
        mayBeUnread: [1, 6, 7, 8],
      },
    ],
    mayAsk: ['method-missing copper'],
  },

  // ── Canada: English with French beside it ──────────────────────────────────

  // kg/ha tells no mg/kg without depth and density; the province doubles and takes 1.12 (142 / 2.24 = 63.4): either is right.
  // 1,503 and 1,120 beside 6.2 are thousands. The ratio P/Al is neither phosphorus nor aluminium.
  // Ca 7.5, Mg 1.2, K 0.3 of 12.0, the rest acidity.
  'ca-bilingue': {
    samples: [
      {
        name: 'North orchard',
        taken: '2025-10-21',
        readings: [
          [5, 'ph', 6.2, 'pH', null, 'water', null, null, null, open],
          [6, 'buffer-ph', 6.6, 'pH', null, 'smp', null, null, null, open],
          [7, 'organic-matter', 4.4, '%', null, null, null, null, null, open],
          [8, 'phosphorus', 142, 'kg/ha', 'element', 'mehlich-3', either(null, 63.4), 'medium', null, 'below'],
          [9, 'potassium', 117, 'ppm', 'element', 'mehlich-3', 117, 'low', null, 'below'],
          [10, 'calcium', 1503, 'ppm', 'element', 'mehlich-3', 1503, 'medium', null, 'below'],
          [11, 'magnesium', 146, 'ppm', 'element', 'mehlich-3', 146, 'high', null, 'above'],
          [12, 'aluminium', 1120, 'ppm', 'element', 'mehlich-3', 1120, null, null, open],
          [13, 'cec', 12, 'meq/100g', null, null, null, null, null, open],
        ],
        unread: [14],
        mayBeUnread: [1, 2, 15],
      },
    ],
    otherQuestions: true,
  },

  // ── Switzerland ────────────────────────────────────────────────────────────

  // Ammonium acetate with EDTA is an extract of its own: neither acetate nor EDTA alone. An apostrophe parts thousands.
  // "Riche" is the class above enough. The day leads in dates with points.
  'ch-romande': {
    samples: [
      {
        name: 'Pruniers',
        taken: '2026-03-11',
        readings: [
          [4, 'ph', 7.2, 'pH', null, 'water', null, null, null, open],
          [5, 'clay', 18, '%', null, null, null, null, null, open],
          [5, 'silt', 34, '%', null, null, null, null, null, open],
          [5, 'sand', 48, '%', null, null, null, null, null, open],
          [6, 'organic-matter', 3.6, '%', null, null, null, null, null, open],
          [7, 'carbonate', 6.5, '%', null, null, null, null, null, open],
          [8, 'phosphorus', 41.2, 'mg/kg', 'element', null, 41.2, 'optimum', null, 'at'],
          [9, 'potassium', 402, 'mg/kg', 'element', null, 402, 'high', null, 'above'],
          [10, 'magnesium', 158, 'mg/kg', 'element', null, 158, 'optimum', null, 'at'],
          [11, 'calcium', 24300, 'mg/kg', 'element', null, 24300, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
    mayAsk: ['method-missing calcium'],
  },

  // Two extracts, each with its P and K. H2O10 is one part of soil in ten of water, AAE10 acetate with EDTA: no extract of the list.
  // The 10 is no value. Ca 16.0, Mg 1.6, K 0.54 of 19.0.
  'ch-hofstatt': {
    samples: [
      {
        name: 'Hochstämmer',
        taken: '2025-10-27',
        readings: [
          [4, 'ph', 6.7, 'pH', null, 'water', null, null, null, open],
          [5, 'organic-matter', 4.8, '%', null, null, null, null, null, open],
          [6, 'clay', 22, '%', null, null, null, null, null, open],
          [7, 'phosphorus', 2.1, 'mg/kg', 'element', either(null, 'water'), 2.1, 'optimum', null, 'at'],
          [8, 'potassium', 18, 'mg/kg', 'element', either(null, 'water'), 18, 'low', null, 'below'],
          [9, 'phosphorus', 54, 'mg/kg', 'element', null, 54, 'optimum', null, 'at'],
          [10, 'potassium', 211, 'mg/kg', 'element', null, 211, 'high', null, 'above'],
          [11, 'magnesium', 194, 'mg/kg', 'element', null, 194, 'optimum', null, 'at'],
          [12, 'calcium', 3206, 'mg/kg', 'element', null, 3206, 'optimum', null, 'at'],
          [13, 'cec', 19, 'cmol/kg', null, null, null, null, null, open],
        ],
        mayBeUnread: [1],
      },
    ],
    // Two values of one item and no extract that is known: asking for it is right.
    mayAsk: ['method-missing phosphorus', 'method-missing potassium'],
  },

  // ── Germany and Austria ────────────────────────────────────────────────────

  // Elements, not oxides: P 2.6 mg/100 g is 26 mg/kg. Class letter and word beside it. What is advised in g/m2 is no reading.
  'de-befund': {
    samples: [
      {
        name: 'Streuobst hinten',
        taken: '2025-11-04',
        depth: { printed: '0-30 cm', metres: 0.3 },
        readings: [
          [6, 'texture', null, null, null, null, null, null, null, open, { words: 'schluffiger Lehm' }],
          [8, 'ph-salt', 5.8, 'pH', null, 'cacl2', null, 'low', null, 'below'],
          [9, 'phosphorus', 2.6, 'mg/100g', 'element', 'cal', 26, 'low', null, 'below'],
          [10, 'potassium', 9.1, 'mg/100g', 'element', 'cal', 91, 'optimum', null, 'at'],
          [11, 'magnesium', 14, 'mg/100g', 'element', 'cacl2', 140, 'high', null, 'above'],
          [12, 'organic-matter', 2.9, '%', null, null, null, null, null, open],
        ],
        optional: ['advice', 'lime-requirement'],
        mayBeUnread: [1, 3, 7, 13, 14],
      },
    ],
  },

  // Oxides P2O5 31.5 and K2O 8.4 in mg/100 g; n.n. is not detectable; total nitrogen by combustion.
  'de-semikolon': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'texture', null, null, null, null, null, null, null, open, { words: 'lehmiger Sand' }],
          [3, 'ph-salt', 6.3, 'pH', null, 'cacl2', null, 'optimum', null, 'at'],
          [4, 'phosphorus', 31.5, 'mg/100g', 'oxide', 'cal', 137, 'high', null, 'above'],
          [5, 'potassium', 8.4, 'mg/100g', 'oxide', 'cal', 69.7, 'low', null, 'below'],
          [6, 'magnesium', 6, 'mg/100g', 'element', 'cacl2', 60, 'high', null, 'above'],
          [7, 'organic-matter', 2.4, '%', null, 'loi', null, null, null, open],
          [8, 'nitrogen', 0.14, '%', 'element', either('dry-combustion', null), either(1400, null), null, null, open],
          [9, 'carbonate', null, open, null, null, null, open, null, open, { words: 'n.n.' }],
          [10, 'boron', 0.28, 'mg/kg', 'element', 'hot-water', 0.28, 'low', null, 'below'],
          [11, 'nitrate-n', 5, 'mg/kg', 'element', either('cacl2', null), either(5, null), null, null, open, { below: 5 }],
        ],
        mayBeUnread: [1],
      },
    ],
    mayAsk: ['method-missing nitrogen', 'method-missing nitrate-n'],
  },

  // A letter. 62 x 4.364 and 33 x 8.301; what it was last time and what is to be spread are no readings.
  'de-brief': {
    samples: [
      {
        name: 'sample 1',
        taken: '2025-09-15',
        readings: [
          [2, 'ph', 6.9, 'pH', null, null, null, 'high', null, 'above'],
          [2, 'phosphorus', 62, 'mg/100g', 'oxide', 'cal', 271, 'very-high', null, 'above'],
          [2, 'potassium', 33, 'mg/100g', 'oxide', 'cal', 274, 'high', null, 'above'],
          [3, 'magnesium', 9, 'mg/100g', 'element', null, 90, 'optimum', null, 'at'],
          [3, 'organic-matter', 5.2, '%', null, null, null, null, null, open],
          [5, 'zinc', null, null, open, null, null, open, null, open, { words: 'Spuren' }],
          [5, 'lead', null, null, open, null, null, open, null, open, { words: 'nicht nachweisbar' }],
        ],
        optional: ['advice'],
        mayBeUnread: [1, 4, 6, 7],
      },
    ],
    mayAsk: ['method-missing zinc', 'method-missing lead'],
  },

  // A row a sample, two rows of head, the extracts in the title. 12 and 27 P2O5, 9 and 31 K2O.
  'de-zwei-proben': {
    samples: [
      {
        name: 'Quittenhang',
        readings: [
          [4, 'ph-salt', 5.9, 'pH', null, 'cacl2', null, null, null, open],
          [4, 'phosphorus', 12, 'mg/100g', 'oxide', 'cal', 52.4, null, null, open],
          [4, 'potassium', 9, 'mg/100g', 'oxide', 'cal', 74.7, null, null, open],
          [4, 'magnesium', 7, 'mg/100g', 'element', 'cacl2', 70, null, null, open],
          [4, 'organic-matter', 3.1, '%', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 2, 3],
      },
      {
        name: 'Mirabellenwiese',
        readings: [
          [5, 'ph-salt', 6.4, 'pH', null, 'cacl2', null, null, null, open],
          [5, 'phosphorus', 27, 'mg/100g', 'oxide', 'cal', 118, null, null, open],
          [5, 'potassium', 31, 'mg/100g', 'oxide', 'cal', 257, null, null, open],
          [5, 'magnesium', 13, 'mg/100g', 'element', 'cacl2', 130, null, null, open],
          [5, 'organic-matter', 4, '%', null, null, null, null, null, open],
        ],
      },
    ],
  },

  // Austria: mg of the element in a kilogram. "Kalk (CaCO3)" is carbonate, "schwach sauer" a class of pH.
  'at-stufen': {
    samples: [
      {
        name: 'Hausgartl',
        taken: '2026-03-02',
        readings: [
          [4, 'ph-salt', 6.6, 'pH', null, 'cacl2', null, open, null, open],
          [5, 'phosphorus', 68, 'mg/kg', 'element', 'cal', 68, 'optimum', null, 'at'],
          [6, 'potassium', 143, 'mg/kg', 'element', 'cal', 143, 'optimum', null, 'at'],
          [7, 'magnesium', 211, 'mg/kg', 'element', 'cacl2', 211, 'high', null, 'above'],
          [8, 'boron', 0.2, 'mg/kg', 'element', null, 0.2, 'very-low', null, 'far-below'],
          [9, 'clay', 21, '%', null, null, null, null, null, open],
          [10, 'organic-matter', 3.3, '%', null, null, null, null, null, open],
          [11, 'carbonate', 1.2, '%', null, null, null, null, null, open],
          [12, 'cec', 17, 'cmol/kg', null, null, null, null, null, open],
          [13, 'copper', null, null, open, either('edta', null), null, open, null, open, { words: 'n.n.' }],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // ── Brazil ─────────────────────────────────────────────────────────────────

  // São Paulo: a row a sample, the unit in each head, all by volume. H+Al is acidity, V% the saturation with all bases; the sum of
  // bases (SB) is no item. 1.8 + 26 + 9 + 34 = 70.8; 3.2 + 38 + 14 + 24 = 79.2. Only P names its extract.
  'br-resina': {
    samples: [
      {
        name: 'Talhão da laranja',
        readings: [
          [3, 'ph-salt', 5.1, 'pH', null, 'cacl2', null, null, null, open],
          [3, 'organic-matter', 22, 'g/dm3', null, null, null, null, null, open],
          [3, 'phosphorus', 14, 'mg/L', 'element', 'resin', null, null, null, open],
          [3, 'potassium', 1.8, 'mmolc/dm3', 'element', null, null, null, null, open],
          [3, 'calcium', 26, 'mmolc/dm3', 'element', null, null, null, null, open],
          [3, 'magnesium', 9, 'mmolc/dm3', 'element', null, null, null, null, open],
          [3, 'acidity', 34, 'mmolc/dm3', null, null, null, null, null, open],
          [3, 'cec', 70.8, 'mmolc/dm3', null, null, null, null, null, open],
          [3, 'base-saturation', 52, '%', null, null, null, null, null, open],
        ],
        mayBeUnread: [1, 2],
      },
      {
        name: 'Talhão do pêssego',
        readings: [
          [4, 'ph-salt', 5.6, 'pH', null, 'cacl2', null, null, null, open],
          [4, 'organic-matter', 25, 'g/dm3', null, null, null, null, null, open],
          [4, 'phosphorus', 41, 'mg/L', 'element', 'resin', null, null, null, open],
          [4, 'potassium', 3.2, 'mmolc/dm3', 'element', null, null, null, null, open],
          [4, 'calcium', 38, 'mmolc/dm3', 'element', null, null, null, null, open],
          [4, 'magnesium', 14, 'mmolc/dm3', 'element', null, null, null, null, open],
          [4, 'acidity', 24, 'mmolc/dm3', null, null, null, null, null, open],
          [4, 'cec', 79.2, 'mmolc/dm3', null, null, null, null, null, open],
          [4, 'base-saturation', 70, '%', null, null, null, null, null, open],
        ],
      },
    ],
    mayAsk: ['method-missing potassium', 'method-missing calcium', 'method-missing magnesium'],
  },

  // Minas Gerais: cmolc/dm3, charges behind the signs, dag/kg (which is %). SB and m (saturation with Al: 0.3 of 3.4) are no items.
  // 0.2 + 2.1 + 0.8 + 4.0 = 7.1.
  'br-mehlich': {
    samples: [
      {
        name: 'Pomar da sede',
        taken: '2025-08-25',
        readings: [
          [4, 'ph', 5.4, 'pH', null, 'water', null, null, null, open],
          [5, 'phosphorus', 6.3, 'mg/L', 'element', 'mehlich-1', null, 'low', null, 'below'],
          [6, 'potassium', 78, 'mg/L', 'element', 'mehlich-1', null, 'medium', null, 'below'],
          [7, 'calcium', 2.1, 'cmol/dm3', 'element', null, null, 'medium', null, 'below'],
          [8, 'magnesium', 0.8, 'cmol/dm3', 'element', null, null, 'medium', null, 'below'],
          [9, 'aluminium', 0.3, 'cmol/dm3', 'element', null, null, 'low', null, open],
          [10, 'acidity', 4, 'cmol/dm3', null, null, null, 'medium', null, open],
          [12, 'cec', 7.1, 'cmol/dm3', null, null, null, 'medium', null, open],
          [13, 'base-saturation', 44, '%', null, null, null, 'low', null, open],
          [15, 'organic-matter', 2.6, '%', null, null, null, 'medium', null, open],
          [16, 'zinc', 1.9, 'mg/L', 'element', null, null, 'high', null, 'above'],
          [17, 'boron', null, null, open, null, null, open, null, open, { words: 'traços' }],
        ],
        unread: [11, 14],
        mayBeUnread: [1, 18],
      },
    ],
    mayAsk: ['method-missing boron'],
  },

  // A letter from the south. SMP is a buffer. Al 0,0 is a true nought. Lime advised may be kept as a lime need; the telephone is nothing.
  // 5.2 + 1.9 + 0.3 (117 / 391) + 3.9 = 11.3; V 7.4 of it.
  'br-carta': {
    samples: [
      {
        name: 'sample 1',
        taken: '2025-09-22',
        readings: [
          [2, 'clay', 31, '%', null, null, null, null, null, open],
          [2, 'ph', 5.7, 'pH', null, 'water', null, null, null, open],
          [2, 'buffer-ph', 6.1, 'pH', null, 'smp', null, null, null, open],
          [2, 'organic-matter', 2.4, '%', null, null, null, null, null, open],
          [3, 'phosphorus', 12.4, 'mg/L', 'element', 'mehlich-1', null, 'medium', null, 'below'],
          [3, 'potassium', 117, 'mg/L', 'element', 'mehlich-1', null, 'high', null, 'above'],
          [4, 'calcium', 5.2, 'cmol/dm3', 'element', null, null, null, null, open],
          [4, 'magnesium', 1.9, 'cmol/dm3', 'element', null, null, null, null, open],
          [4, 'aluminium', 0, 'cmol/dm3', 'element', null, null, null, null, open],
          [4, 'acidity', 3.9, 'cmol/dm3', null, null, null, null, null, open],
          [4, 'cec', 11.3, 'cmol/dm3', null, null, null, null, null, open],
          [4, 'base-saturation', 65, '%', null, null, null, null, null, open],
        ],
        optional: ['lime-requirement', 'advice'],
        mayBeUnread: [1, 5],
      },
    ],
    mayAsk: ['method-missing calcium', 'method-missing magnesium', 'method-missing aluminium'],
  },

  // ── Portugal ───────────────────────────────────────────────────────────────

  // "Textura: Média" is a class of soil, no rating. 1.140 beside 0,09 is a thousand. P2O5 38, K2O 142 by Egner-Riehm.
  'pt-egner': {
    samples: [
      {
        name: 'Pomar de macieiras',
        taken: '2026-01-19',
        readings: [
          [4, 'texture', null, null, null, null, null, null, null, open, { words: 'Média' }],
          [5, 'ph', 6, 'pH', null, 'water', null, open, null, open],
          [6, 'organic-matter', 1.3, '%', null, null, null, 'low', null, open],
          [7, 'phosphorus', 38, 'mg/kg', 'oxide', 'egner-riehm', 16.6, 'low', null, 'below'],
          [8, 'potassium', 142, 'mg/kg', 'oxide', 'egner-riehm', 118, 'high', null, 'above'],
          [9, 'magnesium', 97, 'mg/kg', 'element', null, 97, 'medium', null, 'below'],
          [10, 'salts', 0.09, 'dS/m', null, '1:5', null, null, null, open],
          [11, 'calcium', 1140, 'mg/kg', 'element', null, 1140, 'medium', null, 'below'],
        ],
        mayBeUnread: [1, 12],
      },
    ],
  },

  // Crosses under the words of the head; none for pH and the exchange capacity. P2O5 176, K2O 47; Ca 8.2, Mg 1.5 cmol(+)/kg.
  'pt-cruzes': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.8, 'pH', null, 'water', null, null, null, open],
          [3, 'phosphorus', 176, 'mg/kg', 'oxide', 'egner-riehm', 76.8, 'high', null, 'above'],
          [4, 'potassium', 47, 'mg/kg', 'oxide', 'egner-riehm', 39, 'low', null, 'below'],
          [5, 'calcium', 8.2, 'cmol/kg', 'element', null, 1643, 'medium', null, 'below'],
          [6, 'magnesium', 1.5, 'cmol/kg', 'element', null, 182, 'very-high', null, 'above'],
          [7, 'cec', 11, 'cmol/kg', null, null, null, null, null, open],
          [8, 'boron', 0.15, 'mg/kg', 'element', 'hot-water', 0.15, 'very-low', null, 'far-below'],
          [9, 'copper', null, open, open, 'edta', null, open, null, open, { words: 'vestígios' }],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // ── Italy ──────────────────────────────────────────────────────────────────

  // "(MO)" in the address is a province, no organic matter. 2.204 beside 7,6 is a thousand. The ratio is no magnesium.
  // Ca 11.0, Mg 1.3, K 0.3, Na 0.4 make 13.0.
  'it-scheda': {
    samples: [
      {
        name: 'Frutteto di sopra',
        taken: '2026-02-24',
        depth: { printed: '0-40 cm', metres: 0.4 },
        readings: [
          [5, 'texture', null, null, null, null, null, null, null, open, { words: 'franco sabbioso' }],
          [6, 'sand', 58, '%', null, null, null, null, null, open],
          [6, 'silt', 29, '%', null, null, null, null, null, open],
          [6, 'clay', 13, '%', null, null, null, null, null, open],
          [7, 'ph', 7.6, 'pH', null, 'water', null, open, null, open],
          [8, 'salts', 0.35, 'mS/cm', null, '1:2', null, null, null, open],
          [9, 'organic-matter', 1.7, '%', null, null, null, 'low', null, open],
          [10, 'carbonate', 11.2, '%', null, null, null, 'medium', null, open],
          [11, 'active-carbonate', 3.4, '%', null, null, null, 'low', null, open],
          [12, 'nitrogen', 1.1, 'g/kg', 'element', null, either(1100, null), null, null, open],
          [13, 'phosphorus', 13, 'mg/kg', 'element', 'olsen', 13, 'low', null, 'below'],
          [14, 'potassium', 117, 'mg/kg', 'element', null, 117, 'medium', null, 'below'],
          [15, 'calcium', 2204, 'mg/kg', 'element', null, 2204, 'high', null, 'above'],
          [16, 'magnesium', 158, 'mg/kg', 'element', null, 158, 'medium', null, 'below'],
          [17, 'sodium', 92, 'mg/kg', 'element', null, 92, null, null, open],
          [18, 'cec', 13, 'meq/100g', null, null, null, null, null, open],
        ],
        unread: [19],
        mayBeUnread: [1, 20],
      },
    ],
    mayAsk: ['method-missing sodium', 'method-missing nitrogen'],
  },

  // Semicolons, decimal commas, points for thousands; lowest and highest in columns of their own. P2O5 92, K2O 180, CaO 3640, MgO 125.
  'it-giudizio': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 6.9, 'pH', null, 'water', null, 'optimum', [6, 7.5], 'at'],
          [3, 'organic-matter', 2.6, '%', null, null, null, 'optimum', [2, 3], open],
          [4, 'phosphorus', 92, 'mg/kg', 'oxide', 'olsen', 40.1, 'high', [45, 70], 'above'],
          [5, 'potassium', 180, 'mg/kg', 'oxide', null, 149, 'optimum', [150, 200], 'at'],
          [6, 'calcium', 3640, 'mg/kg', 'oxide', null, 2602, 'optimum', [3000, 4500], 'at'],
          [7, 'magnesium', 125, 'mg/kg', 'oxide', null, 75.4, 'low', [150, 200], 'below'],
          [8, 'cec', 15, 'meq/100g', null, null, null, 'optimum', [10, 20], open],
          [9, 'boron', 0.1, 'mg/kg', 'element', 'hot-water', either(0.1, null), 'very-low', [0.3, 0.8], 'far-below', { below: 0.1 }],
        ],
        mayBeUnread: [1],
      },
    ],
  },

  // A letter. The ratio behind magnesium, the phosphorus of 2021 and the sulphate advised are no readings.
  'it-posta': {
    samples: [
      {
        name: 'sample 1',
        taken: '2025-12-02',
        readings: [
          [2, 'ph', 6.2, 'pH', null, 'water', null, null, null, open],
          [2, 'organic-matter', 3.4, '%', null, null, null, null, null, open],
          [2, 'cec', 16, 'meq/100g', null, null, null, null, null, open],
          [3, 'phosphorus', 28, 'ppm', 'element', 'olsen', 28, 'high', null, 'above'],
          [3, 'potassium', 313, 'ppm', 'element', null, 313, 'high', null, 'above'],
          [4, 'calcium', 2405, 'ppm', 'element', null, 2405, null, null, open],
          [4, 'magnesium', 219, 'ppm', 'element', null, 219, null, null, open],
          [5, 'boron', null, null, open, null, null, open, null, open, { words: 'tracce' }],
          [5, 'zinc', null, null, open, null, null, open, null, open, { words: 'non rilevabile' }],
          [5, 'iron', 24, 'ppm', 'element', null, 24, null, null, open],
        ],
        optional: ['advice'],
        mayBeUnread: [1, 6, 7],
      },
    ],
    mayAsk: ['method-missing calcium', 'method-missing magnesium', 'method-missing boron', 'method-missing zinc', 'method-missing iron'],
  },

  // Capitals, and no decimal sign anywhere else: whether 2.405 is a thousand the text does not say. Told at its place.
  'it-migliaia': {
    samples: [
      {
        name: 'sample 1',
        readings: [
          [2, 'ph', 7, 'pH', null, null, null, null, null, open],
          [3, 'organic-matter', 2, '%', null, null, null, null, null, open],
          [4, 'phosphorus', 18, 'ppm', 'element', 'olsen', 18, 'low', null, 'below'],
          [5, 'potassium', 196, 'ppm', 'element', null, 196, 'medium', null, 'below'],
          [7, 'magnesium', 243, 'ppm', 'element', null, 243, 'high', null, 'above'],
        ],
        mayBeUnread: [1, 6],
      },
    ],
    mistakes: [{ line: 6, column: 8 }],
  },
};
