/** Lines that belong together: a name broken over two lines, a value or a unit on the line below its name. */
import type { Line } from './text.ts';
import type { Look, Token } from './token.ts';
import type { Words } from './vocabulary.ts';

const solid = (tokens: readonly Token[]): Token[] => tokens.filter((t) => t.kind !== 'filler' && t.kind !== 'separator');
const valued = (tokens: readonly Token[]): boolean => tokens.some((t) => t.kind === 'number' || t.kind === 'between' || t.kind === 'trace' || t.kind === 'absent' || (t.kind === 'group' && valued(t.tokens)));

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
  const last = here.tokens.at(-1);
  const tail = pieceTail(here.tokens);
  if (!tail) return spansBreak(here, below, w);
  const first = below.tokens[0];
  const open = !valued(tail.rest) && tail.rest.every((t) => t.kind === 'unit' || t.kind === 'method' || t.kind === 'group' || (t.kind === 'label' && t.is === 'index'));
  if (here.tokens.some((t) => t.kind === 'name' && t.is.item === 'texture')) return here.tokens.length > 1 && !valued(here.tokens) && below.tokens.length > 0 && below.tokens.every((t) => (t.kind === 'name' && /^(?:sand|silt|clay)$/.test(t.is.item)) || (t.kind === 'word' && /^(?:loam|lehm|schluff|franco|limoso|arenoso|arcilloso)$/.test(t.text)));
  // "Phosphorus: 11.6" over "ppm"; "Results in ppm" is a heading.
  if (valued(tail.rest) && last?.kind === 'number' && !tail.rest.some((t) => t.kind === 'unit') && first?.kind === 'unit' && !/\w/.test(below.line.text.slice(0, first.start)) && !valued(below.tokens) && !below.tokens.some((t) => t.kind === 'name' || t.kind === 'word')) return unitFits(tail.name.is.item, first.is);
  if (!open) return false;
  if (spansBreak(here, below, w)) return true;
  // A name alone over its value; names in a row over values in a row are not put together here.
  if (first?.kind !== 'number' && first?.kind !== 'between') return false;
  const alone = here.tokens.every((t) => t === tail.name || tail.rest.includes(t) || t.kind === 'unit' || t.kind === 'method');
  const isName = (s: Seen | null): boolean => s !== null && pieceTail(s.tokens) !== null && !valued(s.tokens);
  const isValue = (s: Seen | null): boolean => s !== null && valued(s.tokens) && (s.tokens[0]!.kind === 'number' || s.tokens[0]!.kind === 'between' || s.tokens[0]!.kind === 'trace') && !s.tokens.some((t) => t.kind === 'name' || t.kind === 'word');
  if (!alone) return !isValue(below) && (valued(here.tokens) || (here.line.text.length > 60 && !/\S {2,}\S/.test(here.line.text)));
  return isValue(below) && !isName(above) && !isValue(after);
}

/** The last name of a line and what stands behind it; null where words follow. */
function pieceTail(tokens: readonly Token[]): { readonly name: Token & { kind: 'name' }; readonly rest: readonly Token[] } | null {
  const at = tokens.map((t) => t.kind).lastIndexOf('name');
  const name = tokens[at];
  if (name?.kind !== 'name') return null;
  const rest = tokens.slice(at + 1);
  return name.is.item !== 'texture' && rest.some((t) => t.kind === 'word') ? null : { name, rest };
}

/** "Electrical" over "Conductivity: 0.1": a name that only the two lines together hold. */
function spansBreak(here: Seen, below: Seen, w: Words): boolean {
  // "Extractant: Morgan" is a heading of its own.
  if (/\d/.test(here.line.text) || here.tokens.some((t) => t.kind === 'method')) return false;
  const left = here.line.text.trimEnd();
  const whole = `${left} ${below.line.text.trimStart()}`;
  return w.names(whole).some((n) => n.start < left.length && n.end > left.length + 1 && whole.slice(0, n.start).trim().length < 12);
}

const unitFits = (item: string, unit: string): boolean => (item === 'organic-matter' || item.startsWith('saturation') ? unit === '%' || unit === 'g/kg' : item === 'cec' ? /meq|mol/.test(unit) : item === 'salts' ? /S\/|mho/.test(unit) : !/S\/|mho/.test(unit));

function put(a: Line, b: Line): Line {
  const left = a.text.trimEnd();
  const raw = a.raw.slice(0, left.length);
  const lead = b.text.length - b.text.trimStart().length;
  const at = left.length + 1;
  const parts = [...(a.parts ?? [{ at: 0, line: a }]), { at: at - lead, line: b }];
  return { number: a.number, raw: `${raw} ${b.raw.slice(lead)}`, text: `${left} ${b.text.slice(lead)}`, parts };
}
