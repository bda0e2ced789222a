// Which number of the state vector means what; no other file knows an index.
//
// Ideal plates:      [time | kettle ethanol | x_1 … x_N | condenser x | receiver ethanol]
// Murphree plates:   [time | kettle ethanol | x_1 y_1 … x_N y_N | condenser x | receiver ethanol]
//
// The order keeps every equation beside those it depends on, so that the Jacobian is tridiagonal
// (ideal) or pentadiagonal (with the plates' vapours as algebraic unknowns). Numbers of plates count
// from the kettle up, 1 … N.

/** Positions in the state vector of a column with `plates` plates. */
export interface ColumnLayout {
  readonly plates: number;
  readonly size: number;
  /** Time since the first vapour, s. */
  readonly time: number;
  /** Ethanol in the kettle, mol. */
  readonly kettleEthanol: number;
  /** Mole fraction in the liquid of plate 1; plate j stands at firstLiquid + (j − 1) · stride. */
  readonly firstLiquid: number;
  /** Mole fraction in the vapour of plate 1, or −1 when vapours are not unknowns. */
  readonly firstVapour: number;
  readonly stride: 1 | 2;
  /** Mole fraction in the reflux condenser, which is the spout's. */
  readonly condenser: number;
  /** Ethanol collected, mol. */
  readonly receiverEthanol: number;
}

/** Layout for ideal plates (stride 1) or plates whose vapours are unknowns (stride 2). */
export function columnLayout(plates: number, vapoursAreUnknowns: boolean): ColumnLayout {
  const stride = vapoursAreUnknowns ? 2 : 1;
  const condenser = 2 + stride * plates;
  return {
    plates,
    size: condenser + 2,
    time: 0,
    kettleEthanol: 1,
    firstLiquid: 2,
    firstVapour: vapoursAreUnknowns ? 3 : -1,
    stride,
    condenser,
    receiverEthanol: condenser + 1,
  };
}
