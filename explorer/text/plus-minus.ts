// A number with what is uncertain of it, in as many digits as that allows: '10.8 ± 1.1 L'.

import { fixed, joined } from './format.js';

/** Decimals that tell an uncertainty to one digit, to two where it begins with 1. */
export function decimalsFor(uncertainty: number): number {
  if (!(uncertainty > 0) || !Number.isFinite(uncertainty)) return 0;
  const power = Math.floor(Math.log10(uncertainty));
  const first = Math.round(uncertainty / 10 ** power);
  return Math.min(6, Math.max(0, first < 2 || first === 10 ? 1 - power : -power));
}

/** '10.8 ± 1.1 L'; values in the unit shown. At most `most` decimals; without a ± where it would be 0. */
export function plusMinus(value: number, uncertainty: number, unit: string, most = 3): string {
  const decimals = Math.min(most, uncertainty > 0 ? decimalsFor(uncertainty) : most);
  const sure = fixed(uncertainty, decimals);
  return uncertainty < 0.5 * 10 ** -decimals
    ? joined(fixed(value, decimals), unit)
    : joined(`${fixed(value, decimals)}\u00a0±\u00a0${sure}`, unit);
}
