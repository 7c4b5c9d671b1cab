// The scripts of the house: what they count, what they weigh, what they take for up to date, what they refuse.

import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findChromium, findUnits, onPath } from '../../scripts/programs.mjs';
import { firstScreen, loadedBy } from '../../scripts/size.mjs';
import { digestOf, holds, write } from '../../scripts/stamp.mjs';
import { tallyPlaywright, tallyStep, tallyVitest } from '../../scripts/tally.mjs';
import { root } from './code.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'scripts-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('the tally of tests', () => {
  const vitest = { numPassedTests: 3, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0, testResults: [] };
  const unread = { status: 'failed', assertionResults: [] };
  it.each([
    ['all pass', vitest, 0, 3, 0],
    ['one fails', { ...vitest, numFailedTests: 1 }, 1, 3, 1],
    ['one is left out', { ...vitest, numPendingTests: 1 }, 0, 3, 1],
    ['one is only planned', { ...vitest, numTodoTests: 1 }, 0, 3, 1],
    ['a file cannot be read', { ...vitest, testResults: [unread] }, 1, 3, 1],
    ['the runner ends badly without a failed test', vitest, 1, 3, 1],
    ['nothing runs', { ...vitest, numPassedTests: 0 }, 0, 0, 1],
    ['no report is written', undefined, 0, 0, 1],
  ])('of Vitest, when %s', (_, report, status, passed, failed) => {
    expect(tallyVitest(report, status)).toMatchObject({ passed, failed });
  });

  const played = { stats: { expected: 2, unexpected: 0, flaky: 0, skipped: 0 } };
  it.each([
    ['all pass', played, 0, 2, 0],
    ['one passes only at a second try', { stats: { ...played.stats, flaky: 1 } }, 0, 2, 1],
    ['one is left out', { stats: { ...played.stats, skipped: 1 } }, 0, 2, 1],
    ['the server never starts', { stats: { ...played.stats, expected: 0 } }, 1, 0, 1],
    ['no report is written', undefined, 1, 0, 1],
  ])('of Playwright, when %s', (_, report, status, passed, failed) => {
    expect(tallyPlaywright(report, status)).toMatchObject({ passed, failed });
  });

  it('of a step that was killed counts it as failed', () => {
    expect(tallyStep(null)).toMatchObject({ passed: 0, failed: 1 });
  });
});

describe('the weight of the first screen', () => {
  it('counts what the page loads at once, and what that imports, and nothing later', () => {
    const page = path.join(folder, 'page');
    mkdirSync(path.join(page, 'assets'), { recursive: true });
    const files = {
      'assets/main.js': 'import { a } from "./near.js"; a(); import("./later.js");',
      'assets/near.js': 'export * from "./far.js"; export const a = () => 1;',
      'assets/far.js': 'export const b = 2;',
      'assets/later.js': 'export const c = "not yet";',
      'assets/main.css': 'p { margin: 0 }',
    };
    for (const [name, text] of Object.entries(files)) writeFileSync(path.join(page, name), text);
    writeFileSync(
      path.join(page, 'index.html'),
      '<link rel="icon" href="/i.svg"><link rel="stylesheet" crossorigin href="/assets/main.css"><script type="module" src="/assets/main.js"></script>',
    );
    const { files: counted, gzipBytes } = firstScreen(page);
    const names = ['assets/far.js', 'assets/main.css', 'assets/main.js', 'assets/near.js'] as const;
    expect(counted.map(({ file }) => file).sort()).toEqual(names);
    expect(gzipBytes).toBe(names.reduce((sum, name) => sum + gzipSync(files[name]).length, 0));
  });

  it('is refused for a page that loads no script', () => {
    const page = path.join(folder, 'bare');
    mkdirSync(page);
    writeFileSync(path.join(page, 'index.html'), '<p>nothing</p>');
    expect(() => firstScreen(page)).toThrow('loads no script');
  });

  it('reads links in any order of their attributes', () => {
    expect(
      loadedBy('<link href="/a.css" rel="stylesheet"><link rel=modulepreload href=/b.js><script src=/c.js></script>'),
    ).toEqual(['/a.css', '/b.js', '/c.js']);
  });
});

