/** The crops, the words growers use for them, and what kind of plant each is. */
export type Crop = 'apple' | 'pear' | 'peach' | 'plum' | 'cherry' | 'fig' | 'blueberry' | 'citrus' | 'other';
export type Size = 'dwarf' | 'semi-dwarf' | 'standard';
export const SIZES: readonly Size[] = ['dwarf', 'semi-dwarf', 'standard'];

export const POME: readonly Crop[] = ['apple', 'pear'];
export const STONE: readonly Crop[] = ['peach', 'plum', 'cherry'];
export const TREE_FRUIT: readonly Crop[] = [...POME, ...STONE];

/** Crops that take chloride badly: sulphate of potash is preferred for them (materials; common practice for stone fruit). */
export const CHLORIDE_SENSITIVE: readonly Crop[] = ['peach', 'plum', 'cherry', 'blueberry', 'citrus'];
export const EVERGREEN: readonly Crop[] = ['citrus'];

/** Word in `orchard.yaml` → crop whose published figures serve it. */
export const CROP_WORDS: Readonly<Record<string, Crop>> = {
  apple: 'apple', 'cooking apple': 'apple', 'cider apple': 'apple',
  pear: 'pear',
  peach: 'peach', nectarine: 'peach',
  plum: 'plum', gage: 'plum', damson: 'plum', prune: 'plum',
  cherry: 'cherry', 'sweet cherry': 'cherry', 'tart cherry': 'cherry', 'sour cherry': 'cherry',
  fig: 'fig',
  blueberry: 'blueberry', 'highbush blueberry': 'blueberry',
  citrus: 'citrus', lemon: 'citrus', lime: 'citrus', orange: 'citrus', mandarin: 'citrus', grapefruit: 'citrus',
  satsuma: 'citrus', clementine: 'citrus', kumquat: 'citrus', tangerine: 'citrus',
};

/** Crops that growers keep and for which Medlar holds no feeding figures: said so, never guessed from a neighbour. */
export const CROPS_WITHOUT_FIGURES: readonly string[] = [
  'crab apple', 'asian pear', 'quince', 'medlar', 'apricot', 'almond', 'persimmon', 'pomegranate', 'mulberry', 'avocado',
  'olive', 'walnut', 'pecan', 'hazelnut', 'chestnut', 'kiwifruit', 'currant', 'blackcurrant', 'black currant', 'redcurrant', 'red currant', 'whitecurrant', 'white currant', 'gooseberry',
  'raspberry', 'blackberry', 'grape', 'strawberry', 'loquat', 'elderberry',
];
