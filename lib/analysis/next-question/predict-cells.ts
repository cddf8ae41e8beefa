import type { NewRow } from '@/lib/stats/mixed/design/fixed-term';
import type { ExpectedTogether } from '@/lib/stats/mixed/expected-together';
import type { ModelBatch } from '../adjusted/model-batch';
import type { LevelledOut } from '../adjusted/model-terms';
import type { Fit } from '../fitting/fit';
import type { FitAnswer, FitRequest } from '../fitting/fit-request';
import type { PlainFit } from '../fitting/plain-fit';
import { type MetLevels, metLevels } from './met-levels';
import { covariateMeans, nextRow } from './next-row';

/** A site with a species, a material and a season (null: the year as it was grown), and the methods it could use for them. */
export type Cell = {
  readonly siteId: string;
  readonly speciesId: string;
  readonly materialId: string;
  readonly season: string | null;
  readonly methods: readonly string[];
};

type Prediction = FitAnswer['predictions'][number];

export type Predicted = {
  readonly fit: PlainFit;
  readonly met: MetLevels;
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

/** Fits a model and asks it about one more batch of every method in every cell. */
export async function predictCells(
  request: FitRequest,
  batches: readonly ModelBatch[],
  levelledOut: LevelledOut,
  cells: readonly Cell[],
  fitModel: Fit,
): Promise<Predicted | undefined> {
  const met = metLevels(batches, levelledOut);
  const means = covariateMeans(request.input.fixed, batches);
  const rows = cells.map((cell) =>
    cell.methods.flatMap((methodKey): { methodKey: string; row: NewRow }[] => {
      const row = carriesMethod(met, cell.siteId, methodKey)
        ? nextRow(request.input.fixed, met, means, { ...cell, methodKey })
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
    met,
    of: (cell, method) => predictions.get(keyOf(cell, method)),
    together: (cell) => joint.get(keyOf(cell, '')),
  };
}

const keyOf = ({ siteId, speciesId, materialId, season }: Cell, method: string) =>
  [siteId, speciesId, materialId, season ?? 'year', method].join(' ');

/** Whether there are batches enough to speak of a method at a site. */
function carriesMethod({ sitesOfMethod, methods }: MetLevels, siteId: string, method: string): boolean {
  const sites = sitesOfMethod.get(method) ?? new Set();
  return (
    (methods.get(method) ?? 0) >= fewestOfMethod && (sites.has(siteId) || sites.size >= fewestOtherSites)
  );
}
