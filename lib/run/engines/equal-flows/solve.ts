// Solves a column problem: steps of the run sheet one after the other, each integrated until the first of
// its rules is met, to the solver's tolerance and never before.

import { roomForRows } from '../../row-room.js';
import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import type { StepView } from '../../../numerics/stiff/integrate.js';
import { DRY_SHARE } from '../../charge.js';
import type { ColumnProblem, RunStep } from '../../problem.js';
import type { Ending, RunSolution } from '../../solution.js';
import { checkColumnProblem } from './check.js';
import { ColumnState } from './column-state.js';
import { columnSystem, type ColumnSystem } from './column-system.js';
import { endingOf, metBefore } from './endings.js';
import { ColumnRows } from './rows.js';
import { RuleWatch } from '../../rule-watch.js';
import { beginStep, startingState } from './start.js';
import { workspace } from './workspace.js';

/** A step that draws nothing has settled before the charge has been boiled up so many times. */
const LONGEST_HOLD = 10;
const DEFAULT_TOLERANCE = 1e-6;
/** Attempts a run may cost, for each unknown: some second on the machine of docs/benchmarks.md, and the same steps on every machine. Source: this project's choice. */
const MOST_WORK = 20e6;
/** Two moments closer than this share of the time are the same row. */
const SAME_MOMENT = 1e-9;

/**
 * Runs a plated column in time, from the first vapour to the end of its run sheet.
 *
 * Equation: component balances on kettle, plates and reflux condenser at constant molar overflow with Murphree vapour
 * efficiency, see docs/theory/column.md.
 * @param problem Charge, column, heat, run sheet and outputs as plain data; see ColumnProblem for units and ranges.
 * @param system Equilibrium of ethanol and water, made once by createEthanolWater() and used again.
 * @returns Columns of the run, how it ended and what it cost; arrays are the caller's.
 * @throws InputError when a part of the problem cannot be used or a stop rule lies beyond any run: more than the charge holds, hotter than boiling water, a strength above 100 %.
 * @example solveColumn({ kind: 'column', charge: { kind: 'volume', volume_m3: 0.12, strength: 0.095 }, column: { plates: 12, efficiency: 0.65, plateHoldUp_mol: 10, condenserHoldUp_mol: 5, headPressure_Pa: 101325, plateDrop_Pa: 0 }, activity: 'raoult', heat: { kind: 'boilUp', rate_mol_s: 0.13 }, sheet: [{ reflux: 'total', until: [{ kind: 'duration', seconds: 1200 }] }], outputs: { kind: 'every', interval_s: 60 } }, createEthanolWater()).time_s.at(-1) // → 1200
 * Source: this project, docs/theory/column.md.
 */
export function solveColumn(problem: ColumnProblem, system: EthanolWater): RunSolution {
  checkColumnProblem(problem, system);
  const column = columnSystem(problem, system.curve(problem.activity));
  const { layout } = column;
  const { outputs } = problem;
  const { integrator, rows: store } = workspace(system, column, problem.tolerance ?? DEFAULT_TOLERANCE);
  const counted = integrator.counts;
  const moment = new ColumnState(column);
  const watch = new RuleWatch(problem.sheet, layout.plates);
  const rows = new ColumnRows(layout.plates, roomForRows(problem.sheet), store);
  const probe = new Float64Array(layout.size);
  const stepStarts: number[] = [];
  let state = startingState(column, problem.start);
  let boiledUp = 0;
  let nextOutput = outputs.kind === 'every' ? outputs.interval_s : Infinity;
  let ending: Ending | undefined;
  let events = 0;

  rows.add(moment.look(0, state));
  for (const [index, step] of problem.sheet.entries()) {
    stepStarts.push(rows.rows - 1);
    beginStep(column, step, boiledUp);
    moment.look(boiledUp, state).beginStep();
    rows.replaceLast(moment);
    watch.look(moment);
    const met = watch.met(index, moment);
    if (met >= 0) {
      ending = metBefore(index, step, met);
      continue;
    }
    const rules = watch.rules(index);
    const end = integrator.run({
      from: boiledUp,
      to: boiledUp + longest(column, step),
      start: state,
      firstStep: firstStep(column),
      events: rules.map((rule) => ({ value: (b, u) => rule.margin(moment.look(b, u)) })),
      onStep: record,
      leave: () => rows.full,
      maxSteps: attemptsLeft(),
    });
    boiledUp = end.s;
    state = Float64Array.from(end.state);
    addUnlessSame(moment.look(boiledUp, state));
    events += end.kind === 'event' ? 1 : 0;
    ending = endingOf(
      end,
      index,
      step,
      rules.map((rule) => rule.armed),
      rows.full,
    );
    if (ending.kind !== 'stopped') break;
  }
  const counts = integrator.counts;
  return {
    ending: ending!,
    statistics: {
      acceptedSteps: counts.accepted - counted.accepted,
      rejectedSteps: counts.rejected - counted.rejected,
      rightHandSides: counts.rightHandSides - counted.rightHandSides,
      jacobians: counts.jacobians - counted.jacobians,
      factorisations: counts.factorisations - counted.factorisations,
      events,
    },
    rows: rows.rows,
    plates: layout.plates,
    stepStarts,
    ...rows.columns(),
  };

  /** Attempts the run may still make. */
  function attemptsLeft(): number {
    const { accepted, rejected } = integrator.counts;
    return Math.max(
      0,
      Math.ceil(MOST_WORK / layout.size) - (accepted + rejected - counted.accepted - counted.rejected),
    );
  }

  function record(step: StepView): void {
    watch.look(moment.look(step.to, step.end));
    if (outputs.kind === 'perStep') {
      for (let p = 1; p < outputs.points; p++) addAt(step, step.from + (p / outputs.points) * (step.to - step.from));
      rows.add(moment.look(step.to, step.end));
      return;
    }
    const reached_s = step.end[layout.time]!;
    for (; nextOutput <= reached_s * (1 + SAME_MOMENT) && !rows.full; nextOutput += outputs.interval_s) {
      addAt(step, momentOfTime(step, layout.time, nextOutput));
    }
  }

  function addAt(step: StepView, boiledUp_mol: number): void {
    step.state(boiledUp_mol, probe);
    rows.add(moment.look(boiledUp_mol, probe));
  }

  function addUnlessSame(end: ColumnState): void {
    if (end.time_s <= rows.lastTime_s * (1 + SAME_MOMENT)) rows.replaceLast(end);
    else rows.add(end);
  }
}

/** Vapour that can be raised before the kettle is dry, or before a hold has settled and its clock has run out, mol. */
function longest(column: ColumnSystem, step: RunStep): number {
  const { flows, chargeTotal_mol, heat, kettleSlice } = column;
  if (flows.drawn > 0) return Math.max(0, flows.kettleStart_mol - DRY_SHARE * chargeTotal_mol) / flows.drawn;
  const leastHeat = kettleSlice.latentHeat.reduce((least, value, i) => (i % 4 === 0 ? Math.min(least, value) : least));
  const quickest = heat.kind === 'power' ? heat.power_W / leastHeat : heat.rate_mol_s;
  const clocks = step.until.map((rule) => (rule.kind === 'duration' ? 1.01 * rule.seconds * quickest : 0));
  return Math.max(LONGEST_HOLD * chargeTotal_mol, ...clocks);
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
