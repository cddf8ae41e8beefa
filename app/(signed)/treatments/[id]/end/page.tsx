import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { nowValues } from '@/lib/ui/form/moment-values';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { endFields } from '@/lib/ui/treatments/reading-fields';
import { endTreatmentAction } from '../../actions';

export default async function EndTreatmentPage({ params }: PageProps<'/treatments/[id]/end'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const run = await readAs(actor, (context) => getTreatment(context, id, now));
  if (!run?.site.id || run.endedAt !== null) return <NotThere />;
  const t = await getTranslations('treatments');
  const zone = run.site.timeZone;
  return (
    <RecordForm
      action={endTreatmentAction}
      heading={t('endHeading', { code: run.code })}
      fields={
        await endFields({
          days: await recentDays(todayInZone(zone, now), run.siteLeftAt && todayInZone(zone, run.siteLeftAt)),
          temperatureUnit: actor.temperatureUnit,
          loadCelsiusAtSpawning: run.loadCelsiusAtSpawning,
        })
      }
      values={{ id, revision: String(run.revision), ...nowValues('endedAt', run.siteLeftAt ?? now, zone) }}
      submitLabel={t('endSubmit')}
      words={await loadFormWords()}
    />
  );
}
