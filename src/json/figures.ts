/** Figures as a flat map by id: nesting them would cost fifty times the bytes. Ids follow the order of collection. */
import type { Figure } from '../reason/figure.ts';
import type { Language } from '../words/words.ts';
import { reasonOf } from './reason.ts';

export type FigureJson = {
  value: number; unit: string; of: string; step: string; text: string; from: string[];
  cite: { source: string; at: string; mark: string };
};

export type Collector = {
  readonly id: (f: Figure) => string;
  readonly all: () => Record<string, FigureJson>;
  readonly figure: (id: string) => Figure | undefined;
};

export function collector(language: Language, system: 'us' | 'metric'): Collector {
  const ids = new Map<Figure, string>();
  const out: Record<string, FigureJson> = {};
  const id = (f: Figure): string => {
    const known = ids.get(f);
    if (known) return known;
    const mine = `f${ids.size + 1}`;
    ids.set(f, mine);
    const json: FigureJson = { value: f.value, unit: f.unit, of: f.of, step: f.step, text: '', from: [], cite: { source: f.cite.source, at: f.cite.at, mark: f.cite.mark } };
    out[mine] = json;
    json.from = f.from.map(id);
    json.text = reasonOf(f, language, system);
    return mine;
  };
  return { id, all: () => out, figure: (wanted) => [...ids].find(([, mine]) => mine === wanted)?.[0] };
}
