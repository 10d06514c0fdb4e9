/**
 * The words by which reports rate a value, in six languages, each set with its language and its mark.
 * Matched as whole words without accents, the longest first. A word that is also prose, or another thing in another
 * language, stands in RATING_WORDS_BY_LANGUAGE, good only in a report of its own language.
 */
import type { Language, WordSet } from './name-set.ts';
import type { Rating } from './ratings.ts';

export type RatingSet = WordSet & { readonly rating: Rating; readonly words: readonly string[] };

export const RATING_SETS: readonly RatingSet[] = [
  { rating: 'very-low', language: 'en', mark: 'read', at: 'rutgers-words', words: ['very low'] },
  { rating: 'very-low', language: 'en', mark: 'practice', words: ['vlow', 'v. low', 'exlow', 'ex. low', 'extremely low', 'severely low', 'very deficient', 'severely deficient', 'extremely deficient', 'strongly deficient', 'depleted', 'very poor', 'much too low', 'far too low', 'very much below'] },
  { rating: 'low', language: 'en', mark: 'read', at: 'rutgers-words', words: ['low'] },
  { rating: 'low', language: 'en', mark: 'read', at: 'penn-words', words: ['below optimum'] },
  { rating: 'low', language: 'en', mark: 'read', at: 'virginia-report', words: ['def'] },
  { rating: 'low', language: 'en', mark: 'practice', words: ['moderately low', 'fairly low', 'slightly low', 'a bit low', 'a little low', 'too low', 'below optimal', 'below normal', 'below range', 'below', 'deficient', 'slightly deficient', 'insufficient', 'inadequate', 'poor'] },
  { rating: 'medium', language: 'en', mark: 'read', at: 'rutgers-words', words: ['medium'] },
  { rating: 'medium', language: 'en', mark: 'practice', words: ['mod', 'medium-low', 'medium low', 'medium-high', 'medium high', 'moderate', 'average', 'marginal', 'borderline'] },
  { rating: 'medium', language: 'en', mark: 'practice', in: 'en', words: ['fair'] },
  { rating: 'optimum', language: 'en', mark: 'read', at: 'penn-words', words: ['optimum'] },
  { rating: 'optimum', language: 'en', mark: 'read', at: 'clemson-words', words: ['sufficient'] },
  { rating: 'optimum', language: 'en', mark: 'read', at: 'virginia-report', words: ['suff'] },
  { rating: 'optimum', language: 'en', mark: 'practice', words: ['optimum range', 'optimal range', 'optimal', 'adequate', 'satisfactory', 'normal', 'good', 'ideal', 'in range', 'within range', 'desirable', 'at target'] },
  { rating: 'optimum', language: 'en', mark: 'practice', in: 'en', words: ['ok', 'okay', 'target'] },
  { rating: 'high', language: 'en', mark: 'read', at: 'rutgers-words', words: ['high'] },
  { rating: 'high', language: 'en', mark: 'read', at: 'penn-words', words: ['above optimum'] },
  { rating: 'high', language: 'en', mark: 'practice', words: ['moderately high', 'fairly high', 'slightly high', 'a bit high', 'a little high', 'too high', 'above optimal', 'above normal', 'above range', 'above', 'surplus', 'more than adequate'] },
  { rating: 'very-high', language: 'en', mark: 'read', at: 'rutgers-words', words: ['very high'] },
  { rating: 'very-high', language: 'en', mark: 'read', at: 'virginia-report', words: ['extremely high'] },
  { rating: 'very-high', language: 'en', mark: 'memory', words: ['excessive'] },
  { rating: 'very-high', language: 'en', mark: 'practice', words: ['vhigh', 'v. high', 'exhigh', 'ex. high', 'excessively high', 'excess', 'far too high', 'much too high', 'off the charts', 'toxic'] },

  { rating: 'very-low', language: 'es', mark: 'practice', words: ['muy bajo', 'muy baja', 'muy bajos', 'muy bajas', 'muy pobre', 'muy pobres', 'muy deficiente', 'muy escaso', 'muy escasa', 'extremadamente bajo', 'extremadamente baja'] },
  { rating: 'low', language: 'es', mark: 'practice', words: ['bajo', 'baja', 'bajos', 'bajas', 'moderadamente bajo', 'moderadamente baja', 'deficiente', 'deficientes', 'pobre', 'pobres', 'escaso', 'escasa', 'insuficiente', 'insuficientes', 'demasiado bajo', 'demasiado baja', 'ligeramente bajo', 'ligeramente baja'] },
  { rating: 'medium', language: 'es', mark: 'practice', words: ['medio', 'medios', 'moderado', 'moderada', 'intermedio', 'intermedia', 'medianamente bajo', 'medianamente alto'] },
  { rating: 'medium', language: 'es', mark: 'practice', in: 'es', words: ['media', 'medias'] },
  { rating: 'optimum', language: 'es', mark: 'practice', words: ['óptimo', 'óptima', 'óptimos', 'óptimas', 'adecuado', 'adecuada', 'adecuados', 'suficiente', 'suficientes', 'satisfactorio', 'satisfactoria', 'correcto', 'correcta', 'normal', 'normales'] },
  { rating: 'optimum', language: 'es', mark: 'practice', in: 'es', words: ['bueno', 'buena'] },
  { rating: 'high', language: 'es', mark: 'practice', words: ['alto', 'alta', 'altos', 'altas', 'elevado', 'elevada', 'elevados', 'elevadas', 'moderadamente alto', 'moderadamente alta', 'ligeramente alto', 'ligeramente alta', 'demasiado alto', 'demasiado alta'] },
  { rating: 'high', language: 'es', mark: 'practice', in: 'es', words: ['rico', 'rica'] },
  { rating: 'very-high', language: 'es', mark: 'practice', words: ['muy alto', 'muy alta', 'muy altos', 'muy altas', 'muy elevado', 'muy elevada', 'excesivo', 'excesiva', 'excesivos', 'exceso', 'en exceso', 'tóxico', 'extremadamente alto', 'extremadamente alta'] },

  { rating: 'very-low', language: 'fr', mark: 'read', at: 'french-ratings', words: ['très faible'] },
  { rating: 'very-low', language: 'fr', mark: 'practice', words: ['très faibles', 'très bas', 'très basse', 'très pauvre', 'très pauvres', 'extrêmement faible', 'carencé', 'carencée'] },
  { rating: 'low', language: 'fr', mark: 'read', at: 'french-ratings', words: ['faible', 'un peu faible'] },
  { rating: 'low', language: 'fr', mark: 'practice', words: ['faibles', 'assez faible', 'trop faible', 'trop bas', 'pauvre', 'pauvres', 'insuffisant', 'insuffisante', 'insuffisants', 'déficient', 'déficiente'] },
  { rating: 'low', language: 'fr', mark: 'practice', in: 'fr', words: ['bas', 'basse', 'basses'] },
  { rating: 'medium', language: 'fr', mark: 'practice', words: ['moyen', 'moyenne', 'moyens', 'moyennes', 'moyennement faible', 'moyennement élevé', 'modéré', 'modérée'] },
  { rating: 'optimum', language: 'fr', mark: 'read', at: 'french-ratings', words: ['bien pourvu'] },
  { rating: 'optimum', language: 'fr', mark: 'practice', words: ['bien pourvue', 'satisfaisant', 'satisfaisante', 'satisfaisants', 'suffisant', 'suffisante', 'suffisants', 'optimale', 'adéquat', 'adéquate', 'correcte'] },
  { rating: 'optimum', language: 'fr', mark: 'practice', in: 'fr', words: ['bon', 'bonne', 'correct', 'normale'] },
  { rating: 'high', language: 'fr', mark: 'read', at: 'french-ratings', words: ['élevé'] },
  { rating: 'high', language: 'fr', mark: 'practice', words: ['élevée', 'élevés', 'élevées', 'assez élevé', 'assez élevée', 'un peu élevé', 'un peu élevée', 'trop élevé', 'trop élevée', 'riche', 'riches'] },
  { rating: 'high', language: 'fr', mark: 'practice', in: 'fr', words: ['fort', 'forte', 'forts', 'fortes', 'haut', 'haute'] },
  { rating: 'very-high', language: 'fr', mark: 'read', at: 'french-ratings', words: ['très élevé', 'toxique'] },
  { rating: 'very-high', language: 'fr', mark: 'practice', words: ['très élevée', 'très élevés', 'très élevées', 'très riche', 'très riches', 'très fort', 'très forte', 'excessif', 'excessive', 'excessifs', 'excès', 'en excès', 'excédentaire', 'excédentaires'] },

  { rating: 'very-low', language: 'de', mark: 'read', at: 'german-lab-classes', words: ['sehr niedrig'] },
  { rating: 'very-low', language: 'de', mark: 'read', at: 'tyrol-orchard-soil', words: ['unterversorgung'] },
  { rating: 'very-low', language: 'de', mark: 'practice', words: ['sehr gering', 'sehr niedrige', 'sehr niedriger', 'sehr geringer', 'sehr geringe', 'sehr schlecht', 'extrem niedrig', 'stark unterversorgt', 'viel zu niedrig'] },
  { rating: 'low', language: 'de', mark: 'read', at: 'german-lab-classes', words: ['niedrig'] },
  { rating: 'low', language: 'de', mark: 'read', at: 'german-garden-report', words: ['schlecht'] },
  { rating: 'low', language: 'de', mark: 'practice', words: ['niedrige', 'niedriger', 'gering', 'geringe', 'geringer', 'mäßig niedrig', 'etwas niedrig', 'zu niedrig', 'zu gering', 'unterversorgt', 'mangelhaft', 'mangel', 'unzureichend', 'schwach versorgt'] },
  { rating: 'low', language: 'de', mark: 'practice', in: 'de', words: ['arm', 'schwach'] },
  { rating: 'medium', language: 'de', mark: 'practice', words: ['mittel', 'mittlere', 'mittlerer', 'mittleres', 'mittelmäßig', 'mäßig'] },
  { rating: 'optimum', language: 'de', mark: 'read', at: 'german-lab-classes', words: ['optimal'] },
  { rating: 'optimum', language: 'de', mark: 'practice', words: ['optimale', 'optimaler', 'ausreichend', 'ausreichende', 'anzustreben', 'anzustrebend', 'gut versorgt', 'zufriedenstellend', 'genügend', 'im zielbereich'] },
  { rating: 'optimum', language: 'de', mark: 'practice', in: 'de', words: ['gut'] },
  { rating: 'high', language: 'de', mark: 'read', at: 'german-lab-classes', words: ['hoch'] },
  { rating: 'high', language: 'de', mark: 'practice', words: ['hohe', 'hoher', 'hohes', 'zu hoch', 'etwas hoch', 'erhöht', 'mäßig hoch', 'überversorgt'] },
  { rating: 'high', language: 'de', mark: 'practice', in: 'de', words: ['reich', 'stark'] },
  { rating: 'very-high', language: 'de', mark: 'read', at: 'german-lab-classes', words: ['sehr hoch', 'extrem hoch'] },
  { rating: 'very-high', language: 'de', mark: 'read', at: 'tyrol-orchard-soil', words: ['überversorgung'] },
  { rating: 'very-high', language: 'de', mark: 'practice', words: ['sehr hohe', 'sehr hoher', 'stark überversorgt', 'viel zu hoch', 'besonders hoch', 'überhöht'] },

  { rating: 'very-low', language: 'pt', mark: 'read', at: 'brazil-phosphorus-words', words: ['muito baixo'] },
  { rating: 'very-low', language: 'pt', mark: 'read', at: 'portuguese-soils', words: ['muito baixa'] },
  { rating: 'very-low', language: 'pt', mark: 'practice', words: ['muito baixos', 'muito baixas', 'muito pobre', 'extremamente baixo', 'extremamente baixa', 'muito deficiente'] },
  { rating: 'low', language: 'pt', mark: 'read', at: 'cerrado-tables', words: ['baixa', 'baixo'] },
  { rating: 'low', language: 'pt', mark: 'practice', words: ['baixos', 'baixas', 'deficiente', 'deficientes', 'pobre', 'pobres', 'insuficiente', 'insuficientes', 'demasiado baixo', 'demasiado baixa'] },
  { rating: 'low', language: 'pt', mark: 'practice', in: 'pt', words: ['fraco', 'fraca'] },
  { rating: 'medium', language: 'pt', mark: 'read', at: 'brazil-phosphorus-words', words: ['médio'] },
  { rating: 'medium', language: 'pt', mark: 'read', at: 'cerrado-tables', in: 'pt', words: ['média'] },
  { rating: 'medium', language: 'pt', mark: 'practice', words: ['médios', 'moderado', 'moderada'] },
  { rating: 'medium', language: 'pt', mark: 'practice', in: 'pt', words: ['médias'] },
  { rating: 'optimum', language: 'pt', mark: 'read', at: 'cerrado-tables', words: ['adequada', 'adequado'] },
  { rating: 'optimum', language: 'pt', mark: 'practice', words: ['adequados', 'adequadas', 'suficiente', 'suficientes', 'satisfatório', 'satisfatória', 'ótimo', 'ótima', 'óptimo', 'óptima', 'normal'] },
  { rating: 'optimum', language: 'pt', mark: 'practice', in: 'pt', words: ['bom', 'boa'] },
  { rating: 'high', language: 'pt', mark: 'read', at: 'cerrado-tables', words: ['alta', 'alto'] },
  { rating: 'high', language: 'pt', mark: 'practice', words: ['altos', 'altas', 'elevado', 'elevada', 'elevados', 'elevadas', 'demasiado alto', 'demasiado alta'] },
  { rating: 'high', language: 'pt', mark: 'practice', in: 'pt', words: ['rico', 'rica'] },
  { rating: 'very-high', language: 'pt', mark: 'read', at: 'portuguese-soils', words: ['excessiva'] },
  { rating: 'very-high', language: 'pt', mark: 'read', at: 'brazil-phosphorus-words', words: ['muito alta'] },
  { rating: 'very-high', language: 'pt', mark: 'practice', words: ['muito alto', 'muito altos', 'muito altas', 'muito elevado', 'muito elevada', 'excessivo', 'excessivos', 'excesso', 'em excesso', 'tóxico', 'extremamente alto', 'extremamente alta'] },

  { rating: 'very-low', language: 'it', mark: 'practice', words: ['molto basso', 'molto bassa', 'molto bassi', 'molto basse', 'molto scarso', 'molto scarsa', 'molto povero', 'molto povera', 'molto carente', 'bassissimo', 'bassissima', 'estremamente basso', 'estremamente bassa'] },
  { rating: 'low', language: 'it', mark: 'read', at: 'campania-potassium', words: ['povero'] },
  { rating: 'low', language: 'it', mark: 'practice', words: ['basso', 'bassa', 'bassi', 'povera', 'poveri', 'scarso', 'scarsa', 'scarsi', 'carente', 'carenti', 'insufficiente', 'insufficienti', 'troppo basso', 'troppo bassa', 'moderatamente basso', 'moderatamente bassa', 'leggermente basso', 'leggermente bassa'] },
  { rating: 'low', language: 'it', mark: 'practice', in: 'it', words: ['basse'] },
  { rating: 'medium', language: 'it', mark: 'read', at: 'campania-potassium', words: ['mediamente dotato'] },
  { rating: 'medium', language: 'it', mark: 'practice', words: ['medio', 'medi', 'mediocre', 'moderato', 'moderata', 'medio basso', 'medio-basso', 'medio alto', 'medio-alto'] },
  { rating: 'medium', language: 'it', mark: 'practice', in: 'it', words: ['media', 'medie'] },
  { rating: 'optimum', language: 'it', mark: 'read', at: 'campania-potassium', words: ['ben dotato'] },
  { rating: 'optimum', language: 'it', mark: 'practice', words: ['ben dotata', 'buono', 'sufficiente', 'sufficienti', 'adeguato', 'adeguata', 'ottimale', 'ottimo', 'soddisfacente', 'normale', 'normali'] },
  { rating: 'optimum', language: 'it', mark: 'practice', in: 'it', words: ['buona'] },
  { rating: 'high', language: 'it', mark: 'read', at: 'campania-potassium', words: ['ricco'] },
  { rating: 'high', language: 'it', mark: 'practice', words: ['alto', 'alta', 'alti', 'elevato', 'elevata', 'elevati', 'elevate', 'ricca', 'ricchi', 'troppo alto', 'troppo alta', 'troppo elevato', 'troppo elevata', 'moderatamente alto', 'moderatamente elevato', 'leggermente alto'] },
  { rating: 'high', language: 'it', mark: 'practice', in: 'it', words: ['alte', 'forte'] },
  { rating: 'very-high', language: 'it', mark: 'practice', words: ['molto alto', 'molto alta', 'molto alti', 'molto elevato', 'molto elevata', 'molto elevati', 'molto ricco', 'molto ricca', 'elevatissimo', 'elevatissima', 'eccessivo', 'eccessiva', 'eccesso', 'in eccesso', 'tossico'] },
];

