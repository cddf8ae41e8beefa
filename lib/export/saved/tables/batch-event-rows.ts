import type { Prisma } from '@/lib/database/generated/client';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { batchWhere } from '@/lib/records/batch/batch-where';
import { codesCell } from '../cells';
import type { SavedColumn, SavedQuery } from '../saved-table';

/** What every line about a batch names: its batch and site. */
export const ofBatch = { batch: { include: { site: true } } } as const;

type OfBatch = { readonly batch: { readonly code: string; readonly site: { readonly name: string } } };

/** How each such line begins. */
export const batchColumns: readonly SavedColumn<OfBatch>[] = [
  { key: 'batch', kind: 'text', blank: 'never', cell: (row) => row.batch.code },
  { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.batch.site.name },
];

/** Units of a batch that were named, by their numbers. */
export const ofNamedUnits = {
  namedUnits: { where: { voidedAt: null }, orderBy: { unitNumber: 'asc' } },
} as const;

type OfNamedUnits = { readonly namedUnits: readonly { readonly unitNumber: number }[] };

export const unitNumbersColumn: SavedColumn<OfNamedUnits> = {
  ...{ key: 'unitNumbers', kind: 'text', blank: 'notRecorded' },
  cell: (row) => codesCell(row.namedUnits.map(({ unitNumber }) => String(unitNumber))),
};

type Noted = { readonly note: string | null; readonly voidedAt: Date | null };

/** How each such line ends. */
export const noteColumns: readonly SavedColumn<Noted>[] = [
  { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
  { key: 'voided', kind: 'yesNo', blank: 'never', cell: (row) => row.voidedAt !== null },
];

/** What hangs on the batches that a filter of the list of batches lets through; voided ones with voided batches. */
export function eventWhere(query: SavedQuery): {
  batch: Prisma.BatchWhereInput;
  voidedAt?: null;
} {
  const filter = batchFilterInput.parse(query);
  return { batch: batchWhere(filter), ...(filter.voided === 'yes' ? {} : { voidedAt: null }) };
}
