import type { RecordTableKind, RecordTableLayout } from '@/lib/growing/record-table-layout';
import { fieldsOfKind } from './kinds/fields-of-kind';
import type { TableField } from './table-field';

/** Whether one value of the field can hold for a whole table, or be chosen for one row that has no cell for it. */
function canBeGiven({ cell }: TableField): boolean {
  return cell === 'choice' || cell === 'date' || cell === 'count' || cell === 'reference';
}

/** Kinds whose every row is of a site. */
const ofSites: ReadonlySet<RecordTableKind> = new Set(['batches', 'notebook', 'treatments']);

type Table = {
  readonly kind: RecordTableKind;
  readonly siteId: string | null;
  readonly layout: Pick<RecordTableLayout, 'columns'>;
};

/** Fields that no column holds, and of which one value can be given for the whole table or chosen for one row. */
export function askedFields({ kind, siteId, layout }: Table): readonly TableField[] {
  const held = new Set(layout.columns.map(({ field }) => field));
  const asks = ({ name, needed, asked }: TableField) => {
    if (name === 'site') return siteId === null && ofSites.has(kind);
    if (asked !== undefined)
      return (
        !held.has(asked.unless ?? '') && (asked.with === undefined || asked.with.some((one) => held.has(one)))
      );
    return needed === true || (needed !== undefined && !held.has(needed.orBy));
  };
  return fieldsOfKind[kind].filter((field) => !held.has(field.name) && canBeGiven(field) && asks(field));
}
