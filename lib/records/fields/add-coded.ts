import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import type { RowOf } from '@/lib/access/insert-rows';
import { newId } from '@/lib/base/new-id';
import { ok, type Result } from '@/lib/base/result';
import { insertCoded } from './insert-coded';
import { type Coded, type CodedTable, madeBefore } from './made-before';

type Addable = { readonly id: string | null; readonly code: string | null };

/** What every row says of who adds it. */
type Own = Pick<RowOf<CodedTable>, 'networkId' | 'id' | 'origin' | 'createdById'>;

/**
 * Adds records that are known by a code, as the form adds one: each is refused or added for itself, in the order given,
 * in a number of statements that does not grow with theirs. What the person has added before under the same id is
 * answered with it.
 */
export async function addCoded<T extends CodedTable, Input extends Addable>(
  context: WriteContext,
  table: T,
  inputs: readonly Input[],
  means: {
    /** Judges one by what was looked up beforehand; asks the database nothing. */
    readonly judge: (input: Input, own: Own & { readonly id: string }) => Result<(code: string) => RowOf<T>>;
    readonly draw: (again: boolean) => string;
  },
): Promise<Result<Coded>[]> {
  const { actor, origin } = context;
  const before = await madeBefore(context, table, inputs);
  const answers: Result<Coded>[] = [];
  const ready = inputs.flatMap((input, at) => {
    const repeat = input.id === null ? undefined : before.get(input.id);
    if (repeat) {
      answers[at] = ok(repeat);
      return [];
    }
    const id = input.id ?? newId();
    const own = { networkId: actor.networkId, id, origin, createdById: actor.personId };
    const judged = means.judge(input, own);
    if (judged.kind !== 'ok') answers[at] = judged;
    return judged.kind === 'ok' ? [{ at, id, wanted: input.code, row: judged.value }] : [];
  });
  const made = await insertCoded(context, table, ready, means.draw);
  for (const [index, { at }] of ready.entries()) {
    const answer = made[index];
    if (answer) answers[at] = answer;
  }
  return answers;
}
