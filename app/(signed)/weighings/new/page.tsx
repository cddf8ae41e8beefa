import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { isId } from '@/lib/records/fields/id-field';
import { listWeighableBatches } from '@/lib/records/weighing/list-weighable-batches.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { batchOptions } from '@/lib/ui/weighings/batch-options';
import { forcedContainers } from '@/lib/ui/weighings/forced-flush-field';
import { weighingFields } from '@/lib/ui/weighings/weighing-fields';
import { recordWeighingAction } from '../actions';

export default async function NewWeighingPage({ searchParams }: PageProps<'/weighings/new'>) {
  const { batch } = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const also = typeof batch === 'string' && isId(batch) ? { also: [batch] } : {};
  const batches = await readAs(actor, (context) => listWeighableBatches(context, { now, ...also }));
  const t = await getTranslations('weighings');
  const chosen = batches.find((one) => one.id === batch);
  if (batches.length === 0) {
    return (
      <>
        <Heading text={t('new')} />
        <EmptyState text={t('noBatches')}>
          <ButtonLink href={'/batches/new' as Route}>{t('startBatch')}</ButtonLink>
        </EmptyState>
      </>
    );
  }
  const today = chosen?.today ?? todayInZone(batches[0]?.timeZone ?? actor.networkTimeZone, now);
  return (
    <RecordForm
      action={recordWeighingAction}
      heading={chosen ? t('newFrom', { code: chosen.code }) : t('new')}
      fields={
        await weighingFields({
          kind: 'record',
          massUnit: actor.massUnit,
          batches: await batchOptions(batches, actor.language),
          days: await recentDays(today),
          furtherRows: 3,
          forcedRows: chosen && forcedContainers.includes(chosen.containerKind) ? [0] : [],
        })
      }
      values={{
        id: newId(),
        weighedOn__quick: today,
        ...(chosen
          ? {
              'lines.0.batchId': chosen.id,
              'lines.0.flush': String(chosen.flush),
              trimState: chosen.trimDefault,
            }
          : {}),
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    />
  );
}
