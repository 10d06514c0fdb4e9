// United Kingdom, index scale of AHDB RB209, mg/litre. Memory; typed a second time from notes (Olsen indices 0 to 4
// were also seen in a stored text of NISR 2019/81, which splits phosphorus 2 too; the last table is that text's). Index 0 is far
// below, 1 below, 2 the target for fruit, 3 and up above. The index itself is looked for too: above 3 the side says nothing.
import { expect, test } from 'vitest';
import { orchard, tried } from '../classes.ts';
import { answer, published } from '../helpers.ts';

const source = { id: 'uk-rb209', title: 'Nutrient Management Guide RB209', publisher: 'AHDB', url: null, mark: 'memory' } as const;

interface Rated { readonly item: string; readonly target: string | null; readonly ours?: { readonly class?: string } }

const TARGETS: Readonly<Record<string, string>> = { 0: 'far-below', 1: 'below', '2': 'at', '2-': 'at', '2+': 'at' };

async function rated(text: string, item: string, where = 'Somerset, GB'): Promise<Rated> {
  const { result } = (await answer(['read', '--json', '-'], orchard(where), `${text}\n`)) as { result: { samples: { readings: Rated[] }[] } };
  const found = result.samples.flatMap((sample) => sample.readings).filter((one) => one.item === item);
  expect(found).toHaveLength(1);
  return found[0]!;
}

const SCALES: readonly (readonly [item: string, line: string, bands: Readonly<Record<string, string>>, where?: string])[] = [
  ['phosphorus', 'Phosphorus # mg/L Olsen', { 0: '0-9', 1: '10-15', 2: '16-25', 3: '26-45', 4: '46-70', 5: '71-100', 6: '101-140', 7: '141-200', 8: '201-280', 9: '>=281' }],
  ['potassium', 'Potassium # mg/L ammonium nitrate', { 0: '0-60', 1: '61-120', '2-': '121-180', '2+': '181-240', 3: '241-400', 4: '401-600', 5: '601-900', 6: '901-1500', 7: '1501-2400', 8: '2401-3600', 9: '>=3601' }],
  ['magnesium', 'Magnesium # mg/L ammonium nitrate', { 0: '0-25', 1: '26-50', 2: '51-100', 3: '101-175', 4: '176-250', 5: '251-350', 6: '351-600', 7: '601-1000', 8: '1001-1500', 9: '>=1501' }],
  // Resin phosphorus is the weaker memory.
  ['phosphorus', 'Phosphorus # mg/L resin', { 0: '0-19', 1: '20-30', 2: '31-49', 3: '50-85', 4: '86-132', 5: '>=133' }],
  ['phosphorus', 'Phosphorus # mg/L Olsen', { 0: '0-9', 1: '10-15', '2-': '16-20', '2+': '21-25', 3: '26-45', 4: '46-70' }, 'Northern Ireland'],
];

published(source, () => {
  for (const [item, line, bands, where] of SCALES) {
    for (const [index, printed] of Object.entries(bands)) {
      for (const value of tried(printed)) {
        const text = line.replace('#', String(value));
        test(`${where ?? 'Somerset'}: ${text}: index ${index}`, async () => {
          const one = await rated(text, item, where);
          expect({ target: one.target, index: one.ours?.class?.replace('−', '-') }).toEqual({ target: TARGETS[index] ?? 'above', index });
        });
      }
    }
  }

  // An index printed by the laboratory is taken as it stands.
  for (const index of ['0', '1', '2', '2-', '2+', '3', '4', '9']) {
    for (const item of ['phosphorus', 'potassium', 'magnesium']) {
      test(`${item} index ${index}`, async () => {
        expect((await rated(`${item} index ${index}`, item)).target).toBe(TARGETS[index] ?? 'above');
      });
    }
  }
});
