import { getLocale, getMessages } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { offlineWordsOf } from '@/lib/ui/offline/offline-words';
import { UnsentPage } from '@/lib/ui/offline/unsent-page';
import { Heading } from '@/lib/ui/page/heading';

export default async function EntriesOnThisPhonePage() {
  const actor = await requireActor('coordinator', 'member');
  const words = offlineWordsOf(await getMessages(), await getLocale());
  return (
    <>
      <Heading text={words.keep.list.heading} />
      <noscript>
        <p>{words.keep.list.noScript}</p>
      </noscript>
      <UnsentPage personId={actor.personId} networkId={actor.networkId} words={words} />
    </>
  );
}
