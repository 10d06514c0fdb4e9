// Words by key: the same facts in every language, none unused, and no sentence outside the word files (design.md 8).
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { enGB } from '../../src/words/en-GB.ts';
import { enUS } from '../../src/words/en-US.ts';

const SRC = fileURLToPath(new URL('../../src', import.meta.url));
const sources = readdirSync(SRC, { recursive: true }).map((f) => String(f).replaceAll('\\', '/')).filter((f) => f.endsWith('.ts') && !f.endsWith('.d.ts')).sort();
const groups = Object.keys(enUS) as (keyof typeof enUS)[];
/** All British words, as they are said. */
const british = Object.fromEntries(groups.map((g) => [g, Object.fromEntries(Object.keys(enUS[g]).map((k) => [k, enGB(g, k as never)]))])) as Record<keyof typeof enUS, Record<string, string>>;
const facts = (text: string): string[] => [...new Set([...text.matchAll(/\{(\w+)\}|\[(\w+)\|/g)].map((m) => m[1] ?? m[2]!))].sort();

test('the British words have the American facts', () => {
  expect(sources.length).toBeGreaterThan(40);
  for (const group of groups) {
    const [us, gb]: Record<string, string>[] = [enUS[group], british[group]];
    for (const key of Object.keys(us!)) expect([key, facts(gb![key]!)]).toEqual([key, facts(us![key]!)]);
  }
});

test('brackets and braces close', () => {
  for (const group of groups) for (const [key, text] of Object.entries({ ...enUS[group] })) {
    expect([key, text.replace(/\[\w+\|[^[\]]*\]/g, '').replace(/\{\w+\}/g, '').match(/[{}[\]]/)]).toEqual([key, null]);
  }
});

// Where feet are not used, an example in feet is one that nobody can follow. Metric may stand beside it, and what stands in a shop is named as it is sold.
test('lengths and grounds: metric outside America, or beside', () => {
  const told = Object.values(british).flatMap((g) => Object.entries(g)).flatMap(([key, text]) => text.split(/(?<=[.;?])\s|\n/).map((sentence) => [key, sentence] as const));
  const imperial = told.filter(([, t]) => /\d ?(?:ft|feet|inch(?:es)?|in)\b(?! (?:all|autumn|spring|the|its|a|two))|\b(?:two|three|six) (?:inches|feet)|sq ft/.test(t));
  expect(imperial.filter(([, t]) => !/\d ?(?:cm|m|mm|m2|m²|t\/ha)\b/.test(t))).toEqual([]);
});

test('spelling: American for America, British elsewhere', () => {
  const all = (w: object): string => Object.values(w).flatMap((g) => Object.values(g as object)).join(' ');
  expect(all(enUS).match(/\b(?:sulphur|fertiliser|colour|autumn|metre|litre)\w*\b/gi)).toBeNull();
  expect(all(british).match(/\b(?:sulfur|sulfate|fertilizer|color|liter)\w*\b/gi)).toBeNull();
});

test('every key is used somewhere', () => {
  const code = sources.filter((f) => !/^words\/(?:en-US|en-GB|de|es)\.ts$/.test(f)).map((f) => readFileSync(`${SRC}/${f}`, 'utf8')).join('\n');
  // Keys that are put together: `stop-${id}`, `ph-${reason}`, `${what}N`, a rating, an item or a cite's own words.
  const built = /^(?:ph-|limit-|any-|stop-|wait-|trees|samples|zones|unit-|changes-)/;
  const unused = groups.flatMap((group) => Object.keys(enUS[group]).filter((k) => !built.test(k) && !code.includes(`'${k}'`) && !new RegExp(`\\b${k}\\b:|\\b${k}\\b`).test(code)).map((k) => `${group}.${k}`));
  expect(unused).toEqual([]);
});

/** Literals of more than six words, outside comments, regular expressions and thrown errors. */
function sentences(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(`${SRC}/${file}`, 'utf8'), ts.ScriptTarget.ESNext, true);
  const found: string[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isThrowStatement(node)) return;
    if (ts.isPropertyAssignment(node) && node.name.getText() === 'description') return;
    const text = ts.isStringLiteralLike(node) ? node.text : ts.isTemplateExpression(node) ? [node.head, ...node.templateSpans.map((s) => s.literal)].map((p) => p.text).join(' … ') : '';
    if (text.startsWith('<')) return; // drawings
    const words = text.match(/(?<![\w/.-])\p{L}{2,}(?![\w/-])/gu) ?? [];
    if (words.length > 6 && !/[\\^$*+]|\(\?/.test(text)) found.push(`${file}: ${text}`);
    ts.forEachChild(node, walk);
  };
  walk(source);
  return found;
}

describe('no sentence in code', () => {
  // Tables hold titles and places of publications; `*.hbs` are layout.
  test.each(sources.filter((f) => !f.startsWith('words/') && !f.startsWith('tables/')))('%s', (file) => { expect(sentences(file)).toEqual([]); });
  test('such a sentence would be seen', () => { expect(sentences('words/en-US.ts').length).toBeGreaterThan(50); });
});
