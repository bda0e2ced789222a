// How the explorer is served while working on it and how it is built: a static folder that works from
// any sub-path, since every address in it is relative. The built page carries its content policy and brings a
// service worker that knows every file.

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { partLoaderPlugin } from './build/part-loader.js';
import { licencesPlugins } from './build/licences.js';
import { contentPolicyPlugin, headers } from './build/content-policy.js';
import { firstFiles, preloadFirstFigurePlugin } from './build/preload-first-figure.js';
import { preloadFontsPlugin } from './build/preload-fonts.js';
import { precachePlugin, serviceWorkerFile } from './build/precache.js';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const licences = licencesPlugins(here('..'));

export default defineConfig({
  root: here('.'),
  base: './',
  plugins: [
    partLoaderPlugin(),
    contentPolicyPlugin(),
    preloadFontsPlugin(),
    preloadFirstFigurePlugin(),
    licences.ofPage(),
    precachePlugin(),
  ],
  build: {
    outDir: '../dist/explorer',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: true,
    // A font or picture in a style sheet as a data address would be against the content policy.
    assetsInlineLimit: 0,
    // A part that is tried again has to know its own file as well.
    modulePreload: {
      resolveDependencies: (file, beside, { hostType }) =>
        hostType === 'html' ? [...beside] : [...new Set([file, ...beside])],
    },
    rolldownOptions: {
      input: [here('index.html'), here('offline/service-worker.ts')],
      output: {
        codeSplitting: { groups: firstFiles },
        entryFileNames: ({ name }) => (name === 'service-worker' ? serviceWorkerFile : 'assets/[name]-[hash].js'),
      },
    },
  },
  worker: { format: 'es', plugins: () => [licences.ofWorkers()] },
  // As docs/guide/hosting.md has it from a host.
  preview: { headers },
  // Found late (in the worker, behind import()); without this the dev server reloads the page when they are met.
  optimizeDeps: { include: ['lit/directives/repeat.js', 'mathjs', '@observablehq/plot', 'd3-dsv'] },
});
