/** `medlar sources [WORD…]`: every published table inside, and the figures that rest on it; `--coverage`: what is held and what is not. */
import { COUNTRY_NAMES, parseWhere } from '../orchard/where.ts';
import { figuresPage } from '../sheet/figures.ts';
import { suggest } from '../reason/suggest.ts';
import type { Coverage } from '../tables/coverage.ts';
import { coverage } from '../tables/coverage.ts';
import type { Row } from '../tables/register.ts';
import { bestMark, register } from '../tables/register.ts';
import { SOURCE_IDS, sourceOf } from '../tables/sources.ts';
import { sayIfKnown, say } from '../words/words.ts';
import { give } from './answer.ts';
import type { Common, Io } from './io.ts';
import { EXIT } from './io.ts';

type SourcesOptions = Common & { readonly coverage?: true; readonly as?: 'html' | 'text' };
type Found = { readonly id: string; readonly rows: readonly Row[]; readonly shown: readonly Row[] };

const L = 'en-US';
/** Entries of the table of sources that are no publications. */
const NOT_PUBLISHED: readonly string[] = ['grower', 'lab', 'definition'];

export function sourcesCommand(words: readonly string[], options: SourcesOptions, io: Io): number {
  if (options.as === 'html' && options.json !== true) {
    io.out(figuresPage(L, MEDLAR_VERSION));
    return EXIT.fine;
  }
  const wanted = words.flatMap((w) => plain(w).split(/\s+/)).filter(Boolean);
  const found = search(wanted);
  const covered = options.coverage ? coverage([...new Set(COUNTRY_NAMES.flatMap((c) => parseWhere(c)?.country ?? []))]) : null;
  const result = { sources: found.map((f) => sourceJson(f, wanted.length > 0)), ...(covered ? { coverage: covered } : {}) };
  const read = words.join(' ');
  const text = [
    ...(covered ? coverageLines(covered) : []),
    ...(covered && wanted.length === 0 ? [] : found.flatMap((f) => sourceLines(f, wanted.length > 0))),
    ...(found.length === 0 ? [say(L, 'sources', 'nothing', { read, guess: guessOf(wanted) })] : []),
    ...(wanted.length === 0 ? [say(L, 'sources', covered ? 'next' : 'next-coverage')] : []),
  ].join('\n');
  return give({ command: 'sources', result, notices: [], language: L, text: `${text}\n` }, options.json === true, io);
}

/** Small letters, one spelling. */
const plain = (text: string): string => text.toLowerCase().replace(/sulf/g, 'sulph').replace(/fertiliz/g, 'fertilis');

/** Publications of which all words are true, themselves or with one of their figures; then only those figures are shown. */
function search(wanted: readonly string[]): Found[] {
  const rows = register();
  return SOURCE_IDS.filter((id) => !NOT_PUBLISHED.includes(id)).flatMap((id): Found[] => {
    const source = sourceOf(id)!;
    const own = rows.filter((r) => r.cite.source === id);
    const about = plain(`${id} ${source.title} ${source.publisher}`);
    if (wanted.every((w) => about.includes(w))) return [{ id, rows: own, shown: own }];
    const shown = own.filter((r) => {
      const all = `${about} ${plain(`${r.table} ${r.what} ${r.cite.at} ${atText(r)} ${r.places.join(' ')}`)}`;
      return wanted.every((w) => all.includes(w));
    });
    return shown.length > 0 ? [{ id, rows: own, shown }] : [];
  });
}

/** A word close to one that would find something. */
function guessOf(wanted: readonly string[]): string {
  // Words that a grower would search by: tables, crops, publications and who made them; not the parts of a row's name.
  const makers = SOURCE_IDS.flatMap((id) => id.split('-').filter((part) => plain(sourceOf(id)!.publisher).split(/[^\p{L}]+/u).includes(part)));
  const known = new Set([...register().flatMap((r) => [r.table, ...r.crops, r.cite.source]), ...makers]);
  const missing = wanted.find((w) => search([w]).length === 0);
  return missing === undefined ? '' : suggest(missing, [...known]).slice(0, 3).join(', ');
}

