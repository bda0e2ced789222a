// The panels of runs of a still, as data: strength at the spout of all in one panel or in one each, and the temperatures of
// the first. Each run's columns are picked once, where what is collected (or time) rises.

import type { RunCurve, RunFigureRows, RunLevel, RunMeasure, RunPanel, RunRows, RunsDrawn } from '../../rows/run.js';
import { noteOf, picking, readings, type Picked } from './picked.js';
import type { Column, ShownQuantity } from '../../rows/shown.js';
import { chosen, chosenDigits, extentOf } from '../axes.js';
import { firstFallTo } from '../columns.js';

/** Px of the plot rectangle. */
const height = {
  strength: { wide: 330, narrow: 280 },
  temperature: { wide: 98, narrow: 92 },
  /** Fewer stills, more room. */
  each: (count: number) => {
    const wide = count <= 3 ? 130 : count === 4 ? 108 : 92;
    return { wide, narrow: Math.round(0.86 * wide) };
  },
};
/** The highest strength an axis may begin at. */
const highestFrom = 0.9;
/** K below the lowest temperature, so that it does not lie on the base axis. */
const underTemperature = 0.5;

export function ofRuns(drawn: RunsDrawn): RunFigureRows {
  const { units } = drawn;
  const quantity = drawn.along === 'volume' ? units.volume : units.time;
  const picked = drawn.runs.map((named) => picking(named, drawn.along));
  return {
    along: {
      quantity,
      title:
        drawn.along === 'volume' ? `${units.volume.words} collected` : `${units.time.words} since the first vapour`,
    },
    start: 0.4,
    panels: drawn.panels.flatMap((name) => {
      if (name === 'strength') return [strengthPanel(picked, drawn, quantity)];
      return name === 'each' ? eachPanels(picked, drawn) : [temperaturePanel(picked, drawn)];
    }),
    readings: {
      caption: 'The run in numbers',
      columns: drawn.runs.map(({ shortLabel, hand }) => ({ label: shortLabel, hand })),
      rows: readings(picked, drawn),
      note: noteOf(picked[0], drawn),
    },
    phases: [],
    phasesIn: { panel: '', along: 'top' },
    warnings: [],
    units,
  };
}

/** Ink over pencil: the runs come ink first and are painted from the last. */
function strengthPanel(picked: readonly Picked[], drawn: RunsDrawn, along: ShownQuantity): RunPanel {
  const curves = picked.map((one, index) => strengthOf(one, `run ${String(index)}`, one.named.label));
  return {
    ...strengthBase(curves, drawn),
    key: 'strength',
    title: 'Strength at the spout',
    subject: 'Strength at the spout',
    height: height.strength,
    curves: curves.reverse(),
    levels: levelsOf(drawn, 'ceiling'),
    measure: measureOf(picked[0], drawn, along),
  };
}

/** A panel a run, each with the first run's curve in a thin line to compare. */
function eachPanels(picked: readonly Picked[], drawn: RunsDrawn): RunPanel[] {
  const own = picked.map((one) => strengthOf(one, one.named.shortLabel, ''));
  const base = strengthBase(own, drawn);
  return picked.map(({ named }, index) => {
    const first: RunCurve = {
      ...own[0]!,
      key: 'first',
      hand: 'print',
      weight: 'third',
      label: index === 1 ? picked[0]!.named.shortLabel : '',
      side: 'below',
      read: false,
    };
    const levels = levelsOf(drawn, 'runsOut').filter(({ key }) => index === 0 || key === 'threshold');
    return {
      ...base,
      key: `still ${String(index)}`,
      title: capitalised(named.label),
      subject: `Strength at the spout of ${named.label}`,
      height: height.each(picked.length),
      curves: index === 0 ? [own[0]!] : [first, own[index]!],
      levels: index === 0 ? levels : levels.map((level) => ({ ...level, label: '' })),
      measure: null,
    };
  });
}

function strengthBase(curves: readonly RunCurve[], drawn: RunsDrawn): Pick<RunPanel, 'quantity' | 'axis' | 'says'> {
  const lowest = extentOf(curves.map(({ values }) => values))[0];
  const from = Math.min(drawn.strengthFrom ?? lowest, drawn.threshold ?? lowest, highestFrom);
  return {
    quantity: drawn.units.strength,
    axis: { kind: 'strength', from },
    says: drawn.azeotrope === null ? ['no azeotrope'] : [],
  };
}

function strengthOf({ named: { hand, weight }, along, of }: Picked, key: string, label: string): RunCurve {
  const side = hand === 'pencil' ? 'below' : 'bend';
  return { key, label, hand, weight, along, values: of((run) => run.spoutStrength), side, read: true };
}

/** Kettle and head of the first run over the line where the azeotrope boils. */
function temperaturePanel([first]: readonly Picked[], { azeotrope, units }: RunsDrawn): RunPanel {
  const curve = (key: string, weight: 'result' | 'second', of: (run: RunRows) => Column): RunCurve[] =>
    first === undefined
      ? []
      : [
          {
            key,
            label: key,
            hand: first.named.hand,
            weight,
            along: first.along,
            values: first.of(of),
            side: 'end',
            read: true,
          },
        ];
  const curves = [
    ...curve('kettle', 'second', (run) => run.kettleTemperature_K),
    ...curve('head', 'result', (run) => run.headTemperature_K),
  ];
  const boils = azeotrope === null ? [] : [azeotrope.temperature_K];
  const lowest = extentOf([...curves.map(({ values }) => values), boils])[0];
  return {
    key: 'temperature',
    title: 'Temperature',
    subject: 'Temperature',
    quantity: units.temperature,
    height: height.temperature,
    axis: { kind: 'round', takesIn: [lowest - underTemperature], ticks: 3 },
    curves,
    levels: boils.map((at) => ({
      key: 'azeotrope',
      label: `azeotrope boils at ${units.temperature.withUnit(at)}`,
      note: '',
      hand: 'print',
      at,
      form: 'runsOut',
    })),
    measure: null,
    says: [],
  };
}

function levelsOf({ azeotrope, threshold, units }: RunsDrawn, form: 'ceiling' | 'runsOut'): RunLevel[] {
  const levels: RunLevel[] = [];
  if (azeotrope !== null) {
    const { strength, pressure } = azeotrope;
    const note = form === 'ceiling' ? `no plate passes it at ${pressure}` : '';
    const label = `azeotrope ${units.strength.withUnit(strength)}`;
    levels.push({ key: 'azeotrope', label, note, hand: 'print', at: strength, form });
  }
  if (threshold !== null) {
    const label = chosen(units.strength, threshold);
    levels.push({ key: 'threshold', label, note: '', hand: 'ink', at: threshold, form: 'inside' });
  }
  return levels;
}

/** How long the first run stays above a strength. */
function measureOf(first: Picked | undefined, { measure, units }: RunsDrawn, along: ShownQuantity): RunMeasure | null {
  if (measure === null || first === undefined || first.named.hand === 'pencil') return null;
  const to = firstFallTo(
    first.along,
    first.of((run) => run.spoutStrength),
    measure,
  );
  if (to === null || to <= 0) return null;
  const words = (level: string): string => `above ${level} for ${along.withUnit(to)}`;
  return {
    value: measure,
    to,
    falls: to < first.along[first.along.length - 1]!,
    words: words(chosen(units.strength, measure)),
    // On a phone the title's unit has to do for both.
    narrowWords: words(chosenDigits(units.strength, measure)),
  };
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
