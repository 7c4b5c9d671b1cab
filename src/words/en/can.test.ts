// Every rule has a sentence that says what to do, every reason a sentence, and none uses a word kept off the screens.
import { describe, expect, it } from 'vitest';
import { batchRules } from '#engine/rules/batch.ts';
import { canRules } from '#engine/rules/can.ts';
import { canCautions, sayCan, sayMeasure } from './can.ts';
import { changeSentences, reasonSentences, stateSentences } from './souring.ts';

const KEPT_OFF =
  /\b(safe|sterile|guaranteed|proven|perfect|optimal|immune|kills|cures|boost|power|secret|probiotic|inoculant|activator|miracle|magic|tonic|brew|tea|smart|level|score|tracker|planner|cool place|replaces|good bacteria|bad bacteria)\b/i;
const values = new Proxy({}, { get: () => 1 });
const texts = [
  ...Object.values(canCautions).map((say) => say(values)),
  ...Object.values(reasonSentences).map((say) => say(values)),
  ...Object.values(changeSentences).map((say) => say(values)),
  ...Object.values(stateSentences),
];

describe('the sentences about pouring and souring', () => {
  it('stand for every rule, and for no other', () => {
    expect(Object.keys(canCautions).sort()).toEqual([...batchRules, ...canRules].map(({ id }) => id).sort());
  });
  it('hold no word that is kept off the screens', () => {
    for (const text of texts) expect(text).not.toMatch(KEPT_OFF);
  });
  it('hold no raw value', () => {
    for (const text of texts) expect(text).not.toMatch(/undefined|NaN|unknown unknown|\[object/);
  });
});

describe('a measure', () => {
  it('says full syringes and the rest', () => {
    expect(sayMeasure({ tool: 'syringe', count: 45, errorPercent: 0 })).toBe(
      '20 mL syringe: 2\u00a0full ones and 5.0\u00a0mL',
    );
    expect(sayMeasure({ tool: 'syringe', count: 20, errorPercent: 0 })).toBe('20 mL syringe: 1\u00a0full one');
    expect(sayMeasure({ tool: 'syringe', count: 12.5, errorPercent: 0 })).toBe('20 mL syringe: 12.5\u00a0mL');
  });
  it('says the error of a spoon with its sign', () => {
    expect(sayMeasure({ tool: 'tablespoon', count: 2.5, countText: '2½', spoon: 'uk', errorPercent: -1.344 })).toMatch(
      /^2½ .* tablespoons \(−1\.3\s%\)$/,
    );
  });
});

describe('the can card', () => {
  it('says that there is no dose when there is none', () => {
    expect(sayCan({ canL: 9, diluted: {} })).toEqual(['No dose: see why below.']);
  });
});
