// The numbers of the picture of the still as a table: every part from the kettle up, then spout and jars.

import { clock, fixed } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { PartMoment, StillMoment } from '../../rows/still-moment.js';
import type { DataTable } from '../figure.js';
import type { PicturedStill } from './layout.js';
import { vesselName } from './words.js';

/** A row before what it leaves out is filled with nothing. */
interface Row {
  readonly name: string;
  readonly temperature_K?: number;
  readonly strength: number | null;
  readonly volume_m3?: number;
  readonly up_mol_s?: number;
  readonly down_mol_s?: number;
  /** Put in, or taken out where it is negative. */
  readonly heat_W?: number;
}

export function stillTable(still: PicturedStill, moment: StillMoment, units: UnitSystem): DataTable {
  const { strength, temperature, volume, power } = units;
  const perMinute = (rate_mol_s: number): string => fixed(60 * rate_mol_s, 2);
  const text = (value: number | null | undefined, say: (value: number) => string): string =>
    value === null || value === undefined ? '' : say(value);
  return {
    caption: `The still in numbers, ${clock(moment.time_s)} after the start`,
    columns: [
      { title: 'part', unit: '' },
      { title: 'temperature', unit: temperature.unit },
      { title: 'strength', unit: strength.unit },
      { title: 'liquid in it', unit: volume.unit },
      { title: 'vapour up', unit: 'mol/min' },
      { title: 'liquid down', unit: 'mol/min' },
      { title: 'heat put in', unit: power.unit },
    ],
    rows: rowsOf(still, moment).map((row) => [
      row.name,
      text(row.temperature_K, temperature.text),
      text(row.strength, strength.text),
      text(row.volume_m3, (value) => fixed(volume.toShown(value), 2)),
      text(row.up_mol_s, perMinute),
      text(row.down_mol_s, perMinute),
      text(row.heat_W, power.text),
    ]),
  };
}

function rowsOf({ column, refluxCondenser }: PicturedStill, moment: StillMoment): Row[] {
  const stage = column.kind === 'plates' ? 'plate' : 'packing, stage';
  const total = refluxCondenser.kind === 'total';
  const back = total ? { down_mol_s: moment.reflux.rate_mol_s } : {};
  return [
    ...[moment.kettle, ...moment.doublers].map((part, i) =>
      partRow(vesselName(i, moment), part, i === 0 ? { heat_W: moment.power_W } : {}),
    ),
    ...moment.stages.map((part) => partRow(`${stage} ${String(part.number)}`, part)),
    ...(moment.partial === null
      ? []
      : [partRow('partial condenser', moment.partial, { heat_W: -moment.refluxDuty_W })]),
    { name: 'head', temperature_K: moment.head.temperature_K, strength: null, up_mol_s: moment.head.vapour.rate_mol_s },
    { name: 'condenser', strength: moment.spoutStrength, heat_W: -moment.condenserDuty_W, ...back },
    { name: 'spout', strength: moment.spoutStrength, down_mol_s: moment.distillate.rate_mol_s },
    ...moment.jars
      .filter((jar) => jar.strength !== null)
      .map((jar): Row => ({ name: `jar ${String(jar.number)}`, strength: jar.strength, volume_m3: jar.filled_m3 })),
  ];
}

function partRow(name: string, part: PartMoment, more: Partial<Row> = {}): Row {
  return {
    name,
    temperature_K: part.temperature_K,
    strength: part.strength,
    volume_m3: part.volume_m3,
    up_mol_s: part.vapour.rate_mol_s,
    down_mol_s: part.liquid.rate_mol_s,
    ...more,
  };
}
