import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listHistory } from '@/lib/records/history/list-history.query';
import { historyEntries } from '@/lib/ui/history/history-entries';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { Timeline } from '@/lib/ui/page/timeline';

const uuid = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

export default async function HistoryPage({ params }: PageProps<'/history/[recordId]'>) {
  const { recordId } = await params;
  const actor = await requireActor('coordinator', 'member');
  const lines = uuid.test(recordId) ? await readAs(actor, (context) => listHistory(context, recordId)) : [];
  if (lines.length === 0) return <NotThere />;
  const t = await getTranslations('common.history');
  return (
    <>
      <Heading text={t('heading')} />
      <p>{t('intro')}</p>
      <Timeline entries={await historyEntries(lines, actor.networkTimeZone, actor.language)} />
    </>
  );
}
