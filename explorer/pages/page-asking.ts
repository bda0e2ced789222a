// What the entries of a page ask together: one request, of which the newest wins, and for each entry its own answers.
// Questions are known by their content: an entry that asks the same keeps the very same answers, so that nothing of it
// is drawn again. A pencil line asks the same with its numbers.

import type { Answered } from '../entries/entry.js';
import type { Common, Json } from '../state/notebook-record.js';
import type { Scenario } from '../state/scenario.js';
import { refusalOf } from '../text/messages.js';
import { newestWins, type Lane } from '../worker/newest-wins.js';
import type { Urgency } from '../worker/pool.js';
import { keyOf, type Answer, type Answers, type Asks, type Question, type Reply } from '../worker/questions.js';
import type { Solver } from '../worker/solver-client.js';

/** What is asked, and what the answers belong to. */
export interface Want {
  readonly data: Json;
  readonly scenario: Scenario;
  readonly common: Common;
  readonly asks: Asks;
  /** Others do not wait for its answers, nor it for theirs. */
  readonly apart?: boolean;
  /** A pencil line: nothing is refused for it. */
  readonly pencil?: boolean;
}
/** By the id of the entry, or of one of its pencil lines. */
export type Wanted = ReadonlyMap<string, Want>;

/** What was asked, by its content. */
interface Keyed extends Want {
  readonly key: string;
}
interface Held extends Keyed {
  readonly answered: Answered;
}

export class PageAsking {
  readonly #solver: () => Solver;
  readonly #changed: () => void;
  readonly #lanes = new Map<string, Lane<ReadonlyMap<string, Keyed>>>();
  #urgency: Urgency = 'now';
  #asked: ReadonlyMap<string, Keyed> = new Map();
  readonly #held = new Map<string, Held>();
  /** Why the latest numbers are refused, by lane. */
  readonly #refusals = new Map<string, string>();
  /** The numbers of the latest answers; undefined until the first come. */
  scenario: Scenario | undefined;
  /** How far a long run has come that the page waits for, s. */
  reached_s: number | null = null;

  constructor(solver: () => Solver, changed: () => void) {
    this.#solver = solver;
    this.#changed = changed;
  }

  get refusal(): string {
    return [...this.#refusals.values()].find((why) => why !== '') ?? '';
  }

  /** Asks for all of them; does nothing where every one asks what it asked before. */
  ask(wanted: Wanted, urgency: Urgency = 'now'): void {
    const before = this.#asked;
    this.#urgency = urgency;
    this.#asked = new Map([...wanted].map(([id, want]) => [id, { ...want, key: JSON.stringify(want.asks) }]));
    for (const [id, held] of this.#held) {
      const want = this.#asked.get(id);
      if (want === undefined) this.#held.delete(id);
      else if (want.key === held.key) this.#held.set(id, heldBy(want, held.answered.answers, held));
    }
    const lanes = new Map<string, Map<string, Keyed>>();
    for (const [id, want] of this.#asked) {
      const lane = want.apart === true ? id : '';
      lanes.set(lane, (lanes.get(lane) ?? new Map<string, Keyed>()).set(id, want));
    }
    for (const [name, wants] of lanes) {
      const changed = [...wants].some(([id, { key }]) => before.get(id)?.key !== key);
      if (changed) this.#lane(name).request(wants);
      else if (name === '') this.#note(wants);
    }
  }

  /** The answers an entry has; undefined until they have come for what it is now. */
  now(id: string, data: Json): Answered | undefined {
    const held = this.#held.get(id);
    return held?.data === data ? held.answered : undefined;
  }

  #lane(name: string): Lane<ReadonlyMap<string, Keyed>> {
    const known = this.#lanes.get(name);
    if (known !== undefined) return known;
    const lane = newestWins<ReadonlyMap<string, Keyed>, ReadonlyMap<string, Reply>>(
      (wants, signal) => this.#answers(wants, signal),
      (replies, wants) => this.#receive(name, replies, wants),
      () => {
        this.#refusals.set(name, refusalOf([]));
        this.#changed();
      },
    );
    this.#lanes.set(name, lane);
    return lane;
  }

  /** Each question once, whoever asks it. */
  async #answers(wants: ReadonlyMap<string, Keyed>, signal: AbortSignal): Promise<ReadonlyMap<string, Reply>> {
    const questions = new Map([...wants.values()].flatMap(({ asks }) => Object.values(asks).map(keyed)));
    const reached = (reached_s: number): void => {
      this.reached_s = reached_s;
      this.#changed();
    };
    const how = { urgency: this.#urgency, signal, reached };
    const replies = [...questions].map(async ([key, question]): Promise<[string, Reply]> => [
      key,
      await this.#solver().answer(question, how),
    ]);
    return new Map(await Promise.all(replies));
  }

  #receive(lane: string, replies: ReadonlyMap<string, Reply>, wants: ReadonlyMap<string, Keyed>): void {
    let refusal = '';
    for (const [id, want] of wants) {
      const found = answersOf(want.asks, (question) => replies.get(keyOf(question))!);
      if ('faults' in found) {
        if (want.pencil !== true) refusal = refusalOf(found.faults);
        continue;
      }
      // Numbers that ask nothing else may have changed meanwhile.
      const latest = this.#asked.get(id);
      const now = latest?.key === want.key ? latest : want;
      if (latest !== undefined) this.#held.set(id, heldBy(now, found.answers, this.#held.get(id)));
    }
    if (lane === '' && refusal === '') this.#note(wants);
    this.#refusals.set(lane, refusal);
    this.reached_s = null;
    this.#changed();
  }

  /** The numbers that all of these are answered for. */
  #note(wants: ReadonlyMap<string, Keyed>): void {
    const answered = [...wants].flatMap(([id, { pencil }]) => (pencil === true ? [] : [this.#held.get(id)]));
    const [first] = answered;
    if (first !== undefined && answered.every((held) => held?.scenario === first.scenario))
      this.scenario = first.scenario;
  }
}

/** The very same answers with the very same numbers are the very same record. */
function heldBy(want: Keyed, answers: Answers<Asks>, before: Held | undefined): Held {
  const { scenario, common } = want;
  const had = before?.answered;
  const same = before?.key === want.key && had?.scenario === scenario && had.common === common;
  const kept = before?.key === want.key ? before.answered.answers : answers;
  return { ...want, answered: same ? had : { scenario, common, answers: kept } };
}

function keyed(question: Question): [string, Question] {
  return [keyOf(question), question];
}

type Faults = Extract<Reply, { kind: 'refused' }>['faults'];

/** Answers by name, or the faults for which there are none. */
export function answersOf(
  asks: Asks,
  replyTo: (question: Question, name: string) => Reply,
): { readonly answers: Answers<Asks> } | { readonly faults: Faults } {
  const answers: Record<string, Answer> = {};
  for (const [name, question] of Object.entries(asks)) {
    const reply = replyTo(question, name);
    if (reply.kind === 'refused') return reply;
    answers[name] = reply.answer;
  }
  return { answers: answers };
}
