import { type ClusterSum, type FigureGround, sortedLeftOut, sortedSums } from '../comparison/figure-ground';
import type { LeftOut, LeftOutReason } from '../shown-figure';
import type { NearOf } from './near-codes';
import type { Measure } from './outcome-sums';

/** What a cluster adds to each figure; of figures that it is not part of there are no batches. */
type Cluster = {
  judged: number;
  contaminated: number;
  later: number;
  units: number;
  yielded: number;
  fresh: number;
  over: number;
  cropped: number;
  croppedFresh: number;
  croppedOver: number;
  lived: number;
  lifeFresh: number;
  lifeDry: number;
};

const noCluster = (): Cluster => ({
  judged: 0,
  contaminated: 0,
  later: 0,
  units: 0,
  yielded: 0,
  fresh: 0,
  over: 0,
  cropped: 0,
  croppedFresh: 0,
  croppedOver: 0,
  lived: 0,
  lifeFresh: 0,
  lifeDry: 0,
});

/** Batches and units of a class with the same flags. */
type Count = { readonly of: NearOf; readonly flags: number; batches: number; units: number };

/** A batch whose day has come or not: flags 2 and 4 say for what it is too young, from 16 on they are marks. */
export type SiteBatch = {
  readonly of: NearOf;
  readonly code: number;
  readonly flags: number;
  readonly cluster: string;
  readonly units: number;
  readonly contaminated: number;
  readonly later: number;
  readonly lostClean: number;
  readonly fresh: number;
  /** Of open logs as of today. */
  readonly over: number;
  readonly freshLater: number;
  readonly lifeFresh: number;
  readonly lifeDry: number;
};

/** What the figures of one row rest on that clusters by treatment run: a site, or a method there. */
export class SiteGround {
  readonly #clusters = new Map<string, Cluster>();
  readonly #counts = new Map<number, Count>();
  lostClean = 0;
  laterGrams = 0;

  add(batch: SiteBatch): void {
    const { of, flags, units, fresh, over } = batch;
    const count = this.#counts.get(batch.code | flags);
    if (count === undefined) this.#counts.set(batch.code | flags, { of, flags, batches: 1, units });
    else {
      count.batches += 1;
      count.units += units;
    }
    let cluster = this.#clusters.get(batch.cluster);
    if (cluster === undefined) {
      cluster = noCluster();
      this.#clusters.set(batch.cluster, cluster);
    }
    if (of[2] === 'counted' && (flags & 2) === 0) {
      cluster.judged += 1;
      cluster.contaminated += batch.contaminated;
      cluster.later += batch.later;
      cluster.units += units;
      this.lostClean += batch.lostClean;
    }
    if (of[3] === 'counted' && (flags & 4) === 0) {
      cluster.yielded += 1;
      cluster.fresh += fresh;
      cluster.over += over;
      this.laterGrams += batch.freshLater;
      if (of[4]) {
        cluster.cropped += 1;
        cluster.croppedFresh += fresh;
        cluster.croppedOver += over;
      }
    }
    if (of[5] === 'counted') {
      cluster.lived += 1;
      cluster.lifeFresh += batch.lifeFresh;
      cluster.lifeDry += batch.lifeDry;
    }
  }

  /** The ground of contamination by the window's end or at any time, of yield, of cropped or of log life. */
  of(measure: Measure | 'any-time'): FigureGround {
    const said = new Said();
    for (const count of this.#counts.values()) said.add(count, classOf(measure, count));
    const clusters = [...this.#clusters.values()].flatMap((cluster) => sumOf(measure, cluster) ?? []);
    return said.ground(sortedSums(clusters));
  }
}

/** Why a class is left out of a measure, or `counted`; undefined where the measure has nothing to say of it. */
function classOf(measure: Measure | 'any-time', { of, flags }: Count): string | undefined {
  const [, , contamination, given, cropped, life] = of;
  if (measure === 'contamination' || measure === 'any-time') return flags & 2 ? 'window-open' : contamination;
  if (measure === 'life') return life ?? undefined;
  if (flags & 4) return 'window-open';
  return measure === 'cropped' && given === 'counted' && !cropped ? 'did-not-crop' : given;
}

function sumOf(measure: Measure | 'any-time', own: Cluster): ClusterSum | undefined {
  if (measure === 'contamination' || measure === 'any-time') {
    const numerator = own.contaminated + (measure === 'any-time' ? own.later : 0);
    return own.judged > 0 ? { numerator, denominator: own.units } : undefined;
  }
  if (measure === 'yield')
    return own.yielded > 0 ? { numerator: own.fresh, denominator: own.over } : undefined;
  if (measure === 'cropped')
    return own.cropped > 0 ? { numerator: own.croppedFresh, denominator: own.croppedOver } : undefined;
  return own.lived > 0 ? { numerator: own.lifeFresh, denominator: own.lifeDry } : undefined;
}

/** What is said beside a figure. */
class Said {
  #asked = 0;
  #units = 0;
  #batches = 0;
  readonly #marks = [0, 0, 0, 0, 0];
  readonly #materials = new Set<string>();
  readonly #leftOut = new Map<LeftOutReason, LeftOut>();

  add({ of, flags, batches, units }: Count, reason: string | undefined): void {
    this.#asked += batches;
    if (reason === undefined) return;
    if (reason !== 'counted') {
      // Kept classes are reasons by their names.
      const why = reason as LeftOutReason;
      const before = this.#leftOut.get(why) ?? { reason: why, batches: 0, units: 0 };
      this.#leftOut.set(why, {
        reason: why,
        batches: before.batches + batches,
        units: before.units + units,
      });
      return;
    }
    this.#batches += batches;
    this.#units += units;
    this.#materials.add(of[1] === 'mixed' ? 'none' : of[1]);
    for (let mark = 0; mark < 5; mark += 1)
      if ((flags >> (4 + mark)) & 1) this.#marks[mark] = (this.#marks[mark] ?? 0) + batches;
  }

  ground(clusters: readonly ClusterSum[]): FigureGround {
    const [runMissing = 0, trimmed = 0, asPicked = 0, dryAssumed = 0, shared = 0] = this.#marks;
    return {
      asked: this.#asked,
      size: {
        ...{ batches: this.#batches, units: this.#units, runs: clusters.length },
        sites: this.#batches > 0 ? 1 : 0,
      },
      marked: {
        ...{ batches: this.#batches, materials: this.#materials.size },
        ...{ runMissing, trimmed, asPicked, dryAssumed, shared },
      },
      leftOut: sortedLeftOut([...this.#leftOut.values()]),
      clusters,
    };
  }
}
