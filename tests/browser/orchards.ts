/** Orchards made up by seed, as folders: places, soils, trees, bags and a diary of every kind that the page and the command line must see alike. */
import { dice } from '../dice.ts';

type Files = Readonly<Record<string, string>>;

const US = ['Ohio, US', 'Iowa, US', 'Georgia, US', 'California, US', 'Oregon, US', 'Florida, US', 'Pennsylvania, US', 'Michigan, US', 'Texas, US', 'North Carolina, US'];
const WORLD = ['England, UK', 'Ireland', 'Bavaria, Germany', 'France', 'Spain', 'Italy', 'New South Wales, Australia', 'New Zealand', 'Ontario, Canada', 'South Africa'];
const CROPS = ['apple', 'pear', 'peach', 'plum', 'cherry', 'apricot', 'fig', 'lemon', 'orange', 'blueberry', 'raspberry', 'strawberry', 'gooseberry', 'grape', 'walnut', 'pecan', 'quince', 'persimmon'];
const BAGS = ['10-10-10, 40 lb', 'Sulphate of ammonia, 21-0-0, 4 lb', 'Urea 46-0-0, 10 lb', '14-14-14 slow release, 4 lb', 'Bone meal, 3-15-0, 5 lb', 'Blood meal, 12-0-0, 3 lb', 'Muriate of potash, 0-0-60, 5 lb', 'Sulfate of potash, 0-0-50, 5 lb', '20-20-20 water soluble, 1 lb', 'Calcium nitrate, 15.5-0-0, 5 lb', '5-1-1 fish, liquid', '6-2-0, 36 lb', '12-4-8 citrus, 8 lb', 'Wood ash, 5 lb', 'Garden lime, 40 lb', 'Weed and feed, 28-0-3, 15 lb'];

export function folderOf(seed: number): Files {
  const roll = dice(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(roll() * list.length)]!;
  const upTo = (n: number): number => Math.floor(roll() * (n + 1));
  const chance = (p: number): boolean => roll() < p;
  const us = chance(0.6);
  const [ft, inch] = us ? ['ft', 'in'] : ['m', 'cm'];
  const where = pick(us ? US : WORLD);
  const soils = upTo(2);
  const report = (i: number): string => [
    `Sample ${i}`, `pH ${(4.8 + upTo(32) / 10).toFixed(1)}`,
    ...(chance(0.8) ? [`Phosphorus ${5 + upTo(150)} ppm ${pick(['Mehlich 3', 'Olsen', 'Bray P1', ''])}${chance(0.4) ? `, ${pick(['low', 'medium', 'optimum', 'high', 'very high'])}` : ''}`] : []),
    ...(chance(0.8) ? [`Potassium ${30 + upTo(300)} ppm${chance(0.3) ? ' (100-180)' : ''}`] : []),
    ...(chance(0.5) ? [`Organic matter ${(1 + upTo(80) / 10).toFixed(1)} %`] : []), ...(chance(0.3) ? [`Magnesium ${20 + upTo(300)} ppm`] : []), ...(chance(0.3) ? [`CEC ${5 + upTo(20)}`] : []), ...(chance(0.2) ? [`Buffer pH ${(6 + upTo(12) / 10).toFixed(1)} SMP`] : []),
  ].join('\n');
  const tree = (i: number): string => {
    const crop = pick(CROPS);
    const tub = chance(0.12);
    const facts = [
      chance(0.25) ? `${2 + upTo(11)} ${crop}` : crop, ...(chance(0.4) && ['apple', 'pear', 'cherry', 'plum'].includes(crop) ? [pick(['dwarf', 'semi-dwarf', 'standard'])] : []),
      ...(chance(0.85) ? [`planted ${2005 + upTo(20)}`] : []), ...(tub ? [us ? `tub ${5 + upTo(25)} gal` : `tub ${20 + upTo(80)} L`] : []),
      ...(chance(0.7) ? [`${us ? 2 + upTo(20) : 1 + upTo(5)} ${ft} across`] : []), ...(chance(0.4) ? [`shoots ${us ? upTo(30) : upTo(70)} ${inch} 2025`] : []), ...(chance(0.3) ? [`trunk ${us ? 2 + upTo(30) : 5 + upTo(60)} ${inch} round`] : []),
      ...(chance(0.4) ? ['mulch'] : []), ...(chance(0.12) ? ['fed lawn'] : []), ...(chance(0.2) ? [`fruit ${pick(['none', 'light', 'heavy'])} 2025`] : []), ...(soils > 1 ? [`plot ${1 + upTo(soils - 1)}`] : []),
    ];
    return `  Tree ${i}: ${facts.join(', ')}`;
  };
  const money = us ? '$' : where.includes('UK') ? '£' : '€';
  const trees = 1 + upTo(11);
  const bag = (): string => pick(BAGS);
  const shed = [...new Set(Array.from({ length: upTo(2) }, bag))];
  const store = [...new Set(Array.from({ length: 1 + upTo(4) }, bag))].filter((b) => !shed.includes(b)).map((b) => (chance(0.8) && /lb/.test(b) ? `${b}, ${money}${3 + upTo(30)}` : b));
  const orchard = [
    `orchard: Made ${seed}`, `where: ${where}`, ...(/Germany|Spain/.test(where) ? ['language: en'] : []), ...(chance(0.6) ? [`bud-break: ${1 + upTo(27)} April`] : []), ...(chance(0.6) ? [`first-frost: ${1 + upTo(27)} October`] : []), ...(chance(0.1) ? ['never: mineral'] : []),
    ...(soils > 0 ? ['soil:', ...Array.from({ length: soils }, (_, i) => `  plot ${i + 1}: soil/2025.txt, sample ${i + 1}`)] : []),
    'trees:', ...Array.from({ length: trees }, (_, i) => tree(i + 1)), ...(shed.length > 0 ? ['shed:', ...shed.map((b) => `  - ${b}`)] : []), ...(store.length > 0 ? ['store:', ...store.map((b) => `  - ${b}`)] : []), '',
  ].join('\n');
  const diary: Files = chance(0.25) ? { 'diary.csv': `date,trees,what,bag,amount,note\n2026-03-0${1 + upTo(8)},Tree 1,fed,,${2 + upTo(20)} oz,\n` } : {};
  return { 'orchard.yaml': orchard, ...(soils > 0 ? { 'soil/2025.txt': `${Array.from({ length: soils }, (_, i) => report(i + 1)).join('\n\n')}\n` } : {}), ...diary };
}
