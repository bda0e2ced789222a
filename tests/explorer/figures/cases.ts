// The figures the gallery shows and the snapshots hold: a few named cases of invented rows.

import { courseCases } from './course-cases.js';
import { profileCases } from './profile-cases.js';
import { measuredPoints } from '../../../explorer/figures/plots/measured-points.js';
import { azeotropeDrift } from '../../../explorer/figures/plots/azeotrope-drift.js';
import { boilingDiagram } from '../../../explorer/figures/boiling-diagram.js';
import type { Figure } from '../../../explorer/figures/figure.js';
import { lastCorner } from '../../../explorer/figures/last-corner.js';
import { modelsOver, vapourPointsOver } from '../../../explorer/figures/laid-over.js';
import type { BoilingDiagramRows, StaircaseDiagramRows } from '../../../explorer/rows/equilibrium.js';
import type { MeasuredPointsRows } from '../../../explorer/rows/measured.js';
import type { DriftRows } from '../../../explorer/rows/drift.js';
import type { NamedRun, RunRows, RunsDrawn } from '../../../explorer/rows/run.js';
import { ofRuns } from '../../../explorer/figures/run/of-runs.js';
import { runFigure } from '../../../explorer/figures/run/run-figure.js';
import { xyDiagram } from '../../../explorer/figures/xy-diagram.js';
import { measuredAzeotropeRows, measuredRows } from '../../../explorer/state/measured-rows.js';
import {
  azeotrope,
  curve,
  inkRun,
  inventedBoiling,
  inventedRun,
  inventedStrength,
  inventedVapour,
  pencilRun,
  raoult,
  staircase,
  units,
} from './invented-rows.js';

/** A figure with its rows, its type forgotten so that cases stand in one list. */
export interface Case {
  readonly name: string;
  readonly figure: Figure<never>;
  readonly rows: unknown;
  readonly pair: boolean;
  readonly pencils: number;
}

const kettle = 0.031;

export const history: RunsDrawn = {
  panels: ['strength', 'temperature'],
  runs: [inkRun, pencilRun],
  azeotrope,
  along: 'volume',
  measure: 0.9,
  threshold: null,
  strengthFrom: 0.5,
  units,
};

export const steps: StaircaseDiagramRows = {
  curve,
  raoult: null,
  staircase: staircase(kettle, 30),
  operatingLine: null,
  kettleStrength: 0.095,
  azeotrope,
  strengthScale: [0.93, 0.94, 0.95, 0.96, 0.97].map((strength) => ({
    strength,
    moleFraction: strength / (3.25 - 2.25 * strength),
  })),
  units,
};

const line = { slope: 0.75, intercept: 0.21, label: 'reflux 3 : 1' };

export const stepsAtReflux: StaircaseDiagramRows = {
  ...steps,
  raoult,
  operatingLine: line,
  staircase: staircase(0.25, 5, line),
  kettleStrength: inventedStrength(0.25),
};

export const boiling: BoilingDiagramRows = {
  curve,
  points: [
    { label: 'kettle', liquidMoleFraction: kettle, vapourMoleFraction: inventedVapour(kettle), temperature_K: 0 },
    { label: 'head', liquidMoleFraction: 0.7, vapourMoleFraction: inventedVapour(0.7), temperature_K: 0 },
  ].map((point) => ({
    ...point,
    temperature_K: inventedBoiling(point.liquidMoleFraction),
  })),
  azeotrope,
  units,
};

const still = (label: string, shortLabel: string, weight: 'result' | 'second' | 'third', run: RunRows): NamedRun => ({
  label,
  shortLabel,
  hand: 'ink',
  weight,
  run,
});

export const stills: RunsDrawn = {
  panels: ['strength'],
  runs: [
    still('plated column', 'column', 'result', inventedRun(0.93, 5, 11)),
    still('one doubler', 'doubler', 'second', inventedRun(0.8, 3, 12)),
    still('bare pot', 'pot', 'third', inventedRun(0.57, 0.5, 13)),
  ],
  along: 'volume',
  azeotrope,
  measure: null,
  threshold: 0.8,
  strengthFrom: null,
  units,
};

/** An invented drift that ends at 12 kPa and passes 0.9 at 100 kPa. */
export const drift: DriftRows = {
  line: Array.from({ length: 60 }, (_, i) => {
    const pressure_Pa = 12_000 * (2e6 / 12_000) ** (i / 59);
    const moleFraction = 0.84 + 0.16 * (12_000 / pressure_Pa) ** 0.463;
    const error = 0.002 + 1e-9 * pressure_Pa;
    const [strength, temperature_K] = [inventedStrength(moleFraction), 300 + 23 * Math.log(pressure_Pa / 10_000)];
    return { pressure_Pa, moleFraction, strength, temperature_K, error, extrapolated: pressure_Pa > 1e6 };
  }),
  end_Pa: 12_000,
  measured: measuredAzeotropeRows,
  at: 101_325,
  strengthScale: steps.strengthScale,
  pressure: units.pressure,
  units,
};

const models = [
  { label: 'another', curve, azeotrope: { ...azeotrope, moleFraction: 0.885, strength: 0.969 } },
  { label: 'ideal', curve: raoult, azeotrope: null },
];
const overCorner = vapourPointsOver(modelsOver(lastCorner));
const cornerRows = { under: { under: steps, models }, measured: measuredRows };

const measured: MeasuredPointsRows = {
  curve,
  sets: measuredRows.map((set) => ({
    ...set,
    difference: Array.from(set.vapourMoleFraction, (y, i) => y - inventedVapour(set.liquidMoleFraction[i]!)),
  })),
};

export const cases: readonly Case[] = [
  { name: 'run history', figure: runFigure, rows: ofRuns(history), pair: false, pencils: 1 },
  { name: 'x-y diagram', figure: xyDiagram, rows: steps, pair: true, pencils: -1 },
  { name: 'last corner', figure: lastCorner, rows: steps, pair: true, pencils: -1 },
  { name: 'x-y diagram at reflux 3', figure: xyDiagram, rows: stepsAtReflux, pair: true, pencils: -1 },
  { name: 'boiling diagram', figure: boilingDiagram, rows: boiling, pair: true, pencils: -1 },
  { name: 'strength by still', figure: runFigure, rows: ofRuns(stills), pair: false, pencils: -1 },
  {
    name: 'a panel a still',
    figure: runFigure,
    rows: ofRuns({ ...stills, panels: ['each'] }),
    pair: false,
    pencils: -1,
  },
  { name: 'measured points', figure: measuredPoints, rows: measured, pair: false, pencils: -1 },
  { name: 'azeotrope against pressure', figure: azeotropeDrift, rows: drift, pair: false, pencils: -1 },
  { name: 'last corner laid over', figure: overCorner, rows: cornerRows, pair: true, pencils: -1 },
  ...courseCases,
  ...profileCases,
] as readonly Case[];
