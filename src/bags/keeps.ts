/** How long what is left of a bag keeps: meals and coated grains two years, what grew or lived and is wet a season (practice), minerals as long as they are dry. */
import type { Bag } from '../orchard/bag.ts';
import type { Keeps } from '../tables/keeping.ts';
import { DAMP_AIR, DRAWS_WATER_FROM } from '../tables/keeping.ts';

export function keepsOf({ organic, liquid, fresh, slow, material }: Pick<Bag, 'organic' | 'liquid' | 'fresh' | 'slow' | 'material'>): Keeps {
  if (fresh || (organic !== null && (liquid || organic === 'manure' || organic === 'compost'))) return 'keeps-season';
  if (organic === 'meal' || slow || liquid) return 'keeps-two-years';
  return DRAWS_WATER_FROM.some((d) => d.material === material?.id && d.percent < DAMP_AIR.percent) ? 'keeps-sealed' : 'keeps';
}
