// The staircase of the plates as they stand.

import { expect, it } from 'vitest';
import { createEthanolWater, solve, toSI } from '#lib/index.js';
import { curveRows, plateStairRows } from '../../../explorer/state/equilibrium-rows.js';
import { quickProblem } from '../../../explorer/state/problems.js';
import { startingScenario } from '../../../explorer/state/scenario.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { answerTo } from '../../support/answers.js';

const system = createEthanolWater();

it('is drawn of a run whose last plates hold a trace less than no alcohol, as a run to the end may', async () => {
  const equilibrium = await answerTo({
    kind: 'equilibrium',
    activity: 'redlich-kister',
    pressure_Pa: toSI(1, 'atm'),
  });
  const run = solve(quickProblem(startingScenario)!, system).plain();
  const plateVapour = run.plateVapour.map(() => -2.9e-9);
  const { staircase } = plateStairRows(
    curveRows(equilibrium.slice),
    equilibrium,
    { ...run, plateVapour },
    startingScenario,
    1.5,
    unitSystems.metric,
  );
  expect(Array.from(staircase.strength).slice(1)).toEqual(Array.from({ length: run.plates }, () => 0));
});
