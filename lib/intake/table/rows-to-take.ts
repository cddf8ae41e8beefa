import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import type { RecordTableKind, RecordTableLayout } from '@/lib/growing/record-table-layout';
import { fieldsOfKind } from './kinds/fields-of-kind';
import { codeForm } from './plain-words';
import { cellText, type KnownReferences, readRow, severalTexts } from './read-row';
import { type FoundReference, findReferences } from './references';
import type { TableField } from './table-field';
import type { RowToTake } from './taker';

export type OpenFile = {
  readonly id: string;
  readonly kind: RecordTableKind;
  readonly siteId: string | null;
  readonly layout: RecordTableLayout;
  readonly choices: Readonly<Record<string, string>>;
  readonly confirmed: readonly string[];
};

type StoredRow = {
  readonly line: number;
  readonly cells: readonly string[];
  readonly mended: unknown;
  readonly confirmed: readonly string[];
};

const mends = z.record(z.string(), z.string()).nullable();

/** Under which a choice for a text that was not found is kept. */
export function choiceKey(field: string, text: string): string {
  return `${field} ${codeForm(text)}`;
}

const isIndex = (name: string) => /^\d+$/.test(name);

/** What a person said of a row that has no cell for it, by field. */
export function saidOf(mended: unknown): Readonly<Record<string, string>> {
  const all = Object.entries(mends.parse(mended ?? null) ?? {});
  return Object.fromEntries(all.filter(([name]) => !isIndex(name)));
}

/** The cells of a row with what a person mended in them. */
export function mendedCells(cells: readonly string[], mended: unknown): readonly string[] {
  const changed = Object.entries(mends.parse(mended ?? null) ?? {}).filter(([index]) => isIndex(index));
  if (changed.length === 0) return cells;
  const now = [...cells];
  for (const [index, text] of changed) {
    while (now.length <= Number(index)) now.push('');
    now[Number(index)] = text;
  }
  return now;
}

/** Looks up everything that the cells of a table point to, once for all its rows. */
export async function lookUpReferences(context: ReadContext, file: OpenFile): Promise<KnownReferences> {
  const { db, actor } = context;
  const tables = new Map<string, FoundReference>();
  for (const field of fieldsOfKind[file.kind]) {
    const index = file.layout.columns.findIndex((column) => column.field === field.name);
    if ((field.cell !== 'reference' && field.cell !== 'references') || index < 0) continue;
    const written = await db.$queryRaw<{ text: string | null }[]>`
      select distinct coalesce(mended ->> ${String(index)}::text, cells[${index + 1}::int]) as text from public.intake_row
      where network_id = ${actor.networkId}::uuid and file_id = ${file.id}::uuid and state <> 'left_out'`;
    const texts = written.flatMap(({ text }) => (text === null ? [] : cellText(text)));
    const wanted =
      field.cell === 'reference' ? texts : texts.flatMap((text) => [text, ...severalTexts(text)]);
    tables.set(field.name, await findReferences(context, field.of, wanted));
  }
  return (field, text) => {
    const found = tables.get(field.name)?.(text);
    // What a person once chose is for texts that name no record, or more than one.
    return found ?? file.choices[choiceKey(field.name, text)] ?? found;
  };
}

/** Reads stored rows into what is taken. */
export function rowsToTake(file: OpenFile, known: KnownReferences, rows: readonly StoredRow[]): RowToTake[] {
  const fields = new Map(fieldsOfKind[file.kind].map((field): [string, TableField] => [field.name, field]));
  const ofTable = new Set(file.confirmed);
  return rows.map(({ line, cells, mended, confirmed }) => ({
    line,
    ...readRow(mendedCells(cells, mended), file.layout, fields, known, saidOf(mended)),
    confirmed: confirmed.length === 0 ? ofTable : new Set([...ofTable, ...confirmed]),
  }));
}
