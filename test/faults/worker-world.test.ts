// A short run of the histories of the kept page, and the answers that must each be refused by name.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { digestOf, SHELL, SHELL_MARK, whyNot } from '#web/offline/version.ts';
import { live, season } from './worker-world.ts';

it('the page opens without a network after whatever the network answered, as the version taken last, whole', async () => {
  await fc.assert(
    fc.asyncProperty(season, async (steps) => void (await live(steps))),
    { numRuns: 100 },
  );
});

it.each([
  ['an error', () => new Response('x', { status: 500 }), 'status 500'],
  ['a file that is not there', () => new Response('x', { status: 404 }), 'status 404'],
  ['a page for a script', () => new Response('x', { headers: { 'content-type': 'text/html' } }), 'type text/html'],
  ['other bytes', () => new Response('x', { headers: { 'content-type': 'text/javascript' } }), 'other bytes'],
])('%s is not the listed file', async (_, answer, why) => {
  expect(await whyNot(answer(), '/assets/a-1.js', await digestOf(new TextEncoder().encode('y')))).toBe(why);
});

it('a page without our mark is not the shell, and one with it and the right bytes is', async () => {
  const html = (body: string) => new Response(body, { headers: { 'content-type': 'text/html; charset=utf-8' } });
  const ours = `${SHELL_MARK} />`;
  const digest = await digestOf(new TextEncoder().encode(ours));
  expect(await whyNot(html('<title>Please sign in</title>'), SHELL, digest)).toBe('no mark of ours');
  expect(await whyNot(html(ours), SHELL, digest)).toBeUndefined();
});
