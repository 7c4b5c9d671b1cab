// The only clock of the screens: local date and time in the plot's time zone, as the record writes them.

/** A local date-time 'YYYY-MM-DDTHH:MM' of an instant, in a named zone or the device's own. */
export function localAt(instantMs: number, timeZone: string | undefined): string {
  const parts = formOf(timeZone).formatToParts(instantMs);
  const of = (type: string) => parts.find((part) => part.type === type)?.value ?? '00';
  return `${of('year')}-${of('month')}-${of('day')}T${of('hour')}:${of('minute')}`;
}

const forms = new Map<string | undefined, Intl.DateTimeFormat>();

/** Made once for a zone: making one takes longer than drawing a sheet. A zone this device does not know is its own. */
function formOf(timeZone: string | undefined): Intl.DateTimeFormat {
  const known = forms.get(timeZone);
  if (known !== undefined) return known;
  let form: Intl.DateTimeFormat;
  try {
    form = new Intl.DateTimeFormat('en-GB', {
      ...(timeZone === undefined ? {} : { timeZone }),
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
    });
  } catch {
    form = formOf(undefined);
  }
  forms.set(timeZone, form);
  return form;
}

/** The device's own time zone, for a plot that has not told one. */
export function deviceZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}
