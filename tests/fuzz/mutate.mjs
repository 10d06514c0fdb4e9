/** How texts are changed: by their own grammar (units, numbers, cells, nodes), and by letters that no grammar expects. Each takes `rnd`, the dice. */
export const pick = (rnd, list) => list[Math.floor(rnd() * list.length)];
export const upTo = (rnd, n) => Math.floor(rnd() * (n + 1));
const chance = (rnd, p) => rnd() < p;

const UNITS = ['ppm', 'mg/kg', 'mg/L', 'mg/100g', 'lb/acre', 'kg/ha', 'meq/100g', 'cmol/kg', 'cmolc/dm3', 'mmolc/dm3', '%', 'g/kg', 'dS/m', 'mmho/cm', 'uS/cm', 'tons/acre', 't/ha', 'lb/1000 sq ft', 'ppb', 'µg/g', '‰', 'dt CaO/ha', 'inches', 'ft', 'lb', 'kg', 'oz', 'g', 'L', 'gal', 'cups', 'qt', 'bushels', 'stone'];
const NUMBERS = ['0', '-0', '1', '-1', '6.4', '6,4', '1,234', '1.234', '1.234,5', "1'234", '1 234', '0.0000001', '99999999999999999999', '1e309', '1e-400', '-1e5', '0x1F', 'NaN', 'Infinity', '½', '1½', '1 1/2', '1/0', '0/0', '٦', '６.４', '4..2', '.5', '5.', '+7', '<3', '>100', '~5', '10^2', '1.2.3', '2147483648', '9007199254740993', '1/', '00012', '1_000'];
const PROTO = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf', 'prototype', '__defineGetter__', 'length', 'then', 'toJSON', 'null', 'true', 'undefined'];
const ODD = ['\0', '\ufeff', '\u200b', '\u202e', '\u2066', '\u200f', '\u061c', '\u0301', '\u0301'.repeat(40), '\ud800', '\udfff', '\ud83d', '🌱', '\u2028', '\u2029', '\u0085', '\u009b31m', '\u001b[2J', '\u001b]0;x\u0007', '\u001b]8;;http://x\u001b\\', '\u007f', '\b\b', '\v', '\f', '\r', '\t', '\u00a0', '\u3000', 'ﬁ', 'İ', 'ı', 'ß', '\ufffe', '\uffff', '¤', '\u00ad', 'ǅ', '𝟔'];
const MARKUP = ['<b>', '</script>', '"><script>', '{{x}}', '{{{x}}}', '${x}', '%s', '%d', '[fact| x]', '{fact}', "'", '"', '`', '\\', '\\n', '$&', "$'", '$1', '(', ')', '[', ']', '(?', '*', '+', '|', '^', '=cmd()', '@x', '-- ', ';', '#', '&amp;', '--', '---', '...'];
const SEPARATORS = [',', ';', '\t', '|', ' ', '  ', ':', '=', '/', '-', '–', ' x ', '\n', '\r\n', '\r'];

const NUMBER = /\d+(?:[.,]\d+)*/g;
const TOKEN = /[\p{L}\p{N}]+|[^\p{L}\p{N}\s]+|\s+/gu;
const swapOne = (rnd, text, pattern, by) => {
  const all = [...text.matchAll(pattern)];
  if (all.length === 0) return text;
  const m = pick(rnd, all);
  return text.slice(0, m.index) + by(m[0]) + text.slice(m.index + m[0].length);
};
const insert = (rnd, text, what) => {
  const at = upTo(rnd, text.length);
  return text.slice(0, at) + what + text.slice(at);
};

