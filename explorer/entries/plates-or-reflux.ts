// 'Plates or reflux?': the table, filled cell by cell once the figures stand.

import { html, LitElement, type PropertyDeclarations, type PropertyValues } from 'lit';
import { numberWithUnit } from '../components/number/number-spec.js';
import { comparison, readAfterShare, type Comparison } from '../state/compare.js';
import { numberSpecs } from '../state/number-specs.js';
import type { Scenario } from '../state/scenario.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { Solver } from '../worker/solver-client.js';

/** Quiet after the last change before the table is begun, ms. */
const quiet_ms = 250;

export class PlatesOrReflux extends LitElement {
  static override properties: PropertyDeclarations = {
    solver: { attribute: false },
    scenario: { attribute: false },
    units: { attribute: false },
    strengths: { state: true },
  };
  declare solver: Solver;
  /** What the figures above show. */
  declare scenario: Scenario;
  declare units: UnitSystem;
  /** % vol / 100 by cell; those still to come are missing. */
  declare private strengths: readonly number[];

  #wait: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.strengths = [];
  }

  protected override createRenderRoot(): this {
    return this;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#wait);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('scenario')) return;
    clearTimeout(this.#wait);
    const { scenario } = this;
    this.#wait = setTimeout(() => void this.#fill(scenario), quiet_ms);
  }

  protected override render(): unknown {
    const { units, scenario } = this;
    const table = comparison(scenario);
    const after = units.volume.withUnit(readAfterShare * scenario.chargeVolume);
    return html`<p class="table-title">
        <b>Strength at the spout after ${after}</b>, ${units.strength.unit}, by plates and reflux
      </p>
      <table class="figures-table">
        <thead>
          <tr>
            <th scope="col">plates</th>
            ${table.refluxes.map((reflux) => html`<th scope="col">${this.#reflux(reflux)}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${table.plates.map((plates, row) => this.#row(table, plates, row))}
        </tbody>
      </table>`;
  }

  #row({ refluxes }: Comparison, plates: number, row: number): unknown {
    return html`<tr>
      <th scope="row">${plates}</th>
      ${refluxes.map((reflux, column) => {
        const strength = this.strengths[row * refluxes.length + column];
        const text = strength === undefined ? '·' : this.units.strength.text(strength);
        const here = plates === this.scenario.plates && reflux === this.scenario.reflux;
        return html`<td>${here ? html`<span class="here">${text}</span>` : text}</td>`;
      })}
    </tr>`;
  }

  #reflux(reflux: number): string {
    return numberWithUnit(numberSpecs(this.units).reflux, reflux);
  }

  /** One cell at a time; stops as soon as something else is asked for. */
  async #fill(scenario: Scenario): Promise<void> {
    const strengths: number[] = [];
    for (const question of comparison(scenario).questions) {
      const reply = await this.solver.answer([question]);
      if (scenario !== this.scenario || !this.isConnected) return;
      const answer = reply.kind === 'answered' ? reply.answers[0] : undefined;
      strengths.push(answer?.kind === 'run' ? (answer.solution.spoutStrength.at(-1) ?? Number.NaN) : Number.NaN);
    }
    this.strengths = strengths;
  }
}

customElements.define('kp-plates-or-reflux', PlatesOrReflux);

declare global {
  interface HTMLElementTagNameMap {
    'kp-plates-or-reflux': PlatesOrReflux;
  }
}
