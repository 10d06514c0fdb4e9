// What a file's first bytes tell, by the signatures of the formats' own definitions, typed from memory (PDF ISO 32000, PNG RFC 2083, GIF89a, TIFF 6.0,
// RIFF, ISO base media brands, BMP's reserved zeros, ZIP APPNOTE, RFC 1952, OLE2, RTF, ELF, MZ); and the encodings of Unicode.
import { describe, expect, test } from 'vitest';
import { decodeReport, guessNotice, kindOfText, repairedText } from '../../src/soil/decode.ts';

const bytes = (...parts: readonly (string | readonly number[])[]): Uint8Array => Uint8Array.from(parts.flatMap((p) => (typeof p === 'string' ? [...Buffer.from(p, 'latin1')] : [...p])));
const is = (...parts: readonly (string | readonly number[])[]): unknown => {
  const found = decodeReport(bytes(...parts));
  return 'refused' in found ? found.refused : 'text';
};

/** What the bytes are is asked within the test. */
type Case = [string, () => unknown, unknown];

test.each<Case>([
  ['a PDF', () => is('%PDF-1.7\n'), 'pdf'], ['behind its mark', () => is([0xef, 0xbb, 0xbf], '%PDF-1.7\n'), 'pdf'], ['behind blanks', () => is(' \r\n%PDF-1.4\n'), 'pdf'], ['behind a mail\'s head, with its objects', () => is('From: lab\n%PDF-1.4\n1 0 obj\n'), 'pdf'], ['a word of a text', () => is('The lab sent %PDF-files\npH 6.4\n'), 'text'],
  ['JPEG', () => is([0xff, 0xd8, 0xff, 0xe0]), 'picture'], ['PNG', () => is([0x89], 'PNG\r\n', [0x1a, 0x0a]), 'picture'], ['GIF of 1987', () => is('GIF87a', [1, 0]), 'picture'], ['GIF of 1989', () => is('GIF89a', [1, 0]), 'picture'], ['no GIF', () => is('GIF88a pH 6.4'), 'text'], ['a line that names one', () => is('my GIF89a pH 6.4'), 'text'],
  ['TIFF, little end first', () => is('II*', [0, 8, 0]), 'picture'], ['TIFF, big end first', () => is('MM', [0], '*', [0, 0]), 'picture'], ['WebP', () => is('RIFF', [36, 0, 0, 0], 'WEBPVP8 '), 'picture'], ['a sound', () => is('RIFF', [36, 0, 0, 0], 'WAVEfmt '), 'nul'], ['a word', () => is('RIFFLE soil WEBP pH 6'), 'text'],
  ...['heic', 'heix', 'heim', 'heif', 'heis', 'hevc', 'mif1', 'msf1', 'avif'].map((brand): Case => [brand, () => is([0, 0, 0, 0x18], `ftyp${brand}`, [0, 0, 0, 0]), 'picture']), ['a film', () => is([0, 0, 0, 0x18], 'ftypisom', [0, 0, 0, 0]), 'nul'],
  ['BMP', () => is('BM', [0x36, 4, 1, 2, 0, 0, 0, 0, 0x36, 0]), 'picture'], ['BM without its zeros', () => is('BM', [0x36, 0x41, 0x42, 0x43, 0, 0x44, 0x45]), 'nul'], ['a word that begins so', () => is('BM soil lab\npH 6.4\n'), 'text'],
  ['a Word file', () => is('PK\x03\x04', [20, 0], 'word/document.xml'), 'document'], ['an ODT', () => is('PK\x03\x04', [20, 0], 'mimetypeapplication/vnd.oasis.opendocument.text'), 'document'], ['an Excel file', () => is('PK\x03\x04', [20, 0], 'xl/workbook.xml'), 'spreadsheet'], ['an ODS', () => is('PK\x03\x04', [20, 0], 'mimetypeapplication/vnd.oasis.opendocument.spreadsheet'), 'spreadsheet'], ['another ZIP', () => is('PK\x03\x04', [20, 0], 'soil.txt'), 'archive'], ['an empty ZIP', () => is('PK\x05\x06', [0, 0]), 'archive'], ['names at its end', () => is('PK\x03\x04', Array<number>(140_000).fill(1), 'xl/workbook.xml'), 'spreadsheet'],
  ['gzip', () => is([0x1f, 0x8b, 8]), 'archive'], ['7z', () => is('7z', [0xbc, 0xaf, 0x27, 0x1c]), 'archive'], ['RAR', () => is('Rar!', [0x1a, 7, 0]), 'archive'], ['an old Office file', () => is([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]), 'office'], ['RTF', () => is('{\\rtf1 pH 6.4}'), 'rich-text'],
  ['a web page', () => is('<!DOCTYPE html><p>'), 'web-page'], ['by its element', () => is('\n <html lang="en">'), 'web-page'], ['behind an XML line', () => is('<?xml version="1.0"?>\n<html>'), 'web-page'], ['behind a remark', () => is('<!-- saved -->\n<html>'), 'web-page'], ['a word in angles', () => is('<htmlish> pH 6.4'), 'text'], ['a page named in a text', () => is('pH 6.4 <html>'), 'text'],
  ['a data base', () => is('SQLite format 3', [0]), 'binary'], ['a program', () => is([0x7f], 'ELF', [2]), 'binary'], ['another program', () => is('MZ', [0x90, 0, 3, 0]), 'binary'], ['a word', () => is('MZ soil lab pH 6.4'), 'text'],
  ['a NUL in a text', () => is('pH 6.4', [0], ' P 42 ppm and more words'), 'nul'],
])('%s', (_, of, kind) => { expect(of()).toBe(kind); });

