import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryToObject } from '@/lib/base/form-data';
import { trainingTopics } from '@/lib/growing/programme-vocabulary';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { listTrainings } from '@/lib/records/training/list-trainings.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { Link } from '@/lib/ui/page/link';
import { ProgrammeList } from '@/lib/ui/programme/programme-list';

const path = '/programme/trainings';

export default async function TrainingsPage({ searchParams }: PageProps<'/programme/trainings'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = programmeFilterInput.parse(queryToObject(address));
  const { trainings, next, sites } = await readAs(actor, async (context) => ({
    ...(await listTrainings(context, filter)),
    sites: await listSiteNames(context, filter.site),
  }));
  const t = await getTranslations('programme.trainings');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  return (
    <ProgrammeList
      list="trainings"
      address={address}
      filter={filter}
      sites={sites}
      own={{
        name: 'topic',
        label: t('columns.topic'),
        options: trainingTopics.map((value) => ({ value, label: words(`trainingTopic.${value}`) })),
      }}
      rows={trainings}
      next={next}
      columns={[
        {
          key: 'title',
          header: t('columns.title'),
          cell: ({ id, title }) => <Link href={`${path}/${id}` as Route}>{title}</Link>,
        },
        { key: 'heldOn', header: t('columns.heldOn'), cell: ({ heldOn }) => formatDate(heldOn, locale) },
        {
          key: 'topic',
          header: t('columns.topic'),
          cell: ({ topic }) => words(`trainingTopic.${topic}`),
        },
        { key: 'site', header: t('columns.site'), cell: ({ siteName }) => siteName },
        {
          key: 'attendances',
          header: t('columns.attendances'),
          numeric: true,
          cell: ({ attendances }) => attendances,
        },
      ]}
    />
  );
}
