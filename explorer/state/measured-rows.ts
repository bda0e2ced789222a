// Published points as rows of figures: each set, and each kind of azeotrope, with the form it is drawn in.

import type { PointForm } from '../rows/shown.js';
import type { MeasuredAzeotropeRow } from '../rows/drift.js';
import type { MeasuredRows } from '../rows/equilibrium.js';
import { measuredAzeotropes, measuredSets, type MeasuredAzeotrope } from './measured-points.js';

interface Look {
  readonly form: PointForm;
  readonly filled: boolean;
}

/** In the order of the sets. */
const looks: readonly Look[] = [
  { form: 'disc', filled: true },
  { form: 'disc', filled: false },
  { form: 'square', filled: true },
  { form: 'diamond', filled: false },
  { form: 'square', filled: false },
];

export const measuredRows: readonly MeasuredRows[] = measuredSets.map((set, i) => ({
  ...set,
  ...looks[i % looks.length]!,
}));

/** How each kind is drawn and said. */
const kinds: Readonly<Record<MeasuredAzeotrope['kind'], Look & { readonly kind: string }>> = {
  printed: { form: 'disc', filled: true, kind: 'as printed' },
  read: { form: 'square', filled: true, kind: 'where liquid and vapour cross' },
  maximum: { form: 'diamond', filled: true, kind: 'at a maximum of measured pressures' },
  memory: { form: 'disc', filled: false, kind: 'from memory' },
};

/** By kind, then by pressure. */
export const measuredAzeotropeRows: readonly MeasuredAzeotropeRow[] = Object.keys(kinds).flatMap((kind) =>
  measuredAzeotropes.filter((point) => point.kind === kind).map((point) => ({ ...point, ...kinds[point.kind] })),
);
