// The water's alkalinity. By atomic weights: a meq/L is 50.04 mg/L of calcium carbonate and 61.02 mg/L of bicarbonate; a gram of sulphur takes 3.122 g of carbonate (both printed so by soil laboratories).
import { describe, expect, test } from 'vitest';
import { waterOf } from '../../src/orchard/water.ts';
import { medlar } from '../medlar.ts';

describe('what a water report says', () => {
  test.each([
    ['bicarbonate 250 mg/L', (250 / 61.02) * 50.04], ['250 mg/L bicarbonate', (250 / 61.02) * 50.04], ['HCO3 122 ppm', (122 / 61.02) * 50.04], ['alkalinity 200 ppm', 200], ['200 mg/L as CaCO3', 200], ['Total alkalinity: 180 mg/L', 180],
    ['bicarbonate 150 mg/L as CaCO3', 150], ['3.5 meq/L', 3.5 * 50.04], ['alkalinity 2,5 meq/L', 2.5 * 50.04], ['bicarbonate 4 mmol/L', 4 * 50.04],
  ])('%s', (said, mg) => { expect((waterOf(said) as { mgPerL: number }).mgPerL).toBeCloseTo(mg, 1); });
  test.each(['250 mg/L', 'alkalinity', 'alkalinity 200', 'alkalinity -3 ppm', 'alkalinity 9000 ppm', '4 mmol/L', 'tap', '1e3 ppm alkalinity'])('"%s" is not guessed at', (said) => { expect(waterOf(said)).toBeNull(); });
  test.each(['hardness 250 ppm', '15 °dH', '12 grains', 'hard'])('"%s" is hardness, which is something else', (said) => { expect(waterOf(said)).toBe('hardness'); });
});

const plan = (water: string, tree = 'blueberry, planted 2018', where = 'Ohio, US') =>
  medlar(['plan', '--json'], { 'orchard.yaml': `where: ${where}\nwater: ${water}\nsoil:\n  bank: a.txt\ntrees:\n  Blue: ${tree}, bank\nstore:\n  - Sulphate of ammonia, 21-0-0, 10 lb, $20\n`, 'a.txt': 'pH 5.8\nPhosphorus 164 ppm = very high\nPotassium 400 ppm = very high\ntexture: loam\n' });

describe('in the plan', () => {
  // An inch of 200 mg/L on 100 sq ft (9.29 m²) is 236 L with 47.2 g of carbonate, 1.7 oz; the acid of 15.1 g, half an ounce of sulphur.
  test('blueberries: what each watering brings, what it undoes, and rain water', async () => {
    const said = (await plan('alkalinity 200 ppm')).json.notices.find((n) => n.code === 'water-limes');
    expect(said?.text).toMatch(/1 3\/4 oz of lime to each 100 sq ft with every inch.*1\/2 oz of sulfur.*Blue catch rain water/);
    expect((await plan('alkalinity 200 ppm', 'blueberry, planted 2018', 'Kent, UK')).json.notices.find((n) => n.code === 'water-limes')?.text).toMatch(/50 g of lime to each 10 m² with every 25 mm.*16 g of sulphur/);
  });
  test('an apple on a fair pH hears nothing of it; nor does anybody of soft water', async () => {
    expect((await plan('alkalinity 200 ppm', 'apple, planted 2018')).json.notices.map((n) => n.code)).not.toContain('water-limes');
    expect((await plan('alkalinity 0 ppm')).json.notices.map((n) => n.code)).not.toContain('water-limes');
  });
  test.each([['hardness 250 ppm', 'water-hardness'], ['lots', 'water-wrong']])('%s: told at its place', async (water, code) => {
    const { code: exit, json } = await plan(water);
    expect(exit).toBe(3);
    expect(json.notices.find((n) => n.severity === 'error')).toMatchObject({ code, file: 'orchard.yaml', line: 2 });
  });
});
