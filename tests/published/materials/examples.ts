// Published and derived worked examples as data, typed from materials.md 8.2 and 8.3 (ids "8.2-n" and "D-n") and, with
// ids "seen-n", from stored copies read. `answer...` is as printed, `exact...` the plain division where it differs.
// Weights in pounds avoirdupois, grades N-P2O5-K2O in percent, areas in square feet, money in US dollars, a ton of 2000 lb, US gallons.
// `mark`: 'read' printed somewhere, 'derived' computed. `seen` true where the typist saw the print itself.

/** One bag, one nutrient wanted: `want` in lb, `bag` its grade; answerLb the weight of the bag printed. `brings`: what else that weight brings, as printed. */
export const WEIGHTS_FOR_TARGET = [
  { id: '8.2-1', want: { N: 1 }, bag: '12-11-2', answerLb: 8, exactLb: 8.333, source: 'Oregon State Extension 2008', seen: true, mark: 'read' },
  { id: '8.2-2', want: { N: 3 }, bag: '24-25-4', answerLb: 12.5, exactLb: 12.5, brings: { P2O5: 3.1, K2O: 0.5 }, source: 'UMass Step-by-Step Fertilizer Guide', seen: false, mark: 'read' },
  { id: '8.2-4', want: { N: 5 }, bag: '35-0-0', answerLb: 14.3, exactLb: 14.286, source: 'course notes, four steps', seen: false, mark: 'read' },
  { id: '8.2-5', want: { N: 15 }, bag: '21-0-0', answerLb: 71, exactLb: 71.429, source: 'course notes, four steps (15,000 ft2 at 1 lb N per 1,000)', seen: false, mark: 'read' },
  { id: '8.2-6b', want: { N: 3 }, bag: '6-6-18', answerLb: 50, exactLb: 50, source: 'Arkansas county sheet', seen: false, mark: 'read' },
  { id: '8.2-7', want: { P2O5: 2 }, bag: '0-20-0', answerLb: 10, exactLb: 10, source: 'garden reference', seen: false, mark: 'read' },
  { id: '8.2-8', want: { N: 1 }, bag: '16-4-8', answerLb: 6.25, exactLb: 6.25, source: 'lawn.lifetips.com', seen: true, mark: 'read' },
  { id: '8.2-9a', want: { N: 1 }, bag: '21-0-0', answerLb: 5, exactLb: 4.762, source: 'Master Gardeners San Diego', seen: false, mark: 'read' },
  { id: '8.2-9b', want: { N: 1 }, bag: '13-0-0', answerLb: 8, exactLb: 7.692, source: 'Master Gardeners San Diego (blood meal)', seen: false, mark: 'read' },
  { id: '8.2-10', want: { N: 0.6 }, bag: '1-1-1', answerLb: 60, exactLb: 60, bagLb: 40, answerBags: 1.5, source: 'small orchard page (0.1 lb N per inch, 6 in)', seen: false, mark: 'read' },
  { id: '8.2-11a', want: { N: 0.2 }, bag: '2-0-0', answerLb: 10, exactLb: 10, source: 'almanac (dried cow manure)', seen: true, mark: 'read' },
  { id: '8.2-11b', want: { N: 0.2 }, bag: '0.3-0-0', answerLb: 75, exactLb: 66.667, source: 'almanac (fresh cow manure): print is 12 % over', seen: true, mark: 'read' },
  { id: 'seen-1', want: { N: 3 }, bag: '21-0-0', answerLb: 14.28, exactLb: 14.286, source: 'gardenguides.com calculate-fertilizer-application', seen: true, mark: 'read' },
  { id: 'seen-2', want: { N: 15 }, bag: '21-0-0', answerLb: 71.42, exactLb: 71.429, source: 'gardenguides.com (5,000 ft2 at 3 lb N per 1,000)', seen: true, mark: 'read' },
  { id: 'seen-3', want: { N: 1 }, bag: '28-3-6', answerLb: 3.57, exactLb: 3.571, source: 'byf.unl.edu/LawnFertCalc, Nebraska', seen: true, mark: 'read' },
  { id: 'seen-4', want: { N: 6 }, bag: '28-3-6', answerLb: 21.42, exactLb: 21.429, source: 'byf.unl.edu/LawnFertCalc, Nebraska (6,000 ft2)', seen: true, mark: 'read' },
  { id: 'seen-5', want: { N: 1 }, bag: '20-0-0', answerLb: 5, exactLb: 5, source: 'countrygardener.ca', seen: true, mark: 'read' },
  { id: 'seen-6', want: { N: 12 }, bag: '20-0-0', answerLb: 60, exactLb: 60, source: 'countrygardener.ca (12,000 ft2)', seen: true, mark: 'read' },
  { id: 'seen-7', want: { N: 1 }, bag: '47-0-0', answerLb: 2.1, exactLb: 2.128, source: 'plantsgalore.com (its urea is printed 47)', seen: true, mark: 'read' },
] as const;

