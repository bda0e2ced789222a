// An engineer takes the library away: packed, installed from its tarball alone, compiled, run and bundled.

import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright';
import { build, preview } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchOptions } from '../support/browser.mjs';
import { root } from '../support/tree.js';
import { type Project, takenAway } from './taken.js';

/** A program that touches both doors, in the strictest TypeScript. */
const program = `import { ethanol, InputError, moleFractionFromStrength, solve, type RunProblem } from 'kettle-and-plate';
import { leastSquares } from 'kettle-and-plate/numerics';

export const problem: RunProblem = {
  still: { kettle: { volume_m3: 0.02, power_W: 1500 } },
  charge: { kind: 'volume', volume_m3: 0.015, strength: 0.1 },
  sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }],
};
export const fit = leastSquares({ residualCount: 2, start: [0], residuals(p, out) { out[0] = p[0]! - 1; out[1] = p[0]! - 2; } });
export function answer(): string {
  try {
    moleFractionFromStrength(40);
  } catch (error) {
    if (error instanceof InputError) return \`\${solve(problem).ending.kind} \${error.code} \${ethanol.boilingTemperature(101325).toFixed(2)}\`;
  }
  return '';
}
`;
const said = 'stopped outOfRange 351.44';

const strict = {
  target: 'ES2022',
  lib: ['ES2022'],
  types: [],
  strict: true,
  noUncheckedIndexedAccess: true,
  exactOptionalPropertyTypes: true,
  skipLibCheck: false,
  noEmit: true,
};

let project: Project;
beforeAll(() => {
  project = takenAway();
});
afterAll(() => rmSync(project.folder, { recursive: true, force: true }));

