// The solver off the page's thread. Nothing happens here but handing on: see questions.ts.

import { expose } from 'comlink';
import { createEthanolWater } from '#lib/index.js';
import { createSolver } from './questions.js';

const answer = createSolver(createEthanolWater());

expose({ answer });
