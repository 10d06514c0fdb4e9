/** Soil pH that suits each plant: FAO EcoCrop by species, and what states and countries print for their own growers; none is tied to one way of measuring. */
import type { Cite, Mark } from '../reason/figure.ts';
import type { Crop } from './crops.ts';
import { TREE_FRUIT } from './crops.ts';

/** `kinds` are the growers' words that the species serves, or its own name where they have no word for it yet. */
export type Species = { readonly id: string; readonly crops: readonly Crop[]; readonly kinds: readonly string[]; readonly optimum: readonly [low: number, high: number]; readonly absolute: readonly [low: number, high: number]; readonly cite: Cite };

const ecocrop = (crop: Crop, species: string, kinds: readonly string[], min: number, low: number, high: number, max: number): Species =>
  ({ id: `ecocrop.${species}`, crops: [crop], kinds, optimum: [low, high], absolute: [min, max], cite: { source: 'fao-ecocrop', at: `${species}: PHMIN, PHOPMN, PHOPMX, PHMAX`, mark: 'read' } });

/** Absolute minimum, optimal minimum and maximum, absolute maximum, as printed. None is printed for medlar; blackberry and its crosses have that of their genus. */
export const PH_RANGES: readonly Species[] = [
  ecocrop('apple', 'malus-domestica', ['apple', 'cooking apple', 'cider apple'], 4.5, 6, 7, 8),
  ecocrop('other', 'malus-sylvestris', ['crab apple'], 4.5, 6.2, 7, 8.2),
  ecocrop('pear', 'pyrus-communis', ['pear'], 4.5, 5.5, 6.5, 8.3),
  ecocrop('asian-pear', 'pyrus-pyrifolia', ['asian pear', 'nashi'], 5, 5.5, 6.5, 7),
  ecocrop('quince', 'cydonia-oblonga', ['quince'], 5.5, 6, 6.5, 7),
  ecocrop('loquat', 'eriobotrya-japonica', ['loquat'], 4.5, 5.5, 6.5, 8),
  ecocrop('peach', 'prunus-persica', ['peach', 'nectarine'], 4.5, 5.5, 6.3, 7.5),
  ecocrop('plum', 'prunus-domestica', ['plum', 'gage', 'damson', 'prune', 'mirabelle'], 4.5, 5.5, 6.1, 7.4),
  ecocrop('plum', 'prunus-salicina', ['japanese plum'], 4.5, 5.5, 6.5, 7.5),
  ecocrop('apricot', 'prunus-armeniaca', ['apricot'], 5, 6.5, 7, 8),
  ecocrop('apricot', 'prunus-mume', ['japanese apricot'], 4.5, 5, 6.5, 7),
  ecocrop('cherry', 'prunus-avium', ['cherry', 'sweet cherry'], 4.5, 5.5, 6.5, 7),
  ecocrop('cherry', 'prunus-cerasus', ['tart cherry', 'sour cherry'], 4.5, 6, 6.5, 7.5),
  ecocrop('almond', 'prunus-amygdalus', ['almond'], 5.5, 6.5, 7, 8),
  ecocrop('fig', 'ficus-carica', ['fig'], 4.3, 6, 7, 8.6),
  ecocrop('mulberry', 'morus-alba', ['mulberry', 'white mulberry'], 4.3, 5.5, 7.5, 8.3),
  ecocrop('mulberry', 'morus-nigra', ['black mulberry'], 4.3, 5.5, 7, 8.3),
  ecocrop('mulberry', 'morus-rubra', ['red mulberry'], 5, 5.5, 7, 8),
  ecocrop('persimmon', 'diospyros-kaki', ['persimmon', 'kaki'], 5, 5.5, 6.5, 8.3),
  ecocrop('persimmon', 'diospyros-virginiana', ['american persimmon'], 5.8, 6.5, 7, 8),
  ecocrop('pomegranate', 'punica-granatum', ['pomegranate'], 5.8, 6.5, 7.5, 8.5),
  ecocrop('olive', 'olea-europaea', ['olive'], 5.3, 6, 7, 8.5),
  // The species entry is tighter than each of its races; the two that gardens grow most agree.
  ecocrop('avocado', 'persea-americana', ['avocado (species)'], 4.5, 5, 5.8, 7),
  ecocrop('avocado', 'persea-americana-mexican', ['avocado', 'mexican avocado'], 4.3, 5, 7, 8.3),
  ecocrop('avocado', 'persea-americana-guatemalan', ['guatemalan avocado'], 4.5, 5, 7, 8.3),
  ecocrop('avocado', 'persea-americana-west-indian', ['west indian avocado'], 4.5, 5, 7.5, 8.3),
  ecocrop('citrus', 'citrus', ['citrus'], 4, 5, 6.5, 8),
  ecocrop('citrus', 'citrus-sinensis', ['orange'], 4, 5, 6, 8.3),
  ecocrop('citrus', 'citrus-reticulata', ['mandarin', 'tangerine', 'clementine'], 5.5, 6, 6.8, 8.3),
  ecocrop('citrus', 'citrus-unshiu', ['satsuma'], 5, 5.5, 6.5, 8),
  ecocrop('citrus', 'citrus-limon', ['lemon'], 5.5, 6.5, 7, 8),
  ecocrop('citrus', 'citrus-aurantifolia', ['key lime'], 4.8, 6, 6.5, 8.3),
  // The wider of the two limes, and the commoner in gardens.
  ecocrop('citrus', 'citrus-latifolia', ['lime', 'persian lime'], 5, 5.5, 6.5, 7.5),
  ecocrop('citrus', 'citrus-paradisi', ['grapefruit'], 6, 6.5, 7.3, 8.3),
  ecocrop('citrus', 'citrus-grandis', ['pummelo'], 4.5, 5.5, 7, 8),
  ecocrop('citrus', 'citrus-aurantium', ['sour orange'], 5.5, 6, 7, 8.3),
  ecocrop('citrus', 'citrus-madurensis', ['calamondin'], 5, 5.5, 7, 7.5),
  ecocrop('citrus', 'fortunella-margarita', ['kumquat'], 6, 6.5, 7.5, 8),
  ecocrop('walnut', 'juglans-regia', ['walnut'], 4.5, 5.5, 6.5, 8.3),
  ecocrop('walnut', 'juglans-nigra', ['black walnut'], 5.8, 6.5, 7.5, 8.3),
  ecocrop('pecan', 'carya-illinoensis', ['pecan'], 5, 5.5, 7, 7.5),
  ecocrop('hazelnut', 'corylus-avellana', ['hazelnut', 'filbert', 'cobnut', 'hazel'], 5.5, 6, 6.5, 7.5),
  ecocrop('chestnut', 'castanea-sativa', ['chestnut'], 4, 5, 6, 7),
  ecocrop('chestnut', 'castanea-mollissima', ['chinese chestnut'], 5, 5.5, 6.5, 7.5),
  ecocrop('other', 'pistacia-vera', ['pistachio'], 6, 7, 8, 8.5),
  ecocrop('other', 'macadamia-integrifolia', ['macadamia'], 4.5, 5, 6, 7),
  // None is printed for rabbiteye.
  ecocrop('blueberry', 'vaccinium-corymbosum', ['blueberry', 'highbush blueberry', 'rabbiteye blueberry'], 3, 4, 5, 5.5),
  ecocrop('blueberry', 'vaccinium-angustifolium', ['lowbush blueberry'], 2.8, 4.2, 5.2, 6.6),
  ecocrop('other', 'vaccinium-macrocarpon', ['cranberry'], 4.5, 5, 5.5, 6),
  ecocrop('other', 'vaccinium-myrtillus', ['bilberry'], 4, 4.5, 6, 7.5),
  ecocrop('grape', 'vitis-vinifera', ['grape', 'grapevine', 'vine'], 4.5, 5.5, 7.5, 8.5),
  ecocrop('grape', 'vitis-labrusca', ['fox grape'], 4.9, 6, 6.5, 7.5),
  ecocrop('grape', 'vitis-rotundifolia', ['muscadine', 'muscadine grape'], 5.8, 6, 7, 8),
  ecocrop('raspberry', 'rubus-idaeus', ['raspberry'], 4.5, 5.5, 6.5, 7.8),
  ecocrop('raspberry', 'rubus-occidentalis', ['black raspberry'], 5.5, 6, 7, 7.8),
  ecocrop('blackberry', 'rubus', ['blackberry', 'loganberry', 'tayberry', 'boysenberry', 'dewberry'], 4.5, 5.5, 6.5, 8),
  ecocrop('strawberry', 'fragaria-x-ananassa', ['strawberry'], 4.5, 6, 6.8, 8.2),
  ecocrop('currant', 'ribes-nigrum', ['blackcurrant', 'black currant'], 6, 6.5, 7.5, 8),
  ecocrop('currant', 'ribes-rubrum', ['currant', 'redcurrant', 'red currant', 'whitecurrant', 'white currant'], 6, 6.5, 7.5, 8),
  ecocrop('gooseberry', 'ribes-uva-crispa', ['gooseberry'], 5, 6, 7, 7.5),
  ecocrop('gooseberry', 'ribes-hirtellum', ['american gooseberry'], 5.5, 6.5, 7.5, 8),
  ecocrop('kiwifruit', 'actinidia-chinensis', ['kiwifruit', 'kiwi'], 5.5, 6, 7, 7.5),
  ecocrop('kiwifruit', 'actinidia-arguta', ['hardy kiwi'], 4.5, 5, 6.5, 7),
  ecocrop('elderberry', 'sambucus-nigra', ['elderberry'], 5.5, 6, 7.5, 8),
  ecocrop('elderberry', 'sambucus-canadensis', ['american elderberry'], 5.3, 6, 6.5, 7.3),
  ecocrop('other', 'hippophae-rhamnoides', ['sea buckthorn'], 6, 6.5, 7.5, 8),
  ecocrop('other', 'asimina-triloba', ['pawpaw'], 5.2, 6, 7.2, 7.5),
  ecocrop('other', 'feijoa-sellowiana', ['feijoa'], 5, 5.5, 7, 8.3),
  ecocrop('guava', 'psidium-guajava', ['guava'], 4, 5.5, 7.5, 8.5),
  ecocrop('other', 'passiflora-edulis', ['passionfruit'], 5.5, 6, 8, 8.5),
  ecocrop('other', 'annona-cherimola', ['cherimoya'], 5.5, 6, 7.5, 8),
  ecocrop('mango', 'mangifera-indica', ['mango'], 4.3, 5.5, 7.5, 8.5),
  ecocrop('other', 'litchi-chinensis', ['litchi'], 5, 5.5, 6.5, 8.5),
  ecocrop('other', 'carica-papaya', ['papaya'], 4.5, 5.5, 7, 8),
  ecocrop('other', 'phoenix-dactylifera', ['date palm'], 6, 6.5, 8, 8.5),
];

