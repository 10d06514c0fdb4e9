/**
 * Letters as the inside of a class: Latin with its accents, Greek, Cyrillic and what follows them up to the kana.
 * A pattern that ignores case takes a quarter of a millisecond for each `\p{L}` when it is first used, and the patterns of a
 * bag's label hold sixty, each only to see that a word or a number ends there.
 */
export const LETTER = 'a-zA-ZªµºÀ-ÖØ-öø-ʯͰ-῿';
