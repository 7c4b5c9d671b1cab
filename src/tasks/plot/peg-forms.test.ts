import { describe, expect, it } from 'vitest';
import { FIRST_READER } from '#engine/quantity/read-with.ts';
import { fold } from '#journal/fold.ts';
import { kg, litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { pegView } from './peg.ts';
import { nextPeg, type PegForm, pegForms } from './peg-forms.ts';

const NOW = '2026-06-03T12:00';

function plot() {
  const rake = recorder();
  const drum = rake.did('vessel.described', '2026-05-01', { name: '30 L drum', volume: litres(30) });
  const fill = (peg: number) =>
    rake.did('peg.filled', '2026-06-01', {
      peg,
      temperatureC: 20,
      parts: [{ name: 'leaves', mass: kg(2) }],
      water: [{ volume: litres(6) }],
    });
  const [a, b, c] = [fill(14), fill(15), fill(16)];
  const look = (batch: string, ph: number, smell: 'sour' | 'egg') =>
    rake.did('peg.looked', '2026-06-03T10:00', { batch, acidity: meter(ph), smell });
  const looks = [
    rake.did('peg.looked', '2026-06-01', { batch: c.id, acidity: meter(6.2) }),
    look(a.id, 5.2, 'sour'),
    look(b.id, 5.1, 'sour'),
    look(c.id, 6.4, 'egg'),
  ];
  return { plot: fold([drum, a, b, c, ...looks]), drum, a, b, c };
}

function forms(batch: 'a' | 'b' | 'c') {
  const made = plot();
  const one = made.plot.batches.get(made[batch].id);
  if (one === undefined) throw new Error('no batch');
  const open = pegForms(made.plot, pegView({ plot: made.plot, batch: one, now: NOW }), NOW);
  const form = (act: PegForm['act']) => {
    const found = open.find((candidate) => candidate.act === act);
    if (found === undefined) throw new Error(`no form ${act}`);
    return found;
  };
  return { ...made, open, form };
}

describe('the small forms of a peg', () => {
  it('keep an amount as typed, whether by litres or by weight', () => {
    const { form, a } = forms('a');
    expect(form('spill').read({ lost: '1.5 L' }, {})).toEqual({
      ok: true,
      body: { batch: a.id, lost: { typed: '1.5 L', volumeL: 1.5, readWith: { reader: FIRST_READER } } },
    });
    expect(form('spill').read({ lost: '2 kg' }, {})).toMatchObject({ body: { lost: { typed: '2 kg', massKg: 2 } } });
  });
  it('ask whose gallon it is, and take the one that the keyholder is kept with', () => {
    const { form } = forms('a');
    const asked = form('spill').read({ lost: '1 gal' }, {});
    expect(asked.ok ? undefined : asked.troubles.get('lost')?.ask?.kind).toBe('gallon');
    // An imperial gallon is 4.54609 L by definition.
    expect(form('spill').read({ lost: '1 gal' }, { gallon: 'imperial' })).toMatchObject({
      body: { lost: { volumeL: 4.54609 } },
    });
  });
  it('top up with what was begun and nothing else; what was begun must be whole', () => {
    const { form, a } = forms('a');
    expect(form('topUp').read({ 'water.0.volume': '2 L' }, {})).toEqual({
      ok: true,
      body: { batch: a.id, water: [{ volume: { typed: '2 L', volumeL: 2, readWith: { reader: FIRST_READER } } }] },
    });
    expect(form('topUp').read({}, {}).ok).toBe(false);
    const half = form('topUp').read({ 'parts.0.name': 'leaves' }, {});
    expect(half.ok ? [] : [...half.troubles.keys()]).toEqual(['parts.0.mass']);
  });
  it('turn the name of a vessel and the number of a peg into what they stand for', () => {
    const { form, a, b, drum } = forms('a');
    expect(form('move').read({ vessel: '30 L drum', place: 'shade' }, {})).toEqual({
      ok: true,
      body: { batch: a.id, vessel: drum.id, place: 'shade' },
    });
    expect(form('join').read({ from: '15' }, {})).toEqual({ ok: true, body: { batch: a.id, from: b.id } });
  });
  it('give a split the next number that no peg ever had', () => {
    const { form, plot: folded } = forms('a');
    expect(nextPeg(folded)).toBe(17);
    expect(form('split').read({ ...form('split').start, taken: '3 L' }, {})).toMatchObject({
      ok: true,
      body: { peg: 17, taken: { volumeL: 3 } },
    });
  });
  it('never offer a lost peg to be poured into another, and of a lost one only what ends it', () => {
    const joined = forms('a')
      .form('join')
      .asked.find(({ field }) => field === 'from');
    expect(joined).toMatchObject({ words: ['15'] });
    const lost = forms('c');
    expect(lost.open.map(({ act }) => act)).toEqual(['tip', 'move', 'spill']);
    expect(lost.form('tip').asked.find(({ field }) => field === 'to')).toMatchObject({ words: ['heap', 'out'] });
    expect(lost.form('tip').read({ to: 'soil' }, {}).ok).toBe(true);
  });
});
