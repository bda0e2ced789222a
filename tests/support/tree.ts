// The repository's own files, for the tests that read them.

import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** Absolute path of the repository. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

const notOurs = new Set(['node_modules', 'dist', 'coverage', '.git', '.vitest-attachments', '__screenshots__']);

/** Paths of all files under a folder of the repository, relative to its root, with '/' between parts. */
export function filesUnder(folder: string, extension = /./): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .filter((entry) => !notOurs.has(entry.name))
    .flatMap((entry) => {
      const path = join(folder, entry.name).split(sep).join('/');
      return entry.isDirectory() ? filesUnder(path, extension) : extension.test(entry.name) ? [path] : [];
    })
    .sort();
}

/** Text of a file of the repository. */
export function read(path: string): string {
  return readFileSync(join(root, path), 'utf8');
}

/** One TypeScript file as a syntax tree. */
export function parse(path: string): ts.SourceFile {
  return ts.createSourceFile(path, read(path), ts.ScriptTarget.ES2022, true);
}

/** Calls `visit` for a node and everything below it. */
export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  node.forEachChild((child) => {
    walk(child, visit);
  });
}