const atText = (r: Row): string => (r.cite.source === 'medlar' ? sayIfKnown(L, 'judgement', r.cite.at) : r.cite.at);

function sourceJson({ id, rows, shown }: Found, withRows: boolean): unknown {
  const { title, publisher, year, url } = sourceOf(id)!;
  return {
    id, title, publisher, year: year ?? null, url: url ?? null, mark: bestMark(rows), figures: rows.length,
    ...(withRows ? { rows: shown.map((r) => ({ table: r.table, what: r.what, value: r.value, unit: r.unit, at: atText(r), mark: r.cite.mark })) } : {}),
  };
}

/** Of one publication; --json holds them all. */
const MOST_ROWS = 12;
/** A row's name as words: "umass.sulphur very-low upTo" is "umass sulphur very low up to". */
const spaced = (text: string): string => text.replace(/([a-z])([A-Z])(?=[a-z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`).replace(/(?<=[a-z]{2})(?=[A-Z]\b)/g, ' ').replace(/(?<=\p{L})[.-](?=[\p{L}\d])|(?<=\d)[.](?=\p{L})/gu, ' ');

function sourceLines({ id, rows, shown }: Found, withRows: boolean): string[] {
  const { title, publisher, year, url } = sourceOf(id)!;
  const mark = bestMark(rows);
  const n = rows.length;
  const figures = n === 0 ? say(L, 'sources', 'figures0') : say(L, 'sources', n === 1 ? 'figures1' : 'figuresN', { n });
  return [
    `${id}: ${title}. ${publisher}${year === undefined ? '' : `, ${year}`}`, `    ${figures}${mark ? `, ${say(L, 'mark', mark)}` : ''}${url ? `  ${url}` : ''}`,
    ...(withRows ? shown.slice(0, MOST_ROWS).map((r) => `      ${spaced(r.table)}: ${spaced(r.what)}${r.value === null ? '' : `  ${Number(r.value.toPrecision(4))}`}${r.unit === null ? '' : ` ${r.unit}`}  (${atText(r)}; ${say(L, 'mark', r.cite.mark)})`) : []),
    ...(withRows && shown.length > MOST_ROWS ? [`      ${say(L, 'sources', 'more', { n: shown.length - MOST_ROWS })}`] : []),
  ];
}

function coverageLines(c: Coverage): string[] {
  const none = say(L, 'sources', 'none');
  const shown = (n: number): string => (n === 0 ? none : String(n));
  const [crop, ...kinds] = say(L, 'sources', 'columns').split('|') as [string, ...string[]];
  const width = Math.max(crop.length, ...Object.keys(c.crops).map((k) => k.length));
  const row = (name: string, cells: readonly string[]): string => `${name.padEnd(width)}  ${cells.map((x) => x.padEnd(8)).join('  ')}`.trimEnd();
  const group = (key: 'methods' | 'scales' | 'languages' | 'lime' | 'regions'): string[] => {
    const names = Object.entries(c[key]);
    return ['', say(L, 'sources', key), ...names.filter(([, n]) => n > 0).map(([name, n]) => row(name, [shown(n)])), `${none}: ${names.filter(([, n]) => n === 0).map(([name]) => name).join(', ')}`];
  };
  const record = Object.entries(c.record).sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([name, regions]) => [name, ...Object.entries(regions).sort(([a], [b]) => (a < b ? -1 : 1)).map(([region, cell]) => `  ${region.padEnd(6)}  ${Object.entries(cell).map(([of, worth]) => `${of} ${say(L, 'sources', worth)}`).join(', ')}`)]);
  return [
    say(L, 'sources', 'head'), '', row(crop, kinds), ...Object.entries(c.crops).map(([name, n]) => row(name, [n.nitrogen, n.growth, n.potash, n.ph].map(shown))),
    ...group('methods'), ...group('scales'), ...group('languages'), ...group('lime'), ...group('regions'), '', say(L, 'sources', 'record'), ...record, '',
  ];
}
