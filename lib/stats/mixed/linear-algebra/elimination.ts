import { DegreeQueue } from './degree-queue';

/** From this share of the remaining nodes on, a column counts as full and the rest is factored as one dense block. */
const DENSE_SHARE = 0.5;

/**
 * The order in which the random effects are eliminated, and where their Cholesky factor can be other than zero.
 *
 * Positions 0 .. headSize - 1 are eliminated one by one, each with a short column of entries below the diagonal; the rest
 * (the tail) is nearly full by then and is kept as one dense block.
 */
export type Elimination = {
  readonly size: number;
  readonly headSize: number;
  readonly tailSize: number;
  /** Position of each node in the order. */
  readonly position: Int32Array;
  /** Where each head column's entries begin (headSize + 1 offsets). */
  readonly columnStart: Int32Array;
  /** The position of each entry's row, ascending within its column. */
  readonly rowOf: Int32Array;
  /** Where, within each head column, the rows that lie in the tail begin. */
  readonly tailStart: Int32Array;
};

/**
 * Minimum-degree elimination order for Z'Z, where every row of data joins one node (a level) of each random term.
 *
 * The graph is held as a quotient graph: each row is a clique to begin with, and eliminating a node merges the cliques it
 * lies in into one (George & Liu 1989, SIAM Review 31, 1-19, from memory). Levels that share no row with others of
 * their term - every level of the largest term, and all of a term nested in it - therefore go first and cost nothing.
 *
 * @param nodes rows x `perRow` node numbers, row by row.
 */
export function planElimination(nodes: Int32Array, perRow: number, size: number): Elimination {
  const rows = perRow === 0 ? 0 : nodes.length / perRow;
  const cliques: Int32Array[] = [];
  const alive: boolean[] = [];
  const cliquesOf: number[][] = Array.from({ length: size }, () => []);
  const degree = new Float64Array(size);
  for (let row = 0; row < rows; row++) {
    const clique = nodes.subarray(row * perRow, (row + 1) * perRow);
    cliques.push(clique);
    alive.push(true);
    for (const node of clique) {
      (cliquesOf[node] as number[]).push(row);
      degree[node] = (degree[node] as number) + perRow - 1;
    }
  }
  const queue = new DegreeQueue(size, size);
  for (let node = size - 1; node >= 0; node--) queue.add(node, degree[node] as number);

  const mark = new Int32Array(size).fill(-1);
  const position = new Int32Array(size).fill(-1);
  const columns: Int32Array[] = [];
  let remaining = size;
  for (let node = queue.smallest(); node >= 0; node = queue.smallest()) {
    const neighbours = mergeCliques(node, cliques, alive, cliquesOf, mark);
    if (remaining > 1 && neighbours.length > DENSE_SHARE * (remaining - 1)) break;
    queue.remove(node);
    position[node] = columns.length;
    columns.push(neighbours);
    remaining -= 1;
    for (const clique of cliquesOf[node] as number[]) {
      if (!alive[clique]) continue;
      const members = cliques[clique] as Int32Array;
      for (const member of members) degree[member] = (degree[member] as number) - members.length + 1;
      alive[clique] = false;
      cliques[clique] = EMPTY;
    }
    const merged = cliques.length;
    cliques.push(neighbours);
    alive.push(true);
    for (const member of neighbours) {
      (cliquesOf[member] as number[]).push(merged);
      const grown = (degree[member] as number) + neighbours.length - 1;
      degree[member] = grown;
      queue.remove(member);
      queue.add(member, Math.min(grown, remaining));
    }
  }
  const headSize = columns.length;
  let at = headSize;
  for (let node = 0; node < size; node++) if (position[node] === -1) position[node] = at++;
  return layOut(columns, position, size, headSize);
}

const EMPTY = new Int32Array(0);

/** All nodes that share a living clique with `node`. */
function mergeCliques(
  node: number,
  cliques: Int32Array[],
  alive: boolean[],
  cliquesOf: number[][],
  mark: Int32Array,
): Int32Array {
  const found: number[] = [];
  mark[node] = node;
  for (const clique of cliquesOf[node] as number[]) {
    if (!alive[clique]) continue;
    for (const member of cliques[clique] as Int32Array) {
      if (mark[member] === node) continue;
      mark[member] = node;
      found.push(member);
    }
  }
  return Int32Array.from(found);
}

function layOut(columns: Int32Array[], position: Int32Array, size: number, headSize: number): Elimination {
  const columnStart = new Int32Array(headSize + 1);
  for (let j = 0; j < headSize; j++) {
    columnStart[j + 1] = (columnStart[j] as number) + (columns[j] as Int32Array).length;
  }
  const rowOf = new Int32Array(columnStart[headSize] as number);
  const tailStart = new Int32Array(headSize);
  for (let j = 0; j < headSize; j++) {
    const start = columnStart[j] as number;
    const rows = (columns[j] as Int32Array).map((node) => position[node] as number).sort();
    rowOf.set(rows, start);
    let first = start;
    while (first < start + rows.length && (rowOf[first] as number) < headSize) first += 1;
    tailStart[j] = first;
  }
  return { size, headSize, tailSize: size - headSize, position, columnStart, rowOf, tailStart };
}
