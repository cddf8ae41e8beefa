import { readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { z } from 'zod';
import { type SourceKey, sources } from '@/lib/growing/sources';

const file = path.resolve(import.meta.dirname, '../../data/published-trials.csv');

const printedRows = z.array(
  z.object({
    id: z.string(),
    source: z.string(),
    species: z.string(),
    substrate: z.string(),
    treatment: z.string(),
    yield_g: z.string(),
    yield_basis: z.enum(['', 'bag', 'kg_sub', 'kg_wet']),
    dry_substrate_g: z.string(),
    dry_is: z.enum(['', 'stated', 'implied']),
    be_pct: z.string(),
  }),
);

/** One row of a published table, masses as printed: per bag, per kg of substrate or per kg of wet substrate. */
export type TrialRow = {
  readonly id: string;
  readonly source: SourceKey;
  readonly species: string;
  readonly substrate: string;
  readonly treatment: string;
  /** Null where the row is a whole crop. */
  readonly flush: number | null;
  readonly fresh: string;
  readonly dry: string;
  /** `implied`: worked back from yield and BE, so that agreeing says nothing about the source's arithmetic. */
  readonly dryIs: 'stated' | 'implied';
  /** Whether masses are per kg of wet substrate, of which `dry` is the dry part. */
  readonly perWetKilogram: boolean;
  readonly printedBe: string;
};

function isSource(key: string): key is SourceKey {
  return key in sources;
}

function trialRow(row: z.output<typeof printedRows>[number]): TrialRow {
  if (!isSource(row.source)) throw new Error(`${row.id}: no reference for ${row.source}`);
  if (row.dry_is === '') throw new Error(`${row.id}: dry substrate neither stated nor implied`);
  const [, substrate = row.substrate, flush = null] = /^(.*) \(flush (\d)\)$/.exec(row.substrate) ?? [];
  return {
    ...{ id: row.id, source: row.source, species: row.species, treatment: row.treatment, substrate },
    ...{
      flush: flush === null ? null : Number(flush),
      fresh: row.yield_g,
      dry: row.dry_substrate_g,
      dryIs: row.dry_is,
    },
    perWetKilogram: row.yield_basis === 'kg_wet',
    printedBe: row.be_pct,
  };
}

/** The rows that BE can be worked out from, and the ids of the others by what they lack. */
export function readTrials() {
  const rows = printedRows.parse(parse(readFileSync(file), { columns: true }));
  const withYield = rows.filter((row) => row.yield_g !== '');
  const idsOf = (some: typeof rows) => some.map(({ id }) => id);
  return {
    rows: withYield.filter((row) => row.dry_substrate_g !== '').map(trialRow),
    withoutYield: idsOf(rows.filter((row) => row.yield_g === '')),
    withoutDrySubstrate: idsOf(withYield.filter((row) => row.dry_substrate_g === '')),
  };
}

/** Rows that are flushes of one and the same substrate stand together: they are one batch. */
export function batchesOf(rows: readonly TrialRow[]): readonly (readonly TrialRow[])[] {
  const keyOf = ({ id, flush, source, substrate }: TrialRow) =>
    flush === null ? id : `${source}: ${substrate}`;
  return [...new Set(rows.map(keyOf))].map((key) => rows.filter((row) => keyOf(row) === key));
}

/** The number of units, a power of ten, at which every printed mass of a batch is whole grams. */
export function unitsOf(batch: readonly TrialRow[]): number {
  const decimals = batch.flatMap(({ fresh, dry }) =>
    [fresh, dry].map((text) => text.split('.')[1]?.length ?? 0),
  );
  return 10 ** Math.max(...decimals);
}

/** Whole grams of all units together from a mass printed for one. */
export function gramsOf(printed: string, units: number): number {
  return Math.round(Number(printed) * units);
}
