// <kp-entries-page>: a page that is data. It loads the kinds of its entries, asks what they ask, gives each its
// `Here` and draws them in order; what the reader does goes upwards as acts. It knows no entry by name.

import { html, LitElement, nothing, type PropertyDeclarations, type PropertyValues } from 'lit';
import type { Here, Provided } from '../entries/entry.js';
import { permit } from '../entries/words.js';
import { wanted } from '../offline/wanted.js';
import { keepPencil, rubOutPencil } from '../state/acts.js';
import {
  newNotebook,
  noPageWork,
  type EntryRecord,
  type Notebook,
  type PageRecord,
  type PageWork,
} from '../state/notebook-record.js';
import type { RunCursor } from '../state/run-cursor.js';
import type { Path } from '../state/inputs.js';
import { startingScenario, type Scenario } from '../state/scenario.js';
import { clock } from '../text/format.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { Solver } from '../worker/solver-client.js';
import { ActEvent, CopyPageEvent, type Act } from './act-event.js';
import type { PageEditing } from './editing/page-editing.js';
import { AsksOf } from './asks-of.js';
import { PageAsking, type Want } from './page-asking.js';
import { hereOf, type Drawable } from './here.js';
import { KindLoading, type Ready } from './kind-loading.js';
import { LaterAsking } from './later-asking.js';
import { NearView } from './near-view.js';
import type { PageElement } from './page-element.js';
import { NumberDesk } from './number-desk.js';
import { PartsFold } from './parts/parts-fold.js';
import { sections } from './sections.js';

export class EntriesPage extends LitElement implements PageElement {
  static override properties: PropertyDeclarations = {
    solver: { attribute: false },
    scenario: { attribute: false },
    units: { attribute: false },
    next: { attribute: false },
    record: { attribute: false },
    work: { attribute: false },
    notebook: { attribute: false },
    own: { attribute: false },
    cursor: { state: true },
    complete: { type: Boolean, reflect: true },
  };
  declare solver: Solver;
  declare scenario: Scenario;
  declare units: UnitSystem;
  declare next: PageElement['next'];
  declare record: PageRecord;
  declare work: PageWork;
  /** What holds the stills, charges and sheets by name. */
  declare notebook: Notebook;
  /** Whether it is a page of the reader's own. */
  declare own: boolean;
  declare cursor: RunCursor;
  /** Whether all entries are loaded, or only those up to the first figure. */
  declare private complete: boolean;

