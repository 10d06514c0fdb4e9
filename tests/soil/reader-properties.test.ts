// What holds for every report: places that exist, readings that survive being printed again, chatter, digits and order that change nothing else.
// Names, units and words are typed here, not taken from the reader's tables.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/soil/reading.ts';
import { readReport } from '../../src/soil/read.ts';
import { makeReport } from '../generated/report-maker.ts';

const made = fc.integer({ min: 1, max: 4_000_000 }).map((seed) => makeReport(seed));
const read = (text: string): Reading[] => readReport(text, 'r.txt').samples.flatMap((s) => s.readings);
const bare = ({ place: _, asPrinted: __, ...r }: Reading): unknown => r;
const linesOf = (text: string): string[] => text.split(/\r\n|\n|\r/);

test('places of readings, notices, questions and unread lines lie within their lines', () => {
  fc.assert(fc.property(made, ({ text }) => {
    const report = readReport(text, 'r.txt');
    const lines = linesOf(text);
    const places = [...report.samples.flatMap((s) => s.readings.map((r) => r.place)), ...report.notices.flatMap((n) => (n.place ? [n.place] : [])), ...report.questions.flatMap((q) => ('place' in q && q.place ? [q.place] : []))];
    for (const place of places) {
      const line = lines[place.line - 1];
      expect(line, JSON.stringify(place)).toBeDefined();
      expect(place.column).toBeGreaterThanOrEqual(1);
      expect(place.length).toBeGreaterThanOrEqual(1);
      expect(place.column - 1 + place.length).toBeLessThanOrEqual([...line!].length);
    }
    // A name on one line and its value on the next are taken as one; marks of bold print are no part of it.
    const plain = (words: string): string => words.replaceAll('*', '').replaceAll(/\s+/g, ' ').trim();
    const from = (line: number): string => plain(lines.slice(line - 1, line + 6).join(' '));
    for (const s of report.samples) {
      for (const u of s.unread) expect(from(u.line)).toContain(plain(u.text));
      for (const r of s.readings) expect(from(r.place.line)).toContain(plain(r.asPrinted));
    }
  }), { numRuns: 400 });
});

/** Canonical names, by language; content items may carry an oxide behind them. */
const NAMES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  en: { phosphorus: 'Phosphorus', potassium: 'Potassium', calcium: 'Calcium', magnesium: 'Magnesium', sulphur: 'Sulfur', sodium: 'Sodium', boron: 'Boron', zinc: 'Zinc', manganese: 'Manganese', copper: 'Copper', iron: 'Iron' },
  es: { phosphorus: 'Fósforo', potassium: 'Potasio', calcium: 'Calcio', magnesium: 'Magnesio', sulphur: 'Azufre', sodium: 'Sodio', boron: 'Boro', zinc: 'Zinc', manganese: 'Manganeso', copper: 'Cobre', iron: 'Hierro' },
  fr: { phosphorus: 'Phosphore', potassium: 'Potassium', calcium: 'Calcium', magnesium: 'Magnésium', sulphur: 'Soufre', sodium: 'Sodium', boron: 'Bore', zinc: 'Zinc', manganese: 'Manganèse', copper: 'Cuivre', iron: 'Fer' },
  de: { phosphorus: 'Phosphor', potassium: 'Kalium', calcium: 'Calcium', magnesium: 'Magnesium', sulphur: 'Schwefel', sodium: 'Natrium', boron: 'Bor', zinc: 'Zink', manganese: 'Mangan', copper: 'Kupfer', iron: 'Eisen' },
  pt: { phosphorus: 'Fósforo', potassium: 'Potássio', calcium: 'Cálcio', magnesium: 'Magnésio', sulphur: 'Enxofre', sodium: 'Sódio', boron: 'Boro', zinc: 'Zinco', manganese: 'Manganês', copper: 'Cobre', iron: 'Ferro' },
  it: { phosphorus: 'Fosforo', potassium: 'Potassio', calcium: 'Calcio', magnesium: 'Magnesio', sulphur: 'Zolfo', sodium: 'Sodio', boron: 'Boro', zinc: 'Zinco', manganese: 'Manganese', copper: 'Rame', iron: 'Ferro' },
};
const WORDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  en: { 'very-low': 'very low', low: 'low', medium: 'medium', optimum: 'optimum', high: 'high', 'very-high': 'very high' },
  es: { 'very-low': 'muy bajo', low: 'bajo', medium: 'medio', optimum: 'óptimo', high: 'alto', 'very-high': 'muy alto' },
  fr: { 'very-low': 'très faible', low: 'faible', medium: 'moyen', optimum: 'optimal', high: 'élevé', 'very-high': 'très élevé' },
  de: { 'very-low': 'sehr niedrig', low: 'niedrig', medium: 'mittel', optimum: 'optimal', high: 'hoch', 'very-high': 'sehr hoch' },
  pt: { 'very-low': 'muito baixo', low: 'baixo', medium: 'médio', optimum: 'ideal', high: 'alto', 'very-high': 'muito alto' },
  it: { 'very-low': 'molto basso', low: 'basso', medium: 'medio', optimum: 'ottimale', high: 'alto', 'very-high': 'molto alto' },
};
const OTHER_NAMES: Readonly<Record<string, string>> = { ph: 'pH', 'buffer-ph': 'Buffer pH', 'organic-matter': 'Organic matter', 'organic-carbon': 'Organic carbon', 'nitrate-n': 'Nitrate-N', 'ammonium-n': 'Ammonium-N', nitrogen: 'Nitrogen', aluminium: 'Aluminum', lead: 'Lead', cec: 'CEC', salts: 'Soluble salts', acidity: 'Exchangeable acidity', carbonate: 'Calcium carbonate', sand: 'Sand', silt: 'Silt', clay: 'Clay', density: 'Scoop density', 'lime-requirement': 'Lime requirement', 'saturation-k': 'Potassium saturation', 'saturation-ca': 'Calcium saturation', 'saturation-mg': 'Magnesium saturation', 'saturation-na': 'Sodium saturation', sar: 'SAR' };
const UNITS: Readonly<Record<string, string>> = { ppm: 'ppm', 'mg/kg': 'mg/kg', 'mg/L': 'mg/L', 'mg/100g': 'mg/100 g', 'lb/acre': 'lb/acre', 'kg/ha': 'kg/ha', 'meq/100g': 'meq/100 g', 'cmol/kg': 'cmol/kg', 'cmol/dm3': 'cmolc/dm3', 'mmolc/dm3': 'mmolc/dm3', '%': '%', 'g/kg': 'g/kg', 'g/dm3': 'g/dm3', 'dS/m': 'dS/m', 'mS/cm': 'mS/cm', 'mmho/cm': 'mmho/cm', 'uS/cm': 'µS/cm', 'mS/m': 'mS/m', 'g/cm3': 'g/cm3', 't/ha': 't/ha', 'ton/acre': 'tons/acre', 'lb/1000sqft': 'lb/1000 sq ft' };
const METHODS: Readonly<Record<string, string>> = { 'mehlich-1': 'Mehlich 1', 'mehlich-3': 'Mehlich 3', olsen: 'Olsen', 'bray-1': 'Bray P1', 'bray-2': 'Bray P2', morgan: 'Morgan', 'modified-morgan': 'Modified Morgan', 'ammonium-acetate': 'ammonium acetate', cal: 'CAL', dl: 'DL', dtpa: 'DTPA', 'hot-water': 'hot water', colwell: 'Colwell' };

