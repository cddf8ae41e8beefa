import 'server-only';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import { invalid, ok, type Result } from '@/lib/base/result';
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
  const asked = [{ input, confirmed: context.confirmed }];
  const [prepared] = await prepareBatches(context, asked, secondLife, knownRuns);
  return prepared ?? invalid('', 'try-again');
}

/** The same for several batches, in their order: none of them is judged by another. */
export async function prepareBatches(
  context: WriteContext,
  asked: readonly OneOfMany<BatchInput>[],
  secondLife: boolean,
  knownRuns: ReadonlySet<string> = new Set(),
): Promise<Result<PreparedBatch>[]> {
  const found = await batchLookups(
    context,
    asked.map(({ input }) => input),
  );
  const all = asked.map(({ input }) => found(input));
  const [first] = all;
  const runs = [...(first?.runs.values() ?? [])].filter(({ id }) => !knownRuns.has(id));
  const verdicts = await runVerdicts(context, runs, first?.methods ?? new Map(), context.now);
  return asked.flatMap(({ input, confirmed }, index) => {
    const lookups = all[index];
    return lookups ? judgeBatch({ ...context, confirmed }, input, { lookups, verdicts, secondLife }) : [];
  });
}
