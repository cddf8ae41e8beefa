import type { WriteContext } from '@/lib/access/context';
import { type Failure, notFound } from '@/lib/base/result';
import { askFirst } from '../batch/ask-first';
import { checkEventDate } from '../batch/check-event-date';
import { checkFinding } from './check-finding';
import type { FindingInput } from './finding.input';
import { type FoundBatch, foundKey } from './found-batches';

/** What stands against a finding of a batch that was looked up beforehand; asks the database nothing. */
export function judgeFinding(
  { now, confirmed }: Pick<WriteContext, 'now' | 'confirmed'>,
  input: FindingInput,
  batch: FoundBatch | undefined,
): Failure | undefined {
  if (!batch) return notFound;
  const { foundOn, units, sign } = input;
  const wrongDate = checkEventDate('foundOn', foundOn, batch, now);
  if (wrongDate) return wrongDate;
  const errors = checkFinding(input, batch.units);
  if (errors.length > 0) return { kind: 'invalid', errors };
  const same = batch.recorded.has(foundKey(foundOn, units, sign));
  const values = { date: foundOn };
  return askFirst({ confirmed }, same ? [{ field: 'units', code: 'already-recorded', values }] : []);
}

/** The batch after one more finding, as far as the next one needs it. */
export function afterFinding(batch: FoundBatch, input: FindingInput): FoundBatch {
  const { units, unitNumbers, foundOn, sign } = input;
  return {
    ...batch,
    units: {
      ...batch.units,
      canBeFound: batch.units.canBeFound - units,
      namedContaminated: new Set([...batch.units.namedContaminated, ...unitNumbers]),
    },
    recorded: new Set([...batch.recorded, foundKey(foundOn, units, sign)]),
  };
}
