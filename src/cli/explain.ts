/** A figure in one sentence with its source, or as its arithmetic, and below it, indented, all that it came from. */
import { citeOf, reasonOf } from '../json/reason.ts';
import { sumOf } from '../json/sum.ts';
import type { Figure } from '../reason/figure.ts';
import { sourceOf } from '../tables/sources.ts';
import type { System } from '../words/show.ts';
import type { Language } from '../words/words.ts';

export function explain(f: Figure, language: Language, system: System, sums = false, depth = 0, seen = new Set<Figure>()): string {
  const pad = '  '.repeat(depth);
  const head = `${pad}${sums ? sumOf(f, language) : reasonOf(f, language, system)}`;
  if (seen.has(f)) return head;
  seen.add(f);
  const plain = f.cite.source === 'definition' || f.cite.source === 'grower' || f.cite.source === 'lab';
  const url = sourceOf(f.cite.source)?.url;
  const cite = plain ? [] : [`${pad}    ${citeOf(f.cite, language)}`, ...(url ? [`${pad}    ${url}`] : [])];
  return [head, ...cite, ...f.from.map((x) => explain(x, language, system, sums, depth + 1, seen))].join('\n');
}