/** Small changes that any text can suffer; `others` are texts of the same kind to take pieces from. */
const ANY = [
  (rnd, t) => swapOne(rnd, t, NUMBER, () => pick(rnd, NUMBERS)),
  (rnd, t) => swapOne(rnd, t, NUMBER, (n) => n + pick(rnd, [' ', '', '  ']) + pick(rnd, UNITS)),
  (rnd, t) => swapOne(rnd, t, NUMBER, (n) => n.replace('.', ',')),
  (rnd, t) => swapOne(rnd, t, /[a-zµ%]+(?:\/ ?\w+)?/gi, () => pick(rnd, UNITS)),
  (rnd, t, others) => { const [a, b] = [[...t.matchAll(TOKEN)], [...pick(rnd, others).slice(0, 20_000).matchAll(TOKEN)]]; if (a.length === 0 || b.length === 0) return t; const m = pick(rnd, a); return t.slice(0, m.index) + pick(rnd, b)[0] + t.slice(m.index + m[0].length); },
  (rnd, t) => swapOne(rnd, t, TOKEN, () => ''),
  (rnd, t) => swapOne(rnd, t, TOKEN, (w) => w + w),
  (rnd, t) => swapOne(rnd, t, TOKEN, (w) => pick(rnd, [w.toUpperCase(), w.toLowerCase(), w.normalize('NFD'), [...w].reverse().join('')])),
  (rnd, t) => swapOne(rnd, t, /[,;:|\t=/-]/g, () => pick(rnd, SEPARATORS)),
  (rnd, t) => insert(rnd, t, pick(rnd, ODD)),
  (rnd, t) => insert(rnd, t, pick(rnd, MARKUP)),
  (rnd, t) => insert(rnd, t, pick(rnd, PROTO)),
  (rnd, t) => insert(rnd, t, pick(rnd, SEPARATORS).repeat(1 + upTo(rnd, 30))),
  (rnd, t) => { const a = upTo(rnd, t.length); return t.slice(0, a) + t.slice(Math.min(t.length, a + upTo(rnd, 8))); },
  (rnd, t) => { const i = upTo(rnd, Math.max(0, t.length - 1)); return t.slice(0, i) + String.fromCharCode((t.charCodeAt(i) || 65) ^ (1 << upTo(rnd, 6))) + t.slice(i + 1); },
];

const perLine = (act) => (rnd, t, others) => { const lines = t.split('\n'); return act(rnd, lines, others).join('\n'); };
const LINES = [
  perLine((rnd, l) => { const i = upTo(rnd, l.length - 1); return [...l.slice(0, i), ...l.slice(i + 1)]; }),
  perLine((rnd, l) => { const i = upTo(rnd, l.length - 1); return [...l.slice(0, i), l[i], l[i], ...l.slice(i + 1)]; }),
  perLine((rnd, l) => { const [i, j] = [upTo(rnd, l.length - 1), upTo(rnd, l.length - 1)]; const m = [...l]; [m[i], m[j]] = [m[j], m[i]]; return m; }),
  perLine((rnd, l, others) => { const o = pick(rnd, others).split('\n'); const i = upTo(rnd, l.length); const from = upTo(rnd, o.length - 1); return [...l.slice(0, i), ...o.slice(from, from + 1 + upTo(rnd, 4)), ...l.slice(i)]; }),
  perLine((rnd, l) => { const i = upTo(rnd, l.length - 1); const m = [...l]; m.splice(i, 2, `${m[i]} ${m[i + 1] ?? ''}`); return m; }),
  perLine((rnd, l) => { const i = upTo(rnd, l.length - 1); const m = [...l]; const at = upTo(rnd, m[i].length); m.splice(i, 1, m[i].slice(0, at), m[i].slice(at)); return m; }),
  perLine((rnd, l) => { const i = upTo(rnd, l.length - 1); const m = [...l]; m[i] = m[i].replaceAll(/ {2,}|[|,;\t]/g, () => pick(rnd, ['\t', '|', ',', ';', '  '])); return m; }),
  perLine((rnd, l) => { const i = upTo(rnd, l.length - 1); const m = [...l]; const cells = m[i].split(/([|,;\t]| {2,})/); cells.splice(upTo(rnd, cells.length), upTo(rnd, 2), pick(rnd, ['', '"', '""', '-', pick(rnd, NUMBERS)])); m[i] = cells.join(''); return m; }),
];

