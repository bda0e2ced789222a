// Faults that were once seen in pictures, each as the rows that showed it: every name stands, apart from the others, off
// the curves, inside the frame, nearest to its own curve.

import { describe, expect, it } from 'vitest';
import { namesOfPanel } from '../../../explorer/components/figure/names/in-plot.js';
import { spreadEnds } from '../../../explorer/components/figure/names/margin-names.js';
import { placeNames } from '../../../explorer/components/figure/names/place-names.js';
import type { PlacedName } from '../../../explorer/components/figure/names/wanted.js';
import { toPixels } from '../../../explorer/components/figure/pixels.js';
import { boilingDiagram } from '../../../explorer/figures/boiling-diagram.js';
import type { Drawing, FigureSize } from '../../../explorer/figures/figure.js';
import { alongClock, type ClockCurve } from '../../../explorer/figures/run/along-clock.js';
import { ofRuns } from '../../../explorer/figures/run/of-runs.js';
import { runFigure } from '../../../explorer/figures/run/run-figure.js';
import type { RunFigureRows } from '../../../explorer/rows/run.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { boiling, history, stills } from './cases.js';
import { crosses, distance, overlap } from './exact-geometry.js';
import { inventedRun } from './invented-rows.js';

const units = unitSystems.metric;
const wide: FigureSize = { width: 608, layout: 'wide' };
const narrow: FigureSize = { width: 322, layout: 'narrow' };
/** Some px a letter at 15 px. */
const measure = (text: string): number => 7 * text.length;

const hours = [0, 2, 2.1, 4.5].map((h) => 3600 * h);
const curve = (key: string, values: readonly number[], weight: ClockCurve['weight'] = 'second'): ClockCurve => ({
  key,
  label: key,
  weight,
  along: hours,
  values,
});

/** Heat into a kettle with what the condenser takes just under it, and the steps of a sheet, one of them short. */
const heat = (power_W: number, condenser_W = 0.95 * power_W): RunFigureRows =>
  alongClock({
    since: 'since lighting up',
    panels: [
      {
        key: 'heat',
        title: 'Heat',
        quantity: units.power,
        height: 92,
        takesIn: [0],
        curves: [
          curve(
            'into the kettle',
            hours.map(() => power_W),
            'result',
          ),
          curve('condenser', [0, 0, condenser_W, condenser_W]),
          curve('lost', [0, 0.1 * power_W, 0.1 * power_W, 0.1 * power_W], 'third'),
        ],
        levels: [],
      },
      {
        key: 'flow',
        title: 'At the spout',
        quantity: units.power,
        height: 110,
        takesIn: [0, 1500],
        curves: [{ ...curve('spout runs', [0, 0, 900, 800], 'result') }],
        levels: [],
      },
    ],
    phases: [
      { from: 0, to: 7200, label: 'heating up' },
      { from: 7200, to: 7600, label: 'all back' },
      { from: 7600, to: 16_200, label: '3 : 1' },
    ],
    phasesIn: { panel: 'flow', along: 'top' },
    warnings: [{ key: 'flooding', panel: 'heat', at: 7300, value: power_W, words: 'plates flood' }],
    units,
  });

describe.each([wide, narrow])('on a $layout page', (size) => {
  it('‘plates flood’ stands in its panel and not on the title, also at 30 kW', () => {
    for (const power_W of [5500, 30_000]) sound(runFigure(heat(power_W), size), size, ['plates flood']);
  });

  it('‘into the kettle’ and ‘condenser’ each stand at their own of two lines', () => {
    sound(runFigure(heat(5500), size), size, ['into the kettle', 'condenser', 'lost']);
    sound(runFigure(heat(5500, 5400), size), size, ['into the kettle']);
  });

  it('a bracket shorter than its words keeps them', () => {
    sound(runFigure(heat(5500), size), size, ['heating up', 'all back', '3 : 1', 'spout runs']);
  });

  it('‘azeotrope boils at’ does not lie on the head’s curve', () => {
    sound(runFigure(ofRuns(history), size), size, ['12 plates', '4 plates, before']);
  });

  it('‘liquid that boils’ is close to its curve, and the head’s name free of the azeotrope’s', () => {
    const placed = sound(boilingDiagram(boiling, size), size, ['liquid that boils', 'vapour that condenses', 'head']);
    expect(placed.find(({ name }) => name.key === 'bubble')!.leader).toBeNull();
  });

  it('‘with water in it’ is nearer to its own curve than to the pot’s', () => {
    const runs = [
      { ...stills.runs[0]!, label: 'with the doubler' },
      { ...stills.runs[1]!, label: 'with water in it', run: inventedRun(0.6, 0.5, 12) },
      { ...stills.runs[2]!, label: 'bare pot', run: inventedRun(0.57, 0.5, 13) },
    ];
    sound(runFigure(ofRuns({ ...stills, threshold: null, runs }), size), size, [
      'with the doubler',
      'with water in it',
      'bare pot',
    ]);
  });
});

/** Checks all names of a drawing; `wanted` are among those in the plot or at the ends of its curves. */
function sound(drawing: Drawing, size: FigureSize, wanted: readonly string[]): PlacedName[] {
  const said: string[] = [];
  const all: PlacedName[] = [];
  for (const panel of drawing.panels) {
    const x = toPixels(drawing.x, size.width, 'right');
    const y = toPixels(panel.y, panel.height, 'up');
    const context = {
      x,
      y,
      width: size.width,
      height: panel.height,
      clip: '',
      hatch: '',
      wide: size.layout === 'wide',
    };
    const named = namesOfPanel(panel, context, null, measure);
    const ends = spreadEnds(named.ends, named.crossing);
    const inPlot = named.ends.flatMap(({ key, inPlot: name }) => (ends.has(key) ? [] : [name]));
    said.push(...named.ends.filter(({ key }) => ends.has(key)).map(({ inPlot: { text } }) => text));
    const placed = placeNames([...named.plot, ...inPlot], named.around);
    const lines = panel.marks.flatMap((mark) =>
      mark.kind === 'curve'
        ? [{ key: mark.key, line: Array.from(mark.x, (at, i) => ({ x: x(at), y: y(mark.y[i]!) })) }]
        : [],
    );
    placed.forEach(({ name, box, leader }, i) => {
      said.push(name.text);
      expect([box.left >= 0, box.right <= size.width, box.top >= 0, box.bottom <= panel.height]).toEqual([
        true,
        true,
        true,
        true,
      ]);
      for (const other of placed.slice(i + 1)) expect(overlap(box, other.box)).toBe(false);
      for (const { line } of lines) expect(crosses(line, box)).toBe(false);
      const ofCurve = panel.names.some(({ key, of }) => key === name.key && of.kind === 'curve');
      const own = ofCurve ? lines.find(({ key }) => key === name.key) : undefined;
      if (own === undefined || leader !== null) return;
      for (const { line } of lines) expect(distance(own.line, box)).toBeLessThanOrEqual(distance(line, box));
    });
    all.push(...placed);
  }
  expect(said).toEqual(expect.arrayContaining([...wanted]));
  return all;
}