/** What a weight of one bag holds: `gives` in lb. */
export const NUTRIENTS_IN_BAG = [
  { id: '8.2-3', bag: '35-0-0', weightLb: 50, gives: { N: 17.5 }, source: 'course notes, four steps', seen: false, mark: 'read' },
  { id: '8.2-6a', bag: '6-6-18', weightLb: 50, gives: { N: 3, P2O5: 3, K2O: 9 }, source: 'Arkansas county sheet', seen: false, mark: 'read' },
  { id: '8.2-16c', bag: '27-0-0', weightLb: 2000, gives: { N: 540 }, source: 'Noble Foundation 2007', seen: false, mark: 'read' },
  { id: '8.2-18a', bag: '11-52-0', weightLb: 2000, gives: { N: 220, P2O5: 1040 }, source: 'Ohio State, ocj.com February 2024', seen: true, mark: 'read' },
  { id: '8.2-18b', bag: '18-46-0', weightLb: 2000, gives: { N: 360, P2O5: 920 }, source: 'Ohio State, ocj.com February 2024', seen: true, mark: 'read' },
  { id: 'seen-8', bag: '82-0-0', weightLb: 2000, gives: { N: 1640 }, source: 'Ohio State, ocj.com February 2024', seen: true, mark: 'read' },
  { id: 'seen-9', bag: '28-0-0', weightLb: 2000, gives: { N: 560 }, source: 'Ohio State, ocj.com February 2024', seen: true, mark: 'read' },
  { id: 'seen-10', bag: '16-4-8', weightLb: 100, gives: { N: 16, P2O5: 4, K2O: 8 }, source: 'pubs.nmsu.edu/_h/H119', seen: true, mark: 'read' },
  { id: 'seen-11', bag: '12-11-2', weightLb: 100, gives: { N: 12, P2O5: 11, K2O: 2 }, source: 'Oregon State Extension 2008 (the 2008 copy prints the last as nitrogen, the 2012 one as potassium)', seen: true, mark: 'read' },
  { id: 'seen-12', bag: '46-0-0', weightLb: 1000, gives: { N: 460 }, source: 'NRCS Louisiana Agronomy Technical Note 99', seen: true, mark: 'read' },
  { id: 'seen-13', bag: '21-0-0', weightLb: 1000, gives: { N: 210 }, source: 'NRCS Louisiana Agronomy Technical Note 99', seen: true, mark: 'read' },
] as const;

/** Several nutrients wanted from several bags: lb of each bag in the order of `bags`. */
export const SEVERAL_TARGETS = [
  { id: '8.2-15', want: { N: 3, P2O5: 1 }, bags: ['11-55-0', '21-0-0'], answerLb: [1.8, 13.3], exactLb: [1.818, 13.333], source: 'hobby grower page, per 1,000 ft2', seen: false, mark: 'read' },
  { id: 'D-1', want: { N: 0.5, P2O5: 0.2, K2O: 0.4 }, bags: ['18-46-0', '46-0-0', '0-0-60'], answerLb: [0.4348, 0.9168, 0.6667], answerOz: [6.96, 14.67, 10.67], source: 'notes', mark: 'derived' },
] as const;

/** One bag against several targets. `never`: the weight that exceeds none; `all`: the weight that meets all; `short`/`over` in lb. */
export const LIMITING = [
  { id: 'D-5', want: { N: 0.5, P2O5: 0.2, K2O: 0.4 }, bag: '5-10-10', never: { by: 'P2O5', lb: 2, gives: { N: 0.1, P2O5: 0.2, K2O: 0.2 } }, all: { by: 'N', lb: 10, over: { P2O5: 0.8, K2O: 0.6 } }, source: 'notes', mark: 'derived' },
  // 2 lb bring 0.2 K2O, past the cap of 0.1: unreachable.
  { id: 'D-7', want: { P2O5: 0.2 }, bag: '10-10-10', cap: { K2O: 0.1 }, needsLb: 2, brings: { K2O: 0.2 }, reachable: false, source: 'notes', mark: 'derived' },
] as const;

