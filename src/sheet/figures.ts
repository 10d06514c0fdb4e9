/** All figures inside on one page, for somebody who reads no code: by publication, each with its unit, its place and its mark. */
import type { Row } from '../tables/register.ts';
import { register } from '../tables/register.ts';
import { SOURCE_IDS, sourceOf } from '../tables/sources.ts';
import type { Language } from '../words/words.ts';
import { say, sayIfKnown } from '../words/words.ts';
import { escaped } from './escape.ts';

const STYLE = ['body{font:16px/1.4 system-ui;max-width:70rem;margin:1rem auto;padding:0 1rem}', 'table{border-collapse:collapse;width:100%}', 'td,th{border-bottom:1px solid #999;padding:.15rem .5rem;text-align:left}', 'td:nth-child(3){text-align:right}'].join('');

/** A whole HTML document without script or request. */
export function figuresPage(language: Language, version: string, rows: readonly Row[] = register()): string {
  const w = (key: Parameters<typeof say<'sources'>>[2], facts: Readonly<Record<string, string | number>> = {}): string => escaped(say(language, 'sources', key, facts));
  const by = new Map<string, Row[]>();
  for (const r of rows) by.set(r.cite.source, [...(by.get(r.cite.source) ?? []), r]);
  const ids = SOURCE_IDS.filter((id) => by.has(id)).toSorted((a, b) => (name(a) < name(b) ? -1 : 1));
  const cells = w('columns-page').split('|');
  const sections = ids.map((id) => {
    const { url, note } = sourceOf(id)!;
    const lines = by.get(id)!.map((r) => `<tr><td>${escaped(r.table)}</td><td>${escaped(r.what)}</td><td>${r.value === null ? '' : Number(r.value.toPrecision(6))}</td><td>${escaped(r.unit ?? '')}</td><td>${escaped(sayIfKnown(language, 'judgement', r.cite.at))}</td><td>${escaped(say(language, 'mark', r.cite.mark))}${r.label === null ? '' : `, ${escaped(r.label)}`}</td></tr>`);
    return `<h2 id="${escaped(id)}">${escaped(name(id))}</h2><p>${url === undefined ? '' : `<a href="${escaped(url)}">${escaped(url)}</a> `}${note === undefined ? '' : escaped(note)}</p><table><thead><tr>${cells.map((c) => `<th scope="col">${c}</th>`).join('')}</tr></thead><tbody>${lines.join('')}</tbody></table>`;
  });
  const title = w('page-title', { version, rows: rows.length, sources: ids.length });
  return `<!doctype html><html lang="${language}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${title}</title><style>${STYLE}</style></head><body><h1>${title}</h1><p>${w('page-lead')}</p>${sections.join('')}</body></html>\n`;
}

function name(id: string): string {
  const { publisher, title, year } = sourceOf(id)!;
  return `${publisher}: ${title}${year === undefined ? '' : ` (${year})`}`;
}
