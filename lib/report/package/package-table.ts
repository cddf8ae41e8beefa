import type { DocumentRow, DocumentTable, ReportDocument } from '../document/report-document';

/** A column of a table in the archive: what it holds of each row, and how the descriptor tells of it. */
export type PackageField = {
  readonly name: string;
  readonly type: 'string' | 'number';
  readonly description: string;
  /** UCUM. */
  readonly unit?: string;
  readonly of: (row: DocumentRow) => string;
};

export type PackageTable = {
  readonly name: string;
  readonly description: string;
  readonly fields: readonly PackageField[];
  readonly rows: readonly DocumentRow[];
};

/** What a number says where a figure is withheld; a blank is a figure that is not there at all. */
export const protectedCell = 'protected';

const numberText = (value: number | undefined) => (value === undefined ? '' : String(value));

function figureFields(table: DocumentTable, at: number, { protectedWord }: ReportDocument): PackageField[] {
  const column = table.columns[at];
  if (column === undefined) return [];
  const { key, header, unit } = column;
  const cells = table.rows.map((row) => row.cells[at]);
  const has = (test: (cell: NonNullable<(typeof cells)[number]>) => boolean) =>
    cells.some((cell) => cell !== undefined && test(cell));
  const withheld = (row: DocumentRow) => row.cells[at]?.text === protectedWord;
  const numeric = (name: string, description: string, of: (row: DocumentRow) => number | undefined) => ({
    ...{ name, description, type: 'number' as const },
    ...(unit === undefined ? {} : { unit }),
    of: (row: DocumentRow) => (withheld(row) ? protectedCell : numberText(of(row))),
  });
  const text = (name: string, description: string, of: (row: DocumentRow) => string | undefined) => ({
    ...{ name, description, type: 'string' as const },
    of: (row: DocumentRow) => of(row) ?? '',
  });
  return [
    // A column of figures of which all are withheld stays one, so that the tables of two reports have the same columns.
    ...(has(({ value }) => value !== undefined) || (column.numeric && table.rows.some(withheld))
      ? [numeric(key, `${header}: the figure, unrounded`, (row) => row.cells[at]?.value)]
      : []),
    ...(has(({ unit: own }) => own !== undefined)
      ? [text(`${key}_unit`, `${header}: unit of the figure`, (row) => row.cells[at]?.unit)]
      : []),
    ...(has(({ interval }) => interval !== undefined)
      ? [
          numeric(
            `${key}_low`,
            `${header}: lower end of the interval`,
            (row) => row.cells[at]?.interval?.low,
          ),
          numeric(
            `${key}_high`,
            `${header}: upper end of the interval`,
            (row) => row.cells[at]?.interval?.high,
          ),
        ]
      : []),
    text(`${key}_text`, `${header}: as the report shows it`, (row) => row.cells[at]?.text),
    ...(has(({ below }) => below !== undefined)
      ? [text(`${key}_note`, `${header}: what stands below the figure`, (row) => row.cells[at]?.below)]
      : []),
    ...(has(({ history }) => history !== undefined)
      ? [
          text(`${key}_how`, `${header}: how the figure was worked out`, (row) =>
            row.cells[at]?.history?.join('; '),
          ),
        ]
      : []),
  ];
}

/** A table of a report for the archive: each figure as a number, as text, and with how it was worked out. */
export function packageTable(section: string, table: DocumentTable, report: ReportDocument): PackageTable {
  const [first] = table.columns;
  return {
    name: section === table.key ? section : `${section}-${table.key}`,
    description: table.caption,
    rows: table.rows,
    fields: [
      {
        name: 'row',
        type: 'string',
        description: 'Key of the row, the same in every version',
        of: ({ key }) => key,
      },
      ...(table.rows.some(({ group }) => group !== undefined)
        ? [
            {
              name: 'group',
              type: 'string' as const,
              description: 'Heading above the row',
              of: ({ group }: DocumentRow) => group ?? '',
            },
          ]
        : []),
      {
        name: 'label',
        type: 'string',
        description: first?.header ?? 'Label',
        of: ({ cells }) => cells[0]?.text ?? '',
      },
      ...table.columns.slice(1).flatMap((_, index) => figureFields(table, index + 1, report)),
    ],
  };
}
