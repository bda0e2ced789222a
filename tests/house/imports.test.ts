// The folder tree is the dependency diagram and points one way (DEVELOPERS.md, 'Layers').

import { posix } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesUnder, parse, walk } from '../support/tree.js';

interface Arrow {
  readonly from: string;
  readonly to: string;
  readonly typesOnly: boolean;
}

const order = ['units', 'numerics', 'substances', 'mixture', 'equilibrium', 'still', 'run', 'craft'];

/** Height of a library file: what it imports must not stand higher. Data serve every layer and stand lowest. */
function height(path: string): number {
  if (path === 'lib/index.ts') return order.length;
  return Math.max(0, order.indexOf(path.split('/')[1] ?? ''));
}

/** What a folder of the explorer must never import, types excepted, with the reason. */
const forbidden: readonly { from: RegExp; to: RegExp; because: string; typesToo?: true }[] = [
  {
    from: /^explorer\/rows\//,
    to: /^explorer\/(?!rows\/)/,
    because: 'rows are plain data, below both what makes them and what draws them',
    typesToo: true,
  },
  {
    from: /^explorer\/figures\//,
    to: /^explorer\/state\//,
    because: 'a figure takes its types from rows',
    typesToo: true,
  },
  {
    from: /^explorer\/(state|text|worker)\//,
    to: /^explorer\/figures\//,
    because: 'what makes rows does not know who draws them',
    typesToo: true,
  },
  {
    from: /^explorer\/figures\//,
    to: /^explorer\/(state|components|entries|pages|worker)\//,
    because: 'a figure is given its rows',
  },
  {
    from: /^explorer\/components\//,
    to: /^explorer\/(state|figures|entries|pages|worker)\//,
    because: 'a component knows no chemistry',
  },
  {
    from: /^explorer\/components\//,
    to: /^lib\/(?!units\/)/,
    because: 'a component knows no chemistry',
  },
  {
    from: /^explorer\/(state|worker|text)\//,
    to: /^explorer\/(figures|components|entries|pages)\//,
    because: 'what is computed does not know how it is shown',
  },
  {
    from: /^explorer\/keep\//,
    to: /^explorer\/(figures|worker|pages|entries\/(?!registry\.ts|words\.ts))/,
    because: 'what keeps a notebook does not know what it is about',
  },
  {
    from: /^explorer\/(?!worker\/)/,
    to: /^explorer\/worker\/(kinds\/|answering|memory|pool)/,
    because: 'how a question is answered is loaded by the workers alone; a page knows its types',
  },
  {
    from: /^explorer\/(offline|build)\//,
    to: /^(lib|explorer\/(?!offline|build))/,
    because: 'serving files needs nothing of what is in them',
  },
  {
    from: /^explorer\/(?!keep\/)/,
    to: /^valibot/,
    because: 'valibot is loaded with what is kept, never before',
  },
  {
    from: /^explorer\/(?!figures\/plots\/)/,
    to: /^@observablehq\/plot/,
    because: 'Plot stands behind one door, explorer/figures/plots, and is loaded with the first figure it draws',
  },
  {
    from: /^explorer\/(?!figures\/plots\/)(?!entries\/)/,
    to: /^explorer\/figures\/plots\//,
    because: 'what Plot draws is loaded when it is first met, by the entry that shows it',
  },
  { from: /^explorer\/(?!entries\/data\/)/, to: /^d3-dsv/, because: 'only the reader’s own rows are read as CSV' },
  { from: /^explorer\/(?!formula\/)/, to: /^mathjs/, because: 'mathjs stands behind one door, explorer/formula' },
  {
    from: /^explorer\//,
    to: /^lib\/(?!index\.ts|units\/)/,
    because: 'the library has two doors, its index and its units',
  },
  { from: /^(lib|explorer)\//, to: /^(tests|reference)\//, because: 'nothing that ships reads them' },
];

const arrows = [...filesUnder('lib', /\.ts$/), ...filesUnder('explorer', /\.ts$/)].flatMap(arrowsOf);

describe('imports', () => {
  it('are found at all', () => {
    expect(arrows).toContainEqual({ from: 'lib/index.ts', to: 'lib/errors.ts', typesOnly: false });
  });

  it('in the library name its own files only', () => {
    const strangers = arrows.filter((arrow) => arrow.from.startsWith('lib/') && !arrow.to.startsWith('lib/'));
    expect(strangers.map(described)).toEqual([]);
  });

  it('in the library never point from a lower layer to a higher one', () => {
    const upward = arrows.filter(
      (arrow) => arrow.from.startsWith('lib/') && height(arrow.to) > height(arrow.from) && !dataNamesItsUser(arrow),
    );
    expect(upward.map(described)).toEqual([]);
  });

  it.each(forbidden)('never lead from $from to $to: $because', ({ from, to, typesToo }) => {
    const wrong = arrows.filter(
      (arrow) => from.test(arrow.from) && to.test(arrow.to) && (typesToo === true || !arrow.typesOnly),
    );
    expect(wrong.map(described)).toEqual([]);
  });
});

/** A parameter set may name the type that the layer using it declares. */
function dataNamesItsUser(arrow: Arrow): boolean {
  return arrow.from.startsWith('lib/data/') && arrow.typesOnly;
}

function described(arrow: Arrow): string {
  return `${arrow.from} → ${arrow.to}`;
}

function arrowsOf(from: string): Arrow[] {
  const found: Arrow[] = [];
  const add = (specifier: ts.Node | undefined, typesOnly: boolean): void => {
    if (specifier !== undefined && ts.isStringLiteralLike(specifier)) {
      found.push({ from, to: target(from, specifier.text), typesOnly });
    }
  };
  walk(parse(from), (node) => {
    if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, importsTypesOnly(node));
    if (ts.isExportDeclaration(node)) add(node.moduleSpecifier, node.isTypeOnly);
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add(node.arguments[0], false);
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node.argument.literal, true);
  });
  return found;
}

function importsTypesOnly(node: ts.ImportDeclaration): boolean {
  const clause = node.importClause;
  if (clause === undefined) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const names = clause.namedBindings;
  if (clause.name !== undefined || names === undefined || !ts.isNamedImports(names)) return false;
  return names.elements.every((element) => element.isTypeOnly);
}

/** Path in the repository that a specifier means, or the specifier itself for a package. */
function target(from: string, specifier: string): string {
  const path = specifier.startsWith('.')
    ? posix.join(posix.dirname(from), specifier)
    : specifier.replace(/^#lib\//, 'lib/');
  return path.startsWith('lib/') || path.startsWith('explorer/') ? path.replace(/\.js$/, '.ts') : path;
}