describe('printed and read again', () => {
  // A line from a reading's own fields; undefined where the canonical form has no word for one of them.
  const print = (r: Reading, language: string): string | undefined => {
    const name = NAMES[language]![r.item] ?? OTHER_NAMES[r.item];
    const unit = r.unit === null || r.unit === 'pH' ? '' : r.unit === 'index' ? undefined : UNITS[r.unit];
    const method = r.method === null ? '' : METHODS[r.method];
    const oxide = r.form !== null && r.form.includes('O');
    if (name === undefined || unit === undefined || method === undefined || r.value === null || r.to !== undefined || r.lab.range?.includes(null)) return undefined;
    const limit = r.below ? '<' : r.above ? '>' : '';
    return [oxide ? `${name} (${r.form})` : name, `${limit}${r.value}`, unit, method, r.lab.rating === null ? '' : WORDS[language]![r.lab.rating], r.lab.range ? `(${r.lab.range[0]}-${r.lab.range[1]})` : ''].filter((x) => x !== '').join(' ');
  };
  test('an understood report, in its language', () => {
    let compared = 0;
    fc.assert(fc.property(made, ({ text, language }) => {
      const report = readReport(text, 'r.txt');
      for (const sample of report.samples.slice(0, 1)) {
        const known = sample.readings.map((r) => [r, print(r, language)] as const).filter(([, line]) => line !== undefined);
        const again = readReport(known.map(([, line]) => line).join('\n'), 'r.txt');
        const now = again.samples.flatMap((s) => s.readings);
        const plain = (r: Reading): unknown => ({ item: r.item, value: r.value, unit: r.unit, oxide: r.form?.includes('O') ? r.form : null, method: r.method, lab: r.lab, below: r.below, above: r.above });
        expect(now.map(plain)).toEqual(known.map(([r]) => plain(r)));
        compared += known.length;
      }
    }), { numRuns: 300 });
    expect(compared).toBeGreaterThan(800);
  });
  const ELEMENTS = Object.keys(NAMES['en']!);
  const CHARGED = ['potassium', 'calcium', 'magnesium', 'sodium'];
  const OF_CHARGE = ['meq/100g', 'cmol/kg', 'cmol/dm3', 'mmolc/dm3'];
  const OF_MASS = ['ppm', 'mg/kg', 'mg/L', 'mg/100g', 'lb/acre', 'kg/ha', 'g/kg'];
  test.each(Object.keys(NAMES))('every item, unit and rating word: %s', (language) => {
    for (const item of ELEMENTS) {
      for (const unit of [...OF_MASS, ...(CHARGED.includes(item) ? OF_CHARGE : [])]) {
        for (const [rating, word] of Object.entries(WORDS[language]!)) {
          const line = `${NAMES[language]![item]} 42.5 ${UNITS[unit]} ${word}`;
          expect(read(line).map((r) => [r.item, r.value, r.unit, r.lab.rating, r.method]), line).toEqual([[item, 42.5, unit, rating, null]]);
        }
      }
    }
  });
  test.each(['phosphorus', 'potassium'])('every method beside %s', (item) => {
    for (const [method, text] of Object.entries(METHODS)) {
      if (item === 'potassium' && /^(?:olsen|bray)/.test(method)) continue;
      for (const line of [`${OTHER_NAMES[item] ?? NAMES['en']![item]} 42 ppm ${text}`, `${NAMES['en']![item]} (${text}) 42 ppm`]) expect(read(line).map((r) => [r.item, r.value, r.unit, r.method]), line).toEqual([[item, 42, 'ppm', method]]);
    }
  });
});

