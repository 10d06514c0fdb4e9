/** Publications on when to feed that no other table names. */
import type { Source } from './source.ts';

export const SOURCES_TIMING = {
  'colorado-7612': { title: 'Fertilizing Fruit Trees, 7.612', publisher: 'Colorado State University Extension', year: 2014, url: 'http://extension.colostate.edu/topic-areas/yard-garden/fertilizing-fruit-trees-7-612/' },
  'georgia-news-copy': { title: 'News item on feeding fruit trees', publisher: 'University of Georgia, in a copy at another address', note: 'weak page' },
  'kansas-video': { title: 'Fertilizing Fruit Trees, text of a video', publisher: 'Kansas State University', url: 'http://www.ksre.ksu.edu/News/p.aspx?tabid=36&itemID=6747' },
  'sandiego-mg-todo': { title: 'Garden tasks, item 141', publisher: 'Master Gardener Association of San Diego County', url: 'http://mastergardenerssandiego.org/resources/todo/item-wp.php?ID=141' },
  'illinois-trees': { title: 'Fertilizing Trees and Shrubs', publisher: 'University of Illinois Extension', year: 2016, url: 'https://extension.illinois.edu/blogs/timeline-through-landscape-design-archives/2016-08-15-fertilizing-trees-and-shrubs-it-can' },
  'warragul-club': { title: 'Fruit trees in the home garden: spring', publisher: 'Warragul Garden Club, Victoria', url: 'https://warragulgardenclub.org/fruit-trees-in-the-home-garden-spring', note: 'weak page' },
  'texas-copy': { title: 'Fertilizing and pruning', publisher: 'a private page that reads like Texas A&M', url: 'http://jpbarnett.com/FertilizePrune.html', note: 'weak page' },
  'uc-peach-3454': { title: 'Fertilizer Applications, Peach Pest Management Guidelines, 3454', publisher: 'University of California Agriculture and Natural Resources', year: 2010, url: 'http://ipm.ucanr.edu/PMG/r602902211.html' },
  'peach-notes': { title: 'Peach tree care', publisher: 'a private page that reads like the University of Georgia', year: 2008, url: 'http://pohick.blogspot.com/2008/06/belle-of-georgia-semi-dwarf-peach-tree.html', note: 'weak page' },
  'good-fruit-cherry': { title: 'Good to know: nitrogen timing of cherry', publisher: 'Good Fruit Grower', url: 'http://www.goodfruit.com/good-to-know-lang/' },
  treeworks: { title: 'Fertiliser', publisher: 'Treeworks, Australia', url: 'https://treeworks.net.au/fertiliser', note: 'weak page' },
  'arizona-citrus-copy': { title: 'Feeding citrus in the low desert', publisher: 'a private page', url: 'https://goreading.org/articles_68ohga.html', note: 'weak page' },
  'burkes-backyard': { title: 'Don\'s tips: citrus', publisher: 'Burke\'s Backyard, Australia', url: 'https://www.burkesbackyard.com.au/blogs/dons-tips/dons-tips-citrus/', note: 'weak page' },
  'gardenguides-avocado': { title: 'How to care for avocado trees', publisher: 'Garden Guides', url: 'http://www.gardenguides.com/91915-care-avocado-trees.html', note: 'weak page' },
  'oregon-well-water': { title: 'Groundwater Friendly Gardening', publisher: 'Oregon State University', url: 'https://wellwater.oregonstate.edu/well-water/farm-and-garden/groundwater-friendly-gardening' },
} as const satisfies Record<string, Source>;
