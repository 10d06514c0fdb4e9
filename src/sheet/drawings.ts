/** Drawings for paper, as SVG: the ring under a tree, and the season as a strip. Millimetres; letters of 12 points. The distances of a ring stand beside it. */
import type { Day } from '../units/date.ts';
import { addDays, daysBetween } from '../units/date.ts';
import { escaped } from './escape.ts';

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
  return `<svg class="ring" role="img" aria-label="${escaped(d.label)}" viewBox="0 0 11 11" width="11mm" height="11mm">`
    + `<defs><pattern id="h${d.id}" width="1.2" height="1.2" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V1.2" stroke="#000" stroke-width=".5"/></pattern></defs>`
    + `<circle cx="${c}" cy="${c}" r="${n(to)}" fill="url(#h${d.id})" stroke="#000" stroke-width=".25"/>`
    + `<circle cx="${c}" cy="${c}" r="${n(from)}" fill="#fff" stroke="#000" stroke-width=".25"/>`
    + `<circle cx="${c}" cy="${c}" r="${n(crown)}" fill="none" stroke="#000" stroke-width=".4" stroke-dasharray="1.2 .8"/>`
    + `<circle cx="${c}" cy="${c}" r=".7"/></svg>`;
}

/** Room for the word at the last day, at the edge. */
const STOP_WIDE = 16;
/** A capital of a plain face is about so wide of its height. */
const CAPITAL = 0.72;
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
    const name = x(at) + 12 < width ? `<text x="${n(x(at) + 1)}" y="19">${escaped(label)}</text>` : '';
    months.push(`<path d="M${n(x(at))} 8V11" stroke="#000" stroke-width=".3"/>${name}`);
  }
  const boxes = d.windows.map((w) => {
    const [a, b] = [x(w.from), Math.max(x(w.until), x(w.from) + 3)];
    return { a, b, middle: (a + b) / 2, text: w.text };
  });
  const windows = boxes.map(({ a, b, middle, text }) => `<rect x="${n(a)}" y="8" width="${n(b - a)}" height="6" fill="#fff" stroke="#000" stroke-width=".6"/><text x="${n(middle)}" y="6.6" text-anchor="middle">${escaped(text)}</text>`);
  const stop = x(d.stop);
  // The word stands behind its bar, or before it where the number of a later window, as of evergreens, would stand in it.
  const wide = d.stopText.length * CAPITAL * LETTER;
  const isFree = (from: number): boolean => boxes.every(({ middle }) => middle < from - LETTER / 2 || middle > from + wide + LETTER / 2);
  const turned = !isFree(stop + 1.5) && isFree(stop - 1.5 - wide);
  return `<svg class="strip" role="img" aria-label="${escaped(d.label)}" viewBox="0 0 ${width} 20" width="100%" font-size="${LETTER}" font-family="sans-serif">`
    + `<defs><pattern id="stop" width="1.4" height="1.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V1.4" stroke="#000" stroke-width=".6"/></pattern></defs>`
    + `<path d="M0 14H${width}" stroke="#000" stroke-width=".5"/><rect x="${n(stop)}" y="8" width="${n(width - stop)}" height="6" fill="url(#stop)"/><path d="M${n(stop)} 2V14" stroke="#000" stroke-width="1"/>`
    + `<text x="${n(turned ? stop - 1.5 : Math.min(stop + 1.5, width - STOP_WIDE))}" y="6.6"${turned ? ' text-anchor="end"' : ''}>${escaped(d.stopText)}</text>${windows.join('')}${months.join('')}</svg>`;
}

export type CurveDrawing = { readonly now: number; readonly low: number; readonly high: number; readonly points: readonly { readonly ph: number; readonly low: number; readonly high: number }[]; readonly goals: readonly number[]; readonly amount: string; readonly label: string; readonly name: (ph: number) => string; readonly id: string };

/** pH upwards against amount to the right: what suits, hatched between dashed lines; the way there, as wide as publications lie apart; a line down from each goal. */
export function drawCurve(d: CurveDrawing): string {
  const [left, right, top, bottom] = [10, 61, 2.5, 19];
  const all = [d.now, d.low, d.high, ...d.points.map((p) => p.ph)];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const far = Math.max(...d.points.map((p) => p.high));
  const x = (amount: number): number => left + (amount / far) * (right - left);
  const y = (ph: number): number => bottom - ((ph - least) / (most - least)) * (bottom - top);
  const edge = (points: readonly (readonly [amount: number, ph: number])[]): string => points.map(([amount, ph]) => `${n(x(amount))} ${n(y(ph))}`).join('L');
  const between = edge([...d.points.map((p) => [p.low, p.ph] as const), ...d.points.toReversed().map((p) => [p.high, p.ph] as const)]);
  // The present pH is named first, then the edges of what suits, where there is room for letters.
  const named = [d.now, d.low, d.high].filter((ph, i, list) => list.slice(0, i).every((other) => Math.abs(y(ph) - y(other)) >= LETTER + 0.6));
  const hatch = (id: string, gap: number, turn: number): string => `<pattern id="${id}${d.id}" width="${gap}" height="${gap}" patternUnits="userSpaceOnUse" patternTransform="rotate(${turn})"><path d="M0 0V${gap}" stroke="#000" stroke-width=".3"/></pattern>`;
  const goals = d.points.filter((p) => d.goals.includes(p.ph));
  // A letter of a plain face is about 0.56 of its height wide; the nought stands only where a long amount leaves it room.
  const zero = right - d.amount.length * 0.56 * LETTER > left + LETTER;
  return `<svg class="curve" role="img" aria-label="${escaped(d.label)}" viewBox="0 0 62 26" width="62mm" height="26mm" font-size="${LETTER}" font-family="sans-serif">`
    + `<defs>${hatch('band', 3.2, 45)}${hatch('span', 0.8, -45)}</defs>`
    + `<rect x="${left}" y="${n(y(d.high))}" width="${right - left}" height="${n(y(d.low) - y(d.high))}" fill="url(#band${d.id})"/>`
    + [d.low, d.high].map((ph) => `<path d="M${left} ${n(y(ph))}H${right}" stroke="#000" stroke-width=".3" stroke-dasharray="1.2 .8"/>`).join('')
    + `<path d="M${between}Z" fill="url(#span${d.id})" stroke="#000" stroke-width=".7" stroke-linejoin="round"/>`
    + goals.map((p) => `<path d="M${n(x(p.high))} ${n(y(p.ph))}V${bottom}" stroke="#000" stroke-width=".4"/>`).join('')
    + `<path d="M${left} ${top}V${bottom}H${right}" fill="none" stroke="#000" stroke-width=".5"/><circle cx="${left}" cy="${n(y(d.now))}" r="1"/>`
    + named.map((ph) => `<text x="${left - 1.6}" y="${n(y(ph) + 1.5)}" text-anchor="end">${escaped(d.name(ph))}</text>`).join('')
    + `${zero ? `<text x="${left}" y="24.4">0</text>` : ''}<text x="${right}" y="24.4" text-anchor="end">${escaped(d.amount)}</text></svg>`;
}

