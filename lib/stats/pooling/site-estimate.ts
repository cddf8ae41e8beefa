import { requireFinite, requirePositive } from '../check-argument';
import { ArgumentError } from '../outcome';

/** One site's estimate on a scale that is close to normal (a logit, a log ratio, a mean) and its sampling variance. */
export type SiteEstimate = { readonly label: string; readonly estimate: number; readonly variance: number };

/**
 * @throws ArgumentError for an estimate that is not finite, a variance not above 0, or a label that occurs twice.
 */
export function checkSiteEstimates(sites: readonly SiteEstimate[]): void {
  const labels = new Set<string>();
  for (const { label, estimate, variance } of sites) {
    if (labels.has(label)) throw new ArgumentError('sites', `label "${label}" occurs twice`);
    labels.add(label);
    requireFinite('estimate', estimate);
    requirePositive('variance', variance);
  }
}
