/**
 * Published phosphate, potash and magnesia by class of soil or leaf, a year where bearing and once where before planting.
 * Only the classes that a page prints; a class that gets none stands with 0.
 */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';
import { POME, TREE_FRUIT } from './crops.ts';

export type SoilRate = {
  readonly id: string;
  readonly crops: readonly Crop[];
  readonly region: string;
  readonly nutrient: 'P2O5' | 'K2O' | 'MgO';
  readonly stage: 'planting' | 'bearing';
  readonly by: 'soil' | 'leaf';
  /** The extractant, where printed. */
  readonly method: string | null;
  readonly unit: 'kg/ha' | 'lb/acre' | 'g/m2';
  readonly rates: readonly { readonly target: 'far-below' | 'below' | 'at' | 'above'; readonly low: number; readonly high: number }[];
  readonly label?: 'orchard' | 'old' | 'weak';
  readonly cite: Cite;
};

type Class = SoilRate['rates'][number];
const below = (low: number, high = low): Class => ({ target: 'below', low, high });
const at = (low: number, high = low): Class => ({ target: 'at', low, high });
const above = (low: number, high = low): Class => ({ target: 'above', low, high });
const read = (source: string, place: string): Cite => ({ source, at: place, mark: 'read' });
const derived = (source: string, place: string): Cite => ({ source, at: place, mark: 'derived' });

/** Weinsberg: pome fruit and bush berries, prunings and mown grass left in place. Its class A begins where the target ends, so it is all that lies below. */
const WEINSBERG_CROPS: readonly Crop[] = [...POME, 'quince', 'currant', 'gooseberry'];
const weinsberg = { crops: WEINSBERG_CROPS, region: 'DE', stage: 'bearing', by: 'soil', method: null, unit: 'kg/ha', label: 'orchard' } as const;
/** Poland: three classes, low, middle and high; the middle one is kept up, so it is the target. */
const poland = { crops: TREE_FRUIT, region: 'PL', by: 'soil', method: null, unit: 'kg/ha', label: 'orchard' } as const;
const aragon = { crops: TREE_FRUIT, region: 'ES', stage: 'planting', by: 'soil', method: null, unit: 'kg/ha', label: 'orchard' } as const;
const kansas = { crops: ['pecan'], region: 'US-KS', stage: 'bearing', by: 'leaf', method: null, unit: 'lb/acre', label: 'orchard' } as const;

export const SOIL_RATES: readonly SoilRate[] = [
  { ...weinsberg, id: 'weinsberg.p2o5', nutrient: 'P2O5', rates: [below(40), at(20), above(0)], cite: read('weinsberg', 'table 1, bearing') },
  { ...weinsberg, id: 'weinsberg.p2o5.other-text', nutrient: 'P2O5', rates: [below(50), at(30), above(0)], cite: read('weinsberg', 'table 1, other text of the page') },
  { ...weinsberg, id: 'weinsberg.k2o', nutrient: 'K2O', rates: [below(150), at(80), above(0)], cite: read('weinsberg', 'table 1, bearing') },
  { ...weinsberg, id: 'weinsberg.mgo', nutrient: 'MgO', rates: [below(50), at(30), above(0)], cite: read('weinsberg', 'table 1, bearing') },

  // High: only on heavy soil (potash), or where none was given for 6 to 8 years (phosphate); else none, hence the 0.
  { ...poland, id: 'poland.bearing.k2o', stage: 'bearing', nutrient: 'K2O', rates: [below(80, 120), at(50, 80), above(0, 40)], cite: read('poland-skierniewice', 'bearing orchards; high only on heavy soil') },
  { ...poland, id: 'poland.planting.p2o5', stage: 'planting', nutrient: 'P2O5', rates: [below(300), at(100, 200), above(0, 100)], cite: read('poland-skierniewice', 'before planting; high only after 6 to 8 years without') },
  { ...poland, id: 'poland.planting.k2o', stage: 'planting', nutrient: 'K2O', rates: [below(150, 300), at(100, 200), above(0, 40)], cite: read('poland-skierniewice', 'before planting; high only on heavy soil') },

  { ...aragon, id: 'aragon.planting.p2o5', nutrient: 'P2O5', rates: [below(0, 50)], cite: read('es-espada-frutales', 'before planting, most on soil low in it') },
  { ...aragon, id: 'aragon.planting.k2o', nutrient: 'K2O', rates: [below(0, 350)], cite: read('es-espada-frutales', 'before planting, most on soil low in it') },

  { id: 'massachusetts.apple.k2o', crops: ['apple'], region: 'US-MA', nutrient: 'K2O', stage: 'bearing', by: 'leaf', method: null, unit: 'lb/acre', rates: [below(120, 180), at(60, 90), above(0)], label: 'orchard', cite: read('umass-f124', 'potassium by leaf, 1.2 to 1.8 %') },
  // The sheet prints pounds and not the ground; an acre is implied by the trade.
  { id: 'michigan.pome.k2o', crops: POME, region: 'US-MI', nutrient: 'K2O', stage: 'bearing', by: 'leaf', method: null, unit: 'lb/acre', rates: [below(100, 150)], label: 'orchard', cite: derived('michigan-leaf', 'potassium where leaf is below 1.2 %; the acre is implied') },
  { ...kansas, id: 'kansas.pecan.p2o5', nutrient: 'P2O5', rates: [below(60), at(0), above(0)], cite: read('kstate-northern-pecans', 'table 3, leaf below 0.12 %') },
  { ...kansas, id: 'kansas.pecan.k2o', nutrient: 'K2O', rates: [below(60), at(0), above(0)], cite: read('kstate-northern-pecans', 'table 4, leaf below 0.75 %') },
];
