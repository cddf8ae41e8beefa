import { currentActor } from '@/lib/access/current';
import { queryToObject } from '@/lib/base/form-data';
import { readerLocale } from '@/lib/base/reader-locale';
import { answerSavedTable } from '@/lib/export/saved/answer-saved-table';
import { isSavedTable } from '@/lib/export/saved/saved-tables';
import { writtenWords } from '@/lib/ui/export/written-words';
import { wordsFor } from '@/lib/ui/i18n/words-for';

const absent = () => new Response(null, { status: 404, headers: { 'cache-control': 'no-store' } });

/** The rows of a list as a file, `batches.csv?…` or `batches.xlsx?…` with the list's own query string. */
export async function GET(request: Request, { params }: RouteContext<'/export/[file]'>): Promise<Response> {
  const actor = await currentActor();
  if (!actor || actor.role === 'funder') return absent();
  const [, name = '', format] = /^([a-z-]+)\.(csv|xlsx)$/.exec((await params).file) ?? [];
  if (!isSavedTable(name) || (format !== 'csv' && format !== 'xlsx')) return absent();
  const { searchParams } = new URL(request.url);
  const query = queryToObject(
    Object.fromEntries([...new Set(searchParams.keys())].map((key) => [key, searchParams.getAll(key)])),
  );
  const words = wordsFor(actor.language, readerLocale(actor));
  return answerSavedTable(actor, { name, format, query }, writtenWords(words), (key, values) =>
    words(`export.${key}`, values),
  );
}
