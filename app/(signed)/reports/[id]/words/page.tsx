import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getReport } from '@/lib/report/get-report.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { wordsFields } from '@/lib/ui/report/words-fields';
import { writeWordsAction } from '../../actions';

export default async function ReportWordsPage({ params }: PageProps<'/reports/[id]/words'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const report = isId(id) ? await readAs(actor, (context) => getReport(context, id)) : undefined;
  if (report?.publishedAt !== undefined || !report) return <NotThere />;
  const t = await getTranslations('report');
  const words = Object.entries(report.words).map(([place, said]) => [`words.${place}`, said]);
  return (
    <RecordForm
      action={writeWordsAction}
      heading={t('wordsHeading')}
      fields={await wordsFields(report.content.indicators)}
      values={{
        id,
        revision: String(report.revision),
        title: report.title,
        ...Object.fromEntries(words),
      }}
      submitLabel={t('submitWords')}
      words={await loadFormWords()}
    >
      <p>{t('wordsIntro')}</p>
    </RecordForm>
  );
}
