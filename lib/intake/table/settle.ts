import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { WriteContext } from '@/lib/access/context';
import { writeAs } from '@/lib/access/scoped-db';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { RecordTableLayout } from '@/lib/growing/record-table-layout';
import { asRemembered, guessRecordLayout } from './guess-layout';
import { usualWriting } from './keep-file';
import { fieldsOfKind } from './kinds/fields-of-kind';
import { openFile } from './open-file';
import { readTable } from './read-table';
import type { OpenFile } from './rows-to-take';
import { isRunning } from './running';
import { settledColumns } from './settled-columns';
import { storeRows } from './store-rows';

const mostChoices = 2_000;
const longest = 120_000;

/** Changes a file while no job works on it. */
export async function changeFile(
  actor: Actor,
  id: string,
  step: (context: WriteContext, file: OpenFile) => Promise<Result<null>>,
): Promise<Result<null>> {
  return writeAs(actor, { origin: 'file_import', longestMilliseconds: longest }, async (context) => {
    const file = await openFile(context, id);
    const row = file && (await context.db.intakeFile.findFirst({ where: { id } }));
    if (!file || !row) return notFound;
    return isRunning(row, context.now) ? invalid('', 'intake-running') : step(context, file);
  });
}

/** Keeps what texts stand for and which questions are answered with yes for the whole table. */
export function settlePoints(
  actor: Actor,
  id: string,
  choices: Readonly<Record<string, string>>,
  confirmed: readonly string[],
): Promise<Result<null>> {
  return changeFile(actor, id, async ({ db }, file) => {
    const merged = Object.entries({ ...file.choices, ...choices }).filter(([, value]) => value !== '');
    await db.intakeFile.updateMany({
      where: { id },
      data: {
        choices: Object.fromEntries(merged.slice(0, mostChoices)),
        confirmed: [...new Set([...file.confirmed, ...confirmed])].slice(0, 100),
      },
    });
    return ok(null);
  });
}

/** What a person may change of how a table was understood. */
export type LayoutWishes = Pick<
  RecordTableLayout,
  'encoding' | 'delimiter' | 'sheet' | 'decimal' | 'dateOrder' | 'headerLine' | 'columns' | 'given'
>;

/** Reads the file anew where its text is cut another way, and keeps how it is to be understood. */
export function changeLayout(actor: Actor, id: string, wishes: LayoutWishes): Promise<Result<null>> {
  return changeFile(actor, id, async (context, file) => {
    const { db } = context;
    const { layout } = file;
    const sameCut =
      layout.encoding === wishes.encoding &&
      layout.delimiter === wishes.delimiter &&
      layout.sheet === wishes.sheet &&
      layout.headerLine === wishes.headerLine;
    if (sameCut) {
      const columns = settledColumns(
        wishes.columns,
        layout,
        fieldsOfKind[file.kind],
        usualWriting(actor).units,
      );
      if (columns.kind !== 'ok') return columns;
      const next = { ...layout, ...wishes, columns: columns.value, settled: true };
      await db.intakeFile.updateMany({ where: { id }, data: { layout: next } });
      await db.intakeRow.updateMany({
        where: { fileId: id, state: { in: ['new', 'there', 'needs'] } },
        data: { state: 'unread', problems: [] },
      });
      return ok(null);
    }
    const content = await db.intakeContent.findFirst({ where: { id } });
    // Whoever was named in the file has left, and its bytes went with them.
    if (content?.content.length === 0) return invalid('', 'table-erased');
    const read = content && (await readTable(content.content, wishes));
    if (!read || typeof read === 'string') return invalid('', read || 'table-unreadable');
    const guessed = guessRecordLayout(
      read.rows,
      fieldsOfKind[file.kind],
      read.written,
      usualWriting(actor),
      wishes.headerLine === layout.headerLine ? undefined : wishes.headerLine,
    );
    const remembered = asRemembered(
      { ...guessed, decimal: wishes.decimal, dateOrder: wishes.dateOrder },
      layout,
    );
    const next = { ...remembered, given: { ...remembered.given, ...wishes.given } };
    const rowCount = await storeRows(context, id, read.rows, next);
    await db.intakeFile.updateMany({
      where: { id },
      data: { layout: next, rowCount, totalCount: rowCount, state: 'uploaded' },
    });
    return ok(null);
  });
}
