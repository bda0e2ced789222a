// The lessons say only what the model says: every number in a leader's notes and in our own answers is
// computed again here. And all lessons have the same parts.

import { describe, expect, it } from 'vitest';
import {
  azeotrope,
  activityModel,
  createEthanolWater,
  solve,
  DEFAULT_ACTIVITY,
  strengthFromMoleFraction,
  toSI,
} from '#lib/index.js';
import type { RunQuestion } from '../../../../explorer/worker/kinds/run.js';
import { answersTo } from '../../../support/answers.js';
import { guessNamed } from '../../../../explorer/entries/guess/list.js';
import { questionNamed } from '../../../../explorer/entries/question/list.js';
import type { Lesson, LessonNumbers } from '../../../../explorer/pages/course/lesson.js';
import { lessons } from '../../../../explorer/pages/course/lessons.js';
import { pages } from '../../../../explorer/pages/registry.js';
import { boilOf, ladderOf } from '../../../../explorer/pages/course/rows.js';
import { untilMeasure, whenFull } from '../../../../explorer/pages/course/questions.js';
import { startingScenario } from '../../../../explorer/state/scenario.js';
import { quickRun } from '../../../../explorer/state/derive.js';
import { untilCollected } from '../../../../explorer/state/problems.js';
import { runResults } from '../../../../explorer/state/run-results.js';
import type { Scenario } from '../../../../explorer/state/scenario.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';
import { clock } from '../../../../explorer/text/format.js';
import { settings } from '../../../support/settings.js';

type Change = Parameters<typeof settings>[0];

const system = createEthanolWater();
const atm = toSI(1, 'atm');
const slice = system.curve(DEFAULT_ACTIVITY).at(atm);

async function numbersOf(
  lesson: Lesson,
  scenario: Scenario = startingScenario,
  units = unitSystems.metric,
): Promise<LessonNumbers> {
  return lesson.numbers({ scenario, answers: await answersTo(lesson.asks(scenario)), units }, []);
}

const lessonNamed = (name: string): Lesson => lessons.find((lesson) => lesson.name === name)!;
const run = (change: Change): Parameters<typeof whenFull>[0] => {
  const { problem } = untilMeasure(settings(change));
  return { kind: 'run', solution: solve(problem, system) };
};
const whole = (change: Change): ReturnType<typeof runResults> => {
  const { run: asked } = lessonNamed('reflux').asks(settings(change));
  return runResults(solve((asked as RunQuestion).problem, system), 0.9);
};

describe.each(lessons.map((lesson) => [lesson.name, lesson] as const))('the lesson %s', (name, lesson) => {
  it('stands in the contents list under its own title', () => {
    const page = pages.find((one) => one.name === name);
    expect([page?.title, page?.group]).toEqual([lesson.title, 'Course']);
  });

  it('has every part: goal, guess, steps, caution, two questions, own words, and notes for a leader', () => {
    expect(lesson.goal).toMatch(/\w/u);
    expect(guessNamed(lesson.guess)).toBeDefined();
    expect(lesson.questions.map(questionNamed)).not.toContain(undefined);
    expect(lesson.questions.length).toBeGreaterThanOrEqual(2);
    expect(lesson.caution).toMatch(/never close|free/u);
    expect(lesson.caution).toContain('Local codes');
    expect(lesson.leader.found).toHaveLength(lesson.steps.length);
    expect(lesson.leader.listen.length).toBeGreaterThanOrEqual(3);
    expect(lesson.ownWords.ours.length).toBeGreaterThan(200);
  });

  it('names its sources and a common saying', async () => {
    const { source, sayings } = await numbersOf(lesson);
    expect(source).toMatch(/\d{4}|residuals/u);
    expect(sayings.length).toBeGreaterThanOrEqual(1);
  });

  it('finds words for any setting in any units, without gaps', async () => {
    const tried: Change[] = [
      {},
      { plates: 0 },
      { plates: 1 },
      { chargeStrength: 0.9 },
      { reflux: 0 },
      { pressure: 70_000 },
    ];
    for (const setting of tried) {
      for (const units of Object.values(unitSystems)) {
        const { tries, why, sayings } = await numbersOf(lesson, settings(setting), units);
        const text = [...tries.words, ...why, ...sayings.flatMap(({ says, answer }) => [says, answer])].join(' ');
        expect(text).not.toMatch(/NaN|undefined|null|Infinity/u);
      }
    }
  });
});