/** Line ends, marks at the beginning, great length. */
const WHOLE = [
  (rnd, t) => t.replaceAll('\n', '\r\n'), (rnd, t) => t.replaceAll('\n', '\r'), (rnd, t) => `\ufeff${t}`, (rnd, t) => `\ufeff\ufeff${t}`, (rnd, t) => t.slice(0, upTo(rnd, t.length)),
  (rnd, t) => t.toUpperCase(), (rnd, t) => t.normalize('NFD'), (rnd, t) => insert(rnd, t, pick(rnd, [' ', 'a', '1', '1.', '- ', ', ', '|', '(', '1 lb ', 'pH ', 'é', '"']).repeat(200 + upTo(rnd, 3900))),
  (rnd, t) => insert(rnd, t, pick(rnd, [' ', '0', 'a ', '1,', '\n'].map((s) => s.repeat(20_000)))),
];

/** A text changed a few times. */
export function mutated(rnd, text, others, more = []) {
  let t = text;
  const times = 1 + upTo(rnd, chance(rnd, 0.2) ? 25 : 4);
  for (let i = 0; i < times; i += 1) {
    const r = rnd();
    t = (r < 0.5 ? pick(rnd, ANY) : r < 0.75 ? pick(rnd, LINES) : r < 0.97 && more.length > 0 ? pick(rnd, more) : chance(rnd, 0.15) ? pick(rnd, WHOLE) : pick(rnd, ANY))(rnd, t, others);
    if (t.length > 400_000) t = t.slice(0, 400_000);
  }
  return t;
}

const quoted = (rnd, s) => pick(rnd, [s, `'${s}'`, `"${s}"`, `"${s.replaceAll('\\', '\\\\').replaceAll('"', '\\"')}"`]);
const yamlValue = (rnd) => pick(rnd, ['', '~', 'null', 'true', '[]', '{}', '[a, b]', '{ a: b }', '2019-01-01', '0o17', '0x1f', '.inf', '-.nan', '1e400', '!!binary aGk=', '!!js/function x', '!!set { a }', '!!omap [a: 1]', '!<tag:x> y', '&a [*a]', '*a', '*b', '<<: *a', '|\n    a\n    b', '>-\n    a', '? a\n  : b', '"\\0"', '"\\u202e"', "'", '"', '- a', '@x', '`x`', '%x', '{', '[', '{ __proto__: { polluted: 1 } }', '[[[[[[[[[[x]]]]]]]]]]', '&x a, *x']);
/** Nodes of YAML: keys, values, anchors, tags, merges, nesting. */
export const YAML = [
  (rnd, t) => swapOne(rnd, t, /^( *)([\w -]+)(?=:)/gm, (k) => (/^ */.exec(k)[0]) + quoted(rnd, pick(rnd, PROTO))),
  (rnd, t) => swapOne(rnd, t, /(?<=: ).*$/gm, () => yamlValue(rnd)),
  (rnd, t) => swapOne(rnd, t, /(?<=: ).*$/gm, (v) => quoted(rnd, v)),
  (rnd, t) => swapOne(rnd, t, /(?<=: ).*$/gm, (v) => `&a ${v}`),
  (rnd, t) => swapOne(rnd, t, /(?<=: ).*$/gm, (v) => pick(rnd, ['!!str ', '!!int ', '!!seq ', '!!map ', '!x ', '!!binary ', '!<x> ']) + v),
  (rnd, t) => swapOne(rnd, t, /^/gm, () => pick(rnd, ['<<: *a\n', '<<: { trees: 1 }\n', '---\n', '...\n', '%YAML 1.1\n', '# ', ' ', '  ', '\t', '- ', '? ', '  - ', `${pick(rnd, PROTO)}: ${yamlValue(rnd)}\n`, `  ${pick(rnd, PROTO)}: apple\n`])),
  (rnd, t) => swapOne(rnd, t, /^ +/gm, (s) => ' '.repeat(upTo(rnd, s.length + 2))),
  (rnd, t) => `${t}${'a: '.repeat(1)}${'['.repeat(upTo(rnd, 3000))}`,
  (rnd, t) => `${t}b: ${'{a: '.repeat(upTo(rnd, 400))}`,
  (rnd, t) => `${t}\na: &a [x]\n${Array.from({ length: 20 }, (_, i) => `${String.fromCharCode(98 + i)}: &${String.fromCharCode(98 + i)} [*${String.fromCharCode(97 + i)}, *${String.fromCharCode(97 + i)}, *${String.fromCharCode(97 + i)}]`).join('\n')}\n`,
  (rnd, t) => swapOne(rnd, t, /soil\/[\w.]+/g, () => pick(rnd, ['../../etc/passwd', '/etc/passwd', 'soil/..//../x', 'C:\\x.txt', 'soil\\2025.txt', 'soil/2025.txt%00', '"soil/\\0.txt"', '%2e%2e/x', 'orchard.yaml', 'diary.csv', '.', '..', 'soil', '/', '//', '~', 'file:///etc/passwd', 'soil/'.repeat(300), 'x'.repeat(300), 'con', 'soil/2025.txt/x', '__proto__', 'constructor'])),
  (rnd, t) => swapOne(rnd, t, /(?<=where: ).*$/gm, () => pick(rnd, ['Germany', 'Spain', 'UK', 'New Zealand', 'Chile', 'California, US', 'Tasmania, Australia', 'Nowhere', '__proto__', 'constructor', 'toString, US', ', US', 'US, US', 'Mexico', 'Texas', 'Ireland', 'Austria', 'Japan', 'Hawaii, US', 'Alaska, US', '0', '-', 'Quebec, Canada'])),
  (rnd, t) => `${t}${pick(rnd, ['language: de', 'language: es', 'language: constructor', 'language: __proto__', 'language: [de]', 'water: 200 mg/L', 'water: 9999999', 'never: chloride', 'never: [manure, chloride]', 'never: constructor', 'last-frost: 1 May', 'last-frost: 31 February', 'bud-break: 0 April'])}\n`,
  (rnd, t) => t.replace(/\d+ (?:April|September|October|May)/, () => pick(rnd, ['29 February', '31 April', '1 January', '31 December', '4/5', '5.4.', 'April', '0 May', 'mañana', '2025-04-12', '１２ April'])),
];

