/** The publications of the southern and eastern United States that the rules beside this file are taken from. */
import type { Source } from './source.ts';

export const SOURCES_US_SOUTH_EAST = {
  'clemson-pecan-blog': { title: 'February is Pecan Fertilization Time', publisher: 'Clemson Cooperative Extension', url: 'https://blogs.clemson.edu/upstate/february-is-pecan-fertilization-time/' },
  'ut-pecan-nuts': { title: 'Pecans and Nut Trees', publisher: 'University of Tennessee Extension', url: 'https://utcrops.com/soil/commercial-fruit-and-nut-production/pecans-and-nut-trees/' },
  'ut-grape-commercial': { title: 'Grapes', publisher: 'University of Tennessee Extension', url: 'https://utcrops.com/soil/commercial-fruit-and-nut-production/grapes/' },
  'ut-sp307a': { title: 'Fertilizing and Liming Fruit Trees, SP307-A', publisher: 'The University of Tennessee Agricultural Extension Service', url: 'https://extension.tennessee.edu/publications/Documents/SP307-A.pdf', note: 'read in a copy' },
  'uga-colquitt-muscadine': { title: 'How do I fertilize my muscadines?', publisher: 'University of Georgia Cooperative Extension, Colquitt County', year: 2021, url: 'https://site.extension.uga.edu/colquittag/2021/02/how-do-i-fertilize-my-muscadines/' },
  'ga-code-103-muscadine': { title: 'Muscadine - Home Garden (Code #103)', publisher: 'University of Georgia Agricultural and Environmental Services Laboratories', url: 'http://aesl.ces.uga.edu/scripts/crop.prg?103' },
  'ga-code-110-strawberry': { title: 'Strawberries - Home Garden (Code #110)', publisher: 'University of Georgia Agricultural and Environmental Services Laboratories', url: 'http://aesl.ces.uga.edu/scripts/crop.prg?110' },
  'ga-code-128-muscadine': { title: 'Grapes (muscadine) (Code #128)', publisher: 'University of Georgia Agricultural and Environmental Services Laboratories', url: 'http://aesl.ces.uga.edu/scripts/crop.prg?128' },
  'fl-nassau-pecan': { title: 'Q: When do I fertilize my adult pecan trees and how much?', publisher: 'UF/IFAS Extension Nassau County', year: 2017, url: 'http://blogs.ifas.ufl.edu/nassauco/2017/06/18/q-fertilize-adult-pecan-trees-much/' },
  'fl-nassau-persimmon': { title: 'Q: When do I fertilize my persimmons?', publisher: 'UF/IFAS Extension Nassau County', year: 2017, url: 'https://blogs.ifas.ufl.edu/nassauco/2017/06/18/q-fertilize-persimmons/' },
  'fl-baker-blueberry': { title: 'Fruit and Nut Crops: Blueberry', publisher: 'UF/IFAS Extension Baker County', url: 'http://baker.ifas.ufl.edu/Horticulture/Blueberry.html' },
  'fl-baker-calendar': { title: 'Month by Month Calendar: Fruits & Nuts', publisher: 'UF/IFAS Extension Baker County', note: 'read in a copy' },
  'ms-garden-tips-2002': { title: 'Fertilizing Fruit Trees, Garden Tips Newsletter', publisher: 'Mississippi State University Extension Service', year: 2002, url: 'http://msucares.com/lawn/garden/tips/02/020211.html' },
  'lsu-citrus-home': { title: 'Horticulture Hints', publisher: 'LSU AgCenter', year: 2022, url: 'https://lsuagcenter.com/articles/page1649791105807' },
  'lsu-home-fruit-nut': { title: 'Pruning and Fertilizing Fruit and Nut Trees', publisher: 'LSU AgCenter', url: 'https://www.lsuagcenter.com/topics/lawn_garden/ornamentals/trees_shrubs/pruning-and-fertilizing-fruit-and-nut-trees' },
  'lsu-sthelena-pecan': { title: 'Pecan Production', publisher: 'LSU AgCenter, St. Helena Parish', url: 'https://lsuagcenter.com/portals/our_offices/parishes/st%20helena/news/pecan-production' },
  'lsu-f520-blueberry': { title: 'Blueberries (Rabbiteye), recommendation sheet F-520', publisher: 'LSU AgCenter Soil Testing and Plant Analysis Lab', url: 'http://www.stpal.lsu.edu/RecSheets/Mod%20Rec%20Sheets/F-520.htm' },
  'nc-poling-strawberry': { title: 'Home strawberry fertilization', publisher: 'E. Barclay Poling, NC State', year: 2001, note: 'read in a copy' },
  'va-soil-test-note-22': { title: 'Soil Test Note No. 22: Small Fruits for Home Use, SPES-363NP', publisher: 'Virginia Cooperative Extension', url: 'https://pubs.ext.vt.edu/content/pubs_ext_vt_edu/en/SPES/SPES-363/SPES-363.html' },
  'dc-wapo-1978': { title: 'Trees: Fertilization and Winterizing Plants', publisher: 'Washington Post', year: 1978, url: 'https://www.washingtonpost.com/archive/lifestyle/1978/11/26/trees-fertilization-and-winterizing-plants/fc54eb2d-c16b-44d0-86d1-36a0038581d3/', note: 'weak page' },
  'nj-small-fruit': { title: 'Growing Small Fruit in the Home Garden', publisher: 'Rutgers Cooperative Extension', note: 'read in a copy' },
  'eorg-blueberry': { title: 'When and with what do I fertilize blueberries?', publisher: 'eXtension, the American cooperative extension services', url: 'https://blueberries.extension.org/when-and-with-what-do-i-fertilize-blueberries/' },
} as const satisfies Record<string, Source>;
