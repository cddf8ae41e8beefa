import type { FitRequest } from '../fitting/fit-request';
import type { LotBatch } from './lot-batch';

/** No lot has this name: the level at which a lot's own effect counts as 0. */
export const anyLot = '(any lot)';

/** What a batch's expectation depends on besides its lot. */
export type Place = Pick<LotBatch, 'kind' | 'methodKey' | 'siteId'>;

export const placeKey = ({ kind, methodKey, siteId }: Place) => `${kind} ${methodKey} ${siteId}`;

/** Every place in which a batch stands, once, in a fixed order. */
export function placesOf(batches: readonly LotBatch[]): Place[] {
  const places = new Map(batches.map((batch) => [placeKey(batch), batch]));
  return [...places.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, place]) => place);
}

/**
 * The binomial mixed model of contamination: method and kind fixed; site, site x method, lot, treatment run and batch
 * random. Runs that hold one batch each say nothing apart from the batches and are left out. Predicts every place
 * with a lot of effect 0.
 */
export function lotRequest(batches: readonly LotBatch[], places: readonly Place[]): FitRequest {
  const sorted = [...batches].sort((a, b) => (a.batchId < b.batchId ? -1 : 1));
  const column = (of: (batch: LotBatch) => string) => sorted.map(of);
  const several = (values: readonly string[]) => new Set(values).size > 1;
  const factors = [
    { kind: 'factor' as const, name: 'method', values: column(({ methodKey }) => methodKey) },
    { kind: 'factor' as const, name: 'kind', values: column(({ kind }) => kind) },
  ].filter(({ values }) => several(values));
  const random = [
    { name: 'site', values: column(({ siteId }) => siteId) },
    { name: 'site x method', values: column(({ siteId, methodKey }) => `${siteId} ${methodKey}`) },
    { name: 'lot', values: column(({ lotId }) => lotId) },
    { name: 'run', values: column(({ run }) => run) },
  ].filter(({ values }) => several(values) && new Set(values).size < sorted.length);
  const batchTerm = { name: 'batch', values: column(({ batchId }) => batchId) };
  return {
    kind: 'binomial',
    input: {
      events: sorted.map(({ contaminated }) => contaminated),
      trials: sorted.map(({ units }) => units),
      fixed: factors,
      random: [...random, batchTerm],
    },
    predict: places.map(({ kind, methodKey, siteId }) => ({
      method: methodKey,
      kind,
      site: siteId,
      'site x method': `${siteId} ${methodKey}`,
      lot: anyLot,
      run: anyLot,
      batch: anyLot,
    })),
  };
}
