import { describe, expect, it } from 'vitest';
import { answer, overfull } from './weigh-in.ts';

describe('clippings three weeks after a lasting weedkiller', () => {
  const plants = [{ material: 'grass-clippings-fresh', massKg: 2.4, treated: 'yes' }, ...overfull.plants.slice(1)];
  const said = answer({ ...overfull, vessel: { volumeL: 30, gasRoom: 0.25 }, plants });
  const stop = said.cautions[0];

  it('are refused first of all, for the liquid and for the heap', () => {
    expect(stop?.rule).toBe('weedkiller-treated');
    expect(stop?.level).toBe('stop');
    expect(stop?.text).toMatch(/neither pail nor heap/i);
  });

  it('stay on the lawn they came from, with the source named', () => {
    expect(stop?.text).toMatch(/leave clippings on the lawn/i);
    expect(stop?.source).toContain('National Pesticide Information Center');
  });
});