export type YearsDrawing = { readonly points: readonly { readonly taken: string; readonly value: number; readonly low: number; readonly high: number }[]; readonly label: string; readonly name: (value: number) => string; readonly when: (taken: string) => string };

/** Tests from left to right, each with a bar as long as the lab strays, its value above it and its month below; the scale begins at nought unless the values lie far from it. */
export function drawYears({ points, label, name, when }: YearsDrawing): string {
  const [left, right, top, bottom] = [12, 166, 9, 30];
  const [least, most] = [Math.min(...points.map((p) => p.low)), Math.max(...points.map((p) => p.high))];
  const floor = least > most / 2 ? least - (most - least) / 4 : 0;
  const first = Date.parse(points[0]!.taken);
  const span = Math.max(1, Date.parse(points.at(-1)!.taken) - first);
  const x = (taken: string): number => left + ((Date.parse(taken) - first) / span) * (right - left);
  const y = (value: number): number => bottom - ((value - floor) / (most - floor || 1)) * (bottom - top);
  const line = points.map((p) => `${n(x(p.taken))} ${n(y(p.value))}`).join('L');
  // Names closer than a name is wide would run into each other; the newest keeps its own.
  const named = points.filter((p, i) => points.slice(i + 1).every((q) => x(q.taken) - x(p.taken) >= 20));
  return `<svg class="years" role="img" aria-label="${escaped(label)}" viewBox="0 0 178 37" font-size="${LETTER}" font-family="sans-serif">`
    + `<path d="M${left - 6} ${bottom}H${right + 6}" stroke="#000" stroke-width=".4"/><path d="M${line}" fill="none" stroke="#000" stroke-width=".5" stroke-dasharray="1.6 1"/>`
    + points.map((p) => `<path d="M${n(x(p.taken))} ${n(y(p.low))}V${n(y(p.high))}M${n(x(p.taken) - 1.5)} ${n(y(p.low))}h3M${n(x(p.taken) - 1.5)} ${n(y(p.high))}h3" stroke="#000" stroke-width=".6" fill="none"/><circle cx="${n(x(p.taken))}" cy="${n(y(p.value))}" r="1.1"/>`).join('')
    + named.map((p) => `<text x="${n(x(p.taken))}" y="${n(y(p.high) - 1.5)}" text-anchor="middle">${escaped(name(p.value))}</text><text x="${n(x(p.taken))}" y="35.4" text-anchor="middle">${escaped(when(p.taken))}</text>`).join('')
    + '</svg>';
}

/** Amounts of one tree, in any one unit: `need` outlined, `supply` hatched, the span of other leaflets as a line with ends where there is one. */
export type BalanceDrawing = { readonly rows: readonly { readonly name: string; readonly need: number; readonly supply: number; readonly span: readonly [low: number, high: number] | null }[]; readonly label: string; readonly id: string };

export function drawBalance({ rows, label, id }: BalanceDrawing): string {
  const [left, right, height] = [16, 118, 7];
  const most = Math.max(1e-9, ...rows.flatMap((r) => [r.need, r.supply, r.span?.[1] ?? 0]));
  const x = (amount: number): number => left + (amount / most) * (right - left);
  const bars = rows.map((r, i) => {
    const y = 1 + i * height;
    const span = r.span ? `<path d="M${n(x(r.span[0]))} ${y + 5.6}H${n(x(r.span[1]))}M${n(x(r.span[0]))} ${y + 4.8}v1.6M${n(x(r.span[1]))} ${y + 4.8}v1.6" stroke="#000" stroke-width=".35" fill="none"/>` : '';
    return `<text x="0" y="${y + 3.8}">${escaped(r.name)}</text><rect x="${left}" y="${y + 0.6}" width="${n(x(r.supply) - left)}" height="3.2" fill="url(#b${id})"/><rect x="${left}" y="${y + 0.6}" width="${n(x(r.need) - left)}" height="3.2" fill="none" stroke="#000" stroke-width=".45"/>${span}`;
  });
  return `<svg class="balance" role="img" aria-label="${escaped(label)}" viewBox="0 0 120 ${rows.length * height + 1}" width="120mm" height="${rows.length * height + 1}mm" font-size="${LETTER}" font-family="sans-serif">`
    + `<defs><pattern id="b${id}" width="1" height="1" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V1" stroke="#000" stroke-width=".5"/></pattern></defs>${bars.join('')}</svg>`;
}
