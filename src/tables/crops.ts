/** The crops, the words growers use for them, and what kind of plant each is. */
export type Crop =
  | 'apple' | 'pear' | 'asian-pear' | 'quince' | 'medlar' | 'peach' | 'plum' | 'apricot' | 'cherry'
  | 'almond' | 'walnut' | 'pecan' | 'hazelnut' | 'chestnut'
  | 'fig' | 'persimmon' | 'pomegranate' | 'mulberry' | 'loquat' | 'citrus' | 'avocado' | 'olive' | 'mango' | 'guava'
  | 'kiwifruit' | 'grape' | 'blueberry' | 'currant' | 'gooseberry' | 'raspberry' | 'blackberry' | 'elderberry' | 'strawberry' | 'other';
export type Size = 'dwarf' | 'semi-dwarf' | 'standard';
export const SIZES: readonly Size[] = ['dwarf', 'semi-dwarf', 'standard'];

export const POME: readonly Crop[] = ['apple', 'pear'];
export const STONE: readonly Crop[] = ['peach', 'plum', 'apricot', 'cherry'];
/** What publications mean by fruit trees in general. */
export const TREE_FRUIT: readonly Crop[] = [...POME, ...STONE];
/** Bushes, canes, vines and low plants: they have no trunk and no size class. */
export const SOFT_FRUIT: readonly Crop[] = ['kiwifruit', 'grape', 'blueberry', 'currant', 'gooseberry', 'raspberry', 'blackberry', 'elderberry', 'strawberry'];

/** Crops that take chloride badly: sulphate of potash is preferred for them (materials; common practice for stone fruit and berries). */
export const CHLORIDE_SENSITIVE: readonly Crop[] = [
  ...STONE, 'almond', 'citrus', 'avocado', 'kiwifruit', 'grape', 'blueberry', 'currant', 'gooseberry', 'raspberry', 'blackberry', 'elderberry', 'strawberry',
];
export const EVERGREEN: readonly Crop[] = ['citrus', 'avocado', 'olive', 'loquat', 'mango', 'guava'];

/** Word in `orchard.yaml` → crop. A rule for one kind alone names that word as its `kind`. */
export const CROP_WORDS: Readonly<Record<string, Crop>> = {
  apple: 'apple', 'cooking apple': 'apple', 'cider apple': 'apple',
  pear: 'pear', 'asian pear': 'asian-pear', nashi: 'asian-pear', quince: 'quince', medlar: 'medlar',
  peach: 'peach', nectarine: 'peach',
  plum: 'plum', gage: 'plum', damson: 'plum', prune: 'plum', mirabelle: 'plum',
  apricot: 'apricot',
  cherry: 'cherry', 'sweet cherry': 'cherry', 'tart cherry': 'cherry', 'sour cherry': 'cherry',
  almond: 'almond', walnut: 'walnut', pecan: 'pecan', hazelnut: 'hazelnut', filbert: 'hazelnut', cobnut: 'hazelnut', hazel: 'hazelnut', chestnut: 'chestnut',
  fig: 'fig', persimmon: 'persimmon', kaki: 'persimmon', pomegranate: 'pomegranate', mulberry: 'mulberry', loquat: 'loquat',
  citrus: 'citrus', lemon: 'citrus', lime: 'citrus', orange: 'citrus', mandarin: 'citrus', grapefruit: 'citrus',
  satsuma: 'citrus', clementine: 'citrus', kumquat: 'citrus', tangerine: 'citrus',
  avocado: 'avocado', olive: 'olive', mango: 'mango', guava: 'guava',
  kiwifruit: 'kiwifruit', kiwi: 'kiwifruit', grape: 'grape', grapevine: 'grape', vine: 'grape', 'muscadine grape': 'grape', muscadine: 'grape',
  blueberry: 'blueberry', 'highbush blueberry': 'blueberry', 'rabbiteye blueberry': 'blueberry',
  currant: 'currant', blackcurrant: 'currant', 'black currant': 'currant', redcurrant: 'currant', 'red currant': 'currant', whitecurrant: 'currant', 'white currant': 'currant',
  gooseberry: 'gooseberry', raspberry: 'raspberry', blackberry: 'blackberry', loganberry: 'blackberry', tayberry: 'blackberry', boysenberry: 'blackberry',
  elderberry: 'elderberry', strawberry: 'strawberry',
};

/** Plants that growers keep beside them and for which no figures are held at all: said so, never guessed from a neighbour. */
export const CROPS_WITHOUT_FIGURES: readonly string[] = ['crab apple', 'jostaberry', 'aronia', 'sea buckthorn', 'pawpaw', 'jujube', 'feijoa', 'honeyberry', 'serviceberry', 'cornelian cherry', 'macadamia', 'tamarillo', 'lychee', 'passion fruit', 'papaya', 'banana', 'cranberry', 'lingonberry'];

/** Whose figures a grower may choose to borrow where a crop has none of its own: its nearest kin among those that have. Botany, not taste. */
export const KIN: Readonly<Record<string, readonly Crop[]>> = {
  'crab apple': ['apple'], 'asian pear': ['pear'], nashi: ['pear'], quince: ['pear', 'apple'], medlar: ['pear', 'apple'], loquat: ['pear'], almond: ['peach'], apricot: ['peach', 'plum'],
  mulberry: ['fig'], jostaberry: ['currant', 'gooseberry'], gooseberry: ['currant'], currant: ['gooseberry'], elderberry: ['currant'], blackberry: ['raspberry'], loganberry: ['blackberry'],
  serviceberry: ['apple'], walnut: ['pecan'], pecan: ['walnut'], chestnut: ['walnut'], aronia: ['currant'], honeyberry: ['currant'],
};