const CSV_CELLS = ['', '"', '""', '"a""b"', '"a\nb"', "'=1", '=1+1', '+1', '@x', '2026-02-30', '0000-00-00', '9999-12-31', '-1', '1e309 kg', '999 t', '12 1/2 oz', '1,5 kg', 'fed', 'FED', 'withdrawn', 'limed', 'sulphured', 'shoots', 'crop', 'note', 'constructor', '__proto__', 'all', 'Gate apple; Wall plum', 'Gate apple + Wall plum', 'day 1', 'fed, 2025-06-01: x'];
export const CSV = [
  (rnd, t) => swapOne(rnd, t, /[^,\n]+/g, () => pick(rnd, CSV_CELLS)),
  (rnd, t) => swapOne(rnd, t, /,/g, () => pick(rnd, [';', '\t', '","', ',,', '', ',"'])),
  (rnd, t) => t.replaceAll(',', pick(rnd, [';', '\t', ','])),
  (rnd, t) => `${t}${pick(rnd, ['2026-03-01', '2025-05-05', '1970-01-01', '2100-01-01'])},${pick(rnd, ['Gate apple', 'Wall plum', 'Lawn pear', 'Nobody', 'lower terrace'])},${pick(rnd, CSV_CELLS)},${pick(rnd, ['Sulphate of ammonia, 21-0-0', '"Balanced, 10-10-10"', 'Bone meal', 'x', ''])},${pick(rnd, CSV_CELLS)},${pick(rnd, CSV_CELLS)}\n`,
  (rnd, t) => t.replace(/^.*$/m, () => pick(rnd, ['', 'date', 'date,what', 'DATE,TREES,WHAT,BAG,AMOUNT,NOTE', 'note,amount,bag,what,trees,date', 'date,date,date', 'a,b,c', 'date;trees;what;bag;amount;note', '"date","trees","what"', '__proto__,constructor'])),
];

