// Runs at constant molar flows for tests: invented charges and stills, and a generator of random ones.

import fc from 'fast-check';
import { createEthanolWater, type EqualFlowsProblem, type StillDescription } from '#lib/index.js';

/** One system for all tests of a file, so that each curve is compiled once. */
export const system = createEthanolWater();

/** A still as the equations of constant molar flows know it. */
export interface FlatStill {
  readonly plates: number;
  readonly efficiency: number;
  readonly plateHoldUp_mol: number;
  readonly condenserHoldUp_mol: number;
  readonly headPressure_Pa: number;
  readonly plateDrop_Pa: number;
}

const still: FlatStill = {
  plates: 6,
  efficiency: 0.7,
  plateHoldUp_mol: 3,
  condenserHoldUp_mol: 2,
  headPressure_Pa: 101325,
  plateDrop_Pa: 250,
};

/** Half of what both condensers hold, which is exact in binary numbers. */
const HALF = 0.5;

/** A description of such a still; the hold-up of the condenser is that of both condensers together. */
export function flatStill(change: Partial<FlatStill> = {}): StillDescription {
  const { plates, efficiency, plateHoldUp_mol, condenserHoldUp_mol, headPressure_Pa, plateDrop_Pa } = {
    ...still,
    ...change,
  };
  const held = { kind: 'amount', amount_mol: HALF * condenserHoldUp_mol } as const;
  return {
    kettle: { volume_m3: 1 },
    column:
      plates === 0
        ? { kind: 'none' }
        : {
            kind: 'plates',
            count: plates,
            efficiency,
            holdUp: { kind: 'amount', amount_mol: plateHoldUp_mol },
            drop_Pa: plateDrop_Pa,
          },
    refluxCondenser: { kind: 'total', holdUp: held },
    productCondenser: { holdUp: held },
    air: { pressure_Pa: headPressure_Pa },
  };
}

/** A problem of constant molar flows in which everything is set. */
export type ColumnProblem = EqualFlowsProblem & Required<Pick<EqualFlowsProblem, 'heat' | 'outputs' | 'activity'>>;

/** An invented column run; the still and the rest can be changed. */
export function columnProblem(change: Partial<ColumnProblem> = {}, flat: Partial<FlatStill> = {}): ColumnProblem {
  return {
    model: 'equalFlows',
    charge: { kind: 'amount', amount_mol: 2000, moleFraction: 0.04 },
    still: flatStill(flat),
    activity: 'nrtl',
    heat: { kind: 'power', power_W: 3000 },
    sheet: [
      { reflux: 'total', until: [{ kind: 'duration', seconds: 600 }] },
      { reflux: 3, until: [{ kind: 'spoutStrengthBelow', strength: 0.5 }] },
    ],
    outputs: { kind: 'every', interval_s: 120 },
    ...change,
  };
}

/** A random still with the problem made of it. */
export interface AnyColumn {
  readonly flat: FlatStill;
  readonly problem: ColumnProblem;
}

/** Random stills, charges and run sheets, gentle to extreme. */
export function anyColumn(): fc.Arbitrary<AnyColumn> {
  return fc
    .record({
      plates: fc.integer({ min: 0, max: 30 }),
      efficiency: fc.oneof(fc.constant(1), fc.double({ min: 0.3, max: 1, noNaN: true })),
      plateHoldUp_mol: fc.double({ min: 0.01, max: 10, noNaN: true }),
      condenserHoldUp_mol: fc.double({ min: 0.01, max: 10, noNaN: true }),
      headPressure_Pa: fc.double({ min: 60e3, max: 110e3, noNaN: true }),
      plateDrop_Pa: fc.double({ min: 0, max: 500, noNaN: true }),
      moleFraction: fc.double({ min: 0.005, max: 0.7, noNaN: true }),
      reflux: fc.double({ min: 0, max: 20, noNaN: true }),
      hold: fc.boolean(),
      /** Alcohol left at the end; null runs the kettle dry. */
      share: fc.oneof(fc.double({ min: 0.001, max: 0.9, noNaN: true }), fc.constant(null)),
    })
    .map(({ moleFraction, reflux, hold, share, ...flat }) => ({
      flat,
      problem: columnProblem(
        {
          charge: { kind: 'amount', amount_mol: 2000, moleFraction },
          sheet: [
            ...(hold ? [{ reflux: 'total' as const, until: [{ kind: 'duration' as const, seconds: 300 }] }] : []),
            {
              reflux,
              until: [share === null ? { kind: 'duration', seconds: 1e9 } : { kind: 'alcoholLeftBelow', share }],
            },
          ],
          outputs: { kind: 'perStep', points: 2 },
        },
        flat,
      ),
    }));
}
