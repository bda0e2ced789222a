// The workers that answer, as many as there are cores and four at most, and the queue before them. The first alone is
// started for the first figure. A question nobody wants any more leaves the queue; one that is being worked on has a
// moment to come to its end, then its worker is ended. Where a worker or a part of it cannot be loaded, questions wait
// until it can: the frame says so.

import { wanted } from '../offline/wanted.js';
import type { Question, Reply } from './questions.js';
import type { FromSolver, ToSolver } from './solver.worker.js';

/** A worker that runs. */
export interface Running {
  readonly post: (message: ToSolver) => void;
  readonly end: () => void;
}
/** Who is told what a worker says, and that it cannot be loaded or has failed. */
export interface Listening {
  readonly said: (message: FromSolver) => void;
  readonly gone: (why: string) => void;
}

export interface PoolOptions {
  readonly start: (listening: Listening) => Running;
  /** What is done before a worker that could not answer is started once more. */
  readonly afresh: () => Promise<void>;
  /** Workers at most. */
  readonly most: number;
}

/** 'first' is for the first figure, for which no second worker is started; 'later' gives way to all others. */
export type Urgency = 'first' | 'now' | 'later';
const inOrder: readonly Urgency[] = ['first', 'now', 'later'];

/** A question that has been asked. */
export interface Ticket {
  readonly reply: Promise<Reply>;
  /** Nobody wants it any more. False where it is being worked on and may yet come. */
  readonly drop: () => boolean;
  /** It is wanted after all, and so urgently. */
  readonly keep: (urgency: Urgency) => void;
}

/** What the solver threw is a fault of its own, not of the network: it is not tried again. */
type Outcome = Reply | { readonly threw: Error };

interface Job {
  readonly question: Question;
  readonly reached: (reached_s: number) => void;
  urgency: Urgency;
  wanted: boolean;
  came: (outcome: Outcome) => void;
  failed: (error: Error) => void;
}

/** A worker with its jobs by number: the one it works on, then those that lie before it. */
interface Seat {
  readonly jobs: Map<number, Job>;
  running: Running;
  ending: ReturnType<typeof setTimeout> | undefined;
}

/** Jobs of a worker at once: with one lying before it, it never waits for the page. */
const atOnce: Readonly<Record<Urgency, number>> = { first: 2, now: 2, later: 1 };
/** What nobody wants any more may go on for so long, ms: about what starting a worker costs. */
const patience_ms = 300;
const says = 'The figures cannot be computed: the solver, or a part of it, could not be loaded.';

export class Pool {
  readonly #options: PoolOptions;
  readonly #seats = new Set<Seat>();
  #queue: Job[] = [];
  #grows = false;
  #numbers = 0;

  constructor(options: PoolOptions) {
    this.#options = options;
  }

  ask(question: Question, urgency: Urgency, reached: (reached_s: number) => void): Ticket {
    const nobody = (): void => undefined;
    const job: Job = { question, urgency, wanted: true, reached, came: nobody, failed: nobody };
    const attempt = (): Promise<Outcome> =>
      new Promise((came, failed) => {
        Object.assign(job, { came, failed });
        this.#queue.push(job);
        this.#work();
      });
    const again = async (): Promise<Outcome> => {
      await this.#options.afresh();
      return attempt();
    };
    const reply = wanted(says, () => attempt().catch(again)).then((outcome) => {
      if ('threw' in outcome) throw outcome.threw;
      return outcome;
    });
    return {
      reply,
      drop: () => this.#drop(job),
      keep: (sooner) => {
        job.wanted = true;
        if (inOrder.indexOf(sooner) < inOrder.indexOf(job.urgency)) job.urgency = sooner;
        this.#work();
      },
    };
  }

  /** Gives out what the workers have room for, the most urgent first. */
  #work(): void {
    this.#grows ||= this.#queue.some(({ urgency }) => urgency !== 'first');
    for (;;) {
      const urgency = inOrder.find((one) => this.#queue.some((job) => job.urgency === one));
      const seat = urgency === undefined ? undefined : this.#seatFor(urgency);
      if (seat === undefined) return;
      const [job] = this.#queue.splice(
        this.#queue.findIndex((one) => one.urgency === urgency),
        1,
      );
      this.#numbers += 1;
      seat.jobs.set(this.#numbers, job!);
      seat.running.post({ id: this.#numbers, question: job!.question });
    }
  }

  /** An idle worker, or a new one, or room before one that is busy. */
  #seatFor(urgency: Urgency): Seat | undefined {
    const [freest] = [...this.#seats].sort((one, other) => one.jobs.size - other.jobs.size);
    if (freest?.jobs.size === 0) return freest;
    if (freest === undefined || (this.#grows && this.#seats.size < this.#options.most)) return this.#start();
    return freest.jobs.size < atOnce[urgency] ? freest : undefined;
  }

  #start(): Seat {
    const seat: Partial<Seat> & Pick<Seat, 'jobs'> = { jobs: new Map() };
    seat.running = this.#options.start({
      said: (message) => this.#heard(seat as Seat, message),
      gone: (why) => this.#end(seat as Seat, new Error(`The solver's worker is gone: ${why}`)),
    });
    this.#seats.add(seat as Seat);
    return seat as Seat;
  }

  #heard(seat: Seat, message: FromSolver): void {
    const job = seat.jobs.get(message.id);
    if (job === undefined) return;
    if ('reached_s' in message) {
      job.reached(message.reached_s);
      return;
    }
    seat.jobs.delete(message.id);
    if ('reply' in message) job.came(message.reply);
    else if ('threw' in message) job.came(message);
    else {
      this.#end(seat);
      job.failed(new Error(message.missing));
    }
    this.#watch(seat);
    this.#work();
  }

  /** Ends a worker. Its jobs fail where that is why it ends; else others do them. */
  #end(seat: Seat, why?: Error): void {
    if (!this.#seats.delete(seat)) return;
    clearTimeout(seat.ending);
    seat.running.end();
    const jobs = [...seat.jobs.values()];
    seat.jobs.clear();
    if (why === undefined) this.#queue.unshift(...jobs);
    else for (const job of jobs) job.failed(why);
    for (const job of jobs) if (!job.wanted) this.#drop(job);
    this.#work();
  }

  #drop(job: Job): boolean {
    job.wanted = false;
    const waits = this.#queue.includes(job);
    if (waits) {
      this.#queue = this.#queue.filter((one) => one !== job);
      job.came({ threw: new Error('Nobody wants this answer any more.') });
    } else this.#seats.forEach((seat) => this.#watch(seat));
    return waits;
  }

  /** Where a worker works on what nobody wants, it is ended after a moment. */
  #watch(seat: Seat): void {
    const [worksOn] = seat.jobs.values();
    clearTimeout(seat.ending);
    if (worksOn?.wanted !== false) return;
    seat.ending = setTimeout(() => {
      if (!worksOn.wanted) this.#end(seat);
    }, patience_ms);
  }
}
