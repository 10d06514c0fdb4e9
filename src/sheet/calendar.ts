/** The season as entries of a calendar: each working day with its bags and weights, lime and sulphur, the last day, the next soil test. */
import type { Plan } from '../plan.ts';
import { weighedOut } from '../planned.ts';
import type { Day } from '../units/date.ts';
import { addDays } from '../units/date.ts';
import { AUTUMN_TEST } from '../tables/timing.ts';
import { showDay, showDose, showMass, showWindow } from '../words/show.ts';
import { say } from '../words/words.ts';
import { nextTest } from './back.ts';
import { conditionOf, stopDays } from './build.ts';
import { diluteText } from './can.ts';

/** Whole days, both ends of them; `id` stays the same when the plan is made again. */
export type CalendarEntry = { readonly id: string; readonly from: Day; readonly until: Day; readonly title: string; readonly text: string };

export function calendarOf(plan: Plan): CalendarEntry[] {
  const { where, name } = plan.orchard;
  const { language: L, units: system, south } = where;
  const orchard = name || say(L, 'calendar', 'orchard');
  const entry = (id: string, from: Day, until: Day, title: string, lines: readonly string[]): CalendarEntry => ({ id: `${id}-${until.slice(0, 4)}`, from, until, title: `${orchard}: ${title}`, text: lines.join('\n') });

  const days = plan.days.map((day) => {
    const doses = day.doses.map(({ plan: t, feed }) => {
      const said = say(L, 'calendar', 'dose', { tree: t.tree.name, amount: showDose(feed.g, system, L), each: t.tree.count > 1 ? t.tree.count : '', bag: feed.bag.label });
      const only = feed.serves === 'N' ? conditionOf(plan, t, day.number, (key, facts) => say(L, 'sheet', key, facts)) : '';
      return only === '' ? said : `${said} (${only})`;
    });
    return entry(`day-${day.number}`, day.from, day.until, say(L, 'calendar', 'day', { n: day.number, window: showWindow(day.from, day.until, L) }), [
      say(L, 'calendar', 'weigh', { list: [...weighedOut(day)].map(([label, g]) => `${showDose(g, system, L)} ${label}`).join(', ') }), ...doses, say(L, 'sheet', 'how-text'), say(L, 'calendar', 'sheet'),
    ]);
  });
  const cans = plan.trees.flatMap((t) => (t.dilute ? [entry(`can-${plan.trees.indexOf(t) + 1}`, t.dilute.from, t.dilute.until, say(L, 'calendar', 'can', { tree: t.tree.name }), [diluteText(t.dilute, L, system), say(L, 'sheet', 'tub-salts')])] : []));
  const amended = plan.trees.filter((t) => (t.ph?.g ?? 0) > 0);
  const windows = [...new Map(amended.map((t) => [`${t.ph!.plan.verdict} ${t.ph!.window!.from} ${t.ph!.window!.until}`, t.ph!])).values()];
  // A window that is open begins today, so its end names it; of two that end together the second has a number.
  const layers = windows.map(({ plan: { verdict }, window }, i) => {
    const twins = windows.slice(0, i).filter((x) => x.plan.verdict === verdict && x.window!.until === window!.until).length;
    const mine = amended.filter((t) => t.ph!.plan.verdict === verdict && t.ph!.window!.from === window!.from && t.ph!.window!.until === window!.until);
    return entry(`${verdict}-${window!.until.slice(5)}${twins > 0 ? `-${twins + 1}` : ''}`, window!.from, window!.until, say(L, 'calendar', verdict === 'lime' ? 'lime' : 'sulphur', { window: showWindow(window!.from, window!.until, L) }),
      mine.map((t) => say(L, 'calendar', 'dose', { tree: t.tree.name, amount: showMass(t.ph!.g, system, L), each: t.tree.count > 1 ? t.tree.count : '', bag: t.ph!.bag?.label ?? say(L, 'plan', `any-${verdict as 'lime' | 'sulphur'}`) })));
  });
  const { day: last, evergreen } = stopDays(plan);
  const stops = [
    { id: 'stop', day: last, text: say(L, 'sheet', 'stop-text', { day: showDay(last, L) }) },
    ...(evergreen ? [{ id: 'stop-evergreen', day: evergreen.day, text: say(L, 'sheet', 'stop-evergreen', { trees: evergreen.trees, day: showDay(evergreen.day, L) }) }] : []),
  ];
  const again = nextTest(plan);
  const test: Day = `${again}-${south ? AUTUMN_TEST.south : AUTUMN_TEST.north}`;
  const [until, { today }] = [addDays(test, 29), plan.season];
  return [
    ...days, ...cans, ...layers,
    ...(plan.days.length + cans.length > 0 ? stops.map(({ id, day, text }) => entry(id, day, day, say(L, 'calendar', 'stop'), [text])) : []),
    ...(plan.zones.length > 0 && until >= today ? [entry('soil', test > today ? test : today, until, say(L, 'calendar', 'soil'), [])] : []),
  ];
}
