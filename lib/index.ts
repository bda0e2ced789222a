// The public door: named re-exports, nothing else.
export { type InputCode, InputError, type InputFault, type Outcome, type PlainInputError } from './errors.js';
export { foundIn } from './outcome.js';
export { inputErrorFromPlain, isPlainInputError } from './plain-error.js';

// strength, substances, units
export { densityOfMixture } from './mixture/density.js';
export { trueStrengthFromReading, type HydrometerReading, type TrueStrength } from './mixture/hydrometer.js';
export {
  densityInAir,
  massFractionFromProof,
  proofFromMassFraction,
  proofFromStrength,
  proofGallonsFromPureAlcohol,
  strengthFromProof,
} from './mixture/proof.js';
export {
  massFractionFromMoleFraction,
  massFractionFromStrength,
  moleFractionFromMassFraction,
  moleFractionFromStrength,
  strengthFromMassFraction,
  strengthFromMoleFraction,
} from './mixture/strength.js';
export { amountsFromVolume, contraction, pureAlcoholVolume, volumeAt20C, type Amounts } from './mixture/volume.js';
export { liquidEnthalpy, liquidHeatCapacity, vapourEnthalpy } from './mixture/enthalpy.js';
export type { Substance } from './substances/substance.js';
export { ethanol } from './substances/ethanol.js';
export { water } from './substances/water.js';
export { fromSI, toSI, unitsOf, type UnitQuantity, type UnitSymbol } from './units/units.js';
export { altitudeAtPressure, pressureAtAltitude } from './still/altitude.js';
export type {
  CubicMetre,
  JoulePerMole,
  Kelvin,
  KelvinDifference,
  Kilogram,
  KilogramPerCubicMetre,
  MassFraction,
  Mole,
  MoleFraction,
  Pascal,
  ProofUS,
  Second,
  VolumeFraction20C,
  Watt,
} from './units/quantities.js';

// equilibrium, simple still, stages
export type { ActivityModel, ActivityState } from './mixture/activity/activity-model.js';
export { ACTIVITY_NAMES, activityModel, type ActivityName, DEFAULT_ACTIVITY } from './mixture/activity/registry.js';
export { azeotrope, type Azeotrope } from './equilibrium/azeotrope.js';
export { bubblePoint, type BubblePoint } from './equilibrium/bubble-point.js';
export { compileCurve, COMPILED_RANGE_PA, type CompileOptions } from './equilibrium/compile-curve.js';
export { dewPoint, type DewPoint } from './equilibrium/dew-point.js';
export {
  latentHeatOnSlice,
  temperatureOnSlice,
  vapourOnSlice,
  type CurvePoint,
  type CurveSlice,
  type EquilibriumCurve,
} from './equilibrium/equilibrium-curve.js';
export { createEthanolWater, type EthanolWater } from './equilibrium/ethanol-water.js';
export { relativeVolatility } from './equilibrium/relative-volatility.js';
export { chargeAmounts } from './run/charge.js';
export { rayleighLeft, type RayleighLeft } from './run/engines/rayleigh/rayleigh-integral.js';
export {
  constantComposition,
  type ConstantComposition,
  type ConstantCompositionQuestion,
  type ConstantCompositionRow,
  type HeldDistillate,
  kettleHeld,
} from './run/steady/constant-composition.js';
export { constantReflux, type ConstantReflux, type ConstantRefluxQuestion } from './run/steady/constant-reflux.js';
export { minimumReflux, type MinimumReflux } from './run/steady/minimum-reflux.js';
export { staircase, type Staircase, type StaircaseQuestion, type StaircaseStep } from './run/steady/staircase.js';
export { stagesAtTotalReflux, type StageCount } from './run/steady/total-reflux.js';

// reference model: heats, vapour, uncertainty, hot liquid
export { excessEnthalpy, excessHeatCapacity } from './mixture/activity/excess-enthalpy.js';
export { densityOfLiquid, excessVolume } from './mixture/hot-density.js';
export type { VapourModel } from './mixture/vapour/vapour-model.js';
export { bubblePressure, type BubblePressure } from './equilibrium/bubble-pressure.js';
export {
  azeotropeUncertainty,
  type AzeotropeUncertainty,
  equilibriumUncertainty,
  type EquilibriumUncertainty,
} from './equilibrium/uncertainty.js';
export { equilibriumUncertaintyOf, type Uncertain } from './equilibrium/uncertainty-of.js';

