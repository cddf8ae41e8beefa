import type { Route } from 'next';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { ContaminationOnPhone } from '@/lib/ui/quick/contamination-on-phone';
import { SavedNotice } from '@/lib/ui/quick/saved-notice';
import { quickContaminationAction } from '../actions';
import { loadQuick } from '../load-quick';

export default async function QuickContaminationPage({ searchParams }: PageProps<'/quick/contamination'>) {
  const { props, networkId, saved } = await loadQuick(searchParams);
  if (saved) return <SavedNotice props={props} saved={saved} page="contamination" />;
  const { words, snapshot } = props;
  if (snapshot.batches.length === 0)
    return (
      <>
        <Heading text={words.finding.heading} />
        <EmptyState text={words.batch.none}>
          <ButtonLink href={'/batches/new' as Route}>{words.batch.start}</ButtonLink>
        </EmptyState>
      </>
    );
  return <ContaminationOnPhone {...props} networkId={networkId} action={quickContaminationAction} />;
}
