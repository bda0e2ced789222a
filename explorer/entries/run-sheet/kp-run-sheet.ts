// The run sheet as the reader edits it: a numbered list of sentences, each with its choices and blanks. It sends the
// changed sheet and keeps nothing itself but what is being typed.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';
import '../../components/number/kp-blank.js';
import type { NumberChange, NumberFaultReport } from '../../components/number/events.js';
import type { NumberFault, NumberSpec } from '../../components/number/number-spec.js';
import type { StopRule, RunStep } from '#lib/index.js';
import type { SheetSet } from '../../state/scenario.js';
import { correctionOf } from '../../text/messages.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import * as change from './changes.js';
import { choiceOf } from './choice-of.js';
import { SheetChangedEvent } from './events.js';
import { ofStep, ruleKinds, rules, sheetSpec, stepNumbers } from './rules.js';

/** Jars to begin with. */
const oneSize = { kind: 'size', volume_m3: 1e-3 } as const;

export class RunSheetElement extends LitElement {
  static override properties: PropertyDeclarations = {
    given: { attribute: false },
    units: { attribute: false },
    heat: { attribute: false },
    running: { attribute: false },
    fault: { state: true },
  };
  declare given: SheetSet;
  declare units: UnitSystem;
  /** Heat where a step has none of its own, W. */
  declare heat: number;
  /** Number of the step that runs at the cursor; −1 for none. */
  declare running: number;
  declare private fault: { readonly key: string; readonly fault: NumberFault } | null;

  #specs = new Map<string, NumberSpec>();
  #specsOf: UnitSystem | undefined;

