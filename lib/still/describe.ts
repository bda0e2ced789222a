// From a description to a still: every field that is left out gets a value with a reason (complete-parts.ts).

import { InputError } from '../errors.js';
import { descriptionFaults } from './check-description.js';
import { faultsOfStill } from './check.js';
import {
  AIR_PROPOSAL,
  condenserProposal,
  doublerProposal,
  headProposal,
  kettleProposal,
  packingProposal,
  platesProposal,
  productProposal,
} from './complete-parts.js';
import type {
  Air,
  Doubler,
  Head,
  Kettle,
  NoRefluxCondenser,
  NoSection,
  PackedSection,
  PartialRefluxCondenser,
  PlatedSection,
  ProductCondenser,
  Still,
  TotalRefluxCondenser,
} from './still.js';

/** A still as far as it is known; only the kettle's volume must be. */
export interface StillDescription {
  readonly kettle: Partial<Kettle> & { readonly volume_m3: number };
  readonly doublers?: readonly Partial<Doubler>[];
  readonly column?: NoSection | Described<PlatedSection> | Described<PackedSection>;
  readonly head?: Partial<Head>;
  readonly refluxCondenser?: NoRefluxCondenser | Described<TotalRefluxCondenser> | Described<PartialRefluxCondenser>;
  readonly productCondenser?: Partial<ProductCondenser>;
  readonly air?: Partial<Air>;
}

type Described<Part extends { readonly kind: string }> = Partial<Part> & Pick<Part, 'kind'>;

/** One value that a description leaves to the library. */
export interface Completion {
  /** Where it stands in the still, and where a description can set it: `kettle.power_W`, `doublers[0].volume_m3`. */
  readonly path: string;
  readonly value: unknown;
  /** Why this value, in words. */
  readonly reason: string;
}

/**
 * A complete still from a description: what is left out gets a value with a reason.
 *
 * Equation: upright vessels as high as wide, D = (4 V/π)^⅓; losses and metal by wall area; a section for 0.5 m/s of vapour.
 * @param description What is known; the kettle's volume [m³], above 0; else an InputError.
 * @returns A still in which every field is set.
 * @throws InputError when the description has a field nobody knows or a value no still can have.
 * @example completeStill({ kettle: { volume_m3: 0.1 } }).kettle.power_W // → 4500
 * Source: this project, docs/theory/train.md.
 */
export function completeStill(description: StillDescription): Still {
  return checked(description).still;
}

/**
 * What nobody set: each value that completes a description, with its reason.
 *
 * Equation: the fields of completeStill(description) that the description leaves out.
 * @param description What is known of the still.
 * @returns Path, value and reason of each, from the kettle up; empty where nothing is left out.
 * @throws InputError when the description has a field nobody knows or a value no still can have.
 * @example completions({ kettle: { volume_m3: 0.1, power_W: 5500 } })[0].reason // → 'as high as wide, as most small vessels are about'
 * Source: this project, docs/theory/train.md.
 */
export function completions(description: StillDescription): readonly Completion[] {
  return checked(description).completed;
}

interface Drawn {
  readonly still: Still;
  readonly completed: readonly Completion[];
}

function checked(description: StillDescription): Drawn {
  const faults = descriptionFaults(description, 'description');
  if (faults.length > 0) throw new InputError(...faults);
  const drawn = drawUp(description);
  const impossible = faultsOfStill(drawn.still, 'description');
  if (impossible.length > 0) throw new InputError(...impossible);
  return drawn;
}

/** The same unchecked, with what was completed. */
export function drawUp(description: StillDescription): Drawn {
  const { head, productCondenser, air, refluxCondenser } = description;
  const completed: Completion[] = [];
  const said = (path: string, value: unknown, reason: string): void => void completed.push({ path, value, reason });

  /** A part with what is given, and what it gets where it is silent. */
  function fill<Part extends object>(path: string, given: Partial<Part> | undefined, proposal: Proposals<Part>): Part {
    const part: Record<string, unknown> = { ...given };
    for (const [name, [value, reason]] of Object.entries(proposal as Readonly<Record<string, Proposed>>)) {
      if (part[name] !== undefined) continue;
      part[name] = value;
      said(`${path}.${name}`, value, reason);
    }
    return part as Part;
  }

  const kettle = fill<Kettle>('kettle', description.kettle, kettleProposal(description.kettle));
  const { volume_m3, power_W } = kettle;
  if (description.doublers === undefined) said('doublers', [], 'none, unless some are described');
  const doublers = (description.doublers ?? []).map((doubler, i) =>
    fill<Doubler>(`doublers[${String(i)}]`, doubler, doublerProposal(doubler, volume_m3)),
  );
  if (description.column === undefined) said('column.kind', 'none', 'a pot, unless plates or a packing are described');
  const column = description.column ?? { kind: 'none' };
  const section =
    column.kind === 'plates'
      ? fill<PlatedSection>('column', column, platesProposal(column, power_W))
      : column.kind === 'packing'
        ? fill<PackedSection>('column', column, packingProposal(column, power_W))
        : column;
  const filledHead = fill<Head>('head', head, headProposal(description.kettle));
  const condenser = refluxCondenser ?? (column.kind === 'none' ? { kind: 'none' } : { kind: 'total' });
  if (refluxCondenser === undefined) {
    const reason = column.kind === 'none' ? 'a pot has none' : 'plates and packings come with a total condenser';
    said('refluxCondenser.kind', condenser.kind, reason);
  }
  const { holdUp, subcooling_K, coolant } = condenserProposal(volume_m3, power_W);
  return {
    still: {
      kettle,
      doublers,
      column: section,
      head: filledHead,
      refluxCondenser:
        condenser.kind === 'total'
          ? fill<TotalRefluxCondenser>('refluxCondenser', condenser, { holdUp, subcooling_K })
          : condenser.kind === 'partial'
            ? fill<PartialRefluxCondenser>('refluxCondenser', condenser, { holdUp, coolant })
            : condenser,
      productCondenser: fill('productCondenser', productCondenser, productProposal(volume_m3, power_W)),
      air: fill('air', air, AIR_PROPOSAL),
    },
    completed,
  };
}

type Proposed<Value = unknown> = readonly [value: Value, reason: string];
type Proposals<Part> = { readonly [Field in keyof Part]?: Proposed<Part[Field]> };
