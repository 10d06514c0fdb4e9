/** What must be asked of a reading: a missing unit always; a missing method where neither word, range nor index decides. */
import type { Question } from '../reason/notice.ts';
import type { Item, Method, ReportUnit } from '../tables/items.ts';
import { needsUnit } from './line.ts';
import type { Answer } from './meta.ts';
import type { Reading } from './reading.ts';

const UNIT_CHOICES: readonly ReportUnit[] = ['ppm', 'mg/kg', 'lb/acre', 'meq/100g', 'mg/100g', 'mg/L', 'kg/ha'];
const METHOD_CHOICES: Record<'phosphorus' | 'potassium', readonly Method[]> = {
  phosphorus: ['mehlich-3', 'mehlich-1', 'olsen', 'bray-1', 'modified-morgan', 'morgan', 'cal', 'colwell'],
  potassium: ['ammonium-acetate', 'mehlich-3', 'mehlich-1', 'ammonium-nitrate', 'modified-morgan', 'morgan', 'cal', 'colwell'],
};

export function asked(reading: Reading, answers: ReadonlyMap<Item, Answer>, sample: string, leaf: boolean): Question[] {
  const questions: Question[] = [];
  const facts = { item: reading.item, line: reading.place.line, sample, read: reading.asPrinted };
  const says = answers.get(reading.item);
  const { item } = reading;
  const decides = item === 'phosphorus' || item === 'potassium';
  const organic = item === 'organic-matter' || item === 'organic-carbon';
  if (reading.value !== null && reading.unit === null && needsUnit(item) && says?.unit !== 'unknown') {
    const choices = item === 'cec' ? ['meq/100g', 'cmol/kg', 'mmolc/dm3'] : organic ? ['%', 'g/kg'] : item === 'salts' ? ['dS/m', 'mS/cm', 'uS/cm'] : UNIT_CHOICES;
    const changes = reading.lab.rating === null && decides ? 'changes-p-and-k' : item === 'salts' ? 'changes-salts' : organic ? 'changes-organic' : 'changes-nothing-bought';
    questions.push({ code: 'unit-missing', about: item, facts, choices, changes, place: reading.place });
  }
  // A leaf is burnt whole: no extractant.
  if (!leaf && decides && reading.value !== null && reading.method === null && reading.lab.rating === null && reading.lab.range === null && reading.unit !== 'index' && reading.unit !== 'MAF' && reading.index === undefined) {
    questions.push({ code: 'method-missing', about: item, facts, choices: METHOD_CHOICES[item], changes: 'changes-p-and-k', place: reading.place });
  }
  return questions;
}
