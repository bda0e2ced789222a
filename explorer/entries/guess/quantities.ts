// Quantities of the guesses that no system of units has: a number of plates, a ratio, minutes.

import { fromSI, toSI } from '#lib/index.js';
import type { ShownQuantity } from '../../rows/shown.js';
import { fixed, joined, trimmed } from '../../text/format.js';

const same = (value: number): number => value;

export const plates: ShownQuantity = {
  unit: 'plates',
  words: 'plates',
  step: 1,
  toShown: same,
  fromShown: same,
  text: (si) => trimmed(si, 1),
  withUnit: (si) => joined(trimmed(si, 1), si === 1 ? 'plate' : 'plates'),
};

export const ratio: ShownQuantity = {
  unit: ': 1',
  words: 'reflux ratio',
  step: 0.5,
  toShown: same,
  fromShown: same,
  text: (si) => trimmed(si, 1),
  withUnit: (si) => joined(trimmed(si, 1), ': 1'),
};

export const minutes: ShownQuantity = {
  unit: 'min',
  words: 'minutes',
  step: 1,
  toShown: (si) => fromSI(si, 'min'),
  fromShown: (shown) => toSI(shown, 'min'),
  text: (si) => fixed(fromSI(si, 'min'), 0),
  withUnit: (si) => joined(fixed(fromSI(si, 'min'), 0), 'min'),
};
