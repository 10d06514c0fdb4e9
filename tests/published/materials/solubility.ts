// Solubility of fertilisers, g in a litre of water, typed from materials.md 4.2 (a page on soil science, weak).
// Columns: 5, 10, 20, 25, 30, 40 degrees C; null where the page prints none.
export const PRINTED: Readonly<Record<string, readonly (number | null)[]>> = {
  'potassium-nitrate': [133, 170, 209, 316, 370, 458],
  'ammonium-nitrate': [1183, 1510, 1920, null, null, null],
  'ammonium-sulphate': [710, 730, 750, null, null, null],
  'calcium-nitrate': [1020, 1130, 1290, null, null, null],
  'magnesium-nitrate': [680, 690, 710, 720, null, null],
  map: [250, 295, 374, 410, 464, 567],
  'monopotassium-phosphate': [110, 180, 230, 250, 300, 340],
  'potassium-chloride': [229, 238, 255, 264, 275, null],
  'potassium-sulphate': [80, 90, 111, 120, null, null],
  urea: [780, 850, 1060, 1200, null, null],
};
export const DEGREES = [5, 10, 20, 25, 30, 40];
