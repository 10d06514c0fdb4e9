// Reports saved by any program: encodings, and files that are no text. Byte values are those of the encodings' own
// definitions (Unicode 15 chapter 3 and 23.8, the WHATWG table of windows-1252) and of the formats' signatures; typed from memory.
import { describe, expect, test } from 'vitest';
import { decodeReport, guessNotice, kindOfText, repairedText } from '../../src/soil/decode.ts';
import { noticeText } from '../../src/json/notices.ts';
import { medlar } from '../medlar.ts';
import { both, GOOD } from './hold.ts';

const bytes = (...parts: readonly (string | readonly number[])[]): Buffer => Buffer.concat(parts.map((p) => (typeof p === 'string' ? Buffer.from(p, 'latin1') : Buffer.from(p))));
const textOf = (b: Uint8Array): string => {
  const found = decodeReport(b);
  return 'text' in found ? found.text : `refused: ${found.refused}`;
};
const LINES = 'pH 6.4\r\nPhosphorus 42 ppm Mehlich 3\r\n';
const swapped = (text: string): Buffer => Buffer.from(text, 'utf16le').swap16();

describe('Unicode, whichever way it was saved', () => {
  test.each([
    ['UTF-8', Buffer.from(LINES)],
    ['UTF-8 with its mark', bytes([0xef, 0xbb, 0xbf], LINES)],
    ['UTF-16 little-endian with its mark', bytes([0xff, 0xfe], [...Buffer.from(LINES, 'utf16le')])],
    ['UTF-16 big-endian with its mark', bytes([0xfe, 0xff], [...swapped(LINES)])],
    ['UTF-16 little-endian without', Buffer.from(LINES, 'utf16le')],
    ['UTF-16 big-endian without', swapped(LINES)],
    ['UTF-16 cut within its last letter', bytes([0xff, 0xfe], [...Buffer.from(LINES, 'utf16le')], [0x31])],
  ])('%s', (_, b) => {
    const found = decodeReport(b);
    expect(found).toEqual({ text: LINES });
    expect(guessNotice(found, 'x')).toBeNull();
  });

  test('letters beyond ASCII come through, without a notice', () => {
    const text = 'Fósforo 42 mg/kg ± 3 µS – Bodenprüfung\n';
    for (const b of [Buffer.from(text), Buffer.from(text, 'utf16le'), swapped(text), bytes([0xfe, 0xff], [...swapped(text)])]) expect(decodeReport(b)).toEqual({ text });
  });
});

describe('Windows-1252 and Latin-1', () => {
  test.each([
    ['ü', 0xfc], ['é', 0xe9], ['±', 0xb1], ['µ', 0xb5], ['ñ', 0xf1], ['ã', 0xe3], ['½', 0xbd], ['²', 0xb2], ['–', 0x96], ['’', 0x92], ['€', 0x80], ['•', 0x95], ['Ÿ', 0x9f],
  ])('%s', (letter, byte) => {
    const found = decodeReport(bytes('pH 6.4\nabc ', [byte], ' 42 ppm\n'));
    expect(found).toEqual({ text: `pH 6.4\nabc ${letter} 42 ppm\n`, guessed: { as: 'windows', line: 2 } });
    expect(guessNotice(found, 'soil.txt')).toMatchObject({ code: 'letters-windows', severity: 'warning', facts: { read: letter }, place: { file: 'soil.txt', line: 2, column: 5, length: 1 } });
  });

  test('a file put together from two encodings is read line by line, line ends kept', () => {
    const b = Buffer.concat([Buffer.from('Bodenprüfung µS/cm\r\n'), bytes('F', [0xf3], 'sforo 42 ppm\rpH 6.4\n')]);
    expect(decodeReport(b)).toEqual({ text: 'Bodenprüfung µS/cm\r\nFósforo 42 ppm\rpH 6.4\n', guessed: { as: 'windows', line: 2 } });
  });

  test('another alphabet is not taken for Western letters', () => {
    // "Фосфор" of Windows-1251.
    expect(decodeReport(bytes([0xd4, 0xee, 0xf1, 0xf4, 0xee, 0xf0], ' 42\n', [0xca, 0xe0, 0xeb, 0xe8, 0xe9], ' 180\n'))).toEqual({ refused: 'binary' });
  });
});

