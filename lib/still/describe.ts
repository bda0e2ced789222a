// From a description to a still: every field that is left out gets a value with a reason, drawn from what is known.
// The reasons stand beside the numbers here, and as a table in docs/theory/train.md.

import { STANDARD_ATMOSPHERE, ZERO_CELSIUS } from '../constants.js';
import { checkRange, InputError } from '../errors.js';
import { waterForDuty } from './condensers.js';
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

/** Heat that brings a kettle two thirds full to the boil in about an hour and a half, W/m³ of kettle. */
const HEAT_W_m3 = 45e3;
/** Or so many times what kettle and head lose when they boil, which is more below 15 L: less would hardly distil. */
const TIMES_LOST = 2.5;
/** From the air to a boiling wash, K. */
const WARMER_K = 75;
/** A bare metal wall at 80 to 100 °C in a still room, W/(m² K): Churchill & Chu with radiation, stainless steel. */
const WALL_W_m2K = 8;
/** Two millimetres of copper or steel, J/(m² K). */
const WALL_J_m2K = 7000;
/** Height of the heating surface as a share of the kettle's. */
const SURFACE = 0.15;
/** A doubler holds an eighth of the kettle: common practice, no published source. */
const DOUBLER = 1 / 8;
/** Vapour speed a section is made for, m/s: some 60 % of flooding at 150 mm spacing. */
const VAPOUR_m_s = 0.5;
/** Vapour of a watt near the boiling point at sea level, m³/s. */
const VAPOUR_OF_WATT = 7.4e-7;
/** A bare helmet with its arm has a third of the kettle's wall. */
const HEAD = 1 / 3;
/** Liquid that clings to a wall, m: 0.1 mm, a film that runs. */
const FILM_m = 1e-4;
/** A condenser and its line hold three tenths of a thousandth of the kettle. */
const DRUM = 3e-4;
/** A condenser is chosen for a third more than the heat, its water to warm by 30 K. */
const MARGIN = 1.33;
const RISE_K = 30;

/**
 * A complete still from a description: what is left out gets a value with a reason.
 *
 * Equation: upright vessels as high as wide, D = (4 V/π)^⅓; losses and metal by wall area; a section for 0.5 m/s of vapour.
 * @param description What is known; the kettle's volume [m³], above 0; else an InputError.
 * @returns A still in which every field is set; stillFaults says whether what was given can be.
 * @throws InputError when the kettle's volume is not a number above 0.
 * @example completeStill({ kettle: { volume_m3: 0.1 } }).kettle.power_W // → 4500
 * Source: this project, docs/theory/train.md.
 */
export function completeStill(description: StillDescription): Still {
  const known: unknown = (description as Partial<StillDescription> | null)?.kettle;
  if (typeof known !== 'object' || known === null) {
    throw new InputError({ argument: 'kettle', value: known, expected: 'a record with at least volume_m3' });
  }
  const { kettle, doublers = [], column = { kind: 'none' }, head, air } = description;
  checkRange('kettle.volume_m3', kettle.volume_m3, 1e-6, 1e4, 'a volume above 0 m³');
  const { height_m, wall_m2, diameter_m, heatLoss_W_K, metal_J_K } = upright(kettle.volume_m3, kettle.diameter_m);
  const head_m2 = HEAD * wall_m2;
  const lost_W = WARMER_K * WALL_W_m2K * (wall_m2 + head_m2);
  const power_W = kettle.power_W ?? Math.max(HEAT_W_m3 * kettle.volume_m3, TIMES_LOST * lost_W);
  return {
    kettle: { diameter_m, heatingSurfaceHeight_m: SURFACE * height_m, power_W, heatLoss_W_K, metal_J_K, ...kettle },
    doublers: doublers.map((doubler) => completeDoubler(doubler, kettle.volume_m3)),
    column: completeColumn(column, power_W),
    head: { heatLoss_W_K: WALL_W_m2K * head_m2, metal_J_K: WALL_J_m2K * head_m2, film_m3: FILM_m * head_m2, ...head },
    refluxCondenser: completeCondenser(description.refluxCondenser, column.kind, kettle.volume_m3, power_W),
    productCondenser: {
      holdUp: { kind: 'volume', volume_m3: DRUM * kettle.volume_m3 },
      flow_kg_s: waterForDuty(power_W, RISE_K) * MARGIN,
      inlet_K: ZERO_CELSIUS + 15,
      // Enough surface for the margin: capacity 1.33 Q between 78 °C and 15 °C.
      transfer_W_K: (MARGIN * power_W) / 40,
      ...description.productCondenser,
    },
    air: { pressure_Pa: STANDARD_ATMOSPHERE, temperature_K: ZERO_CELSIUS + 20, ...air },
  };
}