/** Washington's range for tree fruit in general serves where it is wider than EcoCrop's. */
export const TREE_FRUIT_PH = { low: 6.0, high: 7.5, cite: { source: 'washington-em119e', at: 'soil pH', mark: 'read' } satisfies Cite } as const;

/** Blueberry: acted on only above 5.3, and then to the top of EcoCrop's best range. */
export const BLUEBERRY_PH = { low: 4.0, high: 5.3, goal: 5.0, goalCite: { source: 'fao-ecocrop', at: 'vaccinium-corymbosum: PHOPMX', mark: 'read' } satisfies Cite, cite: { source: 'extension-blueberry-ph', at: 'soil pH 4.0 to 5.3', mark: 'read' } satisfies Cite } as const;

/** Under this a soil has been given too much sulphur, or is no soil to grow in. */
export const OVER_ACID = { value: 4.0, unit: 'pH', cite: BLUEBERRY_PH.cite } as const;

/**
 * What is printed for a place's own growers. `preferred` may lead in its place where it is a range; `lime-below` holds lime back above it;
 * `tolerated` is what they live with. A single number is printed where low and high are the same; a page of no publisher is `weak`.
 */
export type Statement = { readonly id: string; readonly crops: readonly Crop[]; readonly kinds?: readonly string[]; readonly region: string; readonly kind: 'preferred' | 'lime-below' | 'tolerated'; readonly low?: number; readonly high?: number; readonly label?: 'weak'; readonly cite: Cite };

