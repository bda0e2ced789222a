// What every row of a figure is made of: columns of numbers, the quantities they are shown as, and whose hand draws them.

/** Who made a mark: print holds for every still, ink follows from the settings, pencil was there before. */
export type Hand = 'print' | 'ink' | 'pencil';

/** Columns of numbers: typed arrays of a solution or plain arrays. */
export type Column = ArrayLike<number>;

/** How one quantity is shown: made by the page from the units in use, handed in with the rows. */
export interface ShownQuantity {
  /** Unit as printed, for instance '% vol', 'proof', '°C', 'L'. */
  readonly unit: string;
  /** The unit in words, plural, for axis titles: 'litres', 'US gallons', 'hours'. */
  readonly words: string;
  /** Step of a cursor along this quantity, in shown units: 0.1 for litres. */
  readonly step: number;
  readonly toShown: (si: number) => number;
  readonly fromShown: (shown: number) => number;
  /** '92.2' from SI. */
  readonly text: (si: number) => string;
  /** '92.2 % vol' from SI. */
  readonly withUnit: (si: number) => string;
}

/** The quantities figures show; strength is % vol / 100 at 20 °C inside, the others SI. */
export interface FigureUnits {
  readonly strength: ShownQuantity;
  readonly temperature: ShownQuantity;
  readonly volume: ShownQuantity;
  readonly time: ShownQuantity;
}

/** What measured points are told apart by, besides filled and open. */
export type PointForm = 'disc' | 'square' | 'diamond';

/** Strokes of the style sheet: result 2.75, second 1.5, third 1, equilibrium 1.75 (extrapolated dashed), Raoult 1 dashed, diagonal 1, staircase 1.75, operating 1, pencil 1.5, guess in dots. */
export type CurveWeight =
  | 'extrapolated'
  | 'result'
  | 'second'
  | 'third'
  | 'equilibrium'
  | 'raoult'
  | 'diagonal'
  | 'staircase'
  | 'operating'
  | 'pencil'
  | 'guess';
