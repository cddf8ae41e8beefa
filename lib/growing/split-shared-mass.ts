/**
 * Splits one mass among batches in proportion to their live units, in whole grams that add up exactly
 * (largest remainder; ties go to the earlier batch). A crate picked from several batches is recorded so.
 *
 * @param grams whole grams, 0 or more
 * @param liveUnits live units of each batch, 0 or more; when all are 0 the mass is split evenly
 */
export function splitSharedMass(grams: number, liveUnits: readonly number[]): number[] {
  if (liveUnits.length === 0) return [];
  const total = liveUnits.reduce((sum, units) => sum + units, 0);
  const weights =
    total > 0 ? liveUnits.map((units) => units / total) : liveUnits.map(() => 1 / liveUnits.length);
  const exact = weights.map((weight) => weight * grams);
  const shares = exact.map(Math.floor);
  let left = grams - shares.reduce((sum, share) => sum + share, 0);
  const byRemainder = exact
    .map((value, index) => ({ index, remainder: value - Math.floor(value) }))
    .sort((a, b) => b.remainder - a.remainder || a.index - b.index);
  for (const { index } of byRemainder) {
    if (left <= 0) break;
    shares[index] = (shares[index] ?? 0) + 1;
    left -= 1;
  }
  return shares;
}
