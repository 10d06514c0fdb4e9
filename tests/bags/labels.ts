/** Labels read as a command reads them. */
import { expect } from 'vitest';
import { parseBag } from '../../src/orchard/bag.ts';

export const LB = 453.59237;
const NOWHERE = { file: 'orchard.yaml', line: 1, column: 1, length: 1, source: '' };
export const read = (text: string, country: string | null = 'US') => parseBag(text, country, false, NOWHERE);
export const codes = (text: string, country: string | null = 'US'): string[] => read(text, country).notices.map((n) => n.code);
/** The bag of a label without a mistake. */
export const bagOf = (text: string, country: string | null = 'US') => {
  const { bag, notices } = read(text, country);
  expect(notices.filter((n) => n.severity === 'error').map((n) => n.code), text).toEqual([]);
  return bag!;
};
