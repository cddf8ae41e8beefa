import { Fragment, type ReactNode, useId } from 'react';
import { type Column, ColumnHeader } from './column-header';

type Props<Row> = {
  /** What the table tells, in words: its name for everybody. */
  readonly caption: string;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  /** Heading above the first row of each group; rows come in the order of their groups. */
  readonly groupOf?: (row: Row) => string;
  readonly isTotal?: (row: Row) => boolean;
};

// A box that scrolls has to be reachable by keyboard.
const reachable = { tabIndex: 0 };

/**
 * A table of figures: units in the header, numbers to the right, the first column stays in sight when a narrow
 * screen scrolls the table in a box of its own.
 */
export function DataTable<Row>({ caption, columns, rows, rowKey, groupOf, isTotal }: Props<Row>) {
  const id = useId();
  return (
    <section className="table-box" aria-labelledby={id} {...reachable}>
      <table className="data-table">
        <caption id={id}>
          <span>{caption}</span>
        </caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <ColumnHeader key={column.key} column={column} />
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => {
            const previous = rows[index - 1];
            const group = groupOf?.(row);
            const opensGroup =
              group !== undefined && (previous === undefined || groupOf?.(previous) !== group);
            return (
              <Fragment key={rowKey(row)}>
                {opensGroup ? (
                  <tr className="group-row">
                    <th scope="colgroup" colSpan={columns.length}>
                      <span>{group}</span>
                    </th>
                  </tr>
                ) : null}
                <tr className={isTotal?.(row) ? 'total' : undefined}>
                  {columns.map((column, position) => cellOf(column, row, position === 0))}
                </tr>
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

function cellOf<Row>(column: Column<Row>, row: Row, first: boolean): ReactNode {
  return first ? (
    <th key={column.key} scope="row" className={column.narrow ? 'narrow' : undefined}>
      {column.cell(row)}
    </th>
  ) : (
    <td key={column.key} className={column.numeric ? 'numeric' : column.roomy ? 'roomy' : undefined}>
      {column.cell(row)}
    </td>
  );
}
