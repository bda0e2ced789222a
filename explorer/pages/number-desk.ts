// The numbers of a page: the setup sentence with the page's one ruler, the number in focus, what is wrong with
// what was typed, and the ruler at the bottom edge of a touch screen.

import { html, nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import '../components/number/kp-setup.js';
import type { NumberFaultReport, NumberFocus } from '../components/number/events.js';
import { notThere, type SentencePart } from '../components/number/kp-setup.js';
import type { NumberFault } from '../components/number/number-spec.js';
import { numberSpecs, type NumberSpecs } from '../state/number-specs.js';
import { isPath, type Path } from '../state/inputs.js';
import { numberAt } from '../state/paths.js';
import type { Scenario } from '../state/scenario.js';
import { correctionOf } from '../text/messages.js';
import type { UnitSystem } from '../text/unit-systems.js';

/** The same function for the same settings, so that nothing is drawn again. */
const values = new WeakMap<Scenario, (key: string) => number | undefined>();
function valuesOf(scenario: Scenario): (key: string) => number | undefined {
  const known = values.get(scenario) ?? ((key: string): number | undefined => numberAt(scenario, key));
  values.set(scenario, known);
  return known;
}

/** A page that has numbers to set. */
export interface DeskHost extends ReactiveControllerHost, HTMLElement {
  readonly scenario: Scenario;
  readonly units: UnitSystem;
  /** Why the solver refuses the numbers; empty where it does not. */
  readonly refusal: string;
  /** The numbers of the latest pencil line; null where none is kept. */
  readonly earlier: Scenario | null;
}

export class NumberDesk implements ReactiveController {
  readonly #host: DeskHost;
  #inFocus: Path;
  /** Whether the reader chose the number in focus. */
  #chosen = false;
  #docked = false;
  readonly #faults = new Map<string, NumberFault>();

  constructor(host: DeskHost, first: Path) {
    this.#host = host;
    this.#inFocus = first;
    host.addController(this);
    host.addEventListener('kp-number-focus', ({ detail }) => this.#focus(detail));
    // A number with a ruler of its own leaves the page's ruler and correction line alone.
    const owned = (target: EventTarget | null): boolean => (target as Element).matches('.own-ruler');
    host.addEventListener('kp-fault', ({ detail, target }) => {
      if (!owned(target)) this.#note(detail);
    });
    // The ruler's number counts as in focus, wherever the change came from.
    host.addEventListener('kp-change', ({ detail, target }) => {
      if (!owned(target)) this.hold(detail.key);
    });
    host.addEventListener('kp-put-back', ({ detail }) => this.#blanks(detail.key).forEach((blank) => blank.putBack()));
    host.addEventListener('kp-type', ({ detail }) => this.#blanks(detail.key)[0]?.type());
    host.addEventListener('kp-done', this.#done);
  }

  hostConnected(): void {
    this.#docked = false;
  }

  get specs(): NumberSpecs {
    return numberSpecs(this.#host.units);
  }

  /** Gives a number to the ruler. */
  hold(key: string): void {
    if (!isPath(key)) return;
    this.#inFocus = key;
    this.#chosen = true;
    this.#host.requestUpdate();
  }

  /** The setup sentence with its ruler. */
  setup(sentence: readonly SentencePart<Path>[]): unknown {
    const { specs } = this;
    const { scenario, earlier, refusal } = this.#host;
    // The first of the sentence, where that has not the one the page names.
    const keys = sentence.flatMap((part) => (typeof part === 'string' ? [] : [part.blank]));
    if (!this.#chosen && !keys.includes(this.#inFocus)) this.#inFocus = keys[0] ?? this.#inFocus;
    const wrong = [...this.#faults].at(-1) as [Path, NumberFault] | undefined;
    return html`<kp-setup
        .sentence=${sentence}
        .specs=${specs}
        .valueAt=${valuesOf(scenario)}
        .earlierAt=${earlier === null ? null : valuesOf(earlier)}
        .inFocus=${this.#inFocus}
        .docked=${this.#docked}
        .correction=${wrong === undefined ? null : correctionOf(specs(wrong[0]), wrong[1], numberAt(scenario, wrong[0]) ?? 0)}
      ></kp-setup>
      ${refusal === '' ? nothing : html`<p class="correction" role="alert">${refusal}</p>`}`;
  }

  /** The same number again, elsewhere in the text. */
  blank(key: Path): unknown {
    const value = numberAt(this.#host.scenario, key);
    if (value === undefined) return notThere;
    return html`<kp-blank .spec=${this.specs(key)} .value=${value} ?current=${key === this.#inFocus}></kp-blank>`;
  }

  #focus({ key, touch }: NumberFocus): void {
    this.hold(key);
    if (!touch || this.#docked) return;
    this.#docked = true;
    void this.#host.updateComplete.then(() => {
      const figure = this.#host.querySelector('.setup-figure') ?? this.#host.querySelector('kp-figure');
      figure?.scrollIntoView({ block: 'start' });
    });
  }

  #note({ key, fault }: NumberFaultReport): void {
    this.#faults.delete(key);
    if (fault !== null) this.#faults.set(key, fault);
    this.#host.requestUpdate();
  }

  #blanks(key: string): HTMLElementTagNameMap['kp-blank'][] {
    return [...this.#host.querySelectorAll('kp-blank')].filter((blank) => blank.spec.key === key);
  }

  #done = (): void => {
    this.#docked = false;
    this.#host.requestUpdate();
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  };
}
