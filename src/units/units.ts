/**
 * Units and what they measure. A factor leads from the unit to the base unit of its kind:
 * mass g, length m, area m², volume mL, area rate g/m², soil content mg/kg, charge cmol(+)/kg, conductivity dS/m.
 * Exact factors come from their definitions: international yard and pound (1959), US gallon of 231 in³.
 */
export const POUND = 453.59237;
export const OUNCE = POUND / 16;
export const INCH = 0.0254;
export const FOOT = 0.3048;
const ACRE = 4046.8564224;
const US_CUP = 236.5882365;

const SQUARE_FOOT = FOOT * FOOT;

export const UNITS = {
  g: { kind: 'mass', factor: 1 },
  kg: { kind: 'mass', factor: 1000 },
  oz: { kind: 'mass', factor: OUNCE },
  lb: { kind: 'mass', factor: POUND },
  m: { kind: 'length', factor: 1 },
  cm: { kind: 'length', factor: 0.01 },
  mm: { kind: 'length', factor: 0.001 },
  in: { kind: 'length', factor: INCH },
  ft: { kind: 'length', factor: FOOT },
  m2: { kind: 'area', factor: 1 },
  'sq ft': { kind: 'area', factor: SQUARE_FOOT },
  ha: { kind: 'area', factor: 10_000 },
  acre: { kind: 'area', factor: ACRE },
  mL: { kind: 'volume', factor: 1 },
  L: { kind: 'volume', factor: 1000 },
  cup: { kind: 'volume', factor: US_CUP },
  gal: { kind: 'volume', factor: US_CUP * 16 },
  'g/m2': { kind: 'area rate', factor: 1 },
  'kg/ha': { kind: 'area rate', factor: 0.1 },
  'lb/acre': { kind: 'area rate', factor: POUND / ACRE },
  'ton/acre': { kind: 'area rate', factor: (2000 * POUND) / ACRE },
  't/ha': { kind: 'area rate', factor: 100 },
  'dt/ha': { kind: 'area rate', factor: 10 },
  'lb/1000 sq ft': { kind: 'area rate', factor: POUND / (1000 * SQUARE_FOOT) },
  'lb/100 sq ft': { kind: 'area rate', factor: POUND / (100 * SQUARE_FOOT) },
  'g/mL': { kind: 'bulk density', factor: 1 },
  'oz/cup': { kind: 'bulk density', factor: OUNCE / US_CUP },
  'lb/ft3': { kind: 'bulk density', factor: POUND / (SQUARE_FOOT * FOOT * 1e6) },
  'lb/yd3': { kind: 'bulk density', factor: POUND / (27 * SQUARE_FOOT * FOOT * 1e6) },
  'g/L': { kind: 'content of a mix', factor: 1 },
  'lb/year': { kind: 'mass a year of age', factor: POUND },
  'oz/year': { kind: 'mass a year of age', factor: OUNCE },
  'g/year': { kind: 'mass a year of age', factor: 1 },
  'lb/in': { kind: 'mass a length of trunk', factor: POUND / INCH },
  'lb/ft': { kind: 'mass a length of height', factor: POUND / FOOT },
  'kg/t': { kind: 'share of a crop', factor: 0.001 },
  'mg/kg': { kind: 'soil content', factor: 1 },
  ppm: { kind: 'soil content', factor: 1 },
  'mg/100g': { kind: 'soil content', factor: 10 },
  'g/kg': { kind: 'soil content', factor: 1000 },
  'mg/L': { kind: 'soil content by volume', factor: 1 },
  'g/dm3': { kind: 'soil content by volume', factor: 1000 },
  '%': { kind: 'share', factor: 1 },
  'meq/100g': { kind: 'charge', factor: 1 },
  'cmol/kg': { kind: 'charge', factor: 1 },
  'mmol/kg': { kind: 'charge', factor: 0.1 },
  'cmol/dm3': { kind: 'charge by volume', factor: 1 },
  'mmolc/dm3': { kind: 'charge by volume', factor: 0.1 },
  year: { kind: 'age', factor: 1 },
  day: { kind: 'time', factor: 1 },
  pH: { kind: 'acidity', factor: 1 },
  'dS/m': { kind: 'conductivity', factor: 1 },
  'mS/cm': { kind: 'conductivity', factor: 1 },
  'mmho/cm': { kind: 'conductivity', factor: 1 },
  'uS/cm': { kind: 'conductivity', factor: 0.001 },
  'mS/m': { kind: 'conductivity', factor: 0.01 },
  index: { kind: 'index', factor: 1 },
  bag: { kind: 'count', factor: 1 },
  dose: { kind: 'count', factor: 1 },
  times: { kind: 'factor', factor: 1 },
} as const;

export type Unit = keyof typeof UNITS;

/** `value` of one unit in another unit of the same kind. Throws a RangeError where the kinds differ. */
export function convert(value: number, from: Unit, to: Unit): number {
  const [a, b] = [UNITS[from], UNITS[to]];
  if (a.kind !== b.kind) throw new RangeError(`${from} measures ${a.kind}, ${to} measures ${b.kind}`);
  return (value * a.factor) / b.factor;
}