describe('a stamp', () => {
  it('no longer holds when a file is changed, added or taken away', () => {
    const place = path.join(folder, 'sources');
    const stamp = path.join(folder, 'made/of.stamp');
    mkdirSync(place);
    writeFileSync(path.join(place, 'a.ts'), 'a');
    expect(holds(stamp, digestOf([place]))).toBe(false);
    const settled = () => {
      write(stamp, digestOf([place]));
      expect(holds(stamp, digestOf([place]))).toBe(true);
    };
    settled();
    utimesSync(path.join(place, 'a.ts'), new Date(2020, 1, 1), new Date(2020, 1, 1));
    expect(holds(stamp, digestOf([place]))).toBe(false);
    settled();
    writeFileSync(path.join(place, 'b.ts'), 'b');
    expect(holds(stamp, digestOf([place]))).toBe(false);
    settled();
    rmSync(path.join(place, 'a.ts'));
    expect(holds(stamp, digestOf([place]))).toBe(false);
  });

  it('leaves out the files that do not count', () => {
    const place = path.join(folder, 'mixed');
    mkdirSync(place);
    const onlyCode = (file: string) => !file.endsWith('.test.ts');
    const before = digestOf([place], onlyCode);
    writeFileSync(path.join(place, 'a.test.ts'), 'a');
    expect(digestOf([place], onlyCode)).toBe(before);
  });
});

describe('the outside programs', () => {
  it('are the ones that were put in place before the tests', () => {
    expect(findChromium()).toBeDefined();
    expect(findUnits()).toBeDefined();
  });

  it('are not found under names that no folder holds', () => {
    expect(onPath(['a-program-of-no-name'])).toBeUndefined();
  });
});

describe('the browsers', () => {
  it('are said by name, and those that are not installed as left out', () => {
    const script = `import { browsersSaid } from './scripts/other-browsers.mjs'; console.log(browsersSaid(undefined));`;
    const { stdout } = node(['--input-type=module', '--eval', script], { PATH: '/no/such/folder' });
    expect(stdout).toBe(
      'browsers: Chromium not installed; Firefox not installed, left out; WebKit not installed, left out\n',
    );
  });
});

describe('ensure', () => {
  it('refuses a word it does not know', () => {
    const { status, stderr } = node(['scripts/ensure.mjs', 'wed']);
    expect(status).toBe(1);
    expect(stderr).toBe('ensure: wed is not known; known are web, chromium, units, pdftotext.\n');
  });

  const program = (find: string, variable = '') => `
    import { ensureProgram, findChromium } from './scripts/programs.mjs';
    process.getuid = () => 1000;
    ensureProgram({ find: ${find}, name: 'A browser', debianPackage: 'browser', variable: '${variable}', why: 'pages are tried' });
    console.error('found');`;
  const ensured = (code: string, env: Record<string, string> = {}) => node(['--input-type=module', '-e', code], env);

  it('is content with a program that is there', () => {
    expect(ensured(program("() => '/usr/bin/browser'"))).toMatchObject({ status: 0, stderr: 'found\n' });
  });

  it('stops with a sentence that says what to do where a program is missing and may not be installed', () => {
    const { status, stdout, stderr } = ensured(program('() => undefined', 'BROWSER_PATH'));
    expect(status).toBe(1);
    expect(stdout).toBe('');
    expect(stderr).toBe(
      'A browser is missing: pages are tried. Install it (Debian: apt-get install browser) or name it in BROWSER_PATH.\n',
    );
  });

  it('stops with a sentence when CHROMIUM_PATH leads nowhere', () => {
    const { status, stderr } = ensured(program('findChromium'), { CHROMIUM_PATH: '/no/such/browser' });
    expect(status).toBe(1);
    expect(stderr).toBe('CHROMIUM_PATH names /no/such/browser, which does not exist.\n');
  });
});

function node(args: readonly string[], env: Record<string, string> = {}) {
  return spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8', env: { ...process.env, ...env } });
}
