import { getTranslations } from 'next-intl/server';
import { newId } from '@/lib/base/new-id';
import { bedLayerFields } from '@/lib/ui/batches/bed-log-fields';
import { dateValues } from '@/lib/ui/form/date-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { NotThere } from '@/lib/ui/page/not-there';
import { readBatch } from '../../read-batch';
import { addBedLayersAction } from './actions';

const layerRows = 5;

/** Layers of a bed, written down later than its start or laid on top of what is there. */
export default async function NewLayersPage({ params }: PageProps<'/batches/[id]/layers/new'>) {
  const read = await readBatch(params);
  if (read?.page.batch.containerKind !== 'bed') return <NotThere />;
  const { actor, page } = read;
  const { batch, today } = page;
  const t = await getTranslations('batches');
  const first = batch.layers.length === 0;
  const day = first ? batch.inoculatedOn : (batch.closedOn ?? today);
  return (
    <RecordForm
      action={addBedLayersAction}
      heading={t(first ? 'layers.newHeading' : 'layers.topHeading', { code: batch.code })}
      fields={[
        {
          kind: 'date',
          name: 'laidOn',
          label: sentenceCase(t('fields.laidOn')),
          quick: await recentDays(today),
        },
        ...(await bedLayerFields(actor, layerRows)),
        { kind: 'hidden', name: 'batchId' },
        { kind: 'hidden', name: 'id' },
      ]}
      values={{ batchId: batch.id, id: newId(), ...dateValues('laidOn', day) }}
      submitLabel={t('layers.submit')}
      words={await loadFormWords()}
    >
      <p>{t('layers.intro')}</p>
    </RecordForm>
  );
}
