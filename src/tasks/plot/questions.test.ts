import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { kg, recorder } from '../../../test/scenarios/recorder.ts';
import { gardenEntries } from '../demo/garden.ts';
import { openQuestions } from './questions.ts';

const asked = (entries: readonly Entry[]) => openQuestions(fold(entries), entries, READER);
const me = () => recorder({ by: 'Fork', device: 'phone-9', seed: 9, plot: 'sedge-corner-demo' });

const READER = { now: '2026-07-16T23:00', device: 'phone-can' };

describe('twin entries on the tunnel', () => {
  const entries = gardenEntries('2026-07-15');
  const [question] = asked(entries);

  it('are told with both litres and both people', () => {
    expect(question?.sentence).toMatch(/T.Tunnel within a day, 20.L and 18\.2.L/);
    expect(question?.about.map(({ by }) => by).sort()).toEqual(['Can', 'Rake']);
  });
  it.each([
    [/Both happened/, 38.18],
    [/Can has it right/, 20],
    [/Rake has it right/, 18.18],
  ])('answered with %s leave one sum', (text, litres) => {
    const offer = question?.offers.find((one) => text.test(one.text));
    const stands = [...(offer?.stands ?? [])];
    const answer = me().did('question.answered', '2026-07-15', { question: question?.key ?? '', stands });
    const plot = fold([...entries, answer]);
    expect(plot.questions).toEqual([]);
    const tunnel = [...plot.beds.values()].find(({ facts }) => facts.tag === 'T');
    expect(tunnel?.pouredL.low).toBeCloseTo(litres, 2);
    expect(tunnel?.pouredL.high).toBeCloseTo(litres, 2);
  });
});

describe('two corrections of one entry', () => {
  const rake = recorder();
  const fork = recorder({ by: 'Fork', device: 'phone-2', seed: 2 });
  const lot = rake.did('scraps.weighed', '2026-06-01', { name: 'leaves', mass: kg(2) });
  const one = rake.corrected(lot, '2026-06-01', { name: 'leaves', mass: kg(3) });
  const two = fork.corrected(lot, '2026-06-01', { name: 'leaves', mass: kg(4) });
  const entries = [lot, one, two];

  it.each([
    [/by Rake/, 3],
    [/by Fork/, 4],
    [/first entry/, 2],
  ])('answered with %s weigh %d kg', (text, massKg) => {
    const [question] = asked(entries);
    const stands = [...(question?.offers.find((offer) => text.test(offer.text))?.stands ?? [])];
    const answer = rake.did('question.answered', '2026-06-02', { question: question?.key ?? '', stands });
    const plot = fold([...entries, answer]);
    expect(plot.questions).toEqual([]);
    expect([...plot.lots.values()].map(({ weighedKg }) => weighedKg)).toEqual([massKg]);
  });
});

describe('one peg on two vessels', () => {
  it('can be left to stand', () => {
    const rake = recorder();
    const both = ['pail', 'drum'].map((vesselName) =>
      rake.did('peg.filled', '2026-06-01', { peg: 7, vesselName, parts: [{ name: 'leaves', mass: kg(1) }] }),
    );
    const [question] = asked(both);
    expect(question?.sentence).toMatch(/^Peg 7 hangs on two vessels/);
    const stands = [...(question?.offers[0]?.stands ?? [])];
    const answer = rake.did('question.answered', '2026-06-02', { question: question?.key ?? '', stands });
    expect(fold([...both, answer]).questions).toEqual([]);
  });
});
