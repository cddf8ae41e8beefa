import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';

export type Column<Row> = {
  readonly key: string;
  readonly header: string;
  /** Unit of every figure in the column, shown under its name. */
  readonly unit?: string;
  readonly numeric?: boolean;
  /** A first column that is as wide as what stands in it, such as the number of a row. */
  readonly narrow?: boolean;
  /** Words of several lines, which would fill a phone where the column is as narrow as its longest word. */
  readonly roomy?: boolean;
  readonly cell: (row: Row) => ReactNode;
  /** Where pressing the header leads, and how the column is sorted now. */
  readonly sort?: { readonly href: Route; readonly now?: 'ascending' | 'descending' };
};

export function ColumnHeader<Row>({ column }: { column: Column<Row> }) {
  const { sort } = column;
  return (
    <th scope="col" className={column.numeric ? 'numeric' : undefined} aria-sort={sort?.now}>
      {sort === undefined ? (
        column.header
      ) : (
        <Link href={sort.href}>
          {column.header}
          {sort.now === undefined ? null : (
            <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
              <path d={sort.now === 'ascending' ? 'M1 9 6 3 11 9Z' : 'M1 3 6 9 11 3Z'} fill="currentColor" />
            </svg>
          )}
        </Link>
      )}
      {column.unit === undefined ? null : <span className="unit">{column.unit}</span>}
    </th>
  );
}
