/** The library: plain data in, plain data out, in Node and in a browser. */
export { loadOrchard } from './orchard/load.ts';
export type { Orchard, OrchardResult } from './orchard/load.ts';
export { readReport } from './soil/read.ts';
export type { Report } from './soil/read.ts';
export { rateSample } from './rating/rate.ts';
export { gather } from './gather.ts';
export type { Gathered } from './gather.ts';
export { planSeason } from './plan.ts';
export type { Plan } from './plan.ts';
export { planJson } from './json/plan-json.ts';
export { readJson } from './json/read-json.ts';
export { collector } from './json/figures.ts';
export { sheetView } from './sheet/build.ts';
export { renderSheet } from './sheet/render.ts';
export { loadLanguage } from './words/load.ts';
