import type { ReportDocument } from './report-document';

/** One cell that two documents tell differently; undefined where one of them has no such line. */
export type DocumentChange = {
  /** Where it stands, told apart from every other place of the document. */
  readonly key: string;
  readonly section: string;
  readonly table: string;
  readonly row: string;
  readonly column: string;
  readonly earlier: string | undefined;
  readonly now: string | undefined;
  /** Whether the earlier document keeps back what stands here. */
  readonly keptBack: boolean;
};

type Place = Omit<DocumentChange, 'key' | 'earlier' | 'now' | 'keptBack'> & {
  readonly text: string;
  /** Part and line, whatever the table. */
  readonly line: string;
  /** A protected figure, or a dash beside one. */
  readonly withheld: boolean;
};

const dash = '–';

/** Every figure of a document by where it stands. */
function places(document: ReportDocument): Map<string, Place> {
  const found = new Map<string, Place>();
  for (const section of document.sections) {
    for (const fact of section.facts ?? [])
      found.set(`${section.key}/${fact.key}`, {
        section: section.heading,
        table: '',
        row: fact.label,
        column: '',
        text: fact.text,
        line: `${section.key}/${fact.key}`,
        withheld: fact.text === document.protectedWord,
      });
    for (const table of section.tables ?? [])
      for (const row of table.rows) {
        const isProtected = row.cells.some(({ text }) => text === document.protectedWord);
        for (const [at, cell] of row.cells.entries()) {
          const column = table.columns[at];
          if (at === 0 || column === undefined) continue;
          found.set(`${section.key}/${table.key}/${row.key}/${column.key}`, {
            section: section.heading,
            table: table.caption,
            row: [row.group, row.cells[0]?.text ?? row.key].filter((text) => text !== undefined).join(', '),
            column: column.header,
            text: cell.text,
            line: `${section.key}/${row.key}`,
            withheld: cell.text === document.protectedWord || (isProtected && cell.text === dash),
          });
        }
      }
  }
  return found;
}

/** Where two documents of one report differ, in the order in which they tell it. Words and instants are not figures. */
export function documentChanges(then: ReportDocument, now: ReportDocument): DocumentChange[] {
  const before = places(then);
  const after = places(now);
  const withheld = new Set([...before.values()].filter((one) => one.withheld).map(({ line }) => line));
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((key) => {
    const [old, fresh] = [before.get(key), after.get(key)];
    const named = fresh ?? old;
    if (named === undefined || old?.text === fresh?.text) return [];
    const { section, table, row, column } = named;
    // A line that moved to another table is kept back as it was.
    const keptBack = old?.withheld ?? withheld.has(named.line);
    return [{ key, section, table, row, column, earlier: old?.text, now: fresh?.text, keptBack }];
  });
}
