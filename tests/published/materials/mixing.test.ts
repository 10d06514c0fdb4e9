// Pairs that must not meet, hazards, chloride and raw manure, as printed (mixing.ts; typed apart from the tables), against the product's tables.
import { describe, expect, test } from 'vitest';
import type { Bag } from '../../../src/orchard/bag.ts';
import { parseBag } from '../../../src/orchard/bag.ts';
import { hazardsOf, mixingFaults } from '../../../src/orchard/mixing.ts';
import { CHLORIDE_SENSITIVE, CROP_WORDS, STONE } from '../../../src/tables/crops.ts';
import { MATERIALS } from '../../../src/tables/materials.ts';
import { MANURE_TO_HARVEST } from '../../../src/tables/release.ts';
import { published } from '../helpers.ts';
import { PRINTED_CHLORIDE, PRINTED_HARVEST_DAYS, PRINTED_HAZARDS, PRINTED_PAIRS } from './mixing.ts';

const NOWHERE = { file: '', line: 1, column: 1, length: 1, source: '' };
/** Several for a class; what feeds nothing by itself is no bag, and stands in one by its material. */
const CLASSES: Readonly<Record<string, readonly string[]>> = {
  'any ammonium fertiliser': ['Ammonium sulphate', 'Ammonium nitrate', 'MAP', 'DAP'], 'any sulphate fertiliser': ['Ammonium sulphate', 'Sulphate of potash', 'Langbeinite', 'Epsom salt'], 'any phosphate fertiliser': ['MAP', 'DAP', 'Superphosphate', 'MKP'],
  'any soluble phosphate': ['MAP', 'MKP'], 'any calcium fertiliser': ['Calcium nitrate'], 'any other fertiliser': ['Ammonium sulphate', 'Sulphate of potash', '10-10-10', 'Potassium nitrate'], lime: ['Garden lime, 40 lb'], 'basic slag': ['Basic slag, 40 lb'], 'wood ash': ['Wood ash, 20 lb'],
  'rock phosphate': ['Rock phosphate 0-3-0'], 'calcium nitrate and urea double salt': ['Calcium nitrate'], 'pelleted poultry manure': ['Pelleted poultry manure 4-3-2'], 'blood and bone': ['Blood and bone 6-4-0'],
};
function bagOf(text: string): Bag {
  const { bag } = parseBag(text, 'US', false, NOWHERE);
  if (bag) return bag;
  const plain = text.toLowerCase();
  return { ...parseBag('1-1-1', 'US', false, NOWHERE).bag!, label: text, material: MATERIALS.find((m) => m.names.includes(plain))! };
}
const bagsOf = (name: string): Bag[] => (CLASSES[name] ?? [name]).map(bagOf);

/** The strictest first. */
const STRICT = ['never', 'fresh', 'solution'];
const OURS: Readonly<Record<string, string>> = { never: 'never', 'fresh only': 'fresh', 'not in solution': 'solution' };

published({ id: 'printed-mixing', title: 'What must not be mixed, and what bags can do', publisher: 'IPNI, extension services and others, each named at its row', url: null, mark: 'read' }, () => {
  describe('pairs', () => {
    const rows = [...PRINTED_PAIRS, { a: 'urea', b: 'any other fertiliser', rule: 'fresh only', at: 'section 7 [SEAP]; seen', mark: 'read' }] as const;
    test.each(rows.map((r) => [`${r.mark === 'memory' ? 'memory: ' : ''}${r.a} and ${r.b}: ${r.rule} (${r.at})`, r] as const))('%s', (_, row) => {
      for (const a of bagsOf(row.a)) {
        for (const b of bagsOf(row.b)) {
          if (a.material !== null && a.material === b.material) continue;
          for (const pair of [[a, b], [b, a]]) {
            const [fault] = mixingFaults(pair);
            // The notes let urea and muriate of potash pass on the day they are spread, as bulk blenders do; the page allows it too.
            const rule = row.a === 'urea' && row.b === 'muriate of potash' ? 'fresh' : OURS[row.rule]!;
            // What another source forbids outright is stricter than one water, and counts.
            expect(STRICT.indexOf(fault?.rule ?? ''), `${a.label} and ${b.label}: ${fault?.rule}`).toBeGreaterThanOrEqual(0);
            expect(STRICT.indexOf(fault!.rule)).toBeLessThanOrEqual(STRICT.indexOf(rule));
            if (CLASSES[row.a] === undefined && CLASSES[row.b] === undefined) expect(fault!.rule).toBe(rule);
          }
        }
      }
    });
  });

  describe('hazards', () => {
    const HAZARD: Readonly<Record<string, string>> = { oxidiser: 'oxidiser', 'nitrate, keep from fuel': 'oxidiser', dogs: 'dogs', stock: 'stock' };
    test.each(PRINTED_HAZARDS.map((r) => [`${r.mark === 'memory' ? 'memory: ' : ''}${r.material}: ${r.hazard} (${r.at})`, r] as const))('%s', (_, { material, hazard }) => {
      for (const bag of bagsOf(material)) expect(hazardsOf(bag)).toContain(HAZARD[hazard]);
    });
  });

  describe('chloride', () => {
    test.each(PRINTED_CHLORIDE.map((r) => [`${r.mark === 'memory' ? 'memory: ' : ''}${r.crop} (${r.at})`, r.crop] as const))('%s takes it badly', (_, crop) => {
      for (const one of crop === 'stone fruit' ? STONE : [CROP_WORDS[crop]!]) expect(CHLORIDE_SENSITIVE).toContain(one);
    });
  });

  describe('days from raw manure to harvest', () => {
    test.each(PRINTED_HARVEST_DAYS.map((r) => [`${r.when}: ${r.days} (${r.at})`, r] as const))('%s', (_, { when, days }) => {
      expect(when.includes('does not touch') ? MANURE_TO_HARVEST.above : MANURE_TO_HARVEST.touching).toBe(days);
    });
  });
});
