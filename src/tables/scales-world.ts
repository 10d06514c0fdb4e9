/** Scales of the rest of the world, edges as printed. */
import type { Cite } from '../reason/figure.ts';
import type { Item, Method } from './items.ts';
import type { Band, Home, Scale } from './scale.ts';
import { between, classes, most, range } from './scale.ts';

const read = (source: string, at: string): Cite => ({ source, at, mark: 'read' });
const recalled = (source: string, at: string): Cite => ({ source, at, mark: 'memory' });

// ── New Zealand: avocado alone ───────────────────────────────────────────────

const avocado = (item: Item, method: Scale['method'], unit: Scale['unit'], bands: readonly Band[]): Scale => ({
  id: `avocado.${item}`, item, method, unit, countries: ['NZ'], serves: { only: 'avocado' }, cite: read('avocado-new-zealand', 'soil levels'), bands,
});
const NEW_ZEALAND: readonly Scale[] = [
  avocado('ph', 'any', 'pH', between(5.8, 6.4)), avocado('phosphorus', 'olsen', 'mg/L', range(50, null)), avocado('cec', 'any', 'meq/100g', range(20, null)),
  avocado('base-saturation', 'any', '%', between(70, 90)), avocado('saturation-k', 'any', '%', between(6, 10)), avocado('saturation-ca', 'any', '%', between(55, 65)), avocado('saturation-mg', 'any', '%', between(12, 15)),
  avocado('zinc', 'mehlich-3', 'mg/L', between(5, 15)), avocado('boron', 'mehlich-3', 'mg/L', between(2, 6)),
];

// ── India ────────────────────────────────────────────────────────────────────

const IN: Home = { countries: ['IN'] };
type Edges = readonly [veryLow: number, low: number, medium: number, high: number];
/** Where very low, low, medium and high end. The source names no extractant; those of Indian laboratories are Olsen and ammonium acetate. */
const tandon = (item: Item, method: Scale['method'], unit: Scale['unit'], [veryLow, low, medium, high]: Edges, form?: Scale['form']): Scale => ({
  id: `india-tandon.${item}.${unit === 'kg/ha' ? 'kg' : unit === '%' ? 'share' : 'me'}`, item, method, unit, ...(form ? { form } : {}), ...IN, serves: 'general', homeOnly: true, cite: read('india-tandon', 'soil fertility ratings'),
  bands: classes(['very-low', veryLow], ['low', low], ['medium', medium], ['high', high], ['very-high']),
});
const icar = (item: Item, method: Method, low: number, medium: number): Scale => ({
  id: `india-icar.${item}`, item, method, unit: 'kg/ha', ...IN, serves: 'general', cite: recalled('india-icar', 'soil test classes'), bands: classes(['low', low], ['medium', medium], ['high']),
});
const INDIA: readonly Scale[] = [
  tandon('organic-carbon', 'any', '%', [0.2, 0.6, 0.8, 1]), tandon('nitrogen', 'any', 'kg/ha', [140, 420, 560, 700]), tandon('phosphorus', 'olsen', 'kg/ha', [16, 48, 64, 80], 'P2O5'), tandon('potassium', 'ammonium-acetate', 'kg/ha', [120, 240, 300, 360], 'K2O'),
  tandon('calcium', 'ammonium-acetate', 'meq/100g', [2, 5, 10, 20]), tandon('magnesium', 'ammonium-acetate', 'meq/100g', [0.5, 1.5, 3, 8]),
  // Print gives 0.6 to 1.5 for high and over 1.2 for very high; the lower edge is kept.
  tandon('potassium', 'ammonium-acetate', 'meq/100g', [0.12, 0.3, 0.6, 1.2]), tandon('cec', 'any', 'meq/100g', [5, 15, 25, 40]),
  icar('phosphorus', 'olsen', 10, 25), icar('potassium', 'ammonium-acetate', 108, 280),
];

// ── São Paulo: contents by volume; perennials for phosphorus ─────────────────

const saoPaulo = (item: Item, method: Scale['method'], unit: Scale['unit'], bands: readonly Band[], serves: Scale['serves'] = 'general'): Scale => ({
  id: `sao-paulo.${item}`, item, method, unit, countries: ['BR'], serves, homeOnly: true, cite: recalled('sao-paulo-100', 'interpretation classes'), bands,
});
const five = ([veryLow, low, medium, high]: Edges): readonly Band[] => classes(['very-low', veryLow], ['low', low], ['medium', medium], ['high', high], ['very-high']);
const three = (low: number, medium: number): readonly Band[] => classes(['low', low], ['medium', medium], ['high']);
const BRAZIL: readonly Scale[] = [
  saoPaulo('phosphorus', 'resin', 'mg/L', five([5, 12, 30, 60]), 'fruit'), saoPaulo('potassium', 'resin', 'mmolc/dm3', five([0.7, 1.5, 3, 6])), saoPaulo('magnesium', 'resin', 'mmolc/dm3', three(4, 8)),
  saoPaulo('boron', 'hot-water', 'mg/L', three(0.2, 0.6)), saoPaulo('zinc', 'dtpa', 'mg/L', three(0.5, 1.2)),
];

// ── Salts ────────────────────────────────────────────────────────────────────

const AUSTRALIA: readonly Scale[] = [
  { id: 'salts.1:5', item: 'salts', method: '1:5', unit: 'dS/m', countries: ['AU'], serves: 'general', cite: read('australia-salts', 'conductivity 1:5'), bands: most(0.16) },
];

export const WORLD_SCALES: readonly Scale[] = [...NEW_ZEALAND, ...INDIA, ...BRAZIL, ...AUSTRALIA];
