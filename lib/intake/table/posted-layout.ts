import { z } from 'zod';
import { parseInput } from '@/lib/access/parse-input';
import { formToObject } from '@/lib/base/form-data';
import { invalid, ok, type Result } from '@/lib/base/result';
import { dateOrders, decimalMarks, tableDelimiters } from '@/lib/growing/condition-table-layout';
import { columnUnits, type TableColumn, tableEncodings } from '@/lib/growing/record-table-layout';
import { dateTextOf } from '@/lib/records/fields/date-field';
import type { LayoutWishes } from './settle';

const count = z
  .string()
  .trim()
  .min(1, 'missing')
  .regex(/^\d{1,4}$/, 'not-whole')
  .transform(Number);

const wishes = z.object({
  encoding: z.enum(tableEncodings).default('utf-8'),
  delimiter: z.enum(tableDelimiters).default('comma'),
  sheet: count.optional().transform((sheet) => sheet ?? 0),
  decimal: z.enum(decimalMarks, 'missing-choice'),
  dateOrder: z.enum(dateOrders, 'missing-choice'),
  headerLine: count,
});

/** What a person said for the whole table, or of a row, in fields under this name: as text, a date as YYYY-MM-DD. */
export function postedGiven(data: FormData, under: string): Result<Readonly<Record<string, string>>> {
  const posted = formToObject(data)[under];
  if (typeof posted !== 'object' || Array.isArray(posted)) return ok({});
  const given: Record<string, string> = {};
  for (const [name, value] of Object.entries(posted)) {
    const text = typeof value === 'string' ? value.trim() : dateTextOf(value);
    if (text === undefined) return invalid(`${under}.${name}`, 'not-a-date');
    if (text.length > 100) return invalid(`${under}.${name}`, 'too-long', { max: 100 });
    if (text !== '') given[name] = text;
  }
  return ok(given);
}

/** How a person left the form that says how a table is written. */
export function postedLayout(data: FormData): Result<LayoutWishes> {
  const read = parseInput(wishes, formToObject(data));
  if (read.kind !== 'ok') return read;
  const columns: TableColumn[] = [];
  for (let index = 0; data.has(`columns.${index}`); index += 1) {
    const field = data.get(`columns.${index}`);
    const unit = columnUnits.find((one) => one === data.get(`units.${index}`)) ?? null;
    columns.push({ field: typeof field === 'string' && field !== '' ? field : null, unit });
  }
  const given = postedGiven(data, 'given');
  if (given.kind !== 'ok') return given;
  return { kind: 'ok', value: { ...read.value, columns, given: given.value } };
}
