import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { conditionsFields } from '@/lib/ui/conditions/place-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { nowValues } from '@/lib/ui/form/moment-values';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { addConditionsAction } from '../../../actions';
import { loadPlace } from '../../load-place';

export default async function NewConditionsPage({
  params,
}: PageProps<'/sites/[id]/places/[place]/readings/new'>) {
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const place = await loadPlace(actor, await params, now);
  if (!place) return <NotThere />;
  const t = await getTranslations('conditions');
  const { timeZone } = place.site;
  return (
    <RecordForm
      action={addConditionsAction}
      heading={t('addConditionsHeading', { name: place.name })}
      fields={
        await conditionsFields({
          days: await recentDays(todayInZone(timeZone, now)),
          temperatureUnit: actor.temperatureUnit,
        })
      }
      values={{ placeId: place.id, id: newId(), ...nowValues('readAt', now, timeZone) }}
      submitLabel={t('submitConditions')}
      words={await loadFormWords()}
    />
  );
}
