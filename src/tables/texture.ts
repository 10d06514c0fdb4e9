/**
 * Soil texture: the triangle, the groups of several countries, the words of reports, the test by feel.
 * A class's name does not carry over: a German "toniger Lehm" of 25/35/40 is an American clay; so each row says whose it is.
 */
import type { Cite } from '../reason/figure.ts';
import type { Words } from '../words/en-US.ts';
import type { Kind } from './scale.ts';
import type { TextureClass } from './sulphur.ts';

export type Heaviness = 'light' | 'medium' | 'heavy';

/** Percent of the mineral part under 2 mm, summing to 100. */
export type Shares = { readonly sand: number; readonly silt: number; readonly clay: number };

export type UsdaClass =
  | 'sand' | 'loamy sand' | 'sandy loam' | 'loam' | 'silt loam' | 'silt'
  | 'sandy clay loam' | 'clay loam' | 'silty clay loam' | 'sandy clay' | 'silty clay' | 'clay';

/** Sand from 2 to 0.05 mm, silt to 0.002 mm. A point on a line belongs mostly to the finer class; every point to exactly one. */
export const USDA_TRIANGLE: { readonly classes: readonly { readonly name: UsdaClass; readonly holds: (s: Shares) => boolean }[]; readonly cite: Cite } = {
  cite: { source: 'nrcs-texture', at: 'boundaries of the classes', mark: 'read' },
  classes: [
    { name: 'sand', holds: ({ silt, clay }) => silt + 1.5 * clay < 15 },
    { name: 'loamy sand', holds: ({ silt, clay }) => silt + 1.5 * clay >= 15 && silt + 2 * clay < 30 },
    { name: 'sandy loam', holds: ({ sand, silt, clay }) => silt + 2 * clay >= 30 && ((clay >= 7 && clay < 20 && sand > 52) || (clay < 7 && silt < 50)) },
    { name: 'loam', holds: ({ sand, silt, clay }) => clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52 },
    { name: 'silt loam', holds: ({ silt, clay }) => (silt >= 50 && clay >= 12 && clay < 27) || (silt >= 50 && silt < 80 && clay < 12) },
    { name: 'silt', holds: ({ silt, clay }) => silt >= 80 && clay < 12 },
    { name: 'sandy clay loam', holds: ({ sand, silt, clay }) => clay >= 20 && clay < 35 && silt < 28 && sand > 45 },
    { name: 'clay loam', holds: ({ sand, clay }) => clay >= 27 && clay < 40 && sand > 20 && sand <= 45 },
    { name: 'silty clay loam', holds: ({ sand, clay }) => clay >= 27 && clay < 40 && sand <= 20 },
    { name: 'sandy clay', holds: ({ sand, clay }) => clay >= 35 && sand > 45 },
    { name: 'silty clay', holds: ({ silt, clay }) => clay >= 40 && silt >= 40 },
    { name: 'clay', holds: ({ sand, silt, clay }) => clay >= 40 && sand <= 45 && silt < 40 },
  ],
};

/** How far sand, silt and clay may miss 100 by rounding, %. */
export const SHARES_SUM = { within: 1, cite: { source: 'medlar', at: 'shares-sum', mark: 'judgement' } satisfies Cite } as const;

/** Clay %: under the first light, over the second heavy. */
export const AUSTRIA_CLAY = { light: 10, heavy: 30, cite: { source: 'austria-orchard', at: 'light under 10 %, heavy over 30 % clay', mark: 'read' } satisfies Cite } as const;
/** Clay % alone as the sulphur tables part texture: under the first two, and over the last. */
export const CLAY_ALONE = { sand: 10, sandyLoam: 20, clay: 30, cite: { source: 'medlar', at: 'clay-alone', mark: 'judgement' } satisfies Cite } as const;

