// The kinds of a page's entries, loaded as they are needed: first those up to the first figure, the rest once it has
// been drawn. An entry is ready when its kind is there, its data have been checked and what they need is loaded.

import type { EntryKind } from '../entries/entry.js';
import { kindAtHand, kindNamed } from '../entries/registry.js';
import { whyNotLoaded } from '../offline/wanted.js';
import type { EntryRecord, Json } from '../state/notebook-record.js';

/** An entry that can be drawn. */
export interface Ready {
  readonly kind: EntryKind;
  readonly data: Json;
}

/** Why an entry cannot be drawn, and how to try again where that may help. */
export interface Trouble {
  readonly trouble: string;
  readonly again?: () => void;
}

/** An entry that can be drawn, or why it cannot. */
export type Readiness =
  | Ready
  | Trouble
  /** On its way. */
  | undefined;

interface Known {
  readonly source: Json;
  readonly readiness: Readiness;
}

export class KindLoading {
  readonly #changed: () => void;
  readonly #known = new Map<string, Known>();

  constructor(changed: () => void) {
    this.#changed = changed;
    addEventListener('online', this.#again);
  }

  /** Whether an entry is ready; begins to load what it needs. While new data wait for something it stays what it was,
   * but where its kind says otherwise. */
  of({ id, kind: name, data }: EntryRecord): Readiness {
    const known = this.#known.get(id);
    if (known?.source === data) return known.readiness;
    const kind = kindAtHand(name);
    const readiness = (kind === undefined ? undefined : this.#prepared(id, kind, data)) ?? known?.readiness;
    if (kind === undefined) void this.#fetch(id, name, data);
    this.#known.set(id, { source: data, readiness });
    return readiness;
  }

  async #fetch(id: string, name: string, data: Json): Promise<void> {
    const kind = await kindNamed(name).catch(() => null);
    if (kind === undefined)
      this.#settle(id, data, {
        trouble: `This notebook holds an entry of the kind ‘${name}’, which this explorer does not know. It is kept as it is.`,
      });
    else if (kind === null) this.#settle(id, data, this.#missing());
    else {
      const readiness = this.#prepared(id, kind, data);
      if (readiness !== undefined) this.#settle(id, data, readiness);
    }
  }

  #prepared(id: string, kind: EntryKind, data: Json): Readiness {
    const checked = kind.check(data);
    if (!checked.good)
      return { trouble: `This ${kind.title.toLowerCase()} cannot be shown: ${checked.why}. It is kept as it is.` };
    const ready = { kind, data: checked.data };
    const wait = kind.prepare?.(checked.data);
    if (wait === undefined) return ready;
    wait.then(
      () => this.#settle(id, data, ready),
      () => this.#settle(id, data, this.#missing()),
    );
    const before = this.#known.get(id)?.readiness;
    return kind.meanwhile === true && before !== undefined && 'kind' in before && before.kind === kind
      ? ready
      : undefined;
  }

  #missing(): Trouble {
    return {
      trouble: `What this entry needs could not be loaded. ${whyNotLoaded()}`,
      again: this.#again,
    };
  }

  /** Tries all entries again that lack something: what one lacks most of them lack. */
  readonly #again = (): void => {
    for (const [id, { readiness }] of [...this.#known])
      if (readiness !== undefined && 'trouble' in readiness && readiness.again !== undefined) this.#known.delete(id);
    this.#changed();
  };

  #settle(id: string, data: Json, readiness: Readiness): void {
    if (this.#known.get(id)?.source !== data) return;
    this.#known.set(id, { source: data, readiness });
    this.#changed();
  }
}
