import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { oneRow, viewFile } from '@/lib/intake/table/view-file';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { mendFields } from '@/lib/ui/importing/mend-fields';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { mendAction } from './actions';

export default async function MendRowPage({ params }: PageProps<'/import/[id]/rows/[line]'>) {
  const actor = await requireActor('coordinator', 'member');
  const { id, line: text } = await params;
  const line = /^[1-9]\d{0,8}$/.test(text) ? Number(text) : 0;
  const found = await readAs(actor, async (context) => {
    const file = await viewFile(context, id, new Date());
    const row = file && (await oneRow(context, id, line));
    return row ? { file, row } : undefined;
  });
  if (!found) return <NotThere />;
  const t = await getTranslations('import');
  const { fields, values, wrong } = await mendFields(found.file, found.row);
  return (
    <RecordForm
      action={mendAction.bind(null, id, line)}
      heading={t('mend.heading', { line })}
      submitLabel={t('mend.submit')}
      fields={fields}
      values={values}
      words={await loadFormWords()}
      after={<Link href={`/import/${id}#needs` as Route}>{t('mend.back')}</Link>}
    >
      <p>{t('mend.intro', { line, file: found.file.fileName })}</p>
      {wrong.length === 0 ? null : (
        <>
          <h2>{t('needs.why')}</h2>
          <ul>
            {wrong.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
    </RecordForm>
  );
}