/** Germany: six groups, sand from 2 to 0.063 mm. `letters` as reports print them. */
export const VDLUFA_GROUPS = {
  groups: [
    { group: 1, letters: ['S'], heaviness: 'light', means: 'sand' },
    { group: 2, letters: ['l\'S'], heaviness: 'light', means: 'sandy loam' },
    { group: 3, letters: ['lS'], heaviness: 'medium', means: 'sandy loam' },
    { group: 4, letters: ['sL', 'uL'], heaviness: 'medium', means: 'loam' },
    { group: 5, letters: ['t\'L', 'tL', 'lT', 'T'], heaviness: 'heavy', means: 'clay' },
    { group: 6, letters: ['Mo'], heaviness: null, means: null },
  ] satisfies readonly { group: number; letters: readonly string[]; heaviness: Heaviness | null; means: TextureClass | null }[],
  cite: { source: 'vdlufa-groups', at: 'groups 1 to 6; light 1 and 2, medium 3 and 4, heavy 5', mark: 'read' } satisfies Cite,
};
/** Clay % at which groups 2, 3, 4 and 5 begin. */
export const VDLUFA_CLAY = { from: [5, 12, 17, 25], cite: { source: 'vdlufa-groups', at: 'clay limits', mark: 'memory' } satisfies Cite } as const;

/** Minnesota's letters and the American classes they gather; peat and muck by organic matter. */
export const MINNESOTA = {
  groups: [
    { letter: 'C', classes: ['sand', 'loamy sand', 'sandy loam'], heaviness: 'light' },
    { letter: 'M', classes: ['loam', 'silt loam'], heaviness: 'medium' },
    { letter: 'F', classes: ['clay loam', 'silty clay loam', 'silty clay', 'clay'], heaviness: 'heavy' },
    { letter: 'P', classes: [], heaviness: null },
    { letter: 'K', classes: [], heaviness: null },
  ] satisfies readonly { letter: string; classes: readonly UsdaClass[]; heaviness: Heaviness | null }[],
  organicOver: 19,
  cite: { source: 'minnesota-texture', at: 'five categories', mark: 'read' } satisfies Cite,
};

/** UK by feel: gritty, sticky, silky; peaty by organic matter. */
export const UK_FEEL = {
  gritty: { sandOver: 50, clayUnder: 18 }, silky: { clayUnder: 35 }, sticky: { clayOver: 30 }, peaty: { organicOver: 20 },
  cite: { source: 'ahdb-texture', at: 'gritty, silky, sticky, peaty', mark: 'read' } satisfies Cite,
} as const;
/** UK soil types of the fertiliser manual, from the lightest. */
export const UK_SOIL_TYPES = {
  types: [
    { type: 'light sand', heaviness: 'light' }, { type: 'shallow', heaviness: 'medium' }, { type: 'medium', heaviness: 'medium' },
    { type: 'deep clayey', heaviness: 'heavy' }, { type: 'deep silty', heaviness: 'medium' }, { type: 'organic', heaviness: null }, { type: 'peat', heaviness: null },
  ] satisfies readonly { type: string; heaviness: Heaviness | null }[],
  cite: { source: 'uk-rb209', at: 'soil types', mark: 'memory' } satisfies Cite,
};

/** Australia's field texture, with about the clay % that it feels like. Its standard forbids turning lab clay into a grade, or back: kept to be shown. */
export const AUSTRALIA_FIELD: { readonly grades: readonly { readonly grade: string; readonly clay: readonly [number | null, number | null] }[]; readonly cite: Cite } = {
  grades: [
    { grade: 'sand', clay: [null, 5] }, { grade: 'loamy sand', clay: [5, 5] }, { grade: 'clayey sand', clay: [5, 10] }, { grade: 'sandy loam', clay: [10, 20] },
    { grade: 'loam', clay: [25, 25] }, { grade: 'silty loam', clay: [25, null] }, { grade: 'sandy clay loam', clay: [20, 30] }, { grade: 'clay loam', clay: [30, 35] },
    { grade: 'light clay', clay: [35, 40] }, { grade: 'light medium clay', clay: [40, 45] }, { grade: 'medium clay', clay: [45, 55] }, { grade: 'medium heavy clay', clay: [50, null] }, { grade: 'heavy clay', clay: [50, null] },
  ],
  cite: { source: 'australia-field-texture', at: 'approximate clay content', mark: 'read' },
};

