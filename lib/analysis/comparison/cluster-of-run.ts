/** What decides whether two batches were treated together. */
export type RunMember = { readonly id: string; readonly runIds: readonly string[] };

/**
 * A cluster label for each batch, by batch id: batches that share a treatment run are not independent of each
 * other, and neither are batches joined through a third one that used both runs. The clusters are therefore the
 * connected components of the graph that joins each batch with its runs. A batch without a run is its own cluster.
 *
 * Labels are the smallest id of the component, so they do not depend on the order of the batches.
 */
export function clusterOfRun(batches: readonly RunMember[]): ReadonlyMap<string, string> {
  const parent = new Map<string, string>();

  function root(of: string): string {
    let top = of;
    for (let up = parent.get(top); up !== undefined && up !== top; up = parent.get(top)) top = up;
    // The path is shortened, so that long chains of shared runs stay fast.
    for (let step = of; step !== top; ) {
      const next = parent.get(step) ?? top;
      parent.set(step, top);
      step = next;
    }
    return top;
  }

  for (const { runIds } of batches) {
    const [first, ...others] = runIds;
    if (first === undefined) continue;
    for (const other of others) {
      const [smaller, larger] = [root(first), root(other)].sort();
      if (smaller !== undefined && larger !== undefined && smaller !== larger) parent.set(larger, smaller);
    }
  }
  return new Map(
    batches.map(({ id, runIds }) => [id, runIds[0] === undefined ? `batch:${id}` : `run:${root(runIds[0])}`]),
  );
}
