/** Entries of a calendar as a file that any calendar reads (RFC 5545). */
import ical, { ICalAlarmType, ICalEventTransparency } from 'ical-generator';
import type { CalendarEntry } from '../sheet/calendar.ts';
import type { Day } from '../units/date.ts';
import { addDays } from '../units/date.ts';

const midnight = (d: Day): Date => new Date(`${d}T00:00:00Z`);

/** Seven in the morning of the first day. */
const REMIND_SECONDS = 7 * 3600;

/** A window of whole days that blocks nothing else, with a reminder as it opens. `key` tells orchards apart. */
export function calendarText(entries: readonly CalendarEntry[], { name, key, today }: { readonly name: string; readonly key: string; readonly today: Day }): string {
  const calendar = ical({ name, prodId: { company: 'Medlar', product: 'Feeding' } });
  for (const { id, from, until, title, text } of entries) {
    calendar.createEvent({
      id: `${id}-${key}@medlar`, stamp: midnight(today), start: midnight(from), end: midnight(addDays(until, 1)), allDay: true, summary: title, description: text, transparency: ICalEventTransparency.TRANSPARENT,
      alarms: [{ type: ICalAlarmType.display, triggerAfter: REMIND_SECONDS, description: title }],
    });
  }
  return `${calendar.toString()}\r\n`;
}
