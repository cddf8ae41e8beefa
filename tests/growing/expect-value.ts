import { expect } from 'vitest';
import type { Answer, CannotReason } from '@/lib/growing/answer';

/** The value of an answer, or a failed test that shows the reason. */
export function given<T>(result: Answer<T>): T {
  if (result.kind !== 'value') throw new Error(`cannot compute: ${JSON.stringify(result)}`);
  return result.value;
}

/** Expects "cannot compute" with a reason. */
export function expectReason<T>(result: Answer<T>, reason: CannotReason): void {
  expect(result).toMatchObject({ kind: 'cannot-compute', reason });
}
