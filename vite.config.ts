// The page: src/web is its root, dist/web the built result that the server gives out.
// Nothing is inlined and no polyfill is added, so that the strict content policy of src/server holds.

import { defineConfig } from 'vite';
import solid from 'vite-plugin-solid';

export default defineConfig({
  root: 'src/web',
  base: '/',
  plugins: [solid()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
