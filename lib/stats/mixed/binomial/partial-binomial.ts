import { partOfRows, pick } from '../part-of-rows';
import { RandomSystem } from '../random-system';
import type { BinomialModel } from './binomial-model';

/** The model over part of its rows, in the same coordinates, to find a start for the whole. */
export function partialBinomial(model: BinomialModel): BinomialModel {
  const { system, codes, rows } = model;
  const part = partOfRows(system, codes);
  return {
    ...model,
    columns: model.columns.map((column) => pick(column, part)),
    rows: {
      events: pick(rows.events, part),
      trials: pick(rows.trials, part),
      offset: pick(rows.offset, part),
    },
    system: new RandomSystem(
      codes.map((own) => part.map((row) => own[row] as number)),
      system.levelCounts,
      part.length,
    ),
  };
}
