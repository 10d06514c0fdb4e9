// Printed bulk densities of fertiliser materials, each in the unit the publication prints, typed from materials.md 3.2 and 3.3.
// A weight per US quart is given per pint (half), per US cup per pint (double). `weight` A university or government, B trade, C weak page.
// `at`: a section carries the notes' mark; "seen" means that the typist saw the figure too in a stored copy.
// [LIQ] US trade handout, studylib.net/doc/18119690; [LSU] LSU AgCenter; [FAO] FAO S4314E appendix XI; [NOFA] nofa.org appendix;
// [ACESF] Alabama MKM-14-4; [RU] two Russian household tables of grams a 200 mL glass; [NORG2] norganics.com.

export const PRINTED_DENSITIES = [
  { material: 'urea', unit: 'lb/ft3', low: 44, high: 48, weight: 'B', at: 'section 3.2 [LIQ], granular; seen', mark: 'read' },
  { material: 'urea', unit: 'lb/ft3', low: 48, high: 52, weight: 'C', at: 'section 3.2; seen receivinghelpdesk.com', mark: 'read' },
  { material: 'urea', unit: 'g/mL', low: 0.65, high: 0.75, weight: 'C', at: 'section 3.2 [RU]', mark: 'read' },
  // Printed 1.6 lb a US quart.
  { material: 'urea', unit: 'oz/pint', low: 12.8, high: 12.8, weight: 'C', at: 'section 3.2; seen cropideas.net/gardenmeasure', mark: 'read' },
  { material: 'ammonium nitrate', unit: 'lb/ft3', low: 54, high: 58, weight: 'B', at: 'section 3.2 [LIQ], prill; seen', mark: 'read' },
  { material: 'low-density ammonium nitrate', unit: 'lb/ft3', low: 45, high: 45, weight: 'B', at: 'section 3.2 [LIQ]; seen', mark: 'read' },
  { material: 'ammonium nitrate', unit: 'lb/ft3', low: 58, high: 62, weight: 'C', at: 'receivinghelpdesk.com', mark: 'read' },
  { material: 'ammonium nitrate', unit: 'oz/pint', low: 13, high: 13, weight: 'A', at: 'section 3.2 [LSU]; seen', mark: 'read' },
  { material: 'ammonium nitrate', unit: 'g/mL', low: 0.85, high: 0.85, weight: 'C', at: 'section 3.2 [RU]', mark: 'read' },
  { material: 'ammonium sulphate', unit: 'lb/ft3', low: 63, high: 66, weight: 'B', at: 'section 3.2 [LIQ], crystal; seen', mark: 'read' },
  { material: 'granular ammonium sulphate', unit: 'lb/ft3', low: 47, high: 53, weight: 'B', at: 'section 3.2 [LIQ]; seen', mark: 'read' },
  { material: 'ammonium sulphate', unit: 'lb/ft3', low: 60, high: 64, weight: 'C', at: 'section 3.2', mark: 'read' },
  { material: 'ammonium sulphate', unit: 'g/mL', low: 0.8, high: 0.9, weight: 'C', at: 'section 3.2 [RU]', mark: 'read' },
  { material: 'monoammonium phosphate', unit: 'lb/ft3', low: 60, high: 65, weight: 'B', at: 'section 3.2 [LIQ]; seen', mark: 'read' },
  { material: 'diammonium phosphate', unit: 'lb/ft3', low: 55, high: 60, weight: 'B', at: 'section 3.2 [LIQ]; seen', mark: 'read' },
  { material: 'diammonium phosphate', unit: 'lb/ft3', low: 56, high: 60, weight: 'C', at: 'section 3.2; seen receivinghelpdesk.com', mark: 'read' },
  { material: 'triple superphosphate', unit: 'lb/ft3', low: 65, high: 75, weight: 'B', at: 'section 3.2 [LIQ]; seen', mark: 'read' },
  { material: 'triple superphosphate', unit: 'g/mL', low: 1, high: 1, weight: 'C', at: 'section 3.2 [RU]', mark: 'read' },
  { material: 'single superphosphate', unit: 'g/mL', low: 1, high: 1.1, weight: 'C', at: 'section 3.2 [RU], granular', mark: 'read' },
  { material: 'muriate of potash', unit: 'lb/ft3', low: 58, high: 65, weight: 'B', at: 'section 3.2 [LIQ], granular; seen', mark: 'read' },
  { material: 'muriate of potash', unit: 'lb/ft3', low: 66, high: 70, weight: 'C', at: 'section 3.2, coarse', mark: 'read' },
  { material: 'muriate of potash', unit: 'g/mL', low: 0.9, high: 0.95, weight: 'C', at: 'section 3.2 [RU]', mark: 'read' },
  // The notes doubt it, but the page does print 94.
  // Dropped: fine muriate at 94 lb a cubic foot, which the notes call odd.
  { material: 'sulphate of potash', unit: 'g/mL', low: 1.3, high: 1.3, weight: 'C', at: 'section 3.2 [RU]', mark: 'read' },
  { material: 'potassium magnesium sulphate', unit: 'lb/ft3', low: 90, high: 98, weight: 'B', at: 'section 3.2 [LIQ]; seen', mark: 'read' },
  // Dropped: langbeinite 1.0 [RU], a weak page that the notes set against 90 to 98 lb a cubic foot.
  { material: 'sodium nitrate', unit: 'oz/pint', low: 23, high: 23, weight: 'A', at: 'section 3.2 [LSU]; seen', mark: 'read' },
  { material: 'sodium nitrate', unit: 'g/mL', low: 1.2, high: 1.2, weight: 'C', at: 'section 3.2 [RU]', mark: 'read' },
  { material: 'calcium nitrate', unit: 'g/mL', low: 1, high: 1, weight: 'C', at: 'section 3.2 [RU]', mark: 'read' },
  // Dropped: limes: no cup of lime is asked for.
  { material: 'elemental sulphur', unit: 'oz/pint', low: 10, high: 10, weight: 'A', at: 'section 3.2 [LSU], flowers; seen', mark: 'read' },
  // Printed half a pound a cup, and 3 cups to 1.5 lb.
  { material: '10-10-10', unit: 'oz/pint', low: 16, high: 16, weight: 'C', at: 'section 3.2; seen sammela.com, walterreeves.com', mark: 'read' },
  { material: 'wood ash', unit: 'lb/bu', low: 30, high: 30, weight: 'B', at: 'section 3.3 [NOFA]; seen', mark: 'read' },
  { material: 'wood ash', unit: 'lb/yd3', low: 600, high: 600, weight: 'B', at: 'section 3.3 [NOFA]; seen', mark: 'read' },
  // Dropped: wood ash 0.5 to 0.6 [RU], weak, against [NOFA].
  { material: 'alfalfa meal', unit: 't/m3', low: 0.25, high: 0.35, weight: 'A', at: 'section 3.3 [FAO]; seen', mark: 'read' },
  { material: 'blood meal', unit: 't/m3', low: 0.61, high: 0.61, weight: 'A', at: 'section 3.3 [FAO]; seen', mark: 'read' },
  { material: 'bone meal', unit: 't/m3', low: 0.8, high: 0.96, weight: 'A', at: 'section 3.3 [FAO]; seen', mark: 'read' },
  { material: 'meat and bone meal', unit: 't/m3', low: 0.64, high: 0.64, weight: 'A', at: 'section 3.3 [FAO]; seen', mark: 'read' },
  { material: 'meat meal', unit: 't/m3', low: 0.59, high: 0.64, weight: 'A', at: 'fao.org/docrep/S4314E/s4314e0q.htm', mark: 'read' },
  { material: 'fish meal', unit: 't/m3', low: 0.48, high: 0.64, weight: 'A', at: 'section 3.3 [FAO]; seen', mark: 'read' },
  { material: 'cottonseed meal', unit: 't/m3', low: 0.59, high: 0.64, weight: 'A', at: 'section 3.3 [FAO]; seen', mark: 'read' },
  { material: 'cottonseed meal', unit: 'lb/ft3', low: 38, high: 38, weight: 'A', at: 'section 3.3 [ACESF]', mark: 'read' },
  { material: 'cottonseed meal', unit: 'oz/pint', low: 10, high: 10, weight: 'A', at: 'section 3.3 [LSU]; seen', mark: 'read' },
  { material: 'soybean meal', unit: 't/m3', low: 0.56, high: 0.67, weight: 'A', at: 'section 3.3 [FAO], 44 % 0.56-0.60 and 50 % 0.65-0.67; seen (expeller meal 0.57-0.64)', mark: 'read' },
  { material: 'shrimp meal', unit: 't/m3', low: 0.4, high: 0.4, weight: 'A', at: 'section 3.3 [FAO]; seen', mark: 'read' },
  { material: 'poultry by-product meal', unit: 't/m3', low: 0.54, high: 0.6, weight: 'A', at: 'section 3.3 [FAO], there a stand-in for feather meal; seen', mark: 'read' },
  { material: 'broiler litter', unit: 'lb/ft3', low: 42, high: 42, weight: 'A', at: 'section 3.3 [ACESF]', mark: 'read' },
  // Dropped: litter of breeders, sawdust, peat: not held.
  { material: 'compost', unit: 'lb/bu', low: 50, high: 50, weight: 'B', at: 'section 3.3 [NOFA]; seen', mark: 'read' },
  { material: 'compost', unit: 'lb/yd3', low: 950, high: 1000, weight: 'B', at: 'section 3.3 [NOFA] 1000, [NORG2] 950; seen both', mark: 'read' },
  { material: 'horse manure', unit: 'lb/bu', low: 40, high: 40, weight: 'B', at: 'section 3.3 [NOFA]; seen', mark: 'read' },
  { material: 'horse manure', unit: 'lb/yd3', low: 800, high: 800, weight: 'B', at: 'section 3.3 [NOFA]; seen', mark: 'read' },
  { material: 'broiler manure', unit: 'lb/bu', low: 50, high: 50, weight: 'B', at: 'section 3.3 [NOFA]; seen', mark: 'read' },
  { material: 'broiler manure', unit: 'lb/yd3', low: 1000, high: 1000, weight: 'B', at: 'section 3.3 [NOFA]; seen', mark: 'read' },
  { material: 'other manures', unit: 'lb/bu', low: 80, high: 80, weight: 'B', at: 'section 3.3 [NOFA]; seen', mark: 'read' },
  { material: 'other manures', unit: 'lb/yd3', low: 1700, high: 1700, weight: 'B', at: 'section 3.3 [NOFA]; seen', mark: 'read' },
  // Against water, USDA home bulletins as the notes recall them.
  { material: 'sodium nitrate', unit: 'g/mL', low: 1.3, high: 1.3, weight: 'C', at: 'section 3.2, USDA groups', mark: 'memory' },
  { material: 'single superphosphate', unit: 'g/mL', low: 0.9, high: 0.9, weight: 'C', at: 'section 3.2, USDA groups', mark: 'memory' },
  { material: 'muriate of potash', unit: 'g/mL', low: 0.9, high: 0.9, weight: 'C', at: 'section 3.2, USDA groups', mark: 'memory' },
  { material: 'ammonium sulphate', unit: 'g/mL', low: 0.9, high: 0.9, weight: 'C', at: 'section 3.2, USDA groups', mark: 'memory' },
  { material: 'bone meal', unit: 'g/mL', low: 0.9, high: 0.9, weight: 'C', at: 'section 3.2, USDA groups', mark: 'memory' },
  // Dropped: Epsom salt, memory: nothing of it is measured out.
  { material: 'urea', unit: 'g/mL', low: 0.7, high: 0.7, weight: 'C', at: 'section 3.2, USDA groups', mark: 'memory' },
] as const;

