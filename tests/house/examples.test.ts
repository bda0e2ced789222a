// Every example in a doc comment and in the README compiles under --strict, as a user's own code would.

import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { examplesOf, publicNames } from '../support/doc-comments.js';
import { read, root } from '../support/tree.js';

const doors = ['lib/index.ts', 'lib/numerics/index.ts'];
const names = doors.flatMap((door) => publicNames(door));
const examples = names.flatMap(({ name, comment }) => examplesOf(comment).map(({ call }) => ({ name, call })));

/** What the compiler says of a user's program, one line a fault with the text of its line. */
function faultsOf(text: string): string[] {
  const path = join(root, 'lib', 'a-users-program.ts');
  const options: ts.CompilerOptions = {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'],
    types: [],
    strict: true,
    noEmit: true,
    skipLibCheck: true,
  };
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.fileExists = (file) => file === path || fileExists(file);
  host.readFile = (file) => (file === path ? text : readFile(file));
  host.getSourceFile = (file, ...rest) =>
    file === path ? ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true) : getSourceFile(file, ...rest);
  const program = ts.createProgram([path], options, host);
  const lines = text.split('\n');
  const own = program.getSourceFile(path);
  return [...program.getSyntacticDiagnostics(own), ...program.getSemanticDiagnostics(own)].map((found) => {
    const line = own?.getLineAndCharacterOfPosition(found.start ?? 0).line ?? 0;
    return `${lines[line]?.slice(0, 120) ?? ''}: ${ts.flattenDiagnosticMessageText(found.messageText, ' ').slice(0, 300)}`;
  });
}

const values = (door: string): string =>
  publicNames(door)
    .filter(({ kind }) => kind !== 'type')
    .map(({ name }) => name)
    .join(', ');

describe('a program of a user', () => {
  it('made of every example compiles', () => {
    const program = [
      `import { ${values('lib/index.ts')} } from './index.js';`,
      `import { ${values('lib/numerics/index.ts')} } from './numerics/index.js';`,
      ...examples.map(({ call }) => `void (${call});`),
    ].join('\n');
    expect(examples.length).toBeGreaterThan(90);
    expect(faultsOf(program)).toEqual([]);
  });

  it('copied from the README compiles', () => {
    const block = /```ts\n([\s\S]*?)```/u.exec(read('README.md'))?.[1] ?? '';
    expect(block).toContain("from 'kettle-and-plate'");
    expect(faultsOf(block.replace("'kettle-and-plate'", "'./index.js'"))).toEqual([]);
  });

  it('with a mistake in it does not', () => {
    expect(faultsOf("import { solve } from './index.js';\nsolve({});")).toHaveLength(1);
  });
});
