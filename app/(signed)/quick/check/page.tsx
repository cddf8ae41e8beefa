import type { Route } from 'next';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { CheckOnPhone } from '@/lib/ui/quick/check-on-phone';
import { SavedNotice } from '@/lib/ui/quick/saved-notice';
import { quickCheckAction } from '../actions';
import { loadQuick } from '../load-quick';

export default async function QuickCheckPage({ searchParams }: PageProps<'/quick/check'>) {
  const { props, networkId, saved } = await loadQuick(searchParams);
  if (saved) return <SavedNotice props={props} saved={saved} page="check" />;
  const { words, snapshot } = props;
  if (snapshot.batches.length === 0)
    return (
      <>
        <Heading text={words.check.heading} />
        <EmptyState text={words.batch.none}>
          <ButtonLink href={'/batches/new' as Route}>{words.batch.start}</ButtonLink>
        </EmptyState>
      </>
    );
  return <CheckOnPhone {...props} networkId={networkId} action={quickCheckAction} />;
}
