import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import type { FieldError } from '@/lib/base/result';
import type { ColumnUnit, RecordTableKind, RecordTableLayout } from '@/lib/growing/record-table-layout';
import { addedBatches } from './added-batches';
import { askedFields } from './asked-fields';
import { type DoubtfulDate, doubtfulDate } from './doubtful-date';
import { choicesOf, type FieldChoices } from './field-choices';
import { fieldsOfKind } from './kinds/fields-of-kind';
import { unitsOfField } from './map-columns';
import { openFile } from './open-file';
import { mendedCells, saidOf } from './rows-to-take';
import { type IntakeState, stateNow } from './running';
import { sitesOfTable } from './sites-of-table';
import type { TableField } from './table-field';
import type { RowProblem } from './taker';

const problem = z.object({
  field: z.string(),
  code: z.string(),
  values: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
  asks: z.literal(true).optional(),
});

/** A row that needs a person: its cells as they are now, and what stands against it. */
export type NeedyRow = {
  readonly line: number;
  readonly cells: readonly string[];
  readonly mendedColumns: readonly number[];
  readonly problems: readonly RowProblem[];
  /** What a person said of it that no column holds, by field. */
  readonly said: Readonly<Record<string, string>>;
};

/** A field that no column holds, with what can be chosen for it. */
export type AskedField = {
  readonly name: string;
  readonly target: string;
  readonly cell: TableField['cell'];
  readonly choices: FieldChoices | undefined;
};

export type IntakeView = {
  readonly id: string;
  readonly kind: RecordTableKind;
  readonly siteId: string | null;
  readonly siteName: string | null;
  readonly fileName: string;
  readonly createdAt: string;
  /** Some of the batches that added rows started, with their codes. */
  readonly batches: readonly { readonly id: string; readonly code: string }[];
  /** Lines left out because they are sums of the others. */
  readonly totals: readonly number[];
  readonly layout: RecordTableLayout;
  readonly state: IntakeState;
  readonly trouble: string | null;
  readonly done: number;
  readonly total: number;
  readonly counts: Readonly<Record<'unread' | 'new' | 'there' | 'needs' | 'added', number>>;
  /** First rows as they came. */
  readonly sample: readonly { readonly line: number; readonly cells: readonly string[] }[];
  /** A date of the first rows that could be another day, as it is read. */
  readonly doubtfulDate: DoubtfulDate | undefined;
  /** What a column can hold, with the units it can be written in. */
  readonly offers: readonly {
    readonly name: string;
    readonly target: string;
    readonly units: readonly ColumnUnit[];
  }[];
  /** Needed fields that no column holds and of which nothing is given for the whole table. */
  readonly missing: readonly string[];
  /** What no column holds and can be given for the whole table, or said of one row. */
  readonly asked: readonly AskedField[];
};

/** The problem of a stored row; zod's optional keys are told apart from undefined ones. */
export function storedProblems(stored: unknown): RowProblem[] {
  return z
    .array(problem)
    .parse(stored)
    .map(({ field, code, values, asks }) => {
      const error: FieldError = values === undefined ? { field, code } : { field, code, values };
      return asks ? { ...error, asks } : error;
    });
}

/** Everything that the page of a file shows; undefined where it is not the actor's to see. */
export async function viewFile(context: ReadContext, id: string, now: Date): Promise<IntakeView | undefined> {
  const file = await openFile(context, id);
  const row = file && (await context.db.intakeFile.findFirst({ where: { id }, include: { site: true } }));
  if (!file || !row) return undefined;
  const grouped = await context.db.intakeRow.groupBy({ by: ['state'], where: { fileId: id }, _count: true });
  const count = (state: string) => grouped.find((one) => one.state === state)?._count ?? 0;
  const sample = await context.db.intakeRow.findMany({
    where: { fileId: id, state: { not: 'left_out' } },
    orderBy: { line: 'asc' },
    take: 5,
    select: { line: true, cells: true },
  });
  const held = new Set(file.layout.columns.map(({ field }) => field));
  const sites = await sitesOfTable(context, file);
  return {
    ...{
      id,
      kind: file.kind,
      siteId: file.siteId,
      totals: file.layout.totals,
      batches: await addedBatches(context, file),
      layout: file.layout,
      sample,
    },
    siteName: row.site?.name ?? null,
    fileName: row.fileName,
    createdAt: row.createdAt.toISOString(),
    state: stateNow(row, now),
    trouble: row.trouble,
    done: row.doneCount,
    total: row.totalCount,
    counts: {
      ...{ unread: count('unread'), new: count('new'), there: count('there') },
      ...{ needs: count('needs'), added: count('added') },
    },
    doubtfulDate: doubtfulDate(sample, file.layout),
    offers: fieldsOfKind[file.kind].map((field) => ({
      name: field.name,
      target: field.target,
      units: unitsOfField(field),
    })),
    asked: await Promise.all(
      askedFields(file).map(async (field) => ({
        ...{ name: field.name, target: field.target, cell: field.cell },
        choices: await choicesOf(context, field, sites),
      })),
    ),
    missing: fieldsOfKind[file.kind].flatMap(({ name, needed }) => {
      const said =
        held.has(name) || file.layout.given[name] || (typeof needed === 'object' && held.has(needed.orBy));
      return needed && !said ? [name] : [];
    }),
  };
}

/** Rows that need a person, 50 from a line on. */
export async function needyRows(
  { db }: ReadContext,
  id: string,
  after: number,
  take = 50,
): Promise<readonly NeedyRow[]> {
  if (!z.uuid().safeParse(id).success) return [];
  const rows = await db.intakeRow.findMany({
    where: { fileId: id, state: 'needs', line: { gt: after } },
    orderBy: { line: 'asc' },
    take,
  });
  return rows.map(({ line, cells, mended, problems }) => ({
    line,
    said: saidOf(mended),
    cells: mendedCells(cells, mended),
    mendedColumns: Object.keys(mended ?? {})
      .map(Number)
      .filter(Number.isInteger),
    problems: storedProblems(problems),
  }));
}

/** How many rows that need a person come up to a line. */
export function needyBefore({ db }: ReadContext, id: string, line: number): Promise<number> {
  return line === 0
    ? Promise.resolve(0)
    : db.intakeRow.count({ where: { fileId: id, state: 'needs', line: { lte: line } } });
}

/** One row of a file that is not added yet; undefined where there is none. */
export async function oneRow({ db }: ReadContext, id: string, line: number): Promise<NeedyRow | undefined> {
  const row = await db.intakeRow.findFirst({
    where: { fileId: id, line, state: { notIn: ['left_out', 'added'] } },
  });
  if (!row) return undefined;
  const { cells, mended, problems } = row;
  return {
    line,
    said: saidOf(mended),
    cells: mendedCells(cells, mended),
    mendedColumns: Object.keys(mended ?? {})
      .map(Number)
      .filter(Number.isInteger),
    problems: storedProblems(problems),
  };
}

/** How far the work on a file is, for whoever asks again and again. */
export async function progressOf({ db }: ReadContext, id: string, now: Date) {
  const row = z.uuid().safeParse(id).success && (await db.intakeFile.findFirst({ where: { id } }));
  return row ? { state: stateNow(row, now), done: row.doneCount, total: row.totalCount } : undefined;
}
