import type { Rating } from './ratings.ts';

/** Rating words, the longest tried first. */
export const RATING_WORDS: readonly (readonly [word: string, rating: Rating])[] = [
  ['extremely low', 'very-low'], ['very low', 'very-low'], ['very deficient', 'very-low'], ['depleted', 'very-low'], ['sehr niedrig', 'very-low'], ['sehr gering', 'very-low'], ['muy bajo', 'very-low'],
  ['moderately low', 'low'], ['below optimum', 'low'], ['below optimal', 'low'], ['below normal', 'low'], ['a bit low', 'low'], ['low', 'low'], ['deficient', 'low'], ['below', 'low'], ['niedrig', 'low'], ['gering', 'low'], ['schlecht', 'low'], ['poor', 'low'], ['bajo', 'low'],
  ['medium-low', 'medium'], ['medium low', 'medium'], ['medium-high', 'medium'], ['medium high', 'medium'], ['medium', 'medium'], ['moderate', 'medium'], ['average', 'medium'], ['marginal', 'medium'], ['mittel', 'medium'], ['medio', 'medium'],
  ['optimum range', 'optimum'], ['optimum', 'optimum'], ['optimal', 'optimum'], ['sufficient', 'optimum'], ['adequate', 'optimum'], ['satisfactory', 'optimum'], ['normal', 'optimum'], ['good', 'optimum'], ['ausreichend', 'optimum'], ['anzustreben', 'optimum'], ['óptimo', 'optimum'], ['optimo', 'optimum'],
  ['very high', 'very-high'], ['excessive', 'very-high'], ['excess', 'very-high'], ['extremely high', 'very-high'], ['sehr hoch', 'very-high'], ['muy alto', 'very-high'],
  ['above optimum', 'high'], ['above optimal', 'high'], ['above normal', 'high'], ['high', 'high'], ['above', 'high'], ['hoch', 'high'], ['surplus', 'high'], ['alto', 'high'],
];
