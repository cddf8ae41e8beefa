import { generalisedQRoot } from './generalised-q-root';
import type { SiteEstimate } from './site-estimate';

/**
 * Between-site variance at which the generalised Q equals its expectation k - 1; 0 when Q is below it already.
 * Source: Paule & Mandel (1982, J Res Natl Bur Stand 87, 377-385, from memory).
 */
export function pauleMandel(sites: readonly SiteEstimate[]): number {
  return generalisedQRoot(sites, sites.length - 1);
}
