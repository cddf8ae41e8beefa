import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { openPoints } from '@/lib/intake/table/open-points';
import { canBeTakenBack } from '@/lib/intake/table/take-back';
import { needyBefore, needyRows, viewFile } from '@/lib/intake/table/view-file';
import { InlineForm } from '@/lib/ui/form/inline-form';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { FileWork } from '@/lib/ui/importing/file-work';
import { layoutFields, layoutValues } from '@/lib/ui/importing/layout-fields';
import { NeedyRows } from '@/lib/ui/importing/needy-rows';
import { SampleRows } from '@/lib/ui/importing/sample-rows';
import { settleFields } from '@/lib/ui/importing/settle-fields';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { addAction, checkAction, layoutAction, settleAction, stopAction } from './actions';

export default async function ImportedFilePage({ params, searchParams }: PageProps<'/import/[id]'>) {
  const actor = await requireActor('coordinator', 'member');
  const { id } = await params;
  const { after, mended, back } = await searchParams;
  const from = Number(after ?? 0);
  const last = Number.isSafeInteger(from) && from > 0 && from < 2 ** 31 ? from : 0;
  const found = await readAs(actor, async (context) => {
    const file = await viewFile(context, id, new Date());
    if (!file) return undefined;
    return {
      file,
      rows: await needyRows(context, id, last),
      before: await needyBefore(context, id, last),
      points: await openPoints(context, id),
    };
  });
  if (!found) return <NotThere />;
  const { file, rows, before, points } = found;
  const t = await getTranslations('import');
  const words = await loadFormWords();
  const working = file.state === 'waiting' || file.state === 'checking' || file.state === 'adding';
  const settle = await settleFields(file, points);
  const looked = file.counts.new + file.counts.there + file.counts.needs + file.counts.added > 0;
  const line = Number(mended);
  const taken = Number(back);
  return (
    <>
      <p>
        <Link href={'/import' as Route}>{t('file.back')}</Link>
      </p>
      <Heading text={file.fileName} />
      <p className="quiet">
        {t(`kinds.${file.kind}`)}
        {file.siteName === null ? '' : ` · ${file.siteName}`}
      </p>
      {Number.isSafeInteger(line) && line > 0 ? <Notice>{t('mend.good', { line })}</Notice> : null}
      {Number.isSafeInteger(taken) && taken > 0 && file.counts.added === 0 ? (
        <Notice>{t('takeBack.done', { records: taken })}</Notice>
      ) : null}
      <FileWork file={file} check={checkAction} add={addAction} stop={stopAction} />
      {working || file.counts.added === 0 || !canBeTakenBack(file) ? null : (
        <p className="record-links">
          <Link href={`/import/${id}/take-back` as Route}>{t('takeBack.link')}</Link>
        </p>
      )}
      {working || settle.fields.length === 0 ? null : (
        <InlineForm
          action={settleAction.bind(null, id)}
          label={t('settle.heading')}
          fields={settle.fields}
          values={settle.values}
          submitLabel={t('settle.submit')}
          words={words}
          plain={file.counts.new > 0}
        />
      )}
      {working || rows.length === 0 ? null : <NeedyRows file={file} rows={rows} before={before} />}
      {working ? null : (
        <details open={!looked}>
          <summary>{t('understood.heading')}</summary>
          <SampleRows layout={file.layout} sample={file.sample} />
          <p>{t('understood.intro')}</p>
          <InlineForm
            action={layoutAction.bind(null, id)}
            label={t('understood.heading')}
            fields={await layoutFields(file)}
            values={layoutValues(file)}
            submitLabel={t('understood.submit')}
            words={words}
            plain
          />
        </details>
      )}
    </>
  );
}
