/** All that a grower is told of a report, a line each: readings with their sample, lines unread, notices and where they point. */
import { readReport } from '../../src/soil/read.ts';

/** "Front: phosphorus < 5 ppm olsen P2O5 low 30-50 i1": the sample, item, sign, value, unit, method, form, the lab's word, range and index. */
export function told(text: string): string[] {
  const { samples, notices, questions } = readReport(text, 'r.txt');
  return [
    ...samples.flatMap((s) => [
      ...s.readings.map((r) => {
        const parts = [r.item, r.below ? '<' : r.above ? '>' : null, r.value, r.to, r.unit, r.method, r.form, r.lab.rating, r.lab.range?.map((n) => n ?? '').join('-'), r.index === undefined ? null : `i${r.index}`, r.tag];
        return `${s.name}: ${parts.filter((p) => p !== null && p !== undefined).join(' ')}`;
      }),
      ...s.unread.map((u) => `unread ${u.line}`),
    ]),
    ...notices.map((n) => `${n.code} ${n.place?.line ?? ''}`.trim()), ...questions.filter((q) => q.code === 'layout-unclear').map((q) => `${q.code} ${q.place?.line ?? ''}`),
  ];
}
