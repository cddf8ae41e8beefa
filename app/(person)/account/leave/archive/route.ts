import { currentActor } from '@/lib/access/current';
import { readerLocale } from '@/lib/base/reader-locale';
import { answerPersonArchive } from '@/lib/export/person/answer-person-archive';
import { wordsFor } from '@/lib/ui/i18n/words-for';

/** Everything that the reader recorded in the open network, and what is kept of them, to take along. */
export async function GET(): Promise<Response> {
  const actor = await currentActor();
  if (!actor) return new Response(null, { status: 404, headers: { 'cache-control': 'no-store' } });
  return answerPersonArchive(
    actor,
    actor.personId,
    wordsFor(actor.language, readerLocale(actor))('export.busy'),
  );
}
