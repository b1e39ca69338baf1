/**
 * Days as people promise them: a date without an hour, 'YYYY-MM-DD', which sorts as plain text.
 *
 * In the flow: promise a day -> [days] -> store, queue, words. Pure; today comes in as an argument.
 */

const DAY_MS = 24 * 60 * 60 * 1000;
/** A look is usually promised within 48 to 72 hours (common practice, no source). */
const USUAL_DAYS = 3;

/** The day on the calendar of whoever's clock it is (local time of `now`). */
export function dayOf(now: Date): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** @param days May be negative. */
export function dayAfter(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

/** Whole days from one day to another; negative when it lies before. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

/** The day that is suggested: three days ahead, the usual promise. */
export function suggestedDay(today: string): string {
  return dayAfter(today, USUAL_DAYS);
}
