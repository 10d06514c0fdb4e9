/** The answer of `read`. */
import type { Rated } from '../rating/rate.ts';
import type { Sample } from '../soil/reading.ts';
import { basisOf } from '../soil/reading.ts';
import type { Collector } from './figures.ts';

export type RatedSample = { readonly sample: Sample; readonly rated: readonly Rated[] };

export function readJson(samples: readonly RatedSample[], figures: Collector): unknown {
  return {
    samples: samples.map(({ sample, rated }) => ({
      name: sample.name,
      ...(sample.kind ? { kind: sample.kind } : {}),
      ...(sample.taken ? { taken: sample.taken } : {}),
      ...(sample.depth ? { depth: sample.depth } : {}),
      readings: rated.map((r) => readingJson(r, figures)),
      unread: sample.unread,
    })),
  };
}

function readingJson({ reading: r, mgPerKg, rating, target, cite, ours, near }: Rated, figures: Collector): unknown {
  return {
    item: r.item, value: r.value, unit: r.unit, asPrinted: r.asPrinted, line: r.place.line, method: r.method, basis: basisOf(r),
    mgPerKg: mgPerKg?.value ?? null, ...(mgPerKg ? { mgPerKgWhy: figures.id(mgPerKg) } : {}),
    lab: { rating: r.lab.rating, range: r.lab.range },
    rating, target, ...(cite ? { ratingCite: cite } : {}), ...(near ? { near } : {}),
    ...(ours ? { ours: { rating: ours.rating, target: ours.target, scale: ours.scale, ...(ours.name === undefined ? {} : { class: ours.name }), ...(ours.field ? { field: true } : {}), cite: ours.cite } } : {}),
    ...(r.index === undefined ? {} : { index: r.index }), ...(r.scheme ? { scheme: r.scheme } : {}),
    ...(r.to === undefined ? {} : { to: r.to }), ...(r.below ? { below: true } : {}), ...(r.above ? { above: true } : {}),
  };
}
