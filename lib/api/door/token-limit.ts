import { rateLimit } from '@/lib/intake/rate-limit';

const burst = 600;
const perSecond = 10;
const limit = rateLimit(burst, perSecond);

export type Passage = {
  /** Seconds to wait; 0 when the request may pass. */
  readonly wait: number;
  /** RateLimit fields as the httpapi working group's draft of them has it (draft-ietf-httpapi-ratelimit-headers-10). */
  readonly headers: Readonly<Record<string, string>>;
};

/** Lets a token's request pass or not: 600 at once, refilled at 10 a second. */
export function passToken(tokenId: string, now: Date): Passage {
  const wait = limit.take(tokenId, now.getTime());
  const left = limit.left(tokenId, now.getTime());
  return {
    wait,
    headers: {
      'ratelimit-policy': `"token";q=${burst};w=${burst / perSecond}`,
      ratelimit: `"token";r=${left};t=${wait > 0 ? wait : Math.ceil((burst - left) / perSecond)}`,
    },
  };
}
