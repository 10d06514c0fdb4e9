/** Lines that belong together: a name broken over two lines, a value or a unit on the line below its name. */
import { unaccented } from '../tables/name-set.ts';
import { TEXTURE_WORDS } from '../tables/texture.ts';
import { has } from './cut.ts';
import type { Line } from './text.ts';
import type { Look, Token } from './token.ts';
import type { Words } from './vocabulary.ts';

const solid = (tokens: readonly Token[]): Token[] => tokens.filter((t) => t.kind !== 'filler' && t.kind !== 'separator');
const valued = (tokens: readonly Token[]): boolean => has(tokens, 'number', 'between', 'trace', 'absent') || tokens.some((t) => t.kind === 'group' && valued(t.tokens));
const startsValued = (s: Seen): boolean => has(s.tokens.slice(0, 1), 'number', 'between', 'trace');

const TEXTURES: ReadonlySet<string> = new Set(TEXTURE_WORDS.flatMap(({ words }) => words.map(unaccented)));

type Seen = { readonly line: Line; readonly tokens: readonly Token[] };

/** The lines with those put together that one reading spans. A line put together knows its parts. */
export function joined(lines: readonly Line[], find: Look, w: Words): Line[] {
  const out: Line[] = [];
  const look = (line: Line | undefined): Seen | null => (line && line.text.trim() && line.text.length < 400 ? { line, tokens: solid(find(line.text)) } : null);
  for (let i = 0; i < lines.length; i++) {
    let line = lines[i]!;
    for (let more = true; more && i + 1 < lines.length;) {
      const here = look(line);
      const below = look(lines[i + 1]);
      more = here !== null && below !== null && belongs(here, below, look(out.at(-1)), look(lines[i + 2]), w);
      if (more) line = put(line, lines[++i]!);
    }
    out.push(line);
  }
  return out;
}

function belongs(here: Seen, below: Seen, above: Seen | null, after: Seen | null, w: Words): boolean {
  const tail = pieceTail(here.tokens);
  if (!tail) return spansBreak(here, below, w);
  const { before, name, rest } = tail;
  const isName = (s: Seen | null): boolean => s !== null && (pieceTail(s.tokens)?.name.is.item ?? 'texture') !== 'texture' && !valued(s.tokens);
  const isValue = (s: Seen | null): boolean => s !== null && startsValued(s) && !has(s.tokens, 'name', 'word');
  // "Texture: sandy clay" over "loam"; "sand" over a value or another name is a share.
  if (name.is.item === 'texture') return TEXTURES.has(`${here.line.text.slice(name.end).split(/[:=|)]/).at(-1)!.trim()} ${below.line.text.trim()}`.trim().toLowerCase()) && !(below.tokens.every((t) => t.kind === 'name') && (isName(after) || isValue(after)));
  const [first] = below.tokens;
  // "Phosphorus: 11.6" over "ppm"; "Results in ppm" is a heading.
  if (rest.at(-1)?.kind === 'number' && !has(rest, 'unit') && first?.kind === 'unit' && !/\w/.test(below.line.text.slice(0, first.start)) && !valued(below.tokens) && !has(below.tokens, 'name', 'word')) return unitFits(name.is.item, first.is);
  if (!rest.every((t) => t.kind === 'unit' || t.kind === 'method' || (t.kind === 'group' && !valued(t.tokens)) || (t.kind === 'label' && t.is === 'index'))) return false;
  if (spansBreak(here, below, w)) return true;
  // A name alone over its value; names in a row over values in a row are not put together here.
  if (!startsValued(below)) return false;
  if (before.every((t) => t.kind === 'unit' || t.kind === 'method')) return isValue(below) && !isName(above) && !isValue(after);
  // A list or a sentence that runs on in the next line; a row of a table does not.
  return !isValue(below) && (valued(here.tokens) || (here.line.text.length > 60 && !/\S {2,}\S/.test(here.line.text)));
}

/** The last name of a line (of a texture the first word is the name) and what stands before and behind it; null where words follow. */
function pieceTail(tokens: readonly Token[]): { readonly before: readonly Token[]; readonly name: Token & { kind: 'name' }; readonly rest: readonly Token[] } | null {
  const texture = tokens.findIndex((t) => t.kind === 'name' && t.is.item === 'texture');
  const at = texture < 0 ? tokens.map((t) => t.kind).lastIndexOf('name') : texture;
  const name = tokens[at];
  if (name?.kind !== 'name') return null;
  const rest = tokens.slice(at + 1);
  return texture < 0 && has(rest, 'word') ? null : { before: tokens.slice(0, at), name, rest };
}

/** "Electrical" over "Conductivity: 0.1": a name that only the two lines together hold. */
function spansBreak(here: Seen, below: Seen, w: Words): boolean {
  // "Extractant: Morgan" is a heading of its own.
  if (/\d/.test(here.line.text) || here.tokens.some((t) => t.kind === 'method')) return false;
  const left = here.line.text.trimEnd();
  const whole = `${left} ${below.line.text.trimStart()}`;
  return w.names(whole).some((n) => n.start < left.length && n.end > left.length + 1 && whole.slice(0, n.start).trim().length < 12);
}

/** The unit of a number on the line above; another is a heading of the lines below. */
function unitFits(item: string, unit: string): boolean {
  if (/\bph\b|ratio/.test(item)) return false;
  if (/organic|saturation/.test(item)) return unit === '%' || unit === 'g/kg';
  return item === 'cec' ? /meq|mol/.test(unit) : (item === 'salts') === /S\/|mho/.test(unit);
}

function put(a: Line, b: Line): Line {
  const left = a.text.trimEnd();
  const raw = a.raw.slice(0, left.length);
  const lead = b.text.length - b.text.trimStart().length;
  const at = left.length + 1;
  const parts = [...(a.parts ?? [{ at: 0, line: a }]), { at: at - lead, line: b }];
  return { number: a.number, raw: `${raw} ${b.raw.slice(lead)}`, text: `${left} ${b.text.slice(lead)}`, parts };
}
