import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { refusedTable } from '@/lib/intake/table/refused-table';
import { viewFile } from '@/lib/intake/table/view-file';
import { problemSentences } from '@/lib/ui/importing/problem-lines';

/** The rows that need a person, with their own text and the reason in a column of its own. */
export async function GET(_request: Request, { params }: RouteContext<'/import/[id]/refused'>) {
  const actor = await requireActor('coordinator', 'member');
  const { id } = await params;
  const file = await readAs(actor, (context) => viewFile(context, id, new Date()));
  if (!file) return new Response(null, { status: 404 });
  const t = await getTranslations('import');
  const sentence = await problemSentences(file);
  const text = await readAs(actor, (context) =>
    refusedTable(context, id, file.layout, {
      reason: t('needs.reason'),
      say: (problems) => problems.map(sentence).join(' '),
    }),
  );
  const name = file.fileName.replace(/\.[^.]*$/, '').replace(/[^\p{L}\p{N}._-]+/gu, '-');
  const fileName = encodeURIComponent(`${name}_${file.counts.needs}-rows.csv`);
  return new Response(text, {
    headers: {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="refused.csv"; filename*=UTF-8''${fileName}`,
      'cache-control': 'private, no-store',
      vary: 'Cookie',
    },
  });
}