describe('text decoded wrongly once is put right, whole or not at all', () => {
  test.each([
    ['FÃ³sforo 42 ppm', 'Fósforo 42 ppm'],
    ['Salts 0.4 Â± 0.1 dS/m', 'Salts 0.4 ± 0.1 dS/m'],
    ['range 10 â€“ 20', 'range 10 – 20'],
    ['EC 140 ÂµS/cm', 'EC 140 µS/cm'],
    ['BodenprÃ¼fung, KaliumdÃ¼ngung', 'Bodenprüfung, Kaliumdüngung'],
    ['10 m\u00c2\u00b2', '10 m²'],
    ['â\u0080\u0093 6.4', '– 6.4'],
  ])('%s', (garbled, sound) => {
    expect(repairedText(garbled)).toBe(sound);
    expect(decodeReport(Buffer.from(`pH 6.4\n${garbled}\n`))).toEqual({ text: `pH 6.4\n${sound}\n`, guessed: { as: 'repaired', line: 2 } });
  });

  test.each(['pH 6.4', 'Fósforo 42 ppm', 'Â', 'Ã 3', 'São João, fósforo 42 ppm', 'Fósforo and FÃ³sforo', 'µ ± – ½', '磷 42', 'Ä Ö Ü ß', ''])('%s stays', (text) => {
    expect(repairedText(text)).toBeNull();
    expect(decodeReport(Buffer.from(text))).toEqual({ text });
  });
});

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d, 0x49, 0x48, 0x44, 0x52];
const zip = (name: string, rest = ''): Buffer => bytes('PK\x03\x04\x14\0\0\0\x08\0\0\0!\0', [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], [name.length, 0, 0, 0], name, rest, [0, 200, 201]);
/** Each with a word that only its own sentence of advice can hold. */
const STRANGERS: readonly (readonly [name: string, bytes: Buffer, kind: string, says: RegExp])[] = [
  ['a PDF', bytes('%PDF-1.7\n%', [0xe2, 0xe3, 0xcf, 0xd3], '\n1 0 obj\n<<>>\nendobj\n', [0, 1, 2]), 'pdf', /PDF.*copy/],
  ['a PDF of plain letters alone', bytes('%PDF-1.4\n1 0 obj\n<</Type/Catalog>>\nendobj\n'), 'pdf', /PDF/],
  ['a PDF behind a mark', bytes([0xef, 0xbb, 0xbf], '%PDF-1.4\n'), 'pdf', /PDF/],
  ['a PDF with a mail line before it', bytes('X-Part: 1\r\n\r\n%PDF-1.4\n1 0 obj\n'), 'pdf', /PDF/],
  ['a JPEG', bytes([0xff, 0xd8, 0xff, 0xe0, 0, 0x10], 'JFIF\0'), 'picture', /picture.*type/],
  ['a PNG', bytes(PNG), 'picture', /picture/],
  ['a GIF', bytes('GIF89a', [1, 0, 1, 0]), 'picture', /picture/],
  ['a TIFF, little-endian', bytes('II*\0', [8, 0, 0, 0]), 'picture', /picture/],
  ['a TIFF, big-endian', bytes('MM\0*', [0, 0, 0, 8]), 'picture', /picture/],
  ['a WebP', bytes('RIFF', [36, 0, 0, 0], 'WEBPVP8 '), 'picture', /picture/],
  ['a HEIC', bytes([0, 0, 0, 0x18], 'ftypheic', [0, 0, 0, 0]), 'picture', /picture/],
  ['a BMP', bytes('BM', [0x36, 0, 0, 0, 0, 0, 0, 0], [0x36, 0]), 'picture', /picture/],
  ['a DOCX', zip('[Content_Types].xml', '\0word/document.xml'), 'document', /word processor.*plain text/],
  ['an ODT', zip('mimetype', 'application/vnd.oasis.opendocument.text'), 'document', /word processor/],
  ['an XLSX', zip('[Content_Types].xml', '\0xl/workbook.xml'), 'spreadsheet', /spreadsheet.*CSV/],
  ['an ODS', zip('mimetype', 'application/vnd.oasis.opendocument.spreadsheet'), 'spreadsheet', /spreadsheet/],
  ['a ZIP', zip('report.txt', 'pH 6.4'), 'archive', /unpack/],
  ['a gzip file', bytes([0x1f, 0x8b, 8, 0, 0, 0, 0, 0]), 'archive', /unpack/],
  ['an old Word or Excel file', bytes([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0]), 'office', /old Word or Excel/],
  ['RTF', bytes('{\\rtf1\\ansi\\deff0 {\\fonttbl} pH 6.4}'), 'rich-text', /RTF/],
  ['a web page', bytes('<!DOCTYPE html>\n<html><body>pH 6.4</body></html>'), 'web-page', /browser.*copy/],
  ['a web page without a doctype', bytes('\n  <html lang="en"><p>pH 6.4</p></html>'), 'web-page', /browser/],
  ['a web page in XML', bytes('<?xml version="1.0"?>\n<html xmlns="x"><p>pH 6.4</p></html>'), 'web-page', /browser/],
  ['a data base', bytes('SQLite format 3\0', [16, 0, 1, 1]), 'binary', /do not know/],
  ['a program', bytes('MZ', [0x90, 0, 3, 0, 0, 0]), 'binary', /do not know/],
  ['another program', bytes([0x7f], 'ELF', [2, 1, 1, 0]), 'binary', /do not know/],
  ['noise', Buffer.from(Array.from({ length: 400 }, (_, i) => (i * 197 + 89) % 256)), 'binary', /do not know/],
  ['NULs at the end', bytes('pH 6.4\0\0\0'), 'nul', /NUL.*paper/],
  ['a NUL within a number', bytes('pH 6\0.4\nPhosphorus 1\x002 ppm\n'), 'nul', /NUL/],
];

