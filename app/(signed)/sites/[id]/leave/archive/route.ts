import { currentActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { readerLocale } from '@/lib/base/reader-locale';
import { answerPackage } from '@/lib/export/package/answer-package';
import { isId } from '@/lib/records/fields/id-field';
import { getSite } from '@/lib/records/site/get-site.query';
import { wordsFor } from '@/lib/ui/i18n/words-for';
import packageFile from '@/package.json';

/** The records of one site as an archive, for its members and the coordinator. */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/sites/[id]/leave/archive'>,
): Promise<Response> {
  const actor = await currentActor();
  const { id } = await params;
  const allowed = actor !== undefined && actor.role !== 'funder' && isId(id);
  const site = allowed ? await readAs(actor, (context) => getSite(context, id)) : undefined;
  if (!actor || !site) return new Response(null, { status: 404, headers: { 'cache-control': 'no-store' } });
  const words = wordsFor(actor.language, readerLocale(actor));
  const asked = { licence: 'none', softwareVersion: packageFile.version, siteId: id };
  return answerPackage(actor, asked, words('export.busy'));
}
