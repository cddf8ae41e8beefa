import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { Fragment } from 'react';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import type { IntakeView } from '@/lib/intake/table/view-file';
import { ButtonLink } from '../page/button-link';
import { Link } from '../page/link';
import { addressWith } from '../table/address-with';

/** Where the records of each kind of table are listed. */
const listOf: Readonly<Record<RecordTableKind, string>> = {
  harvests: '/weighings',
  batches: '/batches',
  treatments: '/treatments',
  notebook: '/batches',
  findings: '/batches',
  spawn_lots: '/spawn-lots',
  substrate_lots: '/substrate-lots',
  sites: '/sites',
  people: '/people/invitations',
};

/** The way to what a table became. */
export async function AddedLinks({ file }: { file: IntakeView }) {
  const t = await getTranslations('import');
  const at = listOf[file.kind];
  const ofSite = at === '/weighings' || at === '/batches' || at === '/treatments';
  const href = ofSite ? addressWith(at, { site: file.siteId ?? undefined }, {}) : at;
  return (
    <>
      {file.kind === 'people' ? <p>{t('file.invitations')}</p> : null}
      {file.batches.length > 0 ? (
        <>
          <p>{t('file.batches')}</p>
          <p className="record-links">
            {file.batches.map(({ id, code }) => (
              <Fragment key={id}>
                <Link href={`/batches/${id}` as Route}>{code}</Link>{' '}
              </Fragment>
            ))}
          </p>
        </>
      ) : null}
      <p>
        <ButtonLink href={href as Route} plain={file.counts.needs > 0}>
          {t('file.see')}
        </ButtonLink>
      </p>
    </>
  );
}
