import 'server-only';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import { ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { type DerivedBatch, deriveBatch } from '@/lib/growing/derive-batch';
import { suitabilityTable } from '@/lib/growing/suitability-table';
import { askFirst } from './ask-first';
import { batchFacts } from './batch-facts';
import type { BatchInput } from './batch-fields.input';
import { type BatchLookups, batchLookups } from './batch-lookups';
import { batchQuestions } from './batch-questions';
import { checkBatch } from './check-batch';
import { type ResolvedBatch, resolveBatch } from './resolve-batch';
import { runQuestions } from './run-questions';
import { type RunVerdicts, runVerdicts } from './run-verdicts';

export type PreparedBatch = { readonly resolved: ResolvedBatch; readonly derived: DerivedBatch };

type Found = {
  readonly lookups: BatchLookups;
  readonly verdicts: RunVerdicts;
  readonly secondLife: boolean;
};

/** Refuses what cannot be, asks about what is unlikely, and works out what is not typed, by what was looked up. */
function judgeBatch(
  { actor, now, confirmed }: Pick<WriteContext, 'actor' | 'now' | 'confirmed'>,
  input: BatchInput,
  { lookups, verdicts, secondLife }: Found,
): Result<PreparedBatch> {
  const today = todayInZone(lookups.site?.timeZone ?? actor.networkTimeZone, now);
  const errors = checkBatch(input, { today, secondLife });
  if (errors.length > 0) return { kind: 'invalid', errors };
  const resolved = resolveBatch(input, lookups);
  if ('kind' in resolved) return resolved;
  const derived = deriveBatch(batchFacts(input, resolved, lookups));
  const questions = askFirst({ confirmed }, [
    ...batchQuestions(input, resolved, derived, {
      today,
      language: actor.language,
      table: suitabilityTable(lookups.suitability),
    }),
    ...runQuestions(resolved, verdicts),
    ...(input.moistureSource === 'assumed' && derived.moisturePercent === null
      ? [{ field: 'moistureSource', code: 'no-moisture-to-assume' }]
      : []),
  ]);
  return questions ?? ok({ resolved, derived });
}

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
  const judge = await judgeBatches(context, [input], secondLife, knownRuns);
  return judge({ input, confirmed: context.confirmed });
}

/** Looks up what several batches point to; answers what judges one of them: none is judged by another. */
export async function judgeBatches(
  context: WriteContext,
  inputs: readonly BatchInput[],
  secondLife: boolean,
  knownRuns: ReadonlySet<string> = new Set(),
): Promise<(one: OneOfMany<BatchInput>) => Result<PreparedBatch>> {
  const { found, all } = await batchLookups(context, inputs);
  const runs = [...all.runs.values()].filter(({ id }) => !knownRuns.has(id));
  const verdicts = await runVerdicts(context, runs, all.methods, context.now);
  return ({ input, confirmed }) =>
    judgeBatch({ ...context, confirmed }, input, { lookups: found(input), verdicts, secondLife });
}
