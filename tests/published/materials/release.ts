// How much of the nitrogen of organic materials comes free, in percent, typed from materials.md 2 and from stored copies.
// `of`: the share is of all nitrogen or of the organic nitrogen only. `days` for an incubation. `dryMatter` of the manure in percent, [from, to].
// `at`: a section carries the notes' mark; "seen" means that the typist saw the figure too; an address alone is new here. `weight` A, B, C.
// [HJ] HortTechnology 16(1):39-42; [SARE] LS16-269; [CNMSP] Cornell CSS 412; [UNL] University of Nebraska-Lincoln.

export const PRINTED_RELEASE = [
  // Laboratory, 10-25 C. The abstract says organic nitrogen; the notes head the table "share of total".
  { material: 'feather meal', share: [60, 60], of: 'organic', year: 1, days: 56, weight: 'A', at: 'section 2.1 [HJ]; seen sciencegate.app, ucanr.edu', mark: 'read' },
  { material: 'seabird guano', share: [61, 61], of: 'organic', year: 1, days: 56, weight: 'A', at: 'section 2.1 [HJ]; seen', mark: 'read' },
  { material: 'fish powder', share: [62, 62], of: 'organic', year: 1, days: 56, weight: 'A', at: 'section 2.1 [HJ]; seen', mark: 'read' },
  { material: 'blood meal', share: [66, 66], of: 'organic', year: 1, days: 56, weight: 'A', at: 'section 2.1 [HJ]; seen', mark: 'read' },
  // Dropped: means over the four, and two weeks: no year.
  { material: 'commercial organic fertiliser', share: [21, 87], of: 'total', year: 1, days: 100, weight: 'A', at: 'section 2.1 [SARE]; seen', mark: 'read' },
  { material: 'poultry litter', share: [8, 37], of: 'total', year: 1, days: 100, weight: 'A', at: 'section 2.1 [SARE]; seen', mark: 'read' },
  { material: 'compost', share: [1, 4], of: 'total', year: 1, days: 100, weight: 'A', at: 'section 2.1 [SARE], those that released any; seen', mark: 'read' },
  // Planning values of the notes.
  { material: 'blood meal', share: [70, 70], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'blood meal', share: [5, 5], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'feather meal', share: [65, 65], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'feather meal', share: [10, 10], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'fish meal', share: [65, 65], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'fish meal', share: [5, 5], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'cottonseed meal', share: [60, 60], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'cottonseed meal', share: [10, 10], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'soybean meal', share: [60, 60], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'soybean meal', share: [10, 10], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'alfalfa meal', share: [35, 35], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'alfalfa meal', share: [10, 10], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'bone meal', share: [50, 50], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'bone meal', share: [10, 10], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'kelp meal', share: [30, 30], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'kelp meal', share: [10, 10], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'pelleted poultry manure', share: [40, 40], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'pelleted poultry manure', share: [10, 10], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'finished compost', share: [5, 10], of: 'total', year: 1, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  { material: 'finished compost', share: [5, 5], of: 'total', year: 2, weight: 'C', at: 'section 2.1 planning values', mark: 'memory' },
  // Manure, organic nitrogen only; ammonium nitrogen is beside it.
  { material: 'cow manure', share: [35, 35], of: 'organic', year: 1, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'cow manure', share: [12, 12], of: 'organic', year: 2, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'cow manure', share: [5, 5], of: 'organic', year: 3, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'cow manure', share: [25, 25], of: 'organic', year: 1, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'cow manure', share: [12, 12], of: 'organic', year: 2, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'cow manure', share: [5, 5], of: 'organic', year: 3, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'swine manure', share: [35, 35], of: 'organic', year: 1, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'swine manure', share: [12, 12], of: 'organic', year: 2, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'swine manure', share: [5, 5], of: 'organic', year: 3, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'swine manure', share: [25, 25], of: 'organic', year: 1, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'swine manure', share: [12, 12], of: 'organic', year: 2, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'swine manure', share: [5, 5], of: 'organic', year: 3, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'poultry manure', share: [55, 55], of: 'organic', year: 1, dryMatter: [0, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'poultry manure', share: [12, 12], of: 'organic', year: 2, dryMatter: [0, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'poultry manure', share: [5, 5], of: 'organic', year: 3, dryMatter: [0, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'horse manure', share: [30, 30], of: 'organic', year: 1, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'horse manure', share: [12, 12], of: 'organic', year: 2, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'horse manure', share: [5, 5], of: 'organic', year: 3, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'horse manure', share: [25, 25], of: 'organic', year: 1, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'horse manure', share: [12, 12], of: 'organic', year: 2, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'horse manure', share: [5, 5], of: 'organic', year: 3, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'sheep manure', share: [35, 35], of: 'organic', year: 1, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'sheep manure', share: [12, 12], of: 'organic', year: 2, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'sheep manure', share: [5, 5], of: 'organic', year: 3, dryMatter: [0, 18], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'sheep manure', share: [25, 25], of: 'organic', year: 1, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'sheep manure', share: [12, 12], of: 'organic', year: 2, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  { material: 'sheep manure', share: [5, 5], of: 'organic', year: 3, dryMatter: [18, 100], weight: 'A', at: 'section 2.2 [CNMSP]; seen', mark: 'read' },
  // New here. Nebraska since 2022: most manures, not layer manure nor composted feedlot manure; before that feedlot 25 in year 1.
  { material: 'most animal manures', share: [40, 40], of: 'organic', year: 1, weight: 'A', at: 'cropwatch.unl.edu/2022/new-unl-manure-nitrogen-crediting-recommendations-crop-fertility', mark: 'read' },
  // Dropped: Nebraska's new 20 and 10 of later years: the notes hold Cornell's 12 and 5.
  { material: 'feedlot manure', share: [25, 25], of: 'organic', year: 1, weight: 'A', at: 'cropwatch.unl.edu/2022 (the rate until 2022)', mark: 'read' },
  // Dropped: 15 to 50 in a farm paper; Cornell and Oklahoma lead.
  { material: 'manure', share: [30, 50], of: 'organic', year: 1, weight: 'C', at: 'awarehome.co.uk use-of-manure', mark: 'read' },
  // England: share of all nitrogen to the next crop, by season and soil; lowest autumn on sand, highest fresh and dug in in spring.
  { material: 'farmyard manure', share: [5, 15], of: 'total', year: 1, weight: 'A', at: 'AHDB (copy at mainsitelive.azurewebsites.net) using-farmyard-manure-fym (RB209 section 2); adlib.everysite.co.uk DEFRA', mark: 'read' },
  { material: 'old farmyard manure in spring', share: [10, 10], of: 'total', year: 1, weight: 'A', at: 'AHDB (copy at mainsitelive.azurewebsites.net) using-farmyard-manure-fym (RB209 section 2)', mark: 'read' },
  { material: 'fresh farmyard manure dug in in spring', share: [15, 15], of: 'total', year: 1, weight: 'A', at: 'AHDB (copy at mainsitelive.azurewebsites.net) using-farmyard-manure-fym (RB209 section 2)', mark: 'read' },
  // Left four days and more on top, to dug in within twelve hours (or injected).
  // Dropped: beef and dairy of the Upper Midwest (25-60, 20-55): Iowa's 30 to 50 leads for cattle.
  { material: 'swine manure', share: [35, 80], of: 'total', year: 1, weight: 'B', at: 'm.farms.com/news/with-high-fertilizer-prices', mark: 'read' },
  // Dropped: their second years: the notes hold Cornell's.
  { material: 'poultry manure', share: [45, 70], of: 'total', year: 1, weight: 'B', at: 'm.farms.com/news/with-high-fertilizer-prices', mark: 'read' },
  { material: 'solid beef and dairy manure', share: [30, 50], of: 'total', year: 1, weight: 'B', at: 'algreatlakes.com not-all-manure-is-the-same', mark: 'read' },
  { material: 'poultry manure', share: [50, 60], of: 'total', year: 1, weight: 'B', at: 'algreatlakes.com not-all-manure-is-the-same', mark: 'read' },
  // Most composts; above 3 % nitrogen more than 10; very little in following seasons.
  { material: 'finished compost', share: [5, 10], of: 'total', year: 1, weight: 'A', at: 'thealmonddoctor.com compost-applications (University of California, citing Hartz)', mark: 'read' },
  // Dropped: three composts of one trial.
  // Makers' pages: more than 75 within about three months, the rest in up to three more.
  // Dropped: makers' pages on feather meal, over the most that Georgia measured.
] as const;

// Sums over several years together. Nebraska's old three-year totals are shares of the ORGANIC nitrogen (the page speaks of the organic
// portion; 25 in year 1 for feedlot manure as of 2022), so they stand beside Cornell's rates: 25 + 12 + 5 = 42 and 55 + 12 + 5 = 72.
export const PRINTED_RELEASE_SUMS = [
  { material: 'feedlot manure', share: [47, 47], of: 'organic', years: 3, weight: 'A', at: 'section 2.2 [UNL]; seen water.unl.edu', mark: 'read' },
  { material: 'manure compost', share: [37, 37], of: 'organic', years: 3, weight: 'A', at: 'section 2.2 [UNL]; seen', mark: 'read' },
  // Dropped: poultry with litter, 52 in three years: the notes say that Cornell's 55 in one is another quantity.
  // Recovered in grass leaf over two years, against calcium nitrate = 100: feather, soybean, blood meal, poultry manure and others in five products.
  { material: 'organic lawn fertilisers', share: [67, 80], of: 'total', years: 2, weight: 'A', at: 'a-c-s.confex.com/crops/2009am Paper54318 (Washington State)', mark: 'read' },
] as const;

// Phosphate and potash of manure usable in the first year.
export const PRINTED_PK_RELEASE = [
  // Dropped: 70 to 90, a weak page; Iowa and Oklahoma lead.
  { material: 'manure', nutrient: 'P2O5', share: [80, 80], year: 1, weight: 'B', at: 'm.farms.com/news/with-high-fertilizer-prices', mark: 'read' },
  { material: 'manure', nutrient: 'K2O', share: [90, 90], year: 1, weight: 'B', at: 'm.farms.com/news/with-high-fertilizer-prices', mark: 'read' },
  // Dropped: Ontario's 40 % of phosphorus counts what fertiliser it replaces.
] as const;