  constructor() {
    super();
    this.running = -1;
    this.fault = null;
    const own = (event: Event): void => event.stopPropagation();
    this.addEventListener('kp-number-focus', own);
    this.addEventListener('kp-fault', (event) => this.#faulted(event));
    this.addEventListener('kp-change', (event) => this.#changed(event));
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    const { jars } = this.given;
    return html`<ol class="run-sheet">
        ${this.given.sheet.map((step, index) => this.#step(step, index))}
      </ol>
      ${this.#correction()}
      <p class="run-sheet-jars">
        The distillate runs into
        ${
          jars.kind === 'perStep'
            ? html`a jar for each step. ${this.#word('Take jars of one size', () => this.#jars(oneSize))}`
            : html`jars of ${this.#blank('jar', stepNumbers.jar, jars.volume_m3)}.
              ${this.#word('Take a jar for each step', () => this.#jars({ kind: 'perStep' }))}`
        }
      </p>`;
  }

  #step(step: RunStep, index: number): unknown {
    const { sheet: steps } = this.given;
    const name = `step ${String(index + 1)}`;
    return html`<li
      class=${index === this.running ? 'running' : ''}
      aria-current=${index === this.running ? 'step' : nothing}
    >
      <p class="step-sentence">
        ${this.#reflux(step, index)}, ${this.#power(step, index)}, until
        ${step.until.map((rule, at) => html`${at > 0 ? ' or ' : nothing}${this.#rule(rule, index, at, step.until.length)}`)}.
      </p>
      <p class="step-words">
        ${
          step.until.length < change.mostRules
            ? this.#word(
                'Or until',
                () => this.#send(change.withOneMoreRule(this.given, index), `another end for ${name}`),
                name,
              )
            : nothing
        }
        ${
          steps.length < change.mostSteps
            ? this.#word(
                'Add a step after',
                () => this.#send(change.withStepAfter(this.given, index), `a step added after ${name}`),
                name,
              )
            : nothing
        }
        ${index > 0 ? this.#word('Move up', () => this.#send(change.withStepMoved(this.given, index, -1), `${name} moved up`), name) : nothing}
        ${
          index < steps.length - 1
            ? this.#word(
                'Move down',
                () => this.#send(change.withStepMoved(this.given, index, 1), `${name} moved down`),
                name,
              )
            : nothing
        }
        ${steps.length > 1 ? this.#word('Take out', () => this.#send(change.withoutStep(this.given, index), `${name} taken out`), name) : nothing}
      </p>
    </li>`;
  }

  #reflux({ reflux }: RunStep, index: number): unknown {
    const kind = change.sendsBack(reflux);
    const name = `reflux of step ${String(index + 1)}`;
    const number =
      typeof reflux === 'number'
        ? this.#blank(`${String(index)} reflux`, ofStep(stepNumbers.ratio, index), reflux)
        : typeof reflux === 'object' && reflux.kind === 'hold'
          ? this.#blank(`${String(index)} reflux`, ofStep(stepNumbers.hold, index), reflux.strength)
          : null;
    const choice = choiceOf(
      name,
      change.sendsBackKinds.map((one) => [one, change.sendsBackWords[one]] as const),
      kind,
      (next) => this.#send(change.withReflux(this.given, index, next), `${name} changed`),
    );
    return html`${choice}${spaced(number)}`;
  }

  #power({ heat }: RunStep, index: number): unknown {
    const power_W = heat?.kind === 'power' ? heat.power_W : undefined;
    const name = `heat of step ${String(index + 1)}`;
    const choice = choiceOf(
      name,
      [
        ['all', 'the heat set above'],
        ['own', 'a heat of its own:'],
      ],
      power_W === undefined ? 'all' : 'own',
      (whose) =>
        this.#send(change.withPower(this.given, index, whose === 'own' ? this.heat : undefined), `${name} changed`),
    );
    const number =
      power_W === undefined ? null : this.#blank(`${String(index)} power`, ofStep(stepNumbers.power, index), power_W);
    return html`with ${choice}${spaced(number)}`;
  }

  #rule(rule: StopRule, index: number, at: number, count: number): unknown {
    const words = rules[rule.kind];
    const value = words.value(rule);
    const name = `end ${count > 1 ? `${String(at + 1)} ` : ''}of step ${String(index + 1)}`;
    const choice = choiceOf(
      name,
      ruleKinds.map((kind) => [kind, rules[kind].choice] as const),
      rule.kind,
      (kind) => this.#send(change.withRuleKind(this.given, index, at, kind), `${name} changed`),
    );
    const number =
      value === null || words.number === null
        ? null
        : this.#blank(`${String(index)} until ${String(at)}`, ofStep(words.number, index), value);
    const out =
      count > 1
        ? this.#word('Not this', () => this.#send(change.withoutRule(this.given, index, at), `${name} taken out`), name)
        : null;
    return html`${choice}${spaced(number)}${spaced(out)}`;
  }

  #blank(key: string, number: Parameters<typeof sheetSpec>[1], value: number): unknown {
    return html`<kp-blank
      .spec=${this.#spec(key, number)}
      .value=${value}
      .correctionId=${'correction-sheet'}
    ></kp-blank>`;
  }

  #spec(key: string, number: Parameters<typeof sheetSpec>[1]): NumberSpec {
    if (this.#specsOf !== this.units) this.#specs = new Map();
    this.#specsOf = this.units;
    const named = `${key} ${number.label}`;
    const spec = this.#specs.get(named) ?? sheetSpec(key, number, this.units);
    this.#specs.set(named, spec);
    return spec;
  }

  #word(text: string, act: () => void, of?: string): unknown {
    return html`<button
      type="button"
      class="word-button"
      aria-label=${of === undefined ? nothing : `${text}: ${of}`}
      @click=${act}
    >
      ${text}
    </button>`;
  }

  #jars(jars: SheetSet['jars']): void {
    this.#send({ ...this.given, jars }, 'jars changed');
  }

  #correction(): unknown {
    const { fault } = this;
    const blank = fault === null ? undefined : this.#blanks(fault.key);
    if (fault === null || blank === undefined)
      return html`<p class="correction" id="correction-sheet" role="status"></p>`;
    const { draft, says, putBack } = correctionOf(blank.spec, fault.fault, blank.value);
    return html`<p class="correction" id="correction-sheet" role="status">
      <b>${draft}</b> ${says}
      <button type="button" class="put-back" @click=${() => blank.putBack()}>${putBack}</button>
    </p>`;
  }

  #blanks(key: string): HTMLElementTagNameMap['kp-blank'] | undefined {
    return [...this.querySelectorAll('kp-blank')].find((blank) => blank.spec.key === key);
  }

  #faulted(event: CustomEvent<NumberFaultReport>): void {
    event.stopPropagation();
    const { key, fault } = event.detail;
    if (fault !== null) this.fault = { key, fault };
    else if (this.fault?.key === key) this.fault = null;
  }

  #changed(event: CustomEvent<NumberChange>): void {
    event.stopPropagation();
    const { key, value } = event.detail;
    const [index = '0', what, at = '0'] = key.split(' ');
    const step = Number(index);
    const says = `a number of the run sheet changed`;
    if (key === 'jar') this.#send({ ...this.given, jars: { kind: 'size', volume_m3: value } }, says, key);
    else if (what === 'reflux') this.#send(change.withRefluxNumber(this.given, step, value), says, key);
    else if (what === 'power') this.#send(change.withPower(this.given, step, value), says, key);
    else this.#send(change.withRuleNumber(this.given, step, Number(at), value), says, key);
  }

  #send(next: SheetSet, says: string, together?: string): void {
    this.dispatchEvent(new SheetChangedEvent(next, says, together));
  }
}

/** With a space before it, if it is there. */
function spaced(what: unknown): unknown {
  return what === null ? nothing : html` ${what}`;
}

customElements.define('kp-run-sheet', RunSheetElement);

declare global {
  interface HTMLElementTagNameMap {
    'kp-run-sheet': RunSheetElement;
  }
}
