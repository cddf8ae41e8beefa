import type { DocumentRow, ReportDocument } from '../document/report-document';
import { type PackageTable, packageTable, protectedCell } from './package-table';

type Line = { readonly kind: string; readonly text: string };

const asRow = (key: string, texts: readonly string[], value?: number): DocumentRow => ({
  key,
  cells: texts.map((text, at) =>
    at === texts.length - 1 && value !== undefined ? { text, value } : { text },
  ),
});

/** Everything that a report says in words, part by part. */
function wordRows({ sections }: ReportDocument): DocumentRow[] {
  return sections.flatMap((section) => {
    const lines: Line[] = [
      ...(section.words === undefined ? [] : [{ kind: 'words', text: section.words }]),
      ...section.paragraphs.map((text) => ({ kind: 'paragraph', text })),
      ...(section.stories ?? []).map(({ title, words, withdrawal }) => ({
        kind: 'story',
        text: [title, withdrawal, words].filter((part) => part !== undefined && part !== '').join('\n\n'),
      })),
      ...(section.notes ?? []).map((text) => ({ kind: 'note', text })),
    ];
    return lines.map(({ kind, text }) => asRow(section.key, [section.heading, kind, text]));
  });
}

const cell = (row: DocumentRow, at: number) => row.cells[at]?.text ?? '';

/** All tables of a report's archive: its tables, its single facts, and its words. */
export function sectionTables(report: ReportDocument): PackageTable[] {
  const facts = report.sections.flatMap((section) =>
    (section.facts ?? []).map(({ key, label, text, value }) =>
      asRow(`${section.key}/${key}`, [label, text], value),
    ),
  );
  const words: PackageTable = {
    name: 'words',
    description: 'What the report says in words, in the order in which it says it',
    rows: wordRows(report),
    fields: [
      { name: 'section', type: 'string', description: 'Key of the part', of: ({ key }) => key },
      { name: 'heading', type: 'string', description: 'Heading of the part', of: (row) => cell(row, 0) },
      {
        name: 'kind',
        type: 'string',
        description: 'words: the coordinator’s own; paragraph, note: the report’s; story: told with consent',
        of: (row) => cell(row, 1),
      },
      { name: 'text', type: 'string', description: 'The words', of: (row) => cell(row, 2) },
    ],
  };
  const single: PackageTable = {
    name: 'facts',
    description: 'Figures that stand alone',
    rows: facts,
    fields: [
      { name: 'fact', type: 'string', description: 'Part and key of the figure', of: ({ key }) => key },
      { name: 'label', type: 'string', description: 'What it counts', of: (row) => cell(row, 0) },
      {
        name: 'value',
        type: 'number',
        description: 'The figure',
        of: (row) =>
          cell(row, 1) === report.protectedWord ? protectedCell : String(row.cells[1]?.value ?? ''),
      },
      { name: 'text', type: 'string', description: 'As the report shows it', of: (row) => cell(row, 1) },
    ],
  };
  const tables = report.sections.flatMap((section) =>
    (section.tables ?? []).map((table) => packageTable(section.key, table, report)),
  );
  return [...(facts.length === 0 ? [] : [single]), ...tables, words];
}
