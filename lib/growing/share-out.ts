/**
 * Shares a whole number (grams, cents) out by weights so that the shares add up to the whole: each gets its part
 * rounded down, and what is left goes, one each, to the largest remainders (equal ones: the first). Weights are whole
 * numbers of 0 or more; all of them 0, or none at all, gives null.
 */
export function shareOut(amount: number, weights: readonly number[]): number[] | null {
  const whole = weights.reduce((sum, weight) => sum + BigInt(weight), 0n);
  if (whole === 0n) return null;
  const parts = weights.map((weight, index) => {
    const product = BigInt(amount) * BigInt(weight);
    return { index, share: Number(product / whole), remainder: product % whole };
  });
  const left = amount - parts.reduce((sum, { share }) => sum + share, 0);
  const byRemainder = [...parts].sort((a, b) =>
    a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1,
  );
  for (const part of byRemainder.slice(0, left)) part.share += 1;
  return parts.map(({ share }) => share);
}

/** What `grams` cost when `forGrams` cost `paidMinor`, in whole minor units, half a unit rounded up. */
export function costOfMass(grams: number, paidMinor: number, forGrams: number): number {
  const twice = 2n * BigInt(grams) * BigInt(paidMinor);
  return Number((twice + BigInt(forGrams)) / (2n * BigInt(forGrams)));
}

/** What minutes of work count for at a value of an hour, in whole minor units, half a unit rounded up. */
export function costOfMinutes(minutes: number, minorPerHour: number): number {
  return Number((BigInt(minutes) * BigInt(minorPerHour) + 30n) / 60n);
}
