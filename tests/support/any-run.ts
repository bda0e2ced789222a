// Any run that may be asked for: extreme but allowed. Every number shrinks towards that of a plain still and has three digits, so that a
// failure comes down to a problem one can read.

import fc from 'fast-check';
import { ACTIVITY_NAMES } from '#lib/mixture/activity/registry.js';
import { chargeAmounts } from '#lib/run/charge.js';
import type { Charge, Outputs, Reflux, RunProblem, RunStep, SimplifiedProblem, StopRule } from '#lib/run/problem.js';
import type { HoldUp, Still } from '#lib/still/still.js';
import { water } from '#lib/substances/water.js';
import { flatStill } from './column-problems.js';
import type { WholeProblem } from './train-problems.js';

type Any<Value> = fc.Arbitrary<Value>;

/** A number between two others, evenly; plainly `plain`. */
function even(low: number, high: number, plain: number): Any<number> {
  const steps = 1000;
  const at = (share: number): number => rounded(low + share * (high - low));
  const own = Math.round(((plain - low) / (high - low)) * steps);
  return fc.integer({ min: -own, max: steps - own }).map((k) => (k === 0 ? plain : at((k + own) / steps)));
}

/** A number between two others, evenly in its logarithm; plainly `plain`. */
function wide(low: number, high: number, plain: number): Any<number> {
  const per = 100;
  const [down, up] = [Math.ceil(per * Math.log10(plain / low)), Math.ceil(per * Math.log10(high / plain))];
  const at = (k: number): number => Math.min(high, Math.max(low, rounded(plain * 10 ** (k / per))));
  return fc.integer({ min: -down, max: up }).map((k) => (k === 0 ? plain : at(k)));
}

function rounded(value: number): number {
  return Number(value.toPrecision(3));
}

/** One of these, plainly the first. */
function oneOf<Value>(...all: readonly Any<Value>[]): Any<Value> {
  return fc.oneof({ withCrossShrink: true }, ...all);
}

const just = <Value>(value: Value): Any<Value> => fc.constant(value);
const orNothing = (any: Any<number>): Any<number> => oneOf(just(0), any);

/** Any stop rule, be it met at once, soon, or never; `scale_s` is about as long as the charge takes to boil away. */
function anyRule(charge_m3: number, scale_s: number, air_Pa: number): Any<StopRule> {
  const boils_K = Math.floor(water.boilingTemperature(air_Pa));
  return oneOf<StopRule>(
    wide(1e-4, 10, 0.2).map((share) => ({ kind: 'duration', seconds: rounded(share * scale_s) })),
    wide(1e-4, 0.9, 0.2).map((share) => ({ kind: 'collectedVolume', volume_m3: rounded(share * charge_m3) })),
    even(0.001, 0.99, 0.5).map((strength) => ({ kind: 'spoutStrengthBelow', strength })),
    wide(1e-5, 0.6, 0.02).map((strength) => ({ kind: 'kettleStrengthBelow', strength })),
    even(300, boils_K, boils_K - 3).map((temperature_K) => ({ kind: 'kettleTemperatureAbove', temperature_K })),
    even(300, boils_K, boils_K - 8).map((temperature_K) => ({ kind: 'headTemperatureAbove', temperature_K })),
    wide(1e-5, 0.9999, 0.2).map((share) => ({ kind: 'alcoholLeftBelow', share })),
    just({ kind: 'firstVapour' }),
    wide(1e-3, 1e6, 10).map((ratio) => ({ kind: 'refluxAbove', ratio })),
  );
}

const strength = wide(1e-3, 0.6, 0.1);
const pressure_Pa = even(20e3, 110e3, 101e3);
const anyTolerance = oneOf<number | undefined>(just(undefined), wide(1e-7, 1e-2, 1e-5));
const activity = fc.constantFrom(...ACTIVITY_NAMES);

