// What pages print is what they would print at a tolerance of 1e-8: every page of the explorer, over random numbers within its blanks. Numbers are
// compared in units of the last digit printed; one that lies on the edge of rounding may be one off.

import fc from 'fast-check';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { guesses } from '../../../explorer/entries/guess/list.js';
import { gapInNumbers, readGuess } from '../../../explorer/entries/guess/reading.js';
import { questions } from '../../../explorer/entries/question/list.js';
import { lessons } from '../../../explorer/pages/course/lessons.js';
import { lessonPage } from '../../../explorer/pages/course/records.js';
import { pages } from '../../../explorer/pages/registry.js';
import type { PageRecord } from '../../../explorer/state/notebook-record.js';
import { numberSpecs } from '../../../explorer/state/number-specs.js';
import { inputAt } from '../../../explorer/state/inputs.js';
import type { Scenario } from '../../../explorer/state/scenario.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { answersAt, givenBy, printedBy, readable, type Asking } from '../../support/printed.js';
import { printedDifference } from '../../support/printed-difference.js';
import { settings as settingsOf, short, type Short } from '../../support/settings.js';

/** Settings of each page; the same on every commit, others where a number is asked for. */
const settings = Number(process.env['PRINTED_SETTINGS'] ?? 12);
const sown = process.env['PRINTED_SETTINGS'] === undefined ? { seed: 20261128 } : {};

/** Numbers that may be one off, of all that are printed; and more than one: of two troughs a limit is as bad in, a run at 1e-8 may take the other. */
const mostOnTheEdge = 0.01;
const mostBeyond = 1 / 2000;

const { metric } = unitSystems;
const specs = numberSpecs(metric);

/** Anywhere within the limits of the blanks, in a kettle that takes the charge, typed as they are shown; sizes and heats by their factor. */
const anyScenario: fc.Arbitrary<Scenario> = fc
  .record(
    Object.fromEntries(
      (Object.keys(short) as Short[]).map((key) => {
        const { quantity } = inputAt(short[key])!;
        const { low, high, fromShown, digits } = specs(short[key]);
        const byFactor = quantity === 'volume' || quantity === 'power' || quantity === 'across';
        const place = fc.noBias(fc.nat({ max: 1_000_000 })).map((share) => share / 1_000_000);
        return [
          key,
          place.map((share) => {
            const shown = byFactor ? low * (high / low) ** share : low + (high - low) * share;
            return fromShown(Number(digits(shown).replaceAll('\u2009', '')));
          }),
        ];
      }),
    ),
  )
  .map((numbers) => settingsOf(numbers));

const files = import.meta.glob<Record<string, PageRecord>>('../../../explorer/pages/*/record.ts', { eager: true });
const records = [...Object.values(files).flatMap((file) => Object.values(file)), ...lessons.map(lessonPage)];

/** What is printed for a scenario, by name; null where the solver refuses it. */
type Printing = (scenario: Scenario, asking: Asking) => Promise<ReadonlyMap<string, string> | null>;

async function printsWhatATightRunPrints(name: string, printing: Printing): Promise<void> {
  const beyond: string[] = [];
  let [numbers, onTheEdge] = [0, 0];
  for (const scenario of fc.sample(anyScenario, { numRuns: settings, ...sown })) {
    const printed = await printing(scenario, answersAt());
    const tight = await printing(scenario, answersAt(1e-8));
    expect(printed === null).toBe(tight === null);
    for (const [id, text] of printed ?? []) {
      const difference = printedDifference(text, tight!.get(id)!);
      numbers += difference.numbers;
      onTheEdge += difference.byOne;
      beyond.push(...difference.beyond.map((words) => `${id}: ${words} at ${JSON.stringify(scenario)}`));
    }
  }
  if (process.env['PRINTED_SETTINGS'] !== undefined) {
    console.log(`${name}: ${String(numbers)} numbers, ${String(onTheEdge)} one off\n${beyond.join('\n')}`);
  }
  expect(numbers).toBeGreaterThan(0);
  expect(beyond.length <= mostBeyond * numbers ? [] : beyond).toEqual([]);
  expect(onTheEdge / numbers).toBeLessThan(mostOnTheEdge);
}

it('every page that prints numbers is read', () => {
  const withEntries = pages.filter(({ name, apart }) => apart !== true && name !== 'words').map(({ name }) => name);
  expect(records.map(({ name }) => name).sort()).toEqual(withEntries.sort());
});

describe.each(records.map((record) => [record.title, record] as const))('the page ‘%s’', (title, record) => {
  it('prints the digits of runs at 1e-8', async () => {
    // Entries look whether a worksheet is being printed.
    vi.stubGlobal('document', { documentElement: { dataset: {} } });
    onTestFinished(() => void vi.unstubAllGlobals());
    const entries = await readable(record);
    await printsWhatATightRunPrints(title, (scenario, asking) => printedBy(entries, scenario, metric, asking));
  });
});

describe.each(questions.map((question) => [question.name, question] as const))(
  'the question ‘%s’',
  (name, question) => {
    it('asks, hints and answers with the digits of runs at 1e-8', async () => {
      await printsWhatATightRunPrints(name, async (scenario, asking) => {
        const given = await givenBy(question.asks(scenario), scenario, asking);
        if (given === null) return null;
        const posed = question.pose({ ...given, units: metric });
        if (posed === null) return new Map();
        const { lead, tail, asked } = posed;
        return new Map([
          [name, [lead, tail, asked.reached(asked.answer), asked.answerWords, ...asked.hints].join('\n')],
        ]);
      });
    });
  },
);

describe.each(guesses.map((guess) => [guess.name, guess] as const))('the guess ‘%s’', (name, guess) => {
  it('asks with the digits of runs at 1e-8, and so does what it says of a guess', async () => {
    await printsWhatATightRunPrints(name, async (scenario, asking) => {
      const given = await givenBy(guess.asks(scenario), scenario, asking);
      if (given === null) return null;
      const { task, asked, field, means } = guess.pose({ ...given, units: metric });
      const [[from, to], [low, high]] = [field.x, field.y];
      const reading = readGuess([{ x: from + 0.9 * (to - from), y: low + 0.5 * (high - low) }], asked);
      return new Map([[name, [task, gapInNumbers(reading, asked), means(reading)].join('\n')]]);
    });
  });
});
