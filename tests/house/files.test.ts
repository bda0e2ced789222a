// What stands where: the agreed top level, files short enough to hold one idea, constants in their home.

import { readdirSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesUnder, parse, read, root, walk } from '../support/tree.js';

/** A file of more lines than this is asked whether it holds one idea; of more than `tooLong` none does. */
const longish = 250;
const tooLong = 400;
const source = /\.(ts|css|html)$/;

describe('the tree', () => {
  it('has the agreed top level and nothing else', () => {
    const agreed =
      /^(README\.md|DEVELOPERS\.md|package(-lock)?\.json|tsconfig\.json|lib|explorer|tests|reference|docs|\..+)$/;
    const made = /^(node_modules|dist|coverage)$/;
    expect(readdirSync(root).filter((entry) => !agreed.test(entry) && !made.test(entry))).toEqual([]);
  });

  it(`warns of files over ${String(longish)} lines in lib and explorer, and has none over ${String(tooLong)}`, () => {
    const sizes = [...filesUnder('lib', source), ...filesUnder('explorer', source)].map((path) => ({
      path,
      lines: read(path).split('\n').length - 1,
    }));
    for (const { path, lines } of sizes) {
      if (lines > longish) console.warn(`${path} has ${String(lines)} lines: is it one idea?`);
    }
    expect(sizes.filter(({ lines }) => lines > tooLong)).toEqual([]);
  });

  it('has no test that is skipped, focused or left for later', () => {
    const marks = /\b(it|test|describe)\.(skip|todo|only)\b/;
    expect(filesUnder('tests', /\.ts$/).filter((path) => marks.test(read(path)) && path !== here)).toEqual([]);
  });
});

describe('the package', () => {
  const { dependencies = {}, devDependencies } = JSON.parse(read('package.json')) as {
    dependencies?: Record<string, string>;
    devDependencies: Record<string, string>;
  };

  it('has no run-time dependency', () => {
    expect(dependencies).toEqual({});
  });

  it('says in DEVELOPERS.md why it needs each package, and pins it', () => {
    const named = read('DEVELOPERS.md')
      .split('\n')
      .flatMap((line) => (line.startsWith('| ') ? (line.split('|')[1] ?? '').split(',') : []))
      .map((name) => name.trim());
    expect(Object.keys(devDependencies).filter((name) => !named.includes(name))).toEqual([]);
    expect(Object.values(devDependencies).filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  it('has a lock file without addresses of a registry', () => {
    expect(read('package-lock.json')).not.toContain('"resolved"');
  });
});

describe('numbers on the page', () => {
  // Lengths in a drawing, addresses, files and powers of units are not read as numbers.
  const notRead =
    /^explorer\/(text\/format\.ts|components\/(figure\/point-shapes|still\/still-painter)\.ts|state\/address\.ts|keep\/reading\.ts|formula\/unit-words\.ts)$/;

  it('are written by explorer/text, with the reader’s decimal mark', () => {
    const own = filesUnder('explorer', /\.ts$/).filter((path) => /\.toFixed\(|toLocaleString\(/.test(read(path)));
    expect(own.filter((path) => !notRead.test(path))).toEqual([]);
  });
});

describe('constants', () => {
  // A pressure that somebody measured at is no constant: the points laid over the curves hold some of 1 atm.
  const homes = /^(lib\/(constants\.ts|units\/|data\/)|explorer\/state\/measured-points\.ts$)/;
  // Gas constant, 0 °C, standard atmosphere in three units, molar masses of water and ethanol.
  const telltale = /^(8\.314\d*|273\.15|101325|101\.325|760|18\.015\d*|46\.06\d*|0\.018015\d*|0\.04606\d*)$/;

  // Published with the formula they stand in, which is not to be mixed with today's values.
  const belongsToItsFit: Readonly<Record<string, string>> = {
    'lib/still/altitude.ts: 8.31432': 'the gas constant that defines the standard atmosphere of 1976',
  };

  it.each(['8.314462618', '273.15', '101325', '760', '18.015268', '0.018015268', '46.068', '0.04606844'])(
    '%s is recognised',
    (digits) => {
      expect(telltale.test(digits)).toBe(true);
    },
  );

  it('are written in their home and nowhere else', () => {
    const strays = [...filesUnder('lib', /\.ts$/), ...filesUnder('explorer', /\.ts$/)]
      .filter((path) => !homes.test(path))
      .flatMap((path) =>
        numbersIn(path)
          .filter((digits) => telltale.test(digits))
          .map((digits) => `${path}: ${digits}`),
      );
    expect(strays.filter((stray) => !(stray in belongsToItsFit))).toEqual([]);
  });
});

const here = 'tests/house/files.test.ts';

/** Numbers written in the code of a file, comments excepted, as plain decimals. */
function numbersIn(path: string): string[] {
  const numbers: string[] = [];
  walk(parse(path), (node) => {
    if (ts.isNumericLiteral(node)) numbers.push(String(Number(node.text)));
  });
  return numbers;
}