/** A charge of about so many cubic metres. */
const anyCharge = (volume_m3: number): Any<Charge> =>
  oneOf<Charge>(
    strength.map((own) => ({ kind: 'volume', volume_m3, strength: own })),
    // No denser than water.
    wide(1e-4, 0.6, 0.03).map((moleFraction) => ({
      kind: 'amount',
      amount_mol: rounded((volume_m3 * 54e3) / (1 + 2.3 * moleFraction)),
      moleFraction,
    })),
  );

const anyOutputs = (scale_s: number): Any<Outputs> =>
  oneOf<Outputs>(
    wide(5e-3, 1, 0.05).map((share) => ({ kind: 'every', interval_s: Math.max(1e-3, rounded(share * scale_s)) })),
    fc.integer({ min: 1, max: 4 }).map((points) => ({ kind: 'perStep', points })),
    fc.integer({ min: 2, max: 400 }).map((rows) => ({ kind: 'evenly', rows })),
  );

/** Energy that boils a charge away, J/m³. */
const BOILS_AWAY_J_m3 = 2.5e9;
const MOL_m3 = 40e3;

interface Frame {
  readonly kettle_m3: number;
  readonly full: number;
  readonly power_W: number;
  readonly charge: Charge;
  readonly air_Pa: number;
}

/** Charges of a litre to 10 m³ and heats of 50 W to 2 MW, as they go together or not. */
const anyFrame: Any<Frame> = fc
  .record({
    kettle_m3: wide(1e-3, 10, 0.1),
    full: wide(0.05, 1, 0.6),
    power: oneOf(wide(0.1, 10, 1), wide(50, 2e6, 5000)),
    air_Pa: pressure_Pa,
  })
  .chain(({ kettle_m3, full, power, air_Pa }) =>
    anyCharge(rounded(0.95 * full * kettle_m3)).map((charge) => {
      const own_W = power <= 10 ? power * 45e3 * kettle_m3 : power;
      return { kettle_m3, full, power_W: Math.min(2e6, Math.max(50, rounded(own_W))), charge, air_Pa };
    }),
  );

const anyLoss = (power_W: number): Any<number> =>
  orNothing(wide(1e-5, 1, 1e-3).map((share) => rounded((share * power_W) / 60)));
const anyMetal = (frame: Frame): Any<number> =>
  orNothing(wide(1e-6, 1, 1e-3).map((share) => rounded(share * frame.full * frame.kettle_m3 * 4e6)));

/** Hold-ups from next to nothing to a good part of the charge. */
const anyHoldUp_m3 = ({ kettle_m3, full, power_W }: Frame, many: number): Any<number> =>
  wide(1e-7, 0.2, 1e-3).map((share) => Math.max(1e-9, 5e-12 * power_W, rounded((share * full * kettle_m3) / many)));

function anyColumn(frame: Frame): Any<Still['column']> {
  const plates = fc.integer({ min: 1, max: 60 }).chain((count): Any<Still['column']> =>
    fc
      .record({
        efficiency: oneOf(even(0.05, 1, 0.65), just(1)),
        efficiencyFalls: fc.boolean(),
        holdUp: oneOf<{ kind: 'volume'; volume_m3: number } | { kind: 'amount'; amount_mol: number }>(
          anyHoldUp_m3(frame, count).map((volume_m3) => ({ kind: 'volume', volume_m3 })),
          anyHoldUp_m3(frame, count).map((volume_m3) => ({
            kind: 'amount',
            amount_mol: Math.max(1e-6, rounded(MOL_m3 * volume_m3)),
          })),
        ),
        diameter_m: wide(0.02, 3, 0.1),
        heatLoss_W_K: anyLoss(frame.power_W / count),
        metal_J_K: anyMetal(frame).map((whole) => rounded(whole / count)),
        drop_Pa: orNothing(
          even(0, 1, 0.3).map((share) => rounded((share * Math.min(60e3, 165e3 - frame.air_Pa)) / count)),
        ),
      })
      .map((own): Still['column'] => ({
        kind: 'plates',
        count,
        plateKind: 'sieve',
        spacing_m: 0.15,
        weirHeight_m: 0.012,
        openAreaShare: 0.1,
        holeDiameter_m: 0.003,
        ...own,
      })),
  );
  const packing = fc
    .record({
      stages: even(0.1, 60, 6),
      diameter_m: wide(0.02, 2, 0.1),
      liquidShare: wide(1e-3, 0.3, 0.06),
      heatLoss_W_K: anyLoss(frame.power_W),
      metal_J_K: anyMetal(frame),
    })
    .map(({ stages, ...own }): Still['column'] => ({
      kind: 'packing',
      height_m: rounded(0.2 * stages),
      hetp_m: 0.2,
      voidShare: 0.9,
      surface_m2_m3: 300,
      drop_Pa_m: 200,
      ...own,
    }));
  return oneOf(just<Still['column']>({ kind: 'none' }), plates, packing);
}

