// The sheet on paper and on a narrow screen, in a real browser that is offline.
import { mkdirSync, readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { medlar } from '../medlar.ts';
import { openBrowser } from './chromium.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const IN_PAGE = readFileSync(new URL('in-page.mjs', import.meta.url), 'utf8').replace(/;\s*$/, '');
const SHOTS = process.env['MEDLAR_SHOTS'];
/** CSS pixels at 96 an inch, inside margins of 15 mm. */
const INSIDE = { a4: { width: 680, height: 1009 }, letter: { width: 703, height: 942 } } as const;
const POINTS = { a4: [595, 842], letter: [612, 792] } as const;
type Paper = keyof typeof POINTS;
type Files = Readonly<Record<string, string>>;

function sample(name: string): Files {
  const folder = join(root, 'samples', name);
  return Object.fromEntries(readdirSync(folder, { recursive: true, withFileTypes: true })
    // What `npm start` and a diary leave there is none of the sample.
    .filter((f) => f.isFile() && !/^(?:sheet\.(?:txt|html)|medlar\.html|diary\.csv.*)$/.test(f.name))
    .map((f) => join(f.parentPath, f.name))
    .map((path) => [path.slice(folder.length + 1).replaceAll('\\', '/'), readFileSync(path, 'utf8')]));
}

/** Sixty trees in a row: one day fills several pages. */
const LONG: Files = {
  'orchard.yaml': [
    'orchard: Long Row', 'where: Ohio, US', 'bud-break: 12 April', 'first-frost: 12 October', 'soil:', '  row: soil.txt', 'trees:',
    ...Array.from({ length: 60 }, (_, i) => `  Apple ${i + 1}: apple, semi-dwarf, planted 2019, ${8 + (i % 9)} ft across, shoots 6 in 2025, mulch, row`),
    'store:', '  - Sulphate of ammonia, 21-0-0, 50 lb, $30', '',
  ].join('\n'),
  'soil.txt': 'Sample 1: Row\ntaken: 3 Nov 2025\ndepth: 6 in\npH 6.4\nPhosphorus 164 ppm = very high\nPotassium 180 ppm (120-200)\nOrganic matter 4.1%\n',
};

/** Seven plants, three bags, four working days, rows of several, lime and sulphur, and a long name. */
const SEVEN: Files = {
  'orchard.yaml': [
    'orchard: Seven', 'where: Ohio, US', 'bud-break: 12 April', 'first-frost: 12 October', 'soil:', '  garden: soil.txt', 'trees:',
    '  Schattenmorelle an der Mauer: sour cherry, planted 2018, 12 ft across, mulch, bearing',
    '  Boskoop: apple, standard, planted 2014, 16 ft across, mulch, fruit 80 lb 2025',
    '  Gate apple: 5 apple, semi-dwarf, planted 2019, 12 ft across, mulch',
    '  Peach: peach, planted 2022, 8 ft across, bare',
    '  Plum row: 3 plum, planted 2020, 9 ft across, mulch',
    '  Blueberries: 6 blueberry, planted 2022, 3.5 ft across, mulch',
    '  Lemon: lemon, tub 60 L',
    'shed:', '  - Bone meal, 3-15-0, 5 lb, half left',
    'store:', '  - Balanced, 10-10-10, 40 lb, $21.50', '  - Sulphate of ammonia, 21-0-0 +24S, 4 lb, $9', '  - Sulphate of potash, 0-0-50, 5 lb, $12', '  - Coated citrus feed, 17-4-10, 1 lb, slow release, $8', '',
  ].join('\n'),
  'soil.txt': 'taken: 3 Nov 2025\ndepth: 6 in\npH 5.7\nPhosphorus 164 ppm = very high\nPotassium 60 ppm (120-200)\nOrganic matter 4.1%\ntexture: sand\n',
};

const SHEETS: readonly { name: string; files: Files; paper: Paper; large?: true; pages: readonly [number, number] }[] = [
  { name: 'chapel-bank', files: sample('chapel-bank'), paper: 'letter', pages: [2, 2] },
  { name: 'chapel-bank', files: sample('chapel-bank'), paper: 'a4', pages: [2, 2] },
  { name: 'chapel-bank', files: sample('chapel-bank'), paper: 'letter', large: true, pages: [2, 5] },
  { name: 'two-gullies', files: sample('two-gullies'), paper: 'letter', pages: [2, 3] },
  { name: 'two-gullies', files: sample('two-gullies'), paper: 'a4', pages: [2, 3] },
  { name: 'seven', files: SEVEN, paper: 'letter', pages: [2, 3] },
  { name: 'seven', files: SEVEN, paper: 'a4', pages: [2, 3] },
];
const titleOf = (s: { name: string; paper: string; large?: true }): string => `${s.name}-${s.paper}${s.large ? '-large' : ''}`;

async function htmlOf(files: Files, paper: Paper, large = false): Promise<string> {
  let html = '';
  const { code, stderr } = await medlar(['sheet', '--paper', paper, ...(large ? ['--large'] : [])], files, '', (folder) => {
    html = readFileSync(join(folder, 'sheet.html'), 'utf8');
  });
  if (code !== 0) throw new Error(stderr);
  return html;
}

type Dose = { tree: string; count: number; bag: string; g: number; mL: number | null };

/** The amount as a sheet writes it, worked out anew: quarters of an ounce or pound, grams, kilograms to three figures. */
function written(g: number, metric: boolean): string {
  if (metric) return g >= 1000 ? `${Number((g / 1000).toPrecision(3))} kg` : g >= 10 ? `${Math.round(g)} g` : `${Number(g.toPrecision(1))} g`;
  const ounces = g / 28.349523125;
  if (ounces < 0.25) return `${Number(ounces.toPrecision(1))} oz`;
  const [amount, unit] = ounces < 32 ? [ounces, 'oz'] : [ounces / 16, 'lb'];
  const whole = Math.floor(Math.round(amount * 4) / 4);
  const part = { 0: '', 1: '1/4', 2: '1/2', 3: '3/4' }[Math.round(amount * 4) % 4];
  return `${[whole === 0 && part ? '' : whole, part].filter((t) => t !== '').join(' ')} ${unit}`;
}

const flat = (text: string): string => text.replace(/\s+/g, ' ');

/** How many rows the front holds for a dose: the tree's name in capitals, then the amount, before any other tree's name. */
function rowsFor(text: string, tree: string, amount: string, trees: readonly string[]): number {
  const others = trees.map((t) => t.toUpperCase().replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|');
  const name = tree.toUpperCase().replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const figure = amount.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const front = flat(text).split(/LIME, SUL(?:F|PH)UR/)[0]!;
  return [...front.matchAll(new RegExp(`\\b${name} (?:(?!${others}).)*?(?<![\\d./] ?)${figure}(?![\\w/])`, 'g'))].length;
}

async function readPdf(bytes: Buffer): Promise<{ pages: { text: string; width: number; height: number }[]; tagged: boolean }> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, isEvalSupported: false, useSystemFonts: false });
  const file = await task.promise;
  const pages = [];
  for (let n = 1; n <= file.numPages; n += 1) {
    const page = await file.getPage(n);
    const { width, height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    pages.push({ text: flat(items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : '')).join('')), width, height });
  }
  const tagged = (await file.getMarkInfo())?.Marked === true;
  await task.destroy();
  return { pages, tagged };
}

