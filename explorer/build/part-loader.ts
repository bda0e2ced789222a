// Puts the explorer's own way of loading parts (offline/load-part.ts) in the place of what Vite wraps around each
// import() of the built page.

import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

/** Vite's own module of this purpose. */
const vites = /vite\/preload-helper\.js$/u;
const ours = fileURLToPath(new URL('../offline/load-part.ts', import.meta.url));

export function partLoaderPlugin(): Plugin {
  return {
    name: 'part-loader',
    apply: 'build',
    enforce: 'pre',
    load: {
      filter: { id: vites },
      handler: () => `export { loadPart as __vitePreload } from ${JSON.stringify(ours)};`,
    },
    generateBundle(_options, bundle) {
      const used = Object.values(bundle).some((file) => file.type === 'chunk' && file.moduleIds.includes(ours));
      if (!used)
        throw new Error('The build does not use explorer/offline/load-part.ts: Vite loads parts another way now.');
    },
  };
}
