import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { isId } from '@/lib/records/fields/id-field';
import { getPractice } from '@/lib/records/practice/get-practice.query';
import { dateValues } from '@/lib/ui/form/date-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { practiceFields } from '@/lib/ui/programme/practice-fields';
import { correctPracticeAction } from '../../actions';

export default async function CorrectPracticePage({
  params,
}: PageProps<'/programme/practices/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  if (!isId(id)) return <NotThere />;
  const read = await readAs(actor, async (context) => ({
    practice: await getPractice(context, id),
  }));
  const { practice } = read;
  if (!practice || practice.voided !== null) return <NotThere />;
  const t = await getTranslations('programme');
  const days = await recentDays(todayInZone(actor.networkTimeZone, new Date()));
  return (
    <RecordForm
      action={correctPracticeAction}
      heading={t('practices.correct')}
      fields={await practiceFields({ kind: 'correct' }, days)}
      values={{
        id,
        revision: String(practice.revision),
        practice: practice.practice,
        description: practice.description ?? '',
        growers: practice.growers === null ? '' : String(practice.growers),
        ...dateValues('since', practice.since),
        ...dateValues('until', practice.until),
      }}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
