// The library's own system, used wherever none is given; it compiles a model's curves when they are first needed, and keeps them.

import { createEthanolWater } from './ethanol-water.js';

export const OWN_SYSTEM = createEthanolWater();
