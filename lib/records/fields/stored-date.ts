/** The client stores the UTC day of a Date: made only from a calendar date, so that no zone can shift it. */
export function asDate(calendarDate: string): Date {
  return new Date(`${calendarDate}T00:00:00.000Z`);
}

/** The calendar date 'YYYY-MM-DD' of a stored date. */
export function asCalendarDate(stored: Date): string {
  return stored.toISOString().slice(0, 10);
}
