import { unguardFormula } from '@/lib/base/formula-guard';
import type { FieldError } from '@/lib/base/result';
import type { RecordTableLayout } from '@/lib/growing/record-table-layout';
import { plainWords } from './plain-words';
import { readDate } from './read-date';
import { readMomentCell } from './read-moment-cell';
import { type TableField, unsaid } from './table-field';

/** Values of one row by field: what the form of the same record would have posted. */
export type RowValues = ReadonlyMap<string, unknown>;

export type ReadRow = { readonly values: RowValues; readonly errors: readonly FieldError[] };

/** What the cells of a table point to, looked up beforehand; null: found more than once. */
export type KnownReferences = (field: TableField, text: string) => string | null | undefined;

const nothing = /^(-+|—|–|n\/?a|null)$/i;

/** The texts of a cell that names several things; "and" is part of many a name and stands between none. */
export function severalTexts(text: string): readonly string[] {
  return text
    .split(/[,;|+\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

/** What a cell says, as all that reads it takes it. */
export function cellText(cell: string): string {
  return unguardFormula(cell.trim());
}

function readReference(field: TableField, text: string, known: KnownReferences): string | FieldError {
  const id = known(field, text);
  if (id === null) return { field: field.target, code: 'intake-twice', values: { text } };
  return id === undefined ? { field: field.target, code: 'intake-unknown', values: { text } } : id;
}

function readCell(
  field: TableField,
  cell: string,
  layout: RecordTableLayout,
  unit: string | null,
  known: KnownReferences,
): { value: unknown } | FieldError | readonly FieldError[] | undefined {
  const text = cellText(cell);
  if (text === '' || (field.cell !== 'text' && nothing.test(text))) return undefined;
  switch (field.cell) {
    case 'text':
      return { value: text };
    case 'date': {
      const date = readDate(text, layout.dateOrder);
      return date === undefined ? { field: field.target, code: 'not-a-date' } : { value: date };
    }
    case 'moment': {
      const moment = readMomentCell(text, layout.dateOrder, layout.format === 'xlsx');
      return moment === undefined ? { field: field.target, code: 'not-a-date' } : { value: moment };
    }
    case 'count':
    case 'percent':
    case 'number':
    case 'mass':
    case 'length':
    case 'area':
    case 'volume':
    case 'temperature':
    case 'duration':
      return { value: { text, unit } };
    case 'choice': {
      const plain = plainWords(text);
      if (field.none?.includes(plain)) return undefined;
      if (field.some?.includes(plain)) return { value: unsaid };
      const found = Object.entries(field.options).find(
        ([value, words]) => plainWords(value) === plain || words.includes(plain),
      );
      const value = found?.[0] ?? known(field, text);
      return value ? { value } : { field: field.target, code: 'intake-unknown', values: { text } };
    }
    case 'reference': {
      const found = readReference(field, text, known);
      return typeof found === 'string' ? { value: found } : found;
    }
    case 'references': {
      const whole = known(field, text);
      if (typeof whole === 'string') return { value: [whole] };
      const found = severalTexts(text).map((one) => readReference(field, one, known));
      const errors = found.filter((one) => typeof one !== 'string');
      return errors.length > 0 ? errors : { value: [...new Set(found)] };
    }
  }
}

/**
 * Reads the cells of one row into what the record's form would post. A cell that says nothing is left out. What no
 * column holds is as it was `said` of the row, else as it was given for the table.
 */
export function readRow(
  cells: readonly string[],
  layout: RecordTableLayout,
  fields: ReadonlyMap<string, TableField>,
  known: KnownReferences,
  said: Readonly<Record<string, string>> = {},
): ReadRow {
  const values = new Map<string, unknown>();
  const errors: FieldError[] = [];
  for (const [index, column] of layout.columns.entries()) {
    const field = column.field === null ? undefined : fields.get(column.field);
    if (field === undefined) continue;
    const read = readCell(field, cells[index] ?? '', layout, column.unit, known);
    if (read === undefined) continue;
    if ('value' in read) values.set(field.name, read.value);
    else errors.push(...[read].flat());
  }
  const held = new Set(layout.columns.map(({ field }) => field));
  const written = new Set(values.keys());
  for (const [name, text] of Object.entries({ ...layout.given, ...said })) {
    const field = fields.get(name);
    if (field === undefined || held.has(name) || text === '') continue;
    const ofOthers = field.asked?.with;
    // The day of all findings is no finding where the row tells of none.
    if (!Object.hasOwn(said, name) && ofOthers && !ofOthers.some((other) => written.has(other))) continue;
    // What a person chose from a list of records is the record itself.
    const read = field.cell === 'reference' ? { value: text } : readCell(field, text, layout, null, known);
    if (read === undefined) continue;
    if ('value' in read) values.set(name, read.value);
    else errors.push(...[read].flat());
  }
  return { values, errors };
}
