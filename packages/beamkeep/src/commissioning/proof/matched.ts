/*
 * Which stay away from clean air is which step? Both come in order, so the cheapest way through the table of steps and
 * stays tells, where a step may have been left out and a stay may belong to no step (a hand in the path).
 */

/**
 * Pairs two lists that are in the same order.
 *
 * @param rows,columns lengths of the lists
 * @param cost how badly row and column fit together, 0 for well
 * @param left what leaving a row, or a column, unpaired costs
 * @returns for each row its column, or undefined
 */
export function matched(
  rows: number,
  columns: number,
  cost: (row: number, column: number) => number,
  left: { readonly row: number; readonly column: number },
): (number | undefined)[] {
  const width = columns + 1;
  const best = new Float64Array((rows + 1) * width);
  const at = (row: number, column: number) => best[row * width + column] as number;
  for (let row = 0; row <= rows; row++)
    for (let column = 0; column <= columns; column++) {
      if (row === 0 && column === 0) continue;
      best[row * width + column] = Math.min(
        row > 0 && column > 0 ? at(row - 1, column - 1) + cost(row - 1, column - 1) : Number.POSITIVE_INFINITY,
        row > 0 ? at(row - 1, column) + left.row : Number.POSITIVE_INFINITY,
        column > 0 ? at(row, column - 1) + left.column : Number.POSITIVE_INFINITY,
      );
    }
  const pairs = new Array<number | undefined>(rows).fill(undefined);
  for (let row = rows, column = columns; row > 0 || column > 0; ) {
    if (row > 0 && column > 0 && at(row, column) === at(row - 1, column - 1) + cost(row - 1, column - 1)) {
      row--;
      column--;
      pairs[row] = column;
    } else if (column > 0 && at(row, column) === at(row, column - 1) + left.column) column--;
    else row--;
  }
  return pairs;
}
