// Puts the licence and the citation where a package has them, at its top, while it is packed; their home is docs/.
// Used as: node tests/package/beside.mjs put | take

import { copyFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = new URL('../../', import.meta.url);
const at = (path) => fileURLToPath(new URL(path, root));

for (const name of ['LICENSE', 'CITATION.cff']) {
  if (process.argv[2] === 'put') copyFileSync(at(`docs/${name}`), at(name));
  else rmSync(at(name), { force: true });
}
