import type { FixedTerm } from '@/lib/stats/mixed/design/fixed-term';
import type { PlainFit } from '../fitting/plain-fit';
import { covariatePart } from './covariate-part';
import type { ModelBatch } from './model-batch';

/** The conditional modes of one random term by level; empty where the term is not in the fit. */
export function modesOf(fit: PlainFit, term: string): ReadonlyMap<string, number> {
  const effects = fit.randomEffects.find((one) => one.term === term);
  return new Map((effects?.levels ?? []).map((level, at) => [level, effects?.modes[at] ?? 0]));
}

/**
 * How each site does whatever it uses, as log odds against a typical site: its random effect and what sites with its shares
 * of methods have in common.
 */
export function siteLogits(
  fit: PlainFit,
  fixed: readonly FixedTerm[],
  batches: readonly ModelBatch[],
): ReadonlyMap<string, number> {
  const own = covariatePart(fit, fixed, 'own');
  const modes = modesOf(fit, 'site');
  const logits = new Map<string, number>();
  batches.forEach(({ siteId }, row) => {
    if (!logits.has(siteId)) logits.set(siteId, (own?.[row] ?? 0) + (modes.get(siteId) ?? 0));
  });
  return logits;
}
