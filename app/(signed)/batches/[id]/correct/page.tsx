import { getTranslations } from 'next-intl/server';
import { readAs } from '@/lib/access/scoped-db';
import { type ContainerKind, containerKinds } from '@/lib/growing/vocabulary';
import { listSourceBatches } from '@/lib/records/batch/list-source-batches.query';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { batchValues } from '@/lib/ui/batches/batch-values';
import { ContainerChips } from '@/lib/ui/batches/container-chips';
import { secondLifeContainers } from '@/lib/ui/batches/second-life-containers';
import { secondLifeFields } from '@/lib/ui/batches/second-life-fields';
import { sourceFields } from '@/lib/ui/batches/source-fields';
import { sourceOptions } from '@/lib/ui/batches/source-options';
import { startDefaults } from '@/lib/ui/batches/start-defaults';
import { startFields } from '@/lib/ui/batches/start-fields';
import { startOptions } from '@/lib/ui/batches/start-options';
import { withOwnChoices } from '@/lib/ui/batches/with-own-choices';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { correctionFields } from '@/lib/ui/history/correction-fields';
import { NotThere } from '@/lib/ui/page/not-there';
import { otherSite } from '@/lib/ui/sites/other-site';
import { addressWith } from '@/lib/ui/table/address-with';
import { readBatch } from '../read-batch';
import { correctBatchAction, correctSecondLifeAction } from './actions';

const componentRows = 4;

export default async function CorrectBatchPage({ params, searchParams }: PageProps<'/batches/[id]/correct'>) {
  const read = await readBatch(params);
  if (!read) return <NotThere />;
  const { actor, page } = read;
  const { batch, sources, today } = page;
  const address = await searchParams;
  const asked = address.container;
  // A second life that was never given material, spawn or a mass of its own has the form it was started with.
  const plain =
    batch.secondLife && batch.components.length + batch.spawn.length === 0 && batch.wetGrams === null;
  const kinds: readonly ContainerKind[] = plain ? secondLifeContainers : containerKinds;
  const container = kinds.find((kind) => kind === asked) ?? batch.containerKind;
  const { formSites, choices, spent } = await readAs(actor, async (context) => {
    const formSites = await listFormSites(context, {
      ...{ asked: address.siteId, own: batch.siteId, open: true },
    });
    return {
      formSites,
      choices: await listStartChoices(context, { formSites }),
      spent: batch.secondLife ? await listSourceBatches(context, formSites.chosen?.id) : [],
    };
  });
  const path = `/batches/${batch.id}/correct`;
  const other = await otherSite(formSites, addressWith(path, address, {}), 'start');
  const siteId = formSites.chosen?.id;
  const options = withOwnChoices(await startOptions(choices, actor.language), batch, actor.language);
  const from = await sourceOptions(
    spent.filter(({ id }) => id !== batch.id),
    sources,
  );
  const days = await recentDays(today);
  const t = await getTranslations('batches');
  return (
    <RecordForm
      key={container}
      action={batch.secondLife ? correctSecondLifeAction : correctBatchAction}
      heading={t('correct', { code: batch.code })}
      fields={[
        ...(plain && container !== 'log'
          ? await secondLifeFields({
              ...{ container, days, batches: from, massUnit: actor.massUnit },
              site: { sites: options.sites, other },
            })
          : [
              ...(batch.secondLife ? await sourceFields(from, [0, 1, 2]) : []),
              ...(await startFields({
                ...{ container, options, days, massUnit: actor.massUnit, componentRows },
                ...{ correcting: true, otherSite: other },
              })),
            ]),
        ...(await correctionFields()),
      ]}
      values={{
        ...startDefaults(container),
        ...batchValues(batch, sources, actor),
        startedById: batch.startedById ?? '',
        containerKind: container,
        ...(siteId === undefined ? {} : { siteId }),
        ...(container === 'bed' ? { unitCount: '1' } : {}),
      }}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    >
      <ContainerChips
        chosen={container}
        path={addressWith(path, siteId === undefined ? {} : { siteId }, {})}
        kinds={kinds}
      />
    </RecordForm>
  );
}
