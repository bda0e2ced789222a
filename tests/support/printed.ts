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
import { drift } from '../../explorer/worker/drift.js';
import { createSolver, type Answer, type Question } from '../../explorer/worker/questions.js';
import { train } from '../../explorer/worker/train.js';

const solver = createSolver(createEthanolWater(), { drift, train });

/** Tells the answers to questions; null where the solver refuses one. */
export type Asking = (questions: readonly Question[]) => readonly Answer[] | null;

/** Answers runs at a tolerance; at the page's own where none is given. Each question once. */
export function answersAt(tolerance?: number): Asking {
  const known = new Map<string, Answer | null>();
  const answer = (asked: Question): Answer | null => {
    const key = JSON.stringify(asked);
    const before = known.get(key);
    if (before !== undefined) return before;
    const reply = solver([tolerance === undefined ? asked : withTolerance(asked, tolerance)]);
    const found = reply.kind === 'answered' ? reply.answers[0]! : null;
    known.set(key, found);
    return found;
  };
  return (questions) => {
    const answers: Answer[] = [];
    for (const asked of questions) {
      const found = answer(asked);
      if (found === null) return null;
      answers.push(found);
    }
    return answers;
  };
}

/** The same question about runs at another tolerance. */
function withTolerance(question: Question, tolerance: number): Question {
  return 'problem' in question ? ({ ...question, problem: { ...question.problem, tolerance } } as Question) : question;
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
export function printedBy(
  entries: readonly Readable[],
  scenario: Scenario,
  units: UnitSystem,
  asking: Asking,
): ReadonlyMap<string, string> | null {
  const common = {};
  const drawn: { readonly entry: Readable; readonly here: Here }[] = [];
  for (const entry of entries) {
    const now = givenBy(entry.kind.asks?.(entry.data, scenario, common) ?? {}, scenario, asking);
    if (now === null) return null;
    const later = answeredLater(entry.kind.asksLater?.(entry.data, scenario, common) ?? {}, scenario, asking);
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
export function givenBy(asks: Readonly<Record<string, Question>>, scenario: Scenario, asking: Asking): Answered | null {
  const answers = asking(Object.values(asks));
  if (answers === null) return null;
  return { scenario, answers: Object.fromEntries(Object.keys(asks).map((name, place) => [name, answers[place]!])) };
}

function answeredLater(asks: Readonly<Record<string, Question>>, scenario: Scenario, asking: Asking): Later {
  const answers: Record<string, Answer> = {};
  for (const [name, question] of Object.entries(asks)) {
    const answer = asking([question])?.[0];
    if (answer !== undefined) answers[name] = answer;
  }
  const of = Object.keys(asks).length;
  const none = (): void => undefined;
  return { scenario, answers, done: of, of, state: 'finished', stop: none, goOn: none };
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
    rows: (_figure, fresh) => fresh(),
    mark: (figure) => figure,
    solver: { answer: () => Promise.reject(new Error('an entry asks for itself')) },
    shared: (make) => make(),
    redraw: none,
  };
}
