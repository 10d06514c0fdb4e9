/**
 * A report's bytes → its text, whatever program saved it; or what the file is instead of a text.
 * Nothing is guessed in silence: letters taken by a guess are told, and a text that may have lost a part is refused.
 */
import type { Notice } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import { LONGEST_LINE } from './text.ts';

/** What a file is that is no text; each a key of `cause` in words, saying what to do. */
export type Kind = 'pdf' | 'picture' | 'document' | 'spreadsheet' | 'office' | 'archive' | 'rich-text' | 'web-page' | 'nul' | 'binary';

/** `guessed`: how letters were taken that do not stand in the file as UTF-8 or UTF-16, and the first line that holds one. */
export type Decoded =
  | { readonly text: string; readonly guessed?: { readonly as: 'windows' | 'repaired'; readonly line: number } }
  | { readonly refused: Kind };

/** 0x80 to 0x9F of Windows-1252, and of ISO 8859-1 as it is used; the five that stand for nothing keep their code. */
const WINDOWS = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';
const BYTE_OF: ReadonlyMap<string, number> = new Map([...WINDOWS].map((c, i) => [c, 0x80 + i]));

/** Enough for any file's first bytes and a document's first names. */
const HEAD = 65_536;

/** The text of a report's bytes. Never throws. */
export function decodeReport(bytes: Uint8Array): Decoded {
  const kind = kindOfBytes(bytes);
  if (kind) return { refused: kind };
  const wide = wideOf(bytes);
  if (wide) {
    const text = new TextDecoder(wide).decode(bytes.subarray(0, bytes.length - (bytes.length % 2)));
    return refusedText(text) ?? { text };
  }
  if (bytes.includes(0)) return { refused: mostlyPlain(bytes) ? 'nul' : 'binary' };
  const narrow = fromUtf8(bytes);
  if (narrow !== null) return refusedText(narrow) ?? repaired(narrow) ?? { text: narrow };
  if (!mostlyPlain(bytes)) return { refused: 'binary' };
  const found = fromMixed(bytes);
  return refusedText(found.text) ?? { text: found.text, guessed: { as: 'windows', line: found.line } };
}

/** What a text really is that came as text already (pasted, or decoded elsewhere): a PDF opened in an editor, a web page's source. */
export function kindOfText(text: string): Kind | null {
  // Codes of a terminal's colours are no sign of a program.
  const head = text.slice(0, 4096).replaceAll('\u001b[', '');
  const kind = kindOfBytes(Uint8Array.from(head, (c) => BYTE_OF.get(c) ?? (c.charCodeAt(0) < 256 ? c.charCodeAt(0) : 0x3f)));
  if (kind) return kind;
  let odd = 0;
  for (const c of head) if (/[\u0000-\u0008\u000e-\u001f\ufffd]/.test(c)) odd++;
  if (odd > head.length / 20) return 'binary';
  return text.includes('\0') ? 'nul' : null;
}

/**
 * A text that was decoded wrongly once, made right: "FÃ³sforo", "Â±", "â€“". Only where the whole of it
 * goes back to bytes and these are sound UTF-8, which no text written so by hand is; null elsewhere.
 */
export function repairedText(text: string): string | null {
  if (!/[\u0080-\uffff]/.test(text)) return null;
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    const byte = code < 256 ? code : BYTE_OF.get(text[i]!);
    if (byte === undefined) return null;
    bytes[i] = byte;
  }
  return fromUtf8(bytes);
}

/** The notice that goes with letters taken by a guess; null where there is none. */
export function guessNotice(decoded: Decoded, file: string): Notice | null {
  if ('refused' in decoded || !decoded.guessed) return null;
  const { as, line } = decoded.guessed;
  const source = decoded.text.split(/\r\n|\n|\r/)[line - 1]!.slice(0, LONGEST_LINE);
  const start = Math.max(0, source.search(/[^\s|]*[^\u0000-\u007f]/));
  const odd = source.slice(start).split(/[\s|]/)[0]!.slice(0, 40);
  return notice(as === 'windows' ? 'letters-windows' : 'letters-repaired', 'warning', { file, read: odd }, placeIn(file, line, source, start, start + odd.length));
}

function repaired(text: string): Decoded | null {
  const sound = repairedText(text);
  if (sound === null) return null;
  return { text: sound, guessed: { as: 'repaired', line: lineOfFirst(sound) } };
}

const lineOfFirst = (text: string): number => text.slice(0, Math.max(0, text.search(/[^\u0000-\u007f]/))).split(/\r\n|\n|\r/).length;

function refusedText(text: string): Decoded | null {
  const kind = kindOfText(text);
  return kind ? { refused: kind } : null;
}