export const TEMPLATE = [
  (rnd, t) => swapOne(rnd, t, /\{\{[^}]*\}\}/g, () => pick(rnd, ['{{constructor}}', '{{__proto__}}', '{{this}}', '{{../x}}', '{{../../..}}', '{{#each this}}', '{{/each}}', '{{#if}}', '{{else}}', '{{lookup a "b"}}', '{{#with constructor}}', '{{> part}}', '{{{raw}}}', '{{&x}}', '{{!-- x --}}', '{{~x~}}', '{{@root}}', '{{@index}}', '{{@root.constructor.constructor}}', '{{[__proto__]}}', '{{"x"}}', '{{1}}', '{{true}}', '{{helperMissing}}', '{{#each days as |d|}}{{d}}{{/each}}', '{{log this}}', '{{{{raw}}}}', '{{* x}}', '{{#> layout}}', '{{x y=z}}', '{{(x)}}', '{{#each}}', '{{^x}}'])),
  (rnd, t) => swapOne(rnd, t, /\{\{[^}]*\}\}/g, (m) => m + m),
  (rnd, t) => swapOne(rnd, t, /\{\{[^}]*\}\}/g, () => ''),
  (rnd, t) => swapOne(rnd, t, /(?<=\{\{#?\w* ?)\w+(?=\}\})/g, () => pick(rnd, PROTO)),
];

export const RULE = [
  (rnd, t) => swapOne(rnd, t, /^[- ] \w+(?=:)/gm, (k) => k.slice(0, 2) + pick(rnd, [...PROTO, 'id', 'crops', 'by', 'gives', 'low', 'high', 'cap', 'from', 'years', 'size', 'bearing', 'kinds'])),
  (rnd, t) => swapOne(rnd, t, /(?<=: ).*$/gm, () => pick(rnd, ['plant', 'years', 'trunk', 'height', 'canopy', 'area', 'crop', '[apple]', '[constructor]', 'apple', '{ of: N, unit: oz }', '{ of: P2O5, unit: g/m2 }', '{ of: product, unit: cup, percentN: 0, ozPerCup: 0 }', '{ of: product, unit: lb, percentN: 1e-9 }', '0', '-1', '.inf', '.nan', '1e308', '0.001', '[0, 8]', '[8, 0]', '[1]', 'true', '""', 'x'.repeat(3000)])),
  (rnd, t) => `${t}${t}`,
];

export const someTree = (rnd) => `${pick(rnd, ['apple', 'pear', '3 pear', 'blueberry', '6 blueberry', 'plum', 'peach', 'cherry', 'fig', 'lemon', 'walnut', 'grape', 'kiwi', 'medlar', 'strawberry', 'avocado', 'constructor', 'pecan', 'raspberry', '0 apple', '-1 apple', '1e9 apple', 'olive'])}${['dwarf', 'semi-dwarf', 'standard', 'planted 2019', 'planted 2026', 'planted 2030', 'planted 1700', '12 ft across', '3 m across', '0 ft across', '900 ft across', 'trunk 11 in round', 'trunk 6 cm across', 'shoots 6 in 2025', 'shoots 16 cm 2024', 'mulch', 'grass', 'bare', 'fed lawn', 'tub 60 L', 'tub 15 gal', 'tub 0 L', 'fruit 20 kg 2025', 'fruit none', 'spacing 4 x 3 m', 'spacing 0 x 0 m', '3 m high', 'bearing', 'compost 10 gal', 'clover', 'blight-prone', 'bed 2 x 4 m', 'not watered', 'lower terrace', 'top strip'].filter(() => chance(rnd, 0.17)).map((f) => `, ${f}`).join('')}`;
export const someName = (rnd) => pick(rnd, ['A', 'Gate apple', 'B 2', 'all', 'day 1', 'Ünï', '1', '"0x1"', 'constructor', '"__proto__"', 'toString', '"null"', 'tree', 'N', 'f3', '"a, b"', '"x: y"', 'x'.repeat(90), '"ﷺ"', '"e\u0301"', '"-"', '"--json"']);
export { ANY, CSV_CELLS, NUMBERS, ODD, PROTO, UNITS };
