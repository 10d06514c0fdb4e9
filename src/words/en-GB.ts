/** British English: the American words with what differs. */
import type { Words } from './en-US.ts';
import { enUS } from './en-US.ts';

/** Spellings that differ throughout, whole words. */
const SPELLING: readonly (readonly [RegExp, string])[] = [
  [/\bSulfate\b/g, 'Sulphate'], [/\bsulfate\b/g, 'sulphate'], [/\bsulfur\b/g, 'sulphur'], [/\bsulfured\b/g, 'sulphured'], [/\bSulfur\b/g, 'Sulphur'], [/\bSULFUR\b/g, 'SULPHUR'], [/\bfertilizer/g, 'fertiliser'], [/\bfall frost\b/g, 'autumn frost'],
  [/\b12 ft across\b/g, '4 m across'], [/\bshoots 6 in\b/g, 'shoots 15 cm'], [/\bfruit 40 lb\b/g, 'fruit 20 kg'], [/\btrunk 11 in round\b/g, 'trunk 28 cm round'], [/\b10 ft high\b/g, '3 m high'], [/\b9 ft high\b/g, '3 m high'], [/\bbed 12 x 4 ft\b/g, 'bed 4 x 1.2 m'], [/\bspacing 2 x 8 ft\b/g, 'spacing 0.6 x 2.5 m'],
  [/\btwo inches\b/g, '5 cm'], [/\btop 2 in \(5 cm\)/g, 'top 5 cm'], [/\b2 1\/2 feet\b/g, '75 cm'], [/\bhalf a foot to two feet\b/g, '15 to 60 cm'], [/\bshoots Gate apple 7 in\b/g, 'shoots Gate apple 18 cm'], [/"6 in"/g, '"15 cm"'], [/"44 lb\/1000 sq ft" or /g, ''], [/"44 lb\/1000 sq ft"/g, '"2 t/ha"'], [/"100 sq ft" or /g, ''], [/"100 sq ft"/g, '"9 m2"'], [/\btub 15 gal\b/g, 'tub 60 L'],
  [/\bIn fall\b/g, 'In autumn'], [/\bfall \{year\}/g, 'autumn {year}'], [/\baluminum\b/g, 'aluminium'], [/, \$9\b/g, ', £7'], [/\b4 lb\b/g, '2 kg'], [/calipers/g, 'callipers'], [/\bliter\b/g, 'litre'], [/extension office/g, 'adviser'],
];
const british = (text: string): string => SPELLING.reduce((t, [from, to]) => t.replace(from, to), text);

const OWN: { [G in keyof Words]?: Partial<Words[G]> } = {
  notice: {
    'measure-wrong': '{tree}: I cannot read the measure in "{read}". Examples: 3.5 m across, 4 m high, trunk 28 cm round, shoots 15 cm, spacing 4 x 3 m, tub 60 L, fruit 20 kg, planted 2019.',
    'report-limed': 'The report says that this soil was limed ("{read}"). The plan knows of lime only by the diary, so write it there, for instance: medlar diary "limed top strip 20 kg garden lime in all on 14 April"',
    'diary-amount': 'I cannot read "{read}" as an amount. Write for instance 350 g or 2.5 kg; for shoots 18 cm; for a crop 20 kg, none, light or heavy.',
    'diary-negative': '"{read}" is no amount that can be given: it is zero or below. Write for instance 350 g, or "nothing".',
    'diary-sentence': 'I cannot read "{read}".[guess| Did you mean "{guess}"?] Write for instance: fed Gate apple 350 g sulphate of ammonia; limed top strip 20 kg garden lime in all; sulphured Blueberries 100 g each; shoots Gate apple 18 cm; crop Gate apple 20 kg; note Gate apple scab on the leaves; day 1 done; day 1 done except Gate apple.',
    'crown-impossible': '{tree}: a crown over 40 m across is larger than any fruit tree. Check the unit.',
  },
};

/** A sentence in British English, made when it is said. */
export function enGB<G extends keyof Words>(group: G, key: keyof Words[G]): string {
  return OWN[group]?.[key] ?? british(enUS[group][key] as string);
}
