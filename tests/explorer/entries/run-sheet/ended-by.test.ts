// Which rule a step of a run is said to have ended by.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, solve, type EnergyProblem, type StopRule, type RunStep } from '#lib/index.js';
import { endedBy } from '../../../../explorer/entries/run-sheet/ended-by.js';
import { sheetQuestion } from '../../../../explorer/state/run-sheet.js';
import { startingScenario } from '../../../../explorer/state/scenario.js';

const system = createEthanolWater();

/** The rule the second step is said to have ended by, of two. */
function said(rules: readonly StopRule[], reflux: RunStep['reflux'] = 3): StopRule['kind'] {
  const steps: RunStep[] = [
    { reflux: 'total', until: [{ kind: 'firstVapour' }] },
    { reflux, until: rules },
    { reflux: 1, until: [{ kind: 'duration', seconds: 60 }] },
  ];
  const question = sheetQuestion({ ...startingScenario, sheet: steps, jars: { kind: 'perStep' } });
  const run = solve(question.problem as EnergyProblem, system);
  return endedBy(run, steps[1]!, run.stepStarts[1]!, run.stepStarts[2]!).kind;
}

describe('The rule that ended a step', () => {
  const strength: StopRule = { kind: 'spoutStrengthBelow', strength: 0.85 };
  it.each([
    ['duration', [strength, { kind: 'duration', seconds: 1200 }]],
    ['spoutStrengthBelow', [{ kind: 'duration', seconds: 86_400 }, strength]],
    ['collectedVolume', [strength, { kind: 'collectedVolume', volume_m3: 0.002 }]],
    [
      'kettleStrengthBelow',
      [
        { kind: 'alcoholLeftBelow', share: 0.1 },
        { kind: 'kettleStrengthBelow', strength: 0.05 },
      ],
    ],
    [
      'alcoholLeftBelow',
      [
        { kind: 'kettleStrengthBelow', strength: 0.01 },
        { kind: 'alcoholLeftBelow', share: 0.5 },
      ],
    ],
    ['kettleTemperatureAbove', [strength, { kind: 'kettleTemperatureAbove', temperature_K: 369 }]],
    [
      'headTemperatureAbove',
      [
        { kind: 'duration', seconds: 86_400 },
        { kind: 'headTemperatureAbove', temperature_K: 358 },
      ],
    ],
  ] as const)('is found: %s', (kind, rules) => {
    expect(said(rules)).toBe(kind);
  });

  it('is found where a hold asks for too much', () => {
    const hold = { kind: 'hold', strength: 0.94, leastShare: 0, mostShare: 0.98 } as const;
    expect(
      said(
        [
          { kind: 'duration', seconds: 86_400 },
          { kind: 'refluxAbove', ratio: 8 },
        ],
        hold,
      ),
    ).toBe('refluxAbove');
  });
});
