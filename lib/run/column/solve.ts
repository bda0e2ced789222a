// Solves a column problem: steps of the run sheet one after the other, each integrated until the first of
// its rules is met, which is located exactly.

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { readVapour } from '../../equilibrium/slice-tables.js';
import { InputError } from '../../errors.js';
import { createIntegrator, type IntegrationEnd, type StepView } from '../../numerics/stiff/integrate.js';
import { DRY_SHARE } from '../charge.js';
import type { ColumnProblem, RunStep } from '../problem.js';
import type { Ending, RunSolution } from '../solution.js';
import { armsFirst, describeRule, stopMargin } from '../stop-rules.js';
import { checkColumnProblem } from './check.js';
import { ColumnState } from './column-state.js';
import { columnSystem, type ColumnSystem, kettleAmount, returnedShare } from './column-system.js';
import { columnEquations } from './equations.js';
import { ColumnRows, MOST_ROWS } from './rows.js';

/** A step that draws nothing has settled long before the charge has been boiled up so many times. */
const LONGEST_HOLD = 100;
const DEFAULT_TOLERANCE = 1e-6;
/** Two moments closer than this are the same row. */
const CLOCK_ROUNDING = 1e-12;

/**
 * Runs a plated column in time, from the first vapour to the end of its run sheet.
 *
 * Equation: component balances on kettle, plates and reflux condenser at constant molar overflow with Murphree vapour
 * efficiency, see docs/theory/column.md.
 * @param problem Charge, column, heat, run sheet and outputs as plain data; see ColumnProblem for units and ranges.
 * @param system Equilibrium of ethanol and water, made once by createEthanolWater() and used again.
 * @returns Columns of the run, how it ended and what it cost; arrays are the caller's.
 * @throws InputError when a part of the problem cannot be used or a stop rule can never be met.
 * @example solveColumn({ kind: 'column', charge: { kind: 'volume', volume_m3: 0.12, strength: 0.095 }, column: { plates: 12, efficiency: 0.65, plateHoldUp_mol: 10, condenserHoldUp_mol: 5, headPressure_Pa: 101325, plateDrop_Pa: 0 }, activity: 'raoult', heat: { kind: 'boilUp', rate_mol_s: 0.13 }, sheet: [{ reflux: 'total', until: [{ kind: 'duration', seconds: 1200 }] }], outputs: { kind: 'every', interval_s: 60 } }, createEthanolWater()).time_s.at(-1) // → 1200
 * Source: this project, docs/theory/column.md.
 */
export function solveColumn(problem: ColumnProblem, system: EthanolWater): RunSolution {
  checkColumnProblem(problem);
  const column = columnSystem(problem, system.curve(problem.activity));
  const tolerance = problem.tolerance ?? DEFAULT_TOLERANCE;
  const integrator = createIntegrator(columnEquations(column, tolerance));
  const moment = new ColumnState(column);
  const rows = new ColumnRows(column.layout.plates);
  const probe = new Float64Array(column.layout.size);
  let state = startingState(column);
  let boiledUp = 0;
  let nextOutput = problem.outputs.kind === 'every' ? problem.outputs.interval_s : Infinity;
  let ending: Ending | undefined;
  let events = 0;
  const stepStarts: number[] = [];

  rows.add(moment.look(0, state));
  for (const [index, step] of problem.sheet.entries()) {
    stepStarts.push(rows.rows - 1);
    beginStep(column, step, boiledUp);
    moment.look(boiledUp, state).beginStep();
    const margins = step.until.map((rule) => stopMargin(rule));
    const met = margins.findIndex((margin, i) => margin(moment) <= 0 && !(index === 0 && armsFirst(step.until[i]!)));
    if (met < 0) {
      const end = integrator.run({
        from: boiledUp,
        to: boiledUp + longest(column),
        start: state,
        firstStep: firstStep(column),
        events: margins.map((margin) => ({ value: (b, u) => margin(moment.look(b, u)) })),
        onStep: record,
      });
      boiledUp = end.s;
      state = Float64Array.from(end.state);
      moment.look(boiledUp, state);
      if (moment.time_s > rows.lastTime_s * (1 + CLOCK_ROUNDING)) rows.add(moment);
      events += end.kind === 'event' ? 1 : 0;
      ending = endingOf(end, index, step);
    } else {
      ending = endingOf({ kind: 'event', s: boiledUp, state, event: met }, index, step);
    }
    if (ending.kind !== 'stopped') break;
  }
  const { accepted, rejected, ...work } = integrator.counts;
  return {
    ending: ending!,
    statistics: { acceptedSteps: accepted, rejectedSteps: rejected, events, ...work },
    rows: rows.rows,
    plates: column.layout.plates,
    stepStarts,
    ...rows.columns(),
  };

  function record(step: StepView): void {
    const { outputs } = problem;
    if (outputs.kind === 'perStep') {
      for (let p = 1; p < outputs.points; p++) addAt(step, step.from + (p / outputs.points) * (step.to - step.from));
      rows.add(moment.look(step.to, step.end));
      return;
    }
    checkRows(step.end[column.layout.time]!, outputs.interval_s);
    while (nextOutput <= step.end[column.layout.time]! * (1 + CLOCK_ROUNDING)) {
      addAt(step, momentOfTime(step, column.layout.time, nextOutput));
      nextOutput += outputs.interval_s;
    }
  }

  function addAt(step: StepView, boiledUp_mol: number): void {
    step.state(boiledUp_mol, probe);
    rows.add(moment.look(boiledUp_mol, probe));
  }
}

