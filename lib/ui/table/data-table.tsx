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

// A browser takes what is laid out as blocks for no table any more, unless it is told.
const as = {
  table: { role: 'table' },
  group: { role: 'rowgroup' },
  row: { role: 'row' },
  rowHeader: { role: 'rowheader' },
  cell: { role: 'cell' },
};

/** From this many columns on a table is wider than a phone. */
const wide = 4;

function isWide<Row>(columns: readonly Column<Row>[]): boolean {
  return columns.length >= wide || columns.some(({ roomy }) => roomy);
}

/**
 * A table of figures: units in the header, numbers to the right. On a phone each row of a wide one becomes a block
 * that names the columns itself; a narrow one stays as it is and keeps its first column in sight should it scroll.
 */
export function DataTable<Row>({ caption, columns, rows, rowKey, groupOf, isTotal }: Props<Row>) {
  const id = useId();
  return (
    <section className="table-box" aria-labelledby={id} {...reachable}>
      <table className={isWide(columns) ? 'data-table stacks' : 'data-table'} {...as.table}>
        <caption id={id}>
          <span>{caption}</span>
        </caption>
        <thead {...as.group}>
          <tr {...as.row}>
            {columns.map((column) => (
              <ColumnHeader key={column.key} column={column} />
            ))}
          </tr>
        </thead>
        <tbody {...as.group}>
          {rows.map((row, index) => {
            const previous = rows[index - 1];
            const group = groupOf?.(row);
            const opensGroup =
              group !== undefined && (previous === undefined || groupOf?.(previous) !== group);
            return (
              <Fragment key={rowKey(row)}>
                {opensGroup ? (
                  <tr className="group-row" {...as.row}>
                    <th scope="colgroup" colSpan={columns.length} {...as.rowHeader}>
                      <span>{group}</span>
                    </th>
                  </tr>
                ) : null}
                <tr className={isTotal?.(row) ? 'total' : undefined} {...as.row}>
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
  const name = column.unit === undefined ? column.header : `${column.header} (${column.unit})`;
  const content = column.cell(row);
  // Words alone are laid out the same without a box of their own, and most cells of a long table are that.
  const value =
    typeof content === 'string' && content !== '' ? content : <div className="cell-value">{content}</div>;
  return first ? (
    <th
      key={column.key}
      scope="row"
      className={column.narrow ? 'narrow' : undefined}
      data-column={name}
      {...as.rowHeader}
    >
      {value}
    </th>
  ) : (
    <td key={column.key} className={kindOf(column)} data-column={name} {...as.cell}>
      {value}
    </td>
  );
}

/** A number that its column's name alone explains is short enough to stand beside that name on a phone. */
function kindOf<Row>({ numeric, unit }: Column<Row>): string | undefined {
  if (!numeric) return undefined;
  return unit === undefined ? 'numeric count' : 'numeric';
}
