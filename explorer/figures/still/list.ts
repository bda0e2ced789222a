// Words of the picture of the still that stand in lines under it where there is no room beside the parts; and the pieces
// of words that both ways share.

import { joined } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { PartMoment, StillMoment } from '../../rows/still-moment.js';
import { placedJars } from './jars.js';
import type { PicturedStill, PictureSize, StillLayout } from './layout.js';
import { said, words } from './marks.js';
import type { StillMark, WordMark } from './marks.js';
import { strengthOrNone, vesselName } from './words.js';

type Parts = WordMark['parts'];
type Part = Parts[number];

const comma = said(', ', 'soft');

/** Lines under the floor: the parts of the still where they are listed, then spout and jars. */
export function listWords(
  still: PicturedStill,
  moment: StillMoment,
  layout: StillLayout,
  units: UnitSystem,
): StillMark[] {
  const { floor, labels, size } = layout;
  const { strength, runs, inAll } = spoutParts(moment, units);
  const { shown, leftOut } = placedJars(moment, layout);
  const parts = labels.mode === 'listed' ? partLines(still, moment, units) : [];
  const spout = [said('spout ', 'print'), ...strength, ...(strength.length > 0 ? [comma] : []), runs, comma, ...inAll];
  const lines: Parts[] = [...parts, spout, ...(shown.length > 0 ? [[jarsPart(moment, leftOut, size, units)]] : [])];
  const first = floor + 18 + (labels.mode === 'listed' ? 1 : 5) * labels.line;
  return lines.map((line, i) => words(`line ${String(i)}`, [0, first + i * labels.line], line));
}

/** The strength of each jar that is drawn, under it. */
export function jarWords(moment: StillMoment, layout: StillLayout, units: UnitSystem): StillMark[] {
  return placedJars(moment, layout).shown.flatMap(({ jar, centre }): StillMark[] => {
    if (jar.strength === null) return [];
    const parts = [said(units.strength.text(jar.strength), 'ink', jar.state !== 'filled')];
    return [words(`jar ${String(jar.number)} strength`, [centre, layout.floor + 18], parts, 'middle')];
  });
}

/** What is said at the spout: its strength, how fast it runs, what has been collected. */
export function spoutParts(
  moment: StillMoment,
  units: UnitSystem,
): { readonly strength: Parts; readonly runs: Part; readonly inAll: Parts } {
  const rate = joined(units.volume.text(3600 * moment.distillateRate_m3_s), `${units.volume.unit}/h`);
  return {
    strength:
      moment.spoutStrength === null || moment.distillate.share === 0
        ? []
        : [said(units.strength.withUnit(moment.spoutStrength), 'ink')],
    runs: moment.distillate.share > 0 ? said(rate, 'ink') : said('nothing runs', 'soft'),
    inAll: [said(units.volume.withUnit(moment.collectedVolume_m3), 'ink'), said(' in all', 'soft')],
  };
}

export function jarsPart({ jars }: StillMoment, leftOut: number, size: PictureSize, units: UnitSystem): Part {
  const of = leftOut === 0 ? '' : `; ${String(leftOut)} ${size.layout === 'wide' ? 'earlier ' : ''}not drawn`;
  return said(`${jars.length > 1 ? 'jars' : 'jar'}, ${units.strength.unit}${of}`, 'soft');
}

/** 'plate 6'; of a packing its foot, middle and top. */
export function stageName({ column }: PicturedStill, stage: number, count: number): string {
  if (column.kind === 'plates') return `plate ${String(stage + 1)}`;
  return stage === count - 1 ? 'top' : stage === 0 ? 'foot' : 'middle';
}

/** The lowest, the middle and the top one; fewer of few. */
export function threeStages(count: number): number[] {
  return [...new Set([0, Math.floor((count - 1) / 2), count - 1])];
}

function partLines(still: PicturedStill, moment: StillMoment, units: UnitSystem): Parts[] {
  const { temperature, volume, power } = units;
  const line = (name: string, part: PartMoment, more: Parts): Parts => [
    said(`${name} `, 'print'),
    said(temperature.withUnit(part.temperature_K), 'ink'),
    comma,
    said(strengthOrNone(part.strength, units), 'ink'),
    ...more,
  ];
  const vessels = [moment.kettle, ...moment.doublers].map((part, i) =>
    line(vesselName(i, moment), part, [
      comma,
      said(volume.withUnit(part.volume_m3), 'ink'),
      ...(i === 0 ? [comma, said(power.withUnit(moment.power_W), 'ink')] : []),
    ]),
  );
  const { stages } = moment;
  const chosen = stages.length === 0 ? [] : threeStages(stages.length).reverse();
  return [...chosen.map((i) => line(stageName(still, i, stages.length), stages[i]!, [])), ...vessels.reverse()];
}
