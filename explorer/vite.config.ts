// How the explorer is served while working on it and how it is built: a static folder that works from
// any sub-path, since every address in it is relative.

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: './',
  build: {
    outDir: '../dist/explorer',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: true,
  },
  worker: { format: 'es' },
  // Found late (in the worker, behind import()); without this the dev server reloads the page when they are met.
  optimizeDeps: { include: ['comlink', 'mathjs'] },
});
