/** The years of each zone as a page to keep: a drawing and a sentence for each value, what went on between the tests. */
import type { Between, ZoneYears } from '../years.ts';
import type { Plan } from '../plan.ts';
import type { Series } from '../rating/trend.ts';
import type { System } from '../words/show.ts';
import { showDay, showMass, showMonth, showNutrient } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { numeral, say } from '../words/words.ts';
import { methodName } from '../tables/labs.ts';
import { drawYears } from './drawings.ts';
import { escaped } from './escape.ts';

const two = (x: number): number => Number(x.toPrecision(x >= 100 ? 3 : 2));
const isPh = (s: Series): boolean => s.item === 'ph' || s.item === 'ph-salt';
const valueOf = (s: Series, x: number, L: Language): string => (isPh(s) ? numeral(Number(x.toFixed(1)), L) : numeral(two(x), L));
const nameOf = (s: Series, L: Language): string => [say(L, 'item', s.item), s.method === null || s.item === 'ph' ? '' : methodName(s.method)].filter(Boolean).join(', ');

/** "P, Mehlich 3: 60 (Nov 2019), 72 (Nov 2022), 80 mg/kg (Nov 2025). It rises." */
export function seriesLine(s: Series, L: Language): string {
  const points = s.points.map((p, i) => `${valueOf(s, p.value, L)}${i === s.points.length - 1 && s.unit && !isPh(s) ? ` ${s.unit}` : ''}${p.taken === '' ? '' : ` (${showMonth(p.taken, L)})`}`).join(', ');
  return [
    `${nameOf(s, L)}: ${points}.`,
    s.trend === null ? '' : say(L, 'years', s.trend),
    s.jump ? say(L, 'years', 'jump') : '',
    s.elsewhere.length > 0 ? say(L, 'years', 'elsewhere', { list: s.elsewhere.map((d) => showMonth(d, L)).join(', ') }) : '',
  ].filter(Boolean).join(' ');
}

export function betweenLine(b: Between, L: Language, system: System): string {
  const fed = (['N', 'P2O5', 'K2O'] as const).filter((n) => b[n] > 0).map((n) => `${showNutrient(b[n], system, L)} ${n}`);
  const other = (['lime', 'sulphur'] as const).filter((k) => b[k] > 0).map((k) => `${showMass(b[k], system, L)} ${say(L, 'years', k)}`);
  const list = [...fed, ...other].join(', ');
  return `${say(L, 'years', 'between', { from: showDay(b.from, L, true), until: showDay(b.until, L, true) })} ${list === '' ? say(L, 'years', 'nothing') : list}${b.unknown > 0 ? say(L, 'years', b.unknown === 1 ? 'unknown1' : 'unknownN', { n: b.unknown }) : '.'}`;
}

const STYLE = ['body{font:12pt/1.4 sans-serif;max-width:46rem}', 'body{margin:1rem auto;padding:0 1rem}', 'body{color:#000;background:#fff}', 'figure{margin:0 0 .6rem;break-inside:avoid}', 'svg{width:100%;height:auto}', 'h2{margin:1.2rem 0 .3rem}', '@page{margin:15mm}'].join('');

/** A whole HTML document without script or request. */
export function yearsPage(years: readonly (ZoneYears & { readonly again: number })[], { orchard, season }: Pick<Plan, 'orchard' | 'season'>): string {
  const { language: L, units: system } = orchard.where;
  const title = escaped(say(L, 'years', 'title', { orchard: orchard.name }));
  const zones = years.map((z) => [
    `<h2>${escaped(z.zone)}</h2>`,
    ...z.series.map((s) => `<figure>${s.points.length > 1 ? drawYears({ points: s.points, label: seriesLine(s, L), name: (x) => valueOf(s, x, L), when: (d) => showMonth(d, L) }) : ''}<figcaption>${escaped(seriesLine(s, L))}</figcaption></figure>`),
    ...z.between.map((b) => `<p>${escaped(betweenLine(b, L, system))}</p>`),
    `<p>${escaped(say(L, 'years', 'again', { year: z.again }))}</p>`,
  ].join('\n'));
  return `<!doctype html>\n<html lang="${L}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${title}</title><style>${STYLE}</style></head><body>\n<h1>${title}</h1>\n<p>${escaped(say(L, 'years', 'made', { day: showDay(season.today, L, true) }))}</p>\n${zones.join('\n')}\n<p>${escaped(say(L, 'years', 'bars'))}</p>\n</body></html>\n`;
}
