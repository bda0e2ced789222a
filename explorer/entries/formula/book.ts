// The formulas of one page together: what they come to depends on each other. The book asks the engine when text,
// numbers or units change, keeps the last good value of each, and offers named values to the other entries.

import { startFormulas, type FormulaEngine } from '../../formula/formula-client.js';
import type { ListedFunction } from '../../formula/functions/registry.js';
import type {
  CurveAsk,
  FormulaAsk,
  FormulaCurve,
  FormulaReply,
  FormulaResult,
  FormulaSheet,
} from '../../formula/sheet.js';
import { newestWins, type Lane } from '../../worker/newest-wins.js';
import type { Here } from '../entry.js';
import { formulasIn, type FormulaData } from './data.js';
import { offeredFrom } from './offered.js';
import { numbersOf, type NamedNumber } from './page-names.js';
import { valueText } from './value-text.js';

type Drawn = Exclude<FormulaCurve['outcome'], { readonly fault: unknown }>;

/** What is known of one formula. */
export interface Known {
  /** The last answer; undefined until there is one. Its text may be older than the one typed. */
  readonly result: FormulaResult | undefined;
  readonly curve: FormulaCurve | undefined;
  /** The last good value as text, and the last good curve. */
  readonly lastValue: string | null;
  readonly lastCurve: { readonly against: string; readonly drawn: Drawn } | null;
}

type FormulaBookSeen = Pick<Here, 'entries' | 'results' | 'scenario' | 'units'>;

const nothing: Known = { result: undefined, curve: undefined, lastValue: null, lastCurve: null };

/** One for all pages: a worker is costly and formulas are quick. */
const oneEngine = startFormulas();

export class FormulaBook {
  readonly #engine: FormulaEngine;
  readonly #known = new Map<string, Known>();
  readonly #heres = new Map<string, Here<FormulaData>>();
  readonly #lane: Lane<FormulaAsk>;
  #asked = '';
  /** What the entry seen last stood in; the entries of a page are drawn one after the other with the same. */
  #seen: FormulaBookSeen | undefined;
  /** Which values the curves that are being drawn belong to. */
  #drawing = 0;
  #failed = false;