// Liquids, lb per US gallon.
export const PRINTED_LIQUIDS = [
  { grade: '28-0-0', low: 10.67, high: 10.7, at: 'section 3.4 [LIQ][NRCCA]; seen [LIQ]', mark: 'read' },
  { grade: '32-0-0', low: 11.06, high: 11.06, at: 'section 3.4 [LIQ]; seen', mark: 'read' },
  { grade: '10-34-0', low: 11.65, high: 11.7, at: 'section 3.4 [LIQ][NRCCA]; seen [LIQ]', mark: 'read' },
  { grade: '9-18-9', low: 11.7, high: 11.7, at: 'section 3.4 [NRCCA]', mark: 'read' },
  { grade: '12-0-0-26S', low: 11.04, high: 11.04, at: 'section 3.4 [LIQ]; seen', mark: 'read' },
  { grade: '7-21-7', low: 11.2, high: 11.2, at: 'section 3.4 [LIQ]; seen', mark: 'read' },
  { grade: '4-10-10', low: 10.3, high: 10.3, at: 'section 3.4 [LIQ]; seen', mark: 'read' },
  { grade: '8-21-4', low: 11.3, high: 11.3, at: 'section 3.4 [LIQ]; seen', mark: 'read' },
  { grade: '9-18-4', low: 11.3, high: 11.3, at: 'section 3.4 [LIQ]; seen', mark: 'read' },
  { grade: '18-13-0-7S', low: 11.3, high: 11.3, at: 'section 3.4 [LIQ]; seen', mark: 'read' },
  { grade: '9-20-2', low: 11.4, high: 11.4, at: 'section 3.4 [LIQ]; seen', mark: 'read' },
] as const;
