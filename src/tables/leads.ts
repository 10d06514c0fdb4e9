/**
 * Whose figures lead where no publisher stands near: of a crop, the first of these that prints a rule for it.
 * The order is the default of the decision (apple and pear Michigan, stone fruit Pennsylvania); for the other crops the page that gives least comes first.
 */
export const DEFAULT_LEADS: readonly string[] = [
  'penn-stone', 'michigan-garden-fruit', 'rhs-feeding', 'georgia-fig', 'louisiana-fig', 'florida-citrus', 'california-citrus', 'penn-blueberry', 'penn-currant', 'iowa-fertilizing-tree-small-fruits',
  'nj-small-fruit', 'ga-code-103-muscadine', 'uga-colquitt-muscadine', 'uga-colquitt-pecan', 'lsu-sthelena-pecan', 'missouri-chestnut', 'uc-ipm-walnut-home', 'uc-ipm-almond-home', 'uc-avocado-care', 'pnw507-kiwifruit',
  'fl-nassau-persimmon', 'rhs-medlar', 'rhs-quince', 'maryland-brambles', 'crfg-loquat', 'uc-davis-olive', 'tw-afa-guava', 'bd-frg-2018-mango',
];
