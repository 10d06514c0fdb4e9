// FAO EcoCrop, columns PHMIN, PHOPMN, PHOPMX, PHMAX, read in a full copy of the database. Typed from research
// notes of that copy, species by species, and what growers who write a word get of it.
import { expect, test } from 'vitest';
import { suitsOf } from '../../../src/ph/suits.ts';
import { CROP_WORDS } from '../../../src/tables/crops.ts';
import { PH_RANGES } from '../../../src/tables/ph-ranges.ts';
import { published } from '../helpers.ts';

const source = { id: 'fao-ecocrop', title: 'EcoCrop', publisher: 'Food and Agriculture Organization of the United Nations', url: 'https://gaez.fao.org/pages/ecocrop', mark: 'read' } as const;

const table: readonly (readonly [species: string, min: number, low: number, high: number, max: number])[] = [
  ['Malus domestica', 4.5, 6, 7, 8],
  ['Malus sylvestris', 4.5, 6.2, 7, 8.2],
  ['Pyrus communis', 4.5, 5.5, 6.5, 8.3],
  ['Pyrus pyrifolia', 5, 5.5, 6.5, 7],
  ['Cydonia oblonga', 5.5, 6, 6.5, 7],
  ['Eriobotrya japonica', 4.5, 5.5, 6.5, 8],
  ['Prunus persica', 4.5, 5.5, 6.3, 7.5],
  ['Prunus domestica', 4.5, 5.5, 6.1, 7.4],
  ['Prunus salicina', 4.5, 5.5, 6.5, 7.5],
  ['Prunus armeniaca', 5, 6.5, 7, 8],
  ['Prunus mume', 4.5, 5, 6.5, 7],
  ['Prunus avium', 4.5, 5.5, 6.5, 7],
  ['Prunus cerasus', 4.5, 6, 6.5, 7.5],
  ['Prunus amygdalus', 5.5, 6.5, 7, 8],
  ['Ficus carica', 4.3, 6, 7, 8.6],
  ['Morus alba', 4.3, 5.5, 7.5, 8.3],
  ['Morus nigra', 4.3, 5.5, 7, 8.3],
  ['Morus rubra', 5, 5.5, 7, 8],
  ['Diospyros kaki', 5, 5.5, 6.5, 8.3],
  ['Diospyros virginiana', 5.8, 6.5, 7, 8],
  ['Punica granatum', 5.8, 6.5, 7.5, 8.5],
  ['Olea europaea', 5.3, 6, 7, 8.5],
  ['Persea americana', 4.5, 5, 5.8, 7],
  ['Persea americana ssp. mexican', 4.3, 5, 7, 8.3],
  ['Persea americana ssp. guatemalan', 4.5, 5, 7, 8.3],
  ['Persea americana ssp. west indian', 4.5, 5, 7.5, 8.3],
  ['Citrus sp.', 4, 5, 6.5, 8],
  ['Citrus sinensis', 4, 5, 6, 8.3],
  ['Citrus reticulata', 5.5, 6, 6.8, 8.3],
  ['Citrus unshiu', 5, 5.5, 6.5, 8],
  ['Citrus limon', 5.5, 6.5, 7, 8],
  ['Citrus aurantifolia', 4.8, 6, 6.5, 8.3],
  ['Citrus latifolia', 5, 5.5, 6.5, 7.5],
  ['Citrus paradisi', 6, 6.5, 7.3, 8.3],
  ['Citrus grandis', 4.5, 5.5, 7, 8],
  ['Citrus aurantium', 5.5, 6, 7, 8.3],
  ['Citrus madurensis', 5, 5.5, 7, 7.5],
  ['Fortunella margarita', 6, 6.5, 7.5, 8],
  ['Juglans regia', 4.5, 5.5, 6.5, 8.3],
  ['Juglans nigra', 5.8, 6.5, 7.5, 8.3],
  ['Carya illinoensis', 5, 5.5, 7, 7.5],
  ['Corylus avellana', 5.5, 6, 6.5, 7.5],
  ['Castanea sativa', 4, 5, 6, 7],
  ['Castanea mollissima', 5, 5.5, 6.5, 7.5],
  ['Pistacia vera', 6, 7, 8, 8.5],
  ['Macadamia integrifolia', 4.5, 5, 6, 7],
  ['Vaccinium corymbosum', 3, 4, 5, 5.5],
  ['Vaccinium angustifolium', 2.8, 4.2, 5.2, 6.6],
  ['Vaccinium macrocarpon', 4.5, 5, 5.5, 6],
  ['Vaccinium myrtillus', 4, 4.5, 6, 7.5],
  ['Vitis vinifera', 4.5, 5.5, 7.5, 8.5],
  ['Vitis labrusca', 4.9, 6, 6.5, 7.5],
  ['Vitis rotundifolia', 5.8, 6, 7, 8],
  ['Rubus idaeus ssp. idaeus', 4.5, 5.5, 6.5, 7.8],
  ['Rubus occidentalis', 5.5, 6, 7, 7.8],
  ['Rubus sp.', 4.5, 5.5, 6.5, 8],
  ['Fragaria x ananassa', 4.5, 6, 6.8, 8.2],
  ['Ribes nigrum', 6, 6.5, 7.5, 8],
  ['Ribes rubrum', 6, 6.5, 7.5, 8],
  ['Ribes uva-crispa', 5, 6, 7, 7.5],
  ['Ribes hirtellum', 5.5, 6.5, 7.5, 8],
  ['Actinidia chinensis', 5.5, 6, 7, 7.5],
  ['Actinidia arguta', 4.5, 5, 6.5, 7],
  ['Sambucus nigra', 5.5, 6, 7.5, 8],
  ['Sambucus canadensis', 5.3, 6, 6.5, 7.3],
  ['Hippophae rhamnoides', 6, 6.5, 7.5, 8],
  ['Asimina triloba', 5.2, 6, 7.2, 7.5],
  ['Feijoa sellowiana', 5, 5.5, 7, 8.3],
  ['Psidium guajava', 4, 5.5, 7.5, 8.5],
  ['Passiflora edulis', 5.5, 6, 8, 8.5],
  ['Annona cherimola', 5.5, 6, 7.5, 8],
  ['Mangifera indica', 4.3, 5.5, 7.5, 8.5],
  ['Litchi chinensis', 5, 5.5, 6.5, 8.5],
  ['Carica papaya', 4.5, 5.5, 7, 8],
  ['Phoenix dactylifera', 6, 6.5, 8, 8.5],
];

