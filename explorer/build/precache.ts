// Tells the service worker which files make up the explorer: written into it once all of them are written, each with its
// type and the hash of its bytes, under a version that changes whenever any of them does.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import type { Plugin } from 'vite';
import { contentPolicy } from './content-policy.js';

/** File of the service worker; it stands beside the page, since it answers for its own folder only. */
export const serviceWorkerFile = 'service-worker.js';

/** What each file is sent as. */
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
};

export function precachePlugin(): Plugin {
  return {
    name: 'precache',
    apply: 'build',
    enforce: 'post',
    writeBundle: {
      order: 'post',
      sequential: true,
      handler({ dir }) {
        if (dir === undefined) throw new Error('The build has no folder.');
        const place = join(dir, serviceWorkerFile);
        // Its map would not fit what is written into it.
        rmSync(`${place}.map`, { force: true });
        const code = readFileSync(place, 'utf8').replace(/^\/\/# sourceMappingURL=.*$/mu, '');
        const files = builtFiles(dir);
        const version = createHash('sha256').update(code).update(JSON.stringify(files)).digest('hex').slice(0, 12);
        const fill = (text: string, name: string, value: unknown): string => {
          const filled = text.replace(new RegExp(`(["'\`])${name}\\1`, 'u'), () => JSON.stringify(value));
          if (filled === text) throw new Error(`${serviceWorkerFile} has no place for ${name}.`);
          return filled;
        };
        const withFiles = fill(fill(code, '__FILES__', files), '__POLICY__', contentPolicy);
        writeFileSync(place, fill(withFiles, '__VERSION__', version));
      },
    },
  };
}

/** Name, type and `integrity` of every file of the explorer, maps and the service worker left out. */
function builtFiles(dir: string): readonly (readonly [string, string, string])[] {
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(join(dir, '/').length).replaceAll('\\', '/'))
    .filter((name) => name !== serviceWorkerFile && !name.startsWith('.') && !name.endsWith('.map'))
    .sort()
    .map((name) => {
      const type = types[extname(name)];
      if (type === undefined) throw new Error(`${name}: explorer/build/precache.ts does not know what to send it as.`);
      return [
        name,
        type,
        `sha256-${createHash('sha256')
          .update(readFileSync(join(dir, name)))
          .digest('base64')}`,
      ];
    });
}
