import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { getBatchConditions } from '@/lib/records/condition/get-batch-conditions.query';
import { listPlaces } from '@/lib/records/condition/list-places.query';
import { isId } from '@/lib/records/fields/id-field';
import { placeBatchFields } from '@/lib/ui/conditions/place-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { placeBatchAction } from './actions';

export default async function PlaceBatchPage({ params }: PageProps<'/batches/[id]/place'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const found = isId(id)
    ? await readAs(actor, async (context) => {
        const batch = await getBatchConditions(context, id, now);
        return batch && { batch, places: await listPlaces(context, batch.siteId) };
      })
    : undefined;
  if (!found?.batch.open) return <NotThere />;
  const { batch, places } = found;
  const t = await getTranslations('conditions');
  const heading = t('placeBatchHeading', { code: batch.code });
  if (places.length === 0)
    return (
      <>
        <Heading text={heading} />
        <EmptyState text={t('placeBatchNone')}>
          <ButtonLink href={`/sites/${batch.siteId}/places/new` as Route}>{t('addPlace')}</ButtonLink>
        </EmptyState>
      </>
    );
  const today = todayInZone(batch.timeZone, now);
  return (
    <RecordForm
      action={placeBatchAction}
      heading={heading}
      fields={
        await placeBatchFields({
          places: places.map(({ id: value, name: label }) => ({ value, label })),
          days: await recentDays(today),
        })
      }
      values={{ batchId: id, id: newId(), placedOn__quick: today }}
      submitLabel={t('submitPlaceBatch')}
      words={await loadFormWords()}
    />
  );
}
