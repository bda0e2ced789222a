// The package packed, and installed from its tarball alone into an empty project.

import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { root } from '../support/tree.js';

/** A project that has nothing but the package. */
export interface Project {
  readonly folder: string;
  readonly tarball: string;
  /** Where the package was put. */
  readonly installed: string;
  write(path: string, text: string): void;
  read(path: string): string;
  /** Runs a file of this repository's tools, or of the project, in Node. */
  node(...args: readonly string[]): string;
}

export function takenAway(): Project {
  const folder = mkdtempSync(join(tmpdir(), 'kettle-and-plate-'));
  const npm = (...args: readonly string[]): string =>
    execFileSync('npm', args, {
      cwd: args[0] === 'pack' ? root : folder,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    });
  const packed = npm('pack', '--silent', '--pack-destination', folder).trim().split('\n').at(-1)!;
  const tarball = join(folder, packed);
  const write = (path: string, text: string): void => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  };
  write('package.json', JSON.stringify({ name: 'taken', private: true, type: 'module' }));
  npm('install', '--offline', '--silent', tarball);
  return {
    folder,
    tarball,
    installed: join(folder, 'node_modules/kettle-and-plate'),
    write,
    read: (path) => readFileSync(join(folder, path), 'utf8'),
    node(...args) {
      try {
        return execFileSync(process.execPath, args, {
          cwd: folder,
          encoding: 'utf8',
          stdio: ['ignore', 'pipe', 'pipe'],
        });
      } catch (error) {
        const { stdout, stderr } = error as { stdout: string; stderr: string };
        throw new Error(`${stdout}${stderr}`, { cause: error });
      }
    },
  };
}
