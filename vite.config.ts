// The page: src/web is its root, dist/web the built result that the server gives out.
// Nothing is inlined and no polyfill is added, so that the strict content policy of src/server holds.

import './scripts/node-version.mjs';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import solid from 'vite-plugin-solid';

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
      workbox: {
        // The solver of the cover is fetched after the page is there, so that the gap can be closed with no signal.
        globPatterns: ['**/*.{js,css,html,svg,webmanifest,wasm}'],
        maximumFileSizeToCacheInBytes: 6_000_000,
        clientsClaim: true,
        skipWaiting: false,
        navigateFallback: '/index.html',
        navigateFallbackDenylist: [/^\/api\//],
      },
    }),
  ],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