test.each<Case>([
  ['an object before a PDF\'s name', () => is('an obj of %PDF-files\npH 6.4\n'), 'text'], ['words where other files have their brand', () => is('My soil heimat pH 6.4\n'), 'text'], ['and where a picture has its', () => is('My soil WEBP pH 6.4\n'), 'text'], ['a film that knows a picture\'s brand', () => is([0, 0, 0, 0x18], 'ftypisom', [0, 0, 2, 0], 'mif1'), 'nul'],
  ['BMP with any size', () => is('BM', [0x20, 0x0a, 1, 0, 0, 0, 0, 0, 0x36, 0]), 'picture'], ['BM within', () => is('my BM', [0x36, 4, 1, 2, 0, 0, 0, 0], ' soil'), 'nul'], ['a program with much before its first NUL', () => is('MZ and a long\nline of words', [0]), 'binary'], ['MZ within', () => is('my MZ soil', [0], 'lab'), 'nul'],
  ['a web page right behind its XML line', () => is('<?xml version="1.0"?><html>'), 'web-page'], ['behind gaps', () => is('<?xml version="1.0"?>\r\n<!-- saved -->\r\n<html>'), 'web-page'], ['behind none', () => is('<!-- saved --><!doctype html>'), 'web-page'],
])('%s', (_, of, kind) => { expect(of()).toBe(kind); });

test('signs of a terminal and of no text, beside a NUL', () => {
  // Tab, ends of lines, ESC, blank and DEL are of texts; two fifths of others are no text.
  const kinds = (codes: readonly number[]): unknown[] => codes.map((code) => is('ab', [code, code, 0]));
  expect([kinds([9, 10, 13, 27, 32, 126, 127]), kinds([1, 8, 14, 26, 28, 31, 128, 255])]).toEqual([Array(7).fill('nul'), Array(8).fill('binary')]);
});

describe('UTF-16 with its mark', () => {
  test('either way round, without a half sign at its end', () => {
    expect([decodeReport(bytes([0xff, 0xfe], 'p\0H\0')), decodeReport(bytes([0xfe, 0xff], '\0p\0H')), decodeReport(bytes([0xff, 0xfe], 'p\0H\0 '))]).toEqual([{ text: 'pH' }, { text: 'pH' }, { text: 'pH' }]);
  });
  test('half a mark is a letter', () => {
    expect([decodeReport(bytes([0xff], 'pH 6.4')), decodeReport(bytes([0xfe], 'pH 6.4'))]).toEqual([{ text: 'ÿpH 6.4', guessed: { as: 'windows', line: 1 } }, { text: 'þpH 6.4', guessed: { as: 'windows', line: 1 } }]);
    expect([is('x', [0xfe], 'pH 6.4'), is('x', [0xff], 'pH 6.4')]).toEqual(['text', 'text']);
  });
  test('signs of four bytes are none', () => { expect([is('p\0\0\0H\0\0\0'), is('\0\0\0p\0\0\0H')]).toEqual(['nul', 'nul']); });
});

