// Measured runs against the library: writes docs/theory/measured-runs.md. Run: npm run measured

import { writeFileSync } from 'node:fs';
import { format } from 'prettier';
import * as lib from '../../dist/lib/index.js';
import { measuredPage } from './measured-page.mjs';

const page = await format(measuredPage(lib), { parser: 'markdown' });
writeFileSync(new URL('../../docs/theory/measured-runs.md', import.meta.url), page);
console.log(page);
