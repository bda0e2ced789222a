// What a page prints, as text: every entry's words, tables, notes and results by name, for numbers set in it, with runs made at the page's own tolerance
// or at another. It reads pages through the contract of entries alone, so that a new page or kind is read too.

import { createEthanolWater } from '#lib/index.js';
import type { Answered, EntryKind, Here, Later, PageResult } from '../../explorer/entries/entry.js';
import { inWords, plainWords } from '../../explorer/entries/plain-words.js';
import { kindNamed } from '../../explorer/entries/registry.js';
import type { Json, PageRecord } from '../../explorer/state/notebook-record.js';
import { numberSpecs } from '../../explorer/state/number-specs.js';
import type { Scenario } from '../../explorer/state/scenario.js';
import type { UnitSystem } from '../../explorer/text/unit-systems.js';
import { createSolver } from '../../explorer/worker/answering.js';
import { keyOf, type Answer, type Asks, type Question } from '../../explorer/worker/questions.js';

const solve = createSolver(createEthanolWater());

/** Tells the answer to a question; null where the solver refuses it. */
export type Asking = (question: Question) => Promise<Answer | null>;

/** Answers runs at a tolerance; at the page's own where none is given. Each question once. */
export function answersAt(tolerance?: number): Asking {
  const known = new Map<string, Promise<Answer | null>>();
  const answer = async (question: Question): Promise<Answer | null> => {
    const reply = await solve(tolerance === undefined ? question : withTolerance(question, tolerance));
    return reply.kind === 'answered' ? reply.answer : null;
  };
  return (question) => {
    const key = keyOf(question);
    const found = known.get(key) ?? answer(question);
    known.set(key, found);
    return found;
  };
}

/** The same question about runs at another tolerance. */
function withTolerance(question: Question, tolerance: number): Question {
  return 'problem' in question ? { ...question, problem: { ...question.problem, tolerance } } : question;
}

/** An entry of a page, ready to be read. */
interface Readable {
  readonly id: string;
  readonly kind: EntryKind;
  readonly data: Json;
}

export async function readable({ entries }: PageRecord): Promise<readonly Readable[]> {
  return Promise.all(
    entries.map(async ({ id, kind: name, data }) => {
      const kind = (await kindNamed(name))!;
      const checked = kind.check(data);
      if (!checked.good) throw new Error(`${id}: ${checked.why}`);
      await kind.prepare?.(checked.data);
      return { id, kind, data: checked.data };
    }),
  );
}

/** What the entries of a page print for a scenario, by entry; null where the solver refuses the numbers. */
export async function printedBy(
  entries: readonly Readable[],
  scenario: Scenario,
  units: UnitSystem,
  asking: Asking,
): Promise<ReadonlyMap<string, string> | null> {
  const common = {};
  const drawn: { readonly entry: Readable; readonly here: Here }[] = [];
  for (const entry of entries) {
    const now = await givenBy(entry.kind.asks?.(entry.data, scenario, common) ?? {}, scenario, asking);
    if (now === null) return null;
    const later = await laterBy(entry.kind.asksLater?.(entry.data, scenario, common) ?? {}, scenario, asking);
    drawn.push({ entry, here: hereOf(entry, scenario, units, now, later) });
  }
  const results = drawn.flatMap(({ entry, here }): readonly PageResult[] =>
    (entry.kind.provides?.(here) ?? []).map((result) => ({ ...result, entry: entry.id })),
  );
  return new Map(
    drawn.map(({ entry: { id, kind }, here }) => {
      const whole = inWords({ ...here, results });
      const parts = [kind.words(whole), plainWords(kind.view(whole)), plainWords(kind.notes?.(whole))];
      return [id, [...new Set(parts.flatMap((part) => part.split('\n')))].filter((line) => line !== '').join('\n')];
    }),
  );
}

/** The answers to questions by name, with their numbers; null where the solver refuses one. */
export async function givenBy(asks: Asks, scenario: Scenario, asking: Asking): Promise<Answered | null> {
  const answers: Record<string, Answer> = {};
  for (const [name, question] of Object.entries(asks)) {
    const answer = await asking(question);
    if (answer === null) return null;
    answers[name] = answer;
  }
  return { scenario, answers };
}

async function laterBy(asks: Asks, scenario: Scenario, asking: Asking): Promise<Later> {
  const answers: Record<string, Answer> = {};
  for (const [name, question] of Object.entries(asks)) {
    const answer = await asking(question);
    if (answer !== null) answers[name] = answer;
  }
  const [of, come] = [Object.keys(asks).length, Object.keys(answers).length];
  const whole = come === of ? { scenario, answers } : undefined;
  const none = (): void => undefined;
  return { scenario, answers, whole, done: of, of, refused: of - come, state: 'finished', stop: none, goOn: none };
}

function hereOf({ id, data }: Readable, scenario: Scenario, units: UnitSystem, now: Answered, later: Later): Here {
  const none = (): void => undefined;
  return {
    id,
    data,
    work: undefined,
    scenario,
    now,
    kept: [],
    later,
    entries: [],
    results: [],
    units,
    specs: numberSpecs(units),
    place: 'desk',
    own: false,
    cursor: { along: 'volume', x: null },
    moveCursor: none,
    common: {},
    setCommon: none,
    change: none,
    keep: none,
    offer: none,
    blank: none,
    setup: none,
    set: none,
    rows: (_figure, fresh) => fresh(),
    once: (_name, _from, make) => make(),
    mark: (figure) => figure,
    shared: (make) => make(),
    redraw: none,
  };
}
