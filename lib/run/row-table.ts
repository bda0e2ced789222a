// Tables that grow row by row, kept from run to run: the columns of a solution are copied out of them.

const FIRST_CAPACITY = 256;

/** A table of so many rows with room for one more. */
export function withRoom(table: Float64Array, rows: number, width: number): Float64Array {
  if ((rows + 1) * width <= table.length) return table;
  const larger = new Float64Array(Math.max(FIRST_CAPACITY * width, 2 * table.length));
  larger.set(table);
  return larger;
}

/** One column of the first rows. */
export function columnOf(table: Float64Array, rows: number, width: number, column: number): Float64Array {
  const out = new Float64Array(rows);
  for (let row = 0, from = column; row < rows; row++, from += width) out[row] = table[from]!;
  return out;
}
