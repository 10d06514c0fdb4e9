/** How much of a salt dissolves in a litre of water, by its temperature. */
import type { Cite } from '../reason/figure.ts';

export type Solubility = { readonly material: string; readonly at: readonly (readonly [celsius: number, gPerL: number])[]; readonly unit: 'g/L'; readonly cite: Cite };

const list: Cite = { source: 'fertigation-solubility', at: 'solubility of fertilisers', mark: 'read' };
const row = (material: string, ...at: Solubility['at'][number][]): Solubility => ({ material, at, unit: 'g/L', cite: list });

export const SOLUBILITIES: readonly Solubility[] = [
  // Printed as 209 at 20 degrees and 316 at 25; handbooks give 316 at 20, so its row is doubtful and its low end the safer.
  row('potassium-nitrate', [5, 133], [10, 170], [20, 209], [25, 316], [30, 370], [40, 458]),
  row('ammonium-nitrate', [5, 1183], [10, 1510], [20, 1920]),
  row('ammonium-sulphate', [5, 710], [10, 730], [20, 750]),
  row('calcium-nitrate', [5, 1020], [10, 1130], [20, 1290]),
  row('magnesium-nitrate', [5, 680], [10, 690], [20, 710], [25, 720]),
  row('map', [5, 250], [10, 295], [20, 374], [25, 410], [30, 464], [40, 567]),
  row('monopotassium-phosphate', [5, 110], [10, 180], [20, 230], [25, 250], [30, 300], [40, 340]),
  row('potassium-chloride', [5, 229], [10, 238], [20, 255], [25, 264], [30, 275]),
  row('potassium-sulphate', [5, 80], [10, 90], [20, 111], [25, 120]),
  row('urea', [5, 780], [10, 850], [20, 1060], [25, 1200]),
  { material: 'gypsum', at: [[10, 2.4]], unit: 'g/L', cite: { source: 'medlar', at: 'material-grades', mark: 'memory' } },
];

/** Water from the tap in spring. */
export const TAP_CELSIUS = 10;

/** Water at one time, as a share of the mix in the pot: it wets it through, and a little runs out. */
export const POT_WATER = { share: 0.2, cite: { source: 'medlar', at: 'pot-water', mark: 'practice' } satisfies Cite } as const;

/** Feed in the water of plants in pots, mg of N a litre: what is given once a week. */
export const POT_STRENGTH: { readonly low: number; readonly high: number; readonly unit: 'mg/L'; readonly cite: Cite } = { low: 100, high: 200, unit: 'mg/L', cite: { source: 'medlar', at: 'pot-strength', mark: 'memory' } };
