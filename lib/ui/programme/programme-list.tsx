import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { ButtonLink } from '../page/button-link';
import { EmptyState } from '../page/empty-state';
import { Heading } from '../page/heading';
import { Pager } from '../page/pager';
import { addressWith } from '../table/address-with';
import type { Column } from '../table/column-header';
import { DataTable } from '../table/data-table';
import { ProgrammeFilterForm, type ProgrammeFilterProps } from './programme-filter';

type Props<Row> = Omit<ProgrammeFilterProps, 'path'> & {
  readonly list: 'trainings' | 'participants' | 'sales' | 'practices';
  readonly rows: readonly Row[];
  readonly columns: readonly Column<Row>[];
  /** Where the next page begins; undefined on the last one. */
  readonly next: string | undefined;
};

/** A list of the programme: a new record first, then the filters, then what they let through. */
export async function ProgrammeList<Row extends { readonly id: string }>(props: Props<Row>) {
  const { list, rows, columns, next, ...filters } = props;
  const path = `/programme/${list}`;
  const t = await getTranslations(`programme.${list}`);
  return (
    <>
      <Heading text={t('heading')} />
      <p>
        <ButtonLink href={`${path}/new` as Route}>{t('new')}</ButtonLink>
      </p>
      <ProgrammeFilterForm path={path} {...filters} />
      {rows.length === 0 ? (
        <EmptyState text={t('empty')} />
      ) : (
        <DataTable caption={t('caption')} rows={rows} rowKey={({ id }) => id} columns={columns} />
      )}
      <Pager
        older={
          next === undefined ? undefined : (addressWith(path, filters.address, { after: next }) as Route)
        }
      />
    </>
  );
}
