// The page: src/web is its root, dist/web the built result that the server gives out.
// Nothing is inlined and no polyfill is added, so that the strict content policy of src/server holds.

import './scripts/node-version.mjs';
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import solid from 'vite-plugin-solid';

const BUILT = path.join(path.dirname(fileURLToPath(import.meta.url)), 'dist/web');

/** Lists each file once, with the digest of its bytes in place of a revision. */
async function withDigests(listed: readonly { readonly url: string; readonly size: number }[]) {
  const sizes = new Map(listed.map(({ url, size }) => [url, size]));
  const manifest = await Promise.all(
    [...sizes].map(async ([url, size]) => {
      const digest = createHash('sha256').update(await readFile(path.join(BUILT, url)));
      return { url, size, revision: null, integrity: `sha256-${digest.digest('base64')}` };
    }),
  );
  return { manifest, warnings: [] };
}

export default defineConfig({
  root: 'src/web',
  base: '/',
  plugins: [
    solid(),
    VitePWA({
      // A newer version waits until it is taken (src/web/app/offline.ts): no form is reloaded half typed.
      registerType: 'prompt',
      injectRegister: null,
      manifest: {
        name: 'Tilthwright',
        short_name: 'Tilthwright',
        description: 'From scraps to beds: weighed in, watched, strained, poured, kept.',
        start_url: '/',
        display: 'standalone',
        background_color: '#fbf8f0',
        theme_color: '#fbf8f0',
        icons: [{ src: '/peg.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      // The worker is our own and one file: it keeps a version only when every file has the digest listed in it.
      strategies: 'injectManifest',
      srcDir: 'offline',
      filename: 'sw.ts',
      // What the list is given on top has no digest, and all of it is in the list already.
      integration: {
        beforeBuildServiceWorker: ({ injectManifest }) => {
          injectManifest.additionalManifestEntries = [];
        },
      },
      injectManifest: {
        // The solver of the cover is fetched after the page is there, so that the gap can be closed with no signal.
        globPatterns: ['**/*.{js,css,html,svg,webmanifest,wasm}'],
        maximumFileSizeToCacheInBytes: 6_000_000,
        rollupFormat: 'iife',
        manifestTransforms: [withDigests],
      },
    }),
  ],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: {
      polyfill: false,
      // A sheet waits for its styles; a list of all parts of all sheets would weigh on the first screen.
      resolveDependencies: (_, parts, { hostType }) =>
        hostType === 'html' ? parts : parts.filter((part) => part.endsWith('.css')),
    },
  },
});
