import { z } from 'zod';
import type { DataColumns } from './model-formula';

const numbersOrNull = z.array(z.number().nullable());
const networkInput = z.object({
  data: z.object({
    batch: z.array(z.string()),
    site: z.array(z.string()),
    method: z.array(z.string()),
    lot: z.array(z.string()),
    units: z.array(z.number()),
    contaminated: z.array(z.number()),
    dry_kg: z.array(z.number()),
    flush1_kg: numbersOrNull,
    flush2_kg: numbersOrNull,
    flush3_kg: numbersOrNull,
    first_event: z.array(z.string()),
    first_event_day: z.array(z.number()),
    status: z.array(z.string()),
  }),
});

/** One batch of the simulated network; kilograms and days as the file has them. */
export type NetworkBatch = {
  readonly batch: string;
  readonly site: string;
  readonly method: string;
  readonly lot: string;
  readonly units: number;
  readonly contaminated: number;
  readonly dryKg: number;
  /** Sum of the three flushes; NaN while one is missing. */
  readonly freshKg: number;
  readonly firstEvent: string;
  readonly firstEventDay: number;
  readonly status: string;
};

export function readNetwork(input: unknown) {
  const { data } = networkInput.parse(input);
  const all = data.batch.map((batch, row): NetworkBatch => {
    const at = <T>(values: readonly T[]): T => {
      const value = values[row];
      if (value === undefined) throw new Error(`row ${row} is incomplete`);
      return value;
    };
    const flushes = [data.flush1_kg, data.flush2_kg, data.flush3_kg].map(at);
    return {
      batch,
      site: at(data.site),
      method: at(data.method),
      lot: at(data.lot),
      units: at(data.units),
      contaminated: at(data.contaminated),
      dryKg: at(data.dry_kg),
      freshKg: flushes.reduce<number>((sum, kg) => sum + (kg ?? Number.NaN), 0),
      firstEvent: at(data.first_event),
      firstEventDay: at(data.first_event_day),
      status: at(data.status),
    };
  });
  const closed = all.filter(({ status }) => status === 'closed');
  const harvested = closed.filter(({ firstEvent }) => firstEvent === 'harvest');
  return { all, closed, harvested, methods: levelsOf(all, 'method'), sites: levelsOf(all, 'site') };
}

export function levelsOf(batches: readonly NetworkBatch[], key: 'site' | 'method' | 'lot'): string[] {
  return [...new Set(batches.map((batch) => batch[key]))].sort();
}

/** Columns for a model: the batch's labels, and whatever numbers are asked for. */
export function modelColumns(
  batches: readonly NetworkBatch[],
  measures: Readonly<Record<string, (batch: NetworkBatch) => number>>,
): DataColumns {
  const labels = ['site', 'method', 'lot'] as const;
  return {
    ...Object.fromEntries(labels.map((key) => [key, batches.map((own) => own[key])])),
    obs: batches.map(({ batch }) => batch),
    ...Object.fromEntries(Object.entries(measures).map(([key, of]) => [key, batches.map(of)])),
  };
}
