// Column problems for tests: invented charges and stills, and a generator of random ones.

import fc from 'fast-check';
import { createEthanolWater, type ColumnProblem, type ColumnStill } from '#lib/index.js';

/** One system for all tests of a file, so that each curve is compiled once. */
export const system = createEthanolWater();

const still: ColumnStill = {
  plates: 6,
  efficiency: 0.7,
  plateHoldUp_mol: 3,
  condenserHoldUp_mol: 2,
  headPressure_Pa: 101325,
  plateDrop_Pa: 250,
};

/** An invented column run; `column` and the rest can be changed. */
export function columnProblem(change: Partial<ColumnProblem> = {}, column: Partial<ColumnStill> = {}): ColumnProblem {
  return {
    kind: 'column',
    charge: { kind: 'amount', amount_mol: 2000, moleFraction: 0.04 },
    column: { ...still, ...column },
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

/** Random stills, charges and run sheets, gentle to extreme. */
export function anyColumnProblem(): fc.Arbitrary<ColumnProblem> {
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
    .map(({ moleFraction, reflux, hold, share, ...column }) =>
      columnProblem(
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
        column,
      ),
    );
}