const slug = (species: string): string => species.toLowerCase().replace('rubus idaeus ssp. idaeus', 'rubus idaeus').replace(/ sp\.$/, '').replace('ssp. ', '').replace(/ /g, '-');

/** The species behind a grower's word, by name; the widest of citrus limes and of avocado races behind the plain word. */
const words: readonly (readonly [word: string, species: string])[] = [
  ['apple', 'Malus domestica'], ['crab apple', 'Malus sylvestris'], ['nashi', 'Pyrus pyrifolia'], ['plum', 'Prunus domestica'], ['damson', 'Prunus domestica'], ['cherry', 'Prunus avium'], ['sour cherry', 'Prunus cerasus'], ['tart cherry', 'Prunus cerasus'],
  ['lemon', 'Citrus limon'], ['satsuma', 'Citrus unshiu'], ['clementine', 'Citrus reticulata'], ['orange', 'Citrus sinensis'], ['grapefruit', 'Citrus paradisi'], ['kumquat', 'Fortunella margarita'], ['muscadine', 'Vitis rotundifolia'], ['vine', 'Vitis vinifera'],
  // Rubus fruticosus has empty fields; the genus has figures.
  ['blackberry', 'Rubus sp.'], ['loganberry', 'Rubus sp.'], ['tayberry', 'Rubus sp.'], ['boysenberry', 'Rubus sp.'],
  ['black currant', 'Ribes nigrum'], ['red currant', 'Ribes rubrum'], ['pawpaw', 'Asimina triloba'], ['feijoa', 'Feijoa sellowiana'], ['sea buckthorn', 'Hippophae rhamnoides'], ['nectarine', 'Prunus persica'], ['kaki', 'Diospyros kaki'], ['cobnut', 'Corylus avellana'],
];

published(source, () => {
  test('every species as printed, and no other', () => {
    expect(PH_RANGES.map((r) => [r.id.replace('ecocrop.', ''), r.absolute[0], ...r.optimum, r.absolute[1]]).sort()).toEqual(table.map(([species, min, low, high, max]) => [slug(species), min, low, high, max]).sort());
  });

  test.each(words)('%s is %s', (word, species) => {
    const [, min, low, high, max] = table.find(([s]) => s === species)!;
    const suits = suitsOf({ crop: CROP_WORDS[word] ?? 'other', word, region: null })!;
    expect(suits.ranges.filter(([edge]) => edge.cite.source === source.id).map(([a, b]) => [a.value, b.value])).toEqual([[low, high]]);
    expect(suits.absolute!.map((f) => f.value)).toEqual([min, max]);
  });

  test('nothing for what it holds no figures of', () => {
    for (const word of ['medlar', 'jostaberry', 'honeyberry']) expect(suitsOf({ crop: CROP_WORDS[word] ?? 'other', word, region: null }), word).toBeNull();
  });

  test('no word is served by two species, none is left out', () => {
    const served = PH_RANGES.flatMap((r) => r.kinds);
    expect(served.length).toBe(new Set(served).size);
    const without = Object.keys(CROP_WORDS).filter((w) => !served.includes(w));
    expect(without.sort()).toEqual(['medlar']);
  });
});
