/** Crown and ring on the ground, each figure with what it came from. */
import type { Figure } from '../reason/figure.ts';
import { figure, told } from '../reason/figure.ts';
import { CROWN_GUESS, RING } from '../tables/limits.ts';
import { convert, FOOT, INCH } from '../units/units.ts';
import type { Tree } from './tree.ts';

const sum = { source: 'definition', at: 'circle', mark: 'derived' } as const;

/** `share` is the ground between the plants that each has to itself, where the spacing is told both ways. */
export type Crown = { readonly diameter: Figure<'m', 'crown'>; readonly area: Figure<'m2', 'crown'>; readonly share: Figure<'m2', 'crown'> | null; readonly guessed: boolean };
export type Ring = { readonly from: Figure<'m', 'ring'>; readonly to: Figure<'m', 'ring'>; readonly area: Figure<'m2', 'ring'> };

/** Measured, else from spacing, else guessed from age and size; a tub has none. */
export function crownOf(tree: Tree, years: number | null): Crown {
  const { diameter, guessed } = crownDiameter(tree, years);
  const area = figure((Math.PI * diameter.value ** 2) / 4, 'm2', 'crown', 'crown-area', sum, [diameter]);
  return { diameter, area, share: shareOf(tree), guessed };
}

function crownDiameter(tree: Tree, years: number | null): { diameter: Figure<'m', 'crown'>; guessed: boolean } {
  if (tree.across !== undefined) return { diameter: told(tree.across, 'm', 'crown', tree.name), guessed: false };
  if (tree.spacing) {
    const least = Math.min(...tree.spacing);
    const apart = told(least, 'm', 'tree', tree.name);
    return { diameter: figure(least, 'm', 'crown', 'crown-from-spacing', { source: 'medlar', at: 'crown-from-spacing', mark: 'judgement' }, [apart]), guessed: false };
  }
  const most = CROWN_GUESS.crops[tree.crop] ?? CROWN_GUESS.sizes[tree.size ?? 'dwarf'];
  const feet = Math.min(most, Math.max(1, (years ?? 1) * CROWN_GUESS.perYear));
  return { diameter: figure(feet * FOOT, 'm', 'crown', 'crown-guess', CROWN_GUESS.cite, years === null ? [] : [figure(years, 'year', 'tree', 'age', { source: 'grower', at: tree.name, mark: 'read' })]), guessed: true };
}

function shareOf(tree: Tree): Figure<'m2', 'crown'> | null {
  if (!tree.spacing) return null;
  const [a, b] = tree.spacing;
  return figure(a * b, 'm2', 'crown', 'spacing-share', sum, [told(a, 'm', 'tree', tree.name), told(b, 'm', 'tree', tree.name)]);
}

/** The ground dug over for one plant that is still to come: its part of the bed, else of the spacing; null where neither is told. */
export function bedOf(tree: Tree): Figure<'m2', 'crown'> | null {
  if (!tree.bed) return shareOf(tree);
  const [a, b] = tree.bed;
  return figure((a * b) / tree.count, 'm2', 'crown', 'bed-share', sum, [told(a, 'm', 'tree', tree.name), told(b, 'm', 'tree', tree.name)]);
}

/** Trunk diameter in metres: girth ÷ π where measured round; null where unknown or not said how. */
export function trunkDiameter(tree: Tree): Figure<'m', 'trunk'> | null {
  if (!tree.trunk || tree.trunk.measured === null) return null;
  const said = told(tree.trunk.m, 'm', 'trunk', tree.name);
  return tree.trunk.measured === 'across' ? said : figure(tree.trunk.m / Math.PI, 'm', 'trunk', 'girth-to-diameter', sum, [said]);
}

/** The feeding ring: clear of the trunk, out to `stretch` times its usual edge beyond the crown. */
export function ringOf(tree: Tree, crown: Crown, outerShare: number = RING.outerShare): Ring {
  const trunk = trunkDiameter(tree);
  const innerFt = trunk ? RING.inner.find((r) => trunk.value / INCH < r.under)!.ft : RING.inner[0].ft;
  const from = figure(innerFt * FOOT, 'm', 'ring', 'ring-inner', RING.cite, trunk ? [trunk] : []);
  const outer = Math.max((outerShare * crown.diameter.value) / 2, convert(RING.leastFt, 'ft', 'm'), from.value + FOOT);
  const to = figure(outer, 'm', 'ring', 'ring-outer', RING.cite, [crown.diameter]);
  const area = figure(Math.PI * (to.value ** 2 - from.value ** 2), 'm2', 'ring', 'ring-area', sum, [from, to]);
  return { from, to, area };
}
