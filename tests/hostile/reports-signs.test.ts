// Letters that are not seen, or drive a terminal, or come in another form: numbers are still read, and nothing raw is written out.
// Sources: Unicode 15 (UAX 9 for the marks of direction, 23.2 for the zero-width ones); ECMA-48 for the codes of terminals.
import { describe, expect, test } from 'vitest';
import { readReport } from '../../src/soil/read.ts';
import { LARGEST_REPORT } from '../../src/soil/text.ts';
import { medlar } from '../medlar.ts';
import { both, GOOD, held } from './hold.ts';

const values = (text: string): unknown => readReport(text, 'r.txt').samples.flatMap((s) => s.readings).map((r) => [r.item, r.value, r.unit]);
const WANT = [['ph', 6.4, 'pH'], ['phosphorus', 42, 'ppm'], ['potassium', 180, 'ppm']];
const PLAIN = 'pH 6.4\nPhosphorus 42 ppm Olsen\nPotassium 180 ppm Olsen\n';

test('the plain text is read so', () => { expect(values(PLAIN)).toEqual(WANT); });

describe('signs that nobody sees', () => {
  test.each([
    ['left-to-right mark', '\u200e'], ['right-to-left mark', '\u200f'], ['Arabic letter mark', '\u061c'], ['embedding', '\u202a'], ['right-to-left embedding', '\u202b'], ['pop', '\u202c'], ['override', '\u202d'], ['right-to-left override', '\u202e'],
    ['isolate', '\u2066'], ['right-to-left isolate', '\u2067'], ['first strong isolate', '\u2068'], ['pop isolate', '\u2069'],
    ['zero-width space', '\u200b'], ['zero-width non-joiner', '\u200c'], ['zero-width joiner', '\u200d'], ['word joiner', '\u2060'], ['byte order mark', '\ufeff'], ['soft hyphen', '\u00ad'],
  ])('%s', (_, sign) => {
    expect(values(PLAIN.replaceAll(/^|$/gm, sign))).toEqual(WANT);
    expect(values(PLAIN.replaceAll(' ', ` ${sign}`))).toEqual(WANT);
    expect(values(PLAIN.replaceAll(' ', `${sign} `))).toEqual(WANT);
    // Within a number or a word it is either nothing or a fault that is told; a number is never cut at it.
    for (const [text, whole] of [[PLAIN.replace('42', `4${sign}2`), 42], [PLAIN.replace('180', `18${sign}0`), 180], [PLAIN.replace('6.4', `6${sign}.4`), 6.4], [PLAIN.replace('6.4', `6.${sign}4`), 6.4]] as const) {
      const report = readReport(text, 'r.txt');
      const wrong = report.samples.flatMap((s) => s.readings).filter((r) => ![6.4, 42, 180].includes(r.value!));
      expect([whole, wrong.map((r) => r.value)]).toEqual([whole, []]);
    }
  });

  test('a copied table with a mark before every cell', () => {
    expect(values(PLAIN.split('\n').map((l) => l.split(' ').map((c) => `\u200e${c}\u200f`).join('\t')).join('\n'))).toEqual(WANT);
  });
});

describe('letters in another form', () => {
  test.each([
    ['accents as signs of their own', 'pH 6.4\nFo\u0301sforo 42 ppm Olsen\nPotasio 180 ppm Olsen\n'],
    ['accents within', 'pH 6.4\nFósforo 42 ppm Olsen\nPotasio 180 ppm Olsen\n'],
    ['full-width digits', 'pH ６.４\nPhosphorus ４２ ppm Olsen\nPotassium １８０ ppm Olsen\n'],
    ['full-width point', 'pH ６．４\nPhosphorus ４２ ppm Olsen\nPotassium １８０ ppm Olsen\n'],
    ['full-width letters', 'ｐＨ 6.4\nＰｈｏｓｐｈｏｒｕｓ 42 ｐｐｍ Olsen\nＰｏｔａｓｓｉｕｍ 180 ｐｐｍ Olsen\n'],
    ['emoji', '🌱 pH 6.4 ✅\n🧪 Phosphorus 42 ppm Olsen 👍\n🍌 Potassium 180 ppm Olsen 👍🏽\n'],
    ['emoji of several parts', '👩‍🌾 pH 6.4\nPhosphorus 42 ppm Olsen 🏳️‍🌈\nPotassium 180 ppm Olsen\n'],
    ['blanks of every width', 'pH\u00a06.4\nPhosphorus\u200342\u2009ppm\u3000Olsen\nPotassium\u2002180\u202fppm Olsen\n'],
    ['ligature blanks and line separators', 'pH 6.4\u2028Phosphorus 42 ppm Olsen\u2029Potassium 180 ppm Olsen\n'],
    ['line ends of an old Mac', PLAIN.replaceAll('\n', '\r')],
    ['line ends mixed', 'pH 6.4\r\nPhosphorus 42 ppm Olsen\rPotassium 180 ppm Olsen'],
    ['form feeds between pages', 'pH 6.4\n\fPhosphorus 42 ppm Olsen\n\fPotassium 180 ppm Olsen\n'],
    ['vertical tabs', 'pH 6.4\n\vPhosphorus 42 ppm Olsen\n\vPotassium 180 ppm Olsen\n'],
  ])('%s', (_, text) => { expect(values(text)).toEqual(WANT); });

  test('the caret counts letters as they are seen, astral ones as one', () => {
    const { notices } = readReport('🌱🌱 Phosphorus -5 ppm Olsen\n', 'r.txt');
    // Two emoji, a blank, ten letters of the name, a blank: the minus is the fifteenth.
    expect(notices.find((n) => n.severity === 'error')?.place?.column).toBe(15);
  });

  test('half a pair does not stop the reader', () => {
    expect(values(`\ud83c ${PLAIN}\udf31`)).toEqual(WANT);
  });
});

