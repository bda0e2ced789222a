// A still at a moment, against the rows of its run: levels, streams, jars, and the times between rows.

import { describe, expect, it } from 'vitest';
import { stillMoment } from '../../../explorer/state/still-moment.js';
import type { StillMoment } from '../../../explorer/rows/still-moment.js';
import { profileRows } from '../../../explorer/state/still-profile.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { bench, packed, potAndDoubler, stillCases, twelvePlates, twoDoublers } from '../still-cases.js';
import type { StillCase } from '../still-cases.js';

const at = (one: StillCase, position: number): StillMoment => stillMoment(one.still, one.run(), position);
const end = (one: StillCase): number => one.run().rows - 1;
const everyRow = (one: StillCase): StillMoment[] => Array.from({ length: one.run().rows }, (_, row) => at(one, row));

describe.each(stillCases)('$name, row by row', (one) => {
  const run = one.run();
  const moments = everyRow(one);

  it('says what the solution says', () => {
    moments.forEach((moment, row) => {
      expect(moment.time_s).toBe(run.time_s[row]);
      expect(moment.kettle.temperature_K).toBe(run.kettleTemperature_K[row]);
      expect(moment.kettle.strength).toBeCloseTo(run.kettleStrength[row]!, 9);
      expect(moment.distillate.rate_mol_s).toBe(Math.max(0, run.distillateRate_mol_s[row]!));
      expect(moment.stages).toHaveLength(run.plates);
      if (moment.spoutStrength !== null) expect(moment.spoutStrength).toBe(run.spoutStrength[row]);
    });
  });

  it('keeps every level within its vessel, and finite', () => {
    for (const { kettle, doublers, stages } of moments) {
      for (const vessel of [kettle, ...doublers]) {
        expect(vessel.level_m).toBeGreaterThanOrEqual(0);
        expect(vessel.level_m).toBeLessThanOrEqual(1.02 * vessel.brim_m);
      }
      for (const stage of stages) expect(stage.depth_m).toBeGreaterThanOrEqual(0);
    }
  });

  it('never lets what has passed fall, and gives every share of the most', () => {
    moments.reduce((before, moment) => {
      for (const name of ['distillate', 'reflux'] as const) {
        expect(moment[name].passed).toBeGreaterThanOrEqual(before[name].passed);
        expect(moment[name].passed).toBeLessThanOrEqual(1);
      }
      expect(moment.kettle.vapour.passed).toBeGreaterThanOrEqual(before.kettle.vapour.passed);
      expect(moment.kettle.vapour.share).toBeLessThanOrEqual(1);
      return moment;
    });
  });

  it('puts into the jars all that is collected, to a thousandth', () => {
    for (const moment of moments) {
      const inJars = moment.jars.reduce((sum, jar) => sum + jar.filled_m3, 0);
      // Two volumes of unlike strength take less room together: jars one by one hold a little more.
      const collected = moment.collectedVolume_m3;
      expect(inJars).toBeGreaterThanOrEqual(collected * 0.999 - 2e-6);
      expect(inJars).toBeLessThanOrEqual(collected * 1.01 + 2e-6);
    }
  });

  it('has one jar under the spout, filled ones before it, empty ones after it', () => {
    for (const { jars } of moments) {
      const states = jars.map(({ state }) => state).join(' ');
      expect(states).toMatch(/^(filled )*underSpout( waiting)*$/u);
    }
  });
});

describe('the kettle', () => {
  it('stands at the level of its hot liquid: higher than when it was filled cold', () => {
    const hot = everyRow(twelvePlates).find(({ kettle }) => kettle.boiling)!;
    expect(at(twelvePlates, 0).kettle.volume_m3).toBeCloseTo(0.12, 4);
    expect(hot.kettle.volume_m3).toBeGreaterThan(0.122);
    expect(hot.kettle.level_m).toBeCloseTo(hot.kettle.volume_m3 / (Math.PI * 0.25 ** 2), 9);
  });

  it('is uncovered once its liquid has sunk below the heating surface, and stays so', () => {
    const covered = everyRow(bench).map(({ kettle }) => kettle.covered);
    const first = covered.indexOf(false);
    expect(first).toBeGreaterThan(0);
    expect(covered.slice(first)).not.toContain(true);
    expect(everyRow(bench)[first]!.kettle.level_m).toBeLessThan(0.2);
  });

  it('does not boil while it warms', () => {
    expect(at(bench, 0).kettle.boiling).toBe(false);
    expect(at(bench, end(bench)).kettle.boiling).toBe(true);
  });
});

