import 'server-only';
import type { z } from 'zod';
import { attempt } from '@/lib/access/attempt';
import type { WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import type { Command } from '@/lib/access/run-command';
import type { FieldError } from '@/lib/base/result';
import { type KeyedRecord, KnownKeys } from './known-keys';
import type { RowValues } from './read-row';
import {
  problemsOf,
  type RowToTake,
  type TakenRow,
  type Taker,
  type TakeSettings,
  withCellErrors,
} from './taker';

type Means<S extends z.ZodType> = {
  readonly schema: S;
  readonly command: Command<z.output<S>, { readonly id: string }>;
  /** What the form of the record would have posted. */
  readonly raw: (values: RowValues, settings: TakeSettings, context: WriteContext) => unknown;
  /** How a row contradicts what it points to. */
  readonly contradictions?: (
    context: WriteContext,
    input: z.output<S>,
    values: RowValues,
  ) => Promise<readonly FieldError[]>;
  /** Where records that may be the same are looked for, and what makes them the same. */
  readonly scopeOf: (input: z.output<S>) => string;
  readonly keyOf: (input: z.output<S>) => string;
  readonly readKeys: (context: WriteContext, scopes: readonly string[]) => Promise<readonly KeyedRecord[]>;
};

/** Takes rows one by one through the command of the record's form. */
export function commandTaker<S extends z.ZodType>(means: Means<S>, settings: TakeSettings): Taker {
  const keys = new KnownKeys(settings.usedUp);
  const takeOne = async (context: WriteContext, row: RowToTake): Promise<TakenRow> => {
    const input = parseInput(means.schema, means.raw(row.values, settings, context), settings.region);
    const errors = withCellErrors(row.errors, input.kind === 'invalid' ? input.errors : []);
    if (errors.length > 0 || input.kind !== 'ok') return { kind: 'needs', problems: errors };
    const contradictions = (await means.contradictions?.(context, input.value, row.values)) ?? [];
    if (contradictions.length > 0) return { kind: 'needs', problems: contradictions };
    await keys.load([means.scopeOf(input.value)], (scopes) => means.readKeys(context, scopes));
    const there = keys.use(means.keyOf(input.value));
    if (there !== undefined) return { kind: 'there', recordIds: [there] };
    const { confirmed } = row;
    const result = await attempt(context, () => means.command({ ...context, confirmed }, input.value));
    return result.kind === 'ok'
      ? { kind: 'new', recordIds: [result.value.id] }
      : { kind: 'needs', problems: problemsOf(result) };
  };
  return {
    atOnce: 25,
    take: async (context, rows) => {
      const taken: TakenRow[] = [];
      for (const row of rows) taken.push(await takeOne(context, row));
      return taken;
    },
  };
}
