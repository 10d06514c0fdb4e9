/** The sample is each nth mutant by Stryker's own numbering, from its top: no choice of ours, and every file, and every kind of mutant, has its share. */
export const isSampled = (id, every = Number(process.env.MEDLAR_EVERY ?? 1)) => Number(id) % every === Math.floor(every / 2);
