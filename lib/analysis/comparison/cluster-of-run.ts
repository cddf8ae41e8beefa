/** The runs that a batch was treated in. */
export type TreatedIn = { readonly runIds: readonly string[] };

/** What decides whether two batches were treated together. */
export type RunMember = TreatedIn & { readonly id: string };

/**
 * What each run is joined to: the smallest id of the connected component of the graph that joins each batch with its runs.
 * Labels do not depend on the order of the batches; a run that nothing joins to another is its own.
 */
export function rootsOfRuns(batches: readonly TreatedIn[]): (run: string) => string {
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
    const [first] = runIds;
    if (first === undefined) continue;
    for (let at = 1; at < runIds.length; at += 1) {
      const [one, other] = [root(first), root(runIds[at] ?? first)];
      if (one < other) parent.set(other, one);
      else if (other < one) parent.set(one, other);
    }
  }
  return root;
}

/**
 * A cluster label for each batch, by batch id: batches that share a treatment run are not independent of each
 * other, and neither are batches joined through a third one that used both runs. The clusters are therefore the
 * connected components of runs (`rootsOfRuns`). A batch without a run is its own cluster.
 */
export function clusterOfRun(batches: readonly RunMember[]): ReadonlyMap<string, string> {
  const root = rootsOfRuns(batches);
  return new Map(
    batches.map(({ id, runIds }) => [id, runIds[0] === undefined ? `batch:${id}` : `run:${root(runIds[0])}`]),
  );
}
