import { normalQuantile } from '@/lib/stats/distribution/normal';
import { logistic } from '@/lib/stats/mixed/binomial/marginal-probability';
import type { CountedBatch } from '../adjusted/contamination-request';
import { termLabels } from '../adjusted/model-terms';
import type { PlainFit } from '../fitting/plain-fit';
import { shownLevel } from '../shown-figure';
import type { NoneOut, TellingExample } from './losses-answer';
import { type AskedSource, isUnrecorded } from './told-sources';

export type Telling = {
  readonly examples: readonly TellingExample[];
  readonly noneOut: readonly NoneOut[];
};

/**
 * Of each source the site, lot or run that raises losses most (its conditional mode, drawn towards an ordinary one the more
 * the less is recorded), where that is beyond chance with all of its source looked at together (Bonferroni), the furthest
 * out first; and the sources of which no single one is. `expected` is what the same batches would have lost with an
 * ordinary one in its place, everything else as fitted.
 */
export function tellingExamples(
  fit: PlainFit,
  batches: readonly CountedBatch[],
  asked: readonly AskedSource[],
  codes: ReadonlyMap<string, string>,
): Telling {
  const told = asked.filter(({ untold }) => untold === null);
  const found = told.map(({ source }) => worstOf(source, fit, batches, codes));
  return {
    examples: found
      .flatMap((example) => example ?? [])
      .sort((one, other) => other.odds.estimate - one.odds.estimate),
    noneOut: told.flatMap(({ source, levels }, at) => (found[at] === undefined ? [{ source, levels }] : [])),
  };
}

type Effects = PlainFit['randomEffects'][number];

/** Where among the effects of a source the largest of a recorded level is, if it is beyond chance among so many. */
function standingOut({ levels, modes, predictionErrorVariances }: Effects): number | undefined {
  const recorded = [...levels.keys()].filter((at) => !isUnrecorded(levels[at] ?? ''));
  const [first] = recorded;
  if (first === undefined) return undefined;
  const worst = recorded.reduce((best, at) => ((modes[at] ?? 0) > (modes[best] ?? 0) ? at : best), first);
  const error = Math.sqrt(predictionErrorVariances[worst] ?? 0);
  const deviations = normalQuantile(1 - (1 - shownLevel) / (2 * recorded.length));
  return error > 0 && (modes[worst] ?? 0) > deviations * error ? worst : undefined;
}

function worstOf(
  source: AskedSource['source'],
  fit: PlainFit,
  batches: readonly CountedBatch[],
  codes: ReadonlyMap<string, string>,
): TellingExample | undefined {
  const effects = fit.randomEffects.find(({ term }) => term === source);
  const at = effects && standingOut(effects);
  if (effects === undefined || at === undefined) return undefined;
  const mode = effects.modes[at] ?? 0;
  const level = effects.levels[at] ?? '';
  const labels = termLabels(batches, source);
  const rows = [...labels.keys()].filter((row) => labels[row] === level);
  const own = rows.flatMap((row) => batches[row] ?? []);
  const [first] = own;
  if (first === undefined) return undefined;
  const expected = rows.reduce((sum, row) => {
    const fitted = Math.min(1 - 1e-12, Math.max(1e-12, fit.fitted[row] ?? 0));
    return sum + (batches[row]?.units ?? 0) * logistic(Math.log(fitted / (1 - fitted)) - mode);
  }, 0);
  const error = Math.sqrt(effects.predictionErrorVariances[at] ?? 0);
  const reach = normalQuantile(1 - (1 - shownLevel) / 2) * error;
  const levelId = source === 'run' ? level.replace(/^run:/, '') : level;
  return {
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
  };
}
