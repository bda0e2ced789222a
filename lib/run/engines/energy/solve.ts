// Solves a train: steps of the run sheet one after the other, each integrated until the first of its rules is met, to the
// solver's tolerance and never before.

import { roomForRows } from '../../row-room.js';
import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import type { IntegrationEnd, StepView } from '../../../numerics/stiff/integrate.js';
import type { FallingEvent } from '../../../numerics/stiff/stiff-system.js';
import { chargeAmounts, DRY_SHARE } from '../../charge.js';
import { metBefore } from '../equal-flows/endings.js';
import { bracketedRoot } from '../../../numerics/root.js';
import { RuleWatch } from '../../rule-watch.js';
import { FIRST_VAPOUR } from '../../stop-rules.js';
import type { Ending } from '../../solution.js';
import { Between } from './between.js';
import { checkTrainProblem } from './check.js';
import { type Controls, controlsOf } from './controls.js';
import { endingOf } from './endings.js';
import type { TrainEquations } from './equations.js';
import { LAMBDA0, trainOf } from './holders.js';
import { JarFilling } from '../../jars.js';
import type { Outputs } from '../../problem.js';
import type { TrainProblem, TrainStep } from './problem.js';
import { TrainRows } from './rows.js';
import type { TrainSolution } from './solution.js';
import { startingState } from './start.js';
import { trainTables } from './tables.js';
import { TrainState } from './train-state.js';
import { ratedPlates } from './wet-efficiency.js';
import { trainWorkspace } from './workspace.js';

const DEFAULT_TOLERANCE = 1e-5;
/** A step ends as one that goes on without end when its heat could have boiled the charge up so many times. */
const LONGEST_STEP = 5;
/** Two moments closer than this share of the time are the same row. */
const SAME_MOMENT = 1e-9;
const FIRST_STEP_s = 0.05;

/**
 * Runs a still as it stands, from lighting up or from the first vapour, through its run sheet.
 *
 * Equation: balances of ethanol, water and energy on kettle, doublers, plates, head and condensers; docs/theory/train.md.
 * @param problem Still, charges, heat, run sheet, outputs and jars as plain data; see TrainProblem for units and ranges.
 * @param system Equilibrium and enthalpies of ethanol and water, made once by createEthanolWater() and used again.
 * @returns Columns of the run, its jars, how it ended and what it cost; arrays are the caller's.
 * @throws InputError when a part of the problem cannot be used or a stop rule lies beyond any run: more than the charge holds, hotter than boiling water, a strength above 100 %.
 */
