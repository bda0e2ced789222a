// What entries ask, worked out once for the same data and numbers: a kind that gives a new record each time it is
// called asks no more often for it.

import type { Asks } from '../entries/asking.js';
import type { EntryKind } from '../entries/entry.js';
import type { Common, Json } from '../state/notebook-record.js';
import type { Scenario } from '../state/scenario.js';

interface Known {
  readonly data: Json;
  readonly scenario: Scenario;
  readonly common: Common;
  readonly asks: Asks | undefined;
  readonly asksLater: Asks | undefined;
}

export class AsksOf {
  readonly #known = new Map<string, Known>();

  of(id: string, kind: EntryKind, data: Json, scenario: Scenario, common: Common): Pick<Known, 'asks' | 'asksLater'> {
    const known = this.#known.get(id);
    if (known?.data === data && known.scenario === scenario && known.common === common) return known;
    const asks = kind.asks?.(data, scenario, common);
    const asksLater = kind.asksLater?.(data, scenario, common);
    const next = { data, scenario, common, asks, asksLater };
    this.#known.set(id, next);
    return next;
  }
}
