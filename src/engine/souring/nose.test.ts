// Noses one by one: who smelled what, when, and whether that stays open. Expectations are the stated cautions in words.
import { describe, expect, it } from 'vitest';
import { judgeBatch } from './judge.ts';
import type { Look, Smell } from './look.ts';
import { nosesDiffer, openFoul } from './nose.ts';

const meter = (day: number, ph: number): Look => ({ day, ph, by: 'meter' });
const nose = (day: number, smell: Smell, who?: string): Look => ({ day, smell, ...(who && { who }) });
const falling = [meter(0, 6.3), meter(1, 5.2), meter(2, 4.5)];
const word = (looks: readonly Look[]) =>
  judgeBatch({ looks, temperatureC: 20, today: Math.max(...looks.map(({ day }) => day)) }).state;
const codes = (looks: readonly Look[]) =>
  judgeBatch({ looks, temperatureC: 20, today: Math.max(...looks.map(({ day }) => day)) }).reasons.map((r) => r.code);

describe('a foul smell that nobody has answered', () => {
  it('is not silenced by later readings that say nothing of the smell', () => {
    expect(word([...falling, nose(2, 'egg'), meter(4, 4.3)])).toBe('doubtful');
  });
  it('is not silenced by a nose that cannot smell', () => {
    expect(word([...falling, nose(2, 'egg'), nose(4, 'cannot-smell')])).toBe('doubtful');
  });
  it('stands for an hour against the same nose, which found nothing foul within that hour', () => {
    const egg = nose(0, 'egg', 'Rake');
    expect(openFoul([egg, nose(1 / 24, 'sour', 'Rake')])).toBe(egg);
    expect(openFoul([egg, nose(1.1 / 24, 'sour', 'Rake')])).toBeUndefined();
  });
  it('is told as one foul smell, not as two noses that differ', () => {
    expect(codes([...falling, nose(2, 'egg', 'Rake')])).toContain('foul-once');
    expect(codes([...falling, nose(2, 'egg', 'Rake')])).not.toContain('noses-differ');
  });
  it('is weighed by the last nose of several', () => {
    const looks = [nose(0, 'sour', 'Rake'), nose(1, 'grassy', 'Rake'), nose(2, 'egg', 'Rake')];
    expect(openFoul(looks)).toBe(looks[2]);
  });
});

describe('two noses that differ', () => {
  it('are two where nobody gave a name: no one is known to have come round', () => {
    expect(word([...falling, nose(2, 'egg'), nose(2.5, 'sour')])).toBe('doubtful');
  });
  it('are one where the same person smelled again and found nothing', () => {
    expect(word([...falling, nose(2, 'egg', 'Rake'), nose(2.5, 'sour', 'Rake')])).toBe('souring');
  });
  it('are not settled by what the same person smelled before', () => {
    const egg = nose(2.2, 'egg', 'Fork');
    expect(nosesDiffer([nose(1.9, 'sour', 'Rake'), egg, nose(2.9, 'sour', 'Rake')])).toBe(egg);
    expect(nosesDiffer([nose(1.9, 'sour', 'Fork'), egg, nose(2.9, 'sour', 'Rake')])).toBe(egg);
  });
  it('are compared within a day of the last nose, not of an earlier one, nor of a look without one', () => {
    const egg = nose(2, 'egg', 'Fork');
    expect(nosesDiffer([egg, nose(2.5, 'sour', 'Rake'), nose(5, 'sour', 'Rake')])).toBeUndefined();
    expect(nosesDiffer([egg, nose(2.5, 'sour', 'Rake'), meter(5, 4.2)])).toBe(egg);
    expect(nosesDiffer([egg, nose(2.5, 'sour', 'Rake'), nose(5, 'cannot-smell', 'Rake')])).toBe(egg);
  });
});

describe('a foul smell that ends a batch', () => {
  it('is twice foul from the first to the last of three, twelve hours and more', () => {
    expect(word([...falling, nose(2, 'egg'), nose(2.1, 'egg'), nose(2.6, 'ammonia')])).toBe('lost');
    expect(word([...falling, nose(2, 'egg'), nose(2.1, 'egg'), nose(2.4, 'ammonia')])).toBe('doubtful');
  });
  it('is weighed with the readings up to that hour: a later fall brings nothing back', () => {
    expect(word([meter(0, 5.5), meter(1, 5.5), nose(1, 'egg'), meter(3, 4.4)])).toBe('lost');
  });
  it('is weighed with the readings up to that hour: a later standstill is another matter', () => {
    expect(codes([meter(0, 6.3), meter(1, 5.5), nose(1, 'egg'), meter(2, 5.5)])).toContain('foul-once');
    expect(word([meter(0, 6.3), meter(1, 5.5), nose(1, 'egg'), meter(2, 5.5)])).toBe('doubtful');
  });
  it('leaves a doubt where one visit alone has read the acidity, which shows no direction', () => {
    expect(word([meter(0, 6.3), nose(0, 'egg')])).toBe('doubtful');
  });
});
