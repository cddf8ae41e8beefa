import type { JudgedBatch } from '../comparison/judged-batch';

/** A batch whose losses speak of its run: a second life has its own treatment behind it, or none. */
export function takesPart({ facts }: JudgedBatch): boolean {
  return !facts.secondLife && !facts.voided;
}
