// The only clock of the screens: local date and time in the plot's time zone, as the record writes them.

/** A local date-time 'YYYY-MM-DDTHH:MM' of an instant, in a named zone or the device's own. */
export function localAt(instantMs: number, timeZone: string | undefined): string {
  const form = (zone: string | undefined) =>
    new Intl.DateTimeFormat('en-GB', {
      ...(zone === undefined ? {} : { timeZone: zone }),
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
    });
  let parts: Intl.DateTimeFormatPart[];
  try {
    parts = form(timeZone).formatToParts(instantMs);
  } catch {
    parts = form(undefined).formatToParts(instantMs);
  }
  const of = (type: string) => parts.find((part) => part.type === type)?.value ?? '00';
  return `${of('year')}-${of('month')}-${of('day')}T${of('hour')}:${of('minute')}`;
}

/** The device's own time zone, for a plot that has not told one. */
export function deviceZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}