/** What pages mean by fruit trees, most fruit or fruit generally. */
const TREES = TREE_FRUIT;
const said = (region: string, crops: readonly Crop[], kind: Statement['kind'], [low, high]: readonly [number | null, number | null], source: string, at: string, more: { readonly label?: 'weak'; readonly kinds?: readonly string[]; readonly mark?: Mark } = {}): Statement => ({
  id: `${source}.${kind}`, crops, region, kind, ...(low === null ? {} : { low }), ...(high === null ? {} : { high }), ...(more.label ? { label: more.label } : {}), ...(more.kinds ? { kinds: more.kinds } : {}), cite: { source, at, mark: more.mark ?? 'read' },
});
const weak = { label: 'weak' } as const;
const memory = { mark: 'memory' } as const;

export const PH_STATEMENTS: readonly Statement[] = [
  said('US-WA', TREES, 'preferred', [6, 7.5], 'washington-em119e', 'soil pH, desired'),
  said('US-WA', TREES, 'tolerated', [5, 8], 'washington-em119e', 'soil pH, low and excessive'),
  said('US-WA', TREES, 'preferred', [6.2, 7.2], 'washington-chelan-soil', 'tree fruit replant sites'),
  said('US-WA', TREES, 'lime-below', [6.2, null], 'washington-chelan-soil', 'replant sites, lime if below'),
  said('US-TN', TREES, 'preferred', [6, 6.5], 'ut-sp307a', 'soil pH for fruit trees, the top 8 in'),
  said('US-TN', TREES, 'preferred', [6, 6.5], 'tennessee-fruit-column', 'west Tennessee, fruit trees', weak),
  said('US-NE', TREES, 'preferred', [5.6, 7], 'nebraska-fruit-column', 'apples and pears'),
  said('US-FL', ['peach'], 'preferred', [6, 6.5], 'florida-nassau-fruit', 'peach and fruit generally'),
  said('US-FL', TREES, 'preferred', [5.8, 7], 'florida-hs1234', 'most fruit crops, mineral soil'),
  said('US-CA', ['apple'], 'preferred', [6.5, 7], 'edible-trees-handout', 'apple', weak),
  said('US-CA', ['cherry'], 'preferred', [5.5, 7.5], 'edible-trees-handout', 'cherry', weak),
  said('US-CA', ['fig'], 'preferred', [6, 7.8], 'edible-trees-handout', 'fig', weak),
  said('US-CA', ['citrus'], 'preferred', [6, 6.5], 'edible-trees-handout', 'citrus', weak),
  said('US-GA', ['fig'], 'preferred', [5.5, 6.5], 'georgia-fig-column', 'figs in Georgia'),
  said('US-GA', ['fig'], 'lime-below', [5.5, null], 'georgia-fig-column', 'dolomitic lime if lower'),
  said('US-FL', ['citrus'], 'preferred', [6, 6.5], 'florida-sl253', 'chapter 2, trees with greening disease'),
  said('US-FL', ['citrus'], 'preferred', [6, 6], 'florida-hs1234', 'citrus on mineral soil'),
  said('US-FL', ['citrus'], 'lime-below', [5.5, null], 'florida-hs1234', 'citrus, lime below'),
  said('US-FL', ['citrus'], 'tolerated', [5, 8.4], 'florida-hs1234', 'citrus groves run so'),
  said('US-FL', ['grape'], 'preferred', [6, 6], 'florida-hs1234', 'muscadine', { kinds: ['muscadine', 'muscadine grape'] }),
  said('US', ['grape'], 'tolerated', [5.5, 8], 'cornell-grape-ph', 'trouble below and above'),
  said('US', ['other'], 'preferred', [4, 5.5], 'purdue-cranberry', 'cranberry', { kinds: ['cranberry'] }),
  said('US-OR', ['hazelnut'], 'lime-below', [5.6, null], 'osu-hazelnut-em8786', 'Willamette Valley, lime when below', memory),
  said('US-OR', ['raspberry', 'blackberry'], 'preferred', [5.6, 6.5], 'oregon-em8903', 'caneberries', memory),
  said('US-OR', ['raspberry', 'blackberry'], 'lime-below', [5.6, null], 'oregon-em8903', 'caneberries, lime when below', memory),
  said('US-OH', ['strawberry'], 'preferred', [5.8, 6.5], 'midwest-small-fruit', 'strawberry', memory),
  said('US-OH', ['raspberry', 'blackberry'], 'preferred', [6, 6.8], 'midwest-small-fruit', 'brambles', memory),
  said('US-OH', ['grape'], 'preferred', [5.5, 6.5], 'midwest-small-fruit', 'grape', memory),
  said('US-GA', ['pecan'], 'preferred', [6, 6.5], 'georgia-pecan-guide', 'southeast', memory),
  said('US-NM', ['pecan'], 'tolerated', [7.5, 8.2], 'new-mexico-pecan-guide', 'desert southwest, with zinc sprays', memory),
  said('US-CA', ['avocado'], 'preferred', [5, 7], 'uc-avocado-ph', 'yellow leaves above about 7', memory),
  said('GB', TREES, 'preferred', [6, 6.5], 'uk-rb209', 'section 7, mineral soils, top 15 cm before planting', memory),
  said('world', ['kiwifruit'], 'preferred', [5, 6.5], 'kiwifruit-soil-page', 'the soil should be acidic', weak),
  said('US-TN', ['blueberry'], 'preferred', [4.8, 5.5], 'tennessee-blueberry-ph', 'pH 4.8 to 5.5, keep near 5.0'),
  said('CA-ON', ['blueberry'], 'preferred', [4.2, 5], 'ontario-blueberry-ph', 'highbush'),
  said('US-FL', ['blueberry'], 'preferred', [4.5, 5.5], 'florida-hs1234', 'blueberry'),
  said('US-GA', ['blueberry'], 'preferred', [4, 5.5], 'georgia-c1105', 'blueberry'),
  said('US-CA', ['blueberry'], 'preferred', [4.5, 5], 'california-blueberry-slides', 'blueberry'),
  said('US-CA', ['blueberry'], 'tolerated', [3.8, 5.5], 'california-blueberry-slides', 'where organic matter is high'),
  said('US-NC', ['blueberry'], 'preferred', [5, 5], 'north-carolina-acidifiers', 'target on mineral soil'),
  said('US-WI', ['blueberry'], 'tolerated', [null, 5.5], 'wisconsin-xht1151', 'blueberry, 5.5 or less'),
  said('US', ['blueberry'], 'preferred', [4.8, 5.5], 'organic-blueberry-guide', 'trouble with manganese possible below 4.8', weak),
  said('US-UT', ['blueberry'], 'preferred', [4.5, 4.5], 'utah-blueberry-sheet', 'wanted'),
  said('US-UT', ['blueberry'], 'tolerated', [null, 5.5], 'utah-blueberry-sheet', 'tolerated'),
  said('US-OR', ['blueberry'], 'preferred', [4.2, 5.5], 'oregon-blueberry-page', 'blueberry', weak),
  said('US-MN', ['blueberry'], 'preferred', [4, 5], 'minnesota-blueberry-column', 'blueberry', weak),
  said('US-TN', ['blueberry'], 'preferred', [5, 5.5], 'tennessee-fruit-column', 'west Tennessee, blueberry', weak),
  said('US-TN', ['blueberry'], 'preferred', [4.8, 5.2], 'tennessee-home-blueberry', 'home garden', weak),
  said('CA-BC', ['blueberry'], 'preferred', [4.5, 5.5], 'british-columbia-supplier', 'blueberry', weak),
  said('US', ['blueberry'], 'tolerated', [null, 5.3], 'southern-blueberry-page', 'rabbiteye, act above', { kinds: ['rabbiteye blueberry'], label: 'weak' }),
  said('US', ['blueberry'], 'tolerated', [null, 5], 'southern-blueberry-page', 'highbush, act above', { kinds: ['blueberry', 'highbush blueberry'], label: 'weak' }),
];

/** Lime aims half a unit above the low edge, never above the middle, nor over 6.5 where that suits: above it manganese, zinc, copper and iron get scarce (Alabama, `alabama-texture`). */
export const LIME_GOAL = { above: 0.5, most: 6.5, unit: 'pH', cite: { source: 'medlar', at: 'lime-goal', mark: 'judgement' } satisfies Cite } as const;
