/** Drawings for paper, as SVG: the ring under a tree, and the season as a strip. Millimetres; letters of 12 points. The distances of a ring stand beside it. */
import type { Day } from '../units/date.ts';
import { addDays, daysBetween } from '../units/date.ts';

const escapeXml = (text: string): string => text.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);

/** 12 points in millimetres. */
const LETTER = 4.24;
const n = (value: number): string => String(Math.round(value * 100) / 100);

export type RingDrawing = { readonly from: number; readonly to: number; readonly crown: number; readonly label: string; readonly id: string };

/** Black trunk, white keep-off disc, hatched ring, dashed edge of the crown. */
export function drawRing(d: RingDrawing): string {
  const outer = Math.max(d.to, d.crown);
  const scale = 5.3 / outer;
  const [from, to, crown] = [d.from * scale, d.to * scale, d.crown * scale];
  const c = 5.5;
  return `<svg class="ring" role="img" aria-label="${escapeXml(d.label)}" viewBox="0 0 11 11" width="11mm" height="11mm">`
    + `<defs><pattern id="h${d.id}" width="1.2" height="1.2" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V1.2" stroke="#000" stroke-width=".5"/></pattern></defs>`
    + `<circle cx="${c}" cy="${c}" r="${n(to)}" fill="url(#h${d.id})" stroke="#000" stroke-width=".25"/>`
    + `<circle cx="${c}" cy="${c}" r="${n(from)}" fill="#fff" stroke="#000" stroke-width=".25"/>`
    + `<circle cx="${c}" cy="${c}" r="${n(crown)}" fill="none" stroke="#000" stroke-width=".4" stroke-dasharray="1.2 .8"/>`
    + `<circle cx="${c}" cy="${c}" r=".7"/></svg>`;
}

export type StripDrawing = { readonly start: Day; readonly end: Day; readonly windows: readonly { from: Day; until: Day; text: string }[]; readonly stop: Day; readonly stopText: string; readonly months: readonly string[]; readonly label: string };

/** The season as a strip: months, the windows of the working days, and the bar after which nothing is given. */
export function drawStrip(d: StripDrawing): string {
  const width = 178;
  const days = daysBetween(d.start, d.end);
  const x = (at: Day): number => Math.max(0, Math.min(width, (daysBetween(d.start, at) / days) * width));
  const months: string[] = [];
  for (let at = d.start; at < d.end; at = addDays(`${at.slice(0, 8)}01`, 32).slice(0, 8) + '01') {
    const label = d.months[Number(at.slice(5, 7)) - 1]!;
    // A month too close to the edge keeps its mark and loses its name.
    const name = x(at) + 12 < width ? `<text x="${n(x(at) + 1)}" y="19">${escapeXml(label)}</text>` : '';
    months.push(`<path d="M${n(x(at))} 8V11" stroke="#000" stroke-width=".3"/>${name}`);
  }
  const windows = d.windows.map((w) => {
    const [a, b] = [x(w.from), Math.max(x(w.until), x(w.from) + 3)];
    return `<rect x="${n(a)}" y="8" width="${n(b - a)}" height="6" fill="#fff" stroke="#000" stroke-width=".6"/><text x="${n((a + b) / 2)}" y="6.6" text-anchor="middle">${escapeXml(w.text)}</text>`;
  });
  const stop = x(d.stop);
  return `<svg class="strip" role="img" aria-label="${escapeXml(d.label)}" viewBox="0 0 ${width} 20" width="100%" font-size="${LETTER}" font-family="sans-serif">`
    + `<defs><pattern id="stop" width="1.4" height="1.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V1.4" stroke="#000" stroke-width=".6"/></pattern></defs>`
    + `<path d="M0 14H${width}" stroke="#000" stroke-width=".5"/><rect x="${n(stop)}" y="8" width="${n(width - stop)}" height="6" fill="url(#stop)"/><path d="M${n(stop)} 2V14" stroke="#000" stroke-width="1"/>`
    + `<text x="${n(Math.min(stop + 1.5, width - 16))}" y="6.6">${escapeXml(d.stopText)}</text>${windows.join('')}${months.join('')}</svg>`;
}