export function solveTrain(problem: TrainProblem, system: EthanolWater): TrainSolution {
  checkTrainProblem(problem, system);
  const { still, sheet, outputs, power_W, activity } = problem;
  const train = trainOf(problem);
  const { holders } = train;
  const pressures = [...holders.map((holder) => holder.pressure_Pa), train.drum.pressure_Pa];
  const tables = trainTables(system.enthalpy(activity), pressures, problem.energy === 'constantMolarOverflow');
  const charged = allCharged(problem);
  const tolerance = problem.tolerance ?? DEFAULT_TOLERANCE;
  const controls = controlsOf(sheet[0]!, still, power_W);
  const { equations, methods, store } = trainWorkspace(system, train, tables, tolerance, controls);
  const headSlice = system.curve(activity).at(holders.at(-1)!.pressure_Pa);
  const moment = new TrainState(equations, train, headSlice);
  moment.chargeEthanol_mol = charged.ethanol_mol;
  // A bare pot's spout only ever falls; with plates, doublers or a condenser it first climbs.
  const watch = new RuleWatch(sheet, 1);
  const plates = ratedPlates(still, train, headSlice);
  const rows = new TrainRows(holders.length, roomForRows(sheet), store);
  const probe = new Float64Array(equations.size);
  const between = new Between(equations.streams);
  const stepStarts: number[] = [];
  let state = startingState(problem, train, tables);
  equations.kept.begin(state);
  const jars = new JarFilling(problem.jars ?? { kind: 'perStep' }, moment, equations.size);
  let time_s = 0;
  let supplied_J = 0;
  let nextOutput = outputs.kind === 'every' ? outputs.interval_s : Infinity;
  let ending: Ending | undefined;
  let fired = 0;
  let firstVapour_s: number | null = null;
  let stepFrom_s = 0;

  moment.drumStart_J = moment.look(0, state).drumEnergy_J;
  rows.add(moment, 0);
  if (moment.vapourShare > FIRST_VAPOUR) firstVapour_s = 0;
  for (const [index, step] of sheet.entries()) {
    stepStarts.push(rows.rows - 1);
    equations.controls = controlsOf(step, still, power_W);
    stepFrom_s = time_s;
    jars.begin(index, time_s, state);
    state = withIntegralAt(state, equations);
    moment.look(time_s, state).beginStep();
    ratePlates();
    rows.replaceLast(moment, supplied_J);
    watch.look(moment);
    const met = watch.met(index, moment);
    if (met >= 0) {
      ending = metBefore(index, step, met);
      continue;
    }
    const rules = watch.rules(index);
    const dry_mol = DRY_SHARE * charged.kettle_mol;
    const falling: FallingEvent[] = [
      ...rules.map((rule) => ({ value: (s: number, u: Float64Array) => rule.margin(moment.look(s, u)) })),
      { value: (_s: number, u: Float64Array) => u[2]! + u[3]! - dry_mol },
    ];
    if (plates !== null) falling.push({ value: (s, u) => plates.margin(moment.look(s, u)) });
    const longest_s = longest(step, equations.controls, charged.kettle_mol);
    const fits_s = room_s(outputs, roomForRows(sheet), time_s);
    const to_s = time_s + Math.min(longest_s, fits_s);
    const integrate = (): IntegrationEnd =>
      methods.run(moment.look(time_s, state), {
        from: time_s,
        to: to_s,
        start: state,
        firstStep: FIRST_STEP_s,
        events: falling,
        onStep: record,
        leave: () => rows.full,
      });
    let end = integrate();
    while (end.event > rules.length && end.s < to_s) {
      time_s = end.s;
      state = Float64Array.from(end.state);
      const tied = falling.findIndex(
        (event, i) => (rules[i]?.armed ?? i === rules.length) && event.value(time_s, state) <= 0,
      );
      if (tied >= 0) {
        end = { ...end, event: tied };
        break;
      }
      ratePlates();
      end = integrate();
    }
    if (end.event > rules.length) end = { ...end, kind: 'reachedEnd', event: -1 };
    supplied_J += equations.controls.power_W * (end.s - stepFrom_s);
    time_s = end.s;
    state = Float64Array.from(end.state);
    addUnlessSame();
    fired += end.kind === 'event' ? 1 : 0;
    ending = endingOf(
      end,
      index,
      step,
      rules.map((rule) => rule.armed),
      fits_s < longest_s || rows.full,
    );
    if (ending.kind !== 'stopped') break;
  }
  jars.close(time_s, state);
  const stages = holders.filter((holder) => holder.kind === 'plate' || holder.kind === 'packing').length;
  const first = holders.findIndex((holder) => holder.kind === 'plate' || holder.kind === 'packing');
  return {
    ending: ending!,
    statistics: { events: fired, ...methods.counts() },
    rows: rows.rows,
    plates: stages,
    stepStarts,
    holders: holders.map(({ kind, number, pressure_Pa }) => ({ kind, number, pressure_Pa })),
    jars: jars.jars,
    firstVapour_s,
    ...rows.columns(Math.max(0, first), stages),
  };

  /** Plates work as well as what they hold and the heat of the step let them. */
  function ratePlates(): void {
    if (plates === null) return;
    equations.workWith(plates.rate(moment.look(time_s, state), equations.controls), state);
    moment.look(time_s, state);
  }

  function record(step: StepView): void {
    watch.look(moment.look(step.to, step.end));
    if (firstVapour_s === null && moment.vapourShare > FIRST_VAPOUR) firstVapour_s = vapourFrom(step);
    if (outputs.kind === 'perStep') {
      if (rows.full) return;
      for (let p = 1; p < outputs.points; p++) addAt(step, step.from + (p / outputs.points) * (step.to - step.from));
      rows.add(moment.look(step.to, step.end), suppliedAt(step.to));
    } else {
      for (; nextOutput <= step.to * (1 + SAME_MOMENT) && !rows.full; nextOutput += outputs.interval_s)
        addAt(step, nextOutput);
    }
    jars.watch(step);
  }

  /** When the vapour reached the condenser in a step at whose end it has. */
  function vapourFrom(step: StepView): number {
    const beyond = (s: number): number => {
      between.state(step, s, probe, equations.filling);
      return moment.look(s, probe).vapourShare - FIRST_VAPOUR;
    };
    let at = step.to;
    if (beyond(step.from) >= 0) at = step.from;
    else if (beyond(step.to) > 0) at = bracketedRoot(beyond, step.from, step.to);
    moment.look(step.to, step.end);
    return at;
  }

  function suppliedAt(s: number): number {
    return supplied_J + equations.controls.power_W * (s - stepFrom_s);
  }

  function addAt(step: StepView, s: number): void {
    between.state(step, s, probe, equations.filling);
    rows.add(moment.look(s, probe), suppliedAt(s));
  }

  function addUnlessSame(): void {
    moment.look(time_s, state);
    if (time_s <= rows.lastTime_s * (1 + SAME_MOMENT)) rows.replaceLast(moment, supplied_J);
    else rows.add(moment, supplied_J);
  }
}

/** A hold begins with its integral at nothing, unless the step before was one too. */
function withIntegralAt(state: Float64Array, equations: TrainEquations): Float64Array {
  const out = Float64Array.from(state);
  if (equations.controls.hold === null) out[equations.drumAt] = 0;
  return out;
}

function allCharged({ charge, doublerCharges }: TrainProblem): { ethanol_mol: number; kettle_mol: number } {
  const kettle = chargeAmounts(charge);
  const all = [kettle, ...doublerCharges.map((doubler) => chargeAmounts(doubler.charge))];
  return {
    ethanol_mol: all.reduce((sum, amounts) => sum + amounts.ethanol_mol, 0),
    kettle_mol: kettle.ethanol_mol + kettle.water_mol,
  };
}

/** Time for which rows at the asked interval still fit into a solution, s. */
function room_s(outputs: Outputs, room: number, time_s: number): number {
  return outputs.kind === 'every' ? Math.max(1, room * outputs.interval_s - time_s) : Infinity;
}

/** Longest a step may go on, s. */
function longest(step: TrainStep, { power_W }: Controls, charge_mol: number): number {
  const clocks = step.until.map((rule) => (rule.kind === 'duration' ? 1.01 * rule.seconds : 0));
  return Math.max((LONGEST_STEP * charge_mol * LAMBDA0) / Math.max(power_W, 1), ...clocks);
}
