import type { DocumentCell, DocumentRow, DocumentTable } from '@/lib/report/document/report-document';
import type { Column } from '../table/column-header';
import { DataTable } from '../table/data-table';

/** Letters of a second line that still is a size, such as "48 batches, 901 units". */
const mostOfSize = 30;

/** An interval may stand below its figure on a phone. */
function CellText({ text, interval }: DocumentCell) {
  const at = text.indexOf(' (');
  if (interval === undefined || at < 0) return text;
  return (
    <>
      {text.slice(0, at)} <br className="cell-break" />
      {text.slice(at + 1)}
    </>
  );
}

function Cell({ cell, how }: { cell: DocumentCell | undefined; how: string }) {
  if (!cell) return null;
  return (
    <>
      <CellText {...cell} />
      {cell.below === undefined || cell.below === '' ? null : (
        <span className={cell.below.length > mostOfSize ? 'cell-reason' : 'cell-size'}>{cell.below}</span>
      )}
      {cell.history === undefined ? null : (
        <details className="figure-history no-print">
          <summary>{how}</summary>
          <ul>
            {cell.history.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

/** A table of a report as a page shows it. */
export function ReportTable({ table, how }: { table: DocumentTable; how: string }) {
  const columns: Column<DocumentRow>[] = table.columns.map(({ key, header, numeric }, at) => ({
    ...{ key, header, numeric },
    roomy: table.rows.some(({ cells }) => cells[at]?.interval !== undefined),
    cell: (row) => <Cell cell={row.cells[at]} how={how} />,
  }));
  const grouped = table.rows.some(({ group }) => group !== undefined);
  return (
    <DataTable<DocumentRow>
      caption={table.caption}
      rows={table.rows}
      rowKey={(row) => row.key}
      isTotal={(row) => row.total === true}
      {...(grouped ? { groupOf: (row) => row.group ?? '' } : {})}
      columns={columns}
    />
  );
}
