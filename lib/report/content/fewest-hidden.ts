/** What is hidden by name, or undefined where just that cannot be. */
type Hide<T> = (keys: ReadonlySet<string>) => T | undefined;

/** A name with the size of what it stands for. */
export type Sized = { readonly key: string; readonly amount: number };

/**
 * Hides names until nothing is told that may not be: first those that are unsafe by themselves, then the smallest, one more
 * at a time. Undefined where it is unsafe with all of them hidden.
 */
export function fewestHidden<T>(
  names: readonly Sized[],
  hide: Hide<T>,
  safe: (version: T) => boolean,
): T | undefined {
  const version = (keys: readonly string[]) => {
    const hidden = hide(new Set(keys));
    return hidden !== undefined && safe(hidden) ? hidden : undefined;
  };
  const all = names.map(({ key }) => key);
  const without = (key: string) => all.filter((one) => one !== key);
  const unsafeAlone = new Set(all.filter((key) => version(without(key)) === undefined));
  const order = [...names]
    .sort(
      (one, other) =>
        Number(unsafeAlone.has(other.key)) - Number(unsafeAlone.has(one.key)) || one.amount - other.amount,
    )
    .map(({ key }) => key);
  for (let count = 1; count <= order.length; count += 1) {
    const found = version(order.slice(0, count));
    if (found !== undefined) return found;
  }
  return undefined;
}
