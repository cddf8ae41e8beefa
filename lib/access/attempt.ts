import 'server-only';
import type { Result } from '@/lib/base/result';
import type { WriteContext } from './context';
import { failureOfError } from './failure-of-error';

/**
 * Runs a part of a command that may be refused without the whole being taken back: anything but ok, and what the
 * database refuses, undoes this part alone. Parts follow one another and are never nested.
 */
export async function attempt<T>({ db }: WriteContext, part: () => Promise<Result<T>>): Promise<Result<T>> {
  await db.$executeRaw`savepoint attempt`;
  try {
    const result = await part();
    if (result.kind === 'ok') await db.$executeRaw`release savepoint attempt`;
    else await db.$executeRaw`rollback to savepoint attempt`;
    return result;
  } catch (error) {
    const failure = failureOfError(error);
    if (failure === undefined) throw error;
    await db.$executeRaw`rollback to savepoint attempt`;
    return failure;
  }
}
