import type { DocumentTable } from '../document/report-document';

export type FigureNotes = {
  /** What holds for every figure of a column: its method, its data. */
  readonly common: readonly { readonly column: string; readonly lines: readonly string[] }[];
  /** What holds for the figures of one row alone, column by column. */
  readonly own: readonly { readonly row: string; readonly columns: FigureNotes['common'] }[];
};

/** How the figures of a table were worked out, each line told once: first what all figures of a column share. */
export function figureNotes({ columns, rows }: DocumentTable): FigureNotes {
  const common = columns.map((column, at) => {
    const told = rows.flatMap((row) => row.cells[at]?.history ?? []);
    const cells = rows.filter((row) => row.cells[at]?.history !== undefined).length;
    const shared = [...new Set(told)].filter(
      (line) => cells > 1 && told.filter((other) => other === line).length === cells,
    );
    return { column: column.header, lines: shared };
  });
  const own = rows.map((row) => ({
    row: [row.group, row.cells[0]?.text].filter((part) => part !== undefined).join(', '),
    columns: columns
      .map((column, at) => ({
        column: column.header,
        lines: (row.cells[at]?.history ?? []).filter((line) => !common[at]?.lines.includes(line)),
      }))
      .filter(({ lines }) => lines.length > 0),
  }));
  return {
    common: common.filter(({ lines }) => lines.length > 0),
    own: own.filter(({ columns: told }) => told.length > 0),
  };
}
