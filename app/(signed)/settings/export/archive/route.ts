import { currentActor } from '@/lib/access/current';
import { readerLocale } from '@/lib/base/reader-locale';
import { answerPackage } from '@/lib/export/package/answer-package';
import { wordsFor } from '@/lib/ui/i18n/words-for';
import packageFile from '@/package.json';

/** The whole network as one archive, for its coordinator. */
export async function GET(request: Request): Promise<Response> {
  const actor = await currentActor();
  if (actor?.role !== 'coordinator')
    return new Response(null, { status: 404, headers: { 'cache-control': 'no-store' } });
  const licence = new URL(request.url).searchParams.get('licence');
  const words = wordsFor(actor.language, readerLocale(actor));
  return answerPackage(actor, { licence, softwareVersion: packageFile.version }, words('export.busy'));
}
