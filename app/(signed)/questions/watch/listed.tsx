import type { Actor } from '@/lib/access/actor';
import { fittedSignals, type WatchAnswers } from '@/lib/analysis/watch-question/fitted-signals';
import type { Watched } from '@/lib/analysis/watch-question/watch-question';
import { WatchList } from '@/lib/ui/watch/watch-list';
import { markSeenAction } from './actions';
import { loadSignals } from './load-signals';

type Props = { readonly actor: Actor; readonly watched: Watched };

/** The list with what the models answered, or without while they are not fitted. */
export async function Listed({ actor, watched, answers }: Props & { readonly answers?: WatchAnswers }) {
  const found = [...watched.plain, ...(answers ? fittedSignals(answers) : [])];
  return (
    <WatchList
      {...(await loadSignals(actor, watched, found))}
      since={watched.since}
      timeZone={actor.networkTimeZone}
      seen={markSeenAction}
    />
  );
}

type Next = { readonly next: Promise<{ readonly result: WatchAnswers }> };

export async function ListedWhenFitted({ actor, watched, next }: Props & Next) {
  return <Listed actor={actor} watched={watched} answers={(await next).result} />;
}
