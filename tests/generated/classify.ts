// Holds what was read of a made report against its truth: read right, read in part, asked, or wrong in silence.
import type { Report, Truth } from './report-maker.ts';

/** The parts of the reader's answer that are judged. */
export type Read = {
  readonly samples: readonly { readonly readings: readonly Got[]; readonly unread: readonly { readonly line: number }[] }[];
  readonly notices: readonly { readonly code: string; readonly severity: string; readonly place?: { readonly line: number } | null; readonly facts?: { readonly read?: unknown } }[];
  readonly questions: readonly { readonly code: string; readonly about?: string | null; readonly place?: { readonly line: number } | null }[];
};
type Got = { readonly item: string; readonly value: number | null; readonly unit: string | null; readonly form: string | null; readonly method: string | null; readonly asPrinted: string; readonly place: { readonly line: number }; readonly lab: { readonly rating: string | null; readonly range: readonly (number | null)[] | null }; readonly below?: unknown; readonly above?: unknown; readonly to?: unknown };

/** `kind` says in few words what differs, without the figures of the case, so that like faults can be counted together. */
export type Verdict = { readonly outcome: 'right' | 'part' | 'asked' | 'silent'; readonly kind: string; readonly line: number; readonly item: string; readonly detail: string; readonly slip: boolean; readonly truth: Truth | null };

const ELEMENT = new Set(['N', 'P', 'K', 'Ca', 'Mg', 'S', 'Na', 'B', 'Zn', 'Mn', 'Cu', 'Fe', 'Al', 'Pb', 'element']);
const form = (f: string | null): string | null => (f === null || ELEMENT.has(f) ? null : f);
const near = (a: number | null, b: number | null): boolean => a === b || (a !== null && b !== null && Math.abs(a - b) < 1e-9 * Math.max(1, Math.abs(b)));

/** What is wrong (another figure than the report's), and what is merely not taken up. */
function compare(t: Truth, g: Got): { wrong: string[]; lost: string[]; codes: string[] } {
  const wrong: string[] = [];
  const lost: string[] = [];
  // Questions that would put the fault right.
  const codes: string[] = [];
  if (!t.values.some((v) => near(g.value, v))) wrong.push(g.value === null ? 'value none' : 'value');
  if (!t.units.includes(g.unit)) {
    if (g.unit === null) { lost.push('unit lost'); codes.push('unit-missing'); } else wrong.push(`unit ${t.units[0] ?? 'none'} as ${g.unit}`);
  }
  if (form(g.form) !== form(t.form)) wrong.push(`form ${t.form ?? 'element'} as ${g.form ?? 'element'}`);
  if (!t.methods.includes(g.method)) {
    if (g.method === null) { lost.push('method lost'); codes.push('method-missing'); } else wrong.push(`method ${t.methods[0] ?? 'none'} as ${g.method}`);
  }
  const rating = g.lab.rating;
  if (t.ratings === null ? rating !== null : t.ratings !== 'any' && !t.ratings.includes(rating)) {
    if (rating === null) lost.push('rating lost');
    else wrong.push(`rating ${t.ratings === null || t.ratings === 'any' ? 'none' : t.ratings.join('/')} as ${rating}`);
  }
  const range = g.lab.range;
  if (JSON.stringify(range) !== JSON.stringify(t.range)) {
    if (range === null) lost.push('range lost');
    else wrong.push(t.range === null ? 'range where none is' : 'range');
  }
  const limit = g.below !== undefined && g.below !== null && g.below !== false ? 'below' : g.above !== undefined && g.above !== null && g.above !== false ? 'above' : null;
  if (limit !== t.limit) wrong.push(`limit ${t.limit ?? 'none'} as ${limit ?? 'none'}`);
  if (g.to !== undefined && g.to !== null) wrong.push('a span where none is');
  return { wrong, lost, codes };
}

const OF_ONE_FACT = new Set(['unit-missing', 'method-missing']);