// runs in time
export { problemFaults, solve, type SolveOptions } from './run/solve.js';
export { type Cancelling, solveAsync, type SolveAsyncOptions } from './run/solve-async.js';
export { heatToBoil } from './run/heat-up.js';
export { warm } from './run/warm.js';
export { MODELS } from './run/engines/registry.js';
export type {
  Charge,
  DoublerCharge,
  EnergyModel,
  AnyProblem,
  EnergyProblem,
  EqualFlowsProblem,
  Heat,
  Hold,
  Jars,
  Model,
  Outputs,
  RayleighProblem,
  Reflux,
  RunProblem,
  RunStep,
  SimplifiedProblem,
  StopRule,
} from './run/problem.js';
export type { CompleteProblem } from './run/complete.js';
export type { HolderKind, RunHolder } from './run/engine.js';
export type { RunObserver } from './run/drive.js';
export type {
  Ending,
  EnergyColumns,
  EnergySolution,
  Jar,
  PlainEnergySolution,
  PlainSolution,
  RunColumns,
  RunFacts,
  RunSolution,
  SolveStatistics,
} from './run/solution.js';
export { runAt, type RunAt, type VesselAt } from './run/readers/at.js';
export { firstToTell, type FirstToTell, type PlateTells, type ToldBy } from './run/readers/first-to-tell.js';
export { type EnergyAccount, energyAccount } from './run/readers/account.js';
export { rowRecords, rowsAsCsv, SERIES, type SeriesName } from './run/readers/records.js';
export { stepSummaries, type StepSummary } from './run/readers/steps.js';
export { overruled, type Overruling } from './run/overrule.js';

// derivatives
export { type RunSensitivities, sensitivities, type Sensitivity } from './run/sensitivity/sensitivities.js';
export type { Slopes } from './run/sensitivity/difference.js';

// many runs
export { sweep, sweepPool, type SweepOptions, type SweepWorkers } from './run/sweep/sweep.js';
export type { SweepAnswer, SweepPool, SweepWatch } from './run/sweep/pool.js';
export type { SweepReading } from './run/sweep/messages.js';
export type { SweepWorker } from './run/sweep/host.js';
export type { RunEnd, SweepReader, SweepReaders } from './run/sweep/readers.js';
export { serveSweep, type SweepPort, type SweepServer } from './run/sweep/serve.js';

export { FLOOD_LIMIT } from './run/limits/column-watches.js';
export type { LimitKind } from './run/limits/watch.js';
export { type Limit, limitsOf } from './run/limits/limits.js';
export type * from './still/still.js';
export { stillFaults } from './still/check.js';
export { descriptionFaults } from './still/check-description.js';
export { completeStill, type Completion, completions, type StillDescription } from './still/describe.js';
export { STILL_PRESETS, type StillPreset } from './still/presets.js';
export { condenserCapacity, waterForDuty } from './still/condensers.js';
export { gaugeOffset } from './still/gauge-offset.js';
export { packingLoad, type PackingLoad } from './still/packing-load.js';
export { plateLoad, type PlateFlows, type PlateLoad } from './still/plate-load.js';
export { diameterForHeat, heatAtFlooding, type Passing } from './still/sizing.js';

// decisions
export { aboveStrength, type AboveStrength } from './craft/above-strength.js';
export { blend, type Blended, type BlendWanted, type Liquid } from './craft/blend.js';
export { carryUncertainty, type Carried } from './craft/carry-uncertainty.js';
export { dilute, type Diluted, type Dilution } from './craft/dilute.js';
export { flashPoint } from './craft/flash-point.js';
export { leftInKettle } from './craft/left-in-kettle.js';
export { mix, type Mixed } from './craft/mix.js';
export { obscuredReading, type Obscured } from './craft/obscuration.js';
export { reduceInSteps, type Reduction } from './craft/reduce-in-steps.js';
export { massesOf, type Masses, type MeasuredVolume, type Spirit, spiritFromMeasured } from './craft/spirit.js';
export { account, ACCOUNT_PARTS, type Account, type AccountPart, type Books } from './craft/account.js';
export { behindParrot } from './craft/gauges/behind-parrot.js';
export type { NoMixture, ThermometerReading } from './craft/gauges/boiling-at.js';
export { compareReadings, type Compared, type Suspect } from './craft/gauges/compare-readings.js';
export { kettleFromTemperature, type KettleRead } from './craft/gauges/kettle-from-temperature.js';
export { thermometerOffset } from './craft/gauges/thermometer-offset.js';
export { vapourFromTemperature, type VapourRead } from './craft/gauges/vapour-from-temperature.js';