function anyCondenser(frame: Frame): Any<Still['refluxCondenser']> {
  const holdUp = anyHoldUp_m3(frame, 10).map(held);
  return oneOf<Still['refluxCondenser']>(
    fc.record({ holdUp, subcooling_K: orNothing(even(0, 70, 10)) }).map((own) => ({ kind: 'total', ...own })),
    just({ kind: 'none' }),
    fc.record({ holdUp, share: wide(1e-3, 10, 0.7) }).map(({ share, ...own }) => ({
      kind: 'partial',
      ...own,
      coolant: { kind: 'duty', power_W: rounded(share * frame.power_W) },
    })),
    fc
      .record({ holdUp, flow: wide(1e-3, 100, 1), transfer: wide(1e-3, 100, 1) })
      .map(({ holdUp: own, flow, transfer }) => ({
        kind: 'partial',
        holdUp: own,
        coolant: {
          kind: 'water',
          flow_kg_s: rounded((flow * frame.power_W) / 1e5),
          inlet_K: 288.15,
          transfer_W_K: rounded((transfer * frame.power_W) / 60),
        },
      })),
  );
}

function anyReflux({ refluxCondenser: condenser }: Still, power_W: number): Any<Reflux> {
  if (condenser.kind === 'none') return just('none');
  const limits = fc.tuple(even(0.1, 0.97, 0.9), even(0, 1, 0), even(0, 1, 1));
  const hold = limits.map(([own, one, other]): Reflux => {
    return { kind: 'hold', strength: own, leastShare: Math.min(one, other), mostShare: Math.max(one, other) };
  });
  const both: Any<Reflux>[] = [just('total'), just('none')];
  if (condenser.kind === 'total') return oneOf<Reflux>(wide(1e-3, 1000, 3), just(0), ...both, hold);
  if (condenser.coolant.kind === 'duty') {
    const duty = wide(1e-3, 10, 0.7).map((share): Reflux => ({ kind: 'duty', power_W: rounded(share * power_W) }));
    return oneOf<Reflux>(just('asSet'), ...both, duty, hold);
  }
  const water = wide(1e-3, 100, 1).map((flow): Reflux => ({
    kind: 'water',
    flow_kg_s: rounded((flow * power_W) / 1e5),
  }));
  return oneOf<Reflux>(just('asSet'), ...both, water);
}

