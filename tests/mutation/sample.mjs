const only = process.env.MEDLAR_ONLY ? new Set(process.env.MEDLAR_ONLY.split(',')) : null;

/**
 * The sample is each nth mutant by Stryker's own numbering, from its top: no choice of ours, and every file, and every kind of mutant, has its share.
 * A second look is at those it is told of, MEDLAR_ONLY, alone.
 */
export const isSampled = (id, every = Number(process.env.MEDLAR_EVERY ?? 1)) => (only ? only.has(String(id)) : Number(id) % every === Math.floor(every / 2));