/** Grade of a mixture of `parts` of `bags`: [N, P2O5, K2O]. */
export const BLEND_GRADES = [
  { id: '8.2-14', bags: ['0-0-60', '18-46-0', '46-0-0'], parts: [32.5, 42, 25.5], grade: [19.3, 19.3, 19.5], exact: [19.29, 19.32, 19.5], source: 'agropro.com', seen: true, mark: 'read' },
  { id: 'D-3', bags: ['10-10-10', '46-0-0', '0-0-60'], parts: [1, 1, 1], grade: [18.67, 3.33, 23.33], source: 'notes', mark: 'derived' },
  // Printed 33.5 N and 12 S, 670 lb N a ton, 69 % of the nitrogen from urea and 31 % from ammonium sulphate.
  { id: 'seen-14', bags: ['46-0-0', '21-0-0'], parts: [1, 1], grade: [33.5, 0, 0], sulphur: 12, shareOfN: [69, 31], source: 'NRCS Louisiana Agronomy Technical Note 99', seen: true, mark: 'read' },
] as const;

/** A batch of a stated grade: lb of each of `bags`, then of filler. */
export const BATCHES = [
  { id: '8.2-12', grade: '0-8-8', batchLb: 2000, bags: ['0-20-0', '0-0-60'], answerLb: [800, 267], fillerLb: 933, exactLb: [800, 266.67], source: 'NC State SSC 012', seen: false, mark: 'read' },
  { id: '8.2-13', grade: '19-19-19', batchLb: 100, bags: ['0-0-60', '18-46-0', '46-0-0'], answerLb: [31.7, 41.3, 25.2], fillerLb: 1.8, exactLb: [31.67, 41.3, 25.14], source: 'agropro.com (kg there)', seen: true, mark: 'read' },
  { id: 'D-4', grade: '12-12-12', batchLb: 2000, bags: ['18-46-0', '46-0-0', '0-0-60'], answerLb: [521.74, 317.58, 400], fillerLb: 760.68, source: 'notes', mark: 'derived' },
] as const;

/** Price of `weightLb` of a bag to dollars a pound of one nutrient. */
export const COSTS = [
  { id: '8.2-16a', bag: '46-0-0', dollars: 412, weightLb: 2000, nutrient: 'N', perLb: 0.45, exact: 0.4478, source: 'Noble Foundation 2007', seen: false, mark: 'read' },
  { id: '8.2-16b', bag: '34-0-0', dollars: 370, weightLb: 2000, nutrient: 'N', perLb: 0.54, exact: 0.5441, source: 'Noble Foundation 2007', seen: false, mark: 'read' },
  { id: '8.2-17a', bag: '82-0-0', dollars: 789, weightLb: 2000, nutrient: 'N', perLb: 0.48, exact: 0.4811, source: 'Ohio State, ocj.com February 2024', seen: true, mark: 'read' },
  { id: '8.2-17b', bag: '28-0-0', dollars: 336, weightLb: 2000, nutrient: 'N', perLb: 0.6, exact: 0.6, source: 'Ohio State, ocj.com February 2024 (its opening says 326)', seen: true, mark: 'read' },
  { id: '8.2-19', bag: '46-0-0', dollars: 567, weightLb: 2000, nutrient: 'N', perLb: 0.62, exact: 0.6163, source: 'NMSU A-133', seen: false, mark: 'read' },
  { id: '8.2-20a', bag: '46-0-0', dollars: 462, weightLb: 2000, nutrient: 'N', perLb: 0.5, exact: 0.5022, source: 'farm blog 2011', seen: false, mark: 'read' },
  { id: '8.2-20b', bag: '21-0-0', dollars: 343, weightLb: 2000, nutrient: 'N', perLb: 0.82, exact: 0.8167, source: 'farm blog 2011', seen: false, mark: 'read' },
  { id: 'seen-15', bag: '46-0-0', dollars: 500, weightLb: 2000, nutrient: 'N', perLb: 0.54, exact: 0.5435, source: 'Ohio State C.O.R.N. 2008-37', seen: true, mark: 'read' },
  { id: 'seen-16', bag: '82-0-0', dollars: 1020, weightLb: 2000, nutrient: 'N', perLb: 0.62, exact: 0.622, source: 'Ohio State C.O.R.N. 2008-37', seen: true, mark: 'read' },
] as const;

