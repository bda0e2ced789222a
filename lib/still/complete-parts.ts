// What a part of a still gets where its description is silent: each value with its reason, drawn from what is known.
// docs/theory/train.md has the same as a table.

import { STANDARD_ATMOSPHERE, ZERO_CELSIUS } from '../constants.js';
import { waterForDuty } from './condensers.js';
import type { Air, Doubler, Head, HoldUp, Kettle, PackedSection, PlatedSection, ProductCondenser } from './still.js';

/** For each field the value it gets and the reason in words. */
export type Proposal<Part> = { readonly [Field in keyof Part]-?: readonly [value: Part[Field], reason: string] };

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

const ROUND = 'as high as wide, as most small vessels are about';
const LOSS = '8 W/K for each m² of wall: bare metal in a still room (Churchill & Chu, with radiation)';
const METAL = '7 kJ/K for each m² of wall: 2 mm of copper or steel';
const OURS = 'this project’s choice';
const HELD = 'three tenths of a thousandth of the kettle: condenser and line';
const RINGS = 'rings of 12 mm, from memory';

/** A kettle of a known volume, and the wall that losses are counted by. */
export function kettleProposal(
  kettle: Partial<Kettle> & Pick<Kettle, 'volume_m3'>,
): Proposal<Omit<Kettle, 'volume_m3'>> {
  const { height_m, wall_m2, diameter_m, heatLoss_W_K, metal_J_K } = upright(kettle.volume_m3, kettle.diameter_m);
  const byVolume_W = HEAT_W_m3 * kettle.volume_m3;
  const byLoss_W = TIMES_LOST * WARMER_K * WALL_W_m2K * (wall_m2 + HEAD * wall_m2);
  return {
    diameter_m: [diameter_m, ROUND],
    heatingSurfaceHeight_m: [SURFACE * height_m, '15 % of the kettle’s height: an element or a coil at the bottom'],
    power_W:
      byVolume_W >= byLoss_W
        ? [byVolume_W, '45 kW for each m³ of kettle: two thirds full, it boils in about an hour and a half']
        : [byLoss_W, 'two and a half times what kettle and head lose at the boil: less would hardly distil'],
    heatLoss_W_K: [heatLoss_W_K, LOSS],
    metal_J_K: [metal_J_K, METAL],
  };
}

export function doublerProposal(doubler: Partial<Doubler>, kettle_m3: number): Proposal<Doubler> {
  const volume_m3 = doubler.volume_m3 ?? DOUBLER * kettle_m3;
  const { height_m, diameter_m, heatLoss_W_K, metal_J_K } = upright(volume_m3, doubler.diameter_m);
  return {
    volume_m3: [volume_m3, 'an eighth of the kettle: common practice, no published source'],
    diameter_m: [diameter_m, ROUND],
    heatLoss_W_K: [heatLoss_W_K, LOSS],
    metal_J_K: [metal_J_K, METAL],
    dipDepth_m: [0.4 * height_m, 'four tenths of its height: half full, the pipe’s mouth a little above the bottom'],
    overflow: ['back', `what rises above its brim drains to the vessel below: ${OURS}`],
  };
}

export function headProposal(kettle: Partial<Kettle> & Pick<Kettle, 'volume_m3'>): Proposal<Head> {
  const wall_m2 = HEAD * upright(kettle.volume_m3, kettle.diameter_m).wall_m2;
  const of = 'head and arm have a third of the kettle’s wall';
  return {
    heatLoss_W_K: [WALL_W_m2K * wall_m2, `${of}: ${LOSS}`],
    metal_J_K: [WALL_J_m2K * wall_m2, `${of}: ${METAL}`],
    film_m3: [FILM_m * wall_m2, `${of}: a film of 0.1 mm clings to it`],
  };
}

function sectionDiameter(power_W: number): number {
  return Math.sqrt((4 * power_W * VAPOUR_OF_WATT) / VAPOUR_m_s / Math.PI);
}

const WIDE_ENOUGH = 'wide enough for vapour at 0.5 m/s at full heat: some 60 % of flooding';

