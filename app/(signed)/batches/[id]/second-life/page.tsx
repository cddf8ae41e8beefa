import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { getBatchStanding } from '@/lib/records/batch/get-batch-standing.query';
import { listSourceBatches } from '@/lib/records/batch/list-source-batches.query';
import { isId } from '@/lib/records/fields/id-field';
import { listSites } from '@/lib/records/site/list-sites.query';
import { ContainerChips } from '@/lib/ui/batches/container-chips';
import { secondLifeContainers } from '@/lib/ui/batches/second-life-containers';
import { secondLifeFields } from '@/lib/ui/batches/second-life-fields';
import { sourceOptions } from '@/lib/ui/batches/source-options';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { startSecondLifeAction } from './actions';

export default async function SecondLifePage({
  params,
  searchParams,
}: PageProps<'/batches/[id]/second-life'>) {
  const { id } = await params;
  const asked = (await searchParams).container;
  const container = secondLifeContainers.find((kind) => kind === asked) ?? 'bed';
  const actor = await requireActor('coordinator', 'member');
  const { batch, sites, others } = await readAs(actor, async (context) => ({
    batch: isId(id) ? await getBatchStanding(context, id, new Date()) : undefined,
    sites: await listSites(context),
    others: await listSourceBatches(context),
  }));
  if (!batch) return <NotThere />;
  const t = await getTranslations('batches');
  return (
    <RecordForm
      key={container}
      action={startSecondLifeAction}
      heading={t('secondLife', { code: batch.code })}
      fields={
        await secondLifeFields({
          container,
          sites: sites.map((site) => ({ value: site.id, label: site.name })),
          days: await recentDays(batch.today),
          batches: await sourceOptions(
            others.filter((one) => one.id !== id && one.speciesId === batch.speciesId),
            [],
          ),
          massUnit: actor.massUnit,
          start: { volumeUnit: actor.volumeUnit, standing: batch.live },
        })
      }
      values={{
        id: newId(),
        'sources.0.batchId': id,
        'sources.0.units': batch.live > 0 ? String(batch.live) : '',
        speciesId: batch.speciesId,
        siteId: batch.siteId,
        containerKind: container,
        unitCount: container === 'bed' ? '1' : '',
        moistureSource: 'none',
        inoculatedOn__quick: batch.today,
      }}
      submitLabel={t('submitSecondLife')}
      words={await loadFormWords()}
    >
      <p>{t('secondLifeIntro')}</p>
      <ContainerChips chosen={container} path={`/batches/${id}/second-life`} kinds={secondLifeContainers} />
    </RecordForm>
  );
}
