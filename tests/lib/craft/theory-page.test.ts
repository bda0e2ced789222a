// The numbers that docs/theory/craft.md prints, against the code.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  bubblePoint,
  dewPoint,
  kettleFromTemperature,
  moleFractionFromStrength,
  vapourFromTemperature,
} from '#lib/index.js';

const page = readFileSync(new URL('../../../docs/theory/craft.md', import.meta.url), 'utf8');
const air_Pa = 101325;
const rows = [...page.matchAll(/^\| (kettle|vapour) at (\d+) % vol \| (−[\d.]+) \|$/gm)];

describe('docs/theory/craft.md', () => {
  it('has its table of slopes', () => {
    expect(rows).toHaveLength(6);
  });

  it.each(rows.map(([, where, percent, slope]) => [where!, Number(percent), slope!] as const))(
    'says how a thermometer moves in the %s at %d per cent vol: %s K for one per cent',
    (where, percent, printed) => {
      const x = moleFractionFromStrength(percent / 100);
      const read =
        where === 'kettle'
          ? kettleFromTemperature({ reading_K: bubblePoint(x, air_Pa).temperature_K, air_Pa })
          : vapourFromTemperature({ reading_K: dewPoint(x, air_Pa).temperature_K, air_Pa });
      if (!read.found) throw new Error(read.message);
      expect(read.kelvinPerPercent.toFixed(2).replace('-', '−')).toBe(printed);
    },
  );

  it('says how far a head cools from 94 to 96 % vol', () => {
    const head = (strength: number): number => dewPoint(moleFractionFromStrength(strength), air_Pa).temperature_K;
    expect(page).toContain(`From 94 to 96 % vol a head cools by ${(head(0.94) - head(0.96)).toFixed(2)} K`);
  });
});
