// The class of letters against Unicode's own, which the JavaScript engine holds (the property General_Category, by script; signs of phonetics, which modify a letter, are left out).
import { expect, test } from 'vitest';
import { LETTER } from '../../src/units/letters.ts';

const is = new RegExp(`^[${LETTER}]$`);
const every = (script: string): string[] => Array.from({ length: 0x2000 }, (_, code) => String.fromCodePoint(code)).filter((c) => new RegExp(`^(?=[\\p{Lu}\\p{Ll}\\p{Lt}\\p{Lo}])\\p{Script=${script}}$`, 'u').test(c));

test.each(['Latin', 'Greek', 'Cyrillic', 'Armenian', 'Hebrew', 'Arabic', 'Devanagari', 'Thai'])('every letter of %s up to U+1FFF', (script) => {
  const letters = every(script);
  expect(letters.length).toBeGreaterThan(20);
  expect(letters.filter((c) => !is.test(c))).toEqual([]);
});

test('no digit, sign, space or dash that stands on a bag', () => {
  expect([...'0123456789 .,;:%+-‐–—−/×÷°²³·½¼¾‘’“”()[]"\'$€£#&*=<>@_~\u00a0\t\n'].filter((c) => is.test(c))).toEqual([]);
});
