/** Misspellings that growers are known to make. A closed list: any other slip is only suggested, never taken; so is "phosphorous". */
import type { NameSet } from './name-set.ts';

export const NAME_SLIPS: readonly NameSet[] = [
  // Seen at https://www.100flowers.win/Article/questionandanswer/lawns/201608/36949.html
  { of: 'phosphorus', language: 'en', mark: 'practice', slip: true, names: ['phosphurus'] },
  { of: 'phosphorus', language: 'en', mark: 'practice', slip: true, names: ['phosporus', 'phosporous', 'phophorus', 'phophorous', 'phosforus', 'phosphrus', 'phospherus', 'phosphoros', 'phosphorious'] },
  { of: 'potassium', language: 'en', mark: 'practice', slip: true, names: ['potasium', 'potassuim', 'potasssium', 'pottasium', 'pottassium', 'potassum', 'pottash'] },
  { of: 'magnesium', language: 'en', mark: 'practice', slip: true, names: ['magnesum', 'magnisium', 'magnesuim', 'magneseum', 'magnessium'] },
  { of: 'calcium', language: 'en', mark: 'practice', slip: true, names: ['calcuim', 'calicum', 'calcum'] },
  { of: 'sulphur', language: 'en', mark: 'practice', slip: true, names: ['sulfer', 'sulpher', 'sulfar', 'suphur', 'sulphar'] },
  { of: 'manganese', language: 'en', mark: 'practice', slip: true, names: ['manganeese', 'maganese', 'mangenese', 'manganeze', 'mangenise'] },
  { of: 'nitrogen', language: 'en', mark: 'practice', slip: true, names: ['nitogen', 'nitrogren', 'nitrigen', 'nitorgen'] },
  { of: 'boron', language: 'en', mark: 'practice', slip: true, names: ['borron', 'boran'] },
  { of: 'copper', language: 'en', mark: 'practice', slip: true, names: ['coper'] },
  { of: 'sodium', language: 'en', mark: 'practice', slip: true, names: ['soduim', 'sodum'] },
  { of: 'organic-matter', language: 'en', mark: 'practice', slip: true, names: ['organic mater', 'orgainic matter', 'organic mattter', 'oragnic matter'] },
  { of: 'salts', language: 'en', mark: 'practice', slip: true, names: ['soluable salts', 'electrical conductivty'] },
  { of: 'cec', language: 'en', mark: 'practice', slip: true, names: ['cation exchange capcity', 'cation exhange capacity'] },
  // A zero for the letter O.
  { of: 'phosphorus', language: 'any', mark: 'practice', slip: true, form: 'P2O5', names: ['p205'] },
  { of: 'potassium', language: 'any', mark: 'practice', slip: true, form: 'K2O', names: ['k20'] },
];
