import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { getBatchStanding } from '@/lib/records/batch/get-batch-standing.query';
import { listSourceBatches } from '@/lib/records/batch/list-source-batches.query';
import { isId } from '@/lib/records/fields/id-field';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { ContainerChips } from '@/lib/ui/batches/container-chips';
import { secondLifeContainers } from '@/lib/ui/batches/second-life-containers';
import { secondLifeFields } from '@/lib/ui/batches/second-life-fields';
import { sourceOptions } from '@/lib/ui/batches/source-options';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { addressWith } from '@/lib/ui/table/address-with';
import { siteFirst } from '../../../site-first';
import { startSecondLifeAction } from './actions';

export default async function SecondLifePage({
  params,
  searchParams,
}: PageProps<'/batches/[id]/second-life'>) {
  const { id } = await params;
  const address = await searchParams;
  const container = secondLifeContainers.find((kind) => kind === address.container) ?? 'bed';
  const actor = await requireActor('coordinator', 'member');
  const read = await readAs(actor, async (context) => {
    const batch = isId(id) ? await getBatchStanding(context, id, new Date()) : undefined;
    if (batch === undefined) return undefined;
    // Nothing begins at a site that has left.
    const own = batch.leftOn === null ? batch.siteId : undefined;
    const found = await listFormSites(context, { asked: address.siteId, own });
    // Units stand at the site that they come from, wherever they go.
    const others = await listSourceBatches(context, found.many ? batch.siteId : undefined);
    return { batch, found, others, begins: found.chosen?.id ?? own ?? '' };
  });
  if (!read) return <NotThere />;
  const { batch, found, others, begins } = read;
  const path = `/batches/${id}/second-life`;
  const site = await siteFirst(found, addressWith(path, address, {}), 'start');
  const t = await getTranslations('batches');
  return (
    <RecordForm
      key={container}
      action={startSecondLifeAction}
      heading={t('secondLife', { code: batch.code })}
      fields={
        await secondLifeFields({
          container,
          site,
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
        siteId: begins,
        containerKind: container,
        unitCount: container === 'bed' ? '1' : '',
        moistureSource: 'none',
        inoculatedOn__quick: batch.today,
      }}
      submitLabel={t('submitSecondLife')}
      words={await loadFormWords()}
    >
      <p>{t('secondLifeIntro')}</p>
      <ContainerChips
        chosen={container}
        path={addressWith(path, { siteId: found.chosen?.id }, {})}
        kinds={secondLifeContainers}
      />
    </RecordForm>
  );
}