/** Sound UTF-8 without its mark, or null. */
function fromUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Line by line, since a file put together from two may hold both: UTF-8 where it is sound, Windows-1252 where it is not. */
function fromMixed(bytes: Uint8Array): { text: string; line: number } {
  const parts: string[] = [];
  let line = 1;
  let first = 0;
  let start = 0;
  for (let i = 0; i <= bytes.length; i++) {
    if (i < bytes.length && bytes[i] !== 10 && bytes[i] !== 13) continue;
    const part = bytes.subarray(start, i);
    const sound = fromUtf8(part);
    if (sound === null && first === 0) first = line;
    parts.push(sound ?? fromWindows(part));
    if (i < bytes.length) parts.push(bytes[i] === 10 ? '\n' : '\r');
    if (bytes[i] === 10 || (bytes[i] === 13 && bytes[i + 1] !== 10)) line++;
    start = i + 1;
  }
  return { text: parts.join(''), line: first };
}

const fromWindows = (bytes: Uint8Array): string => Array.from(bytes, (b) => (b >= 0x80 && b < 0xa0 ? WINDOWS[b - 0x80]! : String.fromCharCode(b))).join('');

/** UTF-16 by its mark, or by the NUL of every plain letter: behind it in little-endian files, before it in the others. */
function wideOf(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const pairs = Math.min(bytes.length, 4096) >> 1;
  if (pairs < 2) return null;
  let [even, odd] = [0, 0];
  for (let i = 0; i < pairs; i++) {
    if (bytes[2 * i] === 0) even++;
    if (bytes[2 * i + 1] === 0) odd++;
  }
  if (odd > pairs * 0.7 && even < pairs * 0.05) return 'utf-16le';
  return even > pairs * 0.7 && odd < pairs * 0.05 ? 'utf-16be' : null;
}

/** Western letters are the odd ones of a text: where they are more, it is another alphabet or no text. */
function mostlyPlain(bytes: Uint8Array): boolean {
  const head = bytes.subarray(0, HEAD);
  let odd = 0;
  for (const b of head) if ((b > 0 && b < 9) || (b > 13 && b < 32 && b !== 27) || b > 127) odd++;
  return odd <= head.length * 0.3;
}

/** The first bytes of files that growers send by mistake. */
function kindOfBytes(bytes: Uint8Array): Kind | null {
  const head = fromLatin(bytes.subarray(0, 1100));
  const has = (start: string, at = 0): boolean => head.startsWith(start, at);
  const pdf = head.indexOf('%PDF-');
  // Its mark may stand behind a few other bytes; behind readable words it is one of them.
  if (pdf === 0 || (pdf > 0 && (/^(?:ï»¿)?\s*$/.test(head.slice(0, pdf)) || head.slice(pdf).includes(' obj')))) return 'pdf';
  if (has('\xff\xd8\xff') || has('\x89PNG\r\n') || /^GIF8[79]a/.test(head) || has('II*\0') || has('MM\0*') || (has('RIFF') && has('WEBP', 8))) return 'picture';
  if (has('ftyp', 4) && /^(?:hei[cfmsx]|hevc|mif1|msf1|avif)/.test(head.slice(8))) return 'picture';
  if (/^BM[\s\S]{4}\0{4}/.test(head)) return 'picture';
  if (has('PK\x03\x04') || has('PK\x05\x06')) return packed(fromLatin(bytes.subarray(0, HEAD)) + fromLatin(bytes.subarray(Math.max(0, bytes.length - HEAD))));
  if (has('\x1f\x8b') || has('7z\xbc\xaf\x27\x1c') || has('Rar!\x1a\x07')) return 'archive';
  if (has('\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1')) return 'office';
  if (has('{\\rtf')) return 'rich-text';
  if (/^(?:ï»¿)?\s*(?:<\?xml[^>]{0,200}>\s*)?(?:<!--[^>]{0,400}-->\s*)?<(?:!doctype html|html[\s>])/i.test(head)) return 'web-page';
  if (has('SQLite format 3\0') || has('\x7fELF') || /^MZ[\s\S]{0,300}\0/.test(head)) return 'binary';
  return null;
}

/** A ZIP by the names of what it holds. */
function packed(names: string): Kind {
  if (/\bword\/|mimetypeapplication\/vnd\.oasis\.opendocument\.text/.test(names)) return 'document';
  if (/\bxl\/|mimetypeapplication\/vnd\.oasis\.opendocument\.spreadsheet/.test(names)) return 'spreadsheet';
  return 'archive';
}

const fromLatin = (bytes: Uint8Array): string => {
  let text = '';
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return text;
};
