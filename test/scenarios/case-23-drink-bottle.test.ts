// A bottle made for drink: stopped with the reason, and never offered as a cure for anything else.

import { describe, expect, it } from 'vitest';
import { strain } from '#tasks/strain.ts';
import { vesselCautions } from '#words/en/vessel.ts';

const cautions = (bottle: object) => {
  const answer = strain({
    plants: [{ massKg: 3, dryMatter: 0.15 }],
    water: { volumeL: 6, alkalinityMeqPerL: 2.5 },
    days: 10,
    temperatureC: 20,
    finalPh: 3.8,
    drainedL: 6,
    solidsKg: 2.5,
    bottle: { volumeL: 1, filledL: 0.9, sugarLeftGPerL: 0, ...bottle },
  });
  return answer.ok ? answer.value.cautions : [];
};

describe('case 23, drink bottle chosen', () => {
  it('is stopped whatever the cap, with the reason poison centres give and whom to call', () => {
    for (const cap of ['vent', 'screw', 'loose']) {
      const stop = cautions({ cap, material: 'drink-bottle' })[0];
      expect(stop).toMatchObject({ rule: 'bottle-made-for-drink', level: 'stop' });
      expect(stop?.text).toMatch(/poison centres/);
      expect(stop?.text).toMatch(/call the local poison line/);
    }
  });

  it('is offered by no other sentence about vessels', () => {
    const values = { sugarLeftGPerL: 10, pressureAtm: 2.7, temperatureC: 20, massKg: 20, mostKg: 15 };
    for (const [rule, say] of Object.entries(vesselCautions)) {
      if (rule !== 'bottle-made-for-drink') expect(say(values)).not.toMatch(/drink|soda|water bottle/i);
    }
  });

  it('is said on the tag too', () => {
    const tag = cautions({ cap: 'vent', material: 'plastic' }).find(
      (caution) => caution.rule === 'strained-tag-not-a-drink',
    );
    expect(tag?.text).toMatch(/"not a drink"/);
  });
});
