import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { findLabelledBatch } from '@/lib/records/label/find-labelled-batch.query';
import { NotThere } from '@/lib/ui/page/not-there';

/** Where the code of a label leads: the batch, and which unit of it. Says nothing to whoever may not see the batch. */
export default async function LabelledPage({ params }: PageProps<'/b/[...at]'>) {
  const [key = '', unit] = (await params).at;
  const actor = await requireActor('coordinator', 'member');
  const id = /^[0-9a-z]{12}$/i.test(key)
    ? await readAs(actor, (context) => findLabelledBatch(context, key))
    : undefined;
  if (id === undefined) return <NotThere />;
  const number = unit !== undefined && /^\d{1,5}$/.test(unit) ? `?unit=${unit}` : '';
  redirect(`/batches/${id}${number}` as Route);
}