  readonly near = new NearView(this);
  readonly desk: NumberDesk;
  readonly #redraw = (): void => this.requestUpdate();
  readonly #kinds = new KindLoading(this.#redraw);
  readonly #asks = new AsksOf();
  readonly #asking = new PageAsking(() => this.solver, this.#redraw);
  readonly later = new LaterAsking(() => this.solver, this.#redraw);
  readonly #parts = new PartsFold(this);
  readonly #offered = new Map<string, readonly Provided[]>();
  readonly #shared = new Map<string, unknown>();
  readonly #made = new Map<string, { readonly from: readonly unknown[]; readonly made: unknown }>();
  #editing: PageEditing | undefined;
  #toBeReadOnly = false;

  constructor(record: PageRecord, first: Path = 'charge.volume_m3') {
    super();
    this.record = record;
    this.scenario = startingScenario;
    this.work = noPageWork;
    this.notebook = newNotebook;
    this.next = null;
    this.own = false;
    this.complete = false;
    this.cursor = { along: 'volume', x: null };
    this.desk = new NumberDesk(this, first);
    this.addEventListener('pencil', ({ detail }) => this.#pencil(detail.action));
  }

  get refusal(): string {
    return this.#asking.refusal;
  }

  get earlier(): Scenario | null {
    return this.work.pencils.at(-1) ?? null;
  }

  /** Tells the wiring what the reader did on this page. */
  act(next: Act['next'], deed: Omit<Act['deed'], 'page'>): void {
    this.dispatchEvent(new ActEvent({ next, deed: { ...deed, page: this.record.name } }));
  }

  /** Results an entry offers by itself. */
  offer(id: string, results: readonly Provided[]): void {
    if (JSON.stringify(this.#offered.get(id)) === JSON.stringify(results)) return;
    this.#offered.set(id, results);
    this.requestUpdate();
  }

  /** What `make` gave, as long as all of `from` are the very same. */
  once<Made>(name: string, from: readonly unknown[], make: () => Made): Made {
    const known = this.#made.get(name);
    const same = known?.from.length === from.length && from.every((one, place) => Object.is(one, known.from[place]));
    if (same) return known.made as Made;
    const made = make();
    this.#made.set(name, { from, made });
    return made;
  }

  /** One object for all entries of a kind. */
  sharedBy<Thing>(kind: string, make: () => Thing): Thing {
    if (!this.#shared.has(kind)) this.#shared.set(kind, make());
    return this.#shared.get(kind) as Thing;
  }

  /** After undoing or redoing something done to an entry of this page. */
  show(entry: string | undefined): void {
    if (entry !== undefined) void this.updateComplete.then(() => this.#editing?.show(entry));
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.later.wake();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.later.rest();
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('own') && this.own) void this.#loadEditing();
    this.#ask();
  }

  protected override render(): unknown {
    if (this.own && this.#editing === undefined && !this.#toBeReadOnly) return nothing;
    const shown = this.#drawables();
    return html`${this.#head()} ${this.#atWork()} ${sections(shown, this.#editing, this.own)}
    ${this.complete ? this.#editing?.foot(this.record) : nothing} ${this.complete ? this.#parts.view() : nothing}
    ${this.#foot()}`;
  }

  protected override updated(): void {
    this.toggleAttribute('refused', this.refusal !== '');
    if (!this.complete) void this.#completeAfterFigure();
  }

  /** Entries in order, those that are loaded with what they need to be drawn. */
  #drawables(): readonly Drawable[] {
    const records = this.#loadable();
    const ready = records.map((record) => ({ record, readiness: this.#kinds.of(record) }));
    const results = ready.flatMap(({ record, readiness }) => {
      const offered = this.#offered.get(record.id) ?? [];
      if (readiness === undefined || 'trouble' in readiness) return [];
      const provided = readiness.kind.provides?.(this.#here(record, readiness, [])) ?? [];
      return [...provided, ...offered].map((result) => ({ ...result, entry: record.id }));
    });
    return ready.map(({ record, readiness }) => {
      if (readiness === undefined) return { record };
      if ('trouble' in readiness) return { record, trouble: readiness };
      return { record, kind: readiness.kind, here: this.#here(record, readiness, results) };
    });
  }

  #here(record: EntryRecord, { kind, data }: Ready, results: Here['results']): Here {
    const { id } = record;
    const kept = this.work.pencils.flatMap((at) => this.#asking.now(pencilId(id, at), data) ?? []);
    return hereOf(this, record, kind, data, { now: this.#asking.now(id, data), kept, results });
  }

  /** Entries that may be loaded now: all, or those up to the first figure. */
  #loadable(): readonly EntryRecord[] {
    const { entries } = this.record;
    const figure = entries.findIndex(({ kind }) => kind === 'figure');
    return this.complete || this.own || figure < 0 ? entries : entries.slice(0, figure + 1);
  }

  #ask(): void {
    const [together, later] = [new Map<string, Want>(), new Map<string, Want>()];
    const { common, pencils } = this.work;
    for (const record of this.#loadable()) {
      const readiness = this.#kinds.of(record);
      if (readiness === undefined || 'trouble' in readiness) continue;
      const { kind, data } = readiness;
      const { id } = record;
      const { asks, asksLater, ...made } = this.#asks.of(id, kind, data, this.scenario, common);
      if (asksLater !== undefined) later.set(id, { ...made, asks: asksLater });
      if (asks === undefined) continue;
      together.set(id, { ...made, asks, apart: kind.apart === true });
      for (const at of pencils) {
        const line = pencilId(id, at);
        const pencilled = this.#asks.of(line, kind, data, at, common);
        together.set(line, { ...pencilled, asks: pencilled.asks!, pencil: true });
      }
    }
    this.#asking.ask(together, this.complete ? 'now' : 'first');
    if (this.complete) this.later.want(later);
  }

  async #completeAfterFigure(): Promise<void> {
    const first = this.querySelector('kp-figure');
    const noFigure = this.own || !this.record.entries.some(({ kind }) => kind === 'figure');
    if (first === null && !noFigure && this.refusal === '') return;
    await first?.updateComplete;
    requestAnimationFrame(() => (this.complete = true));
  }

  async #loadEditing(): Promise<void> {
    const says = 'This page cannot be edited: what does so could not be loaded.';
    const { PageEditing } = await wanted(says, () =>
      import('./editing/page-editing.js').catch((error: unknown) => {
        this.#toBeReadOnly = true; // it can be read meanwhile
        this.requestUpdate();
        throw error;
      }),
    );
    this.#editing ??= new PageEditing(this);
    this.requestUpdate();
  }

  #head(): unknown {
    const { title, promise } = this.record;
    return html`<header class="page-head">
      <h1>${title}</h1>
      ${promise === '' ? nothing : html`<p class="promise">${promise}</p>`} ${this.#editing?.head(this.record)}
    </header>`;
  }

  /** How far a run has come that takes its time, out of the way of what is read. */
  #atWork(): unknown {
    const { reached_s } = this.#asking;
    return reached_s === null
      ? nothing
      : html`<p class="at-work" role="status">Computing: the run has come to ${clock(reached_s)}.</p>`;
  }

  #foot(): unknown {
    const { next } = this;
    return html`<footer class="page-foot">
      ${next === null ? nothing : html`<p class="next-page">Next page: <a href=${next.address}>${next.title}</a></p>`}
      ${this.own ? nothing : this.#makeOwn()} ${permit}
    </footer>`;
  }

  #makeOwn(): unknown {
    return html`<p class="make-own">
      <button type="button" class="word-button" @click=${() => this.dispatchEvent(new CopyPageEvent(this.record))}>
        Make a page of your own from this one
      </button>
    </p>`;
  }

  #pencil(action: 'keep' | 'rubOut'): void {
    const { name } = this.record;
    const { scenario } = this.#asking;
    if (action === 'rubOut') this.act((notebook) => rubOutPencil(notebook, name), { says: 'pencil line rubbed out' });
    else if (scenario !== undefined)
      this.act((notebook) => keepPencil(notebook, name, scenario), { says: 'pencil line kept' });
  }
}

/** By what the pencil line of an entry is known. */
function pencilId(entry: string, scenario: Scenario): string {
  return `${entry} ${JSON.stringify(scenario)}`;
}

customElements.define('kp-entries-page', EntriesPage);
