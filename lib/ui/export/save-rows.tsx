import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { SavedTableName } from '@/lib/export/saved/saved-tables';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import { Link } from '../page/link';
import { addressWith } from '../table/address-with';

type Props = {
  /** The table of the list itself first, then what else belongs to the same rows. */
  readonly tables: readonly [SavedTableName, ...SavedTableName[]];
  /** The list's own address: the file holds what it lets through, on all pages. */
  readonly address: Readonly<Record<string, string | string[] | undefined>>;
};

/** How the tables that belong to the rows of a list are introduced. */
const others = {
  batches: 'save.more',
  treatments: 'save.moreRuns',
  weighings: 'save.moreWeighings',
} as const;

/** What the rows of a list are called where a table of them is brought in. */
const broughtAs: Partial<Record<SavedTableName, RecordTableKind>> = {
  batches: 'batches',
  weighings: 'harvests',
  treatments: 'treatments',
  'substrate-lots': 'substrate_lots',
  'spawn-lots': 'spawn_lots',
  sites: 'sites',
};

/** Links that save the rows of a list, the same query string as a file, and the way in for rows kept elsewhere. */
export async function SaveRows({ tables: [own, ...rest], address }: Props) {
  const t = await getTranslations('export');
  const links = (table: SavedTableName) =>
    (['csv', 'xlsx'] as const).map((format) => (
      <a
        key={format}
        href={addressWith(`/export/${table}.${format}`, address, { after: undefined, before: undefined })}
      >
        {t(`save.${format}`)}
      </a>
    ));
  const [csv, xlsx] = links(own);
  return (
    <section className="no-print" aria-label={t('save.label')}>
      <details>
        <summary>{t('save.label')}</summary>
        <p>{t('save.hint')}</p>
        <ul>
          <li>
            {t(`table.${own}`)}: {csv}, {xlsx}
          </li>
        </ul>
        {own in others ? (
          <>
            <p>{t(others[own as keyof typeof others])}</p>
            <ul>
              {rest.map((table) => {
                const [asCsv, asXlsx] = links(table);
                return (
                  <li key={table}>
                    {t(`table.${table}`)}: {asCsv}, {asXlsx}
                  </li>
                );
              })}
            </ul>
          </>
        ) : null}
      </details>
      {broughtAs[own] === undefined ? null : (
        <p>
          <Link href={`/import?kind=${broughtAs[own]}` as Route}>{t('save.bringIn')}</Link>
        </p>
      )}
    </section>
  );
}
