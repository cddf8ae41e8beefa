import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type OfferedRecord, offerRecords } from './offers';
import type { TableField } from './table-field';

/** What can be chosen for one field: records by their name, or values for the catalogue. */
export type FieldChoices =
  | { readonly kind: 'records'; readonly options: readonly OfferedRecord[] }
  | { readonly kind: 'values'; readonly values: readonly string[] };

/** What there is to choose for a field; undefined where it is written. */
export async function choicesOf(
  context: ReadContext,
  field: TableField,
  sites: readonly string[],
): Promise<FieldChoices | undefined> {
  if (field.cell === 'choice')
    return { kind: 'values', values: field.asked?.only ?? Object.keys(field.options) };
  return field.cell === 'reference' || field.cell === 'references'
    ? { kind: 'records', options: await offerRecords(context, field.of, sites) }
    : undefined;
}