/** Heaviness guessed from exchange capacity (upper edges, meq/100 g), on mineral soil under a pH and without salts. */
export const HEAVINESS_BY_CEC = {
  light: 10, medium: 30, phUnder: 7.3, organicUnder: 20,
  cite: { source: 'agvise-texture', at: 'table 1: sandy to 10, loams to 30, clayey over 30', mark: 'read' } satisfies Cite,
} as const;

/** Whose name a word is: a country's scheme, or a language in which the American classes are told. */
export type TextureScheme = 'usda' | 'uk' | 'au' | 'de' | 'es' | 'fr' | 'it' | 'pt';
export type TextureRow = {
  readonly words: readonly string[];
  readonly of: readonly TextureScheme[];
  /** As the sulphur and lime tables part texture. */
  readonly means: TextureClass | null;
  readonly heaviness: Heaviness | null;
  readonly cite: Cite;
};

const usda: Cite = { source: 'nrcs-texture', at: 'names of the classes', mark: 'read' };
const german: Cite = VDLUFA_GROUPS.cite;
const told: Cite = { source: 'medlar', at: 'texture-words', mark: 'memory' };
const field: Cite = AUSTRALIA_FIELD.cite;
const row = (of: TextureScheme | readonly TextureScheme[], means: TextureClass | null, heaviness: Heaviness | null, cite: Cite, ...words: string[]): TextureRow =>
  ({ words, of: typeof of === 'string' ? [of] : of, means, heaviness, cite });

/**
 * Words of texture, small letters without accents, blanks for hyphens. The longest that fits counts; two that disagree count for none.
 * Heaviness goes by the word's clay; mixtures of clay and loam are heavy here, as the lime and sulphur tables have no class between.
 */
