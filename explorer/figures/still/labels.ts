// Words of the picture of the still: each beside what it names, numbers in ink; and its title and scale.

import { clock, fixed, joined } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { StillMoment, VesselMoment } from '../../rows/still-moment.js';
import { stageHeight } from './column.js';
import { placedJars } from './jars.js';
import type { PicturedStill, StillLayout } from './layout.js';
import { line, path, px, said, words } from './marks.js';
import type { StillMark } from './marks.js';
import { jarsPart, jarWords, listWords, spoutParts, stageName, threeStages } from './list.js';
import { reflux, strengthOrNone, vesselName } from './words.js';

export function titleMarks({ time_s }: StillMoment): StillMark[] {
  const parts = [said('The still', 'print', true), said(`, ${clock(time_s)} after the start`, 'soft')];
  return [words('title', [0, 10], parts)];
}

export function wordMarks(
  still: PicturedStill,
  moment: StillMoment,
  layout: StillLayout,
  units: UnitSystem,
): StillMark[] {
  return [
    ...(layout.labels.mode === 'listed' ? vesselNames(moment, layout) : vesselWords(moment, layout, units)),
    ...(layout.labels.mode === 'listed' ? [] : stageWords(still, moment, layout, units)),
    ...headWords(still, moment, layout, units),
    ...jarWords(moment, layout, units),
    ...(layout.labels.mode === 'beside' ? spoutWords(moment, layout, units) : listWords(still, moment, layout, units)),
  ];
}

/** Names short enough to stand close; the list under them says more. */
function vesselNames(moment: StillMoment, { vessels, floor }: StillLayout): StillMark[] {
  return vessels.map(({ left }, i) => {
    const name = moment.doublers.length > 1 && i > 0 ? String(i) : vesselName(i, moment);
    return words(`vessel ${String(i)} name`, [left, floor + 18], [said(name, 'print', true)]);
  });
}

function vesselWords(moment: StillMoment, { vessels, floor, labels }: StillLayout, units: UnitSystem): StillMark[] {
  const all: readonly VesselMoment[] = [moment.kettle, ...moment.doublers];
  return all.flatMap((part, i) => {
    const lines = [
      [said(vesselName(i, moment), 'print', true)],
      [said(units.temperature.withUnit(part.temperature_K), 'ink')],
      [said(strengthOrNone(part.strength, units), 'ink')],
      [said(units.volume.withUnit(part.volume_m3), 'ink')],
      [
        i === 0
          ? said(units.power.withUnit(moment.power_W), 'ink')
          : said(part.boiling ? 'boiling' : 'not boiling', 'soft'),
      ],
    ];
    const { left } = vessels[i]!;
    return lines.map((parts, k) =>
      words(`vessel ${String(i)} ${String(k)}`, [left, floor + 18 + k * labels.line], parts),
    );
  });
}

function stageWords(
  still: PicturedStill,
  { stages }: StillMoment,
  { column, labels }: StillLayout,
  units: UnitSystem,
): StillMark[] {
  if (column === null || stages.length === 0) return [];
  const last = stages.length - 1;
  const room = column.bottom - column.top;
  const chosen = room < 4.4 * labels.line ? [last] : room < 9 * labels.line ? [0, last] : threeStages(stages.length);
  const right = column.left + column.width;
  return [...new Set(chosen)].flatMap((i) => {
    const stage = stages[i]!;
    const y = stageHeight(still, column, i, stages.length);
    // Two lines about the plate's own height, kept within the column's.
    const at = Math.min(Math.max(y, column.top + labels.line), column.bottom - 4);
    const key = `stage ${String(i)}`;
    return [
      path(`${key} leader`, 'leader', line([right, y], [right + 6, y], [right + 12, at])),
      words(
        `${key} 0`,
        [labels.columnX, at - labels.line / 2],
        [
          said(`${stageName(still, i, stages.length)} `, 'print'),
          said(units.temperature.withUnit(stage.temperature_K), 'ink'),
        ],
      ),
      words(`${key} 1`, [labels.columnX, at + labels.line / 2], [said(strengthOrNone(stage.strength, units), 'ink')]),
    ];
  });
}

/** Temperature in the head; how much runs back and how strong it is. */
function headWords(still: PicturedStill, moment: StillMoment, layout: StillLayout, units: UnitSystem): StillMark[] {
  const { vapourPipe, towerCentre, refluxX, labels, column } = layout;
  const head = [said('head ', 'print'), said(units.temperature.withUnit(moment.head.temperature_K), 'ink')];
  const { kind } = still.refluxCondenser;
  const total = kind === 'total';
  const marks = [words('head', total ? [refluxX + 12, vapourPipe] : [towerCentre + 4, vapourPipe - 18], head)];
  if (kind === 'none') return marks;
  const [x, y] = total
    ? [refluxX + 24, vapourPipe + 30]
    : [towerCentre + Math.max((column?.width ?? 0) / 2 + 5, 14) + 8, vapourPipe + 34];
  const strength = total ? moment.spoutStrength : (moment.partial?.strength ?? null);
  marks.push(words('reflux', [x, y], [said(reflux(moment), 'ink')]));
  if (strength !== null) {
    marks.push(words('reflux strength', [x, y + labels.line], [said(units.strength.withUnit(strength), 'ink')]));
  }
  return marks;
}

function spoutWords(moment: StillMoment, layout: StillLayout, units: UnitSystem): StillMark[] {
  const { spout, floor, labels, size } = layout;
  const { strength, runs, inAll } = spoutParts(moment, units);
  const { shown, leftOut } = placedJars(moment, layout);
  const [x, y] = [spout[0] + 12, spout[1] - 6];
  const marks: StillMark[] = [
    words('spout', [x, y - labels.line], [said('spout ', 'print'), ...strength]),
    words('spout runs', [x, y], [runs]),
  ];
  const first = shown[0];
  if (first === undefined) return marks;
  const left = first.centre - Math.max(first.width / 2, 14);
  marks.push(words('jars', [left, floor + 18 + labels.line], [jarsPart(moment, leftOut, size, units)]));
  marks.push(words('collected', [left, floor + 18 + 2 * labels.line], inAll));
  return marks;
}

/** A bar of a round length. */
export function scaleBar({ size, scale, floor, height, labels }: StillLayout, units: UnitSystem): StillMark[] {
  const { length } = units;
  const perUnit = scale * length.fromShown(1);
  const shown = [0.05, 0.1, 0.2, 0.5, 1, 2, 5].find((one) => one * perUnit >= 36) ?? 10;
  const width = shown * perUnit;
  const y = labels.mode === 'beside' ? floor + 18 + 4 * labels.line : height - 16;
  const right = size.width - 1;
  const left = right - width;
  const text = joined(fixed(shown, shown < 0.1 ? 2 : shown < 1 ? 1 : 0), length.unit);
  return [
    path('scale', 'fine', `M${px(left)} ${px(y - 4)}v8M${px(right)} ${px(y - 4)}v8M${px(left)} ${px(y)}H${px(right)}`),
    words('scale', [left - 7, y], [said(text, 'soft')], 'end'),
  ];
}
