import type { FittedAnswer } from './fitted-answer';
import type { StoredResult } from './stored-result';

/** Several answers as one, under their names: as old as the oldest of them, and complete once all of them are. */
export function answersTogether<T extends Record<string, unknown>>(
  parts: {
    readonly [K in keyof T]: FittedAnswer<T[K]>;
  },
): FittedAnswer<T> {
  const named = Object.entries(parts) as [string, FittedAnswer<unknown>][];
  const joined = (stored: readonly StoredResult<unknown>[]): StoredResult<T> => ({
    // The names and types are those of the parts.
    result: Object.fromEntries(named.map(([name], at) => [name, stored[at]?.result])) as T,
    dataVersion: stored.map(({ dataVersion }) => dataVersion).join(' '),
    fittedAt: stored.map(({ fittedAt }) => fittedAt).sort()[0] ?? '',
  });
  const next = () =>
    Promise.all(
      named.map(([, answer]) => (answer.kind === 'current' ? Promise.resolve(answer.stored) : answer.next)),
    ).then(joined);
  const stored = named.flatMap(([, answer]) => (answer.kind === 'first' ? [] : [answer.stored]));
  if (stored.length < named.length) return { kind: 'first', next: next() };
  return named.every(([, { kind }]) => kind === 'current')
    ? { kind: 'current', stored: joined(stored) }
    : { kind: 'earlier', stored: joined(stored), next: next() };
}
