// The second door, `kettle-and-plate/numerics`: mathematics that is no business of a still, for whoever fits a model of their own.

export {
  leastSquares,
  type LeastSquaresFit,
  type LeastSquaresOptions,
  type LeastSquaresProblem,
} from './least-squares.js';
