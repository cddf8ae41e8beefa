import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listSites } from '@/lib/records/site/list-sites.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { practiceFields } from '@/lib/ui/programme/practice-fields';
import { recordPracticeAction } from '../actions';

export default async function NewPracticePage() {
  const actor = await requireActor('coordinator', 'member');
  const read = await readAs(actor, async (context) => ({
    sites: await listSites(context),
  }));
  const t = await getTranslations('programme');
  const { sites } = read;
  const [first] = sites;
  if (!first)
    return (
      <>
        <Heading text={t('practices.new')} />
        <EmptyState text={t('noSites')} />
      </>
    );
  const today = todayInZone(first.timeZone, new Date());
  const days = await recentDays(today);
  return (
    <RecordForm
      action={recordPracticeAction}
      heading={t('practices.new')}
      fields={await practiceFields({ kind: 'add', sites }, days)}
      values={{ id: newId(), siteId: sites.length === 1 ? first.id : '', since__quick: today }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    />
  );
}
