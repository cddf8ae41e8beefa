import type { NewRow } from '@/lib/stats/mixed/design/fixed-term';
import type { ExpectedTogether } from '@/lib/stats/mixed/expected-together';
import type { ModelBatch } from '../adjusted/model-batch';
import type { Fit } from '../fitting/fit';
import type { FitAnswer, FitRequest } from '../fitting/fit-request';
import type { PlainFit } from '../fitting/plain-fit';
import { nextRow } from './next-row';

/** A site with a species and a material, and the methods it could use for them. */
export type Cell = {
  readonly siteId: string;
  readonly speciesId: string;
  readonly materialId: string;
  readonly methods: readonly string[];
};

type Prediction = FitAnswer['predictions'][number];

export type Predicted = {
  readonly fit: PlainFit;
  /** Of one more batch; undefined where too little is recorded of the method. */
  readonly of: (cell: Cell, method: string) => Prediction | undefined;
  /** What can be expected of the methods of a cell, jointly. */
  readonly together: (
    cell: Cell,
  ) => { readonly methods: readonly string[]; readonly expected: ExpectedTogether } | undefined;
};

/** A method on fewer judged batches than these in the whole network says nothing yet. Our choice. */
const fewestOfMethod = 6;
/** A method that a site has not used must have been used at so many others: one site's luck is its own. Our choice. */
const fewestOtherSites = 2;

/** Fits a model and asks it about one more batch of every method in every cell, in the season given. */
export async function predictCells(
  request: FitRequest,
  batches: readonly ModelBatch[],
  cells: readonly Cell[],
  season: string | null,
  fitModel: Fit,
): Promise<Predicted | undefined> {
  const enough = carriesMethod(batches);
  const rows = cells.map((cell) =>
    cell.methods.flatMap((methodKey): { methodKey: string; row: NewRow }[] => {
      const row = enough(cell.siteId, methodKey)
        ? nextRow(request.input.fixed, batches, { ...cell, methodKey, season })
        : undefined;
      return row === undefined ? [] : [{ methodKey, row }];
    }),
  );
  const asked = rows.map((some) => some.map(({ row }) => row));
  const answer = await fitModel({ ...request, predict: asked.flat(), together: asked });
  if (answer.kind === 'cannot-compute') return undefined;
  const predictions = new Map<string, Prediction | undefined>();
  const joint = new Map<string, { methods: string[]; expected: ExpectedTogether }>();
  let at = 0;
  for (const [index, cell] of cells.entries()) {
    const own = rows[index] ?? [];
    for (const { methodKey } of own) predictions.set(keyOf(cell, methodKey), answer.predictions[at++]);
    const expected = answer.together[index];
    if (expected) joint.set(keyOf(cell, ''), { methods: own.map(({ methodKey }) => methodKey), expected });
  }
  return {
    fit: answer.fit,
    of: (cell, method) => predictions.get(keyOf(cell, method)),
    together: (cell) => joint.get(keyOf(cell, '')),
  };
}

const keyOf = ({ siteId, speciesId, materialId }: Cell, method: string) =>
  [siteId, speciesId, materialId, method].join(' ');

/** Whether there are batches enough to speak of a method at a site. */
function carriesMethod(batches: readonly ModelBatch[]): (siteId: string, method: string) => boolean {
  const sitesOf = new Map<string, Set<string>>();
  const counts = new Map<string, number>();
  for (const { siteId, methodKey } of batches) {
    sitesOf.set(methodKey, (sitesOf.get(methodKey) ?? new Set()).add(siteId));
    counts.set(methodKey, (counts.get(methodKey) ?? 0) + 1);
  }
  return (siteId, method) => {
    const sites = sitesOf.get(method) ?? new Set();
    return (
      (counts.get(method) ?? 0) >= fewestOfMethod && (sites.has(siteId) || sites.size >= fewestOtherSites)
    );
  };
}
