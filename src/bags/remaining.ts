/** What is still to give after what the diary has: planned doses are ticked off one by one, so that none is given twice. */
import { holdsGrade } from '../orchard/bag.ts';
import type { Fed } from '../orchard/history.ts';
import type { Feed } from './doses.ts';

/** A dose written down within this share of the planned one is that dose. */
const ALIKE = 0.2;

export type Remaining = { readonly feeds: readonly Feed[]; readonly fed: readonly Fed[] };

/** A planned dose counts as the plan counted it, with all that it holds. Null where something was fed that was not planned so. A dose without a weight counts as the one planned. */
export function remainingOf(planned: readonly Feed[], fed: readonly Fed[]): Remaining | null {
  const left = [...planned].sort((a, b) => (a.window.from < b.window.from ? -1 : a.window.from > b.window.from ? 1 : 0));
  const done: Fed[] = [];
  for (const f of [...fed].sort((a, b) => (a.date < b.date ? -1 : 1))) {
    const named = (x: Feed): boolean => f.bag === null || x.bag.label.toLowerCase() === f.bag.toLowerCase() || holdsGrade(f.bag, x.bag.printed);
    const at = left.findIndex((x) => named(x) && (f.g === null || Math.abs(f.g - x.g) <= ALIKE * x.g));
    if (at < 0) return null;
    const [dose] = left.splice(at, 1);
    const g = f.g ?? dose!.g;
    const { grade } = dose!.bag;
    done.push({ ...f, brought: f.holds ?? f.brought ?? { N: g * grade.N, P2O5: g * grade.P2O5, K2O: g * grade.K2O } });
  }
  return { feeds: planned.filter((x) => left.includes(x)), fed: done };
}
