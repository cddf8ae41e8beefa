import type { WriteContext } from '@/lib/access/context';
import type { Failure, Question } from '@/lib/base/result';

/** The questions still open, as the answer of a command; each is asked once. Undefined when none is. */
export function askFirst(
  context: Pick<WriteContext, 'confirmed'>,
  questions: readonly Question[],
): Failure | undefined {
  const open = questions.filter(({ code }) => !context.confirmed.has(code));
  const once = open.filter(({ code }, index) => open.findIndex((other) => other.code === code) === index);
  return once.length === 0 ? undefined : { kind: 'confirm', questions: once };
}
