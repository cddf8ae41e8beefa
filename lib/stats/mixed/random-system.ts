import { type Elimination, planElimination } from './linear-algebra/elimination';
import { selectedInverse } from './linear-algebra/selected-inverse';
import {
  entryIndex,
  factorSparse,
  logDeterminantSparse,
  solveBackward,
  solveForward,
  storageLength,
} from './linear-algebra/sparse-cholesky';
import { betweenReaches, type Reach, sparseReach } from './linear-algebra/sparse-reach';

/**
 * The random part of a model: A = S Z'WZ S + I for intercept-only terms, S = diag(theta of each level's term).
 *
 * In the penalised least squares formulation (Bates, Maechler, Bolker & Walker 2015, J Stat Softw 67(1)) the random effects
 * are b = S u with u ~ N(0, sigma^2 I); A's Cholesky factor gives the likelihood. Z never exists as a matrix: each row
 * of data names one level of every term. Vectors over random effects are kept by elimination position.
 */
export class RandomSystem {
  readonly plan: Elimination;
  readonly size: number;
  readonly termCount: number;
  /** rows x termCount positions, row by row. */
  readonly positions: Int32Array;
  readonly termOf: Int32Array;
  /** Position of each level, by term. */
  readonly positionOf: readonly Int32Array[];
  /** Storage index of every pair of terms of every row, pairs in the order (0,0) (1,0) (1,1) (2,0) ... */
  readonly entries: Int32Array;
  readonly scale: Float64Array;
  readonly inverse: Float64Array;
  private inverted = false;
  private readonly matrix: Float64Array;
  private readonly factor: Float64Array;
  private readonly scratch: Float64Array;

  /** @param codes level number of each row, by term. */
  constructor(
    codes: readonly Int32Array[],
    readonly levelCounts: readonly number[],
    readonly rowCount: number,
  ) {
    const q = codes.length;
    this.termCount = q;
    const offsets = levelCounts.map((_, k) => levelCounts.slice(0, k).reduce((sum, count) => sum + count, 0));
    this.size = levelCounts.reduce((sum, count) => sum + count, 0);
    const nodes = new Int32Array(rowCount * q);
    for (let k = 0; k < q; k++) {
      const own = codes[k] as Int32Array;
      const offset = offsets[k] as number;
      for (let row = 0; row < rowCount; row++) nodes[row * q + k] = offset + (own[row] as number);
    }
    this.plan = planElimination(nodes, q, this.size);
    this.positions = nodes.map((node) => this.plan.position[node] as number);
    this.termOf = new Int32Array(this.size);
    this.positionOf = levelCounts.map((count, k) =>
      Int32Array.from(
        { length: count },
        (_, level) => this.plan.position[(offsets[k] as number) + level] as number,
      ),
    );
    for (const [k, own] of this.positionOf.entries()) for (const at of own) this.termOf[at] = k;
    this.entries = new Int32Array((rowCount * q * (q + 1)) / 2);
    let at = 0;
    for (let row = 0; row < rowCount; row++) {
      for (let a = 0; a < q; a++) {
        const one = this.positions[row * q + a] as number;
        for (let b = 0; b <= a; b++) {
          this.entries[at++] = entryIndex(this.plan, one, this.positions[row * q + b] as number);
        }
      }
    }
    const length = storageLength(this.plan);
    this.matrix = new Float64Array(length);
    this.factor = new Float64Array(length);
    this.inverse = new Float64Array(length);
    this.scratch = new Float64Array(this.plan.tailSize * this.plan.tailSize);
    this.scale = new Float64Array(this.size);
  }

  /** Sets Z'WZ for the given row weights. */
  setWeights(weights: Float64Array): void {
    this.matrix.fill(0);
    const pairs = (this.termCount * (this.termCount + 1)) / 2;
    let at = 0;
    for (let row = 0; row < this.rowCount; row++) {
      const weight = weights[row] as number;
      for (let pair = 0; pair < pairs; pair++) {
        const entry = this.entries[at++] as number;
        this.matrix[entry] = (this.matrix[entry] as number) + weight;
      }
    }
  }

