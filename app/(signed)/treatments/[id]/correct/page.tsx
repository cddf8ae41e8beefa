import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { massValues } from '@/lib/ui/form/mass-units';
import { celsiusValues, volumeValues } from '@/lib/ui/form/measure-values';
import { momentValues } from '@/lib/ui/form/moment-values';
import { namedOptions } from '@/lib/ui/form/named-options';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { otherSite } from '@/lib/ui/sites/other-site';
import { addressWith } from '@/lib/ui/table/address-with';
import { treatmentFields } from '@/lib/ui/treatments/treatment-fields';
import { correctTreatmentAction } from '../../actions';

export default async function CorrectTreatmentPage({
  params,
  searchParams,
}: PageProps<'/treatments/[id]/correct'>) {
  const { id } = await params;
  const address = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const { run, methods, sites } = await readAs(actor, async (context) => {
    const run = await getTreatment(context, id, now);
    return {
      run,
      methods: (await listChoices(context)).methods.filter((method) => method.kind !== 'untreated'),
      sites: await listFormSites(context, { asked: address.siteId, own: run?.site.id }),
    };
  });
  if (!run?.site.id) return <NotThere />;
  const t = await getTranslations('treatments');
  const zone = run.site.timeZone;
  return (
    <RecordForm
      action={correctTreatmentAction}
      heading={t('correct', { code: run.code })}
      fields={
        await treatmentFields({
          kind: 'correct',
          methodKind: run.method.kind,
          site: {
            sites: sites.sites,
            other: await otherSite(sites, addressWith(`/treatments/${id}/correct`, address, {})),
          },
          methods: namedOptions(methods, actor.language),
          days: await recentDays(todayInZone(zone, now)),
          person: actor,
        })
      }
      values={{
        id,
        revision: String(run.revision),
        siteId: sites.chosen?.id ?? run.site.id,
        methodId: run.method.id,
        code: run.code,
        note: run.note ?? '',
        ...momentValues('startedAt', run.startedAt, zone),
        ...momentValues('endedAt', run.endedAt, zone),
        ...volumeValues('water', run.waterMillilitres, actor),
        ...massValues('lime', run.limeGrams, actor),
        ...massValues('load', run.loadGrams, actor),
        ...celsiusValues('loadCelsiusAtSpawning', run.loadCelsiusAtSpawning, actor),
      }}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
