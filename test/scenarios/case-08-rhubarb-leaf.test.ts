import { describe, expect, it } from 'vitest';
import { answer, overfull } from './weigh-in.ts';

describe('1.2 kg of rhubarb leaf offered to the pail', () => {
  const plants = [...overfull.plants, { material: 'rhubarb-leaves', massKg: 1.2 }];
  const said = answer({ vessel: { volumeL: 30, gasRoom: 0.25 }, ...overfull, plants });
  const stop = said.cautions.find((c) => c.level === 'stop' && /rhubarb/i.test(c.text));

  it('keeps it out of the liquid', () => {
    expect(stop).toBeDefined();
  });

  it('allows the heap and gives the reason in one line', () => {
    expect(stop?.text).toMatch(/heap/i);
    expect(stop?.text).not.toContain('\n');
    expect((stop?.text ?? '').length).toBeLessThan(200);
  });
});