test.each(STRANGERS)('%s is refused with what it is and what to do', async (_, b, kind, says) => {
  expect(decodeReport(b)).toEqual({ refused: kind });
  // By path, in the orchard, and from stdin: always the same words, exit 3, and no result.
  const byPath = await both(['read', 'x.bin'], { 'x.bin': b });
  const inOrchard = await both(['plan'], { 'orchard.yaml': GOOD, 'soil/2025.txt': b });
  for (const [{ text, notices, json }, name] of [[byPath, 'x.bin'], [inOrchard, 'soil/2025.txt']] as const) {
    expect(text.code).toBe(3);
    expect(text.stderr).toMatch(says);
    expect(text.stderr).toContain(name);
    expect(json.json.result).toBeNull();
    expect(notices.map((n) => n.code)).toEqual(['not-text']);
  }
  const piped = await medlar(['read', '-', '--json'], {}, b);
  expect(piped.json.notices.map((n) => n.code)).toEqual(['not-text']);
  expect(piped.json.notices[0]!.text).toMatch(says);
});

test.each([
  ['a PDF opened in an editor', '%PDF-1.7\n%âãÏÓ\n1 0 obj\n', 'pdf'],
  ['a web page\'s source', '<!doctype html><html>', 'web-page'],
  ['a PNG decoded as UTF-8', '\ufffdPNG\r\n\u001a\n\0\0\0\rIHDR', 'binary'],
  ['RTF', '{\\rtf1 pH}', 'rich-text'],
  ['a report', 'pH 6.4\n', null],
  ['a report with a code of the terminal', '\u001b[31mpH 6.4\u001b[0m\nPhosphorus 42 ppm Mehlich 3\nPotassium 180 ppm\n', null],
  ['a report that speaks of a PDF', 'My report (the PDF) says:\npH 6.4\n', null],
  ['a report with a tag', '<b>pH 6.4</b>\n', null],
  ['nothing', '', null],
])('pasted: %s', (_, text, kind) => { expect(kindOfText(text)).toBe(kind); });

describe('through the command', () => {
  const GERMAN = 'Bodenprüfung\npH-Wert 6,5\nPhosphor (P2O5) 35 mg/100 g CAL sehr hoch\n';
  const read = async (b: string | Buffer) => (await both(['read', 'r.txt'], { 'r.txt': b })).json.json;
  const values = (json: Awaited<ReturnType<typeof read>>): unknown => json.result.samples[0].readings.map((r: { item: string; value: number }) => [r.item, r.value]);

  test('the same readings in every encoding', async () => {
    const want = values(await read(GERMAN));
    expect(want).toHaveLength(2);
    for (const b of [Buffer.from(GERMAN, 'latin1'), Buffer.from(GERMAN, 'utf16le'), swapped(GERMAN), bytes([0xff, 0xfe], [...Buffer.from(GERMAN, 'utf16le')])]) expect(values(await read(b))).toEqual(want);
  });

  test('Windows letters are told at their place, and stop nothing', async () => {
    const { text, notices } = await both(['read', 'r.txt'], { 'r.txt': Buffer.from(GERMAN, 'latin1') });
    expect(text.code).toBe(0);
    expect(notices.find((n) => n.code === 'letters-windows')).toMatchObject({ severity: 'warning', file: 'r.txt', line: 1, column: 1 });
    expect(text.stderr).toContain('Bodenprüfung');
    const piped = await medlar(['read', '-', '--json'], {}, Buffer.from(GERMAN, 'latin1'));
    expect(piped.json.notices.map((n) => n.code)).toContain('letters-windows');
    expect(piped.json.result.samples[0].readings).toHaveLength(2);
    const planned = await medlar(['check', '--json'], { 'orchard.yaml': GOOD, 'soil/2025.txt': Buffer.from(GERMAN, 'latin1') });
    expect(planned.json.notices.map((n) => n.code)).toContain('letters-windows');
  });

  test('a file far too large is told as such, a picture of that size as a picture', async () => {
    const large = await both(['read', 'r.txt'], { 'r.txt': Buffer.alloc(9_000_000, 'pH 6.4\n') });
    expect(large.notices.map((n) => n.code)).toEqual(['report-too-large']);
    expect(large.text.code).toBe(3);
    const photo = await both(['read', 'r.jpg'], { 'r.jpg': Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe1]), Buffer.alloc(9_000_000, 7)]) });
    expect(photo.text.stderr).toMatch(/picture/);
  });
});

test('every letter of a guess notice is said in both languages', () => {
  const found = guessNotice(decodeReport(bytes('F', [0xf3], 'sforo 42')), 'r.txt')!;
  for (const language of ['en-US', 'en-GB'] as const) expect(noticeText(found, language)).toContain('Fósforo');
  expect(textOf(bytes([0xc3]))).toBe('refused: binary');
});
