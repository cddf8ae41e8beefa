type Bucket = { tokens: number; filledAt: number };

export type RateLimit = {
  /** Whole seconds to wait; 0 when the request may pass. `now` in milliseconds. */
  take(who: string, now: number): number;
  /** How many requests may pass at this moment. */
  left(who: string, now: number): number;
};

/**
 * A bucket of `burst` requests for each person that refills at `perSecond`. Kept in this process: with several, a
 * person may send that many times as much. Full buckets are forgotten.
 */
export function rateLimit(burst: number, perSecond: number): RateLimit {
  const buckets = new Map<string, Bucket>();
  let sweptAt = 0;
  const filled = ({ tokens, filledAt }: Bucket, now: number) =>
    Math.min(burst, tokens + (Math.max(0, now - filledAt) / 1000) * perSecond);

  return {
    take(who, now) {
      if (now - sweptAt > 60_000) {
        sweptAt = now;
        for (const [key, bucket] of buckets) if (filled(bucket, now) >= burst) buckets.delete(key);
      }
      const tokens = filled(buckets.get(who) ?? { tokens: burst, filledAt: now }, now);
      const passes = tokens >= 1;
      buckets.set(who, { tokens: passes ? tokens - 1 : tokens, filledAt: now });
      return passes ? 0 : Math.max(1, Math.ceil((1 - tokens) / perSecond));
    },
    left(who, now) {
      const bucket = buckets.get(who);
      return bucket === undefined ? burst : Math.floor(filled(bucket, now));
    },
  };
}
