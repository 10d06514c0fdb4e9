// Text of the grower, or of whoever sent the folder, in every field that is shown: none of it becomes mark-up, a formula, a template or a line of its own.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const PAYLOADS = ['<b id=hack>x</b>', '"><script>hack()</script>', "' onfocus='hack()", '</style><img src=x onerror=hack()>', '{{hack}} {{{hack}}}', '--><script>hack()</script><!--', '&lt;script&gt;hack()&lt;/script&gt;', ']]><hack/>'];
/** Tags without what stands quoted in them: there nothing of the grower's may be. */
const marksOf = (html: string): string[] => [...html.matchAll(/<[!/?a-z][^>]*>/gi)].map(([tag]) => tag.replace(/"[^"]*"/g, '""'));
const BAD = /hack|onerror|onfocus|<img/i;
const FIELDS = ['orchard', 'zone', 'tree', 'shed', 'store', 'sample', 'diary'] as const;

const quoted = (text: string): string => JSON.stringify(text);
function filesOf(field: (typeof FIELDS)[number], payload: string): Record<string, string> {
  const at = (name: (typeof FIELDS)[number], plain: string): string => (field === name ? payload : plain);
  return {
    'orchard.yaml': [
      `orchard: ${quoted(at('orchard', 'Hill House'))}`, 'where: Ohio, US', 'soil:', `  ${quoted(at('zone', 'hill'))}: a.txt`, 'trees:',
      `  ${quoted(at('tree', 'Gate'))}: apple, semi-dwarf, planted 2012, 14 ft across, shoots 6 in 2025`,
      'shed:', `  - ${quoted(`${at('shed', 'Old feed')}, 10-0-0, 3 lb`)}`, 'store:', `  - ${quoted(`${at('store', 'Sulfate of ammonia')}, 21-0-0, 4 lb, $9`)}`, '',
    ].join('\n'),
    'a.txt': `Sample: ${at('sample', 'Hill')}\ntaken: 3 Nov 2025\nSoil pH 5.5\nPhosphorus Mehlich 3 90 ppm HIGH\nPotassium Mehlich 3 300 ppm HIGH\n`,
    'diary.csv': `date,trees,what,bag,amount,note\n2025-06-01,${quoted(at('tree', 'Gate')).replaceAll('\\"', '""')},note,,,"${at('diary', 'a note').replaceAll('"', '""')}"\n`,
  };
}

test('a plain text in each field is shown', async () => {
  for (const field of FIELDS) for (const argv of [['sheet'], ['years'], ['page', 'p.html']]) expect((await medlar(argv, filesOf(field, 'Plain words'))).code, `${field} ${argv[0]}`).toBe(0);
});

describe.each(FIELDS)('in the field %s', (field) => {
  test.each(PAYLOADS)('%s', async (payload) => {
    const files = filesOf(field, payload);
    for (const [argv, made] of [[['sheet'], 'sheet.html'], [['years', '--as', 'html'], 'years.html'], [['page', 'page.html'], 'page.html']] as const) {
      let html: string | null = null;
      const run = await medlar([...argv], files, '', (folder) => {
        try {
          html = readFileSync(join(folder, made), 'utf8');
        } catch {
          html = null;
        }
      });
      // A name that cannot be one is refused with a reason, and nothing is written.
      if (run.code !== 0) {
        expect(run.stderr).not.toMatch(/\n\s+at /);
        expect(html).toBeNull();
        continue;
      }
      const own = argv[0] === 'page' ? withoutOwnScripts(html!) : html!;
      expect(marksOf(own).length).toBeGreaterThan(10);
      expect(marksOf(own).filter((tag) => BAD.test(tag))).toEqual([]);
    }
  });
});

/** The page's own program, which the build made, and the data beside it, which no browser runs; what is left is mark-up. */
function withoutOwnScripts(html: string): string {
  const data = [...html.matchAll(/<script type="application\/json"[^>]*>([\s\S]*?)<\/script>/g)].map((m) => m[1]!);
  // Data that closes its own element early would end it there.
  for (const json of data) expect(() => JSON.parse(json) as unknown).not.toThrow();
  return html.replace(/<script[^>]*>[\s\S]*?<\/script>/g, '').replace(/<style>[\s\S]*?<\/style>/g, '');
}

describe('a formula in a diary', () => {
  test.each(['=HYPERLINK("x")', '+1+1', '-2+3', '@SUM(A1)', '\t=1', "=cmd|' /C calc'!A0"])('%j stays text', async (name) => {
    let csv = '';
    const files = { 'orchard.yaml': 'where: Ohio, US\ntrees:\n  Gate: apple, planted 2012\n' };
    const run = await medlar(['diary', `fed Gate 5 oz ${name} 10-0-0`], files, '', (folder) => {
      if (existsSync(join(folder, 'diary.csv'))) csv = readFileSync(join(folder, 'diary.csv'), 'utf8');
    });
    expect(run.code === 0).toBe(csv !== '');
    for (const cell of csv.split('\n').slice(1).flatMap((line) => line.match(/"(?:[^"]|"")*"|[^,]+/g) ?? [])) expect(cell.replace(/^"/, '')).not.toMatch(/^[=+\-@\t]/);
  });
});
