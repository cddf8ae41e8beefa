/** Items by key, in the order in which keys first occur. */
export function groupBy<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const members = groups.get(key);
    if (members === undefined) groups.set(key, [item]);
    else members.push(item);
  }
  return groups;
}
