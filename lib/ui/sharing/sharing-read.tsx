import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { SharingView } from '@/lib/records/sharing/get-sharing.query';
import { DefinitionList } from '../page/definition-list';
import { Heading } from '../page/heading';
import { Link } from '../page/link';

/** What a site shares, for the coordinator, who reads it and cannot change it. */
export async function SharingRead({ sharing }: { readonly sharing: SharingView }) {
  const t = await getTranslations('sharing');
  const { site, agreementId, revision, withMembers, withFunder, members = 0 } = sharing;
  return (
    <>
      <Heading text={t('heading', { site: site.name })} />
      <p className="lead">{members === 0 ? t('noMember') : t('onlySite', { count: members })}</p>
      <DefinitionList
        items={[
          {
            label: t('columns.withMembers'),
            value: `${t(`members.${withMembers}`)}. ${t(`members.${withMembers}Hint`, { site: site.name })}`,
          },
          {
            label: t('columns.withFunder'),
            value: `${t(`funder.${withFunder}`)}. ${t(`funder.${withFunder}Hint`)}`,
          },
          {
            label: t('columns.changed'),
            value: revision === 0 ? t('nothingSaid') : t('changedTimes', { count: revision }),
          },
        ]}
      />
      <p>{t('lead')}</p>
      <p>{t('limits')}</p>
      <p className="record-links">
        <Link href={`/sites/${site.id}` as Route}>{site.name}</Link>
        {agreementId === undefined ? null : (
          <Link href={`/history/${agreementId}` as Route}>{t('history')}</Link>
        )}
      </p>
    </>
  );
}
