// What a still is, as plain data: an ordered train kettle → doublers → plates or packing → head or reflux condenser →
// product condenser. Vapour goes up, liquid comes down. What is filled into it and how it is driven belongs to the run.
// A Still is complete; completeStill() fills what a description leaves out, stillFaults() says what cannot be.

import type { Kelvin, KelvinDifference, Pascal, Watt } from '../units/quantities.js';

/** The equipment, from the kettle up, and the air it stands in. */
export interface Still {
  readonly kettle: Kettle;
  /** 0 to 3, in the order the vapour meets them. */
  readonly doublers: readonly Doubler[];
  readonly column: PlatedSection | PackedSection | NoSection;
  readonly head: Head;
  readonly refluxCondenser: NoRefluxCondenser | TotalRefluxCondenser | PartialRefluxCondenser;
  readonly productCondenser: ProductCondenser;
  readonly air: Air;
}

/** An upright vessel that is heated. */
export interface Kettle {
  /** Volume up to the brim, m³. */
  readonly volume_m3: number;
  readonly diameter_m: number;
  /** Height above the bottom that the liquid must cover: the top of the element, coil or heated wall, m. */
  readonly heatingSurfaceHeight_m: number;
  /** Most heat the heater can give, W. */
  readonly power_W: Watt;
  /** Heat lost per kelvin above the air, W/K. */
  readonly heatLoss_W_K: number;
  /** Heat capacity of the metal that warms with the liquid, J/K. */
  readonly metal_J_K: number;
}

/** A vessel whose own liquid the vapour from below bubbles through. */
export interface Doubler {
  readonly volume_m3: number;
  readonly diameter_m: number;
  /** Depth of the vapour pipe's mouth below the liquid's surface when filled, m: the liquid the vapour has to lift. */
  readonly dipDepth_m: number;
  readonly heatLoss_W_K: number;
  readonly metal_J_K: number;
  /** Where liquid above the brim goes: 'back' to the vessel below through a drain pipe, or 'over' with the vapour. */
  readonly overflow: 'back' | 'over';
}

/** A pot: nothing between kettle or doublers and the head. */
export interface NoSection {
  readonly kind: 'none';
}

/** Plates, all alike; counted from the lowest. */
export interface PlatedSection {
  readonly kind: 'plates';
  /** 1 to 60. */
  readonly count: number;
  readonly plateKind: 'sieve' | 'bubbleCap' | 'valve';
  readonly diameter_m: number;
  readonly spacing_m: number;
  readonly weirHeight_m: number;
  /** Share of the plate's cross-section that is holes, slots or open valves. */
  readonly openAreaShare: number;
  readonly holeDiameter_m: number;
  /** What stays on each plate. */
  readonly holdUp: HoldUp;
  /** Murphree vapour efficiency at an easy load, above 0 up to 1. */
  readonly efficiency: number;
  /** Whether plates driven close to flooding work worse. */
  readonly efficiencyFalls: boolean;
  /** Of each plate with its piece of wall, W/K. */
  readonly heatLoss_W_K: number;
  /** Of each plate with its piece of wall, J/K. */
  readonly metal_J_K: number;
  /** Pressure drop over each plate, Pa. */
  readonly drop_Pa: Pascal;
}

/** Liquid that stays on a plate or in a condenser: a volume (on a plate of clear liquid under its weir), or (a simplification) an amount. */
export type HoldUp =
  { readonly kind: 'volume'; readonly volume_m3: number } | { readonly kind: 'amount'; readonly amount_mol: number };

/** A filling of rings, saddles, mesh or the like; counts as height / HETP stages. */
export interface PackedSection {
  readonly kind: 'packing';
  readonly height_m: number;
  /** Height equivalent to a theoretical plate, m. */
  readonly hetp_m: number;
  readonly diameter_m: number;
  /** Free share of the packed volume. */
  readonly voidShare: number;
  /** Surface per packed volume, m²/m³. */
  readonly surface_m2_m3: number;
  /** Liquid as a share of the packed volume. */
  readonly liquidShare: number;
  /** Of the whole section, W/K. */
  readonly heatLoss_W_K: number;
  /** Of the whole section, J/K. */
  readonly metal_J_K: number;
  /** Pressure drop per metre, Pa/m. */
  readonly drop_Pa_m: number;
}

/** What leads the vapour from the last stage to the condenser: helmet, lyne arm, line. What condenses in it runs back. */
export interface Head {
  readonly heatLoss_W_K: number;
  readonly metal_J_K: number;
  /** Liquid that clings to its walls, m³. */
  readonly film_m3: number;
}

/** What runs back is what the head condenses. */
export interface NoRefluxCondenser {
  readonly kind: 'none';
}

/** Everything is condensed; a set ratio runs back, the rest leaves at the spout. */
export interface TotalRefluxCondenser {
  readonly kind: 'total';
  /** Liquid in condenser and reflux line. */
  readonly holdUp: HoldUp;
  /** How far below its boiling point the reflux comes back, K; never colder than the product condenser's cooling water. */
  readonly subcooling_K: KelvinDifference;
}

/** Part is condensed and runs back, the vapour that is left leaves at the head: a stage of its own. */
export interface PartialRefluxCondenser {
  readonly kind: 'partial';
  readonly holdUp: HoldUp;
  readonly coolant: Coolant;
}

/** How a partial condenser is driven: by a set duty, or by a flow of water through a surface. */
export type Coolant =
  | { readonly kind: 'duty'; readonly power_W: Watt }
  | {
      readonly kind: 'water';
      readonly flow_kg_s: number;
      readonly inlet_K: Kelvin;
      /** Heat-transfer coefficient times surface, W/K. */
      readonly transfer_W_K: number;
    };

/** The last condenser: worm, shell and tube, or coil. */
export interface ProductCondenser {
  /** Liquid on its way to the spout. */
  readonly holdUp: HoldUp;
  readonly flow_kg_s: number;
  readonly inlet_K: Kelvin;
  readonly transfer_W_K: number;
}

/** The air round the still. */
export interface Air {
  readonly pressure_Pa: Pascal;
  readonly temperature_K: Kelvin;
}
