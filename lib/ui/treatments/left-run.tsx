import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { TreatmentView } from '@/lib/records/treatment/get-treatment.query';
import { Link } from '../page/link';
import { loadSiteWords } from '../sharing/site-words';

/** What may still be done with a run of a site that has left: it is told as over. */
export async function LeftRun({ run, mayEnd }: { readonly run: TreatmentView; readonly mayEnd: boolean }) {
  const t = await getTranslations('treatments');
  return (
    <p>
      {t('siteLeft', { site: (await loadSiteWords())(run.site.shown) })}{' '}
      {mayEnd && run.endedAt === null ? (
        <Link href={`/treatments/${run.id}/end` as Route}>{t('endSubmit')}</Link>
      ) : null}
    </p>
  );
}
