import { invalid, ok, type Result } from '@/lib/base/result';
import type { ColumnUnit, RecordTableLayout, TableColumn } from '@/lib/growing/record-table-layout';
import { unitsOfField } from './map-columns';
import type { TableField } from './table-field';

/** Columns as a person chose them: each field once, and each quantity with a unit that it can have. */
export function settledColumns(
  chosen: readonly TableColumn[],
  { columns }: Pick<RecordTableLayout, 'columns'>,
  fields: readonly TableField[],
  usually: readonly ColumnUnit[],
): Result<readonly TableColumn[]> {
  const taken = new Set<string>();
  const settled: TableColumn[] = [];
  for (const index of columns.keys()) {
    const wanted = chosen[index]?.field ?? null;
    const field = fields.find(({ name }) => name === wanted);
    if (wanted !== null && field === undefined) return invalid(`columns.${index}`, 'not-an-option');
    if (field !== undefined && taken.has(field.name)) return invalid(`columns.${index}`, 'column-twice');
    if (field !== undefined) taken.add(field.name);
    const units = field === undefined ? [] : unitsOfField(field);
    const unit = chosen[index]?.unit ?? null;
    const usual = usually.find((one) => units.includes(one)) ?? units[0] ?? null;
    settled.push({
      field: field?.name ?? null,
      unit: unit !== null && units.includes(unit) ? unit : usual,
    });
  }
  return ok(settled);
}
