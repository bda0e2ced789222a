// The figure of a run: strength at the spout over kettle and head temperature, on one axis.

import type { Drawing, FigureSize } from './figure.js';
import type { RunHistoryRows } from '../rows/run.js';
import { stack } from './stack.js';
import { strengthHistory } from './strength-history.js';
import { temperatureHistory } from './temperature-history.js';

export function runHistory(rows: RunHistoryRows, size: FigureSize): Drawing {
  return stack(strengthHistory(rows, size), temperatureHistory(rows, size));
}