/** Lines that stand by themselves: everything about a reading is on its own line. */
const ALONE = ['pH 6.4', 'Buffer pH 6.8', 'Organic matter 4.1 %', 'Phosphorus 42 ppm Mehlich 3 optimum 30-50', 'Potassium (K) 180 ppm (120-200)', 'Calcium 1180 mg/kg', 'Magnesium 231 ppm = high', 'Zinc 3.4 ppm low', 'Boron 0.45 ppm', 'CEC 12.4 meq/100g', 'Soluble salts (1:2) 0.21 dS/m', 'Manganese: 14.2 ppm', 'Iron .............. 61 ppm', 'Copper | 1.7 | ppm | medium', 'Sulfur\t12\tppm', 'K saturation 4.4 %', 'Sodium 23 lb/acre'];
const some = fc.shuffledSubarray(ALONE, { minLength: 2 });

describe('independent lines', () => {
  test('the order does not matter', () => {
    fc.assert(fc.property(some, (lines) => {
      const each = lines.flatMap((line) => read(line).map(bare));
      expect(each).toHaveLength(lines.length);
      expect(read(lines.join('\n')).map(bare)).toEqual(each);
    }), { numRuns: 300 });
  });
  test('letters of a lab between them change nothing', () => {
    const letter = fc.constantFrom('Thank you for your order.', 'Davis, CA 95616', '410 N Main St', 'Tel. 555-0142', 'Page 1 of 2', 'Lab No. 23-04471', 'Grower: P. Kowalski', 'Crop: Apples', 'Invoice 88121', 'ISO 17025 accredited', 'www.example.org/soil', 'Merci de votre confiance.', 'Mit freundlichen Grüßen', 'Hauptstraße 14', 'Rua das Flores, 14', 'Via Roma 14', 'Calle Mayor 14', '', '-----', '* * *', 'Approved by B. Smith', '1420 K Street NW', 'Suite 12, S 4th Ave');
    fc.assert(fc.property(some, fc.array(fc.tuple(letter, fc.nat()), { minLength: 1, maxLength: 6 }), (lines, letters) => {
      const mixed = [...lines];
      for (const [text, at] of letters) mixed.splice(at % (mixed.length + 1), 0, text);
      expect(read(mixed.join('\n')).map(bare)).toEqual(read(lines.join('\n')).map(bare));
    }), { numRuns: 400 });
  });
});

test('another digit in a value changes that value and nothing else', () => {
  fc.assert(fc.property(some, fc.nat(), fc.nat(), fc.integer({ min: 1, max: 8 }), (lines, which, where, step) => {
    const i = which % lines.length;
    const line = lines[i]!;
    // The value is the first number that is not part of a name: behind "(1:2) " and before the unit.
    const value = /(?<![:(\d.])\d+(?:\.\d+)?(?![:)\d])/.exec(line)!;
    // A pH keeps its first digit: pH 1.4 is no soil's, and the reader says so.
    const at = line.includes('pH') ? value.index + 2 : value.index + (where % value[0].length);
    if (line[at] === '.') return;
    // Never a leading zero or nine: the number keeps its length and is another number.
    const digit = String(((Number(line[at]) - 1 + step) % 9) + 1);
    if (digit === line[at]) return;
    const changed = [...lines];
    changed[i] = line.slice(0, at) + digit + line.slice(at + 1);
    const number = Number(changed[i].slice(value.index, value.index + value[0].length));
    const before = read(lines.join('\n')).map(bare) as { value: number }[];
    const after = read(changed.join('\n')).map(bare) as { value: number }[];
    expect(after).toEqual(before.map((r, k) => (k === i ? { ...r, value: number } : r)));
  }), { numRuns: 500 });
});
