import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readRecordFaults } from '@/lib/analysis/record-question/read-record-faults';
import { faultEffects, isImplausible } from '@/lib/analysis/record-question/record-fault';
import { insightWords } from '@/lib/ui/insight/insight-words';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { RecordFaultsView } from '@/lib/ui/watch/record-faults-view';

/** The same list for a coordinator and for a member, who sees the own sites. */
export default async function RecordsPage({ searchParams }: PageProps<'/questions/records'>) {
  const { site } = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const found = await readRecordFaults(actor, new Date());
  const t = await getTranslations('watch.records');
  const heading = <Heading text={t(actor.role === 'member' ? 'headingOwn' : 'heading')} />;
  if (!found)
    return (
      <>
        {heading}
        <EmptyState text={(await getTranslations('insight.fit'))('empty')} />
      </>
    );
  const words = await insightWords(actor, { ...found, filter: { container: found.mainContainer } });
  return (
    <>
      {heading}
      <RecordFaultsView
        found={found}
        kinds={faultEffects}
        implausible={isImplausible}
        site={typeof site === 'string' ? site : undefined}
        words={words}
      />
    </>
  );
}
