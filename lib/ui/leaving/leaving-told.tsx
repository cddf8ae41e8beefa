import { getTranslations } from 'next-intl/server';
import type { Leaving } from '@/lib/records/person/get-leaving.query';

type Props = { readonly leaving: Leaving; readonly archive: string; readonly lead: string };

/** What a person takes along, what is erased of them, and what stays and why, before they leave. */
export async function LeavingTold({ leaving, archive, lead }: Props) {
  const t = await getTranslations('leaving');
  const { records, mentions } = leaving;
  return (
    <>
      <p className="lead">{lead}</p>
      <h2>{t('archive.heading')}</h2>
      <p>{t('archive.person')}</p>
      <p>
        <a className="button button-plain" href={archive} download>
          {t('archive.save')}
        </a>
      </p>
      <h2>{t('erased.heading')}</h2>
      <p>{t('erased.person')}</p>
      <h2>{t('stays.heading')}</h2>
      <p>{t('stays.person')}</p>
      {records.length === 0 ? (
        <p>{t('stays.noRecords')}</p>
      ) : (
        <ul>
          {records.map(({ table, count }) => (
            <li key={table}>{t(`records.${table}`, { count })}</li>
          ))}
        </ul>
      )}
      <p>{mentions === null ? t('stays.notCounted') : t('stays.mentions', { count: mentions })}</p>
      <p>{t('stays.elsewhere')}</p>
      <p>{t('law')}</p>
    </>
  );
}
