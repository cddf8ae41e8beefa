import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { readSignalNames } from '@/lib/analysis/watch-question/read-signal-names';
import { latestSignals, type Signal } from '@/lib/analysis/watch-question/signal';
import type { Watched } from '@/lib/analysis/watch-question/watch-question';
import { readerLocale } from '@/lib/base/reader-locale';
import { listSignalAnswers } from '@/lib/records/signal/list-signal-answers.query';
import { dynamicWords } from '@/lib/ui/i18n/dynamic-words';
import type { ListedSignals } from '@/lib/ui/watch/watch-list';

/** The signals of the period with their answers, and what they are written with. */
export async function loadSignals(
  actor: Actor,
  { since, scope }: Pick<Watched, 'since' | 'scope'>,
  found: readonly Signal[],
): Promise<ListedSignals> {
  const signals = latestSignals(found, since);
  const { answers, names } = await readAs(actor, async (context) => ({
    answers: await listSignalAnswers(
      context,
      signals.map(({ key }) => key),
    ),
    names: await readSignalNames(context, signals),
  }));
  const siteNames = new Map(scope.choices.sites.map(({ id, name }) => [id, name]));
  const siteName = (id: string) => siteNames.get(id) ?? '–';
  const words = { words: await dynamicWords(), locale: readerLocale(actor), siteName, ...names };
  return { signals, answers, words };
}