export function packingProposal(
  packing: Partial<PackedSection>,
  power_W: number,
): Proposal<Omit<PackedSection, 'kind'>> {
  const diameter_m = packing.diameter_m ?? sectionDiameter(power_W);
  const height_m = packing.height_m ?? 1;
  const area_m2 = (Math.PI * diameter_m ** 2) / 4;
  const wall_m2 = Math.PI * diameter_m * height_m;
  return {
    height_m: [height_m, `a metre: ${OURS}`],
    hetp_m: [0.25, 'rings of 12 mm with water among what boils (Kister’s rules of thumb)'],
    diameter_m: [diameter_m, WIDE_ENOUGH],
    voidShare: [0.92, RINGS],
    surface_m2_m3: [350, RINGS],
    liquidShare: [0.06, RINGS],
    heatLoss_W_K: [WALL_W_m2K * wall_m2, LOSS],
    metal_J_K: [WALL_J_m2K * wall_m2 + 300e3 * area_m2 * height_m, `${METAL}, and 300 kJ/K for each m³ of rings`],
    drop_Pa_m: [300, 'between a dry and a loaded packing'],
  };
}

export function platesProposal(plates: Partial<PlatedSection>, power_W: number): Proposal<Omit<PlatedSection, 'kind'>> {
  const diameter_m = plates.diameter_m ?? sectionDiameter(power_W);
  const wide = diameter_m > 0.3;
  const spacing_m = plates.spacing_m ?? (wide ? 0.3 : 0.15);
  const weirHeight_m = plates.weirHeight_m ?? (wide ? 0.04 : 0.02);
  const area_m2 = (Math.PI * diameter_m ** 2) / 4;
  const wall_m2 = Math.PI * diameter_m * spacing_m;
  const built = wide ? 'as in columns wider than 0.3 m, from memory' : 'as small columns are built, from memory';
  return {
    count: [4, `a short column: ${OURS}`],
    plateKind: ['bubbleCap', `common in small copper columns: ${OURS}`],
    diameter_m: [diameter_m, WIDE_ENOUGH],
    spacing_m: [spacing_m, built],
    weirHeight_m: [weirHeight_m, built],
    openAreaShare: [0.1, 'a tenth of the plate, as small plates are built, from memory'],
    holeDiameter_m: [0.005, 'as small plates are built, from memory'],
    holdUp: [
      held(0.6 * weirHeight_m * area_m2),
      'aerated liquid is six tenths of the weir’s height in clear liquid (Bennett, Agrawal & Cook 1983)',
    ],
    efficiency: [0.6, 'small copper plates reach 55 to 65 %, from memory'],
    efficiencyFalls: [true, 'plates near flooding work worse'],
    heatLoss_W_K: [WALL_W_m2K * wall_m2, LOSS],
    metal_J_K: [WALL_J_m2K * (wall_m2 + 2 * area_m2), `${METAL}, and as much for the plate`],
    drop_Pa: [300, 'between a dry and a loaded plate'],
  };
}

/** A total condenser's fields, and a partial one's. */
export function condenserProposal(kettle_m3: number, power_W: number) {
  return {
    holdUp: [held(DRUM * kettle_m3), HELD] as const,
    subcooling_K: [0, 'reflux comes back as hot as it boils'] as const,
    coolant: [{ kind: 'duty', power_W: 0.5 * power_W } as const, `takes half of the full heat: ${OURS}`] as const,
  };
}

export function productProposal(kettle_m3: number, power_W: number): Proposal<ProductCondenser> {
  return {
    holdUp: [held(DRUM * kettle_m3), HELD],
    flow_kg_s: [waterForDuty(power_W, RISE_K) * MARGIN, 'takes the full heat and a third more while it warms by 30 K'],
    inlet_K: [ZERO_CELSIUS + 15, 'cold tap water, 15 °C'],
    // Capacity 1.33 Q between 78 °C and 15 °C.
    transfer_W_K: [(MARGIN * power_W) / 40, 'surface for the full heat and a third more, from 78 to 15 °C'],
  };
}

export const AIR_PROPOSAL: Proposal<Air> = {
  pressure_Pa: [STANDARD_ATMOSPHERE, 'sea level, standard atmosphere'],
  temperature_K: [ZERO_CELSIUS + 20, 'a room at 20 °C'],
};

function held(volume_m3: number): HoldUp {
  return { kind: 'volume', volume_m3 };
}

interface Upright {
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
    diameter_m,
    height_m,
    wall_m2,
    heatLoss_W_K: WALL_W_m2K * wall_m2,
    metal_J_K: WALL_J_m2K * wall_m2,
  };
}
