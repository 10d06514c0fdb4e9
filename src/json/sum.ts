/** A figure's arithmetic with its numbers filled in: "73.6 g N = 10.5 m² × 7 g/m²". A step whose arithmetic is a table look-up shows what it looked up. */
import type { Figure } from '../reason/figure.ts';
import { showValue } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { numeral } from '../words/words.ts';

/** Four figures at most, in the units of the reckoning: grams, metres. */
const shownIn = (f: Figure, L: Language): string => `${showValue(f.value, f.unit, L)}${f.of === 'N' || f.of === 'P2O5' || f.of === 'K2O' || f.of === 'MgO' ? ` ${f.of}` : ''}`;

/** One line: the figure and what it was reckoned from. */
export function sumOf(f: Figure, L: Language): string {
  const [a, b] = f.from;
  const reckoned = a ? right(f, a, b, L) : '';
  const shown = shownIn(f, L);
  return reckoned === '' || reckoned === shown ? shown : `${shown} = ${reckoned}`;
}

function right(f: Figure, a: Figure, b: Figure | undefined, L: Language): string {
  const shown = (x: Figure): string => shownIn(x, L);
  const number = (x: number): string => numeral(Number(x.toPrecision(4)), L);
  const per = (base: Figure): string => `${shown(base)} × ${number(f.value / base.value)} ${f.unit}/${base.unit}`;
  switch (f.step) {
    case 'crown-area': return `π/4 × (${shown(a)})²`;
    case 'ring-area': return `π × ((${shown(b!)})² - (${shown(a)})²)`;
    case 'spacing-share': return `${shown(a)} × ${shown(b!)}`;
    case 'bed-share': return `${shown(a)} × ${shown(b!)} ÷ ${number((a.value * b!.value) / f.value)}`;
    case 'girth-to-diameter': return `${shown(a)} ÷ π`;
    case 'ring-outer': return `${shown(a)} ÷ 2 × ${number((2 * f.value) / a.value)}`;
    case 'smallest': return `min(${f.from.map(shown).join(', ')})`;
    case 'organic-half': case 'clover-half': case 'blight-half': case 'lost-crop': case 'young-half': return `${shown(a)} ÷ 2`;
    case 'less-compost': case 'less-carried': return `${shown(a)} - ${shown(b!)}`;
    case 'leaf-raise': return `${shown(a)} × ${number(f.value / a.value)}`;
    case 'twice-removal': return `2 × ${shown(a)}`;
    case 'growth-short': case 'repeat': case 'bounded': return shown(f.value === a.value ? a : b ?? a);
    case 'lab-advice': return f.from.map(shown).join(' × ');
    // Its own cap, which no multiplication gives.
    case 'rule-capped': return '';
    case 'rule': case 'per-area': case 'dug-in': case 'removal': case 'tub': case 'compost-brings': case 'carried-brings': return a.value > 0 ? per(a) : shown(a);
    case 'dose': case 'dose-split': case 'dose-late': case 'dose-half': case 'dose-cut': return a.value > 0 ? `${shown(a)} × ${number(f.value / a.value)}` : shown(a);
    default: return f.from.map(shown).join(', ');
  }
}