export const TEXTURE_WORDS: readonly TextureRow[] = [
  row('usda', 'sand', 'light', usda, 'sand', 'sands', 'sandy', 'sandy soil', 'coarse sand', 'fine sand', 'loamy sand', 'loamy fine sand', 'loamy coarse sand'),
  row('usda', 'sandy loam', 'light', usda, 'sandy loam', 'fine sandy loam', 'very fine sandy loam', 'coarse sandy loam'),
  row('usda', 'loam', 'medium', usda, 'loam', 'loamy', 'loams', 'silt loam', 'silty loam', 'silt', 'silty'),
  row('usda', 'clay', 'heavy', usda, 'sandy clay loam', 'clay loam', 'silty clay loam', 'sandy clay', 'silty clay', 'clay', 'clayey', 'clays', 'clay soil'),
  row('uk', 'loam', 'medium', { source: 'uk-rb209', at: 'texture classes', mark: 'memory' }, 'sandy silt loam'),
  row('uk', 'sand', 'light', UK_SOIL_TYPES.cite, 'light sand'),
  row('uk', 'clay', 'heavy', UK_SOIL_TYPES.cite, 'deep clayey', 'deep clay'),
  row('uk', 'loam', 'medium', UK_SOIL_TYPES.cite, 'deep silty', 'deep silt'),
  row('au', 'sand', 'light', field, 'clayey sand'),
  row('au', 'clay', 'heavy', field, 'light clay', 'light medium clay', 'medium clay', 'medium heavy clay', 'heavy clay', 'clay loam sandy'),
  row(['usda', 'uk'], null, null, MINNESOTA.cite, 'peat', 'peaty', 'peats', 'muck', 'mucky', 'mucks', 'organic', 'organic soil', 'organic soils'),

  row('de', 'sand', 'light', german, 'sandig', 'sandiger boden', 'sandboden', 'anlehmiger sand', 'schluffiger sand'),
  row('de', 'sandy loam', 'light', german, 'lehmiger sand', 'schwach lehmiger sand'),
  row('de', 'sandy loam', 'medium', german, 'stark lehmiger sand', 'stark sandiger lehm'),
  row('de', 'loam', 'medium', german, 'sandiger lehm', 'schluffiger lehm', 'lehm', 'lehmig', 'lehmiger boden', 'lehmboden', 'schluff', 'schluffig', 'schluffboden', 'sandiger schluff', 'lehmiger schluff', 'milder lehm'),
  row('de', 'loam', 'heavy', told, 'schwerer lehm'),
  row('de', 'clay', 'heavy', german, 'toniger lehm', 'schwach toniger lehm', 'lehmiger ton', 'sandiger ton', 'schluffiger ton', 'toniger schluff', 'toniger sand', 'ton', 'tonig', 'toniger boden', 'tonboden', 'schwerer ton'),
  row('de', null, null, german, 'moor', 'moorboden', 'torf', 'niedermoor', 'hochmoor'),

  row(['es', 'pt'], 'sand', 'light', told, 'arena', 'arenas', 'arenoso', 'arenosa', 'arena franca', 'arenoso franco', 'areno francoso', 'areia', 'areia franca'),
  row(['es', 'pt'], 'sandy loam', 'light', told, 'franco arenoso', 'franco arenosa', 'franca arenosa'),
  row(['es', 'it', 'pt'], 'loam', 'medium', told, 'franco', 'franca', 'franco limoso', 'franco limosa', 'limoso', 'limosa', 'franco siltoso', 'franco siltosa', 'siltoso', 'siltosa'),
  row(['es', 'pt'], 'clay', 'heavy', told, 'franco arcilloso', 'franco arcillosa', 'franco arcillo arenoso', 'franco arcillo arenosa', 'franco arcillo limoso', 'franco arcillo limosa', 'arcillo arenoso', 'arcillo arenosa', 'arcillo limoso', 'arcillo limosa', 'arcilla', 'arcilloso', 'arcillosa',
    'franco argiloso', 'franco argilosa', 'franco argilo arenoso', 'franco argilo arenosa', 'franco argilo siltoso', 'franco argilo siltosa', 'argilo arenoso', 'argilo arenosa', 'argilo siltoso', 'argilo siltosa', 'argila', 'argila arenosa', 'argila siltosa', 'argiloso', 'argilosa'),

  row('it', 'sand', 'light', told, 'sabbia', 'sabbioso', 'sabbiosa', 'sabbia franca', 'sabbioso franco', 'sciolto', 'terreno sciolto'),
  row('it', 'sandy loam', 'light', told, 'franco sabbioso', 'franco sabbiosa'),
  row('it', 'loam', 'medium', told, 'medio impasto', 'limo'),
  row('it', 'clay', 'heavy', told, 'franco argilloso', 'franco argillosa', 'franco sabbioso argilloso', 'franco sabbioso argillosa', 'franco argilloso sabbioso', 'franco limoso argilloso', 'franco limoso argillosa', 'franco argilloso limoso', 'argilloso sabbioso', 'argilloso limoso', 'argilla', 'argilla sabbiosa', 'argilla limosa', 'argilloso', 'argillosa'),

  row('fr', 'sand', 'light', told, 'sable', 'sableux', 'sableuse', 'sable limoneux', 'sable loameux'),
  row('fr', 'sandy loam', 'light', told, 'limon sableux', 'limono sableux', 'limono sableuse', 'sablo limoneux', 'sablo limoneuse', 'loam sableux'),
  row('fr', 'loam', 'medium', told, 'limon', 'limoneux', 'limoneuse', 'limon fin', 'limon tres fin', 'loam limoneux', 'franc', 'franche', 'terre franche'),
  row('fr', 'clay', 'heavy', told, 'limon argileux', 'limon argileux fin', 'limon argilo sableux', 'limono argileux', 'limono argileuse', 'loam argileux', 'argile', 'argile sableuse', 'argile limoneuse', 'argileux', 'argileuse', 'argilo limoneux', 'argilo limoneuse', 'argilo sableux', 'argilo sableuse', 'argilo calcaire'),
];