describe('codes of the terminal', () => {
  const CODES = ['\u001b[31m', '\u001b[0m', '\u001b[2J', '\u001b]0;owned\u0007', '\u001b]8;;http://x\u001b\\', '\u001bc', '\u009b2J', '\u009d0;x\u009c', '\u0007', '\u0008\u0008\u0008', '\u007f', '\u0085', '\u001b[1;1H', '\u001bP1$r\u001b\\'];

  test.each(CODES)('%j never reaches it', async (code) => {
    const texts = [`${code}${PLAIN}`, PLAIN.replace('Olsen', `Olsen${code}`), `${PLAIN}${code} note\n`, PLAIN.replace('42', `4${code}2`), `Sample: ${code}bed\n${PLAIN}`, PLAIN.replace('42', `${code}x`), PLAIN.replace('Phosphorus', `Phos${code}phorus`)];
    for (const text of texts) for (const argv of [['read', '-'], ['read', '-', '--json']]) held(await medlar(argv, {}, text));
    for (const argv of [['check'], ['plan']]) await both(argv, { 'orchard.yaml': GOOD, 'soil/2025.txt': texts.join('\n') });
  });

  test('marks of direction do not turn the lines of the answer about', async () => {
    // What opens within an echoed line would go on over the lines after it.
    for (const sign of ['\u202e', '\u202d', '\u202b', '\u202a', '\u2066', '\u2067', '\u2068', '\u200f', '\u061c']) {
      const { stdout, stderr } = await medlar(['read', '-'], {}, `${sign}note\n${PLAIN}${sign}Phosphorus x ppm\nSample: ${sign}bed\npH 6.4\n`);
      expect(JSON.stringify(stdout + stderr)).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]/);
    }
  });

  test('coloured lines are read, the code being no part of them', () => {
    expect(values('\u001b[1mpH\u001b[0m 6.4\n\u001b[32mPhosphorus 42 ppm Olsen\u001b[0m\n\u001b[31mPotassium 180 ppm Olsen\u001b[0m\n')).toEqual(WANT);
  });

  test('no number is made of a code', () => {
    for (const code of CODES) for (const r of readReport(PLAIN.replaceAll(' ', ` ${code}`), 'r.txt').samples.flatMap((s) => s.readings)) expect([6.4, 42, 180]).toContain(r.value);
  });
});

describe('size', () => {
  const timed = <T>(act: () => T): { ms: number; result: T } => {
    // The time that the processor gave, which does not hang on what else the machine does.
    const start = process.cpuUsage();
    const result = act();
    const { user, system } = process.cpuUsage(start);
    return { ms: (user + system) / 1000, result };
  };

  test('100,000 lines are answered in time, in full', () => {
    const text = `${PLAIN}${Array.from({ length: 100_000 }, (_, i) => `about row ${i}`).join('\n')}\n`;
    expect(text.length).toBeLessThan(LARGEST_REPORT);
    const { ms, result } = timed(() => readReport(text, 'r.txt'));
    expect(result.samples.flatMap((s) => s.readings)).toHaveLength(3);
    expect(result.samples.flatMap((s) => s.unread)).toHaveLength(100_000);
    // A person waits; the machine may be a slow one.
    expect(ms).toBeLessThan(20_000);
  });

  test('100,000 lines of samples too', () => {
    const text = Array.from({ length: 100_000 }, (_, i) => (i % 5 === 0 ? `Sample: ${i}` : `pH 6.${i % 10}`)).join('\n');
    const { ms, result } = timed(() => readReport(text, 'r.txt'));
    expect(result.samples.length + result.notices.length).toBeGreaterThan(0);
    expect(ms).toBeLessThan(20_000);
  });

  test('20,000 lines that each look like a slip of a name', () => {
    const text = PLAIN + Array.from({ length: 20_000 }, (_, i) => `note ${i % 7}`).join('\n');
    const { ms, result } = timed(() => readReport(text, 'r.txt'));
    expect(result.samples.flatMap((s) => s.readings)).toHaveLength(3);
    expect(ms).toBeLessThan(4_000);
  });

  test('one letter more than the most is refused, with both numbers said', async () => {
    const most = 'pH 6.4\n'.padEnd(LARGEST_REPORT, `${'x'.repeat(3000)}\n`);
    expect(readReport(most, 'r.txt').notices.map((n) => n.code)).not.toContain('report-too-large');
    const { text, notices } = await both(['read', 'r.txt'], { 'r.txt': `${most}x` });
    expect(text.code).toBe(3);
    expect(notices.map((n) => n.code)).toEqual(['report-too-large']);
    expect(text.stderr.replace(/[,\s\u00a0\u202f]/g, '')).toContain(String(LARGEST_REPORT));
  });
});
