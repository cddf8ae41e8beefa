import type { Route } from 'next';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { HarvestOnPhone } from '@/lib/ui/quick/harvest-on-phone';
import { SavedNotice } from '@/lib/ui/quick/saved-notice';
import { quickHarvestAction } from '../actions';
import { loadQuick } from '../load-quick';

export default async function QuickHarvestPage({ searchParams }: PageProps<'/quick/harvest'>) {
  const { props, networkId, saved } = await loadQuick(searchParams);
  if (saved) return <SavedNotice props={props} saved={saved} page="harvest" />;
  const { words, snapshot } = props;
  if (snapshot.batches.length === 0)
    return (
      <>
        <Heading text={words.harvest.heading} />
        <EmptyState text={words.batch.none}>
          <ButtonLink href={'/batches/new' as Route}>{words.batch.start}</ButtonLink>
        </EmptyState>
      </>
    );
  return <HarvestOnPhone {...props} networkId={networkId} action={quickHarvestAction} />;
}
