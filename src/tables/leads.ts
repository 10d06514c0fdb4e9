/**
 * Whose figures lead where no publisher stands near: of a crop, the first of these that prints a rule for it.
 * The order is the default of the decision (apple and pear Michigan, stone fruit Pennsylvania), then for the other crops the more careful home page first.
 */
export const DEFAULT_LEADS: readonly string[] = [
  'michigan-garden-fruit', 'penn-stone', 'rhs-feeding', 'georgia-fig', 'louisiana-fig', 'california-citrus', 'florida-citrus', 'penn-blueberry',
];
