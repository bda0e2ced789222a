// One column run against scipy's Radau on equations written independently: no compiled curve, time as the variable.

import { describe, expect, it } from 'vitest';
import reference from '../../../../../reference/derived/column-scipy.json' with { type: 'json' };
import { solve } from '#lib/index.js';
import { flatStill, system } from '../../../../support/column-problems.js';

// scipy ran at rtol 1e-10; ours at 1e-8 and on a curve within 1e-7 in y, which twelve-fold steepness carries to the head.
const curveError = 2e-6;
const clockError_s = 0.05;

describe('a column at constant molar flows', () => {
  const { problem } = reference;
  const solution = solve(
    {
      model: 'equalFlows',
      charge: { kind: 'amount', amount_mol: problem.amount_mol, moleFraction: problem.moleFraction },
      still: flatStill(problem),
      activity: 'nrtl',
      heat: { kind: 'power', power_W: problem.power_W },
      sheet: [
        { reflux: 'total', until: [{ kind: 'duration', seconds: problem.holdAtTotalReflux_s }] },
        { reflux: problem.reflux, until: [{ kind: 'duration', seconds: problem.draw_s }] },
      ],
      outputs: { kind: 'every', interval_s: problem.interval_s },
      tolerance: 1e-8,
      start: 'charge',
    },
    system,
  );

  it('reports the same moments', () => {
    expect(solution.rows).toBe(reference.rows.length + 1);
    reference.rows.forEach((row, i) => expect(Math.abs(solution.time_s[i + 1]! - row[0]!)).toBeLessThan(clockError_s));
  });

  it('agrees on kettle, spout, plates and receiver at every one of them', () => {
    const { plates } = solution;
    reference.rows.forEach((row, k) => {
      const i = k + 1;
      expect(Math.abs(solution.kettleMoleFraction[i]! - row[1]!)).toBeLessThan(curveError);
      expect(Math.abs(solution.spoutMoleFraction[i]! - row[2]!)).toBeLessThan(curveError);
      expect(Math.abs(solution.plateLiquid[i * plates]! - row[3]!)).toBeLessThan(curveError);
      expect(Math.abs(solution.plateLiquid[i * plates + plates - 1]! - row[4]!)).toBeLessThan(curveError);
      expect(Math.abs(solution.collectedEthanol_mol[i]! - row[5]!)).toBeLessThan(curveError * problem.amount_mol);
      expect(Math.abs(solution.collectedWater_mol[i]! - row[6]!)).toBeLessThan(curveError * problem.amount_mol);
    });
  });
});
