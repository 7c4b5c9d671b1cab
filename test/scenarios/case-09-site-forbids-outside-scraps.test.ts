import { describe, expect, it } from 'vitest';
import { ownClippings, peelings, read } from './slip.ts';

describe('a site that forbids scraps from outside', () => {
  const site = { outside: 'forbidden' } as const;
  const siteRule = { text: 'No kitchen or other outside waste on any plot.', on: '14 March 2026' };

  it('keeps kitchen scraps out, in the words and with the date of its own rule', () => {
    const { outcome, cautions, says } = read({ ...peelings, site }, siteRule);
    expect(outcome).toBe('out');
    expect(cautions.map(({ rule, level }) => [rule, level])).toEqual([['slip-site-forbids', 'stop']]);
    expect(cautions[0]?.text).toContain('"No kitchen or other outside waste on any plot."');
    expect(cautions[0]?.text).toContain('14 March 2026');
    expect(says.join(' ')).toMatch(/take it back/i);
  });

  it('keeps out what neighbours, streets and shops bring, and what nobody can place', () => {
    for (const from of ['neighbour', 'street', 'shop', 'unknown'] as const) {
      expect(read({ ...peelings, from, site }).cautions.map(({ rule }) => rule)).toContain('slip-site-forbids');
    }
  });

  it('takes kitchen scraps by their own rule where the site has one', () => {
    expect(read({ ...peelings, site: { outside: 'allowed', kitchen: 'forbidden' } }).by).toBe('slip-site-forbids');
    expect(read({ ...peelings, site: { outside: 'forbidden', kitchen: 'allowed' } }).outcome).toBe('in');
    const shop = { ...peelings, from: 'shop', whose: 'bought' } as const;
    expect(read({ ...shop, site: { outside: 'allowed', kitchen: 'forbidden' } }).outcome).toBe('in');
    const nowhere = { ...peelings, from: 'unknown', site: { outside: 'allowed', kitchen: 'forbidden' } } as const;
    expect(read(nowhere).cautions.map(({ rule }) => rule)).toContain('slip-site-forbids');
  });

  it('lets in what grew on the site', () => {
    expect(read({ ...ownClippings, site }, siteRule)).toMatchObject({ outcome: 'in', cautions: [] });
    expect(read({ ...ownClippings, whose: 'shared', site }).outcome).toBe('in');
  });

  it('tells nobody to break the rule, and asks first where the rule is not known', () => {
    const asked = read({ ...peelings, site: { outside: 'unknown' } });
    expect(asked.outcome).toBe('set-aside');
    expect(asked.says.join(' ')).toMatch(/ask the site committee/i);
    expect(read({ ...peelings, site: { outside: 'allowed' } }).outcome).toBe('in');
  });
});