describe('letters taken by a guess', () => {
  const told = (...parts: readonly string[]): unknown => {
    const decoded = decodeReport(bytes(...parts));
    const n = guessNotice(decoded, 'r.txt');
    return ['text' in decoded && decoded.text, n && [n.code, n.severity, n.facts, n.place?.line, n.place?.column, n.place?.length]];
  };
  const utf8 = (text: string): string => Buffer.from(text).toString('latin1');
  test('a text in UTF-8 needs none', () => { expect(told(utf8('pH 6.4\nfür\n'))).toEqual(['pH 6.4\nfür\n', null]); });
  test('a refused file has none', () => { expect(guessNotice({ refused: 'pdf' }, 'r.txt')).toBeNull(); });
  test('line by line, however they end', () => {
    expect(told('pH 6.4\r\n', utf8('für'), '\rK\xfcche zu\nEuro \x80\x9f\xa0\x7f')).toEqual(['pH 6.4\r\nfür\rKüche zu\nEuro €Ÿ\u00a0\x7f', ['letters-windows', 'warning', { file: 'r.txt', read: 'Küche' }, 3, 1, 5]]);
    expect(told('pH 6.4\nBoden f\xfcr Apfel\n')).toEqual(['pH 6.4\nBoden für Apfel\n', ['letters-windows', 'warning', { file: 'r.txt', read: 'für' }, 2, 7, 3]]);
  });
  test('the word in its cell', () => {
    const word = (text: string): unknown[] => {
      const n = guessNotice(decodeReport(bytes(text)), 'r.txt');
      return [n?.facts['read'], n?.place?.column, n?.place?.length];
    };
    expect(word(`${'P 1 '.repeat(2000)}f\xfcr`).slice(1)).toEqual([1, 1]);
    expect([word('P|f\xfcr|2'), word('P\tf\xfcr\t2'), word(`${'\xfc'.repeat(50)}${' and many plain words behind it'.repeat(5)}`)]).toEqual([['für', 3, 3], ['für', 3, 3], ['ü'.repeat(40), 1, 40]]);
  });
  test('decoded wrongly once', () => {
    // Fósforo, whose UTF-8 was taken for Windows-1252 and saved as UTF-8 again.
    expect(told(utf8('pH 6.4\r\nde FÃ³sforo 5\r\n'))).toEqual(['pH 6.4\r\nde Fósforo 5\r\n', ['letters-repaired', 'warning', { file: 'r.txt', read: 'Fósforo' }, 2, 4, 7]]);
    // The mark of UTF-8 (EF BB BF) so taken.
    expect(decodeReport(bytes(utf8('ï»¿pH 6.4\nP 42 ppm\n')))).toEqual({ text: 'pH 6.4\nP 42 ppm\n', guessed: { as: 'repaired', line: 1 } });
  });
});

describe('UTF-16 without its mark', () => {
  const wide = (text: string, swap = false): unknown => decodeReport(swap ? Buffer.from(text, 'utf16le').swap16() : Buffer.from(text, 'utf16le'));
  test('two letters are enough, either way round', () => { for (const swap of [false, true]) expect([wide('pH', swap), wide('pH 6.4', swap)]).toEqual([{ text: 'pH' }, { text: 'pH 6.4' }]); });
  test('some letters of other alphabets among plain ones', () => { for (const swap of [false, true]) expect(wide('Phosphor 42 mg — größer als 30 €', swap)).toEqual({ text: 'Phosphor 42 mg — größer als 30 €' }); });
});

describe('letters of one byte', () => {
  test('a third of odd ones is another alphabet', () => {
    expect([is('a'.repeat(70), Array<number>(30).fill(0xe9)), is('a'.repeat(69), Array<number>(31).fill(0xe9))]).toEqual(['text', 'binary']);
    expect([is('a'.repeat(30), [0xe9, 27, 9]), is('aaaa', [0xe9, 1, 2, 3])]).toEqual(['text', 'binary']);
  });
});

test('a text decoded wrongly once goes back to its bytes, whole or not at all', () => {
  // UTF-8 of ó is C3 B3, of µ C2 B5, of – E2 80 93; Windows-1252 shows these as Ã³, Âµ, â€“.
  expect([repairedText('FÃ³sforo 5 Âµg â€“'), repairedText('Fósforo'), repairedText('plain'), repairedText('Ã³ Ω')]).toEqual(['Fósforo 5 µg –', null, null, null]);
});

test('a pasted text that is none', () => {
  // The first four thousand signs tell.
  expect([kindOfText(`${'pH 6.4\n'.repeat(600)}${'\ufffd'.repeat(9000)}`), kindOfText(`${'pH 6.4\n'.repeat(500)}${'\ufffd'.repeat(9000)}`)]).toEqual([null, 'binary']);
  expect([kindOfText('pH 6.4\n'), kindOfText('%PDF-1.4\n'), kindOfText('\ufffd\ufffd\ufffd pH'), kindOfText(`pH 6.4${' '.repeat(40)}\0`), kindOfText('\u001b[1mpH\u001b[0m 6.4')]).toEqual([null, 'pdf', 'binary', 'nul', null]);
});
