import 'server-only';
import { type ConditionTableLayout, columnRoles } from '@/lib/growing/condition-table-layout';
import { tableLayoutInput } from '@/lib/records/condition/condition.input';

const mostBytes = 3_000_000;

/** The table that was posted: a chosen file before pasted text. Marks it as too large rather than cutting it. */
export async function postedTable(data: FormData): Promise<string | 'too-large' | undefined> {
  const file = data.get('file');
  if (file instanceof File && file.size > mostBytes) return 'too-large';
  const chosen = file instanceof File && file.size > 0 ? await file.text() : undefined;
  const pasted = data.get('text');
  const text = chosen ?? (typeof pasted === 'string' ? pasted : '');
  if (text.trim() === '') return undefined;
  return text.length > mostBytes ? 'too-large' : text;
}

/** The layout as the person left it in the form; undefined when none was posted or it is none. */
export function postedLayout(data: FormData): ConditionTableLayout | undefined {
  const columns: string[] = [];
  for (let index = 0; data.has(`columns.${index}`); index += 1) {
    const role = data.get(`columns.${index}`);
    columns.push(columnRoles.find((one) => one === role) ?? 'skip');
  }
  if (columns.length === 0) return undefined;
  const text = (name: string) => data.get(name);
  const parsed = tableLayoutInput.safeParse({
    delimiter: text('delimiter'),
    decimal: text('decimal'),
    dateOrder: text('dateOrder'),
    temperatureUnit: text('temperatureUnit'),
    linesBefore: text('linesBefore'),
    columns,
  });
  return parsed.success ? parsed.data : undefined;
}