/** Every true reading's verdict, and one for every reading that the report does not hold. */
export function classify(report: Report, read: Read): Verdict[] {
  // A sample of which nothing was read still counts, if there are as many as in the report.
  const samples = read.samples.length === report.samples ? read.samples : read.samples.filter((s) => s.readings.length > 0);
  const told = read.notices.some((n) => n.code === 'reading-twice' && n.severity === 'error');
  const left = new Set(samples.flatMap((s, sample) => s.readings.map((got) => ({ got, sample }))));
  const loud = read.notices.filter((n) => n.severity === 'error' || n.severity === 'warning');
  const lineOf = (l: { place?: { line: number } | null }): number | null => l.place?.line ?? null;
  const unread = new Set(read.samples.flatMap((s) => s.unread.map((u) => u.line)));
  /** Somebody is told that this line is not, or not surely, understood. */
  const flagged = (lines: readonly number[], item: string, codes: readonly string[]): string | null => {
    if (lines.some((l) => unread.has(l))) return 'unread';
    const notice = loud.find((n) => (lineOf(n) === null ? n.code === 'nothing-read' : lines.includes(lineOf(n)!)));
    if (notice) return notice.code;
    const question = read.questions.find((q) => (OF_ONE_FACT.has(q.code) ? codes.includes(q.code) && q.about === item : lineOf(q) === null ? q.about === item : lines.includes(lineOf(q)!)));
    return question?.code ?? null;
  };
  /** A head that is said to be unknown, in the words of the report, covers the whole column under it. */
  const heads = read.notices.filter((n) => n.code === 'column-unknown').map((n) => String(n.facts?.read));
  const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const underUnknownHead = (t: Truth): boolean => t.printed.some((p) => p.startsWith('name ') && heads.some((h) => plain(h).includes(plain(p.slice(5))) || plain(p.slice(5)).includes(plain(h))
    // Each row has a slip of its own, of which the head prints the first.
    || (t.slip && plain(h).slice(0, 5) === plain(p.slice(5)).slice(0, 5))));
  const out: Verdict[] = [];
  for (const t of report.truths) {
    const fits = [...left].filter(({ got, sample }) => got.item === t.item && t.lines.includes(got.place.line) && (report.samples === 1 || samples.length !== report.samples || sample === t.sample));
    const best = fits.map((f) => ({ f, c: compare(t, f.got) })).sort((a, b) => a.c.wrong.length - b.c.wrong.length || a.c.lost.length - b.c.lost.length)[0];
    const at = { line: t.lines[0]!, item: t.item, slip: t.slip, truth: t };
    if (!best) {
      const why = flagged(t.lines, t.item, []) ?? (underUnknownHead(t) ? 'column-unknown' : null);
      out.push(why === null ? { ...at, outcome: 'silent', kind: 'lost without a word', detail: '' } : { ...at, outcome: 'asked', kind: `asked: ${why}`, detail: '' });
      continue;
    }
    left.delete(best.f);
    const { wrong, lost, codes } = best.c;
    const shown = JSON.stringify({ ...best.f.got, place: undefined });
    if (wrong.length > 0) {
      const why = flagged(t.lines, t.item, []);
      out.push({ ...at, outcome: why === null ? 'silent' : 'asked', kind: `${why === null ? '' : `asked (${why}) beside `}${[...wrong, ...lost].join(', ')}`, detail: shown });
    } else if (lost.length > 0) {
      const why = flagged(t.lines, t.item, codes);
      out.push({ ...at, outcome: why === null ? 'part' : 'asked', kind: why === null ? lost.join(', ') : `asked: ${why}`, detail: shown });
    } else if (report.samples > 1 && samples.length !== report.samples) {
      const kind = `${samples.length < report.samples ? 'fewer' : 'more'} samples than there are`;
      // Two samples run together stop at a reading that comes twice.
      out.push({ ...at, outcome: told ? 'asked' : 'silent', kind: told ? `asked: reading-twice, ${kind}` : kind, detail: shown });
    } else {
      out.push({ ...at, outcome: 'right', kind: '', detail: '' });
    }
  }
  for (const { got } of left) {
    const line = got.place.line;
    if (report.advice.includes(line) && (got.item === 'advice' || got.item === 'lime-requirement')) continue;
    const why = flagged([line], got.item, []);
    out.push({ outcome: why === null ? 'silent' : 'asked', kind: `${why === null ? '' : `asked (${why}) beside `}a reading that is none: ${got.item}`, line, item: got.item, detail: JSON.stringify({ ...got, place: undefined }), slip: false, truth: null });
  }
  if (report.samples === 1 && samples.length > 1) out.push({ outcome: 'silent', kind: 'one sample read as several', line: 1, item: '', detail: `${samples.length} samples`, slip: false, truth: null });
  return out;
}
