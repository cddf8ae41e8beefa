import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { nowValues } from '@/lib/ui/form/moment-values';
import { namedOptions } from '@/lib/ui/form/named-options';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { treatmentFields } from '@/lib/ui/treatments/treatment-fields';
import { startTreatmentAction } from '../actions';

export default async function NewTreatmentPage() {
  const actor = await requireActor('coordinator', 'member');
  const { methods, sites } = await readAs(actor, async (context) => ({
    methods: (await listChoices(context)).methods.filter((method) => method.kind !== 'untreated'),
    sites: await listSites(context),
  }));
  const t = await getTranslations('treatments');
  const now = new Date();
  const timeZone = sites[0]?.timeZone ?? actor.networkTimeZone;
  return (
    <RecordForm
      action={startTreatmentAction}
      heading={t('new')}
      fields={
        await treatmentFields({
          kind: 'start',
          sites: sites.map((site) => ({ value: site.id, label: site.name })),
          methods: namedOptions(methods, actor.language),
          days: await recentDays(todayInZone(timeZone, now)),
          person: actor,
        })
      }
      values={{
        id: newId(),
        siteId: sites.length === 1 ? (sites[0]?.id ?? '') : '',
        ...nowValues('startedAt', now, timeZone),
      }}
      submitLabel={t('submitNew')}
      words={await loadFormWords()}
    />
  );
}
