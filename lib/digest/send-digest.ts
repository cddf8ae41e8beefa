import 'server-only';
import { actorOfJob } from '@/lib/access/actor-of-job';
import { readAs } from '@/lib/access/scoped-db';
import { fittedSignals } from '@/lib/analysis/watch-question/fitted-signals';
import { openSignals } from '@/lib/analysis/watch-question/open-signals';
import { readSignalNames } from '@/lib/analysis/watch-question/read-signal-names';
import { watch } from '@/lib/analysis/watch-question/watch-question';
import type { MailSetting } from '@/lib/base/mail-setting';
import { newId } from '@/lib/base/new-id';
import { readerLocale } from '@/lib/base/reader-locale';
import { wordsFor } from '@/lib/ui/i18n/words-for';
import { digestLetter } from './digest-letter';
import type { DueDigest } from './digests-due';
import { sendLetter } from './send-letter';

/**
 * Makes one digest and sends it, once: the line that records it is written first, in the transaction that sends. A second
 * process that has the same digest in hand waits at that line and then finds it there; when sending fails, the line goes
 * with the transaction and the digest is due again.
 *
 * @returns whether a letter went out
 */
export async function sendDigest(
  due: DueDigest,
  mail: MailSetting,
  url: string,
  now: Date,
): Promise<boolean> {
  const found = await actorOfJob(due.personId, due.networkId);
  if (found?.actor.role !== 'coordinator') return false;
  const { actor, email } = found;
  const watched = await watch(actor, now, 28);
  const fitted =
    watched && (watched.fitted.kind === 'current' ? watched.fitted.stored : await watched.fitted.next);
  const all = watched && fitted ? [...watched.plain, ...fittedSignals(fitted.result)] : [];
  const { signals, names } = await readAs(actor, async (context) => {
    const open = watched ? await openSignals(context, all, watched.since) : [];
    return { signals: open, names: await readSignalNames(context, open) };
  });
  const locale = readerLocale(actor);
  const siteName = (id: string) => watched?.scope.choices.sites.find((site) => site.id === id)?.name ?? '–';
  const words = { words: wordsFor(actor.language, locale), locale, siteName, ...names };
  const letter = digestLetter({ network: actor.networkName, name: actor.name, url, signals }, words);
  return readAs(actor, async ({ db }) => {
    const written = await db.$executeRaw`
      insert into digest_sent (network_id, id, person_id, week, signals)
      values (${due.networkId}::uuid, ${newId()}::uuid, ${due.personId}::uuid, ${due.week}::date, ${signals.length})
      on conflict (network_id, person_id, week) do nothing`;
    if (written === 0) return false;
    await sendLetter(mail, email, letter);
    return true;
  });
}
