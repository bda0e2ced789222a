// What the entries of a page ask together: one request, of which the newest wins, and for each entry its own
// answers. An entry whose questions are the very same record keeps the very same answers, so that nothing of it
// is drawn again. For pencil lines the same is asked with their numbers.

import type { Answered } from '../entries/entry.js';
import type { Asks } from '../entries/asking.js';
import type { Common, Json } from '../state/notebook-record.js';
import type { Scenario } from '../state/scenario.js';
import { refusalOf } from '../text/messages.js';
import { newestWins, type Lane } from '../worker/newest-wins.js';
import type { Answer, Question, Reply } from '../worker/questions.js';
import type { Solver } from '../worker/solver-client.js';

/** What an entry asks, and the data it is made of: answers belong to both. */
export interface Want {
  readonly data: Json;
  readonly asks: Asks;
}
/** By the id of the entry. */
export type Wanted = ReadonlyMap<string, Want>;

interface Request extends Belongs {
  readonly wanted: Wanted;
}

/** What answers belong to beside their questions. */
type Belongs = Pick<Answered, 'scenario'> & { readonly common: Common };

interface Held extends Want {
  readonly answered: Answered;
}

/** An entry's answers for a pencil line; undefined while they are on their way. */
interface Pencilled {
  readonly made: { readonly data: Json; readonly common: Common };
  answered: Answered | undefined;
}

export class EntryAsking {
  readonly #solver: () => Solver;
  readonly #changed: () => void;
  readonly #lane: Lane<Request>;
  #asked: Wanted = new Map();
  #held: ReadonlyMap<string, Held> = new Map();
  /** By pencil line, then by entry. */
  readonly #pencils = new WeakMap<Scenario, Map<string, Pencilled>>();
  /** Why the latest numbers are refused. */
  refusal = '';
  /** The numbers of the latest answers; undefined until the first come. */
  scenario: Scenario | undefined;

  constructor(solver: () => Solver, changed: () => void) {
    this.#solver = solver;
    this.#changed = changed;
    this.#lane = newestWins(
      ({ wanted }) => this.#solver().answer(distinct(wanted)),
      (reply, request) => this.#receive(reply, request),
      () => {
        this.refusal = refusalOf([]);
        changed();
      },
    );
  }

  /** Asks for all entries; does nothing where every one of them asks what it asked before. */
  ask(wanted: Wanted, scenario: Scenario, common: Common = {}): void {
    const same =
      wanted.size === this.#asked.size && [...wanted].every(([id, want]) => sameWant(this.#asked.get(id), want));
    if (same) return;
    this.#asked = wanted;
    this.#lane.request({ wanted, scenario, common });
  }

  /** The answers an entry has; undefined until they have come for what it is now. */
  now(id: string, data: Json): Answered | undefined {
    const held = this.#held.get(id);
    return held?.data === data ? held.answered : undefined;
  }

  /** An entry's answers for the numbers of a pencil line; undefined until they have come. */
  pencil(scenario: Scenario, id: string, made: Pencilled['made'], asks: () => Asks): Answered | undefined {
    const known = this.#pencils.get(scenario) ?? new Map<string, Pencilled>();
    this.#pencils.set(scenario, known);
    const has = known.get(id);
    if (has?.made.data === made.data && has.made.common === made.common) return has.answered;
    const held = this.now(id, made.data);
    const pencilled: Pencilled = { made, answered: held?.scenario === scenario ? held : undefined };
    known.set(id, pencilled);
    if (pencilled.answered === undefined) void this.#askPencil(asks(), scenario, pencilled);
    return pencilled.answered;
  }

  async #askPencil(asks: Asks, scenario: Scenario, pencilled: Pencilled): Promise<void> {
    const reply = await this.#solver().answer(Object.values(asks));
    if (reply.kind !== 'answered') return;
    pencilled.answered = answersOf(asks, (_, place) => reply.answers[place]!, {
      scenario,
      common: pencilled.made.common,
    });
    this.#changed();
  }

  #receive(reply: Reply, { wanted, scenario, common }: Request): void {
    if (reply.kind === 'refused') {
      this.refusal = refusalOf(reply.faults);
    } else {
      const answers = new Map(distinct(wanted).map((question, place) => [keyOf(question), reply.answers[place]!]));
      this.#held = new Map(
        [...wanted].map(([id, want]) => {
          const before = this.#held.get(id);
          if (before !== undefined && sameWant(before, want)) return [id, before];
          return [
            id,
            {
              ...want,
              answered: answersOf(want.asks, (question) => answers.get(keyOf(question))!, { scenario, common }),
            },
          ];
        }),
      );
      this.refusal = '';
      this.scenario = scenario;
    }
    this.#changed();
  }
}

function sameWant(one: Want | undefined, other: Want): boolean {
  return one?.asks === other.asks && one.data === other.data;
}

const keys = new WeakMap<Question, string>();

function keyOf(question: Question): string {
  const known = keys.get(question) ?? JSON.stringify(question);
  keys.set(question, known);
  return known;
}

/** Each question once, whoever asks it. */
function distinct(wanted: Wanted): Question[] {
  const all = [...wanted.values()].flatMap(({ asks }) => Object.values(asks));
  return [...new Map(all.map((question) => [keyOf(question), question])).values()];
}

function answersOf(asks: Asks, answer: (question: Question, place: number) => Answer, belongs: Belongs): Answered {
  const answers = Object.entries(asks).map(([name, question], place) => [name, answer(question, place)] as const);
  return { ...belongs, answers: Object.fromEntries(answers) };
}