describe('the numbers a leader is given', () => {
  const percent = (strength: number): number => Math.round(1000 * strength) / 10;

  it('about what boils are the model’s', () => {
    const rises = (liquid: number): number => 100 * boilOf(slice, liquid).vapour;
    expect(rises(0.2) - rises(0.05)).toBeCloseTo(31, 0);
    expect(rises(0.8) - rises(0.4)).toBeCloseTo(9, 0);
    const high = system.curve(DEFAULT_ACTIVITY).at(80_000);
    for (const liquid of [0.1, 0.5, 0.9]) {
      expect(boilOf(slice, liquid).temperature_K - boilOf(high, liquid).temperature_K).toBeCloseTo(6, -0.5);
      expect(boilOf(high, liquid).vapour).toBeCloseTo(boilOf(slice, liquid).vapour, 1.5);
    }
    expect(percent(boilOf(slice, 0.095).vapour)).toBeCloseTo(55, -0.5);
  });

  it('about plates are the model’s', () => {
    const ladder = ladderOf(slice, 0.095, 20);
    expect(ladder.slice(0, 5).map(percent)).toEqual([54.8, 82.5, 89, 91.7, 93.2]);
    const adds = (plate: number): number => 100 * (ladder[plate]! - ladder[plate - 1]!);
    expect(adds(1)).toBeCloseTo(28, 0);
    expect(adds(4)).toBeCloseTo(1.5, 1);
    expect(adds(12)).toBeCloseTo(0.14, 2);
    expect(adds(20)).toBeCloseTo(0.04, 2);
    // A stronger kettle shrinks the first steps and leaves the top nearly as it was.
    const strong = ladderOf(slice, 0.4, 12);
    expect(strong[0]! - 0.4).toBeLessThan(ladder[0]! - 0.095);
    expect(100 * Math.abs(strong[12]! - ladder[12]!)).toBeLessThan(0.2);
  });

  it('about reflux are the model’s', () => {
    const [three, six, twelve, twentyFour] = [3, 6, 12, 24].map((reflux) => whole({ reflux }));
    const litres = [three, six, twelve, twentyFour].map((one) => Math.round(10_000 * one!.volumeAbove_m3!) / 10);
    expect(litres).toEqual([6.3, 9.5, 10.8, 11.3]);
    const hours = [three, six, twelve, twentyFour].map((one) => plain(clock(one!.duration_s)));
    expect(hours).toEqual(['4 h 2 min', '4 h 40 min', '6 h 44 min', '12 h 6 min']);
    const strength = (reflux: number): number => 100 * whenFull(run({ reflux })).strength;
    expect(strength(6) - strength(3)).toBeCloseTo(0.8, 1);
    // Without reflux the plates give up what they held, and then it is no more than the kettle alone.
    const later = (change: Change): number => {
      const { problem } = quickRun(untilCollected(settings(change), 0.01), []);
      return solve(problem, system).spoutStrength.at(-1)!;
    };
    expect(100 * (later({ reflux: 0 }) - later({ reflux: 0, plates: 0 }))).toBeLessThan(0.1);
    const [full, half] = [whole({}), whole({ heat: startingScenario.still.kettle.power_W! / 2 })];
    const hold_s = toSI(30, 'min');
    expect((half.duration_s - hold_s) / (full.duration_s - hold_s)).toBeCloseTo(2, 1);
    expect(half.volumeAbove_m3! / full.volumeAbove_m3!).toBeCloseTo(1, 1);
    // From 3 : 1 to 7 : 1 what is kept each minute is halved.
    expect(whenFull(run({ reflux: 7 })).time_s / whenFull(run({ reflux: 3 })).time_s).toBeCloseTo(2, 1);
  });

  it('about the ceiling are the model’s', () => {
    const most = { plates: 60, efficiency: 1, reflux: 30 };
    const hundredths = (strength: number): number => Math.round(10_000 * strength) / 100;
    expect(hundredths(whole(most).best)).toBe(97.17);
    expect(hundredths(whenFull(run(most)).strength)).toBe(97.12);
    const each = [{}, { plates: 60 }, { reflux: 30 }, { efficiency: 1 }];
    expect(each.map((change) => percent(whenFull(run(change)).strength))).toEqual([93.7, 95.8, 95.1, 95]);
    const model = activityModel(DEFAULT_ACTIVITY);
    const ceiling = [atm, 70_000].map((pressure) => {
      const found = azeotrope(pressure, model);
      return found.found ? percent(strengthFromMoleFraction(found.moleFraction)) : Number.NaN;
    });
    expect(ceiling).toEqual([97.2, 97.4]);
    // More plates stop helping by about thirty; reflux goes on.
    const at = (change: Change): number => 100 * whenFull(run(change)).strength;
    expect(at({ plates: 60 }) - at({ plates: 30 })).toBeLessThan(0.05);
    expect(at({ plates: 30 }) - at({ plates: 12 })).toBeGreaterThan(1);
    expect(at({ reflux: 20 }) - at({ reflux: 12 })).toBeGreaterThan(0.05);
  });
});

function plain(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}
