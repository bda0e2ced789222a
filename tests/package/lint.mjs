// What publint and are-the-types-wrong find in a packed package, as JSON. Plain JavaScript, so that types need neither of them.
// Used as: node tests/package/lint.mjs the.tgz the-unpacked-folder

import { readFileSync } from 'node:fs';
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';

const [tarball, folder] = process.argv.slice(2);
const { messages } = await publint({ pkgDir: folder, strict: true, pack: false });
const manifest = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
const wrong = await checkPackage(createPackageFromTarballData(new Uint8Array(readFileSync(tarball))));
// The package is ECMAScript modules alone: that old ways of resolving do not find them is as it should be (profile esm-only).
const esmOnly = (wrong.problems ?? []).filter(
  ({ kind, resolutionKind }) =>
    kind !== 'CJSResolvesToESM' && resolutionKind !== 'node10' && resolutionKind !== 'node16-cjs',
);
console.log(
  JSON.stringify({
    publint: messages.map((message) => formatMessage(message, manifest) ?? message.code),
    types: wrong.types === false ? ['has no types'] : esmOnly,
  }),
);
