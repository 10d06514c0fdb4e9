/**
 * The publications that figures are taken from. Addresses are the publishers' own;
 * where only a copy was read, the figure's own mark and the `note` say so.
 */
export type Source = {
  readonly title: string;
  readonly publisher: string;
  readonly year?: number;
  readonly url?: string;
  readonly note?: 'read in a copy' | 'weak page';
};

const SOURCES = {
  grower: { title: 'What you wrote in your own folder', publisher: 'you' },
  lab: { title: 'Your soil report', publisher: 'your laboratory' },
  definition: { title: 'A definition or plain arithmetic', publisher: 'international standards' },
  medlar: { title: 'Our own judgement, with its reason', publisher: 'Medlar' },

  'michigan-garden-fruit': { title: 'Spring fertilization of garden fruits', publisher: 'Michigan State University Extension', url: 'https://www.canr.msu.edu/news/spring_fertilization_of_garden_fruits' },
  'michigan-leaf': { title: 'Leaf Analysis Interpretation: Apples and Pears', publisher: 'Michigan State University', note: 'read in a copy' },
  'penn-stone': { title: 'Stone Fruit: Nutritional Requirements, Fruit Production for the Home Gardener', publisher: 'Penn State Extension', url: 'http://extension.psu.edu/plants/gardening/fphg/stone/nutritional-requirements' },
  'penn-blueberry': { title: 'Blueberries: Nutritional Requirements, Fruit Production for the Home Gardener', publisher: 'Penn State Extension', url: 'http://extension.psu.edu/plants/gardening/fphg/blueberries/nutritional-requirements' },
  'maryland-stone': { title: 'Care, fertilizing, fruit thinning: stone fruit', publisher: 'University of Maryland Extension', year: 2020, url: 'https://extension.umd.edu/hgic/topics/care-fertilizing-fruit-thinning-harvesting-spray-schedule-stone-fruit' },
  'maryland-pear': { title: 'Pears: care, fertilizing, fruit thinning', publisher: 'University of Maryland Extension', year: 2017, url: 'http://extension.umd.edu/growit/fruits/pears-care-fertilizing-fruit-thinning-harvesting-spray-schedule' },
  'maine-fertilization': { title: 'Growing Fruit Trees in Maine: Fertilization', publisher: 'University of Maine Cooperative Extension', url: 'https://extension.umaine.edu/fruit/growing-fruit-trees-in-maine/fertilization/' },
  'iowa-fruit-trees': { title: 'Should I fertilize my fruit trees?', publisher: 'Iowa State University Extension', url: 'https://hortnews.extension.iastate.edu/faq/should-i-fertilize-my-fruit-trees' },
  'utah-nitrogen': { title: 'Nitrogen, garden fruit questions', publisher: 'Utah State University Extension', url: 'http://extension.usu.edu/productionhort/htm/fruit/garden-fruit/frequently-asked-questions/nitrogen/' },
  'utah-backyard': { title: 'Fertilizing Backyard Fruit Trees', publisher: 'Utah State University Extension', year: 2017, url: 'https://pestadvisories.usu.edu/2017/04/18/fertilizing/' },
  'utah-column': { title: 'Fertilizing Fruit Trees, a column', publisher: 'Utah State University', url: 'https://www.ksl.com/article/38977' },
  'virginia-note-21': { title: 'Soil Test Note 21: Home Fruit Trees, 452-721', publisher: 'Virginia Cooperative Extension', url: 'https://www.pubs.ext.vt.edu/452/452-721/452-721.html' },
  'north-carolina-quick': { title: 'Fruit tree fertilizer, quick reference', publisher: 'North Carolina State University', url: 'http://www.ces.ncsu.edu/depts/hort/consumer/quickref/fruit-tree/fruittree-fertilizer.html' },
  'north-carolina-column': { title: 'Cooperative Extension corner, Sylva', publisher: 'North Carolina Cooperative Extension', url: 'http://www.thesylvaherald.com/columns/cooperative_extension_corner/article_6d0c5462-0117-11e8-bd8d-b3266255854c.html' },
  'colorado-1216': { title: 'Fertilizing fruit trees, PlantTalk 1216', publisher: 'Colorado State University Extension', url: 'http://www.ext.colostate.edu/ptlk/1216.html' },
  'georgia-springtime': { title: 'Landscape trees ready for springtime snack', publisher: 'University of Georgia', year: 2008, url: 'https://newswire.caes.uga.edu/story/3126/springtime-snack.html' },
  'georgia-fig': { title: 'How do I fertilize my figs', publisher: 'University of Georgia Extension, Colquitt County', year: 2024, url: 'https://site.extension.uga.edu/colquitthomeowners/2024/04/how-do-i-fertilize-my-figs/' },
  'louisiana-fig': { title: 'Fig tree care', publisher: 'Louisiana State University AgCenter', year: 2005, note: 'read in a copy' },
  'kansas-home-orchard': { title: 'Fertilizing the home orchard', publisher: 'Kansas State University', year: 2017, url: 'http://www.mggkc.org/fruit-fertilizing-the-home-orchard/', note: 'read in a copy' },
  'tennessee-apples': { title: 'Apples, commercial fruit', publisher: 'University of Tennessee Extension', url: 'https://utcrops.com/soil/commercial-fruit-and-nut-production/apples/' },
  'tennessee-cherries': { title: 'Tart Cherries and Plums, commercial fruit', publisher: 'University of Tennessee Extension', url: 'https://utcrops.com/soil/commercial-fruit-and-nut-production/tart-cherries-and-plums/' },
  'oregon-fg23': { title: 'Fertilizer Guide 23: Apples', publisher: 'Oregon State University Extension', year: 1989, note: 'read in a copy' },
  'oregon-fg24': { title: 'Fertilizer Guide 24: Prunes', publisher: 'Oregon State University Extension', year: 1982, note: 'read in a copy' },
  'oregon-fg53': { title: 'Fertilizer Guide 53: Peaches', publisher: 'Oregon State University Extension', year: 2000, note: 'read in a copy' },
  'rhs-feeding': { title: 'Fruit trees: feeding and mulching', publisher: 'Royal Horticultural Society', url: 'https://www.rhs.org.uk/fruit/fruit-trees/feeding-and-mulching' },
  'florida-citrus': { title: 'Feed Your Fruit, with the table of Citrus Culture in the Home Landscape', publisher: 'University of Florida IFAS Extension, Pinellas County', year: 2013, url: 'https://blogs.ifas.ufl.edu/pinellasco/2013/10/18/feed-your-fruit/' },
  'california-citrus': { title: 'Fertilizing citrus', publisher: 'University of California Statewide IPM Program', url: 'https://ipm.ucanr.edu/PMG/GARDEN/FRUIT/CULTURAL/citfertilization.html' },
  'california-stone-pome': { title: 'Fertilizing stone fruit and pome fruit', publisher: 'University of California Statewide IPM Program', url: 'https://ipm.ucanr.edu/PMG/GARDEN/FRUIT/CULTURAL/apricotfert.html' },
  'california-peach-removal': { title: 'California Backyard Orchard: Fertilization', publisher: 'University of California', url: 'https://homeorchard.ucanr.edu/The_Big_Picture/Fertilization' },
  'post-1977': { title: 'Fertilizing apple, peach, pear, plum and cherry trees', publisher: 'Washington Post', year: 1977, note: 'weak page' },
  'new-york-home-fruit': { title: 'Guide to Growing Fruit at Home', publisher: 'Cornell Cooperative Extension', note: 'read in a copy' },
  'new-york-lawn': { title: 'How best to fertilize your lawn', publisher: 'New York State', note: 'read in a copy' },
  'washington-em119e': { title: 'EM119E, soil and leaf ranges for Washington tree fruit', publisher: 'Washington State University', year: 2022, url: 'https://treefruit.wsu.edu/?p=40864' },
  'washington-removal': { title: 'EM119E table 2, nutrients taken off in the fruit', publisher: 'Washington State University', year: 2022, url: 'https://treefruit.wsu.edu/orchard-management/soils-nutrition/table-2-nutrient-extraction-in-pounds-of-element-per-ton-of-fruit-harvested' },
  'washington-old-leaf': { title: 'Leaf nutrient values', publisher: 'Washington State University', url: 'http://soils.tfrec.wsu.edu/webnutritiongood/TreeFruitStuff/leafnutrientvalues.htm' },
  'rutgers-levels': { title: 'Relative levels of nutrients', publisher: 'Rutgers Soil Testing Laboratory', url: 'https://njaes.rutgers.edu/soil-testing-lab/relative-levels-of-nutrients.php' },
  'umass-sample-2014': { title: 'Sample soil test report, woody plants', publisher: 'University of Massachusetts', year: 2014, note: 'read in a copy' },
  'ireland-index': { title: 'Soil index system', publisher: 'The Fertilizer Association of Ireland', url: 'https://www.fertilizer-assoc.ie/soil-index-system/' },
  'northern-ireland-2019-81': { title: 'Nutrient Action Programme Regulations (Northern Ireland) 2019, schedule 5', publisher: 'Northern Ireland statute', year: 2019, url: 'https://www.legislation.gov.uk/nisr/2019/81/schedule/5/paragraph/10/made' },
  'uk-rb209': { title: 'Nutrient Management Guide RB209', publisher: 'AHDB' },
  'georgia-crop-sheets': { title: 'Crop sheets 119, 073 and 074', publisher: 'University of Georgia Soil, Plant and Water Laboratory', url: 'http://aesl.ces.uga.edu/scripts/crop.prg?119' },
  'austria-orchard': { title: 'Richtlinien für die sachgerechte Düngung im Obstbau', publisher: 'Austrian Federal Ministry of Agriculture', note: 'read in a copy' },
  weinsberg: { title: 'Düngung im Obstbau, ein Leitfaden, table 1', publisher: 'LVWO Weinsberg, Baden-Württemberg', url: 'http://www.lvwo-bw.de/pb/,Lde/Startseite/Fachinformationen/Duengung+im+Obstbau+-+ein+Leitfaden' },
  'poland-skierniewice': { title: 'Potash for orchards, figures of the Research Institute of Pomology', publisher: 'Skierniewice', year: 2009, url: 'http://www.aurepio-kalij.pl/systemy-nawozenia-roslin-uprawnych/rosliny-sadownicze-s252' },
  'british-columbia-potassium': { title: 'Potassium, BC Tree Fruit Production Guide', publisher: 'British Columbia', url: 'https://bctfpg.ca/horticulture/fruit-tree-nutrition/essential-mineral-nutrients-in-plants-deficiency-toxicity-symptoms-sources-recommendations/potassium-k' },
  'ontario-apples': { title: 'Publication 360, chapter 7: apples', publisher: 'Ontario Ministry of Agriculture', note: 'read in a copy' },
  'bavaria-garden': { title: 'Leitfaden für die Düngung im Garten', publisher: 'Bavarian LfL and LWG', note: 'read in a copy' },
  'tarn-et-garonne': { title: 'Guide fertilisation raisonnée', publisher: 'Chambre d’Agriculture de Tarn-et-Garonne', year: 2010, note: 'read in a copy' },
  'bragantia-citrus': { title: 'Mineral nutrient removal by the harvest of citrus fruit', publisher: 'Bragantia', url: 'https://www.scielo.br/j/brag/' },
  'oklahoma-hla6232': { title: 'HLA-6232, Fertilizing Pecan and Fruit Trees', publisher: 'Oklahoma State University', url: 'https://extension.okstate.edu/fact-sheets/fertilizing-pecan-and-fruit-trees.html' },
  'arizona-planting': { title: 'Arizona Master Gardener Manual: fruit trees, care', publisher: 'University of Arizona', url: 'http://ag.arizona.edu/pubs/garden/mg/fruit/care.html' },
  'fao-ecocrop': { title: 'EcoCrop', publisher: 'Food and Agriculture Organization of the United Nations', url: 'https://gaez.fao.org/pages/ecocrop' },
  'lsu-tons-to-teaspoons': { title: 'Tons to Teaspoons, fertilizer conversion table for small area', publisher: 'Louisiana State University AgCenter', url: 'https://www.lsuagcenter.com/portals/our_offices/departments/spess/servicelabs/soil_testing_lab/faq/fertilizer-conversion-table-for-small-area' },
  'bulk-density-handout': { title: 'Bulk densities of fertiliser materials, a trade handout', publisher: 'trade', note: 'read in a copy' },
  'fao-s4314e': { title: 'Bulk densities of feedstuffs, S4314E appendix XI', publisher: 'Food and Agriculture Organization of the United Nations', url: 'https://www.fao.org/docrep/S4314E/s4314e0q.htm' },
  'stylemanual-au': { title: 'Fertilisers, manual of scientific style', publisher: 'Style Manual, Australia', url: 'https://stylemanual.com.au/fertilisers' },
  'irish-journal-labels': { title: 'Confusion over fertiliser conversions', publisher: 'Irish Farmers Journal', url: 'https://www.farmersjournal.ie/' },
  'penn-state-sheet': { title: 'What is an acre furrow slice of soil?', publisher: 'Penn State Extension', url: 'https://extension.psu.edu/what-is-an-acre-furrow-slice-of-soil' },
  'ohio-soil-values': { title: 'Understanding Soil Test Reports: Phosphorus Values', publisher: 'Ohio State University', url: 'https://agbmps.osu.edu/faq/understanding-soil-test-reports-phosphorus-values' },
  'virginia-slides': { title: 'Fruits in the home garden', publisher: 'Virginia Cooperative Extension', note: 'read in a copy' },
  'organic-sampling': { title: 'Nutrient management, sampling', publisher: 'New England Tree Fruit Management Guide', url: 'https://netreefruit.org/book/export/html/204' },
  'maine-safety': { title: 'Fertiliser cautions in Growing Fruit Trees in Maine', publisher: 'University of Maine Cooperative Extension', url: 'https://extension.umaine.edu/fruit/growing-fruit-trees-in-maine/fertilization/' },
} as const satisfies Record<string, Source>;

/** A publication by its id; undefined for an id that no table names. */
export const sourceOf = (id: string): Source | undefined => (SOURCES as Record<string, Source>)[id];