function completeDoubler(doubler: Partial<Doubler>, kettle_m3: number): Doubler {
  const { height_m, volume_m3, diameter_m, heatLoss_W_K, metal_J_K } = upright(
    doubler.volume_m3 ?? DOUBLER * kettle_m3,
    doubler.diameter_m,
  );
  // Half full, the pipe's mouth a little above the bottom.
  const dipDepth_m = 0.4 * height_m;
  return { volume_m3, diameter_m, heatLoss_W_K, metal_J_K, dipDepth_m, overflow: 'back', ...doubler };
}

function completeColumn(column: NonNullable<StillDescription['column']>, power_W: number): Still['column'] {
  if (column.kind === 'none') return column;
  const diameter_m = column.diameter_m ?? Math.sqrt((4 * power_W * VAPOUR_OF_WATT) / VAPOUR_m_s / Math.PI);
  const area_m2 = (Math.PI * diameter_m ** 2) / 4;
  if (column.kind === 'packing') {
    const height_m = column.height_m ?? 1;
    const wall_m2 = Math.PI * diameter_m * height_m;
    return {
      height_m,
      // A quarter of a metre: rings of 12 mm with water among what boils (Kister's rules of thumb).
      hetp_m: 0.25,
      diameter_m,
      voidShare: 0.92,
      surface_m2_m3: 350,
      liquidShare: 0.06,
      heatLoss_W_K: WALL_W_m2K * wall_m2,
      metal_J_K: WALL_J_m2K * wall_m2 + 300e3 * area_m2 * height_m,
      drop_Pa_m: 300,
      ...column,
    };
  }
  const spacing_m = column.spacing_m ?? (diameter_m > 0.3 ? 0.3 : 0.15);
  const weirHeight_m = column.weirHeight_m ?? (diameter_m > 0.3 ? 0.04 : 0.02);
  const wall_m2 = Math.PI * diameter_m * spacing_m;
  return {
    count: 4,
    plateKind: 'bubbleCap',
    diameter_m,
    spacing_m,
    weirHeight_m,
    openAreaShare: 0.1,
    holeDiameter_m: 0.005,
    // Aerated liquid is about six tenths of the weir's height in clear liquid (Bennett, Agrawal & Cook 1983).
    holdUp: { kind: 'volume', volume_m3: 0.6 * weirHeight_m * area_m2 },
    efficiency: 0.6,
    efficiencyFalls: true,
    heatLoss_W_K: WALL_W_m2K * wall_m2,
    metal_J_K: WALL_J_m2K * (wall_m2 + 2 * area_m2),
    drop_Pa: 300,
    ...column,
  };
}

/** Plates and packing come with a total condenser, a pot with none. */
function completeCondenser(
  condenser: StillDescription['refluxCondenser'],
  column: Still['column']['kind'],
  kettle_m3: number,
  power_W: number,
): Still['refluxCondenser'] {
  const holdUp = { kind: 'volume', volume_m3: DRUM * kettle_m3 } as const;
  const kind = condenser?.kind ?? (column === 'none' ? 'none' : 'total');
  if (kind === 'none') return { kind };
  if (kind === 'total') return { holdUp, subcooling_K: 0, ...(condenser as object), kind };
  return { holdUp, coolant: { kind: 'duty', power_W: 0.5 * power_W }, ...(condenser as object), kind };
}

interface Upright {
  readonly volume_m3: number;
  readonly diameter_m: number;
  readonly height_m: number;
  readonly wall_m2: number;
  readonly heatLoss_W_K: number;
  readonly metal_J_K: number;
}

/** As high as wide where no diameter is known. */
function upright(volume_m3: number, known_m?: number): Upright {
  const diameter_m = known_m ?? Math.cbrt((4 * volume_m3) / Math.PI);
  const height_m = (4 * volume_m3) / (Math.PI * diameter_m ** 2);
  const wall_m2 = Math.PI * diameter_m * (height_m + 0.5 * diameter_m);
  return {
    volume_m3,
    diameter_m,
    height_m,
    wall_m2,
    heatLoss_W_K: WALL_W_m2K * wall_m2,
    metal_J_K: WALL_J_m2K * wall_m2,
  };
}
