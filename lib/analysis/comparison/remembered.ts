/** Enough for the cells of the largest network, twice over. */
const most = 20_000;

/**
 * The same answers as `work`, remembered by the sums they rest on, which come sorted: an interval takes milliseconds, a
 * page shows hundreds, and most of them are the same from one look to the next.
 */
export function remembered<A>(
  work: (first: readonly number[], second: readonly number[]) => A,
): (first: readonly number[], second: readonly number[]) => A {
  const answers = new Map<string, { readonly answer: A }>();
  return (first, second) => {
    const key = `${first.join()} of ${second.join()}`;
    const known = answers.get(key);
    if (known) return known.answer;
    const answer = work(first, second);
    const [oldest] = answers.keys();
    if (answers.size >= most && oldest !== undefined) answers.delete(oldest);
    answers.set(key, { answer });
    return answer;
  };
}