type Opened = { page: Page; asked: string[]; said: string[]; close: () => Promise<void> };

async function open(browser: Browser, html: string, viewport: { width: number; height: number }): Promise<Opened> {
  const context = await browser.newContext({ offline: true, viewport, deviceScaleFactor: SHOTS ? 1.5 : 1 });
  const page = await context.newPage();
  const [asked, said]: [string[], string[]] = [[], []];
  page.on('request', (r) => { if (!/^(?:about|data):/.test(r.url())) asked.push(r.url()); });
  page.on('console', (m) => { said.push(m.text()); });
  page.on('pageerror', (e) => { said.push(e.message); });
  await page.setContent(html, { waitUntil: 'load' });
  return { page, asked, said, close: () => context.close() };
}

const measured = (page: Page, what: string): Promise<any> => page.evaluate(`${IN_PAGE}.${what}()`);

async function faults(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const result = await page.evaluate<{ violations: { id: string; help: string; nodes: { html: string }[] }[]; passes: unknown[] }>('axe.run(document, { resultTypes: ["violations"] })');
  expect(result.passes.length).toBeGreaterThan(5);
  return result.violations.map((v) => `${v.id}: ${v.help}: ${v.nodes.map((n) => n.html.slice(0, 120)).join(' | ')}`);
}