  /** Spreads theta over the levels; signs do not matter to A. */
  setScale(theta: ArrayLike<number>): void {
    for (let j = 0; j < this.size; j++) this.scale[j] = theta[this.termOf[j] as number] as number;
  }

  /** Factors A at the scale and weights set last. False when it is not positive definite to working precision. */
  refactor(): boolean {
    this.inverted = false;
    return factorSparse(this.plan, this.matrix, this.scale, this.factor);
  }

  logDeterminant(): number {
    return logDeterminantSparse(this.plan, this.factor);
  }

  /** L x = b in place. */
  forward(x: Float64Array): void {
    solveForward(this.plan, this.factor, x);
  }

  /** L' x = b in place. */
  backward(x: Float64Array): void {
    solveBackward(this.plan, this.factor, x);
  }

  /** A x = b in place. */
  solve(x: Float64Array): void {
    this.forward(x);
    this.backward(x);
  }

  /** Computes the entries of A^-1 on the factor's pattern into `inverse`. */
  invert(): void {
    if (this.inverted) return;
    this.inverted = true;
    selectedInverse(this.plan, this.factor, this.inverse, this.scratch);
  }

  /** (A^-1)[j][j], after `invert`. */
  inverseDiagonal(j: number): number {
    return this.inverse[entryIndex(this.plan, j, j)] as number;
  }

  /** What S z reaches of a row z that has the levels at some positions, each row at the cost of the columns it comes into. */
  reaches(): (positions: readonly number[]) => Reach {
    const reach = sparseReach(this.plan, this.factor);
    return (positions) =>
      reach(
        positions,
        positions.map((position) => this.scale[position] as number),
      );
  }

  /** z1'S A^-1 S z2, after `invert`. */
  between(one: Reach, other: Reach): number {
    return betweenReaches(this.plan, this.inverse, one, other);
  }

  /** Z' times values over the rows, by position. */
  crossProduct(values: Float64Array): Float64Array {
    const target = new Float64Array(this.size);
    this.addCrossProduct(values, target);
    return target;
  }

  /** S Z' times values over the rows, by position, into `target`. */
  scaledCrossProduct(values: Float64Array, target: Float64Array): void {
    target.fill(0);
    this.addCrossProduct(values, target);
    for (let j = 0; j < this.size; j++) target[j] = (target[j] as number) * (this.scale[j] as number);
  }

  private addCrossProduct(values: Float64Array, target: Float64Array): void {
    const q = this.termCount;
    let at = 0;
    for (let row = 0; row < this.rowCount; row++) {
      const value = values[row] as number;
      for (let k = 0; k < q; k++) {
        const j = this.positions[at++] as number;
        target[j] = (target[j] as number) + value;
      }
    }
  }

  /** x with every other term's levels at 0. */
  ofTerm(k: number, x: Float64Array): Float64Array {
    const own = new Float64Array(this.size);
    for (const j of this.positionOf[k] as Int32Array) own[j] = x[j] as number;
    return own;
  }

  /** Z_k x_k: for every row the value of its level of term k. */
  valuesOfTerm(k: number, x: Float64Array): Float64Array {
    const rows = new Float64Array(this.rowCount);
    for (let row = 0; row < rows.length; row++) {
      rows[row] = x[this.positions[row * this.termCount + k] as number] as number;
    }
    return rows;
  }

  /** Adds Z S u to the rows. */
  addRandomPart(u: Float64Array, rows: Float64Array): void {
    const q = this.termCount;
    let at = 0;
    for (let row = 0; row < this.rowCount; row++) {
      let sum = rows[row] as number;
      for (let k = 0; k < q; k++) {
        const j = this.positions[at++] as number;
        sum += (this.scale[j] as number) * (u[j] as number);
      }
      rows[row] = sum;
    }
  }
}