/** Worth of a bag at the price of each nutrient alone. */
export const WORTH = [{ id: 'D-8', bag: '10-10-10', weightLb: 50, perLb: { N: 0.62, P2O5: 1.08, K2O: 0.5 }, dollars: 11, source: 'notes', mark: 'derived' }] as const;

/** Ounces of a bag in 100 US gallons for a strength of nitrogen in parts per million. */
export const FEED_PPM = [
  { id: '8.2-22', percentN: 20, ppm: 200, gallons: 100, answerOz: 13.5, exactOz: 13.35, source: 'UMass fertilizer calculations for greenhouse crops', seen: true, mark: 'read' },
  { id: 'seen-17', percentN: 15, ppm: 200, gallons: 100, answerOz: 18, exactOz: 17.8, source: 'UMass fertilizer calculations for greenhouse crops', seen: true, mark: 'read' },
  { id: 'seen-18', percentN: 15, ppm: 250, gallons: 100, answerOz: 22, exactOz: 22.25, source: 'hortipm.tamu.edu nutrient calcs (its later lines take 0.33 x 75 as 29.75 and go wrong)', seen: true, mark: 'read' },
] as const;

/** An elemental label turned to oxides: [N, P, K] to [N, P2O5, K2O]. */
export const ELEMENTAL_LABELS = [
  { id: 'D-6', elemental: [12, 5, 14], oxide: [12, 11.46, 16.86], source: 'notes (Australian label)', mark: 'derived' },
  { id: 'seen-19', elemental: [0, 8.8, 0], oxide: [0, 20.16, 0], source: 'vegetableswa.com.au: single superphosphate is printed 0:8.8:0:11; the oxide is computed', mark: 'derived' },
] as const;

/** A label as a ratio with the total in brackets: percent of each, as printed. */
export const RATIO_LABELS = [
  { id: 'seen-20', label: '4:3:4 (33)', percent: [12, 9, 12], source: 'agrispex.co.za', seen: true, mark: 'read' },
  { id: 'seen-21', label: '2:3:4 (37)', percent: [8.2, 12.3, 16.4], source: 'gharper.co.za', seen: true, mark: 'read' },
  { id: '6-za', label: '2:3:2 (14)', percent: [4, 6, 4], source: 'materials.md 6; label seen at blackwoods.co.za, the split computed', mark: 'derived' },
] as const;

/** Organic nitrogen of manure by year, lb N an acre in years 1, 2, 3. */
export const MANURE_YEARS = [{ id: 'D-10', manure: 'cow, under 18 % dry matter', tonsPerAcre: 10, organicLbPerTon: 5, lbByYear: [17.5, 6, 2.5], source: 'Cornell CSS 412 rates', mark: 'derived' }] as const;

/** Nitrogen in a cubic yard of compost. */
export const COMPOST_YARD = [{ id: 'D-11', lbPerYd3: 950, percentN: 2, lbN: 19, source: 'inputs of norganics.com compost-analysis', mark: 'derived' }] as const;

/** Lb of product for lb of nutrient: University of Maine table, only the three rows without a slip. */
export const LOOKUP = [
  { id: '8.2-ume-2', percent: 2, nutrientLb: [0.5, 1, 1.5, 2, 2.5, 3, 4, 5], productLb: [25, 50, 75, 100, 125, 150, 200, 250], source: 'University of Maine', seen: false, mark: 'read' },
  { id: '8.2-ume-5', percent: 5, nutrientLb: [0.5, 1, 1.5, 2, 2.5, 3, 4, 5], productLb: [10, 20, 30, 40, 50, 60, 80, 100], source: 'University of Maine', seen: false, mark: 'read' },
  { id: '8.2-ume-10', percent: 10, nutrientLb: [0.5, 1, 1.5, 2, 2.5, 3, 4, 5], productLb: [5, 10, 15, 20, 25, 30, 40, 50], source: 'University of Maine', seen: false, mark: 'read' },
] as const;
