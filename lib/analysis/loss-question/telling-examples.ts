import { normalQuantile } from '@/lib/stats/distribution/normal';
import { logistic } from '@/lib/stats/mixed/binomial/marginal-probability';
import type { CountedBatch } from '../adjusted/contamination-request';
import { termLabels } from '../adjusted/model-terms';
import type { PlainFit } from '../fitting/plain-fit';
import { shownLevel } from '../shown-figure';
import type { TellingExample } from './losses-answer';
import type { AskedSource } from './told-sources';

const shown = 3;

/**
 * Of each source the site, lot or run that raises losses most (its conditional mode, drawn towards an ordinary one the more
 * the less is recorded), and of those the three furthest out. `expected` is what the same batches would have lost with
 * an ordinary one in its place, everything else as fitted.
 */
export function tellingExamples(
  fit: PlainFit,
  batches: readonly CountedBatch[],
  asked: readonly AskedSource[],
  codes: ReadonlyMap<string, string>,
): TellingExample[] {
  return asked
    .filter(({ untold }) => untold === null)
    .flatMap(({ source }) => worstOf(source, fit, batches, codes))
    .sort((a, b) => b.odds.estimate - a.odds.estimate)
    .slice(0, shown);
}

function worstOf(
  source: AskedSource['source'],
  fit: PlainFit,
  batches: readonly CountedBatch[],
  codes: ReadonlyMap<string, string>,
): TellingExample[] {
  const effects = fit.randomEffects.find(({ term }) => term === source);
  if (effects === undefined) return [];
  const at = effects.modes.reduce((best, mode, k) => (mode > (effects.modes[best] ?? 0) ? k : best), 0);
  const mode = effects.modes[at] ?? 0;
  const level = effects.levels[at] ?? '';
  const labels = termLabels(batches, source);
  const rows = [...labels.keys()].filter((row) => labels[row] === level);
  const own = rows.flatMap((row) => batches[row] ?? []);
  const [first] = own;
  if (mode <= 0 || first === undefined || level.startsWith('unknown ') || level.startsWith('batch:'))
    return [];
  const expected = rows.reduce((sum, row) => {
    const fitted = Math.min(1 - 1e-12, Math.max(1e-12, fit.fitted[row] ?? 0));
    return sum + (batches[row]?.units ?? 0) * logistic(Math.log(fitted / (1 - fitted)) - mode);
  }, 0);
  const error = Math.sqrt(effects.predictionErrorVariances[at] ?? 0);
  const reach = normalQuantile(1 - (1 - shownLevel) / 2) * error;
  const levelId = source === 'run' ? level.replace(/^run:/, '') : level;
  return [
    {
      source,
      levelId,
      code: codes.get(levelId) ?? null,
      siteId: first.siteId,
      methodKey: first.methodKey,
      batches: own.length,
      units: own.reduce((sum, { units }) => sum + units, 0),
      found: own.reduce((sum, { contaminated }) => sum + contaminated, 0),
      expected,
      odds: { estimate: Math.exp(mode), low: Math.exp(mode - reach), high: Math.exp(mode + reach) },
    },
  ];
}
