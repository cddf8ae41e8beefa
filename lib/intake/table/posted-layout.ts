import { z } from 'zod';
import { parseInput } from '@/lib/access/parse-input';
import { formToObject } from '@/lib/base/form-data';
import type { Result } from '@/lib/base/result';
import { dateOrders, decimalMarks, tableDelimiters } from '@/lib/growing/condition-table-layout';
import { columnUnits, type TableColumn, tableEncodings } from '@/lib/growing/record-table-layout';
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
  return { kind: 'ok', value: { ...read.value, columns } };
}
