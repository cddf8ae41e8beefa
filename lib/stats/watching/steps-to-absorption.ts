import { elementAt } from '../element-at';

/**
 * Mean number of steps of a Markov chain until it leaves its transient states, from each of them: the solution of
 * (I - Q) x = 1.
 *
 * I - Q is an M-matrix, so elimination needs no pivoting. It runs from the last state up and skips zeros, since the
 * moves of a chart reach only nearby states. Where no state is ever left, entries are infinite or not above 0.
 *
 * @param transitions Q row after row, states x states; rows sum to at most 1.
 */
export function stepsToAbsorption(transitions: Float64Array, states: number): Float64Array {
  const matrix = transitions.map((probability) => -probability);
  for (let state = 0; state < states; state += 1) {
    const place = state * states + state;
    matrix[place] = elementAt(matrix, place) + 1;
  }
  const right = new Float64Array(states).fill(1);
  for (let last = states - 1; last > 0; last -= 1) {
    const pivot = elementAt(matrix, last * states + last);
    const pivotRow = matrix.subarray(last * states, last * states + last);
    // Column 0 takes all moves to the floor; beyond it a row is empty up to its lowest move.
    let lowest = 1;
    while (lowest < last && pivotRow[lowest] === 0) lowest += 1;
    for (let row = 0; row < last; row += 1) {
      const entry = elementAt(matrix, row * states + last);
      if (entry === 0) continue;
      const factor = entry / pivot;
      right[row] = elementAt(right, row) - factor * elementAt(right, last);
      const own = matrix.subarray(row * states, row * states + last);
      own[0] = elementAt(own, 0) - factor * elementAt(pivotRow, 0);
      for (let column = lowest; column < last; column += 1) {
        own[column] = elementAt(own, column) - factor * elementAt(pivotRow, column);
      }
    }
  }
  for (let row = 0; row < states; row += 1) {
    let rest = elementAt(right, row);
    for (let column = 0; column < row; column += 1) {
      rest -= elementAt(matrix, row * states + column) * elementAt(right, column);
    }
    right[row] = rest / elementAt(matrix, row * states + row);
  }
  return right;
}
