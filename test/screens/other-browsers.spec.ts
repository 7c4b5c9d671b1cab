// The store, taking in a file and opening without a network, in the browsers beside Chromium that are installed. Where one is
// not, it has no tests here, and the report of `npm test` says so.

import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { recordLines } from '#journal/lines.ts';
import { otherBrowsers } from '../../scripts/other-browsers.mjs';
import { createApp } from '../../src/server/app.ts';
import { storeContract } from '../contract/store-contract.ts';
import { recorder } from '../scenarios/recorder.ts';
import { type DrivenBrowser, drivenBrowser } from './driven-browser.ts';
import { type StoreSite, storeSite } from './store-site.ts';

const built = path.join(path.dirname(fileURLToPath(import.meta.url)), '../../dist/web');

for (const found of otherBrowsers()) {
  test.describe(`${found.name}`, () => {
    let browser: DrivenBrowser;
    let site: StoreSite;
    test.beforeAll(async () => {
      site = await storeSite();
      browser = await drivenBrowser(found);
    });
    test.afterAll(async () => {
      await browser?.end();
      site?.close();
    });
    const storePage = async () => {
      await browser.goTo(`${site.address}/?${Math.random()}`);
      await browser.until(`'storeTest' in globalThis`);
    };

    for (const [index, { name }] of storeContract.entries()) {
      test(`the contract of a store: ${name}`, async () => {
        test.setTimeout(180_000);
        await storePage();
        await browser.evaluate(`storeTest.runCase(${index})`);
      });
    }

    test('what was kept is there after a reload, and the store says in how many places', async () => {
      await storePage();
      await browser.evaluate(`storeTest.open('reload')`);
      expect(await browser.evaluate(`storeTest.keep('reload', 'leaves')`)).toBe('kept');
      await storePage();
      expect(await browser.evaluate(`storeTest.open('reload')`)).toBe('open');
      expect(await browser.evaluate(`storeTest.names('reload')`)).toEqual(['leaves']);
      const buckets = await browser.evaluate(`'storageBuckets' in navigator`);
      expect(await browser.evaluate(`storeTest.places('reload')`)).toBe(buckets === true ? 2 : 1);
    });

    test('a file is taken in, and the record opens without a network', async () => {
      test.setTimeout(180_000);
      const app = await createApp(built);
      const address = await app.listen({ host: '127.0.0.1', port: 0 });
      let stopped = false;
      try {
        await browser.goTo(`${address}/record`);
        await browser.until(`document.querySelector('#take-file') !== null`);
        const rake = recorder();
        const entries = ['leaves', 'peel'].map((name) =>
          rake.did('scraps.weighed', '2026-06-01', { name, mass: { typed: '1 kg', massKg: 1 } }),
        );
        const file = [...recordLines(entries, 0)].join('\n');
        await browser.evaluate(`(() => {
          const files = new DataTransfer();
          files.items.add(new File([${JSON.stringify(file)}], 'other.jsonl'));
          const field = document.querySelector('#take-file');
          field.files = files.files;
          field.dispatchEvent(new Event('change', { bubbles: true }));
        })()`);
        await browser.until(`document.querySelectorAll('.act-line').length === 2`);
        await browser.until('navigator.serviceWorker.controller !== null');
        stopped = true;
        await app.close();
        await browser.goTo(`${address}/record`);
        await browser.until(`document.querySelectorAll('.act-line').length === 2`);
      } finally {
        if (!stopped) await app.close();
      }
    });
  });
}