async function shoot(page: Page, name: string): Promise<void> {
  if (!SHOTS) return;
  mkdirSync(SHOTS, { recursive: true });
  await page.screenshot({ path: join(SHOTS, `${name}.png`), fullPage: true });
}

const started = await openBrowser();
const none = typeof started === 'string';
if (none && process.env['CI']) throw new Error(started);
if (none) console.warn(`Skipped: ${started}`);
const browser = started as Browser;

describe.skipIf(none)('the sheet in a browser', () => {
  afterAll(async () => { await browser.close(); });

  describe.each(SHEETS.map((s) => ({ ...s, title: titleOf(s) })))('$title', ({ files, paper, large, pages: [least, most], title }) => {
    let html = '';
    let opened: Opened;
    beforeAll(async () => {
      html = await htmlOf(files, paper, large);
      opened = await open(browser, html, INSIDE[paper]);
    });
    afterAll(async () => { await opened?.close(); });

    it('prints on its paper, in few pages, with every dose on it', async () => {
      await opened.page.emulateMedia({ media: 'print' });
      const pdf = await readPdf(await opened.page.pdf({ preferCSSPageSize: true, tagged: true, outline: true }));
      expect(pdf.tagged).toBe(true);
      for (const { width, height } of pdf.pages) {
        expect(Math.abs(width - POINTS[paper][0])).toBeLessThan(1);
        expect(Math.abs(height - POINTS[paper][1])).toBeLessThan(1);
      }
      expect(pdf.pages.filter((p) => p.text.trim() === '')).toEqual([]);
      expect(pdf.pages.length).toBeGreaterThanOrEqual(least);
      expect(pdf.pages.length).toBeLessThanOrEqual(most);
      // The back begins a page of its own, and is one page (sketches.md).
      if (!large) expect(pdf.pages.map((p) => /^LIME, SUL(?:F|PH)UR/.test(p.text.trim()))).toEqual(pdf.pages.map((_, i) => i === pdf.pages.length - 1));

      const plan = (await medlar(['plan', '--json'], files)).json.result as { trees: { name: string }[]; days: { doses: Dose[] }[] };
      const plain = (await medlar(['sheet', '--as', 'text'], files)).stdout;
      const text = pdf.pages.map((p) => p.text).join(' ');
      const trees = plan.trees.map((t) => t.name);
      const metric = / g\b/.test(plain);
      const wanted = new Map<string, number>();
      for (const { tree, count, g } of plan.days.flatMap((d) => d.doses)) {
        // Under half an ounce a plant is weighed for the whole row.
        const key = `${tree}\t${written(g < 28.349523125 / 2 - 1e-9 ? g * count : g, metric)}`;
        wanted.set(key, (wanted.get(key) ?? 0) + 1);
      }
      expect(wanted.size).toBeGreaterThan(1);
      for (const [key, times] of wanted) {
        const [tree, amount] = key.split('\t') as [string, string];
        expect([key, rowsFor(text, tree, amount, trees)]).toEqual([key, times]);
        expect([key, rowsFor(plain, tree, amount, trees)]).toEqual([key, times]);
      }
      for (const tree of trees) expect(text).toContain(tree.toUpperCase());
    });

    it('reads as print: twelve points, black on white, whole rows, nothing cut or overlaid', async () => {
      await opened.page.emulateMedia({ media: 'print' });
      await opened.page.setViewportSize(INSIDE[paper]);
      await shoot(opened.page, `${title}-print`);
      expect(await measured(opened.page, 'small')).toEqual([]);
      expect(await measured(opened.page, 'coloured')).toEqual([]);
      expect(await measured(opened.page, 'faded')).toEqual([]);
      expect(await measured(opened.page, 'rows')).toBeGreaterThan(3);
      expect(await measured(opened.page, 'rowsThatMaySplit')).toEqual([]);
      expect(await measured(opened.page, 'overflowing')).toEqual([]);
      expect(await measured(opened.page, 'overlapping')).toEqual([]);
      expect(await measured(opened.page, 'broken')).toEqual([]);
      expect(await faults(opened.page)).toEqual([]);
    });

    it('reads on a screen, dark or not', async () => {
      await opened.page.emulateMedia({ media: 'screen', colorScheme: 'dark' });
      await opened.page.setViewportSize({ width: 1024, height: 800 });
      await shoot(opened.page, `${title}-screen`);
      expect(await measured(opened.page, 'small')).toEqual([]);
      expect(await measured(opened.page, 'coloured')).toEqual([]);
      expect(await measured(opened.page, 'overflowing')).toEqual([]);
      expect(await faults(opened.page)).toEqual([]);
    });

    it('fits a screen of 320 pixels', async () => {
      await opened.page.emulateMedia({ media: 'screen', colorScheme: 'light' });
      await opened.page.setViewportSize({ width: 320, height: 640 });
      await shoot(opened.page, `${title}-320`);
      const [scroll, client] = await measured(opened.page, 'wide') as [number, number];
      expect(scroll).toBeLessThanOrEqual(client);
      expect(await measured(opened.page, 'small')).toEqual([]);
      expect(await faults(opened.page)).toEqual([]);
    });

    it('asks nothing of the network and says nothing to the console', async () => {
      expect(await measured(opened.page, 'outside')).toEqual([]);
      expect(opened.asked).toEqual([]);
      expect(opened.said).toEqual([]);
    });
  });

  it.each(['a4', 'letter'] as const)('repeats the heads of a long table on every page it spans, on %s', async (paper) => {
    const opened = await open(browser, await htmlOf(LONG, paper), INSIDE[paper]);
    try {
      await shoot(opened.page, `long-${paper}`);
      const heads = (await opened.page.locator('thead').first().locator('th').allInnerTexts()).map((t) => t.trim());
      const { pages } = await readPdf(await opened.page.pdf({ preferCSSPageSize: true, tagged: true }));
      const rows = (text: string): string[] => [...text.matchAll(/\b\d+ (APPLE \d+)\b/g)].map((m) => m[1]!);
      const spanned = pages.filter((p) => rows(p.text).length > 0);
      expect(spanned.length).toBeGreaterThan(3);
      expect(new Set(spanned.flatMap((p) => rows(p.text))).size).toBe(60);
      expect(heads.length).toBeGreaterThan(2);
      const line = flat(heads.join(' '));
      expect(spanned.filter((p) => !p.text.includes(line)).map((p) => p.text.slice(0, 200))).toEqual([]);
      expect(pages.filter((p) => p.text.includes(line)).length).toBe(spanned.length);
    } finally {
      await opened.close();
    }
  });

  // Said of a sheet by its readers: a grower finds the box, the bag at hand and the reason, each once.
  it('says each thing once, with boxes that are drawn', async () => {
    const html = (await htmlOf(SEVEN, 'letter')).replaceAll('\u00a0', ' ');
    const plain = flat((await medlar(['sheet', '--as', 'text'], SEVEN)).stdout);
    const plan = (await medlar(['plan', '--json'], SEVEN)).json.result as { days: { doses: Dose[] }[]; buy: unknown[] };
    expect(plan.days.length).toBe(4);
    expect(new Set(plan.days.flatMap((d) => d.doses.map((x) => x.bag))).size).toBe(3);
    expect(html).not.toMatch(/\[ \]/);
    expect(html.match(/<p><span class="box"[^>]*><\/span> (?:Boskoop|Gate apple|Blueberries): /g)?.length).toBe(3);
    for (const text of [html, plain]) {
      expect(text).toMatch(/Bone meal 3-15-0, Balanced 10-10-10; any bag with a middle number above 0/);
      expect(text).not.toMatch(/\d\.\d{3,}/);
      expect(text.match(/no listed bag that fits brings more/g)?.length).toBe(1);
      expect(text).toMatch(/Boskoop: [^;]*October-\d+ December 2026/);
      expect(text).toMatch(/of potash \(K2O\)/);
      // Four trees of bearing age have the condition on their first day; later days refer to that day.
      expect(text.match(/only if last year(?:'|&#x27;)s shoots were under 8 in/g)?.length).toBe(4);
      // All four stand on sand, where each is fed in halves (North Carolina State University, fruit tree fertilizer: half and half on sandy soil).
      expect(text.match(/if fed on day 2/g)?.length).toBe(4);
    }
  });
});
