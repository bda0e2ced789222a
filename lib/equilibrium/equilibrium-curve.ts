// What the simulator asks of a compiled equilibrium: y*, T and heat of boiling at (x, P) with exact
// derivatives of the compiled functions. Built by compile-curve.ts; consumed by run/ and still/.

import type { JoulePerMole, Kelvin, MoleFraction, Pascal } from '../units/quantities.js';
import { refuse, shapeFault } from '../arguments.js';
import { checkRange, type Fault } from '../errors.js';
import { readValue, readVapour } from './slice-tables.js';

/** Values and derivatives of a compiled equilibrium at one (x, P). */
export interface CurvePoint {
  /** Mole fraction of ethanol in the vapour in equilibrium with the liquid, y*. */
  vapourMoleFraction: MoleFraction;
  /** ∂y/∂x at constant pressure, and ∂y/∂P, 1/Pa. */
  vapourByLiquid: number;
  vapourByPressure_1_Pa: number;
  /** Bubble temperature, T. */
  temperature_K: Kelvin;
  /** ∂T/∂x, K, and ∂T/∂P, K/Pa. */
  temperatureByLiquid_K: number;
  temperatureByPressure_K_Pa: number;
  /** Molar heat of vaporisation of the vapour raised, λ = y ΔHv,ethanol(T) + (1−y) ΔHv,water(T). */
  latentHeat_J_mol: JoulePerMole;
  /** ∂λ/∂x, J/mol, and ∂λ/∂P, J/(mol Pa). */
  latentHeatByLiquid_J_mol: number;
  latentHeatByPressure_J_mol_Pa: number;
}

/**
 * The curve at one fixed pressure, as bare tables for hot loops: relative volatility α, temperature
 * and heat of vaporisation are C² cubic splines on a uniform grid in x of `intervals` intervals over
 * [0, 1]. Coefficients of interval k stand at 4k..4k+3, lowest power first, in the local variable
 * s = x · intervals − k; derivatives by s must be multiplied by `intervals`.
 * y = α x / (1 + (α − 1) x), so y(0) = 0 and y(1) = 1 exactly.
 */
export interface CurveSlice {
  readonly pressure_Pa: Pascal;
  readonly intervals: number;
  readonly alpha: Float64Array;
  readonly temperature: Float64Array;
  readonly latentHeat: Float64Array;
}

/** A compiled equilibrium in composition and pressure. */
export interface EquilibriumCurve {
  /** Name of the activity model it was compiled from. */
  readonly model: string;
  /** Pressures it covers, Pa; outside, `at` and `evaluate` throw an InputError. */
  readonly range_Pa: readonly [Pascal, Pascal];
  /** The curve at one pressure (createEthanolWater keeps those last asked for). */
  at(pressure_Pa: Pascal): CurveSlice;
  /** Values with derivatives in x and P. */
  evaluate(x: MoleFraction, pressure_Pa: Pascal, out: CurvePoint): CurvePoint;
}

/**
 * The vapour in equilibrium with a liquid, read off a slice.
 *
 * Equation: y = α x / (1 + (α − 1) x), α from the slice's spline.
 * @param slice Equilibrium at one pressure, from a compiled curve.
 * @param x Mole fraction of ethanol in the liquid; 0..1; outside by more than 0.001 (a solver's stage may be a hair out), an InputError.
 * @returns Mole fraction of ethanol in the vapour, y*.
 * @throws InputError when x is not a number or outside its range.
 * @example vapourOnSlice(createEthanolWater().curve('redlich-kister').at(101325), 0.5) // → 0.6539
 * Source: this project, docs/theory/equilibrium.md.
 */
export function vapourOnSlice(slice: CurveSlice, x: MoleFraction): MoleFraction {
  checkSlice(slice);
  return readVapour(slice.alpha, slice.intervals, onSlice(x));
}

/**
 * The temperature at which a liquid boils, read off a slice.
 *
 * Equation: cubic spline in x.
 * @param slice Equilibrium at one pressure, from a compiled curve.
 * @param x Mole fraction of ethanol in the liquid; 0..1; outside by more than 0.001 (a solver's stage may be a hair out), an InputError.
 * @returns Bubble temperature, [K].
 * @throws InputError when x is not a number or outside its range.
 * @example temperatureOnSlice(createEthanolWater().curve('redlich-kister').at(101325), 0.5) // → 352.899
 * Source: this project, docs/theory/equilibrium.md.
 */
export function temperatureOnSlice(slice: CurveSlice, x: MoleFraction): Kelvin {
  checkSlice(slice);
  return readValue(slice.temperature, slice.intervals, onSlice(x));
}

/**
 * The heat that raises one mole of vapour from a boiling liquid, read off a slice.
 *
 * Equation: y ΔHv,ethanol(T) + (1 − y) ΔHv,water(T) as a cubic spline in x.
 * @param slice Equilibrium at one pressure, from a compiled curve.
 * @param x Mole fraction of ethanol in the liquid; 0..1; outside by more than 0.001 (a solver's stage may be a hair out), an InputError.
 * @returns Molar heat of vaporisation, [J/mol].
 * @throws InputError when x is not a number or outside its range.
 * @example latentHeatOnSlice(createEthanolWater().curve('redlich-kister').at(101325), 0) // → 40654.2
 * Source: this project, docs/theory/equilibrium.md.
 */
export function latentHeatOnSlice(slice: CurveSlice, x: MoleFraction): number {
  checkSlice(slice);
  return readValue(slice.latentHeat, slice.intervals, onSlice(x));
}

/** Throws an InputError unless something is a slice. */
export function checkSlice(slice: CurveSlice, argument = 'slice'): void {
  // Looked at before it is asked for faults: figures read slices thousands of times.
  const { alpha } = (slice as CurveSlice | undefined | null) ?? {};
  if (!(alpha instanceof Float64Array)) refuse(sliceFault(argument, slice));
}

/** A fault unless something is a slice. */
export function sliceFault(argument: string, slice: unknown): Fault[] {
  const shape = { intervals: 'number', alpha: 'numbers', temperature: 'numbers', latentHeat: 'numbers' };
  return shapeFault(
    argument,
    slice,
    shape,
    'a slice of a compiled curve: createEthanolWater().curve().at(pressure_Pa)',
  );
}

/** A hair outside 0..1 is a solver's rounding; more is a mistake. */
const HAIR = 1e-3;

function onSlice(x: MoleFraction): MoleFraction {
  checkRange('x', x, -HAIR, 1 + HAIR, 'a mole fraction of ethanol from 0 to 1');
  return x;
}
