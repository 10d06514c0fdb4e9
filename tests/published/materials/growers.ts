// Worked examples with bags, weights, cups and prices that growers meet, typed from growers.md 4; shapes as in examples.ts.
// `answer...` as printed or said, `exact...` the plain division. `seen` true where the typist saw the print in a stored copy.

/** One bag, one nutrient wanted: lb of bag. */
export const GROWER_WEIGHTS = [
  { id: 'U1-a', want: { N: 2.3 }, bag: '46-0-0', answerLb: 5, exactLb: 5, per: '1,000 ft2', source: 'growinggreener page', seen: false, mark: 'read' },
  { id: 'U1-b', want: { N: 2.3 }, bag: '5-0-0', answerLb: 46, exactLb: 46, per: '1,000 ft2', source: 'growinggreener page (fish fertiliser)', seen: false, mark: 'read' },
  { id: 'U2-a', want: { N: 0.3 }, bag: '30-0-0', answerLb: 1, exactLb: 1, per: '100 ft2', source: 'worldwidecanneries page', seen: false, mark: 'read' },
  { id: 'U2-b', want: { N: 0.1 }, bag: '46-0-0', answerLb: 0.25, exactLb: 0.2174, per: '100 ft2', source: 'worldwidecanneries page, to the quarter pound', seen: false, mark: 'read' },
  { id: 'U2-c', want: { N: 0.1 }, bag: '21-0-0', answerLb: 0.5, exactLb: 0.4762, per: '100 ft2', source: 'worldwidecanneries page', seen: false, mark: 'read' },
  // No grade printed: these three imply 13.3, 10 and 2 % N.
  { id: 'U2-d', want: { N: 0.1 }, material: 'blood meal', answerLb: 0.75, per: '100 ft2', source: 'worldwidecanneries page', seen: false, mark: 'read' },
  { id: 'U2-e', want: { N: 0.1 }, material: 'corn gluten meal', answerLb: 1, per: '100 ft2', source: 'worldwidecanneries page', seen: false, mark: 'read' },
  { id: 'U2-f', want: { N: 0.1 }, material: 'alfalfa pellets', answerLb: 5, per: '100 ft2', source: 'worldwidecanneries page', seen: false, mark: 'read' },
  // 2 oz N from 26-3-4 on 50 ft2, printed 7.5 oz.
  { id: 'U15', want: { N: 0.125 }, bag: '26-3-4', answerLb: 0.46875, exactLb: 0.4808, per: '50 ft2', source: 'nomad.yosemite.net', seen: false, mark: 'read' },
  { id: 'crop-1', want: { N: 1 }, bag: '46-0-0', answerLb: 2, exactLb: 2.174, per: '1,000 ft2', source: 'cropideas.net', seen: true, mark: 'read' },
  { id: 'crop-2', want: { N: 1 }, bag: '34-0-0', answerLb: 3, exactLb: 2.941, per: '1,000 ft2', source: 'cropideas.net', seen: true, mark: 'read' },
  // 16 % short: not to be copied.
  { id: 'crop-3', want: { N: 1 }, bag: '21-0-0', answerLb: 4, exactLb: 4.762, slip: true, per: '1,000 ft2', source: 'cropideas.net', seen: true, mark: 'read' },
  { id: 'crop-4', want: { P2O5: 1 }, bag: '0-45-0', answerLb: 2, exactLb: 2.222, per: '1,000 ft2', source: 'cropideas.net', seen: true, mark: 'read' },
  { id: 'crop-5', want: { P2O5: 1 }, bag: '18-46-0', answerLb: 2, exactLb: 2.174, per: '1,000 ft2', source: 'cropideas.net', seen: true, mark: 'read' },
  { id: 'crop-6', want: { P2O5: 1 }, bag: '11-52-0', answerLb: 2, exactLb: 1.923, per: '1,000 ft2', source: 'cropideas.net', seen: true, mark: 'read' },
  { id: 'crop-7', want: { K2O: 1 }, bag: '0-0-60', answerLb: 1.5, exactLb: 1.667, per: '1,000 ft2', source: 'cropideas.net', seen: true, mark: 'read' },
] as const;

