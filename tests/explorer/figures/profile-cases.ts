// Profiles up a column from invented rows: now, and an hour before.

import { columnStrength, columnTemperature } from '../../../explorer/figures/column-profile.js';
import type { ColumnProfileRows, ProfileMoment } from '../../../explorer/rows/column-profile.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';

function moment(label: string, steep: number): ProfileMoment {
  const stage = Array.from({ length: 13 }, (_, i) => i);
  const liquid = stage.map((i) => 0.93 - 0.87 * steep ** i);
  return {
    label,
    stage,
    liquid,
    vapour: liquid.map((at) => at + 0.6 * (0.95 - at)),
    temperature_K: stage.map((i) => 351.6 + 17 * steep ** i),
  };
}

export const profile: ColumnProfileRows = {
  moments: [moment('3 h 1 min', 0.72), moment('2 h 1 min', 0.5)],
  stages: 12,
  kind: 'plates',
  base: 'kettle',
  range_K: [351.4, 369],
  units: unitSystems.metric,
};

export const profileCases = [
  { name: 'strength up the column', figure: columnStrength, rows: profile, pair: true, pencils: -1 },
  { name: 'temperature up the column', figure: columnTemperature, rows: profile, pair: true, pencils: -1 },
];
