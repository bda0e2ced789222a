// The still as it stands at one moment: a plain line drawing to scale. Print is the equipment, ink what is in it and
// what moves, red what must not be. A pure function from a record to marks; nothing moves unless the moment does.

import type { Flow, PartMoment, StillMoment } from '../../rows/still-moment.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { DataTable } from '../figure.js';
import { columnMarks } from './column.js';
import { condenserMarks } from './condensers.js';
import { detailMarks } from './detail.js';
import { jarMarks } from './jars.js';
import { stillLayout } from './layout.js';
import type { PicturedStill, PictureSize } from './layout.js';
import type { StillMark } from './marks.js';
import { stillTable } from './table.js';
import { describeStill, stillNote, warnings } from './words.js';
import { scaleBar, titleMarks, wordMarks } from './labels.js';
import { vesselMarks } from './vessels.js';

export interface StillPicture {
  /** One sentence with its numbers, for those who cannot see it. */
  readonly description: string;
  /** What is drawn to scale and what is not. */
  readonly note: string;
  /** What must not be, in sentences. */
  readonly warnings: readonly string[];
  readonly width: number;
  readonly height: number;
  readonly marks: readonly StillMark[];
  /** Made when asked for. */
  readonly table: () => DataTable;
}

/** Draws a still at a moment; px. */
export function stillPicture(
  still: PicturedStill,
  now: StillMoment,
  units: UnitSystem,
  size: PictureSize,
): StillPicture {
  const moment = size.steady ? standing(now) : now;
  const layout = stillLayout(still, moment.jars, units, size);
  return {
    description: describeStill(still, moment, units),
    note: stillNote(still, layout),
    warnings: warnings(moment),
    width: size.width,
    height: layout.height,
    marks: [
      ...titleMarks(moment),
      ...columnMarks(still, moment, layout),
      ...vesselMarks(still, moment, layout),
      ...condenserMarks(still, moment, layout),
      ...jarMarks(moment, layout),
      ...detailMarks(still, moment, layout, units),
      ...scaleBar(layout, units),
      ...wordMarks(still, moment, layout, units),
    ],
    table: () => stillTable(still, moment, units),
  };
}

/** The same moment with every dash in its place: for who wants no motion. */
function standing(moment: StillMoment): StillMoment {
  const flow = (one: Flow): Flow => ({ ...one, passed: 0 });
  const part = <Part extends PartMoment>(one: Part): Part => ({
    ...one,
    vapour: flow(one.vapour),
    liquid: flow(one.liquid),
  });
  return {
    ...moment,
    kettle: part(moment.kettle),
    doublers: moment.doublers.map(part),
    stages: moment.stages.map(part),
    head: { ...moment.head, vapour: flow(moment.head.vapour) },
    partial: moment.partial && part(moment.partial),
    reflux: flow(moment.reflux),
    distillate: flow(moment.distillate),
  };
}
