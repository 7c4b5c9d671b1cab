import { describe, expect, it } from 'vitest';
import { type Dishes, GERMINATION, readGermination } from '#engine/can/germination.ts';
import { judge } from '#engine/rules/rule.ts';
import { germinationRules } from '#engine/rules/spray.ts';
import { germinationCard, germinationCautions, germinationSum, strengthAdviceSays } from './spray.ts';

const water: Dishes = { sownCount: 30, germinatedCount: 27, meanRootMm: 20 };
const said = (sample: Dishes, control = water) =>
  judge(germinationRules, readGermination(sample, control))
    .map(({ rule, values }) => germinationCautions[rule]?.(values) ?? `no text for ${rule}`)
    .join(' ');

describe('the card of the cress test', () => {
  it('tells the layout, the days and the sum', () => {
    const card = germinationCard().join(' ');
    expect(card).toMatch(/3\sdishes.*5\smL.*10 cress seeds.*25 °C.*8 of 10.*15\smm.*Index = 100/);
  });

  it('says 8 of 10 where the engine asks for 80 %', () => {
    expect(GERMINATION.controlGerminatedPercent).toBe(80);
  });
});

describe('a cress test read', () => {
  const sample: Dishes = { sownCount: 30, germinatedCount: 24, meanRootMm: 15 };

  it('shows its arithmetic: 100 × (24/27) × (15/20) = 67 %', () => {
    expect(germinationSum(sample, water, readGermination(sample, water))).toMatch(
      /^100 × \(24\/30 ÷ 27\/30\) × \(15\smm ÷ 20\smm\) = 67\s%$/,
    );
  });

  it('calls 67 % a reason to dilute further, and 33 % harm', () => {
    expect(said(sample)).toMatch(/67\s%, between 50 and 80: dilute it further/);
    expect(said({ ...sample, germinatedCount: 27, meanRootMm: 6.6 })).toMatch(/33\s%, under 50/);
  });

  it('never calls a pass proof, and claims no gain within the noise', () => {
    const text = said({ ...water, meanRootMm: 23 });
    expect(text).toContain('no proof');
    expect(text).toContain('no better and no worse than water');
  });

  it('does not count with poor seeds, and says why', () => {
    expect(said(sample, { ...water, germinatedCount: 20, meanRootMm: 10 })).toMatch(
      /does not count.*fewer than 80\s%.*under 15\smm.*Sow it again/,
    );
  });

  it('tells the strength that follows, or that none does', () => {
    expect(strengthAdviceSays({ found: true, n: 100, strongestPassedN: 50 })).toContain('Use 1 in 100 or weaker');
    expect(strengthAdviceSays({ found: false, why: 'none-passed' })).toContain('Test weaker ones');
    expect(strengthAdviceSays({ found: false, why: 'not-valid' })).toContain('Sow it again');
  });
});
