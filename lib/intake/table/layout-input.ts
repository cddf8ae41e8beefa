import { z } from 'zod';
import { dateOrders, decimalMarks, tableDelimiters } from '@/lib/growing/condition-table-layout';
import {
  columnUnits,
  type RecordTableLayout,
  type TableColumn,
  tableEncodings,
} from '@/lib/growing/record-table-layout';

const layout = z.object({
  format: z.enum(['csv', 'xlsx']),
  encoding: z.enum(tableEncodings),
  delimiter: z.enum(tableDelimiters),
  sheet: z.number().int().min(0),
  sheets: z.array(z.string()),
  decimal: z.enum(decimalMarks),
  dateOrder: z.enum(dateOrders),
  headerLine: z.number().int().min(0),
  headers: z.array(z.string()),
  columns: z.array(
    z
      .object({
        field: z.string().nullable(),
        unit: z.enum(columnUnits).nullable(),
        weak: z.literal(true).optional(),
      })
      .transform(({ field, unit, weak }): TableColumn => (weak ? { field, unit, weak } : { field, unit })),
  ),
  // Tables that were kept before any of these was known have none.
  given: z.record(z.string(), z.string()).default({}),
  settled: z.boolean().default(false),
  totals: z.array(z.number().int()).default([]),
});

/** A layout as the database kept it. */
export function storedLayout(stored: unknown): RecordTableLayout {
  return layout.parse(stored);
}
