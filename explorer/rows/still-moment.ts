// A still at one moment of its run, as a plain record: what a picture of it shows. Levels are those of the hot liquid.

/** A stream at a moment. */
export interface Flow {
  readonly rate_mol_s: number;
  /** Of the largest flow of vapour in the run. */
  readonly share: number;
  /** What has passed since the start, as a share of the most that passes anywhere in the whole run: it only ever rises. */
  readonly passed: number;
}

/** What every part that holds liquid tells. */
export interface PartMoment {
  readonly temperature_K: number;
  /** % vol / 100 of its liquid; null while it is as good as dry. */
  readonly strength: number | null;
  /** Of the hot liquid in it, m³. */
  readonly volume_m3: number;
  readonly boiling: boolean;
  /** What leaves it upwards and downwards. */
  readonly vapour: Flow;
  readonly liquid: Flow;
}

/** Kettle or doubler. */
export interface VesselMoment extends PartMoment {
  /** Height of the brim and of the liquid above the bottom, m. */
  readonly brim_m: number;
  readonly level_m: number;
}

export interface KettleMoment extends VesselMoment {
  readonly heatingSurface_m: number;
  /** Whether the liquid stands above the heating surface. */
  readonly covered: boolean;
}

export interface DoublerMoment extends VesselMoment {
  /** Height of the vapour pipe's mouth above the bottom, m, and whether it is under the liquid. */
  readonly mouth_m: number;
  readonly covered: boolean;
}

/** A plate, or a stage of a packing. */
export interface StageMoment extends PartMoment {
  readonly number: number;
  /** Depth of its clear liquid over the whole section, m. */
  readonly depth_m: number;
  /** Of the most it holds in the run. */
  readonly filled: number;
}

export interface StillMoment {
  readonly time_s: number;
  /** When the first vapour reached the condenser; null if it never does. */
  readonly firstVapour_s: number | null;
  readonly power_W: number;
  readonly condenserDuty_W: number;
  readonly refluxDuty_W: number;
  readonly kettle: KettleMoment;
  readonly doublers: readonly DoublerMoment[];
  /** Lowest first. */
  readonly stages: readonly StageMoment[];
  readonly head: { readonly temperature_K: number; readonly vapour: Flow };
  /** The partial reflux condenser, when there is one. */
  readonly partial: PartMoment | null;
  /** Liquid in the drum that feeds reflux and spout, as a share of what stays in it. */
  readonly drumFilled: number;
  /** L/D by a reflux condenser; Infinity at total reflux, null without one. */
  readonly refluxRatio: number | null;
  readonly reflux: Flow;
  readonly distillate: Flow;
  /** As liquid at 20 °C. */
  readonly distillateRate_m3_s: number;
  /** % vol / 100; null before anything has reached the spout. */
  readonly spoutStrength: number | null;
  readonly collectedVolume_m3: number;
  readonly jars: readonly JarMoment[];
}

export interface JarMoment {
  readonly number: number;
  /** What the jar takes up to its mark, m³. */
  readonly size_m3: number;
  /** At 20 °C. */
  readonly filled_m3: number;
  /** % vol / 100 of what is in it; null while it is empty. */
  readonly strength: number | null;
  readonly state: 'filled' | 'underSpout' | 'waiting';
}