/** Refuses to fill the memory with rows of a run that turns out to last much longer than its outputs suggest. */
function checkRows(time_s: number, interval_s: number): void {
  if (time_s <= MOST_ROWS * interval_s) return;
  throw new InputError({
    argument: 'outputs.interval_s',
    value: interval_s,
    expected: `an interval that gives at most ${String(MOST_ROWS)} rows; this run lasts over ${time_s.toPrecision(3)} s`,
  });
}

/** Everything at the charge's composition, vapours consistent with it. */
function startingState(column: ColumnSystem): Float64Array {
  const { layout, flows } = column;
  const moleFraction = column.chargeEthanol_mol / column.chargeTotal_mol;
  const state = new Float64Array(layout.size);
  state[layout.kettleEthanol] = moleFraction * flows.kettleStart_mol;
  state[layout.condenser] = moleFraction;
  for (let j = 0; j < layout.plates; j++) state[layout.firstLiquid + j * layout.stride] = moleFraction;
  if (layout.firstVapour >= 0) settleVapours(column, moleFraction, state);
  return state;
}

function settleVapours(column: ColumnSystem, moleFraction: number, state: Float64Array): void {
  const { layout, kettleSlice, plateSlices, efficiency } = column;
  let below = readVapour(kettleSlice.alpha, kettleSlice.intervals, moleFraction);
  for (let j = 0; j < layout.plates; j++) {
    const { alpha, intervals } = plateSlices[j]!;
    below += efficiency * (readVapour(alpha, intervals, moleFraction) - below);
    state[layout.firstVapour + j * layout.stride] = below;
  }
}

function beginStep(column: ColumnSystem, step: RunStep, boiledUp_mol: number): void {
  const { flows } = column;
  flows.kettleStart_mol = kettleAmount(flows, boiledUp_mol);
  flows.since_mol = boiledUp_mol;
  flows.returned = returnedShare(step.reflux);
  flows.drawn = 1 - flows.returned;
}

/** Vapour that can be raised before the kettle is dry, or before a hold has certainly settled, mol. */
function longest(column: ColumnSystem): number {
  const { flows, chargeTotal_mol } = column;
  if (flows.drawn === 0) return LONGEST_HOLD * chargeTotal_mol;
  return Math.max(
    Number.EPSILON * chargeTotal_mol,
    (flows.kettleStart_mol - DRY_SHARE * chargeTotal_mol) / flows.drawn,
  );
}

/** Some fraction of the vapour that renews the fastest holder. */
function firstStep(column: ColumnSystem): number {
  const held = column.layout.plates > 0 ? [column.plateHoldUp_mol] : [];
  return 0.02 * Math.min(column.condenserHoldUp_mol, ...held);
}

/** The boiled-up amount inside a step at which the clock shows a time; the clock rises almost evenly. */
function momentOfTime(step: StepView, clock: number, time_s: number): number {
  const { from, to } = step;
  const begin = step.start[clock]!;
  const end = step.end[clock]!;
  if (end <= begin) return to;
  const rate = (end - begin) / (to - from);
  let b = from + (time_s - begin) / rate;
  for (let i = 0; i < 8; i++) {
    const miss = step.component(b, clock) - time_s;
    b = Math.min(to, Math.max(from, b - miss / rate));
    if (Math.abs(miss) <= 1e-12 * end) break;
  }
  return b;
}

function endingOf(end: IntegrationEnd, index: number, step: RunStep): Ending {
  switch (end.kind) {
    case 'event': {
      const rule = step.until[end.event]!;
      return { kind: 'stopped', step: index, rule, message: `step ${index + 1} ended: ${describeRule(rule)}` };
    }
    case 'reachedEnd':
      return step.reflux === 'total'
        ? {
            kind: 'neverMet',
            step: index,
            message: `step ${index + 1} settled at total reflux and none of its rules was met`,
          }
        : {
            kind: 'kettleDry',
            step: index,
            message: `the kettle ran dry in step ${index + 1} before any of its rules was met`,
          };
    case 'stepLimit':
    case 'stepTooSmall':
      return {
        kind: end.kind,
        step: index,
        message: `the solver stopped in step ${index + 1} after ${end.s.toFixed(1)} mol boiled up (${end.kind})`,
      };
  }
}
