/**
 * Nodes kept in buckets by degree, so that the smallest is found, moved and removed in (nearly) constant time.
 * Ties are taken in a fixed order, so that the same input always gives the same elimination.
 */
export class DegreeQueue {
  private readonly head: Int32Array;
  private readonly next: Int32Array;
  private readonly previous: Int32Array;
  private readonly degree: Int32Array;
  private lowest: number;

  constructor(
    size: number,
    private readonly largest: number,
  ) {
    this.head = new Int32Array(largest + 1).fill(-1);
    this.next = new Int32Array(size).fill(-1);
    this.previous = new Int32Array(size).fill(-1);
    this.degree = new Int32Array(size).fill(-1);
    this.lowest = largest;
  }

  add(node: number, degree: number): void {
    const bucket = Math.min(degree, this.largest);
    const first = this.head[bucket] as number;
    this.degree[node] = bucket;
    this.next[node] = first;
    this.previous[node] = -1;
    if (first >= 0) this.previous[first] = node;
    this.head[bucket] = node;
    if (bucket < this.lowest) this.lowest = bucket;
  }

  remove(node: number): void {
    const before = this.previous[node] as number;
    const after = this.next[node] as number;
    if (before >= 0) this.next[before] = after;
    else this.head[this.degree[node] as number] = after;
    if (after >= 0) this.previous[after] = before;
  }

  /** The node of smallest degree, left in place; -1 when none is left. */
  smallest(): number {
    while (this.lowest <= this.largest) {
      const node = this.head[this.lowest] as number;
      if (node >= 0) return node;
      this.lowest += 1;
    }
    this.lowest = this.largest;
    return -1;
  }
}
