// Whose time of feeding leads where several could, and what the others say. The rows stand in tables/windows.ts with their pages; borders by the map.
import { describe, expect, test } from 'vitest';
import { othersOf, timingOf } from '../../src/need/timing.ts';
import type { Rule } from '../../src/tables/rule.ts';
import { TIMINGS } from '../../src/tables/windows.ts';
import { facts } from './parts.ts';

const OLD = 'apple, planted 2016, bearing';
const by = (source: string, more: Partial<Rule> = {}): Rule => ({ id: 'made', source, crops: ['apple'], region: 'US-OH', by: 'plant', gives: { of: 'N', unit: 'g' }, low: 10, cite: { source, at: 'made', mark: 'read' }, ...more });
const said = (line: string, where: string, rule: Rule | null = null): string | null => timingOf(facts(line, [], {}, where), rule)?.said ?? null;

describe('the row that leads', () => {
  test.each<[string, string, string | null, string | null]>([
    // Colorado prints two, alike in breadth: the first, or that of the publication which leads.
    [OLD, 'Colorado, US', null, 'before-bud-break'], [OLD, 'Colorado, US', 'colorado-7612', 'late-fall-or-spring'], [OLD, 'Colorado, US', 'colorado-1216', 'before-bud-break'],
    // A weak page leads with its own rule alone.
    [OLD, 'Michigan, US', null, 'before-bud-break'], [OLD, 'Michigan, US', 'michigan-oc414', 'late-fall-or-spring'],
    // Illinois has a weak row alone: its neighbours' are not taken in its stead.
    [OLD, 'Illinois, US', null, null], [OLD, 'Illinois, US', 'illinois-trees', 'spring-or-leaf-fall'],
    // Kentucky: Virginia goes by months, Tennessee's is an orchard's, Illinois' is weak; of Wisconsin's neighbours the first that has a row is Michigan.
    [OLD, 'Kentucky, US', null, null], [OLD, 'Wisconsin, US', null, 'before-bud-break'],
    // Georgia's young figs are fed by bud break and by months, so Alabama does not go by it; its old ones by bud break alone.
    ['fig, planted 2023', 'Georgia, US', null, 'spring-may-july'], ['fig, planted 2023', 'Alabama, US', null, null], ['fig, planted 2016', 'Alabama, US', null, 'early-spring'],
    // Kiwifruit in Oregon: its third and fourth year; older vines by an orchard page, with its rule alone; not where the age is untold.
    ['kiwifruit, planted 2025', 'Oregon, US', null, null], ['kiwifruit, planted 2024', 'Oregon, US', null, 'march-may-july'], ['kiwifruit, planted 2023', 'Oregon, US', null, 'march-may-july'], ['kiwifruit, planted 2022', 'Oregon, US', null, null], ['kiwifruit, planted 2022', 'Oregon, US', 'berrygrape-kiwi', 'march-may'], ['kiwifruit', 'Oregon, US', null, null],
    // Muscadines have their rows; a plain grape in Georgia has none.
    ['muscadine, planted 2016', 'Georgia, US', null, 'march-june'], ['grape, planted 2016', 'Georgia, US', null, null],
    // California's citrus serves wherever winters are not known to be cold, and no place has or borders on a row by what the tree does.
    ['lemon, planted 2016', 'Texas, US', null, 'before-bloom-may'], ['lemon, planted 2016', 'Kenya', null, 'before-bloom-may'], ['lemon, planted 2016', 'Ohio, US', null, null], ['lemon, planted 2016', 'Florida, US', null, 'february-october'],
    [OLD, 'Kenya', null, null],
    // A page for all of the States is no state's own.
    ['blueberry, planted 2016', 'Ohio, US', null, null],
  ])('%s in %s by %s: %s', (line, where, source, wanted) => { expect(said(line, where, source === null ? null : by(source))).toBe(wanted); });
  test('nowhere told', () => {
    const f = facts(OLD);
    expect(timingOf({ ...f, where: { ...f.where, country: null, region: null, mildWinters: null } }, null)).toBeNull();
  });
  test('strawberries that are fed when picked have a row of their own name', () => { expect(timingOf(facts('strawberry, planted 2024'), by('x', { id: 'june', crops: ['strawberry'], when: 'after-harvest' }))!.id).toBe('june.picked'); });
});

describe('what others say', () => {
  test('the narrowest first', () => {
    const others = othersOf(facts(OLD), null);
    // Tennessee's row is for apples alone, Florida's for apples and pears, the rest for fruit trees.
    expect(others.slice(0, 2).map((o) => o.said)).toEqual(['weeks-before-swell', 'january']);
    const breadth = others.map((o) => TIMINGS.find((t) => t.said === o.said && t.region === o.region && t.crops.includes('apple'))!.crops.length);
    expect(breadth).toEqual(breadth.toSorted((a, b) => a - b));
    expect(others[0]).toEqual({ said: 'weeks-before-swell', region: 'US-TN', label: 'orchard' });
    expect(others[1]).toEqual({ said: 'january', region: 'US-FL' });
  });
  test('a weak page in its own state alone', () => {
    const weak = (where: string): readonly string[] => othersOf(facts(OLD, [], {}, where), null).filter((o) => o.label === 'weak').map((o) => o.region);
    expect([weak('Illinois, US'), weak('Ohio, US'), weak('Georgia, US')]).toEqual([['US-IL'], [], ['US-GA']]);
  });
  test('of other crops nothing', () => { for (const o of othersOf(facts('fig, planted 2016'), null)) expect(TIMINGS.some((t) => t.said === o.said && t.region === o.region && t.crops.includes('fig'))).toBe(true); });
});