function anyStill(frame: Frame): Any<Still> {
  const doubler = fc
    .record({
      share: wide(1e-3, 0.5, 0.12),
      dipDepth_m: even(0, 0.5, 0.1),
      heatLoss_W_K: anyLoss(frame.power_W),
      metal_J_K: anyMetal(frame),
      overflow: fc.constantFrom<'back' | 'over'>('back', 'over'),
    })
    .map(({ share, ...own }): Still['doublers'][number] => ({
      volume_m3: rounded(share * frame.kettle_m3),
      diameter_m: 0.25,
      ...own,
    }));
  return fc
    .record({
      column: anyColumn(frame),
      doublers: oneOf(just<Still['doublers']>([]), fc.array(doubler, { minLength: 1, maxLength: 3 })),
      refluxCondenser: anyCondenser(frame),
      headLoss: anyLoss(frame.power_W),
      headMetal: anyMetal(frame),
      film_m3: anyHoldUp_m3(frame, 100),
      drum_m3: anyHoldUp_m3(frame, 10),
      loss: anyLoss(frame.power_W),
      metal: anyMetal(frame),
      air_K: even(223, Math.floor(water.boilingTemperature(frame.air_Pa)) - 20, 293),
      water_K: even(273, 373, 288),
    })
    .map((own): Still => {
      return {
        kettle: {
          volume_m3: frame.kettle_m3,
          diameter_m: rounded(Math.cbrt((4 * frame.kettle_m3) / Math.PI)),
          heatingSurfaceHeight_m: 0,
          power_W: frame.power_W,
          heatLoss_W_K: own.loss,
          metal_J_K: own.metal,
        },
        doublers: own.doublers,
        column: own.column,
        head: { heatLoss_W_K: own.headLoss, metal_J_K: own.headMetal, film_m3: own.film_m3 },
        refluxCondenser: own.refluxCondenser,
        productCondenser: { holdUp: held(own.drum_m3), flow_kg_s: 0.1, inlet_K: own.water_K, transfer_W_K: 300 },
        air: { pressure_Pa: frame.air_Pa, temperature_K: own.air_K },
      };
    });
}

function held(volume_m3: number): HoldUp {
  return { kind: 'volume', volume_m3 };
}

/** Any run of the full model. */
export const anyTrainRun: Any<WholeProblem> = anyFrame.chain((frame) =>
  anyStill(frame).chain((still) => {
    const charge_m3 = 0.95 * frame.full * frame.kettle_m3;
    const scale_s = (charge_m3 * BOILS_AWAY_J_m3) / frame.power_W;
    const step: Any<RunStep> = fc
      .record(
        {
          reflux: anyReflux(still, frame.power_W),
          power_W: orNothing(wide(0.01, 3, 0.5)),
          until: fc.array(anyRule(charge_m3, scale_s, frame.air_Pa), { minLength: 1, maxLength: 3 }),
        },
        { requiredKeys: ['reflux', 'until'] },
      )
      .map(({ power_W, ...own }): RunStep =>
        power_W === undefined ? own : { ...own, heat: { kind: 'power', power_W: rounded(power_W * frame.power_W) } },
      );
    const doublerCharges = fc.tuple(
      ...still.doublers.map(({ volume_m3 }) =>
        fc.record({
          charge: wide(1e-3, 0.95, 0.5).chain((full): Any<Charge> =>
            oneOf<number>(strength, just(0)).map((own) => ({
              kind: 'volume',
              volume_m3: rounded(full * volume_m3),
              strength: own,
            })),
          ),
        }),
      ),
    );
    return fc.record<WholeProblem, 'still' | 'charge' | 'doublerCharges' | 'activity' | 'heat' | 'sheet' | 'outputs'>(
      {
        still: just(still),
        charge: just(frame.charge),
        doublerCharges,
        activity,
        heat: just({ kind: 'power', power_W: frame.power_W }),
        sheet: fc.array(step, { minLength: 1, maxLength: 4 }),
        outputs: anyOutputs(scale_s),
        start: fc.constantFrom<'cold' | 'firstVapour'>('cold', 'firstVapour'),
        chargeTemperature_K: even(274, 378, 293),
        model: fc.constantFrom<'energy' | 'equalHeats'>('energy', 'equalHeats'),
        jars: wide(1e-3, 1, 0.1).map((share) => ({
          kind: 'size',
          volume_m3: Math.max(1e-6, rounded(share * charge_m3)),
        })),
        tolerance: wide(1e-7, 1e-3, 1e-5),
      },
      { requiredKeys: ['still', 'charge', 'doublerCharges', 'activity', 'heat', 'sheet', 'outputs'] },
    );
  }),
);

