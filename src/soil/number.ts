/** Numbers as labs and growers print them: thousands commas, decimal commas, a point without a zero. */

/** One printed number; never part of a word, a longer number or a ratio such as 1:1. */
export const NUMBER = '(?:\\d{1,3}(?:[,\']\\d{3})+(?:\\.\\d+)?|\\d+[.,]\\d+|[.]\\d+|\\d+)';

export type Style = 'point' | 'comma';
export type Parsed = { readonly value: number } | { readonly unclear: readonly [number, number] };

/** A text with a comma before one or two closing digits, or after a zero, uses decimal commas. */
export function styleOf(text: string): Style {
  return /(?<![\d,.])(?:\d+,\d{1,2}|0,\d+)(?![\d,])/.test(text) && !/(?<![\d,.])\d+\.\d{1,2}(?![\d.])/.test(text) ? 'comma' : 'point';
}

/**
 * The value of a printed number. One comma before exactly three digits is a thousands comma in a text with
 * decimal points, and unclear in a text with decimal commas; the same for a point the other way round.
 */
export function parseNumber(printed: string, style: Style): Parsed {
  if (printed.includes("'")) return { value: Number(printed.replace(/[',]/g, '')) };
  const commaThousands = /^\d{1,3}(?:,\d{3})+$/.test(printed) && !printed.startsWith('0,');
  const pointThousands = /^\d{1,3}\.\d{3}$/.test(printed) && !printed.startsWith('0.');
  if (commaThousands && style === 'comma' && printed.split(',').length === 2) {
    return { unclear: [Number(printed.replace(',', '.')), Number(printed.replace(',', ''))] };
  }
  // A text with decimal commas has no decimal points.
  if (pointThousands && style === 'comma') return { value: Number(printed.replace('.', '')) };
  if (commaThousands || /^\d{1,3}(?:,\d{3})+\.\d+$/.test(printed)) return { value: Number(printed.replaceAll(',', '')) };
  return { value: Number(printed.replace(',', '.')) };
}
