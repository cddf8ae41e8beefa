import { currentActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { readerLocale } from '@/lib/base/reader-locale';
import { answerPersonArchive } from '@/lib/export/person/answer-person-archive';
import { isId } from '@/lib/records/fields/id-field';
import { getLeaving } from '@/lib/records/person/get-leaving.query';
import { wordsFor } from '@/lib/ui/i18n/words-for';

/** What a person who asked to leave takes along, saved for them by the coordinator. */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/people/[membershipId]/leave/archive'>,
): Promise<Response> {
  const actor = await currentActor();
  const { membershipId } = await params;
  const leaving =
    actor?.role === 'coordinator' && isId(membershipId)
      ? await readAs(actor, (context) => getLeaving(context, membershipId))
      : undefined;
  if (!actor || !leaving)
    return new Response(null, { status: 404, headers: { 'cache-control': 'no-store' } });
  const words = wordsFor(actor.language, readerLocale(actor));
  return answerPersonArchive(actor, leaving.personId, words('export.busy'));
}
