import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { readAs } from '@/lib/access/scoped-db';
import { listPeople } from '@/lib/records/person/list-people.query';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { PublishStep } from '@/lib/ui/report/publish-step';
import { publishReportAction } from '../../actions';
import { loadCoordinatorsReport } from '../load-coordinators-report';

export default async function PublishReportPage({ params }: PageProps<'/reports/[id]/publish'>) {
  const { id } = await params;
  const { actor, report } = await loadCoordinatorsReport(id);
  if (!report || report.publishedAt !== undefined) return <NotThere />;
  const t = await getTranslations('report');
  return (
    <>
      <Heading text={t('publishHeading', { title: report.title })} />
      <PublishStep
        id={id}
        people={await readAs(actor, listPeople)}
        language={actor.language}
        action={publishReportAction}
      />
      <p className="mt-4">
        <Link href={`/reports/${id}` as Route}>{t('publishBack')}</Link>
      </p>
    </>
  );
}
