/**
 * What an amount is an amount of. P can never stand for P2O5.
 * Oxide factors follow from the abridged standard atomic weights (IUPAC): O 15.999, P 30.974, K 39.098,
 * Mg 24.305, Ca 40.078, S 32.06, N 14.007, Na 22.990, Fe 55.845.
 */
export type Nutrient = 'N' | 'P2O5' | 'K2O';
export const NUTRIENTS: readonly Nutrient[] = ['N', 'P2O5', 'K2O'];

export type Element = 'N' | 'P' | 'K' | 'Ca' | 'Mg' | 'S' | 'Na' | 'B' | 'Zn' | 'Mn' | 'Cu' | 'Fe' | 'Al' | 'Pb';
/** The forms a lab may print an element in: oxides, and the ions of nitrogen, phosphorus and sulphur. */
export type Oxide = 'Na2O' | 'P2O5' | 'K2O' | 'MgO' | 'CaO' | 'SO3' | 'NO3' | 'PO4' | 'SO4';

/** What labs count lime in besides the carbonate: calcium oxide, or what acts of it by the schemes of Missouri (ENM), Minnesota and Ohio (ENP). */
export const COUNTED_LIMES = ['CaO', 'ENM', 'ENP'] as const;
export type CountedLime = (typeof COUNTED_LIMES)[number];

/** What a figure measures: a nutrient, a product, or a thing of the orchard. */
export type Substance =
  | Nutrient | Element | Oxide | CountedLime
  | 'product' | 'lime' | 'sulphur' | 'acidity' | 'organic matter' | 'soil' | 'salts'
  | 'crown' | 'trunk' | 'ring' | 'tree' | 'tub' | 'growth' | 'fruit' | 'compost' | 'leaf' | 'time' | 'dose';

export const ATOMIC_WEIGHT = {
  H: 1.008, C: 12.011, N: 14.007, O: 15.999, Na: 22.99, Mg: 24.305, Al: 26.982, P: 30.974, S: 32.06, K: 39.098, Ca: 40.078, Fe: 55.845,
} as const;

const { N, O, Na, Mg, P, S, K, Ca } = ATOMIC_WEIGHT;

/** The share of the element in its oxide by weight: 0.436 for P2O5, 0.830 for K2O. */
export const ELEMENT_SHARE: Record<Oxide, { element: Element; share: number }> = {
  P2O5: { element: 'P', share: (2 * P) / (2 * P + 5 * O) },
  K2O: { element: 'K', share: (2 * K) / (2 * K + O) },
  MgO: { element: 'Mg', share: Mg / (Mg + O) },
  Na2O: { element: 'Na', share: (2 * Na) / (2 * Na + O) },
  CaO: { element: 'Ca', share: Ca / (Ca + O) },
  SO3: { element: 'S', share: S / (S + 3 * O) },
  NO3: { element: 'N', share: N / (N + 3 * O) },
  PO4: { element: 'P', share: P / (P + 4 * O) },
  SO4: { element: 'S', share: S / (S + 4 * O) },
};

/** mg of calcium carbonate, and of bicarbonate, that carry one meq. */
export const CACO3_PER_MEQ = (ATOMIC_WEIGHT.Ca + ATOMIC_WEIGHT.C + 3 * ATOMIC_WEIGHT.O) / 2;
export const HCO3_PER_MEQ = ATOMIC_WEIGHT.H + ATOMIC_WEIGHT.C + 3 * ATOMIC_WEIGHT.O;

/** Parts of calcium carbonate that neutralise as much as one part of each: every calcium or magnesium takes two charges. */
const CACO3 = ATOMIC_WEIGHT.Ca + ATOMIC_WEIGHT.C + 3 * ATOMIC_WEIGHT.O;
export const CACO3_PER = { Ca: CACO3 / Ca, Mg: CACO3 / Mg, CaO: CACO3 / (Ca + O), MgO: CACO3 / (Mg + O), MgCO3: CACO3 / (Mg + ATOMIC_WEIGHT.C + 3 * O) } as const;

/** Grams of calcium carbonate that the acid of one gram of sulphur takes: S makes two charges, as CaCO3 has. */
export const CACO3_PER_SULPHUR = (2 * CACO3_PER_MEQ) / S;

/** mg/kg of an element held by 1 cmol(+)/kg (= 1 meq/100 g): atomic weight ÷ charge × 10. */
export const MG_PER_CMOL: Partial<Record<Element, number>> = {
  Ca: (ATOMIC_WEIGHT.Ca / 2) * 10,
  Mg: (ATOMIC_WEIGHT.Mg / 2) * 10,
  K: ATOMIC_WEIGHT.K * 10,
  Na: ATOMIC_WEIGHT.Na * 10,
  Al: (ATOMIC_WEIGHT.Al / 3) * 10,
};
