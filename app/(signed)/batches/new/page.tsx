import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { containerKinds } from '@/lib/growing/vocabulary';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { ContainerChips } from '@/lib/ui/batches/container-chips';
import { startDefaults } from '@/lib/ui/batches/start-defaults';
import { startFields } from '@/lib/ui/batches/start-fields';
import { startOptions } from '@/lib/ui/batches/start-options';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { startBatchAction } from './actions';

const componentRows = 3;
const layerRows = 5;

export default async function NewBatchPage({ searchParams }: PageProps<'/batches/new'>) {
  const actor = await requireActor('coordinator', 'member');
  const asked = (await searchParams).container;
  const container = containerKinds.find((kind) => kind === asked) ?? 'bag';
  const choices = await readAs(actor, listStartChoices);
  const t = await getTranslations('batches');
  const [firstSite] = choices.sites;
  const today = todayInZone(firstSite?.timeZone ?? actor.networkTimeZone, new Date());
  return (
    <RecordForm
      key={container}
      action={startBatchAction}
      heading={t('new')}
      fields={[
        ...(await startFields({
          container,
          options: await startOptions(choices, actor.language),
          days: await recentDays(today),
          massUnit: actor.massUnit,
          componentRows,
          layers: { rows: layerRows, volumeUnit: actor.volumeUnit },
        })),
        { kind: 'hidden', name: 'id' },
      ]}
      values={{
        ...startDefaults(container),
        id: newId(),
        siteId: choices.sites.length === 1 ? (firstSite?.id ?? '') : '',
        inoculatedOn__quick: today,
      }}
      submitLabel={t('submitNew')}
      words={await loadFormWords()}
    >
      <p>{t('newIntro')}</p>
      <ContainerChips chosen={container} path="/batches/new" />
    </RecordForm>
  );
}
