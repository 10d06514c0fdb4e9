/** What a grower may type, by command, in the one language that Medlar reads; `--help` shows them. */
export const EXAMPLES: Readonly<Record<string, readonly string[]>> = {
  new: ['medlar new', 'medlar new --name "Chapel Bank" --where "Ohio, US" --tree "Gate apple: apple, semi-dwarf, planted 2019, 12 ft across"'],
  read: ['medlar read', 'medlar read soil/2025.txt'],
  plan: ['medlar plan', 'medlar plan "Gate apple"'],
  sheet: ['medlar sheet', 'medlar sheet --large --paper letter', 'medlar sheet --as ics'],
  why: ['medlar why "Gate apple"', 'medlar why "Gate apple" N', 'medlar why "Wall plum" date --as tree'],
  years: ['medlar years', 'medlar years --as html'],
  shop: ['medlar shop', 'medlar shop "24-8-16, 5 lb, $14" "21-0-0, 4 lb, $9"', 'medlar shop --need "1 lb N, 0 P2O5" "21-0-0, 4 lb, $9"'],
  weigh: ['medlar weigh "0.5 lb N, 0.2 lb P2O5" 21-0-0 0-46-0', 'medlar weigh "150 ppm N in 2 gal" "20-20-20 water soluble"'],
  blend: ['medlar blend 2x46-0-0 0-0-60', 'medlar blend --balanced 21-0-0 0-46-0 0-0-60', 'medlar blend 0-20-0 0-0-60 --to 0-8-8 --batch "50 lb"'],
  ph: ['medlar ph', 'medlar ph "lower terrace"', 'medlar ph --now 5.3 --buffer 6.4 --method smp --area "100 sq ft"'],
  sources: ['medlar sources lime', 'medlar sources --coverage'],
  page: ['medlar page', 'medlar page phone.html', 'medlar page --site garden'],
  check: ['medlar check', 'medlar check --folder samples/chapel-bank'],
  schema: ['medlar schema plan'],
};
