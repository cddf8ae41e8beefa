import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { nowValues } from '@/lib/ui/form/moment-values';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { readingFields } from '@/lib/ui/treatments/reading-fields';
import { addReadingAction } from '../../../actions';

export default async function NewReadingPage({ params }: PageProps<'/treatments/[id]/readings/new'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const run = await readAs(actor, (context) => getTreatment(context, id, now));
  if (!run?.site.id) return <NotThere />;
  const t = await getTranslations('treatments');
  const zone = run.site.timeZone;
  return (
    <RecordForm
      action={addReadingAction}
      heading={t('readingHeading', { code: run.code })}
      fields={
        await readingFields({
          days: await recentDays(todayInZone(zone, now)),
          temperatureUnit: actor.temperatureUnit,
          method: run.method.kind,
        })
      }
      values={{
        id: newId(),
        treatmentRunId: id,
        place: run.window?.kind === 'heat' ? 'load_middle' : 'water',
        ...nowValues('readAt', now, zone),
      }}
      submitLabel={t('readingSubmit')}
      words={await loadFormWords()}
    />
  );
}