/** Where rating scales part soils finer than lime and sulphur do: words of the rows above, and German letters and groups. */
export const FINER_WORDS: readonly (readonly [kind: Kind, words: readonly string[]])[] = [
  ['loamy sand', ['loamy sand', 'loamy fine sand', 'loamy coarse sand', 'anlehmiger sand', 'schwach lehmiger sand', 'lehmiger sand', 'stark lehmiger sand', 'l\'S', 'lS', '2', '3']],
  ['sandy loam', ['stark sandiger lehm', 'sandiger lehm', 'sL']],
  ['silt loam', ['silt loam', 'silty loam', 'silt', 'silty', 'sandy silt loam', 'deep silty', 'deep silt', 'schluffiger lehm', 'schluff', 'schluffig', 'schluffboden', 'sandiger schluff', 'lehmiger schluff', 'uL']],
  ['clay loam', ['sandy clay loam', 'clay loam', 'silty clay loam', 'clay loam sandy', 'schwach toniger lehm', 'toniger lehm', 't\'L', 'tL']],
  ['organic', ['peat', 'peaty', 'peats', 'muck', 'mucky', 'mucks', 'organic', 'organic soil', 'organic soils', 'moor', 'moorboden', 'torf', 'niedermoor', 'hochmoor', 'Mo', '6']],
];

/** Words that say a heaviness alone, where no word of texture stands. */
export const HEAVINESS_WORDS: readonly TextureRow[] = [
  row(['usda', 'uk', 'de'], null, 'light', told, 'light', 'coarse', 'leicht', 'leichte', 'leichter', 'leichten', 'leichtes'),
  row(['usda', 'uk', 'de'], null, 'medium', told, 'medium', 'shallow', 'mittel', 'mittlere', 'mittlerer', 'mittelschwer', 'mittelschwere', 'mittelschwerer'),
  row(['usda', 'uk', 'de'], null, 'heavy', told, 'heavy', 'fine', 'schwer', 'schwere', 'schwerer', 'schweren', 'schweres'),
  row(['es', 'pt', 'it', 'fr'], null, 'light', told, 'ligero', 'ligera', 'leve', 'leggero', 'leggera', 'legere', 'leger'),
  row(['es', 'pt', 'it', 'fr'], null, 'medium', told, 'medio', 'media', 'moyen', 'moyenne'),
  row(['es', 'pt', 'it', 'fr'], null, 'heavy', told, 'pesado', 'pesada', 'pesante', 'lourd', 'lourde'),
];

type FeelKey = keyof Words['feel'];
export type FeelId = 'roll' | 'stick' | 'rub' | 'roll-thin' | 'crunch' | 'shine';
/** An answer leads to the next question, or to a class: its German name, as it is written into a report, and the key of its name in words. */
export type FeelAnswer = { readonly key: FeelKey } & ({ readonly next: FeelId } | { readonly found: string; readonly name: FeelKey });
/**
 * Texture by feel, of moist kneaded soil. The print's last step, biting, parts clay from loamy clay; both are heavy, so it is left out.
 */
export const FEEL: { readonly first: FeelId; readonly steps: Readonly<Record<FeelId, { readonly ask: FeelKey; readonly answers: readonly FeelAnswer[] }>>; readonly cite: Cite } = {
  first: 'roll',
  steps: {
    roll: { ask: 'ask-roll', answers: [{ key: 'yes', next: 'roll-thin' }, { key: 'no', next: 'stick' }] },
    stick: { ask: 'ask-stick', answers: [{ key: 'yes', found: 'lehmiger Sand', name: 'loamy-sand' }, { key: 'no', next: 'rub' }] },
    rub: { ask: 'ask-rub', answers: [{ key: 'yes', found: 'schwach lehmiger Sand', name: 'weakly-loamy-sand' }, { key: 'no', found: 'Sand', name: 'feels-sand' }] },
    'roll-thin': { ask: 'ask-roll-thin', answers: [{ key: 'yes', next: 'crunch' }, { key: 'no', found: 'stark sandiger Lehm', name: 'very-sandy-loam' }] },
    crunch: { ask: 'ask-crunch', answers: [{ key: 'loudly', found: 'sandiger Lehm', name: 'feels-sandy-loam' }, { key: 'hardly', next: 'shine' }] },
    shine: { ask: 'ask-shine', answers: [{ key: 'dull', found: 'Lehm', name: 'feels-loam' }, { key: 'slightly', found: 'toniger Lehm', name: 'clayey-loam' }, { key: 'shiny', found: 'Ton', name: 'feels-clay' }] },
  },
  cite: { source: 'bodenwelten-feel', at: 'seven steps', mark: 'read' },
};
