// What entries ask, worked out once for the same data and numbers: a cursor that moves asks nothing.

import type { EntryKind } from '../entries/entry.js';
import type { Common, Json } from '../state/notebook-record.js';
import type { Scenario } from '../state/scenario.js';
import type { Want } from './page-asking.js';

interface Known extends Omit<Want, 'asks'> {
  readonly asks: Want['asks'] | undefined;
  readonly asksLater: Want['asks'] | undefined;
}

export class AsksOf {
  readonly #known = new Map<string, Known>();

  of(id: string, kind: EntryKind, data: Json, scenario: Scenario, common: Common): Known {
    const known = this.#known.get(id);
    if (known?.data === data && known.scenario === scenario && known.common === common) return known;
    const asks = kind.asks?.(data, scenario, common);
    const asksLater = kind.asksLater?.(data, scenario, common);
    const next = { data, scenario, common, asks, asksLater };
    this.#known.set(id, next);
    return next;
  }
}