const pairs = (sets: readonly RatingSet[]): (readonly [string, Rating])[] => {
  const seen = new Map<string, Rating>();
  for (const { rating, words } of sets) for (const word of words) if (!seen.has(word)) seen.set(word, rating);
  return [...seen];
};

/** Rating words good in every report. */
export const RATING_WORDS: readonly (readonly [word: string, rating: Rating])[] = pairs(RATING_SETS.filter((s) => !s.in));
/** Rating words good only in a report of their language. */
export const RATING_WORDS_BY_LANGUAGE: readonly (readonly [word: string, rating: Rating, only: Language])[] = RATING_SETS.flatMap(({ in: only, rating, words }) => (only ? words.map((word) => [word, rating, only] as const) : []));

/** Letters of American reports that stand behind a value, perhaps with + or -. "DEF" and "SUFF" are words above. */
export const RATING_LETTERS: readonly (WordSet & { readonly letters: Readonly<Record<string, Rating>> })[] = [
  { language: 'en', mark: 'read', at: 'virginia-report', letters: { L: 'low', M: 'medium', H: 'high', VH: 'very-high', EH: 'very-high' } },
  { language: 'en', mark: 'practice', letters: { VL: 'very-low', D: 'low', S: 'optimum', O: 'optimum', OPT: 'optimum', E: 'very-high', EX: 'very-high' } },
];
