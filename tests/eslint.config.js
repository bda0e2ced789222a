// What the linter asks of every file. Rules that fight numeric code are tuned here, each with its reason.
// Used as: eslint --config tests/eslint.config.js

import eslint from '@eslint/js';
import { defineConfig } from 'eslint/config';
import { fileURLToPath } from 'node:url';
import lit from 'eslint-plugin-lit';
import litA11y from 'eslint-plugin-lit-a11y';
import tseslint from 'typescript-eslint';

const root = fileURLToPath(new URL('..', import.meta.url));

const numericCode = {
  // noUncheckedIndexedAccess makes every element of a typed array possibly undefined; in loops over
  // a known length `!` says so without a branch in the innermost loop.
  '@typescript-eslint/no-non-null-assertion': 'off',
  // Numbers belong in messages and in text; booleans and null stay errors.
  '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
  // Interpolation keeps `a + b` for numbers only, which is what protects arithmetic.
  '@typescript-eslint/restrict-plus-operands': ['error', { allowNumberAndString: false }],
  // `while (true)` with an exit inside is the clearest form of an iteration.
  '@typescript-eslint/no-unnecessary-condition': ['error', { allowConstantLoopConditions: true }],
  // `() => void setting()` is the usual shape of a listener.
  '@typescript-eslint/no-confusing-void-expression': [
    'error',
    { ignoreArrowShorthand: true, ignoreVoidReturningFunctions: true },
  ],
  // A leading underscore marks an argument that a contract asks for and one member does not use.
  '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
  eqeqeq: 'error',
};

const noModuleLet = {
  selector:
    'Program > VariableDeclaration[kind="let"], Program > ExportNamedDeclaration > VariableDeclaration[kind="let"]',
  message: 'The library keeps no state between calls: no module-level let.',
};

// Time limits are there against hanging, and there is one home for them: tests/support/patience.ts.
const noClocks = [
  {
    selector: 'CallExpression[callee.name=/^(setTimeout|setInterval)$/]',
    message: 'A test waits for what happens, not for a clock: until(…), expect.poll, settled() or turn().',
  },
  {
    selector:
      'CallExpression[callee.property.name=/^(waitUntil|waitFor|waitForTimeout|setTimeout)$/]:matches([callee.object.name="vi"], [callee.property.name="waitForTimeout"])',
    message: 'This gives up after a second: wait by until(…) or expect.poll.',
  },
  {
    selector: 'ObjectExpression > Property[key.name=/^(timeout|testTimeout|hookTimeout)$/]',
    message: 'No limit of its own: tests/support/patience.ts has one for all.',
  },
  {
    selector:
      'CallExpression[callee.name=/^(it|test|beforeAll|beforeEach|afterAll|afterEach)$/] > Literal[raw=/^[0-9]/]',
    message: 'No limit of its own: tests/support/patience.ts has one for all.',
  },
];

export default defineConfig(
  { ignores: ['dist/', 'coverage/', 'node_modules/'] },
  {
    files: ['**/*.{ts,mts}'],
    extends: [eslint.configs.recommended, ...tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: root } },
    rules: numericCode,
  },
  {
    files: ['lib/**/*.ts'],
    rules: {
      'no-restricted-syntax': ['error', noModuleLet],
      // Only relative files: the library has no run-time dependency and never looks at the page.
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            { regex: '^[^.]', message: 'The library imports nothing but its own files.' },
            { group: ['**/explorer/**', '**/tests/**'], message: 'The arrows point the other way.' },
          ],
        },
      ],
    },
  },
  {
    files: ['explorer/**/*.ts'],
    extends: [lit.configs['flat/recommended'], litA11y.configs.recommended],
    rules: {
      'lit/no-classfield-shadowing': 'error',
      'no-restricted-imports': [
        'error',
        {
          patterns: [{ regex: '(^|/)lib/', message: "Import the library as '#lib/index.js' or '#lib/units/...'." }],
        },
      ],
    },
  },
  {
    files: ['explorer/figures/**/*.ts'],
    rules: {
      '@typescript-eslint/no-restricted-imports': [
        'error',
        { patterns: [{ group: ['**/state/**'], message: 'A figure is given its rows.', allowTypeImports: true }] },
      ],
    },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      // `expect(element.method)` and fast-check properties hand methods over unbound on purpose.
      '@typescript-eslint/unbound-method': 'off',
      // The scripts in reference/ are plain JavaScript; a test that calls one sees no types.
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      'no-restricted-syntax': ['error', ...noClocks],
    },
  },
  {
    files: ['tests/support/**/*.ts', 'tests/bench/**/*.ts', 'tests/vitest.config.ts'],
    rules: { 'no-restricted-syntax': 'off' },
  },
  {
    files: ['**/*.{js,mjs}'],
    extends: [eslint.configs.recommended, tseslint.configs.disableTypeChecked],
    languageOptions: {
      globals: { process: 'readonly', console: 'readonly', URL: 'readonly', performance: 'readonly' },
    },
  },
);