describe('the package', () => {
  it('is built as it is packed, with licence and citation', () => {
    for (const path of ['dist/lib/index.js', 'dist/lib/index.d.ts', 'LICENSE', 'CITATION.cff', 'README.md']) {
      expect(existsSync(join(project.installed, path)), path).toBe(true);
    }
    expect(existsSync(join(root, 'LICENSE')), 'nothing is left behind at the top').toBe(false);
  });

  it('holds no file that no source stands behind', () => {
    const made = readdirSync(join(project.installed, 'dist/lib'), { recursive: true, encoding: 'utf8' });
    const strays = made.filter(
      (path) => path.endsWith('.js') && !existsSync(join(root, 'lib', path.replace(/js$/u, 'ts'))),
    );
    expect(strays).toEqual([]);
  });

  it('is clean to publint and to are-the-types-wrong', () => {
    const found: unknown = JSON.parse(
      project.node(join(root, 'tests/package/lint.mjs'), project.tarball, project.installed),
    );
    expect(found).toEqual({ publint: [], types: [] });
  });

  it('has no link or picture in its pages that leads nowhere', () => {
    const pages = ['README.md', 'DEVELOPERS.md'];
    const broken = pages.flatMap((page) => {
      const text = readFileSync(join(project.installed, page), 'utf8');
      return [...text.matchAll(/\]\((?![a-z]+:|#)([^)\s#]+)/gu)]
        .map(([, link = '']) => link)
        .filter((link) => !existsSync(join(project.installed, link)))
        .map((link) => `${page}: ${link}`);
    });
    expect(broken).toEqual([]);
  });

  it('says truly what it needs: no dependency, Node 20', () => {
    const manifest = JSON.parse(readFileSync(join(project.installed, 'package.json'), 'utf8')) as Record<
      string,
      unknown
    >;
    expect(manifest['dependencies']).toBeUndefined();
    expect(manifest['engines']).toEqual({ node: '>=20' });
  });
});

describe('a project that installs it', () => {
  const tsc = join(root, 'node_modules/typescript/bin/tsc');

  it.each([
    ['NodeNext', { module: 'NodeNext', moduleResolution: 'NodeNext' }],
    ['bundler', { module: 'ESNext', moduleResolution: 'bundler' }],
  ])('compiles under the strictest rules, resolved as %s does', (name, resolution) => {
    project.write('program.ts', program);
    const config = `tsconfig.${name}.json`;
    project.write(config, JSON.stringify({ compilerOptions: { ...strict, ...resolution }, files: ['program.ts'] }));
    expect(project.node(tsc, '-p', config)).toBe('');
  });

  it('runs in plain Node', () => {
    project.write('run.mjs', `${withoutTypes(program)}\nconsole.log(answer());\n`);
    expect(project.node('run.mjs').trim()).toBe(said);
  });

  it('compiles and runs each of the examples in docs/examples', () => {
    const folder = join(project.installed, 'docs/examples');
    const programs = readdirSync(folder).filter((path) => path.endsWith('.ts'));
    const listed = readFileSync(join(folder, 'README.md'), 'utf8');
    expect(programs).toHaveLength(10);
    for (const path of programs) {
      expect(listed).toContain(`](${path})`);
      project.write(`examples/${path}`, readFileSync(join(folder, path), 'utf8'));
    }
    const compilerOptions = {
      ...strict,
      ...{ module: 'NodeNext', moduleResolution: 'NodeNext', lib: ['ES2023'], skipLibCheck: true, noEmit: false },
      ...{
        types: ['node'],
        typeRoots: [join(root, 'node_modules/@types')],
        rootDir: 'examples',
        outDir: 'examples/out',
      },
    };
    project.write('tsconfig.examples.json', JSON.stringify({ compilerOptions, include: ['examples/*.ts'] }));
    expect(project.node(tsc, '-p', 'tsconfig.examples.json')).toBe('');
    for (const path of programs) {
      const said = project.node(`examples/out/${path.replace(/ts$/u, 'js')}`);
      expect(said, path).toMatch(/\d/u);
      expect(said, path).not.toMatch(/NaN|undefined|null|Infinity/u);
    }
  });

  it('runs in a page made by Vite, and in a worker of that page', async () => {
    project.write('index.html', '<!doctype html><title>taken</title><script type="module" src="/page.ts"></script>');
    project.write(
      'page.ts',
      `${program}
const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
worker.addEventListener('message', ({ data }) => { document.title = \`\${answer()} | \${data}\`; });
worker.postMessage('go');
`,
    );
    project.write('worker.ts', `${program}\nself.addEventListener('message', () => self.postMessage(answer()));\n`);
    await build({ root: project.folder, logLevel: 'silent', worker: { format: 'es' } });
    const server = await preview({ root: project.folder, logLevel: 'silent', preview: { port: 0, host: '127.0.0.1' } });
    const browser = await chromium.launch(launchOptions());
    try {
      const page = await browser.newPage();
      await page.goto(server.resolvedUrls!.local[0]!);
      await expect.poll(() => page.title()).toBe(`${said} | ${said}`);
    } finally {
      await browser.close();
      await server.close();
    }
  });

  it('pays 2 kB for a conversion of strengths alone', async () => {
    project.write('strength.js', "export { moleFractionFromStrength } from 'kettle-and-plate';\n");
    const made = await build({
      root: project.folder,
      logLevel: 'silent',
      build: {
        write: false,
        modulePreload: false,
        rolldownOptions: { input: join(project.folder, 'strength.js'), preserveEntrySignatures: 'strict' },
      },
    });
    const chunk = (Array.isArray(made) ? made : [made]).flatMap((one) => ('output' in one ? one.output : []))[0];
    const bytes = gzipSync(chunk !== undefined && 'code' in chunk ? chunk.code : '').length;
    expect(bytes).toBeGreaterThan(200);
    expect(bytes).toBeLessThanOrEqual(2048);
  });
});

/** The program as JavaScript: it has few types, all of them known here. */
function withoutTypes(text: string): string {
  return text
    .replace(', type RunProblem', '')
    .replace(': RunProblem', '')
    .replace('(): string', '()')
    .replaceAll('[0]!', '[0]');
}
