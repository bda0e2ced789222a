// When the open notebook is written: a short rest after the first change that is not yet there, whether the reader
// pauses or not; again where it did not work; at once where the window is left. One writing at a time.

import { whyNotKept, type NotKept } from './records.js';

/** From the first change that is not kept to its writing, ms. What a kill can lose is this and two writings. */
export const rest_ms = 200;
/** From a failed writing to the next try, ms. */
export const again_ms = 2000;
/** How long a writing may take before it is said that it does, ms. */
export const patience_ms = 5000;

/** How it went, for whoever shows it. */
export type KeptState =
  /** Nothing has been changed yet. */
  | { readonly kind: 'untouched' }
  | { readonly kind: 'kept' }
  | { readonly kind: 'not-kept'; readonly why: NotKept }
  /** Another window changed or deleted the same notebook; this one is kept as a copy from now on. */
  | { readonly kind: 'parted'; readonly deleted: boolean };

/** What writes. */
export interface Writer {
  write(): Promise<void>;
  /** Hands over what waits; `writing` while a writing is under way. */
  leave(writing: boolean): void;
  readonly parted: { readonly deleted: boolean } | undefined;
  readonly left: boolean;
  /** Whether what is written outlasts the window. */
  readonly lasting: boolean;
}

export type Timer = (run: () => void, ms: number) => () => void;

const afterTime: Timer = (run, ms) => {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
};

export class Autosave {
  readonly #writer: Writer;
  readonly #told: (state: KeptState) => void;
  readonly #timer: Timer;
  #state: KeptState = { kind: 'untouched' };
  /** Whether there is something that is not written yet. */
  #waits = false;
  #stop: (() => void) | undefined;
  /** The writing that is under way; `answered` when it ended or took too long. */
  #writing: { readonly answered: Promise<void> } | undefined;

  constructor(writer: Writer, told: (state: KeptState) => void, timer = afterTime) {
    this.#writer = writer;
    this.#told = told;
    this.#timer = timer;
  }

  get state(): KeptState {
    return this.#state;
  }

  /** Another notebook is open now; `there` where it is kept already. */
  opened(there: boolean): void {
    this.#cancel();
    this.#waits = false;
    this.#writing = undefined;
    this.#state = { kind: there ? 'kept' : 'untouched' };
    this.#told(this.#state);
  }

  /** The notebook changed. */
  changed(): void {
    this.#waits = true;
    if (this.#writing === undefined) this.#after(rest_ms);
  }

  /** Writes what waits; done when it is written, or could not be. */
  async flush(): Promise<void> {
    while (this.#writing !== undefined || (this.#waits && this.#stop !== undefined)) {
      this.#cancel();
      this.#start();
      await this.#writing?.answered;
      if (this.#state.kind === 'not-kept') return;
    }
  }

  /** The window is being left: what waits is handed over within this call; false where nothing does. */
  leave(): boolean {
    const waits = this.#waits || this.#writing !== undefined;
    if (waits) this.#writer.leave(this.#writing !== undefined);
    return waits;
  }

  /** The window was not left after all. */
  back(): void {
    if (this.#writer.left) this.changed();
  }

  #start(): void {
    if (this.#writing !== undefined || !this.#waits) return;
    this.#waits = false;
    let answer = (): void => undefined;
    const writing = { answered: new Promise<void>((resolve) => (answer = resolve)) };
    this.#writing = writing;
    const isOurs = (): boolean => this.#writing === writing;
    const late = this.#timer(() => {
      if (isOurs()) this.#tell({ kind: 'not-kept', why: 'silent' });
      answer();
    }, patience_ms);
    void this.#writer
      .write()
      .then(
        () => {
          if (isOurs()) this.#tell(this.#written());
        },
        (error: unknown) => {
          if (!isOurs()) return;
          this.#waits = true;
          this.#tell({ kind: 'not-kept', why: whyNotKept(error) });
        },
      )
      .finally(() => {
        late();
        answer();
        if (!isOurs()) return;
        this.#writing = undefined;
        if (this.#waits) this.#after(this.#state.kind === 'not-kept' ? again_ms : rest_ms);
      });
  }

  #written(): KeptState {
    const { lasting, parted } = this.#writer;
    if (!lasting) return { kind: 'not-kept', why: 'blocked' };
    return parted === undefined ? { kind: 'kept' } : { kind: 'parted', deleted: parted.deleted };
  }

  #tell(next: KeptState): void {
    const before = this.#state;
    const same = next.kind === before.kind && (next.kind !== 'not-kept' || next.why === (before as typeof next).why);
    if (same) return;
    this.#state = next;
    this.#told(next);
  }

  #after(ms: number): void {
    this.#stop ??= this.#timer(() => {
      this.#stop = undefined;
      this.#start();
    }, ms);
  }

  #cancel(): void {
    this.#stop?.();
    this.#stop = undefined;
  }
}
