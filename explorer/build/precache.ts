// Tells the service worker which files make up the explorer: written into it when the explorer is built, with
// a version that changes whenever any of them does.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** File of the service worker; it stands beside the page, since it answers for its own folder only. */
export const serviceWorkerFile = 'service-worker.js';

export function precachePlugin(publicFolder: string): Plugin {
  return {
    name: 'precache',
    apply: 'build',
    enforce: 'post',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const worker = bundle[serviceWorkerFile];
        if (worker?.type !== 'chunk') throw new Error(`${serviceWorkerFile} is not among what was built.`);
        const hash = createHash('sha256').update(worker.code);
        const built = Object.values(bundle)
          .filter(({ fileName }) => fileName !== serviceWorkerFile && !fileName.endsWith('.map'))
          .sort((a, b) => (a.fileName < b.fileName ? -1 : 1));
        for (const file of built) hash.update(file.fileName).update(file.type === 'chunk' ? file.code : file.source);
        const copied = readdirSync(publicFolder).sort();
        for (const name of copied) hash.update(name).update(readFileSync(join(publicFolder, name)));
        const files = [...built.map(({ fileName }) => fileName), ...copied];
        worker.code = worker.code
          .replace('__VERSION__', hash.digest('hex').slice(0, 12))
          .replace(/(["'`])__FILES__\1/u, JSON.stringify(files));
        worker.map = null;
      },
    },
  };
}
