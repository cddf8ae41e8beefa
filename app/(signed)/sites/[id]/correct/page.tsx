import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { getSite } from '@/lib/records/site/get-site.query';
import { dateValues } from '@/lib/ui/form/date-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { siteFields } from '@/lib/ui/sites/site-fields';
import { correctSiteAction } from '../../actions';

export default async function CorrectSitePage({ params }: PageProps<'/sites/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const site = await readAs(actor, (context) => getSite(context, id));
  if (!site || site.voided !== null) return <NotThere />;
  const t = await getTranslations('sites');
  const { name, code, kind, timeZone, trimDefault } = site;
  return (
    <RecordForm
      action={correctSiteAction}
      heading={t('correct', { name })}
      fields={await siteFields('correct')}
      values={{
        id,
        revision: String(site.revision),
        name,
        code,
        kind,
        timeZone,
        trimDefault,
        note: site.note ?? '',
        ...dateValues('openedOn', site.openedOn),
        ...dateValues('closedOn', site.closedOn),
      }}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