  constructor(engine: FormulaEngine = oneEngine) {
    this.#engine = engine;
    this.#lane = newestWins(
      // Values first: curves can wait, and give way to the next keystroke.
      ({ sheet }) => this.#engine.answer({ sheet, curves: [] }),
      (reply, ask) => this.#receive(reply, ask),
      () => this.#fail(),
    );
  }

  /** Whether the engine could not be loaded. */
  get failed(): boolean {
    return this.#failed;
  }

  /** Undefined until the engine has been loaded. */
  get functions(): readonly ListedFunction[] | undefined {
    return this.#engine.functions();
  }

  /** Asks again after a failure. */
  again(): void {
    this.#asked = '';
    this.#seen = undefined;
    this.#redraw();
  }

  /** Takes note of an entry as it is drawn; asks when anything that formulas depend on has changed. */
  see(here: Here<FormulaData>): Known {
    this.#heres.set(here.id, here);
    if (sameAround(this.#seen, here)) return this.known(here.id);
    const { entries, results, scenario, units } = here;
    this.#seen = { entries, results, scenario, units };
    const ask = askOf(here);
    const asked = JSON.stringify(ask);
    if (asked !== this.#asked) {
      this.#asked = asked;
      this.#lane.request(ask);
    }
    return this.known(here.id);
  }

  known(id: string): Known {
    return this.#known.get(id) ?? nothing;
  }

  /** Names a formula depends on that have a number to vary, directly or by way of other lines. */
  against(id: string): readonly string[] {
    const byName = new Map(this.#results().map((result) => [result.name, result]));
    const names = new Set(this.known(id).result?.uses ?? []);
    for (const name of names) for (const used of byName.get(name)?.uses ?? []) names.add(used);
    return [...names].filter((name) => {
      const outcome = byName.get(name)?.outcome;
      return outcome === undefined || ('value' in outcome && outcome.value.is === 'number');
    });
  }

  /** The other formulas with a name. */
  namedLines(id: string): readonly { readonly name: string; readonly text: string; readonly value: string }[] {
    return this.#results().flatMap(({ id: other, name, outcome }) => {
      if (name === null || other === id) return [];
      const text = this.#heres.get(other)?.data.text ?? '';
      return [{ name, text, value: 'value' in outcome ? valueText(outcome.value) : 'has no value now' }];
    });
  }

  #results(): readonly FormulaResult[] {
    return [...this.#known.values()].flatMap(({ result }) => result ?? []);
  }

  #receive({ results }: FormulaReply, { sheet, curves }: FormulaAsk): void {
    this.#failed = false;
    const drawn = new Set(curves.map(({ id }) => id));
    for (const result of results) {
      const before = this.known(result.id);
      const { outcome } = result;
      const same = JSON.stringify(before.result) === JSON.stringify(result);
      if (same && (before.curve === undefined || drawn.has(result.id))) continue;
      this.#known.set(result.id, {
        ...before,
        result,
        curve: drawn.has(result.id) ? before.curve : undefined,
        lastValue: 'value' in outcome ? valueText(outcome.value) : before.lastValue,
      });
      this.#heres.get(result.id)?.offer(offeredFrom(result));
    }
    this.#redraw();
    void this.#draw(sheet, curves);
  }

  /** Curves one after the other, until there are newer values. */
  async #draw(sheet: FormulaSheet, curves: readonly CurveAsk[]): Promise<void> {
    this.#drawing += 1;
    const turn = this.#drawing;
    const waiting = [...curves];
    while (waiting.length > 0) {
      const reply = await this.#engine.whenIdle({ sheet, curves: waiting.slice(0, 1) }).catch(() => undefined);
      if (reply === undefined || turn !== this.#drawing) return;
      if (reply === null) continue; // something went first
      waiting.shift();
      reply.curves.forEach((curve) => this.#receiveCurve(curve));
    }
  }

  #receiveCurve(curve: FormulaCurve): void {
    const before = this.known(curve.id);
    if (JSON.stringify(before.curve) === JSON.stringify(curve)) return;
    const { outcome, against } = curve;
    const lastCurve = 'fault' in outcome ? before.lastCurve : { against, drawn: outcome };
    this.#known.set(curve.id, { ...before, curve, lastCurve });
    this.#redraw();
  }

  #fail(): void {
    this.#failed = true;
    this.#redraw();
  }

  #redraw(): void {
    [...this.#heres.values()].at(-1)?.redraw();
  }
}

/** Whether an entry is drawn with what another was drawn with: then nothing has changed since. */
function sameAround(seen: FormulaBookSeen | undefined, here: Here<FormulaData>): boolean {
  return (
    seen?.entries === here.entries &&
    seen.results === here.results &&
    seen.scenario === here.scenario &&
    seen.units === here.units
  );
}

/** Numbers of the page, without what formulas themselves offer. */
export function numbersAt(here: Here<FormulaData>): readonly NamedNumber[] {
  const formulas = new Set(formulasIn(here.entries).map(({ id }) => id));
  return numbersOf(
    here.scenario,
    here.results.filter(({ entry }) => !formulas.has(entry)),
  );
}

function askOf(here: Here<FormulaData>): FormulaAsk {
  const formulas = formulasIn(here.entries);
  return {
    sheet: {
      lines: formulas.map(({ id, data }) => ({ id, text: data.text })),
      quantities: numbersAt(here).map(({ name, kind, si }) => ({ name, kind, si })),
      units: here.units.name,
      stopped: [],
    },
    curves: formulas.flatMap(({ id, data }) => (data.plot === null ? [] : [{ id, ...data.plot }])),
  };
}
