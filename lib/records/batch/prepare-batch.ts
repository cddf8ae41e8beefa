import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { type DerivedBatch, deriveBatch } from '@/lib/growing/derive-batch';
import { suitabilityTable } from '@/lib/growing/suitability-table';
import { askFirst } from './ask-first';
import { batchFacts } from './batch-facts';
import type { BatchInput } from './batch-fields.input';
import { batchLookups } from './batch-lookups';
import { batchQuestions } from './batch-questions';
import { checkBatch } from './check-batch';
import { type ResolvedBatch, resolveBatch } from './resolve-batch';
import { runQuestions } from './run-questions';

export type PreparedBatch = { readonly resolved: ResolvedBatch; readonly derived: DerivedBatch };

/**
 * Looks everything up, refuses what cannot be, asks about what is unlikely, and works out what is not typed. Treatment
 * runs in `knownRuns` were asked about when the batch was started.
 */
export async function prepareBatch(
  context: WriteContext,
  input: BatchInput,
  secondLife: boolean,
  knownRuns: ReadonlySet<string> = new Set(),
): Promise<Result<PreparedBatch>> {
  const { actor, now } = context;
  const found = await batchLookups(context, input);
  const zone = found.site?.timeZone ?? actor.networkTimeZone;
  const today = todayInZone(zone, now);
  const errors = checkBatch(input, { today, secondLife });
  if (errors.length > 0) return { kind: 'invalid', errors };
  const resolved = resolveBatch(input, found);
  if ('kind' in resolved) return resolved;
  const derived = deriveBatch(batchFacts(input, resolved, found));
  const questions = askFirst(context, [
    ...batchQuestions(input, resolved, derived, {
      today,
      language: actor.language,
      table: suitabilityTable(found.suitability),
    }),
    ...(await runQuestions(context, resolved, knownRuns, now)),
    ...(input.moistureSource === 'assumed' && derived.moisturePercent === null
      ? [{ field: 'moistureSource', code: 'no-moisture-to-assume' }]
      : []),
  ]);
  return questions ?? ok({ resolved, derived });
}
