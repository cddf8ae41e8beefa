import 'server-only';
import type { z } from 'zod';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import { ok, type Result } from '@/lib/base/result';
import { type Coded, madeBefore } from '../fields/made-before';
import { insertStarted } from './insert-started';
import { judgeStarts } from './judge-starts';
import type { startBatchInput } from './start-batch.input';

/**
 * Starts several batches, as the form starts one: each is refused, asked about or started for itself, in the order
 * given, in a number of statements that does not grow with theirs.
 */
export async function startBatches(
  context: WriteContext,
  asked: readonly OneOfMany<z.output<typeof startBatchInput>>[],
): Promise<Result<Coded>[]> {
  const inputs = asked.map(({ input }) => input);
  const before = await madeBefore(context, 'batch', inputs);
  const judge = await judgeStarts(context, inputs);
  const answers: Result<Coded>[] = [];
  const ready = asked.flatMap((one, at) => {
    const repeat = one.input.id === null ? undefined : before.get(one.input.id);
    if (repeat) {
      answers[at] = ok(repeat);
      return [];
    }
    const judged = judge(one);
    if (judged.kind !== 'ok') answers[at] = judged;
    return judged.kind === 'ok' ? [{ at, input: one.input, prepared: judged.value }] : [];
  });
  const started = await insertStarted(context, ready);
  for (const [index, { at }] of ready.entries()) {
    const answer = started[index];
    if (answer) answers[at] = answer;
  }
  return answers;
}
