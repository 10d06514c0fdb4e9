/** What the decision knows of one tree: its facts, its age this season, its crown, and the soil it stands in. */
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Crown } from '../orchard/geometry.ts';
import type { Flag } from '../orchard/fact-words.ts';
import type { Tree } from '../orchard/tree.ts';
import type { Where } from '../orchard/where.ts';
import { organicMatterOf } from '../rating/organic.ts';
import type { Rated } from '../rating/rate.ts';
import type { Heaviness } from '../rating/texture.ts';
import type { Advice } from '../soil/advice.ts';
import type { Crop } from '../tables/crops.ts';
import { SOFT_FRUIT } from '../tables/crops.ts';
import type { Item } from '../tables/items.ts';
import type { Target } from '../tables/ratings.ts';
import type { Rule } from '../tables/rule.ts';

export type Soil = { readonly rated: readonly Rated[]; readonly heaviness: Heaviness | null };

export type Facts = {
  readonly tree: Tree;
  /** The crop whose figures feed it: its own, or the one that the grower chose to borrow from. */
  readonly crop: Crop;
  /** The grower's own rules. */
  readonly rules: readonly Rule[];
  readonly season: number;
  readonly years: number | null;
  readonly young: boolean;
  /** Ground dug over for a plant that is still to come, which is fed by it alone; `null` where nobody told how much, absent once it stands. */
  readonly bed?: Figure<'m2', 'crown'> | null;
  readonly crown: Crown;
  /** Null where nothing was tested, and for a tub, which stands in its own mix, whatever the ground. */
  readonly soil: Soil | null;
  readonly where: Where;
  /** The lab's own recommendations, none for a tub, and whether the grower follows them. */
  readonly advice: readonly Advice[];
  readonly byLab: boolean;
  /** Grams of N that the diary has for last season; null where nobody knows. */
  readonly lastN: number | null;
};

/** The ground that a plant is fed on: of bushes, canes and vines their part of the row, where the spacing is told; of trees that under the crown. */
export const groundOf = (f: Facts): Figure<'m2', 'crown'> => (SOFT_FRUIT.includes(f.crop) ? f.crown.share ?? f.crown.area : f.crown.area);

/** Whether the plant is still to come. */
export const isToCome = (f: Facts): boolean => f.bed !== undefined;

/** Years in the ground up to which a plant is young where nobody says (our judgement): a strawberry bears the year after planting, canes and bushes in their third. */
const YOUNG_UNTIL: Readonly<Partial<Record<Crop, number>>> = { strawberry: 0, raspberry: 2, blackberry: 2, currant: 2, gooseberry: 2, grape: 2 };

/** Stated not bearing, or nothing stated and four years or less in the ground, fewer for soft fruit. */
export function isYoung(tree: Tree, years: number | null): boolean {
  if (tree.flags.includes('not bearing')) return true;
  if (tree.flags.includes('bearing') || tree.fruit?.said === 'heavy' || tree.fruit?.said === 'light' || tree.fruit?.said === 'weight') return false;
  return years !== null && years <= (YOUNG_UNTIL[tree.fedAs ?? tree.crop] ?? 4);
}

export const has = (f: Facts, flag: Flag): boolean => f.tree.flags.includes(flag);
export const yearsOf = (f: Facts): Figure<'year', 'tree'>[] => (f.years === null ? [] : [figure(f.years, 'year', 'tree', 'age', { source: 'grower', at: f.tree.name, mark: 'read' })]);
export const ratedOf = (f: Facts, item: Item): Rated | undefined => f.soil?.rated.find((r) => r.reading.item === item);
export const targetOf = (f: Facts, item: Item): Target | null => ratedOf(f, item)?.target ?? null;

/** Organic matter in percent with its source, from organic carbon where only that is printed; null where the report gives neither with a unit. */
export const organicMatter = (f: Facts): ReturnType<typeof organicMatterOf> => organicMatterOf({ readings: f.soil?.rated.map((r) => r.reading) ?? [] });

/** Last season's growth in metres; null where unmeasured or measured in an earlier year. */
export function growthOf(f: Facts): number | null {
  const { shoots } = f.tree;
  return shoots && (shoots.year === undefined || shoots.year >= f.season - 1) ? shoots.m : null;
}
