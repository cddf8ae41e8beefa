import type { ReactNode } from 'react';

export type Column<Row> = {
  readonly key: string;
  readonly header: string;
  /** Unit of every figure in the column, shown under its name. */
  readonly unit?: string;
  readonly numeric?: boolean;
  /** A first column that is as wide as what stands in it, such as the number of a row. */
  readonly narrow?: boolean;
  /** Words of several lines, which on a phone need its whole width: one such column makes any table a wide one. */
  readonly roomy?: boolean;
  readonly cell: (row: Row) => ReactNode;
};

export function ColumnHeader<Row>({ column }: { column: Column<Row> }) {
  return (
    <th scope="col" className={column.numeric ? 'numeric' : undefined} {...{ role: 'columnheader' }}>
      {column.header}
      {column.unit === undefined ? null : <span className="unit">{column.unit}</span>}
    </th>
  );
}