describe('a doubler', () => {
  it('has its pipe end where the dip of its first filling puts it, whatever the level does', () => {
    const first = at(potAndDoubler, 0).doublers[0]!;
    expect(first.mouth_m).toBeCloseTo(first.level_m - 0.1, 9);
    const moments = everyRow(potAndDoubler);
    expect(new Set(moments.map(({ doublers }) => doublers[0]!.mouth_m.toFixed(9))).size).toBe(1);
    expect(Math.max(...moments.map(({ doublers }) => doublers[0]!.level_m))).toBeGreaterThan(first.level_m + 0.01);
  });

  it('boils in turn, from the kettle up', () => {
    const moments = everyRow(twoDoublers);
    const first = (i: number): number => moments.findIndex(({ doublers }) => doublers[i]!.boiling);
    expect(first(0)).toBeGreaterThan(moments.findIndex(({ kettle }) => kettle.boiling));
    expect(first(1)).toBeGreaterThan(first(0));
  });
});

describe('reflux', () => {
  it('is nothing before vapour comes, then total, then the ratio that was asked for', () => {
    const { stepStarts } = twelvePlates.run();
    expect(at(twelvePlates, 0).refluxRatio).toBe(0);
    expect(at(twelvePlates, stepStarts[1]! + 10).refluxRatio).toBe(Infinity);
    expect(at(twelvePlates, stepStarts[2]! + 10).refluxRatio).toBeCloseTo(3, 3);
    expect(at(bench, end(bench)).refluxRatio).toBeNull();
  });

  it('of a partial condenser is what it condenses', () => {
    const run = packed.run();
    const row = run.rows - 5;
    const top = run.holders.length - 1;
    const { reflux, distillate, partial } = at(packed, row);
    expect(reflux.rate_mol_s).toBe(run.holderLiquidRate_mol_s[row * run.holders.length + top]);
    expect(partial!.liquid.rate_mol_s).toBe(reflux.rate_mol_s);
    expect(distillate.rate_mol_s).toBeGreaterThan(0);
  });
});

describe('between rows', () => {
  it('reads states along a straight line', () => {
    const [here, next, between] = [at(bench, 60), at(bench, 61), at(bench, 60.5)];
    expect(between.kettle.temperature_K).toBeCloseTo((here.kettle.temperature_K + next.kettle.temperature_K) / 2, 9);
    expect(between.time_s).toBeCloseTo((here.time_s + next.time_s) / 2, 9);
  });

  it('keeps the rates of a step until the next begins', () => {
    const draws = twelvePlates.run().stepStarts[2]!;
    expect(at(twelvePlates, draws - 0.01).distillate.rate_mol_s).toBe(0);
    expect(at(twelvePlates, draws).distillate.rate_mol_s).toBeGreaterThan(0);
  });

  it('stays within the run, whatever is asked', () => {
    expect(at(bench, -3)).toEqual(at(bench, 0));
    expect(at(bench, 1e6)).toEqual(at(bench, end(bench)));
  });
});

describe('the profile of a column', () => {
  it('begins with what the column stands on and leaves out dry plates', () => {
    const run = twelvePlates.run();
    const [cold, last] = profileRows(twelvePlates.still, run, [0, run.rows - 1], unitSystems.metric).moments;
    expect(cold!.stage).toEqual([0]);
    expect(last!.stage).toEqual(Array.from({ length: 13 }, (_, stage) => stage));
    expect(last!.liquid[0]).toBeCloseTo(run.kettleStrength[run.rows - 1]!, 9);
  });

  it('has a vapour at least as strong as the liquid it leaves, below the azeotrope', () => {
    const run = twelvePlates.run();
    const [moment] = profileRows(twelvePlates.still, run, [run.rows - 1], unitSystems.metric).moments;
    moment!.liquid.forEach((liquid, stage) => expect(moment!.vapour[stage]).toBeGreaterThan(liquid));
  });
});
