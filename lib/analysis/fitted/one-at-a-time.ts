type Waiting = { readonly key: string; readonly run: Promise<unknown> };

/** What each network has under way, last one last. Of this process: two servers may each fit once. */
const underWay = new Map<string, Waiting[]>();

/**
 * Runs jobs of one network one after another, and joins a job of the same key that is under way or waiting instead of
 * starting it again. A job that fails does not hold up those after it.
 */
export function oneAtATime<T>(network: string, key: string, job: () => Promise<T>): Promise<T> {
  const line = underWay.get(network) ?? [];
  const same = line.find((waiting) => waiting.key === key);
  // The same key is the same question of the same network, so its answer has the same type.
  if (same) return same.run as Promise<T>;
  const before = line.at(-1)?.run ?? Promise.resolve();
  const run = before.then(job, job);
  const own: Waiting = { key, run };
  underWay.set(network, [...line, own]);
  const leave = () => {
    const rest = (underWay.get(network) ?? []).filter((waiting) => waiting !== own);
    if (rest.length === 0) underWay.delete(network);
    else underWay.set(network, rest);
  };
  run.then(leave, leave);
  return run;
}
