import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getWeighing } from '@/lib/records/weighing/get-weighing.query';
import { listWeighableBatches } from '@/lib/records/weighing/list-weighable-batches.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { batchOptions } from '@/lib/ui/weighings/batch-options';
import { forcedContainers } from '@/lib/ui/weighings/forced-flush-field';
import { weighingFields } from '@/lib/ui/weighings/weighing-fields';
import { weighingValues } from '@/lib/ui/weighings/weighing-values';
import { correctWeighingAction } from '../../actions';

export default async function CorrectWeighingPage({ params }: PageProps<'/weighings/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const found = isId(id)
    ? await readAs(actor, async (context) => {
        const weighing = await getWeighing(context, id);
        if (!weighing || weighing.voided !== null) return undefined;
        const also = weighing.lines.map((line) => line.batchId);
        const batches = await listWeighableBatches(context, {
          now: new Date(),
          also,
          siteId: weighing.siteId,
        });
        return { weighing, batches };
      })
    : undefined;
  if (!found) return <NotThere />;
  const mayBeForced = new Set(
    found.batches.filter((one) => forcedContainers.includes(one.containerKind)).map(({ id: one }) => one),
  );
  const t = await getTranslations('weighings');
  const today = found.batches[0]?.today ?? found.weighing.weighedOn;
  return (
    <RecordForm
      action={correctWeighingAction}
      heading={t('correct')}
      fields={
        await weighingFields({
          kind: 'correct',
          massUnit: actor.massUnit,
          batches: await batchOptions(found.batches, actor.language),
          days: await recentDays(today),
          furtherRows: Math.max(3, found.weighing.lines.length),
          forcedRows: found.weighing.lines.flatMap(({ batchId, forcedFlush }, row) =>
            forcedFlush !== null || mayBeForced.has(batchId) ? [row] : [],
          ),
        })
      }
      values={weighingValues(found.weighing, actor)}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
