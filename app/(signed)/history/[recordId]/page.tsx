import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { listHistory } from '@/lib/records/history/list-history.query';
import { getNote } from '@/lib/records/words/get-note.query';
import { historyEntries } from '@/lib/ui/history/history-entries';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Timeline } from '@/lib/ui/page/timeline';

const notedAs = { batch: 'batch', treatment_run: 'treatment-run' } as const;
const isNoted = (table: string | undefined): table is keyof typeof notedAs => (table ?? '') in notedAs;

export default async function HistoryPage({ params }: PageProps<'/history/[recordId]'>) {
  const { recordId } = await params;
  const actor = await requireActor('coordinator', 'member');
  const lines = isId(recordId) ? await readAs(actor, (context) => listHistory(context, recordId)) : [];
  if (lines.length === 0) return <NotThere />;
  const t = await getTranslations('common');
  const table = lines[0]?.tableName;
  // A voided record has no page to correct, and a voided run no page at all; its note can be taken out from here.
  const kind = isNoted(table) ? notedAs[table] : undefined;
  const noted = kind && (await readAs(actor, (context) => getNote(context, kind, recordId)));
  return (
    <>
      <Heading text={t('history.heading')} />
      <p>{t('history.intro')}</p>
      {noted?.voided ? (
        <p>
          <Link href={`/words/${kind}/${recordId}` as Route}>{t('takeOut.submit')}</Link>
        </p>
      ) : null}
      <Timeline entries={await historyEntries(lines, actor.networkTimeZone, actor.language)} />
    </>
  );
}
