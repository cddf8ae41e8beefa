import type { NearClass } from './sums-of-totals';

/** What decides where a batch counts. */
export type NearOf = readonly [
  methodKey: string,
  materialKey: string,
  contaminationClass: string,
  yieldClass: string,
  cropped: boolean,
  lifeClass: string | null,
];

/**
 * A near batch is one that kept sums do not hold as it counts today. Flags: 1 within the period's ends, 2 too young for
 * contamination, 4 for yield, 8 apart, then the marks from 16 on: run missing, trimmed, as picked, dry assumed, shared.
 */
const flagBits = 9;

// As many as networks have ways to count (methods, materials and classes in use), the same in every question: a number says
// which. They are kept for the life of a process, and numbers reach for four millions of them.
const codes = new Map<string, number>();
const kinds: { readonly of: NearOf; readonly key: string }[] = [];

/** The code of batches that are alike, without flags. */
export function codeOf(of: NearOf): number {
  const key = of.join(' ');
  const known = codes.get(key);
  if (known !== undefined) return known;
  const code = kinds.length << flagBits;
  codes.set(key, code);
  kinds.push({ of, key });
  return code;
}

export function withFlags(code: number, flags: number): number {
  return code | flags;
}

/** How many batches and units there are of each code. */
export class NearCounts {
  readonly #counts = new Map<number, { batches: number; units: number }>();

  /** Two numbers a batch: its code and its units. */
  add(near: readonly number[]): void {
    for (let at = 0; at < near.length; at += 2) {
      const code = near[at] ?? 0;
      const count = this.#counts.get(code);
      const units = near[at + 1] ?? 0;
      if (count === undefined) this.#counts.set(code, { batches: 1, units });
      else {
        count.batches += 1;
        count.units += units;
      }
    }
  }

  /** Added up by what decides where batches count, of those methods that are wanted. */
  classes(isWanted: (methodKey: string) => boolean): NearClass[] {
    const sums = new Map<number, number[]>();
    for (const [code, { batches, units }] of this.#counts) {
      const kind = code >> flagBits;
      const own = sums.get(kind) ?? new Array<number>(21).fill(0);
      sums.set(kind, own);
      addTo(own, code & ((1 << flagBits) - 1), batches, units);
    }
    return [...sums].flatMap(([kind, numbers]): NearClass[] => {
      const of = kinds[kind]?.of;
      return of !== undefined && isWanted(of[0]) ? [[...of, ...numbers]] : [];
    });
  }
}

function addTo(sums: number[], flags: number, batches: number, units: number): void {
  const add = (place: number, number: number) => {
    sums[place] = (sums[place] ?? 0) + number;
  };
  const [inside, young, unripe] = [flags & 1, (flags >> 1) & 1, (flags >> 2) & 1];
  add(0, inside * batches);
  add(1, inside * units);
  add(2, young * batches);
  add(3, young * units);
  add(4, unripe * batches);
  add(5, unripe * units);
  for (let mark = 0; mark < 5; mark += 1) {
    const marked = ((flags >> (4 + mark)) & 1) * batches;
    add(6 + mark, (inside - young) * marked);
    add(11 + mark, (inside - unripe) * marked);
    add(16 + mark, inside * marked);
  }
}
