// The licences of what the built explorer ships: read from the packages whose files are in it, written to licences.txt.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin, Rolldown } from 'vite';

export const licencesFile = 'licences.txt';

/** Folder of the package a file belongs to. */
const folder = /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/u;
const licenceFile = /^(?:licen[cs]e|copying|notice|ofl)(?:[.-].*)?$/iu;

interface Package {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
}

/** Two plugins: one for workers, which are built apart, and one for the page, which writes the file. */
export function licencesPlugins(root: string): { readonly ofWorkers: () => Plugin; readonly ofPage: () => Plugin } {
  const folders = new Set<string>();
  const note = (file: string): void => {
    const found = folder.exec(file.replaceAll('\\', '/').replace('\0', ''))?.[0];
    if (found !== undefined) folders.add(found);
  };
  const noteAll = (_options: unknown, bundle: Rolldown.OutputBundle): void => {
    for (const one of Object.values(bundle)) {
      if (one.type === 'chunk') one.moduleIds.forEach(note);
      else one.originalFileNames.forEach((name) => note(join(root, 'explorer', name)));
    }
  };
  return {
    ofWorkers: () => ({ name: 'licences-of-workers', apply: 'build', generateBundle: noteAll }),
    ofPage: () => ({
      name: 'licences',
      apply: 'build',
      enforce: 'post',
      generateBundle: {
        order: 'post',
        handler(options, bundle) {
          noteAll(options, bundle);
          this.emitFile({ type: 'asset', fileName: licencesFile, source: textOf(root, [...folders].sort()) });
        },
      },
    }),
  };
}

function textOf(root: string, folders: readonly string[]): string {
  const own = packageIn(root);
  const head = `Kettle & Plate ${own.version} (${own.license ?? ''}) ships the following packages, each under its own licence.`;
  return `${[head, ...folders.map(licenceOf)].join(`\n\n${'-'.repeat(80)}\n\n`)}\n`;
}

function licenceOf(at: string): string {
  const { name, version, license } = packageIn(at);
  const texts = readdirSync(at).filter((file) => licenceFile.test(file));
  if (texts.length === 0) throw new Error(`${name} ships, and has no licence text in ${at}.`);
  const whole = texts.map((file) => readFileSync(join(at, file), 'utf8').trim());
  return [`${name} ${version} (${license ?? 'see below'})`, ...whole].join('\n\n');
}

function packageIn(at: string): Package {
  const file = join(at, 'package.json');
  if (!existsSync(file)) throw new Error(`There is no ${file}.`);
  return JSON.parse(readFileSync(file, 'utf8')) as Package;
}