/** What a rate of one bag brings, in lb. */
export const GROWER_GIVES = [{ id: 'AR', bag: '13-13-13', weightLb: 15, gives: { N: 1.95, P2O5: 1.95, K2O: 1.95 }, per: '1,000 ft2', source: 'boomerempowerment page, computed in the notes', mark: 'derived' }] as const;

/** Three bags for three nutrients, kg a hectare, in the order of `bags`. */
export const GROWER_BLENDS = [
  { id: 'growfood', want: { N: 125, P2O5: 68.125, K2O: 125 }, bags: ['18-46-0', '21-0-53', '34-0-0'], answerKg: [148.09, 235.84, 143.64], exactKg: [148.1, 235.85, 143.57], nFrom: [26.64, 49.52, 48.84], source: 'growfood page', seen: false, mark: 'read' },
] as const;

/** Price of a bag to dollars a pound of one nutrient. */
export const GROWER_COSTS = [
  { id: 'kitsap-1', bag: '10-20-20', dollars: 11, weightLb: 50, nutrient: 'N', holdsLb: 5, perLb: 2.2, exact: 2.2, source: 'Kitsap Sun 30 April 2005', seen: true, mark: 'read' },
  { id: 'kitsap-2', bag: '13-1-1', dollars: 22, weightLb: 50, nutrient: 'N', holdsLb: 6.5, perLb: 3.4, exact: 3.385, source: 'Kitsap Sun 30 April 2005', seen: true, mark: 'read' },
  // Seen beside them: bone meal 3-15-0 by its phosphate, and a small box of blood meal.
  { id: 'kitsap-3', bag: '3-15-0', dollars: 18, weightLb: 50, nutrient: 'P2O5', holdsLb: 7.5, perLb: 2.4, exact: 2.4, source: 'Kitsap Sun 30 April 2005', seen: true, mark: 'read' },
  { id: 'kitsap-4', bag: '13-1-1', dollars: 5.5, weightLb: 4, nutrient: 'N', holdsLb: 0.52, perLb: 11, exact: 10.577, source: 'Kitsap Sun 30 April 2005', seen: true, mark: 'read' },
] as const;

/** Cups: lb of a material, and cups. */
export const GROWER_CUPS = [
  { id: 'blueberry-sulphur', material: 'elemental sulphur', lb: 1, cups: 2.5, source: 'blueberries.extension.org page', seen: false, mark: 'read' },
  { id: 'circle-5', material: '10-10-10', lb: 4.71, cups: 9.42, radiusFt: 5, ft2: 78.5, source: 'sammela.com', seen: true, mark: 'read' },
  { id: 'circle-20', material: '10-10-10', lb: 75.36, cups: 150.72, radiusFt: 20, ft2: 1256, source: 'sammela.com', seen: true, mark: 'read' },
  { id: 'corn', material: '10-10-10', lb: 1.5, cups: 3, source: 'walterreeves.com', seen: true, mark: 'read' },
  // Printed "slightly less than".
  { id: 'bed', material: '10-10-10', lb: 0.7, cups: 1.5, source: 'sammela.com (exact 1.4)', seen: true, mark: 'read' },
] as const;

/** Oxide to element, as printed. */
export const GROWER_ELEMENTS = [
  { id: 'psu-p', oxide: { P2O5: 20 }, element: { P: 8.8 }, exact: 8.729, source: 'Penn State 2022', seen: false, mark: 'read' },
  { id: 'psu-k', oxide: { K2O: 10 }, element: { K: 8.3 }, exact: 8.302, source: 'Penn State 2022', seen: false, mark: 'read' },
] as const;