/** Any run of the column at constant molar overflow. */
export const anyColumnRun: Any<SimplifiedProblem> = anyFrame.chain((frame) =>
  fc.integer({ min: 0, max: 60 }).chain((plates) => {
    const charge_m3 = 0.95 * frame.full * frame.kettle_m3;
    const scale_s = (charge_m3 * BOILS_AWAY_J_m3) / frame.power_W;
    const { ethanol_mol, water_mol } = chargeAmounts(frame.charge);
    const total_mol = ethanol_mol + water_mol;
    const held = wide(1e-9, 0.2, 1e-3).map((share) =>
      Math.max(1e-6, rounded((share * total_mol) / Math.max(1, plates))),
    );
    const step: Any<RunStep> = fc.record({
      reflux: oneOf<number | 'total'>(wide(1e-3, 1000, 3), just(0), just('total')),
      until: fc.array(anyRule(charge_m3, scale_s, frame.air_Pa), { minLength: 1, maxLength: 3 }),
    });
    return fc
      .record({
        efficiency: oneOf(even(0.05, 1, 0.65), just(1)),
        plateHoldUp_mol: held,
        condenserHoldUp_mol: held,
        drop: orNothing(even(0, 1, 0.3)),
        byHeat: fc.boolean(),
        sheet: fc.array(step, { minLength: 1, maxLength: 4 }),
        outputs: anyOutputs(scale_s),
        start: fc.constantFrom<'charge' | undefined>(undefined, 'charge'),
        tolerance: anyTolerance,
        activity,
      })
      .map(({ drop, byHeat, sheet, outputs, start, tolerance, activity: named, ...own }): SimplifiedProblem => ({
        model: 'equalFlows',
        charge: frame.charge,
        still: {
          ...flatStill({
            plates,
            ...own,
            headPressure_Pa: frame.air_Pa,
            plateDrop_Pa: rounded((drop * 60e3) / Math.max(1, plates)),
          }),
          kettle: { volume_m3: frame.kettle_m3 },
        },
        activity: named,
        heat: byHeat
          ? { kind: 'power', power_W: frame.power_W }
          : { kind: 'boilUp', rate_mol_s: rounded(frame.power_W / 40e3) },
        sheet,
        outputs,
        ...(start === undefined ? {} : { start }),
        ...(tolerance === undefined ? {} : { tolerance }),
      }));
  }),
);

/** Any run of the bare pot by quadrature. */
export const anySimpleRun: Any<SimplifiedProblem> = anyFrame.chain((frame) => {
  const charge_m3 = 0.95 * frame.full * frame.kettle_m3;
  const scale_s = (charge_m3 * BOILS_AWAY_J_m3) / frame.power_W;
  return fc
    .record({
      byHeat: fc.boolean(),
      until: fc.array(anyRule(charge_m3, scale_s, frame.air_Pa), { minLength: 1, maxLength: 3 }),
      rows: fc.integer({ min: 2, max: 400 }),
      activity,
    })
    .map(({ byHeat, until, rows, activity: named }): SimplifiedProblem => ({
      model: 'rayleigh',
      still: { kettle: { volume_m3: frame.kettle_m3 }, air: { pressure_Pa: frame.air_Pa } },
      charge: frame.charge,
      activity: named,
      heat: byHeat
        ? { kind: 'power', power_W: frame.power_W }
        : { kind: 'boilUp', rate_mol_s: rounded(frame.power_W / 40e3) },
      sheet: [{ reflux: 'none', until }],
      outputs: { kind: 'evenly', rows },
    }));
});

/** Any run of any engine. */
export const anyRun: Any<RunProblem> = oneOf<RunProblem>(anySimpleRun, anyColumnRun, anyTrainRun);
