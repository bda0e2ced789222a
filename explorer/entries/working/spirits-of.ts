// Rows of a list as spirits of the library.

import { spiritFromMeasured, type Spirit } from '#lib/index.js';
import { workingNumbers } from '../../state/working-numbers.js';
import type { WorkingRow } from '../../state/workings.js';

export function spiritOf({ numbers }: WorkingRow): Spirit {
  return spiritFromMeasured({
    volume_m3: numbers.jarVolume ?? workingNumbers.jarVolume.start,
    strength: numbers.jarStrength ?? workingNumbers.jarStrength.start,
    temperature_K: numbers.jarTemperature ?? workingNumbers.jarTemperature.start,
  });
}

export function spiritsOf(rows: readonly WorkingRow[]): readonly Spirit[] {
  return rows.map(spiritOf);
}
