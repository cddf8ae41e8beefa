import 'server-only';
import type { z } from 'zod';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { type FieldError, ok, type Question, type Result } from '@/lib/base/result';
import { type KeyedRecord, KnownKeys } from './known-keys';
import type { RowValues } from './read-row';
import { takeApart } from './take-apart';
import {
  problemsOf,
  type RowToTake,
  type TakenRow,
  type Taker,
  type TakeSettings,
  withCellErrors,
} from './taker';

type Made = { readonly id: string };

type Means<Input> = {
  /** What the form of the record would have posted. */
  readonly raw: (values: RowValues, settings: TakeSettings, context: WriteContext) => unknown;
  /** How rows contradict what they point to, in their order. */
  readonly contradictions?: (
    context: WriteContext,
    rows: readonly { readonly input: Input; readonly values: RowValues }[],
  ) => Promise<readonly (readonly FieldError[])[]>;
  /** What is asked about a row before it becomes a record that is not there yet. */
  readonly asks?: (values: RowValues) => readonly Question[];
  /** Makes records of many inputs at once, each refused or made for itself, by the rules of the form. */
  readonly make: (
    context: WriteContext,
    asked: readonly OneOfMany<Input>[],
  ) => Promise<readonly Result<Made>[]>;
  /** Where records that may be the same are looked for, and what makes them the same. */
  readonly scopeOf: (input: Input) => string;
  readonly keyOf: (input: Input) => string;
  readonly readKeys: (context: WriteContext, scopes: readonly string[]) => Promise<readonly KeyedRecord[]>;
};

type Parsed<Input> = OneOfMany<Input> & { readonly at: number; readonly values: RowValues };

const needs = (problems: readonly FieldError[]): TakenRow => ({ kind: 'needs', problems });

const taken = (result: Result<Made>): TakenRow =>
  result.kind === 'ok'
    ? { kind: 'new', recordIds: [result.value.id] }
    : { kind: 'needs', problems: problemsOf(result) };

/** Takes rows many at once, where the rules of the record's form can be asked of many at once. */
export function setTaker<S extends z.ZodType>(
  schema: S,
  means: Means<z.output<S>>,
  settings: TakeSettings,
): Taker {
  type Input = z.output<S>;
  const keys = new KnownKeys(settings.usedUp);

  function parsed(context: WriteContext, rows: readonly RowToTake[], answers: TakenRow[]) {
    return rows.flatMap((row, at): Parsed<Input>[] => {
      const input = parseInput(schema, means.raw(row.values, settings, context), settings.region);
      const errors = withCellErrors(row.errors, input.kind === 'invalid' ? input.errors : []);
      if (errors.length === 0 && input.kind === 'ok')
        return [{ at, input: input.value, values: row.values, confirmed: row.confirmed }];
      answers[at] = needs(errors);
      return [];
    });
  }

  async function take(context: WriteContext, rows: readonly RowToTake[]): Promise<TakenRow[]> {
    const answers: TakenRow[] = [];
    const read = parsed(context, rows, answers);
    const against = (await means.contradictions?.(context, read)) ?? [];
    const sound = read.filter(({ at }, index) => {
      const errors = against[index] ?? [];
      if (errors.length > 0) answers[at] = needs(errors);
      return errors.length === 0;
    });
    const scopes = sound.map(({ input }) => means.scopeOf(input));
    await keys.load(scopes, (missing) => means.readKeys(context, missing));
    const fresh = sound.filter(({ at, input, values, confirmed }) => {
      const there = keys.use(means.keyOf(input));
      const open = (means.asks?.(values) ?? []).filter(({ code }) => !confirmed.has(code));
      if (there !== undefined) answers[at] = { kind: 'there', recordIds: [there] };
      else if (open.length > 0)
        answers[at] = { kind: 'needs', problems: problemsOf({ kind: 'confirm', questions: open }) };
      return there === undefined && open.length === 0;
    });
    const results = await takeApart<Parsed<Input>, Result<Made>>(
      context,
      fresh,
      async (some) => ok(await means.make(context, some)),
      (failure) => failure,
    );
    for (const [index, { at }] of fresh.entries()) {
      const result = results[index];
      if (result) answers[at] = taken(result);
    }
    return answers;
  }

  return { atOnce: 500, take };
}
