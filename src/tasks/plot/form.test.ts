// A figure or amount that two styles read differently is asked about at its field; what was answered there goes before
// the keyholder's own, and what every style reads alike is never asked.

import { describe, expect, it } from 'vitest';
import { type Asked, readForm, styleField } from './form.ts';

const volume: Asked = { field: 'volume', as: 'amount', dimension: 'volume' };
const read = (text: string, more: Record<string, string> = {}, style?: 'point' | 'comma') =>
  readForm(
    'vessel.described',
    [volume],
    { volume: text, ...more },
    {
      base: { name: 'drum' },
      countries: style === undefined ? {} : { style },
    },
  );
const litres = (form: ReturnType<typeof read>) => (form.ok ? form.body.volume?.volumeL : undefined);

describe('a figure with one mark before three digits', () => {
  it.each(['1,250 L', '1.250 L'])('is asked about and not read: %s', (text) => {
    const form = read(text);
    expect(form.ok).toBe(false);
    const trouble = form.ok ? undefined : form.troubles.get('volume');
    expect(trouble?.ask?.kind).toBe('style');
    expect(trouble?.ask?.choices).toHaveLength(2);
  });
  it('is read as it was answered at the field, whatever the keyholder is used to', () => {
    expect(litres(read('1,250 L', { [styleField('volume')]: 'point' }))).toBe(1250);
    expect(litres(read('1,250 L', { [styleField('volume')]: 'comma' }, 'point'))).toBe(1.25);
    expect(litres(read('1.250 L', {}, 'comma'))).toBe(1250);
  });
  it.each([
    ['1,5 L', 1.5],
    ['1.5 L', 1.5],
    ['1250 L', 1250],
    ['1 250 L', 1250],
    ['12,50 L', 12.5],
    ['0,250 L', 0.25],
    ['0.250 L', 0.25],
    ['1250.375 L', 1250.375],
  ])('is not asked about where every style reads the same: %s', (text, expected) => {
    for (const style of [undefined, 'point', 'comma'] as const) expect(litres(read(text, {}, style))).toBe(expected);
  });
  it('is asked about as well where a bare figure is wanted', () => {
    const asked: readonly Asked[] = [{ field: 'neighboursM', as: 'figure' }];
    const form = readForm('plot.described', asked, { neighboursM: '1.250' });
    expect(form.ok || form.troubles.get('neighboursM')?.ask?.kind).toBe('style');
    const answered = readForm('plot.described', asked, { neighboursM: '1.250', 'neighboursM.style': 'comma' });
    expect(answered.ok && answered.body.neighboursM).toBe(1250);
  });
});
